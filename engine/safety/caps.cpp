#include "safety/caps.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "safety/cap_values.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr double nearly = 0.1;      // of the limit: closer than that is said
constexpr double as_shown = 0.005;  // half of the last digit shown; less is no breach

// What is measured: in words, the value, and where it lies for sure.
struct Measured {
    std::string what;
    Band value;
    double with_liquids = 0;  // water with the other liquids, where that matters
};

struct Held {
    const CapRule* rule;
    std::size_t name_length;
};

std::size_t longest_name_in(std::string_view folded_title, const CapRule& rule) {
    std::size_t longest = 0;
    for (const auto& name : rule.names)
        if (const std::string folded = fold(name); has_words(folded_title, folded)) longest = std::max(longest, folded.size());
    return longest;
}

Measured plain(std::string what, double value) { return {std::move(what), {value, value, value}, value}; }

// The most of a property that a rule set allows under any name.
std::optional<double> most_of(CapProperty property, const RuleSet& rules) {
    for (const auto& cap : rules.caps)
        if (cap.property == property && cap.names.empty() && !cap.at_least && cap.limit > 0) return cap.limit;
    return std::nullopt;
}

std::optional<Measured> measured_share(const Counted& batch, const RuleSet& rules) {
    const auto binder = most_of(CapProperty::binder_pct, rules), isolate = most_of(CapProperty::soy_isolate_pct, rules);
    const auto share = binder && isolate ? binder_share(batch, *binder, *isolate) : std::nullopt;
    return share ? std::optional(plain("share of binders used up", *share)) : std::nullopt;
}

std::optional<Measured> measure(const CapRule& rule, const Prediction& prediction, const Counted& batch, const RuleSet& rules) {
    const auto predicted = [&](std::string what, Property property) {
        const Band& band = prediction.properties[property];
        const double nominal = prediction.nominal[property];
        return Measured{std::move(what), {band.low, nominal, band.high}, nominal};
    };
    switch (rule.property) {
        case CapProperty::fat_pct:
            return predicted("fat", Property::fat_pct);
        case CapProperty::fat_of_meat_pct:
            return predicted("fat of the meat", Property::fat_pct_of_meat);
        case CapProperty::salt_pct:
            return predicted("salt", Property::salt_pct);
        case CapProperty::binder_pct:
            return plain("binder", rule.limit > 0 ? binder_pct(batch) : any_binder_pct(batch));
        case CapProperty::soy_isolate_pct:
            return plain("isolated soy protein", soy_isolate_pct(batch));
        case CapProperty::fennel_or_anise_pct:
            return plain("fennel and anise", fennel_or_anise_pct(batch));
        case CapProperty::phosphate_pct:
            return plain("phosphate", phosphate_pct(batch));
        case CapProperty::meat_pct:
            return plain("meat", rules.meat_word.empty() ? meat_pct(batch) : legal_meat_pct(batch, rules.meat_word));
        case CapProperty::binder_share:
            return measured_share(batch, rules);
        case CapProperty::added_water_pct: {
            Measured water = plain("added water and ice", added_water_pct(batch));
            water.with_liquids += other_liquid_pct(batch);
            return water;
        }
    }
    return std::nullopt;
}

// "under", "over", "nearly" there, "as counted" otherwise; empty: within the limit.
std::string verdict(const Measured& m, const CapRule& rule) {
    const double value = m.value.mid;
    if (rule.at_least) {
        if (value < rule.limit - as_shown) return "under";
        return value < rule.limit * (1 + nearly) ? "nearly" : "";
    }
    if (value > rule.limit + as_shown) return "over";
    if (m.with_liquids > rule.limit + as_shown) return "as counted";
    return m.with_liquids > as_shown && m.with_liquids >= rule.limit * (1 - nearly) ? "nearly" : "";
}

Reason reason_for(const CapRule& rule, const Measured& m, const std::string& said) {
    const std::string unit = rule.property == CapProperty::binder_share ? "" : "%";
    Figure value{m.what, {}, m.value.mid, unit}, limit{"limit", {}, rule.limit, unit};
    if (m.value.high - m.value.low > 2 * as_shown) value.low = m.value.low, value.high = m.value.high;
    (rule.at_least ? limit.low : limit.high) = rule.limit;
    Reason reason = make_reason(ReasonKind::cap, {std::move(value), std::move(limit)});
    if (m.with_liquids > m.value.mid + as_shown) reason.figures.push_back({"with liquids", {}, m.with_liquids, unit});
    reason.about = rule.id;
    reason.role = said;
    reason.note = rule.text + " (" + rule.clause + ")";
    return reason;
}

}  // namespace

std::vector<const CapRule*> caps_for(std::string_view title, const RuleSet& rules) {
    const std::string folded = fold(title);
    std::vector<Held> held;
    for (const auto& rule : rules.caps)
        if (const std::size_t length = longest_name_in(folded, rule); length > 0 || rule.names.empty()) held.push_back({&rule, length});
    std::vector<const CapRule*> kept;
    for (const auto& one : held)
        if (std::none_of(held.begin(), held.end(), [&](const Held& other) {
                return other.rule->property == one.rule->property && other.rule->at_least == one.rule->at_least &&
                       other.name_length > one.name_length;
            }))
            kept.push_back(one.rule);
    return kept;
}

bool is_beside_the_law_of_meat(const Prediction& prediction, const Knowledge& knowledge, const RuleSet& rules) {
    const auto group = std::find_if(rules.groups.begin(), rules.groups.end(), [](const auto& one) { return one.word == "amenable"; });
    if (group == rules.groups.end()) return false;
    const auto lines = present(prediction, knowledge);
    const bool any_meat = std::any_of(lines.begin(), lines.end(), [](const Present& line) { return line.ingredient->meat.has_value(); });
    return any_meat && std::none_of(lines.begin(), lines.end(), [&](const Present& line) {
               return line.ingredient->meat && contains(group->species, line.ingredient->meat->species);
           });
}

std::vector<CautionText> cap_cautions(const Prediction& prediction, const Knowledge& knowledge, const RuleSet& rules) {
    if (is_beside_the_law_of_meat(prediction, knowledge, rules)) return {};
    const Counted batch = counted(prediction, knowledge);
    std::vector<CautionText> cautions;
    for (const CapRule* rule : caps_for(prediction.title, rules)) {
        const auto measured = measure(*rule, prediction, batch, rules);
        if (!measured) continue;
        if (const std::string said = verdict(*measured, *rule); !said.empty())
            cautions.push_back(caution_text(reason_for(*rule, *measured, said), rule->source, {}, said));
    }
    return cautions;
}

}  // namespace standin
