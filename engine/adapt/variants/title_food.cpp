#include "adapt/variants/title_food.hpp"

#include <algorithm>
#include <string>

#include "adapt/moves/losses.hpp"
#include "core/contains.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

// One cheese goes and another comes in: the title that says cheese is still kept.
bool keeps_the_word(const Line& line, const Formula& base, const Knowledge& knowledge) {
    const bool comes_in =
        std::none_of(base.lines.begin(), base.lines.end(), [&](const Line& one) { return one.ingredient == line.ingredient; });
    return comes_in && named_in_title(base.title, *knowledge.ingredient(line.ingredient));
}

}  // namespace

std::vector<CautionText> title_foods_gone(const Formula& base, const Formula& variant, const Knowledge& knowledge) {
    std::vector<CautionText> all;
    std::vector<std::string> told;
    for (const auto& line : base.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const bool same = std::any_of(variant.lines.begin(), variant.lines.end(),
                                      [&](const Line& one) { return one.ingredient == line.ingredient && one.grams.mid > 0; });
        if (food.meat || same || contains(told, food.id) || !named_in_title(base.title, food)) continue;
        if (std::any_of(variant.lines.begin(), variant.lines.end(), [&](const Line& one) { return keeps_the_word(one, base, knowledge); }))
            continue;
        told.push_back(food.id);
        Reason reason = make_reason(ReasonKind::title_without_animal);
        reason.about = "title-food";
        reason.role = food.names.front();
        all.push_back(caution_text(std::move(reason), "judgement", {}, food.names.front()));
    }
    return all;
}

}  // namespace standin
