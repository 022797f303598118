#include "render/html/html_parts.hpp"

#include <algorithm>
#include <array>

#include "render/allergen_words.hpp"
#include "render/html/html_charts.hpp"
#include "render/html/html_style.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

// What may have to be scrolled sideways on a phone can be reached by keyboard.
Markup wide(const Markup& table) { return el("div", {{"class", "wide"}, {"tabindex", "0"}}, table); }

Markup declared(const AllergenText& a) {
    std::string words;
    if (is_trace(a))
        return Markup("A trace of ") + el("strong", a.allergen) + Markup(", from " + listed(a.from) + ": " + in_words(*a.reckoned) + ".");
    if (!a.sure) return el("strong", "Check the packet for " + a.allergen) + Markup(": often in " + listed(a.from) + ".");
    for (const auto& [text, codes] : declarations(a)) words += (words.empty() ? "Declare as: " : "; ") + text + " (" + codes + ")";
    return el("strong", a.allergen) + Markup(", from " + listed(a.from) + (a.reckoned ? "; " + in_words(*a.reckoned) : "") +
                                             (words.empty() ? "." : ". " + words + "."));
}

}  // namespace

std::string html_page(const std::string& kind, const std::string& title, const Markup& lead, const Markup& rest) {
    const std::string name = title.empty() ? "Untitled formula" : title;
    const Markup head = void_el("meta", {{"charset", "utf-8"}}) +
                        void_el("meta", {{"name", "viewport"}, {"content", "width=device-width, initial-scale=1"}}) +
                        void_el("meta", {{"name", "color-scheme"}, {"content", "light dark"}}) + el("title", name + ": " + kind) +
                        el("style", Markup::ready(std::string(html_style())));
    const Markup top = el("header", el("p", {{"class", "kind"}}, kind) + el("h1", {{"dir", "auto"}}, name));
    const Markup foot = el("footer", el("p",
                                        "Every number is a band: the likely value, then the range that holds nine batches in ten. Worked "
                                        "out by standin " STANDIN_VERSION "."));
    const std::string room = kind == "bench sheet" ? "sheet" : "page";
    return "<!doctype html>\n" +
           el("html", {{"lang", "en"}}, el("head", head) + el("body", {{"class", room}}, top + el("main", lead + rest) + foot)).html() +
           "\n";
}

Markup stacked(const std::string& text) {
    const auto bracket = text.find(" (");
    if (bracket == std::string::npos) return text;
    return Markup(text.substr(0, bracket + 1)) + el("span", {{"class", "range"}}, text.substr(bracket + 1));
}

Markup food(const std::string& name, const std::vector<std::string>& prepared) { return el("bdi", with_preparations(name, prepared)); }

Markup section(const Markup& heading, const Markup& content) { return el("section", el("h2", heading) + content); }

Markup bullets(const std::vector<Markup>& items) {
    Markup list;
    for (const auto& item : items) list += el("li", item);
    return items.empty() ? Markup() : el("ul", list);
}

Markup listing(const std::string& heading, const std::vector<std::string>& items) {
    return items.empty() ? Markup() : section(heading, bullets({items.begin(), items.end()}));
}

Markup html_table(const Markup& caption, const std::vector<HtmlColumn>& columns, const std::vector<std::vector<Markup>>& rows) {
    const auto kind = [&](std::size_t c) { return columns[c].number ? Attributes{{"class", "num"}} : Attributes{}; };
    Markup heads, body;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        Attributes a = kind(c);
        a.emplace_back("scope", "col");
        heads += el("th", a, columns[c].head);
    }
    for (const auto& row : rows) {
        Markup cells;
        for (std::size_t c = 0; c < row.size(); ++c) {
            Attributes a = kind(c);
            if (c == 0) a.emplace_back("scope", "row");
            cells += el(c == 0 ? "th" : "td", a, row[c]);
        }
        body += el("tr", cells);
    }
    return wide(el("table", el("caption", caption) + el("thead", el("tr", heads)) + el("tbody", body)));
}

