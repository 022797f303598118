#include "safety/exclusions.hpp"

#include <algorithm>
#include <array>

#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "safety/allergens.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

// Names so near that the word may be a slip of the pen: one letter off, two in a long word.
std::vector<std::string> slips_of(const std::string& folded, const Knowledge& knowledge) {
    constexpr std::size_t most = 3;
    const std::size_t limit = slip_limit(folded);
    std::vector<std::string> near;
    const auto look = [&](const std::string& name) {
        if (near.size() < most && edit_distance(folded, fold(name), limit) <= limit) near.push_back(name);
    };
    for (const auto& kind : knowledge.records().kinds)
        for (const auto& name : kind.names) look(name);
    for (const auto& ingredient : knowledge.records().ingredients)
        for (const auto& name : ingredient.names) look(name);
    return near;
}

bool names_allergens(const Kind& kind, const Knowledge& knowledge) {
    if (kind.diet) return false;
    return !kind.allergens.empty() || std::any_of(kind.kinds.begin(), kind.kinds.end(), [&](const std::string& id) {
        const Kind* part = kind_of(id, knowledge);
        return part && names_allergens(*part, knowledge);
    });
}

Exclusion of_kind(std::string_view word, const Kind& kind, const Knowledge& knowledge) {
    Exclusion found{std::string(word), kind.takes, {}, &kind, {}, names_allergens(kind, knowledge)};
    if (!kind.note.empty()) found.note = said(kind.note);
    for (const auto& ingredient : knowledge.records().ingredients)
        if (belongs(ingredient, kind, knowledge)) found.foods.insert(ingredient.id);
    return found;
}

// "soy sauce" for who cannot have soy is too little, and the word alone does not tell.
std::optional<Reason> what_stays(const Ingredient& named, const Knowledge& knowledge) {
    std::vector<std::string> classes;
    for (const auto& allergen : named.allergens) classes.push_back(allergen_name(allergen, knowledge));
    if (classes.empty()) return std::nullopt;
    return make_reason(ReasonKind::only_that_food, {}, std::move(classes));
}

Exclusion of_ingredient(std::string_view word, const Ingredient& named, const Knowledge& knowledge) {
    Exclusion found{std::string(word), {}, {}, nullptr, {}, false};
    std::vector<std::string> names;
    for (const auto& ingredient : knowledge.records().ingredients) {
        if (ingredient.id != named.id && !same_plant(named, ingredient)) continue;
        found.foods.insert(ingredient.id);
        names.insert(ingredient.id == named.id ? names.begin() : names.end(), ingredient.names.front());
    }
    found.takes = listed(names);
    found.note = what_stays(named, knowledge);
    return found;
}

// "Jordnötter" and "uyu" name a food in a tongue in which the kind has no word: who writes so means all that the English word takes in.
// Null where the word itself tells the sort, as "king prawn" does.
const Kind* kind_of_its_english(const std::string& folded, const Ingredient& named, const Knowledge& knowledge) {
    const Kind* found = nullptr;
    for (const auto& name : named.names) {
        const Kind* kind = kind_named(name, knowledge);
        if (!kind) continue;
        if ((" " + folded + " ").find(" " + fold(name) + " ") != std::string::npos) return nullptr;
        if (!found) found = kind;
    }
    return found;
}

// A word of another tongue: the kind that it names there or in English, or a food without any allergen. What might be a whole class of
// allergens is never taken for one food of it.
std::optional<Exclusion> of_another_tongue(std::string_view word, const Knowledge& knowledge) {
    const std::string folded = hazard_fold(word);
    for (const auto& tongue : knowledge.tongues()) {
        const std::string* english = knowledge.english(tongue, folded);
        if (!english || english->empty()) continue;
        if (const Kind* kind = kind_named(*english, knowledge)) return of_kind(word, *kind, knowledge);
        if (const auto* food = knowledge.ingredient_named(*english); food && allergens_held(*food).empty())
            return of_ingredient(word, *food, knowledge);
    }
    return std::nullopt;
}

// "gluten, milk and nuts": the parts, where each is understood by itself.
std::vector<std::string> several_in(std::string_view word, const Knowledge& knowledge) {
    constexpr std::array<std::string_view, 7> joins{",", ";", "/", "+", "&", " and ", " or "};
    std::vector<std::string> parts{std::string(word)};
    for (const auto join : joins)
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (const auto at = parts[i].find(join); at != std::string::npos) {
                parts.push_back(parts[i].substr(at + join.size()));
                parts[i].resize(at);
            }
    for (auto& part : parts) {
        part.erase(0, std::min(part.size(), part.find_first_not_of(' ')));
        part.erase(part.find_last_not_of(' ') + 1);
    }
    const auto understood = [&](const std::string& part) { return !part.empty() && exclusion_of(part, knowledge); };
    if (parts.size() < 2 || !std::all_of(parts.begin(), parts.end(), understood)) return {};
    return parts;
}

