#include "formula/line/line_reader.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/amounts/amount.hpp"
#include "formula/amounts/heading_base.hpp"
#include "formula/amounts/line_facts.hpp"
#include "formula/amounts/own_share.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/food/kin_measure.hpp"
#include "formula/food/kind_in_brackets.hpp"
#include "formula/food/line_notes.hpp"
#include "formula/food/line_phrases.hpp"
#include "formula/food/line_prepared.hpp"
#include "formula/food/name_text.hpp"
#include "formula/food/namesakes.hpp"
#include "formula/food/part_of_food.hpp"
#include "formula/food/prepared_text.hpp"
#include "formula/food/soaking_liquid.hpp"
#include "formula/food/tinned.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/hazards/told_content.hpp"
#include "formula/line/amount_behind_name.hpp"
#include "formula/line/by_share.hpp"
#include "formula/line/line_doubts.hpp"
#include "formula/line/line_twice.hpp"
#include "formula/line/unit_turned.hpp"
#include "formula/words/lean_share.hpp"
#include "formula/words/line_asides.hpp"
#include "formula/words/passed_over.hpp"
#include "formula/words/price_beside.hpp"

namespace standin {
namespace {

constexpr int understood = 4;         // how far a reading came when every word had its meaning
constexpr double same_weight = 0.14;  // judgement: "1 oz (25 g)" and "1 lb (500 g)" still mean one weight
constexpr double rounding = 0.03;     // judgement: "2 lb (900 g)" is one weight, rounded

struct Missed {
    int depth = -1;  // how far the reading came; the error of the farthest is shown
    Error error;
};

class LineReader {
public:
    /// `bare`: "6 %" and "hot" by themselves may be facts of the food.
    LineReader(std::string_view line, const LineSetting& setting, bool bare = false)
        : written_(line), line_(line), setting_(setting), origin_(setting.origin), knowledge_(setting.knowledge), around_(setting.around) {
        clean_line(line_, knowledge_);
        bracket_drained(line_);
        take_beside_amount(line_, knowledge_);
        write_kilos(line_);
        turn_base_first(line_, knowledge_);
        turn_unit_first(line_, knowledge_);
        take_idle_start(line_, knowledge_);
        rewrite_weighed_after(line_, knowledge_);
        facts_ = take_facts(line_, bare, knowledge_);
        notes_ = take_notes(line_, knowledge_);
        if (setting.after) notes_.weighed_after = setting.after;
        take_per();
        take_base();
        take_whole();
        rewrite_phrases(line_, knowledge_);
        if (auto other = take_of_another_line(line_, knowledge_); !other.empty()) notes_.passed.push_back(std::move(other));
        if (auto extra = take_extra(line_, knowledge_); !extra.empty()) notes_.passed.push_back(std::move(extra));
        start_ = line_start(line_);
        std::fill(line_.begin(), line_.begin() + static_cast<std::ptrdiff_t>(start_), ' ');
        take_second_amount(line_, start_, knowledge_, notes_);
    }

    Result<ReadLine> read() {
        for (const auto& candidate : candidates()) {
            auto line = attempt(candidate);
            if (line || missed_.depth >= understood) return line;
        }
        const auto vague = vague_amount(line_, knowledge_);
        if (!vague.empty() && missed_.depth <= 3 && (missed_.depth < 0 || vague == "to taste" || (vague != "optional" && !measured())))
            return failure(Trouble::bad_data, "\"" + vague + "\" is no amount: expected a weight or a measure", origin_.start(),
                           {"18 g", "1 tsp", "1.8 % of meat"});
        if (missed_.depth <= 3 && names_two_parts(line_, knowledge_))
            return failure(Trouble::bad_data, "two ingredients in one line: expected one", origin_.start(),
                           {"zest of 1 lemon", "juice of 1 lemon"});
        if (missed_.depth < 0)
            return failure(Trouble::bad_data, "no amount in this line: expected one such as \"300 g spinach\" or \"salt, 18 g\"",
                           origin_.start());
        return Failure(std::move(missed_.error));
    }

    // A weight or a volume leads the line, so "part", "optional" and the like in it tell of something else.
    bool measured() const {
        Cursor cursor(line_, start_);
        const auto amount = amount_at(cursor);
        const Unit* unit = amount ? amount->parts.front().unit : nullptr;
        return unit && unit->dimension != Dimension::count;
    }

