#include "formula/stock/inventory.hpp"

#include <algorithm>
#include <cmath>
#include <deque>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/food/likeness.hpp"
#include "formula/food/name_text.hpp"
#include "formula/food/remark.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/hazards/line_beside.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/text_lines.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/each_of.hpp"
#include "formula/line/food_in_bracket.hpp"
#include "formula/line/line_text.hpp"
#include "formula/stock/stock_amounts.hpp"
#include "formula/stock/stock_doubt.hpp"
#include "formula/stock/stock_gatherer.hpp"
#include "formula/stock/stock_headings.hpp"
#include "formula/stock/stock_leaves.hpp"
#include "formula/stock/stock_names.hpp"
#include "formula/stock/stock_packs.hpp"
#include "formula/stock/stock_prepared.hpp"
#include "formula/stock/stock_remarks.hpp"
#include "formula/stock/stock_said.hpp"
#include "formula/stock/stock_table.hpp"
#include "formula/stock/stock_told.hpp"
#include "formula/words/limes.hpp"
#include "formula/words/line_asides.hpp"
#include "formula/words/price_beside.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/edible.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

class PlainInventory {
public:
    PlainInventory(std::string_view file, const Knowledge& knowledge, const Formula* formula, std::optional<bool> limes)
        : file_(file), knowledge_(knowledge), limes_(limes), gatherer_(knowledge, formula, troubles_) {}

    Result<Inventory> read(const std::vector<TextLine>& written, const std::vector<TextLine>& comments) {
        StockSections sections(comments, knowledge_);
        const auto lines = without_stock_table(written, rewritten_, knowledge_);
        for (std::size_t i = 0; i < lines.size() && !troubles_.full(); ++i) {
            auto heading = stock_heading(lines[i].text, knowledge_);
            const auto is_food = [this](std::string_view part) { return is_item(part); };
            if (!heading && heads_others(lines, i, is_food, knowledge_)) heading = StockHeading{};
            const StockSection section = sections.at(lines[i], heading);
            const bool heads = heading && heading->rest.empty() && (section == StockSection::aged || !danger_in(lines[i].text, knowledge_));
            if (section != StockSection::aged) gatherer_.aged.reset();
            if (heads) take_heading(lines[i], *heading);
            else if (section == StockSection::none) take_missing(heading ? heading->rest : lines[i].text, lines[i]);
            else take(lines[i]);
        }
        Inventory all = gatherer_.take();
        if (troubles_.any()) return troubles_.failure();
        return all;
    }
    bool denies(const Line& line) const { return gatherer_.denied().count(line.ingredient) > 0; }

private:
    Origin origin_of(std::string_view text, const TextLine& line) const {
        return {file_, {line.place.line, line.place.column + static_cast<std::size_t>(text.data() - line.text.data())}};
    }

    // The line in other words, which are kept.
    TextLine in_words(std::string words, const TextLine& line) { return {rewritten_.emplace_back(std::move(words)), line.place}; }

    void take_heading(const TextLine& line, const StockHeading& heading) {
        const std::string where = describe(file_, line.place);
        if (heading.says == StockSection::unclear) return troubles_.add(heading_not_understood(line.text, where));
        Reason as = make_reason(ReasonKind::list_heading);
        if (heading.says == StockSection::none) as.role = "none";
        gatherer_.in_garden = grows(line.text, knowledge_);
        if (heading.says == StockSection::aged)
            gatherer_.note(gatherer_.aged.emplace(told_of_danger(line.text, std::string(bare(line.text)), knowledge_)));
        gatherer_.told(std::string(line.text), where, std::move(as));
    }

    void take_missing(std::string_view said, const TextLine& line) {
        const TextLine gone = in_words(said_missing(said, knowledge_), line);
        if (gone.text.empty()) return troubles_.add(below_none(line.text, describe(file_, line.place)));
        take(gone);
    }

