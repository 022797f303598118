#include "formula/hazards/hazards.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/hazards/stood_warm.hpp"
#include "formula/hazards/told_content.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/hot_holding.hpp"

namespace standin {
namespace {

Error error_of(const Hazard& hazard, const std::string& said) {
    const std::string what = said.empty() ? hazard.reason : "\"" + said + "\": " + hazard.reason;
    return {Trouble::bad_data, what, "", hazard.hints};
}

// Said of a food that it stands beside: elsewhere an animal may be anybody's name, and a pan may smell.
bool is_of_a_food(const Hazard& hazard) { return hazard.kind == "species" || hazard.kind == "senses" || hazard.kind == "doubt"; }

// Whether a reading stops at it, of whatever food it is said.
bool stops(const HazardMatch& match) {
    return (match.hazard->act == HazardAct::refuse || match.hazard->act == HazardAct::ask) && match.hazard->of.empty();
}

// The first of the hazards that stops a reading; a refusal goes before a question.
const HazardMatch* worst(const std::vector<HazardMatch>& found, const std::string& ingredient, bool beside = false) {
    const HazardMatch* best = nullptr;
    for (const auto& match : found) {
        const auto act = match.hazard->act;
        if (beside && is_of_a_food(*match.hazard)) continue;
        if (act != HazardAct::refuse && act != HazardAct::ask) continue;
        if (ingredient.empty() ? !match.hazard->of.empty() : !contains(match.hazard->of, ingredient)) continue;
        if (!best || (act == HazardAct::refuse && best->hazard->act == HazardAct::ask)) best = &match;
    }
    return best;
}

bool made_safe(const Hazard& hazard, const Line& line) {
    return std::any_of(line.prepared.begin(), line.prepared.end(), [&](const Prepared& step) {
        return contains(hazard.needs, step.preparation) && (!hazard.least_min || !step.minutes || *step.minutes >= *hazard.least_min);
    });
}

bool brings(const Ingredient& ingredient, const Hazard& hazard, const Knowledge& knowledge) {
    if (is_among(hazard.allergen, ingredient.allergens, knowledge)) return true;
    if (hazard.allergen == "sulphite") return ingredient.sulphites.has_value();
    return false;
}

// Rules and risks of its own, though of the same animal: liver, other offal, game.
bool is_special_meat(const Ingredient& other, const Ingredient& own) {
    return std::any_of(other.cautions.begin(), other.cautions.end(), [&](const auto& caution) {
        return (caution == "offal" || caution == "liver" || caution == "game-parasite" || caution == "trichinella") &&
               !contains(own.cautions, caution);
    });
}

std::string offal_in(std::string_view passed, const Knowledge& knowledge) {
    for (const auto& word : words_of(passed))
        if (knowledge.in_list(WordList::offal_word, word.folded)) return word.raw;
    return {};
}

// Another food that the words of `passed` name: of another animal, or with an allergen that the line's own food has not.
const Ingredient* other_food(std::string_view passed, const Ingredient& own, const Knowledge& knowledge) {
    constexpr std::size_t longest = 4;
    const auto words = words_of(passed);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + longest); last > first; --last) {
            const std::string name = phrase(words, first, last);
            const auto* found = knowledge.ingredient_named(name);
            if (!found) found = knowledge.ingredient_meant(name);
            if (!found || found == &own) continue;
            const std::size_t before = hazard_text(passed.substr(0, words[first].begin)).words.size();
            if (is_denied(hazard_text(passed), before, before + hazard_text(name).words.size(), knowledge.records().lexicon)) break;
            const auto& allergens = found->allergens;
            if (!allergens.empty() && std::all_of(allergens.begin(), allergens.end(), [&](const auto& allergen) {
                    return only_sounds_so(hazard_text(passed), before, allergen, knowledge.records().lexicon);
                }))
                break;
            if (found->meat && own.meat && is_special_meat(*found, own)) return found;
            if (found->meat && (!own.meat || found->meat->species != own.meat->species)) return found;
            if (std::any_of(found->allergens.begin(), found->allergens.end(),
                            [&](const auto& allergen) { return !contains(own.allergens, allergen); }))
                return found;
            break;
        }
    return nullptr;
}

