#include "formula/food/prepared_text.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/amounts/amount.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/food/compound_name.hpp"
#include "formula/food/remark.hpp"
#include "formula/food/soaking_liquid.hpp"
#include "formula/food/unknown_word.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/words/changes_nothing.hpp"
#include "formula/words/lean_share.hpp"
#include "formula/words/line_asides.hpp"
#include "formula/words/passed_over.hpp"
#include "formula/words/size_of_pieces.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_step = 5;  // words
constexpr double mostly_fat = 70;        // g in 100 g, judgement: what things are fried in

class PreparedReader {
public:
    PreparedReader(const std::vector<Word>& words, std::size_t last, const LineContext& context, const Ingredient& ingredient, Given given)
        : words_(words), last_(last), context_(context), ingredient_(ingredient), given_(given) {}

    Result<SaidOf> read(std::size_t first) {
        first_ = first;
        for (std::size_t i = first; i < last_;) {
            const std::size_t end = step(i);
            if (const std::size_t told = end == i ? aside(i) : i; told > i) {
                said_.passed.push_back(phrase(words_, i, told));
                i = told;
                continue;
            }
            if (const std::size_t named = end == i && context_.lenient ? mere_name(i) : i; named > i) {
                said_.unknown.push_back(phrase(words_, i, named));
                i = named;
                continue;
            }
            if (end == i) return trouble(i);
            for (; i < end; ++i) said_.words.push_back(words_[i].folded);
        }
        return std::move(said_);
    }

private:
    // "Crinkly kale", "espinacas gigantes": a word that says nothing that matters, with no sign between it and the name.
    bool is_plain_beside(std::size_t i) const {
        const auto& word = words_[i].folded;
        const bool beside = first_ == 0 ? i + 1 == last_ && last_ < words_.size() && words_[i].segment == words_[last_].segment
                                        : words_[i].segment == words_[first_ - 1].segment && context_.adjective_behind;
        return context_.lenient && beside && context_.knowledge.in_list(WordList::plain_remark, word) &&
               !changes_food(word, context_.knowledge) && !names_a_kind(word, context_.knowledge) &&
               !context_.knowledge.in_list(WordList::another_kind, word);
    }

    // The end of what is unknown from word `i` on and can only be a name; `i` itself where it can be more.
    std::size_t mere_name(std::size_t i) const {
        if (may_be_a_measure(i) && std::isupper(static_cast<unsigned char>(words_[i].raw.front())) == 0) return i;
        const BesideFood beside{ingredient_, context_.nouns_have_capitals, context_.adjective_behind, context_.certain};
        const bool before = first_ == 0, apart = !before && words_[i].segment != words_[first_ - 1].segment;
        if (!apart)
            return is_mere_name(words_, i, first_, last_, before ? Stands::before : Stands::behind, beside, context_.knowledge) ? i + 1 : i;
        std::size_t end = i;
        while (end < last_ && words_[end].segment == words_[i].segment) ++end;
        const auto remark = read_remark(phrase(words_, i, end), context_.knowledge, {&ingredient_, context_.line});
        return remark.is == RemarkIs::noted ? end : i;
    }

    // The end of what starts at word `i`; `i` itself when nothing known does.
    std::size_t step(std::size_t i) {
        if (trimmed_of_fat(i)) return i + 3;
        if (const std::size_t end = part_only(i); end > i) {
            said_.part_only.push_back(phrase(words_, i, end));
            return end;
        }
        if (is_another_form(words_[i].folded)) return i;
        if (is_pressed_clove(i)) {
            said_.prepared.push_back({"crushed", std::nullopt});
            return i + 1;
        }
        if (const std::size_t end = fried_in(i); end > i) return end;
        if (const std::size_t end = soaked_in(i); end > i) return end;
        if (const std::size_t end = half_done(i); end > i) return end;
        if (half_cut(i) || (words_[i].folded == "up" && i > 0 && cut_word(words_, i - 1, context_.knowledge) > 0))
            return i + 1;                                                       // "ground up"
        const std::size_t plain = i + passable(words_, i, context_.knowledge);  // "raw milk" of a cheese: longer than the preparation "raw"
        if (plain > i + 1 && plain <= last_ && plain > preparation_end(words_, i, last_, context_.knowledge)) return plain;
        if (const std::size_t end = preparation(i); end > i) return end;
        if (const auto share = fat_share(i); share && ((!share->most && ingredient_.meat) || agrees(*share))) {
            said_.fat_told = true;
            if (!share->most && ingredient_.meat) said_.fat_pct = share->fat;
            return share->end;
        }
        if (after_soaking(i)) return i + 1;
        if (const std::size_t end = size_of_pieces(words_, i, last_, context_.knowledge); end > i) return end;
        if (tells_colour(i)) {
            said_.passed.push_back(words_[i].raw);
            return i + 1;
        }
        if (const std::size_t count = cut_word(words_, i, context_.knowledge)) return std::min(i + count, last_);
        if (const std::size_t count = passable(words_, i, context_.knowledge)) return std::min(i + count, last_);
        if (const std::size_t end = same_again(i); end > i) return end;
        const auto& word = words_[i].folded;
        return counts_nothing(word) || names_it_again(word) || goes_without_saying(word) || is_plain_beside(i) ? i + 1 : i;
    }

