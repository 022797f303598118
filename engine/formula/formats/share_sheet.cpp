#include "formula/formats/share_sheet.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/line/line_text.hpp"

namespace standin {
namespace {

constexpr double whole_pct = 100;
constexpr double presumed_grams = 1000;  // a sheet that tells no weight is read for a kilo: any other weight makes the same sausage

bool is_meat(const DraftLine& line, const Knowledge& knowledge) {
    return knowledge.ingredient(line.read->line.ingredient)->meat.has_value();
}

bool is_share(const DraftLine& line) { return !line.beside && line.read && line.read->share; }

// "18 g/kg" is no part of what adds up to 100 %.
bool is_percentage(const DraftLine& line) {
    constexpr std::string_view words[]{"%", "per cent", "percent", "pct"};
    return is_share(line) && std::any_of(std::begin(words), std::end(words),
                                         [&](std::string_view word) { return line.read->line.written.find(word) != std::string::npos; });
}

Around around_sheet(Whole whole) {
    Around around;
    around.share = whole;
    around.in_sheet = true;
    return around;
}

// The lines of the draft as they are where all of them may be shares.
std::vector<DraftLine> as_shares(const Draft& draft, const Knowledge& knowledge) {
    std::vector<DraftLine> lines = draft.lines;
    for (auto& line : lines)
        if (!line.read && line.origin && !line.beside && line.base == 0)
            if (auto read = read_line(line.written, *line.origin, knowledge, {}, false, around_sheet(Whole::batch)))
                line.read = std::move(read);
    return lines;
}

struct Base {
    Whole of = Whole::none;  ///< none: nothing adds up; unsaid: the first lines
    std::size_t lines = 0;   ///< of the draft, up to the last that is part of it
    double part = 0;         ///< of what the percentages are of, all that adds up: 1 but for roundings
};

// What adds up to 100 the most nearly.
Base base_of(const std::vector<DraftLine>& lines, Whole told, const Knowledge& knowledge) {
    constexpr double most_rounded = 1.0;  // %, judgement: percentages are rounded
    double all = 0, meat = 0, first = 0;
    std::size_t last_meat = 0, last = 0, up_to = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!is_percentage(lines[i])) continue;
        const double pct = whole_pct * lines[i].read->share->fraction.mid;
        all += pct;
        last = i + 1;
        if (!is_meat(lines[i], knowledge)) continue;
        meat += pct;
        last_meat = i + 1;
    }
    double sum = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (is_percentage(lines[i])) sum += whole_pct * lines[i].read->share->fraction.mid;
        if (i + 1 >= last_meat && std::abs(sum - whole_pct) < std::abs(first - whole_pct)) {
            first = sum;
            up_to = i + 1;
        }
    }
    const auto off = [](double pct) { return std::abs(pct - whole_pct); };
    Base base;
    double nearest = most_rounded;
    const auto try_one = [&](double pct, Whole of, std::size_t until) {
        if (off(pct) > nearest || (base.of != Whole::none && off(pct) >= nearest - 1e-9)) return;
        nearest = off(pct);
        base = {of, until, pct / whole_pct};
    };
    const bool meat_alone = all == meat && std::any_of(lines.begin(), lines.end(),
                                                       [](const DraftLine& line) { return is_share(line) && !is_percentage(line); });
    if (told != Whole::meat && !meat_alone) try_one(all, Whole::batch, last);
    if (told != Whole::batch) try_one(meat, Whole::meat, last_meat);
    if (told == Whole::unsaid) try_one(first, Whole::unsaid, up_to);
    return base;
}

// Where the batch is told, percentages that come to about all of it are of it, though they do not add up.
Base base_of_told_batch(const Draft& draft, const std::vector<DraftLine>& lines) {
    constexpr double least = 95, most = 105;  // %, judgement: further off a line may be missing
    if (!draft.size || draft.size->of == Whole::meat || draft.shares_of == Whole::meat) return {};
    double all = 0;
    std::size_t last = 0;
    for (std::size_t i = 0; i < lines.size(); ++i)
        if (is_percentage(lines[i])) {
            all += whole_pct * lines[i].read->share->fraction.mid;
            last = i + 1;
        }
    return all < least || all > most ? Base{} : Base{Whole::batch, last, all / whole_pct};
}

Error asks_base(const std::vector<DraftLine>& lines, const Knowledge& knowledge) {
    double all = 0, meat = 0;
    for (const auto& line : lines) {
        if (!is_percentage(line)) continue;
        const double pct = whole_pct * line.read->share->fraction.mid;
        all += pct;
        if (is_meat(line, knowledge)) meat += pct;
    }
    return {Trouble::bad_data,
            "the percentages add up to " + plain_number(all) + ", those of the meat to " + plain_number(meat) +
                ": of what they are shares is told where one of them is 100",
            lines.front().where,
            {}};
}

