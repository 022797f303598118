// How hot hot food is held, in a reason that tells of it: by the general rules until others are chosen.
#pragma once

#include <string>
#include <string_view>

#include "core/words.hpp"
#include "standin/reason.hpp"
#include "standin/temperature_text.hpp"

namespace standin {

constexpr std::string_view hot_holding_figure = "hot holding";

/// The figure of such a reason; null where it tells of something else.
inline Figure* hot_holding_of(Reason& told) {
    for (auto& figure : told.figures)
        if (figure.what == hot_holding_figure) return &figure;
    return nullptr;
}

/// Fills "{hot}" in what the record says.
inline void tell_hot_holding(Reason& told, double celsius) {
    if (told.note.find("{hot}") == std::string::npos) return;
    replace_all(told.note, "{hot}", core_temperature_text(celsius));
    told.figures.push_back({std::string(hot_holding_figure), {}, celsius, "C"});
}

/// By another rule set.
inline void change_hot_holding(Reason& told, double celsius) {
    Figure* figure = hot_holding_of(told);
    if (!figure) return;
    replace_all(told.note, core_temperature_text(figure->after), core_temperature_text(celsius));
    figure->after = celsius;
}

}  // namespace standin
