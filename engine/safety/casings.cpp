#include "safety/casings.hpp"

#include <algorithm>
#include <array>

#include "knowledge/kinds.hpp"
#include "safety/exclusions.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

bool mass_holds(const Formula& formula, const Kind& beast, const Knowledge& knowledge) {
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        return food.meat && belongs(food, beast, knowledge);
    });
}

CautionText casing_caution(const Beside& casing, const std::vector<std::string>& beasts, bool sure) {
    Reason reason;
    reason.kind = ReasonKind::caution;
    reason.about = "casing-animal";
    const std::string of = beasts.size() > 1 ? beasts[0] + " or " + beasts[1] : beasts[0];
    reason.note = "The casing " + std::string(sure ? "is" : "may be") + " of " + of +
                  ", which the mass is not: {foods}. Name it on the label and tell whoever eats none; sheep casings, or collagen stated to "
                  "be of " +
                  (beasts[0] == "pork" ? "beef" : "another beast") + ", do as well.";
    reason.foods = {casing.written};
    return caution_text(std::move(reason), "judgement", {}, of);
}

}  // namespace

std::vector<CautionText> animals_of_casings(const Formula& formula, const Knowledge& knowledge) {
    constexpr std::array<const char*, 2> eaten_by_not_all{"pork", "beef"};
    std::vector<CautionText> all;
    for (const auto& casing : formula.beside) {
        if (!is_casing(casing)) continue;
        std::vector<std::string> beasts;
        for (const auto* id : eaten_by_not_all)
            if (const Kind* beast = kind_of(id, knowledge);
                beast && casing_belongs(casing.written, *beast, knowledge) && !mass_holds(formula, *beast, knowledge))
                beasts.emplace_back(id);
        const std::string name = casing_name(casing.written, knowledge);
        if (!beasts.empty()) all.push_back(casing_caution(casing, beasts, name == "hog" || name == "beef"));
    }
    return all;
}

}  // namespace standin
