#include "substitute/stand_ins.hpp"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <map>
#include <set>
#include <string>

#include "core/band.hpp"
#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "substitute/carried_over.hpp"
#include "substitute/conditions.hpp"
#include "substitute/dose.hpp"
#include "substitute/portion.hpp"
#include "substitute/stock.hpp"

namespace standin {
namespace {

class Candidacy {
public:
    Candidacy(const Formula& formula, std::size_t line, const SwapGraph& graph, const Nominal& nominal, const MayUse& may_use,
              const MayUse& may_match)
        : formula_(formula),
          line_(formula.lines[line]),
          graph_(graph),
          nominal_(nominal),
          may_use_(may_use),
          may_match_(may_match),
          portions_(formula, line, nominal),
          partners_(formula, line, portions_, nominal, may_use) {
        for (const auto& swap : records().swaps)
            if (swap.partner && swap.from == line_.ingredient) paired_.push_back(&swap);
    }

    Candidates all() && {
        for (const Role role : ingredient().roles) {
            auto paths = graph_.from(role, index_of(knowledge(), line_.ingredient));
            if (may_match_) add_rough(paths, role);
            for (const auto& path : paths)
                if (may_use_(records().ingredients[path.to]) && !undoes(records().ingredients[path.to])) weigh(path, role, paths);
        }
        std::erase_if(all_.refused, [&](const Refusal& r) { return fit_.count(key_of(r.food)) > 0; });
        return std::move(all_);
    }

private:
    const Knowledge& knowledge() const { return nominal_.knowledge(); }
    const Records& records() const { return knowledge().records(); }
    const Ingredient& ingredient() const { return *knowledge().ingredient(line_.ingredient); }

    // What no swap leads to, and what one leads to only from too far.
    void add_rough(std::vector<SwapPath>& paths, Role role) const {
        const double least = knowledge().parameter("stand_ins.least.closeness").mid;
        const std::size_t own = index_of(knowledge(), line_.ingredient);
        std::set<std::size_t> reached;
        for (const auto& path : paths)
            if (path.closeness >= least) reached.insert(path.to);
        for (std::size_t to = 0; to < records().ingredients.size(); ++to) {
            const Ingredient& food = records().ingredients[to];
            if (reached.count(to) || !may_match_(food) || !matches_roughly(food, role)) continue;
            auto path = graph_.any(role, own, to);
            if (!path) continue;
            // What is poured is no match for what has body, nor the other way.
            constexpr double unlike = 0.75;
            if ((food.tissue == Tissue::liquid) != (ingredient().tissue == Tissue::liquid)) path->closeness *= unlike;
            paths.push_back(std::move(*path));
        }
    }

    // What the line is there for first, by what the food is there for first: bacon sours nothing, and wine is no lean.
    bool matches_roughly(const Ingredient& food, Role role) const {
        if (ingredient().roles.front() != role) return false;
        const bool first = food.roles.front() == role;
        const auto tastes_as = [&](Role taste) { return !contains(ingredient().roles, taste) || contains(food.roles, taste); };
        switch (role) {
            case Role::acid:  // what is sour and no seasoning sours
                return is_any_of(food.roles.front(), {Role::acid, Role::liquid, Role::green, Role::sweet}) ||
                       (food.roles.front() == Role::binder && ingredient().tissue == Tissue::liquid);  // yoghurt for lemon juice
            case Role::green:  // a herb is there for its taste beside its green, and any leaf that is green for a leaf
                return (first || is_leaf(food)) && tastes_as(Role::herb) && tastes_as(Role::allium) && !contains(food.roles, Role::heat);
            case Role::herb:  // fresh for fresh
                return first && is_leaf(food) && is_leaf(ingredient());
            case Role::fat: {
                constexpr double is_fat = 60;  // g in 100 g, judgement: what is less is cheese or a cut, for its own kind
                return first && (food.meat.has_value() == ingredient().meat.has_value() || food.composition.fat.mid >= is_fat);
            }
            case Role::binder:  // flour for flour; a bowl of what is wet is no crumbs
                return first && (food.tissue == ingredient().tissue);
            default:
                return (first || role == Role::heat) && food.meat.has_value() == ingredient().meat.has_value();
        }
    }

