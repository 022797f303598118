#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/mend_words.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "render/union.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup ingoing_table(const std::string& caption, const std::vector<Ingoing>& all, Units units, int parts = 1) {
    std::vector<std::vector<Markup>> rows;
    const auto weight = [&](double grams) { return el("span", {{"class", "big"}}, formula_weight(grams, units)); };
    for (const auto& in : all) {
        rows.push_back({food(in.name, in.prepared) + (in.fresh ? " (new)" : ""), weight(in.grams / parts)});
        rows.back().push_back(parts > 1 ? weight(in.grams) : Markup(how_in(in, units)));
    }
    if (parts > 1) return html_table(caption, {{"What", false}, {"first part", true}, {"in all", true}}, rows);
    return html_table(caption, {{"What", false}, {"weigh", true}, {"how it goes in", false}}, rows);
}

Markup way_part(const MendWay& way, std::size_t n, const MendAnswer& a, const Detail& detail) {
    Markup content = el("h2", std::to_string(n) + ". " + heading_of(way));
    if (!way.plain.empty()) {
        content += el("p", "Plain mass, " + plain_in_short(way, detail.units));
        content += ingoing_table("Plain mass of way " + std::to_string(n), way.plain, detail.units, way.plain_rounds);
    }
    if (!way.plain.empty() && !way.add.empty()) content += el("p", then_into_all(way));
    if (!way.add.empty()) content += ingoing_table("What goes in, way " + std::to_string(n), way.add, detail.units);
    std::vector<Markup> wants;
    for (const auto& want : way.wants) wants.emplace_back(want_in_short(want, way));
    for (const auto& beside : beside_wants(way, a, detail.units)) wants.emplace_back(beside);
    if (!wants.empty()) content += bullets(wants);
    if (!way.new_allergens.empty())
        content += el("p", el("span", {{"class", "new"}}, "Brings a new allergen: " + listed(way.new_allergens) + "."));
    const auto rows = rows_of(way, detail.full);
    content += rows.empty() ? el("p", "No property moves by much.")
                            : properties_table("What way " + std::to_string(n) + " changes", rows,
                                               {{"as made", &a.base}, {"mended", &way.prediction}}, &way.differences);
    return el("section", {{"class", "card"}, {"id", "way-" + std::to_string(n)}}, content);
}

}  // namespace

std::string mend_html(const MendAnswer& answer, const Engine& engine, const Detail& detail) {
    const MendAnswer a = told_in(answer, detail.units);
    const Together all = together(a);
    Markup lead = first_of_all(told_first(a.base.read_as, detail.units)) + el("p", {{"class", "lead"}}, answer_first(a, detail.units)) +
                  own_records_note(a.base.overlay);
    if (!a.discard.empty())  // nothing else is to be read of what is thrown out
        return html_page("mending", a.base.title, lead + el("p", a.discard), {});
    for (const auto& line : excluded_in_words(a.excluded, engine)) lead += el("p", line);
    std::vector<std::string> taken, presumed;
    for (const auto& word : a.words) taken.push_back(as_taken(word));
    for (const auto& measured : a.measured) taken.push_back(as_measured(measured));
    for (const auto& p : a.presumed) presumed.push_back(p.says);
    if (a.only_listed) taken.emplace_back("Only what the list or the formula names may come in.");
    Markup rest = safety_part(cook_line(all), all_allergens(all), all_cautions(all));
    rest += listing("How it was taken", taken);
    rest += listing("What comes first", causes(a, detail.units));
    for (std::size_t i = 0; i < a.ways.size(); ++i) rest += way_part(a.ways[i], i + 1, a, detail);
    rest += listing("What cannot be mended", in_full(a.cannot, detail.units));
    rest += listing("What makers do (practice; no model judges it)", practices(a, detail.units));
    rest += listing("The plain mass", steps(a.plain, detail.units)) + listing("How to bring it in", steps(a.fold, detail.units));
    rest += read_as_list(read_as_words(a.base.read_as, detail.units)) + listing("Taken for granted", presumed);
    return html_page("mending", a.base.title, lead, rest);
}

}  // namespace standin::cli
