#include "formula/line/line_text.hpp"

#include <algorithm>
#include <cctype>
#include <optional>

#include "core/names.hpp"
#include "formula/amounts/line_facts.hpp"
#include "formula/food/clauses.hpp"
#include "formula/food/compound_name.hpp"
#include "formula/food/first_of_two.hpp"
#include "formula/food/kind_in_brackets.hpp"
#include "formula/food/likeness.hpp"
#include "formula/food/namesakes.hpp"
#include "formula/food/remark.hpp"
#include "formula/food/told_allergens.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/line/bone.hpp"
#include "formula/line/food_in_bracket.hpp"
#include "formula/line/line_reader.hpp"
#include "formula/line/slips.hpp"
#include "formula/line/soaked_in.hpp"
#include "formula/words/limes.hpp"
#include "formula/words/ripe_age.hpp"
#include "formula/words/salted_form.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_line = 2000;  // bytes

std::ptrdiff_t passed_over_in(const ReadLine& read) {
    return std::count_if(read.doubts.begin(), read.doubts.end(), [](const LineDoubt& doubt) {
        return (doubt.what.kind == ReasonKind::passed_over && doubt.what.role.empty()) || doubt.what.kind == ReasonKind::passed_unknown;
    });
}

// Frozen kale where kale was read: the same food, told more closely.
bool of_one_family(const ReadLine& a, const ReadLine& b, const Knowledge& knowledge) {
    return knowledge.ingredient(a.line.ingredient)->family == knowledge.ingredient(b.line.ingredient)->family;
}

bool is_amount_with_unit(std::string_view text) {
    Cursor cursor(text);
    const auto amount = amount_at(cursor);
    cursor.space();
    return amount && amount->parts.front().unit && cursor.done();
}

// "Back fat (hard) [250 g]", "shoulder (2.2 lb / 1 kg)": the amount stands in a bracket of its own, perhaps in two units.
std::vector<std::string> with_bracket_opened(std::string_view line) {
    std::vector<std::string> all;
    for (auto open = line.find_first_of("(["); open != std::string_view::npos; open = line.find_first_of("([", open + 1)) {
        const auto close = line.find(line[open] == '(' ? ')' : ']', open);
        if (close == std::string_view::npos) break;
        const std::string_view inside = line.substr(open + 1, close - open - 1);
        const std::string before(line.substr(0, open)), behind(line.substr(close + 1));
        if (is_amount_with_unit(inside)) all.push_back(before + ", " + std::string(inside) + behind);
        for (const std::string_view sign : {"/", "=", ",", ";", " or "}) {
            const auto cut = inside.find(sign);
            if (cut == std::string_view::npos) continue;
            const auto one = inside.substr(0, cut), other = inside.substr(cut + sign.size());
            if (is_amount_with_unit(one) && is_amount_with_unit(other))
                all.push_back(before + ", " + std::string(one) + " (" + std::string(other) + ")" + behind);
        }
    }
    return all;
}

Result<ReadLine> read_english(std::string_view line, const LineSetting& setting) {
    if (has_bare_fact(line, setting.knowledge))
        if (auto told = read_once(line, setting, true).line) {
            if (!told->line.heat_mg_kg) return told;
            auto kind = read_once(line, setting).line;  // "paprika, hot" is a kind, "serrano, hot" a pod
            const bool names_it = kind && kind->line.ingredient != told->line.ingredient && passed_over_in(*kind) == 0;
            return names_it ? kind : told;
        }
    auto [read, no_amount] = read_once(line, setting);
    if (read || !no_amount) return read;
    for (const auto& opened : with_bracket_opened(line))
        if (auto again = read_once(opened, setting).line) return again;
    const auto open = line.find('('), close = line.find(')', open);
    if (close == std::string_view::npos) return read;
    // "salt (18 g)": the amount itself stands in brackets.
    std::string opened(line);
    opened[open] = ',';
    opened[close] = ' ';
    const auto comma = opened.rfind(',', close);
    if (comma > open && comma != std::string::npos && opened.find("about", comma) < close) {  // "(1 bunch, about 80 g)"
        opened[comma] = '(';
        opened[close] = ')';
    }
    auto again = read_once(opened, setting).line;
    return again ? again : read;
}

