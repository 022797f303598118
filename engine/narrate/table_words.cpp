// How a variant differs at the table.
#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "narrate/words.hpp"

namespace standin {
namespace {

struct Says {
    std::string_view what, more, less;
};

// How a residual reads at the table. What does not taste of anything by itself (water, protein, pH) stays out.
constexpr std::array<Says, 15> words{{
    {"salt", "saltier", "less salty"},
    {"sourness", "sharper", "less sharp"},
    {"fat", "richer", "leaner"},
    {"bind", "better bound", "looser"},
    {"firmness", "firmer", "softer"},
    {"cook loss", "drier from the pan", "juicier from the pan"},
    {"heat", "hotter", "milder"},
    {"green", "greener", "less green"},
    {"colour, rested", "different in colour", "different in colour"},
    {"colour, cooked", "different in colour when cooked", "different in colour when cooked"},
    {"aroma", "different in aroma", "different in aroma"},
    {"nuts", "nuttier", "less nutty"},
    {"herbs", "herbier", "less herby"},
    {"alliums", "stronger of garlic and onion", "weaker of garlic and onion"},
    {"spices", "more spiced", "less spiced"},
}};

std::string_view degree(double size) { return size < 0.5 ? "barely" : size < 1 ? "a little" : size < 2 ? "noticeably" : "clearly"; }

}  // namespace

std::string table_words(const Reason& r) {
    constexpr double worth_telling = 0.3;
    constexpr std::size_t most_told = 4;
    struct Told {
        double size;
        std::string text;
    };
    std::vector<Told> told;
    for (const auto& f : r.figures) {
        const auto* says = std::find_if(words.begin(), words.end(), [&](const Says& s) { return s.what == f.what; });
        const double size = std::abs(f.after);
        if (says != words.end() && size >= worth_telling)
            told.push_back({size, std::string(degree(size)) + " " + std::string(f.after > 0 ? says->more : says->less)});
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
