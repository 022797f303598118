#include "formula/food/remark.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/food/likeness.hpp"
#include "formula/food/told_allergens.hpp"
#include "formula/food/unknown_word.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_plain = 5;  // words
constexpr std::size_t most_names = 3;     // unknown words of one remark
constexpr std::array plain_lists{WordList::plain_remark, WordList::passed_over, WordList::cut,        WordList::plate_word,
                                 WordList::piece_shape,  WordList::piece_size,  WordList::tells_form, WordList::dry_form,
                                 WordList::cut_of_meat,  WordList::stock_loose, WordList::pod_colour, WordList::stock_some,
                                 WordList::names_a_sort};

// A number, and a unit with it or behind it.
bool is_figure(const Word& word) {
    const auto letters = word.folded.find_first_not_of("0123456789.,/-% ");
    if (word.raw.find_first_of("0123456789") > 1) return unit_named(word.folded) != nullptr;  // "/900 g"
    return letters == std::string::npos || unit_named(word.folded.substr(letters)) != nullptr;
}

// The name of a shop or of a person behind "from": it has a capital and is no word that anybody here knows for something else.
bool is_name_of_source(const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge) {
    if (std::isupper(static_cast<unsigned char>(words[i].raw.front())) == 0) return false;
    const bool led = std::any_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(i),
                                 [&](const Word& word) { return knowledge.in_list(WordList::remark_source, word.folded); });
    return led && near_danger(words[i].raw, knowledge).empty() &&
           hazards_in(hazard_text(words[i].raw), knowledge.records().lexicon).empty();
}

// Of a leaf or a fruit whoever cleans it sees how it is; of a mushroom, meat or what is bought ready it may be spoiled.
bool is_fresh_plant(const Ingredient& food) {
    constexpr std::array fresh{Tissue::thin_leaf, Tissue::thick_leaf, Tissue::stalk,      Tissue::root,
                               Tissue::bulb,      Tissue::fruit,      Tissue::chile_flesh};
    return !food.meat && food.already.empty() && contains(fresh, food.tissue) && food.id != "bean-sprout" && food.id != "potato";
}

struct Run {
    Said said = Said::unclear;
    std::size_t count = 0;  // words
};

class RemarkReader {
public:
    RemarkReader(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of, bool any_food)
        : words_(words_of(said)), knowledge_(knowledge), of_(of), any_food_(any_food) {
        if (!of.food) return;
        if (belongs(*of.food, "keeps-for-months", knowledge)) own_lists_.push_back(WordList::age_of_what_keeps);
        if (belongs(*of.food, "dark-by-its-sort", knowledge)) own_lists_.push_back(WordList::dark_colour);
        if (is_fresh_plant(*of.food)) own_lists_.push_back(WordList::plant_condition);
    }

    Remark read() const {
        Remark remark{{}, RemarkIs::plain};
        std::size_t names = 0, unclear = 0;
        for (std::size_t i = 0; i < words_.size();) {
            Run run = known(i);
            if (run.count == 0) run = {is_name(i) ? Said::name : Said::unclear, 1};
            names += run.said == Said::name ? 1 : 0;
            unclear += run.said == Said::unclear ? 1 : 0;
            remark.parts.push_back({run.said, phrase(words_, i, i + run.count)});
            i += run.count;
        }
        if (unclear > 0) remark.is = RemarkIs::asked;
        else if (names > 0) remark.is = names > most_names || is_sentence(words_, knowledge_) ? RemarkIs::asked : RemarkIs::noted;
        return remark;
    }

private:
    // How many words from `first` on are known, and for what; none: the first of them is not.
    Run known(std::size_t first) const {
        for (std::size_t last = std::min(words_.size(), first + longest_plain); last > first; --last) {
            const std::string said = phrase(words_, first, last), folded = fold(said);
            const bool of_this_food =
                std::any_of(own_lists_.begin(), own_lists_.end(), [&](WordList list) { return knowledge_.in_list(list, folded); });
            if (of_this_food || is_plain_phrase(folded, knowledge_)) return {Said::plain, last - first};
            const auto* food = food_in_remark(said, knowledge_);
            if (food && (any_food_ || (!food->meat && food->family != "dairy-and-egg"))) return {Said::food, last - first};
        }
        if (is_figure(words_[first])) return {Said::figure, 1};
        return is_name_of_source(words_, first, knowledge_) ? Run{Said::origin, 1} : Run{};
    }

    bool is_name(std::size_t i) const {
        if (!of_.food) return false;
        const BesideFood beside{*of_.food, of_german(), false, true};
        return is_mere_name(words_, i, 0, words_.size(), Stands::apart, beside, knowledge_);
    }

    bool of_german() const {
        const auto ways = in_english(of_.written, knowledge_);
        return !ways.empty() && ways.front().nouns_have_capitals;
    }

    std::vector<Word> words_;
    const Knowledge& knowledge_;
    const SaidOfFood& of_;
    bool any_food_;
    std::vector<WordList> own_lists_;
};