    void take(const TextLine& headed) {
        const TextLine priced = in_words(without_head(headed.text, names_alone_, items_, knowledge_), headed);
        if (says_limon(priced.text)) gatherer_.note(limon_note(limes_.value_or(false)));
        rewritten_.push_back(with_fruit(priced.text, limes_.value_or(false)));
        const bool as_told = take_price(rewritten_.back(), knowledge_).empty() && rewritten_.back() == priced.text;
        const TextLine written{as_told ? priced.text : bare(rewritten_.back()), priced.place};
        const std::string where = describe(file_, written.place);
        if (auto raw = raw_pulse_in(written.text, where, knowledge_); raw && !gatherer_.namer().touches_formula(written.text)) {
            const auto parts = parts_around_raw_pulse(written.text, knowledge_);
            if (parts.empty()) gatherer_.warn(*raw, written.text);
            for (const auto part : parts) take({part, written.place});
            return;
        }
        if (auto danger = danger_in(written.text, knowledge_)) {  // of the whole line: what stands behind a comma is said of the food too
            danger->where = where;
            // "Sorrel, eaten by slugs": there is none of it to be spoiled.
            std::string gone = gone_in(written.text, knowledge_);
            if (!danger_in(gone, knowledge_) && known_without_amount(gone)) return list_as_gone(std::move(gone), written);
            if (harms_nobody_aside(written.text, knowledge_) && !gatherer_.namer().touches_formula(written.text))
                return gatherer_.warn(*danger, written.text);
            return troubles_.add(std::move(*danger));
        }
        if (const auto beside = beside_the_mass(written.text, knowledge_);
            beside && (beside->kind == BesideKind::casing || beside->kind == BesideKind::goods)) {
            if (beside->kind == BesideKind::casing) gatherer_.casing(*beside);
            return gatherer_.told(std::string(written.text), where, why_beside(*beside));
        }
        if (const auto but = exception_in(written.text, knowledge_); but && take_exception(*but, written)) return;
        gatherer_.begin(written.text);
        if (take_in_place(written) || take_marked(written) || take_with_part(written)) return;
        gatherer_.look_for_dangers(written.text);
        if (is_unticked(written.text))
            return gatherer_.left_open(
                {Trouble::bad_data, "the box before it is not ticked: on hand or not", where, {"spinach", "no spinach"}}, written.text);
        rewritten_.push_back(without_only(with_amount_first(without_idle_words(in_kinds(written.text, knowledge_), knowledge_), knowledge_),
                                          names_, knowledge_));
        gatherer_.holds = take_told(rewritten_.back(), knowledge_);
        for (auto& told : take_remarks(
                 rewritten_.back(), [this](auto part) { return is_item(part); }, knowledge_))
            gatherer_.holds.push_back(std::move(told));
        const bool as_written = gatherer_.holds.empty() && rewritten_.back() == written.text;
        const TextLine plain = as_written ? written : TextLine{rewritten_.back(), written.place};
        if (auto open = leaves_open(plain.text, knowledge_); !open.empty())
            return gatherer_.left_open({Trouble::bad_data, std::move(open), where, {"spinach", "no spinach"}}, written.text);
        if (leaves_packs_open(plain.text, knowledge_)) return gatherer_.not_read(asks_of_packs(where), written.text, true);
        const TextLine line = in_pieces(amount_first(in_known_words(in_pieces(plain))));
        const StockLine says = stock_line(line.text, knowledge_);
        if (says.says != StockWord::none || !names_(says.names))  // "Petersilie alle", "geen spinazie", "gli spinaci sono finiti"
            if (auto gone = gatherer_.holds.empty() ? denied(written.text) : denied(plain.text))
                return list_as_gone(std::move(*gone), line);
        if (says.says != StockWord::none && says_no_abroad(written.text, knowledge_))
            return troubles_.add(not_there_but_what(written.text, where));
        if (tells_where_it_is(line.text, says, knowledge_)) return weighed(line.text, line);
        if (says.says == StockWord::weighed)
            if (const auto word = may_say_none(line.text, items_, knowledge_); !word.empty())
                return gatherer_.left_open(asks_if_there(written.text, word, where, knowledge_), written.text);
        switch (says.says) {
            case StockWord::nothing_else:
                gatherer_.complete(true, where);
                return gatherer_.told(std::string(line.text), where, make_reason(ReasonKind::list_is_all));
            case StockWord::everything_else:
                gatherer_.complete(false, where);
                return gatherer_.told(std::string(line.text), where, make_reason(ReasonKind::list_is_beside));
            case StockWord::heading:
                return gatherer_.told(std::string(line.text), where, make_reason(ReasonKind::list_heading));
            case StockWord::none:
                return list(says.names, line, false);
            case StockWord::some:
                gatherer_.plenty = is_plenty(line.text, knowledge_);
                if (tells_mass(says.names) ||
                    (!gatherer_.plenty &&
                     (has_digit(says.names) || read_line(says.names, Origin(file_, line.place), knowledge_, {}, true)))) {
                    gatherer_.plenty = false;
                    weighed(says.names, line);
                } else list(says.names, line, true);
                gatherer_.plenty = false;
                return;
            case StockWord::weighed:
                return weighed(says.names, line);
        }
    }