// Grams of what the percentages are of.
double base_grams(const Draft& draft, const Base& base, const std::vector<DraftLine>& lines, const Knowledge& knowledge) {
    if (!draft.size) return presumed_grams;
    double all = 0, meat = 0, weighed = 0;
    for (const auto& line : lines) {
        if (line.beside || !line.read) continue;
        if (!line.read->share) {
            weighed += line.read->line.grams.mid;
            continue;
        }
        all += line.read->share->fraction.mid;
        if (is_meat(line, knowledge)) meat += line.read->share->fraction.mid;
    }
    const double grams = draft.size->grams;
    if (draft.size->of == Whole::meat) return meat > 0 ? grams / meat : grams;
    if (draft.size->lines_before == base.lines && !draft.size->in_title) return grams;  // "on 10 kg of that:" between them
    return std::max(grams - weighed, 0.0) / all;
}

void tell_sheet(Draft& draft, const Base& base) {
    Reason told = make_reason(ReasonKind::shares_of_sheet, {{"whole", {}, draft.sheet->grams * base.part, "g"}});
    told.role = base.of == Whole::meat    ? "meat"
                : base.of == Whole::batch ? "batch"
                                          : "the first " + plain_number(static_cast<double>(base.lines)) + " lines";
    if (draft.size) told.about = draft.size->written;
    draft.formula.read_as.push_back(std::move(told));
}

}  // namespace

void weigh_in_sheet(const Draft& draft, DraftLine& line, const Knowledge& knowledge) {
    if (!draft.sheet || !is_share(line)) return;
    ReadLine& read = *line.read;
    const auto presumed = [](const Reason& told) { return told.kind == ReasonKind::share_presumed; };
    std::erase_if(read.line.notes, presumed);
    std::erase_if(read.doubts, [&](const LineDoubt& doubt) { return presumed(doubt.what); });
    if (draft.size && draft.sheet->adds_up) read.doubts.push_back({Confidence::likely, make_reason(ReasonKind::weighed_by_sheet), false});
    else read.doubts.push_back({Confidence::unsure, make_reason(ReasonKind::weighed_by_sheet), false});
    if (draft.sheet->of == Whole::meat && !is_meat(line, knowledge)) {
        read.share->of = Whole::meat;
        return;
    }
    read.line.grams = scaled(read.share->fraction, draft.sheet->grams);
    if (read.share->count) read.line.count = *read.share->count * draft.sheet->grams;
    read.line.written.clear();
    read.share.reset();
}

void settle_sheet(Draft& draft, const Knowledge& knowledge) {
    constexpr std::ptrdiff_t fewest = 2;
    const bool weighed_meat = std::any_of(draft.lines.begin(), draft.lines.end(), [&](const DraftLine& line) {
        return !line.beside && line.read && !line.read->share && is_meat(line, knowledge);
    });
    if (weighed_meat || draft.lines.empty()) return;
    auto lines = as_shares(draft, knowledge);
    const bool meat =
        std::any_of(lines.begin(), lines.end(), [&](const DraftLine& line) { return is_percentage(line) && is_meat(line, knowledge); });
    if (!meat || std::count_if(lines.begin(), lines.end(), is_percentage) < fewest) return;
    const bool all_read = std::all_of(lines.begin(), lines.end(), [](const DraftLine& line) { return line.beside || line.read; });
    Base base = base_of(lines, draft.shares_of, knowledge);
    const bool adds_up = base.of != Whole::none;
    if (!adds_up) base = base_of_told_batch(draft, lines);
    if (base.of == Whole::none) {
        if (all_read) draft.troubles.add(asks_base(lines, knowledge));
        draft.asks_base = all_read;
        return;
    }
    draft.lines = std::move(lines);
    draft.sheet = DraftSheet{base.of, base_grams(draft, base, draft.lines, knowledge), adds_up};
    if (draft.sheet->grams <= 0) return;
    for (auto& line : draft.lines) weigh_in_sheet(draft, line, knowledge);
    tell_sheet(draft, base);
}

void check_total(Draft& draft, const Knowledge& knowledge) {
    constexpr double rounded = 0.02, meat_rounded = 0.05;  // judgement: totals are rounded
    if (!draft.size || draft.size->in_title || draft.sheet) return;
    double all = 0, meat = 0;
    for (const auto& line : draft.lines) {
        if (line.beside) continue;
        if (!line.read || line.read->share) return;  // what they add up to is not known yet
        all += line.read->line.grams.mid;
        if (is_meat(line, knowledge)) meat += line.read->line.grams.mid;
    }
    draft.said_of_recipe.push_back(draft.size->written);
    const double told = draft.size->grams;
    const bool of_meat = draft.size->of == Whole::meat;
    if (of_meat && meat <= 0)
        return draft.troubles.add(
            {Trouble::bad_data, "\"" + draft.size->written + "\": say which meat", draft.size->where, {"pork shoulder"}});
    if (of_meat ? std::abs(meat - told) <= meat_rounded * told : !draft.size->total || std::abs(all - told) <= rounded * told) return;
    draft.troubles.add({Trouble::bad_data,
                        "\"" + draft.size->written + "\": the lines add up to " + plain_number(std::round(of_meat ? meat : all)) +
                            " g, so one may be missing or misread",
                        draft.size->where,
                        {}});
}

}  // namespace standin
