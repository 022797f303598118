#include "formula/formats/presumed_making.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "core/contains.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/amounts/written_preparation.hpp"
#include "formula/food/foods_in_any_tongue.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/line/leaf_cut.hpp"
#include "formula/line/method_facts.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

bool wilts(const Ingredient& food) { return is_leaf(food.tissue); }

bool cooked_already(const Line& line) {
    for (const std::string_view step : {"blanched", "boiled", "steamed", "wilted", "cooked", "frozen-thawed"})
        if (has_step(line.prepared, step)) return true;
    return line.weighed_prepared;
}

// "Blanch the spinach; squeeze dry", "Blanch it. Drain and squeeze well.": what names no other food goes on with it.
bool squeezed_behind(const BlanchedInMethod& blanched, const Ingredient& food, const Knowledge& knowledge) {
    const auto* water = knowledge.ingredient_named("water");
    bool goes_on = true;
    for (const auto& behind : blanched.behind) {
        const bool names_it = sentence_names(behind.sentence, food, knowledge);
        const auto named = foods_in_any_tongue(behind.sentence, knowledge);
        const bool another = std::any_of(named.begin(), named.end(), [&](const auto* one) { return one != &food && one != water; });
        if (behind.squeezes && (names_it || (goes_on && !another))) return true;
        goes_on = goes_on && !another;
    }
    return false;
}

// Leaf that the method blanches or wilts, and squeezes behind it.
void presume_cooked_leaf(Draft& draft, WordList done, const std::string& step, const Knowledge& knowledge, std::vector<std::string>& told) {
    const auto* cooking = knowledge.preparation(step);
    if (!cooking) return;
    for (const auto& cooked : blanched_in_method(draft.formula.method, done, knowledge))
        for (auto& one : draft.lines) {
            if (one.beside || !one.read) continue;
            Line& line = one.read->line;
            const Ingredient& food = *knowledge.ingredient(line.ingredient);
            if (!wilts(food) || cooked_already(line) || !effect_on(*cooking, food.tissue)) continue;
            if (!food.already.empty() || !sentence_names(cooked.sentence, food, knowledge)) continue;
            std::vector<Prepared> steps{{step, step == "blanched" ? cooked.minutes : std::nullopt}};
            if ((cooked.squeezed || squeezed_behind(cooked, food, knowledge)) && !has_step(line.prepared, "squeezed"))
                steps.push_back({"squeezed", std::nullopt});
            line.prepared.insert(line.prepared.begin(), steps.begin(), steps.end());
            std::string all;
            for (const auto& made : steps) all += (all.empty() ? "" : ", ") + written(made, knowledge);
            told.push_back(food.names.front() + " " + all);
        }
}

// Raw leaf of which its line does not say how it is cut, by the method; the last word counts.
void presume_cut(Draft& draft, const Knowledge& knowledge, std::vector<std::string>& told) {
    const auto cuts = leaf_cuts_in_method(draft.formula.method, knowledge);
    for (auto& one : draft.lines) {
        if (one.beside || !one.read) continue;
        Line& line = one.read->line;
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        if (!wilts(food) || cooked_already(line) || !food.already.empty()) continue;
        const auto cut_so = [&](const char* step) { return has_step(line.prepared, step); };
        const auto steps = {"chopped", "minced", "sliced", "diced", "pureed", "ground", "grated", "crushed"};
        if (std::any_of(steps.begin(), steps.end(), cut_so)) continue;
        const auto last =
            std::find_if(cuts.rbegin(), cuts.rend(), [&](const CutInMethod& cut) { return clause_cuts(cut, food, knowledge); });
        if (last == cuts.rend()) continue;
        line.prepared.push_back({std::string(last->preparation), std::nullopt});
        told.push_back(food.names.front() + " " + written(line.prepared.back(), knowledge));
    }
}

bool is_toasted(const Ingredient& food) { return food.family == "spices" || food.family == "nuts-and-seeds"; }

bool is_roasted(const Ingredient& food) {
    constexpr std::array families{"fresh-chiles", "vegetables", "alliums", "sour-fruit", "mushrooms-and-seaweeds"};
    return contains(families, std::string_view(food.family)) && !contains(food.roles, Role::acid);
}

bool is_sweated(const Ingredient& food) {
    constexpr std::array families{"vegetables", "alliums", "mushrooms-and-seaweeds"};
    return contains(families, std::string_view(food.family));
}

// Weighed shelled, a nut has nothing done to it yet.
void take_shelled_for_plain(Line& line) {
    const auto shelled = [](const Prepared& step) { return step.preparation == "shelled" || step.preparation == "husked"; };
    if (!line.weighed_prepared || !std::all_of(line.prepared.begin(), line.prepared.end(), shelled)) return;
    line.prepared.clear();
    line.weighed_prepared = false;
}