    std::optional<std::string> denied(std::string_view text) const { return denied_in(text, names_, knowledge_); }

    void list_as_gone(std::string names, const TextLine& line) {
        const TextLine gone = in_words(std::move(names), line);
        list(gone.text, gone, false);
    }

    bool take_in_place(const TextLine& written) {
        const auto found = in_place_in(written.text, names_, knowledge_);
        if (!found) return false;
        const TextLine some = in_words(found->some, written);
        list_as_gone(found->none, written);
        take(some);
        return true;
    }

    // "spinach ✘", "spinach x"
    bool take_marked(const TextLine& written) {
        const Marked found = mark_behind(written.text);
        auto names = found.mark == Mark::none ? std::nullopt : known_names(found.rest, names_, knowledge_);
        if (!names) return false;
        const std::string where = describe(file_, written.place);
        if (found.mark == Mark::open) gatherer_.left_open(asks_if_there(written.text, {}, where, knowledge_), written.text);
        else if (found.mark == Mark::there) take({found.rest, written.place});
        else list_as_gone(std::move(*names), written);
        return true;
    }

    // "celery with leaves, 1 head": its leaves are there as well. False where the rest names no food.
    bool take_with_part(const TextLine& written) {
        const auto part = with_part(written.text, knowledge_);
        if (!part) return false;
        const TextLine rest = in_words(part->line, written);
        auto read = read_line(with_amount_first(rest.text, knowledge_), Origin(file_, written.place), knowledge_, {}, true);
        const auto name = known_without_amount(with_amount_first(rest.text, knowledge_));
        const Ingredient* food = read ? knowledge_.ingredient(read->line.ingredient) : name ? known_ingredient(*name, knowledge_) : nullptr;
        if (!food) return false;
        Line whole;
        whole.ingredient = food->id;
        if (danger_of_food(written.text, whole, knowledge_, true)) return false;  // "rhubarb with leaves": refused as it stands
        take(rest);
        const Ingredient* leaves = part->leaf && gatherer_.has(food->id) ? leaves_of(*food, knowledge_) : nullptr;
        if (!leaves) return true;
        const bool root = food->tissue == Tissue::root;
        const auto of = gatherer_.grams_of(food->id);
        const double share = knowledge_.parameter(root ? "reading.stock-greens-of-root" : "reading.stock-greens-of-stalk").mid;
        if (of)
            weighed(*rewritten_.insert(rewritten_.end(), plain_number(std::round(*of * share)) + " g " + leaves->names.front()), written);
        else gatherer_.name(leaves->names.front(), Origin(file_, written.place), true);
        return true;
    }

    // "no fresh herbs except rosemary": the rosemary is there, and the other fresh herbs are not. "Nothing sour except lemons" names no
    // food that is not there. False where what is not there is not known: then the line is asked about as it stands.
    bool take_exception(const Exception& but, const TextLine& written) {
        const std::string_view none = in_words(but.none, written).text;
        if (closes_list(none, knowledge_))
            return gatherer_.complete(true, describe(file_, written.place)), take(in_words(but.some, written)), true;
        const auto words = words_of(none);
        const bool taste = words.size() == 2 && knowledge_.in_list(WordList::taste_word, words.back().folded);
        const auto gone = taste ? std::nullopt : denied(none);
        if (!taste && !gone) return false;
        std::string some = but.some;
        if (std::any_of(words.begin(), words.end(), [](const Word& word) { return word.folded == "fresh"; }))
            if (const std::string fresh = "fresh " + some; known_ingredient(fresh, knowledge_)) some = fresh;
        take(in_words(std::move(some), written));
        if (gone) return list_as_gone(*gone, written), true;
        gatherer_.not_read({Trouble::bad_data, "\"" + std::string(none) + "\" names no food", describe(file_, written.place), {}}, none,
                           true);
        return true;
    }

    // Once more in the words that we know: "cider vinegar 1 bottle".
    TextLine amount_first(const TextLine& line) {
        std::string turned = with_amount_first(line.text, knowledge_);
        return turned == line.text ? line : in_words(std::move(turned), line);
    }

    TextLine in_pieces(const TextLine& line) {
        auto taken = in_small_amount(line.text, knowledge_);
        if (taken) gatherer_.note(std::move(taken->told));
        return taken ? in_words(std::move(taken->text), line) : line;
    }

