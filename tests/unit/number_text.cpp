// Numbers as text and back, whatever the program's locale.
#include "standin/number_text.hpp"

#include <clocale>
#include <cstdlib>
#include <filesystem>
#include <limits>
#include <locale>
#include <string>

#include "standin/engine.hpp"
#include "standin/temperature_text.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace number_text_test {

// Decimal commas and dots between thousands for C++ streams, and for C's functions where the system has such a locale.
class CommaLocale {
public:
    CommaLocale() : streams_(std::locale::global(std::locale(std::locale::classic(), new Commas))) {
        before_ = std::setlocale(LC_ALL, nullptr);
        if (!set() && made()) set();
    }
    ~CommaLocale() {
        std::setlocale(LC_ALL, before_.c_str());
        std::locale::global(streams_);
    }
    CommaLocale(const CommaLocale&) = delete;
    CommaLocale& operator=(const CommaLocale&) = delete;
    bool of_c() const { return std::localeconv()->decimal_point[0] == ','; }

private:
    static bool set() {
        for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "it_IT.UTF-8"})
            if (std::setlocale(LC_ALL, name)) return true;
        return false;
    }

    // Compiled beside the test where the system has its source but not the locale.
    static bool made() {
        const auto folder = std::filesystem::temp_directory_path() / "standin-test-locales";
        std::filesystem::create_directories(folder);
        const std::string call = "localedef -i de_DE -f UTF-8 '" + (folder / "de_DE.UTF-8").string() + "' >/dev/null 2>&1";
        return std::system(call.c_str()) == 0 && setenv("LOCPATH", folder.c_str(), 1) == 0;
    }

    struct Commas : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
        char do_thousands_sep() const override { return '.'; }
        std::string do_grouping() const override { return "\3"; }
    };
    std::locale streams_;
    std::string before_;
};

// Sour enough for cautions by pH, with counts, bands and a core temperature to be written.
constexpr const char* sour =
    "Sour\n2.5 kg pork shoulder\n1 kg chicken thigh, skinless\n250.5 g spinach, blanched 2.5 min, squeezed\n180 g cider vinegar\n"
    "3 serrano\nsalt, 1.75 % of meat\nrest: 1.5 days\ncore: 70.5 C\ncore curve: 0 min 4.5 C, 8.5 min 55 C, 12 min 71.5 C\n";

SheetRequest meat(const char* weight) {
    SheetRequest request;
    request.meat = weight;
    return request;
}

std::string all_of(const Engine& engine) {
    const Formula formula = engine.read_formula(sour, "sour.txt").value();
    const Prediction p = engine.predict(formula).value();
    std::string text = engine.formula_text(formula) + engine.formula_json(formula) + engine.formula_jsonld(formula) + p.label;
    for (const auto& c : p.cautions) text += "\n" + c.id + c.text;
    for (const auto& n : p.notes) text += "\n" + in_full(n);
    for (const auto& l : p.lines)
        for (const auto& step : l.prepared) text += "\n" + step;
    text += p.green_life ? p.green_life->says : "";
    text += p.lethality ? p.lethality->says : "";
    AdaptRequest request;
    request.wants = {"ph>=5.15", "salt<=1.45"};
    const AdaptAnswer answer = engine.adapt(formula, request).value();
    for (const auto& v : answer.variants)
        for (const auto& w : v.wants) text += "\n" + w.says;
    const SwapsAnswer swaps = engine.swaps(formula, "spinach", {.top = 3}).value();
    for (const auto& s : swaps.stand_ins) text += "\n" + s.dose;
    const Sheet sheet = engine.sheet(formula, meat("4.5 kg")).value();
    for (const auto& n : sheet.notes) text += "\n" + in_full(n);
    return text + "\n" + engine.graph("spinach").value();
}

