#include "adapt/variants/missing_salt.hpp"

#include <algorithm>

#include "adapt/goals/levers.hpp"
#include "core/band.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/kinds.hpp"

namespace standin {
namespace {

// The formula's own salt, or table salt.
std::string own_salt(const Formula& base, const Knowledge& knowledge) {
    for (const auto& line : base.lines)
        if (belongs(*knowledge.ingredient(line.ingredient), "salt", knowledge)) return line.ingredient;
    return "table-salt";
}

}  // namespace

std::optional<Reason> salt_would_bind(const Formula& formula, const Process& made, const Distance& distance, const Context& context) {
    Formula base = formula;
    base.process = made;
    const bool asked = std::any_of(distance.goals().begin(), distance.goals().end(), [](const Goal& g) {
        return of_the_whole_mass(g.property) &&
               g.kind == (g.property == Property::cook_loss_pct ? Goal::Kind::at_most : Goal::Kind::at_least);
    });
    if (!asked || distance.wanted(Property::salt_pct)) return std::nullopt;
    const double enough = context.constant("advice.salt.binds"), least = context.constant("advice.salt.binds-least");
    const NominalBatch now(base, context.nominal());
    const double of_meat = now.state().properties[Property::salt_pct_of_meat];
    const double meat = now.total()[Amount::meat];
    if (of_meat >= least || !(meat > 0)) return std::nullopt;
    const std::string id = own_salt(base, context.knowledge());
    Line salt;
    salt.ingredient = id;
    const double grams = (enough - of_meat) / 100 * meat / context.nominal().unit(salt)[Amount::salt];
    salt.grams = exactly(grams);
    Formula salted = base;
    salted.lines.push_back(std::move(salt));
    const State before = now.state(), after = NominalBatch(salted, context.nominal()).state();
    const auto figure = [&](const char* what, Property p, const char* unit) {
        return Figure{what, before.properties[p], after.properties[p], unit};
    };
    constexpr double worth_saying = 0.5;  // noticeable differences
    if (after.properties[Property::bind] - before.properties[Property::bind] < worth_saying * distance.unit(Property::bind))
        return std::nullopt;
    return make_reason(ReasonKind::salt_would_bind, {{"salt", of_meat, enough, "% of meat"},
                                                     {context.knowledge().ingredient(id)->names.front(), {}, grams, "g"},
                                                     figure("bind", Property::bind, "of 100"),
                                                     figure("cook loss", Property::cook_loss_pct, "%")});
}

}  // namespace standin
