#include "render/plan_words.hpp"

#include "render/kilos.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "words.hpp"

namespace standin::cli {

std::string answer_first(const PlanAnswer& a, Units units) {
    std::vector<std::string> made, none;
    for (const auto& s : a.sausages)
        (s.made_g > 0 ? made : none).push_back(s.made_g > 0 ? kilos(s.made_g, units) + " " + s.title : s.title);
    if (made.empty()) return "The list makes none of these sausages.";
    return "The list makes " + listed(made) + (none.empty() ? "." : "; nothing is left for " + listed(none) + ".");
}

std::string way_of(const PlannedSausage& s, const Engine& engine, Units units) {
    if (!s.fits && !s.conflict.empty()) return "does not go: " + listed(in_full(s.conflict, units));
    if (s.edits.empty()) return s.distance > 0 ? in_words(s.nearness) : "as written";
    std::string text;
    for (const auto& e : s.edits)
        text += (text.empty() ? "" : "; ") + (s.made_g > 0 ? in_brief(e, engine) : in_brief_with_weight(e, engine, units));
    return in_words(s.nearness) + " (" + number(s.distance, 1) + "): " + text;
}

std::string ends_with(const PlannedSausage& s, Units units) {
    if (!s.limiting) return "nothing on the list runs out";
    const std::string much = s.limiting->stock_g > 0 ? kilos(s.alone_g, units) + ", then the " + s.limiting->name + " is gone"
                                                     : "none: there is no " + s.limiting->name;
    return much + " (" + about(s.limiting->a_kilo_g, units) + " to the kilo)";
}

std::string falls_short(const PlannedSausage& s, Units units) {
    constexpr double a_step = 51;  // g; what rounding down may take
    if (!s.asked_g || s.made_g + a_step >= *s.asked_g) return "";
    return s.title + ": " + kilos(*s.asked_g, units) + " asked, " + (s.made_g > 0 ? kilos(s.made_g, units) : std::string("none")) +
           " to be had" + (s.limiting ? ": not enough " + s.limiting->name : std::string()) + ".";
}

std::string left_over(const LeftOver& left, Units units) {
    return about(left.grams, units) + " of " + about(left.of_g, units) + " " + left.name +
           (left.storage.empty() ? "" : ": keeps " + left.storage) +
           (left.thawed ? "; thawed once, so cook it, and do not freeze it raw again" : "");
}

std::string worth(const WorthBuying& b, Units units) {
    std::string text = about(b.need_g, units) + " " + b.name + " more";
    constexpr double worth_telling = 100;  // g
    if (b.more_g >= worth_telling) text += ": " + kilos(b.more_g, units) + " more sausage in all";
    else text += ": no more sausage, but nearer to what was written";
    return text + (b.makes.empty() ? "" : ", " + listed(b.makes) + " with it");
}

PlanLists lists_of(const PlanAnswer& a, Units units) {
    PlanLists lists;
    for (const auto& s : a.sausages)
        if (auto says = falls_short(s, units); !says.empty()) lists.shortfalls.push_back(std::move(says));
    for (const auto& l : a.left) lists.left.push_back(left_over(l, units));
    for (const auto& b : a.buy_first) lists.helps.push_back(worth(b, units));
    for (const auto& p : a.presumed) lists.presumed.push_back(p.says);
    return lists;
}

}  // namespace standin::cli
