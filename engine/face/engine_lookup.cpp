// What the knowledge says about a word, ready to be shown.
#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "face/inside.hpp"
#include "formula/food/namesakes.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/index/kind_heads.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/index/kitchen_overlay.hpp"
#include "knowledge/index/season.hpp"
#include "knowledge/records/references.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "safety/cautions.hpp"
#include "standin/number_text.hpp"
#include "substitute/usual.hpp"

namespace standin {
namespace {

class Facts {
public:
    Facts(const Ingredient& ingredient, const Knowledge& knowledge, const Options& options)
        : i_(ingredient), knowledge_(knowledge), options_(options) {}

    IngredientFacts all() const {
        IngredientFacts f;
        f.id = i_.id;
        f.family = i_.family;
        f.latin = i_.latin;
        f.note = i_.note;
        f.storage = i_.storage;
        f.stand_in = i_.composition.stand_in;
        f.names = i_.names;
        f.roles = i_.roles;
        f.season = season_of(i_, options_.season_shift);
        f.allergens = i_.allergens;
        f.may_hold = i_.may_hold;
        if (i_.sulphites && i_.sulphites->band.high > 0 && !contains(f.allergens, std::string("sulphite")))
            f.allergens.emplace_back("sulphite");
        f.cautions = cautions_of_ingredient(i_, knowledge_, options_.rules);
        f.composition = composition();
        f.doses = doses();
        for (const auto& m : i_.measures)
            f.measures.push_back(fact(m.measure + (m.note.empty() ? "" : ", " + m.note), m.grams, "g", m.source));
        for (const auto& share : i_.aroma) f.aroma.emplace_back(spelling(share.note), share.intensity);
        for (const auto& swap : knowledge_.records().swaps) {
            if (swap.from == i_.id) f.swaps_out.push_back(swap_fact(swap));
            if (swap.to == i_.id && swap.from != i_.id) f.swaps_in.push_back(swap_fact(swap));
        }
        const auto closest = [](const SwapFact& a, const SwapFact& b) { return a.closeness > b.closeness; };
        std::stable_sort(f.swaps_out.begin(), f.swaps_out.end(), closest);
        std::stable_sort(f.swaps_in.begin(), f.swaps_in.end(), closest);
        for (const auto& reference : sources_of(i_))
            if (const auto* source = knowledge_.source(reference)) f.sources.emplace_back(reference, source->cite);
        return f;
    }

private:
    Fact fact(std::string what, const Band& value, std::string unit, const std::string& reference) const {
        const auto* source = knowledge_.source(reference);
        return {std::move(what),
                value,
                std::move(unit),
                reference,
                source ? source->cite : "",
                is_kitchen_source(reference) ? "kitchen"
                : source                     ? std::string(spelling(source->kind))
                                             : ""};
    }

    std::vector<Fact> composition() const {
        const auto& c = i_.composition;
        std::vector<Fact> all;
        const auto add = [&](const char* what, const Band& value, const char* unit) { all.push_back(fact(what, value, unit, c.source)); };
        add("water_g", c.water, "g/100 g");
        add("protein_g", c.protein, "g/100 g");
        add("fat_g", c.fat, "g/100 g");
        add("carbohydrate_g", c.carbohydrate, "g/100 g");
        if (c.fibre) add("fibre_g", *c.fibre, "g/100 g");
        if (c.sugars) add("sugars_g", *c.sugars, "g/100 g");
        add("ash_g", c.ash, "g/100 g");
        add("salt_g", c.salt, "g/100 g");
        if (c.sodium_mg) add("sodium_mg", *c.sodium_mg, "mg/100 g");
        if (c.potassium_mg) add("potassium_mg", *c.potassium_mg, "mg/100 g");
        if (c.alcohol.mid > 0) add("alcohol_g", c.alcohol, "g/100 g");
        if (c.acid.mid > 0) add("acid_g", c.acid, "g/100 g");
        return all;
    }

