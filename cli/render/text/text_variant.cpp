#include "render/text/text_variant.hpp"

#include <algorithm>
#include <cmath>

#include "render/cost_words.hpp"
#include "render/effects.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "render/union.hpp"
#include "render/units.hpp"
#include "render/weights.hpp"

namespace standin::cli {
namespace {

std::string headline(const Variant& v) {
    return std::to_string(v.rank) + ". " + capital(in_words(v.nearness)) + " (" + number(v.distance, 1) + " from your original" +
           (v.wants.empty() ? "" : ", what you asked for not counted") + ")";
}

// What stays as it is stands together below what moves, unless all is to be told.
std::string weights_part(const Variant& v, const VariantPage& page, bool all) {
    constexpr std::size_t worth_gathering = 3;
    std::vector<std::string> stays;
    Table table({{"weigh", Align::right}, {"", Align::left}, {"before", Align::left}});
    const auto rows = weight_rows(page.base, v);
    const auto unmoved = std::count_if(rows.begin(), rows.end(), [&](const auto& row) { return before_words(row, page.units) == "same"; });
    const bool gathered = !all && static_cast<std::size_t>(unmoved) >= worth_gathering;
    for (const auto& row : rows) {
        const auto& line = row.now ? *row.now : *row.before;
        const std::string now = row.now ? line_weight(*row.now, page.units) : "none";
        const std::string name = as_weighed(line) + own_measure(line, page.units) + (line.keep ? " (keep)" : ""),
                          before = before_words(row, page.units);
        if (before == "same" && gathered) stays.push_back(now + " " + name);
        else table.row({now, name, before});
    }
    if (stays.empty()) return table.page(page.look);
    std::string same;
    for (const auto& line : stays) same += (same.empty() ? "" : "; ") + line;
    return (table.empty() ? "" : table.page(page.look)) + paragraph("As before: " + same + ".", page.look);
}

// What the wants came to; of one that asks for several things each is told.
std::string wants_part(const Variant& v, const Look& look) {
    std::string text, before;
    for (const auto& w : v.wants) {
        const bool again = w.want == before;
        text += (text.empty() ? "" : "; ") + (again ? std::string() : w.want + ": ") + in_brief(w.reason) + ": " + met_words(w);
        before = w.want;
    }
    if (text.empty()) return "";
    const bool even = std::any_of(v.wants.begin(), v.wants.end(), is_even);
    text += "." + all_together(v);
    return paragraph("Wanted: " + text + (even ? " For better odds ask with --sure 80." : ""), look);
}

bool is_one_of(const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) != names.end();
}

// Foods that ask something new to be minded: what it is stands first below.
std::string new_to_mind(const Variant& v, const VariantPage& page) {
    std::string out;
    std::vector<std::string> foods, known;
    for (const auto& line : page.base.lines) known.push_back(line.name);
    if (!v.new_allergens.empty()) out += bullet("Brings a new allergen: " + listed(v.new_allergens) + ".", page.look);
    for (const auto& c : v.new_cautions)
        for (const auto& said : c.reason.foods)
            if (std::string food = said.substr(0, said.find(" (")); !is_one_of(foods, food) && !is_one_of(known, food))
                foods.push_back(std::move(food));
    return out + (foods.empty() ? "" : bullet("New in it, and told of below: " + listed(foods) + ".", page.look));
}

// "Garlic for part of the ramps" beside two leaves is said once.
bool contains_part(const std::string& listed_so_far, const std::string& part) {
    return (", " + listed_so_far + ", ").find(", " + part + ", ") != std::string::npos;
}

// Edits that have the same reason and nothing else to tell stand together.
std::string whys(const Variant& v, const VariantPage& page, bool full) {
    struct Told {
        std::string what, why, other;
    };
    std::vector<Told> told;
    for (const auto& e : v.edits) {
        Told one{in_brief(e, {page.engine, page.base}), why_of(e, page.units, full), or_else(e, page.engine, page.units)};
        const auto same = std::find_if(told.begin(), told.end(), [&](const Told& t) { return t.why == one.why; });
        if (full || same == told.end() || e.kind == EditKind::process) {
            told.push_back(std::move(one));
            continue;
        }
        if (!contains_part(same->what, one.what)) same->what += ", " + one.what;
        if (same->other.empty()) same->other = one.other;
    }
    std::string out;
    for (const auto& t : told)
        out += bullet(t.what + ": " + t.why + (t.other.empty() ? "" : (t.why.back() == '.' ? " " : ". ") + t.other), page.look);
    return v.edits.empty() ? bullet(nothing_to_change(v), page.look) : out;
}

// Each want once, by what it asks that is least sure.
std::vector<WantResult> least_sure(const std::vector<WantResult>& wants) {
    std::vector<WantResult> all;
    for (const auto& want : wants) {
        const auto same = std::find_if(all.begin(), all.end(), [&](const WantResult& one) { return one.want == want.want; });
        if (same == all.end()) all.push_back(want);
        else if (want.chance < same->chance) *same = want;
    }
    return all;
}

std::string cost_line(const Variant& v, const VariantPage& page) {
    const auto change = page.beside.change(v.formula);
    return change ? paragraph(cost_sentence(*change, page.units), page.look) : "";
}

std::string bold_lines(const std::string& text, const Look& look) {
    std::string out;
    for (const auto& line : wrapped(text, look.width)) out += look.bold(line) + "\n";
    return out;
}

std::string properties_part(const Variant& v, const VariantPage& page) {
    Table table({{"", Align::left}, {"original", Align::right}, {"variant", Align::right}, {"change", Align::right}});
    for (const auto p : moved(v.differences))
        table.row({name_with_unit(p), shown(p, page.base.properties[p]), shown(p, v.prediction.properties[p]),
                   signed_band(v.differences[p], info(p).decimals)});
    std::string out = table.empty() ? "\n  No property moves by much.\n" : "\n" + table.page(page.look);
    return out + paragraph("Colour: " + band(v.colour_rested, 1) + " CIEDE2000 units away when rested, " + band(v.colour_cooked, 1) +
                               " when cooked (" + colour_words(page.base.rested) + " to " + colour_words(v.prediction.rested) + ", " +
                               colour_words(page.base.cooked) + " to " + colour_words(v.prediction.cooked) + ").",
                           page.look);
}

}  // namespace