Markup cautions_list(const std::vector<CautionText>& cautions) {
    Markup list;
    for (const auto& c : cautions)
        list +=
            el("li", Markup(c.text) + (c.source.empty() ? Markup() : Markup(" ") + el("span", {{"class", "src"}}, "[" + c.source + "]")));
    return cautions.empty() ? Markup() : el("ul", {{"class", "cautions"}}, list);
}

Markup own_records_note(const std::string& folder) {
    return folder.empty() ? Markup() : el("p", {{"class", "soft"}}, own_records_sentence(folder));
}

Markup folded(const std::string& summary, const Markup& content, bool open) {
    return el("details", open ? Attributes{{"open", ""}} : Attributes{}, el("summary", summary) + content);
}

Markup first_of_all(const std::vector<std::string>& sentences) {
    Markup out;
    for (const auto& one : sentences) out += el("p", {{"class", "new"}}, one);
    return out;
}

Markup read_as_list(const std::vector<std::string>& notes) {
    if (notes.empty()) return {};
    return section("How the formula was read", bullets(std::vector<Markup>(notes.begin(), notes.end())));
}

Markup safety_part(const std::string& cook, const std::vector<AllergenText>& allergens, const std::vector<CautionText>& cautions) {
    std::vector<Markup> items;
    for (const auto& a : allergens) items.push_back(declared(a));
    Markup content = el("h2", "Before anything else");
    if (!cook.empty()) content += el("p", {{"class", "cook"}}, cook);
    content += el("h3", "Allergens");
    content += items.empty() ? el("p", "None of the listed ones comes with these ingredients.") : bullets(items);
    if (!cautions.empty()) content += el("h3", "Mind") + cautions_list(cautions);
    return el("section", {{"class", "safety"}}, content);
}

Markup swatches(const std::vector<Shown>& shown) {
    const std::pair<const char*, PredictedColour Prediction::*> states[] = {
        {"raw", &Prediction::raw}, {"rested", &Prediction::rested}, {"cooked", &Prediction::cooked}};
    Markup figures;
    for (const auto& [when, which] : states) {
        Markup patches, texts;
        for (std::size_t i = 0; i < shown.size(); ++i) {
            const PredictedColour& c = shown[i].prediction->*which;
            const std::string name = shown.size() > 1 ? shown[i].name + ": " : "";
            patches += swatch(c.hex, name + when + ", " + colour_words(c) + ", " + c.hex);
            texts += void_el("br", {}) + (shown.size() > 1 ? mark_of(i) : Markup()) + Markup(name + colour_words(c) + " " + c.hex);
            if (const auto said = said_words(c); !said.empty() && shown.size() == 1)
                texts += void_el("br", {}) + el("small", "people say: " + said);
        }
        figures += el("figure", el("div", {{"class", "pair"}}, patches) + el("figcaption", el("strong", capital(when)) + texts));
    }
    return el("div", {{"class", "swatches"}}, figures);
}

namespace {

// Properties worth a row: traces of what is not there at all are left out.
std::vector<Property> told(const std::vector<Shown>& shown, bool at_the_table) {
    constexpr std::array table{Property::ph,         Property::sourness_mmol_kg,  Property::heat_mg_kg,   Property::heat_shu,
                               Property::burn_mg_kg, Property::chlorophyll_mg_kg, Property::greenness,    Property::hue_deg,
                               Property::bind,       Property::firmness,          Property::cook_loss_pct};
    std::vector<Property> all;
    for_each_property([&](Property p) {
        const bool trace =
            p == Property::heat_mg_kg || p == Property::heat_shu || p == Property::burn_mg_kg || p == Property::chlorophyll_mg_kg;
        const bool any = std::any_of(shown.begin(), shown.end(), [&](const Shown& s) { return s.prediction->properties[p].high > 0; });
        const bool here = (std::find(table.begin(), table.end(), p) != table.end()) == at_the_table;
        if (here && (!trace || any)) all.push_back(p);
    });
    return all;
}

std::string chart_words(Property p, const std::vector<Shown>& shown) {
    std::string text = name_with_unit(p) + ": ";
    for (std::size_t i = 0; i < shown.size(); ++i)
        text += (i ? "; " : "") + (shown.size() > 1 ? shown[i].name + " " : std::string()) +
                standin::cli::shown(p, shown[i].prediction->properties[p]);
    return text;
}

}  // namespace

