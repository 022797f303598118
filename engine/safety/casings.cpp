#include "safety/casings.hpp"

#include <algorithm>
#include <array>

#include "knowledge/index/kinds.hpp"
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

bool is_link(const Formula& formula, const Knowledge& knowledge) {
    return formula.process.diameter_mm && *formula.process.diameter_mm < knowledge.parameter("bench.link.widest").mid;
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

std::string usual_casing(double mm, const Knowledge& knowledge) {
    if (mm <= knowledge.parameter("bench.casing.sheep-up-to").mid) return "sheep";
    return mm <= knowledge.parameter("bench.casing.hog-up-to").mid ? "hog" : "beef";
}

std::string casing_presumed(const Formula& formula, const Knowledge& knowledge) {
    if (!is_link(formula, knowledge)) return {};
    std::string usual = usual_casing(*formula.process.diameter_mm, knowledge);
    for (const auto* id : {"pork", "beef", "lamb"}) {
        const Kind* beast = kind_of(id, knowledge);
        const bool its_own = beast && casing_belongs(usual, *beast, knowledge);
        if (beast && (its_own || beast->id == "pork") && mass_holds(formula, *beast, knowledge)) return usual;
    }
    return {};
}

bool width_takes(const Kind& kind, const Formula& formula, const Knowledge& knowledge) {
    return is_link(formula, knowledge) && std::none_of(formula.beside.begin(), formula.beside.end(), is_casing) &&
           casing_belongs(usual_casing(*formula.process.diameter_mm, knowledge), kind, knowledge);
}

void forget_width(Formula& formula, const Knowledge& knowledge) {
    if (is_link(formula, knowledge) && std::none_of(formula.beside.begin(), formula.beside.end(), is_casing))
        formula.process.diameter_mm.reset();
}

}  // namespace standin