// What stood warm for hours, in any words.
std::optional<Error> danger_of_warmth(std::string_view text, const Knowledge& knowledge) {
    const auto said = stood_warm(text, knowledge);
    if (said.empty()) return std::nullopt;
    for (const auto& hazard : knowledge.records().lexicon.hazards)
        if (hazard.id == "mass-stood-warm") return error_of(hazard, said);
    return std::nullopt;
}

}  // namespace

std::optional<Error> danger_in(std::string_view text, const Knowledge& knowledge) {
    const auto found = hazards_in(hazard_text(text), knowledge.records().lexicon);
    const auto* match = worst(found, {});
    if (!match) {
        auto warmth = danger_of_warmth(text, knowledge);
        return warmth ? warmth : content_not_known(text, knowledge);
    }
    Error error = error_of(*match->hazard, match->said);
    // A plant's deadly twin is named whatever else is said of it.
    const auto twin = std::find_if(found.begin(), found.end(), [](const HazardMatch& one) { return one.hazard->kind == "look-alike"; });
    if (twin == found.end() || match->hazard->kind == "look-alike" || match->hazard->kind == "poison") return error;
    Error both = error_of(*twin->hazard, twin->said);
    both.message += ". " + error.message;
    return both;
}

namespace {

// Whether something stops the text, and all that does is such.
template <class Such>
bool all_that_stops(std::string_view text, const Knowledge& knowledge, Such such) {
    const auto found = hazards_in(hazard_text(text), knowledge.records().lexicon);
    return std::any_of(found.begin(), found.end(), stops) &&
           std::all_of(found.begin(), found.end(), [&](const HazardMatch& match) { return !stops(match) || such(match); });
}

}  // namespace

bool only_looks_alike(std::string_view text, const Knowledge& knowledge) {
    return all_that_stops(text, knowledge, [](const HazardMatch& one) { return one.hazard->kind == "look-alike"; });
}

bool only_for_baking(std::string_view text, const Knowledge& knowledge) {
    return all_that_stops(text, knowledge, [](const HazardMatch& one) { return one.hazard->kind == "leavening"; });
}

bool only_asks_which(std::string_view text, const Knowledge& knowledge) {
    return all_that_stops(text, knowledge,
                          [](const HazardMatch& one) { return one.hazard->act == HazardAct::ask && one.hazard->kind == "additive"; });
}

bool stopped_only_by(std::string_view text, const std::function<bool(const std::string&)>& such, const Knowledge& knowledge) {
    return all_that_stops(text, knowledge, [&](const HazardMatch& one) { return one.hazard->act == HazardAct::ask && such(one.said); }) &&
           !danger_of_warmth(text, knowledge);
}

std::optional<Error> danger_beside(std::string_view text, const Knowledge& knowledge) {
    const auto found = hazards_in(hazard_text(text), knowledge.records().lexicon);
    if (const auto* match = worst(found, {}, true)) return error_of(*match->hazard, match->said);
    if (auto warmth = danger_of_warmth(text, knowledge)) return warmth;
    return content_not_known_beside(text, knowledge);
}

std::optional<Error> danger_in_title(std::string_view title, const Knowledge& knowledge) {
    for (const auto& match : hazards_in(hazard_text(title), knowledge.records().lexicon))
        if (match.hazard->kind == "cure") return error_of(*match.hazard, match.said);
    return std::nullopt;
}