    // "methi, like dandelion greens" by its likeness; "kein Bärlauch" in English, where the line names no food in ours.
    TextLine in_known_words(const TextLine& line) {
        if (const auto names = stock_line(line.text, knowledge_).names; !names.empty())
            if (const auto likeness = likeness_in(names, knowledge_)) return liked(line, names, *likeness);
        if (names_food(line.text) || read_line(line.text, Origin(file_, line.place), knowledge_, {}, true)) return line;
        if (const StockLine some = stock_line(line.text, knowledge_); some.says == StockWord::some)
            for (const auto& name : in_english(some.names, knowledge_))
                if (names_food(name.text)) return in_words((is_plenty(line.text, knowledge_) ? "plenty of " : "some ") + name.text, line);
        for (auto& rewording : in_english(line.text, knowledge_)) {
            const StockLine says = stock_line(rewording.text, knowledge_);
            if (!says.names.empty() && !names_food(rewording.text)) continue;
            return in_words(std::move(rewording.text), line);
        }
        const auto names = stock_line(line.text, knowledge_).names;
        const auto bracket = food_in_bracket(names, knowledge_);
        return bracket ? liked(line, names, *bracket) : line;
    }

    // `names`: the part of the line without "no" or "plenty of".
    TextLine liked(const TextLine& line, std::string_view names, const Likeness& likeness) {
        const auto like = known_without_amount(stock_line(likeness.line, knowledge_).names);
        const Ingredient* food = like ? known_ingredient(*like, knowledge_) : nullptr;
        if (!food)
            if (const auto read = read_line(likeness.line, Origin(file_, line.place), knowledge_, {}, true))
                food = knowledge_.ingredient(read->line.ingredient);
        if (!food) return line;
        if (auto refused = refused_likeness(likeness.called, *food, knowledge_)) {
            refused->where = describe(file_, line.place);
            troubles_.add(std::move(*refused));
        }
        gatherer_.note(likeness_note(likeness, *food));
        std::string plain(line.text);
        plain.replace(static_cast<std::size_t>(names.data() - line.text.data()), names.size(), likeness.line);
        return in_words(std::move(plain), line);
    }

    // Whether every part of a line without a weight is known.
    bool names_food(std::string_view text) const {
        const StockLine says = stock_line(text, knowledge_);
        if (says.names.empty()) return true;
        const auto parts = parts_of_list(says.names, knowledge_);
        return known_without_amount(says.names).has_value() ||
               std::all_of(parts.begin(), parts.end(), [&](auto part) { return known_without_amount(part).has_value(); });
    }

    void weighed(const TextLine& line) { weighed(line.text, line); }

    // An amount and a name; where the amount gives no weight, the food is there.
    void weighed(std::string_view text, const TextLine& line) {
        if (text.empty()) return;
        if (auto packs = with_packs_first(text, knowledge_); packs != text) return weighed(in_words(std::move(packs), line));
        const Origin origin = origin_of(text, line);
        if (auto each = each_of_several(text, origin, knowledge_, true); !each.empty()) {
            for (auto& part : each) {
                weighed(in_words(std::move(part), line));
            }
            return;
        }
        auto read = read_line(text, origin, knowledge_, {}, true);
        if (!read) read = read_line(without_brackets(text), origin, knowledge_, {}, true);
        if (auto sized = read ? std::nullopt : by_usual_size(text, knowledge_))
            if (auto weighed = read_line(sized->text, origin, knowledge_, {}, true)) {
                gatherer_.note(std::move(sized->told));
                read = std::move(weighed);
            }
        if (read)
            if (auto leaf = read_as_leaf(*read, text, origin, knowledge_)) read = std::move(*leaf);
        if (auto own = as_the_formula_says(read ? read->line.ingredient : std::string(), text, origin, gatherer_.namer(), knowledge_))
            return gatherer_.have(*own, std::string(text));
        if (read) {
            auto names = named_without_amount(text, line);
            if (names.ids.size() < 2) names = gatherer_.namer().whole_fruit(read->line, origin).value_or(std::move(names));
            return gatherer_.have_whole(std::move(*read), names, std::string(text));
        }
        const bool digits = has_digit(text);
        const bool open = read.error().not_known == NotKnown::nothing && read.error().message.ends_with("say which");
        if (digits && open && !tells_mass(text))  // "peppers 3": peppercorns or sweet ones
            return gatherer_.not_read(std::move(read.error()), text, true);
        // "Pantry: oats, lentils": what stands before the colon is no food.
        if (const auto colon = text.find(": "); colon != std::string_view::npos && (!known_without_amount(text.substr(0, colon)) ||
                                                                                    kind_named(text.substr(0, colon), knowledge_)))
            return weighed(bare(text.substr(colon + 1)), line);
        if (const Ingredient* one = digits ? nullptr : one_food(text, true))
            return gatherer_.name(gatherer_.called(*one, text), origin_of(text, line), true);
        const auto parts = parts_of_list(text, knowledge_);
        if (const auto odd = said_of_food(parts); !odd.empty())
            return gatherer_.not_fit(parts[*std::next(odd.begin())], parts[*odd.begin()], origin.start(),
                                     gatherer_.whole.empty() ? text : gatherer_.whole);
        if (parts.size() > 1 && !gatherer_.namer().knows(text) && (digits || !known_without_amount(text))) {
            for (const auto part : parts)
                if (!knowledge_.in_list(WordList::passed_over, fold(part)) &&
                    (has_digit(part) || is_item(part) || !passed_over(parts, part))) {
                    weighed(amount_first({part, line.place}));
                } else if (changes_food(fold(part), knowledge_)) gatherer_.tell_passed(part, parts.front(), ReasonKind::passed_over);
            return;
        }
        if (const auto name = known_without_amount(text)) {
            if (name->size() < bare(text).size() && tells_amount(text, knowledge_))
                gatherer_.note(amount_not_read(gatherer_.whole.empty() ? text : gatherer_.whole, *name));
            return gatherer_.name(*name, origin_of(*name, line), true);
        }
        if (!digits) return list(text, line, true);
        gatherer_.not_read(std::move(read.error()), text, true);
    }

