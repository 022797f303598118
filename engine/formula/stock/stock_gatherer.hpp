// Puts what was read into one inventory: amounts of the same ingredient add up, plenty swallows them.
#pragma once

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/food/foods_in_any_tongue.hpp"
#include "formula/food/name_text.hpp"
#include "formula/food/remark.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/line_text.hpp"
#include "formula/stock/stock_amounts.hpp"
#include "formula/stock/stock_doubt.hpp"
#include "formula/stock/stock_eggs.hpp"
#include "formula/stock/stock_headings.hpp"
#include "formula/stock/stock_leaves.hpp"
#include "formula/stock/stock_names.hpp"
#include "formula/stock/stock_prepared.hpp"
#include "formula/stock/stock_remarks.hpp"
#include "formula/stock/stock_told.hpp"
#include "formula/words/ripe_age.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/index/edible.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {

// Of a citrus fruit's weight (judgement; USDA SR28 has 48 g of a lemon of 158 g with its peel, 44 g of a lime of 80 g, 86 g of an orange of
// 179 g).
inline constexpr double juice_share = 0.4;

class Gatherer {
public:
    Gatherer(const Knowledge& knowledge, const Formula* formula, Troubles& troubles)
        : knowledge_(knowledge), namer_(knowledge, formula), troubles_(troubles) {}

    const StockNamer& namer() const { return namer_; }

    void have(const std::string& id, std::optional<double> grams, const std::string& where, std::string_view written,
              std::optional<double> at_most = {}) {
        if (contains(missing_forms_, id) && same_form(fold(written), missing_as_[id])) return contradicts(id, where);
        if (contains(by_word_, id)) {  // a food by its own name says more than its kind
            std::erase(by_word_, id);
            std::erase(inventory_.missing, id);
        }
        on_hand_as_[id] = fold(written);
        if (const auto word = missing_as_.find(id); word != missing_as_.end() && contains(inventory_.missing, id)) {
            const bool clash = says(on_hand_as_[id], word->second) || tells_form(word->second);
            if (clash && !bought_apart(id) && !of_two_kinds(id, on_hand_as_[id], word->second)) return contradicts(id, where);
            std::erase(inventory_.missing, id);
            there_all_the_same(id);
        }
        for (auto& item : inventory_.items)
            if (item.ingredient == id) {
                if (item.at_most || at_most)
                    item.at_most = item.at_most.value_or(item.grams.value_or(0)) + at_most.value_or(grams.value_or(0));
                item.grams = item.grams && grams ? std::optional(*item.grams + *grams) : std::nullopt;
                if (item.prepared != ready) item.prepared.clear();  // some of it is raw
                return say_of(item);
            }
        inventory_.items.push_back({id, grams, {}, {}, at_most, ready});
        say_of(inventory_.items.back());
    }

    /// Weights are as picked or bought; a bunch or a cup is measured without what is cut away.
    void have(const ReadLine& read, const std::string& written) {
        if (read.share)
            return not_read({Trouble::bad_data, "a share of the meat is no amount on hand: expected a weight", read.where, {}}, written,
                            true);
        const Ingredient& ingredient = *knowledge_.ingredient(read.line.ingredient);
        if (too_old(ingredient, read.where, written)) return;
        const auto picked = picked_for(read.line.prepared, ingredient, knowledge_);
        const auto passed = [](const Reason& told) {
            return told.kind == ReasonKind::passed_over || told.kind == ReasonKind::passed_unknown;
        };
        const bool half_read = std::any_of(read.line.notes.begin(), read.line.notes.end(), passed);  // "picked by zorbs"
        if (!picked || (*picked != 1 && half_read))
            return not_read({Trouble::bad_data,
                             "what is on hand is counted as bought, and " + ingredient.names.front() + " \"" +
                                 read.line.prepared.front().preparation + "\" is no food of its own here",
                             read.where,
                             {},
                             NotKnown::food},
                            written, true);
        if (const auto odd =
                remark_not_plain(read.line.notes, knowledge_, {&ingredient, whole.empty() ? std::string_view(written) : whole});
            !odd.empty())
            return not_fit(odd, ingredient.names.front(), read.where, whole.empty() ? std::string_view(written) : whole);
        for (const auto& told : read.line.notes) note_passed(told);
        for (const auto& told : read.line.declared)
            if (!contains(holds, told)) holds.push_back(told);
        const bool weighed = is_weight(read.line.written) || tells_mass(written);  // "1 bag spinach, 200 g": 200 g are in the bag
        const bool prepared = *picked != 1;  // weighed as it lies there, and counted as the fresh food that it came of
        const double boned = with_bone && ingredient.meat ? 1 - knowledge_.parameter("reading.stock-bone").mid : 1;
        const double fresh = boned * *picked / (weighed && !prepared ? 1 : edible_share(ingredient)), grams = read.line.grams.mid * fresh;
        const auto at_most = weighed ? std::nullopt : std::optional(read.line.grams.high * fresh);
        if (boned < 1) note(counted_boned(written, ingredient, grams));
        ready = done_already(read.line.prepared, ingredient, knowledge_);
        if (prepared || !ready.empty()) note(counted_as_ready(written, ingredient, grams));
        for (const auto& told : read.line.notes)
            if (told.kind == ReasonKind::of_the_formula) loose_.insert(read.line.ingredient);
        have(read.line.ingredient, grams, read.where, written, at_most);
        ready.clear();
        told(written, read.where, make_reason(ReasonKind::stock_weight, {{"as bought", {}, grams, "g"}}, {ingredient.names.front()}));
    }

