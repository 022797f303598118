#include "formula/food/name_text.hpp"

#include <algorithm>
#include <array>
#include <initializer_list>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/amounts/amount.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/words/changes_nothing.hpp"
#include "formula/words/lean_share.hpp"
#include "formula/words/one_of_each.hpp"
#include "formula/words/passed_over.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/index/kind_heads.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_name = 7;  // words

struct Span {
    const Ingredient* ingredient = nullptr;
    std::size_t first = 0, last = 0;
    std::string meant;  // the trade word, where it was understood by one

    std::size_t length() const { return last - first; }
    bool generic() const { return !meant.empty(); }
};

// "lean fresh pork" as "lean pork": words that say nothing about the kind may stand inside a name. Empty when there are none.
std::string without_fillers(const std::vector<Word>& words, std::size_t first, std::size_t last, const Knowledge& knowledge) {
    std::string out;
    bool shorter = false;
    for (std::size_t i = first; i < last; ++i) {
        const bool filler = i > first && i + 1 < last && passable(words, i, knowledge) > 0 && words[i].folded.size() > 3 &&
                            words[i].folded != "with";  // nor "of", "and", "the": they join
        shorter = shorter || filler;
        if (!filler) out += (out.empty() ? "" : " ") + words[i].raw;
    }
    return shorter ? out : std::string();
}

// The longest known name that starts in the first segment with any; of two as long, one that leaves no kind open.
Span find(const std::vector<Word>& words, const Knowledge& knowledge) {
    Span best;
    for (std::size_t first = 0; first < words.size(); ++first) {
        if (best.ingredient && words[first].segment > words[best.first].segment) break;
        for (std::size_t last = std::min(words.size(), first + longest_name); last > first; --last) {
            const std::size_t length = last - first;
            if (passable(words, first, knowledge) > length) break;  // "ice cold milk" names no ice
            // "minced pork shoulder": what is minced is the shoulder.
            const bool only_cut = best.ingredient && first < best.last && cut_word(words, best.first, knowledge) > 0;
            if (best.ingredient && (length < best.length() || (length == best.length() && !best.generic() && !only_cut))) break;
            // Over a comma only to the end of what stands behind it: "lean pork, leg", but not "pork, fat and lean".
            const bool cut_off = last < words.size() && words[last].segment == words[last - 1].segment;
            const auto& end = words[last - 1].folded;
            const bool tells_kind = end == "fat" || end == "lean";  // "bacon, fat" is fat bacon, not bacon fat
            if (words[last - 1].segment != words[first].segment && (cut_off || tells_kind)) continue;
            std::string name = phrase(words, first, last);
            const auto* found = known_ingredient(name, knowledge);
            if (!found && !knowledge.ingredient_meant(name))
                if (auto shorter = without_fillers(words, first, last, knowledge); !shorter.empty())
                    found = known_ingredient(name = std::move(shorter), knowledge);
            if (found) best = {found, first, last, {}};
            else if (const auto* meant = knowledge.ingredient_meant(name); meant && (!best.ingredient || length > best.length()))
                best = {meant, first, last, name};
        }
    }
    return best;
}

bool is_one_of(const Unit* unit, std::initializer_list<std::string_view> words) {
    return unit && std::find(words.begin(), words.end(), unit->word) != words.end();
}

// Whether the words behind a comma are a preparation to be done, and not part of the name. Cutting always is; any other only where
// the knowledge has no food of that name ("parsley, dried" and "sage, fresh" are foods of their own, "spinach, blanched" is spinach).
bool is_preparation(const std::vector<Word>& words, std::size_t first, std::size_t last, const Ingredient& ingredient,
                    const Knowledge& knowledge, bool kinds, const Unit* unit) {
    const std::size_t end = preparation_end(words, first, last, knowledge);
    if (end == first) return false;
    const Preparation& preparation = *knowledge.preparation_named(phrase(words, first, end));
    if (!effect_on(preparation, ingredient.tissue)) return false;
    // A pound of onions is ground in the mincer, a spoonful is powder.
    if (preparation.id == "ground" && ingredient.tissue == Tissue::bulb && !is_one_of(unit, {"tsp", "tbsp"})) return true;
    const bool names_kinds = preparation.id == "ground" || preparation.id == "crushed" || preparation.id == "raw";  // "red pepper, crushed"
    return !kinds || (!names_kinds && changes_nothing({preparation.id, {}}, ingredient, knowledge));
}