    std::vector<Fact> doses() const {
        std::vector<Fact> all;
        const auto add = [&](const char* what, const std::optional<Quantity>& q) {
            if (q) all.push_back(fact(what, q->band, q->unit, q->source));
        };
        add("chlorophyll", i_.chlorophyll);
        add("capsaicinoids", i_.capsaicinoids);
        add("pungency", i_.pungency);
        if (i_.acidity) {
            add("ph", i_.acidity->ph);
            add("titratable", i_.acidity->titratable);
            add("buffer", i_.acidity->buffer);
        }
        if (i_.binding) {
            add("water_bound", i_.binding->water);
            add("fat_bound", i_.binding->fat);
        }
        if (i_.meat) {
            add("bind", i_.meat->bind);
            add("buffer_scale", i_.meat->buffer_scale);
        }
        add("strength", i_.strength);
        add("edible", i_.edible);
        add("sulphites", i_.sulphites);
        add("most_g_per_kg", i_.most_g_per_kg);
        all.push_back(fact("usual_g_per_kg", exactly(usual_grams(i_, knowledge_)), "g/kg", "judgement"));
        return all;
    }

    static SwapFact swap_fact(const Swap& s) {
        std::string basis(spelling(s.basis));
        if (s.ratio) basis += " x " + figures_text(s.ratio->band.mid, 3);
        return {s.role, s.from, s.to, std::move(basis), s.note, s.source, s.prepared, s.needs, s.closeness};
    }

    const Ingredient& i_;
    const Knowledge& knowledge_;
    const Options& options_;
};

// A word of a kind ("cheese", "fish") means all of it, but for the sauces that hold some.
void ask_which(LookupAnswer& answer, const Kind& kind, const Knowledge& knowledge) {
    answer.question = "any of several foods: say which";
    for (const auto* food : foods_meant(kind, knowledge)) answer.nearest.push_back(food->names.front());
}

// "Reis" for rice, which is a kind: by the kind's own words in other tongues, or by way of the English that the reader knows.
const Kind* kind_said(std::string_view word, const Knowledge& knowledge) {
    if (const auto* kind = kind_in_any_tongue(word, knowledge)) return kind;
    for (const auto& tongue : knowledge.tongues())
        if (const auto* english = knowledge.english(tongue, hazard_fold(word)))
            if (const auto* kind = kind_named(*english, knowledge)) return kind;
    return nullptr;
}

constexpr std::size_t most_shown = 3;  // foods one word may mean and still be shown together

// What is no name by itself is read as the line of a formula would be, so that both know the same words.
void read_as_a_line(LookupAnswer& answer, std::string_view word, const Knowledge& knowledge, const Options& options) {
    const auto read = [&](const char* amount) { return read_line(amount + std::string(word), Origin("", {1, 1}), knowledge); };
    auto line = read("100 g ");
    const Error asked = line ? Error{} : line.error();
    const bool unknown = asked.not_known != NotKnown::nothing;
    if (!line && !unknown) line = read("1 ");  // fruit by the piece: its juice, where its weight would leave open what of it is meant
    if (line) {
        answer.matches.push_back(Facts(*knowledge.ingredient(line->line.ingredient), knowledge, options).all());
        for (const auto& doubt : line->doubts) answer.read_as += (answer.read_as.empty() ? "" : "; ") + in_full(doubt.what);
        return;
    }
    const auto* kind = unknown ? kind_named(word, knowledge) : nullptr;
    if (!kind && unknown) kind = kind_said(word, knowledge);
    if (kind) return ask_which(answer, *kind, knowledge);
    answer.nearest = asked.hints;
    if (unknown) return;
    // Where a formula must say which, whoever looks it up sees them all.
    std::vector<const Ingredient*> meant;
    for (const auto& hint : asked.hints)
        if (const auto* food = knowledge.ingredient_named(hint)) meant.push_back(food);
    if (meant.empty() || meant.size() > most_shown) {
        answer.question = asked.message;
        return;
    }
    for (const auto* food : meant) answer.matches.push_back(Facts(*food, knowledge, options).all());
    answer.read_as = asked.message + " in a formula";
}

}  // namespace

LookupAnswer Engine::lookup(std::string_view word, const Setting& setting) const {
    LookupAnswer answer;
    if (const auto danger = danger_in(word, inside_->knowledge)) {
        answer.refused = danger->message;
        return answer;
    }
    const Options options = inside_->asked(setting).value_or(inside_->options);
    const auto* found = shared_by_two_foods(word, inside_->knowledge) ? nullptr : inside_->knowledge.ingredient_named(word);
    if (found) answer.matches.push_back(Facts(*found, inside_->knowledge, options).all());
    else read_as_a_line(answer, word, inside_->knowledge, options);
    if (!answer.matches.empty() || !answer.nearest.empty()) return answer;
    if (const auto* meant = inside_->knowledge.ingredient_meant(word)) answer.nearest = {meant->names.front()};
    else answer.nearest = inside_->knowledge.nearest_ingredients(word);
    return answer;
}

}  // namespace standin