    /// The same where `names` says that the word means a whole fruit: its juice, and its zest by the piece, or unweighed where none were
    /// counted.
    void have_whole(ReadLine read, const StockNames& names, const std::string& written) {
        if (names.ids.size() < 2 || names.ids.front() != read.line.ingredient) return have(read, written);
        if (is_weight(read.line.written))
            read.line.grams = {juice_share * read.line.grams.low, juice_share * read.line.grams.mid, juice_share * read.line.grams.high};
        read.line.notes = {*names.note};
        have(read, written);
        for (const auto& id : names.ids) {
            if (id == read.line.ingredient) continue;
            const Ingredient& other = *knowledge_.ingredient(id);
            const auto piece =
                std::find_if(other.measures.begin(), other.measures.end(), [](const auto& m) { return m.measure == "piece"; });
            const bool counted = read.line.count && piece != other.measures.end();
            const auto grams = counted ? std::optional(*read.line.count * piece->grams.mid) : std::nullopt;
            have(id, grams, read.where, written);
            Reason as = grams ? make_reason(ReasonKind::stock_weight, {{"weight", {}, *grams, "g"}}, {other.names.front()})
                              : make_reason(ReasonKind::stock_unweighed, {}, {other.names.front()});
            as.role = grams ? "whole" : "untold";
            told(written, read.where, std::move(as));
        }
    }

    void missing(const StockNames& names, const std::string& where, std::string_view word) {
        for (const auto& id : names.ids) {
            const bool listed =
                std::any_of(inventory_.items.begin(), inventory_.items.end(), [&](const auto& item) { return item.ingredient == id; });
            missing_as_[id] = fold(word);
            if (names.forms) missing_forms_.push_back(id);
            if (names.note && names.note->kind == ReasonKind::juice_and_zest) of_fruit_.insert(id);
            if (listed && names.forms && same_form(on_hand_as_[id], missing_as_[id])) return contradicts(id, where);
            if (listed && !names.loose) {
                const bool clash = says(on_hand_as_[id], missing_as_[id]) ||
                                   (tells_form(missing_as_[id]) && of_one_word(on_hand_as_[id], missing_as_[id]));
                if (clash && !bought_apart(id) && !of_two_kinds(id, on_hand_as_[id], missing_as_[id])) return contradicts(id, where);
                there_all_the_same(id);
            }
            if (listed || contains(inventory_.missing, id)) continue;
            inventory_.missing.push_back(id);
            if (names.loose) by_word_.push_back(id);
        }
    }

    void casing(const Beside& beside) { inventory_.casings.push_back(beside); }

    void complete(bool value, const std::string& where) {
        if (inventory_.complete && *inventory_.complete != value)
            troubles_.add({Trouble::bad_data, "both \"nothing else\" and \"everything else\": expected one of them", where, {}});
        inventory_.complete = value;
    }

