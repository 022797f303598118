#include "render/html/html.hpp"

#include <cstddef>

namespace standin::cli {
namespace {

// Bytes of the well-formed UTF-8 character that starts at `i`; 0 where there is none.
std::size_t character(std::string_view text, std::size_t i) {
    const auto byte = [&](std::size_t k) { return static_cast<unsigned char>(text[k]); };
    const auto lead = byte(i);
    const std::size_t size = lead < 0x80                   ? 1
                             : lead >= 0xF0 && lead < 0xF5 ? 4
                             : lead >= 0xE0 && lead < 0xF0 ? 3
                             : lead >= 0xC2 && lead < 0xE0 ? 2
                                                           : 0;
    if (size == 0 || i + size > text.size()) return 0;
    for (std::size_t k = 1; k < size; ++k)
        if ((byte(i + k) & 0xC0) != 0x80) return 0;
    if (size == 3 && ((lead == 0xE0 && byte(i + 1) < 0xA0) || (lead == 0xED && byte(i + 1) >= 0xA0))) return 0;  // overlong, surrogate
    if (size == 4 && ((lead == 0xF0 && byte(i + 1) < 0x90) || (lead == 0xF4 && byte(i + 1) >= 0x90))) return 0;  // overlong, beyond
    return size;
}

bool is_control(std::string_view c) {
    const auto lead = static_cast<unsigned char>(c.front());
    if (c.size() == 1) return (lead < 0x20 && lead != '\n' && lead != '\t') || lead == 0x7F;
    return c.size() == 2 && lead == 0xC2 && static_cast<unsigned char>(c[1]) < 0xA0;
}

}  // namespace

std::string escaped(std::string_view text) {
    constexpr std::string_view replacement = "\xEF\xBF\xBD";
    std::string out;
    out.reserve(text.size());
    for (std::size_t i = 0; i < text.size();) {
        const auto size = character(text, i);
        const auto c = text.substr(i, size ? size : 1);
        i += c.size();
        if (size == 0 || is_control(c)) out += replacement;
        else if (c == "&") out += "&amp;";
        else if (c == "<") out += "&lt;";
        else if (c == ">") out += "&gt;";
        else if (c == "\"") out += "&quot;";
        else if (c == "'") out += "&#39;";
        else out += c;
    }
    return out;
}

Markup Markup::ready(std::string html) {
    Markup made;
    made.html_ = std::move(html);
    return made;
}

Markup& Markup::operator+=(const Markup& more) {
    html_ += more.html_;
    return *this;
}

Markup operator+(Markup a, const Markup& b) { return a += b; }

Markup void_el(std::string_view name, const Attributes& attributes) {
    std::string html = "<" + std::string(name);
    for (const auto& [key, value] : attributes) html += " " + std::string(key) + "=\"" + escaped(value) + "\"";
    return Markup::ready(html + ">");
}

Markup el(std::string_view name, const Attributes& attributes, const Markup& content) {
    return void_el(name, attributes) + content + Markup::ready("</" + std::string(name) + ">");
}

Markup el(std::string_view name, const Markup& content) { return el(name, {}, content); }

}  // namespace standin::cli
