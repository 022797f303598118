#include <algorithm>

#include "render/cost_words.hpp"
#include "render/effects.hpp"
#include "render/html/html_pages.hpp"
#include "render/html/html_parts.hpp"
#include "render/presumed_words.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "render/union.hpp"
#include "render/units.hpp"
#include "render/weights.hpp"
#include "standin/narrate.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

class VariantCard {
public:
    VariantCard(const Variant& variant, const AdaptAnswer& answer, const Engine& engine, const Detail& detail)
        : v_(variant), a_(answer), engine_(engine), detail_(detail) {}

    // One variant whole; of the others what they come to, the rest to be unfolded.
    Markup card() const {
        const bool first = v_.rank == 1;
        Markup content = el("h2", std::to_string(v_.rank) + ". " + capital(in_words(v_.nearness))) +
                         el("p", {{"class", "soft"}},
                            number(v_.distance, 1) + " from your original" + (v_.wants.empty() ? "" : ", what you asked for not counted"));
        if (first) {
            content += weights() + el("p", capital(v_.table) + " " + becomes(a_.base, v_)) + wants() + el("h3", "Why") + whys(false) +
                       new_to_mind() + colour() + folded("The numbers behind it", numbers(), detail_.full);
        } else {
            content += el("p", capital(in_one_sentence()) + ".") + el("p", capital(v_.table) + " " + becomes(a_.base, v_)) + wants() +
                       new_to_mind() +
                       folded("Weights and why", weights() + el("h3", "Why") + whys(false) + colour() + numbers(), detail_.full);
        }
        return el("section", {{"class", "card"}, {"id", "variant-" + std::to_string(v_.rank)}}, content);
    }

private:
    std::string in_one_sentence() const {
        std::string what;
        for (const auto& e : v_.edits) what += (what.empty() ? "" : "; ") + in_brief_with_weight(e, {engine_, a_.base}, detail_.units);
        return what.empty() ? "change nothing" : what;
    }

    Markup weights() const {
        std::vector<std::vector<Markup>> rows;
        for (const auto& row : weight_rows(a_.base, v_)) {
            const auto& line = row.now ? *row.now : *row.before;
            rows.push_back({food(as_weighed(line) + own_measure(line, detail_.units)) + (line.keep ? " (keep)" : ""),
                            el("span", {{"class", "big"}}, row.now ? formula_weight(row.now->weighed_g, detail_.units) : "none"),
                            before_words(row, detail_.units)});
        }
        return html_table("Weights of variant " + std::to_string(v_.rank), {{"Line", false}, {"weigh", true}, {"before", false}}, rows);
    }

    Markup wants() const {
        std::vector<std::vector<Markup>> rows;
        for (const auto& w : v_.wants)
            rows.push_back({w.want,
                            el("span", {{"class", w.met ? "yes" : "no"}},
                               is_even(w) ? "even odds"
                               : w.met    ? "yes"
                                          : "no"),
                            chance(w.chance), w.says});
        return rows.empty() ? Markup()
                            : html_table("What was wanted", {{"Want", false}, {"met", false}, {"chance", true}, {"how", false}}, rows);
    }

    Markup whys(bool full) const {
        std::vector<Markup> items;
        for (const auto& e : v_.edits)
            items.push_back(el("strong", capital(full ? in_words(e, {engine_, a_.base}, detail_.units) : in_brief(e, {engine_, a_.base}))) +
                            Markup(": " + with_others(why_of(e, detail_.units, full), e)));
        if (items.empty()) items.emplace_back("Change nothing.");
        if (const auto change = detail_.beside.change(v_.formula)) items.emplace_back(cost_sentence(*change, detail_.units));
        for (const auto& g : in_full(v_.gives_back, detail_.units)) items.emplace_back(g);
        return bullets(items);
    }

    // "...so the mass sets. Or 74 g cornstarch."
    std::string with_others(const std::string& why, const Edit& e) const {
        const std::string other = or_else(e, engine_, detail_.units);
        return other.empty() ? why : why + (why.ends_with('.') ? " " : ". ") + other;
    }

