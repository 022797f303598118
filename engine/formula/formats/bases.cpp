#include "formula/formats/bases.hpp"

#include <cmath>

#include "formula/amounts/heading_base.hpp"
#include "formula/formats/share_sheet.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/line/line_text.hpp"

namespace standin {
namespace {

constexpr double same = 0.05;                         // judgement: the meat of such a list may be rounded
constexpr double same_batch = 0.15;                   // likewise all of it: such sheets seldom add up
constexpr double most_meat = 1.15, least_meat = 0.6;  // of a kilo of batch: what its meat may be. Judgement

// The first weight that a line writes, in g; zero where it writes none.
double weight_written(std::string_view line) {
    for (const auto& word : words_of(line)) {
        Cursor cursor(line, word.begin);
        const auto amount = cursor.digit() ? amount_at(cursor) : std::nullopt;
        const Unit* unit = amount ? amount->parts.front().unit : nullptr;
        if (unit && (unit->dimension == Dimension::mass || unit->dimension == Dimension::volume))
            return amount->parts.front().number.mid * unit->size.mid;
    }
    return 0;
}

struct Under {
    double meat = 0, all = 0;  ///< as written, in g
    bool all_read = true;
};

Under lines_under(const Draft& draft, std::size_t base, const Knowledge& knowledge) {
    Under under;
    const double per = draft.bases[base - 1].per.grams;
    for (const auto& line : draft.lines) {
        if (line.base != base || line.beside) continue;
        under.all_read = under.all_read && line.read;
        if (!line.read) {
            under.all += weight_written(line.written);
            continue;
        }
        under.all += line.read->share ? line.read->share->fraction.mid * per : line.read->line.grams.mid;
        if (!line.read->share && knowledge.ingredient(line.read->line.ingredient)->meat) under.meat += line.read->line.grams.mid;
    }
    return under;
}

}  // namespace

Around around_line(const Draft& draft, std::size_t base) {
    Around around;
    if (base > 0) around.base = draft.bases[base - 1].per;
    around.unit = draft.unit;
    around.unit_said = draft.unit != nullptr;
    around.limes = draft.limes;
    return around;
}

void settle_bases(Draft& draft, const Knowledge& knowledge) {
    for (std::size_t base = 1; base <= draft.bases.size(); ++base) {
        const DraftBase& of = draft.bases[base - 1];
        const Under under = lines_under(draft, base, knowledge);
        if (under.meat <= 0) {
            draft.formula.read_as.push_back(base_reason(ReasonKind::amounts_per, of.per));
            draft.formula.read_as.back().about = of.heading;
            continue;
        }
        const auto is_base = [&](double grams, double within) { return std::abs(grams - of.per.grams) <= within * of.per.grams; };
        // "Per kg of batch", and the meat stands below it by the kilo too.
        const bool of_batch =
            of.per.of == Whole::batch && under.meat >= least_meat * of.per.grams && under.meat <= most_meat * of.per.grams;
        if (!is_base(under.meat, same) && !is_base(under.all, same_batch) && !of_batch) {
            if (!under.all_read) continue;  // what is asked of its lines comes first
            draft.troubles.add({Trouble::bad_data,
                                "\"" + of.heading + "\": amounts for so much, or for all the meat below: say which",
                                of.where,
                                {"18 g salt per kg of meat", "put the meat above this line"}});
            continue;
        }
        for (auto& line : draft.lines)
            if (line.base == base && line.origin) {
                line.base = 0;
                line.read = read_line(line.written, *line.origin, knowledge, {}, false, around_line(draft, 0));
            }
    }
}

bool misses_meat(const Draft& draft, const Knowledge& knowledge) {
    constexpr double least = 0.25;  // of the meat that was read: less of a line hardly moves a share. Judgement
    double meat = 0;
    for (const auto& line : draft.lines)
        if (!line.beside && line.read && !line.read->share && knowledge.ingredient(line.read->line.ingredient)->meat)
            meat += line.read->line.grams.mid;
    for (const auto& line : draft.lines)
        if (!line.beside && !line.read && weight_written(line.written) > least * meat) return true;
    return false;
}

}  // namespace standin