Markup bench_properties(const std::vector<Shown>& shown) {
    std::vector<Property> all;
    for_each_property([&](Property p) {
        if (at_the_bench(p)) all.push_back(p);
    });
    return properties_table("What a maker goes by", all, shown, nullptr);
}

Markup all_properties(const std::vector<Shown>& shown) {
    return el("div", {{"class", "two"}},
              properties_table("What eye, mouth and knife meet", told(shown, true), shown, nullptr) +
                  properties_table("What it is made of", told(shown, false), shown, nullptr)) +
           el("p", {{"class", "soft"}}, "The likely value, and in brackets and as a line the range that holds nine batches in ten.");
}

Markup properties_table(const std::string& caption, const std::vector<Property>& properties, const std::vector<Shown>& shown,
                        const PerProperty<Band>* differences) {
    Markup heads = el("th", {{"scope", "col"}}, "Property");
    for (std::size_t i = 0; i < shown.size(); ++i)
        heads += el("th", {{"scope", "col"}, {"class", "num"}}, (shown.size() > 1 ? mark_of(i) : Markup()) + Markup(shown[i].name));
    if (differences) heads += el("th", {{"scope", "col"}, {"class", "num"}}, "change");
    Markup bodies;
    for (const auto p : properties) {
        const int decimals = info(p).decimals;
        Markup cells = el("th", {{"scope", "row"}}, name_with_unit(p));
        std::vector<Band> bands;
        for (const auto& s : shown) {
            bands.push_back(s.prediction->properties[p]);
            cells += el("td", {{"class", "num"}}, stacked(band(bands.back(), decimals)));
        }
        if (differences) cells += el("td", {{"class", "num"}}, stacked(signed_band((*differences)[p], decimals)));
        // Numbers that read alike have nothing to show.
        const bool exact = std::all_of(bands.begin(), bands.end(), [&](const Band& b) {
            return number(b.low, decimals) == number(b.high, decimals) && number(b.mid, decimals) == number(bands.front().mid, decimals);
        });
        Markup rows = el("tr", cells);
        if (!exact) {
            const std::string columns = std::to_string(shown.size() + (differences ? 2 : 1));
            const Axis axis = info(p).unit == "of 100" ? Axis{0, 100} : axis_for(bands);
            rows += el("tr", el("td", {{"colspan", columns}, {"class", "pic"}}, bands_chart(bands, axis, decimals, chart_words(p, shown))));
        }
        bodies += el("tbody", rows);
    }
    return wide(el("table", {{"class", "props"}}, el("caption", caption) + el("thead", el("tr", heads)) + bodies));
}

Markup origins(const Prediction& p) {
    const std::pair<const char*, const std::vector<Contribution>*> all[] = {{"The green", &p.green_from},
                                                                            {"The heat", &p.heat_from},
                                                                            {"The acid", &p.acid_from},
                                                                            {"The salt", &p.salt_from},
                                                                            {"The fat", &p.fat_from}};
    Markup tables;
    for (const auto& [what, parts] : all) {
        std::vector<std::vector<Markup>> rows;
        for (const auto& c : *parts)
            rows.push_back({c.line < p.lines.size() ? food(p.lines[c.line].name) : Markup("others"), chance(c.share), share_bar(c.share)});
        if (!rows.empty())
            tables += html_table(std::string(what) + " comes from", {{"Line", false}, {"share", true}, {"as a bar", false}}, rows);
    }
    return el("div", {{"class", "parts"}}, tables);
}

}  // namespace standin::cli
