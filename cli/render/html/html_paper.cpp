// The label and the cold store as parts of HTML pages.
#include "render/html/html_parts.hpp"
#include "render/paper_words.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

Markup soft(const Markup& text) { return el("p", {{"class", "soft"}}, text); }

Markup nutrition_table(const LabelDraft& draft) {
    std::vector<std::vector<Markup>> rows;
    for (const auto& row : draft.nutrition)
        rows.push_back({row.name, stacked(row.raw_says + " " + nine_in_ten(row.raw, row)),
                        stacked(row.cooked_says + " " + nine_in_ten(row.cooked, row))});
    return html_table("Per 100 g; in brackets nine in ten within", {{"Nutrition", false}, {"raw", true}, {"cooked", true}}, rows);
}

}  // namespace

Markup label_part(const std::string& label, const Extras& beside, bool table) {
    if (label.empty()) return {};
    const Markup list = el("p", {{"class", "label"}}, label) +
                        soft("Heaviest first, allergens in capitals. A draft: what a label must say is for your own authority to decide.");
    Markup content;
    if (beside.paper) {
        const LabelDraft& draft = beside.paper->draft;
        if (!draft.named.empty()) content += el("p", shares_sentence(draft));
        std::string lines;
        for (const auto& line : draft.lines) lines += (lines.empty() ? "" : " ") + line.text;
        content += el("p", lines);
        content += table ? nutrition_table(draft) : el("p", nutrition_sentence(draft));
        content += soft(draft.nutrition_says);
    }
    if (content.empty()) return section("Label, a draft", list);
    content += soft(who_decides);
    // A sheet of paper has room for the list alone.
    return section("Label, a draft", list + (table ? content : el("div", {{"class", "screen"}}, content)));
}

Markup freezing_part(const Extras& beside, Units units) {
    if (!beside.paper || beside.paper->freezing.empty()) return {};
    std::string text;
    for (const auto& note : beside.paper->freezing) text += (text.empty() ? "" : " ") + in_units(note.text, units);
    return section("If it is to be frozen", el("p", text));
}

Markup glut_part(const Extras& beside, Units units) {
    if (beside.glut.empty()) return {};
    std::vector<Markup> items;
    for (const auto& keep : beside.glut) items.push_back(el("strong", capital(keep.name)) + Markup(": " + in_units(keep.says, units)));
    return section("Plenty of it: for the freezer", bullets(items));
}

}  // namespace standin::cli