    // ", green parts only", of what grows above the ground; the greens of a root are another food.
    std::size_t part_only(std::size_t i) const {
        if (first_ == 0 || ingredient_.tissue == Tissue::root) return i;
        const bool leaf_of_stalk =
            ingredient_.tissue == Tissue::stalk && i + 1 < last_ && words_[i].folded == "leaf" && words_[i + 1].folded == "only";
        return leaf_of_stalk ? i + 2 : std::min(last_, i + standin::part_only(words_, i, context_.knowledge));
    }

    // "Powdered milk" is another food than milk.
    bool is_another_form(const std::string& word) const {
        return ingredient_.tissue == Tissue::liquid &&
               (word == "powdered" || word == "granulated" || word == "dried" || word == "dehydrated");
    }

    // Through a garlic press: cut, not squeezed dry.
    bool is_pressed_clove(std::size_t i) const {
        const bool clove = std::any_of(ingredient_.measures.begin(), ingredient_.measures.end(),
                                       [](const auto& record) { return record.measure == "clove"; });
        const auto& word = words_[i].folded;
        return (word == "pressed" && ingredient_.tissue == Tissue::bulb) || (word == "squeezed" && clove);
    }

    // "Half cubed, half grated": cut one way or another, it stays the same.
    bool half_cut(std::size_t i) const {
        if (words_[i].folded != "half" || i + 1 >= last_) return false;
        const std::size_t end = preparation_end(words_, i + 1, last_, context_.knowledge);
        if (end == i + 1) return cut_word(words_, i + 1, context_.knowledge) > 0;
        const auto& id = context_.knowledge.preparation_named(phrase(words_, i + 1, end))->id;
        return id == "sliced" || id == "diced" || id == "chopped" || id == "minced" || id == "grated";
    }

    // "Half of them seeded": told, and counted as not done.
    std::size_t half_done(std::size_t i) {
        std::size_t from = i + 1;
        if (words_[i].folded != "half" || half_cut(i)) return i;
        while (from < last_ && (words_[from].folded == "of" || words_[from].folded == "them" || words_[from].folded == "the")) ++from;
        const std::size_t end = from < last_ ? preparation_end(words_, from, last_, context_.knowledge) : from;
        if (end == from || context_.knowledge.preparation_named(phrase(words_, from, end))->id != "seeded") return i;
        said_.passed.push_back(phrase(words_, i, end));
        return end;
    }

    // "Sautéed in a little butter": how much of it stays is not known, so it is told and not counted.
    std::size_t fried_in(std::size_t i) {
        const auto is_frying = [](std::string_view id) { return id == "cooked" || id == "caramelised"; };
        const bool fried = !said_.prepared.empty() && is_frying(said_.prepared.back().preparation);
        if (words_[i].folded != "in") return i;
        std::size_t from = i + 1;
        while (from < last_ && (words_[from].folded == "a" || words_[from].folded == "little" || words_[from].folded == "some" ||
                                words_[from].folded == "the"))
            ++from;
        for (std::size_t end = std::min(last_, from + longest_step); end > from; --end) {
            const std::string name = phrase(words_, from, end);
            const auto* fat = context_.knowledge.ingredient_named(name);
            if (!fat) fat = context_.knowledge.ingredient_meant(name);
            if (!fat || fat->composition.fat.mid < mostly_fat) continue;
            const std::size_t done = preparation_end(words_, end, last_, context_.knowledge);  // "in lard sweated", out of another tongue
            if (!fried && (done == end || !is_frying(context_.knowledge.preparation_named(phrase(words_, end, done))->id))) continue;
            said_.passed.push_back(phrase(words_, i, end));
            return end;
        }
        return i;
    }

