#include <algorithm>
#include <array>

#include "render/allergen_words.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/told_beside.hpp"
#include "standin/number_text.hpp"

namespace standin::cli {
namespace {

constexpr std::array<const char*, 3> confidence_words{"sure", "likely", "unsure"};

std::size_t count_of(const FormulaReading& r, Confidence confidence) {
    std::size_t n = 0;
    for (const auto& line : r.lines) n += line.line && line.confidence == confidence;
    return n;
}

std::string answer_first(const FormulaReading& r) {
    std::size_t asked = 0;
    for (const auto& line : r.lines) asked += line.asked.has_value();
    std::vector<std::string> parts;
    const auto add = [&](std::size_t n, const char* what) {
        if (n > 0) parts.push_back(std::to_string(n) + " " + what);
    };
    add(count_of(r, Confidence::sure), "sure");
    add(count_of(r, Confidence::likely), "likely");
    add(count_of(r, Confidence::unsure), "unsure");
    add(asked, "asked back");
    add(static_cast<std::size_t>(std::count_if(r.lines.begin(), r.lines.end(), [](const auto& line) { return line.beside.has_value(); })),
        "beside the mass");
    const std::string lines = std::to_string(r.lines.size()) + (r.lines.size() == 1 ? " line" : " lines");
    return lines + (parts.empty() ? "." : ": " + listed(parts) + ".");
}

std::string asked_part(const Error& error, bool of_several, const Look& look) {
    std::string hints;
    for (const auto& hint : of_several ? std::vector<std::string>{} : error.hints) hints += (hints.empty() ? " Nearest: " : ", ") + hint;
    return paragraph("asked back" + (error.where.empty() ? "" : " (" + error.where + ")") + ": " + error.message + "." + hints, look, 6);
}

std::string line_weight(const Line& line) {
    const Band& g = line.grams;
    return grams(g.mid) + (g.low < g.high ? " (" + grams(g.low) + " to " + grams(g.high) + ")" : "");
}

// What the line tells of this lot.
std::string known(const Line& line) {
    std::string text;
    const auto add = [&](const std::optional<Band>& fact, const char* before, const char* after) {
        if (fact) text += std::string(", ") + before + trimmed_text(fact->mid, 2) + after;
    };
    add(line.fat_pct, "", " % fat");
    add(line.ph, "pH ", "");
    add(line.acid_pct, "", " % acid");
    if (line.heat_mg_kg) text += ", " + number(line.heat_mg_kg->mid, 0) + " mg/kg of capsaicinoids";
    return text;
}

std::string understood_part(const LineReading& r, const Look& look) {
    std::string text = line_weight(*r.line) + "  " + with_preparations(r.name, r.prepared);
    if (!r.prepared.empty()) text += r.line->weighed_prepared ? " (weighed prepared)" : " (weighed first)";
    text += known(*r.line) + (r.line->keep ? ", kept" : "");
    text += "; " + std::string(confidence_words[static_cast<std::size_t>(r.confidence)]);
    for (std::size_t i = 0; i < r.why.size(); ++i) text += (i == 0 ? ": " : "; ") + in_full(r.why[i]);
    if (r.confidence == Confidence::unsure) text += ". Is that what is meant?";
    return paragraph(text, look, 6);
}

}  // namespace

std::string reading_text(const FormulaReading& r, const Look& look) {
    std::string page =
        look.bold(wrap(r.title.empty() ? "(no title)" : r.title, look.width)) + "\n" + paragraph(answer_first(r), look, 0) + "\n";
    for (std::size_t i = 0; i < r.lines.size(); ++i) {
        const auto& line = r.lines[i];
        page += wrap(line.written, look.width - 4, 2, 2) + "\n";
        // What is asked of several lines in the same words is asked once, below the last of them.
        const auto asks_the_same = [&](std::size_t other) {
            return other < r.lines.size() && r.lines[other].asked && r.lines[other].asked->message == line.asked->message;
        };
        if (line.asked && asks_the_same(i + 1)) {
            page += paragraph("asked back, as below", look, 6);
            continue;
        }
        if (line.asked) page += asked_part(*line.asked, i > 0 && asks_the_same(i - 1), look);
        else page += line.beside ? paragraph("beside the mass: " + in_full(*line.beside), look, 6) : understood_part(line, look);
    }
    const bool open = std::any_of(r.lines.begin(), r.lines.end(), [](const LineReading& line) {
        return line.asked || (line.line && line.confidence == Confidence::unsure);
    });
    if (open) page += paragraph("`standin convert FILE --ask` asks about each of these in turn.", look, 0);
    if (!r.errors.empty()) page += heading("Not understood besides", look);
    for (const auto& error : r.errors) page += bullet((error.where.empty() ? "" : error.where + ": ") + error.message, look);
    if (!r.told.empty()) page += heading("Beside the lines", look);
    for (const auto& told : in_full(r.told)) page += bullet(told, look);
    if (!r.note.empty()) page += heading("Note", look) + paragraph(r.note, look);
    return page;
}

std::string reading_dangers_text(const Prediction& prediction, const Look& look) {
    std::string page = heading("Allergens", look);
    const ToldBeside told = told_beside(prediction);
    for (const auto& line : told.allergens) page += bullet(line, look);
    if (told.allergens.empty()) page += bullet("none of the listed ones, by what the lines say", look);
    return page + bulleted("Mind", told.cautions, look);
}

std::string stock_text(const Inventory& stock, const Look& look) {
    std::string page = heading("What is on hand, as it was understood", look);
    for (const auto& line : stock.read) page += bullet("\"" + line.written + "\": " + in_full(line.as), look);
    for (const auto& note : in_full(stock.notes)) page += paragraph(note, look);
    return page;
}

}  // namespace standin::cli
