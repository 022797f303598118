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
Json json_of(const CoreAsked& core);
Json json_of(const PageSafety& safety);
Json json_of(const std::vector<AllergenText>& allergens);
Json json_of(const std::vector<Role>& roles);
Json json_of(const Prediction& prediction);
Json json_of(const PerProperty<Band>& properties);

/// An array of what `make` makes of each; an empty array of none.
template <class Items, class Make, class J = Json>  // J only so that this header needs no more than the forward declaration
J array_of(const Items& items, Make make) {
    J out = J::array();
    for (const auto& item : items) out.push_back(make(item));
    return out;
}

std::string printed(const Json& json, Form form = Form::document);

}  // namespace standin::cli