    // A remark that says nothing that matters; a mere name in it is told.
    bool passed_over(const std::vector<std::string_view>& parts, std::string_view part) {
        const RemarkIs is = part.data() == parts.front().data() ? RemarkIs::asked : remark_of_part(parts, part, knowledge_);
        if (is == RemarkIs::noted) gatherer_.tell_passed(part, parts.front(), ReasonKind::passed_unknown);
        return is != RemarkIs::asked;
    }

    // A food by itself, weighed or not, there or not there.
    bool is_item(std::string_view part) const {
        const StockLine says = stock_line(part, knowledge_);
        if (known_without_amount(says.names.empty() ? part : says.names)) return true;
        if (has_digit(part) || says.says == StockWord::none)
            return read_line(part, Origin(file_, {1, 1}), knowledge_, {}, true).has_value();
        const auto ways = in_english(part, knowledge_);
        return std::any_of(ways.begin(), ways.end(),
                           [&](const Rewording& way) { return way.foreign && names_food(way.text) && !words_of(way.text).empty(); });
    }

    // "chard 500 g, dropped on the floor", "kale, turning": words behind a food that are none themselves tell of it. What is not understood
    // of them may tell of its state, so that it is not taken by itself. A slip of the pen in a name is told with the name.
    std::set<std::size_t> said_of_food(const std::vector<std::string_view>& parts) const {
        return odd_parts(
            parts,
            [&](std::string_view part) {
                return has_digit(part) || knowledge_.in_list(WordList::passed_over, fold(part)) || is_item(part) || is_slip(part);
            },
            knowledge_);
    }

    bool is_slip(std::string_view part) const { return is_slip_of_a_name(part, gatherer_.namer(), Origin(file_, {1, 1})); }

    std::optional<std::string_view> known_without_amount(std::string_view text) const {
        for (const auto name : without_loose_amount(text, knowledge_))
            if (gatherer_.namer().knows(name)) return name;
        return std::nullopt;
    }

    // What the words without the amount name; nothing where they name nothing.
    StockNames named_without_amount(std::string_view text, const TextLine& line) const {
        const auto name = known_without_amount(text);
        if (!name) return {};
        auto names = gatherer_.namer().named(*name, origin_of(*name, line), false);
        return names ? std::move(*names) : StockNames{};
    }

