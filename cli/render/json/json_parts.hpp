// Pieces that several JSON answers share.
#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <vector>

#include "render/json/json.hpp"

namespace standin::cli {

using Json = nlohmann::ordered_json;

Json num(double value);
Json json_of(const Band& band);
Json json_of(const std::vector<CautionText>& cautions);
/// The facts and, beside them, their words in metric.
Json json_of(const Reason& reason);
Json json_of(const std::vector<Reason>& reasons);
Json json_of(const std::vector<Presumption>& presumed);
Json json_of(const CoreAsked& core);
Json json_of(const PageSafety& safety);
Json json_of(const std::vector<AllergenText>& allergens);
Json json_of(const std::vector<Role>& roles);
Json json_of(const Prediction& prediction);
Json json_of(const PerProperty<Band>& properties);
Json json_of(const std::optional<CostChange>& change);
/// `lines` are those of the formula it is the cost of.
Json cost_json(const std::optional<Cost>& cost, const Prediction& prediction);
Json draft_json(const Extras& beside);
Json freezing_json(const Extras& beside);
Json glut_json(const Extras& beside);

/// An array of what `make` makes of each; an empty array of none.
template <class Items, class Make, class J = Json>  // J only so that this header needs no more than the forward declaration
J array_of(const Items& items, Make make) {
    J out = J::array();
    for (const auto& item : items) out.push_back(make(item));
    return out;
}

std::string printed(const Json& json, Form form = Form::document);

}  // namespace standin::cli
