#include "knowledge/index/knowledge.hpp"

#include <algorithm>
#include <stdexcept>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/index/defaults.hpp"
#include "knowledge/index/wild_names.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

using Index = std::unordered_map<std::string, std::size_t>;

void add_words(const std::string& folded, std::unordered_set<std::string>& words) {
    for (std::size_t first = 0; first < folded.size();) {
        const std::size_t last = std::min(folded.find(' ', first), folded.size());
        if (last > first) words.insert(folded.substr(first, last - first));
        first = last + 1;
    }
}

std::unordered_set<std::string> words_of(const std::string& folded) {
    std::unordered_set<std::string> words;
    add_words(folded, words);
    return words;
}

bool all_in(const std::unordered_set<std::string>& words, const std::unordered_set<std::string>& known) {
    return std::all_of(words.begin(), words.end(), [&](const std::string& word) { return known.contains(word); });
}

std::string joined(std::string name) {
    std::erase(name, ' ');
    return name;
}

// "Xiangcai" as "xiang cai": a name of another tongue written as one word, where that names nothing else and no other food's name is joined
// to the same. What is all English stays apart: corn flour is no cornflour.
void index_joined(Index& names, const Index& others, const std::unordered_set<std::string>& taken,
                  const std::unordered_set<std::string>& english) {
    Index found;
    std::unordered_set<std::string> twice;
    for (const auto& [name, place] : names) {
        const auto words = words_of(name);
        std::string one = joined(name);
        if (one == name || all_in(words, english)) continue;
        if (names.contains(one) || others.contains(one) || taken.contains(one)) continue;
        const auto [at, is_new] = found.emplace(one, place);
        if (!is_new && at->second != place) twice.insert(std::move(one));
    }
    for (const auto& [name, place] : found)
        if (!twice.contains(name)) names.emplace(name, place);
}

// Written apart, what is known as one word: "jala peno". Only where a word of it is nobody's by itself: ground nuts are no groundnuts.
std::string written_together(const std::string& folded, const std::unordered_set<std::string>& vocabulary) {
    return folded.find(' ') == std::string::npos || all_in(words_of(folded), vocabulary) ? folded : joined(folded);
}

// Likeness by letters of a length: none in three letters, one in six, and more only where both begin alike. A short word is held against
// English names alone: out of one tongue into another it would be like anything.
bool is_like(const std::string& wanted, const std::string& name, const std::unordered_set<std::string>& own) {
    constexpr std::size_t shortest = 4, short_word = 6, to_an_edit = 4;  // letters, judgement
    if (wanted.size() < shortest || name.empty()) return false;
    const bool opens_alike = wanted.compare(0, 2, name, 0, 2) == 0 && all_in(words_of(name), own);  // "spnich"
    const std::size_t limit = std::max<std::size_t>(1, wanted.size() / (opens_alike ? to_an_edit - 1 : to_an_edit));
    const std::size_t edits = edit_distance(wanted, name, limit);
    if (edits > limit || (wanted.size() < short_word && !all_in(words_of(name), own))) return false;
    return wanted.front() == name.front() || (edits == 1 && wanted.size() >= short_word);
}

bool holds_word(std::string_view name, std::string_view word) {
    for (auto at = name.find(word); at != std::string_view::npos; at = name.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at == 0 || name[at - 1] == ' ') && (end == name.size() || name[end] == ' ')) return true;
    }
    return false;
}

// Asked of every name there is, so that it copies none.
bool shares_a_word(std::string_view wanted, std::string_view name) {
    constexpr std::size_t least = 4;  // letters, as `nearest` has it
    for (std::size_t first = 0; first < wanted.size();) {
        const std::size_t last = std::min(wanted.find(' ', first), wanted.size());
        if (last - first >= least && holds_word(name, wanted.substr(first, last - first))) return true;
        first = last + 1;
    }
    return false;
}

