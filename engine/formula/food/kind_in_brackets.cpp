#include "formula/food/kind_in_brackets.hpp"

#include <algorithm>
#include <optional>
#include <vector>

#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/food/remark.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// The parts of "parsley, dill and mint".
std::vector<std::string> parts_of(std::string inside) {
    for (const std::string_view join : {" and ", " or ", "/", "&", "+", ";"})
        for (auto at = inside.find(join); at != std::string::npos; at = inside.find(join)) inside.replace(at, join.size(), ",");
    std::vector<std::string> all;
    for (std::size_t start = 0; start <= inside.size();) {
        const auto end = std::min(inside.find(',', start), inside.size());
        const auto first = inside.find_first_not_of(' ', start), last = inside.find_last_not_of(' ', end - 1);
        all.push_back(first < end && end > 0 ? inside.substr(first, last - first + 1) : std::string());
        start = end + 1;
    }
    return all;
}

// Where the name begins that ends before a bracket, and what takes in its kinds.
struct WideName {
    std::size_t begin = 0;
    const Kind* kind = nullptr;
    const Ingredient* food = nullptr;  // null: of several forms
};

WideName wide_name(std::string_view before, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    const auto words = words_of(before);
    WideName wide;
    if (words.empty()) return wide;
    wide.kind = kind_named(words.back().raw, knowledge);
    for (std::size_t first = words.size() < longest ? 0 : words.size() - longest; wide.kind && first < words.size(); ++first) {
        if (words[first].segment != words.back().segment) continue;
        const std::string name = phrase(words, first, words.size());
        wide.food = known_ingredient(name, knowledge);
        if (!wide.food) wide.food = knowledge.ingredient_meant(name);
        if (!wide.food && !kind_named(name, knowledge)) continue;
        wide.begin = words[first].begin;
        return wide;
    }
    return {};
}

// "Breadcrumbs (panko)": where the name begins with which the bracket makes the name of what it names alone.
std::optional<std::size_t> begin_of_name(std::string_view before, const std::string& part, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    const auto* alone = knowledge.ingredient_named(part);
    const auto words = words_of(before);
    for (std::size_t first = words.size() < longest ? 0 : words.size() - longest; alone && first < words.size(); ++first) {
        const std::string name = phrase(words, first, words.size());
        const auto* own = known_ingredient(name, knowledge);
        if (!own) own = knowledge.ingredient_meant(name);
        if (own && own != alone && own->family == alone->family && known_ingredient(part + " " + name, knowledge) == alone)
            return words[first].begin;
    }
    return std::nullopt;
}

bool is_kind_of(const std::string& part, const WideName& wide, const Knowledge& knowledge) {
    const auto* food = knowledge.ingredient_named(part);
    if (!food || food->meat || food->family == "dairy-and-egg" || !belongs(*food, *wide.kind, knowledge)) return false;
    return !wide.food || (wide.food != food && wide.food->already.empty() && wide.food->tissue == food->tissue);
}

}  // namespace

void write_kinds_in_brackets(std::string& line, bool several, const Knowledge& knowledge) {
    const auto open = line.find('('), close = line.find(')', open);
    if (close == std::string::npos) return;
    const auto parts = parts_of(line.substr(open + 1, close - open - 1));
    if (parts.size() > 1 && (!several || has_digit(line))) return;
    if (parts.size() == 1)
        if (const auto at = begin_of_name(std::string_view(line).substr(0, open), parts.front(), knowledge)) {
            const std::string own = line.substr(*at, line.find_last_not_of(' ', open - 1) + 1 - *at);
            line.replace(*at, close + 1 - *at, parts.front() + " " + own);
            return;
        }
    const WideName wide = wide_name(std::string_view(line).substr(0, open), knowledge);
    if (!wide.kind || !std::all_of(parts.begin(), parts.end(), [&](const auto& part) { return is_kind_of(part, wide, knowledge); })) return;
    line.replace(wide.begin, close + 1 - wide.begin, listed(parts));
}

