#include "formula/kitchen/kitchen_bench.hpp"

#include <algorithm>
#include <optional>

#include "core/band.hpp"
#include "core/names.hpp"
#include "formula/amounts/fact_band.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/records/word_list.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// What stands before the figure, folded, without "my", "our" and "the" in front.
std::string opening_of(std::string_view text) {
    std::string words = fold(bare(text));
    for (const std::string_view front : {"my ", "our ", "the "})
        if (words.rfind(front, 0) == 0) words.erase(0, front.size());
    return words;
}

std::optional<KitchenKind> kind_of(const std::string& words, const Knowledge& knowledge) {
    if (knowledge.in_list(WordList::scale_step, words)) return KitchenKind::scale;
    if (knowledge.in_list(WordList::pan_loss, words)) return KitchenKind::pan_loss;
    if (knowledge.in_list(WordList::batch_ph, words)) return KitchenKind::batch_ph;
    if (knowledge.in_list(WordList::pan_fat, words)) return KitchenKind::pan_fat;
    if (knowledge.in_list(WordList::raw_lightness, words)) return KitchenKind::raw_lightness;
    if (knowledge.in_list(WordList::cooked_lightness, words)) return KitchenKind::cooked_lightness;
    return std::nullopt;
}

Result<KitchenFact> within(KitchenKind kind, const Band& figure, const Band& band, double low, double high, const std::string& what,
                           const std::string& unit) {
    if (figure.low < low || figure.high > high)
        return failure(Trouble::bad_data, what + " of " + exact_text(figure.mid) + unit + " lies beyond what can be: expected " +
                                              exact_text(low) + " to " + exact_text(high) + unit);
    KitchenFact fact;
    fact.kind = kind;
    fact.value = band;
    return fact;
}

Result<KitchenFact> scale_of(std::string_view figure) {
    constexpr double least = 0.01, most = 100;  // g, judgement: a powder scale and a market scale
    Cursor cursor(figure);
    const auto amount = amount_at(cursor);
    cursor.space();
    const Unit* unit = amount ? amount->parts.front().unit : nullptr;
    if (!unit || unit->dimension != Dimension::mass || amount->parts.size() > 1)
        return failure(Trouble::bad_data, "the step of a scale: expected a weight such as 5 g", "", {"scale: 5 g"});
    const Band step = exactly(amount->parts.front().number.mid * unit->size.mid);
    return within(KitchenKind::scale, step, step, least, most, "a step", " g");
}

Band spread_about(const Band& said, const Band& off) {
    return said.low < said.high ? said : Band{std::max(0.0, said.mid + off.low), said.mid, said.mid + off.high};
}

std::optional<Band> share_at(std::string_view figure) {
    Cursor cursor(figure);
    const auto number = number_at(cursor, false);
    cursor.space();
    if (!number || !(cursor.eat("%") || cursor.eat_any_word({"percent", "pct"}))) return std::nullopt;
    return number->band;
}

Result<KitchenFact> loss_of(std::string_view figure, const Knowledge& knowledge) {
    constexpr double least = 1, most = 60;  // %, judgement
    const auto said = share_at(figure);
    if (!said) return failure(Trouble::bad_data, "what the pan takes: expected a share such as 22 %", "", {"pan loss: 22 %"});
    const Band band = spread_about(*said, knowledge.parameter("kitchen.spread.pan-loss"));
    return within(KitchenKind::pan_loss, *said, band, least, most, "a loss", " %");
}

Result<KitchenFact> fat_of(std::string_view figure, const Knowledge& knowledge) {
    constexpr double least = 0.1, most = 40;  // % of the raw weight, judgement
    const auto said = share_at(figure);
    if (!said)
        return failure(Trouble::bad_data, "the fat in the pan: expected a share of the raw weight such as 8 %", "", {"pan fat: 8 %"});
    const Band band = spread_about(*said, knowledge.parameter("kitchen.spread.pan-fat"));
    return within(KitchenKind::pan_fat, *said, band, least, most, "a pan fat", " %");
}

Result<KitchenFact> lightness_of(KitchenKind kind, std::string_view figure, const Knowledge& knowledge) {
    constexpr double least = 15, most = 95;  // judgement: blood and chalk
    Cursor cursor(figure);
    const auto number = number_at(cursor, false);
    if (!number) return failure(Trouble::bad_data, "how light it is: expected L* as a figure such as 62", "", {"raw lightness: 62"});
    const Band band = spread_about(number->band, knowledge.parameter("kitchen.spread.lightness"));
    return within(kind, number->band, band, least, most, "a lightness", "");
}

Result<KitchenFact> ph_of(std::string_view figure, const Knowledge& knowledge) {
    constexpr double least = 4, most = 7.5;  // judgement: the sourest and the mildest mass that is still a sausage
    Cursor cursor(figure);
    cursor.eat_word("ph");
    cursor.space();
    const auto number = number_at(cursor, false);
    if (!number) return failure(Trouble::bad_data, "the pH of the batch: expected a figure such as 5.4", "", {"batch pH: 5.4"});
    FactText fact;
    fact.value = number->band;
    fact.banded = number->band.low < number->band.high;
    return within(KitchenKind::batch_ph, number->band, fact_spread(fact, knowledge), least, most, "a batch pH", "");
}

}  // namespace

std::optional<Result<KitchenFact>> bench_fact(std::string_view line, const Knowledge& knowledge) {
    const auto colon = line.rfind(':');
    const auto digit = line.find_first_of("0123456789", colon == std::string_view::npos ? 0 : colon);
    if (digit == std::string_view::npos) return std::nullopt;
    std::string words = opening_of(line.substr(0, digit));
    std::string formula;
    auto kind = kind_of(words, knowledge);
    for (const std::string_view of : {" of ", " for "}) {  // "pan loss of hedge link"
        const auto at = line.find(of);
        if (kind || at == std::string_view::npos || at > digit) continue;
        kind = kind_of(opening_of(line.substr(0, at)), knowledge);
        if (kind) formula = bare(line.substr(at + of.size(), digit - at - of.size()));
    }
    if (!kind) return std::nullopt;
    const std::string_view figure = line.substr(digit);
    const bool light = *kind == KitchenKind::raw_lightness || *kind == KitchenKind::cooked_lightness;
    auto fact = *kind == KitchenKind::scale      ? scale_of(figure)
                : *kind == KitchenKind::pan_loss ? loss_of(figure, knowledge)
                : *kind == KitchenKind::pan_fat  ? fat_of(figure, knowledge)
                : light                          ? lightness_of(*kind, figure, knowledge)
                                                 : ph_of(figure, knowledge);
    if (fact) fact->formula = *kind == KitchenKind::scale ? "" : formula;
    return fact;
}

}  // namespace standin
