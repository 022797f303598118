// Acid ingredients taken apart, and clear solutions: see acid.hpp.
#include <algorithm>
#include <cmath>

#include "models/acid.hpp"
#include "models/charge_balance.hpp"

namespace standin {
namespace {

using namespace charge;

constexpr std::size_t index(Acid acid) { return static_cast<std::size_t>(acid); }

// In the order of Acid. Ascorbic acid and phosphoric acid keep their last proton to pH 8.2.
constexpr std::array<double, count_of<Acid>> molar_masses{60.05, 90.08, 192.12, 134.09, 150.09, 90.03, 118.09, 176.12, 98.00};
constexpr std::array<double, count_of<Acid>> protons_titrated{1, 1, 3, 2, 2, 2, 2, 1, 2};

std::span<const double> pka_of(Acid acid, const AcidParameters& p) { return std::span(p.pka[index(acid)]).first(basicity[index(acid)]); }

}  // namespace

double molar_mass(Acid acid) { return molar_masses[index(acid)]; }
double titrated_protons(Acid acid) { return protons_titrated[index(acid)]; }

std::optional<double> titratable_mmol_kg(double value, std::string_view unit) {
    constexpr std::string_view equivalent = "g/kg ";
    if (unit == "mmol/kg") return value;
    if (!unit.starts_with(equivalent)) return std::nullopt;
    const auto acid = parse_word<Acid>(unit.substr(equivalent.size()));
    if (!acid) return std::nullopt;
    return 1000 * value / molar_mass(*acid) * titrated_protons(*acid);
}

AcidBase decompose(double ph, double titratable, std::span<const AcidShare> shares, const AcidParameters& p, double water) {
    AcidBase base;
    const double u = power_of_ten(ph), end = power_of_ten(titration_end_ph), solvent = std::max(water, 0.05);
    double strength = 0;
    for (int round = 0; round < 50; ++round) {
        const Activities g = activities(strength, p.davies);
        base = AcidBase{};
        Balance own;
        add_water(own, 1000 * solvent, power_of_ten(-p.pkw), g[1], 1 / u);
        double rest = titratable, square = own.plus + own.minus;
        for (const auto& [acid, share] : shares) {
            const Conditional k = conditional(overall_constants(pka_of(acid, p)), g);
            const Ions ions = dissociate(k, u);
            const double given = std::max(dissociate(k, end).charge - ions.charge, titrated_protons(acid) / p.equivalents_limit);
            const double mmol = share * titratable / given;
            base.acids[index(acid)] += mmol;
            rest -= mmol * std::max(0.0, dissociate(k, end).charge - ions.charge);
            square += mmol * ions.square;
            add_acid(own, mmol, ions);
        }
        base.strong = own.minus - own.plus;
        base.buffer = std::max(0.0, rest) / std::max(titration_end_ph - ph, 0.5);
        const double next = (square + std::abs(base.strong)) / (2000 * solvent);
        if (std::abs(next - strength) < 1e-10) break;
        strength = next;
    }
    return base;
}

SolutionPh solve_solution(std::span<const Dissolved> acids, double strong, const AcidParameters& p, bool ideal) {
    SolutionPh answer{7, std::abs(strong) / 2};
    const double kw = power_of_ten(-p.pkw);
    for (int round = 0; round < 200; ++round) {
        const Activities g = ideal ? ideal_activities : activities(answer.ionic_strength, p.davies);
        double squares = 0;
        const auto sides = [&](double ph) {
            Balance b;
            add_water(b, 1, kw, g[1], power_of_ten(-ph));
            squares = b.plus + b.minus + std::abs(strong);
            add_strong(b, strong);
            for (const auto& acid : acids) {
                const Ions ions = dissociate(conditional(overall_constants(acid.pka), g), power_of_ten(ph));
                add_acid(b, acid.mol_kg, ions);
                squares += acid.mol_kg * ions.square;
            }
            return b;
        };
        answer.ph = meeting_ph(sides);
        sides(answer.ph);
        const double before = answer.ionic_strength;
        answer.ionic_strength = squares / 2;
        if (std::abs(before - answer.ionic_strength) < 1e-12) break;
    }
    return answer;
}

}  // namespace standin
