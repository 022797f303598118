#include "mend/plain.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "adapt/request.hpp"
#include "adapt/variant.hpp"
#include "core/band.hpp"
#include "core/contains.hpp"
#include "knowledge/kinds.hpp"

namespace standin {
namespace {

class Composing {
public:
    Composing(const Formula& mass, const std::vector<Meant>& tastes, const MassAsMade& made, const Distance& distance,
              const Context& context, const Stock& stock)
        : mass_(mass),
          tastes_(tastes),
          distance_(distance),
          context_(context),
          stock_(stock),
          total_(made.total(mass)),
          batch_(mass, context.nominal()) {}

    std::optional<Plain> compose() {
        for (const auto& taste : tastes_)
            for (const auto& goal : taste.goals)
                if (goal_helped_by_thinning(goal)) goals_.push_back(&goal);
        bool role = false;
        for (const auto& taste : tastes_) role = role || taste.reading->less_of;
        if (goals_.empty() && !role) return std::nullopt;
        Plain plain;
        double meat = 0;
        for (std::size_t l = 0; l < mass_.lines.size(); ++l) {
            if (left_out(l)) {
                plain.lacks.push_back(mass_.lines[l].ingredient);
                plain.without_salt = plain.without_salt || main_role(l) == Role::salt;
                continue;
            }
            plain.lines.push_back(mass_.lines[l]);
            if (const Ingredient* lean = thins_fat() ? leaner(mass_.lines[l]) : nullptr) take(*lean, plain);
            meat += batch_.part(l)[Amount::meat];
        }
        if (meat < 0.5 * total_[Amount::meat] || !(meat > 0)) return std::nullopt;
        season(plain, meat);
        plain.serves = goals_;
        return plain;
    }

private:
    bool thins_fat() const {
        return std::any_of(goals_.begin(), goals_.end(), [](const Goal* goal) { return goal->property == Property::fat_pct; });
    }

    // The lean cut of the same animal that is the most usual stand-in; of wild meat and fish each is an animal of its own.
    const Ingredient* leaner(const Line& line) const {
        constexpr std::array animals{Species::pork, Species::beef, Species::veal, Species::lamb, Species::chicken, Species::turkey};
        const Knowledge& knowledge = context_.knowledge();
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const double most = context_.constant("mend.lean.most-fat");
        if (!food.meat || food.roles.front() != Role::lean || !contains(animals, food.meat->species)) return nullptr;
        if (100 * part(line, Amount::fat) <= most * part(line, Amount::mass)) return nullptr;
        std::map<std::string, int> named;
        for (const auto& swap : knowledge.records().swaps)
            if (swap.role == Role::lean) ++named[swap.to];
        const Ingredient* best = nullptr;
        const auto better = [&](const Ingredient& one, const Ingredient& other) {
            const int a = named[one.id], b = named[other.id];
            return a != b ? a > b : one.composition.fat.mid < other.composition.fat.mid;
        };
        for (const auto& cut : knowledge.records().ingredients) {
            if (!cut.meat || cut.meat->species != food.meat->species || cut.roles != std::vector{Role::lean}) continue;
            if (cut.composition.fat.mid > most || !cut.allergens.empty() || !cut.already.empty() || belongs(cut, "offal", knowledge))
                continue;
            if (belongs(cut, "seldom-sold", knowledge) || belongs(cut, "gathered", knowledge)) continue;
            if (!stock_.can_bring(cut) || (stock_.listed() && !stock_.names(cut.id))) continue;
            if (!best || better(cut, *best)) best = &cut;
        }
        return best;
    }

    static void take(const Ingredient& lean, Plain& plain) {
        Line& line = plain.lines.back();
        Line cut;
        cut.ingredient = lean.id;
        cut.grams = line.grams;
        line = std::move(cut);
        if (!contains(plain.leaner, lean.names.front())) plain.leaner.push_back(lean.names.front());
    }

    Role main_role(std::size_t l) const { return context_.knowledge().ingredient(mass_.lines[l].ingredient)->roles.front(); }