void erase(std::vector<Word>& words, std::size_t first, std::size_t last) {
    words.erase(words.begin() + static_cast<std::ptrdiff_t>(first), words.begin() + static_cast<std::ptrdiff_t>(last));
}

std::size_t segment_end(const std::vector<Word>& words, std::size_t first) {
    std::size_t last = first;
    while (last < words.size() && words[last].segment == words[first].segment) ++last;
    return last;
}

// One turn of `invert`: the words from `first` to `last` stand before `name`. Null `ingredient` where that is nobody's name.
Span turned(const std::vector<Word>& words, std::size_t first, std::size_t last, const Span& span, const std::string& name,
            const Knowledge& knowledge) {
    std::string turned_name = phrase(words, first, last) + " " + name;
    if (const auto* found = known_ingredient(turned_name, knowledge)) return {found, span.first, span.last, {}};
    if (!span.generic())  // "Spanish smoked paprika, hot"
        for (const auto& other : span.ingredient->names)
            if (const auto* found = known_ingredient(phrase(words, first, last) + " " + other, knowledge))
                return {found, span.first, span.last, {}};
    const std::string kind = fold(phrase(words, first, last));
    const auto* meant = span.generic() || kind == "lean" || kind == "dried" ? knowledge.ingredient_meant(turned_name) : nullptr;
    return meant ? Span{meant, span.first, span.last, std::move(turned_name)} : Span{};
}

// "Black pepper, cracked" is what is called cracked black pepper too, and is to be cracked all the same; "garlic, minced, dried" names a
// kind with the words that follow.
bool is_done_to_it(const std::vector<Word>& words, std::size_t first, std::size_t last, const Span& span, const std::string& longer,
                   const Knowledge& knowledge) {
    if (preparation_end(words, first, last, knowledge) != last) return false;
    const Preparation& preparation = *knowledge.preparation_named(phrase(words, first, last));
    if (!effect_on(preparation, span.ingredient->tissue) || !changes_nothing({preparation.id, {}}, *span.ingredient, knowledge))
        return false;
    return last >= words.size() || !turned(words, last, segment_end(words, last), span, longer, knowledge).ingredient;
}

// "pepper, white" is "white pepper" when that is a name, "paprika, smoked, hot" hot smoked paprika, "beef, lean" the trade word "lean
// beef", "pork ground" ground pork; the words leave the line. False when nothing was.
bool invert(std::vector<Word>& words, Span& span, const Knowledge& knowledge, bool kinds, const Unit* unit) {
    std::string name = phrase(words, span.first, span.last);
    bool any = false;
    for (std::size_t first = span.last, last = first; first < words.size(); first = last) {
        last = segment_end(words, first);
        const bool beside = words[first].segment == words[span.first].segment;
        if (beside && last > first + 1) continue;
        if (is_preparation(words, first, last, *span.ingredient, knowledge, kinds, unit)) continue;
        auto next = turned(words, first, last, span, name, knowledge);
        if (!next.ingredient || (beside && next.ingredient == span.ingredient)) continue;
        std::string longer = phrase(words, first, last) + " " + name;
        if (next.ingredient == span.ingredient && is_done_to_it(words, first, last, next, longer, knowledge)) {
            span.meant.clear();  // "coriander, ground" is the seed
            continue;
        }
        name = std::move(longer);
        span = std::move(next);
        erase(words, first, last);
        last = first;
        any = true;
    }
    return any;
}

// "rice, boiled" where "rice" by itself is nobody's name.
Span find_inverted(std::vector<Word>& words, const Knowledge& knowledge) {
    if (words.empty()) return {};
    const std::size_t behind = segment_end(words, 0);
    for (std::size_t first = behind, last = first; first < words.size(); first = last) {
        last = segment_end(words, first);
        if (const auto* found = known_ingredient(phrase(words, first, last) + " " + phrase(words, 0, behind), knowledge)) {
            erase(words, first, last);
            return {found, 0, behind, {}};
        }
    }
    if (behind == 2)  // "olives green"
        if (const auto* found = known_ingredient(words[1].raw + " " + words[0].raw, knowledge)) return {found, 0, behind, {}};
    return {};
}

