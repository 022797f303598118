#include "adapt/goals/levers.hpp"

namespace standin {

namespace {

constexpr auto up = Change::Way::up, down = Change::Way::down, either = Change::Way::either;

constexpr double runs_out_from = 30;  // % fat of the batch: what a fatter one loses in the pan is fat; judgement
constexpr double fat_enough = 16;     // % of the batch: a fatter one does not eat dry for want of it; judgement
constexpr double salted_well = 2.0;   // % of the meat: most put in less; common practice
constexpr double acid_dries = 5.4;    // pH: meat at a lower one gives up its water; judgement

std::vector<Change> tighter() {
    return {{Role::acid, down}, {Role::green, down}, {Role::liquid, down}, {Role::binder, either}, {Role::lean, up}, {Role::fat, down}};
}

// Who wants it looser mixes less and takes out of what sets it, then of salt that is more than most put in, before he waters it, fattens it
// or sours it.
Lever of_the_hold(Property property) {
    return {property,
            tighter(),
            {Role::binder},
            {Role::binder},
            {Role::acid, Role::liquid, Role::fat, Role::lean},
            {Role::green},
            {{Role::salt, up, 0, 101, 15, salted_well}}};
}

}  // namespace

const std::vector<Lever>& levers() {
    static const std::vector<Lever> all{
        {Property::heat_mg_kg, {{Role::heat, up}}, {Role::heat}, {Role::heat}},
        {Property::greenness, {{Role::green, up}, {Role::herb, up}, {Role::acid, down}}, {Role::green}, {Role::green}},
        {Property::chlorophyll_mg_kg, {{Role::green, up}, {Role::herb, up}}, {Role::green}, {Role::green}},
        {Property::sourness_mmol_kg, {{Role::acid, up}}, {Role::acid}, {Role::acid}},
        {Property::ph, {{Role::acid, down}}, {Role::acid}, {Role::acid}},
        of_the_hold(Property::bind),
        of_the_hold(Property::firmness),
        {Property::fat_pct, {{Role::fat, up}, {Role::lean, either}}, {Role::lean, Role::fat}, {Role::fat}},
        {Property::salt_pct, {{Role::salt, up}}, {}, {Role::salt}},
        {Property::water_pct, {{Role::liquid, up}, {Role::green, up}}, {}, {}},
        {Property::protein_pct, {{Role::lean, either}, {Role::fat, down}}, {Role::lean, Role::fat}, {}},
        {Property::cook_loss_pct,
         {{Role::liquid, either},
          {Role::binder, down},
          {Role::green, either},
          {Role::acid, up},
          {Role::fat, up, runs_out_from},
          {Role::lean, down, runs_out_from}},
         {Role::binder},
         {Role::binder}},
        {Property::juice,
         {{Role::liquid, up},
          {Role::binder, up},
          {Role::acid, down, 0, 101, acid_dries},
          {Role::fat, up, 0, fat_enough},
          {Role::lean, down, 0, fat_enough}},
         {Role::binder},
         {Role::binder, Role::liquid}},
    };
    return all;
}

bool of_the_whole_mass(Property property) {
    return property == Property::bind || property == Property::firmness || property == Property::cook_loss_pct ||
           property == Property::juice;
}

}  // namespace standin
