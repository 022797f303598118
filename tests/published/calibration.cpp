// The calibration report: every published measurement at hand that no constant rests on (or whose constants were refitted without it)
// against what the models say of the described material, blind. "published_tests [calibration]" prints it; misses stay in the table. Rows
// that set a constant are "used": shown, and left out of every total.
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <functional>
#include <map>
#include <set>

#include "published/calibration_predict.hpp"
#include "support/catch.hpp"

using namespace calibration;

namespace calibration_test {

struct Judged {
    Measured measured;
    Said said;
    Distance steps;
    bool inside = false;
};

std::vector<Judged> judge_all() {
    Forecast forecast;
    std::vector<Judged> all;
    for (auto& m : measurements()) {
        Judged j{m, forecast.of(m), {}, false};
        j.steps = distance_of(j.said, m.quantity, m.value);
        j.inside = j.said.band.low <= m.value && m.value <= j.said.band.high;
        all.push_back(std::move(j));
    }
    return all;
}

const std::vector<Judged>& judged() {
    static const std::vector<Judged> all = judge_all();
    return all;
}

std::string number(double value) {
    char text[32];
    const double size = std::abs(value);
    std::snprintf(text, sizeof text, size >= 1000 ? "%.0f" : size >= 100 ? "%.1f" : size >= 2 ? "%.2f" : "%.3f", value);
    return std::isnan(value) ? "-" : text;
}

std::string signed_number(double value) { return (value > 0 ? "+" : "") + number(value); }

std::string cell(std::string text, std::size_t width, bool right = false) {
    if (text.size() > width) text.resize(width);
    const std::string gap(width - text.size(), ' ');
    return (right ? gap + text : text + gap) + ' ';
}

std::string line_of(const Judged& j) {
    const auto& band = j.said.band;
    const auto figure = [](double value) { return cell(number(value), 7, true); };
    const auto steps = [](double value) {
        return cell(std::isnan(value) ? "-" : number(std::round(value * 10) / 10).substr(0, 5), 6, true);
    };
    return cell(j.measured.what, 33) + cell(j.measured.quantity, 18) + figure(j.measured.value) + figure(band.low) + figure(band.mid) +
           figure(band.high) + cell(j.inside ? "in" : "OUT", 3) + steps(j.steps.error) + steps(j.steps.width) +
           cell(j.measured.support, 4) + j.measured.set + '\n';
}

struct Total {
    std::size_t all = 0, inside = 0;
    double median_error = 0, median_width = 0, bias = 0;  // noticeable differences; the bias is the median with its sign
    double share() const { return all ? static_cast<double>(inside) / static_cast<double>(all) : 0; }
};

double median(std::vector<double> values) {
    std::erase_if(values, [](double v) { return std::isnan(v); });
    return values.empty() ? std::nan("") : standin::band_of(std::move(values)).mid;
}

Total total_of(const std::function<bool(const Measured&)>& which) {
    Total t;
    std::vector<double> errors, signed_errors, widths;
    for (const auto& j : judged()) {
        if (j.measured.set == "used" || !which(j.measured)) continue;
        ++t.all;
        t.inside += j.inside;
        errors.push_back(std::abs(j.steps.error));
        signed_errors.push_back(j.steps.error);
        widths.push_back(j.steps.width);
    }
    t.median_error = median(errors);
    t.bias = median(signed_errors);
    t.median_width = median(widths);
    return t;
}

std::string line_of(const std::string& name, const Total& t) {
    char text[160];
    std::snprintf(text, sizeof text, "%-22s %3zu of %3zu inside (%3.0f %%), band %s wide, error %s, bias %s\n", name.c_str(), t.inside,
                  t.all, 100 * t.share(), number(t.median_width).c_str(), number(t.median_error).c_str(), signed_number(t.bias).c_str());
    return text;
}

std::string totals_by(const std::function<std::string(const Measured&)>& key) {
    std::set<std::string> keys;
    for (const auto& j : judged())
        if (j.measured.set != "used") keys.insert(key(j.measured));
    std::string text;
    for (const auto& k : keys) text += line_of(k, total_of([&](const Measured& m) { return key(m) == k; }));
    return text;
}

std::string kind_of(const Measured& m) {
    if (m.quantity.rfind("powder", 0) == 0) return "colour, powder";
    if (m.quantity.rfind("raw ", 0) == 0) return "colour, raw";
    if (m.quantity.rfind("cooked ", 0) == 0 && m.quantity.size() == 8) return "colour, cooked";
    return m.quantity;
}

/// What the row is of, by the words of its formula or of its name.
std::string meat_of(const Measured& m) {
    static const auto texts = products();
    const auto product = texts.find(m.what);
    const std::string text = product == texts.end() ? m.what + ' ' + m.inputs : product->second;
    for (const std::string meat : {"beef", "chicken", "turkey", "goat", "broiler", "spinach powder", "pork"})
        if (text.find(meat) != std::string::npos) return meat == "spinach powder" ? "pork" : meat == "broiler" ? "chicken" : meat;
    return "no meat";
}

/// The way of cooking, where something cooked was measured.
std::string method_of(const Measured& m) {
    static const auto texts = products();
    const auto product = texts.find(m.what);
    if (product == texts.end() || m.quantity.rfind("cook", 0) != 0) return "not cooked";
    const auto at = product->second.find("cook: ");
    return product->second.substr(at + 6, product->second.find_first_of(" \n", at + 6) - at - 6);
}

/// What was measured, and in the heat how it was cooked; of which meat.
std::string by_method(const Measured& m) { return m.quantity + ", " + method_of(m); }
std::string by_meat(const Measured& m) { return m.quantity + ", " + meat_of(m); }

constexpr std::size_t enough_rows = 3;
constexpr double wanted_share = 0.88, wanted_of_the_sound = 0.85, wanted_of_a_meat = 0.75, wanted_bias = 1, wanted_width = 4;

bool everything(const Measured&) { return true; }
bool good(const Measured& m) { return m.support == "good"; }
bool kept_aside(const Measured& m) { return m.set == "kept aside"; }

TEST_CASE("calibration: published measurements against the bands", "[calibration]") {
    std::string table = cell("what", 33) + cell("quantity", 18) + cell("measured", 8) + cell("low", 6, true) + cell("mid", 7, true) +
                        cell("high", 7, true) + "     error  width support, set (noticeable differences)\n";
    for (const auto& j : judged()) table += line_of(j);
    const Total all = total_of(everything), sound = total_of(good), aside = total_of(kept_aside);
    table += "\n" + line_of("all", all) + totals_by([](const Measured& m) { return "support " + m.support; }) +
             totals_by([](const Measured& m) { return m.set; }) + totals_by(kind_of) +
             totals_by([](const Measured& m) { return "meat " + meat_of(m); }) +
             totals_by([](const Measured& m) { return "cooked: " + method_of(m); }) + totals_by(by_method) + totals_by(by_meat);
    std::fputs(table.c_str(), stdout);
    WARN("inside the 90 % band: " << std::lround(100 * all.share()) << " % of " << all.all << ", wanted " << 100 * wanted_share
                                  << " %; median band where support is good: " << number(sound.median_width)
                                  << " noticeable differences, wanted " << wanted_width << " or less");
    // The target is wanted_share; kept aside has its own floor, what holds today: a change that loses ground shows here.
    CHECK(all.all > 150);
    CHECK(all.share() >= wanted_share);
    CHECK(sound.share() >= wanted_of_the_sound);
    CHECK(aside.share() >= 0.8);
    CHECK(sound.median_width <= wanted_width);
    CHECK(std::abs(all.bias) <= wanted_bias);
    std::set<std::string> meats;
    for (const auto& j : judged())
        if (j.measured.set != "used" && meat_of(j.measured) != "no meat") meats.insert(meat_of(j.measured));
    for (const auto& meat : meats) {
        const Total t = total_of([&](const Measured& m) { return meat_of(m) == meat; });
        CAPTURE(meat, t.all);
        CHECK(t.share() >= wanted_of_a_meat);
        CHECK(std::abs(t.bias) <= wanted_bias);
    }
}

TEST_CASE("calibration: no quantity is off by more than a noticeable difference, by method or by meat, but for what is told",
          "[calibration]") {
    struct Told {
        double most = 0;
        bool met = false;
    };
    std::map<std::string, Told> told;
    for (const auto& c : calibration::cells_of("calibration_bias.csv")) {
        REQUIRE(c.size() == 3);
        REQUIRE_FALSE(c[2].empty());
        told[c[0]] = {std::stod(c[1]), false};
    }
    for (const auto& by : {by_method, by_meat}) {
        std::set<std::string> groups;
        for (const auto& j : judged())
            if (j.measured.set != "used") groups.insert(by(j.measured));
        for (const auto& group : groups) {
            const Total t = total_of([&](const Measured& m) { return by(m) == group; });
            if (t.all < enough_rows || std::isnan(t.bias)) continue;
            CAPTURE(group, t.all, t.bias);
            const auto known = told.find(group);
            if (known == told.end()) {
                CHECK(std::abs(t.bias) <= wanted_bias);
                continue;
            }
            known->second.met = true;
            CHECK(std::abs(t.bias) > wanted_bias);
            CHECK(std::abs(t.bias) <= known->second.most);
        }
    }
    for (const auto& [group, t] : told) {
        CAPTURE(group);
        CHECK(t.met);
    }
}

}  // namespace calibration_test