std::string with_kind_behind_comma(std::string_view line, const Knowledge& knowledge) {
    if (line.find('(') != std::string_view::npos) return {};
    const auto comma = line.find(", ");
    if (comma == std::string_view::npos) return {};
    const auto words = words_of(line.substr(comma + 2));
    std::size_t last = 0;
    while (last < words.size() && words[last].segment == words.front().segment && !has_digit(words[last].raw)) ++last;
    if (last == 0) return {};
    const std::size_t end = comma + 2 + words[last - 1].end;
    const std::string behind(line.substr(end));
    const std::string bracket = std::string(line.substr(0, comma)) + " (" + std::string(line.substr(comma + 2, end - comma - 2)) + ")";
    std::string written = bracket;
    write_kinds_in_brackets(written, false, knowledge);
    return written == bracket ? std::string() : written + (has_digit(behind) && behind.find(',') != 0 ? "," : "") + behind;
}

std::string other_sort_by_colour(const NameRead& name, const LineNotes& notes, const Knowledge& knowledge) {
    const Ingredient& food = *name.ingredient;
    const bool sauce = food.family == "condiments" && (food.tissue == Tissue::paste || food.tissue == Tissue::liquid);
    if (!sauce) return {};
    for (const auto* said : {&name.before.words, &name.after.words, &name.before.passed, &name.after.passed, &notes.passed})
        for (const auto& one : *said)
            if (knowledge.in_list(WordList::pod_colour, fold(one))) return one + " " + food.names.front();
    return {};
}

Error unknown_sort(const std::string& sort, const Ingredient& other) {
    return {Trouble::bad_data,
            "\"" + sort + "\" is not known here, and is another one than " + other.names.front() + ": give what is in it a line each",
            "",
            {other.names.front()},
            NotKnown::food};
}

void take_kind_in_brackets(NameRead& name, LineNotes& notes, const Knowledge& knowledge) {
    const std::string own = " " + own_name(name);
    for (auto passed = notes.passed.begin(); passed != notes.passed.end(); ++passed) {
        const auto* kind = known_ingredient(*passed + own, knowledge);
        const auto comma = passed->find(',');
        if (!kind && comma != std::string::npos && is_plain_remark(passed->substr(comma + 1), knowledge))  // "salt (sea, fine)"
            kind = known_ingredient(passed->substr(0, comma) + own, knowledge);
        // "Speck (pork back fat)": of a word that leaves the kind open the bracket tells which.
        const auto* told = name.generic.empty() ? nullptr : knowledge.ingredient_named(*passed);
        if (told && told->family == name.ingredient->family) kind = told;
        if (!kind || kind->family != name.ingredient->family || (kind != told && kind->tissue != name.ingredient->tissue)) continue;
        name.ingredient = kind;
        name.generic.clear();
        notes.passed.erase(passed);
        return;
    }
}

void tell_examples_in_brackets(const NameRead& name, LineNotes& notes, const Knowledge& knowledge) {
    if (name.words.empty()) return;
    const auto food_of = [&](const std::string& part) {
        const auto* food = known_ingredient(part + " " + name.words.back(), knowledge);
        return food ? food : known_ingredient(part, knowledge);
    };
    const auto is_example = [&](const std::string& part) {
        const auto* food = food_of(part);
        return food && food->family == name.ingredient->family && food->tissue == name.ingredient->tissue;
    };
    const auto is_taken = [&](const std::string& part) { return food_of(part) == name.ingredient; };
    for (auto& passed : notes.passed) {
        const auto parts = parts_of(passed);
        if (parts.size() < 2 || !std::all_of(parts.begin(), parts.end(), is_example)) continue;
        if (!name.generic.empty() || std::any_of(parts.begin(), parts.end(), is_taken)) passed = "such as " + passed;
    }
}

std::string other_food_in_brackets(const NameRead& name, const LineNotes& notes, std::string_view written, const Knowledge& knowledge) {
    for (const auto& passed : notes.passed)
        if (const auto* other = knowledge.ingredient_named(passed);
            other && other->family != name.ingredient->family && written.find("(" + passed + ")") != std::string_view::npos)
            return other->names.front();
    return {};
}

}  // namespace standin
