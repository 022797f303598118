#include "mend/causes.hpp"

#include <algorithm>
#include <optional>
#include <set>

#include "core/contains.hpp"
#include "core/words.hpp"
#include "evaluate/batch.hpp"
#include "safety/conditions.hpp"
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
    Looking(const Formula& mass, const State& state, double needed_c, const Context& context)
        : mass_(mass), state_(state), needed_c_(needed_c), knowledge_(context.knowledge()), batch_(mass, context.nominal()) {}

    std::optional<FoundCause> found(const CauseOfTaste& cause, const Meant& meant) const {
        std::string value;
        for (const auto& when : cause.process) {
            const auto is = said(when.field, mass_.process);
            if (!is || (when.below && *is >= *when.below) || (when.above && *is <= *when.above)) return std::nullopt;
            if (cause.spare_c > 0 && *is < needed_c_ + cause.spare_c) return std::nullopt;
            if (value.empty()) value = shown_value(when.field, *is);
        }
        if (!hold(cause.when, state_)) return std::nullopt;
        const auto foods = foods_of(cause);
        if (!foods) return std::nullopt;
        FoundCause one{&cause, {cause.id, meant.taste.written, cause.says, cause.first, cause.does, cause.ends, cause.source}};
        for (auto* text : {&one.told.says, &one.told.first, &one.told.does}) {
            replace_all(*text, "{value}", value);
            replace_all(*text, "{foods}", joined_by_and(*foods));
        }
        return one;
    }

    /// What it leaves of the bind; 1 where no factor tells it.
    double leaves(const CauseOfTaste& cause) const {
        const BatchBind bind = batch_.bind();
        if (cause.costs == "acid") return bind.acid_factor;
        if (cause.costs == "cold") return bind.cold_factor;
        return cause.costs == "mixing" ? bind.mixing_factor : 1;
    }

private:
    // The foods that it is about, as a maker calls them, of what digests the one that does most; nothing where it asks for some and there
    // are none.
    std::optional<std::vector<std::string>> foods_of(const CauseOfTaste& cause) const {
        const bool asks = !cause.roles.empty() || cause.protease_above;
        if (cause.protease_above && !(batch_.total().share(Amount::protease, 1000) > *cause.protease_above)) return std::nullopt;
        std::vector<std::string> names;
        double most = 0;
        for (std::size_t l = 0; l < mass_.lines.size(); ++l) {
            const Ingredient& food = *knowledge_.ingredient(mass_.lines[l].ingredient);
            const double digests = batch_.part(l)[Amount::protease];
            if (cause.protease_above && digests > most) {
                most = digests;
                names = {food.names.front()};
            }
            if (!cause.protease_above && contains(cause.roles, food.roles.front()) && !contains(names, food.names.front()))
                names.push_back(food.names.front());
        }
        if (asks && names.empty()) return std::nullopt;
        return names;
    }

    const Formula& mass_;
    const State& state_;
    double needed_c_;
    const Knowledge& knowledge_;
    NominalBatch batch_;
};

}  // namespace

std::vector<FoundCause> causes_of(const std::vector<Meant>& tastes, const Formula& mass, const State& state, double needed_c,
                                  const Mending& mending, const Context& context) {
    const Looking looking(mass, state, needed_c, context);
    std::vector<FoundCause> all;
    for (const auto& cause : mending.causes)
        for (const auto& meant : tastes) {
            if (!contains(cause.of, meant.taste.word->id)) continue;
            if (auto one = looking.found(cause, meant)) all.push_back(std::move(*one));
            break;
        }
    const bool ends = std::any_of(all.begin(), all.end(), [](const FoundCause& c) { return c.told.ends; });
    if (ends) std::erase_if(all, [](const FoundCause& c) { return !c.told.ends; });
    // Of those that a factor tells of, the costliest first; where they stand among the others does not change.
    std::vector<std::size_t> places;
    std::vector<FoundCause> told;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (!all[i].record->costs.empty()) {
            places.push_back(i);
            told.push_back(all[i]);
        }
    std::stable_sort(told.begin(), told.end(),
                     [&](const FoundCause& a, const FoundCause& b) { return looking.leaves(*a.record) < looking.leaves(*b.record); });
    for (std::size_t i = 0; i < places.size(); ++i) all[places[i]] = told[i];
    return all;
}

}  // namespace standin