    static bool is_leaf(const Ingredient& food) { return standin::is_leaf(food.tissue); }
    static bool is_any_of(Role role, std::initializer_list<Role> roles) { return contains(roles, role); }

    // Crumbs for gluten-free crumbs: who takes those takes them for what they are without.
    bool undoes(const Ingredient& to) const {
        const auto& without = ingredient().free_of;
        return std::any_of(without.begin(), without.end(), [&](const std::string& kind) { return belongs(to, kind, knowledge()); });
    }

    // No mix for a single spice, unless makers take just that for it.
    bool is_mix_for_single(const SwapPath& path, const Ingredient& to) const {
        const auto mix = [&](const Ingredient& food) { return belongs(food, "spice-blend", knowledge()); };
        const bool named = path.swaps.size() == 1 && !records().swaps[path.swaps.front()].any();
        return !named && mix(to) && !mix(ingredient());
    }

    // Evaporated milk and water for milk, cod and oil for salmon: neat, and by its own water or lean, it is the same food once more at
    // another dose.
    bool is_neat_where_thinned(const SwapPath& path, Role role) const {
        const Swap& last = records().swaps[path.swaps.back()];
        if (last.any() || last.partner || portions_.says_how_much(path)) return false;
        return std::any_of(paired_.begin(), paired_.end(), [&](const Swap* swap) {
            if (swap->to != last.to || swap->role != role) return false;
            const Ingredient& beside = *knowledge().ingredient(swap->partner->ingredient);
            return from_the_tap(beside.id) || (role == Role::lean && !beside.meat && may_use_(beside));
        });
    }

    void weigh(const SwapPath& path, Role role, const std::vector<SwapPath>& paths) {
        const Ingredient& to = records().ingredients[path.to];
        const Swap& last = records().swaps[path.swaps.back()];
        if (path.closeness < knowledge().parameter("stand_ins.least.closeness").mid) return;
        if (is_mix_for_single(path, to)) return;
        if (would_have_to_be_dried(line_, to, knowledge())) return;
        if (is_neat_where_thinned(path, role)) return;
        Candidate c;
        c.food = prepared_like(line_, to, preparations_of(last, knowledge()), knowledge());
        if (to.id == line_.ingredient && c.food.prepared == line_.prepared) return;
        const auto portion = portions_.of(c.food, path, role);
        if (!portion) return;
        const Process& process = formula_.process;
        if (!conditions_allow(last, process, knowledge())) return refuse(c.food, Refusal::By::process, asked(last));
        c.role = role;
        c.closeness = path.closeness;
        c.swaps = path.swaps;
        c.share = most_share(path, formula_, knowledge());
        c.trade = std::all_of(path.swaps.begin(), path.swaps.end(), [&](std::size_t s) { return of_the_trade(records().swaps[s]); });
        c.food.grams = exactly(portion->grams * c.share);
        c.least_grams = portion->least * c.share;
        c.most_grams = portion->most * c.share;
        c.bounded = portion->bounded;
        c.carries = portion->carries;
        c.felt = portion->felt;
        if (last.partner) {
            const std::string& beside = last.partner->ingredient;
            if (!from_the_tap(beside) && !may_use_(*knowledge().ingredient(beside))) return;
            c.partner = partner_named(last, line_.grams.mid * portion->carries);
            seed_as_the_line(c.partner->food);
            Line& second = c.partner->food;
            if (second.prepared.empty() && to_be_ground(ingredient(), *knowledge().ingredient(second.ingredient), knowledge()))
                second.prepared.push_back({"ground", std::nullopt});
        } else {
            bring_partner(c, *portion, paths);
            if (!c.partner) bring_water(c);
        }
        if (portion->why && !c.partner) return refuse(c.food, Refusal::By::weight, *portion->why);
        if (fit_.insert(key_of(c.food) + (last.partner ? "+" + last.partner->ingredient : "")).second) all_.fit.push_back(std::move(c));
    }

