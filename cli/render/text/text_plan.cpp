#include "render/kilos.hpp"
#include "render/plan_words.hpp"
#include "render/sentences.hpp"
#include "render/sheet_words.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

std::string ranking(const PlanAnswer& a, const Engine& engine, Units units, const Look& look) {
    std::string out = heading("Which fit the list, nearest first", look);
    for (const auto& s : a.sausages) {
        out += paragraph("- " + s.title + ": " + (s.made_g > 0 ? "make " + kilos(s.made_g, units) : std::string("none")), look, 0);
        out += paragraph(way_of(s, engine, units) + ".", look, 4) + paragraph("Alone: " + ends_with(s, units) + ".", look, 4);
    }
    return out;
}

std::string batch_part(const PlannedSausage& s, Units units, const Look& look) {
    Table table({{"weigh", Align::right}, {"", Align::left}});
    for (const auto& line : s.prediction.lines)
        table.row({formula_weight(line.weighed_g, units), with_preparations(line.name, line.prepared)});
    return heading(s.title + ", " + kilos(s.made_g, units), look) + table.page(look);
}

std::string shopping(const PlanAnswer& a, Units units, const Look& look) {
    if (a.buy.empty()) return "";
    Table table({{"buy", Align::right}, {"", Align::left}});
    for (const auto& p : a.buy) table.row({to_buy(p, units), p.name});
    return heading("To buy, less what is on the list", look) + table.page(look);
}

}  // namespace

std::string plan_text(const PlanAnswer& answer, const Engine& engine, const Detail& detail, const Look& look) {
    const PlanAnswer a = told_in(answer, detail.units);
    const Units units = detail.units;
    std::string text = first_of_all(told_first(a.read_as, units), look) + paragraph(answer_first(a, units), look, 0) +
                       safety_first(core(a.on_page.core), a.on_page.allergens, look, ", whichever you make") +
                       own_records(a.overlay, look) + ranking(a, engine, units, look);
    const PlanLists lists = lists_of(a, units);
    text += bulleted("Not all that was asked", lists.shortfalls, look);
    for (const auto& s : a.sausages)
        if (s.made_g > 0) text += batch_part(s, units, look);
    text += bulleted("Left over", lists.left, look) + bulleted("One thing bought that would help", lists.helps, look) +
            shopping(a, units, look);
    if (detail.full) text += bulleted("Taken for granted", lists.presumed, look);
    text += read_as_part(read_as_words(a.read_as, units), look);
    text += detail.full ? allergens_part(a.on_page.allergens, look) + cautions_part(a.on_page.cautions, look)
                        : safety_in_brief(a.on_page.allergens, a.on_page.cautions, look);
    return text + (detail.full ? "" : "More: --full. The first to paper: --json | standin sheet - --variant 1.\n");
}

}  // namespace standin::cli