    Markup new_to_mind() const {
        const auto& fresh = v_.new_cautions;
        Markup out;
        if (!v_.new_allergens.empty())
            out += el("p", el("span", {{"class", "new"}}, "Brings a new allergen: " + listed(v_.new_allergens) + "."));
        if (!fresh.empty()) out += el("h3", "Mind, with this one") + cautions_list(fresh);
        return out;
    }

    std::vector<Shown> shown() const { return {{"original", &a_.base}, {"variant", &v_.prediction}}; }

    Markup colour() const { return el("h3", "Colour") + swatches(shown()); }

    Markup numbers() const {
        const auto rows = moved(v_.differences);
        Markup out =
            el("p", "Distance in noticeable differences, the smallest change a taster picks up: " + number(v_.distance, 1) + ", of which " +
                        number(v_.felt, 1) + " is what the models say will be noticed; the rest is the price of trusting swaps.");
        out += whys(true);
        out += rows.empty() ? el("p", "No property moves by much.")
                            : properties_table("What moves in variant " + std::to_string(v_.rank), rows, shown(), &v_.differences);
        return out + el("p", {{"class", "soft"}},
                        "Colour: " + band(v_.colour_rested, 1) + " CIEDE2000 units away when rested, " + band(v_.colour_cooked, 1) +
                            " when cooked.");
    }

    const Variant& v_;
    const AdaptAnswer& a_;
    const Engine& engine_;
    const Detail& detail_;
};

// All variants in a line each, before anything else.
Markup in_short(const AdaptAnswer& a, const Engine& engine) {
    Markup items;
    for (const auto& v : a.variants) {
        std::string what;
        for (const auto& e : v.edits) what += (what.empty() ? "" : "; ") + in_brief(e, {engine, a.base});
        Markup item = el("a", {{"href", "#variant-" + std::to_string(v.rank)}}, capital(in_words(v.nearness))) +
                      Markup(": " + (what.empty() ? "change nothing" : what) + ". ");
        if (!v.new_allergens.empty()) item += el("span", {{"class", "new"}}, "Brings a new allergen: " + listed(v.new_allergens) + ".");
        items += el("li", item);
    }
    return a.variants.empty() ? Markup() : el("ol", {{"class", "answers"}}, items);
}

std::string how_sure(const AdaptAnswer& a) {
    return std::to_string(a.plans_visited) + (a.plans_visited == 1 ? " plan" : " plans") + " looked at. " + proof_words(a);
}

}  // namespace

std::string adapt_html(const AdaptAnswer& answer, const Engine& engine, const Detail& detail) {
    const AdaptAnswer a = told_in(answer, detail.units);
    const Together all = together(a);
    Markup lead = first_of_all(told_first(a.base.read_as, detail.units)) + first_of_all(said_first(a, detail.units)) +
                  el("p", {{"class", "lead"}}, answer_first(a)) + in_short(a, engine) + own_records_note(a.base.overlay);
    for (const auto& line : asked_as_understood(a, engine)) lead += el("p", line);
    if (const auto presumed = presumed_sentence(a, engine, PresumedAs::with_kin); !presumed.empty())
        lead += el("p", {{"class", "soft"}}, presumed);
    Markup rest = listing(conflict_heading(a), in_full(a.conflict, detail.units));
    for (const auto& help : what_would_help(a)) rest += listing(help.heading, in_full(help.reasons, detail.units));
    rest += listing("What can be reached", in_full(a.reach, detail.units));
    rest += safety_part(cook_line(all), all_allergens(all), all_cautions(all));
    for (const auto& v : a.variants) rest += VariantCard(v, a, engine, detail).card();
    rest += glut_part(detail.beside, detail.units) + listing("How the formula was read", read_as_words(a.base.read_as, detail.units));
    rest += listing("Taken for granted", presumed_in_words(a));
    if (a.plans_visited > 0) rest += section("How sure", el("p", how_sure(a)));
    return html_page("variants", a.base.title, lead, rest);
}

}  // namespace standin::cli