namespace {

// "With", "à la": it is of what stands before.
bool joins(const std::string& word, const Knowledge& knowledge) {
    return knowledge.in_list_as_written(WordList::title_join, word) || contains(knowledge.records().lexicon.joins, word);
}

// "Yew Tree Farm", "Foxglove Lane": a place at once behind it, or one word on.
bool names_a_place(const HazardText& text, const HazardMatch& match, const Knowledge& knowledge) {
    for (std::size_t at = match.last; at < std::min(text.words.size(), match.last + 2); ++at) {
        if (knowledge.in_list(WordList::place_behind_a_name, fold(text.words[at]))) return true;
        if (joins(text.words[at], knowledge)) return false;
    }
    return false;
}

// "Rue verte", "Saucisse de la rue Neuve": a street with its name behind it, and no herb that something is made with.
bool is_a_street(const HazardText& text, const HazardMatch& match, const Knowledge& knowledge) {
    if (!knowledge.in_list(WordList::feast_or_street, fold(match.said)) || match.last >= text.words.size()) return false;
    const bool alone = match.first == 0 || text.words[match.first - 1] == "la";
    return alone && !joins(text.words[match.last], knowledge) && !(match.first > 1 && joins(text.words[match.first - 2], knowledge));
}

}  // namespace

std::string name_in_title(std::string_view title, const Knowledge& knowledge) {
    const HazardText text = hazard_text(title);
    std::string name;
    for (const auto& match : hazards_in(text, knowledge.records().lexicon)) {
        if (!stops(match) || is_of_a_food(*match.hazard)) continue;
        if (!names_a_place(text, match, knowledge) && !is_a_street(text, match, knowledge)) return {};
        if (name.empty()) name = match.said;
    }
    return name;
}

std::optional<Error> danger_of_food(std::string_view text, const Line& line, const Knowledge& knowledge, bool on_the_shelf) {
    const auto& lexicon = knowledge.records().lexicon;
    const auto safe = [&](const Hazard& hazard) { return made_safe(hazard, line) || (on_the_shelf && !hazard.needs.empty()); };
    const auto found = hazards_in(hazard_text(text), lexicon);
    if (const auto* match = worst(found, line.ingredient); match && !safe(*match->hazard)) return error_of(*match->hazard, match->said);
    for (const auto& hazard : lexicon.hazards)
        if (hazard.words.empty() && contains(hazard.of, line.ingredient) && !safe(hazard)) return error_of(hazard, "");
    return std::nullopt;
}

std::optional<Error> other_food_in_passing(std::string_view passed, Line& line, const Knowledge& knowledge) {
    const Ingredient& own = *knowledge.ingredient(line.ingredient);
    const HazardText text = hazard_text(passed);
    const auto& lexicon = knowledge.records().lexicon;
    // "Wheat flour, soya flour, may contain sesame": what stands in such a list is in it too.
    const bool of_a_packet =
        std::any_of(text.words.begin(), text.words.end(), [&](const auto& word) { return fits_any(lexicon.holds, word); });
    bool declared = false;
    for (const auto& match : hazards_in(text, lexicon)) {
        if (match.hazard->act != HazardAct::declare || brings(own, *match.hazard, knowledge)) continue;
        if (!of_a_packet && !says_it_holds(text, match, lexicon, true))
            return Error{Trouble::bad_data,
                         "\"" + std::string(passed) + "\" beside " + own.names.front() + " may say that it holds " +
                             match.hazard->allergen + " or that it is another food: write \"contains ...\", or give that food a line",
                         "",
                         {}};
        line.declared.push_back({match.hazard->allergen, std::string(passed)});
        declared = true;
    }
    if (declared) return std::nullopt;
    if (const auto offal = offal_in(passed, knowledge);
        !offal.empty() && !contains(own.cautions, "offal") && !contains(own.cautions, "liver"))
        return Error{Trouble::bad_data,
                     "\"" + offal + "\" beside " + own.names.front() + " is another food, with risks of its own: give it a line",
                     "",
                     {}};
    if (const auto* other = other_food(passed, own, knowledge))
        return Error{Trouble::bad_data,
                     "\"" + std::string(passed) + "\" names another food, " + other->names.front() + ", beside " + own.names.front() +
                         ": give it a line of its own, or leave it out of this one",
                     "",
                     {}};
    return std::nullopt;
}

namespace {

bool is_raw_bean(const HazardMatch& match) { return match.hazard->id == "raw-kidney-bean" || match.hazard->id == "raw-lima-bean"; }

}  // namespace

