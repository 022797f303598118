#include "adapt/variants/still_short.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "adapt/goals/proportions.hpp"
#include "adapt/variants/variant.hpp"
#include "core/contains.hpp"
#include "evaluate/batch.hpp"
#include "models/colour.hpp"
#include "models/colour_words.hpp"
#include "standin/narrate.hpp"

namespace standin {
namespace {

constexpr int halvings = 20;

class StillShort {
public:
    StillShort(const Formula& variant, const Distance& distance, const Prediction& predicted, const Context& context)
        : variant_(variant), goals_(distance.goals()), predicted_(predicted), context_(context) {}

    std::vector<Reason> all() const {
        std::vector<Reason> all;
        if (auto acid = acid_to_hold()) all.push_back(std::move(*acid));
        if (auto green = not_green()) all.push_back(std::move(*green));
        return all;
    }

private:
    const Ingredient& food(const Line& line) const { return *context_.knowledge().ingredient(line.ingredient); }
    State state(const Formula& formula) const { return NominalBatch(formula, context_.nominal()).state(); }

    bool asks_sourer() const { return any_asks(goals_, Property::sourness_mmol_kg, Goal::Kind::at_least); }

    bool about_acid() const {
        return any_asks(goals_, Property::sourness_mmol_kg, Goal::Kind::at_most) || asks_sourer() ||
               any_asks(goals_, Property::ph, Goal::Kind::at_least) || any_asks(goals_, Property::bind, Goal::Kind::at_least);
    }

    // As a number; a word leaves open how much further it goes.
    bool has_the_bind_asked_for() const {
        constexpr double as_shown = 0.02;  // of the number: the middle of the draws and the draw that decides lie so near
        const auto of_bind = [](const Goal& goal) { return goal.property == Property::bind && goal.kind == Goal::Kind::at_least; };
        return std::any_of(goals_.begin(), goals_.end(), of_bind) && std::all_of(goals_.begin(), goals_.end(), [&](const Goal& goal) {
                   return goal.condition && shortfall(goal, predicted_.properties[goal.property].mid, 0) <= as_shown * std::abs(goal.limit);
               });
    }

    // All acids by the same share, as far as the meat then holds.
    std::optional<Reason> acid_to_hold() const {
        constexpr double worth = 0.02;  // pH; nearer than that no meter tells
        const double holds_from = context_.constant("mend.ph.enough");
        if (!about_acid() || has_the_bind_asked_for()) return std::nullopt;
        if (predicted_.properties[Property::ph].mid >= holds_from - worth) return std::nullopt;
        const auto sour = [&](const Line& line) { return food(line).roles.front() == Role::acid; };
        if (std::none_of(variant_.lines.begin(), variant_.lines.end(), sour)) return std::nullopt;
        const auto with = [&](double share) {
            Formula less = variant_;
            for (auto& line : less.lines)
                if (sour(line)) line.grams.mid *= share;
            return state(less).properties[Property::ph];
        };
        Reason reason = make_reason(ReasonKind::acid_to_hold, {{"pH", std::nullopt, holds_from, ""}});
        if (asks_sourer()) reason.role = "more";
        constexpr double some = 0.05;
        if (with(some) < holds_from) return reason;
        double low = some, high = 1;
        for (int i = 0; i < halvings; ++i) {
            const double middle = (low + high) / 2;
            (with(middle) < holds_from ? high : low) = middle;
        }
        for (const auto& line : variant_.lines)
            if (sour(line))
                reason.figures.push_back({food(line).names.front(), line.grams.mid, kitchen_grams(low * line.grams.mid, true), "g"});
        return reason;
    }

    bool is_green(const State& state, std::string_view word) const {
        return called_green(word) || state.properties[Property::hue_deg] >= context_.constant("colour.green.hue");
    }

    std::optional<Reason> not_green() const {
        if (!any_asks(goals_, Property::greenness, Goal::Kind::at_least)) return std::nullopt;
        if (is_green(state(variant_), predicted_.rested.word)) return std::nullopt;
        const Line leaf = main_leaf();
        const auto with = [&](double grams) {
            Formula more = variant_;
            std::erase_if(more.lines, [&](const Line& line) { return line.ingredient == leaf.ingredient; });
            more.lines.push_back(leaf);
            more.lines.back().grams = {grams, grams, grams};
            return more;
        };
        // By the word that the page will have for it.
        const auto green = [&](double grams) { return called_green(colour_word(state(with(grams)).rested, Doneness::raw)); };
        const double batch = NominalBatch(variant_, context_.nominal()).total()[Amount::mass];
        double high = Proportions(variant_, context_).paste * batch, low = 0;
        if (!green(high)) return make_reason(ReasonKind::not_green_yet);
        for (int i = 0; i < halvings; ++i) {
            const double middle = (low + high) / 2;
            (green(middle) ? high : low) = middle;
        }
        const double share =
            100 * high * context_.nominal().unit(leaf)[Amount::mass] / NominalBatch(with(high), context_.nominal()).total()[Amount::mass];
        return make_reason(ReasonKind::not_green_yet,
                           {{"leaf", std::nullopt, kitchen_grams(high, false), "g"}, {"share", std::nullopt, share, "%"}},
                           {food(leaf).names.front()});
    }

    // The leaf of which there is most, or spinach, which every market has; as it keeps its green.
    Line main_leaf() const {
        Line leaf;
        leaf.ingredient = "spinach";
        double most = 0;
        for (const auto& line : variant_.lines)
            if (food(line).roles.front() == Role::green && food(line).chlorophyll && !contains(food(line).roles, Role::herb) &&
                line.grams.mid > most) {
                most = line.grams.mid;
                leaf.ingredient = line.ingredient;
            }
        leaf.prepared = {{"blanched", 1.0}, {"squeezed", std::nullopt}};
        return leaf;
    }

    const Formula& variant_;
    const std::vector<Goal>& goals_;
    const Prediction& predicted_;
    const Context& context_;
};

}  // namespace

std::vector<Reason> what_is_still_short(const Formula& variant, const Distance& distance, const Prediction& predicted,
                                        const Context& context) {
    return StillShort(variant, distance, predicted, context).all();
}

}  // namespace standin
