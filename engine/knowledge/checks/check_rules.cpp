#include "knowledge/checks/check_rules.hpp"

#include <algorithm>
#include <set>

#include "core/typed_reader.hpp"

namespace standin {
namespace {

using Names = std::set<std::string>;

std::vector<std::string> nearest_of(const std::string& wanted, const Names& known) {
    return nearest_words(wanted, {known.begin(), known.end()});
}

class RuleCheck {
public:
    RuleCheck(const Records& records, const Complain& complain) : records_(records), complain_(complain) {
        for (const auto& allergen : records.allergens) allergens_.insert(allergen.id);
        for (const auto& rules : records.rules) {
            for (const auto& group : rules.groups) species_.insert(group.word);
            for (const auto& caution : rules.cautions)
                for (const auto& when : caution.when)
                    if (const auto* bears = std::get_if<IngredientBears>(&when)) cautions_.insert(bears->word);
        }
        for (const auto word : standin::Words<Species>::all) species_.insert(std::string(word));
        for (const auto& i : records.ingredients) borne_.insert(i.cautions.begin(), i.cautions.end());
    }

    void run() {
        if (records_.rules.empty()) return;
        for (const auto& i : records_.ingredients) ingredient(i);
        for (const auto& rules : records_.rules) {
            const std::string at = "rules " + rules.code + " ";
            for (const auto& allergen : rules.allergens) listed(at + "allergen " + allergen.allergen, allergen.allergen);
            for (const auto& caution : rules.cautions)
                for (const auto* all : {&caution.when, &caution.only}) conditions(at + "caution " + caution.id, *all);
            for (std::size_t i = 0; i < rules.cooking.size(); ++i)
                for (const auto& mark : rules.cooking[i].marks)
                    if (!is_of_eaters(mark)) borne(at + "cooking " + std::to_string(i + 1), mark);
            for (const auto& making : rules.making) conditions(at + "making " + making.id, making.when);
        }
    }

private:
    // Those who eat it, a kind that a title names.
    bool is_of_eaters(const std::string& mark) const {
        return std::any_of(records_.kinds.begin(), records_.kinds.end(), [&](const Kind& kind) { return kind.diet && kind.id == mark; });
    }

    void listed(const std::string& record, const std::string& allergen) {
        if (!allergens_.count(allergen))
            complain_(record, "\"" + allergen + "\" is not in the list of allergens", nearest_of(allergen, allergens_));
    }

    void ingredient(const Ingredient& i) {
        const std::string record = "ingredient " + i.id;
        for (const auto& caution : i.cautions)
            if (!cautions_.count(caution))
                complain_(record, "no rule set has a text for the caution \"" + caution + "\"", nearest_of(caution, cautions_));
        for (const auto* words : {&i.allergens, &i.may_hold})
            for (const auto& allergen : *words) listed(record, allergen);
        for (const auto& allergen : i.may_hold)
            if (std::find(i.allergens.begin(), i.allergens.end(), allergen) != i.allergens.end())
                complain_(record, "\"" + allergen + "\" stands both in \"allergens\" and in \"may_hold\"", {});
    }

    void conditions(const std::string& record, const std::vector<When>& all) {
        for (const auto& when : all) {
            if (const auto* allergen = std::get_if<AllergenInside>(&when)) listed(record, allergen->allergen);
            if (const auto* species = std::get_if<SpeciesInside>(&when); species && !species_.count(species->word))
                complain_(record, "unknown species \"" + species->word + "\"", nearest_of(species->word, species_));
            if (const auto* absent = std::get_if<SpeciesAbsent>(&when); absent && !species_.count(absent->word))
                complain_(record, "unknown species \"" + absent->word + "\"", nearest_of(absent->word, species_));
            if (const auto* bears = std::get_if<IngredientBears>(&when)) borne(record, bears->word);
        }
    }

    // Of a word that no ingredient bears nothing would ever be told.
    void borne(const std::string& record, const std::string& word) {
        if (!borne_.count(word)) complain_(record, "no ingredient bears the caution \"" + word + "\"", nearest_of(word, borne_));
    }

    const Records& records_;
    const Complain& complain_;
    Names allergens_, cautions_, species_, borne_;
};

}  // namespace

void check_rules(const Records& records, const Complain& complain) { RuleCheck(records, complain).run(); }

}  // namespace standin