    // "Soaked in milk", "softened in a little stock": how much of it stays is not known.
    std::size_t soaked_in(std::size_t i) {
        const bool soaked = !said_.prepared.empty() && said_.prepared.back().preparation == "soaked";
        if (words_[i].folded != "in") return i;
        std::size_t from = i + 1;
        while (from < last_ && (context_.knowledge.in_list(WordList::said_of_liquid, words_[from].folded) ||
                                passable(words_, from, context_.knowledge) > 0))
            ++from;
        for (std::size_t end = std::min(last_, from + longest_step); end > from; --end) {
            const std::string name = phrase(words_, from, end);
            const auto* liquid = context_.knowledge.ingredient_named(name);
            if (!liquid) liquid = context_.knowledge.ingredient_meant(name);
            if (!liquid || !is_soaking_liquid(*liquid)) continue;
            const std::size_t done = preparation_end(words_, end, last_, context_.knowledge);  // "in milk soaked", out of another tongue
            if (!soaked && (done == end || context_.knowledge.preparation_named(phrase(words_, end, done))->id != "soaked")) continue;
            if (liquid->id != "water") said_.soaked_in = liquid;
            return end;
        }
        return i;
    }

    bool names_this(const std::string& name) const { return context_.knowledge.ingredient_named(name) == &ingredient_; }

    // "free-range or organic", "chopped or crushed", "butt or shoulder", "Braeburn or Fuji apple": either says the same.
    std::size_t same_again(std::size_t i) const {
        if (words_[i].folded != "or" || (i == first_ && first_ == 0)) return i;
        if (i + 1 == last_ && first_ == 0)  // what it is an alternative to comes next, in the name
            for (std::size_t from = i; from-- > 0;)
                for (std::size_t end = last_; end < std::min(words_.size(), last_ + 3); ++end)
                    if (names_this(phrase(words_, from, i) + " " + words_[end].raw) || names_this(phrase(words_, from, i))) return i + 1;
        if (i + 1 >= last_) return i;
        if (is_pressed_clove(i + 1)) return i + 2;
        if (!another_ingredient(i + 1, true).empty()) return i;  // "or ground pork" is another food
        const std::size_t plain =
            i + 1 + std::max(passable(words_, i + 1, context_.knowledge), cut_word(words_, i + 1, context_.knowledge));
        const bool counts = plain < last_ && std::isdigit(static_cast<unsigned char>(words_[plain].raw.front())) != 0;  // "or roughly 6"
        if (plain > i + 1 && !counts) return std::min(plain, last_);
        for (std::size_t end = std::min(last_, i + 1 + longest_step); end > i + 1; --end) {
            const std::string other = phrase(words_, i + 1, end);
            if (names_this(other)) return end;
            for (std::size_t own = first_ - std::min<std::size_t>(first_, 3); own < first_; ++own)  // "pork shoulder or butt"
                if (names_this(words_[own].raw + " " + other)) return end;
        }
        return i;
    }

    // What a later clause tells in passing: "from about 3 oranges", "preferably wild". No preparation, no word that changes weight, fat or
    // salt, and, unless the clause is opened by a word for it, no other food, no number and no slip in a preparation's name stand in it.
    std::size_t aside(std::size_t i) const {
        const bool opened = opens_aside(words_, i, context_.knowledge);
        const bool later = first_ > 0 && words_[i].segment > words_[first_ - 1].segment;
        const bool another_way = words_[i].folded == "or" && i > first_ && words_[i].segment == words_[i - 1].segment &&
                                 cut_word(words_, i - 1, context_.knowledge) > 0;  // "minced or run through a press"
        if (first_ == 0 || (!opened && !later)) return i;
        const bool removed = tells_of_removal(i);
        std::size_t end = i + 1;
        for (std::size_t at = another_way ? i + 1 : i; at < last_ && words_[at].segment == words_[i].segment; end = ++at) {
            if (const std::size_t plain = passable(words_, at, context_.knowledge)) {
                at += plain - 1;
                continue;
            }
            const bool digit = std::isdigit(static_cast<unsigned char>(words_[at].raw.front())) != 0;
            if (changes_mass(at) || (changes_food(words_[at].folded, context_.knowledge) && !is_verb_can(at))) return i;
            if (opened && (digit || words_[i].folded != "or")) continue;
            if (!is_measure(words_[at].folded) && !another_ingredient(at, true).empty()) return i;
            if (opened) continue;
            if (digit || words_[at].folded == "or") return i;
            if (!another_way && !removed && !context_.knowledge.nearest_preparations(words_[at].raw).empty()) return i;
        }
        return opened || end > i + 1 ? end : i;  // one word by itself is more likely a preparation that is not known
    }

