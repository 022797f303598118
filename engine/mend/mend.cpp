#include "mend/mend.hpp"

#include <algorithm>

#include "adapt/request.hpp"
#include "evaluate/predict.hpp"
#include "mend/ways.hpp"
#include "safety/page.hpp"
#include "worksheet/scale.hpp"

namespace standin {
namespace {

// The formula at the size that was made.
Result<Formula> as_made(const CheckedFormula& formula, const std::string& made, const Context& context) {
    Formula mass = with_equal_lines_merged(formula.formula());
    if (made.empty()) return mass;
    const auto grams = weight_asked(made, "request.made");
    if (!grams) return Failure(grams.error());
    const double factor = *grams / NominalBatch(mass, context.nominal()).total()[Amount::mass];
    return scaled(std::move(mass), factor);
}

std::vector<MeasuredValue> against(const std::vector<MassReading>& readings, const Formula& mass, const Context& context) {
    std::vector<MeasuredValue> all;
    if (readings.empty()) return all;
    const Prediction as_written = predict_formula(mass, context.evaluator);
    for (const auto& reading : readings) {
        const Band& band = as_written.properties[reading.property];
        const double width = band.high - band.low;
        all.push_back(
            {reading.property, reading.value, band, reading.value < band.low - width / 2 || reading.value > band.high + width / 2});
    }
    return all;
}

std::vector<TastedWord> told(const Meaning& meaning) {
    std::vector<TastedWord> words;
    for (const auto& meant : meaning.all) {
        const TasteWord& word = *meant.taste.word;
        const TasteReading& reading = *meant.reading;
        TastedWord one{meant.taste.written, word.id, reading.says, false, meant.there, word.practice, word.source};
        one.judged = !meant.goals.empty() || reading.more_of || reading.less_of;
        words.push_back(std::move(one));
    }
    return words;
}

// More or less of what the formula has none of.
std::vector<Reason> of_nothing(const Meaning& meaning, const Formula& mass, const Knowledge& knowledge) {
    std::vector<Reason> cannot;
    for (const auto& meant : meaning.all) {
        const auto role = meant.reading->more_of ? meant.reading->more_of : meant.reading->less_of;
        const auto has = [&](const Line& line) { return knowledge.ingredient(line.ingredient)->roles.front() == role; };
        if (role && std::none_of(mass.lines.begin(), mass.lines.end(), has))
            cannot.push_back(cannot_be(ReasonKind::none_of_it, meant.taste.written));
    }
    return cannot;
}

void texts_of(const std::vector<MendStep>& steps, std::vector<std::string>& into) {
    for (const auto& step : steps) into.push_back(step.text);
}

void finish(MendAnswer& answer, const Mending& mending) {
    OnPage page;
    page.add(answer.base);
    for (const auto& way : answer.ways) page.offer(way.prediction);
    answer.on_page = page.safety();
    answer.of_variants = page.offered();
    if (answer.ways.empty()) return;
    texts_of(mending.fold, answer.fold);
    if (std::any_of(answer.ways.begin(), answer.ways.end(), [](const MendWay& way) { return !way.plain.empty(); }))
        texts_of(mending.plain, answer.plain);
}

}  // namespace

std::string_view word(MendKind kind) {
    switch (kind) {
        case MendKind::add:
            return "add";
        case MendKind::blend:
            return "blend";
        case MendKind::blend_and_add:
            return "blend and add";
    }
    return "";
}

Result<MendAnswer> mend_formula(const CheckedFormula& formula, const MendRequest& request, const Mending& mending, const Context& context) {
    const auto tastes = read_tastes(request.tasted, mending);
    if (!tastes) return Failure(tastes.error());
    const auto readings = read_measured(request.measured, context);
    if (!readings) return Failure(readings.error());
    const auto mass = as_made(formula, request.made, context);
    if (!mass) return Failure(mass.error());
    AdaptRequest on_hand;
    on_hand.have = request.have;
    on_hand.without = request.without;
    const auto stock = Stock::of(*mass, on_hand, context);
    if (!stock) return Failure(stock.error());

    const MassAsMade made(*mass, *readings, context);
    const auto states = made.states(*mass);
    MendAnswer answer;
    answer.base = made.predicted(*mass, states);
    answer.made_g = answer.base.batch_g;
    answer.measured = against(*readings, *mass, context);
    answer.presumed = stock->presumed();
    answer.excluded = stock->excluded();
    Meaning meaning = meaning_of(*tastes, made.state(*mass));
    answer.words = told(meaning);
    answer.opposed = meaning.opposed;
    for (const auto& meant : meaning.all)
        if (meant.reading->discard) answer.discard = meant.reading->says;
    answer.cannot = of_nothing(meaning, *mass, context.knowledge());
    const bool judged = std::any_of(answer.words.begin(), answer.words.end(), [](const TastedWord& w) { return w.judged; });
    if (answer.discard.empty() && answer.opposed.empty() && judged) {
        Ways ways = ways_to_mend({*mass, meaning.all, made, mending, *stock, context, request, answer.base, states});
        answer.ways = std::move(ways.all);
        answer.cannot.insert(answer.cannot.end(), ways.cannot.begin(), ways.cannot.end());
    }
    finish(answer, mending);
    return answer;
}

}  // namespace standin
