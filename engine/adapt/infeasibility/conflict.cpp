#include "adapt/infeasibility/conflict.hpp"

#include <algorithm>
#include <functional>
#include <optional>
#include <set>

#include "adapt/goals/request.hpp"
#include "adapt/variants/explain.hpp"
#include "adapt/variants/variant.hpp"
#include "core/band.hpp"
#include "knowledge/index/line_name.hpp"

namespace standin {
namespace {

// What one demand is called, and the request without it.
struct Demand {
    enum class About { want, line, exclusion, stock } about;
    std::string what;  // the want, the line, what is to be left out
    Reason reason;
    std::function<void(Formula&, AdaptRequest&, std::vector<Goal>&)> drop;
};

class MinimalConflict {
public:
    MinimalConflict(const Formula& formula, const AdaptRequest& request, const std::vector<Goal>& goals, const SwapGraph& graph,
                    const Context& context)
        : formula_(formula), request_(request), goals_(goals), graph_(graph), context_(context) {}

    Conflict find() {
        list_demands();
        std::vector<bool> dropped(demands_.size(), false);
        if (can_be_met(dropped)) return {};
        for (std::size_t d = 0; d < demands_.size(); ++d) {
            dropped[d] = true;
            if (can_be_met(dropped)) dropped[d] = false;
        }
        Conflict conflict;
        for (std::size_t d = 0; d < demands_.size(); ++d) {
            if (dropped[d]) continue;
            conflict.demands.push_back(demands_[d].reason);
            if (demands_[d].about == Demand::About::want) conflict.wants.push_back(demands_[d].what);
        }
        conflict.would_give = what_gives(dropped);
        return conflict;
    }

private:
    void list_demands() {
        for (const auto& goal : goals_) {
            const std::string want = goal.want;
            if (std::any_of(demands_.begin(), demands_.end(),
                            [&](const Demand& d) { return d.about == Demand::About::want && d.what == want; }))
                continue;
            demands_.push_back({Demand::About::want, want, demand("want", want), [want](Formula&, AdaptRequest&, std::vector<Goal>& goals) {
                                    std::erase_if(goals, [&](const Goal& g) { return g.want == want; });
                                }});
        }
        for (std::size_t l = 0; l < formula_.lines.size(); ++l) {
            if (!formula_.lines[l].keep) continue;
            demands_.push_back({Demand::About::line, name(formula_.lines[l]), demand("keep", name(formula_.lines[l])),
                                [l](Formula& f, AdaptRequest&, std::vector<Goal>&) { f.lines[l].keep = false; }});
        }
        for (const auto& word : request_.without)
            demands_.push_back({Demand::About::exclusion, word, demand("without", word),
                                [word](Formula&, AdaptRequest& r, std::vector<Goal>&) { std::erase(r.without, word); }});
        if (request_.have)
            demands_.push_back(
                {Demand::About::stock, "", short_of(), [](Formula&, AdaptRequest& r, std::vector<Goal>&) { r.have.reset(); }});
    }

    std::string name(const Line& line) const { return line_name(line, context_.knowledge()); }

    // The stock is one demand; what it lacks of the formula says more than the word alone.
    Reason short_of() const {
        Reason reason = demand("stock", "");
        reason.kind = ReasonKind::short_of;
        const auto stock = Stock::of(formula_, request_, context_);
        if (!stock) return reason;
        const Problem problem = problem_with(*stock);
        std::vector<Figure> all;
        for (std::size_t l = 0; l < formula_.lines.size(); ++l) {
            const Line& line = formula_.lines[l];
            const Offer offer = stock->offer(line);
            const double there = !offer.on_hand ? 0 : offer.grams.value_or(line.grams.mid);
            if (there >= line.grams.mid || offer.excluded) continue;
            all.push_back({name(line), line.grams.mid, there, "g"});
            if (!can_be_made_up_for(l, problem)) reason.figures.push_back(all.back());
        }
        if (reason.figures.empty()) reason.figures = std::move(all);
        return reason;
    }

