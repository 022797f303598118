#include "formula/food/compound_name.hpp"

#include <algorithm>
#include <cctype>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/name_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

// "d'avoine", "l’Espelette": the short word before the apostrophe stands by itself.
std::string with_elisions_apart(std::string_view line) {
    constexpr std::size_t longest = 4;  // letters before the sign: "dell'"
    std::string out(line);
    for (const std::string_view sign : {"'", "’"})
        for (std::size_t i = out.find(sign); i != std::string::npos; i = out.find(sign, i + 1)) {
            std::size_t start = i;
            while (start > 0 && std::isalpha(static_cast<unsigned char>(out[start - 1])) != 0) --start;
            const bool letter_behind = i + sign.size() < out.size() && static_cast<unsigned char>(out[i + sign.size()]) > ' ';
            if (i > start && i - start <= longest && letter_behind && i + sign.size() + 1 < out.size() && out[i + sign.size()] != 's')
                out.replace(i, sign.size(), " ");
        }
    return out;
}

bool joins_names(const Word& word, const Knowledge& knowledge) { return knowledge.in_list(WordList::joins_a_name, word.folded); }

bool is_a_place(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;  // words
    for (std::size_t last = std::min(words.size(), first + longest); last > first; --last)
        if (knowledge.in_list(WordList::place_of_origin, fold(phrase(words, first, last)))) return true;
    return false;
}

bool is_an_amount(const Word& word, const Knowledge& knowledge) {  // "walnut" is a measure of butter, and a nut
    return std::isdigit(static_cast<unsigned char>(word.raw.front())) != 0 ||
           (unit_named(word.folded) && !known_ingredient(word.raw, knowledge));
}

// What fills a spoon or a hand, in English; a head or a leaf is a part of the plant.
bool holds_or_weighs(const Unit& unit) {
    return unit.dimension != Dimension::count || unit.size.mid > 0 || unit.word == "bunch" || is_container(unit);
}

// "Cucchiai", "cuillère à soupe", "zeste": a measure or a part of some tongue that ends at word `last`, and no food.
bool measures_in_a_tongue(const std::vector<Word>& words, std::size_t last, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words
    for (std::size_t first = last + 1 - std::min(last + 1, longest); first <= last; ++first) {
        const std::string said = hazard_fold(phrase(words, first, last + 1));
        for (const auto& tongue : knowledge.tongues()) {
            const auto* english = knowledge.english(tongue, said);
            if (!english || known_ingredient(*english, knowledge)) continue;
            const std::string meant = fold(*english);
            const Unit* unit = unit_named(meant);
            if (meant == "zest" || meant == "juice" || (unit && holds_or_weighs(*unit))) return true;
        }
    }
    return false;
}

struct Joined {
    std::size_t first = 0, joint = 0, tail = 0, last = 0;  // words: of the name, the joining word, what it joins, the end
};

// Every name of two foods or words with a joining word between, in the part of the line before the first comma.
std::vector<Joined> joined_in(const std::vector<Word>& words, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;  // words behind the joining word
    std::vector<Joined> all;
    for (std::size_t joint = 1; joint + 1 < words.size() && words[joint].segment == words.front().segment; ++joint) {
        if (!joins_names(words[joint], knowledge) || joins_names(words[joint - 1], knowledge) || is_an_amount(words[joint - 1], knowledge))
            continue;
        if (measures_in_a_tongue(words, joint - 1, knowledge)) continue;
        std::size_t tail = joint + 1;
        while (tail < words.size() && (joins_names(words[tail], knowledge) || knowledge.in_list(WordList::article, words[tail].folded)))
            ++tail;
        if (tail >= words.size() || words[tail].segment != words[joint].segment || is_an_amount(words[tail], knowledge)) continue;
        std::size_t last = tail + 1;
        while (last < std::min(words.size(), tail + longest) && words[last].segment == words[joint].segment &&
               !knowledge.in_list(WordList::content_join, words[last].folded) && !is_an_amount(words[last], knowledge))
            ++last;
        all.push_back({joint - 1, joint, tail, last});
    }
    return all;
}

