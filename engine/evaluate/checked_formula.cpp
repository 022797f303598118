#include "evaluate/checked_formula.hpp"

#include <algorithm>
#include <cmath>

#include "core/process_bounds.hpp"
#include "evaluate/faults.hpp"
#include "evaluate/leaf_paste.hpp"
#include "knowledge/index/effects.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr double most_minutes = 30 * 24 * 60;  // of a preparation: a month; judgement
constexpr double most_pieces = 1e6;
constexpr std::size_t most_lines = 500;

void check_grams(Faults& faults, const Band& grams, const std::string& line) {
    const bool numbers = std::isfinite(grams.low) && std::isfinite(grams.mid) && std::isfinite(grams.high);
    if (!numbers) return faults.add(line + ": its weight is not a number");
    if (grams.low > grams.mid || grams.mid > grams.high)
        return faults.add(line + ": its weight runs backwards, from " + exact_text(grams.low) + " over " + exact_text(grams.mid) + " to " +
                          exact_text(grams.high) + " g");
    if (grams.low < 0) return faults.add(line + ": its weight is below nothing: " + exact_text(grams.low) + " g");
    faults.within(grams.mid, least_grams, most_grams, line + ": grams");
    faults.unless(grams.high <= most_grams, line + ": its weight may be over " + exact_text(most_grams) + " g");
}

void check_preparations(Faults& faults, const Line& line, const Ingredient& ingredient, const std::string& where,
                        const Knowledge& knowledge) {
    for (const auto& step : line.prepared) {
        const Preparation* preparation = knowledge.preparation(step.preparation);
        if (!preparation) {
            faults.add(where + ": no preparation has the id " + quoted(step.preparation));
            continue;
        }
        faults.unless(effect_on(*preparation, ingredient.tissue) != nullptr, where + ": this food cannot be " + preparation->id);
        if (step.minutes) faults.within(*step.minutes, 0, most_minutes, where + ": minutes " + preparation->id);
    }
}

// Bounds that no food passes; the reader asks for tighter ones of each.
void check_facts(Faults& faults, const Line& line, const std::string& where) {
    constexpr double least_ph = 1.5, most_ph = 10, most_acid_pct = 100, most_heat_mg_kg = 300000;  // judgement
    const auto band = [&](const std::optional<Band>& fact, double low, double high, const std::string& what) {
        if (!fact) return;
        for (const double value : {fact->low, fact->mid, fact->high}) faults.within(value, low, high, where + ": " + what);
        faults.unless(fact->low <= fact->mid && fact->mid <= fact->high, where + ": its " + what + " runs backwards");
    };
    band(line.fat_pct, 0, 100, "fat in 100 g");
    band(line.ph, least_ph, most_ph, "pH");
    band(line.acid_pct, 0, most_acid_pct, "acid in 100 g");
    band(line.heat_mg_kg, 0, most_heat_mg_kg, "heat in mg/kg");
}

void check_line(Faults& faults, const Line& line, std::size_t number, const Knowledge& knowledge) {
    std::string where = "line " + std::to_string(number);
    if (const Ingredient* ingredient = knowledge.ingredient(line.ingredient)) {
        where += " (" + ingredient->names.front() + ")";
        check_preparations(faults, line, *ingredient, where, knowledge);
    } else {
        faults.add(where + ": no ingredient has the id " + quoted(line.ingredient));
    }
    check_grams(faults, line.grams, where);
    if (line.count) faults.within(*line.count, least_grams, most_pieces, where + ": pieces");
    faults.text(line.written, where + ": the amount as written");
    for (const auto& note : line.notes) faults.text(in_full(note), where + ": a note");
    for (const auto& told : line.declared) faults.text(told.allergen + " " + told.words, where + ": an allergen it tells of");
    check_facts(faults, line, where);
}

void check_process(Faults& faults, const Process& process) {
    for (const auto& bounds : process_bounds)
        if (const auto& said = process.*bounds.field) faults.within(*said, bounds.low, bounds.high, std::string(bounds.key));
    if (process.order) faults.unless(*process.order >= Order::salt_first && *process.order <= Order::acid_first, "order: no such order");
    if (process.cook) faults.unless(static_cast<std::size_t>(*process.cook) < cook_ways, "cook: no such way to cook");
    const auto& curve = process.core_curve;
    faults.unless(curve.size() != 1 && curve.size() <= Faults::longest_text, "core curve: expected at least two readings, or none");
    for (std::size_t i = 0; i < curve.size(); ++i) {
        const bool timed = std::isfinite(curve[i].minutes) && curve[i].minutes >= 0 && curve[i].minutes <= most_minutes;
        if (!timed || (i > 0 && curve[i].minutes <= curve[i - 1].minutes))
            return faults.add("core curve: expected readings in the order of time");
        if (!(curve[i].celsius > coldest_core_c && curve[i].celsius < hottest_core_c))
            return faults.add("core curve: expected temperatures from " + exact_text(coldest_core_c) + " to " + exact_text(hottest_core_c) +
                              " C");
    }
}

// Below that no model here holds; judgement.
constexpr double least_meat_share = 0.2;

void check_meat(Faults& faults, const Formula& formula, const Knowledge& knowledge) {
    double meat = 0, all = 0;
    for (const auto& line : formula.lines) {
        all += line.grams.mid;
        if (knowledge.ingredient(line.ingredient)->meat) meat += line.grams.mid;
    }
    if (meat <= 0) faults.add("the formula has no meat: expected at least one lean or fat line");
    else if (meat < least_meat_share * all) faults.add("meat is under 20 % of the batch: this is no forcemeat any model here was made for");
}

}  // namespace

std::vector<std::string> faults_in(const Formula& formula, const Knowledge& knowledge) {
    Faults faults;
    if (formula.lines.empty()) faults.add("the formula has no lines");
    if (formula.lines.size() > most_lines) faults.add("the formula has more than " + std::to_string(most_lines) + " lines");
    for (std::size_t l = 0; l < std::min(formula.lines.size(), most_lines); ++l) check_line(faults, formula.lines[l], l + 1, knowledge);
    check_process(faults, formula.process);
    faults.text(formula.title, "the title");
    faults.text(formula.note, "the note");
    for (const auto& beside : formula.beside) {
        faults.text(beside.written, "what stands beside the lines");
        faults.text(beside.purpose, "what stands beside the lines");
        if (!beside.ingredient.empty() && !knowledge.ingredient(beside.ingredient))
            faults.add("nothing is known of \"" + beside.ingredient + "\", which stands beside the lines");
    }
    return std::move(faults).all();
}

std::optional<Error> as_error(const std::vector<std::string>& faults, Trouble trouble) {
    if (faults.empty()) return std::nullopt;
    return Error{trouble, faults.front(), {}, {faults.begin() + 1, faults.end()}};
}

Result<CheckedFormula> CheckedFormula::of(const Formula& formula, const Knowledge& knowledge) {
    auto faults = faults_in(formula, knowledge);
    if (faults.empty()) {
        Faults more;
        check_meat(more, formula, knowledge);
        faults = std::move(more).all();
    }
    if (auto error = as_error(faults, Trouble::bad_data)) return Failure(std::move(*error));
    std::vector<const Ingredient*> ingredients;
    for (const auto& line : formula.lines) ingredients.push_back(knowledge.ingredient(line.ingredient));
    CheckedFormula checked(formula, std::move(ingredients));
    auto& paste = checked.formula_.process.leaf_paste;
    if (!paste) paste = leaf_paste_of(formula, knowledge);
    return checked;
}

}  // namespace standin
