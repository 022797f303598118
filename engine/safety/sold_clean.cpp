#include "safety/sold_clean.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"

namespace standin {
namespace {

bool is_sold_clean(const Ingredient& food, const Kind& kind, const Knowledge& knowledge) {
    bool found = false;
    for (const auto& allergen : food.allergens) {
        if (!takes_allergen(kind, allergen, knowledge)) continue;
        if (!contains(kind.sold_clean, allergen)) return false;
        found = true;
    }
    return found;
}

constexpr std::string_view said_free = "said-free";  // the kind of a hazard of the lexicon

bool says_so(const Line& line) {
    return line.declared.empty() && std::any_of(line.notes.begin(), line.notes.end(), [](const Reason& told) {
               return told.kind == ReasonKind::hazard_told && told.role == said_free;
           });
}

std::vector<std::string> names_in(const Formula& formula, const Kind& kind, bool said, const Knowledge& knowledge) {
    std::vector<std::string> names, unsaid;
    for (const auto& line : formula.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        if (!is_sold_clean(food, kind, knowledge)) continue;
        auto& all = said && !says_so(line) ? unsaid : names;
        if (!contains(all, food.names.front())) all.push_back(food.names.front());
    }
    std::erase_if(names, [&](const std::string& name) { return contains(unsaid, name); });
    return names;
}

}  // namespace

std::vector<std::string> sold_clean_in(const Formula& formula, const Kind& kind, const Knowledge& knowledge) {
    return kind.sold_clean.empty() ? std::vector<std::string>() : names_in(formula, kind, false, knowledge);
}

std::vector<std::string> said_clean_in(const Formula& formula, const Kind& kind, const Knowledge& knowledge) {
    return kind.sold_clean.empty() ? std::vector<std::string>() : names_in(formula, kind, true, knowledge);
}

}  // namespace standin