    bool found_no_amount() const { return missed_.depth < 0; }

private:
    bool digit_near(std::size_t at, bool behind) const {
        if (!behind) return at > 0 && line_[at - 1] >= '0' && line_[at - 1] <= '9';
        Cursor cursor(line_, at + 1);
        cursor.space();
        return number_at(cursor, false).has_value();
    }

    // "per kg of meat" may stand anywhere in the line; "for every 5 lb" says the same.
    void take_per() {
        for (const std::string_view each : {" for every ", " for each ", " to every ", " to each ", " to the "})
            if (const auto at = line_.find(each); at != std::string::npos) {
                Cursor behind(line_, at + each.size());
                number_at(behind);
                const auto unit = unit_at(behind);
                if (unit && unit->unit->dimension == Dimension::mass)
                    line_.replace(at, each.size(), std::string(each.size() - 5, ' ') + " per ");
            }
        for (std::size_t i = 1; i < line_.size() && !per_; ++i) {
            if (line_[i] != '/' && !(line_[i - 1] == ' ' && line_.compare(i, 4, "per ") == 0)) continue;
            if (line_[i] == '/' && (digit_near(i, false) || digit_near(i, true))) continue;  // a fraction, or an amount told twice
            Cursor cursor(line_, i);
            per_ = per_at(cursor);
            if (!per_) continue;
            share_text_ = " " + line_.substr(i, cursor.at() - i);
            std::fill(line_.begin() + static_cast<std::ptrdiff_t>(i), line_.begin() + static_cast<std::ptrdiff_t>(cursor.at()), ' ');
        }
    }

    // What the heading above says goes for a line that says nothing of its own.
    void take_base() {
        per_said_ = per_.has_value();
        if (per_said_ || !around_.base) return;
        per_ = around_.base;
        share_text_ = " per " + base_text(*per_);
    }

    // So may the "of meat" of a percentage.
    void take_whole() {
        if (line_.find('%') == std::string::npos && !(per_ && per_->of == Whole::unsaid)) return;
        const auto next = [&](std::size_t from) { return std::min(line_.find(" of ", from), line_.find(" on ", from)); };
        for (std::size_t i = next(0); i != std::string::npos && whole_ == Whole::unsaid; i = next(i + 1)) {
            Cursor cursor(line_, i);
            whole_ = whole_at(cursor);
            if (whole_ == Whole::unsaid) continue;
            share_text_ = line_.substr(i, cursor.at() - i);
            std::fill(line_.begin() + static_cast<std::ptrdiff_t>(i), line_.begin() + static_cast<std::ptrdiff_t>(cursor.at()), ' ');
        }
    }

    void add(std::vector<AmountInLine>& out, std::size_t at, bool with_unit) const {
        Cursor cursor(line_, at);
        if (auto amount = amount_at(cursor, with_unit)) out.push_back({std::move(*amount), at, cursor.at()});
    }

    std::vector<AmountInLine> candidates() {
        std::vector<AmountInLine> out;
        const std::size_t first = start_;
        add(out, first, true);
        const bool leading = !out.empty();
        if (leading && out.front().amount.parts.front().unit) add(out, first, false);
        bool fresh_word = false, fresh_segment = false;
        for (std::size_t i = first; i < line_.size() && out.size() < 8; ++i) {
            if (i > first && (fresh_word || fresh_segment))
                if (auto behind = amount_behind_name(line_, i, fresh_segment, around_.unit != nullptr)) out.push_back(std::move(*behind));
            const char c = line_[i];
            const bool dash =
                c == '-' && i > first && line_[i - 1] == ' ' && i + 1 < line_.size() && line_[i + 1] == ' ';  // "mint - a bunch"
            fresh_segment = c == ',' || c == ':' || dash || (fresh_segment && c == ' ');
            fresh_word = c == ' ' || fresh_segment;
        }
        return out;
    }

    Failure miss(int depth, Error error, std::size_t at) {
        if (error.where.empty()) error.where = origin_.at(at);
        if (depth > missed_.depth) missed_ = {depth, error};
        return Failure(std::move(error));
    }

    // "50 lean pork trimmings, 1000 g": a number that counts nothing before the name, and a weight behind it.
    bool two_amounts(const NameRead& name, const AmountText& amount) const {
        constexpr double most_counted = 12;  // judgement
        return notes_.column && !amount.parts.front().unit && amount.parts.front().number.mid > most_counted &&
               !whole_measure(*name.ingredient);
    }

