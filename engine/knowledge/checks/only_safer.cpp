#include "knowledge/checks/only_safer.hpp"

#include <algorithm>

#include "core/contains.hpp"

namespace standin {
namespace {

using Texts = std::vector<std::string>;

template <class T, class Same>
const T* find(const std::vector<T>& all, Same same) {
    const auto found = std::find_if(all.begin(), all.end(), same);
    return found == all.end() ? nullptr : &*found;
}

template <class T>
const T* of_id(const std::vector<T>& all, const std::string& id) {
    return find(all, [&](const T& one) { return one.id == id; });
}

class OnlySafer {
public:
    OnlySafer(const Records& base, const Complain& complain) : base_(base), complain_(complain) {}

    void ingredient(const Ingredient& over) {
        const Ingredient* base = of_id(base_.ingredients, over.id);
        if (!base) return;
        record_ = "ingredient " + over.id;
        for (const auto& allergen : base->allergens)
            if (!contains(over.allergens, allergen)) lost("the allergen \"" + allergen + "\"");
        if (base->meat && (!over.meat || over.meat->species != base->meat->species))
            lost("that it is " + std::string(spelling(base->meat->species)));
        if (base->sulphites && over.sulphites && over.sulphites->band.high < base->sulphites->band.high) lost("some of the sulphites");
        if (base->most_g_per_kg && over.most_g_per_kg && over.most_g_per_kg->band.mid > base->most_g_per_kg->band.mid)
            raised("the most of it in a kilo");
    }

    void rules(const RuleSet& over) {
        const RuleSet* base = find(base_.rules, [&](const RuleSet& r) { return r.code == over.code; });
        if (!base) return;
        const std::string at = "rules " + over.code + " ";
        for (const auto& rule : over.allergens) {
            record_ = at + "allergen " + rule.allergen;
            if (const auto* old = find(base->allergens, [&](const AllergenRule& r) { return r.allergen == rule.allergen; }))
                threshold(*old, rule);
        }
        for (const auto& cap : over.caps) {
            record_ = at + "cap " + cap.id;
            if (const auto* old = of_id(base->caps, cap.id)) limit(*old, cap);
        }
        for (std::size_t i = 0; i < over.cooking.size(); ++i) {
            record_ = at + "cooking " + std::to_string(i + 1);
            for (const auto& old : base->cooking) core(old, over.cooking[i]);
        }
        for (const auto& making : over.making) {
            record_ = at + "making " + making.id;
            if (const auto* old = of_id(base->making, making.id)) {
                if (making.field != old->field || making.most > old->most) raised("the limit");
                said_as_often(old->when, making.when);
            }
        }
        for (const auto& caution : over.cautions) {
            record_ = at + "caution " + caution.id;
            if (const auto* old = of_id(base->cautions, caution.id)) {
                if (caution.text != old->text || caution.brief != old->brief || caution.salted != old->salted)
                    complain("a built-in caution keeps its text: say more under an id of your own");
                said_as_often(old->when, caution.when);
                if (!caution.only.empty() && caution.only != old->only)
                    complain("holds more seldom than the built-in one: a folder may only make safer");
            }
        }
        record_ = "rules " + over.code;
        if (base->wine_sulphites && over.wine_sulphites && over.wine_sulphites->band.high < base->wine_sulphites->band.high)
            lost("sulphites of wine");
        if (base->hot_holding && over.hot_holding && over.hot_holding->band.mid < base->hot_holding->band.mid) lost("hot holding");
    }

    // The published times of the cook: none shorter.
    void parameter(const Parameter& over) {
        const Parameter* base = of_id(base_.parameters, over.id);
        constexpr std::string_view kill = "lethality.";
        if (!base || over.id.rfind(kill, 0) != 0) return;
        for (const auto* physics : {"heat.", "medium.", "transfer.", "z"})
            if (over.id.compare(kill.size(), std::string(physics).size(), physics) == 0) return;
        record_ = "parameter " + over.id;
        const bool upper = over.id == "lethality.cap" || over.id == "lethality.warming.hours";
        if (upper ? over.quantity.band.mid > base->quantity.band.mid : over.quantity.band.mid < base->quantity.band.mid)
            complain("a figure of the cook may only be made stricter than the built-in one");
    }

private:
    void complain(std::string message) { complain_(record_, std::move(message), {}); }
    void lost(const std::string& what) { complain("leaves out " + what + ", which the built-in record has: a folder may only make safer"); }
    void raised(const std::string& what) { complain("raises " + what + " above the built-in one: a folder may only make safer"); }

    void threshold(const AllergenRule& old, const AllergenRule& rule) {
        const auto least = [](const AllergenRule& r) { return r.over_mg_kg.value_or(r.from_mg_kg.value_or(0)); };
        if (least(rule) > least(old) || (least(rule) == least(old) && rule.over_mg_kg && !old.over_mg_kg))
            raised("the amount from which it is declared");
    }

    void limit(const CapRule& old, const CapRule& cap) {
        if (cap.property != old.property || cap.at_least != old.at_least) return complain("a built-in limit stays about what it is about");
        if (cap.at_least ? cap.limit < old.limit : cap.limit > old.limit)
            complain("loosens a built-in limit: a folder may only make safer");
        const bool wider = cap.names.empty() || (!old.names.empty() && std::all_of(old.names.begin(), old.names.end(),
                                                                                   [&](const auto& n) { return contains(cap.names, n); }));
        if (!wider) complain("leaves out names that the built-in limit is for");
    }

    static bool sooner_at_once(const CookRule& old, const CookRule& rule) {
        return rule.at_once_c && (!old.at_once_c || *rule.at_once_c < *old.at_once_c);
    }

    void core(const CookRule& old, const CookRule& rule) {
        for (const Species s : rule.species)
            if (std::find(old.species.begin(), old.species.end(), s) != old.species.end() &&
                (rule.core_c < old.core_c || (rule.core_c == old.core_c && (rule.hold_s < old.hold_s || sooner_at_once(old, rule)))))
                return complain("lowers the core temperature for " + std::string(spelling(s)) + ": a folder may only make safer");
    }

    void said_as_often(const std::vector<When>& old, const std::vector<When>& now) {
        if (now.empty()) return;
        const bool all = !old.empty() && std::all_of(old.begin(), old.end(),
                                                     [&](const When& w) { return std::find(now.begin(), now.end(), w) != now.end(); });
        if (!all) complain("holds more seldom than the built-in one: a folder may only make safer");
    }

    const Records& base_;
    const Complain& complain_;
    std::string record_;
};

}  // namespace

void check_only_safer(const Records& base, const Records& over, const Complain& complain) {
    OnlySafer check(base, complain);
    for (const auto& ingredient : over.ingredients) check.ingredient(ingredient);
    for (const auto& rules : over.rules) check.rules(rules);
    for (const auto& parameter : over.parameters) check.parameter(parameter);
}

}  // namespace standin
