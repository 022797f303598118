#include <algorithm>

#include "render/cost_words.hpp"
#include "render/effects.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/union.hpp"
#include "render/units.hpp"
#include "render/weights.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

std::string trims_of(const StandIn& s, const Engine& engine, Units units) {
    std::string trims;
    for (const auto& t : s.trims)  // what the partner comes to is told with it
        if (!s.partner || t.line != s.partner->ingredient)
            trims += (trims.empty() ? "" : ", ") + engine.name_of(t.line) + " " + formula_weight(t.grams_before, units) + " to " +
                     formula_weight(t.grams_after, units);
    return trims;
}

// Stand-in, weight, how near, what changes: what a maker picks from.
std::string ranks(const SwapsAnswer& a, Units units, const Look& look) {
    Table table(
        {{"", Align::right}, {"weigh", Align::right}, {"stand-in", Align::left}, {"how close", Align::left}, {"changes", Align::left}});
    for (std::size_t i = 0; i < a.stand_ins.size(); ++i) {
        const auto& s = a.stand_ins[i];
        table.row({std::to_string(i + 1), page_weight(s.grams, units), stand_in_named(s, units),
                   in_words(s.nearness) + ", " + number(s.distance, 1), changes_of(s, 2)});
    }
    return "\n" + table.page(look);
}

// What a maker must know of one before taking it.
std::string to_mind(const StandIn& s, std::size_t rank, const Engine& engine, Units units, const Extras& beside, const Look& look) {
    std::string text;
    const auto say = [&](const std::string& more) { text += (text.empty() ? "" : " ") + more; };
    if (!s.new_allergens.empty()) say("Brings a new allergen: " + listed(s.new_allergens) + ".");
    if (const auto parts = in_parts(s, units); !parts.empty()) say(parts);
    if (const auto trims = trims_of(s, engine, units); !trims.empty()) say("With it " + trims + ".");
    if (const auto change = beside.change(s.formula)) say(cost_sentence(*change, units));
    if (s.on_hand) say("Only " + formula_weight(*s.on_hand, units) + " of it on hand.");
    if (s.in_season && !*s.in_season) say("Out of season in the month asked for.");
    for (const auto& need : s.needs) say(capital(need) + ".");
    if (!s.note.empty()) say(s.note);
    return text.empty() ? "" : bullet(std::to_string(rank) + " " + s.name + ": " + text, look);
}

std::string swaps_in_brief(const SwapsAnswer& a, const Engine& engine, Units units, const Extras& beside, const Look& look) {
    std::string notes;
    const bool by_distance = std::is_sorted(a.stand_ins.begin(), a.stand_ins.end(),
                                            [](const StandIn& one, const StandIn& other) { return one.distance < other.distance; });
    if (!by_distance) notes += paragraph("What makers take without asking stands first, whatever the reckoned distance.", look);
    for (std::size_t i = 0; i < a.stand_ins.size(); ++i) notes += to_mind(a.stand_ins[i], i + 1, engine, units, beside, look);
    return ranks(a, units, look) + (notes.empty() ? "" : "\n" + notes);
}

std::string left_out(const SwapsAnswer& a, const Engine& engine, const Look& look) {
    std::string text;
    for (const auto& line : excluded_in_words(a.excluded, engine)) text += paragraph(line, look, 0);
    return text;
}

std::string detail(const StandIn& s, std::size_t rank, const Engine& engine, Units units, const Extras& beside, const Look& look) {
    std::string out = heading(std::to_string(rank) + ". " + formula_weight(s.grams, units) + " " + stand_in_named(s, units), look);
    out += bullet("weight: " + s.dose + "; band " + grams_with_band(s, units), look);
    out += bullet(in_words(s.nearness) + ": " + number(s.distance, 1) +
                      " noticeable differences, the price of swapping and what is trimmed after it included; closeness " +
                      number(s.closeness, 2) + " (1 when nobody at the table notices)",
                  look);
    if (const auto parts = in_parts(s, units); !parts.empty()) out += bullet(parts, look);
    if (const auto trims = trims_of(s, engine, units); !trims.empty()) out += bullet("with it: " + trims, look);
    if (const auto change = beside.change(s.formula)) out += bullet(cost_sentence(*change, units), look);
    const auto shown_effects = moved(s.effects);
    constexpr std::size_t most = 5;
    for (std::size_t i = 0; i < std::min(most, shown_effects.size()); ++i)
        out += bullet(effect(shown_effects[i], s.effects[shown_effects[i]]), look);
    if (shown_effects.empty()) out += bullet("changes nothing by much", look);
    out += bullet("colour, rested: " + band(s.colour_difference, 1) + " CIEDE2000 units away", look);
    if (!s.new_allergens.empty()) out += bullet("brings a new allergen: " + listed(s.new_allergens), look);
    for (const auto& c : s.cautions) out += bullet("mind: " + cited(c), look);
    if (s.on_hand) out += bullet("only " + formula_weight(*s.on_hand, units) + " of it on hand", look);
    if (s.in_season) out += bullet(*s.in_season ? "in season" : "out of season in the month asked for", look);
    for (const auto& need : s.needs) out += bullet(need, look);
    if (!s.note.empty()) out += bullet(s.note, look);
    if (s.path.size() > 2) {
        std::vector<std::string> between;
        for (std::size_t i = 1; i + 1 < s.path.size(); ++i) between.push_back(engine.name_of(s.path[i]));
        out += bullet("by way of " + listed(between), look);
    }
    std::string sources;
    for (const auto& source : s.sources) sources += (sources.empty() ? "" : ", ") + source;
    if (!sources.empty()) out += bullet("source: " + sources, look);
    return out;
}

}  // namespace

std::string swaps_text(const SwapsAnswer& swaps, const std::string& title, const Engine& engine, const Detail& detail_of,
                       const Look& look) {
    const auto& [units, full, beside] = detail_of;
    const SwapsAnswer answer = told_in(swaps, units);
    const Together all = together(answer);
    std::string page = first_of_all(told_first(answer.read_as, units), look) + paragraph(in_short(answer, title, units), look, 0) +
                       left_out(answer, engine, look) + safety_first(all, look) + own_records(answer.overlay, look);
    if (!answer.stand_ins.empty()) page += full ? ranks(answer, units, look) : swaps_in_brief(answer, engine, units, beside, look);
    for (std::size_t i = 0; full && i < answer.stand_ins.size(); ++i)
        page += detail(answer.stand_ins[i], i + 1, engine, units, beside, look);
    if (full && !answer.left_out.empty()) page += heading("Left out, for how this batch is made", look);
    for (const auto& one : in_full(answer.left_out, units))
        if (full) page += bullet(one, look);
    page += read_as_part(read_as_words(answer.read_as, units), look);
    if (!full) page += safety_in_brief(all, look);
    else page += safety_in_full(all, look);
    return page + (full || answer.stand_ins.empty() ? "" : "More: --full. The formula with one of them: --take N --save FILE.\n");
}

}  // namespace standin::cli
