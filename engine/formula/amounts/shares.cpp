#include "formula/amounts/shares.hpp"

#include <array>

#include "core/band.hpp"
#include "core/contains.hpp"
#include "formula/amounts/amount.hpp"

namespace standin {
namespace {

bool is_meat(const Line& line, const Knowledge& knowledge) {
    const Ingredient* ingredient = knowledge.ingredient(line.ingredient);
    return ingredient && ingredient->meat.has_value();
}

Band sum(const std::vector<ReadLine>& lines, bool meat_only, const Knowledge& knowledge) {
    Band total;
    for (const auto& read : lines)
        if (!meat_only || is_meat(read.line, knowledge)) {
            total.low += read.line.grams.low;
            total.mid += read.line.grams.mid;
            total.high += read.line.grams.high;
        }
    return total;
}

void weigh_share(ReadLine& read, const Band& whole) {
    const Share& share = *read.share;
    read.line.grams = {share.fraction.low * whole.low, share.fraction.mid * whole.mid, share.fraction.high * whole.high};
    if (share.count) read.line.count = *share.count * whole.mid;
}

void weigh_shares(std::vector<ReadLine>& lines, Whole of, const Band& whole) {
    for (auto& read : lines)
        if (read.share && read.share->of == of) weigh_share(read, whole);
}

double batch_share(const std::vector<ReadLine>& lines) {
    double total = 0;
    for (const auto& read : lines)
        if (read.share && read.share->of == Whole::batch) total += read.share->fraction.mid;
    return total;
}

void check_shares(const std::vector<ReadLine>& lines, const Band& meat, const Knowledge& knowledge, Troubles& troubles) {
    for (const auto& read : lines) {
        if (!read.share || read.share->of != Whole::meat) continue;
        if (is_meat(read.line, knowledge))
            troubles.add({Trouble::bad_data, "a meat line cannot be a share of the meat: expected its weight", read.where, {}});
        else if (meat.mid <= 0) troubles.add({Trouble::bad_data, "a share of the meat, but no meat line has a weight", read.where, {}});
    }
}

void check_weights(const std::vector<ReadLine>& lines, Troubles& troubles) {
    double total = 0;
    for (const auto& read : lines) {
        total += read.line.grams.high;
        if (auto wrong = absurd(read.line.grams); !wrong.empty()) troubles.add({Trouble::bad_data, std::move(wrong), read.where, {}});
    }
    if (!troubles.any())
        if (auto wrong = absurd(exactly(total)); !wrong.empty())
            troubles.add({Trouble::bad_data, "the batch is " + wrong, lines.front().where, {}});
}

}  // namespace

bool is_of_form(ReasonKind kind) {
    return contains(std::array{ReasonKind::meant_as, ReasonKind::dried_by_share, ReasonKind::fresh_by_share, ReasonKind::not_the_other,
                               ReasonKind::from_container, ReasonKind::form_not_known, ReasonKind::translated},
                    kind);
}

std::vector<Line> settle(std::vector<ReadLine> lines, const Knowledge& knowledge, Troubles& troubles) {
    const Band meat = sum(lines, true, knowledge);
    check_shares(lines, meat, knowledge, troubles);
    weigh_shares(lines, Whole::meat, meat);
    const double share = batch_share(lines);
    const Band rest = sum(lines, false, knowledge);
    if (share > 0 && (share >= 1 || rest.mid <= 0))
        troubles.add({Trouble::bad_data,
                      "the shares of the batch leave nothing for lines with a weight: expected at least one line in grams",
                      lines.front().where,
                      {}});
    else weigh_shares(lines, Whole::batch, scaled(rest, 1 / (1 - share)));
    if (!troubles.any()) check_weights(lines, troubles);
    std::vector<Line> out;
    for (auto& read : lines) out.push_back(std::move(read.line));
    return out;
}

}  // namespace standin
