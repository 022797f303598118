#include "safety/label.hpp"

#include <algorithm>
#include <vector>

#include "core/names.hpp"
#include "safety/allergens.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

struct Item {
    const Ingredient* ingredient;
    std::string name;
    double grams;
};

// Whatever its grain, salt is called salt, and ice water.
std::string common_name(const Ingredient& ingredient) {
    if (ingredient.id == "ice") return "water";
    return ingredient.family == "salts" && ingredient.id.ends_with("-salt") ? "salt" : ingredient.names.front();
}

// A word in a text with its place.
struct Word {
    std::size_t start, size;
    std::string folded;
};

std::vector<Word> words_of(std::string_view text) {
    std::vector<Word> words;
    for (std::size_t start = 0; start < text.size();) {
        const auto end = std::min(text.find_first_of(" -,/", start), text.size());
        if (end > start) words.push_back({start, end - start, fold(text.substr(start, end - start))});
        start = end + 1;
    }
    return words;
}

void raise_letters(std::string& text, const Word& from, const Word& to) {
    for (std::size_t i = from.start; i < to.start + to.size; ++i)
        if (text[i] >= 'a' && text[i] <= 'z') text[i] = static_cast<char>(text[i] - 'a' + 'A');
}

// "wheat flour" to "WHEAT flour", "soybeans" to "SOYBEANS"; false where the text has no word for the class.
bool set_off(std::string& text, std::string_view allergen) {
    const auto sought = words_of(allergen);
    const auto words = words_of(text);
    bool found = false;
    for (std::size_t i = 0; i + sought.size() <= words.size(); ++i) {
        bool same = true;
        for (std::size_t k = 0; k < sought.size(); ++k)
            same = same && words[i + k].folded.compare(0, sought[k].folded.size(), sought[k].folded) == 0;
        if (!same) continue;
        raise_letters(text, words[i], words[i + sought.size() - 1]);
        found = true;
    }
    return found;
}

std::string in_capitals(std::string_view allergen) {
    std::string text;
    for (const auto& word : words_of(allergen)) text += (text.empty() ? "" : " ") + std::string(allergen.substr(word.start, word.size));
    set_off(text, allergen);
    return text;
}

std::string named(const Ingredient& ingredient, bool with_sulphites) {
    auto allergens = ingredient.allergens;
    if (with_sulphites && ingredient.sulphites && ingredient.sulphites->band.high > 0) allergens.emplace_back("sulphites");
    std::string name = common_name(ingredient);
    auto parts = ingredient.label;
    for (const auto& allergen : allergens) {
        bool said = set_off(name, allergen);
        for (auto& part : parts) said = set_off(part, allergen) || said;
        if (!said) parts.push_back((ingredient.label.empty() ? "" : "contains ") + in_capitals(allergen));
    }
    return parts.empty() ? name : name + " (" + listed(parts) + ")";
}

}  // namespace

std::string label_of(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<Item> items;
    const auto add = [&](const Ingredient& ingredient, double grams) {
        const std::string name = common_name(ingredient);
        const auto same = std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.name == name; });
        if (same == items.end()) items.push_back({&ingredient, name, grams});
        else same->grams += grams;
    };
    const Ingredient* water = knowledge.ingredient("water");
    for (const auto& [line, ingredient] : present(prediction, knowledge)) {
        // What dry goods soak up goes into the mass as water, and counts as water.
        const bool soaked = water && ingredient->tissue == Tissue::dry && line->grams > line->weighed_g;
        add(*ingredient, soaked ? line->weighed_g : line->grams);
        if (soaked) add(*water, line->grams - line->weighed_g);
    }
    std::stable_sort(items.begin(), items.end(), [](const Item& a, const Item& b) { return a.grams > b.grams; });
    const bool sulphites = std::any_of(prediction.allergens.begin(), prediction.allergens.end(),
                                       [](const AllergenText& a) { return a.allergen == sulphite_class; });
    std::vector<std::string> names;
    for (const auto& item : items) names.push_back(named(*item.ingredient, sulphites));
    return listed(names);
}

}  // namespace standin