    // With a partner it takes the line's place weight for weight; alone it carries as much of the dose as its bulk allows.
    void bring_partner(Candidate& c, const WeighedOut& portion, const std::vector<SwapPath>& paths) {
        if (c.food.ingredient == line_.ingredient || seeded_for_it(c.food)) return;
        const double even = portion.even.value_or(portion.grams);
        const double lacking = portion.even ? portions_.dose(c.role) - even * portion.per_gram : portion.lacking;
        c.partner = partners_.bring(lacking * c.share, c.role, c.food, paths);
        if (!c.partner || !portion.even) return;
        c.food.grams = exactly(even * c.share);
        c.bounded = make_reason(ReasonKind::even_weight);
    }

    // Lemon juice for wine, a cube for stock: the water that the line brought is weighed in beside it.
    void bring_water(Candidate& c) const {
        const bool pours =
            ingredient().tissue == Tissue::liquid && (c.role == Role::acid || c.role == Role::liquid || c.role == Role::salt);
        const Ingredient& food = *knowledge().ingredient(c.food.ingredient);
        const bool zest =
            food.roles.front() == Role::spice || food.roles.front() == Role::herb;  // brings a smell, and no liquid is made of it
        if (!pours || zest) return;
        const auto constant = [&](std::string_view id) { return knowledge().parameter(id).mid; };
        const double grams = line_.grams.mid * c.share;
        const double lacking = nominal_.unit(line_)[Amount::water] * grams - nominal_.unit(c.food)[Amount::water] * c.food.grams.mid;
        if (lacking < constant("stand_ins.water.least") * grams) return;
        if (lacking < constant("stand_ins.water.batch") * portions_.batch_grams()) return;
        PartnerFood water;
        water.food.ingredient = "water";
        water.food.grams = exactly(lacking);
        water.why = make_reason(ReasonKind::makes_up_liquid);
        water.named = true;
        c.partner = std::move(water);
    }

    // The hot half of a chile whose seeds went out goes in without them too.
    void seed_as_the_line(Line& hot) const {
        const bool pod = knowledge().ingredient(hot.ingredient)->tissue == Tissue::chile_flesh;
        if (pod && has_step(line_.prepared, "seeded") && !has_step(hot.prepared, "seeded"))
            hot.prepared.push_back({"seeded", std::nullopt});
    }

    // Seeds come out to have less heat: nothing hot is then weighed in beside it.
    bool seeded_for_it(const Line& food) const { return has_step(food.prepared, "seeded") && !has_step(line_.prepared, "seeded"); }

    // Marked as such, or printed in a list of substitutions.
    bool of_the_trade(const Swap& swap) const { return swap.trade || printed(swap.source) || (swap.ratio && printed(swap.ratio->source)); }

    bool printed(const std::string& id) const {
        const SourceRecord* source = knowledge().source(id);
        return source && source->kind == SourceKind::published;
    }

    Reason asked(const Swap& swap) const {
        Reason why = make_reason(ReasonKind::asks_of_making);
        why.asks = conditions_ask(swap, formula_.process, knowledge());
        return why;
    }

    void refuse(const Line& food, Refusal::By by, Reason why) {
        why.foods = {knowledge().ingredient(food.ingredient)->names.front()};
        if (refused_.insert(key_of(food)).second) all_.refused.push_back({food, by, std::move(why)});
    }

