#include "formula/lexer/text_lines.hpp"

#include <algorithm>

namespace standin {
namespace {

constexpr std::string_view ascii_blanks = " \t\r";
constexpr std::string_view told_when_written = "told when written:";

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(ascii_blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(ascii_blanks) - first + 1);
}

std::vector<TextLine> lines_of(std::string_view text, bool comments) {
    std::vector<TextLine> lines;
    std::size_t number = 1;
    for (std::size_t start = 0; start <= text.size(); ++number) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        const std::string_view line = text.substr(start, end - start);
        const std::string_view inner = trimmed(line);
        const bool told = inner.starts_with(told_when_written);  // told again of what is read
        if (!inner.empty() && !told && (inner.front() == '#') == comments)
            lines.push_back({inner, {number, static_cast<std::size_t>(inner.data() - line.data()) + 1}});
        start = end + 1;
    }
    return lines;
}

}  // namespace

std::vector<TextLine> text_lines(std::string_view text) { return lines_of(text, false); }

std::vector<TextLine> comment_lines(std::string_view text) { return lines_of(text, true); }

KeyValue key_value(std::string_view line) {
    const auto colon = line.find(':');
    if (colon == std::string_view::npos) return {};
    return {trimmed(line.substr(0, colon)), trimmed(line.substr(colon + 1))};
}

}  // namespace standin
