#include "evaluate/evaluator.hpp"
#include "models/colour.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace making_of_texture_test {

Formula sausage(const std::string& lean, std::vector<std::string> prepared = {}, double salt_g = 17) {
    Formula f = formula({line(lean, 1000, std::move(prepared)), line("pork-backfat", 150), line("table-salt", salt_g)});
    f.process = {8, 3, 3, 12, 3, 71, 30, {}, Order::salt_first, Cook::pan};
    return f;
}

const Evaluator& evaluator() {
    static const Evaluator one(knowledge(), 256, 1);
    return one;
}

PerProperty<double> of(const Formula& f) { return NominalBatch(f, nominal()).state().properties; }

Formula rested(double hours, double salt_g = 17) {
    Formula f = sausage("pork-shoulder", {}, salt_g);
    f.process.rest_h = hours;
    return f;
}

Formula cooked_to(double celsius) {
    Formula f = sausage("pork-shoulder");
    f.process.core_c = celsius;
    return f;
}

TEST_CASE("meat that was frozen binds less and loses more in the pan, beside the drip it has lost already") {
    for (const char* lean : {"pork-shoulder", "beef-chuck-lean", "lamb-shoulder", "chicken-breast"}) {
        INFO(lean);
        const auto fresh = of(sausage(lean)), thawed = of(sausage(lean, {"frozen-thawed"}));
        CHECK(thawed[Property::bind] < fresh[Property::bind]);
        CHECK(thawed[Property::bind] > fresh[Property::bind] - 8);
        CHECK(thawed[Property::cook_loss_pct] > fresh[Property::cook_loss_pct] + 1);
        CHECK(thawed[Property::cook_loss_pct] < fresh[Property::cook_loss_pct] + 4);
    }
}

TEST_CASE("a salted mass gains bind in the rest, ever less; an unsalted one gains none; the loss stays") {
    const auto none = of(rested(0)), night = of(rested(12)), day = of(rested(24)), two = of(rested(48));
    CHECK(night[Property::bind] > none[Property::bind] + 1);
    CHECK(day[Property::bind] > night[Property::bind]);
    CHECK(two[Property::bind] - day[Property::bind] < night[Property::bind] - none[Property::bind]);
    CHECK(two[Property::cook_loss_pct] == Approx(none[Property::cook_loss_pct]));
    const double plain_gain = of(rested(48, 0))[Property::bind] - of(rested(0, 0))[Property::bind];
    CHECK(plain_gain < (two[Property::bind] - none[Property::bind]) / 4);
}

TEST_CASE("the hotter the core, the firmer; a quarter harder from 63 to 90 C") {
    const auto hardness = [](double celsius) {
        const double firmness = of(cooked_to(celsius))[Property::firmness];
        return firmness / (100 - firmness);
    };
    CHECK(hardness(82) > hardness(71));
    CHECK(hardness(90) / hardness(63) == Approx(1.25).epsilon(0.05));
}

// The curve of salted masses was worked out of pork sausages, whose fat stays best.
TEST_CASE("a salted mass of red meat lets more of its fat run than one of pork") {
    const auto lost_fat = [](const char* lean) {
        Formula f = formula({line(lean, 1000), line("table-salt", 17)});
        f.lines.front().fat_pct = Band{20, 20, 20};
        f.process = {8, 3, 3, 12, 3, 71, 30, {}, Order::salt_first, Cook::pan};
        const auto p = of(f);
        return p[Property::fat_pct] - p[Property::cooked_fat_pct] * (1 - p[Property::cook_loss_pct] / 100);
    };
    CHECK(lost_fat("lamb-shoulder") > 1.4 * lost_fat("pork-shoulder"));
    CHECK(lost_fat("beef-chuck") > 1.4 * lost_fat("pork-shoulder"));
}

TEST_CASE("a finer plate than the models know widens the bands and is told") {
    Formula f = sausage("pork-shoulder");
    const auto width_at = [&](double plate_mm) {
        f.process.plate_mm = plate_mm;
        return width(predict_formula(f, evaluator()).properties[Property::bind]);
    };
    CHECK(width_at(2) > width_at(8) + 5);
    const auto notes = [&](double plate_mm) {
        f.process.plate_mm = plate_mm;
        std::string all;
        for (const auto& note : predict_formula(f, evaluator()).notes) all += in_full(note) + "\n";
        return all;
    };
    CHECK(notes(2).find("A plate of 2 mm, made for 3 mm and more") != std::string::npos);
    CHECK(notes(2).find("sets as an emulsion") != std::string::npos);
    CHECK(notes(3).find("plate") == std::string::npos);
}

TEST_CASE("what sets pale is white or cream, salmon and shrimp orange-pink") {
    CHECK(colour_word({75, 3, 16}) == "cream");  // chicken breast
    CHECK(colour_word({76, 3.3, 8.4}) == "white");
    CHECK(colour_word({77, 0, 11}) == "white");  // cod
    CHECK(colour_word({68, 11, 19}) == "orange-pink");
    CHECK(colour_word({53, 11, 17}, Doneness::raw) == "orange-pink");
    CHECK(colour_word({72, 8, 15}) == "orange-pink");
    CHECK(colour_word({68, 5, 9}) != "white");                 // boiled pork
    CHECK(colour_word({76, -6, 16}) != "cream");               // with leaf in it
    CHECK(colour_word({42, 15, 11}, Doneness::raw) == "red");  // lamb
    CHECK(colour_word({54, 10, 12}, Doneness::raw) == "pale pink");
}

}  // namespace making_of_texture_test
