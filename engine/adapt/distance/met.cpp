#include "adapt/distance/met.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/goals/request.hpp"
#include "core/band.hpp"
#include "standin/narrate.hpp"

namespace standin {

double allowed(const Goal& goal, const Distance& distance) {
    // Who asks for a value itself has it as long as nobody can tell the difference.
    if (goal.kind == Goal::Kind::equal) return distance.unit(goal.property);
    return goal.condition ? 0.002 * std::abs(goal.limit) : met_within * distance.unit(goal.property);
}

double nearer_by(const Goal& goal, const Distance& distance, const State& before, const State& after) {
    const double rise = (after.properties[goal.property] - before.properties[goal.property]) / distance.unit(goal.property);
    return goal.kind == Goal::Kind::at_most ? -rise : goal.kind == Goal::Kind::at_least ? rise : std::abs(rise);
}

double missed_by(const Goal& goal, const Distance& distance, const std::vector<State>& base, const std::vector<State>& variant,
                 double sure) {
    const double slack = allowed(goal, distance);
    std::vector<double> misses;
    for (std::size_t i = 0; i < variant.size(); ++i) {
        const double value = variant[i].properties[goal.property], target = goal.target(base[i].properties[goal.property]);
        const double past = value - target;
        misses.push_back((goal.kind == Goal::Kind::at_most ? past : goal.kind == Goal::Kind::at_least ? -past : std::abs(past)) - slack);
    }
    const auto count = static_cast<std::size_t>(std::ceil(sure * static_cast<double>(misses.size()) - 1e-9));
    const auto decides = misses.begin() + static_cast<std::ptrdiff_t>(std::clamp<std::size_t>(count, 1, misses.size()) - 1);
    std::nth_element(misses.begin(), decides, misses.end());
    return *decides;
}

WantResult judged(const Goal& goal, const Distance& distance, double before, const Band& after, const std::vector<State>& base,
                  const std::vector<State>& variant, double sure) {
    const double slack = allowed(goal, distance);
    std::size_t met = 0;
    for (std::size_t i = 0; i < variant.size(); ++i)
        met += shortfall(goal, variant[i].properties[goal.property], base[i].properties[goal.property]) <= slack;
    const double missed = missed_by(goal, distance, base, variant, sure);
    WantResult result{goal.want, missed <= 0, static_cast<double>(met) / static_cast<double>(variant.size()), {}};
    const std::string unit(info(goal.property).unit);
    // The middle of all draws may lie on the other side of what is asked than the draw that decides: then that one is shown.
    const double target = goal.target(before);
    double shown = after.mid;
    if (goal.kind != Goal::Kind::equal && (shortfall(goal, shown, before) <= slack) != result.met) {
        const double past = missed + slack;
        shown = goal.kind == Goal::Kind::at_most ? target + past : target - past;
    }
    Reason& why = result.reason;
    why.kind = ReasonKind::want;
    why.about = goal.want;
    why.role = goal.kind == Goal::Kind::at_least ? "at least" : goal.kind == Goal::Kind::at_most ? "at most" : "equal";
    why.figures = {{std::string(info(goal.property).name), before, shown, unit, after.low, after.high}, {"asked for", {}, target, unit}};
    if (!goal.condition) {
        why.figures.push_back({"slack", {}, slack, unit});
        // A wish is for so much more or less than the batch has now: what decides is how far each draw moves, not where it ends.
        std::vector<double> moves;
        for (std::size_t i = 0; i < variant.size(); ++i)
            moves.push_back(variant[i].properties[goal.property] - base[i].properties[goal.property]);
        const Band moved = band_of(std::move(moves));
        why.figures.push_back({"moved by", {}, after.mid - before, unit, moved.low, moved.high});
    }
    result.says = in_full(why);
    return result;
}

void tell_all_together(std::vector<WantResult>& wants, const std::vector<Goal>& goals, const Distance& distance,
                       const std::vector<State>& base, const std::vector<State>& variant) {
    const bool several = std::any_of(wants.begin(), wants.end(), [&](const WantResult& want) { return want.want != wants.front().want; });
    if (!several || variant.empty() || !std::all_of(wants.begin(), wants.end(), [](const WantResult& want) { return want.met; })) return;
    std::size_t met = 0;
    for (std::size_t i = 0; i < variant.size(); ++i)
        met += std::all_of(goals.begin(), goals.end(), [&](const Goal& goal) {
            return shortfall(goal, variant[i].properties[goal.property], base[i].properties[goal.property]) <= allowed(goal, distance);
        });
    const double share = static_cast<double>(met) / static_cast<double>(variant.size());
    wants.back().reason.figures.push_back({"all together", {}, 100 * share, "%"});
    wants.back().says = in_full(wants.back().reason);
}

namespace {

// What counts as one noticeable difference of a want as it is shown: the slack of a word is a share of its step; a condition has none, and
// a tenth of its limit is one.
bool has_slack(const WantResult& want) {
    const auto& figures = want.reason.figures;
    return figures.size() > 2 && figures[2].what == "slack" && figures[2].after > 0;
}

double step_of(const WantResult& want) {
    constexpr double step_of_condition = 0.1;
    const auto& figures = want.reason.figures;
    return has_slack(want) ? figures[2].after / met_within : step_of_condition * std::max(std::abs(figures[1].after), 1.0);
}

double short_of(const WantResult& want, double value) {
    const double past = value - want.reason.figures[1].after;
    if (want.reason.role == "at most") return std::max(0.0, past);
    return want.reason.role == "at least" ? std::max(0.0, -past) : std::abs(past);
}

}  // namespace

bool goes_away_from(const WantResult& want) {
    constexpr double felt = 0.2;  // noticeable differences; judgement
    const auto& figures = want.reason.figures;
    if (want.met || figures.size() < 2 || !figures[0].before) return false;
    return (short_of(want, figures[0].after) - short_of(want, *figures[0].before)) / step_of(want) > felt;
}

bool brings_nearer(const Variant& v) {
    // A word is no answer where nobody tastes it; of a number every step counts.
    constexpr double of_a_number = 0.02, of_a_word = 0.08;  // noticeable differences; judgement
    const double unfelt =
        std::any_of(v.wants.begin(), v.wants.end(), [](const auto& want) { return !has_slack(want); }) ? of_a_number : of_a_word;
    double nearer = 0;
    bool away = false, comes_to_be_met = false;
    for (const auto& want : v.wants) {
        const auto& figures = want.reason.figures;
        if (figures.size() < 2 || !figures[0].before) return true;
        const double step = (short_of(want, *figures[0].before) - short_of(want, figures[0].after)) / step_of(want);
        nearer += step;
        away = away || (!want.met && step < -unfelt);
        comes_to_be_met = comes_to_be_met || (want.met && step > unfelt);
    }
    return comes_to_be_met || (nearer > unfelt && !away);
}

double still_missed(const WantResult& want) {
    const auto& figures = want.reason.figures;
    if (want.met || figures.size() < 2) return 0;
    const double short_by = std::abs(figures[1].after - figures[0].after);
    return std::max(0.0, short_by / step_of(want) - (has_slack(want) ? aimed_within : 0));
}

double still_missed(const Variant& v) {
    double sum = 0;
    for (const auto& want : v.wants) sum += still_missed(want);
    return sum;
}

double missed_square(const Variant& v, double weight) {
    double sum = 0;
    for (const auto& want : v.wants) sum += std::pow(weight * still_missed(want), 2);
    return sum;
}

bool meets_all(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

}  // namespace standin
