#include "adapt/variants/meat_block.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "adapt/variants/variant.hpp"
#include "core/band.hpp"

namespace standin {
namespace {

struct Meat {
    double meat = 0, fat = 0;
};

// Rendered fat goes gram for gram: it is no cut whose lean is to be made up.
Meat meat_of(const Line& line, const Context& context) {
    if (!context.knowledge().ingredient(line.ingredient)->meat) return {};
    const Material& unit = context.nominal().unit(line);
    return {unit[Amount::meat], unit[Amount::fat]};
}

// The biggest line that is lean where fat was swapped, and fat where lean was.
std::optional<std::size_t> counterpart(const Formula& formula, std::size_t line, Role role, const Context& context) {
    std::optional<std::size_t> biggest;
    for (std::size_t l = 0; l < formula.lines.size(); ++l) {
        const Line& other = formula.lines[l];
        const Role main = context.knowledge().ingredient(other.ingredient)->roles.front();
        const bool fits = main == (role == Role::fat ? Role::lean : Role::fat) && meat_of(other, context).meat > 0;
        if (l == line || other.keep || !fits) continue;
        if (!biggest || other.grams.mid > formula.lines[*biggest].grams.mid) biggest = l;
    }
    return biggest;
}

}  // namespace

std::vector<Trim> hold_meat_block(Formula& swapped, const Formula& base, std::size_t line, Role role, double most_grams,
                                  const Context& context) {
    const double apart = context.constant("advice.meat.apart");
    const double least_of_line = context.constant("advice.meat.least-of-line");
    const double worth_moving = context.constant("advice.meat.worth-moving");
    if (role != Role::lean && role != Role::fat) return {};
    const Meat was = meat_of(base.lines[line], context), comes = meat_of(swapped.lines[line], context);
    const auto other = counterpart(base, line, role, context);
    if (!other || !(was.meat > 0) || !(comes.meat > 0)) return {};
    const Meat beside = meat_of(base.lines[*other], context);
    if (std::abs(beside.fat - comes.fat) < apart) return {};
    const double weight = base.lines[line].grams.mid, there = base.lines[*other].grams.mid;
    const double most = context.constant("stand_ins.meat.most") * there;
    const double up = std::clamp(weight * (was.fat - comes.fat) / (beside.fat - comes.fat), -most, most);
    const double grams = kitchen_grams(std::max(weight - up, least_of_line * weight), false);
    const double after = kitchen_grams(there + up, false);
    if (std::abs(after - there) < worth_moving || grams > most_grams) return {};
    swapped.lines[line].grams = exactly(grams);
    Line& moved = swapped.lines[*other];
    moved.grams = exactly(after);
    moved.count.reset();
    moved.written.clear();
    return {{moved.ingredient, there, after}};
}

std::vector<Trim> hold_fat_beside(Formula& swapped, const Formula& base, std::size_t line, const Context& context) {
    const Meat was = meat_of(base.lines[line], context), comes = meat_of(swapped.lines[line], context);
    const auto other = counterpart(base, line, Role::lean, context);
    if (!other || !(was.meat > 0) || !(comes.meat > 0)) return {};
    const Meat beside = meat_of(base.lines[*other], context);
    const double there = base.lines[*other].grams.mid, most = context.constant("stand_ins.meat.most") * there;
    const double more = comes.fat * swapped.lines[line].grams.mid - was.fat * base.lines[line].grams.mid;
    const double after = kitchen_grams(there - std::clamp(more / beside.fat, -most, most), false);
    if (std::abs(after - there) < context.constant("advice.meat.worth-moving")) return {};
    Line& moved = swapped.lines[*other];
    moved.grams = exactly(after);
    moved.count.reset();
    moved.written.clear();
    return {{moved.ingredient, there, after}};
}

}  // namespace standin
