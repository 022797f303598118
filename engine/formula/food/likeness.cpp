#include "formula/food/likeness.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/food/line_phrases.hpp"
#include "formula/food/name_text.hpp"
#include "formula/food/prepared_text.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/words/passed_over.hpp"
#include "knowledge/index/wild_names.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {

std::size_t first_of_name(std::string_view line, const std::vector<Word>& words, std::size_t last, const Knowledge& knowledge) {
    Cursor cursor(line, line_start(std::string(line)));
    amount_at(cursor);
    std::size_t first = 0;
    while (first < last && words[first].begin < cursor.at()) ++first;
    while (first < last) {
        const std::size_t end = std::max({preparation_end(words, first, last, knowledge), first + passable(words, first, knowledge),
                                          first + cut_word(words, first, knowledge)});
        if (end == first) break;
        first = std::min(end, last);
    }
    return first;
}

namespace {

bool is_known(const std::vector<Word>& words, std::size_t first, std::size_t last, const Knowledge& knowledge) {
    for (std::size_t from = first; from < last; ++from)
        for (std::size_t end = last; end > from; --end) {
            const std::string name = phrase(words, from, end);
            if (known_ingredient(name, knowledge) || knowledge.ingredient_meant(name)) return true;
        }
    return false;
}

}  // namespace

// Kinds of which each has dangers of its own: parasites, poisons, cures, raw beans.
bool is_each_its_own(const Ingredient& i) {
    constexpr std::array<std::string_view, 5> families{"fish-and-shellfish", "mushrooms-and-seaweeds", "salts", "legumes",
                                                       "proteins-and-fibres"};
    constexpr double pure_acid = 20;  // g in 100 g, judgement
    return i.meat || i.tissue == Tissue::fungus || i.composition.acid.mid > pure_acid ||
           std::find(families.begin(), families.end(), i.family) != families.end();
}

namespace {

bool is_word_of_another_tongue(const Word& word, const Knowledge& knowledge) {
    const auto& tongues = knowledge.tongues();
    return std::any_of(tongues.begin(), tongues.end(),
                       [&](const auto& tongue) { return knowledge.english(tongue, hazard_fold(word.raw)) != nullptr; });
}

}  // namespace

namespace {

// How many letters off a word of `hazard` may be. Of what a food has turned to there are many words, and a plain one ("invented") lies two
// letters from one of them ("infested").
std::size_t letters_off(const Hazard& hazard, const std::string& folded) { return hazard.kind == "spoilage" ? 1 : slip_limit(folded); }

}  // namespace

// A word that is refused, one slip of the pen away.
std::string near_danger(const std::string& called, const Knowledge& knowledge) {
    constexpr std::size_t least = 5;  // letters
    for (const auto& word : words_of(called)) {
        const std::string folded = hazard_fold(word.raw);
        if (folded.size() < least || unit_named(word.folded) || knowledge.in_list(WordList::stock_loose, word.folded) ||
            knowledge.in_list(WordList::takes_its_kind, word.folded))
            continue;
        if (is_word_of_another_tongue(word, knowledge)) continue;  // Dutch "groene" is green, and no slip for "troene"
        for (const auto& hazard : knowledge.records().lexicon.hazards) {
            const std::size_t limit = letters_off(hazard, folded);
            if ((hazard.act != HazardAct::refuse && hazard.act != HazardAct::ask) || !hazard.of.empty()) continue;
            // Words of a state that must stand beside a food or a beast: a slip of one of them tells nothing yet.
            const bool of_state = hazard.kind == "spoilage" || hazard.kind == "senses" || hazard.kind == "fungus";
            if (of_state && !hazard.with.empty()) continue;
            for (const auto& pattern : hazard.words) {
                std::string bare = pattern;
                std::erase(bare, '*');
                if (bare.size() >= least && bare.find(' ') == std::string::npos && edit_distance(folded, bare, limit) <= limit) return bare;
            }
        }
    }
    return {};
}

namespace {

// "1 tsp pure chile powder" is no slip for "tsp cure": the word that differs is one that says nothing.
bool differs_by_plain_word(const std::vector<Word>& words, std::size_t first, const std::string& pattern, const Knowledge& knowledge) {
    const auto meant = words_of(pattern);
    if (meant.size() < 2) return false;
    const bool measured = unit_named(meant.front().folded) != nullptr;
    for (std::size_t i = 0; i < meant.size() && first + i < words.size(); ++i) {
        const auto& word = words[first + i].folded;
        if (word == meant[i].folded) continue;
        // "20 g cured pork belly" is no slip for "g cure", and tells what was done to it.
        if (measured && (knowledge.in_list(WordList::passed_over, word) || knowledge.in_list(WordList::changes_food, word))) return true;
        if (knowledge.in_list(WordList::per, word) || knowledge.in_list(WordList::for_a_base, word))
            return true;  // "2 pinches salt per patty"
    }
    return false;
}

// "A colander of nettles" is no slip for the elder: a measure, a word of a name or of another tongue that is known as it stands.
bool is_word_of_the_kitchen(const Word& word, const Knowledge& knowledge) {
    if (unit_named(word.folded) || knowledge.in_list(WordList::stock_loose, word.folded) || knowledge.knows_word(word.folded)) return true;
    return is_word_of_another_tongue(word, knowledge);
}

}  // namespace

