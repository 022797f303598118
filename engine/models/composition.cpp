#include "models/composition.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/index/plausible.hpp"
#include "knowledge/records/tissue.hpp"
#include "models/fat.hpp"
#include "models/heat.hpp"

namespace standin {
namespace {

// One gram on its way through the preparations; grams, mg, or shares of what the raw food would bring.
struct Food {
    double mass = 1, water = 0, protein = 0, fat = 0, carbohydrate = 0, fibre = 0, ash = 0, sugars = 0, sodium = 0, alcohol = 0, acid = 0,
           salt = 0;
    double chlorophyll = 0, pheophytin = 0, capsaicinoids = 0;
    double acid_share = 1, aroma_share = 1, binding_share = 1, acetic_mmol = 0;
    bool denatured = false;

    double dry() const { return protein + fat + carbohydrate + ash + alcohol + acid + salt; }
};

// The deviates of one uncertain quantity, fetched once for all draws.
class Uncertain {
public:
    Uncertain(const Band& band, const std::string& name, const Draws& draws)
        : middle_(band.mid), spread_(band), deviates_(band.low == band.high ? nullptr : &draws.of(name)) {}
    double operator()(std::size_t draw) const { return deviates_ ? spread_.at((*deviates_)[draw]) : middle_; }

private:
    double middle_;
    Spread spread_;
    const std::vector<double>* deviates_;
};

constexpr double sigmas_to_the_end = 1.645;  // standard normal quantile of 0.95, where bands end

// The record of another food tells less: each band reaches further, one that was exact too.
Band as_like(const Band& band, const Portion& portion) {
    return portion.likeness ? Band{band.low * portion.likeness->low, band.mid, band.high * portion.likeness->high} : band;
}

class RawFood {
public:
    RawFood(const Portion& portion, const Knowledge& knowledge, const Draws& draws)
        : ingredient_(portion.ingredient),
          fat_(portion.fat_pct.value_or(as_like(fat_spread(ingredient_, knowledge), portion)), name("fat"), draws),
          protein_(as_like(spread(ingredient_.composition.protein, "protein", knowledge), portion), name("protein"), draws),
          carbohydrate_(as_like(spread(ingredient_.composition.carbohydrate, "carbohydrate", knowledge), portion), name("carbohydrate"),
                        draws),
          ash_(as_like(spread(ingredient_.composition.ash, "ash", knowledge), portion), name("ash"), draws),
          chlorophyll_(as_like(band_or_nothing(ingredient_.chlorophyll), portion), name("chlorophyll"), draws),
          capsaicinoids_(portion.heat_mg_kg.value_or(as_like(band_or_nothing(ingredient_.capsaicinoids), portion)),
                         name(portion.heat_mg_kg && ingredient_.lot_sigma ? "lot" : "capsaicinoids"), draws),
          lot_is_known_(portion.heat_mg_kg.has_value()),
          acid_pct_(portion.acid_pct ? portion.acid_pct->mid : ingredient_.composition.acid.mid) {
        if (!ingredient_.pod_sigma || !ingredient_.lot_sigma) return;
        lot_ = &draws.of(name("lot"));
        pods_ = &draws.of(name("pods"));
        pod_sigma_ = pod_sigma_of_blend(ingredient_.pod_sigma->band.mid, portion.pods);
        if (lot_is_known_) pod_sigma_ *= knowledge.parameter("kitchen.heat.own-pods").mid;
        lot_sigma_ = ingredient_.lot_sigma->band.mid;
        if (portion.likeness) lot_sigma_ = std::hypot(lot_sigma_, std::log(portion.likeness->high) / sigmas_to_the_end);
    }

