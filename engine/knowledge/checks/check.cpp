#include "knowledge/checks/check.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/typed_reader.hpp"
#include "knowledge/checks/check_lexicon.hpp"
#include "knowledge/checks/check_rules.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/references.hpp"
#include "knowledge/words/claims.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

class Check {
public:
    Check(const Records& records, const Places& places) : records_(records), places_(places) {
        for (const auto& ingredient : records.ingredients) ingredients_.emplace(ingredient.id, &ingredient);
        for (const auto& preparation : records.preparations) preparations_.emplace(preparation.id, &preparation);
        for (const auto& source : records.sources) sources_.insert(source.id);
        for (const auto& condition : records.conditions) conditions_.emplace(condition.id, &condition);
    }

    std::vector<Finding> run() && {
        ids();
        sources();
        names();
        for (const auto& ingredient : records_.ingredients) composition(ingredient);
        for (const auto& swap : records_.swaps)
            if (!swap.any()) ends(swap);
        for (const auto& condition : records_.conditions)
            if (!condition.preparation.empty() && !preparations_.count(condition.preparation))
                add("condition " + condition.id, "no preparation \"" + condition.preparation + "\"",
                    nearest_id(condition.preparation, preparations_));
        words();
        for (auto& [record, message] : faults_of_kinds(records_)) add(record, std::move(message));
        promises();
        check_lexicon(records_, places_, findings_);
        std::stable_sort(findings_.begin(), findings_.end(), [](const Finding& a, const Finding& b) { return a.error > b.error; });
        return std::move(findings_);
    }

private:
    void add(const std::string& record, std::string message, std::vector<std::string> hints = {}, bool error = true) {
        const auto place = places_.find(record);
        findings_.push_back({error, place == places_.end() ? record : place->second, std::move(message), std::move(hints)});
    }

    template <class Known>
    std::vector<std::string> nearest_id(const std::string& wanted, const Known& known) const {
        std::vector<std::string_view> all;
        for (const auto& [id, record] : known) all.push_back(id);
        return nearest_words(wanted, all);
    }

    void ids() {
        std::set<std::string> seen;
        const auto once = [&](const std::string& key) {
            if (!seen.insert(key).second) add(key, "this id stands a second time: " + key);
        };
        for (const auto& r : records_.ingredients) once("ingredient " + r.id);
        for (const auto& r : records_.preparations) once("preparation " + r.id);
        for (const auto& r : records_.sources) once("source " + r.id);
        for (const auto& r : records_.conditions) once("condition " + r.id);
        for (const auto& r : records_.parameters) once("parameter " + r.id);
        for (const auto& r : records_.lexicon.hazards) once("hazard " + r.id);
        for (const auto& r : records_.lexicon.namesakes) once("namesake " + r.id);
        for (const auto& r : records_.perception) once("difference " + r.property);
        for (const auto& r : records_.allergens) once("allergen " + r.id);
        for (const auto& r : records_.rules) {
            once("rules " + r.code);
            for (const auto& c : r.caps) once("rules " + r.code + " cap " + c.id);
            for (const auto& c : r.making) once("rules " + r.code + " making " + c.id);
            for (const auto& c : r.cautions) once("rules " + r.code + " caution " + c.id);
        }
        for (const auto& r : records_.wants) {
            once("want " + r.word);
            for (const auto& other : r.also) once("want " + other);
        }
    }

    void sources() {
        for (const auto& reference : references_in(records_)) {
            const std::string id = reference.source.substr(0, reference.source.find('#'));
            if (sources_.count(id)) continue;
            const std::vector<std::string_view> known(sources_.begin(), sources_.end());
            add(reference.record, "source \"" + id + "\" is not in sources.json", nearest_words(id, known));
        }
    }

    void names() {
        std::map<std::string, std::string> owner;
        for (const auto& ingredient : records_.ingredients) {
            std::set<std::string> own;
            for (const auto& name : ingredient.names) own.insert(fold(name));
            own.insert(fold(ingredient.id));
            for (const auto& name : own) {
                const auto [place, fresh] = owner.emplace(name, ingredient.id);
                if (!fresh && place->second != ingredient.id)
                    add("ingredient " + ingredient.id, "the name \"" + name + "\" already belongs to " + place->second);
            }
        }
        for (const auto& ingredient : records_.ingredients)
            for (const auto& name : ingredient.generic) {
                const auto [place, fresh] = owner.emplace(fold(name), ingredient.id);
                if (!fresh) add("ingredient " + ingredient.id, "the generic name \"" + name + "\" already belongs to " + place->second);
            }
    }

