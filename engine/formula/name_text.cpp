#include "formula/name_text.hpp"

#include <algorithm>

#include "base/names.hpp"
#include "formula/amount.hpp"
#include "knowledge/effects.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_name = 7;  // words

struct Span {
    const Ingredient* ingredient = nullptr;
    std::size_t first = 0, last = 0;
};

// The longest known name that starts in the first segment with any.
Span find(const std::vector<Word>& words, const Knowledge& knowledge) {
    Span best;
    for (std::size_t first = 0; first < words.size(); ++first) {
        if (best.ingredient && words[first].segment > words[best.first].segment) break;
        for (std::size_t last = std::min(words.size(), first + longest_name); last > first; --last) {
            if (best.ingredient && last - first <= best.last - best.first) break;
            // Over a comma only to the end of what stands behind it: "lean pork, leg", but not "pork, fat and lean".
            const bool cut_off = last < words.size() && words[last].segment == words[last - 1].segment;
            if (words[last - 1].segment != words[first].segment && cut_off) continue;
            if (const auto* found = known_ingredient(phrase(words, first, last), knowledge)) best = {found, first, last};
        }
    }
    return best;
}

// Whether the words behind a comma are a preparation to be done, and not part of the name. Cutting always is; any other only where
// the knowledge has no food of that name ("parsley, dried" and "sage, fresh" are foods of their own, "spinach, blanched" is spinach).
bool is_preparation(const std::vector<Word>& words, std::size_t first, std::size_t last, const Ingredient& ingredient,
                    const Knowledge& knowledge, bool kinds) {
    const std::size_t end = preparation_end(words, first, last, knowledge);
    if (end == first) return false;
    const Preparation& preparation = *knowledge.preparation_named(phrase(words, first, end));
    if (!effect_on(preparation, ingredient.tissue)) return false;
    return !kinds ||
           (preparation.id != "ground" && preparation.id != "raw" && changes_nothing({preparation.id, {}}, ingredient, knowledge));
}

// "pepper, white" is "white pepper" when that is a name; the words leave the line.
void invert(std::vector<Word>& words, Span& span, const Knowledge& knowledge, bool kinds) {
    for (std::size_t first = span.last; first < words.size();) {
        std::size_t last = first + 1;
        while (last < words.size() && words[last].segment == words[first].segment) ++last;
        if (words[first].segment > words[span.first].segment && !is_preparation(words, first, last, *span.ingredient, knowledge, kinds))
            if (const auto* found = known_ingredient(phrase(words, first, last) + " " + phrase(words, span.first, span.last), knowledge)) {
                span.ingredient = found;
                words.erase(words.begin() + static_cast<std::ptrdiff_t>(first), words.begin() + static_cast<std::ptrdiff_t>(last));
                return;
            }
        first = last;
    }
}

const Unit* counted(const Word& word, const Ingredient& ingredient) {
    const Unit* unit = unit_named(word.folded);
    return unit && unit->dimension == Dimension::count && has_measure(ingredient, unit->word) ? unit : nullptr;
}

Failure unknown(const std::vector<Word>& words, const LineContext& context) {
    std::size_t first = words.size(), last = 0;
    for (std::size_t i = 0; i < words.size();) {
        std::size_t end =
            std::max({preparation_end(words, i, words.size(), context.knowledge), i + passable(words, i), i + cut_word(words, i)});
        if (end == i) {
            if (first < words.size() && words[i].segment != words[first].segment) break;
            first = std::min(first, i);
            last = end = i + 1;
        }
        i = end;
    }
    if (first >= last) return failure(Trouble::bad_data, "no ingredient is named in this line", context.origin.start());
    const std::string name = phrase(words, first, last);
    return failure(Trouble::bad_data, "unknown ingredient \"" + name + "\"", context.origin.at(words[first].begin),
                   context.knowledge.nearest_ingredients(name));
}

}  // namespace

const Ingredient* known_ingredient(std::string_view name, const Knowledge& knowledge) {
    if (const auto* found = knowledge.ingredient_named(name)) return found;
    std::string id = fold(name);
    std::replace(id.begin(), id.end(), ' ', '-');
    return knowledge.ingredient(id);
}

Result<NameRead> read_name(const LineContext& context, Given given, bool kinds) {
    auto words = words_of(context.line);
    Span span = find(words, context.knowledge);
    if (!span.ingredient) return unknown(words, context);
    invert(words, span, context.knowledge, kinds);
    NameRead name;
    name.ingredient = span.ingredient;
    for (std::size_t i = span.first; i < span.last && given == Given::number; ++i)
        if (const Unit* unit = counted(words[i], *span.ingredient)) name.measure = unit;
    std::size_t after = span.last;
    if (given == Given::number && after < words.size() && counted(words[after], *span.ingredient))
        name.measure = counted(words[after++], *span.ingredient);
    auto said = read_prepared(words, 0, span.first, context, *span.ingredient, given);
    if (!said) return Failure(std::move(said.error()));
    name.before = std::move(*said);
    said = read_prepared(words, after, words.size(), context, *span.ingredient, given);
    if (!said) return Failure(std::move(said.error()));
    name.after = std::move(*said);
    return name;
}

}  // namespace standin
