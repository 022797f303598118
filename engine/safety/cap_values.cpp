#include "safety/cap_values.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"

namespace standin {
namespace {

template <class Which>
double share_of(const Counted& batch, Which which) {
    double grams = 0;
    for (const auto& [line, ingredient] : batch.lines)
        if (which(*ingredient)) grams += line->grams;
    return batch.batch_g > 0 ? 100 * grams / batch.batch_g : 0;
}

bool binds_first(const Ingredient& i) { return !i.roles.empty() && i.roles.front() == Role::binder; }
bool is_isolate(const Ingredient& i) { return i.id == "soy-protein-isolate"; }

bool is_liquid(const Ingredient& i) {
    return i.tissue == Tissue::liquid && contains(i.roles, Role::liquid) && i.roles.front() != Role::fat;
}
bool is_water(const Ingredient& i) { return is_liquid(i) && i.composition.water.mid >= 99; }

bool is_named_binder(const Ingredient& i) {
    if (!binds_first(i) || is_isolate(i)) return false;
    if (i.family == "starches-and-grains") return true;
    return i.tissue == Tissue::dry && (i.family == "legumes" || contains(i.allergens, "soy") || contains(i.allergens, "milk"));
}

// The most fat that the word meat covers where the meat is of all these species.
std::optional<double> most_fat_pct(const std::vector<Species>& species, const std::vector<MeatWord>& words) {
    const auto in = [](const std::vector<Species>& all, Species s) { return std::find(all.begin(), all.end(), s) != all.end(); };
    for (const auto& word : words)
        if (word.species.empty() || std::all_of(species.begin(), species.end(), [&](Species s) { return in(word.species, s); }))
            return word.most_fat_pct;
    return std::nullopt;
}

}  // namespace

Counted counted(const Prediction& prediction, const Knowledge& knowledge) {
    Counted batch{present(prediction, knowledge), 0};
    for (const auto& [line, ingredient] : batch.lines) batch.batch_g += line->grams;
    return batch;
}

double added_water_pct(const Counted& batch) { return share_of(batch, is_water); }
double other_liquid_pct(const Counted& batch) {
    return share_of(batch, [](const Ingredient& i) { return is_liquid(i) && !is_water(i); });
}

double binder_pct(const Counted& batch) { return share_of(batch, is_named_binder); }
double any_binder_pct(const Counted& batch) { return share_of(batch, binds_first); }
double soy_isolate_pct(const Counted& batch) { return share_of(batch, is_isolate); }

std::optional<double> binder_share(const Counted& batch, double most_binder_pct, double most_isolate_pct) {
    const double others = binder_pct(batch), isolate = soy_isolate_pct(batch);
    if (others <= 0 || isolate <= 0) return std::nullopt;
    return others / most_binder_pct + isolate / most_isolate_pct;
}

double meat_pct(const Counted& batch) {
    return share_of(batch, [](const Ingredient& i) { return i.meat.has_value(); });
}

double legal_meat_pct(const Counted& batch, const std::vector<MeatWord>& words) {
    constexpr double whole = 100;
    double meat = 0, fat = 0;
    std::vector<Species> species;
    for (const auto& [line, ingredient] : batch.lines) {
        if (!ingredient->meat || contains(ingredient->cautions, "offal")) continue;
        meat += line->grams;
        fat += line->grams * ingredient->composition.fat.mid / whole;
        species.push_back(ingredient->meat->species);
    }
    const double most_fat = most_fat_pct(species, words).value_or(0) / whole;
    return batch.batch_g > 0 ? whole * std::min(meat, (meat - fat) / (1 - most_fat)) / batch.batch_g : 0;
}

double fennel_or_anise_pct(const Counted& batch) {
    return share_of(batch, [](const Ingredient& i) { return i.latin == "Foeniculum vulgare" || i.latin == "Pimpinella anisum"; });
}

double phosphate_pct(const Counted& batch) {
    return share_of(batch, [](const Ingredient& i) {
        return std::any_of(i.names.begin(), i.names.end(), [](const std::string& name) { return has_words(fold(name), "phosphate"); });
    });
}

}  // namespace standin
