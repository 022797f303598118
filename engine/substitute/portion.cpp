#include "substitute/portion.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/band.hpp"
#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "standin/number_text.hpp"
#include "substitute/carried_over.hpp"
#include "substitute/conditions.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

constexpr double next_to_nothing = 1e-9;

Reason for_its_bulk(const char* bound, double times_the_weight) {
    Reason reason = make_reason(ReasonKind::for_its_bulk, {{bound, {}, times_the_weight, "times the weight"}});
    reason.role = bound;
    return reason;
}

// What a strong food carries however it is used, where both bring it: sage for a green leaf is still so much sage.
double strength_of(const Material& m) { return m[Amount::dose_herb] + m[Amount::dose_allium] + m[Amount::dose_spice]; }

// What is there for its taste: the batch has little room for more of it, whatever the dose.
bool seasons(Role role) {
    switch (role) {
        case Role::heat:
        case Role::acid:
        case Role::herb:
        case Role::allium:
        case Role::spice:
        case Role::salt:
        case Role::sweet:
            return true;
        default:
            return false;
    }
}

}  // namespace

Portions::Portions(const Formula& formula, std::size_t line, const Nominal& nominal)
    : formula_(formula), line_(as_picked(formula.lines[line], nominal)), nominal_(nominal) {
    for (const auto& one : formula.lines) batch_grams_ += nominal.unit(one)[Amount::mass] * one.grams.mid;
}

const Ingredient& Portions::ingredient(const Line& food) const { return *nominal_.knowledge().ingredient(food.ingredient); }
double Portions::constant(std::string_view id) const { return nominal_.knowledge().parameter(id).mid; }
double Portions::dose(Role role) const { return dose_of(nominal_.unit(line_), role) * line_.grams.mid; }

double Portions::solids(const Line& food) const {
    const Material& unit = nominal_.unit(food);
    return unit[Amount::mass] - unit[Amount::water];
}

bool Portions::vegetable(const Line& food) const { return is_vegetable(ingredient(food).tissue); }

// A chile that is there for its flesh or its colour: with little heat in its solids.
bool Portions::flesh_chile(const Line& food) const {
    const auto& roles = ingredient(food).roles;
    if (std::find(roles.begin(), roles.end(), Role::heat) == roles.end()) return false;
    const Tissue tissue = ingredient(food).tissue;
    if (tissue != Tissue::chile_flesh && tissue != Tissue::dry) return false;
    return heat_of_solids(food) < constant(tissue == Tissue::dry ? "stand_ins.colour.heat" : "stand_ins.flesh.heat");
}

double Portions::heat_of_solids(const Line& food) const {
    return 1000 * dose_of(nominal_.unit(food), Role::heat) / std::max(solids(food), next_to_nothing);
}

// Flesh for flesh: a hot chile in the weight of a mild one burns, and in less of it the flesh is gone. Colour that has some heat of its own
// may give way to a pinch of a hot one; what is sweet gives way to nothing hot.
bool Portions::burns(const Line& food, const SwapPath& path) const {
    const bool flesh_beside = nominal_.knowledge().records().swaps[path.swaps.back()].partner.has_value();
    if (!flesh_chile(line_) || flesh_beside) return false;
    const double heat = heat_of_solids(line_), hot = constant("stand_ins.flesh.heat");
    Line with_seeds;  // seeding takes most of the heat, and no maker trusts it to be all
    with_seeds.ingredient = food.ingredient;
    if (heat < constant("stand_ins.flesh.sweet") && heat_of_solids(with_seeds) >= hot) return true;
    return !flesh_chile(food) && by_dose_alone(path) && heat < hot;
}

// Pepper sauce for vinegar, curry paste for curry powder: heat that the line has not and nobody asked for.
bool Portions::heats(const Line& food, double grams, Role role) const {
    if (role == Role::heat) return false;
    const double brought = nominal_.unit(food)[Amount::capsaicinoids] * grams - dose(Role::heat);
    return 1000 * brought / batch_grams_ > constant("stand_ins.heat.unasked");
}