template <class T>
const T* find(const std::vector<T>& all, const Index& index, const std::string& key) {
    const auto found = index.find(key);
    return found == index.end() ? nullptr : &all[found->second];
}

// Whether a name is worth a closer look: about as long as what was written, or with a word of it.
bool comparable(std::string_view folded, std::string_view name) {
    constexpr std::size_t shortest_told = 3;  // as `nearest` has it
    const std::size_t size = folded.size();
    if (name.size() <= size + size / 3 + 1 && size <= name.size() + size / 3 + 1) return true;
    for (std::size_t start = 0; start < size;) {
        const std::size_t end = std::min(folded.find(' ', start), size);
        if (end - start > shortest_told && name.find(folded.substr(start, end - start)) != std::string_view::npos) return true;
        start = end + 1;
    }
    return false;
}

template <class T>
std::vector<std::string> nearest_names(std::string_view wanted, const std::vector<T>& all, const Index& names,
                                       const std::unordered_set<std::string>* own = nullptr) {
    const std::string folded = fold(wanted);
    std::vector<std::string_view> known;
    for (const auto& [name, place] : names)
        if (comparable(folded, name) && (!own || is_like(folded, name, *own) || shares_a_word(folded, name))) known.push_back(name);
    std::sort(known.begin(), known.end());
    std::vector<std::string> best;
    for (const auto i : nearest(folded, known, 8)) {
        const std::string& shown = all[names.at(std::string(known[i]))].names.front();
        if (best.size() < 3 && std::find(best.begin(), best.end(), shown) == best.end()) best.push_back(shown);
    }
    return best;
}

template <class T>
void index_names(const std::vector<T>& all, Index& ids, Index& names) {
    for (std::size_t i = 0; i < all.size(); ++i) {
        ids.emplace(all[i].id, i);
        names.emplace(fold(all[i].id), i);
        for (const auto& name : all[i].names) names.emplace(fold(name), i);
    }
}

// A name that only shares a word with what was written is no offer where it brings an allergen or salt: "butter beans" are no peanut
// butter.
bool harmless_hint(const std::string& wanted, const Ingredient& hint) {
    constexpr double salty = 1;  // g salt in 100 g, judgement
    constexpr std::size_t slips = 2, no_slip = 1;
    const bool salt = hint.composition.salt.mid > salty;
    const std::size_t limit = hint.composition.salt.mid > 50 ? no_slip : slips;
    for (const auto& name : hint.names)
        if (edit_distance(wanted, fold(name), limit) <= limit) return true;
    if (hint.composition.salt.mid > 50) return (" " + wanted + " ").find(" salt ") != std::string::npos;
    return hint.allergens.empty() && !salt;
}

// Words of the names that foods are shown by, of preparations and of lists.
std::unordered_set<std::string> english_words(const Records& records) {
    std::unordered_set<std::string> words;
    for (const auto& ingredient : records.ingredients) add_words(fold(ingredient.names.front()), words);
    for (const auto& preparation : records.preparations)
        for (const auto& name : preparation.names) add_words(fold(name), words);
    for (const auto& word : records.lexicon.listed) add_words(fold(word.word), words);
    return words;
}

// What a word already is that no name may be joined to: a word of another tongue, of a list, of a preparation.
std::unordered_set<std::string> taken_words(const Records& records) {
    std::unordered_set<std::string> words;
    for (const auto& word : records.lexicon.tongue) words.insert(fold(word.word));
    for (const auto& word : records.lexicon.listed) words.insert(fold(word.word));
    for (const auto& preparation : records.preparations)
        for (const auto& name : preparation.names) words.insert(fold(name));
    return words;
}

bool ends_in_word(const std::string& name, const std::string& word) { return name == word || name.ends_with(" " + word); }

