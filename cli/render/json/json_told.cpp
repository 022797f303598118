// What is told of a formula, written into it where its reader passes over it.
#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"
#include "render/told_beside.hpp"

namespace standin::cli {
namespace {

using Ordered = nlohmann::ordered_json;

std::string printed_formula(const Ordered& root) { return root.dump(2, ' ', false, Ordered::error_handler_t::replace) + "\n"; }

}  // namespace

std::string with_told_json(const std::string& formula, const ToldBeside& told) {
    Ordered root = Ordered::parse(formula);
    root["told_when_written"] = {{"allergens", told.allergens}, {"cautions", told.cautions}};
    return printed_formula(root);
}

std::string with_told_jsonld(const std::string& formula, const ToldBeside& told) {
    Ordered root = Ordered::parse(formula);
    const auto add = [&](const std::string& text) {
        root["comment"].push_back({{"@type", "Comment"}, {"name", "told when written"}, {"text", text}});
    };
    for (const auto& allergen : told.allergens) add("allergen " + allergen);
    for (const auto& caution : told.cautions) add(caution);
    return printed_formula(root);
}

}  // namespace standin::cli
