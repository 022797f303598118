#include "evaluate/predict.hpp"

#include <algorithm>
#include <cmath>

#include "evaluate/bands.hpp"
#include "evaluate/green_life.hpp"
#include "evaluate/lethality_of.hpp"
#include "evaluate/spoons.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/index/line_name.hpp"
#include "models/cielab.hpp"
#include "models/composition.hpp"
#include "models/ready.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

template <class Get>
Band band_over(const std::vector<State>& states, Get get) {
    std::vector<double> values;
    values.reserve(states.size());
    for (const auto& state : states) values.push_back(get(state));
    return band_of(std::move(values));
}

std::string word_of(const Lab& lab, Doneness done, const BatchColour& all) {
    if (all.yellow_spice) return std::string(colour_word_yellowed(lab, done));
    if (all.red_spice) return std::string(colour_word_spiced(lab, done));
    const auto word = colour_word_beside(lab, done == Doneness::raw ? all.bare_raw : all.bare_cooked, done);
    const bool pink = word == "pink" || word == "pale pink" || word == "orange-pink";
    if (!all.brown_sauce || !pink) return std::string(word);
    return done == Doneness::raw ? "brownish pink" : "tan";
}

PredictedColour colour_over(const std::vector<State>& states, const State& nominal, Lab State::*which) {
    PredictedColour c;
    c.L = band_over(states, [&](const State& s) { return (s.*which).L; });
    c.a = band_over(states, [&](const State& s) { return (s.*which).a; });
    c.b = band_over(states, [&](const State& s) { return (s.*which).b; });
    c.lab = nominal.*which;
    c.hex = hex_of(c.lab);
    return c;
}

// What acid has set looks otherwise than the states say, which variants are held to.
void put_set(Prediction& p, const Lab& looks) {
    PredictedColour& c = p.rested;
    const auto move = [](Band& band, double by) { band = {band.low + by, band.mid + by, band.high + by}; };
    const double redder = looks.a - c.lab.a;
    move(c.L, looks.L - c.lab.L);
    move(c.a, redder);
    move(c.b, looks.b - c.lab.b);
    move(p.properties[Property::greenness], -redder);
    p.nominal[Property::greenness] -= redder;
    c.lab = looks;
    c.hex = hex_of(looks);
}

// Where pieces of leaf are seen, the word is of the mass between them; what an instrument reads stays as it is.
void name_colours(Prediction& p, const NominalBatch& batch, const Models& models) {
    const ColourParameters& colour = models.colour_parameters();
    const double ph = models.ph(batch.total());
    BatchColour seen = models.colour(batch.total(), ph, batch.process());
    if (seen.set_rested > 0) put_set(p, seen.looks_rested);
    const auto flecks = [&](double kept) { return std::string(fleck_word(seen.flecks_mg_kg, kept, colour)); };
    p.raw.flecks = flecks(1);
    p.rested.flecks = flecks(seen.flecks_kept_rested);
    p.cooked.flecks = flecks(seen.flecks_kept_cooked);
    if (!p.raw.flecks.empty()) seen = models.colour(between_flecks(batch.total(), colour, batch.process().leaf_paste), ph, batch.process());
    constexpr double looks_set = 0.3;  // what acid has set so far is opaque to the eye; judgement
    p.raw.word = word_of(seen.raw, Doneness::raw, seen);
    const bool spiced = seen.red_spice || seen.yellow_spice;
    p.rested.word = seen.set_rested < looks_set ? word_of(seen.looks_rested, Doneness::raw, seen)
                    : spiced                    ? word_of(seen.looks_rested, Doneness::cooked, seen)
                                                : std::string(colour_word_set(seen.looks_rested));
    if (p.rested.word == "pink") p.rested.word = colour_word_beside(seen.looks_rested, seen.bare_cooked, Doneness::cooked);
    p.cooked.word = word_of(seen.cooked, Doneness::cooked, seen);
    // What nobody sees beside the other has no other name, though a limit of words lies between them.
    constexpr double seen_from = 1;  // dE00, on flat patches under good light
    if (ciede2000(seen.raw, seen.looks_rested) < seen_from) p.rested.word = p.raw.word;
    // Green flecks in green are seen by nobody.
    for (auto* colour : {&p.raw, &p.rested, &p.cooked})
        if (colour->flecks == colour->word) colour->flecks.clear();
}

/// Hue goes round: each draw is counted from the middle, the short way, so that the band may reach below 0 or beyond 360 degrees.
std::vector<double> hues(const std::vector<State>& states, double middle) {
    constexpr double turn = 360;
    std::vector<double> values = values_of(states, Property::hue_deg);
    for (double& hue : values) hue = middle + std::remainder(hue - middle, turn);
    return values;
}

