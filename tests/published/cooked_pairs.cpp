// Raw and cooked foods of USDA SR28 (data/cooked_pairs.csv), their composition known: does the band hold what was measured? Whole cuts of
// the kinds that no constant was fitted to judge the method and the spread; ground meats are judged with the factor of their kind taken
// out. "published_tests [pairs]" prints the table by kind, by method and by make.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <map>
#include <set>

#include "models/cooking.hpp"
#include "published/calibration_rows.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace cooked_pairs_test {

struct Pair {
    Species kind{};
    Cook method{};
    double core_c = 0, salt_pct = 0;
    std::string make, set, what;
    double water = 0, protein = 0, fat = 0;
    double cooked_water = 0, cooked_protein = 0, cooked_fat = 0;
    double loss() const { return 100 * (1 - protein / cooked_protein); }
};

const std::map<std::string, Cook> ways{
    {"pan", Cook::pan}, {"grill", Cook::grill}, {"oven", Cook::oven}, {"poach", Cook::poach}, {"loose", Cook::loose}};

std::string name_of(Cook way) {
    return std::find_if(ways.begin(), ways.end(), [&](const auto& named) { return named.second == way; })->first;
}

std::vector<Pair> pairs() {
    std::vector<Pair> all;
    for (const auto& c : calibration::cells_of("cooked_pairs.csv")) {
        const auto number = [&](std::size_t i) { return std::stod(c.at(i)); };
        all.push_back({parse_word<Species>(c.at(0)).value(), ways.at(c.at(1)), number(2), number(4), c.at(3), c.at(5), c.at(6), number(7),
                       number(8), number(9), number(10), number(11), number(12)});
    }
    return all;
}

/// The table does not say how thick: roasts and loaves are taken as 80 mm, fillets of fish as 25.
double thickness_of(const Pair& p) { return p.kind == Species::fish || p.kind == Species::crustacean ? 25 : 80; }

CookState state_of(const Pair& p) { return {5.7, p.method, p.core_c, 1, thickness_of(p)}; }

constexpr std::size_t draw_count = 512;

std::vector<CookingParameters> drawn() { return draw_parameters(knowledge(), cooking_bindings(), Draws(draw_count, 1)); }

/// The factor of the kind as it would stand had no such meat been at hand: that of beef, with the doubt that meats differ by.
std::vector<CookingParameters> without(Species kind, std::vector<CookingParameters> constants) {
    const Draws draws(draw_count, 2);
    const Spread unknown(Band{0.92, 1.0, 1.08});
    const auto& deviates = draws.of("kind left out");
    for (std::size_t i = 0; i < constants.size(); ++i) constants[i].kind[static_cast<std::size_t>(kind)] = unknown.at(deviates[i]);
    return constants;
}

Material raw(const Pair& p);

/// Water kept a gram of protein over what the model has it keep were it beef.
double factor_of(const Pair& p, CookingParameters middle) {
    middle.kind[static_cast<std::size_t>(p.kind)] = 1;
    const BatchCook cook = batch_cook(raw(p), state_of(p), middle);
    return p.cooked_water / p.cooked_protein * p.protein / (p.water - cook.water_lost_pct);
}

/// The factor of the kind as the other rows of that kind have it, with their spread.
std::vector<CookingParameters> by_the_others(const Pair& p, const std::vector<Pair>& all, std::vector<CookingParameters> constants) {
    const CookingParameters middle = draw_parameters(knowledge(), cooking_bindings(), Draws::middle()).front();
    double sum = 0, squares = 0, count = 0;
    for (const auto& other : all) {
        if (other.set != p.set || other.kind != p.kind || other.what == p.what) continue;
        const double log = std::log(factor_of(other, middle));
        sum += log;
        squares += log * log;
        ++count;
    }
    const double mean = sum / count, spread = std::sqrt(squares / count - mean * mean);
    const Draws draws(draw_count, 3);
    const auto& deviates = draws.of("kind by the others");
    for (std::size_t i = 0; i < constants.size(); ++i)
        constants[i].kind[static_cast<std::size_t>(p.kind)] = std::exp(mean + spread * deviates[i]);
    return constants;
}

bool is_salmon(const Pair& p) { return p.what.find("salmon") != std::string::npos || p.what.find("trout") != std::string::npos; }

Material raw(const Pair& p) {
    Material m;
    m[Amount::mass] = m[p.kind] = 100;
    m[Amount::water] = p.water;
    m[Amount::protein] = m[Amount::meat_protein] = p.protein;
    m[Amount::fat] = p.fat;
    m[Amount::salt] = p.salt_pct;
    return m;
}

/// In noticeable differences; the bias is positive where the model says more.
struct Judged {
    bool inside = false;
    double error = 0, width = 0;
};

Judged judge(const std::vector<BatchCook>& cooks, double BatchCook::*what, double measured, const std::string& yardstick) {
    std::vector<double> values;
    for (const auto& c : cooks) values.push_back(c.*what);
    const Band band = band_of(std::move(values));
    const double step = knowledge().difference(yardstick)->step.band.mid;
    return {band.low <= measured && measured <= band.high, (band.mid - measured) / step, (band.high - band.low) / step};
}

