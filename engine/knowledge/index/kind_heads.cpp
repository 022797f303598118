#include "knowledge/index/kind_heads.hpp"

#include <algorithm>

#include "core/names.hpp"

namespace standin {
namespace {

// "Cooked rice" by "rice".
bool is_called_by(const Ingredient& food, const Kind& kind) {
    return std::any_of(food.names.begin(), food.names.end(), [&](const std::string& name) {
        const std::string folded = " " + fold(name);
        return std::any_of(kind.names.begin(), kind.names.end(),
                           [&](const std::string& word) { return folded.ends_with(" " + fold(word)); });
    });
}

bool is_plain_list(const Kind& kind) {
    return kind.allergens.empty() && kind.kinds.empty() && kind.families.empty() && kind.tissues.empty() && kind.plants.empty() &&
           kind.species.empty() && !kind.alcohol;
}

}  // namespace

std::vector<const Ingredient*> foods_meant(const Kind& kind, const Knowledge& knowledge) {
    std::vector<const Ingredient*> all, called;
    for (const auto& food : knowledge.records().ingredients) {
        if (!belongs(food, kind, knowledge) || food.family == "condiments") continue;
        all.push_back(&food);
        if (is_plain_list(kind) && is_called_by(food, kind)) called.push_back(&food);
    }
    constexpr std::size_t several = 2;
    return called.size() < several ? all : called;
}

}  // namespace standin
