#include "mend/causes.hpp"

#include <algorithm>
#include <optional>
#include <set>

#include "core/contains.hpp"
#include "core/words.hpp"
#include "evaluate/batch.hpp"
#include "mend/cause_foods.hpp"
#include "mend/greener.hpp"
#include "models/all_fish.hpp"
#include "safety/conditions.hpp"
#include "safety/core_temperature.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

std::optional<double> said(const std::string& field, const Process& process) {
    if (field == "mixed-at") return process.mixed_at_c;
    if (field == "rest") return process.rest_h;
    if (field == "mixing") return process.mixing_min;
    if (field == "plate") return process.plate_mm;
    return core_said(process);
}

std::string_view spelt(Order order) {
    return order == Order::salt_first ? "salt first" : order == Order::acid_first ? "acid first" : "all together";
}

std::string shown_value(const std::string& field, double value) {
    const std::string text = trimmed_text(value, 1);
    if (field == "mixed-at" || field == "core") return "{" + text + " C}";
    if (field == "rest") return text + (value == 1 ? " hour" : " hours");
    if (field == "mixing") return text + (value == 1 ? " minute" : " minutes");
    return text + " mm";
}

std::string joined_by_and(const std::vector<std::string>& all) {
    std::string text;
    for (std::size_t i = 0; i < all.size(); ++i) text += (i == 0 ? "" : i + 1 == all.size() ? " and " : ", ") + all[i];
    return text;
}

class Looking {
public:
    Looking(const Formula& mass, const MassAsMade& made, const CoreAsked& needed, const Context& context)
        : mass_(mass),
          made_(made),
          state_(made.state(mass)),
          needed_(needed),
          context_(context),
          knowledge_(context.knowledge()),
          batch_(mass, context.nominal()) {}

    std::optional<FoundCause> found(const CauseOfTaste& cause, const Meant& meant) const {
        std::string value;
        for (const auto& when : cause.process) {
            const auto is = said(when.field, mass_.process);
            if (!is && when.unsaid) continue;
            const bool bound = when.below || when.above;
            if (!is || !bound || (when.below && *is >= *when.below) || (when.above && *is <= *when.above)) return std::nullopt;
            if (cause.spare_c > 0 && *is < needed_.core_c + cause.spare_c) return std::nullopt;
            if (value.empty()) value = shown_value(when.field, *is);
        }
        const auto order = mass_.process.order;
        if (!cause.orders.empty() && !(order && contains(cause.orders, spelt(*order)))) return std::nullopt;
        if (!hold(cause.when, state_) || (cause.fish && *cause.fish != all_fish(batch_.total()))) return std::nullopt;
        auto lines = lines_of(cause, mass_, batch_, knowledge_);
        if (!lines) return std::nullopt;
        FoundCause one{&cause,
                       {cause.id, meant.taste.written, cause.says, cause.first, cause.does, cause.ends, cause.weighed, cause.source},
                       {},
                       costs(cause)};
        if (!cause.greener.empty()) {
            const auto cost = green_cost(cause.greener, mass_, made_, context_);
            if (!cost || cost->by < context_.constant("mend.green.least")) return std::nullopt;
            if (!cost->lines.empty()) lines = cost->lines;
            one.cost = cost->by;
            if (cost->value > 0) value = shown_value(cause.greener == "rest" ? "rest" : "mixing", cost->value);
        }
        for (const auto l : *lines) one.foods.push_back(mass_.lines[l].ingredient);
        fill(one.told, value, names_of(*lines));
        return one;
    }

private:
    // What it takes of the bind; 0 where no factor tells it.
    double costs(const CauseOfTaste& cause) const {
        const BatchBind bind = batch_.bind();
        if (cause.costs == "acid") return 1 - bind.acid_factor;
        if (cause.costs == "order") return 1 - bind.acid_factor * bind.order_factor;
        if (cause.costs == "cold") return 1 - bind.cold_factor;
        return cause.costs == "mixing" ? 1 - bind.mixing_factor : 0;
    }

    // As a maker calls them, each once.
    std::vector<std::string> names_of(const std::vector<std::size_t>& lines) const {
        std::vector<std::string> names;
        for (const auto l : lines)
            if (const auto& name = knowledge_.ingredient(mass_.lines[l].ingredient)->names.front(); !contains(names, name))
                names.push_back(name);
        return names;
    }

    // Percent of its weight that a patty keeps by being taken off at what the meat needs.
    double saved() const {
        Formula cooler = mass_;
        cooler.process.core_curve.clear();
        cooler.process.core_c = needed_.core_c;
        return state_.properties[Property::cook_loss_pct] - made_.state(cooler).properties[Property::cook_loss_pct];
    }

    void fill(MakingCause& told, const std::string& value, const std::vector<std::string>& foods) const {
        const std::pair<std::string_view, std::string> places[] = {
            {"{value}", value},
            {"{foods}", joined_by_and(foods)},
            {"{s}", foods.size() > 1 ? "" : "s"},
            {"{ph}", fixed_text(state_.properties[Property::ph], 1)},
            {"{fat}", fixed_text(state_.properties[Property::fat_pct], 0)},
            {"{needed}", shown_core(needed_)},
            {"{salt}", fixed_text(state_.properties[Property::salt_pct_of_meat], 1)},
        };
        for (auto* text : {&told.says, &told.first, &told.does}) {
            for (const auto& [place, with] : places) replace_all(*text, place, with);
            if (text->find("{saved}") != std::string::npos) replace_all(*text, "{saved}", fixed_text(saved(), 1));
        }
    }

    const Formula& mass_;
    const MassAsMade& made_;
    State state_;
    const CoreAsked& needed_;
    const Context& context_;
    const Knowledge& knowledge_;
    NominalBatch batch_;
};

bool is_weighed_against_others(const FoundCause& cause) { return !cause.record->costs.empty() || !cause.record->greener.empty(); }

// Of those of which a model tells what they cost, the costliest first; where they stand among the others does not change.
void put_costliest_first(std::vector<FoundCause>& all) {
    std::vector<std::size_t> places;
    std::vector<FoundCause> told;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (is_weighed_against_others(all[i])) {
            places.push_back(i);
            told.push_back(all[i]);
        }
    std::stable_sort(told.begin(), told.end(), [](const FoundCause& a, const FoundCause& b) { return a.cost > b.cost; });
    for (std::size_t i = 0; i < places.size(); ++i) all[places[i]] = told[i];
}

}  // namespace

std::vector<FoundCause> causes_of(const std::vector<Meant>& tastes, const Formula& mass, const MassAsMade& made, const CoreAsked& needed,
                                  const Mending& mending, const Context& context) {
    const Looking looking(mass, made, needed, context);
    std::vector<FoundCause> all;
    for (const auto& cause : mending.causes) {
        const auto is_told = [&](const FoundCause& other) { return contains(cause.unless, other.record->id); };
        if (std::any_of(all.begin(), all.end(), is_told)) continue;
        const auto is_beside = [&](const Meant& meant) { return contains(cause.beside, meant.taste.word->id); };
        if (!cause.beside.empty() && std::none_of(tastes.begin(), tastes.end(), is_beside)) continue;
        for (const auto& meant : tastes) {
            if (!contains(cause.of, meant.taste.word->id)) continue;
            if (auto one = looking.found(cause, meant)) all.push_back(std::move(*one));
            break;
        }
    }
    const bool ends = std::any_of(all.begin(), all.end(), [](const FoundCause& c) { return c.told.ends; });
    if (ends) std::erase_if(all, [](const FoundCause& c) { return !c.told.ends; });
    put_costliest_first(all);
    return all;
}

}  // namespace standin
