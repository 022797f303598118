#include "adapt/goals/request.hpp"

#include <algorithm>
#include <charconv>

#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/index/line_name.hpp"

namespace standin {
namespace {

std::string lines_there_are(const Formula& formula, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& line : formula.lines) names.push_back(line_name(line, knowledge));
    return listed(names);
}

}  // namespace

Result<std::size_t> line_named(const Formula& formula, std::string_view text, const Knowledge& knowledge) {
    std::size_t number = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (fault == std::errc{} && end == text.data() + text.size()) {
        if (number >= 1 && number <= formula.lines.size()) return number - 1;
        return failure(Trouble::usage,
                       "no line " + std::string(text) + ": the formula has " + std::to_string(formula.lines.size()) + " lines");
    }
    const auto called = std::find_if(formula.lines.begin(), formula.lines.end(),
                                     [&](const Line& line) { return !line.called.empty() && fold(line.called) == fold(text); });
    if (called != formula.lines.end()) return static_cast<std::size_t>(called - formula.lines.begin());
    const Ingredient* ingredient = knowledge.ingredient_named(text);
    const auto found = std::find_if(formula.lines.begin(), formula.lines.end(),
                                    [&](const Line& line) { return ingredient && line.ingredient == ingredient->id; });
    if (found != formula.lines.end()) return static_cast<std::size_t>(found - formula.lines.begin());
    // A shorter name will do where only one line holds it as a word: "parsley" for a line of curly parsley.
    std::vector<std::size_t> holding;
    const std::string wanted = fold(text);
    for (std::size_t l = 0; l < formula.lines.size(); ++l)
        for (const auto& name : knowledge.ingredient(formula.lines[l].ingredient)->names)
            if (!wanted.empty() && (" " + fold(name) + " ").find(" " + wanted + " ") != std::string::npos) {
                holding.push_back(l);
                break;
            }
    if (holding.size() == 1) return holding.front();
    return failure(Trouble::usage, "no line \"" + std::string(text) + "\": the lines are " + lines_there_are(formula, knowledge), {},
                   ingredient ? std::vector<std::string>{} : knowledge.nearest_ingredients(text));
}

Result<Formula> with_keep_marks(Formula formula, const AdaptRequest& request, const Knowledge& knowledge) {
    for (const auto& name : request.keep) {
        const auto line = line_named(formula, name, knowledge);
        if (!line) return Failure(line.error());
        // Every line of that ingredient is meant.
        for (auto& other : formula.lines)
            if (other.ingredient == formula.lines[*line].ingredient) other.keep = true;
    }
    return formula;
}

Formula with_equal_lines_merged(Formula formula) {
    std::vector<Line> merged;
    for (auto& line : formula.lines) {
        const auto same = std::find_if(merged.begin(), merged.end(), [&](const Line& other) {
            return other.ingredient == line.ingredient && other.prepared == line.prepared &&
                   other.weighed_prepared == line.weighed_prepared && other.keep == line.keep && other.called == line.called;
        });
        if (same == merged.end()) {
            merged.push_back(std::move(line));
            continue;
        }
        same->grams = {same->grams.low + line.grams.low, same->grams.mid + line.grams.mid, same->grams.high + line.grams.high};
        if (same->count && line.count) *same->count += *line.count;
        else same->count.reset();
        same->written.clear();
        for (auto& note : line.notes) same->notes.push_back(std::move(note));
    }
    formula.lines = std::move(merged);
    return formula;
}

}  // namespace standin
