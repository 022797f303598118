#include "formula/prepared_text.hpp"

#include <algorithm>

#include "base/names.hpp"
#include "formula/measures.hpp"
#include "formula/number_text.hpp"
#include "knowledge/effects.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_name = 5;  // words
constexpr double unchanged = 0.97;       // yields from here on count as no change of mass

class PreparedReader {
public:
    PreparedReader(const std::vector<Word>& words, std::size_t last, const LineContext& context, const Ingredient& ingredient, Given given)
        : words_(words), last_(last), context_(context), ingredient_(ingredient), given_(given) {}

    Result<SaidOf> read(std::size_t first) {
        for (std::size_t i = first; i < last_;) {
            const std::size_t end = step(i);
            if (end == i) return trouble(i);
            for (; i < end; ++i) said_.words.push_back(words_[i].folded);
        }
        return std::move(said_);
    }

private:
    // The end of what starts at word `i`; `i` itself when nothing known does.
    std::size_t step(std::size_t i) {
        if (const std::size_t end = preparation(i); end > i) return end;
        if (const std::size_t count = cut_word(words_, i)) return std::min(i + count, last_);
        if (const std::size_t count = passable(words_, i)) return std::min(i + count, last_);
        return counts_nothing(words_[i].folded) || names_it_again(words_[i].folded) ? i + 1 : i;
    }

    // "pork fatback", "serrano peppers", "lamb shoulder of lamb": the animal, or a word out of another of its names.
    bool names_it_again(const std::string& word) const {
        if (ingredient_.meat && spelling(ingredient_.meat->species) == word) return true;
        return std::any_of(ingredient_.names.begin(), ingredient_.names.end(),
                           [&](const std::string& name) { return (" " + fold(name) + " ").find(" " + word + " ") != std::string::npos; });
    }

    bool counts_nothing(const std::string& word) const {
        const bool leaf = ingredient_.tissue == Tissue::thin_leaf || ingredient_.tissue == Tissue::thick_leaf;
        if (given_ != Given::number && leaf && (word == "leaf" || word == "green")) return true;
        if (ingredient_.tissue == Tissue::chile_flesh && (word == "pepper" || word == "chile" || word == "chili" || word == "chilli"))
            return true;
        const Unit* unit = given_ == Given::weight ? unit_named(word) : nullptr;
        return unit && (is_container(*unit) || unit->word == "piece" || unit->word == "leaf");
    }

    std::size_t preparation(std::size_t i) {
        const std::size_t end = preparation_end(words_, i, last_, context_.knowledge);
        if (end == i) return i;
        const Preparation* found = context_.knowledge.preparation_named(phrase(words_, i, end));
        if (!effect_on(*found, ingredient_.tissue)) return i;
        Prepared prepared{found->id, std::nullopt};
        const std::size_t after = duration(end, prepared);
        if (found->id != "raw") said_.prepared.push_back(std::move(prepared));
        return after;
    }

    std::size_t duration(std::size_t i, Prepared& prepared) const {
        if (i >= last_) return i;
        Cursor cursor(context_.line, words_[i].begin);
        cursor.eat_word("for");
        prepared.minutes = minutes_at(cursor);
        while (prepared.minutes && i < last_ && words_[i].begin < cursor.at()) ++i;
        return i;
    }

    Failure trouble(std::size_t i) const {
        const auto& knowledge = context_.knowledge;
        const std::string where = context_.origin.at(words_[i].begin);
        if (const std::size_t end = preparation_end(words_, i, last_, knowledge); end > i)
            return failure(Trouble::bad_data, "\"" + phrase(words_, i, end) + "\" is not done to " + ingredient_.names.front(), where,
                           fitting());
        for (std::size_t end = std::min(last_, i + longest_name); end > i; --end)
            if (knowledge.ingredient_named(phrase(words_, i, end)))
                return failure(Trouble::bad_data,
                               "two ingredients in one line, " + ingredient_.names.front() + " and " + phrase(words_, i, end), where,
                               {"give each a line, or name one of them"});
        if (words_[i].folded == "or")
            return failure(Trouble::bad_data, "\"or\" leaves open which ingredient or amount is meant", where, {"write the one you use"});
        auto hints = knowledge.nearest_preparations(words_[i].raw);
        for (auto& name : knowledge.nearest_ingredients(words_[i].raw + " " + ingredient_.names.front()))
            if (hints.size() < 5) hints.push_back(std::move(name));
        return failure(Trouble::bad_data,
                       "unknown word \"" + words_[i].raw + "\" beside " + ingredient_.names.front() + ": expected a preparation", where,
                       std::move(hints));
    }

    std::vector<std::string> fitting() const {
        std::vector<std::string> names;
        for (const auto& preparation : context_.knowledge.records().preparations)
            if (const auto* effect = effect_on(preparation, ingredient_.tissue); names.size() < 6 && effect && !effect->tissues.empty())
                names.push_back(preparation.names.front());
        return names;
    }

    const std::vector<Word>& words_;
    std::size_t last_;
    const LineContext& context_;
    const Ingredient& ingredient_;
    Given given_;
    SaidOf said_;
};

}  // namespace

Result<SaidOf> read_prepared(const std::vector<Word>& words, std::size_t first, std::size_t last, const LineContext& context,
                             const Ingredient& ingredient, Given given) {
    return PreparedReader(words, last, context, ingredient, given).read(first);
}

bool changes_nothing(const Prepared& prepared, const Ingredient& ingredient, const Knowledge& knowledge) {
    const Preparation* preparation = knowledge.preparation(prepared.preparation);
    const PreparationEffect* effect = preparation ? effect_on(*preparation, ingredient.tissue) : nullptr;
    if (!effect || preparation->denatures) return false;
    if (effect->water_left) return false;
    return std::all_of(effect->yield.begin(), effect->yield.end(),
                       [](const Point& point) { return point.value.mid >= unchanged && point.value.mid <= 1 / unchanged; });
}

std::size_t preparation_end(const std::vector<Word>& words, std::size_t first, std::size_t last, const Knowledge& knowledge) {
    for (std::size_t end = std::min(last, first + longest_name); end > first; --end)
        if (words[end - 1].segment == words[first].segment && knowledge.preparation_named(phrase(words, first, end))) return end;
    return first;
}

}  // namespace standin
