// What gives back something that the wants cost.
#include <algorithm>

#include "adapt/explain.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {

std::vector<std::string> what_gives_back(const Formula& base, const Distance& distance, const Compared& c, const SwapGraph& graph,
                                         const Stock& stock, const Context& context) {
    constexpr double worth_saying = 0.5, zesty = 2, hardly_sour = 0.15;
    std::vector<std::string> all;
    const double before = c.before.properties[Property::sourness_mmol_kg], after = c.after.properties[Property::sourness_mmol_kg];
    const double lost = (before - after) / std::max(distance.step(Property::sourness_mmol_kg), 1e-9);
    if (lost < worth_saying) return all;
    const Knowledge& knowledge = context.knowledge();
    std::vector<std::string> bright;
    for (const auto& line : base.lines) {
        const double acid = dose_of(context.nominal().unit(line), Role::acid);
        if (acid <= 0) continue;
        for (const auto& path : graph.from(Role::acid, index_of(knowledge, line.ingredient))) {
            const Ingredient& to = knowledge.records().ingredients[path.to];
            Line food;
            food.ingredient = to.id;
            const Material& unit = context.nominal().unit(food);
            const bool aroma_only = unit[AromaNote::citrus] >= zesty && unit[Amount::titratable] < hardly_sour * acid;
            const bool welcome = !stock.offer(to).excluded;
            if (aroma_only && welcome && std::find(bright.begin(), bright.end(), to.names.front()) == bright.end())
                bright.push_back(to.names.front() + (stock.listed() && stock.can_bring(to) ? " (on hand)" : ""));
        }
    }
    std::string list;
    for (std::size_t i = 0; i < std::min<std::size_t>(bright.size(), 3); ++i) list += (i ? ", " : "") + bright[i];
    if (!list.empty())
        all.push_back("Some of the sharpness comes back as aroma, without acid in the mass: " + list + ", 2-4 g to the kilogram.");
    all.push_back("The sharpness itself comes back with the acid left out, brushed on after cooking or served beside it.");
    return all;
}

}  // namespace standin