    Food draw(std::size_t i) const {
        const auto& c = ingredient_.composition;
        Food f;
        const double salted = c.salt.mid / 100;
        f.fat = std::min(fat_(i), 100.0) / 100;
        const double lean = c.fat.mid < 100 ? (1 - f.fat) / (1 - c.fat.mid / 100) : 0;
        // Salt put in by hand is part of the table's ash, or of its carbohydrate by difference where there is not ash enough.
        const double ash = ash_(i) / 100 * lean;
        f.salt = salted * lean;
        f.ash = std::max(0.0, ash - f.salt);
        f.protein = protein_(i) / 100 * lean;
        f.carbohydrate = carbohydrate_(i) / 100 * lean;
        f.alcohol = c.alcohol.mid / 100 * lean;
        f.acid = acid_pct_ / 100 * lean;
        f.fibre = c.fibre ? c.fibre->mid / 100 * lean : 0;
        f.sugars = c.sugars ? c.sugars->mid / 100 * lean : 0;
        f.sodium = c.sodium_mg ? c.sodium_mg->mid / 1e5 * lean : 0;
        close(f);
        f.chlorophyll = chlorophyll_(i) / 1000;
        f.capsaicinoids = heat(i) / 1000;
        f.denatured = ingredient_.tissue == Tissue::dry;
        return f;
    }

    /// mg/kg of the food as it is, or as it was weighed where the maker knows that.
    double heat(std::size_t i) const { return lot_ ? pods_heat(i) : capsaicinoids_(i); }

private:
    std::string name(const char* what) const { return ingredient_.id + " " + what; }

    static Band band_or_nothing(const std::optional<Quantity>& q) { return q ? q->band : Band{}; }

    // A value without a spread of its own gets the one that food tables have in general.
    static Band spread(const Band& band, const std::string& what, const Knowledge& knowledge) {
        if (band.low != band.high || band.mid == 0 || band.mid >= 99) return band;
        const Band& relative = knowledge.parameter("composition.spread." + what);
        return {band.mid * relative.low, band.mid, band.mid * relative.high};
    }

    // One cut of meat differs from the next by points of fat, so that a share of a lean cut's little fat would say too little.
    static Band fat_spread(const Ingredient& ingredient, const Knowledge& knowledge) {
        const Band& table = ingredient.composition.fat;
        Band band = spread(table, "fat", knowledge);
        if (!ingredient.meat || table.low != table.high) return band;
        const Band& points = knowledge.parameter("composition.spread.meat-fat");
        band.low = std::min(band.low, std::max(table.mid / 3, table.mid + points.low));
        band.high = std::max(band.high, table.mid + points.high);
        return band;
    }

    // Water takes up what the draws of the solids leave; where they leave less than none they are scaled to fit.
    static void close(Food& f) {
        f.water = 1 - f.dry();
        if (f.water >= 0) return;
        const double scale = 1 / f.dry();
        for (double* part : {&f.protein, &f.fat, &f.carbohydrate, &f.ash, &f.alcohol, &f.acid, &f.salt}) *part *= scale;
        f.water = 0;
    }

    // The lot log-normal about the middle, the pods log-normal about their lot.
    double pods_heat(std::size_t i) const {
        const double lot = lot_is_known_ ? capsaicinoids_(i) : ingredient_.capsaicinoids->band.mid * std::exp(lot_sigma_ * (*lot_)[i]);
        return lot * std::exp(pod_sigma_ * (*pods_)[i]);
    }

    const Ingredient& ingredient_;
    Uncertain fat_, protein_, carbohydrate_, ash_, chlorophyll_, capsaicinoids_;
    bool lot_is_known_ = false;
    double acid_pct_ = 0;
    const std::vector<double>* lot_ = nullptr;
    const std::vector<double>* pods_ = nullptr;
    double pod_sigma_ = 0, lot_sigma_ = 0;
};

// One preparation, ready to be applied draw by draw.
class Step {
public:
    Step(const Prepared& prepared, Tissue tissue, const Knowledge& knowledge, const Draws& draws)
        : preparation_(*knowledge.preparation(prepared.preparation)),
          effect_(*effect_on(preparation_, tissue)),
          yield_(at_minutes(effect_.yield, minutes(prepared)), name(tissue, "yield"), draws),
          water_left_(effect_.water_left.value_or(Band{}), name(tissue, "water left"), draws) {
        for (std::size_t k = 0; k < count_of<Kept>; ++k) {
            const auto what = static_cast<Kept>(k);
            kept_.emplace_back(kept_share(effect_, what, minutes(prepared)), name(tissue, spelling(what)), draws);
        }
        const auto said = [&](Kept what) {
            return std::any_of(effect_.kept.begin(), effect_.kept.end(), [&](const KeptShare& k) { return k.what == what; });
        };
        sugars_with_solids_ = !said(Kept::sugars);
        salt_with_solids_ = !said(Kept::salt);
    }