TEST_CASE("a number is all of its text, or none") {
    CHECK(number_in("5.5") == 5.5);
    CHECK(number_in("-3") == -3);
    CHECK(number_in("+2.5") == 2.5);
    CHECK(number_in("1e-3") == 0.001);
    for (const char* none : {"", " ", "5,5", "5.5 g", "x", "1.2.3", "--1", "+-1", "nan", "inf", "1e999", "+"}) {
        CAPTURE(none);
        CHECK_FALSE(number_in(none));
    }
    std::string_view text = "80/20";
    CHECK(take_number(text) == 80.0);
    CHECK(text == "/20");
    CHECK_FALSE(take_number(text));
    CHECK(text == "/20");
}

TEST_CASE("decimals, figures, and nothing below nothing") {
    CHECK(fixed_text(1.5, 2) == "1.50");
    CHECK(fixed_text(-0.004, 2) == "0.00");
    CHECK(fixed_text(-0.006, 2) == "-0.01");
    CHECK(fixed_text(1234567.891, 1) == "1234567.9");
    CHECK(trimmed_text(2, 2) == "2");
    CHECK(trimmed_text(2.50, 2) == "2.5");
    CHECK(trimmed_text(100, 2) == "100");
    CHECK(figures_text(1234, 3) == "1230");
    CHECK(figures_text(0.012345, 3) == "0.0123");
    CHECK(figures_text(9.996, 3) == "10");
    CHECK(figures_text(0.5, 3) == "0.5");
    CHECK(figures_text(-41.26, 3) == "-41.3");
    CHECK(figures_text(0, 3) == "0");
    CHECK(exact_text(0.1) == "0.1");
    CHECK(number_in(exact_text(1.0 / 3)) == 1.0 / 3);
    for (const double odd : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        CHECK(fixed_text(odd, 2) == "?");
        CHECK(trimmed_text(odd, 2) == "?");
        CHECK(figures_text(odd, 3) == "?");
        CHECK(exact_text(odd) == "?");
    }
    CHECK(fixed_text(1e300, 7).size() == 309);
}

TEST_CASE("a core temperature is never rounded down, in either scale") {
    CHECK(core_temperature_text(71.1) == "71.1 C (160 F)");
    CHECK(core_temperature_text(73.9) == "73.9 C (165 F)");
    CHECK(core_temperature_text(62.8) == "62.8 C (145 F)");
    CHECK(core_temperature_text(70) == "70 C (158 F)");
    CHECK(core_temperature_text(71.01) == "71.1 C (160 F)");
    CHECK(core_temperature_text(75) == "75 C (167 F)");
    for (double asked = 55; asked < 95; asked += 0.013) {
        const std::string text = core_temperature_text(asked);
        CAPTURE(asked, text);
        const auto celsius = number_in(text.substr(0, text.find(' ')));
        const auto open = text.find('(');
        const auto fahrenheit = number_in(text.substr(open + 1, text.find(' ', open) - open - 1));
        REQUIRE((celsius && fahrenheit));
        CHECK(*celsius >= asked - 1e-6);
        CHECK(*celsius < asked + 0.1 + 1e-6);
        CHECK(*fahrenheit >= asked * 1.8 + 32 - 0.0901);
        CHECK(*fahrenheit < asked * 1.8 + 33);
    }
}

TEST_CASE("rounding up stays where it is on the step itself") {
    CHECK(rounded_up(71.1, 1) == Approx(71.1));
    CHECK(rounded_up(71.11, 1) == Approx(71.2));
    CHECK(rounded_up(-0.05, 1) == Approx(0.0));
    CHECK(rounded_up(160.0000001, 0) == 160);
}

TEST_CASE("a program with decimal commas gets the same answers, word for word") {
    const Engine before = opened(64);
    const std::string expected = all_of(before);
    const CommaLocale commas;
    if (!commas.of_c()) WARN("no decimal-comma locale on this system: only C++ streams were switched, C's functions were not");
    const Engine during = opened(64);
    CHECK(all_of(during) == expected);
    CHECK(number_in("5.5") == 5.5);
    CHECK(fixed_text(5.5, 1) == "5.5");
}

}  // namespace number_text_test
