#include "saved_formula.hpp"

#include <array>
#include <cmath>
#include <cstdlib>
#include <ctime>
#include <nlohmann/json.hpp>

#include "render/units.hpp"
#include "standin/quantity_text.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

// By the clock, or by SOURCE_DATE_EPOCH where the same file is to come out again.
std::string today() {
    std::time_t now = std::time(nullptr);
    if (const char* fixed = std::getenv("SOURCE_DATE_EPOCH")) now = static_cast<std::time_t>(std::strtoll(fixed, nullptr, 10));
    std::tm day{};
    localtime_r(&now, &day);
    std::array<char, 16> text{};
    return {text.data(), std::strftime(text.data(), text.size(), "%Y-%m-%d", &day)};
}

// Weights that the advisor set, as a maker with an ounce scale would write them.
void in_ounces(Formula& formula) {
    for (auto& line : formula.lines) {
        if (!line.written.empty()) continue;
        const double step = line.grams.mid < 2 * grams_an_ounce ? 0.01 : 0.1,
                     ounces = std::round(line.grams.mid / grams_an_ounce / step) * step;
        if (!(ounces > 0)) continue;
        line.written = trimmed_number(ounces, 2) + " oz";
        const double grams = ounces * grams_an_ounce;
        line.grams = {grams, grams, grams};
    }
}

bool ends_with(const std::string& text, std::string_view end) {
    return text.size() >= end.size() && text.compare(text.size() - end.size(), end.size(), end) == 0;
}

}  // namespace

Result<std::size_t> chosen_of(const Call& call, std::size_t there, Error nothing, const std::string& kind) {
    const std::size_t number = call.variant.value_or(1);
    if (there == 0) return Failure(std::move(nothing));
    const std::string one = kind.empty() ? "" : " " + kind, several = kind.empty() ? "" : one + "s";
    if (number > there)
        return failure(Trouble::usage, "--variant " + std::to_string(number) + ": there " +
                                           (there == 1 ? "is only one" + one : "are only " + std::to_string(there) + several));
    return number - 1;
}

std::string saved_formula(Formula formula, Units units, const std::string& path, const Engine& engine) {
    formula.date = today();
    if (units == Units::us) in_ounces(formula);
    return ends_with(path, ".json") ? engine.formula_json(formula) : engine.formula_text(formula, Amounts::as_written);
}

Result<std::string> formula_within(std::string text, std::size_t which, const std::string& name) {
    const auto start = text.find_first_not_of(" \t\r\n");
    if (start == std::string::npos || text[start] != '{') return text;
    if (text.find("\"variants\"") == std::string::npos && text.find("\"stand_ins\"") == std::string::npos) return text;
    const auto answer = nlohmann::json::parse(text, nullptr, false);
    if (!answer.is_object()) return text;
    for (const char* list : {"variants", "stand_ins"}) {
        if (!answer.contains(list) || !answer[list].is_array()) continue;
        const auto& all = answer[list];
        if (all.empty()) return failure(Trouble::unmet, "this answer holds no formula: nothing was found that does what was asked", name);
        if (which < 1 || which > all.size() || !all[which - 1].contains("formula"))
            return failure(
                Trouble::usage,
                "this answer holds " + std::to_string(all.size()) + " formulas; number " + std::to_string(which) + " is none of them",
                name);
        return all[which - 1]["formula"].dump();
    }
    return text;
}

}  // namespace standin::cli
