// What gives back something that the wants cost.
#include <algorithm>
#include <cmath>

#include "adapt/variants/explain.hpp"
#include "adapt/variants/variant.hpp"
#include "knowledge/index/kinds.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

// The base's own acid that is poured or stirred in, the one that brings most: so much of it gives back the sharpness of a kilo of raw
// mass, with oil to make it cling. Nothing where all the acid is in fruit or paste.
std::vector<Figure> at_the_plate(const Formula& base, double lost_mmol_kg, const Stock& stock, const Context& context) {
    const Knowledge& knowledge = context.knowledge();
    const Line* main = nullptr;
    double most = 0;
    for (const auto& line : base.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const double acid = dose_of(context.nominal().unit(line), Role::acid);
        if (food.tissue != Tissue::liquid || acid * line.grams.mid <= most || stock.offer(food).excluded) continue;
        most = acid * line.grams.mid;
        main = &line;
    }
    if (!main) return {};
    constexpr double step = 0.5;  // g: nobody weighs a splash nearer
    const auto splash = [=](double grams) { return std::max(step, step * std::round(grams / step)); };
    const double grams = lost_mmol_kg / dose_of(context.nominal().unit(*main), Role::acid);
    return {{knowledge.ingredient(main->ingredient)->names.front(), std::nullopt, splash(grams), "g"},
            {"oil", std::nullopt, splash(grams * knowledge.parameter("bench.sauce.oil").mid), "g"}};
}

// Who has no chile has pepper, ginger or horseradish: half of what a kilo takes at the most.
void as_bite(std::vector<Reason>& all, const Distance& distance, const Compared& c, const Stock& stock, const Context& context) {
    const double worth_saying = context.constant("advice.gives-back.lost");
    const double before = c.before.properties[Property::heat_mg_kg], after = c.after.properties[Property::heat_mg_kg];
    const double floor = context.constant("advice.floor.heat");
    // A trace that was hardly tasted, thinned below it, is no loss.
    const double steps = (before - after) / distance.unit(Property::heat_mg_kg);
    if (before <= floor || after > floor || steps < worth_saying || distance.wanted(Property::heat_mg_kg)) return;
    const auto is_chile_to_hand = [&](const Ingredient& food) {
        return food.roles.front() == Role::heat && food.capsaicinoids && stock.names(food.id) && stock.offer(food).on_hand;
    };
    const auto& foods = context.knowledge().records().ingredients;
    if (std::any_of(foods.begin(), foods.end(), is_chile_to_hand)) return;
    Reason reason = make_reason(ReasonKind::comes_back_as_bite);
    for (const auto& food : context.knowledge().records().ingredients) {
        if (!belongs(food, "bites", context.knowledge()) || !food.most_g_per_kg || stock.offer(food).excluded) continue;
        reason.figures.push_back({food.names.front(), std::nullopt, food.most_g_per_kg->band.mid / 2, "g"});
    }
    if (!reason.figures.empty()) all.push_back(std::move(reason));
}

// Garlic chives for ramps leave it weak of garlic; who has garlic adds some.
void as_allium(std::vector<Reason>& all, const Distance& distance, const Compared& c, const Stock& stock, const Context& context) {
    const double noticeable = context.constant("advice.gives-back.allium-lost");
    const double first_spoon = context.constant("advice.gives-back.first-spoon");
    const auto residuals = distance.residuals(c.variant, c.after);
    const auto alliums = std::find_if(residuals.begin(), residuals.end(), [](const Residual& r) { return r.what == "alliums"; });
    if (alliums == residuals.end() || -alliums->value < noticeable) return;
    const double lost = c.base[Amount::dose_allium] - c.variant[Amount::dose_allium];
    const Ingredient* best = nullptr;
    double strongest = 0;
    for (const auto& food : context.knowledge().records().ingredients) {
        if (food.roles.front() != Role::allium || !stock.names(food.id) || !stock.offer(food).on_hand) continue;
        Line line;
        line.ingredient = food.id;
        const double strength = context.nominal().unit(line)[Amount::dose_allium];
        if (strength > strongest) {
            best = &food;
            strongest = strength;
        }
    }
    if (!best || lost <= 0) return;
    // Raw garlic is sharper than the leaf it makes up for: the first spoon, not all of it.
    const double grams = std::min(lost / strongest, first_spoon * c.variant[Amount::mass]);
    Reason reason =
        make_reason(ReasonKind::comes_back_as_allium, {{"more", std::nullopt, kitchen_grams(grams, false), "g"}}, {best->names.front()});
    all.push_back(std::move(reason));
}

}  // namespace