    bool meaty(const Line& line) const {
        const Ingredient& food = *context_.knowledge().ingredient(line.ingredient);
        return food.meat || food.roles.front() == Role::lean || food.roles.front() == Role::fat;
    }
    double part(const Line& line, Amount of) const { return line.grams.mid * context_.nominal().unit(line)[of]; }

    // What is left out takes its salt and its seasoning with it: salt stays by the kilo of meat, all else by the kilo of mass.
    void season(Plain& plain, double meat) const {
        double kept = 0, beside = 0, salt = 0, salted = 0;
        for (const auto& line : plain.lines) {
            const bool is_salt = context_.knowledge().ingredient(line.ingredient)->roles.front() == Role::salt;
            (meaty(line) ? kept : beside) += part(line, Amount::mass);
            (is_salt ? salt : salted) += part(line, Amount::salt);
        }
        const NominalBatch written(mass_, context_.nominal());
        const double room = written.total()[Amount::mass] - beside;
        double by_mass = room > 0 ? kept / room : 1;
        if (1 - by_mass < context_.constant("mend.plain.held")) by_mass = 1;
        const double asked = written.total()[Amount::salt] * meat / total_[Amount::meat];
        for (auto& line : plain.lines) {
            if (meaty(line)) continue;
            double by = by_mass;
            if (context_.knowledge().ingredient(line.ingredient)->roles.front() == Role::salt)
                by = plain.without_salt || !(salt > 0) ? 1 : std::max(0.0, asked - salted) / salt;
            line.grams = exactly(by * line.grams.mid);
            if (line.count) line.count = by * *line.count;
        }
    }

    // How far `food`, added at its share of the mass, moves the goal's property to where it is wanted; in noticeable differences.
    double helps(const Goal& goal, const Material& food) const {
        const double step = context_.constant("mend.plain.step");
        Material with = total_;
        with.add(food, step);
        const Property p = goal.property;
        const State after = context_.nominal().models().state(with, batch_.process());
        const double moved = (after.properties[p] - distance_.base().properties[p]) / distance_.unit(p);
        return goal.kind == Goal::Kind::at_most ? -moved : moved;
    }

    // Meat with its salt, and all else that does not do harm: whether more of that brings the goal nearer.
    bool goal_helped_by_thinning(const Goal& goal) const {
        constexpr double enough = 0.1;
        Material good;
        for (std::size_t l = 0; l < batch_.lines(); ++l)
            if (!wrong(goal, l)) good.add(batch_.part(l), 1);
        return good[Amount::meat] >= 0.5 * total_[Amount::meat] && helps(goal, good) > enough;
    }

    bool wrong(const Goal& goal, std::size_t l) const { return helps(goal, batch_.part(l)) < -context_.constant("mend.plain.wrong"); }

    bool left_out(std::size_t l) const {
        for (const auto& taste : tastes_)
            if (taste.reading->less_of == main_role(l)) return true;
        return std::any_of(goals_.begin(), goals_.end(), [&](const Goal* goal) { return wrong(*goal, l); });
    }

    const Formula& mass_;
    const std::vector<Meant>& tastes_;
    const Distance& distance_;
    const Context& context_;
    const Stock& stock_;
    Material total_;
    NominalBatch batch_;
    std::vector<const Goal*> goals_;
};

}  // namespace

std::optional<Plain> plain_for(const Formula& mass, const std::vector<Meant>& tastes, const MassAsMade& made, const Distance& distance,
                               const Context& context, const Stock& stock) {
    return Composing(mass, tastes, made, distance, context, stock).compose();
}

std::vector<Line> plain_lines(const Plain& plain, double share) {
    std::vector<Line> lines;
    for (Line line : plain.lines) {
        line.grams = exactly(kitchen_grams(share * line.grams.mid, false));
        line.written.clear();
        line.notes.clear();
        if (line.count) line.count = *line.count * share;
        if (line.grams.mid > 0) lines.push_back(std::move(line));
    }
    return lines;
}

Formula blended(const Formula& mass, const Plain& plain, double share) {
    Formula both = mass;
    for (auto& line : plain_lines(plain, share)) both.lines.push_back(std::move(line));
    return with_equal_lines_merged(std::move(both));
}

}  // namespace standin
