#include "formula/line/several_in_line.hpp"

#include <algorithm>
#include <cctype>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/amounts/heading_base.hpp"
#include "formula/food/line_phrases.hpp"
#include "formula/hazards/line_beside.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/line/each_of.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// "36 g", "2 cloves", "a bunch of"; not "a" by itself.
bool amount_starts(std::string_view line, std::size_t at) {
    Cursor cursor(line, at);
    const bool digit = cursor.digit() || fraction_sign(cursor.rest());
    const auto amount = amount_at(cursor);
    return amount && (digit || amount->parts.front().unit != nullptr);
}

std::string trimmed_part(std::string_view text) {
    constexpr std::string_view signs = " ,;:.+&";
    const auto first = text.find_first_not_of(" ,;:+&");
    return first == std::string_view::npos ? std::string() : std::string(text.substr(first, text.find_last_not_of(signs) - first + 1));
}

struct Cut {
    std::size_t from = 0, to = 0;  // what joins two parts: "take", "and", a comma
};

// Where an amount stands behind a comma or a word that joins, outside of brackets.
std::vector<Cut> cuts_in(std::string_view line, std::size_t start, const Knowledge& knowledge) {
    std::vector<Cut> cuts;
    const auto words = words_of(line);
    const auto bracketed = [&](std::size_t at) {
        const auto before = line.substr(0, at);
        return std::count(before.begin(), before.end(), '(') > std::count(before.begin(), before.end(), ')');
    };
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i].begin <= start || bracketed(words[i].begin) || !amount_starts(line, words[i].begin)) continue;
        const bool joined = knowledge.in_list(WordList::joins_amounts, words[i - 1].folded) && words[i - 1].begin > start;
        const auto gap = line.substr(words[i - 1].end, words[i].begin - words[i - 1].end);
        const bool apart = gap.find_first_of(",;:+&") != std::string_view::npos;
        if (!joined && !apart) continue;
        const std::size_t from = joined ? words[i - 1].begin : words[i - 1].end;
        if (gap.find_first_of(" \t") == std::string_view::npos) continue;  // "1,5 kg"
        cuts.push_back({from, words[i].begin});
    }
    return cuts;
}

bool ends_in_amount(std::string_view text) {
    for (std::size_t at = text.find(' '); at != std::string_view::npos; at = text.find(' ', at + 1)) {
        Cursor cursor(text, at + 1);
        const auto amount = cursor.digit() ? amount_at(cursor) : std::nullopt;
        if (!amount || !amount->parts.front().unit || amount->parts.front().unit->dimension == Dimension::count) continue;
        cursor.space();
        if (cursor.done()) return true;
    }
    return false;
}

// "Salt 20 g, cumin 3 g and mace 1 g": the amounts last.
std::vector<std::string> amounts_last(std::string_view line, std::size_t start, const Knowledge& knowledge) {
    const auto words = words_of(line);
    std::vector<std::string> parts;
    std::size_t from = start;
    for (std::size_t i = 1; i < words.size(); ++i) {
        const bool joins = knowledge.in_list(WordList::joins_amounts, words[i].folded);
        if (words[i].begin <= from || (words[i].segment == words[i - 1].segment && !joins)) continue;
        std::string part = trimmed_part(line.substr(from, words[i - 1].end - from));
        if (!ends_in_amount(part)) continue;
        parts.push_back(std::move(part));
        from = joins ? words[i].end : words[i].begin;
    }
    parts.push_back(trimmed_part(line.substr(from)));
    if (parts.size() < 2 || !std::all_of(parts.begin(), parts.end(), ends_in_amount)) parts.clear();
    return parts;
}

std::string without_lead(const std::string& part, const Knowledge& knowledge) {
    const auto words = words_of(part);
    if (words.size() < 2 || !amount_starts(part, words[1].begin)) return part;
    const bool leads =
        knowledge.in_list(WordList::for_a_base, words[0].folded) || knowledge.in_list(WordList::joins_amounts, words[0].folded);
    return leads ? part.substr(words[1].begin) : part;
}

// Behind an egg "1 jaune" is its yolk, and no yellow pepper.
void write_part_of_egg(std::string& part, const Knowledge& knowledge) {
    for (const auto& word : words_of(part)) {
        const bool yolk = knowledge.in_list(WordList::egg_yolk_word, word.folded);
        if (!yolk && !knowledge.in_list(WordList::egg_white_word, word.folded)) continue;
        part.replace(word.begin, word.end - word.begin, yolk ? "egg yolk" : "egg white");
        return;
    }
}