// Raw food of which neither its line nor its record says that it is heated, by the parts of the method that heat it.
template <class Fits>
void presume_heated(Draft& draft, WordList heats, std::string_view step, Fits fits, const Knowledge& knowledge,
                    std::vector<std::string>& told) {
    const auto clauses = heated_in_method(draft.formula.method, heats, knowledge);
    if (clauses.empty()) return;
    for (auto& one : draft.lines) {
        if (one.beside || !one.read) continue;
        Line& line = one.read->line;
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const auto clause =
            std::find_if(clauses.begin(), clauses.end(), [&](const auto& said) { return sentence_names(said.clause, food, knowledge); });
        if (clause == clauses.end() || !fits(food)) continue;
        const bool peeled = step == "roasted" && clause->peels && food.tissue == Tissue::chile_flesh;
        const std::string done = peeled ? "roasted-peeled" : std::string(step);
        const auto* heating = knowledge.preparation(done);
        take_shelled_for_plain(line);
        const auto heated_so = [&](const char* way) { return has_step(line.prepared, way) || contains(food.already, way); };
        const auto heated = {"toasted", "roasted", "roasted-peeled", "fried", "boiled", "cooked", "blanched", "steamed", "wilted"};
        if (!heating || !effect_on(*heating, food.tissue) || line.weighed_prepared || std::any_of(heated.begin(), heated.end(), heated_so))
            continue;
        line.prepared.insert(line.prepared.begin(), {done, std::nullopt});
        told.push_back(food.names.front() + " " + written(line.prepared.front(), knowledge));
    }
}

}  // namespace

namespace {

// "Pork shoulder, 80/20, 8 mm plate": where the lines tell one plate and nothing else does, it is that of the mass. One that is not taken
// is told.
void presume_plate_of_lines(Draft& draft, const Knowledge& knowledge) {
    std::optional<double> plate = draft.formula.process.plate_mm;
    bool one = true;
    std::vector<std::pair<DraftLine*, double>> told;
    for (auto& line : draft.lines) {
        if (line.beside || !line.read) continue;
        const auto said = plate_in_text(line.written, knowledge);
        if (!said) continue;
        one = one && plate.value_or(*said) == *said;
        if (!plate) plate = said;
        told.emplace_back(&line, *said);
    }
    if (told.empty()) return;
    Process& process = draft.formula.process;
    Reason taken = make_reason(ReasonKind::from_method);
    taken.role = "line";
    if (!process.plate_mm && one) {
        process.plate_mm = plate;
        taken.figures.push_back({"plate", {}, *plate, "mm"});
        draft.formula.read_as.push_back(std::move(taken));
    }
    for (const auto& [line, said] : told) {
        if (process.plate_mm == said) continue;
        Line& of = line->read->line;
        of.notes.push_back(
            reason_about(ReasonKind::passed_over, plain_number(said) + " mm plate", {knowledge.ingredient(of.ingredient)->names.front()}));
        line->read->doubts.push_back({Confidence::likely, of.notes.back(), true});
    }
}

// What the method and every note say that it is cooked at is told once, the least of it; not where that is the core of the process, which
// has a warning of its own.
void tell_the_coolest(Formula& formula, const Knowledge& knowledge) {
    std::optional<double> least = cooked_too_cool(formula.method, formula.process.core_c, knowledge);
    std::erase_if(formula.read_as, [&](const Reason& told) {
        if (told.kind != ReasonKind::cooked_too_cool) return false;
        const double celsius = told.figures.front().after;
        if (celsius != formula.process.core_c) least = std::min(least.value_or(celsius), celsius);
        return true;
    });
    if (least) formula.read_as.push_back(make_reason(ReasonKind::cooked_too_cool, {{"cooking", {}, *least, "C"}}));
}

// Where a core temperature is told, how it looks judges nothing: else what says so stays with the formula.
void tell_what_is_judged_by_eye(Draft& draft) {
    if (draft.formula.process.core_c) std::erase_if(draft.formula.read_as, tells_of_doneness);
    else
        for (const auto& text : draft.judged_by_eye) add_to_note(draft.formula, text);
}

}  // namespace

void presume_making(Draft& draft, const Knowledge& knowledge) {
    Process& process = draft.formula.process;
    if (draft.formula.method.empty()) {
        presume_plate_of_lines(draft, knowledge);
        tell_what_is_judged_by_eye(draft);
        return tell_the_coolest(draft.formula, knowledge);
    }
    const Process found = process_in_method(draft.formula.method, knowledge);
    Reason told = make_reason(ReasonKind::from_method);
    const auto take = [&](const char* key, std::optional<double> Process::*field, const char* unit) {
        if (process.*field || !(found.*field)) return;
        process.*field = found.*field;
        told.figures.push_back({key, {}, *(found.*field), unit});
    };
    take("plate", &Process::plate_mm, "mm");
    take("mixing", &Process::mixing_min, "min");
    take("mixed at", &Process::mixed_at_c, "C");
    take("rest", &Process::rest_h, "h");
    take("core", &Process::core_c, "C");
    if (found.order && !process.order) {
        process.order = found.order;
        Process only;
        only.order = found.order;
        told.foods.push_back("order: " + process_words(only).front().second);
    }
    tell_what_is_judged_by_eye(draft);
    tell_the_coolest(draft.formula, knowledge);
    presume_cooked_leaf(draft, WordList::blanching_word, "blanched", knowledge, told.foods);
    presume_cooked_leaf(draft, WordList::wilting_word, "wilted", knowledge, told.foods);
    presume_cut(draft, knowledge, told.foods);
    presume_heated(draft, WordList::toasting_word, "toasted", is_toasted, knowledge, told.foods);
    presume_heated(draft, WordList::roasting_word, "toasted", is_toasted, knowledge, told.foods);
    presume_heated(draft, WordList::roasting_word, "roasted", is_roasted, knowledge, told.foods);
    presume_heated(draft, WordList::sweating_word, "cooked", is_sweated, knowledge, told.foods);
    if (!told.figures.empty() || !told.foods.empty()) draft.formula.read_as.push_back(std::move(told));
    presume_plate_of_lines(draft, knowledge);
}

}  // namespace standin
