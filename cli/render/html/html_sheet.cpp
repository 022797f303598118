#include <algorithm>
#include <array>

#include "render/cost_words.hpp"
#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/sentences.hpp"
#include "render/sheet_words.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "render/weights.hpp"
#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

// A number stays on the line of its unit: "In all 4220 g" does not end in a lone g.
std::string kept_together(const std::string& text) {
    constexpr std::array<std::string_view, 14> units{"g", "C", "F", "oz", "lb", "mm", "m", "in", "ft", "min", "h", "ml", "l", "%"};
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool after_number = i > 0 && text[i - 1] >= '0' && text[i - 1] <= '9';
        const auto end = std::min(text.find_first_of(" .,;)(", i + 1), text.size());
        const auto word = std::string_view(text).substr(std::min(i + 1, text.size()), end - i - 1);
        const bool unit = text[i] == ' ' && after_number && std::find(units.begin(), units.end(), word) != units.end();
        out += unit ? "\u00a0" : std::string(1, text[i]);
    }
    return out;
}

Markup tick(const Markup& content) {
    return el("label", {{"class", "tick"}}, void_el("input", {{"type", "checkbox"}}) + el("span", content));
}

Markup when(const SheetWeight& w, const PredictedLine& line, Units units) {
    std::string words = as_weighed(line).substr(line.name.size());
    words.erase(0, words.find_first_not_of(" ,"));
    words += own_measure(line, units);
    if (line.keep) words += std::string(words.empty() ? "" : "; ") + "keep";
    if (w.fine) words += std::string(words.empty() ? "" : "; ") + "0.1 g scale";
    return words.empty() ? Markup() : Markup(" ") + el("small", words);
}

Markup weights_part(const Sheet& s, Units units) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& w : s.weights) {
        const auto& line = s.prediction.lines[w.line];
        rows.push_back({tick(el("span", {{"class", "big"}}, food(line.name)) + when(w, line, units)),
                        el("span", {{"class", "big"}}, stacked(weight(w.weigh_g, units, w.scale_g))), number(100 * line.share, 1) + " %"});
    }
    const auto said = in_full(s.notes, units);
    const std::vector<Markup> notes(said.begin(), said.end());
    return section("Weigh", html_table("On the scale, raw unless it says otherwise; " + s.scaled,
                                       {{"Line", false}, {"weigh", true}, {"share", true}}, rows) +
                                bullets(notes));
}

Markup step_part(const SheetStep& step, std::size_t n, const Sheet& s, Units units) {
    const auto numbers = measured(step, units), known = how_known(step), through = amounts(step, s, units);
    Markup head = el("h3", tick(std::to_string(n) + ". " + capital(step.what)));
    if (!numbers.empty())
        head +=
            el("p", {{"class", "gauge"}}, Markup(kept_together(numbers)) + (known.empty() ? Markup() : Markup(" ") + el("small", known)));
    Markup content = el("div", {{"class", "head"}}, head);
    if (!through.empty()) content += el("p", {{"class", "amounts"}}, kept_together(through));
    return el("li", content + el("p", {{"class", "how"}}, Markup(step.how + " ") + el("span", {{"class", "soft"}}, step.why)));
}

Markup shopping_part(const Sheet& s, Units units, const Extras& beside) {
    std::vector<std::vector<Markup>> rows;
    std::string there;
    for (const auto& p : s.buy) {
        if (p.have_all) {
            there += (there.empty() ? "" : "; ") + what_for(p, s, units) + " " + p.name;
            continue;
        }
        const auto whole = untrimmed(p, s, units) + on_hand(p, s, units);
        rows.push_back(
            {tick(food(p.name) + (whole.empty() ? Markup() : Markup(" ") + el("small", whole))), el("strong", stacked(to_buy(p, units)))});
    }
    if (s.makes.casing_m)
        rows.push_back({tick(Markup(casing(s.makes, units) + " ") + el("small", casing_needed(s.makes, units))),
                        el("strong", stacked(metres(*s.makes.casing_m, units)))});
    const Markup cost = beside.cost ? el("p", cost_sentence(*beside.cost, units)) : Markup();
    const Markup have = there.empty() ? Markup() : el("p", el("strong", "Have, by your list: ") + Markup(there + "."));
    return section(
        "Buy",
        have + html_table("Rounded up to what shops sell; bunches and pieces differ", {{"What", false}, {"buy", true}}, rows) + cost);
}

}  // namespace

std::string sheet_html(const Sheet& sheet, const Detail& detail) {
    const Units units = detail.units;
    const Sheet s = told_in(sheet, units);
    const Markup lead = first_of_all(told_first(s.prediction.read_as, units)) +
                        el("p", {{"class", "lead"}},
                           "Makes " + pieces(s.makes, units) + ". The batch is " + about(s.makes.batch_g, units) + ", scaled " + s.scaled +
                               "; cooked it weighs " + about(s.makes.cooked_g.mid, units) + ", from " + about(s.makes.cooked_g.low, units) +
                               " to " + about(s.makes.cooked_g.high, units) + ".") +
                        own_records_note(s.prediction.overlay);
    Markup steps;
    for (std::size_t i = 0; i < s.steps.size(); ++i) steps += step_part(s.steps[i], i + 1, s, units);
    constexpr std::size_t many = 20;  // set closer on paper, to stay near two pages
    Markup work = el("ol", {{"class", s.steps.size() > many ? "steps many" : "steps"}}, steps);
    if (const auto usual = what_usual_means(s); !usual.empty()) work += el("p", {{"class", "soft"}}, usual);
    const Markup rest =
        safety_part("Cook to " + s.core_says + " in the middle. Keep cold.", s.prediction.allergens, s.prediction.cautions) +
        read_as_list(read_as_words(s.prediction.read_as, units)) +
        el("div", {{"class", "two"}}, weights_part(s, units) + shopping_part(s, units, detail.beside)) +
        el("div", {{"class", "flow"}},
           section("Work, in this order", work) + label_part(s.prediction.label, detail.beside, false) +
               el("div", {{"class", "screen"}}, freezing_part(detail.beside, units))) +
        el("div", {{"class", "screen"}}, section("Colour", swatches({{"", &s.prediction}})));
    return html_page("bench sheet", s.prediction.title, lead, rest);
}

}  // namespace standin::cli