    void apply(Food& f, std::size_t i) const {
        const double solids = kept(Kept::solids, i);
        f.protein *= solids;
        f.carbohydrate *= solids;
        f.fibre *= solids;
        f.ash *= solids;
        f.sodium *= solids;
        f.alcohol *= solids;
        f.acid *= kept(Kept::acid, i);
        f.fat *= kept(Kept::fat, i);
        f.sugars *= sugars_with_solids_ ? solids : kept(Kept::sugars, i);
        f.salt *= salt_with_solids_ ? solids : kept(Kept::salt, i);
        // Drying stops at a share of water; a food drier than that stays as it is.
        const double mass = effect_.water_left ? std::min(f.mass, f.dry() / (1 - water_left_(i))) : f.mass * yield_(i);
        f.salt += effect_.adds_salt * mass;
        f.sodium += effect_.adds_salt * mass * sodium_in_salt;
        const double kept_green = kept(Kept::chlorophyll, i);
        f.pheophytin += f.chlorophyll * (1 - kept_green);
        f.chlorophyll *= kept_green;
        f.capsaicinoids *= kept(Kept::capsaicinoids, i);
        f.acid_share *= kept(Kept::acid, i);
        f.aroma_share *= kept(Kept::aroma, i);
        f.binding_share *= kept(Kept::binding, i);
        f.acetic_mmol += effect_.adds_acetic_mmol * mass;
        f.mass = std::max(mass, f.dry());
        f.water = f.mass - f.dry();
        f.denatured = f.denatured || preparation_.denatures;
    }

private:
    static constexpr double sodium_in_salt = 22.990 / 58.443;  // IUPAC atomic masses

    std::optional<double> minutes(const Prepared& prepared) const { return prepared.minutes ? prepared.minutes : preparation_.minutes; }
    std::string name(Tissue tissue, std::string_view what) const {
        return preparation_.id + " " + std::string(spelling(tissue)) + " " + std::string(what);
    }
    // Nothing but scent grows on the fire: a draw beyond the whole is the whole. (Roasting frees capsaicinoids that the raw pod held
    // back from the tongue, so theirs may.)
    double kept(Kept what, std::size_t i) const {
        const double share = kept_[static_cast<std::size_t>(what)](i);
        return what == Kept::aroma || what == Kept::capsaicinoids ? share : std::min(1.0, share);
    }