    /// A name by itself, on hand without a weight or not on hand.
    void name(std::string_view text, const Origin& origin, bool on_hand) {
        const std::string leaf = on_hand && (plenty || growing || in_garden) ? plenty_of_leaves(text, origin) : std::string();
        if (!leaf.empty()) text = leaf;
        const auto names = namer_.named(text, origin, !on_hand);
        if (!names) return not_read(names.error(), text, on_hand);
        if (on_hand && names->ids.size() == 1 && too_old(*knowledge_.ingredient(names->ids.front()), origin.start(), text)) return;
        if (names->note) inventory_.notes.push_back(*names->note);
        if (const Ingredient* one = on_hand && names->ids.size() == 1 ? knowledge_.ingredient(names->ids.front()) : nullptr)
            if (const auto leaf = leaf_called(text, *one, knowledge_)) inventory_.notes.push_back(taken_as_dried(*one, *leaf));
        if (on_hand && with_bone && names->ids.size() == 1 && knowledge_.ingredient(names->ids.front())->meat)
            note(counted_boned(std::string(text), *knowledge_.ingredient(names->ids.front()), std::nullopt));
        if (on_hand && names->loose) loose_.insert(names->ids.begin(), names->ids.end());
        if (on_hand)
            for (const auto& id : names->ids) have(id, std::nullopt, origin.start(), text);
        else missing(*names, origin.start(), text);
        constexpr std::size_t few = 4;
        Reason as = make_reason(ReasonKind::stock_unweighed);
        for (const auto& id : names->ids) as.foods.push_back(knowledge_.ingredient(id)->names.front());
        if (as.foods.size() > few) as.figures = {{"foods of that kind", {}, static_cast<double>(as.foods.size()), ""}};
        as.role = !on_hand ? "none" : plenty ? "plenty" : "untold";
        told(std::string(text), origin.start(), std::move(as));
    }

    /// "Sage, pot on the windowsill" is the plant, and no dried sage.
    std::string called(const Ingredient& one, std::string_view names) const {
        const auto words = words_of(names);
        std::size_t last = 0;
        while (last < words.size() && words[last].segment == words.front().segment) ++last;
        const std::string first = phrase(words, 0, last);
        return (growing || in_garden) && one.tissue == Tissue::dry && namer_.knows(first) ? first : one.names.front();
    }

    /// Another line: nothing of what the one before said holds for it.
    void begin(std::string_view written) {
        whole = written;
        with_bone = says_with_bone(written, knowledge_);
        holds.clear();
        dangers.clear();
    }

    /// Sets what the line being read says of a living plant and of dangers.
    void look_for_dangers(std::string_view written) {
        growing = grows(written, knowledge_);
        dangers = told_hazards(without_ripe_age(written, foods_in_any_tongue(written, knowledge_), knowledge_), knowledge_);
        if (growing)  // of meat that stands warm, and no plant on a windowsill
            std::erase_if(dangers, [](const Reason& told) { return told.role == "method"; });
        for (const auto& told : dangers) note(told);
        if (aged) dangers.push_back(*aged);
    }

    bool plenty = false;            ///< what the line being read says of the names in it
    bool growing = false;           ///< likewise that it is the living plant
    bool with_bone = false;         ///< likewise that the bone is in the meat
    bool in_garden = false;         ///< the heading above says that it grows there
    std::string_view whole{};       ///< the line being read, as the maker wrote it
    std::vector<Declared> holds{};  ///< allergens that it says they hold
    std::vector<Prepared> ready{};  ///< what is done already to the food being counted
    std::vector<Reason> dangers{};  ///< what it says of them that is told wherever they go in
    std::optional<Reason> aged{};   ///< what the heading above says of their age

    void note(Reason told) { inventory_.notes.push_back(std::move(told)); }

    /// Once; a word that nobody here knows is told before everything else.
    void note_passed(Reason told) {
        if (told.kind == ReasonKind::passed_unknown) told.role = "list";
        if (!contains(inventory_.notes, told)) note(std::move(told));
    }

    void tell_passed(std::string_view said, std::string_view food, ReasonKind kind) {
        const auto name = without_weight(food);
        note_passed(reason_about(kind, std::string(said), {std::string(name.empty() ? food : name)}));
    }

    void told(const std::string& written, const std::string& where, Reason as) {
        inventory_.read.push_back({was_frozen() ? std::string(whole) : written, where, std::move(as)});
    }

    // What was thawed is told with the line: what is left of it is not frozen again.
    bool was_frozen() const {
        const auto words = hazard_text(whole).words;
        return std::any_of(words.begin(), words.end(),
                           [&](const auto& word) { return knowledge_.in_list(WordList::was_frozen, fold(word)); });
    }

    /// Something on hand that is not understood is set aside and told: what cannot be used hurts nobody, and the rest of the list is
    /// worth reading. A slip of the pen is asked about: it is there. What may tell of a danger, or that something is not there, stops the
    /// list.
    void not_read(Error error, std::string_view written, bool on_hand) {
        const bool slip = error.not_known != NotKnown::nothing && slip_of_the_pen(error, written, knowledge_);
        if (!on_hand || slip || !holds.empty() || never_set_aside(written, knowledge_)) return troubles_.add(std::move(error));
        Reason aside = make_reason(ReasonKind::set_aside);
        aside.note = error.message;
        told(std::string(written), error.where, std::move(aside));
        inventory_.aside.push_back(std::string(written));
        set_aside_.push_back(std::move(error));
    }

