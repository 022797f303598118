#include "formula/stock/stock_names.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/contains.hpp"
#include "core/has_food.hpp"
#include "core/names.hpp"
#include "formula/food/name_text.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/line/line_doubts.hpp"
#include "formula/words/limes.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

// "serrano chile" is a chile; "guindilla in vinegar" is no vinegar.
bool is_called(const std::string& folded, const std::string& word) {
    return folded.find(" in ") == std::string::npos && (" " + folded + " ").find(" " + word + " ") != std::string::npos;
}

// A slip of the pen, or a name with the same last word: "parsly", "curled parsley". Butter beans are no peanut butter.
bool may_be_meant(const std::string& written, const Ingredient& ingredient) {
    const std::size_t limit = slip_limit(written);
    const auto head = [](const std::string& text) { return text.substr(text.rfind(' ') == std::string::npos ? 0 : text.rfind(' ') + 1); };
    return std::any_of(ingredient.names.begin(), ingredient.names.end(), [&](const std::string& name) {
        const std::string folded = fold(name);
        return edit_distance(written, folded, limit) <= limit || (written != head(written) && head(written) == folded);
    });
}

// Empty where it is no fruit's juice.
std::string fruit_of(const Ingredient& juice) {
    for (const auto& fruit : juice.generic)
        if (juice.names.front() == fruit + " juice") return fruit;
    return {};
}

// A whole fruit read as its juice holds its zest as well. Null: none is known.
const Ingredient* zest_of(const Ingredient& juice, const Knowledge& knowledge) {
    const std::string fruit = fruit_of(juice);
    return fruit.empty() ? nullptr : knowledge.ingredient_named(fruit + " zest");
}

// "Sage" is read as the dried one and "coriander" as the seed; who has none of it has no leaf either. Null: the name tells the form, or
// there is no other.
const Ingredient* fresh_form(const std::string& folded, const Ingredient& taken, const Knowledge& knowledge) {
    if (taken.tissue != Tissue::dry) return nullptr;
    const auto* fresh = known_ingredient("fresh " + folded, knowledge);
    return fresh && fresh->tissue != Tissue::dry ? fresh : nullptr;
}

// "pork fat" of "pork back fat": the same words and one more, of one kind.
bool is_wider_word(const std::string& word, const std::string& name) {
    const auto own = words_of(name), wide = words_of(word);
    if (wide.size() < 2 || wide.size() >= own.size() || wide.back().folded != own.back().folded) return false;
    std::size_t at = 0;
    for (const auto& one : own)
        if (at < wide.size() && one.folded == wide[at].folded) ++at;
    return at == wide.size();
}

// So near that a list that names the one by a wider word may mean the other.
bool are_near_kin(const Ingredient& a, const Ingredient& b, bool absent) {
    constexpr double fat_apart = 30, salt_apart = 1;  // g in 100 g, judgement
    if ((a.family != b.family && !absent) || a.tissue != b.tissue || (a.meat && b.meat && a.meat->species != b.meat->species)) return false;
    const auto& one = a.composition;
    const auto& other = b.composition;
    return absent || (std::abs(one.fat.mid - other.fat.mid) <= fat_apart && std::abs(one.salt.mid - other.salt.mid) <= salt_apart);
}

// Wet for wet and whole for whole: cream and sour cream, onion and shallot; neither garlic and its powder nor celery and its root.
bool are_of_one_form(const Ingredient& a, const Ingredient& b) {
    constexpr std::array spooned{Tissue::liquid, Tissue::paste};
    constexpr double alcohol_apart = 15;  // g in 100 g, judgement: wine is no spirit
    return (a.tissue == b.tissue || (contains(spooned, a.tissue) && contains(spooned, b.tissue))) &&
           std::abs(a.composition.alcohol.mid - b.composition.alcohol.mid) <= alcohol_apart;
}

bool ends_in(const Ingredient& food, const std::string& folded) {
    return std::any_of(food.names.begin(), food.names.end(), [&](const auto& name) { return (" " + fold(name)).ends_with(" " + folded); });
}

const Kind* kind_called(std::string_view word, const Knowledge& knowledge) {
    const Kind* kind = kind_named(word, knowledge);
    return kind ? kind : kind_in_any_tongue(word, knowledge);
}

}  // namespace

