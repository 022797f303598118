#include <algorithm>
#include <array>

#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

std::string properties_part(const Prediction& p, bool full, const Look& look) {
    Table table({{"", Align::left}, {"likely (nine in ten within)", Align::left}, {"", Align::left}});
    for_each_property([&](Property property) {
        if (!full && !at_the_bench(property)) return;
        const auto& i = info(property);
        const Band& b = p.properties[property];
        const bool trace = property == Property::heat_mg_kg || property == Property::heat_shu || property == Property::burn_mg_kg ||
                           property == Property::chlorophyll_mg_kg;
        if (trace && b.high <= 0) return;
        table.row({std::string(i.name), shown(property, b), std::string(i.unit)});
    });
    const std::string basis = full ? "" : heat_basis(p);
    return (full ? heading("Properties", look) : "\n") + table.page(look) + (basis.empty() ? "" : paragraph(basis, look));
}

constexpr double sure_enough = 0.75;  // chance of the likeliest word below which nothing is promised; judgement

double likeliest(const Prediction& p) { return *std::max_element(p.heat_chances.begin(), p.heat_chances.end()); }

// Pods and their powders can be held back; nobody tastes a pinch of pepper by halves, nor paprika without heat.
bool hardly_hot(const Prediction& p) { return p.heat_chances.at(0) + p.heat_chances.at(1) >= sure_enough; }

std::string heat_part(const Prediction& p, bool full, const Look& look) {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < p.heat_chances.size(); ++i)
        if (p.heat_chances[i] >= 0.005) parts.push_back(heat_degree(i) + " " + number(100 * p.heat_chances[i], 0) + " %");
    std::string line;
    for (const auto& part : parts) line += (line.empty() ? "" : ", ") + part;
    if (!full && parts.size() < 2) return "";  // the first lines say it
    std::string out =
        full ? heading("How hot it will seem", look) + paragraph(line, look) : paragraph("How hot it will seem: " + line + ".", look);
    if (const std::string basis = heat_basis(p); full && !basis.empty()) out += paragraph(basis, look);
    if (only_pepper(p)) out += paragraph(std::string(no_chile_in_it), look);
    else if (likeliest(p) < sure_enough && !hardly_hot(p) && !p.heat_from.empty())
        out += paragraph("Too wide to promise: mix in half of what is hot, fry a patty, taste, then add the rest.", look);
    return out;
}

std::string said_of(const Prediction& p) {
    constexpr std::array<std::pair<const char*, PredictedColour Prediction::*>, 3> states{
        {{"raw", &Prediction::raw}, {"rested", &Prediction::rested}, {"cooked", &Prediction::cooked}}};
    std::string text;
    for (const auto& [when, which] : states)
        if (const auto words = said_words(p.*which); !words.empty()) text += (text.empty() ? "" : "; ") + std::string(when) + ' ' + words;
    return text.empty() ? "" : "What people would say of the swatch, by a survey of colour names: " + text + ".";
}

std::string colour_part(const Prediction& p, const Look& look) {
    Table table({{"", Align::left},
                 {"", Align::left},
                 {"", Align::left},
                 {"", Align::left},
                 {"L", Align::right},
                 {"a", Align::right},
                 {"b", Align::right}});
    const auto row = [&](const char* when, const PredictedColour& c) {
        table.row({when, look.swatch(c.hex), c.hex, colour_words(c), band(c.L, 0), band(c.a, 0), band(c.b, 0)});
    };
    row("raw", p.raw);
    row("rested", p.rested);
    row("cooked", p.cooked);
    const std::string said = said_of(p);
    return heading("Colour", look) + table.page(look) + (said.empty() ? "" : paragraph(said, look)) +
           (p.green_life ? paragraph(p.green_life->says, look) : "");
}

std::string lethality_part(const Prediction& p, Units units, const Look& look) {
    const std::string says = p.lethality ? p.lethality->says + " (" + p.lethality->table + ")" : why_no_kill(p, units);
    return says.empty() ? "" : heading("What the cook kills", look) + paragraph(says, look);
}

std::string lines_part(const Prediction& p, Units units, const Look& look) {
    Table table(
        {{"", Align::right}, {"line", Align::left}, {"weighed", Align::right}, {"in the batch", Align::right}, {"share", Align::right}});
    for (std::size_t i = 0; i < p.lines.size(); ++i) {
        const auto& l = p.lines[i];
        table.row({std::to_string(i + 1), with_preparations(l.name, l.prepared) + (l.keep ? " (keep)" : ""),
                   formula_weight(l.weighed_g, units), formula_weight(l.grams, units),
                   number(100 * l.share, l.share < 0.1 ? 2 : 1) + " %"});
    }
    return heading("Lines", look) + table.page(look) +
           paragraph("The batch is " + formula_weight(p.batch_g, units) + ", " + formula_weight(p.meat_g, units) + " of it meat.", look);
}

std::string from(const char* what, const std::vector<Contribution>& parts, const Prediction& p, const Look& look) {
    if (parts.empty()) return "";
    constexpr std::size_t most = 5;
    std::string line = std::string(what) + ": ";
    double rest = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i >= most || parts[i].line >= p.lines.size()) rest += parts[i].share;
        else line += (i ? ", " : "") + p.lines[parts[i].line].name + " " + chance(parts[i].share);
    }
    if (rest > 0) line += ", others " + chance(rest);
    return bullet(line, look);
}

std::string origins_part(const Prediction& p, const Look& look) {
    const std::string all = from("green", p.green_from, p, look) + from("heat", p.heat_from, p, look) + from("acid", p.acid_from, p, look) +
                            from("salt", p.salt_from, p, look) + from("fat", p.fat_from, p, look);
    return all.empty() ? "" : heading("Where it comes from", look) + all;
}

}  // namespace

std::string predict_text(const Prediction& prediction, const Detail& detail, const Look& look) {
    const Prediction p = told_in(prediction, detail.units);
    const bool full = detail.full;
    std::string page = look.bold(wrap(p.title, look.width)) + "\n" + paragraph(in_short(p), look, 0) +
                       safety_first(core(p.core), p.allergens, look) + own_records(p.overlay, look);
    page += properties_part(p, full, look) + heat_part(p, full, look);
    if (full) {
        page += colour_part(p, look) + lethality_part(p, detail.units, look) + lines_part(p, detail.units, look) + origins_part(p, look);
        if (!p.aroma.empty()) page += heading("Aroma", look) + paragraph("Leading notes: " + listed(p.aroma) + ".", look);
    } else if (p.green_life) {
        page += paragraph(p.green_life->says, look);
    }
    page += cost_part(p, detail, look) + read_as_part(read_as_words(p.read_as, detail.units), look);
    page += full ? allergens_part(p.allergens, look) + cautions_part(p.cautions, look) : safety_in_brief(p.allergens, p.cautions, look);
    if (full) page += label_part(p.label, detail, look) + freezing_part(detail.beside, detail.units, look);
    if (!p.notes.empty()) page += heading("Where the models are stretched", look);
    for (const auto& note : in_full(p.notes, detail.units)) page += bullet(note, look);
    return page + (full ? "" : "More: --full. What moves one property: --why P.\n");
}

}  // namespace standin::cli
