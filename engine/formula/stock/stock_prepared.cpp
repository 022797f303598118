#include "formula/stock/stock_prepared.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/food/name_text.hpp"
#include "formula/food/prepared_text.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/words/changes_nothing.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// Where "with its leaves" begins and ends among the words.
struct Clause {
    std::size_t first = 0, last = 0;
    bool leaf = true;
};

std::optional<Clause> with_clause(const std::vector<Word>& words, const Knowledge& knowledge) {
    for (std::size_t i = 1; i + 1 < words.size(); ++i) {
        const bool with = words[i].folded == "with" || words[i].folded == "w" || (words[i].folded == "and" && i > 0);
        if (!with) continue;
        std::size_t part = i + 1;
        while (part + 1 < words.size() && knowledge.in_list(WordList::stock_of_plant, words[part].folded)) ++part;
        const bool leaf = knowledge.in_list(WordList::stock_leaf_part, words[part].folded),
                   other = knowledge.in_list(WordList::stock_other_part, words[part].folded);
        const bool owned = part > i + 1;  // "and the leaves"; "and leaves" may be another food
        if ((!leaf && !other) || (words[i].folded == "and" && !owned)) continue;
        std::size_t last = part + 1;
        while (last < words.size() && words[last].segment == words[part].segment &&
               knowledge.in_list(WordList::stock_of_plant, words[last].folded))
            ++last;
        return Clause{i, last, leaf};
    }
    return std::nullopt;
}

}  // namespace

std::optional<double> picked_for(const std::vector<Prepared>& steps, const Ingredient& ingredient, const Knowledge& knowledge) {
    const bool another_risk = ingredient.meat || ingredient.tissue == Tissue::egg || ingredient.tissue == Tissue::meat;
    double came_of = 1;
    for (const auto& step : steps) {
        if (changes_nothing(step, ingredient, knowledge)) continue;
        if (another_risk) return std::nullopt;
        const Preparation* preparation = knowledge.preparation(step.preparation);
        const PreparationEffect* effect = preparation ? effect_on(*preparation, ingredient.tissue) : nullptr;
        if (!effect || effect->water_left || effect->yield.empty() || effect->adds_salt > 0 || effect->adds_acetic_mmol > 0)
            return std::nullopt;
        const double yield = at_minutes(effect->yield, step.minutes ? step.minutes : preparation->minutes).mid;
        if (yield <= 0) return std::nullopt;
        came_of /= yield;
    }
    return came_of;
}

std::vector<Prepared> done_already(const std::vector<Prepared>& steps, const Ingredient& ingredient, const Knowledge& knowledge) {
    std::vector<Prepared> done;
    for (const auto& step : steps) {
        const Preparation* preparation = knowledge.preparation(step.preparation);
        if (preparation && preparation->minutes && effect_on(*preparation, ingredient.tissue)) done.push_back(step);
    }
    return done;
}

std::optional<WithPart> with_part(std::string_view line, const Knowledge& knowledge) {
    const auto without = [&](const std::string& text) -> std::optional<WithPart> {
        const auto words = words_of(text);
        const auto clause = with_clause(words, knowledge);
        if (!clause) return std::nullopt;
        std::string rest = text.substr(0, words[clause->first - 1].end) + text.substr(words[clause->last - 1].end);
        return WithPart{std::move(rest), clause->leaf};
    };
    if (auto plain = without(std::string(line))) return plain;
    for (const auto& english : in_english(line, knowledge))
        if (english.foreign)
            if (auto found = without(english.text)) return found;
    return std::nullopt;
}

const Ingredient* leaves_of(const Ingredient& food, const Knowledge& knowledge) {
    for (const auto& name : food.names) {
        std::string plant = fold(name);
        for (const std::string_view organ : {" bulb", " root", " stalk", " stick"})
            if (plant.ends_with(organ)) plant.erase(plant.size() - organ.size());
        for (const std::string_view leaf : {" leaf", " greens", " frond", " tops", " leaves", " fronds"})
            if (const auto* found = known_ingredient(plant + std::string(leaf), knowledge); found && found != &food) return found;
    }
    return nullptr;
}

}  // namespace standin
