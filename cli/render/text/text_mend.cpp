#include <algorithm>

#include "render/mend_words.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/union.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

std::string ingoing_table(const std::vector<Ingoing>& all, Units units, const Look& look, bool how) {
    Table table({{"weigh", Align::right}, {"", Align::left}, {how ? "how it goes in" : "", Align::left}});
    for (const auto& in : all)
        table.row({formula_weight(in.grams, units),
                   with_preparations(in.name, in.prepared) + (!how && in.weighed_raw ? " (weighed raw)" : "") + (in.fresh ? " (new)" : ""),
                   how ? how_in(in, units) : ""});
    return table.page(look);
}

// What plain mass is made of, the part that goes in first beside all of it.
std::string plain_table(const MendWay& way, Units units, const Look& look) {
    if (way.plain_rounds < 2) return ingoing_table(way.plain, units, look, false);
    Table table({{"first part", Align::right}, {"in all", Align::right}, {"", Align::left}});
    for (const auto& in : way.plain)
        table.row({formula_weight(in.grams / way.plain_rounds, units), formula_weight(in.grams, units),
                   with_preparations(in.name, in.prepared) + (in.weighed_raw ? " (weighed raw)" : "") + (in.fresh ? " (new)" : "")});
    return table.page(look);
}

std::string changes(const MendWay& way, const MendAnswer& a, bool full, const Look& look) {
    Table table({{"what it changes", Align::left}, {"as made", Align::right}, {"mended", Align::right}, {"change", Align::right}});
    for (const auto p : rows_of(way, full))
        table.row({name_with_unit(p), shown(p, a.base.properties[p]), shown(p, way.prediction.properties[p]),
                   signed_band(way.differences[p], info(p).decimals)});
    return table.empty() ? paragraph("No property moves by much.", look) : "\n" + table.page(look);
}

std::string way_part(const MendWay& way, std::size_t number, const MendAnswer& a, const Detail& detail, const Look& look) {
    std::string out = heading(std::to_string(number) + ". " + heading_of(way), look);
    if (!way.plain.empty())
        out += paragraph("Plain mass, " + plain_in_short(way, detail.units), look) + plain_table(way, detail.units, look);
    if (!way.plain.empty() && !way.add.empty()) out += paragraph(then_into_all(way), look);
    if (!way.add.empty()) out += ingoing_table(way.add, detail.units, look, true);
    for (const auto& want : way.wants) out += bullet(want_in_short(want, way), look);
    for (const auto& beside : beside_wants(way, a, detail.units)) out += bullet(beside, look);
    out += changes(way, a, detail.full, look);
    if (!way.new_allergens.empty()) out += bullet("Brings a new allergen: " + listed(way.new_allergens) + ".", look);
    return out;
}

}  // namespace

std::string mend_text(const MendAnswer& answer, const Engine& engine, const Detail& detail, const Look& look) {
    const MendAnswer a = told_in(answer, detail.units);
    const Together all = together(a);
    if (!a.discard.empty())  // nothing else is to be read of what is thrown out
        return paragraph(answer_first(a, detail.units), look, 0) + "\n" + paragraph(a.discard, look, 0);
    std::string text = first_of_all(told_first(a.base.read_as, detail.units), look) + paragraph(answer_first(a, detail.units), look, 0) +
                       safety_first(all, look) + own_records(a.base.overlay, look);
    for (const auto& line : excluded_in_words(a.excluded, engine)) text += paragraph(line, look, 0);
    std::vector<std::string> taken;
    for (const auto& word : a.words) taken.push_back(as_taken(word));
    for (const auto& measured : a.measured) taken.push_back(as_measured(measured));
    if (a.only_listed) taken.emplace_back("Only what the list or the formula names may come in.");
    text += bulleted("How it was taken", taken, look);
    text += bulleted("What comes first", causes(a, detail.units), look);
    for (std::size_t i = 0; i < a.ways.size(); ++i) text += way_part(a.ways[i], i + 1, a, detail, look);
    text += bulleted("What cannot be mended", in_full(a.cannot, detail.units), look);
    text += bulleted("What makers do (practice; no model judges it)", practices(a, detail.units), look);
    text +=
        bulleted("The plain mass", steps(a.plain, detail.units), look) + bulleted("How to bring it in", steps(a.fold, detail.units), look);
    if (detail.full) {
        std::vector<std::string> presumed;
        for (const auto& p : a.presumed) presumed.push_back(p.says);
        text += bulleted("Taken for granted", presumed, look);
    }
    text += read_as_part(read_as_words(a.base.read_as, detail.units), look);
    text += detail.full ? safety_in_full(all, look) : safety_in_brief(all, look);
    return text + (detail.full || a.ways.empty() ? "" : "More: --full. The mended formula: --save FILE (--variant N).\n");
}

}  // namespace standin::cli