bool Portions::printed(const SwapPath& path) const {
    const Records& records = nominal_.knowledge().records();
    return std::all_of(path.swaps.begin(), path.swaps.end(), [&](std::size_t s) {
        const Swap& swap = records.swaps[s];
        if (swap.basis != Basis::weight) return false;
        const SourceRecord* source = nominal_.knowledge().source(swap.ratio->source);
        return source && source->kind == SourceKind::published;
    });
}

bool Portions::says_how_much(const SwapPath& path) const {
    return path.swaps.size() == 1 && nominal_.knowledge().records().swaps[path.swaps.front()].basis == Basis::weight;
}

// A swap that says itself that a pinch is meant: asafoetida for onion.
bool Portions::a_pinch(const SwapPath& path) const {
    const Swap& first = nominal_.knowledge().records().swaps[path.swaps.front()];
    return says_how_much(path) && first.ratio->band.mid < constant("stand_ins.least.times");
}

bool Portions::by_dose_alone(const SwapPath& path) const {
    const Records& records = nominal_.knowledge().records();
    return std::all_of(path.swaps.begin(), path.swaps.end(), [&](std::size_t s) { return records.swaps[s].basis == Basis::dose; });
}

// Whether the line is there for its bulk too, and `food` would fill its place.
bool Portions::bulky(const Line& food, Role role) const {
    if (!vegetable(line_) || !vegetable(food)) return false;
    if (role == Role::green || role == Role::acid) return true;
    if (role == Role::heat) return flesh_chile(line_) || flesh_chile(food);
    const double share = nominal_.unit(line_)[Amount::mass] * line_.grams.mid / batch_grams_;
    return (role == Role::herb || role == Role::allium) && share >= constant("stand_ins.bulk.from");
}

// Spooned and mostly water: curds, boiled beans, mash.
bool Portions::moist(const Line& food) const {
    const Material& unit = nominal_.unit(food);
    return ingredient(food).tissue == Tissue::paste && unit[Amount::water] > 0.5 * unit[Amount::mass];
}

bool Portions::fruit_for_juice(const Line& food, Role role) const {
    return role == Role::acid && ingredient(line_).tissue == Tissue::liquid && vegetable(food);
}

std::optional<double> Portions::by_dose(double grams, const Line& from, const Line& to, Role role) const {
    const Material &have = nominal_.unit(from), &take = nominal_.unit(to);
    const double given = dose_of(have, role), taken = dose_of(take, role);
    if (!(given > 0) || !(taken > 0)) return std::nullopt;
    double equal = grams * given / taken;
    const double strong = strength_of(have), stands = strength_of(take);
    if (role == Role::green && strong > 0 && stands > 0) equal = std::min(equal, grams * strong / stands);
    return equal;
}

// A vegetable with hardly any green: cabbage or courgette is there for its bulk, and a pinch of kale is no cabbage.
bool Portions::pale() const {
    const Tissue tissue = ingredient(line_).tissue;
    if (!vegetable(line_) && tissue != Tissue::seed) return false;
    return 1000 * dose_of(nominal_.unit(line_), Role::green) < constant("stand_ins.pale.green");
}

// What is blanched only because it is the tougher of the two goes in leaf for leaf, as weighed before that.
double Portions::in_its_place(const Line& food) const {
    const double mass = nominal_.unit(line_)[Amount::mass];
    const auto without_line = [&](const char* step) { return has_step(food.prepared, step) && !has_step(line_.prepared, step); };
    const bool mushroom = ingredient(food).tissue == Tissue::fungus && without_line("cooked");
    return line_.grams.mid *
           (mushroom || without_line("blanched") ? 1.0 : mass / std::max(nominal_.unit(food)[Amount::mass], next_to_nothing));
}

// Weight for weight, but for the water.
double Portions::by_solids(const Line& food) const { return line_.grams.mid * solids(line_) / std::max(solids(food), next_to_nothing); }

