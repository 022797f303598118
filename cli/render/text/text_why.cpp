#include <algorithm>
#include <cmath>

#include "render/effects.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"

namespace standin::cli {
namespace {

double width(const Band& band) { return band.high - band.low; }

// How much of the band would be left: "half of it", "nearly all of it".
std::string left(const Band& known, const Band& band) {
    if (!(width(band) > 0)) return "no band";
    return number(100 * width(known) / width(band), 0) + " %";
}

std::string in_short(const WhyAnswer& a) {
    const auto& i = info(a.property);
    std::string text = std::string(i.name) + " of " + a.prediction.title + ": " + shown(a.property, a.band);
    if (!i.unit.empty()) text += " " + std::string(i.unit);
    text += ".";
    const auto measurable = std::find_if(a.unknowns.begin(), a.unknowns.end(), [](const Unknown& u) { return u.kitchen; });
    if (measurable != a.unknowns.end() && width(measurable->known) < 0.9 * width(a.band))
        text += " Most worth finding out is " + measurable->what + ": it would leave " + left(measurable->known, a.band) + " of the band.";
    return text;
}

std::string lines_part(const WhyAnswer& a, Units units, const Look& look) {
    if (a.lines.empty()) return "";
    Table table({{"line, a tenth more of it", Align::left}, {"moves it by", Align::right}});
    for (const auto& lever : a.lines) {
        const auto& line = a.prediction.lines[lever.line];
        table.row({formula_weight(line.weighed_g, units) + " " + with_preparations(line.name, line.prepared),
                   signed_band(lever.change, info(a.property).decimals)});
    }
    return heading("What moves it", look) + table.page(look);
}

std::string unknowns_part(const WhyAnswer& a, const Look& look) {
    std::string out = heading("What makes the band wide", look);
    if (a.unknowns.empty()) return out + bullet("no single unknown stands out", look);
    for (const auto& unknown : a.unknowns)
        out += bullet(unknown.what + ": " + number(100 * unknown.share, 0) + " % of the spread; known exactly, " +
                          shown(a.property, unknown.known) + " would be left (" + left(unknown.known, a.band) + " of the band). " +
                          capital(unknown.advice) + ".",
                      look);
    return out;
}

}  // namespace

std::string why_text(const WhyAnswer& answer, Units units, const Look& look) {
    return paragraph(in_short(answer), look, 0) + own_records(answer.prediction.overlay, look) + lines_part(answer, units, look) +
           unknowns_part(answer, look) + allergens_part(answer.prediction.allergens, look) +
           cautions_part(answer.prediction.cautions, look);
}

}  // namespace standin::cli
