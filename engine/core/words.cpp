#include "core/words.hpp"

#include <cmath>

#include "standin/number_text.hpp"

namespace standin {

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (const auto& word : words) text += (text.empty() ? "" : ", ") + word;
    return text;
}

std::string shown_hours(double hours) {
    constexpr double hour = 60;
    if (hours < 1 && hours > 0) return trimmed_text(std::round(hours * hour), 0) + " minutes";
    return trimmed_text(hours < 10 ? hours : std::round(hours), 2) + (hours == 1 ? " hour" : " hours");
}

}  // namespace standin
