#include "evaluate/predict.hpp"

#include <algorithm>
#include <cmath>

#include "evaluate/green_life.hpp"
#include "evaluate/lethality_of.hpp"
#include "models/cielab.hpp"
#include "models/composition.hpp"

namespace standin {
namespace {

template <class Get>
Band band_over(const std::vector<State>& states, Get get) {
    std::vector<double> values;
    values.reserve(states.size());
    for (const auto& state : states) values.push_back(get(state));
    return band_of(std::move(values));
}

PredictedColour colour_over(const std::vector<State>& states, Lab State::*which) {
    PredictedColour c;
    c.L = band_over(states, [&](const State& s) { return (s.*which).L; });
    c.a = band_over(states, [&](const State& s) { return (s.*which).a; });
    c.b = band_over(states, [&](const State& s) { return (s.*which).b; });
    c.lab = {c.L.mid, c.a.mid, c.b.mid};
    c.hex = hex_of(c.lab);
    c.word = colour_word(c.lab);
    return c;
}

PredictedLine line_of(const Line& line, const Knowledge& knowledge) {
    const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
    PredictedLine p;
    p.ingredient = ingredient.id;
    p.name = ingredient.names.front();
    for (const auto& step : line.prepared) p.prepared.push_back(describe(step, knowledge));
    p.weighed_g = line.grams.mid;
    p.grams = line.grams.mid * (line.weighed_prepared ? 1 : preparation_yield(ingredient, line.prepared, knowledge));
    p.roles = ingredient.roles;
    p.keep = line.keep;
    return p;
}

// Each line's share of what all bring over the draws, largest first; lines that bring next to nothing are left out.
std::vector<Contribution> contributions(const Batch& batch, std::size_t draws, std::initializer_list<Amount> amounts) {
    constexpr double least = 0.005;
    std::vector<Contribution> all;
    double total = 0;
    for (std::size_t line = 0; line < batch.lines(); ++line) {
        double sum = 0;
        for (const auto amount : amounts)
            for (std::size_t i = 0; i < draws; ++i) sum += batch.part(line, amount, i);
        all.push_back({line, sum});
        total += sum;
    }
    for (auto& c : all) c.share = total > 0 ? c.share / total : 0;
    std::erase_if(all, [](const Contribution& c) { return c.share < least; });
    std::stable_sort(all.begin(), all.end(), [](const Contribution& a, const Contribution& b) { return a.share > b.share; });
    return all;
}

std::vector<std::string> notes_on(const Prediction& p, const Batch& batch, const Pantry& pantry) {
    const auto mid = [&](Property property) { return p.properties[property].mid; };
    const Reach reach{mid(Property::ph), mid(Property::fat_pct), mid(Property::salt_pct), batch.process(0).core_c,
                      mid(Property::chlorophyll_mg_kg)};
    std::vector<std::string> notes = pantry.models().validity().notes(reach);
    if (mid(Property::chlorophyll_mg_kg) > 0)
        notes.push_back("How the green keeps in the cold is extrapolated from measurements at 60 C and above");
    if (!p.lethality) notes.push_back("No published table of cooking times fits this meat and fat: only the core temperature counts");
    return notes;
}

}  // namespace

std::string describe(const Prepared& prepared, const Knowledge& knowledge) {
    const Preparation& preparation = *knowledge.preparation(prepared.preparation);
    std::string text = preparation.names.empty() ? preparation.id : preparation.names.front();
    if (!prepared.minutes) return text;
    const double minutes = *prepared.minutes;
    const auto whole = static_cast<long>(std::lround(minutes));
    return text + " " +
           (std::abs(minutes - static_cast<double>(whole)) < 1e-9 ? std::to_string(whole) : std::to_string(minutes).substr(0, 4)) + " min";
}

Result<bool> check_formula(const Formula& formula, const Knowledge& knowledge) {
    constexpr double least_meat_share = 0.2;  // below that no model here holds; judgement
    if (formula.lines.empty()) return failure(Trouble::bad_data, "the formula has no lines");
    double meat = 0, all = 0;
    for (const auto& line : formula.lines) {
        all += line.grams.mid;
        if (knowledge.ingredient(line.ingredient)->meat) meat += line.grams.mid;
    }
    if (meat <= 0) return failure(Trouble::bad_data, "the formula has no meat: expected at least one lean or fat line");
    if (meat < least_meat_share * all)
        return failure(Trouble::bad_data, "meat is under 20 % of the batch: this is no forcemeat any model here was made for");
    return true;
}

std::vector<State> states_of(const Batch& batch, const Models& models) {
    std::vector<State> states(models.count());
    for (std::size_t i = 0; i < states.size(); ++i) states[i] = models.state(batch.total(i), batch.process(i), i);
    return states;
}

std::vector<double> values_of(const std::vector<State>& states, Property property) {
    std::vector<double> values;
    values.reserve(states.size());
    for (const auto& state : states) values.push_back(state.properties[property]);
    return values;
}

Prediction predict_formula(const Formula& formula, Pantry& pantry) {
    const Batch batch(formula, pantry);
    return predict_formula(formula, batch, states_of(batch, pantry.models()), pantry);
}

Prediction predict_formula(const Formula& formula, const Batch& batch, const std::vector<State>& states, Pantry& pantry) {
    Prediction p;
    p.title = formula.title;
    for (const auto& line : formula.lines) p.lines.push_back(line_of(line, pantry.knowledge()));
    for (const auto& line : p.lines) {
        p.batch_g += line.grams;
        if (pantry.knowledge().ingredient(line.ingredient)->meat) p.meat_g += line.grams;
    }
    for (auto& line : p.lines) line.share = line.grams / p.batch_g;

    for_each_property([&](Property property) { p.properties[property] = band_of(values_of(states, property)); });
    p.raw = colour_over(states, &State::raw);
    p.rested = colour_over(states, &State::rested);
    p.cooked = colour_over(states, &State::cooked);

    const auto& heat = pantry.models().heat(0);
    p.heat_chances = word_chances(values_of(states, Property::burn_mg_kg), heat.boundaries, heat.person_sd);
    p.heat_word =
        heat_words[static_cast<std::size_t>(std::max_element(p.heat_chances.begin(), p.heat_chances.end()) - p.heat_chances.begin())];
    p.bind_word = bind_word(p.properties[Property::bind].mid);
    p.colour_word = p.rested.word;
    const auto leading = aroma_words(batch.total(0), pantry.models().aroma(0));
    for (std::size_t i = 0; i < leading.count; ++i) p.aroma.emplace_back(spelling(leading.notes[i]));

    const std::size_t draws = pantry.models().count();
    p.green_from = contributions(batch, draws, {Amount::chlorophyll_live, Amount::chlorophyll_set});
    p.heat_from = contributions(batch, draws, {Amount::capsaicinoids});
    p.acid_from = contributions(batch, draws, {Amount::titratable});
    p.salt_from = contributions(batch, draws, {Amount::salt});
    p.fat_from = contributions(batch, draws, {Amount::fat});
    p.green_life = green_life_of(formula, batch, pantry);
    p.lethality = lethality_of(formula, batch, pantry);
    p.notes = notes_on(p, batch, pantry);
    for (const auto& line : formula.lines) p.read_as.insert(p.read_as.end(), line.notes.begin(), line.notes.end());
    for (const auto& beside : formula.beside) p.read_as.push_back("\"" + beside.written + "\": " + beside.what);
    return p;
}

}  // namespace standin
