#include "adapt/batch_size.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "adapt/moves/odd_foods.hpp"
#include "adapt/variants/variant.hpp"
#include "core/band.hpp"
#include "core/contains.hpp"
#include "knowledge/index/swap_graph.hpp"
#include "models/as_bought.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

constexpr double slack = 1e-6;  // share

class Sizing {
public:
    Sizing(const Formula& formula, const Stock& stock, const Context& context)
        : formula_(formula), stock_(stock), context_(context), knowledge_(context.knowledge()) {
        for (const auto& line : formula.lines) need_[line.ingredient] += line.grams.mid * listed_per_gram(line, knowledge_);
    }

    Result<Sized> run(std::optional<double> meat_g, bool as_much) {
        if (meat_g && as_much)
            return failure(Trouble::usage, "a weight of the meat and as much as the list makes exclude each other: give one of them");
        if (meat_g) {
            if (meat() <= 0) return failure(Trouble::usage, "the formula has no meat to scale by", "request.meat");
            factor_ = *meat_g / meat();
            says(ReasonKind::scaled_as_asked, {}, {{"meat", {}, *meat_g, "g"}});
        }
        if (as_much) as_the_list_makes();
        down_to_the_meat();
        down_to_all_lean();
        down_to_the_stand_ins();
        if (std::abs(factor_ - 1) < slack) return Sized{formula_, std::nullopt};
        Sized sized{scaled_formula(), Scaled{factor_, meat(), 0, reason_, in_full(reason_)}};
        for (const auto& line : sized.formula.lines)
            if (is_meat(line)) sized.scaled->meat_after_g += line.grams.mid;
        return sized;
    }

private:
    const Ingredient& ingredient(const Line& line) const { return *knowledge_.ingredient(line.ingredient); }
    bool is_meat(const Line& line) const { return ingredient(line).meat.has_value(); }

    double meat() const {
        double grams = 0;
        for (const auto& line : formula_.lines)
            if (is_meat(line)) grams += line.grams.mid;
        return grams;
    }

    void says(ReasonKind kind, std::vector<std::string> foods, std::vector<Figure> figures) {
        reason_.kind = kind;
        reason_.foods = std::move(foods);
        reason_.figures = std::move(figures);
        reason_.figures.push_back({"batch", {}, 100 * factor_, "%"});
    }

    // Meat, leaves and what holds them make the mass; a pinch that runs out early has a stand-in or is done without.
    static bool carries(const Ingredient& food) {
        const Role role = food.roles.front();
        return food.meat || role == Role::fat || role == Role::green || role == Role::liquid || role == Role::binder;
    }

    // The line of the list that goes least far. What is missing altogether needs a stand-in, whatever the size.
    void as_the_list_makes() {
        std::optional<double> least;
        std::string by;
        double by_g = 0;
        for (const auto& [id, need] : need_) {
            const Offer offer = stock_.offer(*knowledge_.ingredient(id));
            if (!offer.on_hand || !offer.grams || need <= 0 || !carries(*knowledge_.ingredient(id))) continue;
            const double share = *offer.grams / need;
            if (least && share >= *least) continue;
            least = share;
            by = knowledge_.ingredient(id)->names.front();
            by_g = *offer.grams;
        }
        if (!least) return;
        factor_ = *least;
        says(ReasonKind::scaled_to_list, {by}, {{"on hand", {}, by_g, "g"}});
    }

    // Meat of the same role that the list names and the formula has not, or has less of than there is: it can fill up what is short.
    double others(const Ingredient& meat) const {
        double grams = 0;
        for (const auto& other : knowledge_.records().ingredients) {
            const bool fills = (other.meat || meat.roles.front() == Role::fat) && other.roles.front() == meat.roles.front();
            if (!fills || !stock_.names(other.id)) continue;
            const Offer offer = stock_.offer(other);
            if (!offer.on_hand) continue;
            const double there = offer.grams.value_or(std::numeric_limits<double>::infinity());
            if (const auto own = need_.find(other.id); own == need_.end()) grams += stock_.can_bring(other) ? there : 0;
            else if (other.id != meat.id && may_be(meat, {&other})) grams += std::max(0.0, there - own->second * factor_);
        }
        return grams;
    }

    double fat_of(const Ingredient& meat) const { return meat.composition.fat.mid / 100; }

    // Belly where back fat is missing brings lean along: how far lean and fat go together, the lean first of all used up. 0: no such cut.
    double share_with_fat_cuts(const Ingredient& lean) const {
        if (lean.roles.front() != Role::lean) return 0;
        double fat_cut = 0, fat = 0, meat = 0;  // g of the formula's fat that is missing; g fat of it and of the lean
        for (const auto& [id, need] : need_) {
            const Ingredient& food = *knowledge_.ingredient(id);
            if (!food.meat) continue;
            const bool missing = food.roles.front() == Role::fat && !stock_.offer(food).on_hand;
            if (&food != &lean && !missing) return 0;
            if (missing) fat_cut += need * factor_;
            fat += need * factor_ * fat_of(food);
            meat += need * factor_;
        }
        double there = 0, there_fat = 0;
        for (const auto& cut : knowledge_.records().ingredients) {
            const bool fatter = cut.meat && cut.roles.front() == Role::fat && fat_of(cut) > fat_of(lean);
            if (!fatter || need_.count(cut.id) || !stock_.names(cut.id) || !stock_.can_bring(cut) || cured(cut, context_)) continue;
            const auto grams = stock_.offer(cut).grams;
            if (!grams) return 0;
            there += *grams;
            there_fat += *grams * fat_of(cut);
        }
        if (!(fat_cut > 0) || !(there > 0)) return 0;
        const double cut = there_fat / there, target = fat / meat, lean_there = *stock_.offer(lean).grams;
        if (!(cut > target) || !(target > fat_of(lean))) return 0;
        const double of_cut = (target - fat_of(lean)) / (cut - fat_of(lean));  // by the square: share of the meat
        return std::min(lean_there / (meat * (1 - of_cut)), (lean_there + there) / meat);
    }

