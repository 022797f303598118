#include "adapt/verification/verify.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "adapt/distance/met.hpp"
#include "evaluate/predict.hpp"
#include "models/as_bought.hpp"

namespace standin {
namespace {

constexpr double weight_slack = 1e-6;     // share
constexpr double condition_slack = 0.05;  // noticeable differences; what rounding to kitchen weights may move
constexpr double meat_slack = 5e-3;       // share; what rounding three lines to 5 g takes

bool same_line(const Line& a, const Line& b) {
    return a.ingredient == b.ingredient && a.prepared == b.prepared && a.grams == b.grams && a.weighed_prepared == b.weighed_prepared;
}

}  // namespace

std::vector<std::string> faults_of(const Formula& variant, const Problem& problem, const Stock& stock, const std::vector<Goal>& goals,
                                   const Distance& distance, const JudgedOn& draws, const Nominal& nominal) {
    std::vector<std::string> faults;
    const Knowledge& knowledge = nominal.knowledge();
    for (const auto& line : problem.formula.lines)
        if (line.keep && std::none_of(variant.lines.begin(), variant.lines.end(), [&](const Line& l) { return same_line(l, line); }))
            faults.push_back("the kept line " + line.ingredient + " was touched");

    std::map<std::string, double> used;
    for (const auto& line : variant.lines) {
        if (!(line.grams.mid > 0) || !std::isfinite(line.grams.mid)) faults.push_back(line.ingredient + " has no weight");
        used[line.ingredient] += line.grams.mid * listed_per_gram(line, knowledge);  // as picked or bought
    }
    for (const auto& [id, grams] : used) {
        const Offer offer = stock.offer(*knowledge.ingredient(id));
        if (offer.excluded) faults.push_back(id + " is excluded");
        else if (!offer.on_hand) faults.push_back(id + " is not on hand");
        else if (offer.grams && grams > *offer.grams * (1 + weight_slack)) faults.push_back("more " + id + " than there is");
    }

    const NominalBatch batch(variant, nominal);
    if (batch.total()[Amount::meat] < problem.least_meat * (1 - meat_slack)) faults.push_back("less meat than asked for");
    for (const auto& goal : goals) {
        if (!goal.condition) continue;
        const double slack = (goal.kind == Goal::Kind::equal ? 0.1 + condition_slack : condition_slack) * distance.unit(goal.property);
        if (missed_by(goal, distance, draws.base, draws.variant, draws.sure) > slack)
            faults.push_back("the condition " + goal.want + " is broken");
    }
    return faults;
}

}  // namespace standin
