// What is predicted of a batch, each with its key in files, its unit and how it is shown.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace standin {

enum class Property : std::size_t {
    salt_pct,
    salt_pct_of_meat,
    water_phase_salt_pct,
    fat_pct,
    fat_pct_of_meat,
    protein_pct,
    water_pct,
    ph,
    sourness_mmol_kg,
    water_activity,
    heat_mg_kg,
    heat_shu,
    burn_mg_kg,
    chlorophyll_mg_kg,
    greenness,
    hue_deg,
    bind,
    firmness,
    cook_loss_pct,
    cooked_water_pct,
    cooked_fat_pct,
    cooked_protein_pct,
    cooked_salt_pct,
    cooked_ph,
    juice,
    end
};

inline constexpr std::size_t property_count = static_cast<std::size_t>(Property::end);

struct PropertyInfo {
    std::string_view key;   ///< in JSON
    std::string_view name;  ///< on screens
    std::string_view unit;
    std::string_view word;  ///< in conditions such as `heat<=3`; empty: not offered there
    int decimals;
};

const PropertyInfo& info(Property property);

/// By key, by condition word or by the name on screens, in capitals or not.
std::optional<Property> property_of(std::string_view text);

/// One value a property.
template <class T>
class PerProperty {
public:
    T& operator[](Property p) { return values_[static_cast<std::size_t>(p)]; }
    const T& operator[](Property p) const { return values_[static_cast<std::size_t>(p)]; }

private:
    std::array<T, property_count> values_{};
};

template <class F>
void for_each_property(F visit) {
    for (std::size_t i = 0; i < property_count; ++i) visit(static_cast<Property>(i));
}

}  // namespace standin