    Problem problem_with(const Stock& stock) const {
        const NominalBatch base(formula_, context_.nominal());
        const Distance distance(context_, base.total(), base.state(), goals_);
        return make_problem(formula_, stock, graph_, distance, context_, Leeway::all);
    }

    // What has stand-ins enough on hand is not what the batch fails by.
    static bool can_be_made_up_for(std::size_t l, const Problem& problem) {
        constexpr double all_but = 0.9;  // of what is missing; judgement
        double covered = 0;
        for (const auto& move : problem.moves)
            if (move.kind == MoveKind::stand_in && move.line == l && !problem.formula.lines[l].keep)
                covered += move.most * move.covers->per_gram;
        return covered >= all_but * missing_share(problem, l);
    }

    // With how much of the batch the meat on hand would make, unless that is none of it or all of it.
    Reason more_on_hand() const {
        Reason reason = demand("stock", "");
        reason.kind = ReasonKind::more_on_hand;
        const auto stock = Stock::of(formula_, request_, context_);
        double share = 1;
        for (const auto& line : formula_.lines) {
            const Ingredient& ingredient = *context_.knowledge().ingredient(line.ingredient);
            if (!stock || !ingredient.meat) continue;
            const Offer offer = stock->offer(line);
            share = std::min(share, !offer.on_hand ? 0 : offer.grams.value_or(line.grams.mid) / line.grams.mid);
        }
        if (share > 0 && share < 1) reason.figures.push_back({"batch", {}, 100 * share, "%"});
        return reason;
    }

    // The request without what is dropped.
    struct Asked {
        Formula formula;
        AdaptRequest request;
        std::vector<Goal> goals;
    };

    Asked without(const std::vector<bool>& dropped) const {
        Asked asked{formula_, request_, goals_};
        for (std::size_t d = 0; d < demands_.size(); ++d)
            if (dropped[d]) demands_[d].drop(asked.formula, asked.request, asked.goals);
        return asked;
    }

    bool can_be_met(const std::vector<bool>& dropped) const {
        const auto [formula, request, goals] = without(dropped);
        const auto stock = Stock::of(formula, request, context_);
        if (!stock || !kept_lines_are_there(formula, *stock)) return false;
        return feasible(formula, *stock, goals);
    }

    bool feasible(const Formula& formula, const Stock& stock, const std::vector<Goal>& goals) const {
        return nearest(formula, stock, goals, {}).has_value();
    }

    // Grams of `ingredient` in the nearest batch that keeps every limit; nothing where none does.
    std::optional<double> nearest(const Formula& formula, const Stock& stock, const std::vector<Goal>& goals,
                                  const std::string& ingredient) const {
        const NominalBatch base(formula_, context_.nominal());
        const Distance distance(context_, base.total(), base.state(), goals);
        const Problem problem = make_problem(formula, stock, graph_, distance, context_, Leeway::all);
        const Rebalancer rebalancer(problem, distance, context_.nominal().models());
        const std::vector<Choice> all(problem.moves.size(), Choice::open);
        std::optional<Solution> best;
        for (const auto& process : problem.processes) {
            Solution found = rebalancer.solve(all, process, {}, {.multistart = true});
            if (found.feasible() && (!best || better(found, *best))) best = std::move(found);
        }
        if (!best) return std::nullopt;
        double grams = 0;
        for (std::size_t l = 0; l < formula.lines.size(); ++l)
            if (formula.lines[l].ingredient == ingredient) grams += problem.start[l];
        for (std::size_t m = 0; m < problem.moves.size(); ++m) {
            const Move& move = problem.moves[m];
            grams += (move.kind == MoveKind::reduce ? -1 : 1) * move.brings(ingredient) * best->grams[m];
        }
        return grams;
    }

    // The most of a line that was to be kept with which the rest of what was asked can be met.
    void say_how_much_would_do(Reason& given_up, std::size_t d, std::vector<bool> dropped) const {
        dropped[d] = true;
        Asked asked = without(dropped);
        const auto stock = Stock::of(asked.formula, asked.request, context_);
        const auto line = std::find_if(asked.formula.lines.begin(), asked.formula.lines.end(),
                                       [&](const Line& l) { return name(l) == demands_[d].what; });
        if (!stock || line == asked.formula.lines.end()) return;
        const double whole = line->grams.mid;
        line->keep = true;
        constexpr int halvings = 6;
        double low = 0, high = 1;
        for (int i = 0; i < halvings; ++i) {
            const double middle = (low + high) / 2;
            line->grams = exactly(middle * whole);
            (feasible(asked.formula, *stock, asked.goals) ? low : high) = middle;
        }
        given_up.figures.push_back({demands_[d].what, whole, kitchen_grams(low * whole, true), "g"});
    }

