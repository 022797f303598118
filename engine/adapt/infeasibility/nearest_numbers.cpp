#include "adapt/infeasibility/nearest_numbers.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace standin {
namespace {

class Easing {
public:
    Easing(const Distance& distance, const PerProperty<Band>& base, const Having& having)
        : distance_(distance), base_(base), having_(having) {}

    std::optional<AdaptAnswer> nearest() {
        for (const auto& goal : distance_.goals())
            if (!goal.condition || goal.kind == Goal::Kind::equal) return std::nullopt;
        for (const auto& [cost, goal] : easiest_first()) {
            if (std::isfinite(cost) && keep(goal)) continue;
            as_far_as_found(goal);
        }
        return std::move(best_);
    }

private:
    // A limit that is met alone, and what for: the sausage that loses least by it first.
    std::vector<std::pair<double, Goal>> easiest_first() const {
        constexpr double never = std::numeric_limits<double>::infinity();
        const auto& goals = distance_.goals();
        std::vector<std::pair<double, Goal>> all;
        for (const auto& goal : goals) {
            double cost = 0;
            if (goals.size() == 1) cost = never;  // that it cannot be had is known
            else if (lacking(goal) > 0) {
                const AdaptAnswer alone = having_({goal});
                cost = alone.variants.empty() ? never : alone.variants.front().distance;
            }
            all.emplace_back(cost, goal);
        }
        std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
        return all;
    }

    double lacking(const Goal& goal) const {
        const double now = base_[goal.property].mid;
        return shortfall(goal, now, now);
    }

    bool keep(const Goal& goal) {
        std::vector<Goal> with = kept_;
        with.push_back(goal);
        AdaptAnswer found = having_(with);
        if (found.variants.empty()) return false;
        kept_ = std::move(with);
        best_ = std::move(found);
        return true;
    }

    // On in steps that do not hang on how much is asked, so that who asks for more gets no less: longer and longer ones until nothing has
    // it, then what lies between. Past a gap it may go on, so two further steps are tried as well.
    void as_far_as_found(const Goal& goal) {
        const double step = distance_.unit(goal.property) / 4, lacks = lacking(goal);
        const int whole = static_cast<int>(std::min(1e6, std::floor(lacks / step)));
        std::optional<double> furthest;
        const auto has = [&](int steps) {
            Goal eased = goal;
            const double way = step * steps;
            eased.limit = base_[goal.property].mid + (goal.kind == Goal::Kind::at_most ? -way : way);
            std::vector<Goal> with = kept_;
            with.push_back(std::move(eased));
            AdaptAnswer found = having_(with);
            if (found.variants.empty()) return false;
            const double reached = found.variants.front().prediction.properties[goal.property].mid;
            // What was found for less may go further than that, and further than what is found for more.
            const bool further = !furthest || (goal.kind == Goal::Kind::at_most ? reached <= *furthest : reached >= *furthest);
            if (further) {
                furthest = reached;
                best_ = std::move(found);
            }
            eased_ = std::move(with.back());
            return true;
        };
        int done = 0, beyond = whole + 1;
        for (int on = 4; done < whole; on = std::min(2 * on, whole)) {
            const int to = std::min(std::max(on, done + 1), whole);
            if (has(to)) {
                done = to;
                continue;
            }
            beyond = to;
            break;
        }
        while (beyond - done > 1) {
            const int middle = (done + beyond) / 2;
            (has(middle) ? done : beyond) = middle;
        }
        for (const int gap : {2, 4})
            if (done > 0 && done + gap <= whole && has(done + gap)) done += gap;
        if (eased_) kept_.push_back(*std::exchange(eased_, std::nullopt));
    }

    const Distance& distance_;
    const PerProperty<Band>& base_;
    const Having& having_;
    std::vector<Goal> kept_;
    std::optional<Goal> eased_;
    std::optional<AdaptAnswer> best_;
};

}  // namespace

std::optional<AdaptAnswer> nearest_by_numbers(const Distance& distance, const PerProperty<Band>& base, const Having& having) {
    return Easing(distance, base, having).nearest();
}

}  // namespace standin
