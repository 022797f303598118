#include "formula/kitchen/kitchen_line.hpp"

#include <algorithm>

#include "core/band.hpp"
#include "core/names.hpp"
#include "formula/amounts/fact_band.hpp"
#include "formula/amounts/line_facts.hpp"
#include "formula/food/likeness.hpp"
#include "formula/food/name_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/kitchen/kitchen_bench.hpp"
#include "formula/kitchen/kitchen_food.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/words/lean_share.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/index/plausible.hpp"
#include "knowledge/records/word_list.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// "are", "is", "has", "weighs" part a food from what is told of it, as a colon does. The text keeps its length.
void verbs_to_colons(std::string& text, const Knowledge& knowledge) {
    for (const auto& word : words_of(text))
        if (knowledge.in_list_as_written(WordList::fact_verb, word.raw)) {
            blank(text, word.begin, word.end);
            text[word.begin] = ':';
        }
    std::replace(text.begin(), text.end(), '=', ':');
}

// Fat in 100 g: "25 % fat", "75/25", "70 % lean", "fat 25 %".
std::optional<double> take_fat(std::string& text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    for (std::size_t i = 0; i < words.size(); ++i)
        if (const auto share = lean_share(words, i, knowledge)) {
            blank(text, words[i].begin, words[share->last - 1].end);
            return 100 - share->lean;
        }
    for (std::size_t i = 0; i + 1 < words.size(); ++i) {
        Cursor cursor(text, words[i + 1].begin);
        const auto number = words[i].folded == "fat" ? number_at(cursor, false) : std::nullopt;
        cursor.space();
        if (!number || !cursor.eat("%")) continue;
        blank(text, words[i].begin, cursor.at());
        return number->band.mid;
    }
    return std::nullopt;
}

// "pH of the pork shoulder: 5.7" for "the pork shoulder: pH 5.7".
void turn_round(std::string& text, const Knowledge& knowledge) {
    constexpr std::string_view of = " of ";
    const auto at = text.find(of), digit = text.find_first_of("0123456789");
    if (at == std::string::npos || digit == std::string::npos || digit < at + of.size()) return;
    const std::string lead = text.substr(0, at);
    if (!knowledge.in_list(WordList::fact_of, fold(lead))) return;
    text = text.substr(at + of.size(), digit - at - of.size()) + " " + lead + " " + text.substr(digit);
}

class FoodLine {
public:
    FoodLine(const TextLine& line, std::string_view file, const Knowledge& knowledge)
        : line_(line), text_(line.text), origin_(file, line.place), knowledge_(knowledge) {}

    Result<KitchenLine> read() {
        verbs_to_colons(text_, knowledge_);
        turn_round(text_, knowledge_);
        const auto fat = take_fat(text_, knowledge_);
        std::optional<FoodMeasure> measure;
        std::optional<FoodShare> share;
        if (!fat) share = told_share();
        const auto facts = share ? std::vector<FactText>{} : take_facts(text_, true, knowledge_);
        if (facts.empty() && !fat && !share) {
            share = take_share(text_, knowledge_);
            if (!share)
                measure = take_measure(
                    text_, [&](const std::string& name) { return food_called(name) != nullptr; }, knowledge_);
            if (!share && !measure) return nothing_told();
        }
        if (auto wrong = name_food()) return Failure(std::move(*wrong));
        for (const auto& fact : facts)
            if (auto wrong = add(fact)) return failed(std::move(*wrong));
        if (fat)
            if (auto wrong = add_fat(*fat)) return failed(std::move(*wrong));
        if (share)
            if (auto wrong = add_share(share.value_or(FoodShare{}))) return failed(std::move(*wrong));
        if (measure)
            if (auto wrong = add_measure(*measure)) return failed(std::move(*wrong));
        return std::move(read_);
    }

private:
    // "40 % waste", "60 % usable"; but "pork trim" is a food.
    std::optional<FoodShare> told_share() {
        std::string text = text_;
        const auto share = take_share(text, knowledge_);
        if (!share || !share->told) return std::nullopt;
        const std::string head = text_.substr(0, text_.find_first_of(":0123456789"));
        const std::string name = food_name(head, knowledge_).name;
        if (known_ingredient(name, knowledge_) && food_name(text, knowledge_).name != name) return std::nullopt;
        text_ = text;
        return share;
    }

