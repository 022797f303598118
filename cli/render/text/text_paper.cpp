// The label and the cold store as text.
#include "render/paper_words.hpp"
#include "render/text/text_parts.hpp"

namespace standin::cli {
namespace {

std::string nutrition_table(const LabelDraft& draft, const Look& look) {
    Table table({{"per 100 g", Align::left}, {"raw", Align::right}, {"", Align::left}, {"cooked", Align::right}, {"", Align::left}});
    for (const auto& row : draft.nutrition)
        table.row({row.name, row.raw_says, nine_in_ten(row.raw, row), row.cooked_says, nine_in_ten(row.cooked, row)});
    return "\n" + table.page(look) + paragraph("In brackets: nine in ten within.", look);
}

}  // namespace

std::string label_part(const std::string& ingredients, const Detail& detail, const Look& look) {
    if (ingredients.empty()) return "";
    std::string out = heading("Label, a draft", look) + paragraph("Ingredients: " + ingredients + ".", look) +
                      paragraph("Heaviest first, allergens in capitals.", look);
    if (detail.beside.paper) {
        const LabelDraft& draft = detail.beside.paper->draft;
        if (!draft.named.empty()) out += paragraph(shares_sentence(draft), look);
        for (const auto& line : draft.lines) out += bullet(line.text, look);
        out += detail.full ? nutrition_table(draft, look) : paragraph(nutrition_sentence(draft), look);
        out += paragraph(draft.nutrition_says, look);
    }
    return out + paragraph(who_decides, look);
}

std::string freezing_part(const Extras& beside, Units units, const Look& look) {
    if (!beside.paper || beside.paper->freezing.empty()) return "";
    std::string out = heading("If it is to be frozen", look);
    for (const auto& note : beside.paper->freezing) out += bullet(in_units(note.text, units) + " [" + note.source + "]", look);
    return out;
}

std::string glut_part(const Extras& beside, Units units, const Look& look) {
    if (beside.glut.empty()) return "";
    std::string out = heading("Plenty of it: for the freezer", look);
    for (const auto& keep : beside.glut) out += bullet(keep.name + ": " + in_units(keep.says, units) + " [" + keep.source + "]", look);
    return out;
}

}  // namespace standin::cli