    /// Likewise of what is understood but for whether it is there: it does not count among what nobody knows.
    void left_open(Error error, std::string_view written) {
        const std::size_t before = set_aside_.size(), aside = inventory_.aside.size();
        Reason first = reason_about(ReasonKind::set_aside, std::string(written));
        first.role = "open";
        first.note = error.message;
        not_read(std::move(error), written, true);
        set_aside_.resize(std::min(before, set_aside_.size()));
        if (inventory_.aside.size() > aside) note(std::move(first));
    }

    /// Likewise of a remark that is not understood: it is told before everything else.
    void not_fit(std::string_view said, std::string_view food, const std::string& where, std::string_view written) {
        const std::size_t before = inventory_.aside.size();
        not_read(remark_unknown(said, food, where), written, true);
        if (inventory_.aside.size() == before) return;
        Reason first = reason_about(ReasonKind::set_aside, std::string(written), {std::string(food)});
        first.role = "remark";
        first.note = said;
        note(std::move(first));
    }

    /// What may be taken for a plant that kills is left where it is: told before all else, and the rest of the list is read.
    void warn(const Error& error, std::string_view written) {
        Reason aside = make_reason(ReasonKind::set_aside);
        aside.note = error.message;
        inventory_.notes.insert(inventory_.notes.begin(), aside);
        told(std::string(written), error.where, std::move(aside));
        inventory_.aside.insert(inventory_.aside.begin(), std::string(written) + " (" + error.message + ")");
    }

    /// Meat, milk or what is cooked, below a heading that says it is there since last week, goes into nothing.
    bool too_old(const Ingredient& food, const std::string& where, std::string_view written) {
        if (!aged || outlasts_a_week(food, knowledge_)) return false;
        Reason aside = make_reason(ReasonKind::set_aside);
        aside.note = "\"" + aged->about + "\": " + aged->note;
        told(std::string(written), where, aside);
        inventory_.aside.push_back(std::string(written) + " (" + aside.note + ")");
        return true;
    }

    /// A list of which next to nothing is known is no list.
    Inventory take() {
        part_eggs(inventory_, namer_, knowledge_);
        const auto is_heading = [](const StockRead& line) { return line.as.kind == ReasonKind::list_heading; };
        const auto lines =
            inventory_.read.size() - static_cast<std::size_t>(std::count_if(inventory_.read.begin(), inventory_.read.end(), is_heading));
        constexpr std::size_t most_unknown = 4;  // to one line that is understood, judgement
        if (set_aside_.size() > most_unknown * (lines - std::min(lines, set_aside_.size()))) troubles_.add(set_aside_);
        return std::move(inventory_);
    }

    /// What is there of it so far; nothing where it is not weighed or not there.
    std::optional<double> grams_of(const std::string& id) const {
        for (const auto& item : inventory_.items)
            if (item.ingredient == id) return item.grams;
        return std::nullopt;
    }

    /// Foods that the list says by their own names are not there, and has only by a wider word: that word means another.
    const std::set<std::string>& denied() const { return denied_; }

    bool has(const std::string& id) const {
        return std::any_of(inventory_.items.begin(), inventory_.items.end(), [&](const auto& item) { return item.ingredient == id; });
    }

private:
    static Reason counted_as_fresh(const std::string& written, const Ingredient& ingredient, double grams) {
        Reason taken = reason_about(ReasonKind::taken_as_amount, written);
        taken.note = plain_number(std::round(grams)) + " g " + ingredient.names.front();
        return taken;
    }

    Reason counted_as_ready(const std::string& written, const Ingredient& ingredient, double grams) const {
        Reason taken = counted_as_fresh(written, ingredient, grams);
        for (const auto& step : ready) taken.by_way.push_back(knowledge_.preparation(step.preparation)->names.front());
        return taken;
    }

    Reason counted_boned(const std::string& written, const Ingredient& ingredient, std::optional<double> grams) const {
        Reason taken = counted_as_fresh(whole.empty() ? written : std::string(whole), ingredient, grams.value_or(0));
        if (!grams) taken.note = ingredient.names.front();
        taken.note += " without its bone";
        return taken;
    }

    // Plenty of thyme stands in the garden, where the formula has none of the dried one.
    std::string plenty_of_leaves(std::string_view text, const Origin& origin) {
        const auto names = namer_.named(text, origin, false);
        if (!names || names->ids.size() != 1 || namer_.in_formula(names->ids.front())) return {};
        const Ingredient& taken = *knowledge_.ingredient(names->ids.front());
        const auto leaf = leaf_called(text, taken, knowledge_);
        if (!leaf) return {};
        note(make_reason(ReasonKind::not_the_other, {}, {*leaf, taken.names.front()}));
        return *leaf;
    }

