#include "safety/conditions.hpp"

#include <algorithm>
#include <cmath>
#include <type_traits>

#include "core/contains.hpp"
#include "core/words.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

constexpr std::string_view raw_produce = "raw-produce";
constexpr std::string_view wet_vegetable = "wet-vegetable";
constexpr std::string_view cooked_rice = "cooked-rice";

// Each food once, with what `say` tells of it; an empty telling leaves it out.
template <class Say>
std::optional<Holding> by_food(const Facts& facts, Say say) {
    Holding holding;
    for (const auto& [line, ingredient] : facts.lines) {
        if (contains(holding.foods, ingredient->id)) continue;
        std::string said;
        if constexpr (std::is_invocable_v<Say, const Ingredient&, const PredictedLine&>) said = say(*ingredient, *line);
        else said = say(*ingredient);
        if (said.empty()) continue;
        // What the maker calls otherwise goes by that name.
        if (const auto& name = ingredient->names.front(); line->name != name && said.rfind(name, 0) == 0)
            said.replace(0, name.size(), line->name);
        holding.foods.push_back(ingredient->id);
        holding.foods_said.push_back(said);
    }
    return holding.foods.empty() ? std::nullopt : std::optional(std::move(holding));
}

std::string name_if(bool concerned, const Ingredient& ingredient) { return concerned ? ingredient.names.front() : std::string{}; }

bool in_group(Species species, const std::string& word, const Knowledge& knowledge) {
    if (spelling(species) == word) return true;
    for (const auto& rules : knowledge.records().rules)
        for (const auto& group : rules.groups)
            if (group.word == word && std::find(group.species.begin(), group.species.end(), species) != group.species.end()) return true;
    return false;
}

double grams_in_a_kilo(const Ingredient& ingredient, const Facts& facts) {
    double grams = 0, batch = 0;
    for (const auto& [line, other] : facts.lines) {
        batch += line->grams;
        if (other == &ingredient) grams += line->weighed_g;
    }
    return batch > 0 ? 1000 * grams / batch : 0;
}

// Whatever heats it through before it goes in: "blanched 2 min".
bool heated_before(const PredictedLine& line, const Ingredient& ingredient, const Knowledge& knowledge) {
    const auto heats = [&](const std::string& id) {
        const Preparation* preparation = knowledge.preparation(id);
        return preparation && preparation->denatures;
    };
    if (std::any_of(ingredient.already.begin(), ingredient.already.end(), heats)) return true;
    return std::any_of(line.prepared.begin(), line.prepared.end(), [&](const std::string& step) {
        const Preparation* preparation = knowledge.preparation_named(step);
        if (!preparation) preparation = knowledge.preparation_named(step.substr(0, step.find(' ')));
        return preparation && preparation->denatures;
    });
}

// Wet vegetable that is neither cooked nor squeezed.
bool is_unsqueezed(const Ingredient& ingredient, const PredictedLine& line, const Knowledge& knowledge) {
    const auto gives_water = [&](const std::string& step) {
        const Preparation* preparation = knowledge.preparation_named(step);
        return preparation && (preparation->id == "squeezed" || preparation->id == "drained");
    };
    return contains(ingredient.cautions, wet_vegetable) && !heated_before(line, ingredient, knowledge) &&
           std::none_of(line.prepared.begin(), line.prepared.end(), gives_water);
}

// Every leaf that goes in raw, and what else bears the word.
std::string name_if_raw(const Ingredient& ingredient, const PredictedLine& line, const Knowledge& knowledge) {
    const bool leaf = (is_leaf(ingredient.tissue)) && ingredient.already.empty();
    return name_if((leaf || contains(ingredient.cautions, raw_produce)) && !heated_before(line, ingredient, knowledge), ingredient);
}

class Judge {
public:
    explicit Judge(const Facts& facts) : facts_(facts) {}

