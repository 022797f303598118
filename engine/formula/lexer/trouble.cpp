#include "formula/lexer/trouble.hpp"

#include <utf8.h>

#include <algorithm>
#include <cstdlib>

#include "core/typed_reader.hpp"

namespace standin {
namespace {

Place place_of(std::string_view text, std::size_t offset) {
    const auto before = text.substr(0, offset);
    const auto newline = before.rfind('\n');
    const auto lines = static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
    return {lines + 1, newline == std::string_view::npos ? offset + 1 : offset - newline};
}

// The numbers at the end of "file:line:column".
std::pair<long, long> line_and_column(const std::string& where) {
    const auto column = where.rfind(':');
    const auto line = column == std::string::npos || column == 0 ? std::string::npos : where.rfind(':', column - 1);
    if (line == std::string::npos) return {0, 0};
    return {std::strtol(where.c_str() + line + 1, nullptr, 10), std::strtol(where.c_str() + column + 1, nullptr, 10)};
}

}  // namespace

Origin Origin::joined(std::string_view file, std::vector<std::pair<std::size_t, Place>> pieces) {
    Origin origin(file, {});
    origin.pieces_ = std::move(pieces);
    origin.exact_ = false;
    return origin;
}

std::string Origin::at(std::size_t offset) const {
    Place place = pieces_.front().second;
    for (const auto& [start, where] : pieces_)
        if (start <= offset) place = where;
    if (exact_) place.column += offset;
    return describe(file_, place);
}

void Troubles::add(Error error) {
    if (!full()) errors_.push_back(std::move(error));
}

void Troubles::add(const std::vector<Error>& errors) {
    for (const auto& error : errors) add(error);
}

Failure Troubles::failure() const {
    auto sorted = errors_;
    std::stable_sort(sorted.begin(), sorted.end(),
                     [](const Error& a, const Error& b) { return line_and_column(a.where) < line_and_column(b.where); });
    return Failure(join(sorted));
}

Result<std::string_view> readable(std::string_view text, std::string_view file) {
    const auto bad = [&](std::string message, std::size_t offset) {
        return failure(Trouble::bad_data, std::move(message), describe(file, place_of(text, offset)), {});
    };
    const auto broken = utf8::find_invalid(text.begin(), text.end());
    if (broken != text.end()) return bad("not UTF-8 text", static_cast<std::size_t>(broken - text.begin()));
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto c = static_cast<unsigned char>(text[i]);
        if ((c < 0x20 && c != '\n' && c != '\r' && c != '\t') || c == 0x7F) return bad("not text: a control byte stands here", i);
    }
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return bad("empty: expected a formula or an inventory, as JSON or as plain lines", 0);
    return text;
}

std::string comma_list(const std::vector<std::string>& words) {
    std::string out;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) out += i + 1 == words.size() ? " and " : ", ";
        out += words[i];
    }
    return out;
}

}  // namespace standin
