#include "formula/line/remark.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/formats/stock_words.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/line/hazards.hpp"
#include "formula/line/likeness.hpp"
#include "formula/line/mere_name.hpp"
#include "formula/line/tongues.hpp"
#include "knowledge/hazard_text.hpp"
#include "knowledge/kinds.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_plain = 5, longest_food = 4;  // words
constexpr std::array<std::string_view, 12> plain_lists{"plain-remark", "passed-over", "cut",        "plate-word",
                                                       "piece-shape",  "piece-size",  "tells-form", "dry-form",
                                                       "cut-of-meat",  "stock-loose", "pod-colour", "stock-some"};
constexpr std::array<std::string_view, 5> never_plain{"warm", "at room temperature", "room temperature", "overripe", "day old"};

bool plain_words(const std::string& folded, const Knowledge& knowledge) {
    if (contains(never_plain, std::string_view(folded))) return false;
    return std::any_of(plain_lists.begin(), plain_lists.end(), [&](std::string_view list) { return knowledge.in_list(list, folded); });
}

// A number, and a unit with it or behind it.
bool is_figure(const Word& word) {
    const auto letters = word.folded.find_first_not_of("0123456789.,/-% ");
    if (word.raw.find_first_of("0123456789") > 1) return unit_named(word.folded) != nullptr;  // "/900 g"
    return letters == std::string::npos || unit_named(word.folded.substr(letters)) != nullptr;
}

const Ingredient* food_named(const std::string& name, const Knowledge& knowledge) {
    const auto* found = knowledge.ingredient_named(name);
    return found ? found : knowledge.ingredient_meant(name);
}

// The name of a shop or of a person behind "from": it has a capital and is no word that anybody here knows for something else.
bool is_name_of_source(const std::vector<Word>& words, std::size_t i, const Knowledge& knowledge) {
    if (std::isupper(static_cast<unsigned char>(words[i].raw.front())) == 0) return false;
    const bool led = std::any_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(i),
                                 [&](const Word& word) { return knowledge.in_list("remark-source", word.folded); });
    return led && near_danger(words[i].raw, knowledge).empty() &&
           hazards_in(hazard_text(words[i].raw), knowledge.records().lexicon).empty();
}

// How many words from `first` on say nothing that could hurt; zero: the first of them may.
std::size_t plain_from(const std::vector<Word>& words, std::size_t first, const Knowledge& knowledge, bool any_food,
                       const std::vector<std::string_view>& own_lists) {
    for (std::size_t last = std::min(words.size(), first + longest_plain); last > first; --last) {
        const std::string said = phrase(words, first, last);
        const bool of_this_food =
            std::any_of(own_lists.begin(), own_lists.end(), [&](std::string_view list) { return knowledge.in_list(list, fold(said)); });
        if (of_this_food || plain_words(fold(said), knowledge)) return last - first;
        const auto* food = food_named(said, knowledge);
        if (food && (any_food || (!food->meat && food->family != "dairy-and-egg"))) return last - first;
    }
    return is_figure(words[first]) || is_name_of_source(words, first, knowledge) ? 1 : 0;
}

bool all_plain(std::string_view said, const Knowledge& knowledge, bool any_food = false, const SaidOfFood& of = {}) {
    const auto words = words_of(said);
    std::vector<std::string_view> own_lists;
    if (of.food && belongs(*of.food, "keeps-for-months", knowledge)) own_lists.emplace_back("age-of-what-keeps");
    if (of.food && belongs(*of.food, "dark-by-its-sort", knowledge)) own_lists.emplace_back("dark-colour");
    const auto names = of.food ? mere_names(said, *of.food, of.written, knowledge) : std::vector<bool>(words.size(), false);
    for (std::size_t i = 0; i < words.size();) {
        std::size_t count = plain_from(words, i, knowledge, any_food, own_lists);
        if (count == 0 && names[i]) count = 1;
        if (count == 0) return false;
        i += count;
    }
    return true;
}

void add_once(std::vector<NamedAllergen>& all, const std::string& allergen, bool contained) {
    if (std::none_of(all.begin(), all.end(), [&](const NamedAllergen& one) { return one.allergen == allergen; }))
        all.push_back({allergen, contained});
}

