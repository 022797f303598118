#include "evaluate/lethality_of.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/band.hpp"
#include "evaluate/predict.hpp"
#include "models/lethality.hpp"

namespace standin {
namespace {

// The cook is judged over draws of its own, the same whatever the seed of the rest: what is said of killing hangs on no throw of dice. The
// estimate's Bessel functions are slow and its band wide: so many tell as much as more.
constexpr std::size_t cook_draws = 64, cook_seed = 1;

constexpr std::array birds{Species::chicken, Species::turkey, Species::duck};

struct Table {
    std::optional<PoultryColumn> column;  // absent: red meat
    std::string name;
};

bool bears(const Ingredient& ingredient, std::string_view caution) {
    return std::find(ingredient.cautions.begin(), ingredient.cautions.end(), caution) != ingredient.cautions.end();
}

// The red meat table is for beef and what is like it: game, rabbit, liver and other offal, fish and shellfish have none.
bool has_no_table(const Formula& formula, const Knowledge& knowledge) {
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
        const Ingredient& i = *knowledge.ingredient(line.ingredient);
        if (bears(i, "offal") || bears(i, "liver") || bears(i, "raw-fish") || bears(i, "raw-shellfish")) return true;
        if (!i.meat) return false;
        const Species s = i.meat->species;
        return s == Species::game || s == Species::rabbit || s == Species::fish || s == Species::crustacean;
    });
}

// Any bird in the mass decides.
std::optional<Table> table_for(const Material& batch) {
    std::optional<Species> bird;
    for (const auto species : birds)
        if (batch[species] > 0) bird = bird ? Species::duck : species;  // of two birds, the one without a table
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

// The time the table asks for at a steady core of `celsius`.
std::optional<double> table_time_s(const Table& table, double celsius, const LethalityParameters& p) {
    constexpr double red_meat_logs = 6.5;
    if (table.column) return poultry_hold_s(*table.column, celsius, p);
    if (celsius < p.cutoff_c) return std::nullopt;
    return red_meat_logs * p.d70_s * std::pow(10.0, (70 - celsius) / p.z_c);
}

constexpr double near_cap = 0.05;  // half of the last digit shown

Reason told(const CookLethality& l, const Table& table, double core_c, const LethalityParameters& p) {
    Reason reason;
    reason.kind = ReasonKind::kills;
    reason.role = l.measured ? "measured" : "estimated";
    reason.about = table.name;
    reason.figures = {{"log reductions", {}, l.logs.mid, "", l.logs.low, l.logs.high},
                      {"core", {}, core_c, "C"},
                      {"minutes", {}, l.minutes.mid, "min", l.minutes.low, l.minutes.high},
                      {"counted up to", {}, p.cap_logs, ""}};
    if (const auto asked = table_time_s(table, core_c, p)) reason.figures.push_back({"table time", {}, *asked, "s"});
    else if (table.column && core_c > poultry_table_end_c(*table.column))
        reason.figures.push_back({"table end", {}, poultry_table_end_c(*table.column), "C"});
    return reason;
}

Reason no_figure(ReasonKind kind, std::optional<double> table_end_c = {}) {
    Reason reason;
    reason.kind = kind;
    if (table_end_c) reason.figures.push_back({"table end", {}, *table_end_c, "C"});
    return reason;
}

// Hours that the core spends between two temperatures.
double hours_between(const std::vector<CorePoint>& curve, double low_c, double high_c) {
    constexpr double seconds_an_hour = 3600;
    double seconds = 0;
    for (std::size_t i = 1; i < curve.size(); ++i) {
        const auto [cold, hot] = std::minmax(curve[i - 1].temperature_c, curve[i].temperature_c);
        const double time = curve[i].time_s - curve[i - 1].time_s;
        const double inside = std::min(hot, high_c) - std::max(cold, low_c);
        if (inside < 0) continue;
        seconds += hot > cold ? time * inside / (hot - cold) : time;
    }
    return seconds / seconds_an_hour;
}

std::vector<CorePoint> core_curve(const std::vector<CorePoint>& given, const ProcessState& process, const LethalityParameters& p) {
    return given.size() > 1 ? given : estimated_core_curve(process.diameter_mm, process.rest_at_c, process.core_c, process.cook, p);
}

// One cook of the core, nominal or at a draw.
struct Cooked {
    double minutes = 0, logs = 0, hottest_c = 0;
};

// Nothing where the medium is too cool for this core.
std::optional<Cooked> cooked(const std::vector<CorePoint>& given, const ProcessState& process, const Table& table,
                             const LethalityParameters& p) {
    const auto curve = core_curve(given, process, p);
    if (curve.empty()) return std::nullopt;
    Cooked c;
    c.minutes = (curve.back().time_s - curve.front().time_s) / 60;
    c.logs = table.column ? poultry_log_reductions(curve, *table.column, p) : log_reductions(curve, p);
    for (const auto& point : curve) c.hottest_c = std::max(c.hottest_c, point.temperature_c);
    return c;
}

// How long the core may take through the temperatures at which toxins form; an estimate at its slow end. Nothing where it is not known.
std::optional<double> warming_hours(const std::vector<CorePoint>& given, const NominalBatch& nominal, const Nominal& view) {
    const auto parameter = [&](const char* id) { return view.knowledge().parameter(id).mid; };
    const auto curve = core_curve(given, nominal.process(), view.models().lethality());
    if (curve.empty()) return std::nullopt;
    const double hours = hours_between(curve, parameter("lethality.warming.from"), parameter("lethality.warming.to"));
    return given.size() > 1 ? hours : hours * parameter("lethality.warming.doubt");
}

}  // namespace

