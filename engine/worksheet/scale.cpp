#include "worksheet/scale.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "formula/amounts/amount.hpp"
#include "formula/lexer/cursor.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/reading.hpp"
#include "models/as_bought.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

struct Totals {
    double meat = 0, all = 0;
};

Totals totals_of(const Formula& formula, const Knowledge& knowledge) {
    Totals totals;
    for (const auto& line : formula.lines) {
        totals.all += line.grams.mid;
        if (knowledge.ingredient(line.ingredient)->meat) totals.meat += line.grams.mid;
    }
    return totals;
}

// Grams as picked or bought, as a list of what is on hand counts them.
double bought_for(const Formula& formula, const std::string& ingredient, const Knowledge& knowledge) {
    double grams = 0;
    for (const auto& line : formula.lines)
        if (line.ingredient == ingredient) grams += line.grams.mid * bought_per_gram(line, knowledge);
    return grams;
}

// In the maker's words: "5 kg", "spinach 400 g".
Reason asked_so(ReasonKind kind, const std::string& text) {
    Reason reason = make_reason(kind);
    reason.about = text;
    return reason;
}

// "as far as spinach 400 g goes"
Result<Scaling> limit_of(const Formula& formula, const std::string& text, const Knowledge& knowledge) {
    const auto stock = read_inventory(text, "request.only", knowledge);
    if (!stock) return Failure(stock.error());
    if (stock->items.size() != 1 || !stock->items.front().grams)
        return failure(Trouble::usage, "expected one line with its weight, such as 'spinach 400 g', not `" + text + "`", "request.only");
    const auto& item = stock->items.front();
    const std::string& name = knowledge.ingredient(item.ingredient)->names.front();
    const double needed = bought_for(formula, item.ingredient, knowledge);
    if (needed <= 0) return failure(Trouble::usage, "the formula has no line of " + name, "request.only");
    return Scaling{*item.grams / needed, asked_so(ReasonKind::as_far_as, text)};
}

}  // namespace

Result<double> weight_asked(const std::string& text, const std::string& where) {
    const auto wrong = [&](const std::string& what) { return failure(Trouble::usage, what + ", not `" + text + "`", where); };
    Cursor cursor(text);
    const auto amount = amount_at(cursor);
    cursor.space();
    double grams = 0;
    bool weight = amount && amount->of == Whole::none && cursor.done();
    if (weight && !amount->parts.front().unit)
        return failure(
            Trouble::usage,
            "`" + text + "` of what: expected a weight with its unit, such as " + text + " kg, " + text + " lb or " + text + " g", where);
    if (weight)
        for (const auto& part : amount->parts) {
            weight = weight && part.unit->dimension == Dimension::mass;
            grams += part.number.mid * part.unit->size.mid;
        }
    if (!weight) return wrong("expected a weight such as 5 kg, 11 lb or 2400 g");
    if (const auto slip = absurd(exactly(grams)); !slip.empty()) return wrong(slip);
    return grams;
}

Result<Scaling> scaling_of(const Formula& formula, const SheetRequest& request, const Knowledge& knowledge) {
    if (!request.meat.empty() && !request.total.empty())
        return failure(Trouble::usage, "a weight of the meat and one of the whole batch exclude each other: give one of them");
    const Totals totals = totals_of(formula, knowledge);
    Scaling chosen{1, make_reason(ReasonKind::as_the_formula)};
    if (!request.meat.empty()) {
        const auto grams = weight_asked(request.meat, "request.meat");
        if (!grams) return Failure(grams.error());
        chosen = {*grams / totals.meat, asked_so(ReasonKind::to_meat, request.meat)};
    }
    if (!request.total.empty()) {
        const auto grams = weight_asked(request.total, "request.total");
        if (!grams) return Failure(grams.error());
        chosen = {*grams / totals.all, asked_so(ReasonKind::to_total, request.total)};
    }
    bool asked = !request.meat.empty() || !request.total.empty();
    for (const auto& text : request.only) {
        const auto limit = limit_of(formula, text, knowledge);
        if (!limit) return Failure(limit.error());
        if (asked && limit->factor >= chosen.factor) continue;
        chosen = *limit;
        asked = true;
    }
    if (const auto slip = absurd(exactly(totals.all * chosen.factor)); !slip.empty())
        return failure(Trouble::usage, "the batch would come to " + shown(totals.all * chosen.factor) + " g: " + slip);
    return chosen;
}

Formula scaled(Formula formula, double factor) {
    for (auto& line : formula.lines) {
        line.grams = scaled(line.grams, factor);
        if (line.count) line.count = *line.count * factor;
        if (factor != 1) line.written.clear();
    }
    return formula;
}

}  // namespace standin