// "pork, back fat": behind a trade word the whole name of a cut of the same animal.
void find_beside(std::vector<Word>& words, Span& span, const Knowledge& knowledge) {
    if (!span.ingredient->meat || span.last >= words.size() || words[span.last].segment == words[span.first].segment) return;
    const std::size_t last = segment_end(words, span.last);
    const auto* cut = known_ingredient(phrase(words, span.last, last), knowledge);
    if (!cut)
        cut = known_ingredient(phrase(words, span.first, span.first + span.length()) + " " + phrase(words, span.last, last), knowledge);
    if (!cut || !cut->meat || cut->meat->species != span.ingredient->meat->species) return;
    span.ingredient = cut;
    span.meant.clear();
    erase(words, span.last, last);
}

const Unit* counted(const Word& word, const Ingredient& ingredient) {
    const Unit* unit = unit_named(word.folded);
    if (!unit || unit->dimension != Dimension::count) return nullptr;
    const bool stick = unit->word == "stick" && has_measure(ingredient, "stalk");
    return stick || has_measure(ingredient, unit->word) ? unit : nullptr;
}

bool any_of(const std::vector<Word>& words, std::initializer_list<std::string_view> wanted) {
    return std::any_of(words.begin(), words.end(),
                       [&](const Word& word) { return std::find(wanted.begin(), wanted.end(), word.folded) != wanted.end(); });
}

bool any_of(const std::vector<Word>& words, WordList list, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.end(), [&](const Word& word) { return knowledge.in_list(list, word.folded); });
}

bool was_cut(const std::vector<Word>& words, const Knowledge& knowledge) { return any_of(words, WordList::cut_while_fresh, knowledge); }

// The same plant or cut under a name with `kind` in front: another ingredient, or null.
const Ingredient* other_kind(std::string_view kind, const std::vector<Word>& words, const Span& span, const Knowledge& knowledge) {
    const auto* other = known_ingredient(std::string(kind) + " " + phrase(words, span.first, span.last), knowledge);
    if (!other && span.length() > 1 && words[span.last - 1].folded == "leaf")  // "marjoram leaves": dried marjoram
        other = known_ingredient(std::string(kind) + " " + phrase(words, span.first, span.last - 1), knowledge);
    return other == span.ingredient ? nullptr : other;
}

std::optional<LeanShare> said_lean(const std::vector<Word>& words, const Knowledge& knowledge) {
    for (std::size_t i = 0; i < words.size(); ++i)
        if (const auto share = lean_share(words, i, knowledge)) return share;
    return std::nullopt;
}

// "sage leaf, rubbed", "thyme, ground", "jalapeño, powdered": a fresh name with a word that makes it dry. Null where no dry form is known.
const Ingredient* dry_kind(const std::vector<Word>& words, const Span& span, std::string_view dry, const Knowledge& knowledge) {
    std::size_t last = span.last;
    while (last > span.first + 1 && (words[last - 1].folded == "leaf" || words[last - 1].folded == "fresh")) --last;
    if (known_ingredient(phrase(words, span.first, last), knowledge) != span.ingredient &&
        !knowledge.ingredient_named("fresh " + phrase(words, span.first, last)))
        last = span.last;  // without its leaf "curry leaf" is another food
    const std::string name = phrase(words, span.first, last);
    std::vector<std::string> names{"ground " + name, name + " powder", "powdered " + name, "dried " + name, name + " flakes"};
    if (dry == "rubbed" || dry == "crumbled" || dry == "flaked" || dry == "dried" || dry == "dry")
        std::rotate(names.begin(), names.begin() + 3, names.end());
    if (span.ingredient->tissue == Tissue::paste) names.push_back(words[last - 1].raw + " powder");  // "english mustard powder"
    for (const auto& one : names)
        if (const auto* found = known_ingredient(one, knowledge); found && found != span.ingredient && found->tissue == Tissue::dry)
            return found;
    return nullptr;
}

std::string said_dry(const std::vector<Word>& words, const Span& span, bool kinds, const Knowledge& knowledge) {
    const Tissue tissue = span.ingredient->tissue;
    const bool leaf = is_leaf(tissue);
    const bool fresh = leaf || tissue == Tissue::fungus || tissue == Tissue::chile_flesh || tissue == Tissue::bulb ||
                       tissue == Tissue::root || tissue == Tissue::paste || tissue == Tissue::fruit || tissue == Tissue::stalk;
    if (!fresh || !span.ingredient->already.empty() || any_of(words, {"fresh", "freshly"})) return {};
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i >= span.first && i < span.last) continue;
        const auto& word = words[i].folded;
        if (knowledge.in_list(WordList::dry_form, word)) return word;
        if (tissue == Tissue::paste && (word == "ground" || word == "powder" || word == "dry")) return word;
        // "Dry ginger"; a dry onion is one with a skin, and "squeezed dry" tells of water.
        if (word == "dry" && i + 1 == span.first && tissue != Tissue::bulb) return word;
        const bool herb = leaf && span.ingredient->roles.front() == Role::herb;
        if (herb && (word == "ground" || (word == "dried" && kinds))) return word;
    }
    return {};
}