    // "roughly 6 cloves" of garlic
    bool is_measure(const std::string& word) const {
        return std::any_of(ingredient_.measures.begin(), ingredient_.measures.end(),
                           [&](const auto& record) { return record.measure == word; });
    }

    // "Tough outer layers removed"
    bool tells_of_removal(std::size_t i) const {
        while (i + 1 < last_ && words_[i + 1].segment == words_[i].segment) ++i;
        return words_[i].folded == "removed" || words_[i].folded == "discarded";
    }

    // "You can find", not "from a can".
    bool is_verb_can(std::size_t i) const {
        const auto& word = words_[i - 1].folded;
        return words_[i].folded == "can" && (word == "you" || word == "i" || word == "that" || word == "butcher");
    }

    // A preparation at word `i` that changes more than the cut or the temperature.
    bool changes_mass(std::size_t i) const {
        const std::size_t end = preparation_end(words_, i, last_, context_.knowledge);
        if (end == i) return false;
        const auto* found = context_.knowledge.preparation_named(phrase(words_, i, end));
        return !changes_nothing({found->id, std::nullopt}, ingredient_, context_.knowledge);
    }

    // Of what is lean anyway; of anything else it would tell another cut.
    bool trimmed_of_fat(std::size_t i) const {
        return i + 2 < last_ && words_[i].folded == "trimmed" && words_[i + 1].folded == "of" && words_[i + 2].folded == "fat" &&
               goes_without_saying("lean");
    }

    // "Red jalapeños", "Thai chiles, green": of a pod whose record is of one colour, told and not counted.
    bool tells_colour(std::size_t i) const {
        return ingredient_.tissue == Tissue::chile_flesh && context_.knowledge.in_list(WordList::pod_colour, words_[i].folded);
    }

    // "soaked in water and squeezed": soaking is reckoned with the squeezing.
    bool after_soaking(std::size_t i) const {
        const auto& word = words_[i].folded;
        return (word == "squeezed" || word == "pressed" || word == "drained") && !said_.prepared.empty() &&
               said_.prepared.back().preparation == "soaked";
    }

    // "dried" of what is dry, "lean" of what is lean anyway, "fat" of what is fat; of anything between it would change the meat meant.
    bool goes_without_saying(const std::string& word) const {
        constexpr double lean_under = 10, fatty_over = 15, fat_over = 30;  // g in 100 g, judgement
        const double fat = ingredient_.composition.fat.mid;
        if (word == "dried" || word == "dry") return ingredient_.tissue == Tissue::dry;
        if (ingredient_.meat && first_ > 0 && (word == "roast" || word == "joint" || word == "blade")) return true;  // but not "roast veal"
        if (word == "fat" && ingredient_.tissue == Tissue::bulb) return true;  // a fat clove is a plump one
        if (word == "unsalted") return ingredient_.composition.salt.mid <= 0;
        if (word == "fatty" || (word == "fat" && first_ == 0 && ingredient_.meat && fat < fat_over))
            return ingredient_.meat && fat >= fatty_over;
        if (word == "needle") return ingredient_.roles.front() == Role::herb;
        return (word == "lean" && ingredient_.meat && fat <= lean_under) || (word == "fat" && fat >= fat_over);
    }

    struct FatShare {
        double fat = 0;       // g in 100 g
        bool most = false;    // "not over"
        std::size_t end = 0;  // the word behind it
    };

    // "not over 15 % fat", "80% lean", "80/20" of a meat.
    std::optional<FatShare> fat_share(std::size_t i) const {
        const bool milky = ingredient_.family == "dairy-and-egg" && ingredient_.tissue != Tissue::egg;
        const auto said = ingredient_.meat || milky ? lean_share(words_, i, context_.knowledge) : std::nullopt;
        const bool into_name = said && first_ == 0 && said->last == last_ + 1;  // "93 % lean ground turkey", known as lean ground turkey
        if (!said || (said->last > last_ && !into_name)) return std::nullopt;
        return FatShare{100 - said->lean, said->most_fat, std::min(said->last, last_)};
    }

    bool agrees(const FatShare& share) const {
        constexpr double within = 6;  // g in 100 g, judgement
        const double fat = ingredient_.composition.fat.mid;
        return share.most ? fat <= share.fat + within : std::abs(fat - share.fat) <= within;
    }

