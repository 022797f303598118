// Writing HTML: text is escaped by becoming Markup, so nothing reaches a page unescaped.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace standin::cli {

/// Text as it stands in HTML, in an attribute too: & < > " ' escaped, control characters and broken UTF-8 replaced.
std::string escaped(std::string_view text);

/// A finished piece of HTML. Made from plain text it escapes it.
class Markup {
public:
    Markup() = default;
    Markup(std::string_view text) : html_(escaped(text)) {}
    Markup(const std::string& text) : Markup(std::string_view(text)) {}
    Markup(const char* text) : Markup(std::string_view(text)) {}

    /// For what is HTML already.
    static Markup ready(std::string html);

    Markup& operator+=(const Markup& more);
    bool empty() const { return html_.empty(); }
    const std::string& html() const { return html_; }

private:
    std::string html_;
};

Markup operator+(Markup a, const Markup& b);

using Attributes = std::vector<std::pair<std::string_view, std::string>>;

/// `<name a="b">content</name>`; names and attribute names are the program's own words.
Markup el(std::string_view name, const Attributes& attributes, const Markup& content);
Markup el(std::string_view name, const Markup& content);

/// `<name a="b">`, for elements that hold nothing and have no end.
Markup void_el(std::string_view name, const Attributes& attributes);

}  // namespace standin::cli