// "Fennel, sweated": what is never done to a dry spice.
bool is_done_to_fresh(const std::vector<Word>& words, const Span& span, const Knowledge& knowledge) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::size_t end = preparation_end(words, i, words.size(), knowledge);
        if (end == i || (i >= span.first && i < span.last)) continue;
        if (!effect_on(*knowledge.preparation_named(phrase(words, i, end)), Tissue::dry)) return true;
    }
    return false;
}

// "6 sprigs thyme", "1 tbsp chopped sage", "1 bunch coriander": what is counted by the sprig or chopped is the fresh plant, though the bare
// name means the dried one. "Chicken thighs, boneless and skinless" are the skinless ones, "ground beef,
// 85% lean" is that of a name of its own.
void settle_kind(const std::vector<Word>& words, Span& span, const Unit* unit, bool said_kind, bool counted_on_the_shelf,
                 const Knowledge& knowledge) {
    const Ingredient* other = nullptr;
    if (span.ingredient->tissue == Tissue::dry) {
        const bool of_plant = is_one_of(unit, {"sprig", "leaf", "bunch", "handful", "stalk"}) && !has_measure(*span.ingredient, unit->word);
        const bool done = was_cut(words, knowledge) || is_done_to_fresh(words, span, knowledge);
        if (of_plant || (done && !said_kind && !any_of(words, {"dried", "dry"}))) other = other_kind("fresh", words, span, knowledge);
        if (!other && counted_on_the_shelf)
            other = known_ingredient(phrase(words, span.first, span.last) + " bulb", knowledge);  // "fennel 2"
        if (!other && is_one_of(unit, {"bulb", "head", "stalk", "root"}))                         // "1 bulb of fennel"
            other = known_ingredient(phrase(words, span.first, span.last) + " " + std::string(unit->word), knowledge);
    } else if (const auto share = said_lean(words, knowledge); share && span.ingredient->meat) {
        const bool within = share->first < span.first && share->last > span.first;  // "85% lean ground beef", known as lean ground beef
        Span rest = span;
        if (within) rest.first = share->last;
        other = other_kind(plain_number(share->lean) + " lean", words, rest, knowledge);
        if (other && within) span.first = share->first;
    } else if (any_of(words, {"skinless", "skinned"})) {
        other = other_kind("skinless", words, span, knowledge);
    } else if (span.ingredient->meat && any_of(words, {"skin"}) && any_of(words, {"on", "with"})) {
        other = other_kind("skin on", words, span, knowledge);  // "duck breast with skin"
    }
    if (!other) return;
    span.ingredient = other;
    span.meant.clear();
}

// The name of the form not taken, where the words leave fresh or dried open.
std::string other_form(const std::vector<Word>& words, const Span& span, const Unit* unit, const Knowledge& knowledge) {
    if (was_cut(words, knowledge) || any_of(words, WordList::tells_its_form, knowledge)) return {};
    const Ingredient* other = nullptr;
    const bool leaf = is_leaf(span.ingredient->tissue);
    const bool weighed = unit && unit->dimension == Dimension::mass;
    if (span.ingredient->tissue == Tissue::dry) other = other_kind("fresh", words, span, knowledge);
    else if ((leaf && weighed && span.ingredient->roles.front() == Role::herb) || span.ingredient->tissue == Tissue::root ||
             is_one_of(unit, {"tsp", "tbsp", "dessertspoon", "saltspoon", "pinch", "dash"})) {
        other = other_kind("dried", words, span, knowledge);
        if (!other) other = other_kind("ground", words, span, knowledge);
    }
    return other ? other->names.front() : std::string();
}

// "1 tsp ginger" among spices is the ground one; that this was presumed is told. Of a root only: its fresh form is not measured by a
// teaspoon unless it is said to be cut.
bool presume_ground(const std::vector<Word>& words, Span& span, const Unit* unit, const Knowledge& knowledge) {
    const Tissue tissue = span.ingredient->tissue;
    const bool leaf = tissue == Tissue::thin_leaf && span.ingredient->roles.front() == Role::herb;  // "1 tsp dill"
    if ((tissue != Tissue::root && !leaf) || !is_one_of(unit, {"tsp", "pinch", "dash", "smidgen", "saltspoon"})) return false;
    if (was_cut(words, knowledge) || any_of(words, WordList::no_ground_spice, knowledge)) return false;
    const auto* ground = other_kind(leaf ? "dried" : "ground", words, span, knowledge);
    if (!ground) return false;
    span.ingredient = ground;
    span.meant.clear();
    return true;
}