// The only line of the formula that `folded` may name by a wider word than its own.
std::optional<std::string> StockNamer::line_by_wider_word(const std::string& folded, const Ingredient& read, bool absent) const {
    if (!formula_ || in_formula(read.id)) return std::nullopt;
    std::vector<std::string> ids;
    for (const auto& line : formula_->lines) {
        const Ingredient& own = *knowledge_.ingredient(line.ingredient);
        const bool wider =
            std::any_of(own.names.begin(), own.names.end(), [&](const auto& name) { return is_wider_word(folded, fold(name)); });
        if (wider && are_near_kin(own, read, absent) && std::find(ids.begin(), ids.end(), own.id) == ids.end()) ids.push_back(own.id);
    }
    return ids.size() == 1 ? std::optional(ids.front()) : std::nullopt;
}

bool StockNamer::in_formula(const std::string& id) const { return formula_ && has_food(*formula_, id); }

bool StockNamer::touches_formula(std::string_view text) const {
    constexpr std::size_t shortest = 4;  // letters
    const auto words = words_of(text);
    const auto says_how = [&](const Word& word) {  // "ground" elder is no ground pepper
        return knowledge_.preparation_named(word.raw) || knowledge_.in_list(WordList::cut, word.folded) ||
               knowledge_.in_list(WordList::passed_over, word.folded) || knowledge_.in_list(WordList::stock_loose, word.folded) ||
               knowledge_.in_list(WordList::another_kind, word.folded);
    };
    return formula_ && std::any_of(formula_->lines.begin(), formula_->lines.end(), [&](const Line& line) {
               const auto& names = knowledge_.ingredient(line.ingredient)->names;
               return std::any_of(words.begin(), words.end(), [&](const Word& word) {
                   return word.folded.size() >= shortest && !says_how(word) &&
                          std::any_of(names.begin(), names.end(), [&](const std::string& name) {
                              return (" " + fold(name) + " ").find(" " + word.folded + " ") != std::string::npos;
                          });
               });
           });
}

std::vector<std::string> StockNamer::lines_called(const std::string& folded) const {
    std::vector<std::string> ids;
    if (!formula_ || folded.empty() || knowledge_.in_list(WordList::tells_form, folded)) return ids;
    for (const auto& line : formula_->lines) {
        const Ingredient& ingredient = *knowledge_.ingredient(line.ingredient);
        const bool called = fold(line.called) == folded || std::any_of(ingredient.names.begin(), ingredient.names.end(),
                                                                       [&](const auto& name) { return is_called(fold(name), folded); });
        if (called && std::find(ids.begin(), ids.end(), line.ingredient) == ids.end()) ids.push_back(line.ingredient);
    }
    return ids;
}

std::vector<std::string> StockNamer::lines_of_kind(std::string_view word) const {
    std::vector<std::string> ids;
    const Kind* kind = kind_called(word, knowledge_);
    if (!formula_ || !kind) return ids;
    for (const auto& line : formula_->lines)
        if (belongs(*knowledge_.ingredient(line.ingredient), *kind, knowledge_) &&
            std::find(ids.begin(), ids.end(), line.ingredient) == ids.end())
            ids.push_back(line.ingredient);
    return ids;
}

// What goes with a food that the list has none of: no cream, no crème fraîche.
bool StockNamer::is_kin(const Ingredient& line, const Ingredient& read, std::string_view word) const {
    const Kind* kind = kind_called(word, knowledge_);
    const bool of_kind = kind && belongs(line, *kind, knowledge_) && line.roles.front() == read.roles.front();
    const std::string folded = fold(word);
    const bool dry = line.tissue == Tissue::dry && read.tissue != Tissue::dry;  // garlic and its powder
    return (of_kind && are_of_one_form(line, read)) || (!dry && ends_in(line, folded)) || fold(line.names.front()).ends_with(folded);
}

// Lines that the last word of a kind's name calls: peppers of a chile, that is a hot pepper.
std::optional<Reason> StockNamer::may_be_named(const std::string& folded, std::string_view text) const {
    std::vector<std::string> left;
    for (const auto& line : formula_ ? formula_->lines : std::vector<Line>{}) {
        const Ingredient& food = *knowledge_.ingredient(line.ingredient);
        const auto calls = [&](const Kind& kind) {
            return belongs(food, kind, knowledge_) &&
                   std::any_of(kind.names.begin(), kind.names.end(), [&](const auto& name) { return fold(name).ends_with(" " + folded); });
        };
        const auto& kinds = knowledge_.records().kinds;
        if (std::any_of(kinds.begin(), kinds.end(), calls) && !contains(left, food.names.front())) left.push_back(food.names.front());
    }
    if (left.empty()) return std::nullopt;
    return reason_about(ReasonKind::says_nothing_of, std::string(text), std::move(left));
}