// "Butter beans" hold no butter.
bool sounds_only_so(const std::vector<Word>& words, std::size_t first, std::size_t last, const std::string& allergen,
                    const Knowledge& knowledge) {
    const auto fits = [&](std::string_view pattern, const std::string& said) {
        return pattern.ends_with('*') ? said.starts_with(pattern.substr(0, pattern.size() - 1)) : said == pattern;
    };
    const std::size_t from = first > 0 ? first - 1 : 0, to = std::min(words.size(), last + 1);
    for (const auto& said : {hazard_fold(phrase(words, from, last)), hazard_fold(phrase(words, first, to))})
        for (const auto& hazard : knowledge.records().lexicon.hazards)
            if (hazard.allergen == allergen &&
                std::any_of(hazard.but_not.begin(), hazard.but_not.end(), [&](const auto& one) { return fits(one, said); }))
                return true;
    return false;
}

// Whether it names an allergen at all, denied or not.
bool names_any_allergen(const std::vector<Word>& words, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) {
        const auto* food = food_named(word.raw, knowledge);
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
               plain_words(word.folded, knowledge);
    });
}

void add_foods(std::vector<NamedAllergen>& all, std::string_view said, bool contained, const Knowledge& knowledge) {
    const auto words = words_of(said);
    const HazardText text = hazard_text(said);
    for (std::size_t first = 0; first < words.size();) {
        std::size_t next = first + 1;
        for (std::size_t last = std::min(words.size(), first + longest_food); last > first; --last) {
            const std::string name = phrase(words, first, last);
            const auto* food = food_named(name, knowledge);
            if (!food) continue;
            const std::size_t before = hazard_text(said.substr(0, words[first].begin)).words.size();
            if (!is_denied(text, before, before + hazard_text(name).words.size(), knowledge.records().lexicon))
                for (const auto& allergen : food->allergens)
                    if (!sounds_only_so(words, first, last, allergen, knowledge)) add_once(all, allergen, contained);
            next = last;
            break;
        }
        first = next;
    }
}

bool brings(const std::vector<const Ingredient*>& own, const std::string& allergen, const Knowledge& knowledge) {
    return std::any_of(own.begin(), own.end(), [&](const Ingredient* food) {
        return is_among(allergen, food->allergens, knowledge) || (allergen == "sulphite" && food->sulphites.has_value());
    });
}

std::string named_in_words(std::vector<std::string> allergens) {
    std::string out;
    for (auto& one : allergens) {
        std::replace(one.begin(), one.end(), '-', ' ');
        out += (out.empty() ? "" : " and ") + one;
    }
    return out;
}

}  // namespace

namespace {

// What it tells is told or counted elsewhere: a hazard that is no question, what a packet says it holds, a danger that is denied.
bool is_told_elsewhere(std::string_view said, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const HazardText text = hazard_text(said);
    if (!hazards_in(text, lexicon).empty()) return true;
    if (!text.words.empty() && fits_any(lexicon.holds, text.words.front())) return true;
    for (std::size_t i = 0; i + 1 < text.words.size(); ++i) {
        const HazardText behind{{text.words.begin() + static_cast<std::ptrdiff_t>(i) + 1, text.words.end()}};
        const bool denies = contains(lexicon.denials.before, text.words[i]) || fits_any(lexicon.holds, text.words[i]);
        if (denies && !hazards_in(behind, lexicon).empty()) return true;
    }
    return false;
}

}  // namespace

bool is_plain_remark(std::string_view said, const Knowledge& knowledge, const SaidOfFood& of) {
    if (all_plain(said, knowledge, false, of) || only_denies(said, knowledge)) return true;
    const auto ways = in_english(said, knowledge);
    return std::any_of(ways.begin(), ways.end(), [&](const Rewording& way) { return all_plain(way.text, knowledge); });
}

std::string remark_not_plain(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of) {
    for (const auto& note : notes) {
        const bool passed = note.kind == ReasonKind::passed_over || note.kind == ReasonKind::passed_unknown;
        if (passed && !is_plain_remark(note.about, knowledge, of)) return note.about;
    }
    return {};
}

