// Text with something put out of it, every other letter where it was.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>

namespace standin {

/// Spaces in place of what stands from `begin` to `end`; an end behind the text is its end.
inline void blank(std::string& text, std::size_t begin, std::size_t end) {
    std::fill(text.begin() + static_cast<std::ptrdiff_t>(begin), text.begin() + static_cast<std::ptrdiff_t>(std::min(end, text.size())),
              ' ');
}

/// Spaces in place of line ends and tabs.
inline std::string one_line(std::string_view text) {
    std::string out(text);
    std::replace_if(
        out.begin(), out.end(), [](char c) { return c == '\n' || c == '\r' || c == '\t'; }, ' ');
    return out;
}

}  // namespace standin
