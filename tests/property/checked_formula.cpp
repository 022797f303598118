// Formulas broken at random: an answer or an error, never a crash, and no answer with a number that is none.
#include "evaluate/checked_formula.hpp"

#include <cmath>
#include <limits>

#include "standin/engine.hpp"
#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace checked_formula_test {

class Breaker {
public:
    explicit Breaker(std::uint64_t number) : make_(number) {}

    Formula formula() {
        Formula made = make_.formula();
        for (std::size_t times = make_.below(4); times > 0; --times) hurt(made);
        return made;
    }

private:
    double odd_number() {
        constexpr double numbers[] = {std::numeric_limits<double>::quiet_NaN(),
                                      std::numeric_limits<double>::infinity(),
                                      -std::numeric_limits<double>::infinity(),
                                      std::numeric_limits<double>::denorm_min(),
                                      std::numeric_limits<double>::max(),
                                      -500,
                                      -0.0,
                                      0,
                                      1e-9,
                                      1e12,
                                      71};
        return numbers[make_.below(std::size(numbers))];
    }

    std::string odd_text() {
        const std::string texts[] = {"", "moonstone", "\xFF\xFE", std::string("a\0b", 3), std::string(5000, 'x'), "spinach", "../pork"};
        return texts[make_.below(std::size(texts))];
    }

    void hurt(Formula& f) {
        Line& l = f.lines[make_.below(f.lines.size())];
        switch (make_.below(11)) {
            case 0:
                l.ingredient = odd_text();
                break;
            case 1:
                l.grams = exactly(odd_number());
                break;
            case 2:
                l.grams.low = odd_number();
                break;
            case 3:
                l.grams.high = odd_number();
                break;
            case 4:
                l.prepared.push_back({odd_text(), odd_number()});
                break;
            case 5:
                l.prepared.push_back({"blanched", odd_number()});
                break;
            case 6:
                l.count = odd_number();
                break;
            case 7:
                f.process.core_c = odd_number();
                break;
            case 8:
                f.process.core_curve.push_back({odd_number(), odd_number()});
                break;
            case 9:
                f.title = odd_text();
                break;
            default:
                f.lines = std::vector<Line>{Line(l)};
                break;
        }
    }

    CaseMaker make_;
};

bool finite(const Band& b) { return std::isfinite(b.low) && std::isfinite(b.mid) && std::isfinite(b.high); }

TEST_CASE("a formula broken at random gives an answer in numbers, or an error in words") {
    const Engine engine = opened(16);
    std::size_t answered = 0, refused = 0;
    for (std::uint64_t n = 0; n < 400; ++n) {
        const Formula made = Breaker(n).formula();
        CAPTURE(n);
        const auto faults = faults_in(made, knowledge());
        const auto prediction = engine.predict(made);
        if (!prediction) {
            CHECK_FALSE(prediction.error().message.empty());
            CHECK_FALSE(engine.compare({made}));
            CHECK_FALSE(engine.sheet(made, {}));
            ++refused;
            continue;
        }
        CHECK(faults.empty());
        for_each_property([&](Property p) { CHECK((finite(prediction->properties[p]) && std::isfinite(prediction->nominal[p]))); });
        CHECK_FALSE(engine.formula_text(made).empty());
        CHECK_FALSE(engine.formula_json(made).empty());
        ++answered;
    }
    CHECK(answered > 50);
    CHECK(refused > 50);
}

}  // namespace checked_formula_test