    const Preparation& preparation_;
    const PreparationEffect& effect_;
    Uncertain yield_, water_left_;
    std::vector<Uncertain> kept_;
    bool sugars_with_solids_ = true, salt_with_solids_ = true;
};

// What the raw gram brings besides composition: acid, buffer, meat, binding, aroma. Shares of it survive the preparations.
class Bringing {
public:
    Bringing(const Portion& portion, const Knowledge& knowledge, std::span<const AcidParameters> acid, const Draws& draws)
        : Bringing(portion.ingredient, portion, knowledge, acid, draws) {}
    Bringing(const Ingredient& i, const Portion& portion, const Knowledge& knowledge, std::span<const AcidParameters> acid,
             const Draws& draws)
        : ingredient_(i),
          acid_(acid),
          free_fat_(fat_is_free(i, knowledge)),
          rendered_(belongs(i, "rendered-fat", knowledge)),
          proteases_(parameter_of("bind.enzyme.of." + i.id, knowledge), "bind.enzyme.of." + i.id, draws),
          softens_(knowledge.parameter(softening_of(i, knowledge)), softening_of(i, knowledge), draws),
          ph_(ph_band(portion), shared_name("ph"), draws),
          titratable_(as_like(titratable_band(portion), portion), i.id + " titratable", draws),
          buffer_(as_like(i.acidity && i.acidity->buffer ? i.acidity->buffer->band : Band{}, portion),
                  i.meat ? shared_name("buffer") : i.id + " buffer", draws),
          scale_(i.meat ? i.meat->buffer_scale.band : Band{}, shared_name("buffer scale"), draws),
          bind_(i.meat ? i.meat->bind.band : Band{}, i.id + " bind", draws),
          held_water_(as_like(i.binding ? i.binding->water.band : Band{}, portion), i.id + " binding water", draws),
          held_fat_(as_like(i.binding ? i.binding->fat.band : Band{}, portion), i.id + " binding fat", draws),
          made_(knowledge.parameter("bind.binder.made"), "bind.binder.made", draws),
          swells_(i.binding && i.binding->swells ? i.binding->swells->band : Band{}, i.id + " swells", draws),
          strength_(as_like(i.strength ? i.strength->band : Band{1, 1, 1}, portion), i.id + " strength", draws),
          pungency_(as_like(i.pungency ? i.pungency->band : Band{}, portion), i.id + " pungency", draws),
          sulphites_(i.sulphites ? i.sulphites->band : Band{}, i.id + " sulphites", draws) {}

    void add(Material& m, const Food& f, std::size_t draw) const {
        acids(m, f, draw);
        if (ingredient_.meat) meat(m, f, draw);
        else water_beside_meat(m, f);
        if (rendered_) {  // lard is weighed with the meat, as back fat is
            m[Amount::meat] = f.mass;
            m[Amount::meat_fat] = f.fat;
        }
        if (ingredient_.binding) binding(m, f, draw);
        if (ingredient_.meat || free_fat_) soft_fat(m, f, draw);
        if (ingredient_.tint) tint(m, *ingredient_.tint);
        if (!f.denatured) m[Amount::protease] = proteases_(draw);
        m[Amount::pungency] = pungency_(draw) / 1000 * f.aroma_share;
        m[Amount::sulphite] = sulphites_(draw) / 1000;
        const double fresh = strength_(draw) * f.aroma_share;
        if (contains(ingredient_.roles, Role::nut)) m[Amount::dose_nut] = f.mass - f.water;
        if (contains(ingredient_.roles, Role::herb)) m[Amount::dose_herb] = fresh;
        if (contains(ingredient_.roles, Role::allium)) m[Amount::dose_allium] = fresh;
        if (contains(ingredient_.roles, Role::spice)) m[Amount::dose_spice] = fresh;
        m[Amount::dose_seasoning] = std::max(m[Amount::dose_herb], m[Amount::dose_spice]);
        for (const auto& share : ingredient_.aroma) m[share.note] = share.intensity * fresh;
    }

private:
    // One animal's pH and buffering are alike in all its cuts.
    std::string shared_name(const char* what) const {
        return (ingredient_.meat ? std::string(spelling(ingredient_.meat->species)) : ingredient_.id) + " " + what;
    }

    Band titratable_band(const Portion& portion) const {
        if (!ingredient_.acidity || !ingredient_.acidity->titratable) return {};
        constexpr double g_kg_a_percent = 10, mmol_a_mol = 1000;
        if (const auto acid = main_acid(ingredient_); acid && portion.acid_pct)
            return scaled(*portion.acid_pct, g_kg_a_percent * mmol_a_mol / molar_mass(*acid) * titrated_protons(*acid));
        const auto& q = *ingredient_.acidity->titratable;
        return scaled(q.band, titratable_mmol_kg(1, q.unit).value_or(0));
    }