// A word that is wider than one food takes in, of the formula, its own reading and what is of one family with those called so: no cheese is
// no goat cheese and no feta, and says nothing of pesto.
void StockNamer::add_kin(std::vector<std::string>& meant, const Ingredient* read, bool own, std::string_view word) const {
    const auto add = [&](const std::string& id) {
        if (!contains(meant, id)) meant.push_back(id);
    };
    const auto of_kind = lines_of_kind(word);
    if (own) {
        for (const auto& id : of_kind)
            if (is_kin(*knowledge_.ingredient(id), *read, word)) add(id);
        return;
    }
    if (read && in_formula(read->id)) meant = {read->id};
    const auto called = meant;
    for (const auto& id : of_kind) {
        const Ingredient& food = *knowledge_.ingredient(id);
        const auto of_one_family = [&](const std::string& one) {  // and no mix with it
            const Ingredient& own_name = *knowledge_.ingredient(one);
            return own_name.family == food.family && own_name.latin.empty() == food.latin.empty();
        };
        if (called.empty() || std::any_of(called.begin(), called.end(), of_one_family)) add(id);
    }
}

// "olives": green ones or black ones, whichever the jar holds. More than a few of one name are a kind to be told apart.
StockNames StockNamer::of_that_name(const std::string& folded, const Kind& kind) const {
    constexpr std::size_t few = 3;
    StockNames all{{}, {}, true};
    std::vector<std::string> names;
    for (const auto& ingredient : knowledge_.records().ingredients) {
        const std::string shown = fold(ingredient.names.front());
        const bool ends =
            shown.size() > folded.size() && shown.compare(shown.size() - folded.size() - 1, std::string::npos, " " + folded) == 0;
        if (!ends || !belongs(ingredient, kind, knowledge_)) continue;
        all.ids.push_back(ingredient.id);
        names.push_back(ingredient.names.front());
    }
    if (all.ids.size() > few) all.ids.clear();
    all.note = reason_about(ReasonKind::whichever_it_is, folded, names);
    return all;
}

// "no fresh chiles" says nothing of dried ones.
StockNames StockNamer::fresh_of_kind(const std::string& folded) const {
    constexpr std::array kept{Tissue::dry, Tissue::liquid, Tissue::paste, Tissue::egg};
    constexpr std::string_view form = "fresh ";
    constexpr std::size_t few = 4;
    StockNames all{{}, {}, true};
    const Kind* kind = folded.starts_with(form) ? kind_named(folded.substr(form.size()), knowledge_) : nullptr;
    if (!kind) return all;
    std::vector<std::string> names;
    for (const auto& ingredient : knowledge_.records().ingredients) {
        if (!belongs(ingredient, *kind, knowledge_) || !ingredient.already.empty() || contains(kept, ingredient.tissue)) continue;
        all.ids.push_back(ingredient.id);
        if (names.size() < few) names.push_back(ingredient.names.front());
    }
    all.note = reason_about(ReasonKind::takes_in, folded, names);
    return all;
}

namespace {

// "Marjoram dried", "peas frozen"
bool is_known_turned(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    if (words.size() < 2 || !knowledge.in_list(WordList::tells_form, words.back().folded)) return false;
    return known_ingredient(words.back().raw + " " + phrase(words, 0, words.size() - 1), knowledge) != nullptr;
}

}  // namespace

bool StockNamer::knows(std::string_view text) const {
    if (is_known_turned(text, knowledge_)) return true;
    return known_ingredient(text, knowledge_) || knowledge_.ingredient_meant(text) || kind_named(text, knowledge_) ||
           !lines_called(fold(text)).empty();
}

std::string StockNamer::other_form(std::string_view names, std::string_view part, bool on_hand) const {
    if (on_hand) return {};
    for (auto& name : form_left(names, part))
        if (knows(name)) return name;
    return {};
}

std::optional<StockNames> StockNamer::whole_fruit(const Line& line, const Origin& origin) const {
    for (const auto& note : line.notes) {
        if (note.kind != ReasonKind::meant_as) continue;
        auto names = named(note.about, origin, false);
        if (names && names->ids.size() == 2 && names->ids.front() == line.ingredient) return std::move(*names);
    }
    return std::nullopt;
}

