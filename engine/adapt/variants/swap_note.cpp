#include "adapt/variants/swap_note.hpp"

#include <algorithm>
#include <cctype>

#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

std::string with_capital(std::string text) {
    if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return text;
}

// "Dill seed: less sweet." under the heading of dill seed.
std::string without_name(const std::string& note, const Ingredient& food) {
    const auto colon = note.find(": ");
    if (colon == std::string::npos) return note;
    const std::string head = fold(note.substr(0, colon));
    const bool own = std::any_of(food.names.begin(), food.names.end(), [&](const std::string& name) { return fold(name) == head; });
    return own ? with_capital(note.substr(colon + 2)) : note;
}

// A food that is left out or gone, or a kind of which the most is left out: "cheese" for who has no milk.
bool names_left_out(const std::string& name, const Stock& stock) {
    const Knowledge& knowledge = stock.knowledge();
    const auto* food = knowledge.ingredient_named(name);
    if (!food) food = knowledge.ingredient_meant(name);
    if (food) return !stock.leaves_in(*food) || stock.says_missing(food->id);
    const Kind* kind = kind_named(name, knowledge);
    if (!kind) return false;
    std::size_t all = 0, out = 0;
    for (const auto& one : knowledge.records().ingredients)
        if (belongs(one, *kind, knowledge)) ++all, out += stock.leaves_in(one) ? 0 : 1;
    return 2 * out >= all && out > 0;
}

// The words [first, last) of a text with a blank between.
std::string words_from(const HazardText& text, std::size_t first, std::size_t last) {
    std::string all;
    for (; first < last; ++first) all += (all.empty() ? "" : " ") + text.words[first];
    return all;
}

bool holds_left_out(std::string_view said, const Stock& stock) {
    constexpr std::size_t longest = 3;  // words
    const HazardText text = hazard_text(said);
    const std::size_t count = text.words.size();
    for (std::size_t first = 0; first < count; ++first)
        for (std::size_t last = std::min(count, first + longest); last > first; --last)
            if (names_left_out(words_from(text, first, last), stock))
                return !is_denied(text, first, last, stock.knowledge().records().lexicon);
    return false;
}

// "Add oil, cheese and garlic": the items of it that may stay; nothing where the first goes, which has the verb.
std::string items_left(const std::string& clause, const Stock& stock) {
    std::vector<std::string> items;
    for (std::size_t at = 0; at <= clause.size();) {
        const auto comma = clause.find(", ", at), joined = clause.find(" and ", at), end = std::min({comma, joined, clause.size()});
        items.push_back(clause.substr(at, end - at));
        at = end + (end == joined ? 5 : 2);
    }
    if (holds_left_out(items.front(), stock)) return {};
    std::erase_if(items, [&](const std::string& item) { return holds_left_out(item, stock); });
    return listed(items);
}

}  // namespace

bool asks_to_add(std::string_view clause, const Knowledge& knowledge) {
    const HazardText text = hazard_text(clause);
    for (std::size_t first = 0; first < text.words.size(); ++first)
        for (std::size_t last = first + 1; last <= std::min(text.words.size(), first + 2); ++last)
            if (knowledge.in_list(WordList::asks_to_add, fold(words_from(text, first, last)))) return true;
    return false;
}

std::string without_left_out(const std::string& note, const Stock& stock) {
    if (stock.excluded().empty() && !stock.listed()) return note;
    std::string kept, end;
    for (std::size_t at = 0; at < note.size();) {
        const auto stop = std::min(note.find_first_of(".;:", at), note.size());
        std::string clause = note.substr(at, stop - at);
        const auto first = clause.find_first_not_of(' ');
        if (first != std::string::npos) {
            clause.erase(0, first);
            if (asks_to_add(clause, stock.knowledge()) && holds_left_out(clause, stock)) clause = items_left(clause, stock);
            if (!clause.empty()) kept += kept.empty() ? with_capital(clause) : end + " " + (end == "." ? with_capital(clause) : clause);
            if (!clause.empty()) end = stop < note.size() ? note.substr(stop, 1) : "";
        }
        at = stop + 1;
    }
    return kept.empty() ? kept : kept + ".";
}

std::string note_of(const std::vector<std::size_t>& swaps, const Knowledge& knowledge) {
    const Swap& last = knowledge.records().swaps[swaps.back()];
    // By a detour the note is about a food that the formula has not.
    if (last.note.empty() || swaps.size() > 1) return {};
    return last.any() ? last.note : without_name(last.note, *knowledge.ingredient(last.to));
}

namespace {

// What the kinds "lost-..." say goes with a food, where neither the stand-in nor its partner brings it and the note does not say so.
std::string lost_with(const Line& line, const Line& food, const Swap& last, const std::string& note, const Knowledge& knowledge) {
    constexpr std::string_view lost = "lost-";
    std::string all;
    for (const auto& kind : knowledge.records().kinds) {
        const auto has = [&](const std::string& id) {
            const Ingredient* one = knowledge.ingredient(id);
            return one && belongs(*one, kind, knowledge);
        };
        if (!kind.id.starts_with(lost) || !has(line.ingredient) || has(food.ingredient)) continue;
        if (last.partner && has(last.partner->ingredient)) continue;
        if (fold(note).find(fold(kind.names.front())) == std::string::npos) all += (all.empty() ? "" : " ") + kind.note;
    }
    return all;
}

}  // namespace

std::string note_of(const std::vector<std::size_t>& swaps, const Line& line, const Line& food, const Stock& stock) {
    const Knowledge& knowledge = stock.knowledge();
    const std::string note = without_left_out(note_of(swaps, knowledge), stock);
    const std::string lost = lost_with(line, food, knowledge.records().swaps[swaps.back()], note, knowledge);
    return note + (note.empty() || lost.empty() ? "" : " ") + lost;
}

}  // namespace standin
