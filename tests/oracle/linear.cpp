// The linear core against GLPK: with deviations that weigh nothing, a request under limits on composition is a linear programme while
// every move is open, and a mixed integer one (a price for each move that is used at all) when plans are searched.
#include <glpk.h>

#include <cmath>
#include <memory>

#include "adapt/goals/request.hpp"
#include "adapt/search/search.hpp"
#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace linear_test {

constexpr std::uint64_t problems = 60;  // a good third can be met
constexpr double weightless = 1e300;    // a difference that nobody would ever notice
constexpr double alike = 0.015;         // what is left of the deviations: a dose that goes altogether still weighs ln(500) / ln(weightless)
constexpr double simplicity = 0.4;      // squared; the search holds a simpler plan for as good as one that gains less
constexpr double kept = 1e-4;           // a limit broken by less counts as kept (Solution::feasible)

const Knowledge& nothing_noticed() {
    static const Knowledge changed_knowledge = changed([](Records& records) {
        for (auto& d : records.perception) {
            const bool step = d.property == "colour" || d.property == "aroma" || d.property == "dose" || d.property == "batch_g" ||
                              d.property == "heat_mg_kg";
            d.step.band = exactly(step ? weightless : 0);
        }
    });
    return changed_knowledge;
}

// A random formula with conditions on fat, protein, water and salt that it misses or hardly keeps.
class Linear {
public:
    explicit Linear(std::uint64_t number) : evaluator_(nothing_noticed(), 16, 1) {
        CaseMaker make(number);
        formula_ = make.formula();
        AdaptRequest request;
        request.have = make.inventory(formula_);
        const Context context{evaluator_, options_};
        const auto stock = Stock::of(formula_, request, context).value();
        const NominalBatch batch(formula_, evaluator_.nominal());
        const Material& base = batch.total();
        const State state = batch.state();
        const auto shifted = [&](const char* word, Property p, const char* sign, double by) {
            return word + std::string(sign) + std::to_string(state.properties[p] * by);
        };
        std::vector<std::string> wants{shifted("fat", Property::fat_pct, "<=", make.between(0.75, 1.0))};
        if (make.chance(0.5)) wants.push_back(shifted("protein", Property::protein_pct, ">=", make.between(0.95, 1.05)));
        if (make.chance(0.5)) wants.push_back(shifted("salt", Property::salt_pct, "<=", make.between(0.85, 1.05)) + " % of batch");
        if (make.chance(0.3)) wants.push_back(shifted("water", Property::water_pct, "<=", make.between(0.97, 1.03)));
        const auto goals = read_wants(wants, nothing_noticed()).value();
        const Distance asking(context, base, state, goals);
        problem = make_problem(formula_, stock, graph(), asking, context);
        problem.loss.clear();  // what is lost counts by its square
        distance.emplace(context, base, state, std::vector<Goal>{});
    }

    const Models& models() const { return evaluator_.nominal().models(); }

    Problem problem;
    std::optional<Distance> distance;

private:
    static const SwapGraph& graph() {
        static const SwapGraph all(nothing_noticed());
        return all;
    }

    Options options_;
    Evaluator evaluator_;
    Formula formula_;
};

// A share limit turned linear: past = amount - limit * mass must not be positive (at most) or negative (at least).
double past(const Goal& goal, const Material& m) {
    const Amount amount = goal.property == Property::fat_pct       ? Amount::fat
                          : goal.property == Property::protein_pct ? Amount::protein
                          : goal.property == Property::water_pct   ? Amount::water
                                                                   : Amount::salt;
    const double value = 100 * m[amount] - goal.limit * m[Amount::mass];
    return goal.kind == Goal::Kind::at_most ? value : -value;
}

