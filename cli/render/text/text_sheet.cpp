#include <algorithm>

#include "render/allergen_words.hpp"
#include "render/sentences.hpp"
#include "render/sheet_words.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "render/weights.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

constexpr const char* box = "[ ]";

std::string in_short(const Sheet& s, Units units, const Look& look) {
    std::string out = look.bold(wrap(s.prediction.title, look.width)) + "\n";
    out += paragraph("Makes " + pieces(s.makes, units) + ". The batch is " + about(s.makes.batch_g, units) + ", scaled " + s.scaled + ".",
                     look, 0);
    out += paragraph(look.bold("Cook to " + s.core_says + " in the middle. Keep cold."), look, 0);
    out += own_records(s.prediction.overlay, look);
    return out + paragraph("Allergens: " + allergens_in_short(s.prediction.allergens) + ".", look, 0);
}

std::string when(const SheetWeight& w, const PredictedLine& line) {
    std::string words;
    const auto say = [&](const char* more) { words += (words.empty() ? "" : "; ") + std::string(more); };
    if (line.keep) say("keep");
    if (w.fine) say("0.1 g scale");
    return words.empty() ? "" : "(" + words + ")";
}

// What can hurt stands before the weights, in a line each; the whole of it stands behind the work.
std::string dangers_part(const Sheet& s, const Look& look) {
    std::string out;
    for (const auto& c : with_briefs(s.prediction.cautions))
        if (!is_of_every_batch(c.id)) out += bullet(c.brief, look);
    return out.empty() ? "" : heading("Mind", look) + out;
}

// What the first page told in its only words is not told again.
std::vector<CautionText> said_longer(std::vector<CautionText> cautions) {
    std::erase_if(cautions, [](const CautionText& c) { return c.brief.empty() && !is_of_every_batch(c.id); });
    return cautions;
}

std::string weights_part(const Sheet& s, Units units, const Look& look) {
    Table table({{"", Align::left}, {"weigh", Align::right}, {"", Align::left}, {"share", Align::right}});
    for (const auto& w : s.weights) {
        const auto& line = s.prediction.lines[w.line];
        const auto note = when(w, line);
        table.row({box, weight(w.weigh_g, units, w.scale_g), as_weighed(line) + own_measure(line, units) + (note.empty() ? "" : " " + note),
                   number(100 * line.share, 1) + " %"});
    }
    return heading("Weigh", look) + table.page(look);
}

std::string step_part(const SheetStep& step, std::size_t n, const Sheet& s, Units units, const Look& look) {
    constexpr int indent = 7;
    const std::string mark = std::string(box) + " " + (n < 10 ? " " : "") + std::to_string(n) + " ";
    const auto numbers = measured(step, units), known = how_known(step);
    std::string head = capital(step.what) + (numbers.empty() ? "" : ": " + numbers) + (known.empty() ? "" : " (" + known + ")");
    std::string out;
    for (const auto& line : wrapped(head, look.width - indent))
        out += (out.empty() ? mark : std::string(indent, ' ')) + look.bold(line) + "\n";
    const auto through = amounts(step, s, units);
    return out + paragraph(through + (through.empty() ? "" : " ") + step.how, look, indent);
}

// For whoever wants to know; the same reason is told once.
std::string why_part(const Sheet& s, const Look& look) {
    std::string out = heading("Why", look);
    for (std::size_t i = 0; i < s.steps.size(); ++i)
        out += bullet(std::to_string(i + 1) + " " + s.steps[i].what + ": " + s.steps[i].why, look);
    return out;
}

std::string work_part(const Sheet& s, Units units, const Look& look) {
    std::string out = heading("Work, in this order", look);
    for (std::size_t i = 0; i < s.steps.size(); ++i) out += step_part(s.steps[i], i + 1, s, units, look);
    if (const auto usual = what_usual_means(s); !usual.empty()) out += "\n" + paragraph(usual, look);
    return out;
}

std::string shopping_part(const Sheet& s, Units units, const Look& look) {
    Table table({{"", Align::left}, {"buy", Align::right}, {"", Align::left}, {"for", Align::left}});
    std::string there;
    for (const auto& p : s.buy) {
        if (p.have_all) there += (there.empty() ? "" : "; ") + what_for(p, s, units) + " " + p.name;
        else table.row({box, to_buy(p, units), p.name, what_for(p, s, units) + on_hand(p, s, units)});
    }
    if (s.makes.casing_m) table.row({box, metres(*s.makes.casing_m, units), casing(s.makes, units), casing_needed(s.makes, units)});
    std::string out = there.empty() ? "" : heading("Have, by your list", look) + paragraph(there + ".", look);
    if (table.empty()) return out;
    return out + heading(there.empty() ? "Buy" : "Buy, or see that it is there", look) + table.page(look) +
           paragraph("Rounded up to what shops sell; bunches and pieces differ, so weigh.", look);
}

}  // namespace

std::string sheet_text(const Sheet& sheet, const Detail& detail, const Look& look) {
    const Units units = detail.units;
    const Sheet s = told_in(sheet, units);
    std::string page = first_of_all(told_first(s.prediction.read_as, units), look) + in_short(s, units, look) + dangers_part(s, look) +
                       weights_part(s, units, look) + work_part(s, units, look);
    page += "\n" + paragraph("The batch of " + about(s.makes.batch_g, units) + " weighs " + about(s.makes.cooked_g.mid, units) +
                                 " cooked, from " + about(s.makes.cooked_g.low, units) + " to " + about(s.makes.cooked_g.high, units) + ".",
                             look);
    page +=
        bulleted("What the sheet settled", in_full(s.notes, units), look) + read_as_part(read_as_words(s.prediction.read_as, units), look);
    page += shopping_part(s, units, look) + cost_part(s.prediction, {units, false, detail.beside}, look) +
            allergens_part(s.prediction.allergens, look) + cautions_part(said_longer(s.prediction.cautions), look, "Mind, in full");
    page += label_part(s.prediction.label, {units, false, detail.beside}, look) + freezing_part(detail.beside, units, look);
    return page + why_part(s, look);
}

}  // namespace standin::cli
