#include "render/allergen_words.hpp"

#include <algorithm>
#include <utility>

#include "words.hpp"

namespace standin::cli {
namespace {

bool is_of_packets(const AllergenText& a) { return !a.sure && !a.reckoned; }

std::string where(const AllergenText& a) { return a.beside ? " (beside the mass)" : ""; }

// "of rusk for milk and soy; of mustard for celery": foods with the same allergens together.
std::string packets(const std::vector<AllergenText>& allergens) {
    std::vector<std::pair<std::vector<std::string>, std::vector<std::string>>> by_foods;
    for (const auto& a : allergens) {
        if (!is_of_packets(a)) continue;
        const auto same = std::find_if(by_foods.begin(), by_foods.end(), [&](const auto& one) { return one.first == a.from; });
        if (same == by_foods.end()) by_foods.push_back({a.from, {a.allergen}});
        else same->second.push_back(a.allergen);
    }
    std::string text;
    for (const auto& [foods, held] : by_foods)
        text += (text.empty() ? "check the packet of " : "; of ") + listed(foods) + " for " + listed(held);
    return text;
}

// "milk, sesame and perhaps wheat and soy (check the packet)": of the mass, or of what stands beside it.
std::string in_a_row(const std::vector<AllergenText>& allergens, bool beside) {
    std::vector<std::string> names, perhaps;
    for (const auto& a : allergens)
        if (a.beside == beside && !is_trace(a)) (a.sure ? names : perhaps).push_back(a.allergen);
    if (!perhaps.empty()) names.push_back("perhaps " + listed(perhaps) + " (check the packet)");
    return listed(names);
}

}  // namespace

bool is_trace(const AllergenText& a) { return !a.sure && a.reckoned.has_value(); }

std::string allergen_in_short(const AllergenText& a) {
    if (is_trace(a)) return "a trace of " + a.allergen + " (" + in_words(*a.reckoned) + ")";
    return (a.sure ? "" : "perhaps ") + a.allergen + where(a);
}

std::string allergens_in_short(const std::vector<AllergenText>& allergens) {
    const std::string mass = in_a_row(allergens, false), beside = in_a_row(allergens, true);
    std::string text = mass.empty() ? "none of the listed ones" : mass;
    if (!beside.empty()) text = (mass.empty() ? "none of the listed ones in the mass" : text) + "; beside the mass: " + beside;
    for (const auto& a : allergens)
        if (is_trace(a)) text += "; " + allergen_in_short(a);
    return text;
}

std::string allergen_with_source(const AllergenText& a) {
    if (is_trace(a))
        return "a trace of " + a.allergen + ", from " + listed(a.from) + ": " + in_words(*a.reckoned) +
               ", less than any code wants declared";
    if (!a.sure) return "check the packet of " + listed(a.from) + " for " + a.allergen;
    return a.allergen + ", from " + listed(a.from) + (a.reckoned ? "; " + in_words(*a.reckoned) : "");
}

std::vector<std::string> allergens_in_lines(const std::vector<AllergenText>& allergens) {
    std::vector<std::string> lines;
    for (const auto& a : allergens)
        if (!is_of_packets(a)) lines.push_back(allergen_with_source(a));
    if (std::string rest = packets(allergens); !rest.empty()) lines.push_back(std::move(rest));
    return lines;
}

bool asks_for_packets(const std::vector<AllergenText>& allergens) { return std::any_of(allergens.begin(), allergens.end(), is_of_packets); }

}  // namespace standin::cli
