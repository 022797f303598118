// How a variant will differ at the table.
#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "adapt/explain.hpp"

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

std::string table_sentence(const Distance& distance, const Compared& c) {
    struct Told {
        double size;
        std::string text;
    };
    std::vector<Told> told;
    const auto tell = [&](std::string_view what, double value) {
        const auto* says = std::find_if(words.begin(), words.end(), [&](const Says& s) { return s.what == what; });
        if (says != words.end() && std::abs(value) >= 0.3)
            told.push_back(
                {std::abs(value), std::string(degree(std::abs(value))) + " " + std::string(value > 0 ? says->more : says->less)});
    };
    for (const auto& residual : distance.residuals(c.variant, c.after)) tell(residual.what, residual.change);
    // What a want moved is left out of the residuals; at the table it is the first thing to be noticed.
    for (const auto& goal : distance.goals()) {
        if (!distance.wanted(goal.property) || !(distance.step(goal.property) > 0)) continue;
        const double moved = (c.after.properties[goal.property] - c.before.properties[goal.property]) / distance.step(goal.property);
        const std::string_view what = goal.property == Property::heat_mg_kg         ? "heat"
                                      : goal.property == Property::bind             ? "bind"
                                      : goal.property == Property::firmness         ? "firmness"
                                      : goal.property == Property::sourness_mmol_kg ? "sourness"
                                      : goal.property == Property::fat_pct          ? "fat"
                                      : goal.property == Property::salt_pct         ? "salt"
                                      : goal.property == Property::cook_loss_pct    ? "cook loss"
                                      : goal.property == Property::greenness        ? "green"
                                                                                    : "";
        tell(what, moved);
    }
    std::stable_sort(told.begin(), told.end(), [](const Told& a, const Told& b) { return a.size > b.size; });
    std::string unlike = c.unlike.empty() ? "" : "Not a close match: " + c.unlike + "; taste before you make more.";
    if (!c.missed.empty()) unlike = "To be missed: " + c.missed + "." + (unlike.empty() ? "" : " " + unlike);
    if (told.empty()) return unlike.empty() ? "Nobody at the table should notice." : "Much the same in what can be worked out. " + unlike;
    std::string sentence;
    for (std::size_t i = 0; i < std::min<std::size_t>(told.size(), 4); ++i) sentence += (i ? ", " : "") + told[i].text;
    return sentence + "." + (unlike.empty() ? "" : " " + unlike);
}

}  // namespace standin
