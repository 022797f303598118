#include "safety/promises.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <set>

#include "core/contains.hpp"
#include "core/has_food.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "safety/allergens.hpp"
#include "safety/casings.hpp"
#include "safety/exclusions.hpp"
#include "safety/goes_without.hpp"
#include "safety/left_out_words.hpp"
#include "safety/sold_clean.hpp"
#include "safety/title_words.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr std::string_view eaters_kind = "frail-eaters";      // told of, whatever the lines hold
constexpr std::string_view small_kind = "pregnant-or-small";  // those of them who drink nothing and choke
constexpr std::string_view kosher_kind = "kosher";
constexpr const char* milk_with_meat = " (milk beside meat)";
constexpr std::string_view choking = "choking";      // the kind of a hazard of the lexicon
constexpr std::string_view raw_dairy = "raw-dairy";  // likewise

// The lines that hold it, or that may, with the casings and what the formula itself says.
std::vector<std::string> breaking(const Formula& formula, const Kind& kind, const Knowledge& knowledge) {
    Exclusion exclusion{kind.id, {}, {}, &kind, {}};
    for (const auto& food : knowledge.records().ingredients)
        if (belongs(food, kind, knowledge)) exclusion.foods.insert(food.id);
    return holding(formula, exclusion, knowledge);
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

// "Gluten-free links" with oats in them.
CautionText clean_caution(const Kind& kind, const std::string& promise) {
    Kind told = kind;
    told.note = kind.clean_says;
    told.source = kind.clean_source;
    return diet_caution(told, promise);
}

// A title may name a diet and whose it is: what the diet asks for is told once.
bool is_told_of_diet(const std::vector<CautionText>& all, const CautionText& one) {
    return one.reason.kind == ReasonKind::title_of_diet && std::any_of(all.begin(), all.end(), [&](const CautionText& told) {
               return told.reason.kind == one.reason.kind && told.reason.note == one.reason.note;
           });
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

// The pregnant and the small among them, wherever they are named.
std::optional<TitlePromise> small_among(const Formula& formula, const TitleWords& title, const Kind& small, const Knowledge& knowledge) {
    if (auto named = title.promise_of(small)) return named;
    for (const auto& text : said_of_guests(formula.read_as))
        if (auto named = TitleWords(text, knowledge).promise_of(small)) return named;
    return TitleWords(formula.note, knowledge).promise_of(small);
}

// "Whole hazelnuts": for the small they are chopped or ground.
std::vector<std::string> choked_on(const Formula& formula, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& line : formula.lines)
        for (const auto& told : line.notes)
            if (told.kind == ReasonKind::hazard_told && told.role == choking)
                names.push_back(knowledge.ingredient(line.ingredient)->names.front() + " (\"" + told.about + "\": chop or grind it)");
    return names;
}

// "Unpasteurised Camembert".
std::vector<std::string> of_raw_milk(const Formula& formula, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& line : formula.lines)
        for (const auto& told : line.notes)
            if (told.kind == ReasonKind::hazard_told && told.role == raw_dairy)
                names.push_back(knowledge.ingredient(line.ingredient)->names.front() + " (\"" + told.about + "\")");
    return names;
}

// The first sentence goes for all; of the others what speaks of nothing that is in the batch is not told.
std::string of_the_batch(const std::string& note, const Formula& formula, const Knowledge& knowledge) {
    const auto first = note.find(". ");
    if (first == std::string::npos) return note;
    const auto is_in_it = [&](const Ingredient& food) { return has_food(formula, food.id); };
    const std::string rest = without_what_is_left_out(note.substr(first + 2), is_in_it, knowledge);
    return note.substr(0, first + 1) + (rest.empty() ? "" : " " + rest);
}

// What those who eat it are advised to leave and is in it, and what is to be minded for them.
void of_eaters(std::vector<CautionText>& all, const Kind& kind, const Formula& formula, const TitleWords& title,
               const Knowledge& knowledge) {
    auto promise = title.promise_of(kind);
    const bool of_title = promise.has_value();
    if (!promise) promise = said_in_notes(formula, knowledge);
    if (!promise) return;
    auto lines = breaking(formula, kind, knowledge);
    for (const auto& name : of_raw_milk(formula, knowledge))
        if (!contains(lines, name)) lines.push_back(name);
    if (const Kind* small = kind_of(small_kind, knowledge))
        if (const auto named = small_among(formula, title, *small, knowledge)) {
            if (named->words != promise->words) promise->words += "\" and \"" + named->words;
            for (const auto& some : {breaking(formula, *small, knowledge), choked_on(formula, knowledge)})
                for (const auto& name : some)
                    if (!contains(lines, name)) lines.push_back(name);
        }
    if (!lines.empty()) all.push_back(promise_caution(ReasonKind::title_broken, lines, kind.source, promise->words, of_title));
    Kind told = kind;
    told.note = of_the_batch(kind.note, formula, knowledge);
    all.push_back(diet_caution(told, promise->words, of_title));
}