PredictedLine line_of(const Line& line, const Knowledge& knowledge) {
    const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
    PredictedLine p;
    p.ingredient = ingredient.id;
    p.name = line_name(line, knowledge);
    for (const auto& step : line.prepared) p.prepared.push_back(describe(step, knowledge));
    p.weighed_g = line.grams.mid;
    p.grams = line.grams.mid * (line.weighed_prepared ? 1 : preparation_yield(ingredient, line.prepared, knowledge));
    p.roles = ingredient.roles;
    p.keep = line.keep;
    p.declared = line.declared;
    p.weighed_prepared = line.weighed_prepared;
    for (const auto& step : line.ready) p.ready.push_back(describe(step, knowledge));
    for (const auto& step : still_to_do(line)) p.still.push_back(describe(step, knowledge));
    p.lying_g = lying_grams(line, knowledge);
    p.written = line.written;
    p.spoons = in_spoons(ingredient, line.grams.mid);
    return p;
}

// What is eaten with the mass and is no part of it.
void put_beside(Prediction& p, const Formula& formula, const Knowledge& knowledge) {
    for (const auto& beside : formula.beside) {
        if (beside.kind == BesideKind::casing) p.casings.push_back(beside);
        const Ingredient* food = beside.ingredient.empty() ? nullptr : knowledge.ingredient(beside.ingredient);
        if (!food) continue;
        PredictedLine line;
        line.ingredient = food->id;
        line.name = food->names.front();
        line.roles = food->roles;
        line.written = beside.written;
        p.beside.push_back(std::move(line));
    }
}

// Each line's share of what all bring, largest first; lines that bring next to nothing are left out.
std::vector<Contribution> contributions(const NominalBatch& batch, std::initializer_list<Amount> amounts) {
    constexpr double least = 0.005;
    std::vector<Contribution> all;
    double total = 0;
    for (std::size_t line = 0; line < batch.lines(); ++line) {
        double sum = 0;
        for (const auto amount : amounts) sum += batch.part(line)[amount];
        all.push_back({line, sum});
        total += sum;
    }
    for (auto& c : all) c.share = total > 0 ? c.share / total : 0;
    std::erase_if(all, [](const Contribution& c) { return c.share < least; });
    std::stable_sort(all.begin(), all.end(), [](const Contribution& a, const Contribution& b) { return a.share > b.share; });
    return all;
}

// What melts in the pan sets again on the plate: a sausage to be eaten cold is another one.
std::optional<Reason> served_cold(const NominalBatch& batch) {
    if (batch.total()[Amount::held_chilled] <= 0) return std::nullopt;
    const BatchBind bind = batch.bind();
    return make_reason(ReasonKind::sets_cold, {{"bind", bind.bind, bind.bind_served_cold, "of 100"},
                                               {"firmness", bind.firmness, bind.firmness_served_cold, "of 100"}});
}

// Raw leaf of which nobody says how it is cut is told of where it colours the mass.
void tell_cut(std::vector<Reason>& notes, const Formula& formula, const NominalBatch& batch, const Evaluator& evaluator) {
    constexpr double chopped_to = 0.2, blended_from = 0.8;  // of the way to a paste; judgement
    const Knowledge& knowledge = evaluator.knowledge();
    const double paste = batch.process().leaf_paste.value_or(0);
    const std::string by_share = paste < chopped_to ? "chopped" : paste < blended_from ? "partly" : "blended";
    const double seen = evaluator.nominal().models().colour_parameters().flecks_from * batch.total()[Amount::mass] / 1000;  // mg
    for (const auto cut : {LeafCut::by_share, LeafCut::ground}) {
        Reason told = make_reason(ReasonKind::leaf_cut);
        told.role = cut == LeafCut::ground ? "ground" : by_share;
        for (std::size_t l = 0; l < batch.lines(); ++l) {
            const Ingredient& food = *knowledge.ingredient(formula.lines[l].ingredient);
            const bool so =
                batch.part(l)[Amount::chlorophyll_live] >= seen && leaf_cut_presumed(food, formula.lines[l].prepared, knowledge) == cut;
            if (so) told.foods.push_back(food.names.front());
        }
        if (!told.foods.empty()) notes.push_back(std::move(told));
    }
}

std::vector<Reason> notes_on(const Prediction& p, const Formula& formula, const NominalBatch& batch, const Validity& validity,
                             const CookJudged& judged) {
    const auto& nominal = p.nominal;
    std::vector<Reason> notes =
        validity.notes({nominal[Property::ph], nominal[Property::fat_pct], nominal[Property::salt_pct], batch.process().cooked_to_c,
                        nominal[Property::chlorophyll_mg_kg], batch.process().plate_mm});
    // In water or in crumbs nothing hangs on the width.
    const Cook cook = batch.process().cook;
    if (formula.process.diameter_mm && cook != Cook::poach && cook != Cook::loose) notes.push_back(make_reason(ReasonKind::shape_unknown));
    if (nominal[Property::chlorophyll_mg_kg] > 0) {
        constexpr double measured_from_c = 60;  // of the rates of fading in knowledge/models/colour.json
        Reason cold;
        cold.kind = ReasonKind::cold_green;
        cold.figures = {{"measured from", {}, measured_from_c, "C"}};
        notes.push_back(std::move(cold));
    }
    if (const auto cold = served_cold(batch)) notes.push_back(*cold);
    if (judged.why_not) notes.push_back(*judged.why_not);
    return notes;
}

