#include <array>

#include "render/cost_words.hpp"
#include "render/html/html_charts.hpp"
#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup heat_part(const Prediction& p) {
    constexpr double sure = 0.995;
    if (p.heat_chances.front() > sure) return {};  // no chile: the first lines say so
    std::vector<std::vector<Markup>> rows;
    for (std::size_t i = 0; i < p.heat_chances.size(); ++i)
        if (p.heat_chances[i] >= 0.005) rows.push_back({heat_degree(i), chance(p.heat_chances[i]), share_bar(p.heat_chances[i])});
    return section("How hot it will seem",
                   html_table("Chance of each word", {{"Heat", false}, {"chance", true}, {"as a bar", false}}, rows) +
                       el("p", {{"class", "soft"}},
                          only_pepper(p) ? std::string(no_chile_in_it)
                                         : "Pods of one kind differ by a factor of two and more: fry a patty and taste. " + heat_basis(p)));
}

Markup lines_part(const Prediction& p, Units units) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& l : p.lines)
        rows.push_back({food(l.name, l.prepared) + (l.keep ? " (keep)" : ""), formula_weight(l.weighed_g, units),
                        formula_weight(l.grams, units), number(100 * l.share, l.share < 0.1 ? 2 : 1) + " %"});
    return section("Lines",
                   html_table("The batch is " + formula_weight(p.batch_g, units) + ", " + formula_weight(p.meat_g, units) + " of it meat",
                              {{"Line", false}, {"weighed", true}, {"in the batch", true}, {"share", true}}, rows));
}

}  // namespace

std::string predict_html(const Prediction& prediction, const Detail& detail) {
    const Prediction p = told_in(prediction, detail.units);
    const std::vector<Shown> shown{{"likely", &p}};
    Markup colour = swatches(shown);
    if (p.green_life) colour += el("p", p.green_life->says);
    Markup rest = section("Colour", colour) +
                  safety_part("Cook to " + core(p.core) + " in the middle, measured.", p.allergens, p.cautions) +
                  section("What it will be", bench_properties(shown)) + heat_part(p);
    if (const auto& cost = detail.beside.cost)
        rest += section("What it costs, by " + cost->list, el("p", cost_sentence(*cost, detail.units)));
    Markup more = all_properties(shown) + lines_part(p, detail.units) + section("Where it comes from", origins(p));
    if (!p.aroma.empty()) more += section("Aroma", el("p", "Leading notes: " + listed(p.aroma) + "."));
    const std::string kills = p.lethality ? p.lethality->says + " (" + p.lethality->table + ")" : why_no_kill(p, detail.units);
    if (!kills.empty()) more += section("What the cook kills", el("p", kills));
    rest += folded("Every number, and where it comes from", more, detail.full) + label_part(p.label, detail.beside, true) +
            freezing_part(detail.beside, detail.units);
    const auto stretched = in_full(p.notes, detail.units);
    const auto taken = in_full(without_cautions(p.read_as), detail.units);
    std::vector<Markup> read_as(taken.begin(), taken.end()), notes(stretched.begin(), stretched.end());
    if (!read_as.empty()) rest += section("How the formula was read", bullets(read_as));
    if (!notes.empty()) rest += section("Where the models are stretched", bullets(notes));
    return html_page("prediction", p.title, el("p", {{"class", "lead"}}, in_short(p)) + own_records_note(p.overlay), rest);
}

}  // namespace standin::cli
