#include "evaluate/unknown_quantity.hpp"

#include <array>
#include <string_view>

#include "core/contains.hpp"

namespace standin {
namespace {

// Of one food, what a kitchen can measure, taste or read.
constexpr auto told_by_a_kitchen =
    std::to_array<std::string_view>({"buffer scale", "swells", "binding water", "buffer", "ph", "titratable", "capsaicinoids", "lot",
                                     "pods", "fat", "bind", "strength", "pungency", "sulphites", "weight"});

Reason not_known(ReasonKind kind, const std::string& name, std::string of = {}, std::vector<std::string> foods = {}) {
    Reason reason = make_reason(kind, {}, std::move(foods));
    reason.about = name;
    reason.role = std::move(of);
    return reason;
}

}  // namespace

UnknownQuantity quantity_of(const std::string& name, const Knowledge& knowledge) {
    const auto space = name.find(' ');
    if (name.starts_with("fat.softens.") || name.starts_with("bind.enzyme.of.") || name.starts_with("validity.") ||
        space == std::string::npos)
        return {not_known(ReasonKind::not_known_well, name), name.starts_with("process.")};
    const std::string owner = name.substr(0, space);
    if (const auto* preparation = knowledge.preparation(owner)) {
        const std::string what = name.substr(name.rfind(' ') + 1);
        return {not_known(ReasonKind::effect_not_known, name, what, {preparation->names.front()}), what == "yield"};
    }
    const auto* ingredient = knowledge.ingredient(owner);  // a species has no record of its own
    const std::string of = name.substr(space + 1);
    return {not_known(ReasonKind::not_known_well, name, of, {ingredient ? ingredient->names.front() : owner}),
            contains(told_by_a_kitchen, std::string_view(of))};
}

}  // namespace standin