    // What else of the animal has that much fat.
    std::vector<std::string> with_fat(const FatShare& share) const {
        constexpr double within = 4;  // g in 100 g, judgement
        std::vector<std::string> names;
        if (!ingredient_.meat) return names;
        for (const auto& other : context_.knowledge.records().ingredients)
            if (other.meat && other.meat->species == ingredient_.meat->species && names.size() < 4 &&
                std::abs(other.composition.fat.mid - share.fat) <= within)
                names.push_back(other.names.front());
        return names;
    }

    // "pork fatback", "serrano peppers", "lamb shoulder of lamb": the animal, or a word out of another of its names.
    bool names_it_again(const std::string& word) const {
        if (word == "lean" || word == "fat" || word == "extra" || word == "roast") return false;  // these tell kinds apart
        if (ingredient_.meat && spelling(ingredient_.meat->species) == word) return true;
        return std::any_of(ingredient_.names.begin(), ingredient_.names.end(),
                           [&](const std::string& name) { return (" " + fold(name) + " ").find(" " + word + " ") != std::string::npos; });
    }

    // Of game and the like the knowledge has one record for all cuts.
    bool is_whole_animal() const {
        const auto species = ingredient_.meat->species;
        return (species == Species::game || species == Species::goat || species == Species::rabbit || species == Species::duck) &&
               !is_cut_of_meat(fold(ingredient_.names.front()));
    }

    bool is_cut_of_meat(const std::string& word) const { return context_.knowledge.in_list(WordList::cut_of_meat, word); }

    bool counts_nothing(const std::string& word) const {
        const bool leaf = is_leaf(ingredient_.tissue);
        const bool of_leaf = word == "leaf" || word == "green" || word == "flower" || word == "floret" || word == "bud";
        if (given_ != Given::number && leaf && (of_leaf || word == "stem" || word == "stalk" || word == "only")) return true;
        if (leaf && word == "only" && first_ > 0 && words_[first_ - 1].folded == "leaf") return true;  // "4 ramps, leaves only"
        if (ingredient_.tissue == Tissue::chile_flesh && (word == "pepper" || word == "chile" || word == "chili" || word == "chilli"))
            return true;
        if (ingredient_.meat && (word == "meat" || word == "flesh" || (word == "fillet" && given_ == Given::weight))) return true;
        if (ingredient_.meat && is_whole_animal() && is_cut_of_meat(word)) return true;
        if (word == "nut" || word == "kernel") return ingredient_.roles.front() == Role::nut;
        if (word == "cheese") return ingredient_.family == "dairy-and-egg";
        if (word == "leaf") return ingredient_.tissue == Tissue::dry && ingredient_.family == "herbs";  // "cassia leaf" is no cinnamon
        if (word == "seed" && ingredient_.tissue == Tissue::seed) return true;
        if (word == "powder" || word == "berry" || word == "seed") return ingredient_.tissue == Tissue::dry;
        const Unit* unit = given_ == Given::weight ? unit_named(word) : nullptr;
        return unit &&
               (is_container(*unit) || unit->word == "piece" || unit->word == "leaf" || unit->word == "slice" || unit->word == "strip");
    }

    std::size_t preparation(std::size_t i) {
        const std::size_t end = preparation_end(words_, i, last_, context_.knowledge);
        if (end == i) return i;
        const Preparation* found = context_.knowledge.preparation_named(phrase(words_, i, end));
        if (found->id == "cooked" && !effect_on(*found, ingredient_.tissue) && ingredient_.family == "starches-and-grains")
            if (const auto* boiled = context_.knowledge.preparation("boiled")) found = boiled;  // "cooked bulgur"
        if (!effect_on(*found, ingredient_.tissue)) {                                           // "softened butter" is no cooked one
            const bool soft = ingredient_.family == "fats-and-oils" && context_.knowledge.in_list(WordList::soaks, words_[i].folded);
            return soft && end == i + 1 ? end : i;
        }
        Prepared prepared{found->id, std::nullopt};
        const std::size_t after = duration(end, prepared);
        // Meat "coarsely ground" went through a plate, not into a mortar.
        const bool of_meat = ingredient_.meat || ingredient_.tissue == Tissue::fat_tissue;
        if (of_meat && found->id == "crushed" && words_[end - 1].folded == "ground") prepared.preparation = "ground";
        if (of_meat && found->id == "chopped" && context_.adjective_behind) prepared.preparation = "minced";  // "picada", "hachée"
        if (of_meat && found->id == "chopped" && end > i + 1) prepared.preparation = "diced";  // "coarsely chopped": for the grinder
        if (found->id != "raw") said_.prepared.push_back(std::move(prepared));
        return after;
    }