std::vector<Reason> what_gives_back(const Formula& base, const Distance& distance, const Compared& c, const SwapGraph& graph,
                                    const Stock& stock, const Context& context) {
    constexpr double zesty = 2, hardly_sour = 0.15;
    const double worth_saying = context.constant("advice.gives-back.lost");
    std::vector<Reason> all;
    as_bite(all, distance, c, stock, context);
    as_allium(all, distance, c, stock, context);
    const double before = c.before.properties[Property::sourness_mmol_kg], after = c.after.properties[Property::sourness_mmol_kg];
    const double lost = (before - after) / std::max(distance.step(Property::sourness_mmol_kg), 1e-9);
    // Acid that is not to be had is not brushed on either.
    const bool to_be_had = std::any_of(base.lines.begin(), base.lines.end(), [&](const Line& line) {
        return context.nominal().unit(line)[Amount::titratable] > 0 &&
               stock.offer(*context.knowledge().ingredient(line.ingredient)).on_hand;
    });
    // Nor where less sharpness is what was asked for.
    const bool asked_away = distance.wanted(Property::sourness_mmol_kg);
    // More acid into a mass that sets in it: the scent of it costs no bind.
    const bool sets = any_asks(distance.goals(), Property::sourness_mmol_kg, Goal::Kind::at_least) &&
                      c.after.properties[Property::ph] < context.constant("mend.ph.enough");
    const bool comes_back = lost >= worth_saying && to_be_had && !asked_away && !distance.goals().empty();
    // Who wants it less sharp and has a zest by him keeps the scent of the fruit.
    const bool scent = lost >= worth_saying && asked_away && stock.listed();
    if (!sets && !comes_back && !scent) return all;
    const Knowledge& knowledge = context.knowledge();
    std::vector<std::string> bright;
    for (const auto& line : base.lines) {
        const double acid = dose_of(context.nominal().unit(line), Role::acid);
        if (acid <= 0) continue;
        for (const auto& path : graph.from(Role::acid, index_of(knowledge, line.ingredient))) {
            const Ingredient& to = knowledge.records().ingredients[path.to];
            Line food;
            food.ingredient = to.id;
            const Material& unit = context.nominal().unit(food);
            const bool aroma_only = unit[AromaNote::citrus] >= zesty && unit[Amount::titratable] < hardly_sour * acid;
            const bool welcome = !stock.offer(to).excluded && (!scent || (stock.names(to.id) && stock.offer(to).on_hand));
            if (aroma_only && welcome && std::find(bright.begin(), bright.end(), to.names.front()) == bright.end())
                bright.push_back(to.names.front() + (stock.names(to.id) ? " (on hand)" : ""));
        }
    }
    constexpr std::size_t most_named = 3;
    if (bright.size() > most_named) bright.resize(most_named);
    Reason reason;
    if (!bright.empty()) {
        reason.kind = ReasonKind::comes_back_as_aroma;
        if (sets) reason.role = "more";
        reason.foods = std::move(bright);
        all.push_back(reason);
    }
    if (!comes_back && !sets) return all;
    reason = make_reason(ReasonKind::comes_back_outside, at_the_plate(base, std::abs(before - after), stock, context));
    if (sets && (reason.figures.empty() || after <= before)) return all;
    if (sets) reason.role = "more";
    all.push_back(std::move(reason));
    return all;
}

}  // namespace standin