// "pork: shoulder 2.2 kg + belly 0.6 kg": cuts of the animal before the colon, each with its amount. Empty where it is anything else.
std::vector<std::string> cuts_of_animal(std::string_view line, const Origin& origin, const Knowledge& knowledge) {
    const auto colon = line.find(": ");
    if (colon == std::string_view::npos) return {};
    const std::string animal = trimmed_part(line.substr(line_start(std::string(line)), colon));
    const auto* meant = knowledge.ingredient_meant(animal);
    if (!meant || !meant->meat || words_of(animal).size() > 1) return {};
    std::vector<std::string> parts;
    std::string_view rest = line.substr(colon + 2);
    while (!rest.empty()) {
        std::size_t stop = rest.find_first_of(",;+&");
        while (stop != std::string_view::npos && stop + 1 < rest.size() && rest[stop + 1] != ' ')
            stop = rest.find_first_of(",;+&", stop + 1);
        const auto joined = std::min(rest.find(" and "), rest.find(" plus "));
        stop = std::min({stop, joined, rest.size()});
        std::string part = trimmed_part(rest.substr(0, stop));
        rest.remove_prefix(stop == joined ? std::min(rest.find(' ', stop + 1), rest.size()) : std::min(stop + 1, rest.size()));
        Cursor cursor(part);
        const std::size_t at = amount_starts(part, 0) && amount_at(cursor) ? cursor.at() : 0;
        part.insert(at, (at > 0 ? " " : "") + animal + " ");
        const auto read = read_line(part, origin, knowledge);
        if (!read || !knowledge.ingredient(read->line.ingredient)->meat) return {};
        parts.push_back(std::move(part));
    }
    if (parts.size() < 2) parts.clear();
    return parts;
}

}  // namespace

std::vector<std::string> several_in_line(std::string_view written, const Origin& origin, const Knowledge& knowledge) {
    std::string apart(written);  // "anaheim 300 g / shishito 100 g"
    for (auto stroke = apart.find(" / "); stroke != std::string::npos; stroke = apart.find(" / ", stroke)) apart[stroke + 1] = ';';
    const std::string_view line = apart;
    constexpr std::size_t fewest_without_first = 3;  // foods, where the first cannot be read
    if (auto cuts = cuts_of_animal(line, origin, knowledge); !cuts.empty()) return cuts;
    const std::size_t start = line_start(std::string(line));
    const auto cuts = cuts_in(line, start, knowledge);
    std::vector<std::string> parts = amount_starts(line, start) ? std::vector<std::string>() : amounts_last(line, start, knowledge);
    const bool last = !parts.empty();
    if (cuts.empty() && !last) return {};
    std::size_t from = start;
    for (std::size_t i = 0; i < cuts.size() && !last; ++i) {
        parts.push_back(trimmed_part(line.substr(from, cuts[i].from - from)));
        from = cuts[i].to;
    }
    if (!last) parts.push_back(trimmed_part(line.substr(from)));
    const bool headed = !last && line.substr(cuts.front().from, cuts.front().to - cuts.front().from).find(':') != std::string_view::npos;
    std::vector<std::string> foods;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i == 0 && (heading_base(parts[0] + ":", knowledge) || (headed && is_heading(parts[0] + ":", knowledge)))) {
            parts[0] += ":";
            continue;
        }
        if (!last) parts[i] = without_lead(parts[i], knowledge);
        if (i == 0 && !last && !amount_starts(parts[0], 0) && !read_line(parts[0], origin, knowledge)) return {};  // "un oeuf et 1 jaune"
        if (!foods.empty() && knowledge.ingredient(foods.back())->tissue == Tissue::egg) write_part_of_egg(parts[i], knowledge);
        if (const auto read = read_line(parts[i], origin, knowledge)) {
            if (contains(foods, read->line.ingredient)) return {};
            foods.push_back(read->line.ingredient);
        } else if (each_of_several(parts[i], origin, knowledge).empty() && (i > 0 || parts.size() <= fewest_without_first)) {
            return {};
        }
    }
    return parts;
}

}  // namespace standin