// Flesh and colour by solids; of what is clearly hotter less, half way to the same heat, but no less than half of it.
double Portions::by_flesh(const Line& food) const {
    const double even = by_solids(food);
    const double hotter = heat_of_solids(food) / std::max(heat_of_solids(line_), constant("stand_ins.flesh.mild"));
    return even / std::clamp(std::sqrt(hotter), 1.0, 2.0);
}

// Grams of the stand-in for the whole line, following the path swap by swap.
std::optional<double> Portions::equal_grams(const Line& food, const SwapPath& path, Role role) const {
    const Knowledge& knowledge = nominal_.knowledge();
    const Records& records = knowledge.records();
    if (by_dose_alone(path)) {
        if (role == Role::heat && flesh_chile(line_) && flesh_chile(food)) return by_flesh(food);
        if (role == Role::green && pale()) return ingredient(food).tissue == Tissue::dry ? by_solids(food) : in_its_place(food);
        return by_dose(line_.grams.mid, line_, food, role);
    }
    std::optional<double> grams = line_.grams.mid;
    Line from = line_;
    for (const auto s : path.swaps) {
        const Swap& swap = records.swaps[s];
        const Line to = s == path.swaps.back()
                            ? food
                            : prepared_like(line_, *knowledge.ingredient(swap.to), preparations_of(swap, knowledge), knowledge);
        if (swap.basis == Basis::weight) grams = *grams * swap.ratio->band.mid;
        else grams = by_dose(*grams, from, to, role);
        if (!grams) return std::nullopt;
        from = to;
    }
    return grams;
}

Portions::Bounds Portions::bounds(const Line& food, const SwapPath& path, Role role, double equal) const {
    const double line_grams = line_.grams.mid;
    if (role == Role::lean)
        return within_limit({0, std::numeric_limits<double>::infinity(), 0, {}, {}}, food,
                            most_share(path, formula_, nominal_.knowledge()));
    Bounds b;
    const double paste = in_its_place(food) / line_grams;
    const double proportion = constant("stand_ins.most.times");
    if (printed(path)) {
        b.most = std::numeric_limits<double>::infinity();
    } else if (bulky(food, role)) {
        const bool filled = role == Role::green || role == Role::acid || (role == Role::heat && flesh_chile(line_));
        // What is that strong is no filling: it stands in for the taste alone.
        const bool strong = strength_of(nominal_.unit(food)) > 0 || role != Role::green;
        if (filled && !says_how_much(path) && !(strong && equal * proportion < line_grams))
            b.least = constant("stand_ins.bulk.least") * paste * line_grams;
        b.most = constant("stand_ins.bulk.most") * paste * line_grams;
        b.even = paste * line_grams;
        // A hot pod is there for its heat: of a milder one as many as bring it, as far as their flesh goes unnoticed.
        const double unnoticed = constant("stand_ins.heat.flesh") * batch_grams_;
        if (role == Role::heat && !flesh_chile(line_) && equal <= std::min(unnoticed, proportion * line_grams))
            b.most = std::max(b.most, equal);
        b.at_least = for_its_bulk("at least", constant("stand_ins.bulk.least"));
        b.at_most = for_its_bulk("at most", constant("stand_ins.bulk.most"));
    } else if (role == Role::binder && moist(line_) && moist(food) && !says_how_much(path)) {
        // Mashed potato for ricotta, boiled beans for boiled chickpeas: what fills a mass is filled by as much.
        b.least = constant("stand_ins.bulk.least") * line_grams;
        b.most = constant("stand_ins.bulk.most") * line_grams;
        b.at_least = for_its_bulk("at least", constant("stand_ins.bulk.least"));
        b.at_most = for_its_bulk("at most", constant("stand_ins.bulk.most"));
    } else if (fruit_for_juice(food, role) && !says_how_much(path)) {
        // Fruit for vinegar or juice: a basketful of apple is no spoon of vinegar.
        b.most = constant("stand_ins.bulk.most") * line_grams;
        b.at_most = for_its_bulk("at most", constant("stand_ins.bulk.most"));
    } else {
        // What is dry or concentrated gives way to more of what it was made from; one vegetable to another does not.
        const double concentrate = vegetable(line_) ? 1 : std::max(1.0, solids(line_) / std::max(solids(food), next_to_nothing));
        // A swap that names its own weight is what makers weigh.
        const double times = std::max(proportion * concentrate, says_how_much(path) ? equal / line_grams : 0);
        b.most = times * line_grams;
        b.at_most = make_reason(ReasonKind::times_weight, {{"at most", {}, times, "times the weight"}});
        // Of a few bird chiles' heat a milder pod brings as much as its flesh goes unnoticed in the mass.
        const double unnoticed = constant("stand_ins.heat.flesh") * batch_grams_;
        if (role == Role::heat && vegetable(line_) && vegetable(food) && unnoticed > b.most) {
            b.most = unnoticed;
            b.at_most = make_reason(ReasonKind::as_batch);
        }
    }
    if (role == Role::fat && !printed(path)) hold_fat(b, food);
    const bool meat = ingredient(food).meat.has_value();
    double paste_grams = std::max(constant("stand_ins.most.batch") * batch_grams_, line_grams);
    if (seasons(role)) paste_grams = std::min(paste_grams, line_grams + constant("stand_ins.most.seasoning") * batch_grams_);
    paste_grams /= most_share(path, formula_, nominal_.knowledge());
    if (!meat && b.most > paste_grams) {
        b.most = paste_grams;
        b.at_most = make_reason(ReasonKind::as_batch);
    }
    return within_limit(std::move(b), food, most_share(path, formula_, nominal_.knowledge()));
}

