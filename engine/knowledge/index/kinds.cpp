#include "knowledge/index/kinds.hpp"

#include <algorithm>
#include <set>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::string_view sulphite = "sulphite";

bool shares_one(const std::vector<std::string>& all, const std::vector<std::string>& some) {
    return std::any_of(some.begin(), some.end(), [&](const std::string& one) { return contains(all, one); });
}

// "Allium cepa" begins "Allium cepa (Aggregatum Group)" and stands second in "Capsicum frutescens or C. annuum" of no use here.
bool of_plant(const std::string& latin, const std::string& plant) {
    return latin.compare(0, plant.size(), plant) == 0 && (latin.size() == plant.size() || latin[plant.size()] == ' ');
}

bool of_family(const Ingredient& i, const Kind& kind) {
    if (kind.families.empty() && kind.tissues.empty()) return false;
    if (!kind.families.empty() && !contains(kind.families, i.family)) return false;
    if (!kind.tissues.empty() && !contains(kind.tissues, i.tissue)) return false;
    return !kind.untreated || i.already.empty();
}

bool named(const std::vector<std::string>& names, const std::string& folded) {
    return std::any_of(names.begin(), names.end(), [&](const std::string& name) { return fold(name) == folded; });
}

// The casing's own kinds: those of the first entry with a word that is written, else of the entry without words.
const CasingKind* casing_of(std::string_view written, const Knowledge& knowledge) {
    const std::string text = " " + fold(written) + " ";
    for (const auto& casing : knowledge.records().casings)
        if (casing.words.empty() || std::any_of(casing.words.begin(), casing.words.end(), [&](const std::string& word) {
                return text.find(" " + fold(word) + " ") != std::string::npos;
            }))
            return &casing;
    return nullptr;
}

// Whether `kind` takes in the kind called `other`, itself or by way of one it holds.
bool holds_kind(const Kind& kind, const std::string& other, const Knowledge& knowledge) {
    if (kind.id == other) return true;
    return std::any_of(kind.kinds.begin(), kind.kinds.end(), [&](const std::string& part) {
        const Kind* inner = kind_of(part, knowledge);
        return inner && holds_kind(*inner, other, knowledge);
    });
}

// "ue" for the letter with two dots, as keyboards without it write.
std::string without_dots(std::string text) {
    for (const std::string_view pair : {"ae", "oe", "ue"})
        for (auto at = text.find(pair); at != std::string::npos; at = text.find(pair, at + 1)) text.erase(at + 1, 1);
    return text;
}

// Its own allergens and those of the kinds in it.
std::vector<std::string> allergens_of_kind(const Kind& kind, const Knowledge& knowledge) {
    std::vector<std::string> all = kind.allergens;
    for (const auto& id : kind.kinds)
        if (const Kind* part = kind_of(id, knowledge))
            for (auto& allergen : allergens_of_kind(*part, knowledge)) all.push_back(std::move(allergen));
    return all;
}

}  // namespace

const Kind* kind_in_any_tongue(std::string_view word, const Knowledge& knowledge) {
    std::string folded = hazard_fold(word);
    for (auto blank = folded.find(' '); blank != std::string::npos && knowledge.in_list(WordList::article, fold(folded.substr(0, blank)));
         blank = folded.find(' '))
        folded.erase(0, blank + 1);
    if (folded.empty()) return nullptr;
    const std::string plain = without_dots(folded);
    for (const auto& kind : knowledge.records().kinds)
        if (contains(kind.in_tongues, folded) || contains(kind.in_tongues, plain)) return &kind;
    return nullptr;
}

bool is_among(std::string_view allergen, const std::vector<std::string>& held, const Knowledge& knowledge) {
    if (contains(held, allergen)) return true;
    const Kind* group = kind_of(allergen, knowledge);
    return group && shares_one(held, allergens_of_kind(*group, knowledge));
}

bool takes_allergen(const Kind& kind, std::string_view allergen, const Knowledge& knowledge) {
    return is_among(allergen, allergens_of_kind(kind, knowledge), knowledge);
}

const Kind* kind_of(std::string_view id, const Knowledge& knowledge) {
    const auto& all = knowledge.records().kinds;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Kind& k) { return k.id == id; });
    return found == all.end() ? nullptr : &*found;
}

const Kind* kind_named(std::string_view word, const Knowledge& knowledge) {
    const std::string folded = fold(word);
    if (folded.empty()) return nullptr;
    const auto& all = knowledge.records().kinds;
    const auto found = std::find_if(all.begin(), all.end(), [&](const Kind& k) { return named(k.names, folded); });
    return found == all.end() ? nullptr : &*found;
}

