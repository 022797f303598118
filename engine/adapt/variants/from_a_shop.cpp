#include "adapt/variants/from_a_shop.hpp"

#include <algorithm>

#include "adapt/moves/food_price.hpp"
#include "adapt/variants/variant.hpp"
#include "knowledge/index/kinds.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

class Shopping {
public:
    Shopping(const Formula& formula, const Stock& stock, const SwapGraph& graph, const Context& context)
        : formula_(formula), stock_(stock), graph_(graph), context_(context), price_(formula, stock, context) {}

    std::optional<Reason> for_line(std::size_t l) const {
        const auto may_buy = [&](const Ingredient& i) { return any_shop_has(i); };
        const Candidate* best = nullptr;
        const auto all = candidates_for(formula_, l, graph_, context_.nominal(), may_buy).fit;
        for (const auto& candidate : all)
            if (is_usual(candidate) && (!best || candidate.closeness > best->closeness)) best = &candidate;
        const Line& line = formula_.lines[l];
        const Ingredient& own = food(line.ingredient);
        const bool sold = !stock_.offer(own).excluded && !belongs(own, "gathered", context_.knowledge()) &&
                          !belongs(own, "seldom-sold", context_.knowledge());
        if (!best && !sold) return std::nullopt;
        if (!best) {
            Reason itself = make_reason(ReasonKind::so_much_on_hand);
            itself.about = name(line.ingredient);
            itself.figures = {{"itself", {}, kitchen_grams(line.grams.mid, false), "g"}};
            return itself;
        }
        Reason reason;
        reason.kind = ReasonKind::so_much_on_hand;
        reason.about = name(formula_.lines[l].ingredient);
        reason.foods = {name(best->food.ingredient)};
        reason.figures = {{"to buy", {}, kitchen_grams(best->food.grams.mid, false), "g"}};
        if (best->partner) {
            reason.foods.push_back(name(best->partner->food.ingredient));
            reason.figures.push_back({"beside", {}, kitchen_grams(best->partner->food.grams.mid, false), "g"});
        }
        if (sold) reason.figures.push_back({"itself", {}, kitchen_grams(line.grams.mid, false), "g"});
        return reason;
    }

private:
    const Ingredient& food(const std::string& id) const { return *context_.knowledge().ingredient(id); }
    std::string name(const std::string& id) const { return food(id).names.front(); }

    static bool is_usual(const Candidate& candidate) {
        constexpr double near = 0.5;  // closeness; judgement
        return candidate.of_custom() && candidate.closeness >= near;
    }

    bool any_shop_has(const Ingredient& i) const {
        if (stock_.offer(i).excluded || stock_.says_missing(i.id) || stock_.in_doubt(i.id)) return false;
        if (stock_.names(i.id)) return false;  // it is on the list, whatever it was taken for
        if (belongs(i, "gathered", context_.knowledge()) || belongs(i, "seldom-sold", context_.knowledge())) return false;
        return price_.of_allergens(i) <= 0;
    }

    const Formula& formula_;
    const Stock& stock_;
    const SwapGraph& graph_;
    const Context& context_;
    FoodPrice price_;
};

// Cabbage for spinach stands in for the leaf and brings none of its green: that is as good as gone.
bool hardly_made_up_for(const Line& line, const Variant& variant, const Context& context) {
    constexpr double hardly = 0.25;  // of its dose; judgement
    const Role role = context.knowledge().ingredient(line.ingredient)->roles.front();
    const double asked = dose_of(context.nominal().unit(line), role) * line.grams.mid;
    double brought = 0;
    bool any = false;
    for (const auto& edit : variant.edits) {
        if (edit.line != line.ingredient || (edit.kind != EditKind::replace && edit.kind != EditKind::split)) continue;
        Line food;
        food.ingredient = edit.with;
        brought += dose_of(context.nominal().unit(food), role) * edit.grams_after;
        any = true;
    }
    return any && role == Role::green && brought < hardly * asked;
}

}  // namespace

std::vector<Reason> from_a_shop(const Variant& first, const Formula& formula, const Stock& stock, const SwapGraph& graph,
                                const Context& context) {
    constexpr std::size_t most_told = 4;
    std::vector<Reason> all;
    if (!stock.listed()) return all;
    const Shopping shopping(formula, stock, graph, context);
    for (std::size_t l = 0; l < formula.lines.size() && all.size() < most_told; ++l) {
        const std::string& id = formula.lines[l].ingredient;
        const bool gone = stock.says_missing(id) || stock.offer(*context.knowledge().ingredient(id)).excluded;
        const auto leaves_out = [&](const Edit& e) { return e.kind == EditKind::omit && e.line == id; };
        const bool lost = std::any_of(first.edits.begin(), first.edits.end(), leaves_out);
        if (!gone || (!lost && !hardly_made_up_for(formula.lines[l], first, context))) continue;
        if (auto reason = shopping.for_line(l)) all.push_back(std::move(*reason));
    }
    return all;
}

}  // namespace standin
