// Words that carry a danger, words of other tongues, and lists of words that the reader treats alike, as records of knowledge/lexicon.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace standin {

/// What the reader does where it meets the words of a hazard.
enum class HazardAct {
    refuse,   ///< never made into a batch: the reason is given
    ask,      ///< may be harmless: asked back with the reason
    declare,  ///< an allergen that counts for the line
    tell      ///< read on, and told on every page
};

/// A line that the tests read, and what must become of it.
struct HazardExample {
    std::string line, becomes;
};

/// Patterns are folded as hazard_fold does, one or more words; a star at an end of a word stands for any letters.
struct Hazard {
    std::string id, kind, allergen, reason, source;
    HazardAct act = HazardAct::refuse;
    std::vector<std::string> words;     ///< of all languages
    std::vector<std::string> with;      ///< one of these must stand in the same text too
    std::vector<std::string> unless;    ///< none of these may
    std::vector<std::string> but_not;   ///< longer names that only sound so: "butter beans"
    std::vector<std::string> of;        ///< ingredients: only where the line is read as one of them
    std::vector<std::string> needs;     ///< preparations: fires where the line has none of them
    std::optional<double> least_min{};  ///< shortest time of such a preparation
    std::vector<std::string> hints;
    std::vector<HazardExample> examples;
};

/// A name that two foods share, one often many times as strong as the other: asked back where nothing in the line tells them apart.
struct Namesake {
    std::string id, question, source;
    std::vector<std::string> names;        ///< folded, as the line has them
    std::vector<std::string> trade_words;  ///< folded: words that leave the kind open, where it was read by one of them
    std::vector<std::string> told_by;      ///< a word of the line that tells which is meant
    std::vector<std::string> done_to;      ///< preparations: asked where one is done to it, whatever tells
    std::vector<std::string> by;           ///< units, "weight" and "count"; none: by whatever it is measured
    std::optional<double> below_g{};       ///< only where less is weighed
    std::vector<std::string> hints;
    std::vector<HazardExample> examples;
};

/// How a hazard is denied: "no", "without", "nitrite-free".
struct Denials {
    std::vector<std::string> before, between, after;
};

/// A sentence that forbids what it names: "never thaw it on the counter". All are patterns.
struct Prohibitions {
    std::vector<std::string> forbids;       ///< "never", "do not"
    std::vector<std::string> acts;          ///< what is forbidden: "thaw", "leave"; a word that forbids by itself stands in both
    std::vector<std::string> turns;         ///< what stands behind such a word is not forbidden: "but", "until", "without"
    std::vector<std::string> longer;        ///< "for more than": forbidden is only what goes on for longer
    std::vector<std::string> short_whiles;  ///< so long food may stand out: "20 minutes"
};

/// A word or turn of another tongue and the English that the reader knows it by; empty: it says nothing.
struct TongueWord {
    std::string language, word, english;
};

/// A list of words that the reader treats alike, by its id (knowledge/records/word_list.hpp).
enum class WordList : std::uint16_t;

/// A word or turn of phrase, and the list that it is in: {WordList::cut, "chopped"}.
struct ListedWord {
    WordList list{};
    std::string word;
};

struct Lexicon {
    std::vector<Hazard> hazards;
    Denials denials;
    Prohibitions prohibitions;
    std::vector<std::string> holds;    ///< patterns, "contains", "traces": what stands beside them is or may be in it
    std::vector<std::string> handles;  ///< "factory", "handling": it shares a place with what is named
    std::vector<std::string> joins;    ///< "with", "in": so it is beside a food
    std::vector<TongueWord> tongue;
    std::vector<ListedWord> listed;
    std::vector<Namesake> namesakes;
};

}  // namespace standin
