#include "formula/hazards/told_content.hpp"

#include <utf8.h>

#include <algorithm>
#include <cctype>
#include <string>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

using Words = std::vector<std::string>;

struct Span {
    std::size_t first = 0, last = 0;  // words
};

bool is_figure(const std::string& word) {
    return word == "%" || std::any_of(word.begin(), word.end(), [](char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; });
}

// Brackets, dashes and semicolons part what a packet says from what the line says.
std::vector<std::string> clauses_of(std::string_view text) {
    std::vector<std::string> all(1);
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool dash = text[i] == '-' && i > 0 && text[i - 1] == ' ';
        if (dash || text[i] == '(' || text[i] == ')' || text[i] == '[' || text[i] == ']' || text[i] == ';') all.emplace_back();
        else all.back() += text[i];
    }
    return all;
}

// What the clause says is in it: behind the word that says so, or before it where that ends the clause ("kann Nuss enthalten").
std::optional<Span> content_in(const HazardText& clause, const Lexicon& lexicon) {
    for (std::size_t i = 0; i < clause.words.size(); ++i) {
        if (!fits_any(lexicon.holds, clause.words[i])) continue;
        if (is_denied(clause, i, i + 1, lexicon)) return std::nullopt;
        if (i + 1 < clause.words.size()) return Span{i + 1, clause.words.size()};
        return Span{0, i};
    }
    return std::nullopt;
}

bool is_denial(const std::string& word, const Denials& denials) { return contains(denials.before, word) || contains(denials.after, word); }

// A food, a figure, or a word that a packet has beside any food.
std::size_t known_at(const Words& words, std::size_t at, std::size_t last, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;
    std::string name;
    std::size_t known = is_figure(words[at]) || knowledge.in_list(WordList::packet_word, fold(words[at])) ? 1 : 0;
    for (std::size_t end = at; end < std::min(last, at + longest); ++end) {
        name += (name.empty() ? "" : " ") + words[end];
        if (knowledge.ingredient_named(name) || knowledge.ingredient_meant(name)) known = end + 1 - at;
    }
    return known;
}

bool all_known(const HazardText& clause, Span content, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    for (std::size_t at = content.first; at < content.last;) {
        if (is_denial(clause.words[at], lexicon.denials)) return true;
        const std::size_t known = fits_any(lexicon.holds, clause.words[at]) ? 1 : known_at(clause.words, at, content.last, knowledge);
        if (known == 0) return false;
        at += known;
    }
    return true;
}

bool names_hazard(const HazardText& clause, Span content, const Lexicon& lexicon) {
    const HazardText part{Words(clause.words.begin() + static_cast<std::ptrdiff_t>(content.first),
                                clause.words.begin() + static_cast<std::ptrdiff_t>(content.last))};
    return !hazards_in(part, lexicon).empty();
}

// Greek, Cyrillic, Arabic, Chinese; a single letter is a unit: "μ".
bool is_beyond_latin(const std::string& word) {
    constexpr std::uint32_t first = 0x370;
    std::size_t letters = 0;
    bool beyond = false;
    for (auto at = word.begin(); at != word.end(); ++letters)
        if (utf8::unchecked::next(at) >= first) beyond = true;
    return beyond && (letters > 1 || word.size() > 2);
}

bool any_beyond_latin(const HazardText& text) { return std::any_of(text.words.begin(), text.words.end(), is_beyond_latin); }

// The first word in letters that nothing here reads. Where a clause tells of an allergen that is known, its small words are no matter.
std::string unread_script(const HazardText& clause, const Knowledge& knowledge) {
    if (!any_beyond_latin(clause)) return {};
    const auto& lexicon = knowledge.records().lexicon;
    const auto found = hazards_in(clause, lexicon);
    const auto content = content_in(clause, lexicon);
    if (content && names_hazard(clause, *content, lexicon)) return {};
    for (std::size_t i = 0; i < clause.words.size(); ++i) {
        const auto& word = clause.words[i];
        const bool read = std::any_of(found.begin(), found.end(), [&](const HazardMatch& m) { return i >= m.first && i < m.last; });
        if (is_beyond_latin(word) && !read && !fits_any(lexicon.holds, word) && !is_denial(word, lexicon.denials) &&
            !contains(lexicon.joins, word) && !knowledge.ingredient_named(word) && !knowledge.ingredient_meant(word))
            return word;
    }
    return {};
}

std::string clause_not_known(std::string_view text, const Knowledge& knowledge) {
    for (const auto& written : clauses_of(text)) {
        const HazardText clause = hazard_text(written);
        const auto content = content_in(clause, knowledge.records().lexicon);
        if (!content || names_hazard(clause, *content, knowledge.records().lexicon) || all_known(clause, *content, knowledge)) continue;
        const auto from = written.find_first_not_of(' '), to = written.find_last_not_of(' ');
        return written.substr(from, to + 1 - from);
    }
    return {};
}

Error asked_what(const std::string& clause) {
    return {Trouble::bad_data,
            "\"" + clause + "\" says that something is in it, and what is not known here: it may be an allergen. Name the allergen",
            "",
            {"may contain sesame", "contains milk"}};
}

}  // namespace

bool says_it_holds(const HazardText& text, const HazardMatch& match, const Lexicon& lexicon, bool beside_food) {
    const std::size_t before = match.first;
    if (is_said_not_free(text, match.first, match.last, lexicon)) return true;
    if (fits_any(lexicon.holds, text.words.back())) return true;
    return std::any_of(text.words.begin(), text.words.begin() + static_cast<std::ptrdiff_t>(before), [&](const auto& word) {
        return fits_any(lexicon.holds, word) || fits_any(lexicon.handles, word) || (beside_food && contains(lexicon.joins, word));
    });
}

std::optional<Error> content_not_known(std::string_view text, const Knowledge& knowledge) {
    if (const std::string clause = clause_not_known(text, knowledge); !clause.empty()) return asked_what(clause);
    for (const auto& written : clauses_of(text)) {
        const std::string word = unread_script(hazard_text(written), knowledge);
        if (word.empty()) continue;
        return Error{
            Trouble::bad_data,
            "\"" + word + "\" is in letters that are not read here, and may name an allergen: write it in English, or leave it out",
            "",
            {}};
    }
    return std::nullopt;
}

void tell_of_declared(ReadLine& read, const Knowledge& knowledge) {
    for (const auto& told : read.line.declared) {
        bool passed = false;
        for (auto& doubt : read.doubts)
            if (doubt.what.kind == ReasonKind::passed_over && doubt.what.about == told.words) {
                doubt.what.kind = ReasonKind::counted_allergen;
                passed = true;
            } else passed = passed || (doubt.what.kind == ReasonKind::counted_allergen && doubt.what.about == told.words);
        if (passed) continue;
        Reason counted =
            reason_about(ReasonKind::counted_allergen, told.words, {knowledge.ingredient(read.line.ingredient)->names.front()});
        read.doubts.push_back({Confidence::unsure, std::move(counted), true});
    }
}

std::vector<std::string> clauses_beyond_latin(std::string_view text) {
    auto all = clauses_of(text);
    std::erase_if(all, [](const std::string& clause) { return !any_beyond_latin(hazard_text(clause)); });
    return all;
}

std::optional<Error> content_not_known_beside(std::string_view text, const Knowledge& knowledge) {
    constexpr std::size_t longest = 8;  // words; a longer one is a method: "the bowl that contains the paste"
    if (hazard_text(text).words.size() > longest) return std::nullopt;
    if (const std::string clause = clause_not_known(text, knowledge); !clause.empty()) return asked_what(clause);
    return std::nullopt;
}

}  // namespace standin
