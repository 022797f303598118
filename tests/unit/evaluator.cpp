// One evaluator, two views: what they agree on, that the caches forget, and that threads may share them.
#include "evaluate/evaluator.hpp"

#include <array>
#include <fstream>
#include <thread>

#include "evaluate/predict.hpp"
#include "standin/engine.hpp"
#include "support/cases.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

TEST_CASE("a cache keeps what was asked for last and forgets the rest") {
    Recent<std::string> words(2);
    int made = 0;
    const auto ask = [&](const std::string& key) {
        return *words.get(key, [&] {
            ++made;
            return key + "!";
        });
    };
    CHECK(ask("a") == "a!");
    CHECK(ask("b") == "b!");
    CHECK(ask("a") == "a!");
    CHECK(made == 2);
    CHECK(ask("c") == "c!");  // b goes
    CHECK(ask("a") == "a!");
    CHECK(made == 3);
    CHECK(ask("b") == "b!");
    CHECK(made == 4);
}

TEST_CASE("what a cache has forgotten stays with whoever holds it") {
    Recent<std::string> words(1);
    const auto kept = words.get("a", [] { return std::string("first"); });
    words.get("b", [] { return std::string("second"); });
    CHECK(*kept == "first");
}

TEST_CASE("the nominal value of a property lies within its band") {
    const Evaluator evaluator(knowledge(), 256, 1);
    for (std::uint64_t n = 0; n < 12; ++n) {
        const Formula made = CaseMaker(n).formula();
        const Prediction p = predict_formula(made, evaluator);
        for_each_property([&](Property property) {
            CAPTURE(n, info(property).key);
            const Band& band = p.properties[property];
            const double slack = 1e-9 + 1e-6 * std::abs(band.mid);
            CHECK(p.nominal[property] >= band.low - slack);
            CHECK(p.nominal[property] <= band.high + slack);
        });
    }
}

TEST_CASE("a weight in doubt is nominally its middle") {
    Formula made = formula({line("pork-shoulder", 1000), line("spinach", 100)});
    made.lines[1].grams = {60, 100, 160};
    const NominalBatch batch(made, nominal());
    CHECK(batch.part(1)[Amount::mass] == Approx(100));
    CHECK(batch.total()[Amount::mass] == Approx(1100));
}

TEST_CASE("threads that share an evaluator get what one alone gets", "[threads]") {
    constexpr std::uint64_t each = 6, threads = 4;
    const Evaluator shared(knowledge(), 64, 1), alone(knowledge(), 64, 1);
    std::vector<std::vector<Prediction>> got(threads);
    std::vector<std::thread> all;
    for (std::uint64_t t = 0; t < threads; ++t)
        all.emplace_back([&, t] {
            for (std::uint64_t n = 0; n < each; ++n) got[t].push_back(predict_formula(CaseMaker((n + t) % each).formula(), shared));
        });
    for (auto& thread : all) thread.join();
    for (std::uint64_t t = 0; t < threads; ++t)
        for (std::uint64_t n = 0; n < each; ++n) {
            const Prediction p = predict_formula(CaseMaker((n + t) % each).formula(), alone);
            for_each_property([&](Property property) { CHECK(got[t][n].properties[property] == p.properties[property]); });
            CHECK(got[t][n].notes == p.notes);
        }
}

TEST_CASE("threads may ask one engine everything at once", "[threads]") {
    const Engine engine = opened(32);
    const Formula made = CaseMaker(3).formula();
    const auto bind_of = [&] { return engine.predict(made).value().properties[Property::bind]; };
    const Band alone = bind_of();
    AdaptRequest firmer;
    firmer.wants = {"firmer"};
    firmer.top = 1;
    const AdaptAnswer before = engine.adapt(made, firmer).value();
    std::vector<std::thread> all;
    std::array<bool, 4> same{};
    for (std::size_t t = 0; t < same.size(); ++t)
        all.emplace_back([&, t] {
            same[t] = bind_of() == alone;
            if (t == 0) same[t] = same[t] && engine.adapt(made, firmer).value().plans_visited == before.plans_visited;
            if (t == 1) same[t] = same[t] && engine.swaps(made, "1").has_value();
            if (t == 2) same[t] = same[t] && engine.sheet(made, {}).has_value() && engine.why(made, Property::ph).has_value();
            if (t == 3) same[t] = same[t] && !engine.lookup("spinach").matches.empty() && engine.compare({made, made}).has_value();
        });
    for (auto& thread : all) thread.join();
    for (const bool one : same) CHECK(one);
}

#ifdef __linux__
TEST_CASE("two thousand different formulas stay under 100 MB") {
    const auto resident_mb = [] {
        std::size_t pages = 0, resident = 0;
        std::ifstream("/proc/self/statm") >> pages >> resident;
        return static_cast<double>(resident) * 4096 / 1e6;
    };
    const Evaluator evaluator(knowledge(), 512, 1);
    const double before = resident_mb();
    for (std::uint64_t n = 0; n < 2000; ++n) {
        Formula made = CaseMaker(n % 40).formula();
        for (auto& l : made.lines)  // a time of its own for each formula, so that no material serves twice
            for (auto& step : l.prepared) step.minutes = 2 + 0.001 * static_cast<double>(n);
        const SampledBatch batch(made, evaluator.sampled());
        CHECK(NominalBatch(made, evaluator.nominal()).total()[Amount::mass] > 0);
        CHECK(batch.total(n % 512)[Amount::mass] > 0);
    }
    CHECK(resident_mb() - before < 100);
}
#endif
