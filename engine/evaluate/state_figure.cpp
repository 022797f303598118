#include "evaluate/state_figure.hpp"

#include <utility>

namespace standin {

StateFigure figure_of(Property property) {
    return [property](const State& state) { return state.properties[property]; };
}

StateFigure figure_of(ColourPart part) {
    const bool raw = part < ColourPart::lightness;
    const auto which = raw ? &State::raw : &State::cooked;
    const bool light = part == ColourPart::raw_lightness || part == ColourPart::lightness;
    const bool red = part == ColourPart::raw_redness || part == ColourPart::redness;
    const auto coordinate = light ? &Lab::L : red ? &Lab::a : &Lab::b;
    return [which, coordinate](const State& state) { return state.*which.*coordinate; };
}

double fat_run_pct(const State& state) {
    const auto& p = state.properties;
    return p[Property::fat_pct] - p[Property::cooked_fat_pct] * (1 - p[Property::cook_loss_pct] / 100);
}

std::vector<double> values_of(const std::vector<State>& states, const StateFigure& figure) {
    std::vector<double> values;
    values.reserve(states.size());
    for (const auto& state : states) values.push_back(figure(state));
    return values;
}

}  // namespace standin