    std::optional<Holding> operator()(const IngredientBears& when) const {
        if (when.word == raw_produce)
            return by_food(facts_, [&](const Ingredient& i, const PredictedLine& line) { return name_if_raw(i, line, facts_.knowledge); });
        if (when.word == wet_vegetable) return wet_vegetables();
        if (when.word == cooked_rice)  // raw grains too, where they are boiled for the mass
            return by_food(facts_, [&](const Ingredient& i, const PredictedLine& line) {
                return name_if(contains(i.cautions, when.word) && heated_before(line, i, facts_.knowledge), i);
            });
        return by_food(facts_, [&](const Ingredient& i) { return name_if(contains(i.cautions, when.word), i); });
    }
    std::optional<Holding> operator()(const AllergenInside& when) const {
        const auto& all = facts_.prediction.allergens;
        const auto found =
            std::find_if(all.begin(), all.end(), [&](const AllergenText& a) { return a.sure && a.allergen == when.allergen; });
        return found == all.end() ? std::nullopt : std::optional(Holding{{}, found->from});
    }
    std::optional<Holding> operator()(const RoleInside& when) const {
        const auto is_of_it = [&](const Ingredient& i) {  // dried fruit keeps nothing, and nobody thinks so
            return !i.roles.empty() && i.roles.front() == when.role &&
                   !(when.role == Role::acid && contains(i.already, std::string("dried")));
        };
        double grams = 0, batch = 0;
        for (const auto& [line, food] : facts_.lines) {
            batch += line->grams;
            if (is_of_it(*food)) grams += line->grams;
        }
        if (when.above > 0 && 100 * grams <= when.above * batch) return std::nullopt;
        return by_food(facts_, [&](const Ingredient& i) { return name_if(is_of_it(i), i); });
    }
    std::optional<Holding> operator()(const SpeciesInside& when) const {
        return by_food(facts_,
                       [&](const Ingredient& i) { return name_if(i.meat && in_group(i.meat->species, when.word, facts_.knowledge), i); });
    }
    std::optional<Holding> operator()(const SpeciesAbsent& when) const {
        return (*this)(SpeciesInside{when.word}) ? std::nullopt : std::optional(Holding{});
    }
    std::optional<Holding> operator()(const PropertyBeyond& when) const {
        if (when.property == Property::salt_pct_of_meat && facts_.prediction.meat_g <= 0) return std::nullopt;
        const double value = facts_.prediction.nominal[when.property];
        if (when.below ? value >= when.limit : value <= when.limit) return std::nullopt;
        return Holding{{},
                       {},
                       {},
                       value,
                       when.limit,
                       Threshold{when.property, when.below, when.below ? -when.limit : when.limit},
                       std::string(info(when.property).unit)};
    }
    std::optional<Holding> operator()(const ProcessBeyond& when) const { return stated(when, facts_.process, facts_.knowledge); }
    std::optional<Holding> operator()(CoreBelowRule) const {
        const auto core = core_said(facts_.process);
        constexpr double rounding = 0.15;  // 71 C is 71.1 C (160 F) as makers write it
        if (!core || *core >= facts_.core.core_c - rounding) return std::nullopt;
        const bool read = facts_.process.core_curve.size() > 1 && (!facts_.process.core_c || *core < *facts_.process.core_c);
        return Holding{{},
                       {},
                       (read ? "Here the core readings end at " : "Here: ") + shown(*core) + " C instead of " + shown_core(facts_.core) +
                           "." + (read ? "" : " Its loss in the pan and its looks are told for " + shown_core(facts_.core) + ".")};
    }
    std::optional<Holding> operator()(PacketMayHold) const {
        return by_food(facts_, [&](const Ingredient& i, const PredictedLine& line) {
            std::vector<std::string> names;
            for (const auto* all : {&i.may_hold, &line.may_hold})
                for (const auto& allergen : *all) names.push_back(allergen_name(allergen, facts_.knowledge));
            return names.empty() ? std::string{} : i.names.front() + " (" + listed(names) + ")";
        });
    }
    std::optional<Holding> operator()(OverMostInAKilo) const {
        constexpr double rounding = 0.02;  // of it: the most is a judgement, and a hand or a smaller batch is off by as much
        return by_food(facts_, [&](const Ingredient& i) {
            if (!i.most_g_per_kg) return std::string{};
            const double most = i.most_g_per_kg->band.mid, grams = grams_in_a_kilo(i, facts_);
            if (grams <= most * (1 + rounding)) return std::string{};
            return i.names.front() + " (" + shown(grams) + " g in a kilo of batch, at most " + shown(most) + " g)";
        });
    }
    std::optional<Holding> operator()(const RawLeafOver& when) const {
        const auto raw = [&](const Ingredient& i, const PredictedLine& line) {
            return is_leaf(i.tissue) && i.already.empty() && !heated_before(line, i, facts_.knowledge);
        };
        double grams = 0, batch = 0;
        for (const auto& [line, food] : facts_.lines) {
            batch += line->grams;
            if (raw(*food, *line)) grams += line->grams;
        }
        if (100 * grams <= when.above * batch) return std::nullopt;
        return by_food(facts_, [&](const Ingredient& i, const PredictedLine& line) { return name_if(raw(i, line), i); });
    }
    std::optional<Holding> operator()(AcidFirst) const {
        constexpr double least_acid = 5;  // mmol/kg: less sets nothing; judgement
        if (facts_.process.order != Order::acid_first || facts_.prediction.nominal[Property::sourness_mmol_kg] < least_acid)
            return std::nullopt;
        return Holding{};
    }
    std::optional<Holding> operator()(HoldsTogether) const {
        return facts_.process.cook == Cook::loose ? std::nullopt : std::optional(Holding{});
    }
    std::optional<Holding> operator()(WarmsTooSlowly) const {
        const auto& hours = facts_.prediction.warming_h;
        const double most = facts_.knowledge.parameter("lethality.warming.hours").mid;
        if (!hours || *hours <= most) return std::nullopt;
        return Holding{{}, {}, "Here: perhaps " + shown_hours(std::ceil(*hours)) + ".", *hours, most, {}, "h"};
    }

private:
    std::optional<Holding> wet_vegetables() const {
        return by_food(
            facts_, [&](const Ingredient& i, const PredictedLine& line) { return name_if(is_unsqueezed(i, line, facts_.knowledge), i); });
    }

