// Formulas back to text. Weights are written in grams, with their band and count in brackets where they have one.
#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>

#include "core/names.hpp"
#include "formula/amounts/line_facts.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/amounts/written_preparation.hpp"
#include "formula/formats/formula_plain.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/lexer/text_lines.hpp"
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"

namespace standin {
namespace {

using Json = nlohmann::ordered_json;

// A nought behind three decimals: "1.500 g" could be a kilogram and a half.
std::string grams_text(double grams) {
    std::string text = plain_number(grams);
    const auto dot = text.find('.');
    return dot != std::string::npos && text.size() - dot == 4 ? text + "0" : text;
}

// "24 g", "24 g (20 to 30 g)", "4 pieces (24 g, 20 to 30 g)". Reading takes the ends from the brackets and the middle from before them.
std::string amount_text(const Line& line) {
    const std::string mid = grams_text(line.grams.mid) + " g";
    const bool banded = line.grams.low < line.grams.high;
    const std::string band = grams_text(line.grams.low) + " to " + grams_text(line.grams.high) + " g";
    if (line.count) return plain_number(*line.count) + " pieces (" + mid + (banded ? ", " + band : "") + ")";
    return mid + (banded ? " (" + band + ")" : "");
}

std::string like(const Line& line) { return line.called.empty() ? "" : line.called + ", like "; }

std::string plain_name(const Line& line, const Knowledge& knowledge) {
    const Ingredient* ingredient = knowledge.ingredient(line.ingredient);
    return ingredient ? ingredient->names.front() : line.ingredient;
}

std::string name_of(const Line& line, const Knowledge& knowledge) { return like(line) + plain_name(line, knowledge); }

std::string spaced(std::string id) {
    for (auto& c : id)
        if (c == '-') c = ' ';
    return id;
}

bool near(double a, double b) { return std::abs(a - b) < 1e-6; }

bool same_fat(const Line& a, const Line& b) {
    if (a.fat_pct.has_value() != b.fat_pct.has_value()) return false;
    return !a.fat_pct ||
           (near(a.fat_pct->low, b.fat_pct->low) && near(a.fat_pct->mid, b.fat_pct->mid) && near(a.fat_pct->high, b.fat_pct->high));
}

// What shares are of.
struct Wholes {
    Band meat, batch;
};

Wholes wholes_of(const Formula& formula, const Knowledge& knowledge) {
    Wholes wholes{{0, 0, 0}, {0, 0, 0}};
    const auto add = [](Band& to, const Band& grams) { to = {to.low + grams.low, to.mid + grams.mid, to.high + grams.high}; };
    for (const auto& line : formula.lines) {
        const Ingredient* ingredient = knowledge.ingredient(line.ingredient);
        if (ingredient && ingredient->meat) add(wholes.meat, line.grams);
        add(wholes.batch, line.grams);
    }
    return wholes;
}

bool reads_back_among(const Around& around, const std::string& text, const Line& line, const Wholes& wholes, const Knowledge& knowledge) {
    auto read = read_line(text, Origin("", {1, 1}), knowledge, {}, false, around);
    if (!read) return false;
    Line& back = read->line;
    if (read->share) {
        const Band& whole = read->share->of == Whole::meat ? wholes.meat : wholes.batch;
        const Band& part = read->share->fraction;
        back.grams = {part.low * whole.low, part.mid * whole.mid, part.high * whole.high};
        if (read->share->count) back.count = *read->share->count * whole.mid;
    }
    return back.ingredient == line.ingredient && back.prepared == line.prepared && back.weighed_prepared == line.weighed_prepared &&
           back.keep == line.keep && back.called == line.called && back.declared == line.declared && same_fat(back, line) &&
           same_facts(back, line) && back.count.has_value() == line.count.has_value() && near(back.grams.low, line.grams.low) &&
           near(back.grams.mid, line.grams.mid) && near(back.grams.high, line.grams.high);
}

// By itself, and beside the other lines, whichever of them stand next to it.
bool reads_back(const std::string& text, const Line& line, const Wholes& wholes, const Knowledge& knowledge) {
    if (!reads_back_among({}, text, line, wholes, knowledge)) return false;
    const bool meat = wholes.meat.mid > 0;
    for (const bool spices : {false, true})
        if (!reads_back_among({wholes.batch.mid, meat, spices}, text, line, wholes, knowledge)) return false;
    return true;
}

// What the line says of the food that must not be lost, once each: the allergens in it, that it is of raw milk or sold as free of gluten,
// that nuts are whole.
std::vector<std::string> told_words(const Line& line) {
    std::vector<std::string> all;
    const auto add = [&](const std::string& words) {
        if (std::find(all.begin(), all.end(), words) == all.end()) all.push_back(words);
    };
    for (const auto& told : line.declared) add(told.words);
    for (const auto& note : line.notes)
        if (note.kind == ReasonKind::hazard_told && (note.role == "raw-dairy" || note.role == "choking" || note.role == "said-free"))
            add(note.about);
    return all;
}

// What stands behind the food: what is told of it, marks.
std::string told_beside(const Line& line) {
    std::string out;
    for (const auto& words : told_words(line)) out += " (" + words + ")";
    return out + (line.keep ? " [keep]" : "");
}

// What is known of this lot: ", 25 % fat, pH 5.6".
std::string known_of(const Line& line, const Knowledge& knowledge) {
    const std::string fat = line.fat_pct ? ", " + plain_number(line.fat_pct->mid) + " % fat" : "";
    const Ingredient* ingredient = knowledge.ingredient(line.ingredient);
    return ingredient ? fat + facts_text(line, *ingredient, knowledge) : fat;
}

struct WrittenLine {
    std::string text, amount, name;
};

// One way to write a line with its amount in these words, or nothing where it would be read otherwise.
std::optional<WrittenLine> line_with(const std::string& amount, const std::string& name, const Line& line, const Wholes& wholes,
                                     const Knowledge& knowledge) {
    std::string done;
    for (const auto& prepared : line.prepared) done += (done.empty() ? "" : ", ") + written(prepared, knowledge);
    const std::string known = known_of(line, knowledge);
    const std::string after = known + (done.empty() ? "" : ", " + done);
    const std::string weighed = line.prepared.empty() ? "" : line.weighed_prepared ? " [weighed prepared]" : " [weighed first]";
    const std::string led = name.starts_with(done + " ") ? name : done + " " + name;  // "ground coriander" says it already
    for (const auto& form :
         {line.weighed_prepared ? amount + " " + led + known : amount + " " + name + after, amount + " " + name + after + weighed}) {
        std::string text = form + told_beside(line);
        if (reads_back(text, line, wholes, knowledge)) return WrittenLine{std::move(text), amount, name + known};
    }
    return std::nullopt;
}

// As the maker wrote it, with the thing counted where the name held it ("4 garlic cloves"), then in grams.
std::vector<std::string> ways_of(const Line& line, const Knowledge& knowledge, Amounts amounts) {
    std::vector<std::string> ways;
    const Ingredient* ingredient = knowledge.ingredient(line.ingredient);
    if (amounts == Amounts::as_written && !line.written.empty()) {
        ways.push_back(line.written);
        for (std::size_t i = 0; ingredient && line.count && i < ingredient->measures.size(); ++i)
            ways.push_back(line.written + " " + ingredient->measures[i].measure);
    }
    ways.push_back(amount_text(line));
    return ways;
}

// The way people write it; where those words would be read another way, with a mark or by the id.
WrittenLine written_line(const Line& line, const Wholes& wholes, const Knowledge& knowledge, Amounts amounts) {
    std::vector<std::string> usual{name_of(line, knowledge), like(line) + "fresh " + plain_name(line, knowledge),
                                   like(line) + spaced(line.ingredient)},
        others;
    if (const Ingredient* ingredient = knowledge.ingredient(line.ingredient))
        for (const auto& other : ingredient->names) others.push_back(like(line) + other);
    for (const auto& names : {usual, others})
        for (const auto& amount : ways_of(line, knowledge, amounts))
            for (const auto& name : names)
                if (auto text = line_with(amount, name, line, wholes, knowledge)) return *text;
    std::string done;
    for (const auto& prepared : line.prepared) done += ", " + written(prepared, knowledge);
    const std::string weighed = line.prepared.empty() ? "" : line.weighed_prepared ? " [weighed prepared]" : " [weighed first]";
    const std::string name = like(line) + spaced(line.ingredient) + known_of(line, knowledge);
    return {amount_text(line) + " " + name + done + weighed + told_beside(line), amount_text(line), name};
}

std::string line_text(const Line& line, const Wholes& wholes, const Knowledge& knowledge, Amounts amounts = Amounts::as_written) {
    return written_line(line, wholes, knowledge, amounts).text;
}

}  // namespace

std::string formula_json(const Formula& formula, const Knowledge& knowledge) {
    Json root;
    root["title"] = formula.title;
    if (!formula.note.empty()) root["note"] = formula.note;
    if (!formula.parent.empty()) root["parent"] = formula.parent;
    if (!formula.date.empty()) root["date"] = formula.date;
    root["lines"] = Json::array();
    const Wholes wholes = wholes_of(formula, knowledge);
    for (const auto& line : formula.lines) {
        Json item;
        const WrittenLine words = written_line(line, wholes, knowledge, Amounts::as_written);
        item["ingredient"] = words.name;
        item["amount"] = words.amount;
        for (const auto& prepared : line.prepared) item["prepared"].push_back(written(prepared, knowledge));
        if (line.weighed_prepared) item["weighed"] = "after";
        if (line.keep) item["keep"] = true;
        std::string told;
        for (const auto& one : told_words(line)) told += (told.empty() ? "" : ". ") + one;
        if (!told.empty()) item["note"] = told;
        root["lines"].push_back(std::move(item));
    }
    for (const auto& beside : formula.beside) root["beside"].push_back(beside.written);
    for (const auto& [key, value] : process_words(formula.process)) root["process"][std::string(key)] = value;
    for (const auto& task : formula.to_do) root["do"].push_back(task);
    for (const auto& step : formula.method) root["method"].push_back(step);
    return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string formula_jsonld(const Formula& formula, const Knowledge& knowledge) {
    Json root;
    root["@context"] = "https://schema.org";
    root["@type"] = "Recipe";
    root["name"] = formula.title;
    if (!formula.note.empty()) root["description"] = formula.note;
    root["recipeIngredient"] = Json::array();
    const Wholes wholes = wholes_of(formula, knowledge);
    for (const auto& line : formula.lines) root["recipeIngredient"].push_back(line_text(line, wholes, knowledge));
    for (const auto& beside : formula.beside) root["recipeIngredient"].push_back(beside.written);
    for (const auto& [key, value] : process_words(formula.process)) root["recipeInstructions"].push_back(std::string(key) + ": " + value);
    for (const auto& step : formula.method) root["recipeInstructions"].push_back(step);
    return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string formula_text(const Formula& formula, const Knowledge& knowledge, Amounts amounts) {
    std::string text = "title: " + one_line(formula.title) + "\n";
    const std::string title = one_line(formula.title);
    const bool plain = !title.empty() && title.front() != '#' && title.front() != '{' && title.front() != '[' && title.front() != ' ' &&
                       title.find(':') == std::string::npos;
    if (plain && is_title(title, knowledge)) text = title + "\n";
    const Wholes wholes = wholes_of(formula, knowledge);
    for (const auto& line : formula.lines) text += line_text(line, wholes, knowledge, amounts) + "\n";
    for (const auto& beside : formula.beside) text += one_line(beside.written) + "\n";
    for (const auto& [key, value] : process_words(formula.process)) text += std::string(key) + ": " + value + "\n";
    for (const auto& task : formula.to_do) text += "do: " + one_line(task) + "\n";
    if (!formula.parent.empty()) text += "parent: " + one_line(formula.parent) + "\n";
    if (!formula.date.empty()) text += "date: " + one_line(formula.date) + "\n";
    for (std::size_t start = 0; !formula.note.empty() && start <= formula.note.size();) {
        const std::size_t end = std::min(formula.note.find('\n', start), formula.note.size());
        text += "note: " + one_line(formula.note.substr(start, end - start)) + "\n";
        start = end + 1;
    }
    if (!formula.method.empty()) text += "Method\n";
    for (const auto& step : formula.method) text += one_line(step) + "\n";
    return text;
}

}  // namespace standin