    const Formula& formula_;
    const Line& line_;
    const SwapGraph& graph_;
    const Nominal& nominal_;
    const MayUse& may_use_;
    const MayUse& may_match_;
    Portions portions_;
    Partners partners_;
    std::vector<const Swap*> paired_;  ///< swaps of the line that name a partner
    Candidates all_;
    std::set<std::string> fit_, refused_;
};

}  // namespace

Candidates candidates_for(const Formula& formula, std::size_t line, const SwapGraph& graph, const Nominal& nominal, const MayUse& may_use,
                          const MayUse& may_match) {
    return Candidacy(formula, line, graph, nominal, may_use, may_match).all();
}

namespace {

const std::vector<Role>& roles_of_food(const Candidate& candidate, const Nominal& nominal) {
    return nominal.knowledge().ingredient(candidate.food.ingredient)->roles;
}

}  // namespace

Material counted_as(const Candidate& candidate, const Line& line, const Nominal& nominal) {
    Material unit = nominal.unit(candidate.food);
    const double grams = candidate.food.grams.mid;
    // Fennel for leek is body and sweetness: it brings none of the bite, and no share of it is claimed.
    const bool for_the_body =
        candidate.role == Role::allium && !candidate.in_two_parts() && !contains(roles_of_food(candidate, nominal), Role::allium);
    if (for_the_body) count_as_flavour(unit, candidate.role, unit, 0);
    else if (grams > 0)
        count_as_flavour(unit, candidate.role, nominal.unit(line), line.grams.mid * candidate.share * candidate.felt / grams);
    // Flax and chia for egg are a gel, and nobody counts them as nuts.
    if (candidate.role == Role::binder && !(nominal.unit(line)[Amount::dose_nut] > 0)) unit[Amount::dose_nut] = 0;
    return unit;
}

std::string key_of(const Line& food) {
    std::string key = food.ingredient;
    for (const auto& step : food.prepared) key += "," + step.preparation;
    return key;
}

namespace {

// Of two forms of one food the one that is clearly nearer, the one whose weight carries the dose, the less prepared, the one that can stand
// for more. Raw rice by way of rice flour is no plainer form of the rice that is toasted and ground.
bool plainer(const Candidate& a, const Candidate& b) {
    constexpr double clearly_nearer = 0.15;  // closeness; judgement
    const auto is_nearer = [](const Candidate& one, const Candidate& other) {
        return one.closeness >= other.closeness + clearly_nearer && one.swaps.size() <= other.swaps.size();
    };
    if (is_nearer(a, b) || is_nearer(b, a)) return is_nearer(a, b);
    if (a.bounded.has_value() != b.bounded.has_value()) return !a.bounded;
    if (a.food.prepared.size() != b.food.prepared.size()) return a.food.prepared.size() < b.food.prepared.size();
    return key_of(a.food) == key_of(b.food) && a.share > b.share;
}

}  // namespace

std::vector<Candidate> once_each(const std::vector<Candidate>& all, bool one_form) {
    std::vector<Candidate> kept;
    std::map<std::string, std::size_t> places;
    for (const auto& candidate : all) {
        std::string key = one_form ? candidate.food.ingredient : key_of(candidate.food);
        if (candidate.partner && candidate.partner->named) key += "+" + candidate.partner->food.ingredient;
        const auto [place, fresh] = places.try_emplace(key, kept.size());
        if (fresh) kept.push_back(candidate);
        else if (plainer(candidate, kept[place->second])) kept[place->second] = candidate;
    }
    return kept;
}

std::size_t index_of(const Knowledge& knowledge, std::string_view id) {
    return static_cast<std::size_t>(knowledge.ingredient(id) - knowledge.records().ingredients.data());
}

Line brought_in(const Ingredient& food, Role role, const Knowledge& knowledge) {
    const Swap* closest = nullptr;
    for (const auto& swap : knowledge.records().swaps)
        if (swap.role == role && swap.to == food.id && (!closest || swap.closeness > closest->closeness)) closest = &swap;
    return prepared_like({}, food, closest ? preparations_of(*closest, knowledge) : std::vector<std::string>{}, knowledge);
}

}  // namespace standin
