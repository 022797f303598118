#include <algorithm>

#include "render/effects.hpp"
#include "render/html/html_charts.hpp"
#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup ranks(const SwapsAnswer& a) {
    std::vector<std::vector<Markup>> rows;
    for (std::size_t i = 0; i < a.stand_ins.size(); ++i) {
        const auto& s = a.stand_ins[i];
        const auto first = moved(s.effects);
        const std::string mainly = first.empty() ? "much the same" : "mainly " + direction(first.front(), s.effects[first.front()].mid);
        rows.push_back({Markup(std::to_string(i + 1) + ". ") + food(s.name, s.prepared) + Markup(" ") + el("small", mainly),
                        stacked(grams_with_band(s)), number(s.closeness, 2), number(s.distance, 1)});
    }
    return html_table("Nearest first", {{"Stand-in", false}, {"weigh", true}, {"close", true}, {"apart", true}}, rows) +
           el("p", {{"class", "soft"}},
              "Close: 1 when nobody at the table notices. Apart: noticeable differences, the price of swapping included.");
}

Markup detail(const StandIn& s, std::size_t rank, const Engine& engine) {
    std::vector<Markup> items;
    const auto effects = moved(s.effects);
    constexpr std::size_t most = 5;
    for (std::size_t i = 0; i < std::min(most, effects.size()); ++i) items.emplace_back(effect(effects[i], s.effects[effects[i]]));
    if (effects.empty()) items.emplace_back("changes nothing by much");
    items.emplace_back("colour, rested: " + band(s.colour_difference, 1) + " CIEDE2000 units away");
    for (const auto& c : s.cautions)
        items.push_back(el("span", {{"class", "new"}}, "Mind: " + c.text + (c.source.empty() ? "" : " [" + c.source + "]")));
    if (!s.new_allergens.empty()) items.push_back(el("span", {{"class", "new"}}, "Brings a new allergen: " + listed(s.new_allergens)));
    if (s.in_season) items.emplace_back(*s.in_season ? "in season" : "out of season in the month asked for");
    if (!s.needs.empty()) items.emplace_back(listed(s.needs));
    if (!s.note.empty()) items.emplace_back(s.note);
    if (s.path.size() > 2) {
        std::vector<std::string> between;
        for (std::size_t i = 1; i + 1 < s.path.size(); ++i) between.push_back(engine.name_of(s.path[i]));
        items.emplace_back("by way of " + listed(between));
    }
    if (!s.sources.empty()) items.push_back(el("span", {{"class", "src"}}, "source: " + listed(s.sources)));
    return el("h3", Markup(std::to_string(rank) + ". " + grams(s.grams) + " ") + food(s.name, s.prepared)) + bullets(items);
}

}  // namespace

std::string swaps_html(const SwapsAnswer& a, const std::string& title, const Engine& engine) {
    Markup rest = safety_part("", a.allergens, a.cautions);
    if (!a.stand_ins.empty()) {
        const Markup wheel =
            swap_wheel(a) + el("p", {{"class", "soft"}},
                               "The numbers are the ranks in the table; the nearer to the middle, the closer. A dashed line goes "
                               "by way of another ingredient.");
        rest += section(Markup("Around ") + food(a.name), el("div", {{"class", "beside"}}, el("div", wheel) + el("div", ranks(a))));
        Markup details;
        for (std::size_t i = 0; i < a.stand_ins.size(); ++i) details += el("div", detail(a.stand_ins[i], i + 1, engine));
        rest += section("What each changes", el("div", {{"class", "two"}}, details));
    }
    return html_page("stand-ins for " + a.name, title, el("p", {{"class", "lead"}}, in_short(a, title)), rest);
}

}  // namespace standin::cli
