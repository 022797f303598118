#include "safety/promises.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <set>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/hazard_text.hpp"
#include "knowledge/kinds.hpp"
#include "knowledge/word_list.hpp"
#include "safety/allergens.hpp"
#include "safety/casings.hpp"
#include "safety/exclusions.hpp"
#include "safety/title_words.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr std::string_view eaters_kind = "frail-eaters";  // told of, whatever the lines hold

// The lines that hold it, or that may, with the casings and what the formula itself says.
std::vector<std::string> breaking(const Formula& formula, const Kind& kind, const Knowledge& knowledge) {
    std::vector<std::string> names;
    const auto add = [&](const std::string& name) {
        if (!contains(names, name)) names.push_back(name);
    };
    Exclusion exclusion{kind.id, {}, {}, &kind, {}};
    for (const auto& beside : formula.beside)
        if (const Ingredient* food = knowledge.ingredient(beside.ingredient); food && belongs(*food, kind, knowledge))
            exclusion.foods.insert(food->id);
    for (const auto& line : formula.lines) {
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        if (belongs(ingredient, kind, knowledge)) add(ingredient.names.front());
        else if (tells_of_it(exclusion, line.declared, knowledge))
            add(ingredient.names.front() + " (\"" + line.declared.front().words + "\")");
        else if (takes_line(exclusion, line, knowledge)) add(ingredient.names.front() + ", dried");
    }
    if (tells_of_it(exclusion, formula.declared, knowledge)) add("what its notes say (\"" + formula.declared.front().words + "\")");
    for (const auto& beside : beside_excluded(formula, exclusion, knowledge)) add(beside);
    return names;
}

// Everything in it that is, or may be, a listed allergen.
std::vector<std::string> with_any_allergen(const Formula& formula, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& line : formula.lines) {
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        const bool holds = !allergens_held(ingredient).empty() || !line.declared.empty() || !may_hold_as_bought(line, knowledge).empty();
        if (holds && !contains(names, ingredient.names.front())) names.push_back(ingredient.names.front());
    }
    for (const auto& beside : formula.beside)
        if (const Ingredient* food = knowledge.ingredient(beside.ingredient); food && !allergens_held(*food).empty())
            names.push_back(beside.written);
    if (!formula.declared.empty()) names.push_back("what its notes say (\"" + formula.declared.front().words + "\")");
    return names;
}

CautionText promise_caution(ReasonKind kind, std::vector<std::string> foods, const std::string& source, const std::string& promise,
                            bool of_title = true) {
    Reason reason = make_reason(kind, {}, std::move(foods));
    reason.about = of_title ? "title-promise" : "note-promise";
    reason.role = promise;
    return caution_text(std::move(reason), source, {}, promise);
}

CautionText of_title(ReasonKind kind, const std::string& about, const std::string& words) {
    Reason reason = make_reason(kind);
    reason.about = about;
    reason.role = words;
    return caution_text(std::move(reason), "judgement", {}, words);
}

CautionText diet_caution(const Kind& diet, const std::string& promise, bool of_title = true) {
    Reason reason = make_reason(ReasonKind::title_of_diet);
    reason.about = of_title ? "title-promise" : "note-promise";
    reason.role = promise;
    reason.note = diet.note;
    return caution_text(std::move(reason), diet.source, {}, promise);
}

// That it is fit for people who must go without needs more than lines can show.
void of_any_allergen(std::vector<CautionText>& all, const Formula& formula, const Knowledge& knowledge) {
    const auto promise = promise_of_no_allergen(formula.title, knowledge);
    if (!promise) return;
    const auto lines = with_any_allergen(formula, knowledge);
    all.push_back(promise_caution(lines.empty() ? ReasonKind::title_to_be_shown : ReasonKind::title_of_no_allergen, lines,
                                  "eu-1169-2011-art-36", *promise));
}

// Whom a note, a line or the method says it is for: nothing where the title says so, or nobody does.
std::optional<TitlePromise> said_in_notes(const Formula& formula, const Knowledge& knowledge) {
    std::vector<std::string> texts = said_of_guests(formula.read_as);
    texts.push_back(formula.note);
    const auto words = words_of_guests(texts, knowledge);
    return words.empty() ? std::nullopt : std::optional(TitlePromise{words, false});
}

}  // namespace

std::vector<CautionText> broken_promises(const Formula& formula, const Knowledge& knowledge) {
    std::vector<CautionText> all;
    const TitleWords title(formula.title, knowledge);
    of_any_allergen(all, formula, knowledge);
    if (const auto raw = title.words_in(WordList::eaten_raw); !raw.empty())
        all.push_back(of_title(ReasonKind::title_raw, "title-raw", raw));
    else if (const auto kept = title.words_in(WordList::not_fresh); !kept.empty())
        all.push_back(of_title(ReasonKind::title_not_fresh, "title-not-fresh", kept));
    for (const auto& kind : knowledge.records().kinds) {
        auto promise = title.promise_of(kind);
        const bool of_title = promise.has_value();
        if (!promise && kind.id == eaters_kind) promise = said_in_notes(formula, knowledge);
        if (!promise) continue;
        const auto lines = breaking(formula, kind, knowledge);
        if (!lines.empty()) all.push_back(promise_caution(ReasonKind::title_broken, lines, kind.source, promise->words, of_title));
        if (kind.id == eaters_kind) all.push_back(diet_caution(kind, promise->words, of_title));
        if (!lines.empty() || kind.id == eaters_kind) continue;
        if (kind.diet && !kind.note.empty()) all.push_back(diet_caution(kind, promise->words));
        else if (promise->fit_for_people) all.push_back(promise_caution(ReasonKind::title_to_be_shown, {}, "eu-828-2014", promise->words));
    }
    for (auto& told : other_animals(formula, title, knowledge)) all.push_back(std::move(told));
    for (auto& told : animals_of_casings(formula, knowledge)) all.push_back(std::move(told));
    return all;
}

}  // namespace standin