// Lean that comes with the fat, or water: more of it is another sausage.
void Portions::hold_fat(Bounds& b, const Line& food) const {
    const Material& unit = nominal_.unit(food);
    const bool wet = !ingredient(food).meat && unit[Amount::water] > 0.5 * unit[Amount::mass];
    const double times_weight = constant(wet ? "stand_ins.most.wet-fat" : "stand_ins.most.fat");
    if (times_weight * line_.grams.mid >= b.most) return;
    b.most = times_weight * line_.grams.mid;
    b.at_most = make_reason(ReasonKind::times_weight, {{"at most", {}, times_weight, "times the weight"}});
}

// What is strong, or no good in quantity, has a most for a kilo of batch that nothing lifts.
Portions::Bounds Portions::within_limit(Bounds b, const Line& food, double line_share) const {
    const auto& limit = ingredient(food).most_g_per_kg;
    // Of the batch that it makes: what the line weighed is gone.
    const double rest = batch_grams_ - nominal_.unit(line_)[Amount::mass] * line_.grams.mid;
    // Of a stand-in for a part of the line only that part is weighed.
    const double grams = most_beside(rest, ingredient(food)) / line_share;
    if (grams < b.most) {
        b.most = grams;
        b.at_most = make_reason(ReasonKind::in_a_kilo, {{"at most", {}, limit->band.mid, "g in a kilo"}});
    }
    b.least = std::min(b.least, b.most);
    return b;
}

// Tarragon for huacatay, rosemary for basil: what is strong and not much like the line is a dose, and no equal of it. Where a swap names a
// weight, makers have weighed it.
Portions::Bounds Portions::as_a_dose(Bounds b, const Line& food, const SwapPath& path, Role role) const {
    const Ingredient &from = ingredient(line_), &to = ingredient(food);
    const bool herbs = role == Role::herb && to.roles.front() == Role::herb && to.tissue != Tissue::dry;
    const bool pair = nominal_.knowledge().records().swaps[path.swaps.back()].partner.has_value();
    if (!herbs || pair || !to.most_g_per_kg || says_how_much(path) || path.closeness >= constant("stand_ins.strong.near")) return b;
    const double strong = to.most_g_per_kg->band.mid;
    if (strong > constant("stand_ins.strong.most") || (from.most_g_per_kg && from.most_g_per_kg->band.mid <= strong)) return b;
    const double grams = constant("stand_ins.strong.share") * strong / 1000 * batch_grams_;
    if (grams >= b.most) return b;
    b.most = grams;
    b.least = std::min(b.least, grams);
    b.at_most = make_reason(ReasonKind::in_a_kilo, {{"at most", {}, constant("stand_ins.strong.share") * strong, "g in a kilo"}});
    return b;
}

