#include "mend/greener.hpp"

#include <algorithm>

#include "evaluate/batch.hpp"
#include "knowledge/index/effects.hpp"

namespace standin {
namespace {

constexpr double short_blanch_min = 2;  // which sets the green and takes little of it
constexpr double long_blanch_min = 3;   // above this it is said
constexpr double counts_from = 0.25;    // of what all lines together cost: less is not named

std::optional<double> minutes_of(const Prepared& step, const Knowledge& knowledge) {
    const Preparation& preparation = *knowledge.preparation(step.preparation);
    if (!preparation.denatures) return std::nullopt;
    return step.minutes ? step.minutes : preparation.minutes;
}

double blanched_min(const Line& line, const Knowledge& knowledge) {
    double most = 0;
    for (const auto& step : line.prepared) most = std::max(most, minutes_of(step, knowledge).value_or(0));
    return most;
}

class Costing {
public:
    Costing(const Formula& mass, const MassAsMade& made, const Context& context)
        : mass_(mass),
          made_(made),
          context_(context),
          knowledge_(context.knowledge()),
          batch_(mass, context.nominal()),
          now_(greens(mass)) {}

    std::optional<GreenCost> of(std::string_view what) const {
        if (what == "rest") return of_rest();
        if (what == "blanch") return of_blanch();
        return of_lines([&](std::size_t l) { return what == "tint" ? is_other_colour(l) : is_acid(l); });
    }

private:
    struct Greens {
        double rested = 0, cooked = 0;
    };

    Greens greens(const Formula& formula) const {
        const State state = made_.state(formula);
        return {-state.rested.a, -state.cooked.a};
    }
    double gained(const Formula& formula) const {
        const Greens then = greens(formula);
        return std::max(then.rested - now_.rested, then.cooked - now_.cooked);
    }

    const Ingredient& food(std::size_t l) const { return *knowledge_.ingredient(mass_.lines[l].ingredient); }
    bool is_other_colour(std::size_t l) const { return food(l).tint && !food(l).meat; }
    bool is_acid(std::size_t l) const { return food(l).roles.front() == Role::acid && batch_.part(l)[Amount::titratable] > 0; }

    Formula without(const std::vector<std::size_t>& lines) const {
        Formula left = mass_;
        for (auto l = lines.rbegin(); l != lines.rend(); ++l) left.lines.erase(left.lines.begin() + static_cast<std::ptrdiff_t>(*l));
        return left;
    }

    template <class Which>
    std::optional<GreenCost> of_lines(Which which) const {
        std::vector<std::size_t> all;
        for (std::size_t l = 0; l < mass_.lines.size(); ++l)
            if (which(l)) all.push_back(l);
        if (all.empty() || all.size() == mass_.lines.size()) return std::nullopt;
        GreenCost cost{gained(without(all)), {}, 0};
        std::vector<std::pair<double, std::size_t>> each;
        for (const auto l : all)
            if (const double by = gained(without({l})); by >= counts_from * cost.by) each.emplace_back(by, l);
        std::stable_sort(each.begin(), each.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
        for (const auto& [by, l] : each) cost.lines.push_back(l);
        if (cost.lines.empty()) cost.lines = all;
        return cost;
    }

    // Leaf that was in boiling water, or steam, for longer than sets its green.
    std::optional<GreenCost> of_blanch() const {
        Formula brief = mass_;
        GreenCost cost;
        for (std::size_t l = 0; l < brief.lines.size(); ++l) {
            const double minutes = blanched_min(brief.lines[l], knowledge_);
            if (!blanch_briefly(brief.lines[l], knowledge_)) continue;
            cost.value = std::max(cost.value, minutes);
            cost.lines.push_back(l);
        }
        if (cost.lines.empty()) return std::nullopt;
        cost.by = gained(brief);
        return cost;
    }

    std::optional<GreenCost> of_rest() const {
        if (!mass_.process.rest_h) return std::nullopt;
        Formula fresh = mass_;
        fresh.process.rest_h = 0;
        return GreenCost{gained(fresh), {}, *mass_.process.rest_h};
    }

    const Formula& mass_;
    const MassAsMade& made_;
    const Context& context_;
    const Knowledge& knowledge_;
    NominalBatch batch_;
    Greens now_;
};

}  // namespace

bool blanch_briefly(Line& line, const Knowledge& knowledge) {
    if (!knowledge.ingredient(line.ingredient)->chlorophyll) return false;
    bool any = false;
    for (auto& step : line.prepared)
        if (const auto minutes = minutes_of(step, knowledge); minutes && *minutes > long_blanch_min) {
            step.minutes = short_blanch_min;
            any = true;
        }
    return any;
}

std::optional<GreenCost> green_cost(std::string_view what, const Formula& mass, const MassAsMade& made, const Context& context) {
    return Costing(mass, made, context).of(what);
}

}  // namespace standin
