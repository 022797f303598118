#include "conversation/doubt.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

#include "words.hpp"

namespace standin::cli {
namespace {

constexpr std::size_t most_choices = 6;
constexpr double loose = 1.25;         // highest over lowest weight from here on: worth a question. Judgement
constexpr double worth_asking_g = 50;  // of a leaf: from here on it matters whether it is raw. Judgement

bool has(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

std::optional<LineReading> read_alone(const std::string& line, const Engine& engine) {
    const auto reading = engine.read_closely("title: a line\n1 kg pork shoulder\n" + line, "");
    if (!reading || reading->lines.size() != 2 || !reading->errors.empty()) return std::nullopt;
    return reading->lines.back();
}

bool reads(const std::string& line, const Engine& engine) {
    const auto read = read_alone(line, engine);
    return read && read->line;
}

// The line as the program writes it: with a name that leaves nothing open.
std::string rewritten(Line line, const Engine& engine) {
    line.notes.clear();
    Formula formula;
    formula.title = "a line";
    formula.lines.push_back(std::move(line));
    std::string text = engine.formula_text(formula);
    text.erase(0, text.find('\n') + 1);
    return text.substr(0, text.find('\n'));
}

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text;
}

bool is_amount_word(const std::string& word) {
    constexpr std::array<std::string_view, 21> units{"g",     "kg",    "mg",      "oz",  "lb",    "lbs",    "ml",
                                                     "l",     "cl",    "dl",      "tsp", "tbsp",  "cup",    "cups",
                                                     "bunch", "pinch", "handful", "of",  "grams", "pounds", "ounces"};
    const bool digit = std::any_of(word.begin(), word.end(), [](unsigned char c) { return std::isdigit(c) || c >= 0xC2; });
    return std::find(units.begin(), units.end(), lower(word)) != units.end() ||
           (digit && !std::isalpha(static_cast<unsigned char>(word[0])));
}

struct Part {
    std::size_t from = 0, size = 0;
};

// What follows the amount, up to a comma or a bracket: in most lines the name.
Part food_part(const std::string& line) {
    std::size_t from = 0;
    while (from < line.size()) {
        const std::size_t end = std::min(line.find(' ', from), line.size());
        std::string word = line.substr(from, end - from);
        while (!word.empty() && word.back() == '.') word.pop_back();
        if (!word.empty() && !is_amount_word(word)) break;
        from = std::min(end + 1, line.size());
    }
    std::size_t end = std::min(line.find_first_of(",(;", from), line.size());
    while (end > from && line[end - 1] == ' ') --end;
    return {from, end - from};
}

std::string replaced(const std::string& line, const Part& part, const std::string& by) {
    return std::string(line).replace(part.from, part.size, by);
}

// What stands between quotes in a message: the word that is not known.
std::string quoted(const std::string& message) {
    const auto open = message.find('"'), close = message.find('"', open + 1);
    return close == std::string::npos ? std::string() : message.substr(open + 1, close - open - 1);
}

// The longest run of words of `hint` that stands in the line.
Part shared_part(const std::string& line, const std::string& hint) {
    const std::string low = lower(line), wanted = lower(hint);
    Part best;
    for (std::size_t from = 0; from < wanted.size(); from = std::min(wanted.find(' ', from), wanted.size() - 1) + 1)
        for (std::size_t end = wanted.size(); end > from;
             end = wanted.rfind(' ', end - 1) == std::string::npos ? from : wanted.rfind(' ', end - 1)) {
            if (end <= from) break;
            const auto at = low.find(wanted.substr(from, end - from));
            if (at != std::string::npos && end - from > best.size) best = {at, end - from};
        }
    return best;
}

// Ways in which a hint may be meant for a line, likeliest first.
std::vector<std::string> ways(const std::string& line, const std::string& hint, const std::string& unknown) {
    std::vector<std::string> all;
    const bool amount = !hint.empty() && (std::isdigit(static_cast<unsigned char>(hint.front())) || hint.front() == '.');
    if (const auto at = unknown.empty() ? std::string::npos : line.find(unknown); at != std::string::npos && !amount)
        all.push_back(replaced(line, {at, unknown.size()}, hint));
    if (const Part part = shared_part(line, hint); part.size > 2 && !amount) all.push_back(replaced(line, part, hint));
    if (const Part part = food_part(line); part.size > 0) {
        if (amount) all.push_back(hint + " " + line.substr(part.from));
        else all.push_back(replaced(line, part, hint));
    }
    if (amount) all.push_back(line + ", " + hint);
    return all;
}

Doubt asked_back(const LineReading& line, const Engine& engine) {
    Doubt doubt{line.asked->message, {}};
    const std::string unknown = has(line.asked->message, "unknown") ? quoted(line.asked->message) : std::string();
    if (has(line.asked->message, "unknown ingredient"))
        doubt.question += ". If it is a food of its own, type what it is like: like spinach";
    for (const auto& hint : line.asked->hints)
        for (const auto& way : ways(line.written, hint, unknown)) {
            const bool known = std::any_of(doubt.choices.begin(), doubt.choices.end(), [&](const Choice& one) { return one.line == way; });
            if (known || doubt.choices.size() >= most_choices || !reads(way, engine)) continue;
            doubt.choices.push_back({way, way});
            break;
        }
    return doubt;
}

Doubt how_heavy(const LineReading& line, const Engine& engine) {
    Doubt doubt{"how heavy is it? Usually " + grams(line.line->grams.low) + " to " + grams(line.line->grams.high) + "; better weigh it",
                {}};
    const Band& g = line.line->grams;
    for (const double weight : {g.mid, g.low, g.high}) {
        Line exact = *line.line;
        exact.grams = {weight, weight, weight};
        exact.written.clear();
        if (g.mid < 10) exact.grams = {std::round(weight * 10) / 10, std::round(weight * 10) / 10, std::round(weight * 10) / 10};
        else exact.grams = {std::round(weight), std::round(weight), std::round(weight)};
        const std::string text = rewritten(exact, engine);
        doubt.choices.push_back({text, text});
    }
    return doubt;
}

bool is_leaf(const Line& line, const Engine& engine) {
    const auto answer = engine.lookup(line.ingredient);
    return !answer.matches.empty() && answer.matches.front().id == line.ingredient && answer.matches.front().family == "leaf-greens" &&
           !has(line.ingredient, "frozen") && !has(line.ingredient, "canned") && !has(line.ingredient, "powder");
}

Doubt raw_or_blanched(const std::string& written, const Engine& engine) {
    Doubt doubt{"does it go in raw?", {{"yes, raw: " + written, written + ", raw"}}};
    for (const auto& [shown, words] :
         {std::pair("weighed raw, then blanched and squeezed dry", ", blanched, squeezed [weighed first]"),
          std::pair("already blanched and squeezed dry when weighed", ", blanched, squeezed [weighed prepared]"),
          std::pair("weighed raw, then wilted in the pan", ", wilted [weighed first]")})
        if (reads(written + words, engine)) doubt.choices.push_back({shown, written + words});
    return doubt;
}

}  // namespace

std::optional<Doubt> doubt_of(const LineReading& line, const Engine& engine) {
    if (line.asked) return asked_back(line, engine);
    if (!line.line) return std::nullopt;
    const Band& g = line.line->grams;
    if (line.confidence == Confidence::unsure || (line.confidence == Confidence::likely && g.high > loose * g.low)) {
        if (g.low > 0 && g.high > loose * g.low) return how_heavy(line, engine);
        std::string why;
        for (const auto& one : in_full(line.why)) why += (why.empty() ? "" : "; ") + one;
        const std::string text = rewritten(*line.line, engine);
        const auto again = read_alone(text, engine);
        if (again && again->line && again->confidence < line.confidence) return Doubt{why, {{"yes: " + text, text}}};
        return Doubt{why, {{"yes, as it stands", line.written}}};
    }
    const bool said = has(lower(line.written), "raw") || has(lower(line.written), "fresh");
    if (g.mid >= worth_asking_g && line.line->prepared.empty() && !said && is_leaf(*line.line, engine))
        return raw_or_blanched(line.written, engine);
    return std::nullopt;
}

std::optional<std::string> line_from(const std::string& typed, const std::string& line, const Engine& engine) {
    if (reads(typed, engine)) return typed;
    if (typed.rfind("like ", 0) == 0) {
        const Part part = food_part(line);
        const std::string liked = std::string(line).insert(part.from + part.size, ", " + typed);
        return reads(liked, engine) ? std::optional(liked) : std::nullopt;
    }
    const bool number = std::all_of(typed.begin(), typed.end(), [](unsigned char c) { return std::isdigit(c) || c == '.' || c == ','; });
    for (const auto& way : ways(line, number ? typed + " g" : typed, {}))
        if (reads(way, engine)) return way;
    return std::nullopt;
}

}  // namespace standin::cli
