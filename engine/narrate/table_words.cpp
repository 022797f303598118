// How a variant differs at the table.
#include <algorithm>
#include <cmath>
#include <string_view>

#include "narrate/directions.hpp"
#include "narrate/words.hpp"

namespace standin {
namespace {

// A want of one noticeable step is met a hair before it: that hair is no reason to call it little.
constexpr double one_step = 0.9;

std::string_view degree(double size) { return size < 0.5 ? "barely" : size < one_step ? "a little" : size < 2 ? "noticeably" : "clearly"; }

}  // namespace

std::string table_words(const Reason& r) {
    constexpr double worth_telling = 0.3;
    constexpr std::size_t most_told = 4;
    struct Told {
        double size;
        std::string text;
    };
    std::vector<Told> told;
    // Colour once, by the larger difference.
    const auto of = [&](std::string_view what) {
        const Figure* f = figure(r, what);
        return f ? std::abs(f->after) : 0;
    };
    const double rested = of("colour, rested"), cooked = of("colour, cooked");
    const bool both = std::min(rested, cooked) >= worth_telling;
    if (both)
        told.push_back({std::max(rested, cooked), std::string(degree(std::max(rested, cooked))) + " different in colour, raw and cooked"});
    for (const auto& f : r.figures) {
        if (both && f.what.rfind("colour", 0) == 0) continue;
        const std::string_view says = direction(f.what, f.after);
        const double size = std::abs(f.after);
        if (!says.empty() && size >= worth_telling) told.push_back({size, std::string(degree(size)) + " " + std::string(says)});
    }
    std::stable_sort(told.begin(), told.end(), [](const Told& a, const Told& b) { return a.size > b.size; });
    std::string unlike = r.note.empty() ? "" : "Least alike: " + r.note + "; taste before you make more.";
    if (!r.foods.empty()) unlike = "To be missed: " + r.foods.front() + "." + (unlike.empty() ? "" : " " + unlike);
    if (told.empty()) return unlike.empty() ? "Nobody at the table should notice." : "Much the same in what can be worked out. " + unlike;
    std::string sentence;
    for (std::size_t i = 0; i < std::min(told.size(), most_told); ++i) sentence += (i ? ", " : "") + told[i].text;
    return sentence + "." + (unlike.empty() ? "" : " " + unlike);
}

}  // namespace standin