    const Facts& facts_;
};

}  // namespace

Reason reason_of(const std::string& id, std::string text, const Holding& holding) {
    Reason reason;
    reason.kind = ReasonKind::caution;
    reason.about = id;
    reason.foods = holding.foods_said;
    if (holding.threshold)
        reason.role = std::string(info(holding.threshold->property).name) + (holding.threshold->below ? " below" : " above");
    for (const auto& [what, number] : {std::pair("value", holding.value), std::pair("limit", holding.limit)}) {
        if (!number) continue;
        replace_all(text, "{" + std::string(what) + "}", shown(*number));
        reason.figures.push_back({what, {}, *number, holding.unit});
    }
    reason.note = std::move(text);
    if (!holding.here.empty()) reason.note = with_stop(std::move(reason.note)) + " " + holding.here;
    return reason;
}

Facts facts_of(const Prediction& prediction, const Process& process, const Knowledge& knowledge, std::string_view rules) {
    // What stands beside the mass weighs nothing in it, and is eaten and handled all the same.
    std::vector<Present> lines = present(prediction, knowledge);
    for (const auto& outside : present_beside(prediction, knowledge)) lines.push_back(outside);
    // Who cooks hotter is told one temperature everywhere.
    CoreTemperature core = asked_core(prediction, process, knowledge, rules);
    return {prediction, process, knowledge, std::move(lines), species_of(prediction, knowledge), std::move(core)};
}

std::optional<double> core_said(const Process& process) {
    std::optional<double> core = process.core_c;
    if (process.core_curve.size() < 2) return core;
    double hottest = process.core_curve.front().celsius;
    for (const auto& reading : process.core_curve) hottest = std::max(hottest, reading.celsius);
    return core ? std::min(*core, hottest) : hottest;
}

std::optional<double> said_of(ProcessField field, const Process& process, const Knowledge& knowledge) {
    const bool frozen = process.rest_at_c && *process.rest_at_c <= knowledge.parameter("bench.rest.frozen").mid;
    switch (field) {
        case ProcessField::plate:
            return process.plate_mm;
        case ProcessField::mixing:
            return process.mixing_min;
        case ProcessField::mixed_at:
            return process.mixed_at_c;
        case ProcessField::rest:
            return frozen ? std::nullopt : process.rest_h;
        case ProcessField::rest_at:
            return process.rest_at_c;
        case ProcessField::core:
            return core_said(process);
    }
    return std::nullopt;
}

std::string shown_field(ProcessField field, double value) {
    switch (field) {
        case ProcessField::plate:
            return shown(value) + " mm";
        case ProcessField::mixing:
            return shown(value) + " minutes";
        case ProcessField::rest:
            return shown_hours(value);
        default:
            return shown(value) + " C";
    }
}

std::string_view unit_of(ProcessField field) {
    switch (field) {
        case ProcessField::plate:
            return "mm";
        case ProcessField::mixing:
            return "min";
        case ProcessField::rest:
            return "h";
        default:
            return "C";
    }
}

std::optional<Holding> stated(const When& when, const Process& process, const Knowledge& knowledge) {
    const auto* beyond = std::get_if<ProcessBeyond>(&when);
    if (!beyond) return std::nullopt;
    const auto value = said_of(beyond->field, process, knowledge);
    if (!value || (beyond->below ? *value >= beyond->limit : *value <= beyond->limit)) return std::nullopt;
    return Holding{
        {}, {}, "Here: " + shown_field(beyond->field, *value) + ".", *value, beyond->limit, {}, std::string(unit_of(beyond->field))};
}

std::optional<Holding> holds(const When& when, const Facts& facts) { return std::visit(Judge(facts), when); }

}  // namespace standin