Result<StockNames> StockNamer::named(std::string_view text, const Origin& origin, bool absent) const {
    const std::string folded = fold(text);
    auto read = read_name({text, origin, knowledge_}, Given::things);
    const bool own = read && read->generic.empty();  // the name of one food and no other
    if (read && !own)
        if (const Ingredient* zest = zest_of(*read->ingredient, knowledge_)) {
            StockNames parts{{read->ingredient->id, zest->id}, reason_about(ReasonKind::juice_and_zest, std::string(text))};
            const Ingredient* whole = absent ? knowledge_.ingredient_named("whole " + fruit_of(*read->ingredient)) : nullptr;
            if (whole) parts.ids.push_back(whole->id);
            return parts;
        }
    const auto lines = lines_called(folded);
    const auto* fresh = read && absent ? fresh_form(folded, *read->ingredient, knowledge_) : nullptr;
    if (fresh && (lines.empty() || in_formula(read->ingredient->id)))
        return StockNames{{read->ingredient->id, fresh->id},
                          reason_about(ReasonKind::takes_in, std::string(text), {name(read->ingredient->id), name(fresh->id)}),
                          true,
                          true};
    const bool wide = absent && !own && kind_called(text, knowledge_);  // "no chiles": not the first that the word may mean alone
    if (read && in_formula(read->ingredient->id) && !wide)
        return StockNames{{read->ingredient->id}, own ? std::nullopt : std::optional(generic_note(*read))};
    if (read && own)
        if (const auto line = line_by_wider_word(folded, *read->ingredient, absent))
            return StockNames{{*line}, reason_about(ReasonKind::of_the_formula, std::string(text), {name(*line)}), true};
    std::vector<std::string> meant = lines;
    if (absent) add_kin(meant, read ? read->ingredient : nullptr, own, text);
    // A food that the formula has not, called by its own name, is that food; to say of it that it is missing says nothing, so then a line
    // that is a kind of it is meant: kale for lacinato kale, but not celery for celery seed.
    std::optional<Reason> stays;  // "no achiote" says nothing of the achiote paste
    if (own && absent) {
        std::vector<std::string> others = meant;
        std::erase_if(meant, [&](const std::string& id) { return !is_kin(*knowledge_.ingredient(id), *read->ingredient, text); });
        for (auto& id : lines_of_kind(text)) others.push_back(std::move(id));
        std::vector<std::string> left;
        for (const auto& id : others)
            if (!contains(meant, id) && !contains(left, name(id))) left.push_back(name(id));
        if (!left.empty()) stays = reason_about(ReasonKind::says_nothing_of, std::string(text), std::move(left));
    }
    if (own && !absent) meant.clear();
    // "Barley" on hand is barley, whatever of the formula is made of it: of malt vinegar the word tells but what it is made from.
    const auto only_made_of_it = [&](const std::string& id) {
        const auto& names = knowledge_.ingredient(id)->names;
        return std::none_of(names.begin(), names.end(),
                            [&](const std::string& name) { return (" " + fold(name)).ends_with(" " + folded); }) &&
               knowledge_.ingredient(id)->family != read->ingredient->family;
    };
    if (meant.empty() && !own) meant = lines_of_kind(text);
    if (read && !own && !absent && kind_named(text, knowledge_)) std::erase_if(meant, only_made_of_it);
    if (!meant.empty()) {
        std::vector<std::string> names;
        for (const auto& id : meant) names.push_back(name(id));
        return StockNames{meant, reason_about(ReasonKind::of_the_formula, std::string(text), names), true};
    }
    if (absent && !stays) stays = may_be_named(folded, text);
    if (read) return StockNames{{read->ingredient->id}, own || (absent && stays) ? stays : std::optional(generic_note(*read))};
    if (const Kind* kind = absent ? kind_called(text, knowledge_) : kind_named(text, knowledge_)) {
        if (auto few = of_that_name(folded, *kind); !absent && !few.ids.empty()) return few;
        if (!absent)
            return failure(Trouble::bad_data, "\"" + std::string(text) + "\" is a kind of food (" + kind->takes + "): say which",
                           origin.start());
        StockNames all{{}, reason_about(ReasonKind::takes_in, std::string(text)), true};
        all.note->note = kind->takes;
        for (const auto& ingredient : knowledge_.records().ingredients)
            if (belongs(ingredient, *kind, knowledge_)) all.ids.push_back(ingredient.id);
        return all;
    }
    if (auto fresh = fresh_of_kind(folded); absent && !fresh.ids.empty()) return fresh;
    Error error = std::move(read.error());
    std::erase_if(error.hints, [&](const std::string& hint) {
        const Ingredient* near = knowledge_.ingredient_named(hint);
        return near && !may_be_meant(folded, *near);
    });
    return Failure(std::move(error));
}

std::optional<bool> limes_on_hand(std::string_view list, const Formula* formula, const Knowledge& knowledge) {
    if (const auto told = limes_in(list, knowledge); told || !formula) return told;
    const auto any = [&](std::string_view fruit) {
        return std::any_of(formula->lines.begin(), formula->lines.end(),
                           [&](const Line& line) { return line.ingredient.find(fruit) != std::string::npos; });
    };
    const bool lime = any("lime"), lemon = any("lemon-") || any("-lemon");
    if (lime == lemon) return std::nullopt;
    return lime;
}

}  // namespace standin