    // A weak acid of another strength has another pH: by half the logarithm of how much stronger it is.
    Band ph_band(const Portion& portion) const {
        if (portion.ph) return *portion.ph;
        if (!ingredient_.acidity || !ingredient_.acidity->ph) return {7, 7, 7};
        Band ph = ingredient_.acidity->ph->band;
        if (portion.likeness) ph = {ph.low + std::log10(portion.likeness->low), ph.mid, ph.high + std::log10(portion.likeness->high)};
        const double usual = portion.acid_pct ? titratable_band({ingredient_, {}}).mid : 0;
        if (usual <= 0) return ph;
        const double shift = -std::log10(titratable_band(portion).mid / usual) / 2;
        return {ph.low + shift, ph.mid + shift, ph.high + shift};
    }

    void acids(Material& m, const Food& f, std::size_t draw) const {
        m[Acid::acetic] += f.acetic_mmol;
        m[Amount::titratable] += f.acetic_mmol;
        if (!ingredient_.acidity) return;
        const double ph = ph_(draw), titratable = titratable_(draw);
        double buffer = buffer_(draw);
        if (titratable > 0) {
            const AcidBase base =
                decompose(ph, titratable, ingredient_.acidity->acids, acid_[draw], ingredient_.composition.water.mid / 100);
            for (std::size_t a = 0; a < count_of<Acid>; ++a) m[static_cast<Acid>(a)] += base.acids[a] / 1000 * f.acid_share;
            m[Amount::strong_ions] += base.strong / 1000 * f.acid_share;
            m[Amount::titratable] += titratable / 1000 * f.acid_share;
            buffer += base.buffer;
        }
        m[Amount::plant_buffer] += buffer / 1000;
        m[Amount::plant_buffer_ph] += buffer / 1000 * ph;
    }

    void meat(Material& m, const Food& f, std::size_t draw) const {
        const double lean_kg = f.protein / reference_lean_protein_g_kg;
        m[Amount::meat_sites] = lean_kg * scale_(draw);
        m[Amount::meat_protons] = m[Amount::meat_sites] * bound_protons(ph_(draw), acid_[draw]);
        m[Amount::meat] = f.mass;
        m[Amount::meat_fat] = f.fat;
        m[Amount::meat_protein] = f.protein;
        m[Amount::undone_protein] = f.protein * (1 - f.binding_share);
        m[Amount::bind_protein] = f.protein * f.binding_share * bind_(draw);
        m[Amount::bind_mass] = f.mass * f.binding_share * bind_(draw);
        if (ingredient_.acidity && ingredient_.acidity->ph)
            m[Amount::bind_ph] = m[Amount::bind_protein] * ingredient_.acidity->ph->band.mid;
        m[ingredient_.meat->species] = f.mass;
        const bool white = ingredient_.tissue == Tissue::fat_tissue;  // what is not fat in it is no red meat either
        m.lean(ingredient_.meat->species) = white ? 0 : f.mass - f.fat;
    }

    void binding(Material& m, const Food& f, std::size_t draw) const {
        const auto& sets = ingredient_.binding->sets;
        const Amount when = sets == "cold"    ? Amount::held_cold
                            : sets == "hot"   ? Amount::held_hot
                            : sets == "never" ? Amount::held_thick
                                              : Amount::held_chilled;
        const double held = held_water_(draw) * f.binding_share;
        const double own = is_gel() ? std::min(held, f.water) : 0;
        m[Amount::held_own] = own * (ingredient_.binding->gel == "made" ? made_(draw) : 1);
        m[when] = held - own;
        if (ingredient_.binding->gel == "sets") m[Amount::set_protein] = f.protein;
        if (ingredient_.binding->swells) m[Amount::held_cold] += held * swells_(draw);
        if (when == Amount::held_cold || when == Amount::held_hot) m[Amount::held_protein] = m[when] * protein_of_solids(f);
        m[Amount::held_fat] = held_fat_(draw) * f.binding_share;
    }