std::optional<Error> raw_pulse_in(std::string_view text, const std::string& where, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;  // words
    const auto placed = [&](Error error) {
        error.where = where;
        return error;
    };
    if (auto danger = danger_in(text, knowledge)) {
        if (!all_that_stops(text, knowledge, is_raw_bean)) return std::nullopt;
        return placed(std::move(*danger));
    }
    for (const auto& match : hazards_in(hazard_text(text), knowledge.records().lexicon))
        for (const auto* food : foods_named(text, longest, knowledge))
            if (match.hazard->id == "raw-pulse" && contains(match.hazard->of, food->id)) return placed(error_of(*match.hazard, match.said));
    return std::nullopt;
}

namespace {

// An animal and what comes of it: there age and smell tell of what may have spoiled, of a leaf they may be its colour.
bool is_of_an_animal(const Ingredient& food) {
    constexpr std::string_view animals[]{"milk", "egg", "fish", "crustacean", "mollusc"};
    return food.meat || std::any_of(std::begin(animals), std::end(animals), [&](auto one) { return contains(food.allergens, one); });
}

// "Halve the plums and take out the stones."
bool takes_part_away(const HazardText& text, const Knowledge& knowledge) {
    return std::any_of(text.words.begin(), text.words.end(),
                       [&](const auto& word) { return knowledge.in_list_as_written(WordList::takes_part_away, word); });
}

// How hot hot food is held goes by the rules, which a reading does not know: the general figure stands until they do.
Reason told_of(const Hazard& hazard, const std::string& said, const Knowledge& knowledge) {
    Reason told = reason_about(ReasonKind::hazard_told, said);
    told.role = hazard.kind;
    told.note = hazard.reason;
    if (const RuleSet* general = knowledge.rules("general"); general && general->hot_holding)
        tell_hot_holding(told, general->hot_holding->band.mid);
    return told;
}

bool counts_beside(const Hazard& hazard, const Line& line, bool method, bool takes_away, const Knowledge& knowledge) {
    if (hazard.words.empty() || made_safe(hazard, line)) return false;
    const bool of_it = contains(hazard.of, line.ingredient);
    if (!of_it && (!hazard.of.empty() || hazard.kind != "senses")) return false;
    if (method && hazard.act != HazardAct::refuse && hazard.kind != "fungus" && hazard.kind != "species") return false;
    if (takes_away && of_it && method) return false;
    return of_it || hazard.act == HazardAct::refuse || is_of_an_animal(*knowledge.ingredient(line.ingredient));
}

}  // namespace

SaidOfLine what_is_said_of(std::string_view said, std::string_view written, const Line& line, bool method, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    HazardText text = hazard_text(said);
    const HazardText own = hazard_text(written);
    const bool takes_away = takes_part_away(text, knowledge);
    text.append(own);
    const auto known = hazards_in(own, lexicon);
    SaidOfLine out;
    for (const auto& match : hazards_in(text, lexicon)) {
        const Hazard& hazard = *match.hazard;
        const bool told_by_line = std::any_of(known.begin(), known.end(), [&](const auto& one) { return one.hazard == &hazard; });
        if (told_by_line || !counts_beside(hazard, line, method, takes_away, knowledge)) continue;
        if (hazard.act == HazardAct::tell) {
            out.told.push_back(told_of(hazard, match.said, knowledge));
        } else if (hazard.act != HazardAct::declare && !out.danger) {
            out.danger = error_of(hazard, std::string(said));
        }
    }
    return out;
}

Reason told_of_danger(std::string_view text, std::string about, const Knowledge& knowledge) {
    const auto found = hazards_in(hazard_text(text), knowledge.records().lexicon);
    const auto* match = worst(found, {});
    Reason told = match ? told_of(*match->hazard, match->said, knowledge) : make_reason(ReasonKind::hazard_told);
    told.about = std::move(about);
    return told;
}

bool tells_of_doneness(const Reason& told) {
    constexpr std::string_view doneness = "doneness";  // the kind of a hazard of the lexicon
    return told.kind == ReasonKind::hazard_told && told.role == doneness;
}

std::vector<Reason> told_hazards(std::string_view text, const Knowledge& knowledge) { return told_hazards(text, Line{}, knowledge); }

