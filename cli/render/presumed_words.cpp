#include "render/presumed_words.hpp"

#include <algorithm>

#include "words.hpp"

namespace standin::cli {
namespace {

// What stands on one side: there, or missing.
struct Side {
    std::vector<std::string> foods;
    std::string first{};  // to add to the list where it is wrong
    bool dry = false;     // whatever else the formula has that keeps dry is in it

    bool empty() const { return foods.empty() && !dry; }
};

bool keeps_dry(const Presumption& one) { return one.reason.role == "dry"; }

// "salmon (it has trout)"
std::string beside_kin(const std::string& name, const std::vector<std::string>& foods, PresumedAs as) {
    constexpr std::size_t most = 2;
    if (foods.size() < 2 || as == PresumedAs::by_name_what_matters) return name;
    const std::vector<std::string> kin(foods.begin() + 1, foods.begin() + static_cast<std::ptrdiff_t>(std::min(foods.size(), most + 1)));
    return name + " (it has " + listed(kin) + ")";
}

void put(Side& side, const Presumption& one, const Engine& engine, PresumedAs as) {
    if (side.first.empty()) side.first = one.add;
    if (as != PresumedAs::with_kin && keeps_dry(one)) side.dry = true;
    else side.foods.push_back(beside_kin(engine.name_of(one.ingredient), one.reason.foods, as));
}

void add_sentence(std::string& text, const std::string& more) { text += (text.empty() ? "" : " ") + more; }

std::string all_of(const Side& side) {
    std::vector<std::string> foods = side.foods;
    if (side.dry) foods.emplace_back("its spices and other dry goods");
    return listed(foods);
}

}  // namespace

std::vector<std::string> presumed_in_words(const AdaptAnswer& answer) {
    std::vector<std::string> all;
    for (const auto& one : answer.presumed)
        all.push_back(one.says + (one.matters && !one.add.empty() ? ". If not, add to the list: " + one.add : ""));
    return all;
}

std::string presumed_sentence(const AdaptAnswer& a, const Engine& engine, PresumedAs as) {
    std::string text;
    Side there, missing;
    // Those first that the list has kin of: they are the ones that may well not be there.
    auto all = a.presumed;
    std::stable_sort(all.begin(), all.end(), [](const Presumption& one, const Presumption& other) {
        const auto doubt = [](const Presumption& p) { return p.reason.kind == ReasonKind::presumed_there && p.reason.foods.size() > 1; };
        return doubt(one) && !doubt(other);
    });
    for (const auto& one : all) {
        if (one.reason.kind == ReasonKind::presumed_missing) put(missing, one, engine, as);
        else if (one.matters && !one.says.empty())
            add_sentence(text, capital(one.says) + (one.add.empty() ? "." : " (if not, add `" + one.add + "`)."));
        else if (one.reason.kind == ReasonKind::taken_for_enough) add_sentence(text, capital(one.says) + ".");
        else if (!one.ingredient.empty()) put(one.on_hand ? there : missing, one, engine, as);
    }
    if (!missing.empty()) add_sentence(text, "Taken to be missing: " + all_of(missing) + "; if not, add `" + missing.first + "`.");
    if (!there.empty())
        add_sentence(text, "Taken to be there, though your list does not name it: " + all_of(there) + ". If not, add `" + there.first +
                               "`, or `nothing else`.");
    return text;
}

}  // namespace standin::cli