    Result<ReadLine> attempt(const AmountInLine& candidate) {
        std::string line = line_;
        std::fill(line.begin() + static_cast<std::ptrdiff_t>(candidate.begin), line.begin() + static_cast<std::ptrdiff_t>(candidate.end),
                  ' ');
        if (candidate.begin > start_) line[candidate.begin] = ',';
        const LineContext context{
            line, origin_, knowledge_, setting_.lenient, setting_.adjective_behind, setting_.nouns_have_capitals, setting_.on_the_shelf};
        const Unit* unit = candidate.amount.parts.front().unit;
        const Unit* container = unit && is_container(*unit)  ? unit
                                : candidate.amount.container ? candidate.amount.container
                                                             : leading_container();
        auto name = read_name(context, given(candidate.amount), !notes_.weighed_after, unit, container);
        if (!name) return miss(name.error().where.empty() ? 0 : name_depth(name.error()), std::move(name.error()), candidate.begin);
        AmountText amount = candidate.amount;
        if (!amount.parts.front().unit) amount.parts.front().unit = name->measure;
        if (const Unit* written = amount.parts.front().unit; written && written->word == "cl" && has_measure(*name->ingredient, "clove"))
            amount.parts.front().unit = unit_named("clove");  // "10 cl garlic"
        unit_given_ = !amount.parts.front().unit && around_.unit && amount.parts.size() == 1 && amount.size.empty() && !notes_.grams;
        if (unit_given_ && !name->before.unknown.empty())  // "2 diş sarımsak": a measure, though nobody knows which
            return miss(3, unknown_measure(name->before.unknown.front(), *name->ingredient), candidate.begin);
        if (unit_given_) amount.parts.front().unit = around_.unit;
        if (amount.of == Whole::unsaid) amount.of = whole_;
        if (per_ && (per_said_ || amount.of == Whole::none)) {
            amount.per_grams = per_->grams;
            amount.of = per_->of == Whole::unsaid ? whole_ : per_->of;
        }
        settle_whole(amount, *name->ingredient);
        if (auto differ = noted_volume(amount, notes_)) return miss(understood, std::move(*differ), candidate.begin);
        take_volume_of_count(amount, *name->ingredient, notes_);
        fill_measure(amount, *name);
        take_kind_in_brackets(*name, notes_, knowledge_);
        take_named_in_brackets(*name, notes_, knowledge_);
        tell_examples_in_brackets(*name, notes_, knowledge_);
        if (auto other = other_food_in_brackets(*name, notes_, written_, knowledge_); !other.empty())
            return miss(
                understood,
                {Trouble::bad_data, "two foods are named, " + name->ingredient->names.front() + " and " + other, "", {"name one of them"}},
                candidate.begin);
        if (const auto sort = other_sort_by_colour(*name, notes_, knowledge_); !sort.empty())
            return miss(understood, unknown_sort(sort, *name->ingredient), candidate.begin);
        if (two_amounts(*name, candidate.amount)) return miss(understood, which_amount(), candidate.begin);
        if (auto ready = seasoned_already(*name, written_)) return miss(understood, std::move(*ready), candidate.begin);
        if (auto whole = whole_animal({*name, amount, notes_, knowledge_})) return miss(understood, std::move(*whole), candidate.begin);
        if (auto open = settle_by_share(*name, amount, around_, knowledge_)) return miss(understood, std::move(*open), candidate.begin);
        if (auto doubtful = name->by_share || name->fresh_by_share
                                ? std::nullopt
                                : means_another(*name, candidate.amount, amount.per_grams > 0, knowledge_))
            return miss(understood, std::move(*doubtful), candidate.begin);
        return weigh_line(*name, amount, candidate.begin);
    }

    // "70 % pork shoulder (7 kg)" is the weight; "salt 1.8 %" a share of what the shares of such a formula are of.
    void settle_whole(AmountText& amount, const Ingredient& ingredient) {
        presumed_whole_ = Whole::none;
        if (amount.of != Whole::unsaid) return;
        if (notes_.grams && amount.per_grams <= 0) {
            amount.parts = {{*notes_.grams, unit_named("g")}};
            amount.of = Whole::none;
        } else if (around_.share != Whole::none &&
                   (around_.in_sheet ||
                    (!ingredient.meat &&
                     (amount.per_grams > 0 || !figure_may_describe(ingredient, amount.parts.front().number.mid, facts_))))) {
            amount.of = presumed_whole_ = around_.share;
        }
    }

