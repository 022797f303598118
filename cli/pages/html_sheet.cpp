#include "pages/html_pages.hpp"
#include "pages/html_parts.hpp"
#include "pages/sheet_words.hpp"
#include "pages/text_parts.hpp"
#include "pages/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup tick(const Markup& content) {
    return el("label", {{"class", "tick"}}, void_el("input", {{"type", "checkbox"}}) + el("span", content));
}

Markup when(const SheetWeight& w, const PredictedLine& line) {
    std::string words = with_preparations("", line.prepared);
    if (!words.empty()) words = words.substr(2) + (w.after ? "; weighed prepared" : "; weighed raw");
    if (line.keep) words += std::string(words.empty() ? "" : "; ") + "keep";
    if (w.fine) words += std::string(words.empty() ? "" : "; ") + "needs a 0.1 g scale";
    return words.empty() ? Markup() : Markup(" ") + el("small", words);
}

Markup weights_part(const Sheet& s, Units units) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& w : s.weights) {
        const auto& line = s.prediction.lines[w.line];
        rows.push_back({tick(el("span", {{"class", "big"}}, line.name) + when(w, line)),
                        el("span", {{"class", "big"}}, stacked(weight(w.weigh_g, units, w.scale_g))), number(100 * line.share, 1) + " %"});
    }
    std::vector<Markup> notes(s.notes.begin(), s.notes.end());
    return section("Weigh",
                   html_table("On the scale, " + s.scaled, {{"Line", false}, {"weigh", true}, {"share", true}}, rows) + bullets(notes));
}

Markup step_part(const SheetStep& step, std::size_t n, const Sheet& s, Units units) {
    const auto numbers = measured(step, units), known = how_known(step), sum = in_and_out(step, units);
    Markup content = el("h3", tick(std::to_string(n) + ". " + capital(step.what)));
    if (!numbers.empty())
        content +=
            el("p", el("span", {{"class", "gauge"}}, capital(numbers)) + (known.empty() ? Markup() : Markup(" ") + el("small", known)));
    std::string parts;
    for (const auto& p : step.parts) parts += (parts.empty() ? "" : "; ") + part(p, s, units);
    if (!sum.empty()) parts += (parts.empty() ? "" : ". ") + sum;
    if (!parts.empty()) content += el("p", parts + ".");
    return el("li", content + el("p", step.how) + el("p", {{"class", "soft"}}, "Why: " + step.why));
}

Markup shopping_part(const Sheet& s, Units units) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& p : s.buy)
        rows.push_back(
            {tick(Markup(p.name) + Markup(" ") + el("small", "for " + what_for(p, units))), el("strong", stacked(to_buy(p, units)))});
    return section(
        "Buy", html_table("Rounded up to what shops sell; bunches and pieces differ, so weigh", {{"What", false}, {"buy", true}}, rows));
}

}  // namespace

std::string sheet_html(const Sheet& s, Units units) {
    const Markup lead = el("p", {{"class", "lead"}},
                           "Makes " + pieces(s.makes, units) + ". The batch is " + about(s.makes.batch_g, units) + ", scaled " + s.scaled +
                               "; cooked it weighs " + about(s.makes.cooked_g.mid, units) + ", from " + about(s.makes.cooked_g.low, units) +
                               " to " + about(s.makes.cooked_g.high, units) + ".");
    constexpr std::size_t many = 16;  // from here on smaller type on paper, to stay near two pages
    Markup steps;
    for (std::size_t i = 0; i < s.steps.size(); ++i) steps += step_part(s.steps[i], i + 1, s, units);
    const Markup rest =
        safety_part("Cook to " + core(s.core_c) + " in the middle. Keep cold.", s.prediction.allergens, s.prediction.cautions) +
        el("div", {{"class", "two"}}, weights_part(s, units) + shopping_part(s, units)) +
        section("Work, in this order", el("ol", {{"class", s.steps.size() > many ? "steps long" : "steps"}}, steps)) +
        el("div", {{"class", "screen"}}, section("Colour", swatches({{"", &s.prediction}}))) + label_part(s.prediction.label);
    return html_page("bench sheet", s.prediction.title, lead, rest);
}

}  // namespace standin::cli