std::string variant_part(const Variant& v, const VariantPage& page) {
    std::string out = "\n" + bold_lines(headline(v), page.look) + weights_part(v, page, false);
    out += "\n" + paragraph(capital(v.table) + " " + becomes(page.base, v), page.look) + wants_part(v, page.look);
    out += cost_line(v, page) + whys(v, page, false);
    for (const auto& g : in_full(v.gives_back, page.units)) out += bullet(g, page.look);
    return out + new_to_mind(v, page);
}

namespace {

// As the first has it, give or take what a hand takes.
bool is_edit_of(const Edit& edit, const Variant& first) {
    constexpr double much_the_same = 0.15;  // of the weight; judgement
    return std::any_of(first.edits.begin(), first.edits.end(), [&](const Edit& one) {
        return one.kind == edit.kind && one.line == edit.line && one.with == edit.with &&
               std::abs(one.grams_after - edit.grams_after) <= much_the_same * std::max(one.grams_after, edit.grams_after);
    });
}

// What sets it apart from the first: its edits that the first has not, with all that comes in for a line which the first fills otherwise;
// nothing where the first does something besides that no such edit tells of.
std::vector<Edit> apart_from(const Variant& first, const Variant& v) {
    std::vector<std::string> otherwise;
    for (const auto& edit : first.edits)
        if (!is_edit_of(edit, v)) otherwise.push_back(edit.line);
    std::vector<Edit> own = v.edits;
    std::erase_if(own,
                  [&](const Edit& edit) { return is_edit_of(edit, first) && (edit.line.empty() || !is_one_of(otherwise, edit.line)); });
    const bool all_told = std::all_of(otherwise.begin(), otherwise.end(), [&](const std::string& line) {
        return !line.empty() && std::any_of(own.begin(), own.end(), [&](const Edit& one) { return one.line == line; });
    });
    return own.size() < v.edits.size() && all_told ? own : std::vector<Edit>{};
}

}  // namespace

