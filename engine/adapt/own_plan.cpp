#include "adapt/own_plan.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "adapt/distance/nearness.hpp"
#include "adapt/moves/losses.hpp"
#include "adapt/moves/problem.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

double grams_of(const Formula& formula, const std::string& ingredient) {
    double grams = 0;
    for (const auto& line : formula.lines) grams += line.ingredient == ingredient ? line.grams.mid : 0;
    return grams;
}

// What the plan leaves out is not to be had, what it has is: so its stand-ins become moves of the problem.
Result<Stock> stock_of_plan(const Formula& base, const Formula& plan, const Context& context) {
    AdaptRequest request;
    Inventory& have = request.have.emplace();
    have.complete = false;
    for (const auto& line : plan.lines) have.items.push_back({line.ingredient, std::nullopt});
    for (const auto& line : base.lines)
        if (grams_of(plan, line.ingredient) <= 0) have.missing.push_back(line.ingredient);
    return Stock::of(base, request, context);
}

class OwnPlan {
public:
    OwnPlan(const Formula& base, const Formula& plan, const Stock& stock, const Context& context)
        : base_(base),
          plan_(plan),
          context_(context),
          graph_(context.knowledge()),
          before_(base, context.nominal()),
          after_(plan, context.nominal()),
          distance_(context, before_.total(), before_.state(), {}),
          problem_(make_problem(base, stock, graph_, distance_, context)),
          material_(after_.total()) {}

    DistanceParts parts() && {
        use_stand_ins();
        price_the_rest();
        const State state = context_.nominal().models().state(material_, after_.process());
        const double square = distance_.square(material_, state);
        DistanceParts parts;
        parts.felt = std::sqrt(std::max(0.0, square));
        parts.lost = std::sqrt(lost_square(problem_, grams_));
        parts.trusted = std::sqrt(price_);
        parts.distance = std::sqrt(parts.felt * parts.felt + parts.lost * parts.lost + price_);
        parts.nearness = nearness_of(parts.distance, context_);
        for (const auto& residual : distance_.residuals(material_, state))
            if (std::abs(residual.value) >= worth_telling) parts.most.push_back({std::string(residual.what), std::abs(residual.value)});
        std::stable_sort(parts.most.begin(), parts.most.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
        return parts;
    }

private:
    static constexpr double worth_telling = 0.3;  // noticeable differences

    // Each new food goes to the line that it stands for best.
    void use_stand_ins() {
        grams_.assign(problem_.moves.size(), 0);
        for (const auto& line : plan_.lines) {
            if (grams_of(base_, line.ingredient) > 0) continue;
            std::optional<std::size_t> best;
            for (std::size_t m = 0; m < problem_.moves.size(); ++m) {
                const Move& move = problem_.moves[m];
                if (move.kind != MoveKind::stand_in || move.second || move.food.ingredient != line.ingredient) continue;
                if (!best || move.price < problem_.moves[*best].price) best = m;
            }
            if (!best) {
                price_ += context_.constant("advice.price.new");
                continue;
            }
            const Move& move = problem_.moves[*best];
            const double grams = line.grams.mid;
            grams_[*best] += grams;
            price_ += move.price;
            material_.add(context_.nominal().unit(line), -grams);
            material_.add(move.per_gram, grams);
        }
    }

    void price_the_rest() {
        constexpr double same = 0.005;  // share of a line
        std::map<std::string, double> seen;
        for (const auto& line : base_.lines) {
            if (!seen.emplace(line.ingredient, 0.0).second) continue;
            const double before = grams_of(base_, line.ingredient), now = grams_of(plan_, line.ingredient);
            if (now > 0 && std::abs(now - before) > same * before) price_ += context_.constant("advice.price.change");
        }
    }

    const Formula& base_;
    const Formula& plan_;
    const Context& context_;
    SwapGraph graph_;
    NominalBatch before_, after_;
    Distance distance_;
    Problem problem_;
    Material material_;
    std::vector<double> grams_;
    double price_ = 0;
};

}  // namespace

DistanceParts distance_of_plan(const Formula& base, const Formula& plan, const Context& context) {
    const auto stock = stock_of_plan(base, plan, context);
    if (!stock) return {};
    return OwnPlan(base, plan, *stock, context).parts();
}

}  // namespace standin
