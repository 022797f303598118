#include "safety/page.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "core/contains.hpp"
#include "safety/cautions.hpp"

namespace standin {
namespace {

void add(std::vector<AllergenText>& to, const AllergenText& one) {
    const auto same =
        std::find_if(to.begin(), to.end(), [&](const AllergenText& a) { return a.allergen == one.allergen && a.sure == one.sure; });
    if (same == to.end()) {
        const auto unsure = std::find_if(to.begin(), to.end(), [](const AllergenText& a) { return !a.sure; });
        to.insert(one.sure ? unsure : to.end(), one);
        return;
    }
    for (const auto& food : one.from)
        if (!contains(same->from, food)) same->from.push_back(food);
    same->beside = same->beside && one.beside;
    if (!same->reckoned || !one.reckoned) return same->reckoned.reset();
    same->reckoned->least_mg_kg = std::min(same->reckoned->least_mg_kg, one.reckoned->least_mg_kg);
    same->reckoned->most_mg_kg = std::max(same->reckoned->most_mg_kg, one.reckoned->most_mg_kg);
}

// One caution for all the foods that call for it, whichever batch they are in.
void join(CautionText& to, const CautionText& more) {
    const bool named = more.foods.size() == more.reason.foods.size();
    for (std::size_t i = 0; i < more.reason.foods.size(); ++i)
        if (named ? !contains(to.foods, more.foods[i]) : !contains(to.reason.foods, more.reason.foods[i]))
            to.reason.foods.push_back(more.reason.foods[i]);
    for (const auto& food : more.foods)
        if (!contains(to.foods, food)) to.foods.push_back(food);
    if (is_told(to.reason)) to.text = in_full(to.reason);
}

void gather(PageSafety& page, const Prediction& prediction) {
    for (const auto& allergen : prediction.allergens) add(page.allergens, allergen);
    const bool hotter = prediction.core > page.core;
    for (const auto& caution : prediction.cautions) {
        const bool of_core = caution.id == core_caution_id;
        const auto same = std::find_if(page.cautions.begin(), page.cautions.end(),
                                       [&](const CautionText& c) { return of_core ? c.id == caution.id : is_same(c, caution); });
        if (same == page.cautions.end()) page.cautions.push_back(caution);
        else if (!of_core) join(*same, caution);
        else if (hotter) *same = caution;
    }
    page.core = std::max(page.core, prediction.core);
}

// Only what came in is new: foods that the base holds already are left out, unless no other calls for it.
CautionText of_what_came_in(const CautionText& caution, const Prediction& base) {
    const auto held = [&](const std::string& food) {
        return std::any_of(base.lines.begin(), base.lines.end(), [&](const PredictedLine& line) { return line.ingredient == food; });
    };
    if (caution.foods.size() != caution.reason.foods.size() || caution.foods.empty()) return caution;
    CautionText fresh = caution;
    fresh.foods.clear();
    fresh.reason.foods.clear();
    for (std::size_t i = 0; i < caution.foods.size(); ++i) {
        if (held(caution.foods[i])) continue;
        fresh.foods.push_back(caution.foods[i]);
        fresh.reason.foods.push_back(caution.reason.foods[i]);
    }
    if (fresh.foods.empty()) return caution;
    if (is_told(fresh.reason)) fresh.text = in_full(fresh.reason);
    return fresh;
}

}  // namespace

// A title or a note may say several things: each is told by itself.
bool is_same(const CautionText& one, const CautionText& other) {
    const bool of_a_promise = one.id == "title-promise" || one.id == "note-promise";
    return one.id == other.id && one.degree == other.degree && (!of_a_promise || one.reason.kind == other.reason.kind);
}

bool says_all_of(const CautionText& one, const CautionText& other) {
    return is_same(one, other) &&
           std::all_of(other.foods.begin(), other.foods.end(), [&](const std::string& food) { return contains(one.foods, food); });
}

bool is_milder(const CautionText& one, const CautionText& other) {
    const auto limit = [](const CautionText& c) {
        for (const auto& figure : c.reason.figures)
            if (figure.what == "limit") return std::optional(figure.after);
        return std::optional<double>();
    };
    const auto here = limit(one), there = limit(other);
    if (one.reason.role.empty() || one.reason.role != other.reason.role || !here || !there) return false;
    return one.reason.role.ends_with(" below") ? *here > *there : *here < *there;
}

bool breaks_the_law(const CautionText& caution) { return caution.reason.kind == ReasonKind::cap && caution.reason.role != "nearly"; }

void OnPage::add(const Prediction& prediction) { gather(safety_, prediction); }

void OnPage::offer(const Prediction& prediction) {
    gather(safety_, prediction);
    gather(offered_, prediction);
}

std::vector<CautionText> new_cautions(const Prediction& base, const Prediction& variant) {
    std::vector<CautionText> fresh;
    for (const auto& caution : variant.cautions) {
        if (caution.id == core_caution_id && !(variant.core > base.core)) continue;
        const auto told = [&](const CautionText& old) { return says_all_of(old, caution) || is_milder(caution, old); };
        if (std::none_of(base.cautions.begin(), base.cautions.end(), told)) fresh.push_back(of_what_came_in(caution, base));
    }
    return fresh;
}

}  // namespace standin