// Some tongue knows the whole as one name.
bool is_known_as(const std::string& name, const Knowledge& knowledge) {
    if (known_ingredient(name, knowledge) || knowledge.ingredient_meant(name)) return true;
    const std::string folded = hazard_fold(name);
    return std::any_of(knowledge.tongues().begin(), knowledge.tongues().end(), [&](const auto& tongue) {
        const auto* english = knowledge.english(tongue, folded);
        return english && !english->empty();
    });
}

bool any_length_known(const std::vector<Word>& words, std::size_t first, const Joined& joined, const Knowledge& knowledge) {
    for (std::size_t last = joined.tail + 1; last <= joined.last; ++last)
        if (is_known_as(phrase(words, first, last), knowledge)) return true;
    return false;
}

}  // namespace

std::string other_food_by_joining(std::string_view line, const ReadLine& read, const Knowledge& knowledge) {
    std::vector<std::string> passed, unknown;
    const auto take = [&](const Reason& told) {
        if (told.kind == ReasonKind::passed_unknown) unknown.push_back(fold(told.about));
        if (told.kind == ReasonKind::passed_unknown || told.kind == ReasonKind::passed_over) passed.push_back(fold(told.about));
    };
    for (const auto& note : read.line.notes) take(note);
    for (const auto& doubt : read.doubts) take(doubt.what);
    const auto among_them = [](const std::vector<std::string>& all, const std::string& word) {
        return std::any_of(all.begin(), all.end(), [&](const std::string& said) {
            return (" " + said + " ").find(" " + word + " ") != std::string::npos || said.starts_with(word + "-");
        });
    };
    const std::string apart = with_elisions_apart(line);
    const auto words = words_of(apart);
    const Ingredient& food = *knowledge.ingredient(read.line.ingredient);
    for (const auto& joined : joined_in(words, knowledge)) {
        const Word &head = words[joined.first], &tail = words[joined.tail];
        const bool english = words[joined.joint].folded == "of";
        const bool told = among_them(passed, tail.folded) || (!english && knowledge.in_list(WordList::plain_remark, tail.folded));
        // Of a leaf a name with a capital is more likely a place or a sort: "acelgas de Zorbana".
        const bool sort =
            food.family == "leaf-greens" && food.allergens.empty() && std::isupper(static_cast<unsigned char>(tail.raw.front())) != 0;
        const bool tail_passed = told && !sort && is_known_as(head.raw, knowledge) && !is_a_place(words, joined.tail, knowledge);
        const bool head_passed = !english && among_them(unknown, head.folded) && is_known_as(tail.raw, knowledge);  // "fiori di zucca"
        if ((!tail_passed && !head_passed) || any_length_known(words, joined.first, joined, knowledge)) continue;
        return phrase(words, joined.first, joined.last);
    }
    return {};
}

std::string joined_name(std::string_view line, const Knowledge& knowledge) {
    const std::string apart = with_elisions_apart(line);
    const auto words = words_of(apart);
    if (std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(WordList::content_join, word.folded); }))
        return {};
    for (const auto& joined : joined_in(words, knowledge)) {
        const bool more = joined.last < words.size() && words[joined.last].segment == words[joined.tail].segment;
        if (more && !is_an_amount(words[joined.last], knowledge)) continue;
        if (is_a_place(words, joined.tail, knowledge) || any_length_known(words, joined.first, joined, knowledge)) continue;
        return phrase(words, joined.first, joined.last);
    }
    return {};
}

bool is_joined_to_another(const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge) {
    return (i > 0 && joins_names(words[i - 1], knowledge)) || (i + 1 < words.size() && joins_names(words[i + 1], knowledge));
}

Error two_foods(const Ingredient& own, const std::string& other, std::string where, bool joined) {
    return Error{Trouble::bad_data,
                 "two ingredients in one line, " + own.names.front() + " and " + other,
                 std::move(where),
                 {"give each a line, or name one of them"},
                 joined ? NotKnown::word : NotKnown::nothing};
}

Error unknown_compound(const std::string& name, std::string where, const Knowledge& knowledge) {
    return {Trouble::bad_data,
            "unknown ingredient \"" + name + "\"" + may_hold(name, knowledge) +
                ": two words joined so are often another food than either, with other allergens",
            std::move(where), knowledge.nearest_ingredients(name), NotKnown::food};
}

}  // namespace standin