    const Ingredient* food_called(const std::string& name) const {
        if (name.empty()) return nullptr;
        const auto* food = known_ingredient(name, knowledge_);
        return food ? food : knowledge_.ingredient_meant(name);
    }

    Failure failed(Error error) const {
        error.where = origin_.start();
        return Failure(std::move(error));
    }

    Failure nothing_told() const {
        return failed({Trouble::bad_data,
                       "no fact in this line: expected a food and what is known of it",
                       "",
                       {"pork shoulder: 25 % fat", "serranos this year: hot", "bunch of parsley: 60 g", "scale: 5 g"}});
    }

    // What is left of the line is the food. A beast by itself means all its meat.
    std::optional<Error> name_food() {
        auto [name, at] = food_name(text_, knowledge_);
        // "pork shoulder: 18 % fat by the label": what follows the fact is told in passing.
        const std::string head = food_name(std::string(line_.text.substr(0, line_.text.find_first_of(":=,0123456789"))), knowledge_).name;
        if (!food_called(name) && food_called(head) && name.rfind(head, 0) == 0) {
            read_.notes.push_back(reason_about(ReasonKind::passed_over, name.substr(head.size() + 1)));
            name = head;
        }
        if (name.empty()) return Error{Trouble::bad_data, "no food is named in this line", origin_.start(), {}};
        if (const auto species = parse_word<Species>(fold(name)))
            for (const auto& one : knowledge_.records().ingredients)
                if (one.meat && one.meat->species == *species) beast_.push_back(&one);
        food_ = known_ingredient(name, knowledge_);
        if (!food_) food_ = knowledge_.ingredient_meant(name);
        if (food_ && !knowledge_.ingredient_named(name) && knowledge_.ingredient_meant(name) == food_ && beast_.empty())
            read_.notes.push_back(reason_about(ReasonKind::meant_as, name, {food_->names.front()}));
        if (food_) return std::nullopt;
        return Error{Trouble::bad_data, "unknown ingredient \"" + name + "\"", origin_.at(at), knowledge_.nearest_ingredients(name),
                     NotKnown::food};
    }

    KitchenFact& put(KitchenKind kind, const Band& value) {
        KitchenFact fact;
        fact.kind = kind;
        fact.foods = {food_->id};
        fact.value = value;
        fact.written = line_.text;
        fact.where = origin_.start();
        read_.facts.push_back(std::move(fact));
        return read_.facts.back();
    }

    std::optional<Error> add(const FactText& fact) {
        if (fact.bare && !fits_bare(fact, *food_)) {
            if (fact.kind != FactKind::acid_pct) return Error{Trouble::bad_data, food_->names.front() + " has no heat of chiles", "", {}};
            return Error{Trouble::bad_data,
                         exact_text(fact.value.mid) + " % of what: expected fat, trim or usable",
                         "",
                         {food_->names.front() + ": " + exact_text(fact.value.mid) + " % " + (food_->meat ? "fat" : "trim")}};
        }
        auto band = fact_band(fact, *food_, knowledge_);
        if (!band) return band.error();
        if (auto note = fact_note(fact, *food_, *band)) read_.notes.push_back(std::move(*note));
        const auto kind = fact.kind == FactKind::ph         ? KitchenKind::ph
                          : fact.kind == FactKind::acid_pct ? KitchenKind::acid
                                                            : KitchenKind::heat;
        auto& put_down = put(kind, *band);
        if (kind != KitchenKind::ph || beast_.empty()) return std::nullopt;
        put_down.foods.clear();
        for (const auto* one : beast_)
            if (plausible_ph(*one)) put_down.foods.push_back(one->id);
        return std::nullopt;
    }

