// libxml2's reader of HTML, told to report what it meets instead of building a tree: nothing here grows with how deep a page is nested.
#include "formula/formats/html_text.hpp"

#include <libxml/HTMLparser.h>
#include <libxml/parserInternals.h>

#include <algorithm>
#include <array>
#include <memory>

#include "core/words.hpp"

namespace standin {
namespace {

struct Heard {
    std::vector<std::string> scripts;
    std::string text;
    bool in_data = false, in_script = false;
};

std::string_view view(const xmlChar* text) { return text ? reinterpret_cast<const char*>(text) : std::string_view{}; }

void start(void* to, const xmlChar* name, const xmlChar** attributes) {
    auto& heard = *static_cast<Heard*>(to);
    if (lower(view(name)) != "script") return;
    heard.in_script = true;
    for (; attributes && attributes[0]; attributes += 2)
        if (lower(view(attributes[0])) == "type" && lower(view(attributes[1])).find("application/ld+json") != std::string::npos) {
            heard.in_data = true;
            heard.scripts.emplace_back();
        }
}

void end(void* to, const xmlChar* name) {
    auto& heard = *static_cast<Heard*>(to);
    if (lower(view(name)) == "script") heard.in_data = heard.in_script = false;
}

void text(void* to, const xmlChar* content, int length) {
    auto& heard = *static_cast<Heard*>(to);
    const std::string_view piece(reinterpret_cast<const char*>(content), static_cast<std::size_t>(length));
    if (heard.in_data) heard.scripts.back() += piece;
    else if (!heard.in_script) heard.text += piece;
}

void ignore(void*, const char*, ...) {}

Heard listen(std::string_view page) {
    Heard heard;
    const std::unique_ptr<htmlParserCtxt, void (*)(htmlParserCtxtPtr)> parser(
        htmlCreateMemoryParserCtxt(page.data(), static_cast<int>(page.size())), htmlFreeParserCtxt);
    if (!parser) return heard;
    htmlSAXHandler handler{};
    handler.startElement = start;
    handler.endElement = end;
    handler.characters = handler.cdataBlock = handler.ignorableWhitespace = text;
    handler.error = handler.warning = ignore;
    *parser->sax = handler;
    parser->userData = &heard;
    htmlCtxtUseOptions(parser.get(), HTML_PARSE_RECOVER | HTML_PARSE_NOERROR | HTML_PARSE_NOWARNING | HTML_PARSE_NONET);
    *parser->sax = handler;  // the options put their own back
    xmlSwitchEncoding(parser.get(), XML_CHAR_ENCODING_UTF8);
    htmlParseDocument(parser.get());
    return heard;
}

// The table of libxml2 is that of HTML 4: these came with HTML 5.
struct Entity {
    std::string_view name, text;
};
constexpr std::array newer{Entity{"&half;", "½"},
                           Entity{"&frac13;", "⅓"},
                           Entity{"&frac23;", "⅔"},
                           Entity{"&frac15;", "⅕"},
                           Entity{"&frac25;", "⅖"},
                           Entity{"&frac35;", "⅗"},
                           Entity{"&frac45;", "⅘"},
                           Entity{"&frac16;", "⅙"},
                           Entity{"&frac56;", "⅚"},
                           Entity{"&frac18;", "⅛"},
                           Entity{"&frac38;", "⅜"},
                           Entity{"&frac58;", "⅝"},
                           Entity{"&frac78;", "⅞"},
                           Entity{"&apos;", "'"},
                           Entity{"&sol;", "/"},
                           Entity{"&num;", "#"},
                           Entity{"&percnt;", "%"},
                           Entity{"&plus;", "+"},
                           Entity{"&lpar;", "("},
                           Entity{"&rpar;", ")"},
                           Entity{"&comma;", ","},
                           Entity{"&period;", "."},
                           Entity{"&colon;", ":"},
                           Entity{"&semi;", ";"},
                           Entity{"&hyphen;", "-"},
                           Entity{"&dash;", "-"},
                           Entity{"&horbar;", "—"},
                           Entity{"&numsp;", " "},
                           Entity{"&hairsp;", " "},
                           Entity{"&ast;", "*"},
                           Entity{"&NonBreakingSpace;", " "}};

std::string with_older_entities(std::string_view fragment) {
    std::string out(fragment);
    for (const auto& [name, text] : newer)
        for (auto at = out.find(name); at != std::string::npos; at = out.find(name, at + text.size())) out.replace(at, name.size(), text);
    return out;
}

}  // namespace

// A title of a plain formula may start with a bracket too, so a page must start as pages do, or hold a script of data.
bool looks_like_html(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos || text[first] != '<') return false;
    std::string start(text.substr(first, 9));
    for (auto& c : start) c = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    for (const std::string_view opening : {"<!doctype", "<html", "<head", "<body", "<?xml", "<!--", "<meta", "<title"})
        if (start.compare(0, opening.size(), opening) == 0) return true;
    return text.find("ld+json") != std::string_view::npos;
}

std::vector<std::string> data_scripts(std::string_view page) { return listen(page).scripts; }

std::string without_markup(std::string_view fragment) {
    if (fragment.find_first_of("&<") == std::string_view::npos) return std::string(fragment);
    std::string out = listen("<div>" + with_older_entities(fragment) + "</div>").text;
    while (!out.empty() && (out.back() == '\n' || out.back() == ' ')) out.pop_back();
    return out;
}

}  // namespace standin