    void tell_presumed_whole(const AmountText& amount, const Weighed& weighed, const Ingredient& ingredient,
                             std::vector<LineDoubt>& doubts) const {
        if (per_ && !per_said_) doubts.push_back({Confidence::likely, base_reason(ReasonKind::per_by_heading, *per_), false});
        if (presumed_whole_ == Whole::none) return;
        const bool meat = presumed_whole_ == Whole::meat;
        const auto of = shares_of_own(amount, weighed.grams.mid);
        Reason presumed = reason_about(ReasonKind::share_presumed, of[meat ? 0 : 1], {ingredient.names.front()});
        presumed.role = meat ? "meat" : "batch";
        presumed.note = of[meat ? 1 : 0];
        doubts.push_back({ingredient.roles.front() == Role::salt ? Confidence::unsure : Confidence::likely, std::move(presumed), true});
    }

    void tell_unit_given(ReadLine& read) const {
        read.unit_given = unit_given_;
        if (!unit_given_) return;
        Reason told = reason_about(ReasonKind::unit_presumed, std::string(around_.unit->word));
        if (around_.unit_said) told.role = "heading";
        read.doubts.push_back({around_.unit_said ? Confidence::likely : Confidence::unsure, std::move(told), false});
    }

    // "2 tsp salt, heaped"
    static void fill_measure(AmountText& amount, const NameRead& name) {
        AmountPart& part = amount.parts.front();
        if (!part.unit || part.unit->dimension != Dimension::volume || amount.filled) return;
        for (const auto& word : name.after.words)
            if (const auto factor = fill_word(word)) {
                part.number = {part.number.low * factor->low, part.number.mid * factor->mid, part.number.high * factor->high};
                return;
            }
    }

    Given given(const AmountText& amount) const {
        const Unit* unit = amount.parts.front().unit;
        if ((unit && unit->dimension != Dimension::count) || notes_.grams) return Given::weight;
        return unit ? Given::things : Given::number;
    }

    // "can of tomatillos, 28 oz"
    const Unit* leading_container() const {
        Cursor cursor(line_, start_);
        cursor.eat_any_word({"a", "one"});
        const auto unit = unit_at(cursor);
        return unit && is_container(*unit->unit) && cursor.eat_word("of") ? unit->unit : nullptr;
    }

    // Of a measure whose own weight is not known.
    void take_weight_of_kin(const MeasuredFood& food, const std::vector<std::string>& words) {
        if (by_kin_) notes_.grams.reset();
        auto kin = weight_when_prepared(food, words);
        if (!kin && !notes_.grams && !weigh(food.amount, *food.name.ingredient, words))
            kin = weight_by_kin(food.amount, *food.name.ingredient, words, KinAgree::well, knowledge_);
        if (kin) notes_.grams = kin;
        by_kin_ = kin.has_value();
    }

    static int name_depth(const Error& error) { return error.not_known == NotKnown::food ? 1 : 3; }

