#include "adapt/moves/making.hpp"

#include <algorithm>
#include <cmath>

#include "adapt/distance/met.hpp"
#include "evaluate/predict.hpp"
#include "safety/core_temperature.hpp"

namespace standin {
namespace {

constexpr double brief_min = 1, rests_h[] = {10, 2};                      // common practice
constexpr double plates_mm[] = {3, 4.5, 6, 8, 10, 13};                    // as they are sold
constexpr double finest_mm = 4.5, coarse_mm = 8, coarsest_mm = 10;        // of a coarse sausage; common practice
constexpr double worth_cooling_core_c = 0.5, worth_cooling_rest_c = 1.5;  // thermometers read no finer

class Making {
public:
    Making(const Formula& formula, const Distance& distance, const Context& context)
        : formula_(formula),
          distance_(distance),
          context_(context),
          now_(state_of(formula.process)),
          total_(NominalBatch(formula, context.nominal()).total()) {}

    std::vector<ProcessOption> ways() const {
        ProcessOption careful{formula_.process, {}, {}, 0};
        const bool loses_less = wanted(Property::cook_loss_pct, Goal::Kind::at_most) || wanted(Property::juice, Goal::Kind::at_least);
        if (wanted(Property::bind, Goal::Kind::at_least) || wanted(Property::firmness, Goal::Kind::at_least)) make_it_bind(careful);
        else if (loses_less && !in_crumbs() && !wanted(Property::bind, Goal::Kind::at_most) &&
                 !wanted(Property::firmness, Goal::Kind::at_most))
            make_it_bind(careful);  // what is bound keeps its water and fat
        if (wanted(Property::bind, Goal::Kind::at_most) || wanted(Property::firmness, Goal::Kind::at_most)) mix_less(careful);
        if (green_wanted()) rest_cold(careful);
        if (acid_is_touched()) acid_last(careful);
        if (loses_less) cook_no_hotter(careful);
        else if (green_wanted() && formula_.process.core_c) cook_no_hotter(careful, "green");
        if (!careful.changes.empty()) careful.price = context_.constant("advice.price.process");
        std::vector<ProcessOption> all{careful};
        add_beside(all, other_plate());
        add_beside(all, shorter_rest());
        for (auto& way : all) way.state = state_of(way.process);
        return all;
    }

private:
    // One thing that may be done or not, whatever else is done.
    struct Lever {
        Reason change;  // what to do
        void (*set)(Process&, double) = nullptr;
        double value = 0, price = 0;
    };

    ProcessState state_of(const Process& process) const { return context_.nominal().process(process); }

    bool wanted(Property property, Goal::Kind kind) const {
        return distance_.wanted(property) && any_asks(distance_.goals(), property, kind);
    }

    // What is fried in crumbs is to stay crumbs.
    bool in_crumbs() const { return formula_.process.cook == Cook::loose; }

    // The pigment that goes in is not kept by resting cold; the colour that comes out is.
    bool green_wanted() const { return wanted(Property::greenness, Goal::Kind::at_least); }

    void make_it_bind(ProcessOption& way) const {
        if (now_.order != Order::salt_first) {
            way.process.order = Order::salt_first;
            way.changes.push_back(make_reason(ReasonKind::order));
        }
        if (now_.mixing_min < tacky_min) {
            way.process.mixing_min = tacky_min;
            way.changes.push_back(make_reason(ReasonKind::mixing, {{"mixing", now_.mixing_min, tacky_min, "min"}}));
        }
        if (now_.mixed_at_c > cold_c) {
            way.process.mixed_at_c = cold_c;
            way.changes.push_back(make_reason(ReasonKind::cold, {{"mixed at", now_.mixed_at_c, cold_c, "C"}}));
        }
    }

    void mix_less(ProcessOption& way) const {
        if (now_.mixing_min > brief_min) {
            way.process.mixing_min = brief_min;
            way.changes.push_back(make_reason(ReasonKind::mixing, {{"mixing", now_.mixing_min, brief_min, "min"}}));
            // A coarse plate makes it shorter, which is told and not reckoned with: the models know its bite alone.
            if (formula_.process.plate_mm && *formula_.process.plate_mm < coarse_mm)
                way.changes.back().figures.push_back({"plate", *formula_.process.plate_mm, coarse_mm, "mm"});
        }
        if (formula_.process.order != Order::salt_first) return;
        way.process.order = Order::all_together;
        way.changes.push_back(make_reason(ReasonKind::salt_late));
    }

    bool has_acid() const {
        return std::any_of(formula_.lines.begin(), formula_.lines.end(),
                           [&](const Line& line) { return context_.knowledge().ingredient(line.ingredient)->roles.front() == Role::acid; });
    }

    // Acid that went in first is put right whatever is asked of it; where it is to be sharper, or greener, it goes in last in any case.
    bool acid_is_touched() const {
        if (!has_acid() || now_.order == Order::salt_first) return false;
        if (wanted(Property::sourness_mmol_kg, Goal::Kind::at_least) || green_wanted()) return true;
        return now_.order == Order::acid_first && (distance_.wanted(Property::sourness_mmol_kg) || distance_.wanted(Property::ph));
    }