    void down_to_the_meat() {
        for (const auto& [id, need] : need_) {
            const Ingredient& meat = *knowledge_.ingredient(id);
            if (!meat.meat) continue;
            const Offer offer = stock_.offer(meat);
            if (!offer.on_hand || !offer.grams) continue;
            const double asked = need * factor_, there = *offer.grams + others(meat);
            if (there >= asked * (1 - slack)) continue;
            const double share = std::max(there / asked, share_with_fat_cuts(meat));
            if (meat.roles.front() == Role::fat && share < context_.constant("advice.batch.fat-least")) continue;
            factor_ *= share;
            says(ReasonKind::scaled_to_meat, {meat.names.front()}, {{"on hand", {}, *offer.grams, "g"}, {"asked", {}, asked, "g"}});
        }
    }

    // A cut that is not to be had is made up for by the others, where one of them may stand in for it: what there is of all of them
    // together decides.
    void down_to_all_lean() {
        std::vector<const Ingredient*> cuts, missing;
        double asked = 0, there = 0;
        for (const auto& [id, need] : need_) {
            const Ingredient& meat = *knowledge_.ingredient(id);
            if (!meat.meat || meat.roles.front() != Role::lean) continue;
            const Offer offer = stock_.offer(meat);
            (offer.on_hand ? cuts : missing).push_back(&meat);
            asked += need;
            if (offer.on_hand) there += offer.grams.value_or(std::numeric_limits<double>::infinity());
        }
        if (cuts.empty() || !std::all_of(missing.begin(), missing.end(), [&](const auto* cut) { return may_be(*cut, cuts); })) return;
        there += others(*cuts.front());
        if (missing.empty() || there >= asked * factor_ * (1 - slack)) return;
        factor_ = there / asked;
        std::vector<std::string> names;
        for (const auto* cut : cuts) names.push_back(cut->names.front());
        says(ReasonKind::scaled_to_meat, std::move(names), {{"on hand", {}, there, "g"}, {"asked", {}, asked, "g"}});
    }

    // No cut of the formula is to be had: what the list has of meat that may stand in for it decides.
    void down_to_the_stand_ins() {
        std::vector<const Ingredient*> cuts;
        double asked = 0, there = 0;
        for (const auto& [id, need] : need_) {
            const Ingredient& cut = *knowledge_.ingredient(id);
            if (!cut.meat || cut.roles.front() != Role::lean) continue;
            if (stock_.offer(cut).on_hand) return;
            cuts.push_back(&cut);
            asked += need * factor_;
        }
        std::vector<std::string> names;
        for (const auto& other : knowledge_.records().ingredients) {
            const bool fills = other.meat && other.roles.front() == Role::lean && !need_.count(other.id) && stock_.names(other.id);
            if (!fills || !stock_.can_bring(other)) continue;
            if (std::none_of(cuts.begin(), cuts.end(), [&](const auto* cut) { return may_be(*cut, {&other}); })) continue;
            there += stock_.offer(other).grams.value_or(std::numeric_limits<double>::infinity());
            names.push_back(other.names.front());
        }
        if (names.empty() || there >= asked * (1 - slack)) return;
        factor_ *= there / asked;
        says(ReasonKind::scaled_to_meat, std::move(names), {{"on hand", {}, there, "g"}, {"asked", {}, asked, "g"}});
    }

    bool may_be(const Ingredient& missing, const std::vector<const Ingredient*>& cuts) const {
        const SwapGraph graph(knowledge_);
        const auto paths = graph.from(Role::lean, index_of(knowledge_, missing.id));
        return std::any_of(paths.begin(), paths.end(),
                           [&](const SwapPath& path) { return contains(cuts, &knowledge_.records().ingredients[path.to]); });
    }

    Formula scaled_formula() const {
        Formula scaled = formula_;
        for (auto& line : scaled.lines) {
            const double grams = kitchen_grams(line.grams.mid * factor_, is_meat(line));
            line.grams = standin::scaled(line.grams, line.grams.mid > 0 ? grams / line.grams.mid : factor_);
            if (line.count) line.count = *line.count * factor_;
            line.written.clear();
        }
        return scaled;
    }

    const Formula& formula_;
    const Stock& stock_;
    const Context& context_;
    const Knowledge& knowledge_;
    std::map<std::string, double> need_;  // grams as bought
    double factor_ = 1;
    Reason reason_;
};

}  // namespace

Result<Sized> at_size(const Formula& formula, std::optional<double> meat_g, bool as_much, const Stock& stock, const Context& context) {
    return Sizing(formula, stock, context).run(meat_g, as_much);
}

}  // namespace standin