    std::size_t duration(std::size_t i, Prepared& prepared) const {
        if (i >= last_) return i;
        Cursor cursor(context_.line, words_[i].begin);
        cursor.eat_word("for");
        prepared.minutes = minutes_at(cursor);
        while (prepared.minutes && i < last_ && words_[i].begin < cursor.at()) ++i;
        return i;
    }

    // The ingredient that starts at word `i`, or behind it where it is a liquid to soak in: "soaked in 100 ml milk", "and 500 g back fat".
    std::string another_ingredient(std::size_t i, bool but_this = false) const {
        const auto& knowledge = context_.knowledge;
        const bool beyond =
            words_[i].folded == "in" || words_[i].folded == "with" || std::isdigit(static_cast<unsigned char>(words_[i].raw.front()));
        for (std::size_t first = i; first < (beyond ? last_ : i + 1); ++first)
            for (std::size_t end = std::min(last_, first + longest_step); end > first; --end)
                if (auto other = phrase(words_, first, end); knowledge.ingredient_named(other) || knowledge.ingredient_meant(other)) {
                    if (but_this && names_this(other)) break;
                    return other;
                }
        return {};
    }

    // "2 diş sarımsak": a word that nobody knows, at once behind a number and before the food.
    bool may_be_a_measure(std::size_t i) const {
        return first_ == 0 && i == 0 && given_ == Given::number && !context_.on_the_shelf &&
               !changes_food(words_[i].folded, context_.knowledge);
    }

    Failure trouble(std::size_t i) const {
        const auto& knowledge = context_.knowledge;
        const std::string where = context_.origin.at(words_[i].begin);
        if (const std::size_t end = preparation_end(words_, i, last_, knowledge); end > i)
            return failure(Trouble::bad_data, "\"" + phrase(words_, i, end) + "\" is not done to " + ingredient_.names.front(), where,
                           fitting());
        if (const auto other = another_ingredient(i); !other.empty())
            return Failure(two_foods(ingredient_, other, where, is_joined_to_another(words_, i, knowledge)));
        if (const auto share = fat_share(i))
            return failure(Trouble::bad_data,
                           ingredient_.names.front() + " is known with " + plain_number(std::round(ingredient_.composition.fat.mid)) +
                               " % fat, not " + plain_number(share->fat) + " %",
                           where, with_fat(*share));
        if (words_[i].folded == "or")
            return failure(Trouble::bad_data, "\"or\" leaves open which ingredient or amount is meant", where, {"write the one you use"});
        if (may_be_a_measure(i)) {
            Error unknown = unknown_measure(words_[i].raw, ingredient_);
            unknown.where = where;
            return Failure(std::move(unknown));
        }
        auto hints = knowledge.nearest_preparations(words_[i].raw);
        for (auto& name : knowledge.nearest_ingredients(words_[i].raw + " " + ingredient_.names.front()))
            if (hints.size() < 5) hints.push_back(std::move(name));
        return Failure(Error{Trouble::bad_data,
                             "unknown word \"" + words_[i].raw + "\" beside " + ingredient_.names.front() +
                                 ": expected what is done to it. Leave the word out only where it is a mere name",
                             where, std::move(hints), NotKnown::word});
    }

    std::vector<std::string> fitting() const {
        std::vector<std::string> names;
        for (const auto& preparation : context_.knowledge.records().preparations)
            if (const auto* effect = effect_on(preparation, ingredient_.tissue); names.size() < 6 && effect && !effect->tissues.empty())
                names.push_back(preparation.names.front());
        return names;
    }

    const std::vector<Word>& words_;
    std::size_t first_ = 0, last_;
    const LineContext& context_;
    const Ingredient& ingredient_;
    Given given_;
    SaidOf said_;
};

}  // namespace

Result<SaidOf> read_prepared(const std::vector<Word>& words, std::size_t first, std::size_t last, const LineContext& context,
                             const Ingredient& ingredient, Given given) {
    return PreparedReader(words, last, context, ingredient, given).read(first);
}

std::size_t preparation_end(const std::vector<Word>& words, std::size_t first, std::size_t last, const Knowledge& knowledge) {
    for (std::size_t end = std::min(last, first + longest_step); end > first; --end)
        if (words[end - 1].segment == words[first].segment && knowledge.preparation_named(phrase(words, first, end))) return end;
    return first;
}

}  // namespace standin