// How much of the line is no more than a kilo takes of it: what is weighed beyond that is no measure for what stands in for it.
double Portions::fair_share() const {
    const auto& limit = ingredient(line_).most_g_per_kg;
    return limit ? std::min(1.0, limit->band.mid / 1000 * batch_grams_ / line_.grams.mid) : 1.0;
}

namespace {

// Grams of a frozen, dried or ground food for a gram of what it was made of, where a swap says so.
std::optional<double> ratio_to_made(const Ingredient& made, const Knowledge& knowledge) {
    for (const auto& swap : knowledge.records().swaps)
        if (swap.from == made.made_of && swap.to == made.id && swap.basis == Basis::weight && swap.ratio && !swap.partner)
            return swap.ratio->band.mid;
    return std::nullopt;
}

}  // namespace

// Frozen spinach for kale: as much as of the fresh leaf, less by what stands for a gram of that. Matched by itself it would be taken for a
// leaf that is only paler, and more of it weighed than of the fresh.
std::optional<WeighedOut> Portions::as_made_of(const Line& food, const SwapPath& path, Role role) const {
    const Knowledge& knowledge = nominal_.knowledge();
    const Ingredient &made = ingredient(food), &own = ingredient(line_);
    if (made.made_of.empty() || made.made_of == line_.ingredient || !own.made_of.empty() || !vegetable(line_)) return std::nullopt;
    const Ingredient* fresh = knowledge.ingredient(made.made_of);
    if (!fresh || !is_vegetable(fresh->tissue)) return std::nullopt;
    SwapPath to_fresh = path;
    if (path.swaps.size() > 1 && knowledge.records().swaps[path.swaps.back()].from == made.made_of) to_fresh.swaps.pop_back();
    if (!by_dose_alone(to_fresh)) return std::nullopt;
    const auto ratio = ratio_to_made(made, knowledge);
    if (!ratio) return std::nullopt;
    auto portion = of(prepared_like(line_, *fresh, {}, knowledge), to_fresh, role);
    if (!portion || portion->why) return std::nullopt;
    const Bounds held = within_limit({0, *ratio * portion->most, 0, {}, {}}, food, most_share(path, formula_, knowledge));
    portion->grams = std::min(*ratio * portion->grams, held.most);
    portion->least = std::min(*ratio * portion->least, held.most);
    portion->most = held.most;
    if (portion->even) portion->even = *ratio * *portion->even;
    portion->per_gram = dose_of(nominal_.unit(food), role);
    return portion;
}

