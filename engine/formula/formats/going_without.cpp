#include "formula/formats/going_without.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/lexer/text_lines.hpp"

namespace standin {
namespace {

bool weighs_anything(std::string_view line) {
    for (const auto& word : words_of(line)) {
        Cursor at(line, word.begin);
        if (!number_at(at, false)) continue;
        const auto unit = unit_at(at);
        if (word.begin == 0 || (unit && unit->unit->dimension != Dimension::count)) return true;
    }
    return false;
}

// Without the key of a plain formula: it is the maker's words that are told again.
void keep_sentence(Draft& draft, std::string_view sentence) {
    const auto [key, value] = key_value(sentence);
    if (fold(key) == "note") sentence = value;
    if (std::string said = one_line(sentence); !contains(draft.said_of_going_without, said))
        draft.said_of_going_without.push_back(std::move(said));
}

}  // namespace

GoingWithout::GoingWithout(const std::vector<std::string>& sentences, const Knowledge& knowledge)
    : knowledge_(knowledge), sentences_(sentences) {
    for (const auto& sentence : sentences_) said_.push_back(must_go_without(sentence, knowledge));
}

bool GoingWithout::says_of(std::size_t sentence, std::string_view allergen) const {
    return is_of_them(sentence) && said_[sentence].takes(allergen, knowledge_);
}

void GoingWithout::keep_in(Draft& draft) const {
    for (std::size_t i = 0; i < sentences_.size(); ++i)
        if (said_[i].said) keep_sentence(draft, sentences_[i]);
}

bool GoingWithout::any() const {
    return std::any_of(said_.begin(), said_.end(), [](const MustGoWithout& one) { return one.said; });
}

std::vector<std::string> GoingWithout::others() const {
    std::vector<std::string> all;
    for (std::size_t i = 0; i < sentences_.size(); ++i)
        if (!is_of_them(i)) all.push_back(sentences_[i]);
    return all;
}

bool is_said_of_going_without(std::string_view line, const Knowledge& knowledge) {
    return !weighs_anything(line) && must_go_without(line, knowledge).plainly;
}

void take_out_of_lines(Draft& draft, const Knowledge& knowledge) {
    for (auto& line : draft.lines) {
        if (line.beside || !line.read) continue;
        const auto said = must_go_without(line.written, knowledge);
        if (!said.plainly) continue;
        keep_sentence(draft, line.written);
        auto& note = draft.formula.note;
        if (note.find(one_line(line.written)) == std::string::npos) note += (note.empty() ? "" : "\n") + one_line(line.written);
        if (said.of_a_packet) continue;
        std::erase_if(line.read->line.declared, [&](const Declared& told) { return said.takes(told.allergen, knowledge); });
        std::erase_if(line.read->doubts, [](const LineDoubt& doubt) { return doubt.what.kind == ReasonKind::counted_allergen; });
    }
}

}  // namespace standin