    // Each thing that is short or missing, were there plenty of it: whether that alone would do, and how much is then used.
    std::vector<Reason> what_would_do(const std::vector<bool>& dropped) const {
        constexpr std::size_t most_said = 4;
        std::vector<Reason> all;
        const Asked asked = without(dropped);
        if (!asked.request.have) return all;
        std::set<std::string> tried;
        const auto try_more = [&](const std::string& id, double there) {
            if (all.size() == most_said || !tried.insert(id).second) return;
            AdaptRequest more = asked.request;
            std::erase(more.have->missing, id);
            std::erase_if(more.have->items, [&](const InventoryItem& item) { return item.ingredient == id; });
            more.have->items.push_back({id, std::nullopt});
            const auto stock = Stock::of(asked.formula, more, context_);
            if (!stock || !kept_lines_are_there(asked.formula, *stock)) return;
            const auto grams = nearest(asked.formula, *stock, asked.goals, id);
            if (!grams || *grams <= there) return;
            Reason reason = demand("stock", "");
            reason.kind = ReasonKind::so_much_on_hand;
            reason.foods = {context_.knowledge().ingredient(id)->names.front()};
            reason.figures = {{"on hand", there, *grams, "g"}};
            all.push_back(std::move(reason));
        };
        const auto stock = Stock::of(asked.formula, asked.request, context_), whole = Stock::of(formula_, request_, context_);
        const auto is_left_out = [&](const Line& line) { return whole && whole->offer(line).excluded; };
        for (const auto& line : asked.formula.lines)
            if (!stock->offer(line).on_hand && !is_left_out(line)) try_more(line.ingredient, 0);
        for (const auto& item : asked.request.have->items)
            if (item.grams) try_more(item.ingredient, *item.grams);
        return all;
    }

    bool kept_lines_are_there(const Formula& formula, const Stock& stock) const {
        return std::all_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
            const Offer offer = stock.offer(line);
            return !line.keep || (offer.on_hand && (!offer.grams || *offer.grams >= line.grams.mid));
        });
    }

    // Every demand of the set, given up, resolves it: that is what minimal means.
    std::vector<Reason> what_gives(const std::vector<bool>& dropped) const {
        std::vector<Reason> all;
        for (std::size_t d = 0; d < demands_.size(); ++d) {
            if (dropped[d]) continue;
            // What a guest must not eat is not given up, where anything else would give.
            if (demands_[d].about == Demand::About::exclusion && std::count(dropped.begin(), dropped.end(), false) > 1) continue;
            if (demands_[d].about != Demand::About::stock) {
                all.push_back(demands_[d].reason);
                all.back().kind = ReasonKind::giving_up;
                if (demands_[d].about == Demand::About::line) say_how_much_would_do(all.back(), d, dropped);
                continue;
            }
            all.push_back(more_on_hand());
            for (auto& more : what_would_do(dropped)) all.push_back(std::move(more));
        }
        return all;
    }

    const Formula& formula_;
    const AdaptRequest& request_;
    const std::vector<Goal>& goals_;
    const SwapGraph& graph_;
    const Context& context_;
    std::vector<Demand> demands_;
};

}  // namespace

Reason demand(std::string what, std::string about) {
    Reason reason;
    reason.kind = ReasonKind::demand;
    reason.role = std::move(what);
    reason.about = std::move(about);
    return reason;
}

Conflict minimal_infeasible_subset(const Formula& formula, const AdaptRequest& request, const std::vector<Goal>& goals,
                                   const SwapGraph& graph, const Context& context) {
    return MinimalConflict(formula, request, goals, graph, context).find();
}

}  // namespace standin