std::optional<WeighedOut> Portions::of(const Line& food, const SwapPath& path, Role role) const {
    if (const auto made = as_made_of(food, path, role)) return made;
    if (role == Role::heat && burns(food, path)) return std::nullopt;
    const auto equal = equal_grams(food, path, role);
    if (!equal || !(*equal > 0)) return std::nullopt;
    const Bounds b = as_a_dose(bounds(food, path, role, *equal), food, path, role);
    WeighedOut p;
    const bool same_leaf = ingredient(food).made_of == line_.ingredient || ingredient(line_).made_of == food.ingredient;
    const bool leaf = role == Role::green && b.even > 0 && b.least > 0 && !pale() && !same_leaf && by_dose_alone(path);
    // A leaf fills and colours: half way between the same weight and the same green.
    p.grams = std::clamp(leaf ? std::sqrt(*equal * b.even) : *equal, b.least, b.most);
    // A seasoning that only matches in strength has a taste of its own: half of it, and no more than half of what a kilo takes.
    const bool by_half = is_rough(path.swaps, nominal_.knowledge()) && (role == Role::herb || role == Role::spice);
    if (by_half) p.grams = std::min(p.grams / 2, b.most / 2);
    p.least = b.least;
    p.most = b.most;
    if (role == Role::acid && b.even > 0 && b.even < *equal) p.even = b.even;
    // A pinch does not fill the place of a food with body.
    if (role != Role::heat && !printed(path) && !a_pinch(path) && p.grams < constant("stand_ins.least.times") * line_.grams.mid)
        return std::nullopt;
    if (heats(food, p.grams, role)) return std::nullopt;
    if (p.grams > *equal) p.bounded = b.at_least;
    if (p.grams < *equal) p.bounded = b.at_most;
    if (leaf && p.grams > b.least && p.grams < b.most) p.bounded = make_reason(ReasonKind::half_way);
    p.carries = p.grams / *equal;
    p.per_gram = dose_of(nominal_.unit(food), role);
    if (role == Role::acid || role == Role::heat) p.lacking = printed(path) ? 0 : std::max(0.0, dose(role) - p.per_gram * p.grams);
    // Sweet pepper for cayenne, whatever weight a chain of swaps gives it: there is no heat in it to stand in.
    const bool spice = role == Role::heat && ingredient(line_).tissue != Tissue::chile_flesh;
    const bool in_two = nominal_.knowledge().records().swaps[path.swaps.back()].partner.has_value();
    if (spice && !in_two && !printed(path) && !(p.per_gram > 0)) return std::nullopt;
    const bool mash = role == Role::binder && moist(line_) && moist(food);
    const bool fills = (bulky(food, role) && role == Role::green) || mash;
    const double fair = fair_share();
    if (fair < 1) p.felt = std::min(1.0, p.carries);
    // A milder chile is a milder sausage, and better than none.
    const double least = constant(role == Role::heat            ? "stand_ins.least.heat"
                                  : fruit_for_juice(food, role) ? "stand_ins.least.fruit"
                                                                : "stand_ins.least.dose");
    if (!fills && p.carries < (by_half ? least / 2 : least) * fair)
        p.why = make_reason(ReasonKind::too_heavy, {{"would take", {}, *equal / line_.grams.mid, "times the weight"}});
    return p;
}

namespace {

// Kale for sorrel: what is tough or stings raw is blanched, though the leaf that it stands for is not. Spinach for parsley likewise: raw it
// weeps; for raw chard it stays as that was.
bool to_blanch_first(const Line& line, const Ingredient& ingredient, const Line& food, const Knowledge& knowledge) {
    constexpr std::string_view tough = "blanch-first", soft = "pot-green";
    const Ingredient* from = knowledge.ingredient(line.ingredient);
    const auto is = [&](const Ingredient& leaf, std::string_view kind) { return belongs(leaf, kind, knowledge); };
    const bool for_the_pot = is(ingredient, tough) || is(ingredient, soft);
    const bool as_the_line = from && (is(*from, tough) || (is(ingredient, soft) && is(*from, soft)));
    if (!for_the_pot || as_the_line) return false;
    return std::none_of(food.prepared.begin(), food.prepared.end(), [&](const Prepared& step) {
        const Preparation* preparation = knowledge.preparation(step.preparation);
        return preparation && preparation->denatures;
    });
}

bool is_heating(std::string_view step, const Knowledge& knowledge) {
    const Preparation* preparation = knowledge.preparation(step);
    return preparation && preparation->denatures;
}

// Blanched leaf is wrung out; who only blanches the leaf of the formula leaves it wet.
bool to_squeeze(const Line& line, const Ingredient& ingredient, const Line& food) {
    return is_leaf(ingredient.tissue) && has_step(food.prepared, "blanched") && !has_step(line.prepared, "blanched");
}

}  // namespace