// Another kind of thing is no offer, though it shares a word: swiss is no chard. The same thing of another sort is: the last word names it,
// or all of its name was written.
bool same_thing(const std::string& wanted, const Ingredient& hint) {
    const std::string last = wanted.substr(wanted.rfind(' ') + 1);
    return std::any_of(hint.names.begin(), hint.names.end(), [&](const std::string& called) {
        const std::string name = fold(called);
        const bool opens_alike = wanted.compare(0, 2, name, 0, 2) == 0;
        const std::size_t limit = std::max(slip_limit(wanted), opens_alike ? wanted.size() / 3 : 0);
        if (edit_distance(wanted, name, limit) <= limit || ends_in_word(name, last)) return true;
        if ((" " + wanted + " ").find(" " + name + " ") != std::string::npos) return true;
        const std::string head = name.substr(name.rfind(' ') + 1);
        const std::size_t slip = slip_limit(last);
        return edit_distance(last, head, slip) <= slip;
    });
}

}  // namespace

Knowledge::Knowledge(Records records, std::string overlay) : records_(std::move(records)), overlay_(std::move(overlay)) {
    fill_defaults(records_);
    index_names(records_.ingredients, ingredients_, ingredient_names_);
    for (std::size_t i = 0; i < records_.ingredients.size(); ++i)
        for (const auto& name : records_.ingredients[i].generic) generic_names_.emplace(fold(name), i);
    index_names(records_.preparations, preparations_, preparation_names_);
    for (const auto& word : records_.lexicon.tongue) {
        if (!contains(tongues_, word.language)) tongues_.push_back(word.language);
        english_[word.language + " " + hazard_fold(word.word)] = word.english;
    }
    listed_.resize(count_of<WordList>);
    for (const auto& word : records_.lexicon.listed) {
        auto& list = listed_[static_cast<std::size_t>(word.list)];
        list.words.push_back(word.word);
        const auto add = [&](std::string form, Form is) {
            auto& forms = list.forms.try_emplace(std::move(form), is).first->second;
            if (forms != is) forms = Form::both;
        };
        if (auto folded = fold(word.word); !folded.empty()) add(std::move(folded), Form::folded);  // of letters that fold knows none
        add(word.word, Form::written);
    }
    for (const auto* names : {&ingredient_names_, &generic_names_, &preparation_names_})
        for (const auto& [name, at] : *names) add_words(name, vocabulary_);
    for (const auto list : {WordList::passed_over, WordList::cut, WordList::piece_shape, WordList::piece_size})
        for (const auto& word : listed(list)) {
            const std::string said = fold(word);
            add_words(said, vocabulary_);
            add_words(said, own_words_);
        }
    for (const auto* names : {&generic_names_, &preparation_names_})
        for (const auto& [name, at] : *names) add_words(name, own_words_);
    for (const auto& ingredient : records_.ingredients) add_words(fold(ingredient.names.front()), own_words_);
    const auto english = english_words(records_);
    const auto taken = taken_words(records_);
    index_joined(ingredient_names_, generic_names_, taken, english);
    index_joined(generic_names_, ingredient_names_, taken, english);
    for (std::size_t i = 0; i < records_.sources.size(); ++i) sources_.emplace(records_.sources[i].id, i);
    for (std::size_t i = 0; i < records_.perception.size(); ++i) differences_.emplace(records_.perception[i].property, i);
    for (std::size_t i = 0; i < records_.parameters.size(); ++i) parameters_.emplace(records_.parameters[i].id, i);
}

const Ingredient* Knowledge::ingredient(std::string_view id) const { return find(records_.ingredients, ingredients_, std::string(id)); }
const Preparation* Knowledge::preparation(std::string_view id) const { return find(records_.preparations, preparations_, std::string(id)); }
const SourceRecord* Knowledge::source(std::string_view reference) const {
    return find(records_.sources, sources_, std::string(reference.substr(0, reference.find('#'))));
}
const Difference* Knowledge::difference(std::string_view property) const {
    return find(records_.perception, differences_, std::string(property));
}

