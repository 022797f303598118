#include "evaluate/lethality_of.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/band.hpp"
#include "evaluate/predict.hpp"
#include "models/lethality.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

// The estimate's Bessel functions are slow and its band wide: every eighth draw tells as much.
constexpr std::size_t stride = 8;

constexpr std::array birds{Species::chicken, Species::turkey, Species::duck};

struct Table {
    std::optional<PoultryColumn> column;  // absent: red meat
    std::string name;
};

// Any bird in the mass decides; fish and what has no table gives nothing.
std::optional<Table> table_for(const Material& batch) {
    std::optional<Species> bird;
    for (const auto species : birds)
        if (batch[species] > 0) bird = bird ? Species::duck : species;  // of two birds, the one without a table
    if (batch[Species::fish] > 0 || batch[Species::crustacean] > 0) return std::nullopt;
    if (!bird) return Table{std::nullopt, "USDA-FSIS Appendix A, red meat, 6.5 log"};
    const auto column = poultry_column(*bird, batch.share(Amount::fat, 100));
    if (!column) return std::nullopt;
    return Table{column, "USDA-FSIS 2005, poultry, 7 log"};
}

std::vector<CorePoint> given_curve(const Process& process) {
    std::vector<CorePoint> curve;
    for (const auto& reading : process.core_curve) curve.push_back({60 * reading.minutes, reading.celsius});
    return curve;
}

std::string whole(double value) { return fixed_text(value, 0); }
std::string tenths(double value) { return fixed_text(value, 1); }

std::string time_words(double seconds) {
    return seconds < 1 ? "under a second" : seconds < 100 ? whole(seconds) + " s" : whole(seconds / 60) + " min";
}

// The time the table asks for at a steady core of `celsius`.
std::optional<double> table_time_s(const Table& table, double celsius, const LethalityParameters& p) {
    constexpr double red_meat_logs = 6.5;
    if (table.column) return poultry_hold_s(*table.column, celsius, p);
    if (celsius < p.cutoff_c) return std::nullopt;
    return red_meat_logs * p.d70_s * std::pow(10.0, (70 - celsius) / p.z_c);
}

std::string sentence(const CookLethality& l, const Table& table, double core_c, const LethalityParameters& p) {
    const bool capped = l.logs.mid >= p.cap_logs - 0.05;
    std::string text = l.measured ? "By your core readings"
                                  : "By an estimate, " + whole(l.minutes.mid) + " minutes (" + whole(l.minutes.low) + "-" +
                                        whole(l.minutes.high) + ") to a core of " + whole(core_c) + " C";
    text += std::string(": ") + (capped ? "at least " : "") + tenths(l.logs.mid) + " log reductions of Salmonella";
    if (l.logs.low < l.logs.high - 0.05) text += " (" + tenths(l.logs.low) + "-" + tenths(l.logs.high) + ")";
    const auto asked = table_time_s(table, core_c, p);
    text += asked ? "; at a steady " + whole(core_c) + " C the table asks for " + time_words(*asked)
                  : "; the table has no time for " + whole(core_c) + " C";
    return text + ". Information, not permission: what counts is the core temperature shown below, measured.";
}

// One cook of the core, nominal or at a draw.
struct Cooked {
    double minutes = 0, logs = 0, hottest_c = 0;
};

// Nothing where the medium is too cool for this core.
std::optional<Cooked> cooked(const std::vector<CorePoint>& given, const ProcessState& process, const Table& table,
                             const LethalityParameters& p) {
    const auto curve =
        given.size() > 1 ? given : estimated_core_curve(process.diameter_mm, process.rest_at_c, process.core_c, process.cook, p);
    if (curve.empty()) return std::nullopt;
    Cooked c;
    c.minutes = (curve.back().time_s - curve.front().time_s) / 60;
    c.logs = table.column ? poultry_log_reductions(curve, *table.column, p) : log_reductions(curve, p);
    for (const auto& point : curve) c.hottest_c = std::max(c.hottest_c, point.temperature_c);
    return c;
}

}  // namespace

std::optional<CookLethality> lethality_of(const Formula& formula, const NominalBatch& nominal, const SampledBatch& sampled,
                                          const Evaluator& evaluator) {
    const auto table = table_for(nominal.total());
    if (!table) return std::nullopt;
    const auto given = given_curve(formula.process);
    const LethalityParameters& p = evaluator.nominal().models().lethality();
    const auto middle = cooked(given, nominal.process(), *table, p);
    if (!middle) return std::nullopt;
    std::vector<double> minutes, logs;
    for (std::size_t i = 0; i < sampled.count(); i += stride) {
        const auto there = cooked(given, sampled.process(i), *table, sampled.models(i).lethality());
        if (!there) continue;
        minutes.push_back(there->minutes);
        logs.push_back(there->logs);
    }
    CookLethality result;
    result.measured = given.size() > 1;
    result.table = table->name;
    result.minutes = minutes.empty() ? exactly(middle->minutes) : band_around(middle->minutes, std::move(minutes));
    result.logs = logs.empty() ? exactly(middle->logs) : band_around(middle->logs, std::move(logs));
    result.says = sentence(result, *table, middle->hottest_c, p);
    return result;
}

}  // namespace standin
