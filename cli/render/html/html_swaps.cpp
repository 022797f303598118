#include <algorithm>

#include "render/cost_words.hpp"
#include "render/effects.hpp"
#include "render/html/html_charts.hpp"
#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "render/union.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup named(const StandIn& s, Units units) {
    const Markup name = food(s.name, s.prepared), stays(what_stays(s, units));
    if (!s.partner) return name + stays;
    return name + Markup(" and " + formula_weight(s.partner->grams, units) + " ") + food(s.partner->name, s.partner->prepared) + stays;
}

Markup ranks(const SwapsAnswer& a, Units units) {
    std::vector<std::vector<Markup>> rows;
    for (std::size_t i = 0; i < a.stand_ins.size(); ++i) {
        const auto& s = a.stand_ins[i];
        rows.push_back({Markup(std::to_string(i + 1) + ". ") + named(s, units),
                        el("span", {{"class", "big"}}, formula_weight(s.grams, units)), capital(in_words(s.nearness)), changes_of(s, 2)});
    }
    return html_table("In the order to try them", {{"Stand-in", false}, {"weigh", true}, {"how close", false}, {"changes", false}}, rows);
}

class StandInPart {
public:
    StandInPart(const StandIn& stand_in, const Engine& engine, const Detail& detail) : s_(stand_in), engine_(engine), detail_(detail) {}

    Markup whole(std::size_t rank) const {
        return el("h3", Markup(std::to_string(rank) + ". " + formula_weight(s_.grams, detail_.units) + " ") + named(s_, detail_.units)) +
               bullets(to_mind()) + folded("The numbers behind it", bullets(numbers()), detail_.full);
    }

private:
    std::vector<Markup> to_mind() const {
        std::vector<Markup> items;
        if (!s_.new_allergens.empty())
            items.push_back(el("span", {{"class", "new"}}, "Brings a new allergen: " + listed(s_.new_allergens)));
        for (const auto& c : s_.cautions) items.push_back(el("span", {{"class", "new"}}, "Mind: " + cited(c)));
        if (const auto parts = in_parts(s_, detail_.units); !parts.empty()) items.emplace_back(parts);
        std::string trims;
        for (const auto& t : s_.trims)
            trims += (trims.empty() ? "" : ", ") + engine_.name_of(t.line) + " " + formula_weight(t.grams_before, detail_.units) + " to " +
                     formula_weight(t.grams_after, detail_.units);
        if (!trims.empty()) items.emplace_back("with it " + trims);
        if (const auto change = detail_.beside.change(s_.formula)) items.emplace_back(cost_sentence(*change, detail_.units));
        if (s_.on_hand) items.emplace_back("only " + formula_weight(*s_.on_hand, detail_.units) + " of it on hand");
        if (s_.in_season) items.emplace_back(*s_.in_season ? "in season" : "out of season in the month asked for");
        for (const auto& need : s_.needs) items.emplace_back(need);
        if (!s_.note.empty()) items.emplace_back(s_.note);
        return items;
    }

    std::vector<Markup> numbers() const {
        std::vector<Markup> items;
        items.emplace_back("weight: " + s_.dose + "; band " + grams_with_band(s_, detail_.units));
        items.emplace_back(number(s_.distance, 1) + " noticeable differences, the price of swapping included; closeness " +
                           number(s_.closeness, 2) + " (1 when nobody at the table notices)");
        const auto effects = moved(s_.effects);
        constexpr std::size_t most = 5;
        for (std::size_t i = 0; i < std::min(most, effects.size()); ++i) items.emplace_back(effect(effects[i], s_.effects[effects[i]]));
        if (effects.empty()) items.emplace_back("changes nothing by much");
        items.emplace_back("colour, rested: " + band(s_.colour_difference, 1) + " CIEDE2000 units away");
        if (s_.path.size() > 2) {
            std::vector<std::string> between;
            for (std::size_t i = 1; i + 1 < s_.path.size(); ++i) between.push_back(engine_.name_of(s_.path[i]));
            items.emplace_back("by way of " + listed(between));
        }
        if (!s_.sources.empty()) items.push_back(el("span", {{"class", "src"}}, "source: " + listed(s_.sources)));
        return items;
    }

    const StandIn& s_;
    const Engine& engine_;
    const Detail& detail_;
};

}  // namespace

std::string swaps_html(const SwapsAnswer& answer, const std::string& title, const Engine& engine, const Detail& detail) {
    const SwapsAnswer a = told_in(answer, detail.units);
    const Together all = together(a);
    Markup rest;
    for (const auto& line : excluded_in_words(a.excluded, engine)) rest += el("p", line);
    rest += safety_part(cook_line(all), all.allergens, all.cautions);
    if (!a.stand_ins.empty()) {
        const Markup wheel =
            swap_wheel(a) + el("p", {{"class", "soft"}},
                               "The numbers are the ranks in the table; the nearer to the middle, the closer. A dashed line goes "
                               "by way of another ingredient.");
        rest += section(Markup("Around ") + food(a.name),
                        el("div", {{"class", "beside"}}, el("div", wheel) + el("div", ranks(a, detail.units))));
    }
    rest += read_as_list(read_as_words(a.read_as, detail.units));
    Markup details;
    for (std::size_t i = 0; i < a.stand_ins.size(); ++i) details += el("div", StandInPart(a.stand_ins[i], engine, detail).whole(i + 1));
    if (!details.empty()) rest += section("What each asks for", el("div", {{"class", "two"}}, details));
    return html_page("stand-ins for " + a.name, title,
                     first_of_all(told_first(a.read_as, detail.units)) + el("p", {{"class", "lead"}}, in_short(a, title, detail.units)) +
                         own_records_note(a.overlay),
                     rest);
}

}  // namespace standin::cli