    void tint(Material& m, const TintRecord& t) const {
        const double stays = 1 - t.fades;
        const TintBands cooked = t.cooked.value_or(TintBands{stays * t.red, stays * t.green, stays * t.blue});
        m[Amount::tint_red] = t.red;
        m[Amount::tint_green] = t.green;
        m[Amount::tint_blue] = t.blue;
        m[Amount::fading_red] = t.red - cooked.red;
        m[Amount::fading_green] = t.green - cooked.green;
        m[Amount::fading_blue] = t.blue - cooked.blue;
        if (!ingredient_.meat && is_red(t)) m[Amount::tint_of_red] = t.green;
    }

    void water_beside_meat(Material& m, const Food& f) const {
        m[is_gel() ? Amount::gel_water : Amount::paste_water] = f.water;
        if (!is_gel() && ingredient_.tissue == Tissue::liquid) m[Amount::poured_water] = f.water;
    }

    static Band parameter_of(const std::string& id, const Knowledge& knowledge) {
        return knowledge.has_parameter(id) ? knowledge.parameter(id) : Band{};
    }

    // Takes green and more blue, and lets red by: chile, paprika, annatto, tomato; not the brown of soy, the yellow of turmeric, beet.
    static bool is_red(const TintRecord& tint) {
        constexpr double reds = 3, least_blue = 1.3, most_blue = 5.5;
        return tint.green > reds * tint.red && tint.blue > least_blue * tint.green && tint.blue < most_blue * tint.green;
    }

    bool is_gel() const { return ingredient_.binding && !ingredient_.binding->gel.empty(); }

    void soft_fat(Material& m, const Food& f, std::size_t draw) const {
        m[Amount::soft_fat] = f.fat;
        m[Amount::fat_softens] = f.fat * softens_(draw);
        if (free_fat_) m[Amount::free_fat] = f.fat;
    }

    // Of what could hold the water.
    static double protein_of_solids(const Food& f) {
        const double solids = f.protein + f.carbohydrate;
        return solids > 0 ? f.protein / solids : 0;
    }

