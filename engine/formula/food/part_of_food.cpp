#include "formula/food/part_of_food.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include "formula/food/line_phrases.hpp"
#include "formula/food/name_text.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/words/passed_over.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

bool is_part_of_food(std::string_view folded, const Knowledge& knowledge) { return knowledge.in_list(WordList::part_of_food, folded); }

std::string bare_end_of(std::string_view text) {
    const auto last = text.find_last_not_of(" ,;:(");
    return std::string(text.substr(0, last == std::string_view::npos ? 0 : last + 1));
}

// Where the name ends that starts at `from`: at the next comma or the end.
std::size_t name_end_from(const std::string& line, std::size_t from) { return std::min(line.find_first_of(",;([\n", from), line.size()); }

// "juice ½ lemon" as "juice 1/2 lemon".
void write_fraction_behind_part(std::string& line, const Knowledge& knowledge) {
    for (const auto& word : words_of(line)) {
        if (!is_part_of_food(word.folded, knowledge)) continue;
        const auto at = std::min(line.find_first_not_of(' ', word.end), line.size());
        if (const auto* fraction = fraction_sign(std::string_view(line).substr(at)))
            line.replace(at, fraction->sign.size(), fraction->digits);
        return;
    }
}

// An onion is a bulb: the green of one is no part of what it weighs.
bool ends_in_bulb(const std::vector<Word>& words, const Knowledge& knowledge) {
    const auto* food = known_ingredient(words.back().raw, knowledge);
    const auto* two = words.size() > 1 ? known_ingredient(phrase(words, words.size() - 2, words.size()), knowledge) : nullptr;
    return (two ? two : food) != nullptr && (two ? two : food)->tissue == Tissue::bulb;
}

// "finely grated zest of 2 lemons", "juice 1/2 lemon", "leaves from 6 sprigs thyme"
bool rewrite_part_of(std::string& line, const Knowledge& knowledge) {
    write_fraction_behind_part(line, knowledge);
    const auto words = words_of(line);
    for (std::size_t i = 0; i + 2 < words.size(); ++i) {
        const bool of = words[i + 1].folded == "of" || words[i + 1].folded == "from";
        const std::size_t name = i + (of ? 2 : 1);
        Cursor behind(line, words[name].begin);
        const bool whole_named = !of && i > 0 && words[i - 1].folded == "egg";  // "egg white 200 g"
        const bool counted = !whole_named && number_at(behind).has_value();
        const bool leaves = of && counted && words[i].folded == "leaf";
        const bool greens = of && counted && words[i].folded == "green" && !ends_in_bulb(words, knowledge);
        if (!(is_part_of_food(words[i].folded, knowledge) && (of || counted)) && !leaves && !greens) {
            const auto& word = words[i].folded;
            if (passable(words, i, knowledge) == 0 && cut_word(words, i, knowledge) == 0 && word != "squeezed" && word != "egg")
                return false;
            continue;
        }
        const std::string said = leaves ? ", leaves only" : greens ? ", green part only" : " " + words[i].raw;
        line.insert(name_end_from(line, words[name].begin), said);
        blank(line, words[0].begin, words[name - 1].end);
        return true;
    }
    return false;
}

// "10 g leaves of sage" as "10 g sage leaves"; a number of leaves stays as it is.
void rewrite_leaves_of(std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        if (words[i].folded != "leaf") continue;
        const bool of = words[i + 1].folded == "of" && i + 2 < words.size();
        if (!of && known_ingredient(phrase(words, i, i + 2), knowledge)) return;  // "leaf celery"
        const std::size_t name = i + (of ? 2 : 1);
        const Unit* unit = i > 0 ? unit_named(words[i - 1].folded) : nullptr;
        const bool weight = i > 0 && words[i - 1].raw.find_first_of("0123456789") == 0 &&
                            unit_named(words[i - 1].folded.substr(
                                std::min(words[i - 1].folded.find_first_not_of("0123456789.,/- "), words[i - 1].folded.size())));
        const bool measured = weight || (unit && unit->dimension != Dimension::count);
        // "Blätter Salbei" is sage leaves; leaf lard is a fat.
        if (!of && !known_ingredient(std::string(words[name].raw) + " leaves", knowledge)) return;
        if ((i > 0 && !measured) || (i == 0 && !of) || !known_ingredient(words[name].raw, knowledge)) return;
        std::size_t last = name;
        while (last + 1 < words.size() && words[last + 1].segment == words[name].segment &&
               words[last + 1].raw.find_first_of("0123456789") != 0 && known_ingredient(phrase(words, name, last + 2), knowledge))
            ++last;
        line.insert(words[last].end, " leaves");
        line.erase(words[i].begin, words[name].begin - words[i].begin);
        return;
    }
}

