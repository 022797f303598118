// Pungency: sums, damping, words and pods.
#include "models/heat.hpp"

#include <cmath>
#include <numeric>
#include <random>
#include <vector>

#include "support/catch.hpp"
#include "support/parameters.hpp"

using namespace standin;

namespace heat_test {

HeatParameters middle() { return middle_parameters(heat_bindings()); }

Material hot(double capsaicinoids_mg, double fat_g = 250) {
    Material m;
    m[Amount::mass] = 1000;
    m[Amount::fat] = fat_g;
    m[Amount::capsaicinoids] = capsaicinoids_mg;
    return m;
}

TEST_CASE("heat is mg per kg as eaten, and SHU by the stated factor") {
    const auto p = middle();
    const BatchHeat h = batch_heat(hot(2), p);
    CHECK(h.heat_mg_kg == Approx(1.8));
    CHECK(h.heat_shu == Approx(1.8 * 16.1));
    CHECK(h.scale_mg_kg == Approx(h.heat_mg_kg));  // at the reference fat
}

TEST_CASE("fat damps, pepper adds, nothing is nothing") {
    const auto p = middle();
    CHECK(batch_heat(hot(2, 400), p).scale_mg_kg < batch_heat(hot(2, 100), p).scale_mg_kg);
    CHECK(batch_heat(hot(2, 400), p).heat_mg_kg == batch_heat(hot(2, 100), p).heat_mg_kg);
    Material peppered = hot(2);
    peppered[Amount::pungency] = 1;
    CHECK(batch_heat(peppered, p).scale_mg_kg > batch_heat(hot(2), p).scale_mg_kg);
    CHECK(batch_heat(peppered, p).heat_mg_kg == batch_heat(hot(2), p).heat_mg_kg);
    CHECK(batch_heat(hot(0), p).scale_mg_kg == 0);
    CHECK(batch_heat(Material{}, p).scale_mg_kg == 0);
}

TEST_CASE("burn rises with dose without jumps") {
    const auto p = middle();
    double before = 0;
    for (double mg = 0.01; mg < 50; mg *= 1.01) {
        const double now = batch_heat(hot(mg), p).scale_mg_kg;
        CHECK(now > before);
        CHECK((before == 0 || now < before * 1.011));
        before = now;
    }
}

TEST_CASE("word chances are chances and move up with the heat") {
    const auto p = middle();
    std::mt19937_64 random(5);
    std::normal_distribution<double> normal;
    double mean_word_before = -1;
    for (double middle_mg = 0.05; middle_mg < 100; middle_mg *= 1.5) {
        std::vector<double> draws(512);
        for (double& d : draws) d = middle_mg * std::exp(0.01 * normal(random));
        const auto chances = word_chances(draws, p.boundaries, p.person_sd);
        CHECK(std::accumulate(chances.begin(), chances.end(), 0.0) == Approx(1));
        double mean_word = 0;
        for (std::size_t i = 0; i < chances.size(); ++i) {
            CHECK(chances[i] >= 0);
            mean_word += static_cast<double>(i) * chances[i];
        }
        CHECK(mean_word > mean_word_before);
        mean_word_before = mean_word;
    }
}

TEST_CASE("word chances at the edges") {
    const auto p = middle();
    CHECK(word_chances({}, p.boundaries, p.person_sd)[0] == 1);
    CHECK(word_chances(std::vector{0.0, 0.0}, p.boundaries, p.person_sd)[0] == 1);
    CHECK(word_chances(std::vector{1e9}, p.boundaries, p.person_sd)[5] == Approx(1));
    CHECK(word_chances(std::vector{4.0}, p.boundaries, p.person_sd)[2] == Approx(0.5).margin(1e-3));
    CHECK(word_chances(std::vector{2.0}, p.boundaries, 0)[2] == Approx(1));
    const double here = word_chances(std::vector{1.0}, p.boundaries, p.person_sd)[2];
    CHECK(word_chances(std::vector{1.0 + 1e-6}, p.boundaries, p.person_sd)[2] == Approx(here).margin(1e-5));
}

TEST_CASE("more pods, less luck; a part of a pod is no surer than one") {
    double before = 1;
    for (const double pods : {1.0, 1.5, 2.0, 4.0, 100.0, 1e6}) {
        CHECK(pod_sigma_of_blend(0.8, pods) < before);
        before = pod_sigma_of_blend(0.8, pods);
    }
    CHECK(pod_sigma_of_blend(0.8, 0.3) == Approx(0.8));
    CHECK(pod_sigma_of_blend(0, 5) == 0);
}

}  // namespace heat_test