// What the whole line tells that the words read do not.
void add_told(std::string_view line, ReadLine& read, const Knowledge& knowledge) {
    for (auto& told : told_hazards(line, read.line, knowledge)) {
        const bool there = std::any_of(read.doubts.begin(), read.doubts.end(), [&](const LineDoubt& doubt) {
            return doubt.what.kind == told.kind && doubt.what.note == told.note;
        });
        if (there) continue;
        read.line.notes.push_back(told);
        const bool plain = told.role == "choking" || told.role == "said-free";  // no doubt of what is meant
        read.doubts.push_back({plain ? Confidence::sure : Confidence::unsure, std::move(told), true});
    }
}

// In English, else word for word out of the tongue that most of its words are of.
Result<ReadLine> read_any_tongue(std::string_view line, const LineSetting& setting) {
    const Knowledge& knowledge = setting.knowledge;
    auto read = read_english(line, setting);
    if (read && passed_over_in(*read) == 0) return read;
    if (!read && is_between_namesakes(read.error(), knowledge)) return read;
    std::optional<Result<ReadLine>> first_miss;
    for (const auto& [english, foreign, adjective_behind, nouns_have_capitals] : in_english(line, knowledge)) {
        LineSetting own = setting;
        own.adjective_behind = adjective_behind;
        own.nouns_have_capitals = nouns_have_capitals;
        auto translated = read_english(english, own);
        // "200 g spinaci, lessati": a name that we have too, and behind it words that only that tongue has.
        const bool tells_more = read && translated && passed_over_in(*translated) < passed_over_in(*read) &&
                                (translated->line.ingredient == read->line.ingredient ||
                                 (passed_over_in(*translated) == 0 && of_one_family(*translated, *read, knowledge)));
        if (read && !tells_more) return read;
        if (!translated) {
            const auto farther = [&](NotKnown first, NotKnown then) {  // a food that is known, and a word beside it that is not
                return first != NotKnown::nothing && (then == NotKnown::nothing || (first == NotKnown::food && then == NotKnown::word));
            };
            const bool closer = first_miss && farther(first_miss->error().not_known, translated.error().not_known);
            if ((!first_miss || closer) && read.error().not_known != NotKnown::nothing) first_miss = std::move(translated);
            continue;
        }
        if (auto danger = danger_of_food(line, translated->line, knowledge, setting.on_the_shelf)) {
            danger->where = setting.origin.start();
            return Failure(std::move(*danger));
        }
        translated->translated = foreign;
        add_told(line, *translated, knowledge);
        Reason in_english = reason_about(ReasonKind::translated, english.substr(0, english.find_last_not_of(" ,;") + 1));
        if (foreign) in_english.role = "word for word";
        translated->doubts.push_back({Confidence::likely, std::move(in_english), false});
        return translated;
    }
    return first_miss ? std::move(*first_miss) : std::move(read);
}

// With its slips mended, where the line can then be read, and in one way only.
std::optional<ReadLine> read_without_slips(std::string_view line, const LineSetting& setting) {
    std::optional<ReadLine> found;
    std::size_t nearest = 0;
    for (const auto& [mended, slips, edits] : without_slips(line, setting.knowledge)) {
        if (found && edits > nearest) break;
        if (danger_in(mended, setting.knowledge)) return std::nullopt;
        auto read = read_english(mended, setting);
        if (!read || passed_over_in(*read) > 0) continue;
        if (danger_of_food(line, read->line, setting.knowledge) || danger_of_food(mended, read->line, setting.knowledge))
            return std::nullopt;
        const auto& food = *setting.knowledge.ingredient(read->line.ingredient);
        if (found && found->line.ingredient == read->line.ingredient) continue;
        if (found || !other_danger_near(slips, food, setting.knowledge).empty()) return std::nullopt;
        for (const auto& slip : slips) {
            Reason mended = reason_about(ReasonKind::slip_mended, slip.written);
            mended.note = slip.meant;
            read->doubts.push_back({Confidence::unsure, mended, true});
            mended.foods = {food.names.front()};
            read->line.notes.push_back(std::move(mended));
        }
        found = std::move(*read);
        nearest = edits;
    }
    return found;
}

