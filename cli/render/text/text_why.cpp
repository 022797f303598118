#include <algorithm>
#include <cmath>

#include "render/effects.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

constexpr double worth_telling = 0.1;  // of the band, that readings together take off beyond the best of them

double width(const Band& band) { return band.high - band.low; }

// How much of the band would be left: "half of it", "nearly all of it".
std::string left(const Band& known, const Band& band) {
    if (!(width(band) > 0)) return "no band";
    return number(100 * width(known) / width(band), 0) + " %";
}

std::string shown_of(const WhyAnswer& a, const Band& value) { return band(value, a.asked().decimals); }

std::string in_short(const WhyAnswer& a) {
    const auto& i = a.asked();
    std::string text = std::string(i.name) + " of " + a.prediction.title + ": " + shown_of(a, a.band);
    if (!i.unit.empty()) text += " " + std::string(i.unit);
    text += ".";
    if (!a.measurements.empty()) {
        const auto& best = a.measurements.front();
        text += " Most worth measuring is " + best.what + ": its band would be " + number(100 * best.narrower, 0) + " % narrower.";
    }
    return text;
}

std::string lines_part(const WhyAnswer& a, Units units, const Look& look) {
    if (a.lines.empty()) return "";
    Table table({{"line, a tenth more of it", Align::left}, {"moves it by", Align::right}});
    for (const auto& lever : a.lines) {
        const auto& line = a.prediction.lines[lever.line];
        table.row({formula_weight(line.weighed_g, units) + " " + with_preparations(line.name, line.prepared),
                   signed_band(lever.change, a.asked().decimals)});
    }
    return heading("What moves it", look) + table.page(look);
}

// "times 0.82"; a binder is no factor but is added to the rest.
std::string weighs(const Factor& factor) {
    constexpr double seen = 0.005;
    if (!factor.what.ends_with(", added")) return number(factor.value, 2);
    return factor.value < seen ? "none" : "+" + number(factor.value, 2);
}

// "Serrano: as usual this year" has no figure.
std::string write_so(const std::string& line) {
    const bool figure = std::any_of(line.begin(), line.end(), [](unsigned char c) { return c >= '0' && c <= '9'; });
    return figure ? "Write, with your own figure:" : "Write what you find, in such words:";
}

// What each factor of bind takes, and what the maker would have back without that.
std::string factors_part(const WhyAnswer& a, const Look& look) {
    if (a.factors.empty()) return "";
    Table table({{"factor", Align::left}, {"times", Align::right}, {"without that loss", Align::right}});
    for (const auto& factor : a.factors)
        table.row({factor.what, weighs(factor),
                   factor.gives_back >= 0.5 ? "+" + number(factor.gives_back, 0)
                   : factor.gives_back > 0  ? "next to nothing"
                                            : ""});
    return heading("What goes into it", look) + table.page(look);
}

std::string measurements_part(const WhyAnswer& a, const Look& look) {
    if (a.measurements.empty())
        return heading("What to measure", look) + bullet("no reading at the bench would make this band much narrower", look);
    std::string out = heading("What to measure, and the line for kitchen.txt", look);
    for (const auto& m : a.measurements)
        out += bullet(capital(m.what) + ": leaves " + shown_of(a, m.known) + ", a band " + number(100 * m.narrower, 0) + " % narrower. " +
                          write_so(m.line),
                      look) +
               "      " + m.line + "\n";
    if (a.together && a.together->narrower > a.measurements.front().narrower + worth_telling) {
        out += bullet("Together they do more: " + listed(a.together->what) + " leave " + shown_of(a, a.together->known) + ", a band " +
                          number(100 * a.together->narrower, 0) + " % narrower. Write, with your own figures:",
                      look);
        for (const auto& line : a.together->lines) out += "      " + line + "\n";
    }
    return out;
}

// What else of the colour can be asked.
std::string beside_colour(const WhyAnswer& a, const Look& look) {
    if (!a.colour) return "";
    std::string words;
    for (std::size_t p = 0; p < colour_part_count; ++p)
        if (const auto part = static_cast<ColourPart>(p); part != *a.colour) words += std::string(info(part).word) + ", ";
    return paragraph("Of its colour, --why tells as well: " + words + std::string(info(Property::greenness).word) + ".", look, 0);
}

// Of chile there is nothing to measure and nothing that is unknown.
bool of_pepper_alone(const WhyAnswer& a) { return !a.colour && a.property == Property::heat_mg_kg && only_pepper(a.prediction); }

std::string unknowns_part(const WhyAnswer& a, const Look& look) {
    std::string out = heading("What makes the band wide", look);
    constexpr double no_help = 0.985;  // of the band: what would be left of it is as good as all
    std::string all;
    for (const auto& unknown : a.unknowns)
        if (all.empty() || width(unknown.known) < no_help * width(a.band))
            all += bullet(unknown.what + ": " + number(100 * unknown.share, 0) + " % of the spread; known exactly, " +
                              shown_of(a, unknown.known) + " would be left (" + left(unknown.known, a.band) + " of the band). " +
                              capital(unknown.advice) + ".",
                          look);
    return out + (all.empty() ? bullet("no single unknown stands out", look) : all);
}

}  // namespace

std::string why_text(const WhyAnswer& why, Units units, const Look& look) {
    const WhyAnswer answer = told_in(why, units);
    const std::string widths = of_pepper_alone(answer)
                                   ? paragraph(std::string(no_chile_in_it), look, 0)
                                   : measurements_part(answer, look) + lines_part(answer, units, look) + unknowns_part(answer, look);
    return paragraph(in_short(answer), look, 0) + beside_colour(answer, look) + own_records(answer.prediction.overlay, look) +
           factors_part(answer, look) + widths + read_as_part(read_as_words(answer.prediction.read_as, units), look) +
           allergens_part(answer.prediction.allergens, look) + cautions_part(answer.prediction.cautions, look);
}

}  // namespace standin::cli
