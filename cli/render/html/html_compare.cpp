#include <algorithm>

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

// One line a formula and allergen, so that nobody has to look up which formula a letter means.
std::vector<AllergenText> allergens_by_letter(const std::vector<Prediction>& all) {
    std::vector<AllergenText> out;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (auto a : all[i].allergens) {
            a.allergen = letter(i) + ": " + a.allergen;
            out.push_back(std::move(a));
        }
    return out;
}

std::string first_words(const Prediction& p) {
    return p.bind_word + ", " + colour_words(p.rested) + " (cooked " + colour_words(p.cooked) + "), " + heat_and_chance(p);
}

Markup lines_part(const std::vector<Prediction>& all, Units units) {
    Markup tables;
    for (std::size_t i = 0; i < all.size(); ++i) {
        std::vector<std::vector<Markup>> rows;
        for (const auto& l : all[i].lines)
            rows.push_back({food(l.name, l.prepared), formula_weight(l.weighed_g, units), number(100 * l.share, 1) + " %"});
        tables += html_table(Markup(letter(i) + ": ") + food(all[i].title), {{"Line", false}, {"weighed", true}, {"share", true}}, rows);
    }
    return el("div", {{"class", "two"}}, tables);
}

}  // namespace

std::string compare_html(const std::vector<Prediction>& predictions, const Detail& detail) {
    std::vector<Prediction> all;
    for (const auto& p : predictions) all.push_back(told_in(p, detail.units));
    std::vector<Shown> shown;
    std::string title;
    CoreAsked hottest;
    for (const auto& p : all) hottest = std::max(hottest, p.core);
    Markup items;
    for (std::size_t i = 0; i < all.size(); ++i) {
        shown.push_back({letter(i), &all[i]});
        title += (i ? " and " : "") + all[i].title;
        items +=
            el("li", mark_of(i) + el("strong", Markup(letter(i) + " ") + food(all[i].title)) + Markup(": " + first_words(all[i]) + "."));
    }
    std::vector<std::string> read_as;
    for (std::size_t i = 0; i < all.size(); ++i)
        for (const auto& note : in_full(without_cautions(all[i].read_as), detail.units)) read_as.push_back(letter(i) + ": " + note);
    const Markup rest = section("Colour", swatches(shown)) +
                        safety_part("Cook to " + core(hottest) + " in the middle, measured, whichever you make.", allergens_by_letter(all),
                                    shared_cautions(all)) +
                        read_as_list(read_as) + section("What each will be", bench_properties(shown)) +
                        section("Lines", lines_part(all, detail.units)) + folded("Every number", all_properties(shown), detail.full);
    return html_page("side by side", title, el("ul", {{"class", "lead"}}, items) + own_records_note(all.front().overlay), rest);
}

}  // namespace standin::cli
