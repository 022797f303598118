#include "safety/page.hpp"

#include <algorithm>
#include <string>

namespace standin {
namespace {

bool has(const std::vector<std::string>& all, const std::string& one) { return std::find(all.begin(), all.end(), one) != all.end(); }

bool says_all_of(const CautionText& old, const CautionText& now) {
    return old.id == now.id && old.degree == now.degree &&
           std::all_of(now.foods.begin(), now.foods.end(), [&](const std::string& food) { return has(old.foods, food); });
}

void add(std::vector<AllergenText>& to, const AllergenText& one) {
    const auto same =
        std::find_if(to.begin(), to.end(), [&](const AllergenText& a) { return a.allergen == one.allergen && a.sure == one.sure; });
    if (same == to.end()) {
        const auto unsure = std::find_if(to.begin(), to.end(), [](const AllergenText& a) { return !a.sure; });
        to.insert(one.sure ? unsure : to.end(), one);
        return;
    }
    for (const auto& food : one.from)
        if (!has(same->from, food)) same->from.push_back(food);
}

}  // namespace

void OnPage::add(const Prediction& prediction) {
    for (const auto& allergen : prediction.allergens) standin::add(safety_.allergens, allergen);
    const bool hotter = prediction.core > safety_.core;
    for (const auto& caution : prediction.cautions) {
        const bool of_core = caution.id == "core-temperature";
        const auto same = std::find_if(safety_.cautions.begin(), safety_.cautions.end(),
                                       [&](const CautionText& c) { return of_core ? c.id == caution.id : says_all_of(c, caution); });
        if (same == safety_.cautions.end()) {
            // One that says less of the same gives way to one that says all of it.
            std::erase_if(safety_.cautions, [&](const CautionText& c) { return !of_core && says_all_of(caution, c); });
            safety_.cautions.push_back(caution);
        } else if (of_core && hotter) *same = caution;
    }
    safety_.core = std::max(safety_.core, prediction.core);
}

std::vector<CautionText> new_cautions(const Prediction& base, const Prediction& variant) {
    std::vector<CautionText> fresh;
    for (const auto& caution : variant.cautions) {
        if (caution.id == "core-temperature" && !(variant.core > base.core)) continue;
        if (std::none_of(base.cautions.begin(), base.cautions.end(), [&](const CautionText& old) { return says_all_of(old, caution); }))
            fresh.push_back(caution);
    }
    return fresh;
}

}  // namespace standin