// A mere name is told as what nobody knows here, and leaves the line unsure.
void tell_of_remark(const std::string& said, RemarkIs is, const std::string& food, ReadLine& read) {
    const bool noted = is == RemarkIs::noted;
    Reason told = reason_about(noted ? ReasonKind::passed_unknown : ReasonKind::passed_over, said, {food});
    read.line.notes.push_back(told);
    read.doubts.push_back({noted ? Confidence::unsure : Confidence::likely, std::move(told), true});
}

// Without the clauses that are remarks of no more than `most`, where the line can then be read: each is told.
std::optional<ReadLine> read_without_remarks(std::string_view line, const LineSetting& setting, RemarkIs most) {
    const Knowledge& knowledge = setting.knowledge;
    std::vector<std::string> out;
    const auto idle = [&](std::string_view said) { return changes_no_reading(said, knowledge); };
    const auto bare_line = read_any_tongue(without_clauses(line, out, idle), setting);
    if (out.empty() || !bare_line) return std::nullopt;
    const Ingredient& food = *knowledge.ingredient(bare_line->line.ingredient);
    const SaidOfFood of{&food, line};
    out.clear();
    auto read = read_any_tongue(without_clauses(line, out,
                                                [&](std::string_view said) {
                                                    return idle(said) && read_remark(said, knowledge, of).is <= most &&
                                                           allergens_of_remark(said, knowledge).empty();
                                                }),
                                setting);
    if (out.empty() || !read || read->line.ingredient != food.id) return std::nullopt;
    if (danger_of_food(line, read->line, knowledge, setting.on_the_shelf)) return std::nullopt;
    add_told(line, *read, knowledge);
    for (const auto& said : out) {
        if (other_food_in_passing(said, read->line, knowledge)) return std::nullopt;
        tell_of_remark(said, read_remark(said, knowledge, of).is, food.names.front(), *read);
    }
    return std::move(*read);
}

// The food it is like, under the maker's name.
Result<ReadLine> read_likeness(std::string_view line, const Likeness& likeness, const LineSetting& setting) {
    const Knowledge& knowledge = setting.knowledge;
    auto read = read_english(likeness.line, setting);
    if (!read) return read;
    const Ingredient& like = *knowledge.ingredient(read->line.ingredient);
    auto refused = refused_likeness(likeness.called, like, knowledge);
    if (!refused) refused = danger_of_food(line, read->line, knowledge, setting.on_the_shelf);
    if (refused) {
        refused->where = setting.origin.start();
        return Failure(std::move(*refused));
    }
    read->line.called = likeness.called;
    read->doubts.push_back({Confidence::unsure, likeness_note(likeness, like), true});
    read->line.notes.push_back(read->doubts.back().what);
    return read;
}

// Of "X or Y" the first, told; nothing where either may hurt or the two are other meats.
std::optional<ReadLine> read_first_of_two(std::string_view line, const LineSetting& setting) {
    const Knowledge& knowledge = setting.knowledge;
    const auto ways = firsts_of_two(line, knowledge);
    if (ways.empty() || nearly_refused(line, knowledge)) return std::nullopt;
    for (const auto& way : ways) {
        auto read = read_any_tongue(way.line, setting);
        if (!read || danger_of_food(line, read->line, knowledge, setting.on_the_shelf) || !may_take_first(way, *read, knowledge)) continue;
        tell_of_second(way, *read, knowledge);
        return std::move(*read);
    }
    return std::nullopt;
}

// Once what was passed over is weighed: asked about where it may tell of the food's state, and where it holds a mere name, told as unknown.
Result<ReadLine> with_remarks(std::string_view line, ReadLine read, const LineSetting& setting) {
    const Knowledge& knowledge = setting.knowledge;
    const Ingredient& food = *knowledge.ingredient(read.line.ingredient);
    const SaidOfFood of{&food, line};
    if (const auto other = other_food_by_joining(line, read, knowledge); !other.empty())
        return Failure(unknown_compound(other, setting.origin.start(), knowledge));
    if (!setting.on_the_shelf)
        if (const auto odd = remark_to_ask(read.line.notes, knowledge, of); !odd.empty())
            return Failure(remark_unknown(odd, food.names.front(), setting.origin.start()));
    const auto is_noted = [&](const Reason& note) {
        return note.kind == ReasonKind::passed_over && note.role.empty() && remark_in_formula(note.about, knowledge, of) == RemarkIs::noted;
    };
    for (auto& note : read.line.notes)
        if (is_noted(note)) note.kind = ReasonKind::passed_unknown;
    for (auto& doubt : read.doubts)
        if (is_noted(doubt.what)) {
            doubt.what.kind = ReasonKind::passed_unknown;
            doubt.confidence = Confidence::unsure;
        }
    return read;
}