    const Ingredient& ingredient_;
    std::span<const AcidParameters> acid_;
    bool free_fat_, rendered_;
    Uncertain proteases_, softens_, ph_, titratable_, buffer_, scale_, bind_, held_water_, held_fat_, made_, swells_, strength_, pungency_,
        sulphites_;
};

Material material_of(const Food& f) {
    Material m;
    m[Amount::mass] = f.mass;
    m[Amount::water] = f.water;
    m[Amount::protein] = f.protein;
    m[Amount::fat] = f.fat;
    m[Amount::carbohydrate] = f.carbohydrate;
    m[Amount::fibre] = f.fibre;
    m[Amount::ash] = f.ash;
    m[Amount::sugars] = f.sugars;
    m[Amount::alcohol] = f.alcohol;
    m[Amount::salt] = f.salt;
    m[Amount::sodium] = f.sodium;
    m[f.denatured ? Amount::chlorophyll_set : Amount::chlorophyll_live] = f.chlorophyll;
    m[Amount::pheophytin] = f.pheophytin;
    m[Amount::capsaicinoids] = f.capsaicinoids;
    return m;
}

// How much of the pigment of raw leaf colours the whole mass, by how it is cut; the rest stays in its pieces.
struct Cut {
    bool told = true;
    Band shown{1, 1, 1};
    std::string parameter;  // that `shown` is
};

constexpr std::string_view chopped_share = "colour.chopped";

bool done_by(std::span<const Prepared> prepared, std::span<const std::string_view> steps) {
    return std::any_of(prepared.begin(), prepared.end(),
                       [&](const Prepared& p) { return std::find(steps.begin(), steps.end(), p.preparation) != steps.end(); });
}

bool softened(std::span<const Prepared> prepared, const Knowledge& knowledge) {
    return std::any_of(prepared.begin(), prepared.end(),
                       [&](const Prepared& p) { return knowledge.preparation(p.preparation)->denatures; });
}

constexpr std::array<std::string_view, 4> smooth_steps{"pureed", "ground", "grated", "beaten"};
constexpr std::array<std::string_view, 2> fine_steps{"minced", "crushed"};
constexpr std::array<std::string_view, 3> coarse_steps{"chopped", "sliced", "diced"};

Cut cut_of(const Portion& portion, const Knowledge& knowledge) {
    const auto by = [&](bool told, std::string_view id) { return Cut{told, knowledge.parameter(id), std::string(id)}; };
    const auto& steps = portion.prepared;
    const bool in_pieces = is_leaf(portion.ingredient.tissue) || portion.ingredient.tissue == Tissue::stalk;  // leek and spring onion too
    if (!in_pieces || softened(steps, knowledge) || done_by(steps, smooth_steps)) return {};
    if (done_by(steps, fine_steps)) return by(true, "colour.minced");
    if (done_by(steps, coarse_steps)) return by(true, chopped_share);
    return leaf_cut_presumed(portion.ingredient, steps, knowledge) == LeafCut::by_share ? by(false, chopped_share) : Cut{};
}

void put_cut(Material& whole, const Cut& cut, double shown) {
    const double live = whole[Amount::chlorophyll_live];
    if (!cut.told) whole[Amount::untold_live] = live;
    else whole[Amount::unseen_live] = (1 - shown) * live;
    if (cut.told && cut.parameter == chopped_share) whole[Amount::pieces_shown] = shown * live;
}

}  // namespace

LeafCut leaf_cut_presumed(const Ingredient& food, std::span<const Prepared> prepared, const Knowledge& knowledge) {
    const bool said = done_by(prepared, smooth_steps) || done_by(prepared, fine_steps) || done_by(prepared, coarse_steps);
    if (!is_leaf(food.tissue) || said || softened(prepared, knowledge)) return LeafCut::said;
    return contains(food.roles, Role::herb) ? LeafCut::by_share : LeafCut::ground;
}

bool goes_into_paste(const Ingredient& food) {
    const bool sour_flesh = contains(food.roles, Role::acid) && (food.tissue == Tissue::fruit || food.tissue == Tissue::stalk);
    return food.tissue != Tissue::dry &&
           (is_leaf(food.tissue) || food.tissue == Tissue::chile_flesh || sour_flesh || contains(food.roles, Role::green));
}

std::vector<Material> unit_materials(const Portion& portion, const Knowledge& knowledge, std::span<const AcidParameters> acid,
                                     const Draws& draws) {
    const RawFood raw(portion, knowledge, draws);
    const Bringing bringing(portion, knowledge, acid, draws);
    const bool heat_as_prepared = portion.heat_mg_kg && portion.weighed_prepared;
    const Cut cut = cut_of(portion, knowledge);
    const Uncertain shown(cut.shown, cut.parameter, draws);
    std::vector<Step> steps;
    for (const auto& prepared : portion.prepared) steps.emplace_back(prepared, portion.ingredient.tissue, knowledge, draws);
    std::vector<Material> units(draws.count());
    for (std::size_t i = 0; i < units.size(); ++i) {
        Food food = raw.draw(i);
        for (const auto& step : steps) step.apply(food, i);
        if (heat_as_prepared) food.capsaicinoids = raw.heat(i) / 1000 * food.mass;
        if (cut.told) food.pheophytin *= shown(i);
        Material whole = material_of(food);
        put_cut(whole, cut, shown(i));
        if (goes_into_paste(portion.ingredient)) whole[Amount::greens] = food.mass;
        bringing.add(whole, food, i);
        units[i].add(whole, portion.weighed_prepared ? 1 / food.mass : 1);
    }
    return units;
}

double preparation_yield(const Ingredient& ingredient, std::span<const Prepared> prepared, const Knowledge& knowledge) {
    Draws middle = Draws::middle();
    const RawFood raw({ingredient, prepared}, knowledge, middle);
    Food food = raw.draw(0);
    for (const auto& one : prepared) Step(one, ingredient.tissue, knowledge, middle).apply(food, 0);
    return food.mass;
}

}  // namespace standin
