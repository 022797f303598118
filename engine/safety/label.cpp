#include "safety/label.hpp"

#include <algorithm>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/index/line_name.hpp"
#include "knowledge/told/contact_text.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "safety/allergens.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

struct Item {
    std::string text;
    double grams;
};

// Whatever its grain, salt is called salt, and ice water. Salt with something else in it keeps its name.
std::string common_name(const Ingredient& ingredient) {
    if (ingredient.id == "ice") return "water";
    const bool plain = ingredient.allergens.empty() && ingredient.label.empty() && ingredient.composition.salt.mid > 95;
    return ingredient.family == "salts" && plain ? "salt" : ingredient.names.front();
}

// A word in a text with its place.
struct Word {
    std::size_t start, size;
    std::string folded;
};

std::vector<Word> words_of(std::string_view text) {
    std::vector<Word> words;
    for (std::size_t start = 0; start < text.size();) {
        const auto end = std::min(text.find_first_of(" -,/()", start), text.size());
        if (end > start) words.push_back({start, end - start, fold(text.substr(start, end - start))});
        start = end + 1;
    }
    return words;
}

void raise_letters(std::string& text, const Word& from, const Word& to) {
    for (std::size_t i = from.start; i < to.start + to.size; ++i)
        if (text[i] >= 'a' && text[i] <= 'z') text[i] = static_cast<char>(text[i] - 'a' + 'A');
}

bool set_off_word(std::string& text, std::string_view word) {
    const auto sought = words_of(word);
    const auto words = words_of(text);
    bool found = false;
    for (std::size_t i = 0; !sought.empty() && i + sought.size() <= words.size(); ++i) {
        if (!std::equal(sought.begin(), sought.end(), words.begin() + static_cast<std::ptrdiff_t>(i),
                        [](const Word& a, const Word& b) { return a.folded == b.folded; }))
            continue;
        raise_letters(text, words[i], words[i + sought.size() - 1]);
        found = true;
    }
    return found;
}

// "wheat flour" to "WHEAT flour", "soybeans" to "SOYBEANS"; false where the text has no word for the class. Whole words only: eggplant is
// no egg.
bool set_off(std::string& text, const Allergen& allergen) {
    bool found = false;
    for (const auto& word : allergen.words) found = set_off_word(text, word) || found;
    return found;
}

std::string in_capitals(std::string text) {
    const auto words = words_of(text);
    if (!words.empty()) raise_letters(text, words.front(), words.back());
    return text;
}

// "may contain NUTS", in the maker's own words.
std::vector<std::string> told_parts(const std::vector<Declared>& declared, const Knowledge& knowledge) {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < declared.size(); ++i) {
        const std::string& words = declared[i].words;
        const auto same = [&](const Declared& one) { return one.words == words; };
        if (std::any_of(declared.begin(), declared.begin() + static_cast<std::ptrdiff_t>(i), same)) continue;
        std::string text = words;
        for (const auto& one : declared) {
            if (!same(one)) continue;
            const Allergen* known = knowledge.allergen(one.allergen);
            const Allergen allergen = known ? *known : Allergen{one.allergen, one.allergen, {one.allergen}};
            if (!set_off(text, allergen)) text += " (" + in_capitals(allergen.name) + ")";
        }
        parts.push_back(std::move(text));
    }
    return parts;
}

// `called`: the maker's own name for a food that is no record and was said to be like one; what it holds the maker knows.
std::string named(const Ingredient& ingredient, const std::string& called, const std::vector<Declared>& declared, bool with_sulphites,
                  const Knowledge& knowledge) {
    auto allergens = ingredient.allergens;
    if (with_sulphites && ingredient.sulphites && ingredient.sulphites->band.high > 0) allergens.emplace_back(sulphite_class);
    std::string name = called.empty() ? common_name(ingredient) : called;
    auto parts = ingredient.label;
    if (!called.empty()) parts.emplace_back("its own allergens to be declared by the maker");
    for (const auto& id : allergens) {
        const Allergen* known = knowledge.allergen(id);
        const Allergen allergen = known ? *known : Allergen{id, id, {id}};
        bool said = set_off(name, allergen);
        for (auto& part : parts) said = set_off(part, allergen) || said;
        if (!said) parts.push_back((ingredient.label.empty() ? "" : "contains ") + in_capitals(allergen.name));
    }
    for (auto& part : told_parts(declared, knowledge)) parts.push_back(std::move(part));
    return parts.empty() ? name : name + " (" + listed(parts) + ")";
}

