#include "formula/line/by_share.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/words/open_question.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// Words that say whether a food is fresh or dried.
bool tells_form(const NameRead& name, const Knowledge& knowledge) {
    const auto told = [&](const std::vector<std::string>& all) {
        return std::any_of(all.begin(), all.end(), [&](const std::string& word) { return knowledge.in_list(WordList::tells_form, word); });
    };
    return name.said_fresh || told(name.words) || told(name.before.words) || told(name.after.words) || !name.before.prepared.empty() ||
           !name.after.prepared.empty();
}

// The dried form of a fresh leaf or root.
const Ingredient* dry_form(const NameRead& name, const Knowledge& knowledge) {
    const Tissue tissue = name.ingredient->tissue;
    const bool leaf = is_leaf(tissue);
    const bool herb = leaf && (name.ingredient->family == "herbs" || name.ingredient->family == "alliums");
    if ((!herb && tissue != Tissue::root) || !name.ingredient->already.empty()) return nullptr;
    const std::string own = own_name(name);
    for (const std::string& one : {"dried " + own, "ground " + own}) {
        const auto* found = known_ingredient(one, knowledge);
        if (found && found != name.ingredient && found->tissue == Tissue::dry) return found;
    }
    return nullptr;
}

}  // namespace

std::optional<Error> settle_by_share(NameRead& name, const AmountText& amount, const Around& around, const Knowledge& knowledge) {
    const Unit* unit = amount.parts.front().unit;
    const bool share = unit && unit->dimension == Dimension::percent;
    const bool in_each_kilo = amount.per_grams > 0;  // "8 g/kg"
    if ((around.grams <= 0 && !in_each_kilo) || !unit || (unit->dimension != Dimension::mass && !share)) return std::nullopt;
    const double number = amount.parts.front().number.mid;
    const double per_kilo = share ? 10 * number : 1000 * number * unit->size.mid / (in_each_kilo ? amount.per_grams : around.grams);
    const bool meat = around.meat || in_each_kilo;
    const auto bound = [&](std::string_view id) { return knowledge.parameter("reading." + std::string(id)).mid; };
    const std::string own = own_name(name);
    if (meat && name.ingredient->tissue == Tissue::dry && own == "fennel" && per_kilo > bound("seed-most"))
        return open_question("so much of it may be the bulb and not the seed: say which", {"fennel bulb", "fennel seed"});
    if (tells_form(name, knowledge)) return std::nullopt;
    if (meat && knowledge.in_list(WordList::leaf_when_much, own) && per_kilo > bound("seed-most"))
        if (const auto* leaf = known_ingredient("fresh " + own, knowledge)) {
            name.ingredient = leaf;
            name.other_form.clear();
            name.fresh_by_share = true;
            return std::nullopt;
        }
    const bool little = per_kilo < bound(around.among_spices ? "fresh-least-among-spices" : "fresh-least");
    const auto turn = [&](const Ingredient& dry) {
        name.ingredient = &dry;
        name.generic.clear();
        name.other_form.clear();
        name.by_share = true;
    };
    if (own == "coriander" || own == "koriander" || own == "coriandre") {
        if (const auto* seed = known_ingredient("coriander seed", knowledge); little && seed) turn(*seed);
        return std::nullopt;
    }
    if (!name.generic.empty() && own == "mustard" && little)
        return open_question("so little of it is more likely the powder or the seed than made mustard: say which",
                             {"mustard powder", "mustard seed", "prepared mustard"});
    const auto take_fresh = [&](const Ingredient& fresh) {
        name.ingredient = &fresh;
        name.generic.clear();
        name.other_form.clear();
        name.fresh_by_share = true;
    };
    // So near what a careful maker would put of it dried into a kilo at the very most, it is more likely the leaf.
    const auto& most = name.ingredient->most_g_per_kg;
    const double perhaps_fresh = std::min(bound("fresh-only"), most ? bound("fresh-near-most") * most->band.mid : bound("dry-most"));
    const bool dried_herb = name.ingredient->tissue == Tissue::dry && name.ingredient->roles.front() == Role::herb;
    if (meat && dried_herb && !name.other_form.empty() && per_kilo >= perhaps_fresh)
        if (const auto* fresh = known_ingredient(name.other_form, knowledge)) {
            take_fresh(*fresh);
            name.perhaps_fresh = per_kilo < bound("fresh-only");
            return std::nullopt;
        }
    if (meat && dried_herb && !name.other_form.empty() && per_kilo > bound("dry-most"))
        return open_question(
            "so much of it is more likely " + name.other_form + " than the dried one, which is several times as strong: say which",
            {name.other_form, name.ingredient->names.front()});
    if (meat && dried_herb && !name.generic.empty() && name.other_form.empty() && per_kilo > bound("dry-most"))
        return open_question("so much of it is hardly dried: say which herb", {"parsley", name.ingredient->names.front()});
    const auto* dry = dry_form(name, knowledge);
    if (dry && little) turn(*dry);
    return std::nullopt;
}

}  // namespace standin