CookJudged lethality_of(const Formula& formula, const NominalBatch& nominal, const Nominal& view) {
    const Knowledge& knowledge = view.knowledge();
    const auto parameter = [&](const char* id) { return knowledge.parameter(id).mid; };
    const LethalityParameters& p = view.models().lethality();
    const auto given = given_curve(formula.process);
    CookJudged judged;
    judged.warming_h = warming_hours(given, nominal, view);
    if (judged.warming_h && *judged.warming_h > parameter("lethality.warming.hours")) {
        judged.why_not = no_figure(ReasonKind::warms_slowly);
        return judged;
    }
    judged.why_not = no_figure(ReasonKind::no_table);
    const auto table = has_no_table(formula, knowledge) ? std::nullopt : table_for(nominal.total());
    const auto middle = table ? cooked(given, nominal.process(), *table, p) : std::nullopt;
    if (!middle) return judged;
    if (table->column && middle->hottest_c > poultry_table_end_c(*table->column) && middle->logs < p.cap_logs - near_cap) {
        judged.why_not = no_figure(ReasonKind::table_ends, poultry_table_end_c(*table->column));
        return judged;
    }
    std::vector<double> minutes, logs;
    const Draws draws(cook_draws, cook_seed);
    const auto processes = process_states(formula.process, knowledge, draws);
    const auto parameters = draw_parameters(knowledge, lethality_bindings(), draws);
    for (std::size_t i = 0; i < cook_draws; ++i) {
        const auto there = cooked(given, processes[i], *table, parameters[i]);
        if (!there) continue;
        minutes.push_back(there->minutes);
        logs.push_back(there->logs);
    }
    CookLethality result;
    result.measured = given.size() > 1;
    result.table = table->name;
    result.minutes = minutes.empty() ? exactly(middle->minutes) : band_around(middle->minutes, std::move(minutes));
    result.logs = logs.empty() ? exactly(middle->logs) : band_around(middle->logs, std::move(logs));
    result.reason = told(result, *table, middle->hottest_c, p);
    result.says = in_full(result.reason);
    judged.lethality = std::move(result);
    judged.why_not.reset();
    return judged;
}

}  // namespace standin