std::vector<std::string> allergens_held(const Ingredient& ingredient) {
    std::vector<std::string> all = ingredient.allergens;
    for (const auto& may : ingredient.may_hold)
        if (!contains(all, may)) all.push_back(may);
    if (ingredient.sulphites && ingredient.sulphites->band.high > 0 && !contains(all, std::string(sulphite))) all.emplace_back(sulphite);
    return all;
}

bool belongs(const Ingredient& i, const Kind& kind, const Knowledge& knowledge) {
    if (contains(kind.but, i.id)) return false;
    // Sold under a word that the law allows only where next to none of it is in: the packet still has to be read.
    if (!kind.allergens.empty() && contains(i.free_of, kind.id)) return false;
    if (contains(kind.foods, i.id) || contains(i.kinds, kind.id) || of_family(i, kind)) return true;
    if (i.meat && contains(kind.species, i.meat->species)) return true;
    if (kind.alcohol && i.composition.alcohol.high > 0) return true;
    if (!kind.allergens.empty() && shares_one(kind.allergens, allergens_held(i))) return true;
    if (std::any_of(kind.plants.begin(), kind.plants.end(), [&](const std::string& plant) { return of_plant(i.latin, plant); }))
        return true;
    return std::any_of(kind.kinds.begin(), kind.kinds.end(), [&](const std::string& part) { return belongs(i, part, knowledge); });
}

bool belongs(const Ingredient& ingredient, std::string_view kind, const Knowledge& knowledge) {
    const Kind* known = kind_of(kind, knowledge);
    return known && belongs(ingredient, *known, knowledge);
}

bool same_plant(const Ingredient& one, const Ingredient& other) {
    return !one.latin.empty() && one.latin == other.latin && one.family == other.family && one.family.find("chile") == std::string::npos;
}

bool casing_belongs(std::string_view written, const Kind& kind, const Knowledge& knowledge) {
    const CasingKind* casing = casing_of(written, knowledge);
    return casing &&
           std::any_of(casing->kinds.begin(), casing->kinds.end(), [&](const std::string& of) { return holds_kind(kind, of, knowledge); });
}

std::string casing_name(std::string_view written, const Knowledge& knowledge) {
    const CasingKind* casing = casing_of(written, knowledge);
    return casing ? casing->name : std::string();
}

std::string refusal_of(std::string_view word, const Knowledge& knowledge) {
    const std::string folded = fold(word);
    for (const auto& refused : knowledge.records().refused)
        if (named(refused.names, folded)) return refused.says;
    return {};
}

std::vector<std::pair<std::string, std::string>> faults_of_kinds(const Records& records) {
    std::vector<std::pair<std::string, std::string>> faults;
    std::set<std::string> foods, families, kinds, names, sources;
    for (const auto& i : records.ingredients) {
        foods.insert(i.id);
        families.insert(i.family);
    }
    for (const auto& s : records.sources) sources.insert(s.id);
    for (const auto& k : records.kinds) kinds.insert(k.id);
    const auto known = [&](const std::string& record, const char* what, const std::set<std::string>& all,
                           const std::vector<std::string>& named) {
        for (const auto& one : named)
            if (!all.count(one)) faults.emplace_back(record, std::string("no ") + what + " \"" + one + "\"");
    };
    const auto once = [&](const std::string& record, const std::vector<std::string>& words) {
        for (const auto& word : words)
            if (!names.insert(fold(word)).second) faults.emplace_back(record, "the word \"" + word + "\" stands a second time");
    };
    for (const auto& k : records.kinds) {
        const std::string record = "kind " + k.id;
        known(record, "ingredient", foods, k.foods);
        known(record, "ingredient", foods, k.but);
        known(record, "kind", kinds, k.kinds);
        known(record, "family", families, k.families);
        known(record, "source", sources, {k.source.substr(0, k.source.find('#'))});
        once(record, k.names);
    }
    for (const auto& casing : records.casings) known("casings", "kind", kinds, casing.kinds);
    for (const auto& refused : records.refused) once("refused words", refused.names);
    for (const auto& i : records.ingredients) {
        known("ingredient " + i.id, "kind", kinds, i.kinds);
        known("ingredient " + i.id, "kind", kinds, i.free_of);
    }
    return faults;
}

}  // namespace standin
