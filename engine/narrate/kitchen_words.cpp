#include "narrate/kitchen_words.hpp"

#include <algorithm>
#include <array>

#include "core/names.hpp"
#include "narrate/quantity.hpp"
#include "standin/number_text.hpp"

namespace standin {

bool loss_in_the_pan(const KitchenFact& fact) {
    const std::string written = fold(fact.written);
    constexpr std::array ways{"pan loss", "pan lose", "pan take", "in the pan", "frying", "fried"};
    return std::any_of(ways.begin(), ways.end(), [&](const char* way) { return written.find(way) != std::string::npos; });
}

namespace {

std::string with_article(const std::string& word) {
    const bool vowel = !word.empty() && std::string("aeiou").find(word.front()) != std::string::npos;
    return (vowel ? "an " : "a ") + word;
}

std::string food_of(const KitchenFact& fact, const Knowledge& knowledge) {
    if (fact.foods.empty()) return {};
    const auto* food = knowledge.ingredient(fact.foods.front());
    if (fact.foods.size() > 1 && food && food->meat) return std::string(spelling(food->meat->species));
    return food ? food->names.front() : fact.foods.front();
}

std::string said(const KitchenFact& fact, const Knowledge& knowledge) {
    const std::string food = food_of(fact, knowledge), value = exact_text(fact.value.mid);
    switch (fact.kind) {
        case KitchenKind::fat:
            return "this " + food + " has " + value + " % fat";
        case KitchenKind::ph:
            return "this " + food + " has pH " + value;
        case KitchenKind::acid:
            return "this " + food + " holds " + value + " % acid";
        case KitchenKind::heat:
            return "this year's " + food + " holds " + three_figures(fact.value.mid) + " mg/kg of capsaicinoids";
        case KitchenKind::measure:
            return with_article(fact.measure) + " of " + food + " weighs " + trimmed_text(fact.value.mid, 1) + " g";
        case KitchenKind::edible:
            return value + " % of " + food + " is left when it is trimmed";
        case KitchenKind::scale:
            return "the scale shows steps of " + value + " g";
        case KitchenKind::pan_loss:
            return (fact.formula.empty() ? "this sausage" : fact.formula) + " loses " + value +
                   (loss_in_the_pan(fact) ? " % in the pan" : " % on cooking");
        case KitchenKind::batch_ph:
            return (fact.formula.empty() ? "the batch as made" : fact.formula) + " has pH " + value;
        case KitchenKind::pan_fat:
            return (fact.formula.empty() ? "this sausage" : fact.formula) + " leaves " + value + " % of its raw weight as fat in the pan";
        case KitchenKind::raw_lightness:
        case KitchenKind::cooked_lightness:
            return (fact.formula.empty() ? "the batch as made" : fact.formula) + " has L* " + value +
                   (fact.kind == KitchenKind::raw_lightness ? " raw" : " cooked");
        case KitchenKind::like:
            return fact.called + " is not known here: reckoned as " + food +
                   ", with wider bands. Whether it is safe to eat, and its allergens, are yours to check and to declare";
    }
    return {};
}

}  // namespace

std::string kitchen_words(const KitchenFact& fact, const std::string& file, const Knowledge& knowledge) {
    return file + ": " + said(fact, knowledge);
}

std::string pan_loss_unused(const KitchenFact& fact, const std::string& file) {
    return file + ": the " + (fact.kind == KitchenKind::pan_fat ? "fat" : "loss") + " in the pan is not used, as this one is not fried";
}

std::string contradicts(const KitchenFact& fact, const std::string& file, const Band& foretold) {
    const bool loss = fact.kind == KitchenKind::pan_loss || fact.kind == KitchenKind::pan_fat;
    const bool light = fact.kind == KitchenKind::raw_lightness || fact.kind == KitchenKind::cooked_lightness;
    const std::string what = fact.kind == KitchenKind::pan_loss  ? "a loss of "
                             : fact.kind == KitchenKind::pan_fat ? "fat in the pan of "
                             : light                             ? "a lightness of "
                                                                 : "a batch pH of ";
    return file + ": " + what + exact_text(fact.value.mid) + (loss ? " %" : "") +
           " is more than what is known of such a mass allows; the figures here reach " + fixed_text(foretold.low, loss || light ? 0 : 2) +
           " to " + fixed_text(foretold.high, loss || light ? 0 : 2) + (loss ? " %: weigh once more" : ": measure once more");
}

}  // namespace standin