std::string remark_to_ask(const std::vector<Reason>& notes, const Knowledge& knowledge, const SaidOfFood& of) {
    for (const auto& note : notes) {
        const bool unknown = note.kind == ReasonKind::passed_unknown;
        if ((note.kind != ReasonKind::passed_over && !unknown) || note.about.empty()) continue;
        const auto words = words_of(note.about);
        if (words.empty() || std::isupper(static_cast<unsigned char>(words.front().raw.front())) != 0) continue;
        if (knowledge.in_list("idle-opening", words.front().folded) || knowledge.in_list("idle-end", words.back().folded)) continue;
        if (all_plain(note.about, knowledge, true)) continue;  // another meat or milk than the line's own was asked about before
        if (!is_plain_remark(note.about, knowledge, of) && !is_told_elsewhere(note.about, knowledge)) return note.about;
    }
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

std::vector<NamedAllergen> allergens_of_remark(std::string_view said, const Knowledge& knowledge) {
    const auto words = words_of(said);
    const bool contained =
        std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list("put-in", word.folded); });
    std::vector<NamedAllergen> all;
    for (const auto& named : allergens_named(said, knowledge)) add_once(all, named.allergen, contained);
    add_foods(all, said, contained, knowledge);
    for (const auto& way : in_english(said, knowledge)) add_foods(all, way.text, contained, knowledge);
    // What no words of the lexicon name cannot be read back: "black walnut" is told as walnut.
    const auto has_words = [&](const NamedAllergen& one) {
        const auto& hazards = knowledge.records().lexicon.hazards;
        return std::any_of(hazards.begin(), hazards.end(), [&](const Hazard& hazard) { return hazard.allergen == one.allergen; });
    };
    if (std::any_of(all.begin(), all.end(), has_words)) std::erase_if(all, [&](const NamedAllergen& one) { return !has_words(one); });
    return all;
}

std::vector<Declared> declared_beside(std::string_view text, const std::vector<std::string>& sentences, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const auto contained = [&](const HazardText& sentence) {
        bool holds = false, perhaps = false;
        for (const auto& word : sentence.words) {
            perhaps = perhaps || fits_any(lexicon.handles, word) || knowledge.in_list("perhaps-word", fold(word));
            holds = holds || fits_any(lexicon.holds, word);
        }
        return holds && !perhaps;
    };
    std::vector<Declared> all;
    for (auto& told : declared_in(text, knowledge)) {
        const bool surely = std::any_of(sentences.begin(), sentences.end(), [&](const std::string& sentence) {
            const auto here = declared_in(sentence, knowledge);
            return contained(hazard_text(sentence)) && std::find(here.begin(), here.end(), told) != here.end();
        });
        if (!surely) told.words = "may contain " + told.words;
        all.push_back(std::move(told));
    }
    return all;
}

std::vector<Declared> foods_with_allergens(std::string_view sentence, const Knowledge& knowledge) {
    const auto words = words_of(sentence);
    std::vector<Declared> all;
    for (std::size_t first = 0; first < words.size();) {
        std::size_t next = first + 1;
        for (std::size_t last = std::min(words.size(), first + longest_food); last > first; --last) {
            const std::string name = phrase(words, first, last);
            const auto* food = knowledge.ingredient_named(name);
            if (!food) continue;
            std::vector<NamedAllergen> held;
            add_foods(held, std::string(sentence.substr(words[first].begin, words[last - 1].end - words[first].begin)), false, knowledge);
            const HazardText text = hazard_text(sentence);
            const std::size_t before = hazard_text(sentence.substr(0, words[first].begin)).words.size();
            if (!is_denied(text, before, before + hazard_text(name).words.size(), knowledge.records().lexicon))
                for (const auto& one : held)
                    if (!sounds_only_so(words, first, last, one.allergen, knowledge)) all.push_back({one.allergen, hazard_fold(name)});
            next = last;
            break;
        }
        first = next;
    }
    return all;
}

std::vector<Declared> told_by_remark(std::string_view said, const std::vector<const Ingredient*>& own, const Knowledge& knowledge) {
    std::vector<std::string> named;
    bool contained = false;
    for (const auto& one : allergens_of_remark(said, knowledge)) {
        if (brings(own, one.allergen, knowledge)) continue;
        named.push_back(one.allergen);
        contained = contained || one.contained;
    }
    if (named.empty()) return {};
    std::string words(bare(said));
    for (char& c : words)
        if (std::string_view(",;:()[]\"").find(c) != std::string_view::npos) c = ' ';
    words = (contained ? "contains " : "may contain ") + named_in_words(named) + ": " + words;
    std::vector<Declared> all;
    for (auto& one : named) all.push_back({std::move(one), words});
    return all;
}

}  // namespace standin
