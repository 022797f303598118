#include "evaluate/lethality_of.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "models/lethality.hpp"

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

std::string words(const char* format, auto... values) {
    std::array<char, 200> text{};
    std::snprintf(text.data(), text.size(), format, values...);
    return text.data();
}

std::string time_words(double seconds) {
    return seconds < 1 ? "under a second" : seconds < 100 ? words("%.0f s", seconds) : words("%.0f min", seconds / 60);
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
                                  : words("By an estimate, %.0f minutes (%.0f-%.0f) to a core of %.0f C", l.minutes.mid, l.minutes.low,
                                          l.minutes.high, core_c);
    text += words(": %s%.1f log reductions of Salmonella", capped ? "at least " : "", l.logs.mid);
    if (l.logs.low < l.logs.high - 0.05) text += words(" (%.1f-%.1f)", l.logs.low, l.logs.high);
    const auto asked = table_time_s(table, core_c, p);
    text += asked ? words("; at a steady %.0f C the table asks for ", core_c) + time_words(*asked)
                  : words("; the table has no time for %.0f C", core_c);
    return text + ". Information, not permission: what counts is the core temperature shown below, measured.";
}

}  // namespace

std::optional<CookLethality> lethality_of(const Formula& formula, const Batch& batch, Pantry& pantry) {
    const auto table = table_for(batch.total(0));
    if (!table) return std::nullopt;
    auto& draws = pantry.draws();
    const auto& parameters = pantry.models().lethality();
    const Band& usual_diameter = pantry.knowledge().parameter("process.diameter_mm");
    const auto& diameters = draws.of("process.diameter_mm");
    const auto given = given_curve(formula.process);
    CookLethality result;
    result.measured = given.size() > 1;
    result.table = table->name;
    std::vector<double> minutes, logs, cores;
    for (std::size_t i = 0; i < parameters.size(); i += stride) {
        const auto& p = parameters[i];
        const ProcessState& process = batch.process(i);
        const double diameter = formula.process.diameter_mm.value_or(at(usual_diameter, diameters[i]));
        const auto curve = result.measured ? given : estimated_core_curve(diameter, process.rest_at_c, process.core_c, process.cook, p);
        if (curve.empty()) continue;  // a medium too cool for this core
        minutes.push_back((curve.back().time_s - curve.front().time_s) / 60);
        logs.push_back(table->column ? poultry_log_reductions(curve, *table->column, p) : log_reductions(curve, p));
        double hottest = 0;
        for (const auto& point : curve) hottest = std::max(hottest, point.temperature_c);
        cores.push_back(hottest);
    }
    if (logs.empty()) return std::nullopt;
    result.minutes = band_of(std::move(minutes));
    result.logs = band_of(std::move(logs));
    result.says = sentence(result, *table, band_of(std::move(cores)).mid, parameters.front());
    return result;
}

}  // namespace standin
