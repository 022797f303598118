#include "mend/of_the_list.hpp"

#include <algorithm>

#include "adapt/variants/variant.hpp"
#include "core/words.hpp"
#include "safety/left_out_words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

template <class Which>
const Ingredient* on_the_list(const Stock& stock, Which which) {
    for (const auto& food : stock.knowledge().records().ingredients) {
        const Offer offer = stock.offer(food);
        if (stock.names(food.id) && offer.on_hand && !offer.excluded && which(food)) return &food;
    }
    return nullptr;
}

std::string filled(std::string text, const Ingredient& food, double grams, const Stock& stock) {
    if (const Offer offer = stock.offer(food); offer.grams) grams = std::min(grams, *offer.grams);
    replace_all(text, "{amount}", fixed_text(kitchen_grams(grams, false), 0) + " g");
    replace_all(text, "{food}", food.names.front());
    return text;
}

}  // namespace

void tell_of_the_list(std::vector<TastedWord>& words, const std::vector<Meant>& tastes, double mass_g, const Mending& mending,
                      const Stock& stock) {
    constexpr double sweet_g_per_kg = 3, dish_share = 0.1;  // judgement
    const auto is_sweet = [](const Ingredient& food) { return food.roles.front() == Role::sweet; };
    const auto is_dish = [](const Ingredient& food) {
        return food.roles.front() == Role::binder && food.tissue != Tissue::dry && food.tissue != Tissue::egg && food.allergens.empty();
    };
    const Ingredient *sweet = on_the_list(stock, is_sweet), *dish = on_the_list(stock, is_dish);
    const auto say = [](std::string& practice, const std::string& more) { practice += (practice.empty() ? "" : " ") + more; };
    for (std::size_t w = 0; w < std::min(words.size(), tastes.size()); ++w) {
        std::string& practice = words[w].practice;
        if (sweet && practice.find("sugar") != std::string::npos)
            say(practice, filled(mending.sweet, *sweet, sweet_g_per_kg * mass_g / 1000, stock));
        if (dish && asks_less(tastes[w])) say(practice, filled(mending.dish, *dish, dish_share * mass_g, stock));
    }
}

void leave_out_of_advice(MendAnswer& answer, const Formula& mass, const Stock& stock) {
    const auto may_be_named = [&](const Ingredient& food) { return may_name(stock, mass, food); };
    const auto clean = [&](std::string& text) { text = without_what_is_left_out(text, may_be_named, stock.knowledge()); };
    for (auto& word : answer.words) clean(word.practice);
    for (auto& cause : answer.causes) clean(cause.does);
    for (auto* steps : {&answer.fold, &answer.plain})
        for (auto& step : *steps) clean(step);
    for (auto* steps : {&answer.fold, &answer.plain}) std::erase_if(*steps, [](const std::string& step) { return step.empty(); });
}

}  // namespace standin
