#include "substitute/dose.hpp"

namespace standin {

double dose_of(const Material& m, Role role) {
    switch (role) {
        case Role::lean:
            return m[Amount::meat] > 0 ? m[Amount::meat] : m[Amount::mass];
        case Role::fat:
            return m[Amount::fat];
        case Role::green:
            return m[Amount::chlorophyll_live] + m[Amount::chlorophyll_set];
        case Role::heat:
            return m[Amount::capsaicinoids];
        case Role::acid:
            return m[Amount::titratable];
        case Role::binder:
            return m[Amount::held_cold] + m[Amount::held_hot] + m[Amount::held_chilled] + m[Amount::held_thick] + m[Amount::held_own];
        case Role::nut:
        case Role::herb:
        case Role::allium:
        case Role::spice:
            return m[*amount_of_dose(role)];
        case Role::salt:
            return m[Amount::salt];
        case Role::liquid:
            return m[Amount::water];
        case Role::sweet:
            return m[Amount::sugars];
    }
    return 0;
}

std::optional<Amount> amount_of_dose(Role role) {
    switch (role) {
        case Role::nut:
            return Amount::dose_nut;
        case Role::herb:
            return Amount::dose_herb;
        case Role::allium:
            return Amount::dose_allium;
        case Role::spice:
            return Amount::dose_spice;
        default:
            return std::nullopt;
    }
}

void count_as_flavour(Material& stand_in, Role role, const Material& line, double times) {
    const auto dose = amount_of_dose(role);
    if (!dose) return;
    stand_in[*dose] = line[*dose] * times;
    if (role == Role::nut) return;
    if (line[Amount::dose_nut] <= 0) stand_in[Amount::dose_nut] = 0;
    for (const Amount flavour : {Amount::dose_herb, Amount::dose_allium, Amount::dose_spice, Amount::dose_seasoning})
        stand_in[flavour] = line[flavour] * times;
}

std::string_view dose_unit(Role role) {
    switch (role) {
        case Role::lean:
            return "g meat";
        case Role::fat:
            return "g fat";
        case Role::green:
            return "mg chlorophyll";
        case Role::heat:
            return "mg capsaicinoids";
        case Role::acid:
            return "mmol titratable acid";
        case Role::binder:
            return "g water bound";
        case Role::nut:
            return "g nut solids";
        case Role::herb:
        case Role::allium:
        case Role::spice:
            return "g fresh-form equivalent";
        case Role::salt:
            return "g salt";
        case Role::liquid:
            return "g water";
        case Role::sweet:
            return "g sugars";
    }
    return "";
}

}  // namespace standin