    std::optional<Error> add_fat(double fat) {
        const auto range = plausible_fat(*food_);
        if (!food_->meat)
            return Error{Trouble::bad_data, "the fat of " + food_->names.front() + " is not set here: expected a cut of meat", "", {}};
        if (!range.holds(fat))
            return Error{Trouble::bad_data,
                         exact_text(fat) + " % fat of " + food_->names.front() + " lies beyond what can be: expected " +
                             trimmed_text(range.low, 0) + " to " + trimmed_text(range.high, 0) + " %",
                         "",
                         {}};
        const Band& off = knowledge_.parameter("composition.spread.fat-said");
        put(KitchenKind::fat, {std::max(0.0, fat + off.low), fat, std::min(100.0, fat + off.high)});
        return std::nullopt;
    }

    std::optional<Error> add_share(const FoodShare& share) {
        if (!share.told)
            return Error{Trouble::bad_data,
                         exact_text(share.usable_pct) + " % of what: expected fat, acidity, trim or usable",
                         "",
                         {food_->names.front() + ": " + exact_text(share.usable_pct) + " % usable"}};
        constexpr double least = 5, most = 100;  // %, judgement
        if (share.usable_pct < least || share.usable_pct > most)
            return Error{Trouble::bad_data,
                         "what is left of " + food_->names.front() + " lies beyond what can be: expected 5 to 100 % usable",
                         "",
                         {}};
        put(KitchenKind::edible, exactly(share.usable_pct));
        return std::nullopt;
    }

    std::optional<Error> add_measure(const FoodMeasure& measure) {
        const auto range = plausible_measure(measure.word, *food_);
        if (measure.grams < range.low || measure.grams > range.high)
            return Error{Trouble::bad_data,
                         exact_text(measure.grams) + " g for a " + measure.word + " of " + food_->names.front() +
                             " lies beyond what can be: expected " + figures_text(range.low, 2) + " to " + figures_text(range.high, 2) +
                             " g",
                         "",
                         {}};
        const Band& off = knowledge_.parameter("kitchen.spread.measure");
        put(KitchenKind::measure, scaled(off, measure.grams)).measure = measure.word;
        return std::nullopt;
    }

    const TextLine line_;
    std::string text_;
    Origin origin_;
    const Knowledge& knowledge_;
    const Ingredient* food_ = nullptr;
    std::vector<const Ingredient*> beast_;
    KitchenLine read_;
};

// "methi, like dandelion greens"
std::optional<Result<KitchenLine>> like_fact(const TextLine& line, const Origin& origin, const Knowledge& knowledge) {
    std::string text(line.text);
    verbs_to_colons(text, knowledge);
    const auto likeness = likeness_in(text, knowledge);
    if (!likeness) return std::nullopt;
    const std::string name = food_name(likeness->line, knowledge).name;
    const auto* food = known_ingredient(name, knowledge);
    if (!food)
        return failure(Trouble::bad_data, "unknown ingredient \"" + name + "\"", origin.start(), knowledge.nearest_ingredients(name));
    if (auto refused = refused_likeness(likeness->called, *food, knowledge)) {
        refused->where = origin.start();
        return Failure(std::move(*refused));
    }
    KitchenLine read;
    KitchenFact fact;
    fact.kind = KitchenKind::like;
    fact.foods = {food->id};
    fact.called = likeness->called;
    fact.written = line.text;
    fact.where = origin.start();
    read.facts.push_back(std::move(fact));
    return read;
}

}  // namespace

Result<KitchenLine> read_kitchen_line(const TextLine& line, std::string_view file, const Knowledge& knowledge) {
    const Origin origin(file, line.place);
    const auto placed = [&](Error error) {
        error.where = origin.start();
        return Failure(std::move(error));
    };
    if (auto danger = danger_in(line.text, knowledge)) return placed(std::move(*danger));
    if (auto like = like_fact(line, origin, knowledge)) return std::move(*like);
    if (auto bench = bench_fact(line.text, knowledge)) {
        if (!*bench) return placed(bench->error());
        KitchenLine read;
        read.facts.push_back(std::move(**bench));
        read.facts.back().written = line.text;
        read.facts.back().where = origin.start();
        return read;
    }
    auto read = FoodLine(line, file, knowledge).read();
    if (read) return read;
    const auto english = in_english(line.text, knowledge);
    if (english.empty()) return read;
    auto again = FoodLine({english.front().text, line.place}, file, knowledge).read();
    if (!again) return read;
    for (auto& fact : again->facts) fact.written = line.text;
    return again;
}

}  // namespace standin