double most_beside(double rest, const Ingredient& food) {
    if (!food.most_g_per_kg) return std::numeric_limits<double>::infinity();
    const double share = std::min(food.most_g_per_kg->band.mid / 1000, 0.999);
    return share * rest / (1 - share);
}

Line as_picked(Line line, const Nominal& nominal) {
    if (!line.weighed_prepared || !is_vegetable(nominal.knowledge().ingredient(line.ingredient)->tissue)) return line;
    const double done = nominal.unit(line)[Amount::mass];
    line.weighed_prepared = false;
    const double left = nominal.unit(line)[Amount::mass];
    if (!(left > 0)) return line;
    line.grams = scaled(line.grams, done / left);
    return line;
}

Line prepared_like(const Line& line, const Ingredient& ingredient, const std::vector<std::string>& extra, const Knowledge& knowledge) {
    Line food;
    food.ingredient = ingredient.id;
    const auto add = [&](const Prepared& step) {
        const Preparation* preparation = knowledge.preparation(step.preparation);
        const bool there = has_step(food.prepared, step.preparation);
        const auto& already = ingredient.already;
        if (std::find(already.begin(), already.end(), step.preparation) != already.end()) return;
        if (preparation && !there && effect_on(*preparation, ingredient.tissue)) food.prepared.push_back(step);
    };
    const Ingredient* from = knowledge.ingredient(line.ingredient);
    // Heated once: as the swap asks for it, or as the line was. What is ground fine is cut by that.
    const bool heated = std::any_of(extra.begin(), extra.end(), [&](const auto& step) { return is_heating(step, knowledge); });
    const bool ground = contains(extra, std::string("ground"));
    for (const auto& step : line.prepared) {
        const bool another = heated && is_heating(step.preparation, knowledge) && !contains(extra, step.preparation);
        if (another || (ground && step.preparation == "diced")) continue;
        if (!from || carries_over(step, *from, ingredient, knowledge)) add(step);
    }
    for (const auto& step : extra) add({step, std::nullopt});
    if (from && to_be_ground(*from, ingredient, knowledge) && !has_step(food.prepared, "crushed")) add({"ground", std::nullopt});
    if (to_blanch_first(line, ingredient, food, knowledge))
        for (const char* step : {"blanched", "squeezed"}) add({step, std::nullopt});
    if (to_squeeze(line, ingredient, food)) add({"squeezed", std::nullopt});
    if (heated || food.prepared.size() > line.prepared.size())  // in the order of the bench: blanched and squeezed before it is pureed
        std::stable_sort(food.prepared.begin(), food.prepared.end(), [&](const Prepared& one, const Prepared& other) {
            return knowledge.preparation(one.preparation)->order < knowledge.preparation(other.preparation)->order;
        });
    return food;
}

double most_share(const SwapPath& path, const Formula& formula, const Knowledge& knowledge) {
    const Ingredient* last = knowledge.ingredient(knowledge.records().swaps[path.swaps.back()].to);  // a rough match names none
    const bool own_fat = last && last->meat && last->roles.front() == Role::fat &&
                         std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
                             const Ingredient& food = *knowledge.ingredient(line.ingredient);
                             return food.meat && food.roles.front() == Role::lean && food.meat->species == last->meat->species;
                         });
    if (own_fat) return 1;
    double share = 1;
    for (const auto s : path.swaps) share = std::min(share, knowledge.records().swaps[s].most_share);
    return share;
}

std::vector<std::string> preparations_of(const Swap& swap, const Knowledge& knowledge) {
    std::vector<std::string> all = swap.prepared;
    for (auto& step : conditions_prepare(swap, knowledge)) all.push_back(std::move(step));
    return all;
}

bool is_rough(const std::vector<std::size_t>& swaps, const Knowledge& knowledge) {
    return std::any_of(swaps.begin(), swaps.end(), [&](std::size_t s) { return knowledge.records().swaps[s].any(); });
}

}  // namespace standin
