#include "safety/packets.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "knowledge/kinds.hpp"
#include "safety/exclusions.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr std::string_view kinds_of_packets = "packet-";

bool is_left_out(const std::string& allergen, const std::vector<std::string>& without, const Knowledge& knowledge) {
    return std::any_of(without.begin(), without.end(), [&](const std::string& word) {
        const auto exclusion = exclusion_of(word, knowledge);
        return exclusion && exclusion->kind && takes_allergen(*exclusion->kind, allergen, knowledge);
    });
}

AllergenText& told_of(const std::string& allergen, Prediction& prediction) {
    const auto found = std::find_if(prediction.allergens.begin(), prediction.allergens.end(),
                                    [&](const AllergenText& text) { return text.allergen == allergen; });
    if (found != prediction.allergens.end()) return *found;
    return prediction.allergens.emplace_back(AllergenText{allergen, {}, {}, false});
}

}  // namespace

void tell_of_packets(Prediction& prediction, const std::vector<std::string>& without, const Knowledge& knowledge) {
    for (const auto& kind : knowledge.records().kinds) {
        if (!kind.id.starts_with(kinds_of_packets)) continue;
        const std::string allergen = kind.id.substr(kinds_of_packets.size());
        if (!is_left_out(allergen, without, knowledge)) continue;
        for (const auto& [line, food] : present(prediction, knowledge)) {
            if (!belongs(*food, kind, knowledge)) continue;
            AllergenText& text = told_of(allergen, prediction);
            if (!text.sure && !contains(text.from, line->name)) text.from.push_back(line->name);
        }
    }
}

}  // namespace standin