    void composition(const Ingredient& i) {
        for (const auto& step : i.already)
            if (!preparations_.count(step)) add("ingredient " + i.id, "no preparation \"" + step + "\"", nearest_id(step, preparations_));
        if (!i.made_of.empty() && !ingredients_.count(i.made_of))
            add("ingredient " + i.id, "no ingredient \"" + i.made_of + "\"", nearest_id(i.made_of, ingredients_));
        if (!i.ready_by.empty() && !preparations_.count(i.ready_by))
            add("ingredient " + i.id, "no preparation \"" + i.ready_by + "\"", nearest_id(i.ready_by, preparations_));
        const auto& c = i.composition;
        const double sum = c.water.mid + c.protein.mid + c.fat.mid + c.carbohydrate.mid + c.ash.mid + c.alcohol.mid + c.acid.mid;
        if ((sum < 97 || sum > 103) && c.exception.empty())
            add("ingredient " + i.id, "composition adds up to " + std::to_string(sum).substr(0, 6) +
                                          " g in 100 g: expected 97-103, or an \"exception\" that says why");
        if (c.fibre && c.fibre->mid > c.carbohydrate.mid + 0.5) add("ingredient " + i.id, "more fibre than carbohydrate", {}, false);
        const auto& a = i.acidity;
        if (!a || a->acids.empty()) return;
        double shares = 0;
        for (const auto& share : a->acids) shares += share.share;
        if (std::abs(shares - 1) > 0.011)
            add("ingredient " + i.id, "the shares of its acids add up to " + fixed_text(shares, 3) + ", not to 1");
    }

    // Whether the flesh that comes in leaves heat for its partner to bring.
    bool lacks_heat(const Swap& swap) const {
        const auto heat = [&](const std::string& id) {
            const auto found = ingredients_.find(id);
            return found == ingredients_.end() || !found->second->capsaicinoids ? 0.0 : found->second->capsaicinoids->band.mid;
        };
        return swap.ratio && heat(swap.from) > swap.ratio->band.mid * heat(swap.to) && heat(swap.partner->ingredient) > 0;
    }

    void ends(const Swap& swap) {
        const std::string key = swap_key(swap);
        for (const auto& end : {swap.from, swap.to}) {
            const auto found = ingredients_.find(end);
            // By weight it takes the place as it is; a dose is in the currency of the role, which both must have.
            const bool needs_dose = end == swap.from || swap.basis == Basis::dose;
            if (found == ingredients_.end()) add(key, "no ingredient \"" + end + "\"", nearest_id(end, ingredients_));
            else if (const auto& roles = found->second->roles;
                     needs_dose && std::find(roles.begin(), roles.end(), swap.role) == roles.end())
                add(key, end + " does not carry the role " + std::string(spelling(swap.role)), {}, false);
        }
        if (swap.partner && !ingredients_.count(swap.partner->ingredient))
            add(key, "no ingredient \"" + swap.partner->ingredient + "\"", nearest_id(swap.partner->ingredient, ingredients_));
        if (swap.partner && swap.partner->ratio.source.empty() && !lacks_heat(swap))
            add(key, "nothing is lacking that \"" + swap.partner->ingredient + "\" would bring: say its ratio");
        if (swap.from == swap.to && swap.prepared.empty()) add(key, "an ingredient cannot stand in for itself unprepared");
        for (const auto& need : swap.needs)
            if (!conditions_.count(need)) add(key, "no condition \"" + need + "\"", nearest_id(need, conditions_));
        for (const auto& step : swap.prepared) {
            const auto found = preparations_.find(step);
            const auto to = ingredients_.find(swap.to);
            if (found == preparations_.end()) add(key, "no preparation \"" + step + "\"", nearest_id(step, preparations_));
            else if (to != ingredients_.end() && !effect_on(*found->second, to->second->tissue))
                add(key, step + " does not fit " + swap.to);
            else if (to != ingredients_.end() && contains(to->second->already, step))
                add(key, swap.to + " is sold " + step + ", so it is not asked for again");
        }
    }

    void words() {
        check_rules(records_, [this](const std::string& record, std::string message, std::vector<std::string> hints) {
            add(record, std::move(message), std::move(hints));
        });
    }

    void promises() {
        const auto look = [&](const std::string& record, const std::string& text) {
            if (const auto promise = promise_in(text); !promise.empty())
                add(record, "a note must not promise \"" + promise + "\": say what the food brings by itself, and that the label decides");
        };
        for (const auto& i : records_.ingredients) look("ingredient " + i.id, i.note);
        for (const auto& s : records_.swaps) look(swap_key(s), s.note);
        for (const auto& c : records_.conditions) look("condition " + c.id, c.says);
    }

    const Records& records_;
    const Places& places_;
    std::map<std::string, const Ingredient*> ingredients_;
    std::map<std::string, const Preparation*> preparations_;
    std::map<std::string, const Condition*> conditions_;
    std::set<std::string> sources_;
    std::vector<Finding> findings_;
};

}  // namespace

std::vector<Finding> check_records(const Records& records, const Places& places) { return Check(records, places).run(); }

}  // namespace standin