struct Total {
    std::vector<Judged> loss, water, fat;
};

double median(std::vector<double> values) { return band_of(std::move(values)).mid; }

double share(const std::vector<Judged>& all) {
    return static_cast<double>(std::count_if(all.begin(), all.end(), [](const Judged& j) { return j.inside; })) /
           static_cast<double>(all.size());
}

double bias(const std::vector<Judged>& all) {
    std::vector<double> errors;
    for (const auto& j : all) errors.push_back(j.error);
    return median(std::move(errors));
}

double width(const std::vector<Judged>& all) {
    std::vector<double> widths;
    for (const auto& j : all) widths.push_back(j.width);
    return median(std::move(widths));
}

std::map<std::string, Total> totals() {
    std::map<std::string, Total> all;
    const auto constants = drawn();
    const auto rows = pairs();
    for (const auto& p : rows) {
        if (p.set == "used") continue;
        std::vector<BatchCook> cooks;
        for (const auto& c : p.set == "loo"      ? without(p.kind, constants)
                             : p.set == "others" ? by_the_others(p, rows, constants)
                                                 : constants)
            cooks.push_back(batch_cook(raw(p), state_of(p), c));
        const auto loss = judge(cooks, &BatchCook::loss_pct, p.loss(), "cook_loss_pct");
        const auto water = judge(cooks, &BatchCook::cooked_water_pct, p.cooked_water, "water_pct");
        const auto fat = judge(cooks, &BatchCook::cooked_fat_pct, p.cooked_fat, "fat_pct");
        for (const std::string& key : std::set<std::string>{
                 std::string("all"), "kind " + std::string(spelling(p.kind)), "cook " + name_of(p.method), "make " + p.make,
                 p.kind == Species::fish ? std::string(is_salmon(p) ? "fish: salmon" : "fish: other") : "make " + p.make}) {
            all[key].loss.push_back(loss);
            all[key].water.push_back(water);
            all[key].fat.push_back(fat);
        }
    }
    return all;
}

void print(const std::map<std::string, Total>& all) {
    std::printf("%-16s %4s   %-26s %-26s %s\n", "", "rows", "cook loss: in, bias, width", "cooked water", "cooked fat");
    for (const auto& [key, t] : all) {
        std::printf("%-16s %4zu ", key.c_str(), t.loss.size());
        for (const auto* part : {&t.loss, &t.water, &t.fat})
            std::printf("  %3.0f %%  %+5.2f  %5.2f     ", 100 * share(*part), bias(*part), width(*part));
        std::printf("\n");
    }
}

TEST_CASE("cooked meats with the composition known: coverage, bias and width by kind and method (USDA SR28)", "[pairs]") {
    const auto all = totals();
    print(all);
    constexpr double wanted = 0.88, wanted_of_a_kind = 0.75, wanted_bias = 1;
    const Total& total = all.at("all");
    CHECK(total.loss.size() > 120);
    CHECK(share(total.loss) >= wanted);
    CHECK(share(total.water) >= wanted);
    CHECK(std::abs(bias(total.loss)) <= 0.5);
    for (const auto& [key, t] : all) {
        if (t.loss.size() < 3) continue;
        CAPTURE(key, t.loss.size());
        CHECK(share(t.loss) >= wanted_of_a_kind);
        CHECK(share(t.water) >= wanted_of_a_kind);
        if (t.loss.size() >= 8) CHECK(std::abs(bias(t.loss)) <= wanted_bias);
        if (t.water.size() >= 8) CHECK(std::abs(bias(t.water)) <= wanted_bias);
    }
}

// The fat of ground and salted masses is foretold. That of whole cuts is not, and no sausage asks for it: the raw and the cooked row are
// cuts of different beasts, trimmed by eye, whose seams of fat differ by more than the pan takes; half of them are outside bands made for a
// mass. How far they stray is measured here, so that who cooks a cut by these models knows.
TEST_CASE("cooked fat: ground and salted masses are in the band, whole cuts stray by a known spread (USDA SR28)", "[pairs]") {
    const auto all = totals();
    for (const std::string make : {"make ground", "make salted"}) {
        CAPTURE(make);
        CHECK(share(all.at(make).fat) >= 0.88);
        CHECK(std::abs(bias(all.at(make).fat)) <= 0.5);
    }
    const CookingParameters middle = draw_parameters(knowledge(), cooking_bindings(), Draws::middle()).front();
    std::vector<double> points;  // measured less foretold, g in 100 g
    for (const auto& p : pairs())
        if (p.make == "whole" && p.set != "used") points.push_back(p.cooked_fat - batch_cook(raw(p), state_of(p), middle).cooked_fat_pct);
    const Band strays = band_of(std::vector<double>(points));
    std::printf("whole cuts: cooked fat measured less foretold, nine in ten of %zu: %+.1f to %+.1f points, middle %+.1f\n", points.size(),
                strays.low, strays.high, strays.mid);
    CHECK(points.size() > 120);
    CHECK(std::abs(strays.mid) < 1);
    CHECK(strays.low > -5);
    CHECK(strays.high < 5);
}

}  // namespace cooked_pairs_test
