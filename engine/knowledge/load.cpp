#include "knowledge/load.hpp"

#include <algorithm>
#include <filesystem>
#include <set>
#include <unordered_map>

#include "core/names.hpp"
#include "knowledge/checks/check.hpp"
#include "knowledge/checks/only_safer.hpp"
#include "knowledge/packing/flat.hpp"
#include "knowledge/readers/colour_survey.hpp"
#include "knowledge/readers/mending.hpp"
#include "knowledge/readers/reading.hpp"
#include "knowledge/records/references.hpp"

namespace standin {

namespace packed {
// Defined in the file that the packer writes at build time.
extern const double numbers[];
extern const std::size_t number_count;
extern const char text[];
extern const std::size_t text_size;
}  // namespace packed

namespace {

Records embedded_records() { return unflatten(packed::numbers, packed::number_count, {packed::text, packed::text_size}); }

template <class T, class Key>
void lay_over(std::vector<T>& base, const std::vector<T>& over, Key key) {
    std::unordered_map<std::string, std::size_t> place;
    for (std::size_t i = 0; i < base.size() && !over.empty(); ++i) place.emplace(key(base[i]), i);
    for (const auto& record : over) {
        const auto same = place.find(key(record));
        if (same == place.end()) {
            base.push_back(record);
        } else {
            base[same->second] = record;
            place.erase(same);  // a second record of this id is added, for the checks to find
        }
    }
}

// A kind may take in more, never less: somebody may have to be without it.
void widen_kinds(std::vector<Kind>& base, const std::vector<Kind>& over) {
    const auto join = [](auto& all, const auto& more) { all.insert(all.end(), more.begin(), more.end()); };
    for (const auto& kind : over) {
        const auto same = std::find_if(base.begin(), base.end(), [&](const Kind& k) { return k.id == kind.id; });
        if (same == base.end()) {
            base.push_back(kind);
            continue;
        }
        join(same->names, kind.names);
        join(same->foods, kind.foods);
        join(same->kinds, kind.kinds);
        join(same->plants, kind.plants);
        join(same->allergens, kind.allergens);
        join(same->species, kind.species);
        same->takes = kind.takes;
        if (!kind.note.empty()) same->note = kind.note;
    }
}

// An allergen that is added can be left out by its name: it is a kind of food, with what else is called so.
void add_kinds_of_allergens(Records& all, const std::vector<Allergen>& added) {
    for (const auto& allergen : added) {
        std::vector<std::string> names{allergen.name, allergen.id};
        names.insert(names.end(), allergen.words.begin(), allergen.words.end());
        Kind own;
        own.id = "allergen-" + allergen.id;
        own.takes = "foods that hold or may hold " + allergen.name;
        own.source = "judgement";
        own.allergens = {allergen.id};
        std::set<std::string> seen;
        for (const auto& name : names) {
            const std::string folded = fold(name);
            const auto called_so = [&](const auto& record) {
                return std::any_of(record.names.begin(), record.names.end(), [&](const std::string& n) { return fold(n) == folded; });
            };
            if (folded.empty() || !seen.insert(folded).second) continue;
            if (const auto kind = std::find_if(all.kinds.begin(), all.kinds.end(), called_so); kind != all.kinds.end()) {
                kind->allergens.push_back(allergen.id);
                continue;
            }
            if (std::any_of(all.refused.begin(), all.refused.end(), called_so)) continue;
            own.names.push_back(name);
            for (const auto& food : all.ingredients)
                if (called_so(food)) own.foods.push_back(food.id);
        }
        if (!own.names.empty()) all.kinds.push_back(std::move(own));
    }
}

// A food described anew keeps the dangers that the built-in record knows and the new one does not speak of.
void keep_dangers(Ingredient& now, const Ingredient& was) {
    const auto add = [](std::vector<std::string>& to, const std::vector<std::string>& from) {
        for (const auto& one : from)
            if (std::find(to.begin(), to.end(), one) == to.end()) to.push_back(one);
    };
    add(now.cautions, was.cautions);
    add(now.may_hold, was.may_hold);
    std::erase_if(now.may_hold, [&](const std::string& allergen) {
        return std::find(now.allergens.begin(), now.allergens.end(), allergen) != now.allergens.end();
    });
    if (!now.sulphites) now.sulphites = was.sulphites;
    if (!now.most_g_per_kg) now.most_g_per_kg = was.most_g_per_kg;
}

void lay_over_ingredients(std::vector<Ingredient>& base, std::vector<Ingredient> over) {
    for (auto& now : over)
        for (const auto& was : base)
            if (was.id == now.id) keep_dangers(now, was);
    lay_over(base, over, [](const auto& r) { return r.id; });
}

// A rule set of a code that is there already adds to it; what has the same id stands in its place.
void lay_over_rules(std::vector<RuleSet>& base, const std::vector<RuleSet>& over) {
    const auto id = [](const auto& r) { return r.id; };
    for (const auto& rules : over) {
        const auto same = std::find_if(base.begin(), base.end(), [&](const RuleSet& r) { return r.code == rules.code; });
        if (same == base.end()) {
            base.push_back(rules);
            continue;
        }
        same->title = rules.title;
        same->edition = rules.edition;
        lay_over(same->allergens, rules.allergens, [](const auto& r) { return r.allergen; });
        lay_over(same->caps, rules.caps, id);
        lay_over(same->making, rules.making, id);
        lay_over(same->cautions, rules.cautions, id);
        lay_over(same->groups, rules.groups, [](const auto& r) { return r.word; });
        same->cooking.insert(same->cooking.end(), rules.cooking.begin(), rules.cooking.end());  // the most demanding decides
        if (!rules.meat_word.empty()) same->meat_word = rules.meat_word;
        if (rules.wine_sulphites) same->wine_sulphites = rules.wine_sulphites;
        if (rules.hot_holding) same->hot_holding = rules.hot_holding;
    }
}

bool holds_nothing(const Records& r) {
    return r.sources.empty() && r.ingredients.empty() && r.preparations.empty() && r.swaps.empty() && r.conditions.empty() &&
           r.parameters.empty() && r.perception.empty() && r.wants.empty() && r.allergens.empty() && r.rules.empty() && r.kinds.empty() &&
           r.lexicon.hazards.empty() && r.lexicon.tongue.empty() && r.lexicon.listed.empty() && r.lexicon.namesakes.empty();
}

}  // namespace

Knowledge embedded_knowledge() { return Knowledge(embedded_records()); }

Records laid_over_embedded(const Records& over) {
    Records all = embedded_records();
    lay_over(all.sources, over.sources, [](const auto& r) { return r.id; });
    lay_over_ingredients(all.ingredients, over.ingredients);
    lay_over(all.preparations, over.preparations, [](const auto& r) { return r.id; });
    lay_over(all.swaps, over.swaps, swap_key);
    lay_over(all.conditions, over.conditions, [](const auto& r) { return r.id; });
    lay_over(all.parameters, over.parameters, [](const auto& r) { return r.id; });
    lay_over(all.perception, over.perception, [](const auto& r) { return r.property; });
    lay_over(all.wants, over.wants, [](const auto& r) { return r.word; });
    lay_over(all.allergens, over.allergens, [](const auto& r) { return r.id; });
    lay_over_rules(all.rules, over.rules);
    widen_kinds(all.kinds, over.kinds);
    add_kinds_of_allergens(all, over.allergens);
    all.casings.insert(all.casings.begin(), over.casings.begin(), over.casings.end());
    all.refused.insert(all.refused.end(), over.refused.begin(), over.refused.end());
    // A folder of one's own may add words of danger and of other tongues; it takes none away.
    const auto append = [](auto& base, const auto& more) { base.insert(base.end(), more.begin(), more.end()); };
    append(all.lexicon.hazards, over.lexicon.hazards);
    append(all.lexicon.tongue, over.lexicon.tongue);
    append(all.lexicon.listed, over.lexicon.listed);
    append(all.lexicon.namesakes, over.lexicon.namesakes);
    return all;
}

std::vector<Finding> check_laid_over(const Records& all, const KnowledgeFiles& files) {
    std::vector<Finding> findings;
    check_only_safer(
        embedded_records(), files.records, [&](const std::string& record, std::string message, std::vector<std::string> hints) {
            const auto place = files.places.find(record);
            findings.push_back({true, place == files.places.end() ? record : place->second, std::move(message), std::move(hints)});
        });
    for (auto& finding : check_records(all, files.places)) findings.push_back(std::move(finding));
    return findings;
}

Result<Knowledge> overlaid_knowledge(const std::string& folder) {
    KnowledgeFiles files = read_knowledge_folder(folder);
    if (!files.errors.empty()) return Failure(join(files.errors, files.errors.front().trouble));
    for (const auto& file : files.files) {
        const auto name = std::filesystem::path(file).filename();
        if (name == mending_file)
            return failure(Trouble::bad_data, "the words of mending cannot be laid over: they are as they were built in", file);
        if (name == colour_names_file)
            return failure(Trouble::bad_data, "the names of colours cannot be laid over: they are as they were built in", file);
    }
    if (holds_nothing(files.records))
        return failure(Trouble::bad_data,
                       "no record of knowledge in this folder: expected files such as ingredients/own.json or sources.json", folder);
    Records all = laid_over_embedded(files.records);
    std::vector<Error> errors;
    for (const auto& finding : check_laid_over(all, files))
        if (finding.error) errors.push_back({Trouble::bad_data, finding.message, finding.where, finding.hints});
    if (!errors.empty()) return Failure(join(errors));
    return Knowledge(std::move(all), std::filesystem::path(folder + "/").parent_path().filename().string());
}

}  // namespace standin
