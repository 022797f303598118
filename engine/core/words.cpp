#include "core/words.hpp"

#include <algorithm>
#include <cmath>

#include "standin/number_text.hpp"

namespace standin {

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (const auto& word : words) text += (text.empty() ? "" : ", ") + word;
    return text;
}

std::string lower(std::string_view text) {
    std::string small(text);
    std::transform(small.begin(), small.end(), small.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return small;
}

void replace_all(std::string& text, std::string_view from, std::string_view to) {
    for (auto at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
}

std::string with_stop(std::string text) {
    if (!text.empty() && !text.ends_with('.')) text += '.';
    return text;
}

std::string shown_hours(double hours) {
    constexpr double hour = 60;
    if (hours < 1 && hours > 0) return trimmed_text(std::round(hours * hour), 0) + " minutes";
    return trimmed_text(hours < 10 ? hours : std::round(hours), 2) + (hours == 1 ? " hour" : " hours");
}

}  // namespace standin