// "Beurre de cacahuète": asked as one food where the words of it are two, or one that nobody knows.
Result<ReadLine> named_whole(std::string_view line, Result<ReadLine> missed, const LineSetting& setting) {
    const auto& error = missed.error();
    if (error.not_known != NotKnown::word) return missed;
    const auto name = joined_name(line, setting.knowledge);
    if (name.empty()) return missed;
    return Failure(unknown_compound(name, setting.origin.start(), setting.knowledge));
}

// "Chard 'Bright Lights'": a sort in quotes is one in brackets, in as many letters.
std::optional<std::string> sort_in_brackets(std::string_view line) {
    constexpr std::pair<std::string_view, std::string_view> quotes[]{{"'", "'"},           {"\"", "\""},         {"\u2018", "\u2019"},
                                                                     {"\u201C", "\u201D"}, {"\u201E", "\u201C"}, {"\u201A", "\u2018"},
                                                                     {"\u00AB", "\u00BB"}};
    for (const auto& [open, close] : quotes) {
        const auto first = line.find(" " + std::string(open));
        if (first == std::string_view::npos) continue;
        const std::size_t inside = first + 1 + open.size(), last = line.find(close, inside);
        if (last == std::string_view::npos || last == inside) continue;
        const std::size_t behind = last + close.size();
        const bool ends = behind == line.size() || line[behind] == ' ' || line[behind] == ',';
        if (!ends || std::isupper(static_cast<unsigned char>(line[inside])) == 0) continue;
        return std::string(line.substr(0, first + 1)) + "(" + std::string(open.size() - 1, ' ') +
               std::string(line.substr(inside, last - inside)) + std::string(close.size() - 1, ' ') + ")" +
               std::string(line.substr(behind));
    }
    return std::nullopt;
}

bool holds_only_sulphite(std::string_view text, const Knowledge& knowledge) {
    const auto named = allergens_named(text, knowledge);
    return !named.empty() && std::all_of(named.begin(), named.end(), [](const Declared& one) { return one.allergen == "sulphite"; });
}

// "Paprika, packed in a plant that also handles sesame", "apricots, sulphured": what a food holds or touched behind a comma is a remark, as
// it is in brackets, and no second food. Empty where it says no such thing.
std::string contact_in_brackets(std::string_view line, const Knowledge& knowledge) {
    const auto comma = line.find(", ");
    if (comma == std::string_view::npos || line.find('(') != std::string_view::npos) return {};
    const std::string_view rest = line.substr(comma + 2);
    const auto words = hazard_text(rest).words;
    const bool tells = std::any_of(words.begin(), words.end(), [&](const std::string& word) {
        return fits_any(knowledge.records().lexicon.holds, word) || knowledge.in_list(WordList::contact_word, fold(word));
    });
    if (allergens_named(rest, knowledge).empty() || !(tells || holds_only_sulphite(rest, knowledge))) return {};
    return std::string(line.substr(0, comma)) + " (" + std::string(rest) + ")";
}