Remark parts_of(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of = {}, bool any_food = false) {
    return RemarkReader(said, knowledge, of, any_food).read();
}

// Whether it names an allergen at all, denied or not.
bool names_any_allergen(const std::vector<Word>& words, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        const auto* food = food_in_remark(word.raw, knowledge);
        return (food && !food->allergens.empty()) || !allergens_named(word.raw, knowledge).empty();
    });
}

// "Contains no nuts", "free from milk".
bool only_denies(std::string_view said, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const auto words = words_of(said);
    if (!names_any_allergen(words, knowledge) || !allergens_of_remark(said, knowledge).empty()) return false;
    return std::all_of(words.begin(), words.end(), [&](const Word& word) {
        const std::string folded = hazard_fold(word.raw);
        return contains(lexicon.denials.before, folded) || contains(lexicon.denials.between, folded) || fits_any(lexicon.holds, folded) ||
               contains(lexicon.denials.after, folded) || folded == "from" || folded == "of" || names_any_allergen({word}, knowledge) ||
               is_plain_phrase(word.folded, knowledge);
    });
}

// What it tells is told or counted elsewhere: a hazard that is no question, what a packet says it holds, a danger that is denied.
bool is_told_elsewhere(std::string_view said, const Knowledge& knowledge, const Ingredient* food) {
    const auto& lexicon = knowledge.records().lexicon;
    const HazardText text = hazard_text(said);
    const auto found = hazards_in(text, lexicon);
    if (std::any_of(found.begin(), found.end(),
                    [&](const HazardMatch& match) { return match.hazard->of.empty() || (food && contains(match.hazard->of, food->id)); }))
        return true;
    if (!text.words.empty() && fits_any(lexicon.holds, text.words.front())) return true;
    for (std::size_t i = 0; i + 1 < text.words.size(); ++i) {
        const HazardText behind{{text.words.begin() + static_cast<std::ptrdiff_t>(i) + 1, text.words.end()}};
        const bool denies = contains(lexicon.denials.before, text.words[i]) || fits_any(lexicon.holds, text.words[i]);
        if (denies && !hazards_in(behind, lexicon).empty()) return true;
    }
    return false;
}

}  // namespace

const Ingredient* food_in_remark(const std::string& name, const Knowledge& knowledge) {
    const auto* found = knowledge.ingredient_named(name);
    return found ? found : knowledge.ingredient_meant(name);
}

bool is_plain_phrase(const std::string& folded, const Knowledge& knowledge) {
    if (knowledge.in_list(WordList::never_plain, folded)) return false;
    return std::any_of(plain_lists.begin(), plain_lists.end(), [&](WordList list) { return knowledge.in_list(list, folded); });
}

Remark read_remark(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of) {
    Remark best = parts_of(said, knowledge, of);
    if (best.is == RemarkIs::plain) return best;
    if (only_denies(said, knowledge)) return {std::move(best.parts), RemarkIs::plain};
    for (const auto& way : in_english(said, knowledge)) {
        if (parts_of(way.text, knowledge).is == RemarkIs::plain) return {std::move(best.parts), RemarkIs::plain};
        if (best.is == RemarkIs::asked)
            if (Remark other = parts_of(way.text, knowledge, of); other.is == RemarkIs::noted) best = std::move(other);
    }
    return best;
}

bool is_plain_remark(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of) {
    return read_remark(said, knowledge, of).is == RemarkIs::plain;
}

std::string remark_not_plain(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of) {
    for (const auto& note : notes)
        if (note.kind == ReasonKind::passed_over && note.role.empty() && read_remark(note.about, knowledge, of).is == RemarkIs::asked)
            return note.about;
    return {};
}

RemarkIs remark_in_formula(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of) {
    const auto words = words_of(said);
    if (words.empty()) return RemarkIs::plain;
    if (knowledge.in_list(WordList::idle_opening, words.front().folded) || knowledge.in_list(WordList::idle_end, words.back().folded))
        return RemarkIs::plain;
    if (parts_of(said, knowledge, {}, true).is == RemarkIs::plain) return RemarkIs::plain;  // another meat or milk was asked about before
    const RemarkIs is = read_remark(said, knowledge, of).is;
    return is == RemarkIs::asked && is_told_elsewhere(said, knowledge, of.food) ? RemarkIs::plain : is;
}

std::string remark_to_ask(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of) {
    for (const auto& note : notes)  // a mere name was weighed where it stands
        if (note.kind == ReasonKind::passed_over && note.role.empty() && remark_in_formula(note.about, knowledge, of) == RemarkIs::asked)
            return note.about;
    return {};
}

Error remark_unknown(std::string_view said, std::string_view food, std::string where) {
    return {Trouble::bad_data,
            "\"" + std::string(said) + "\" beside " + std::string(food) +
                " is not understood. If it tells of its state, or of what is in it, say that in other words; if it tells of neither, "
                "write it as a note of its own",
            std::move(where),
            {}};
}

}  // namespace standin