    Result<ReadLine> weigh_line(const NameRead& name, const AmountText& amount, std::size_t at) {
        std::vector<std::string> words = name.before.words;
        words.insert(words.end(), name.after.words.begin(), name.after.words.end());
        words.insert(words.end(), name.words.begin(), name.words.end());
        take_weight_of_kin({name, amount, notes_, knowledge_}, words);
        auto weighed = notes_.grams && !notes_.range_only && (counts(amount) || by_kin_) ? Result<Weighed>(Weighed{{0, 0, 0}, {}})
                                                                                         : weigh(amount, *name.ingredient, words);
        if (!weighed) return miss(2, std::move(weighed.error()), at);
        if (amount.of == Whole::unsaid)
            return miss(
                understood,
                {Trouble::bad_data, "a share of what: expected \"of meat\" or \"of batch\"", "", shares_of_own(amount, weighed->grams.mid)},
                at);
        if (auto open = chile_of_any_size({name, amount, notes_, knowledge_})) return miss(understood, std::move(*open), at);
        ReadLine read;
        read.where = origin_.at(at);
        read.line.ingredient = name.ingredient->id;
        read.line.keep = notes_.keep;
        read.line.written = written_amount(at);
        set_fat(name, read.line);
        tell_of_part(*name.ingredient, written_, knowledge_, read.line);
        if (auto wrong = set_facts(facts_, *name.ingredient, knowledge_, read.line)) return miss(understood, std::move(*wrong), at);
        if (auto other = hazards_in_passing(name, read.line)) return miss(understood, std::move(*other), at);
        read.doubts = doubts_about_line(name, amount, *weighed, notes_);
        if (by_kin_) read.doubts.push_back({Confidence::unsure, by_kin(*name.ingredient, amount, *notes_.grams), true});
        tell_of_soaking(name, read);
        tell_presumed_whole(amount, *weighed, *name.ingredient, read.doubts);
        tell_unit_given(read);
        tell_of_declared(read, knowledge_);
        for (auto& told : told_hazards(written_, read.line, knowledge_)) {
            std::erase_if(read.doubts, [&](const LineDoubt& doubt) {
                return doubt.what.kind == ReasonKind::passed_over && fold(doubt.what.about).find(told.about) != std::string::npos;
            });
            read.doubts.push_back({told.role == "said-free" ? Confidence::sure : Confidence::unsure, std::move(told), true});
        }
        if (auto purpose = outside_purpose(written_, knowledge_); !purpose.empty())
            read.doubts.push_back({Confidence::unsure, reason_about(ReasonKind::outside_counted_in, purpose), true});
        if ((" " + fold(written_) + " ").find(" optional ") != std::string::npos)
            read.doubts.push_back(
                {Confidence::likely, make_reason(ReasonKind::optional_counted_in, {}, {name.ingredient->names.front()}), true});
        for (const auto& doubt : read.doubts)
            if (doubt.always) read.line.notes.push_back(doubt.what);
        if (auto wrong = noted_weight(amount, *weighed, read.doubts)) return miss(understood, std::move(*wrong), at);
        const auto told_before = static_cast<std::ptrdiff_t>(read.doubts.size());
        drain_tin({name, amount, notes_, knowledge_}, *weighed, read.doubts);
        for (auto doubt = read.doubts.begin() + told_before; doubt != read.doubts.end(); ++doubt) read.line.notes.push_back(doubt->what);
        if (amount.of == Whole::none) {
            read.line.grams = weighed->grams;
            read.line.count = notes_.count ? notes_.count : weighed->count;
            if (auto wrong = absurd(read.line.grams); !wrong.empty())
                return miss(understood, {Trouble::bad_data, std::move(wrong), "", {}}, at);
        } else {
            read.share = share(amount, *weighed);
            if (read.share->fraction.low <= 0) return miss(understood, {Trouble::bad_data, "a share must be more than zero", "", {}}, at);
        }
        if (auto wrong = settle_preparations(read.line, {name, amount, notes_, knowledge_})) return miss(understood, std::move(*wrong), at);
        if (at > start_ && took_state_before_amount({name, amount, notes_, knowledge_}, behind_amount(at), read.line))
            read.doubts.push_back(
                {Confidence::likely, reason_about(ReasonKind::translated, std::string(written_) + " [weighed prepared]"), false});
        if (auto told = bought_so(name, *name.ingredient)) {
            read.doubts.push_back({Confidence::unsure, *told, true});
            read.line.notes.push_back(std::move(*told));
        }
        if (auto danger = danger_of_food(written_, read.line, knowledge_, setting_.on_the_shelf))
            return miss(understood, std::move(*danger), at);
        return read;
    }

    // Fat said is fat set; where the record holds as much already it says nothing new.
    void set_fat(const NameRead& name, Line& line) const {
        constexpr double same = 0.5;  // g in 100 g, judgement
        const auto said = name.after.fat_pct ? name.after.fat_pct : name.before.fat_pct;
        if (!said || std::abs(*said - name.ingredient->composition.fat.mid) < same) return;
        const Band& spread = knowledge_.parameter("composition.spread.fat-said");
        line.fat_pct = Band{std::max(0.0, *said + spread.low), *said, std::min(100.0, *said + spread.high)};
        line.notes.push_back(make_reason(ReasonKind::fat_as_said, {{"fat", {}, *said, "%"}}, {name.ingredient->names.front()}));
    }

