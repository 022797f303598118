#include "safety/packets.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
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

// Of the kinds of packets each with its allergen.
template <class Take>
void each_kind_of_packet(const Knowledge& knowledge, Take take) {
    for (const auto& kind : knowledge.records().kinds)
        if (kind.id.starts_with(kinds_of_packets)) take(kind, kind.id.substr(kinds_of_packets.size()));
}

}  // namespace

std::set<std::string> packets_to_look_at(const Kind& left_out, const Knowledge& knowledge) {
    std::set<std::string> foods;
    each_kind_of_packet(knowledge, [&](const Kind& kind, const std::string& allergen) {
        if (!takes_allergen(left_out, allergen, knowledge)) return;
        for (const auto& food : knowledge.records().ingredients)
            if (belongs(food, kind, knowledge) && !belongs(food, left_out, knowledge)) foods.insert(food.id);
    });
    return foods;
}

void tell_of_packets(Prediction& prediction, const std::vector<std::string>& without, const Knowledge& knowledge) {
    each_kind_of_packet(knowledge, [&](const Kind& kind, const std::string& allergen) {
        if (!is_left_out(allergen, without, knowledge)) return;
        for (const auto& [line, food] : present(prediction, knowledge)) {
            if (!belongs(*food, kind, knowledge)) continue;
            AllergenText& text = told_of(allergen, prediction);
            if (!text.sure && !contains(text.from, line->name)) text.from.push_back(line->name);
        }
    });
}

}  // namespace standin