bool is_fresh(const Ingredient& i) {
    constexpr std::array kept{Tissue::dry, Tissue::liquid, Tissue::paste, Tissue::egg};
    return i.already.empty() && std::find(kept.begin(), kept.end(), i.tissue) == kept.end();
}

// "1 can green chiles" are canned green chiles, where the knowledge has them.
void settle_container(NameRead& name, const std::vector<Word>& words, Span& span, const Unit* container, const Knowledge& knowledge) {
    const bool said = any_of(words, {"fresh", "freshly", "dried"});
    if (!container || !preserves(*container) || !is_fresh(*span.ingredient) || said) return;
    name.preserved_in = container;
    for (const std::string_view kind : {"canned", "tinned", "jarred"})
        if (const auto* other = other_kind(kind, words, span, knowledge)) {
            span.ingredient = other;
            span.meant.clear();
            name.preserved_form = true;
            return;
        }
}

// "Tinned sweetcorn": the word of the container beside the name, which then leaves the line. Null where there is none.
const Unit* take_tinned(std::vector<Word>& words, Span& span) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        const auto& word = words[i].folded;
        const bool tin = word == "tinned" || word == "canned", jar = word == "jarred" || word == "bottled";
        if ((!tin && !jar) || (i >= span.first && i < span.last)) continue;
        erase(words, i, i + 1);
        if (i < span.first) --span.first, --span.last;
        return unit_named(tin ? "can" : "jar");
    }
    return nullptr;
}

// The words that are neither a preparation nor passed over: what must be the name, though nobody knows it.
struct Unknown {
    std::string name;
    std::size_t first = 0;  // word
};

Unknown unknown_name(const std::vector<Word>& words, const Knowledge& knowledge) {
    std::size_t first = words.size(), last = 0;
    for (std::size_t i = 0; i < words.size();) {
        std::size_t end = std::max(
            {preparation_end(words, i, words.size(), knowledge), i + passable(words, i, knowledge), i + cut_word(words, i, knowledge)});
        if (end == i) {
            if (first < words.size() && words[i].segment != words[first].segment) break;
            first = std::min(first, i);
            last = end = i + 1;
        }
        i = end;
    }
    return first < last ? Unknown{phrase(words, first, last), first} : Unknown{};
}

Failure unknown(const std::vector<Word>& words, const LineContext& context) {
    const auto [name, first] = unknown_name(words, context.knowledge);
    if (name.empty()) return failure(Trouble::bad_data, "no ingredient is named in this line", context.origin.start());
    if (const Kind* kind = kind_named(name, context.knowledge))
        return Failure(Error{Trouble::bad_data, "\"" + name + "\" is a kind of food (" + kind->takes + "): say which",
                             context.origin.at(words[first].begin), one_of_each_form(*kind, name, context.knowledge), NotKnown::food});
    return Failure(Error{Trouble::bad_data,
                         "unknown ingredient \"" + name + "\"" + may_hold(phrase(words, 0, words.size()), context.knowledge),
                         context.origin.at(words[first].begin), context.knowledge.nearest_ingredients(name), NotKnown::food});
}

}  // namespace

