#include "adapt/variants/idle_steps.hpp"

#include <algorithm>
#include <cmath>

#include "evaluate/predict.hpp"

namespace standin {
namespace {

constexpr double idle = 0.02;  // noticeable differences

Process taken_back(Process process, const Process& base, ReasonKind done) {
    switch (done) {
        case ReasonKind::order:
            process.order = base.order;
            break;
        case ReasonKind::mixing:
            process.mixing_min = base.mixing_min;
            break;
        case ReasonKind::cold:
            process.mixed_at_c = base.mixed_at_c;
            break;
        case ReasonKind::plate:
            process.plate_mm = base.plate_mm;
            break;
        case ReasonKind::rest:
            process.rest_h = base.rest_h;
            break;
        case ReasonKind::rest_cold:
            process.rest_at_c = base.rest_at_c;
            break;
        case ReasonKind::core:
            process.core_c = base.core_c;
            break;
        default:
            break;
    }
    return process;
}

// What is done to a line before it goes into the mass is no step of the making, and was weighed before it was proposed.
bool of_the_process(ReasonKind done) {
    return done != ReasonKind::short_blanch && done != ReasonKind::squeeze && done != ReasonKind::seeds_in;
}

}  // namespace

void drop_idle_steps(BuiltVariant& variant, const Process& base, const Distance& distance, const Nominal& nominal) {
    const auto state_of = [&](const Process& process) {
        Formula made = variant.formula;
        made.process = process;
        const NominalBatch batch(made, nominal);
        return nominal.models().state(batch.total(), batch.process());
    };
    const auto wanted = [&](Property p) { return distance.wanted(p); };
    // What any maker does about it is told, though no model feels it: acid last, salt late, no hotter than it must be.
    const auto told_all_the_same = [&](ReasonKind done) {
        if (done == ReasonKind::salt_late) return true;
        if (done == ReasonKind::core) return wanted(Property::greenness);
        return done == ReasonKind::order &&
               (base.order == Order::acid_first || wanted(Property::sourness_mmol_kg) || wanted(Property::greenness));
    };
    // Warmer than careful makers mix is told whatever the models feel of it.
    const bool warm = nominal.process(base).mixed_at_c > nominal.knowledge().parameter("bind.cold.up-to").mid;
    for (std::size_t e = variant.edits.size(); e-- > 0;) {
        if (warm && variant.edits[e].kind == EditKind::process && variant.edits[e].process->kind == ReasonKind::cold) continue;
        if (variant.edits[e].kind == EditKind::process && told_all_the_same(variant.edits[e].process->kind)) continue;
        if (variant.edits[e].kind != EditKind::process || !of_the_process(variant.edits[e].process->kind)) continue;
        const Process without = taken_back(variant.formula.process, base, variant.edits[e].process->kind);
        const State with = state_of(variant.formula.process), back = state_of(without);
        const bool works = std::any_of(distance.goals().begin(), distance.goals().end(), [&](const Goal& g) {
            return std::abs(with.properties[g.property] - back.properties[g.property]) >= idle * distance.unit(g.property);
        });
        if (works) continue;
        variant.formula.process = without;
        variant.edits.erase(variant.edits.begin() + static_cast<std::ptrdiff_t>(e));
    }
}

}  // namespace standin
