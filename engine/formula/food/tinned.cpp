#include "formula/food/tinned.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "core/names.hpp"
#include "formula/amounts/process_text.hpp"

namespace standin {
namespace {

// The can or jar whose own weight the line tells; null where it tells none.
const Unit* labelled(const MeasuredFood& food) {
    const Unit* unit = food.amount.parts.front().unit;
    const Unit* held = food.amount.container ? food.amount.container : food.notes.grams && unit && is_container(*unit) ? unit : nullptr;
    return held && preserves(*held) ? held : nullptr;
}

bool says(const SaidOf& said, std::string_view wanted) {
    return std::find(said.words.begin(), said.words.end(), wanted) != said.words.end();
}

// Olives, capers, pickles, anchovies; sauces and liquids are used whole.
bool lies_in_brine(const Ingredient& ingredient) {
    constexpr double salted = 1;  // g in 100 g, judgement
    const bool whole = ingredient.tissue == Tissue::liquid || ingredient.tissue == Tissue::paste || ingredient.tissue == Tissue::dry;
    return !whole && ingredient.composition.salt.mid >= salted;
}

}  // namespace

bool lies_in_water(const Ingredient& ingredient) {
    const auto& already = ingredient.already;
    return ingredient.family == "legumes" && std::find(already.begin(), already.end(), "boiled") != already.end();
}

void drain_tin(const MeasuredFood& food, Weighed& weighed, std::vector<LineDoubt>& doubts) {
    const Unit* held = labelled(food);
    const auto told = [&](std::string_view word) { return says(food.name.before, word) || says(food.name.after, word); };
    if (!held || food.notes.drained || told("undrained")) return;
    const auto tell = [&](Confidence confidence, ReasonKind kind) {
        Reason reason = make_reason(kind, {{"drained", {}, weighed.grams.mid, "g"}});
        reason.role = held->word;
        doubts.push_back({confidence, std::move(reason), true});
    };
    if (lies_in_water(*food.name.ingredient)) {
        weighed.grams = product(weighed.grams, food.knowledge.parameter("reading.drained-share"));
        tell(told("drained") ? Confidence::likely : Confidence::unsure, ReasonKind::tin_with_water);
    } else if (told("drained")) {
        weighed.grams = product(weighed.grams, food.knowledge.parameter("reading.drained-share-other"));
        tell(Confidence::unsure, ReasonKind::tin_to_drain);
    } else if (held->word == "jar" && lies_in_brine(*food.name.ingredient)) {
        tell(Confidence::unsure, ReasonKind::tin_with_brine);
    }
}

}  // namespace standin