// "1 lemon, zested", "2 limes (juice only)"
void rewrite_done_to_part(std::string& line) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i].segment == words[i - 1].segment) continue;
        const auto& w = words[i].folded;
        const bool juice = w == "juiced" || w == "juice", zest = w == "zested" || w == "zest" || (w == "rind" || w == "peel");
        const bool of = i + 2 == words.size() && words[i + 1].folded == "of";  // "1 orange, rind of"
        const bool alone = i + 1 == words.size() || of || words[i + 1].segment != words[i].segment;
        const bool only = i + 1 < words.size() && words[i + 1].folded == "only";
        if ((!juice && !zest) || (!alone && !only)) continue;
        blank(line, words[i].begin, only || of ? words[i + 1].end : words[i].end);
        line.insert(words[i - 1].end, juice ? " juice" : " zest");
        return;
    }
}

// "4 eggs, whites only", "3 eggs (just the yolks)": as "4 egg white".
void rewrite_part_of_egg(std::string& line) {
    const auto words = words_of(line);
    const auto egg = std::find_if(words.begin(), words.end(), [](const Word& word) { return word.folded == "egg"; });
    if (egg == words.end()) return;
    for (auto first = egg + 1; first != words.end(); ++first) {
        if (first->segment == (first - 1)->segment) continue;
        auto part = first;
        while (part != words.end() && (part->folded == "only" || part->folded == "just" || part->folded == "the")) ++part;
        if (part == words.end() || part->segment != first->segment || (part->folded != "white" && part->folded != "yolk")) continue;
        auto last = part + 1;
        if (last != words.end() && last->segment == part->segment && last->folded == "only") ++last;
        if (last != words.end() && last->segment == part->segment) continue;
        const std::string said = " " + part->folded;
        blank(line, first->begin, (last - 1)->end);
        line.insert(egg->end, said);
        return;
    }
}

std::vector<std::string> two_parts_in_english(std::string_view line) {
    const auto words = words_of(line);
    const auto part_at = [&](std::size_t i) -> std::string_view {
        const auto& word = words[i].folded;
        if (word == "juice" || word == "juiced") return "juice";
        return word == "zest" || word == "zested" || word == "rind" || word == "peel" ? "zest" : std::string_view{};
    };
    const auto of = [&](std::size_t i) { return i < words.size() && (words[i].folded == "of" || words[i].folded == "from"); };
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        if (part_at(i).empty()) continue;
        std::size_t other = i + (of(i + 1) ? 2 : 1);  // "juice of and zest of", out of another tongue
        const auto gap = other < words.size() ? line.substr(words[other - 1].end, words[other].begin - words[other - 1].end) : "";
        if (other < words.size() && words[other].folded == "and") ++other;
        else if (gap.find_first_of("&+") == std::string_view::npos) continue;
        if (other >= words.size()) continue;
        const auto first = part_at(i), second = part_at(other);
        if (second.empty() || first == second) continue;
        const std::size_t behind = other + 1;
        std::string fruit, done;
        if (of(behind) && behind + 1 < words.size()) {
            fruit = line.substr(words[behind + 1].begin);  // "zest and juice of 2 limes"
        } else if (behind + (of(behind) ? 1 : 0) == words.size() &&
                   i > 0) {  // "1 lemon, zested and juiced", "... finely grated zest and juice"
            const auto head = line.substr(0, words[i - 1].end);
            const auto comma = head.find(',');
            fruit = bare_end_of(head.substr(0, comma));
            if (comma != std::string_view::npos) done = head.substr(comma);
        }
        if (fruit.empty()) return {};
        const auto part = [&](std::string_view which) { return std::string(which) + " of " + fruit + (which == "zest" ? done : ""); };
        return {part(first), part(second)};
    }
    return {};
}

}  // namespace

void rewrite_parts_of_food(std::string& line, const Knowledge& knowledge) {
    rewrite_part_of_egg(line);
    rewrite_leaves_of(line, knowledge);
    if (!rewrite_part_of(line, knowledge)) rewrite_done_to_part(line);
}

std::vector<std::string> two_parts_of_fruit(std::string_view line, const std::vector<Rewording>& english) {
    if (auto parts = two_parts_in_english(line); !parts.empty()) return parts;
    for (const auto& way : english)
        if (auto parts = two_parts_in_english(way.text); !parts.empty()) return parts;
    return {};
}

bool names_two_parts(const std::string& line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 0; i + 3 < words.size(); ++i)
        if (is_part_of_food(words[i].folded, knowledge) && is_part_of_food(words[i + 2].folded, knowledge) && words[i + 3].folded == "of")
            return true;
    for (std::size_t i = 1; i + 2 < words.size(); ++i)  // "1 lime, juice and zest"
        if (is_part_of_food(words[i].folded, knowledge) && words[i + 1].folded == "and" && is_part_of_food(words[i + 2].folded, knowledge))
            return true;
    return false;
}

}  // namespace standin