// Least price by GLPK: whole prices with `integer`, else prices in proportion. Infinite where nothing meets the limits, each of which may
// be broken by `grace` of its own scale (a goal: in its property's unit).
double by_glpk(const Problem& p, bool integer, double grace = 0) {
    const int n = static_cast<int>(p.moves.size());
    const std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> lp(glp_create_prob(), &glp_delete_prob);
    glp_set_obj_dir(lp.get(), GLP_MIN);
    std::vector<int> rows{0}, columns{0};
    std::vector<double> values{0};
    const auto put = [&](int row, int column, double value) {
        if (value == 0) return;
        rows.push_back(row);
        columns.push_back(column);
        values.push_back(value);
    };
    glp_add_cols(lp.get(), integer ? 2 * n : n);  // grams over most; then whether it is used
    for (int m = 0; m < n; ++m) {
        const Move& move = p.moves[static_cast<std::size_t>(m)];
        glp_set_col_bnds(lp.get(), m + 1, move.most > 0 ? GLP_DB : GLP_FX, 0, 1);
        if (!integer) glp_set_obj_coef(lp.get(), m + 1, move.price);
        else {
            glp_set_col_kind(lp.get(), n + m + 1, GLP_BV);
            glp_set_obj_coef(lp.get(), n + m + 1, move.price);
            const int row = glp_add_rows(lp.get(), 1);
            glp_set_row_bnds(lp.get(), row, GLP_UP, 0, 0);
            put(row, m + 1, 1);
            put(row, n + m + 1, -1);
            const int least = glp_add_rows(lp.get(), 1);
            glp_set_row_bnds(lp.get(), least, GLP_UP, 0, 0);
            put(least, m + 1, -1);
            put(least, n + m + 1, move.least / move.most);
        }
    }
    const auto limit = [&](double room, auto slope) {
        const int row = glp_add_rows(lp.get(), 1);
        glp_set_row_bnds(lp.get(), row, GLP_UP, 0, room);
        for (int m = 0; m < n; ++m) put(row, m + 1, slope(static_cast<std::size_t>(m)) * p.moves[static_cast<std::size_t>(m)].most);
    };
    for (const auto& goal : p.hard)
        limit(grace * p.start_total[Amount::mass] - past(goal, p.start_total),
              [&](std::size_t m) { return past(goal, p.moves[m].per_gram); });
    for (const auto& l : p.constraints) limit(l.room + grace * l.scale, [&](std::size_t m) { return l.per_gram[m]; });
    for (const auto& group : p.exclusive) {  // of each one at most; in proportion, their shares come to one
        const int row = glp_add_rows(lp.get(), 1);
        glp_set_row_bnds(lp.get(), row, GLP_UP, 0, 1);
        for (const auto m : group) put(row, static_cast<int>(m) + 1 + (integer ? n : 0), 1);
    }
    glp_load_matrix(lp.get(), static_cast<int>(values.size()) - 1, rows.data(), columns.data(), values.data());
    glp_term_out(GLP_OFF);
    if (!integer) {
        glp_smcp simplex;
        glp_init_smcp(&simplex);
        if (glp_simplex(lp.get(), &simplex) != 0 || glp_get_status(lp.get()) != GLP_OPT) return INFINITY;
        return glp_get_obj_val(lp.get());
    }
    glp_iocp whole;
    glp_init_iocp(&whole);
    whole.presolve = GLP_ON;
    if (glp_intopt(lp.get(), &whole) != 0 || glp_mip_status(lp.get()) != GLP_OPT) return INFINITY;
    return glp_mip_obj_val(lp.get());
}

struct Tally {
    std::size_t same = 0, simpler = 0, better = 0, unmet = 0, worse = 0;
    double largest = 0;
    std::string cases;

    void add(std::uint64_t number, double ours, double other, double grace) {
        if (std::isinf(ours) && std::isinf(other)) {
            ++unmet;
            return;
        }
        const double gap = ours - other;
        if (gap < -alike) ++better;
        else if (gap <= alike) ++same;
        else if (gap <= grace) ++simpler;
        else ++worse;
        if (std::abs(gap) > alike)
            cases += "\n  problem " + std::to_string(number) + ": ours " + std::to_string(ours) + ", GLPK " + std::to_string(other);
        if (std::isfinite(gap)) largest = std::max(largest, gap);
    }
};

TEST_CASE("without deviations an open plan costs what GLPK's simplex says") {
    Tally tally;
    for (std::uint64_t number = 0; number < problems; ++number) {
        const Linear linear(number);
        const Rebalancer rebalancer(linear.problem, *linear.distance, linear.models());
        const std::vector<Choice> open(linear.problem.moves.size(), Choice::open);
        const Solution found = rebalancer.solve(open, linear.problem.processes.front(), {});
        const double way = linear.problem.processes.front().price;
        tally.add(number, found.feasible() ? found.cost : INFINITY, by_glpk(linear.problem, false), 0);
        CHECK(way == 0);
    }
    WARN(problems << " problems: " << tally.same << " alike within " << alike << " (" << tally.largest << " at most), " << tally.unmet
                  << " that neither can meet, " << tally.better << " below GLPK, " << tally.worse << " above" << tally.cases);
    CHECK(tally.same >= 20);
    CHECK(tally.better == 0);  // it would break a limit
    CHECK(tally.worse == 0);
}

TEST_CASE("without deviations the best plan costs what GLPK's branch and cut says") {
    Tally tally;
    std::size_t on_the_edge = 0;
    for (std::uint64_t number = 0; number < problems; ++number) {
        const Linear linear(number);
        SearchLimits limits;
        limits.plans = 1;
        const SearchResult found = search_plans(linear.problem, *linear.distance, linear.models(), limits);
        const double ours = found.plans.empty() ? INFINITY : found.plans.front().cost, exact = by_glpk(linear.problem, true);
        // At the very edge of a limit a whole change hangs on what counts as kept; there GLPK gets the same grace.
        const bool at_the_edge = ours < exact - alike;
        on_the_edge += at_the_edge;
        tally.add(number, ours, at_the_edge ? by_glpk(linear.problem, true, kept) : exact, simplicity);
    }
    WARN(problems << " problems: " << tally.same << " alike within " << alike << ", " << tally.simpler << " simpler and within "
                  << simplicity << ", " << tally.unmet << " that neither can meet, " << tally.better << " below GLPK, " << tally.worse
                  << " above, " << on_the_edge << " compared with the grace of the search" << tally.cases);
    CHECK(tally.same >= 15);
    CHECK(on_the_edge <= 2);
    CHECK(tally.better == 0);
    CHECK(tally.worse == 0);
}

}  // namespace linear_test