    std::optional<Error> hazards_in_passing(const NameRead& name, Line& line) const {
        const auto other_letters = clauses_beyond_latin(written_);
        for (const auto* all :
             {&notes_.passed, &name.before.passed, &name.after.passed, &name.before.unknown, &name.after.unknown, &other_letters})
            for (const auto& passed : *all) {
                if (auto other = other_food_in_passing(passed, line, knowledge_)) return other;
                if (tells_fat_figure(passed, knowledge_))
                    return Error{Trouble::bad_data,
                                 "\"" + passed + "\" tells how fat " + name.ingredient->names.front() + " is, in a way not understood here",
                                 "",
                                 {"30 % fat", "70/30", "70 % lean"}};
            }
        return std::nullopt;
    }

    static Share share(const AmountText& amount, const Weighed& weighed) {
        if (amount.per_grams <= 0) return {amount.of, scaled(amount.parts.front().number, 0.01), std::nullopt};
        Share out{amount.of, scaled(weighed.grams, 1 / amount.per_grams), std::nullopt};
        if (weighed.count) out.count = *weighed.count / amount.per_grams;
        return out;
    }

    // A weight in brackets settles a count or a volume, and must agree with a weight.
    std::optional<Error> noted_weight(const AmountText& amount, Weighed& weighed, std::vector<LineDoubt>& doubts) const {
        if (!notes_.grams || amount.of != Whole::none) return std::nullopt;
        const Unit* unit = amount.parts.front().unit;
        Band noted = *notes_.grams;
        if (notes_.each) noted = scaled(noted, amount.parts.front().number.mid);
        else if (unit && is_container(*unit) && amount.parts.front().number.mid > 1)
            return Error{Trouble::bad_data, "is the weight in brackets that of one or of all", "", {"2 x 400 g", "2 cans (400 g each)"}};
        if (unit && unit->dimension == Dimension::mass && notes_.drained) {
            weighed.grams = noted;
            return std::nullopt;
        }
        if (unit && unit->dimension == Dimension::mass) {
            if (notes_.range_only) noted.mid = weighed.grams.mid;
            if (std::abs(noted.mid - weighed.grams.mid) > same_weight * weighed.grams.mid)
                return Error{Trouble::bad_data, "the weight in brackets is another one: expected the same weight twice", "", {}};
            if (!notes_.about && std::abs(noted.mid - weighed.grams.mid) > rounding * weighed.grams.mid) {
                weighed.grams = {std::min(noted.low, weighed.grams.low), weighed.grams.mid, std::max(noted.high, weighed.grams.high)};
                doubts.push_back({Confidence::likely, make_reason(ReasonKind::weights_differ), false});
            } else if (!notes_.about && noted.low < noted.high && noted.low <= weighed.grams.mid && noted.high >= weighed.grams.mid)
                weighed.grams = {noted.low, weighed.grams.mid, noted.high};
            return std::nullopt;
        }
        const bool single = counts(amount) && !(unit && (is_container(*unit) || unit->size.mid > 0 || unit->word == "bunch"));
        weighed = {noted, single ? std::optional<double>(amount.parts.front().number.mid) : std::nullopt};
        return std::nullopt;
    }

    std::string_view behind_amount(std::size_t at) const {
        Cursor cursor(line_, at);
        amount_at(cursor);
        return cursor.rest();
    }

    std::string written_amount(std::size_t at) const {
        Cursor cursor(line_, at);
        amount_at(cursor);
        std::string out(std::string_view(line_).substr(at, cursor.at() - at));
        out.erase(0, out.find_first_not_of(" \n"));
        while (!out.empty() && out.back() == ' ') out.pop_back();
        return out + share_text_;
    }

    std::string_view written_;
    std::string line_;
    std::size_t start_ = 0;
    const LineSetting& setting_;
    const Origin& origin_;
    const Knowledge& knowledge_;
    const Around& around_;
    LineNotes notes_;
    std::vector<FactText> facts_;
    std::optional<Per> per_;
    bool per_said_ = false;  // in the line itself, not above it
    bool unit_given_ = false;
    bool by_kin_ = false;  // the weight in the notes
    Whole whole_ = Whole::unsaid;
    Whole presumed_whole_ = Whole::none;
    std::string share_text_;
    Missed missed_;
};

}  // namespace

OneReading read_once(std::string_view line, const LineSetting& setting, bool bare) {
    LineReader reader(line, setting, bare);
    auto read = reader.read();
    return {std::move(read), reader.found_no_amount()};
}

}  // namespace standin