std::vector<Reason> told_of_eaters(std::string_view title, const Knowledge& knowledge) {
    auto told = told_hazards(title, knowledge);
    std::erase_if(told, [](const Reason& one) { return one.role != "medicine" && one.role != "pet"; });
    return told;
}

std::vector<Reason> told_hazards(std::string_view text, const Line& line, const Knowledge& knowledge) {
    std::vector<Reason> told;
    for (const auto& match : hazards_in(hazard_text(text), knowledge.records().lexicon))
        if (match.hazard->act == HazardAct::tell && (match.hazard->of.empty() || contains(match.hazard->of, line.ingredient)))
            told.push_back(told_of(*match.hazard, match.said, knowledge));
    return told;
}

bool sounds_only_so(std::string_view text, const Ingredient& food, const Knowledge& knowledge) {
    const HazardText cut = hazard_text(text);
    return !food.allergens.empty() && std::all_of(food.allergens.begin(), food.allergens.end(), [&](const auto& allergen) {
        return only_sounds_so(cut, 0, allergen, knowledge.records().lexicon);
    });
}

std::optional<Reason> hazard_by_id(std::string_view id, std::string_view said, const Knowledge& knowledge) {
    for (const auto& hazard : knowledge.records().lexicon.hazards)
        if (hazard.id == id) return told_of(hazard, std::string(said), knowledge);
    return std::nullopt;
}

namespace {

// "The seasoning has mustard in it."
bool is_said_to_be_in_it(const HazardText& text, const HazardMatch& match, const Knowledge& knowledge) {
    const auto inside = [&](std::size_t i) {
        const auto says = [&](const std::string& words) { return knowledge.in_list_as_written(WordList::inside_it, words); };
        return says(text.words[i]) || (i + 1 < text.words.size() && says(text.words[i] + " " + text.words[i + 1]));
    };
    bool has = false, in_it = false;
    for (std::size_t i = 0; i < match.first; ++i) has = has || knowledge.in_list_as_written(WordList::holds_it, text.words[i]);
    for (std::size_t i = match.last; i < text.words.size(); ++i) in_it = in_it || inside(i);
    return has && in_it;
}

}  // namespace

std::vector<Declared> declared_in(std::string_view text, const Knowledge& knowledge) {
    const auto& lexicon = knowledge.records().lexicon;
    const HazardText cut = hazard_text(text);
    std::vector<Declared> all;
    for (const auto& match : hazards_in(cut, lexicon))
        if (match.hazard->act == HazardAct::declare &&
            (says_it_holds(cut, match, lexicon, false) || is_said_to_be_in_it(cut, match, knowledge)))
            all.push_back({match.hazard->allergen, match.said});
    return all;
}

std::vector<Declared> allergens_named(std::string_view text, const Knowledge& knowledge) {
    std::vector<Declared> all;
    for (const auto& match : hazards_in(hazard_text(text), knowledge.records().lexicon))
        if (match.hazard->act == HazardAct::declare) all.push_back({match.hazard->allergen, match.said});
    return all;
}

std::string may_hold(std::string_view food, const Knowledge& knowledge) {
    std::vector<std::string> held;
    for (const auto& named : allergens_named(food, knowledge))
        if (!contains(held, named.allergen)) held.push_back(named.allergen);
    return held.empty() ? "" : ", which may hold " + listed(held);
}

std::vector<const Ingredient*> foods_named(std::string_view text, std::size_t longest, const Knowledge& knowledge) {
    std::vector<const Ingredient*> all;
    const auto words = words_of(text);
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + longest); last > first; --last) {
            const std::string name = phrase(words, first, last);
            const auto* found = knowledge.ingredient_named(name);
            if (!found) found = knowledge.ingredient_meant(name);
            if (!found) continue;
            all.push_back(found);
            first = last - 1;
            break;
        }
    return all;
}

std::vector<const Ingredient*> meats_named(std::string_view text, const Knowledge& knowledge) {
    constexpr std::size_t longest = 3;
    auto meats = foods_named(text, longest, knowledge);
    std::erase_if(meats, [](const Ingredient* food) { return !food->meat; });
    return meats;
}

}  // namespace standin