    void acid_last(ProcessOption& way) const {
        if (way.process.order == Order::salt_first) return;
        way.process.order = Order::salt_first;
        way.changes.push_back(make_reason(ReasonKind::order));
        if (green_wanted()) way.changes.back().role = "green";
    }

    void rest_cold(ProcessOption& way) const {
        if (now_.rest_at_c < cold_c + worth_cooling_rest_c || now_.rest_h <= 0) return;
        way.process.rest_at_c = cold_c;
        way.changes.push_back(make_reason(ReasonKind::rest_cold, {{"rest at", now_.rest_at_c, cold_c, "C"}}));
    }

    // Never below what the most demanding meat in it needs, and what heat sets.
    void cook_no_hotter(ProcessOption& way, const std::string& role = {}) const {
        const auto needed =
            asked_core(weights_only(formula_, context_.knowledge()), Process{}, context_.knowledge(), context_.options.rules);
        if (!(needed.core_c > 0) || now_.core_c < needed.core_c + worth_cooling_core_c) return;
        way.process.core_c = needed.core_c;
        way.changes.push_back(
            make_reason(ReasonKind::core, {{"core", now_.core_c, needed.core_c, "C"}, {"kept for", {}, needed.hold_s, "s"}}));
        way.changes.back().role = role;
    }

    // Finer binds more, coarser bites firmer or falls apart sooner: the next plate and the last in use, the search tells which serves.
    std::vector<Lever> other_plate() const {
        const bool tighter = wanted(Property::bind, Goal::Kind::at_least) || wanted(Property::firmness, Goal::Kind::at_least);
        const bool looser = wanted(Property::bind, Goal::Kind::at_most) || wanted(Property::firmness, Goal::Kind::at_most);
        std::vector<Lever> levers;
        if (!tighter && !looser) return levers;
        const auto set = [](Process& process, double mm) { process.plate_mm = mm; };
        const auto offer = [&](double mm) {
            levers.push_back(
                {make_reason(ReasonKind::plate, {{"plate", now_.plate_mm, mm, "mm"}}), set, mm, context_.constant("advice.price.plate")});
        };
        const auto* coarser = std::find_if(std::begin(plates_mm), std::end(plates_mm), [&](double mm) { return mm > now_.plate_mm; });
        const auto* finer = std::find_if(std::begin(plates_mm), std::end(plates_mm), [&](double mm) { return mm >= now_.plate_mm; });
        if (finer != std::begin(plates_mm)) {
            const double next = *(finer - 1);
            offer(next);
            if (next > finest_mm) offer(finest_mm);
        }
        if (looser && coarser != std::end(plates_mm)) {
            offer(*coarser);
            if (*coarser < coarsest_mm) offer(coarsest_mm);
        }
        return levers;
    }

    std::vector<Lever> shorter_rest() const {
        std::vector<Lever> levers;
        const auto set = [](Process& process, double hours) { process.rest_h = hours; };
        for (const double rest : rests_h)
            if (green_wanted() && now_.rest_h > rest)
                levers.push_back(
                    {make_reason(ReasonKind::rest, {{"rest", now_.rest_h, rest, "h"}}), set, rest, context_.constant("advice.price.rest")});
        return levers;
    }

    // Whether it brings a want nearer by enough to be told, in the batch as it is, and takes no other one back.
    bool matters(const Lever& lever, const Process& beside) const {
        constexpr double enough = 0.25;  // noticeable differences
        Process with = beside;
        lever.set(with, lever.value);
        const Models& models = context_.nominal().models();
        const State before = models.state(total_, state_of(beside)), after = models.state(total_, state_of(with));
        const auto nearer = [&](const Goal& g) { return nearer_by(g, distance_, before, after); };
        const auto& goals = distance_.goals();
        // A coarser plate holds less and bites a little firmer, and is looser for all that.
        double in_all = 0;
        for (const auto& g : goals) in_all += nearer(g);
        if (any_asks(goals, Property::bind, Goal::Kind::at_most) && in_all >= enough / 2) return true;
        return std::any_of(goals.begin(), goals.end(), [&](const Goal& g) { return nearer(g) >= enough; }) &&
               std::none_of(goals.begin(), goals.end(), [&](const Goal& g) { return nearer(g) <= -enough / 2; });
    }

    // Every way so far with one of the levers as well.
    void add_beside(std::vector<ProcessOption>& all, std::vector<Lever> levers) const {
        const std::size_t before = all.size();
        std::erase_if(levers, [&](const Lever& lever) { return !matters(lever, all.front().process); });
        for (const auto& lever : levers)
            for (std::size_t w = 0; w < before; ++w) {
                ProcessOption way = all[w];
                lever.set(way.process, lever.value);
                way.changes.push_back(lever.change);
                way.price += lever.price;
                all.push_back(std::move(way));
            }
    }

    const Formula& formula_;
    const Distance& distance_;
    const Context& context_;
    ProcessState now_;
    Material total_;  // of the batch as it is, at the middle
};

}  // namespace

std::vector<ProcessOption> ways_of_making(const Formula& formula, const Distance& distance, const Context& context) {
    return Making(formula, distance, context).ways();
}

}  // namespace standin
