#include "formula/amounts/written_preparation.hpp"

#include <cmath>

#include "formula/amounts/process_text.hpp"

namespace standin {

std::string written(const Prepared& prepared, const Knowledge& knowledge) {
    const Preparation* preparation = knowledge.preparation(prepared.preparation);
    std::string text = preparation ? preparation->names.front() : prepared.preparation;
    constexpr double seconds_a_minute = 60;
    const double seconds = prepared.minutes.value_or(0) * seconds_a_minute;
    const bool whole = std::abs(seconds - std::round(seconds)) < 1e-6;
    if (prepared.minutes && *prepared.minutes < 1 && seconds > 0 && whole) text += " " + plain_number(std::round(seconds)) + " s";
    else if (prepared.minutes) text += " " + plain_number(*prepared.minutes) + " min";
    return text;
}

}  // namespace standin