// "-free" behind it, "ohne" before it.
std::string_view bare_in_any_tongue(std::string_view word) {
    constexpr std::array<std::string_view, 8> before{"ohne ", "sans ", "sin ", "senza ", "sem ", "zonder ", "bez ", "pas de "};
    constexpr std::array<std::string_view, 3> behind{"frei", "-frei", "vrij"};
    for (const auto lead : before)
        if (word.substr(0, lead.size()) == lead) word.remove_prefix(lead.size());
    for (const auto end : behind)
        if (word.size() > end.size() + 2 && word.ends_with(end)) word.remove_suffix(end.size());
    return word;
}

}  // namespace

std::string bare_exclusion(std::string_view word) {
    constexpr std::array<std::string_view, 9> before{"no ", "non ", "not ", "without ", "free of ", "free from ", "any ", "all ", "avoid "};
    constexpr std::array<std::string_view, 2> behind{" free", " product"};
    std::string bare = fold(word);
    for (const auto lead : before)
        if (bare.compare(0, lead.size(), lead) == 0) bare.erase(0, lead.size());
    for (const auto end : behind)
        if (bare.size() > end.size() && bare.compare(bare.size() - end.size(), end.size(), end) == 0) bare.resize(bare.size() - end.size());
    return bare;
}

Result<Exclusion> exclusion_of(std::string_view word, const Knowledge& knowledge) {
    const std::string_view bare_word = bare_in_any_tongue(word);
    for (const auto& folded : {fold(word), bare_exclusion(word)}) {
        const auto reason = refusal_of(folded, knowledge);
        if (!reason.empty() && !kind_named(folded, knowledge))
            return failure(Trouble::usage, "\"" + std::string(word) + "\": " + reason, "request.without");
        if (const Kind* kind = kind_named(folded, knowledge)) return of_kind(word, *kind, knowledge);
        for (const std::string_view said : {word, bare_word})
            if (const Kind* kind = kind_in_any_tongue(said, knowledge)) return of_kind(word, *kind, knowledge);
        if (const auto* ingredient = knowledge.ingredient_named(folded)) {
            if (const Kind* kind = kind_of_its_english(folded, *ingredient, knowledge)) return of_kind(word, *kind, knowledge);
            return of_ingredient(word, *ingredient, knowledge);
        }
    }
    if (auto found = of_another_tongue(bare_word, knowledge)) {
        found->word = word;
        return std::move(*found);
    }
    if (const auto parts = several_in(word, knowledge); !parts.empty())
        return failure(Trouble::usage, "\"" + std::string(word) + "\" is several: say each by itself", "request.without", parts);
    return failure(Trouble::usage,
                   "\"" + std::string(word) +
                       "\": neither a food nor a kind of food that is known here, so nothing was left out; name the foods one by one",
                   "request.without", slips_of(bare_exclusion(word), knowledge));
}

bool tells_of_it(const Exclusion& exclusion, const std::vector<Declared>& declared, const Knowledge& knowledge) {
    return exclusion.kind && std::any_of(declared.begin(), declared.end(),
                                         [&](const Declared& told) { return takes_allergen(*exclusion.kind, told.allergen, knowledge); });
}

bool takes_line(const Exclusion& exclusion, const Line& line, const Knowledge& knowledge) {
    if (exclusion.foods.count(line.ingredient) || tells_of_it(exclusion, line.declared, knowledge)) return true;
    const auto may = may_hold_as_bought(line, knowledge);
    return exclusion.kind &&
           std::any_of(may.begin(), may.end(), [&](const auto& allergen) { return takes_allergen(*exclusion.kind, allergen, knowledge); });
}

bool is_casing(const Beside& beside) { return beside.kind == BesideKind::casing; }

bool takes_beside(const Exclusion& exclusion, const Beside& beside, const Knowledge& knowledge) {
    if (!beside.ingredient.empty()) return exclusion.foods.count(beside.ingredient) > 0;
    return exclusion.kind && is_casing(beside) && casing_belongs(beside.written, *exclusion.kind, knowledge);
}

std::vector<std::string> beside_excluded(const Formula& formula, const Exclusion& exclusion, const Knowledge& knowledge) {
    std::vector<std::string> all;
    for (const auto& beside : formula.beside)
        if (takes_beside(exclusion, beside, knowledge)) all.push_back(beside.written);
    return all;
}

bool carries(const Ingredient& ingredient, std::string_view what, const Knowledge& knowledge) {
    const Kind* kind = kind_named(what, knowledge);
    return kind && belongs(ingredient, *kind, knowledge);
}

}  // namespace standin
