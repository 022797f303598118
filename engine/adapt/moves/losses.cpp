#include "adapt/moves/losses.hpp"

#include <algorithm>
#include <string>

#include "adapt/moves/named_in_title.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

double aroma_of(const Material& m) {
    double sum = 0;
    for (std::size_t n = 0; n < count_of<AromaNote>; ++n) sum += m[static_cast<AromaNote>(n)];
    return sum;
}

double share(double part, double whole) { return whole > 0 ? std::clamp(part / whole, 0.0, 1.0) : 0; }

// Which share of what this role brings a want asks to be without: of the heat half, where half is asked for.
double spared_of(Role role, const Distance& distance) {
    double spared = 0;
    for (const Goal& goal : distance.goals()) {
        const bool of_role = (role == Role::heat && goal.property == Property::heat_mg_kg) ||
                             (role == Role::acid && goal.property == Property::sourness_mmol_kg) ||
                             (role == Role::fat && of_batch(goal.property) == Property::fat_pct) ||
                             (role == Role::salt && of_batch(goal.property) == Property::salt_pct);
        const double base = distance.base().properties[goal.property];
        if (!of_role || goal.kind != Goal::Kind::at_most || !distance.wanted(goal.property) || !(base > 0)) continue;
        if (role == Role::fat) return 1;  // lean takes its place in the mass
        spared = std::max(spared, std::clamp(1 - goal.target(base) / base, 0.0, 1.0));
    }
    return spared;
}

// What each line is to the formula, whatever could stand in for it.
std::vector<double> characters(const Formula& formula, const Distance& distance, const Context& context) {
    std::vector<Material> brought;
    Material all;
    for (const auto& line : formula.lines) {
        Material m;
        m.add(context.nominal().unit(line), line.grams.mid);
        all.add(m, 1);
        brought.push_back(m);
    }
    const auto weight = [&](const char* part) { return context.constant(std::string("advice.loss.") + part); };
    const double paste = all[Amount::mass] - all[Amount::meat];
    std::vector<double> losses;
    for (std::size_t l = 0; l < formula.lines.size(); ++l) {
        const Ingredient& ingredient = *context.knowledge().ingredient(formula.lines[l].ingredient);
        const Role role = ingredient.roles.front();
        double loss = weight("identity") + weight("aroma") * share(aroma_of(brought[l]), aroma_of(all));
        if (!(spared_of(role, distance) > 0)) loss += weight("dose") * share(dose_of(brought[l], role), dose_of(all, role));
        if (!ingredient.meat) loss += weight("bulk") * share(brought[l][Amount::mass], paste);
        if (!named_in_title(formula.title, ingredient, context.knowledge()).empty()) loss += weight("title");
        losses.push_back(loss);
    }
    return losses;
}

// The most that a stand-in at hand costs by itself, what is felt of it included: for the whole of what is missing of the line.
double worst_stand_in(std::size_t l, const Problem& problem, const Distance& distance, const Context& context) {
    const double acceptable = context.constant("advice.loss.acceptable");
    const Models& models = context.nominal().models();
    const ProcessState& process = problem.processes.front().state;
    const auto square = [&](const Material& m) { return distance.square(m, models.state(m, process)); };
    const Line& line = problem.formula.lines[l];
    const double missing = missing_share(problem, l);
    Material without = distance.base_material();
    without.add(context.nominal().unit(line), -missing * line.grams.mid);
    const double lost = square(without);
    double worst = 0;
    for (const auto& move : problem.moves) {
        if (move.kind != MoveKind::stand_in || move.line != l) continue;
        const double grams = std::min(move.most, missing / move.covers->per_gram);
        const double left = 1 - grams * move.covers->per_gram / missing;
        if (1 - left < acceptable) continue;
        Material with = without;
        with.add(move.per_gram, grams);
        worst = std::max(worst, (move.price + std::max(0.0, square(with) - lost)) / ((1 - left * left) * missing * missing));
    }
    return worst;
}

}  // namespace

std::vector<double> losses_in(const Problem& problem, const Distance& distance, const Context& context) {
    std::vector<double> losses = characters(problem.formula, distance, context);
    const double margin = context.constant("advice.loss.margin");
    for (std::size_t l = 0; l < losses.size(); ++l) {
        const Ingredient& ingredient = *context.knowledge().ingredient(problem.formula.lines[l].ingredient);
        const Role role = ingredient.roles.front();
        if (problem.missing[l]) losses[l] += margin * worst_stand_in(l, problem, distance, context);
        else if (role == Role::salt || (role == Role::liquid && !ingredient.meat)) losses[l] = 0;
    }
    return losses;
}

std::vector<double> spared_in(const Problem& problem, const Distance& distance, const Context& context) {
    const double most = context.constant("advice.loss.spared-most");
    const auto role_of = [&](const Line& line) { return context.knowledge().ingredient(line.ingredient)->roles.front(); };
    const auto heat_of = [&](const Line& line) { return dose_of(context.nominal().unit(line), Role::heat); };
    double heat = 0, grams = 0;
    for (const auto& line : problem.formula.lines) {
        if (role_of(line) != Role::heat) continue;
        heat += heat_of(line) * line.grams.mid;
        grams += line.grams.mid;
    }
    std::vector<double> spared;
    for (const auto& line : problem.formula.lines) {
        // Of several chiles the hotter give way: the mild ones are there for their flesh.
        const bool flesh = role_of(line) == Role::heat && heat_of(line) * grams < heat * (1 - 1e-9);
        spared.push_back(flesh ? 0 : std::min(most, spared_of(role_of(line), distance)));
    }
    return spared;
}

double lost_of(const Problem& problem, std::size_t line, double gone) {
    const double spared = problem.spared.empty() ? 0 : problem.spared[line];
    return (gone - spared) / (1 - spared);
}

std::vector<double> lost_shares(const Problem& problem, const std::vector<double>& grams) {
    std::vector<double> lost;
    for (std::size_t l = 0; l < problem.start.size(); ++l) lost.push_back(missing_share(problem, l));
    for (std::size_t m = 0; m < grams.size(); ++m)
        if (const auto& covers = problem.moves[m].covers) lost[covers->line] -= covers->per_gram * grams[m];
    for (std::size_t l = 0; l < lost.size(); ++l) lost[l] = std::max(0.0, lost_of(problem, l, lost[l]));
    return lost;
}

void take_the_ideas(Problem& problem, const Stock& stock, const Context& context) {
    const double whatever_it_costs = context.constant("advice.moves.insisted");
    problem.insisted.assign(problem.formula.lines.size(), 0.0);
    for (std::size_t l = 0; l < problem.formula.lines.size(); ++l) {
        if (!stock.has_idea_for(problem.formula.lines[l])) continue;
        problem.insisted[l] = whatever_it_costs;
        problem.loss[l] += whatever_it_costs;
    }
}

double lost_square(const Problem& problem, const std::vector<double>& grams) {
    if (problem.loss.empty()) return 0;
    const auto lost = lost_shares(problem, grams);
    double sum = 0;
    for (std::size_t l = 0; l < lost.size(); ++l) {
        const double insisted = problem.insisted.empty() ? 0 : problem.insisted[l];
        sum += (problem.loss[l] - insisted) * lost[l] * lost[l];
    }
    return sum;
}

}  // namespace standin
