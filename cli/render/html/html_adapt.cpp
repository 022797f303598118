#include <algorithm>

#include "render/effects.hpp"
#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup listing(const std::string& heading, const std::vector<std::string>& items) {
    return items.empty() ? Markup() : section(heading, bullets({items.begin(), items.end()}));
}

Markup new_allergens(const Variant& v) {
    if (v.new_allergens.empty()) return {};
    return el("span", {{"class", "new"}}, "Brings a new allergen: " + listed(v.new_allergens) + ".");
}

// All variants in a line each, before anything else.
Markup in_short(const AdaptAnswer& a, const Engine& engine) {
    Markup items;
    for (const auto& v : a.variants) {
        std::string what;
        for (const auto& e : v.edits) what += (what.empty() ? "" : "; ") + in_words(e, engine);
        const std::string rank = std::to_string(v.rank);
        items += el("li", el("a", {{"href", "#variant-" + rank}}, number(v.distance, 1) + " noticeable differences") +
                              Markup(": " + (what.empty() ? "change nothing" : what) + ". ") + new_allergens(v));
    }
    return a.variants.empty() ? Markup() : el("ol", {{"class", "answers"}}, items);
}

Markup edits(const Variant& v, const Engine& engine) {
    std::vector<Markup> items;
    for (const auto& e : v.edits) items.push_back(el("strong", capital(in_words(e, engine))) + Markup(e.why.empty() ? "" : ": " + e.why));
    if (items.empty()) items.emplace_back("Change nothing.");
    for (const auto& g : v.gives_back) items.emplace_back(g);
    return bullets(items);
}

// What the variant adds to be minded.
Markup own_safety(const Variant& v, const Prediction& base) {
    std::vector<CautionText> fresh;
    for (const auto& c : v.prediction.cautions)
        if (std::none_of(base.cautions.begin(), base.cautions.end(), [&](const CautionText& b) { return b.text == c.text; }))
            fresh.push_back(c);
    Markup out;
    if (!v.new_allergens.empty()) out += el("p", new_allergens(v));
    if (!fresh.empty()) out += el("h3", "Mind, with this one") + cautions_list(fresh);
    return out;
}

Markup wants_part(const Variant& v) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& w : v.wants)
        rows.push_back({w.want, el("span", {{"class", w.met ? "yes" : "no"}}, w.met ? "yes" : "no"), chance(w.chance), w.says});
    return rows.empty() ? Markup()
                        : html_table("What was wanted", {{"Want", false}, {"met", false}, {"chance", true}, {"how", false}}, rows);
}

Markup weights_part(const Variant& v) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& l : v.prediction.lines)
        rows.push_back({food(l.name, l.prepared) + (l.keep ? " (keep)" : ""), grams(l.weighed_g), number(100 * l.share, 1) + " %"});
    return html_table("Weights of variant " + std::to_string(v.rank), {{"Line", false}, {"weigh", true}, {"share", true}}, rows);
}

Markup variant_part(const Variant& v, const AdaptAnswer& a, const Engine& engine) {
    const std::vector<Shown> shown{{"original", &a.base}, {"variant", &v.prediction}};
    const auto rows = moved(v.differences);
    const std::string colour =
        "Colour: " + band(v.colour_rested, 1) + " CIEDE2000 units away when rested, " + band(v.colour_cooked, 1) + " when cooked.";
    Markup content = el("h2", std::to_string(v.rank) + ". " + number(v.distance, 1) + " noticeable differences from your original") +
                     el("p", capital(v.table)) + el("h3", "What to do") + edits(v, engine) + own_safety(v, a.base) + wants_part(v) +
                     el("h3", "Colour") + swatches(shown) + el("p", {{"class", "soft"}}, colour);
    const Markup moves = rows.empty() ? el("p", "No property moves by much.")
                                      : properties_table("What moves in variant " + std::to_string(v.rank), rows, shown, &v.differences);
    content += el("div", {{"class", "two"}}, el("div", el("h3", "What moves") + moves) + el("div", el("h3", "Weights") + weights_part(v)));
    return el("section", {{"class", "card"}, {"id", "variant-" + std::to_string(v.rank)}}, content);
}

std::string how_sure(const AdaptAnswer& a) {
    return std::to_string(a.plans_visited) + (a.plans_visited == 1 ? " plan" : " plans") + " looked at. " +
           (a.proved ? "Proved: no plan left out can come nearer than those shown."
                     : "Not proved: a plan not looked at could still be up to " + number(a.gap, 1) + " noticeable differences nearer.");
}

}  // namespace

std::string adapt_html(const AdaptAnswer& a, const Engine& engine) {
    const Markup lead = el("p", {{"class", "lead"}}, base_in_short(a.base) + " " + answer_first(a)) + in_short(a, engine);
    Markup rest = listing("As it was understood", asked_as_understood(a, engine));
    rest += listing("These demands cannot all be met", a.conflict) + listing("What would give", a.would_give);
    rest += safety_part("", a.base.allergens, a.base.cautions) +
            el("p", {{"class", "soft"}}, "These are the original's; what a variant adds stands with it.");
    for (const auto& v : a.variants) rest += variant_part(v, a, engine);
    if (a.plans_visited > 0) rest += section("How sure", el("p", how_sure(a)));
    rest += listing("Taken for granted", presumed_in_words(a));
    return html_page("variants", a.base.title, lead, rest);
}

}  // namespace standin::cli