// Casings by their beast, and foods that go on or around the mass with what they are for.
std::vector<std::string> around_the_mass(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<std::string> all;
    for (const auto& casing : prediction.casings) {
        const std::string name = casing_name(casing.written, knowledge);
        if (name == "inedible") continue;
        std::string text = (name.empty() ? "" : name + " ") + "casing";
        if (name == "hog") text += " (pork)";
        if (name.empty() || name == "collagen") text += " (of which animal: see the packet)";
        if (!contains(all, text)) all.push_back(std::move(text));
    }
    for (const auto& line : prediction.beside)
        if (const Ingredient* food = knowledge.ingredient(line.ingredient)) {
            std::string text = named(*food, {}, {}, true, knowledge);
            if (!contains(all, text)) all.push_back(std::move(text));
        }
    return all;
}

}  // namespace

std::string label_of(const Prediction& prediction, const Knowledge& knowledge, std::string_view rules,
                     const std::vector<std::string>& of_raw_milk) {
    const RuleSet* chosen = knowledge.rules(rules);
    const bool has_list = chosen && !chosen->allergens.empty();
    const bool sulphites = std::any_of(prediction.allergens.begin(), prediction.allergens.end(), [&](const AllergenText& a) {
        const auto wants = [&](const auto& declared) { return declared.first == rules; };
        return a.sure && a.allergen == sulphite_class && (!has_list || std::any_of(a.declare.begin(), a.declare.end(), wants));
    });
    std::vector<Item> items;
    // Only what reads alike to the last allergen is one ingredient.
    const auto add = [&](const Ingredient& ingredient, const std::string& called, const std::vector<Declared>& declared, double grams) {
        std::string text = named(ingredient, called, declared, sulphites, knowledge);
        if (contains(of_raw_milk, ingredient.id)) text = with_raw_milk(text, ingredient.tissue);
        const auto same = std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.text == text; });
        if (same == items.end()) items.push_back({text, grams});
        else same->grams += grams;
    };
    std::vector<std::string> perhaps;
    const auto may_hold = [&](const PredictedLine& line) {  // told by the packet, and no part of the food
        std::vector<Declared> held;
        for (const auto& one : line.declared) {
            if (!is_only_of_contact(one.words, one.allergen, knowledge)) {
                held.push_back(one);
                continue;
            }
            std::string text = in_capitals(allergen_name(one.allergen, knowledge));
            if (!contains(perhaps, text)) perhaps.push_back(std::move(text));
        }
        return held;
    };
    const Ingredient* water = knowledge.ingredient("water");
    for (const auto& [line, ingredient] : present(prediction, knowledge)) {
        // What dry goods soak up goes into the mass as water, and counts as water.
        const bool soaked = water && ingredient->tissue == Tissue::dry && line->grams > line->weighed_g;
        const std::string called = line->name == ingredient->names.front() ? std::string() : line->name;
        add(*ingredient, called, may_hold(*line), soaked ? line->weighed_g : line->grams);
        if (soaked) add(*water, {}, {}, line->grams - line->weighed_g);
    }
    std::stable_sort(items.begin(), items.end(), [](const Item& a, const Item& b) { return a.grams > b.grams; });
    std::vector<std::string> names;
    for (const auto& item : items) names.push_back(item.text);
    const auto around = around_the_mass(prediction, knowledge);
    auto told = told_parts(prediction.declared, knowledge);  // in no line, so that no weight gives it a place
    // What only shares a fryer with it is no ingredient.
    constexpr std::string_view contact = "may contain ";
    const auto shared = std::stable_partition(told.begin(), told.end(), [&](const auto& part) { return !part.starts_with(contact); });
    for (auto part = shared; part != told.end(); ++part) perhaps.push_back(part->substr(contact.size()));
    told.erase(shared, told.end());
    for (const auto& named : prediction.read_as)  // what the method may add, in no line either
        if (named.kind == ReasonKind::allergen_beside && knowledge.allergen(named.role)) {
            std::string text = in_capitals(allergen_name(named.role, knowledge)) + " (\"" + named.about + "\")";
            if (!contains(perhaps, text)) perhaps.push_back(std::move(text));
        }
    return listed(names) + (around.empty() ? "" : "; beside the mass: " + listed(around)) +
           (told.empty() ? "" : "; by the formula's own words: " + listed(told)) +
           (perhaps.empty() ? "" : ". May contain: " + listed(perhaps));
}

}  // namespace standin
