#include "adapt/variants/title_food.hpp"

#include <algorithm>
#include <string>

#include "adapt/moves/named_in_title.hpp"
#include "core/contains.hpp"
#include "core/names.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

// A word of several foods is true of each: one cheese goes and another comes in. What bears a name of its own in the title is that food
// alone.
bool still_true(const std::string& word, const Ingredient& gone, const Formula& variant, const Knowledge& knowledge) {
    const auto bears = [&](const Line& line) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        return line.grams.mid > 0 && food.id != gone.id && is_called(word, food, knowledge);
    };
    return std::any_of(variant.lines.begin(), variant.lines.end(), bears);
}

// As the title has it where that is no name of its own.
std::string as_said(const std::string& word, const Ingredient& food) {
    const auto own = [&](const std::string& name) { return fold(name) == word; };
    const bool whole = word.find(' ') != std::string::npos || std::any_of(food.names.begin(), food.names.end(), own);
    return whole ? food.names.front() : word;
}

// Of a beast the name is held against the lines in whatever formula (safety/title_words): "duck" is told once, be the line called duck or
// duck breast. A fish, a liver and a bacon are told here.
bool is_told_as_animal(const std::string& word, const std::vector<CautionText>& told) {
    return std::any_of(told.begin(), told.end(), [&](const CautionText& caution) {
        return caution.reason.kind == ReasonKind::title_without_animal && !caution.reason.role.empty() &&
               word.find(fold(caution.reason.role)) != std::string::npos;
    });
}

}  // namespace

std::vector<CautionText> title_foods_gone(const Formula& base, const Formula& variant, const std::vector<CautionText>& cautions,
                                          const Knowledge& knowledge) {
    std::vector<CautionText> all;
    std::vector<std::string> told;
    for (const auto& line : base.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const bool same = std::any_of(variant.lines.begin(), variant.lines.end(),
                                      [&](const Line& one) { return one.ingredient == line.ingredient && one.grams.mid > 0; });
        if (same || contains(told, food.id)) continue;
        const std::string word = named_in_title(base.title, food, knowledge);
        if (word.empty() || still_true(word, food, variant, knowledge) || is_told_as_animal(word, cautions)) continue;
        told.push_back(food.id);
        Reason reason = make_reason(ReasonKind::title_without_animal);
        reason.about = "title-food";
        reason.role = as_said(word, food);
        all.push_back(caution_text(std::move(reason), "judgement", {}, food.names.front()));
    }
    return all;
}

}  // namespace standin