    // "marjoram, dried": what stands behind the comma tells of the food before it, and is none itself.
    // So does what is done to it: "roasted poblanos" are there as poblanos.
    const Ingredient* one_food(std::string_view names, bool on_hand) {
        const auto parts = parts_of_list(names, knowledge_);
        const bool several = std::all_of(parts.begin(), parts.end(), [&](auto part) { return known_without_amount(part).has_value(); });
        if (several || (parts.size() < 2 && !on_hand)) return nullptr;
        const auto read = read_line("100 g " + std::string(names), Origin(file_, {1, 1}), knowledge_, {}, true);
        if (!read) return nullptr;
        const Ingredient* food = knowledge_.ingredient(read->line.ingredient);
        if (!remark_not_plain(read->line.notes, knowledge_, {food, names}).empty()) return nullptr;
        const auto is_name = [](const Reason& note) { return note.kind == ReasonKind::passed_unknown; };
        const bool named = std::any_of(read->line.notes.begin(), read->line.notes.end(), is_name);
        const bool done = !read->line.prepared.empty() && picked_for(read->line.prepared, *food, knowledge_);
        if (parts.size() < 2 && !named && !done) return nullptr;
        for (const auto& note : read->line.notes)
            if (is_name(note)) gatherer_.note_passed(note);
        return food;
    }

    // One name that has "and" or a comma in it stays whole; each of several may say again that it is there or not.
    void list(std::string_view names, const TextLine& line, bool on_hand) {
        if (gatherer_.namer().knows(names)) return gatherer_.name(names, origin_of(names, line), on_hand);
        const auto parts = parts_of_list(names, knowledge_);
        const bool another_form =
            std::any_of(parts.begin(), parts.end(), [&](auto part) { return !gatherer_.namer().other_form(names, part, on_hand).empty(); });
        if (const Ingredient* one = another_form ? nullptr : one_food(names, on_hand))
            return gatherer_.name(gatherer_.called(*one, names), origin_of(names, line), on_hand);
        const auto odd = on_hand ? odd_in(parts, names, line) : std::set<std::size_t>{};
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const auto part = parts[i];
            if (odd.contains(i) || (i > 0 && on_hand && !is_item(part) && passed_over(parts, part))) continue;
            if (const auto other = gatherer_.namer().other_form(names, part, on_hand); !other.empty()) {
                rewritten_.push_back(other);
                gatherer_.name(rewritten_.back(), origin_of(part, line), true);
                continue;
            }
            const StockLine again = stock_line(part, knowledge_);
            const bool there = again.says == StockWord::none ? false : again.says == StockWord::some ? true : on_hand;
            const auto known = known_without_amount(again.names);
            const auto bracket = again.names.find(" (");
            const auto name = known ? *known : bracket == std::string_view::npos ? again.names : bare(again.names.substr(0, bracket));
            if (const auto said = unknown_bracket(again.names, knowledge_); there && !known && !said.empty())
                gatherer_.tell_passed(said, name, ReasonKind::passed_unknown);
            if (!name.empty()) gatherer_.name(name, origin_of(name, line), there);
        }
    }

    // What a part that is not understood is said of is set aside with it.
    std::set<std::size_t> odd_in(const std::vector<std::string_view>& parts, std::string_view names, const TextLine& line) {
        const auto odd = odd_parts(
            parts,
            [&](std::string_view part) {
                return is_item(part) || is_slip(part) || !gatherer_.namer().other_form(names, part, true).empty();
            },
            knowledge_);
        if (odd.empty()) return odd;
        std::string said;
        for (const auto i : odd) said += (said.empty() ? "" : ", ") + std::string(parts[i]);
        const auto food = parts[*odd.begin()];
        gatherer_.not_fit(parts[*std::next(odd.begin())], food, origin_of(food, line).start(), said);
        return odd;
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    const NamesFood names_ = [this](std::string_view names) {
        return stock_line(names, knowledge_).says == StockWord::weighed && names_food(names);
    };
    const NamesFood names_alone_ = [this](std::string_view names) { return known_without_amount(names).has_value(); };
    const IsItem items_ = [this](std::string_view part) { return is_item(part) || is_slip(part); };
    std::optional<bool> limes_;  // whether "limón" is the lime
    Troubles troubles_;
    std::deque<std::string> rewritten_;  // lines in other words than the maker's, for views into them
    Gatherer gatherer_;
};

}  // namespace

Result<Inventory> read_plain_inventory(std::string_view text, std::string_view file, const Knowledge& knowledge, const Formula* formula) {
    const auto limes = limes_on_hand(text, formula, knowledge);
    PlainInventory list(file, knowledge, formula, limes);
    auto all = list.read(text_lines(text), comment_lines(text));
    Formula rest = formula ? *formula : Formula{};  // "fresh breadcrumbs" beside "no rye bread": the word means no line that is gone
    if (std::erase_if(rest.lines, [&](const Line& line) { return list.denies(line); }) == 0 || !all) return all;
    return PlainInventory(file, knowledge, &rest, limes).read(text_lines(text), comment_lines(text));
}

}  // namespace standin
