#include "evaluate/green_life.hpp"

#include <algorithm>
#include <array>
#include <cstdio>

#include "core/band.hpp"
#include "models/colour.hpp"

namespace standin {
namespace {

constexpr std::size_t stride = 32;  // the band is wide: a few draws tell it
constexpr std::array<double, 10> rests_h{0, 4, 8, 12, 18, 24, 36, 48, 72, 96};

bool green(const Lab& lab) { return colour_word(lab).find("green") != std::string_view::npos; }

// Hours of rest after which the mass is no longer green; the last of the table where it still is, 0 where it never was.
double hours_green(const Material& batch, ProcessState process, const Models& models, std::size_t draw) {
    double last = 0;
    for (const double hours : rests_h) {
        process.rest_h = hours;
        if (!green(models.state(batch, process, draw).rested)) return last;
        last = hours;
    }
    return last;
}

template <class Change>
Band over_draws(const Batch& batch, const Models& models, Change change) {
    std::vector<double> hours;
    for (std::size_t i = 0; i < models.count(); i += stride) {
        ProcessState process = batch.process(i);
        const Material material = change(i, process);
        hours.push_back(hours_green(material, process, models, i));
    }
    return band_of(std::move(hours));
}

Material without_acid(const Formula& formula, const Batch& batch, Pantry& pantry, std::size_t draw) {
    Material total = batch.total(draw);
    for (const auto& line : formula.lines)
        if (pantry.knowledge().ingredient(line.ingredient)->roles.front() == Role::acid)
            total.add(pantry.unit(line)[draw], -line.grams.mid);
    return total;
}

std::string hours_word(double hours) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), hours >= rests_h.back() ? "over %.0f h" : hours <= 0 ? "no time" : "%.0f h", hours);
    return text.data();
}

bool has_acid(const Formula& formula, const Knowledge& knowledge) {
    return std::any_of(formula.lines.begin(), formula.lines.end(),
                       [&](const Line& line) { return knowledge.ingredient(line.ingredient)->roles.front() == Role::acid; });
}

}  // namespace

std::optional<GreenLife> green_life_of(const Formula& formula, const Batch& batch, Pantry& pantry) {
    const Models& models = pantry.models();
    GreenLife life;
    life.hours = over_draws(batch, models, [&](std::size_t i, ProcessState&) { return batch.total(i); });
    if (life.hours.high <= 0) return std::nullopt;
    constexpr double coldest = 0;  // C: as cold as a mass rests without freezing
    const Band colder = over_draws(batch, models, [&](std::size_t i, ProcessState& process) {
        process.rest_at_c = std::min(process.rest_at_c, coldest);
        return batch.total(i);
    });
    life.says = "Raw it stays green for " + hours_word(life.hours.mid) + " of rest (" + hours_word(life.hours.low) + " to " +
                hours_word(life.hours.high) + "), then turns olive";
    if (life.hours.mid < rests_h.back()) {
        if (colder.mid > life.hours.mid) life.says += "; at 0 C " + hours_word(colder.mid);
        if (has_acid(formula, pantry.knowledge())) {
            const Band mild =
                over_draws(batch, models, [&](std::size_t i, ProcessState&) { return without_acid(formula, batch, pantry, i); });
            if (mild.mid > life.hours.mid) life.says += "; with the acid left out until the pan " + hours_word(mild.mid);
        }
        life.says += ". More leaf holds longer too";
    }
    life.says += ".";
    return life;
}

}  // namespace standin
