// All knowledge of one run, checked and indexed. Immutable after loading; safe to share between threads.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "knowledge/records/records.hpp"
#include "standin/result.hpp"

namespace standin {

class Knowledge {
public:
    /// Indexes `records`, which must have passed the cross checks.
    explicit Knowledge(Records records, std::string overlay = {});

    const Records& records() const { return records_; }
    /// The name of the folder that is laid over what is built in; empty: none.
    const std::string& overlay() const { return overlay_; }

    /// By id; null when unknown.
    const Ingredient* ingredient(std::string_view id) const;
    const Preparation* preparation(std::string_view id) const;
    const SourceRecord* source(std::string_view reference) const;  // "id" or "id#row"
    const Condition* condition(std::string_view id) const;
    const Difference* difference(std::string_view property) const;
    const RuleSet* rules(std::string_view code) const;
    const Allergen* allergen(std::string_view id) const;

    /// By any of its names, folded (case, accents, plural, hyphens). Null when unknown.
    const Ingredient* ingredient_named(std::string_view name) const;
    const Preparation* preparation_named(std::string_view name) const;
    /// By a trade word that leaves the kind open ("pork"): the ingredient it is read as, with a note. Null when unknown.
    const Ingredient* ingredient_meant(std::string_view generic) const;

    /// The tongues of the lexicon, and the English of a word of one of them, as hazard_fold writes it; null when unknown.
    const std::vector<std::string>& tongues() const { return tongues_; }
    const std::string* english(std::string_view tongue, const std::string& folded) const;
    /// Whether a list of the lexicon holds a word or a turn of phrase, folded.
    bool in_list(WordList list, std::string_view folded) const;
    /// Likewise, of a word that keeps its ending, as hazard_fold writes it: "nuts" where the list has "nuts", and not where it has "nut".
    bool in_list_as_written(WordList list, std::string_view word) const;
    /// The words of a list as the records write them, in their order.
    const std::vector<std::string>& listed(WordList list) const;

    /// Up to three known names nearest to what was written, best first.
    std::vector<std::string> nearest_ingredients(std::string_view name) const;
    std::vector<std::string> nearest_preparations(std::string_view name) const;

    /// Single words out of all known names and lists that lie within `limit` edits of a word, all folded, each once.
    std::vector<std::string> words_near(const std::string& folded, std::size_t limit) const;
    /// Whether a word stands in the name that a food is shown by, in a trade word, a preparation or a list: English, as the reader has it.
    bool is_own_word(const std::string& folded) const { return own_words_.contains(folded); }
    /// Whether a word stands in any known name, preparation or list.
    bool knows_word(const std::string& folded) const { return vocabulary_.contains(folded); }

    /// Throws std::out_of_range for an id that is not in knowledge/models: a fault of the program, not of the user.
    const Band& parameter(std::string_view id) const;
    bool has_parameter(std::string_view id) const;

private:
    using Index = std::unordered_map<std::string, std::size_t>;

    struct Hashed {
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>()(text); }
    };
    enum class Form : std::uint8_t { folded = 1, written = 2, both = 3 };
    struct ListOfWords {
        std::vector<std::string> words;
        std::unordered_map<std::string, Form, Hashed, std::equal_to<>> forms;  // hashed once, for nearly every word read is looked up
    };
    bool has_form(WordList list, std::string_view word, Form form) const;

    Records records_;
    std::string overlay_;
    std::vector<std::string> tongues_;
    std::unordered_map<std::string, std::string> english_;  // by "tongue word"
    std::vector<ListOfWords> listed_;                       // by list
    std::unordered_set<std::string> vocabulary_;            // words of names, preparations and lists
    std::unordered_set<std::string> own_words_;             // of them those that are no other tongue's
    Index ingredients_, ingredient_names_, generic_names_, preparations_, preparation_names_, sources_, differences_, parameters_;
};

}  // namespace standin
