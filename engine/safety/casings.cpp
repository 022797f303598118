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
    Reason reason = make_reason(ReasonKind::casing_of_animal, {}, {casing.written});
    reason.about = "casing-animal";
    reason.role = sure ? "" : "perhaps";
    reason.by_way = beasts;
    return caution_text(std::move(reason), "judgement", {}, listed(beasts));
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
