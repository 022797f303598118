// What an uncertain quantity is called at the bench, and how a maker could come to know it.
#include <algorithm>
#include <array>

#include "narrate/words.hpp"
#include "standin/narrate.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

struct QuantityWords {
    std::string_view of, what, advice;
};

constexpr std::string_view trial = "only a trial batch tells", analysis = "only an analysis tells";

// What is known of one food, `Reason::role`.
constexpr auto of_food_words = std::to_array<QuantityWords>({
    {"buffer scale", "how strongly % holds its pH", "one pH reading of the mixed batch tells"},
    {"swells", "how much of its water % holds in the heat", "weigh one link made with it and one without, raw and cooked"},
    {"binding water", "how much water % holds", "soak 10 g in plenty of water, drain and weigh"},
    {"binding fat", "how much fat % holds", trial},
    {"buffer", "how strongly % holds its pH", "one pH reading of the paste tells"},
    {"ph", "the pH of %", "measure it with a meter or narrow-range strips"},
    {"titratable", "the acid in %", "read the label, or taste two lots side by side"},
    {"chlorophyll", "how green % is", "no kitchen test; the darker the leaf, the more it holds"},
    {"capsaicinoids", "how hot % is", "taste a sliver; add half first, fry a patty, adjust"},
    {"lot", "how hot this lot of % is", "taste a sliver; add half first, fry a patty, adjust"},
    {"pods", "how one pod of % differs from the next", "chop more pods together, or taste each"},
    {"fat", "how fat % is", "ask the butcher, or weigh lean and trimmed fat apart"},
    {"protein", "the protein of %", analysis},
    {"carbohydrate", "the make-up of %", analysis},
    {"ash", "the make-up of %", analysis},
    {"bind", "how well % binds", "mix a handful with salt and see how soon it sticks"},
    {"strength", "how strong % is", "taste it beside the fresh form"},
    {"pungency", "how sharp % is", "taste it"},
    {"sulphites", "how much sulphite % holds", "read the packet, or ask whoever dried it"},
    {"weight", "how much % really weighs", "put it on the scale"},
});

// What the formula may say of the making, `Reason::about`; the advice is the line to write.
constexpr auto of_making = std::to_array<QuantityWords>({
    {"process.plate_mm", "the plate", "plate: 8 mm"},
    {"process.mixing_min", "how long it is mixed", "mixing: 2 min"},
    {"process.mixed_at_c", "how cold it is mixed", "mixed at: 3 C"},
    {"process.rest_h", "how long it rests", "rest: 18 h"},
    {"process.rest_at_c", "how cold it rests", "rest at: 3 C"},
    {"process.core_c", "how far it is cooked", "core: 71 C"},
    {"process.diameter_mm", "how thick it is", "diameter: 32 mm"},
});

template <std::size_t N>
const QuantityWords* found(const std::array<QuantityWords, N>& all, std::string_view of) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const QuantityWords& one) { return one.of == of; });
    return at == all.end() ? nullptr : &*at;
}

std::string put(std::string_view pattern, const std::string& name) {
    std::string text(pattern);
    if (const auto at = text.find('%'); at != std::string::npos) text.replace(at, 1, name);
    return text;
}

std::string first_food(const Reason& r) { return r.foods.empty() ? std::string("it") : r.foods.front(); }

// What a maker can measure, by what it is of: `Reason::about`.
std::string measured_words(const Reason& r) {
    const std::string of = first_food(r);
    if (r.about == "fat") return "the fat of the " + of;
    if (r.about == "ph") return "the pH of the " + of;
    if (r.about == "acid") return "the strength of the " + of;
    if (r.about == "heat") return "how hot this year's " + of + " is, by tasting";
    if (r.about == "weight") return "the weight of a " + (r.role.empty() ? of : r.role + " of " + of);
    if (r.about == "batch-ph") return "the pH of the mixed batch";
    if (r.about == "pan-fat") return "the fat that a patty leaves in the pan, poured off and weighed, of its raw weight";
    if (r.about == "raw-lightness") return "how light the raw mass is (L* of a colour meter)";
    if (r.about == "cooked-lightness") return "how light a cooked one is inside (L* of a colour meter)";
    return r.about == "pan-loss" ? "what a patty loses in the pan, weighed before and after"
                                 : "what one loses on cooking, weighed before and after";
}

}  // namespace

std::string unknown_words(const Reason& r) {
    if (r.kind == ReasonKind::worth_measuring) return measured_words(r);
    if (const auto* making = found(of_making, r.about)) return std::string(making->what);
    if (r.about.starts_with("fat.softens.")) return "how soft the fat is";
    if (r.about.starts_with("bind.enzyme.of.")) return "how fast the raw fruit digests meat";
    if (r.about.starts_with("validity.")) return "how far the models hold outside what they were made for";
    if (r.foods.empty()) return "the model (" + r.about + ")";
    if (r.kind == ReasonKind::effect_not_known)
        return "what being " + first_food(r) + " does to its " + (r.role == "yield" ? "weight" : r.role);
    const auto* quantity = found(of_food_words, r.role);
    return quantity ? put(quantity->what, first_food(r)) : first_food(r) + ": " + r.role;
}

std::string how_to_know(const Reason& r, Units units) {
    if (const auto* making = found(of_making, r.about)) return "write it into the formula: \"" + std::string(making->advice) + "\"";
    if (r.about.starts_with("fat.softens.")) return "press a cold piece: does it crack (hard), dent (middling) or smear (soft)?";
    if (r.about.starts_with("validity.")) return std::string(trial);
    if (r.foods.empty()) return "only tasted and measured batches tell";
    if (r.kind == ReasonKind::effect_not_known) return r.role == "yield" ? std::string("weigh before and after") : std::string(trial);
    const auto* quantity = found(of_food_words, r.role);
    return quantity ? in_units(std::string(quantity->advice), units) : std::string(trial);
}

}  // namespace standin
