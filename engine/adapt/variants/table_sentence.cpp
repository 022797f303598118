// How a variant will differ at the table.
#include <algorithm>

#include "adapt/variants/explain.hpp"

namespace standin {
namespace {

// What a moved property is called at the table; empty where it tastes of nothing by itself.
std::string_view told_as(Property property) {
    switch (of_batch(property)) {
        case Property::heat_mg_kg:
            return "heat";
        case Property::bind:
            return "bind";
        case Property::firmness:
            return "firmness";
        case Property::sourness_mmol_kg:
            return "sourness";
        case Property::fat_pct:
            return "fat";
        case Property::salt_pct:
            return "salt";
        case Property::cook_loss_pct:
            return "cook loss";
        case Property::juice:
            return "juice";
        case Property::greenness:
            return "green";
        default:
            return "";
    }
}

}  // namespace

Reason at_the_table(const Distance& distance, const Compared& c) {
    Reason reason;
    reason.kind = ReasonKind::table;
    reason.note = c.unlike;
    if (!c.missed.empty()) reason.foods.push_back(c.missed);
    const auto tell = [&](std::string_view what, double differences) {
        reason.figures.push_back({std::string(what), {}, differences, "noticeable differences"});
    };
    // What is dry because less water went in, and loses no more of it, is no drier from the pan.
    constexpr double shown = 0.5;  // % of its weight: less is no other number on the page
    const double lost = c.after.properties[Property::cook_loss_pct] - c.before.properties[Property::cook_loss_pct];
    // Nor is it juicier from the pan where more is lost in it: what is there to eat is fatter.
    const auto of_juice = [&](double change) {
        if (lost < 0 && change < 0) return "juice, less lost";
        return lost > shown && change > 0 ? "juice, more lost" : "juice";
    };
    for (const auto& residual : distance.residuals(c.variant, c.after))
        tell(residual.what == "juice" ? of_juice(residual.change) : residual.what, residual.change);
    // What a want moved is left out of the residuals; at the table it is the first thing to be noticed.
    for (const auto& goal : distance.goals()) {
        const auto what = told_as(goal.property);
        const double step = distance.step(goal.property);
        const double change = step > 0 ? (c.after.properties[goal.property] - c.before.properties[goal.property]) / step : 0;
        const std::string_view told_here = what == "juice" ? of_juice(change) : what;
        const bool told = std::any_of(reason.figures.begin(), reason.figures.end(), [&](const Figure& f) {
            return f.what == told_here && f.after != 0;
        });  // of two wants about one thing
        if (!told && !what.empty() && distance.wanted(goal.property) && step > 0) tell(told_here, change);
    }
    return reason;
}

}  // namespace standin
