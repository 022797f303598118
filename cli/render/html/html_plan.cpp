#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/kilos.hpp"
#include "render/plan_words.hpp"
#include "render/sentences.hpp"
#include "render/sheet_words.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup ranking(const PlanAnswer& a, const Engine& engine, Units units) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& s : a.sausages)
        rows.push_back({food(s.title), el("span", {{"class", "big"}}, s.made_g > 0 ? kilos(s.made_g, units) : std::string("none")),
                        way_of(s, engine, units), ends_with(s, units)});
    return section("Which fit the list",
                   html_table("Nearest to its formula first",
                              {{"Sausage", false}, {"make", true}, {"how", false}, {"alone it would make", false}}, rows));
}

Markup batch_part(const PlannedSausage& s, Units units) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& line : s.prediction.lines)
        rows.push_back({food(line.name, line.prepared), el("span", {{"class", "big"}}, formula_weight(line.weighed_g, units))});
    return el("section", {{"class", "card"}},
              el("h2", food(s.title) + Markup(", " + kilos(s.made_g, units))) +
                  html_table("Weights of " + s.title, {{"Line", false}, {"weigh", true}}, rows));
}

Markup shopping(const PlanAnswer& a, Units units) {
    if (a.buy.empty()) return {};
    std::vector<std::vector<Markup>> rows;
    for (const auto& p : a.buy) rows.push_back({food(p.name), el("strong", stacked(to_buy(p, units)))});
    return section("To buy",
                   html_table("For all of the plan, less what is on the list, as shops sell it", {{"What", false}, {"buy", true}}, rows));
}

}  // namespace

std::string plan_html(const PlanAnswer& answer, const Engine& engine, const Detail& detail) {
    const PlanAnswer a = told_in(answer, detail.units);
    const Units units = detail.units;
    const Markup lead =
        first_of_all(told_first(a.read_as, units)) + el("p", {{"class", "lead"}}, answer_first(a, units)) + own_records_note(a.overlay);
    const PlanLists lists = lists_of(a, units);
    Markup rest = safety_part("Cook to " + core(a.on_page.core) + " in the middle, measured, whichever you make.", a.on_page.allergens,
                              a.on_page.cautions);
    rest += ranking(a, engine, units) + listing("Not all that was asked", lists.shortfalls);
    for (const auto& s : a.sausages)
        if (s.made_g > 0) rest += batch_part(s, units);
    rest += listing("Left over", lists.left) + listing("One thing bought that would help", lists.helps) + shopping(a, units);
    rest += read_as_list(read_as_words(a.read_as, detail.units)) + listing("Taken for granted", lists.presumed);
    return html_page("plan", "One list, " + std::to_string(a.sausages.size()) + (a.sausages.size() == 1 ? " sausage" : " sausages"), lead,
                     rest);
}

}  // namespace standin::cli
