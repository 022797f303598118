#include "formula/food/foods_in_any_tongue.hpp"

#include "formula/hazards/hazards.hpp"
#include "formula/words/tongues.hpp"

namespace standin {
namespace {

std::vector<const Ingredient*> foods_in(std::string_view text, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    return foods_named(text, longest, knowledge);
}

}  // namespace

std::vector<const Ingredient*> foods_in_any_tongue(std::string_view text, const Knowledge& knowledge) {
    auto all = foods_in(text, knowledge);
    if (!all.empty()) return all;
    for (const auto& way : in_english(text, knowledge))
        if (all = foods_in(way.text, knowledge); !all.empty()) return all;
    return all;
}

}  // namespace standin
