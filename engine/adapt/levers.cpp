#include "adapt/levers.hpp"

namespace standin {

const std::vector<Lever>& levers() {
    static const std::vector<Lever> all{
        {Property::heat_mg_kg, {Role::heat}, {Role::heat}, {Role::heat}},
        {Property::greenness, {Role::green, Role::herb}, {Role::green}, {Role::green}},
        {Property::chlorophyll_mg_kg, {Role::green, Role::herb}, {Role::green}, {Role::green}},
        {Property::sourness_mmol_kg, {Role::acid}, {Role::acid}, {Role::acid}},
        {Property::ph, {Role::acid}, {Role::acid}, {Role::acid}},
        {Property::bind, {Role::acid, Role::green, Role::liquid, Role::binder, Role::lean, Role::fat}, {Role::binder}, {Role::binder}},
        {Property::firmness, {Role::acid, Role::green, Role::liquid, Role::binder, Role::lean, Role::fat}, {Role::binder}, {Role::binder}},
        {Property::fat_pct, {Role::fat, Role::lean}, {Role::lean, Role::fat}, {Role::fat}},
        {Property::salt_pct, {Role::salt}, {}, {Role::salt}},
        {Property::water_pct, {Role::liquid, Role::green}, {}, {}},
        {Property::protein_pct, {Role::lean, Role::fat}, {Role::lean, Role::fat}, {}},
        {Property::cook_loss_pct, {Role::liquid, Role::binder, Role::green, Role::acid}, {Role::binder}, {Role::binder}},
    };
    return all;
}

}  // namespace standin
