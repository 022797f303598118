#include "evaluate/why.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "evaluate/batch.hpp"
#include "evaluate/bind_factors.hpp"
#include "evaluate/measurements.hpp"
#include "evaluate/predict.hpp"
#include "evaluate/state_figure.hpp"
#include "evaluate/unknown_quantity.hpp"
#include "standin/narrate.hpp"

namespace standin {
namespace {

constexpr double heavier = 0.1;      // a line's share that is added to see what it moves
constexpr double least_told = 0.03;  // of the variance; below, 512 draws cannot tell it from chance
constexpr std::size_t most_unknowns = 6;

// Squared correlation: the share of the variance that goes with a deviate, as long as the property follows it in one direction.
double share_of(const std::vector<double>& deviates, const std::vector<double>& values) {
    const auto n = static_cast<double>(values.size());
    double x = 0, y = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        x += deviates[i] / n;
        y += values[i] / n;
    }
    double xx = 0, yy = 0, xy = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        xx += (deviates[i] - x) * (deviates[i] - x);
        yy += (values[i] - y) * (values[i] - y);
        xy += (deviates[i] - x) * (values[i] - y);
    }
    return xx > 0 && yy > 0 ? xy * xy / (xx * yy) : 0;
}

std::vector<double> over_draws(const Formula& formula, const Sampled& sampled, const StateFigure& figure) {
    const SampledBatch batch(formula, sampled);
    return values_of(batch.states(), figure);
}

std::vector<LineLever> levers(const Formula& formula, const StateFigure& figure, const Sampled& sampled, const std::vector<double>& base) {
    const SampledBatch batch(formula, sampled);
    std::vector<LineLever> all;
    for (std::size_t l = 0; l < formula.lines.size(); ++l) {
        const auto units = sampled.units(formula.lines[l]);
        std::vector<double> change(base.size());
        for (std::size_t i = 0; i < base.size(); ++i) {
            Material total = batch.total(i);
            total.add((*units)[i], heavier * formula.lines[l].grams.mid);
            change[i] = figure(batch.models(i).state(total, batch.process(i))) - base[i];
        }
        all.push_back({l, band_of(std::move(change))});
    }
    const auto size = [](const LineLever& lever) { return std::abs(lever.change.mid); };
    std::stable_sort(all.begin(), all.end(), [&](const LineLever& a, const LineLever& b) { return size(a) > size(b); });
    const double largest = all.empty() ? 0 : size(all.front());
    std::erase_if(all, [&](const LineLever& lever) { return size(lever) <= 0.02 * largest; });
    return all;
}

// Only what would narrow the band, were it known: near nothing in common with the property can still look like 3 %.
std::vector<Unknown> unknowns(const Formula& formula, const StateFigure& figure, const Sampled& sampled, const std::vector<double>& base) {
    const Band band = band_of(std::vector<double>(base));
    std::vector<std::pair<double, std::string>> ranked;
    for (const auto& name : sampled.uncertain()) {
        const double share = share_of(sampled.deviates(name), base);
        if (share >= least_told) ranked.emplace_back(share, name);
    }
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
    if (ranked.size() > most_unknowns) ranked.resize(most_unknowns);
    std::vector<Unknown> all;
    for (const auto& [share, name] : ranked) {
        UnknownQuantity quantity = quantity_of(name, sampled.knowledge());
        const Band known =
            band_of(over_draws(formula, Sampled(sampled.knowledge(), sampled.count(), sampled.seed(), name, sampled.given()), figure));
        if (!(width(known) < width(band))) continue;
        Reason& reason = quantity.reason;
        all.push_back({in_full(reason), how_to_know(reason), quantity.kitchen, share, known, reason});
    }
    return all;
}

WhyAnswer why_of_figure(const Formula& formula, const StateFigure& figure, const Evaluator& evaluator) {
    // A view of its own, so that what other formulas were unsure of is not asked about here.
    const Sampled& shared = evaluator.sampled();
    const Sampled sampled(evaluator.knowledge(), shared.count(), shared.seed(), {}, shared.given());
    const std::vector<double> base = over_draws(formula, sampled, figure);
    WhyAnswer answer;
    answer.band = band_around(figure(NominalBatch(formula, evaluator.nominal()).state()), base);
    answer.lines = levers(formula, figure, sampled, base);
    answer.unknowns = unknowns(formula, figure, sampled, base);
    Readings readings = readings_for(formula, figure, sampled, answer.band);
    answer.measurements = std::move(readings.single);
    answer.together = std::move(readings.together);
    return answer;
}

}  // namespace

WhyAnswer why_of(const CheckedFormula& checked, Property property, const Evaluator& evaluator) {
    WhyAnswer answer = why_of_figure(checked.formula(), figure_of(property), evaluator);
    answer.property = property;
    if (property == Property::bind) answer.factors = bind_factors(checked.formula(), evaluator.nominal());
    return answer;
}

WhyAnswer why_of(const CheckedFormula& checked, ColourPart part, const Evaluator& evaluator) {
    WhyAnswer answer = why_of_figure(checked.formula(), figure_of(part), evaluator);
    answer.colour = part;
    return answer;
}

}  // namespace standin