const Condition* Knowledge::condition(std::string_view id) const {
    for (const auto& condition : records_.conditions)
        if (condition.id == id) return &condition;
    return nullptr;
}

const RuleSet* Knowledge::rules(std::string_view code) const {
    for (const auto& rules : records_.rules)
        if (rules.code == code) return &rules;
    return nullptr;
}

const Allergen* Knowledge::allergen(std::string_view id) const {
    for (const auto& allergen : records_.allergens)
        if (allergen.id == id) return &allergen;
    return nullptr;
}

const Ingredient* Knowledge::ingredient_named(std::string_view name) const {
    const std::string folded = fold(name);
    const auto* found = find(records_.ingredients, ingredient_names_, folded);
    if (!found && !generic_names_.contains(folded))
        found = find(records_.ingredients, ingredient_names_, written_together(folded, vocabulary_));
    // "Sarson's" belongs to somebody: it is no word of another tongue for a food, though "tomato's" are tomatoes.
    const bool owned = (name.ends_with("'s") || name.ends_with("\u2019s")) && name.find(' ') == std::string_view::npos;
    return owned && found && fold(found->names.front()) != folded ? nullptr : found;
}
const Ingredient* Knowledge::ingredient_meant(std::string_view generic) const {
    const std::string folded = fold(generic);
    const auto* found = find(records_.ingredients, generic_names_, folded);
    return found ? found : find(records_.ingredients, generic_names_, written_together(folded, vocabulary_));
}
const Preparation* Knowledge::preparation_named(std::string_view name) const {
    return find(records_.preparations, preparation_names_, fold(name));
}

const std::string* Knowledge::english(std::string_view tongue, const std::string& folded) const {
    const auto found = english_.find(std::string(tongue) + " " + folded);
    return found == english_.end() ? nullptr : &found->second;
}

bool Knowledge::has_form(WordList list, std::string_view word, Form form) const {
    const auto& forms = listed_[static_cast<std::size_t>(list)].forms;
    const auto found = forms.find(word);
    return found != forms.end() && (found->second == form || found->second == Form::both);
}

bool Knowledge::in_list(WordList list, std::string_view folded) const { return has_form(list, folded, Form::folded); }

bool Knowledge::in_list_as_written(WordList list, std::string_view word) const { return has_form(list, word, Form::written); }

const std::vector<std::string>& Knowledge::listed(WordList list) const { return listed_[static_cast<std::size_t>(list)].words; }

std::vector<std::string> Knowledge::nearest_ingredients(std::string_view name) const {
    if (!hazards_in(hazard_text(name), records_.lexicon).empty()) return {};  // no harmless name for what is none
    std::vector<std::string> safe;
    for (auto& hint : nearest_names(name, records_.ingredients, ingredient_names_, &own_words_))
        if (const auto* found = ingredient_named(hint);
            harmless_hint(fold(name), *found) && same_thing(fold(name), *found) && may_be_offered(name, *found, *this))
            safe.push_back(std::move(hint));
    return safe;
}
std::vector<std::string> Knowledge::nearest_preparations(std::string_view name) const {
    return nearest_names(name, records_.preparations, preparation_names_);
}

std::vector<std::string> Knowledge::words_near(const std::string& folded, std::size_t limit) const {
    std::vector<std::string> near;
    for (const auto& word : vocabulary_)
        if (word.size() + limit >= folded.size() && word.size() <= folded.size() + limit && edit_distance(folded, word, limit) <= limit)
            near.push_back(word);
    std::sort(near.begin(), near.end());
    return near;
}

const Band& Knowledge::parameter(std::string_view id) const {
    const auto* found = find(records_.parameters, parameters_, std::string(id));
    if (!found) throw std::out_of_range("no model constant " + std::string(id));
    return found->quantity.band;
}

bool Knowledge::has_parameter(std::string_view id) const { return parameters_.count(std::string(id)) > 0; }

}  // namespace standin