Result<ReadLine> read_as_written(std::string_view line, const LineSetting& setting) {
    const Knowledge& knowledge = setting.knowledge;
    const bool on_the_shelf = setting.on_the_shelf;
    if (const auto sort = sort_in_brackets(line))
        if (auto read = read_any_tongue(*sort, setting)) return with_remarks(*sort, std::move(*read), setting);
    if (const auto likeness = likeness_in(line, knowledge)) return read_likeness(line, *likeness, setting);
    auto read = read_any_tongue(line, setting);
    if (!read)
        if (const auto kind = with_kind_behind_comma(line, knowledge); !kind.empty())
            if (auto again = read_any_tongue(kind, setting)) return with_remarks(kind, std::move(*again), setting);
    if (!read)
        if (const auto salted = with_salted_form(line, knowledge); !salted.empty())
            if (auto again = read_any_tongue(salted, setting)) return with_remarks(salted, std::move(*again), setting);
    if (!read)
        if (const auto soaked = soaked_in_plain_water(line, knowledge); !soaked.empty())
            if (auto again = read_any_tongue(soaked, setting)) return with_remarks(soaked, std::move(*again), setting);
    if (!read)
        if (const auto remark = contact_in_brackets(line, knowledge); !remark.empty())
            if (auto again = read_any_tongue(remark, setting);
                again && (!again->line.declared.empty() || holds_only_sulphite(remark, knowledge)))
                return with_remarks(remark, std::move(*again), setting);
    if (!read && !on_the_shelf)
        if (auto first = read_first_of_two(line, setting)) return std::move(*first);
    if (read) return with_remarks(line, std::move(*read), setting);
    if (!on_the_shelf)
        if (auto plain = read_without_remarks(line, setting, RemarkIs::plain))
            if (auto told = with_remarks(line, std::move(*plain), setting)) return told;
    if (read.error().not_known == NotKnown::nothing) return read;
    if (const auto bracket = food_in_bracket(line, knowledge))
        if (auto named = read_likeness(line, *bracket, setting)) return named;
    if (auto danger = nearly_refused(line, knowledge)) {
        danger->where = setting.origin.start();
        return Failure(std::move(*danger));
    }
    if (!on_the_shelf)  // a list asks: what is taken for there would be counted on
        if (auto mended = read_without_slips(line, setting)) return std::move(*mended);
    LineSetting lenient = setting;
    lenient.lenient = true;
    if (auto passed = read_any_tongue(line, lenient)) return with_remarks(line, std::move(*passed), setting);
    if (auto noted = read_without_remarks(line, lenient, RemarkIs::noted)) return with_remarks(line, std::move(*noted), setting);
    return named_whole(line, std::move(read), setting);
}

// "Limón" as the lime or the lemon, told.
Result<ReadLine> read_limon(std::string_view line, const LineSetting& setting) {
    const auto told = setting.around.limes ? setting.around.limes : limes_in(line, setting.knowledge);
    auto read = read_as_written(with_fruit(line, told.value_or(false)), setting);
    if (!read) return read;
    const bool lime = read->line.ingredient.find("lime") != std::string::npos;
    if (!lime && read->line.ingredient.find("lemon") == std::string::npos) return read;
    read->line.notes.push_back(limon_note(lime));
    read->doubts.push_back({told == lime ? Confidence::likely : Confidence::unsure, limon_note(lime), true});
    return read;
}

// Without the age of a food that ripens, which is told; nothing where the line tells the age of another food.
std::optional<ReadLine> read_with_age(std::string_view line, const RipeAge& age, const LineSetting& setting) {
    const Knowledge& knowledge = setting.knowledge;
    auto read = read_as_written(age.line, setting);
    if (!read) return std::nullopt;
    const Ingredient& food = *knowledge.ingredient(read->line.ingredient);
    if (!may_have_age(food, age, knowledge) || danger_of_food(line, read->line, knowledge, setting.on_the_shelf)) return std::nullopt;
    Reason told = reason_about(ReasonKind::passed_over, age.said, {food.names.front()});
    told.role = "age";
    read->line.notes.push_back(told);
    read->doubts.push_back({Confidence::likely, std::move(told), true});
    return std::move(*read);
}

}  // namespace

Result<ReadLine> read_line(std::string_view line, const Origin& origin, const Knowledge& knowledge, WeighedAfter after, bool on_the_shelf,
                           const Around& around) {
    if (line.size() > longest_line)
        return failure(Trouble::bad_data, "a line of over 2000 letters: expected one ingredient a line", origin.start());
    if (auto danger = danger_in(line, knowledge)) {
        danger->where = origin.start();
        return Failure(std::move(*danger));
    }
    if (!on_the_shelf)
        if (auto bone = weighed_with_bone(line, origin, knowledge)) return Failure(std::move(*bone));
    const LineSetting setting{origin, knowledge, after, on_the_shelf, around};
    const auto age = take_ripe_age(line, knowledge);
    if (age && (age->counted || age->a_year))
        if (auto aged = read_with_age(line, *age, setting)) return std::move(*aged);
    auto read = says_limon(line) ? read_limon(line, setting) : read_as_written(line, setting);
    if (read || !age || age->counted || age->a_year) return read;
    auto aged = read_with_age(line, *age, setting);
    return aged ? std::move(*aged) : std::move(read);
}

}  // namespace standin
