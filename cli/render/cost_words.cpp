#include "render/cost_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "render/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

constexpr int cents = 2;
constexpr double grams_a_pound = 453.59237;  // exact: international pound
constexpr double grams_a_kilo = 1000;

// A sign stands before the number, a word behind it.
bool is_sign(const std::string& currency) {
    constexpr std::array<const char*, 6> signs{"$", "\xc2\xa3", "\xc2\xa5", "US$", "A$", "C$"};
    for (const char* sign : signs)
        if (currency == sign) return true;
    return false;
}

Band a_pound(const Band& kilo) {
    const double share = grams_a_pound / grams_a_kilo;
    return {kilo.low * share, kilo.mid * share, kilo.high * share};
}

std::string unpriced_sentence(const std::vector<std::string>& names) {
    constexpr std::size_t few = 6;
    std::vector<std::string> shown(names.begin(), names.begin() + static_cast<std::ptrdiff_t>(std::min(few, names.size())));
    if (names.size() > few) shown.push_back(std::to_string(names.size() - few) + " more");
    return "No price for " + listed(shown);
}

}  // namespace

std::string money(double amount, const std::string& currency) {
    const std::string digits = number(std::abs(amount), cents);
    const std::string sign = amount < 0 && digits != number(0, cents) ? "-" : "";
    if (currency.empty()) return sign + digits;
    return is_sign(currency) ? sign + currency + digits : sign + digits + " " + currency;
}

std::string money(const Band& band, const std::string& currency) {
    const std::string low = number(band.low, cents), high = number(band.high, cents);
    return money(band.mid, currency) + (low == high ? "" : " (" + low + "-" + high + ")");
}

std::string cost_sentence(const Cost& cost, Units units) {
    if (cost.lines.empty()) return "Cost: " + cost.list + " has no price for anything in it. " + unpriced_sentence(cost.unpriced) + ".";
    const auto each = [&](const Band& kilo, const char* how) {
        const std::string metric = money(kilo, cost.currency) + " a kilo " + how,
                          pound = money(a_pound(kilo), cost.currency) + " a pound " + how;
        return units == Units::metric ? metric : units == Units::us ? pound : metric + " / " + pound;
    };
    std::string text = std::string("Cost") + (cost.unpriced.empty() ? "" : ", at least") + ": " + each(cost.raw_kg, "raw") + ", " +
                       each(cost.cooked_kg, "cooked") + ", " + money(cost.piece_money, cost.currency) + " a " + cost.piece + " of " +
                       about(cost.piece_g, units) + "; the batch " + money(cost.batch, cost.currency) + ".";
    if (!cost.unpriced.empty()) text += " " + unpriced_sentence(cost.unpriced) + ".";
    return text;
}

std::string cost_sentence(const CostChange& change, Units units) {
    const bool us = units == Units::us;
    const Band by = us ? a_pound(change.raw_kg) : change.raw_kg;
    const std::string per = us ? " a pound" : " a kilo";
    std::string text;
    if (number(std::abs(by.mid), cents) == number(0, cents)) text = "costs the same" + per;
    else if (by.mid > 0) text = "costs " + money(by, change.currency) + " more" + per;
    else text = "saves " + money(Band{-by.high, -by.mid, -by.low}, change.currency) + per;
    if (change.unpriced.empty()) return capital(text) + ".";
    return unpriced_sentence(change.unpriced) + ": the rest " + text + ".";
}

}  // namespace standin::cli
