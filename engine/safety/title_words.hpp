// The words of a title: what it promises to be without, and which animals it names.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/formula.hpp"
#include "standin/prediction.hpp"

namespace standin {

struct TitlePromise {
    std::string words;            ///< of the title
    bool fit_for_people = false;  ///< "safe for nut allergy", "coeliac friendly": more than "without nuts"
};

class TitleWords {
public:
    TitleWords(std::string_view title, const Knowledge& knowledge);

    /// That it is without a kind: "nut-free", "no nuts or milk", "glutenfrei", "sans lait", "safe for nut allergy"; nothing where it
    /// promises nothing of the kind.
    std::optional<TitlePromise> promise_of(const Kind& kind) const;

    /// The words of a list of the lexicon that stand in it: "mett" of what is eaten raw, "salami" of what is not fresh; empty where none
    /// do.
    std::string words_in(WordList list) const;

    /// The word of a kind that stands in the title as what it is made of; empty where there is none.
    std::string named(const Kind& kind) const;

private:
    struct Span {
        std::size_t first = 0, last = 0;  // words
    };
    std::vector<Span> spans_of(const Kind& kind) const;
    std::string said(std::size_t first, std::size_t last) const;
    bool denied(const Span& span) const;
    std::optional<TitlePromise> promise_at(const Span& span) const;
    std::string who_eats() const;
    bool is_not_for_them(const Span& span) const;
    std::optional<TitlePromise> joined_promise(const Kind& kind) const;

    const Knowledge& knowledge_;
    std::string title_;  // as it was written
    std::vector<std::string> words_;
};

/// That it is without any allergen: "allergen-free", "free from allergens".
std::optional<std::string> promise_of_no_allergen(std::string_view title, const Knowledge& knowledge);

/// An animal that the title names and no line is of; others that are in it beside those it names.
std::vector<CautionText> other_animals(const Formula& formula, const TitleWords& title, const Knowledge& knowledge);

/// The sentences that tell who eats it.
std::vector<std::string> said_of_guests(const std::vector<Reason>& read_as);

/// The first words in any of the texts that name people whom germs harm more; empty where none does.
std::string words_of_guests(const std::vector<std::string>& texts, const Knowledge& knowledge);

}  // namespace standin