std::optional<Error> nearly_refused(std::string_view line, const Knowledge& knowledge) {
    constexpr std::size_t least = 6, most_words = 4;  // letters: shorter ones are too near to too much
    const auto words = words_of(line);
    // What is written in a row of one word, of two and so on, folded once for all that is refused.
    std::array<std::vector<std::string>, most_words> rows;
    for (std::size_t count = 1; count <= most_words; ++count)
        for (std::size_t first = 0; first + count <= words.size(); ++first)
            rows[count - 1].push_back(hazard_fold(phrase(words, first, first + count)));
    for (const auto& hazard : knowledge.records().lexicon.hazards) {
        if (hazard.act != HazardAct::refuse || !hazard.of.empty() || hazard.words.empty()) continue;
        for (const auto& pattern : hazard.words) {
            std::string bare = pattern;
            std::erase(bare, '*');
            const auto count = static_cast<std::size_t>(std::count(bare.begin(), bare.end(), ' ')) + 1;
            if (bare.size() < least || count > most_words) continue;
            for (std::size_t first = 0; first + count <= words.size(); ++first) {
                const std::string& folded = rows[count - 1][first];
                const std::size_t limit = letters_off(hazard, folded);
                if (folded == bare || edit_distance(folded, bare, limit) > limit) continue;
                const std::string written = phrase(words, first, first + count);
                if (knowledge.ingredient_named(written)) continue;
                if (count == 1 && is_word_of_the_kitchen(words[first], knowledge)) continue;
                if (knowledge.in_list(WordList::plain_remark, fold(written)) || knowledge.in_list(WordList::other_food, fold(written)) ||
                    differs_by_plain_word(words, first, bare, knowledge))
                    continue;
                const std::string mended =
                    std::string(line.substr(0, words[first].begin)) + bare + std::string(line.substr(words[first + count - 1].end));
                const auto found = hazards_in(hazard_text(mended), knowledge.records().lexicon);
                if (std::none_of(found.begin(), found.end(), [&](const HazardMatch& match) { return match.hazard == &hazard; })) continue;
                return Error{Trouble::bad_data, "\"" + written + "\" is a slip of the pen away from \"" + bare + "\": " + hazard.reason, "",
                             hazard.hints};
            }
        }
    }
    return std::nullopt;
}

std::optional<Likeness> likeness_in(std::string_view line, const Knowledge& knowledge) {
    const auto words = words_of(line);
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        if (words[i].folded != "like" || std::isdigit(static_cast<unsigned char>(words[i + 1].raw.front())) != 0) continue;
        const std::size_t first = first_of_name(line, words, i, knowledge);
        if (first == i || knowledge.in_list(WordList::liked_by, words[i - 1].folded) || words[first].segment != words[i - 1].segment ||
            is_known(words, first, i, knowledge))
            return std::nullopt;
        std::string rest(line);
        // In brackets: "methi (like dandelion greens)".
        const auto open = rest.rfind('(', words[i].begin), close = rest.find(')', words[i].begin);
        const bool bracketed = open != std::string::npos && open >= words[i - 1].end && close != std::string::npos;
        if (bracketed) rest[close] = ' ';
        rest.erase(words[first].begin, words[i + 1].begin - words[first].begin);
        return Likeness{phrase(words, first, i), std::move(rest)};
    }
    return std::nullopt;
}

std::optional<Error> refused_likeness(const std::string& called, const Ingredient& like, const Knowledge& knowledge) {
    if (const auto danger = near_danger(called, knowledge); !danger.empty())
        return Error{Trouble::bad_data,
                     "\"" + called + "\" is a slip of the pen away from \"" + danger + "\", which is never to go in unasked",
                     "",
                     {}};
    if (looks_gathered(called, knowledge))
        return Error{Trouble::bad_data,
                     "\"" + called +
                         "\" is not known here, and sounds like a mushroom or a plant that grows wild: never food of which a likeness "
                         "tells. Some of them kill and look like what is eaten. Take what a shop sells or a garden grew under its own name",
                     "",
                     {}};
    if (is_each_its_own(like))
        return Error{Trouble::bad_data,
                     "\"" + called + "\" is not known here, and of this sort (" + like.names.front() +
                         ") each has dangers of its own that a likeness does not tell: it cannot stand under another's name",
                     "",
                     {}};
    return std::nullopt;
}

Reason likeness_note(const Likeness& likeness, const Ingredient& like) {
    Reason told = make_reason(ReasonKind::likened, {}, {likeness.called, like.names.front()});
    if (likeness.bracket) told.role = "bracket";
    return told;
}

}  // namespace standin