// Each part of a kind by a name that a maker may type: liver, honey, alcohol.
void add_parts(std::vector<Exclusion>& left, const Kind& kind, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& part : kind.kinds)
        if (const Kind* of = kind_of(part, knowledge)) names.push_back(of->names.front());
    for (const auto& food : kind.foods) names.push_back(knowledge.ingredient(food)->names.front());
    for (const auto& name : names) {
        auto exclusion = exclusion_of(name, knowledge);
        if (!exclusion) continue;
        const auto is_told = [&](const Exclusion& other) {
            return std::includes(other.foods.begin(), other.foods.end(), exclusion->foods.begin(), exclusion->foods.end());
        };
        if (std::none_of(left.begin(), left.end(), is_told)) left.push_back(std::move(*exclusion));
    }
}

}  // namespace

bool is_for_the_frail(const Formula& formula, const Knowledge& knowledge) {
    const Kind* kind = kind_of(eaters_kind, knowledge);
    return kind && (TitleWords(formula.title, knowledge).promise_of(*kind) || said_in_notes(formula, knowledge));
}

std::vector<GoesWithout> kept_from_eaters(const Formula& formula, const Knowledge& knowledge) {
    std::vector<GoesWithout> all;
    const TitleWords title(formula.title, knowledge);
    for (const auto& kind : knowledge.records().kinds) {
        if (!kind.diet || kind.id == eaters_kind || kind.id == small_kind) continue;
        const auto promise = title.promise_of(kind);
        if (!promise) continue;
        GoesWithout one{promise->words, true, true, {}};
        if (auto exclusion = exclusion_of(kind.names.front(), knowledge); exclusion && !exclusion->foods.empty())
            one.left.push_back(std::move(*exclusion));
        if (kind.id == kosher_kind)
            if (auto milk = milk_beside_meat(formula, knowledge)) one.left.push_back(std::move(*milk));
        if (!one.left.empty()) all.push_back(std::move(one));
    }
    const Kind* frail = kind_of(eaters_kind, knowledge);
    const Kind* small = kind_of(small_kind, knowledge);
    if (!frail || !small) return all;
    const auto named_in_title = title.promise_of(*frail);
    const auto named = named_in_title ? named_in_title : said_in_notes(formula, knowledge);
    if (!named) return all;
    GoesWithout one{named->words, named_in_title.has_value(), true, {}};
    add_parts(one.left, *frail, knowledge);
    if (small_among(formula, title, *small, knowledge)) add_parts(one.left, *small, knowledge);
    if (!one.left.empty()) all.push_back(std::move(one));
    return all;
}

std::vector<CautionText> broken_promises(const Formula& formula, const Knowledge& knowledge) {
    std::vector<CautionText> all;
    const TitleWords title(formula.title, knowledge);
    of_any_allergen(all, formula, knowledge);
    if (const auto raw = title.words_in(WordList::eaten_raw); !raw.empty())
        all.push_back(of_title(ReasonKind::title_raw, "title-raw", raw));
    else if (const auto kept = title.words_in(WordList::not_fresh); !kept.empty())
        all.push_back(of_title(ReasonKind::title_not_fresh, "title-not-fresh", kept));
    for (const auto& kind : knowledge.records().kinds) {
        if (kind.id == small_kind) continue;
        if (kind.id == eaters_kind) {
            of_eaters(all, kind, formula, title, knowledge);
            continue;
        }
        const auto promise = title.promise_of(kind);
        if (!promise) continue;
        auto lines = breaking(formula, kind, knowledge);
        if (kind.id == kosher_kind)
            if (const auto milk = milk_beside_meat(formula, knowledge))
                for (const auto& name : holding(formula, *milk, knowledge))
                    if (!contains(lines, name)) lines.push_back(name + milk_with_meat);
        for (const auto& name : said_clean_in(formula, kind, knowledge)) std::erase(lines, name);
        if (!lines.empty()) all.push_back(promise_caution(ReasonKind::title_broken, lines, kind.source, promise->words));
        else if (kind.diet && !kind.note.empty()) all.push_back(diet_caution(kind, promise->words));
        else if (promise->fit_for_people) all.push_back(promise_caution(ReasonKind::title_to_be_shown, {}, "eu-828-2014", promise->words));
        if (!sold_clean_in(formula, kind, knowledge).empty()) all.push_back(clean_caution(kind, promise->words));
    }
    for (auto& told : cautions_of_guests(formula, knowledge))
        if (!is_told_of_diet(all, told)) all.push_back(std::move(told));
    for (auto& told : other_animals(formula, title, knowledge)) all.push_back(std::move(told));
    for (auto& told : animals_of_casings(formula, knowledge)) all.push_back(std::move(told));
    return all;
}

}  // namespace standin