Result<NameRead> read_name(const LineContext& context, Given given, bool kinds, const Unit* unit, const Unit* container) {
    auto words = words_of(context.line);
    const bool said_fresh = any_of(words, {"fresh"});
    Span span = find(words, context.knowledge);
    if (span.ingredient && span.generic()) find_beside(words, span, context.knowledge);
    if (!span.ingredient) span = find_inverted(words, context.knowledge);
    const bool more = span.ingredient && span.last < words.size() && words[span.last].segment == words[span.first].segment;
    if (!span.ingredient || (more && sounds_only_so(phrase(words, span.first, span.last + 1), *span.ingredient, context.knowledge)))
        return unknown(words, context);
    const bool said_kind = invert(words, span, context.knowledge, kinds, unit);  // "garlic, minced, dried"
    settle_kind(words, span, unit, said_kind, context.on_the_shelf && given == Given::number, context.knowledge);
    if (const auto dry = said_dry(words, span, kinds, context.knowledge); !dry.empty()) {
        const auto* kind = dry_kind(words, span, dry, context.knowledge);
        if (!kind && dry != "ground" && dry != "dried" && dry != "dry" && span.ingredient->tissue != Tissue::paste)
            return failure(Trouble::bad_data,
                           "\"" + dry + "\" makes " + span.ingredient->names.front() +
                               " a dry spice, several times as strong: no dry form of it is known here",
                           context.origin.start(), context.knowledge.nearest_ingredients("dried " + span.ingredient->names.front()));
        if (kind) {
            span.ingredient = kind;
            span.meant.clear();
        }
    }
    if (said_fresh && !any_of(words, {"pickled", "jarred", "brined"}) && contains(span.ingredient->already, std::string("pickled")) &&
        std::none_of(words.begin() + static_cast<std::ptrdiff_t>(span.first), words.begin() + static_cast<std::ptrdiff_t>(span.last),
                     [](const Word& word) { return word.folded == "fresh"; }))
        return failure(Trouble::bad_data, "the pickled ones are known here by this name, and these are said to be fresh: say which kind",
                       context.origin.start(), {span.ingredient->names.front(), "green chile", "cubanelle"});
    NameRead name;
    name.presumed = presume_ground(words, span, unit, context.knowledge);
    if (!container) container = take_tinned(words, span);
    settle_container(name, words, span, container, context.knowledge);
    name.ingredient = span.ingredient;
    for (std::size_t i = span.first; i < span.last; ++i) name.words.push_back(words[i].folded);
    name.said_fresh = said_fresh;
    name.other_form = other_form(words, span, unit, context.knowledge);
    name.generic = span.meant;
    if (name.generic.empty() && context.knowledge.in_list(WordList::leaves_open, fold(phrase(words, span.first, span.last))))
        name.generic = phrase(words, span.first, span.last);
    if (name.generic.empty() && context.knowledge.in_list(WordList::leaves_fat_open, fold(phrase(words, span.first, span.last))))
        name.of_any_fat = phrase(words, span.first, span.last);
    const Unit* counts = unit_named(fold(phrase(words, span.first, span.last)));
    name.is_unit_word = counts && counts->dimension == Dimension::count;
    if (given == Given::number && has_measure(*span.ingredient, "bulb") && !has_measure(*span.ingredient, "piece"))
        name.measure = unit_named("bulb");
    for (std::size_t i = span.first; i < span.last && given == Given::number; ++i)
        if (const Unit* unit = counted(words[i], *span.ingredient)) name.measure = unit;
    std::size_t after = span.last;
    const bool part = after + 1 < words.size() && words[after + 1].folded == "only";  // "6 scallions, stalks only"
    if (given == Given::number && after < words.size() && !part && counted(words[after], *span.ingredient))
        name.measure = counted(words[after++], *span.ingredient);
    // A word beside a trade word is more likely part of a name that is not known: "pork shouder".
    const auto missed = [&](Error error) {
        const bool slip = span.generic() && error.not_known == NotKnown::word &&
                          fold(name.generic).find(fold(unknown_name(words, context.knowledge).name)) == std::string::npos;
        return slip ? unknown(words, context) : Failure(std::move(error));
    };
    LineContext beside = context;
    beside.certain = !span.generic();
    auto said = read_prepared(words, 0, span.first, beside, *span.ingredient, given);
    if (!said) return missed(std::move(said.error()));
    name.before = std::move(*said);
    said = read_prepared(words, after, words.size(), beside, *span.ingredient, given);
    if (!said) return missed(std::move(said.error()));
    name.after = std::move(*said);
    if (!context.adjective_behind || after >= words.size() || words[after].segment != words[span.last - 1].segment) return name;
    // "200 g spinaci lessati e strizzati": an adjective, with no comma before it, as "boiled and squeezed spinach" in English.
    auto adjectives = read_prepared(words, after, segment_end(words, after), beside, *span.ingredient, given);
    if (!adjectives) return name;
    const auto count = static_cast<std::ptrdiff_t>(std::min(adjectives->prepared.size(), name.after.prepared.size()));
    name.before.prepared.insert(name.before.prepared.end(), name.after.prepared.begin(), name.after.prepared.begin() + count);
    name.after.prepared.erase(name.after.prepared.begin(), name.after.prepared.begin() + count);
    return name;
}

}  // namespace standin
