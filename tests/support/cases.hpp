// Random formulas, inventories and requests out of the knowledge; the same for the same number everywhere.
#pragma once

#include <algorithm>
#include <random>
#include <set>

#include "formula/hazards/hazards.hpp"
#include "knowledge/index/effects.hpp"
#include "support/kitchen.hpp"

struct Case {
    standin::Formula formula;
    standin::AdaptRequest request;
};

class CaseMaker {
public:
    explicit CaseMaker(std::uint64_t number) : random_(number * 7919 + 17) {}

    standin::Formula formula() {
        used_.clear();
        std::vector<standin::Line> lines;
        const auto take = [&](standin::Role role, double low, double high) {
            if (const auto* food = pick(role)) lines.push_back(prepared_line(*food, between(low, high)));
        };
        take(standin::Role::lean, 700, 2500);
        if (chance(0.7)) take(standin::Role::fat, 80, 500);
        if (chance(0.8)) take(standin::Role::green, 60, 350);
        if (chance(0.4)) take(standin::Role::green, 30, 150);
        if (chance(0.6)) take(standin::Role::herb, 10, 80);
        if (chance(0.6)) take(standin::Role::heat, 5, 60);
        if (chance(0.5)) take(standin::Role::acid, 5, 60);
        if (chance(0.5)) take(standin::Role::allium, 10, 80);
        if (chance(0.3)) take(standin::Role::nut, 20, 90);
        if (chance(0.3)) take(standin::Role::binder, 5, 50);
        if (chance(0.4)) take(standin::Role::spice, 1, 12);
        lines.push_back(line("table-salt", between(15, 45)));
        return ::formula(std::move(lines));
    }

    /// Some of the formula's garden lines short or missing, and what could take their place on hand.
    standin::Inventory inventory(const standin::Formula& f) {
        standin::Inventory have;
        std::set<std::string> said;
        for (const auto& l : f.lines) {
            const auto* i = knowledge().ingredient(l.ingredient);
            if (i->meat || l.ingredient == "table-salt") continue;
            const double dice = unit();
            if (dice < 0.25) have.missing.push_back(l.ingredient);
            else if (dice < 0.45) have.items.push_back({l.ingredient, std::floor(l.grams.mid * between(0.3, 0.9))});
            else have.items.push_back({l.ingredient, std::nullopt});
            said.insert(l.ingredient);
            for (const auto& swap : knowledge().records().swaps)
                if (swap.from == l.ingredient && swap.to != l.ingredient && chance(0.35) && said.insert(swap.to).second &&
                    swap.to != "table-salt")
                    have.items.push_back({swap.to, chance(0.3) ? std::nullopt : std::optional<double>(std::floor(between(20, 600)))});
        }
        std::erase_if(have.items, [&](const auto& item) {
            return std::find(have.missing.begin(), have.missing.end(), item.ingredient) != have.missing.end();
        });
        return have;
    }

    std::vector<std::string> wants() {
        static const char* words[] = {"firmer", "milder", "leaner", "greener", "rounder", "less-salty", "hotter"};
        std::vector<std::string> all;
        if (chance(0.5)) all.emplace_back(words[random_() % std::size(words)]);
        return all;
    }

    double unit() { return static_cast<double>(random_() >> 11) * 0x1.0p-53; }
    double between(double a, double b) { return a + (b - a) * unit(); }
    bool chance(double p) { return unit() < p; }
    std::size_t below(std::size_t n) { return random_() % n; }

private:
    const standin::Ingredient* pick(standin::Role role) {
        std::vector<const standin::Ingredient*> all;
        for (const auto& i : knowledge().records().ingredients)
            if (i.roles.front() == role && !used_.count(i.id) && (role != standin::Role::lean || i.meat)) all.push_back(&i);
        if (all.empty()) return nullptr;
        const auto* food = all[below(all.size())];
        used_.insert(food->id);
        return food;
    }

    standin::Line prepared_line(const standin::Ingredient& food, double grams) {
        standin::Line made = line(food.id, std::round(grams));
        for (const char* step : {"blanched", "squeezed", "seeded"})
            if (const auto* p = knowledge().preparation(step);
                p && chance(0.3) && standin::effect_on(*p, food.tissue) && food.tissue != standin::Tissue::meat)
                made.prepared.push_back({step, std::nullopt});
        // What is only safe boiled or toasted is asked about when it is read back as it is: it is made so here.
        for (const char* step : {"boiled", "toasted"})
            if (standin::danger_of_food(food.names.front(), made, knowledge()) &&
                standin::effect_on(*knowledge().preparation(step), food.tissue))
                made.prepared = {{step, std::nullopt}};
        return made;
    }

    std::mt19937_64 random_;
    std::set<std::string> used_;
};
