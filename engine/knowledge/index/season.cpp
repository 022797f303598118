#include "knowledge/index/season.hpp"

#include <algorithm>

namespace standin {

std::vector<int> season_of(const Ingredient& ingredient, int shift) {
    constexpr int year = 12;
    std::vector<int> months;
    for (const int month : ingredient.season) months.push_back(((month - 1 + shift) % year + year) % year + 1);
    return months;
}

std::optional<bool> in_season(const Ingredient& ingredient, int month, int shift) {
    if (ingredient.season.empty()) return std::nullopt;
    const auto months = season_of(ingredient, shift);
    return std::find(months.begin(), months.end(), month) != months.end();
}

}  // namespace standin
