// Who eats it and must go without a food, as the words beside the lines say: kept with the formula, and never taken for what is in it.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "formula/formats/draft.hpp"
#include "knowledge/told/must_go_without.hpp"

namespace standin {

class GoingWithout {
public:
    GoingWithout(const std::vector<std::string>& sentences, const Knowledge& knowledge);

    /// Whether the sentence at a place says so of it, and of no packet.
    bool says_of(std::size_t sentence, std::string_view allergen) const;

    /// The sentences that say so, each once.
    void keep_in(Draft& draft) const;

    bool any() const;

    /// What else is said beside them, of packets and places too.
    std::vector<std::string> others() const;

    /// What `told` finds in the text: of what somebody goes without, only what is said beside it.
    template <class Told>
    std::vector<Declared> left(std::string_view text, Told told) const {
        if (!any()) return told(std::string(text), sentences_);
        std::string rest;
        for (const auto& sentence : others()) rest += (rest.empty() ? "" : " ") + sentence;
        auto all = told(rest, others());
        for (std::size_t i = 0; i < sentences_.size(); ++i)
            if (is_of_them(i))
                for (auto& one : told(sentences_[i], {sentences_[i]}))
                    if (!says_of(i, one.allergen)) all.push_back(std::move(one));
        return all;
    }

private:
    bool is_of_them(std::size_t sentence) const { return said_[sentence].said && !said_[sentence].of_a_packet; }

    const Knowledge& knowledge_;
    std::vector<std::string> sentences_;
    std::vector<MustGoWithout> said_;
};

/// A line of its own that says so: "For Tom, who is allergic to sesame", "Gäste: eine mit Nussallergie".
bool is_said_of_going_without(std::string_view line, const Knowledge& knowledge);

/// Of what stands beside a food in its own line: it is not in the food, and stays with the formula as a note.
void take_out_of_lines(Draft& draft, const Knowledge& knowledge);

}  // namespace standin
