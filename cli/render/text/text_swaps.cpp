#include <algorithm>

#include "render/effects.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"

namespace standin::cli {
namespace {

std::string ranks(const SwapsAnswer& a, const Look& look) {
    Table table({{"", Align::right},
                 {"stand-in", Align::left},
                 {"weigh (band)", Align::left},
                 {"close", Align::right},
                 {"apart", Align::right},
                 {"mainly", Align::left}});
    for (std::size_t i = 0; i < a.stand_ins.size(); ++i) {
        const auto& s = a.stand_ins[i];
        const auto first = moved(s.effects);
        table.row({std::to_string(i + 1), with_preparations(s.name, s.prepared), grams_with_band(s), number(s.closeness, 2),
                   number(s.distance, 1), first.empty() ? "much the same" : direction(first.front(), s.effects[first.front()].mid)});
    }
    return "\n" + table.page(look) +
           paragraph(
               "close: 1 when nobody at the table notices. apart: noticeable differences, the price of swapping included, salt, water and "
               "acid trimmed after it.",
               look);
}

std::string detail(const StandIn& s, std::size_t rank, const Engine& engine, const Look& look) {
    std::string out = heading(std::to_string(rank) + ". " + grams(s.grams) + " " + with_preparations(s.name, s.prepared), look);
    out += bullet("weight: " + s.dose, look);
    std::string trims;
    for (const auto& t : s.trims)
        trims += (trims.empty() ? "" : ", ") + engine.name_of(t.line) + " " + grams(t.grams_before) + " to " + grams(t.grams_after);
    if (!trims.empty()) out += bullet("with it: " + trims, look);
    const auto shown_effects = moved(s.effects);
    constexpr std::size_t most = 5;
    for (std::size_t i = 0; i < std::min(most, shown_effects.size()); ++i)
        out += bullet(effect(shown_effects[i], s.effects[shown_effects[i]]), look);
    if (shown_effects.empty()) out += bullet("changes nothing by much", look);
    out += bullet("colour, rested: " + band(s.colour_difference, 1) + " CIEDE2000 units away", look);
    if (!s.new_allergens.empty()) out += bullet("brings a new allergen: " + listed(s.new_allergens), look);
    for (const auto& c : s.cautions) out += bullet("mind: " + c.text + (c.source.empty() ? "" : " [" + c.source + "]"), look);
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

std::string swaps_text(const SwapsAnswer& answer, const std::string& title, const Engine& engine, const Look& look) {
    std::string page = paragraph(in_short(answer, title), look, 0);
    if (!answer.stand_ins.empty()) page += ranks(answer, look);
    for (std::size_t i = 0; i < answer.stand_ins.size(); ++i) page += detail(answer.stand_ins[i], i + 1, engine, look);
    if (!answer.left_out.empty()) page += heading("Left out, for how this batch is made", look);
    for (const auto& one : answer.left_out) page += bullet(one, look);
    return page + read_as_part(answer.read_as, look) + allergens_part(answer.allergens, look) + cautions_part(answer.cautions, look);
}

}  // namespace standin::cli