// What goes by the middle of everything: words and shares.
void put_words(Prediction& p, const NominalBatch& batch, const State& state, const Models& models) {
    const double burn[] = {state.properties[Property::burn_mg_kg]};
    const auto likely = word_chances(burn, models.heat().boundaries, models.heat().person_sd);
    p.heat_word = heat_words[static_cast<std::size_t>(std::max_element(likely.begin(), likely.end()) - likely.begin())];
    p.bind_word = bind_word(state.properties[Property::bind]);
    p.colour_word = p.rested.word;
    const auto leading = aroma_words(batch.total(), models.aroma());
    for (std::size_t i = 0; i < leading.count; ++i) p.aroma.emplace_back(spelling(leading.notes[i]));
    p.green_from = contributions(batch, {Amount::chlorophyll_live, Amount::chlorophyll_set});
    p.heat_from = contributions(batch, {Amount::capsaicinoids});
    p.acid_from = contributions(batch, {Amount::titratable});
    p.salt_from = contributions(batch, {Amount::salt});
    p.fat_from = contributions(batch, {Amount::fat});
}

}  // namespace

std::string describe(const Prepared& prepared, const Knowledge& knowledge) {
    const Preparation& preparation = *knowledge.preparation(prepared.preparation);
    std::string text = preparation.names.empty() ? preparation.id : preparation.names.front();
    return prepared.minutes ? text + " " + trimmed_text(*prepared.minutes, 2) + " min" : text;
}

std::vector<double> values_of(const std::vector<State>& states, Property property) {
    std::vector<double> values;
    values.reserve(states.size());
    for (const auto& state : states) values.push_back(state.properties[property]);
    return values;
}

Band band_around(double nominal, std::vector<double> draws) {
    const Band band = band_of(std::move(draws));
    return {std::min(band.low, nominal), nominal, std::max(band.high, nominal)};
}

Prediction weights_only(const Formula& formula, const Knowledge& knowledge) {
    Prediction p;
    p.title = formula.title;
    for (const auto& line : formula.lines) p.lines.push_back(line_of(line, knowledge));
    for (const auto& line : p.lines) {
        p.batch_g += line.grams;
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        if (food.meat || belongs(food, "rendered-fat", knowledge)) p.meat_g += line.grams;
    }
    for (auto& line : p.lines) line.share = line.grams / p.batch_g;
    put_beside(p, formula, knowledge);
    for (const auto& line : formula.lines) p.read_as.insert(p.read_as.end(), line.notes.begin(), line.notes.end());
    p.read_as.insert(p.read_as.end(), formula.read_as.begin(), formula.read_as.end());
    return p;
}

void put_bands(Prediction& p, const State& middle, const std::vector<State>& states) {
    p.nominal = middle.properties;
    for_each_property([&](Property property) {
        const double mid = middle.properties[property];
        p.properties[property] = band_around(mid, property == Property::hue_deg ? hues(states, mid) : values_of(states, property));
    });
}

Prediction predict_formula(const Formula& formula, const Evaluator& evaluator) {
    const SampledBatch batch(formula, evaluator.sampled());
    return predict_formula(formula, batch, batch.states(), evaluator);
}

Prediction predict_formula(const Formula& formula, const SampledBatch& batch, const std::vector<State>& states,
                           const Evaluator& evaluator) {
    const Models& models = evaluator.nominal().models();
    const NominalBatch nominal(formula, evaluator.nominal());
    const State middle = nominal.state();

    Prediction p = weights_only(formula, evaluator.knowledge());
    put_bands(p, middle, states);
    p.raw = colour_over(states, middle, &State::raw);
    p.rested = colour_over(states, middle, &State::rested);
    p.cooked = colour_over(states, middle, &State::cooked);
    name_colours(p, nominal, models);
    p.heat_chances = word_chances(values_of(states, Property::burn_mg_kg), models.heat().boundaries, models.heat().person_sd);
    put_words(p, nominal, middle, models);
    p.green_life = green_life_of(formula, nominal, batch, evaluator);
    const CookJudged judged = lethality_of(formula, nominal, evaluator.nominal());
    p.lethality = judged.lethality;
    p.warming_h = judged.warming_h;
    p.notes = notes_on(p, formula, nominal, models.validity(), judged);
    tell_cut(p.notes, formula, nominal, evaluator);
    p.declared = formula.declared;
    for (const auto& beside : formula.beside) {
        p.read_as.push_back(why_beside(beside));
        p.read_as.back().about = beside.written;
    }
    return p;
}

}  // namespace standin
