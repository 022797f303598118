#include "worksheet/nutrition.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/draws.hpp"
#include "evaluate/predict.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr double per = 100;  // g
constexpr double mg_a_gram = 1000;

// In 100 g, in grams.
struct Amounts100 {
    double fat = 0, saturates = 0, protein = 0, carbohydrate = 0, fibre = 0, sugars = 0, alcohol = 0, sodium = 0;
};

struct FatShares {
    std::array<double, count_of<Species>> saturates;  // of the fat of each meat
    double other_saturates = 0, alcohol_kept = 0;
};

Amounts100 raw_amounts(const Material& m, const FatShares& shares) {
    Amounts100 a;
    a.fat = m.share(Amount::fat, per);
    a.protein = m.share(Amount::protein, per);
    a.fibre = m.share(Amount::fibre, per);
    a.carbohydrate = std::max(0.0, m.share(Amount::carbohydrate, per) - a.fibre);
    a.sugars = std::min(a.carbohydrate, m.share(Amount::sugars, per));
    a.alcohol = m.share(Amount::alcohol, per);
    a.sodium = m.share(Amount::sodium, per);
    double meat = 0, saturated = 0;
    for (std::size_t s = 0; s < count_of<Species>; ++s) {
        const double grams = m[static_cast<Species>(s)];
        meat += grams;
        saturated += grams * shares.saturates[s];
    }
    const double meat_fat = std::min(a.fat, m.share(Amount::meat_fat, per));
    a.saturates = (meat > 0 ? meat_fat * saturated / meat : 0) + (a.fat - meat_fat) * shares.other_saturates;
    return a;
}

// `loss_pct` of the raw mass; fat by the cooking model.
Amounts100 cooked_amounts(const Amounts100& raw, double loss_pct, double cooked_fat, double alcohol_kept) {
    const double up = 1 / (1 - loss_pct / per);
    Amounts100 a = raw;
    a.fat = cooked_fat;
    a.saturates = raw.fat > 0 ? raw.saturates * cooked_fat / raw.fat : 0;
    for (double* stays : {&a.protein, &a.carbohydrate, &a.fibre, &a.sugars, &a.sodium}) *stays *= up;
    a.alcohol = raw.alcohol * up * alcohol_kept;
    return a;
}

double of(const Amounts100& a, const std::string& word) {
    if (word == "fat") return a.fat;
    if (word == "protein") return a.protein;
    if (word == "carbohydrate") return a.carbohydrate;
    if (word == "fibre") return a.fibre;
    if (word == "alcohol") return a.alcohol;
    return 0;
}

double row_value(const Amounts100& a, const std::string& id, const NutritionRule& rule) {
    double kj = 0, kcal = 0;
    for (const auto& factor : rule.energy) {
        kj += factor.kj * of(a, factor.of);
        kcal += factor.kcal * of(a, factor.of);
    }
    if (id == "energy_kj") return kj;
    if (id == "energy_kcal") return kcal;
    if (id == "fat_g") return a.fat;
    if (id == "saturates_g") return a.saturates;
    if (id == "carbohydrate_g") return a.carbohydrate + (rule.fibre_in_carbohydrate ? a.fibre : 0);
    if (id == "sugars_g") return a.sugars;
    if (id == "fibre_g") return a.fibre;
    if (id == "protein_g") return a.protein;
    if (id == "salt_g") return a.sodium * rule.salt_per_sodium;
    return a.sodium * mg_a_gram;
}

std::string unit_of_row(const std::string& id) {
    return id == "energy_kj" ? "kJ" : id == "energy_kcal" ? "kcal" : id == "sodium_mg" ? "mg" : "g";
}

// What the parameters say at every draw.
std::vector<FatShares> shares_of(const Knowledge& knowledge, const Draws& draws) {
    std::vector<FatShares> all(draws.count());
    const auto put = [&](const std::string& id, auto field) {
        const Spread spread(knowledge.parameter(id));
        const auto& deviates = draws.of(id);
        for (std::size_t d = 0; d < all.size(); ++d) field(all[d]) = spread.at(deviates[d]);
    };
    for (std::size_t i = 0; i < count_of<Species>; ++i)
        put("nutrition.saturates." + std::string(spelling(static_cast<Species>(i))),
            [i](FatShares& s) -> double& { return s.saturates.at(i); });
    put("nutrition.saturates.other", [](FatShares& s) -> double& { return s.other_saturates; });
    put("nutrition.alcohol-kept", [](FatShares& s) -> double& { return s.alcohol_kept; });
    return all;
}

FatShares middle_shares(const Knowledge& knowledge) {
    FatShares s{};
    for (std::size_t i = 0; i < count_of<Species>; ++i)
        s.saturates.at(i) = knowledge.parameter("nutrition.saturates." + std::string(spelling(static_cast<Species>(i)))).mid;
    s.other_saturates = knowledge.parameter("nutrition.saturates.other").mid;
    s.alcohol_kept = knowledge.parameter("nutrition.alcohol-kept").mid;
    return s;
}

struct Both {
    Amounts100 raw, cooked;
};

Both both_of(const Material& total, const State& state, const FatShares& shares) {
    const Amounts100 raw = raw_amounts(total, shares);
    return {raw, cooked_amounts(raw, state.properties[Property::cook_loss_pct], state.properties[Property::cooked_fat_pct],
                                shares.alcohol_kept)};
}

std::string in_steps(double value, const RoundingRule& rule) {
    const double step = value < rule.fine_below ? rule.fine_to : rule.to;
    return trimmed_text(std::round(value / step) * step, 3);
}

}  // namespace

std::string rounded_as(double value, const std::string& row, const std::string& unit, const NutritionRule& rule) {
    const auto found = std::find_if(rule.rounding.begin(), rule.rounding.end(), [&](const RoundingRule& r) { return r.of == row; });
    if (found == rule.rounding.end()) return fixed_text(value, unit == "g" ? 1 : 0) + " " + unit;
    if (value <= found->nothing_upto) return "0 " + unit;
    if (value < found->little_below) return "less than " + trimmed_text(found->little_below, 3) + " " + unit;
    return in_steps(value, *found) + " " + unit;
}

std::vector<NutritionRow> nutrition_of(const Formula& formula, const NutritionRule& rule, const Evaluator& evaluator) {
    const Knowledge& knowledge = evaluator.knowledge();
    const NominalBatch nominal(formula, evaluator.nominal());
    const Both middle = both_of(nominal.total(), nominal.state(), middle_shares(knowledge));
    const SampledBatch batch(formula, evaluator.sampled());
    const auto shares = shares_of(knowledge, Draws(batch.count(), evaluator.sampled().seed()));
    std::vector<Both> draws;
    draws.reserve(batch.count());
    for (std::size_t d = 0; d < batch.count(); ++d) draws.push_back(both_of(batch.total(d), batch.state(d), shares[d]));
    std::vector<NutritionRow> rows;
    for (const auto& line : rule.rows) {
        const auto band = [&](Amounts100 Both::*state) {
            std::vector<double> values;
            values.reserve(draws.size());
            for (const auto& draw : draws) values.push_back(row_value(draw.*state, line.id, rule));
            return band_around(row_value(middle.*state, line.id, rule), std::move(values));
        };
        NutritionRow row{line.id, line.name, unit_of_row(line.id), band(&Both::raw), band(&Both::cooked), {}, {}};
        row.raw_says = rounded_as(row.raw.mid, row.id, row.unit, rule);
        row.cooked_says = rounded_as(row.cooked.mid, row.id, row.unit, rule);
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace standin
