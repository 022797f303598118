#include "advise/adapt.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

#include "advise/conflict.hpp"
#include "advise/difference.hpp"
#include "advise/explain.hpp"
#include "advise/request.hpp"
#include "advise/search.hpp"
#include "advise/verify.hpp"
#include "predict/predict.hpp"
#include "safety/allergens.hpp"
#include "safety/safety.hpp"

namespace standin {
namespace {

Compared compare(const Formula& base, const Formula& variant, Pantry& middle) {
    const Batch before(base, middle), after(variant, middle);
    Compared c;
    c.base = before.total(0);
    c.variant = after.total(0);
    c.before = middle.models().state(c.base, before.process(0), 0);
    c.after = middle.models().state(c.variant, after.process(0), 0);
    c.bind_before = middle.models().bind(c.base, before.process(0), 0);
    c.bind_after = middle.models().bind(c.variant, after.process(0), 0);
    return c;
}

bool meets_all(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

class Adapt {
public:
    Adapt(const Formula& formula, const AdaptRequest& request, const Context& context, std::vector<Goal> goals, Stock stock)
        : formula_(formula),
          request_(request),
          context_(context),
          stock_(std::move(stock)),
          graph_(context.knowledge()),
          base_batch_(formula, context.middle),
          base_total_(base_batch_.total(0)),
          yardstick_(context, base_total_, context.middle.models().state(base_total_, base_batch_.process(0), 0), std::move(goals)),
          problem_(make_problem(formula, stock_, graph_, yardstick_, context)),
          base_drawn_(formula, context.drawn),
          base_states_(states_of(base_drawn_, context.drawn.models())) {}

    AdaptAnswer answer() {
        AdaptAnswer answer;
        answer.base = predicted(formula_, base_drawn_, base_states_);
        answer.presumed = stock_.presumed();
        if (auto opposed = contradiction(yardstick_.goals(), yardstick_.base()); !opposed.empty()) {
            for (const auto& want : opposed) answer.conflict.push_back("want " + want);
            answer.would_give = {"giving up one of them"};
            return answer;
        }
        if (!kept_lines_missing()) search(answer);
        if (std::none_of(answer.variants.begin(), answer.variants.end(), meets_all)) {
            Conflict conflict = smallest_conflict(formula_, request_, yardstick_.goals(), graph_, context_);
            answer.conflict = std::move(conflict.demands);
            answer.would_give = std::move(conflict.would_give);
            // Each demand can be met alone and all together, but not in the plans found: say that, not nothing.
            if (answer.conflict.empty()) answer.conflict.push_back("no plan within the limits meets every want");
        }
        return answer;
    }

private:
    Prediction predicted(const Formula& formula, const Batch& batch, const std::vector<State>& states) {
        Prediction p = predict_formula(formula, batch, states, context_.drawn);
        mark_safety(p, formula, context_.knowledge(), context_.options.rules);
        return p;
    }

    bool kept_lines_missing() const {
        for (std::size_t l = 0; l < formula_.lines.size(); ++l)
            if (formula_.lines[l].keep && problem_.forced[l]) return true;
        return false;
    }

    // The search works at the middle of every band; what is shown and judged are medians over the draws, which lie a little off. Where
    // that breaks a goal, its limit is moved by as much and the search runs again.
    void search(AdaptAnswer& answer) {
        constexpr int most_rounds = 3;
        for (int round = 0; round < most_rounds; ++round) {
            AdaptAnswer tried = answer;
            search_once(tried);
            if (round > 0 && tried.variants.empty()) break;
            answer = std::move(tried);
            if (!tighten(answer)) break;
        }
        if (std::any_of(answer.variants.begin(), answer.variants.end(), meets_all)) std::erase_if(answer.variants, std::not_fn(meets_all));
        for (std::size_t i = 0; i < answer.variants.size(); ++i) answer.variants[i].rank = i + 1;
    }

    // Moves the limits that some variant misses by its medians; false when all are kept.
    bool tighten(const AdaptAnswer& answer) {
        constexpr double margin = 1.5;  // the median moves a little less than the limit
        bool moved = false;
        for (std::size_t g = 0; g < problem_.hard.size(); ++g) {
            Goal& goal = problem_.hard[g];
            const Goal& asked = yardstick_.goals()[g];
            double short_by = 0;
            for (const auto& variant : answer.variants) {
                short_by = std::max(short_by, shortfall(asked, variant.prediction.properties[goal.property].mid,
                                                        answer.base.properties[goal.property].mid) -
                                                  allowed(asked));
            }
            if (short_by <= 0) continue;
            goal.limit += (goal.kind == Goal::Kind::at_most ? -margin : margin) * short_by;
            moved = moved || goal.kind != Goal::Kind::equal;
        }
        return moved;
    }

    // How far from its target a goal still counts as met: words a little, conditions not at all but for the last shown figure.
    double allowed(const Goal& goal) const {
        const bool strict = goal.condition && goal.kind != Goal::Kind::equal;
        return strict ? 0.002 * std::abs(goal.limit) : met_within * yardstick_.unit(goal.property);
    }

    void search_once(AdaptAnswer& answer) {
        SearchLimits limits;
        limits.plans = std::max<std::size_t>(1, request_.top);
        limits.changes = request_.changes;
        limits.progress = context_.options.progress;
        SearchResult found = search_plans(problem_, yardstick_, context_.middle.models(), limits);
        if (found.plans.empty() && answer.variants.empty()) found = best_effort(limits);
        answer.proved = found.proved;
        answer.gap = found.gap;
        answer.plans_visited += found.visited;
        answer.variants.clear();
        for (const auto& plan : found.plans) {
            BuiltVariant built = build_variant(problem_, plan, stock_, context_.knowledge());
            const auto faults = faults_of(built.formula, problem_, stock_, yardstick_, context_.middle);
            if (faults.empty()) answer.variants.push_back(variant_of(std::move(built), plan, answer.base));
            else if (context_.options.log)
                for (const auto& fault : faults) context_.options.log("a plan was dropped: " + fault);
        }
        std::stable_sort(answer.variants.begin(), answer.variants.end(),
                         [](const Variant& a, const Variant& b) { return a.distance < b.distance; });
    }

    // When the words cannot all be met, the nearest that can be done is still worth seeing; conditions stay hard.
    SearchResult best_effort(const SearchLimits& limits) {
        Problem softer = problem_;
        softer.hard.clear();
        for (const auto& goal : yardstick_.goals())
            if (goal.condition) softer.hard.push_back(goal);
        return search_plans(softer, yardstick_, context_.middle.models(), limits);
    }

    Variant variant_of(BuiltVariant built, const Plan& plan, const Prediction& base) {
        Variant v;
        Compared compared = compare(formula_, built.formula, context_.middle);
        // The plan's prices, and the deviation of the weights as rounded.
        v.felt = yardstick_.distance(compared.variant, compared.after);
        v.distance = plan.distance - plan.deviation + v.felt;
        v.table = table_sentence(yardstick_, compared);
        const Batch batch(built.formula, context_.drawn);
        const auto states = states_of(batch, context_.drawn.models());
        v.prediction = predicted(built.formula, batch, states);
        // Reasons quote the medians that stand in the tables, not the middle draw the search works with.
        for_each_property([&](Property p) {
            compared.before.properties[p] = base.properties[p].mid;
            compared.after.properties[p] = v.prediction.properties[p].mid;
        });
        v.edits = explain_edits(built, problem_, compared, context_);
        v.new_allergens = new_allergens(base, v.prediction);
        v.gives_back = what_gives_back(formula_, yardstick_, compared, graph_, stock_, context_);
        v.formula = std::move(built.formula);
        const Differences d = differences_between(base_states_, states);
        v.differences = d.properties;
        v.colour_rested = d.rested;
        v.colour_cooked = d.cooked;
        wants(v, base, states);
        return v;
    }

    void wants(Variant& v, const Prediction& base, const std::vector<State>& states) {
        for (const auto& goal : yardstick_.goals()) {
            const double slack = allowed(goal);
            const double before = base.properties[goal.property].mid, after = v.prediction.properties[goal.property].mid;
            std::size_t met = 0;
            for (std::size_t i = 0; i < states.size(); ++i)
                met += shortfall(goal, states[i].properties[goal.property], base_states_[i].properties[goal.property]) <= slack;
            WantResult result{
                goal.want, shortfall(goal, after, before) <= slack, static_cast<double>(met) / static_cast<double>(states.size()), {}};
            const char* asked = goal.kind == Goal::Kind::at_least ? " or more" : goal.kind == Goal::Kind::at_most ? " or less" : "";
            result.says = std::string(info(goal.property).name) + " " + figures(before) + " -> " + figures(after) + " " +
                          std::string(info(goal.property).unit) + "; asked for " + figures(goal.target(before)) + asked;
            if (!goal.condition) result.says += ", within " + figures(slack) + " counts as met";
            v.wants.push_back(std::move(result));
        }
    }

    const Formula& formula_;
    const AdaptRequest& request_;
    const Context& context_;
    Stock stock_;
    SwapGraph graph_;
    Batch base_batch_;
    Material base_total_;
    Yardstick yardstick_;
    Problem problem_;
    Batch base_drawn_;
    std::vector<State> base_states_;
};

}  // namespace

Result<AdaptAnswer> adapt_formula(const Formula& formula, const AdaptRequest& request, const Context& context) {
    const auto marked = with_keep_marks(formula, request, context.knowledge());
    if (!marked) return Failure(marked.error());
    auto goals = read_wants(request.wants, context.knowledge());
    if (!goals) return Failure(goals.error());
    auto stock = Stock::of(*marked, request, context.knowledge());
    if (!stock) return Failure(stock.error());
    return Adapt(*marked, request, context, std::move(*goals), std::move(*stock)).answer();
}

}  // namespace standin
