#include "mend/cold_fat.hpp"

#include <algorithm>

#include "core/band.hpp"
#include "core/has_food.hpp"
#include "evaluate/batch.hpp"
#include "knowledge/index/kinds.hpp"

namespace standin {
namespace {

constexpr double lean_below = 15;  // % fat of the mass; common practice
constexpr double mostly_fat = 30;  // g in 100 g: back fat, suet, skin; judgement

bool is_firm_fat(const Ingredient& food) {
    return food.meat && food.roles.front() == Role::fat && food.composition.fat.mid >= mostly_fat && food.already.empty();
}

class Choosing {
public:
    Choosing(const Formula& mass, const Stock& stock, double grams)
        : mass_(mass), stock_(stock), knowledge_(stock.knowledge()), grams_(grams) {}

    const Ingredient* fat() const {
        const Ingredient* best = nullptr;
        int highest = 0;
        for (const auto& food : knowledge_.records().ingredients) {
            if (!may_be(food)) continue;
            const int its = rank(food);
            if (best && its <= highest) continue;
            best = &food;
            highest = its;
        }
        return best;
    }

private:
    bool of_its_animals(const Ingredient& food) const {
        return std::any_of(mass_.lines.begin(), mass_.lines.end(), [&](const Line& line) {
            const auto& meat = knowledge_.ingredient(line.ingredient)->meat;
            return meat && meat->species == food.meat->species;
        });
    }

    bool may_be(const Ingredient& food) const {
        if (!is_firm_fat(food) || (!stock_.names(food.id) && !of_its_animals(food))) return false;
        if (belongs(food, "seldom-sold", knowledge_) || belongs(food, "gathered", knowledge_)) return false;
        const Offer offer = stock_.offer(food);
        const bool comes = has_food(mass_, food.id) ? offer.on_hand && !offer.excluded : stock_.can_bring(food);
        return comes && (stock_.names(food.id) || food.allergens.empty()) && offer.grams.value_or(grams_) >= grams_;
    }

    // What is in it before what the list names, and that before what makers most name.
    int rank(const Ingredient& food) const {
        constexpr int own = 2000, listed = 1000;
        int named = 0;
        for (const auto& swap : knowledge_.records().swaps) named += swap.role == Role::fat && swap.to == food.id;
        return named + (has_food(mass_, food.id) ? own : stock_.names(food.id) ? listed : 0);
    }

    const Formula& mass_;
    const Stock& stock_;
    const Knowledge& knowledge_;
    double grams_;
};

}  // namespace

void put_cold_fat(Plain& plain, const Formula& mass, const std::vector<Meant>& tastes, const Stock& stock, const Context& context,
                  bool within) {
    double share = 0;
    for (const auto& taste : tastes) share = std::max(share, taste.reading->fat);
    const NominalBatch batch(mass, context.nominal());
    if (!(share > 0) || batch.state().properties[Property::fat_pct] >= lean_below) return;
    double grams = 0;
    for (const auto& line : plain.lines) grams += line.grams.mid * context.nominal().unit(line)[Amount::mass];
    grams *= within ? share : share / (1 - share);
    const Ingredient* food = Choosing(mass, stock, grams).fat();
    if (!food) return;
    for (auto& line : plain.lines) {
        if (!within) break;
        line.grams = exactly((1 - share) * line.grams.mid);
        if (line.count) line.count = (1 - share) * *line.count;
    }
    const auto own = std::find_if(plain.lines.begin(), plain.lines.end(), [&](const Line& line) { return line.ingredient == food->id; });
    if (own != plain.lines.end()) {
        own->grams = exactly(own->grams.mid + grams);
        own->count.reset();
        return;
    }
    Line line;
    line.ingredient = food->id;
    line.grams = exactly(grams);
    plain.lines.push_back(std::move(line));
}

}  // namespace standin
