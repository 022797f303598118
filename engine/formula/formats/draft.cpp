#include "formula/formats/draft.hpp"

#include <algorithm>

#include "formula/line/line_beside.hpp"
#include "formula/line/line_text.hpp"
#include "formula/write/writing.hpp"

namespace standin {
namespace {

constexpr std::ptrdiff_t most_failed = 50;

Confidence least(const std::vector<LineDoubt>& doubts) {
    Confidence confidence = Confidence::sure;
    for (const auto& doubt : doubts) confidence = std::max(confidence, doubt.confidence);
    return confidence;
}

}  // namespace

bool Draft::hopeless() const {
    return troubles.full() || std::count_if(lines.begin(), lines.end(), [](const DraftLine& line) { return !line.read; }) >= most_failed;
}

void take_ingredient_line(Draft& draft, std::string_view text, const std::string& where, const Origin& origin, const Knowledge& knowledge) {
    if (auto beside = beside_the_mass(text); !beside.empty())
        return draft.lines.push_back({std::string(text), where, ReadLine{}, std::move(beside)});
    if (is_heading(text, knowledge)) return;
    draft.lines.push_back({std::string(text), where, read_line(text, origin, knowledge), {}});
}

Result<Formula> finished(Draft draft, const Knowledge& knowledge) {
    std::vector<ReadLine> lines;
    for (auto& line : draft.lines) {
        if (!line.beside.empty()) draft.formula.beside.push_back({line.written, line.beside});
        else if (line.read) lines.push_back(std::move(*line.read));
        else draft.troubles.add(std::move(line.read.error()));
    }
    if (draft.troubles.any()) return draft.troubles.failure();
    if (lines.empty()) return failure(Trouble::bad_data, "no ingredient lines");
    draft.formula.lines = settle(std::move(lines), knowledge, draft.troubles);
    if (draft.troubles.any()) return draft.troubles.failure();
    return std::move(draft.formula);
}

FormulaReading shown(Draft draft, const Knowledge& knowledge) {
    FormulaReading reading;
    reading.title = draft.formula.title;
    reading.note = draft.formula.note;
    const bool all = std::all_of(draft.lines.begin(), draft.lines.end(), [](const DraftLine& line) { return line.read.has_value(); });
    std::vector<ReadLine> understood;
    for (auto& line : draft.lines) {
        LineReading& one = reading.lines.emplace_back(LineReading{line.written, line.where, {}, {}, {}, Confidence::unsure, {}, {}, {}});
        if (!line.beside.empty()) {
            one.beside = line.beside;
            draft.formula.beside.push_back({line.written, line.beside});
            continue;
        }
        if (!line.read) {
            one.asked = std::move(line.read.error());
            continue;
        }
        one.confidence = least(line.read->doubts);
        for (const auto& doubt : line.read->doubts) one.why.push_back(doubt.text);
        if (line.read->share && !all) {
            one.why.emplace_back("a share, weighed against the lines that were understood");
            one.confidence = Confidence::unsure;
        }
        understood.push_back(std::move(*line.read));
    }
    const auto settled = understood.empty() ? std::vector<Line>() : settle(std::move(understood), knowledge, draft.troubles);
    auto next = settled.begin();
    for (auto& line : reading.lines)
        if (!line.asked && line.beside.empty()) {
            line.line = *next++;
            line.name = knowledge.ingredient(line.line->ingredient)->names.front();
            for (const auto& step : line.line->prepared) line.prepared.push_back(written(step, knowledge));
        }
    reading.errors = draft.troubles.all();
    if (!all || draft.troubles.any() || settled.empty()) return reading;
    reading.formula = std::move(draft.formula);
    reading.formula->lines = settled;
    return reading;
}

}  // namespace standin
