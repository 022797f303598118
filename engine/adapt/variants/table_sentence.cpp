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
    const bool less_lost = c.after.properties[Property::cook_loss_pct] < c.before.properties[Property::cook_loss_pct];
    for (const auto& residual : distance.residuals(c.variant, c.after))
        tell(residual.what == "juice" && less_lost && residual.change < 0 ? "juice, less lost" : residual.what, residual.change);
    // What a want moved is left out of the residuals; at the table it is the first thing to be noticed.
    for (const auto& goal : distance.goals()) {
        const auto what = told_as(goal.property);
        const double step = distance.step(goal.property);
        const bool told = std::any_of(reason.figures.begin(), reason.figures.end(),
                                      [&](const Figure& f) { return f.what == what && f.after != 0; });  // of two wants about one thing
        if (!told && !what.empty() && distance.wanted(goal.property) && step > 0)
            tell(what, (c.after.properties[goal.property] - c.before.properties[goal.property]) / step);
    }
    return reason;
}

}  // namespace standin