    // Whether `line` says `word`: "cognac" is not what was meant by "no brandy", though both are one food here.
    static bool says(const std::string& line, const std::string& word) {
        return (" " + line + " ").find(" " + word + " ") != std::string::npos ||
               (" " + word + " ").find(" " + line + " ") != std::string::npos;
    }

    // What it says holds for the food whatever else is on hand of it.
    void say_of(InventoryItem& item) {
        for (const auto& told : holds) {
            if (contains(item.declared, told)) continue;
            item.declared.push_back(told);
            Reason counted =
                reason_about(ReasonKind::counted_allergen, told.words, {knowledge_.ingredient(item.ingredient)->names.front()});
            counted.role = "list";
            if (!contains(inventory_.notes, counted)) note(std::move(counted));
        }
        for (const auto& danger : dangers)
            if (!contains(item.told, danger)) item.told.push_back(danger);
    }

    // "no fresh turmeric" beside the ground one is another form, and not another word.
    bool tells_form(const std::string& word) const {
        const auto words = words_of(word);
        return words.size() > 1 && std::any_of(words.begin(), words.end(),
                                               [&](const Word& one) { return knowledge_.in_list(WordList::tells_form, one.folded); });
    }

    // "Ground turmeric" beside "no fresh turmeric"; but "no green plums" says nothing of gooseberries that stand for them.
    static bool of_one_word(const std::string& on_hand, const std::string& word) {
        const auto own = words_of(on_hand), other = words_of(word);
        return std::any_of(own.begin(), own.end(), [&](const Word& one) {
            return std::any_of(other.begin(), other.end(), [&](const Word& two) { return one.folded == two.folded; });
        });
    }

    // "Yellow mustard seed" beside "no black mustard seed": one food here by two names of its own, each with a word that the other has not.
    bool of_two_kinds(const std::string& id, const std::string& on_hand, const std::string& word) const {
        const auto named_in = [&](const std::string& text) {
            std::string longest;
            for (const auto& name : knowledge_.ingredient(id)->names)
                if (const std::string folded = fold(name);
                    folded.size() > longest.size() && (" " + text + " ").find(" " + folded + " ") != std::string::npos)
                    longest = folded;
            return longest;
        };
        const auto has_its_own = [&](const std::string& one, const std::string& other) {
            const auto words = words_of(one);
            return std::any_of(words.begin(), words.end(), [&](const Word& w) {
                return (" " + other + " ").find(" " + w.folded + " ") == std::string::npos &&
                       !knowledge_.in_list(WordList::tells_form, w.folded);
            });
        };
        const std::string one = named_in(on_hand), other = named_in(word);
        return has_its_own(one, other) && has_its_own(other, one);
    }

    // "sage 5 g" beside "no sage", where neither tells whether it is fresh.
    bool same_form(const std::string& on_hand, const std::string& word) const { return says(on_hand, word) && !tells_form(on_hand); }

    // "Bottle of lemon juice" beside "no lemons": its own name, where the fruit is said not to be there.
    bool bought_apart(const std::string& id) {
        const auto& names = knowledge_.ingredient(id)->names;
        return of_fruit_.count(id) &&
               std::any_of(names.begin(), names.end(), [&](const std::string& name) { return says(on_hand_as_[id], fold(name)); });
    }

    void there_all_the_same(const std::string& id) {
        if (loose_.count(id)) denied_.insert(id);
        Reason both = reason_about(ReasonKind::both_are_one, on_hand_as_[id], {knowledge_.ingredient(id)->names.front()});
        both.note = missing_as_[id];
        if (bought_apart(id)) both.role = "fruit";
        note(std::move(both));
    }

    void contradicts(const std::string& id, const std::string& where) {
        troubles_.add({Trouble::bad_data, knowledge_.ingredient(id)->names.front() + " is said to be on hand and not on hand", where, {}});
    }

    const Knowledge& knowledge_;
    StockNamer namer_;
    Troubles& troubles_;
    Inventory inventory_;
    std::vector<std::string> by_word_;                            // missing by a word that is not the food's own name
    std::vector<std::string> missing_forms_;                      // missing by a word that means the fresh and the dried one
    std::map<std::string, std::string> on_hand_as_, missing_as_;  // by ingredient: the words, folded
    std::set<std::string> of_fruit_;                              // missing as what a whole fruit holds
    std::set<std::string> loose_, denied_;                        // on hand by a word that is not the food's own name
    std::vector<Error> set_aside_;
};

}  // namespace standin