std::string variant_in_three_lines(const Variant& v, const Variant& first, const VariantPage& page) {
    constexpr std::size_t lines_to_name_all = 6;  // before a change is only counted
    std::size_t most_lines = 3;
    constexpr int hang = 3;
    std::vector<std::string> edits;
    std::vector<Edit> told = v.edits;  // care is much the same in all of them: in so few lines what is weighed tells them apart
    std::stable_partition(told.begin(), told.end(), [](const Edit& e) { return e.kind != EditKind::process; });
    for (const auto& e : told) edits.push_back(in_brief_with_weight(e, {page.engine, page.base}, page.units));
    if (edits.empty()) edits.emplace_back("change nothing");
    std::string start = std::to_string(v.rank) + ". " + capital(in_words(v.nearness)) + " (" + number(v.distance, 1) + ")";
    for (const auto& want : least_sure(v.wants)) start += ", " + want.want + " " + met_words(want);
    // What gives way first: the tail of what is tasted, then all of it, then edits.
    const std::vector<std::string> tails{" " + capital(v.table), " " + capital(v.table.substr(0, v.table.find(". "))) + ".", ""};
    std::vector<std::string> lines, own;
    for (const auto& e : apart_from(first, v)) own.push_back(in_brief_with_weight(e, {page.engine, page.base}, page.units));
    const auto fits = [&](std::size_t left_out, const std::string& tail) {
        std::string what;
        for (std::size_t i = 0; i + left_out < edits.size(); ++i) what += (i ? "; " : "") + edits[i];
        if (left_out > 0)
            what += (what.empty() ? "" : "; ") + std::to_string(left_out) + (left_out == 1 ? " more change" : " more changes");
        lines = wrapped(start + ": " + what + "." + tail, page.look.width - hang);
        return lines.size() <= most_lines;
    };
    const auto made_alike = [&](const Edit& e) { return e.kind == EditKind::process && is_edit_of(e, first); };
    bool done = fits(0, tails.front());
    if (!done && !own.empty()) {
        own.push_back("the rest as in " + std::to_string(first.rank));
        edits = std::move(own);
    } else if (!done && std::any_of(told.begin(), told.end(), made_alike)) {
        edits.clear();
        for (const auto& e : told)
            if (!made_alike(e)) edits.push_back(in_brief_with_weight(e, {page.engine, page.base}, page.units));
        edits.push_back("made as in " + std::to_string(first.rank));
    }
    for (const auto& tail : tails) done = done || fits(0, tail);
    most_lines = lines_to_name_all;
    done = done || fits(0, "");
    for (std::size_t left_out = 1; !done && left_out <= edits.size(); ++left_out) done = fits(left_out, "");
    std::string out;
    for (std::size_t i = 0; i < lines.size(); ++i) out += (i ? std::string(hang, ' ') : "") + lines[i] + "\n";
    return out;
}

std::string variant_in_full(const Variant& v, const VariantPage& page) {
    std::string out = "\n" + bold_lines(headline(v), page.look) + weights_part(v, page, true);
    out += "\n" + paragraph(capital(v.table) + " " + becomes(page.base, v), page.look);
    out += paragraph("Distance in noticeable differences, the smallest change a taster picks up: " + number(v.distance, 1) + ", of which " +
                         number(v.felt, 1) + " is what the models say will be noticed; the rest is the price of trusting swaps.",
                     page.look);
    out += cost_line(v, page) + whys(v, page, true);
    for (const auto& g : in_full(v.gives_back, page.units)) out += bullet(g, page.look);
    out += new_to_mind(v, page);
    Table table({{"want", Align::left}, {"met", Align::left}, {"chance", Align::right}, {"", Align::left}});
    for (const auto& w : v.wants) table.row({w.want, w.met ? "yes" : "no", chance(w.chance), w.says});
    return out + (table.empty() ? "" : "\n" + table.page(page.look)) + properties_part(v, page);
}

}  // namespace standin::cli
