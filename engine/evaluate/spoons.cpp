#include "evaluate/spoons.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace standin {
namespace {

constexpr double light = 20;           // g; more of anything is weighed; judgement, as the rest
constexpr double to_a_tablespoon = 3;  // teaspoons
constexpr double pinch = 0.1;          // of a teaspoon
constexpr double finest = 0.5;         // teaspoons, from which quarters do; below it eighths

// "1 1/4", "3/8"
std::string fraction(double value, int parts) {
    const auto all = static_cast<long>(std::lround(value * parts));
    long whole = all / parts, rest = all % parts;
    long of = parts;
    while (rest && rest % 2 == 0) {
        rest /= 2;
        of /= 2;
    }
    std::string text = whole ? std::to_string(whole) : "";
    if (rest) text += (text.empty() ? "" : " ") + std::to_string(rest) + "/" + std::to_string(of);
    return text;
}

// "1/2 pod", "1 1/2 pods", of a chile that is counted; empty where no pod weight is known.
std::string in_pods(const Ingredient& food, double grams) {
    struct Part {
        double from;
        const char* says;
    };
    constexpr std::array<Part, 7> parts{{{0.06, "1/16 pod"},
                                         {0.15, "1/8 pod"},
                                         {0.29, "1/4 pod"},
                                         {0.42, "1/3 pod"},
                                         {0.58, "1/2 pod"},
                                         {0.71, "2/3 pod"},
                                         {0.87, "3/4 pod"}}};
    const auto piece = std::find_if(food.measures.begin(), food.measures.end(),
                                    [](const MeasureRecord& m) { return m.measure == "piece" || m.measure == "pod"; });
    if (piece == food.measures.end() || !(piece->grams.mid > 0)) return {};
    const double pods = grams / piece->grams.mid;
    for (const auto& part : parts)
        if (pods < part.from) return part.says;
    const std::string count = fraction(std::max(1.0, pods), 2);
    return count + (count == "1" ? " pod" : " pods");
}

}  // namespace

std::string in_spoons(const Ingredient& food, double grams) {
    if (grams > 0 && grams <= light && food.tissue == Tissue::chile_flesh) return in_pods(food, grams);
    if (!(grams > 0) || grams > light || food.tissue == Tissue::bulb) return {};  // nobody spoons whole cloves
    const MeasureRecord* spoon = nullptr;
    for (const auto& measure : food.measures)
        if (measure.measure == "tsp" && (!spoon || (measure.note.empty() && !spoon->note.empty()))) spoon = &measure;
    if (!spoon || !(spoon->grams.mid > 0)) return {};
    const double teaspoons = grams / spoon->grams.mid;
    const std::string how = spoon->note.empty() ? "" : " " + spoon->note;
    if (teaspoons < pinch) return "a pinch" + how;
    if (teaspoons < finest) return fraction(std::max(teaspoons, 0.125), 8) + " tsp" + how;
    if (teaspoons < to_a_tablespoon - 0.125) return fraction(teaspoons, 4) + " tsp" + how;
    // In halves of a tablespoon, and what lies between them with a teaspoon or half of one beside it.
    const double halves = std::round(2 * teaspoons) / 2, over = std::fmod(halves, to_a_tablespoon);
    const bool plain = over == 0 || 2 * over == to_a_tablespoon;
    if (plain) return fraction(halves / to_a_tablespoon, 2) + " tbsp" + how;
    return fraction((halves - over) / to_a_tablespoon, 1) + " tbsp " + fraction(over, 2) + " tsp" + how;
}

}  // namespace standin
