#include <cmath>
#include <numeric>

#include "standin/number_text.hpp"
#include "standin/quantity_text.hpp"

namespace standin {

std::string ounces_text(double grams) {
    constexpr double ounces_a_pound = 16, fine_below = 2;
    const double oz = grams / grams_an_ounce;
    if (oz < fine_below) return fixed_text(oz, 2) + " oz";
    const double tenths = std::round(oz * 10) / 10;
    if (tenths < ounces_a_pound) return trimmed_text(tenths, 1) + " oz";
    const double pounds = std::floor(tenths / ounces_a_pound), rest = tenths - pounds * ounces_a_pound;
    return fixed_text(pounds, 0) + " lb" + (rest >= 0.05 ? " " + trimmed_text(rest, 1) + " oz" : "");
}

std::string inches_text(double mm) {
    constexpr double mm_an_inch = 25.4;
    constexpr int parts = 16;
    const int sixteenths = static_cast<int>(std::lround(mm / mm_an_inch * parts));
    const int whole = sixteenths / parts, rest = sixteenths % parts;
    if (sixteenths == 0) return "under 1/16 in";
    std::string text = whole > 0 ? std::to_string(whole) : "";
    if (rest > 0) {
        const int common = std::gcd(rest, parts);
        text += (text.empty() ? "" : " ") + std::to_string(rest / common) + "/" + std::to_string(parts / common);
    }
    return text + " in";
}

}  // namespace standin
