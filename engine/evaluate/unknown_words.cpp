#include "evaluate/unknown_words.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace standin {
namespace {

struct Ending {
    std::string_view ends, what, advice;
    bool kitchen;
};

// What is known of one food, by the last words of its draw's name.
constexpr std::array endings{
    Ending{"buffer scale", "how strongly % holds its pH", "one pH reading of the mixed batch tells", true},
    Ending{"swells", "how much of its water % holds in the heat", "weigh one link made with it and one without, raw and cooked", true},
    Ending{"binding water", "how much water % holds", "soak 10 g in plenty of water, drain and weigh", true},
    Ending{"binding fat", "how much fat % holds", "only a trial batch tells", false},
    Ending{"buffer", "how strongly % holds its pH", "one pH reading of the paste tells", true},
    Ending{"ph", "the pH of %", "measure it with a meter or narrow-range strips", true},
    Ending{"titratable", "the acid in %", "read the label, or taste two lots side by side", true},
    Ending{"chlorophyll", "how green % is", "no kitchen test; the darker the leaf, the more it holds", false},
    Ending{"capsaicinoids", "how hot % is", "taste a sliver; add half first, fry a patty, adjust", true},
    Ending{"lot", "how hot this lot of % is", "taste a sliver; add half first, fry a patty, adjust", true},
    Ending{"pods", "how one pod of % differs from the next", "chop more pods together, or taste each", true},
    Ending{"fat", "how fat % is", "ask the butcher, or weigh lean and trimmed fat apart", true},
    Ending{"protein", "the protein of %", "only an analysis tells", false},
    Ending{"carbohydrate", "the make-up of %", "only an analysis tells", false},
    Ending{"ash", "the make-up of %", "only an analysis tells", false},
    Ending{"bind", "how well % binds", "mix a handful with salt and see how soon it sticks", true},
    Ending{"strength", "how strong % is", "taste it beside the fresh form", true},
    Ending{"pungency", "how sharp % is", "taste it", true},
    Ending{"sulphites", "how much sulphite % holds", "read the packet, or ask whoever dried it", true},
    Ending{"weight", "how much % really weighs", "put it on the scale", true},
};

struct Making {
    std::string_view id, what, key;
};

constexpr std::array makings{
    Making{"process.plate_mm", "the plate", "plate: 8 mm"},
    Making{"process.mixing_min", "how long it is mixed", "mixing: 2 min"},
    Making{"process.mixed_at_c", "how cold it is mixed", "mixed at: 3 C"},
    Making{"process.rest_h", "how long it rests", "rest: 18 h"},
    Making{"process.rest_at_c", "how cold it rests", "rest at: 3 C"},
    Making{"process.core_c", "how far it is cooked", "core: 71 C"},
    Making{"process.diameter_mm", "how thick it is", "diameter: 32 mm"},
};

std::string put(std::string_view pattern, const std::string& name) {
    std::string text(pattern);
    if (const auto at = text.find('%'); at != std::string::npos) text.replace(at, 1, name);
    return text;
}

}  // namespace

UnknownWords words_for(const std::string& name, const Knowledge& knowledge) {
    for (const auto& making : makings)
        if (making.id == name) return {std::string(making.what), "write it into the formula: \"" + std::string(making.key) + "\"", true};
    if (name.starts_with("fat.softens."))
        return {"how soft the fat is", "press a cold piece: does it crack (hard), dent (middling) or smear (soft)?", false};
    if (name.starts_with("validity."))
        return {"how far the models hold outside what they were made for", "only a trial batch tells", false};
    const auto space = name.find(' ');
    if (space == std::string::npos) return {"the model (" + name + ")", "only tasted and measured batches tell", false};
    const std::string owner = name.substr(0, space);
    if (const auto* preparation = knowledge.preparation(owner)) {
        const std::string what = name.substr(name.rfind(' ') + 1);
        const bool weighed = what == "yield";
        return {"what being " + preparation->names.front() + " does to " + (weighed ? "its weight" : "its " + what),
                weighed ? "weigh before and after" : "only a trial batch tells", weighed};
    }
    const auto* ingredient = knowledge.ingredient(owner);
    const std::string food = ingredient ? ingredient->names.front() : owner;  // a species has no record of its own
    for (const auto& ending : endings)
        if (name.substr(space + 1) == ending.ends) return {put(ending.what, food), std::string(ending.advice), ending.kitchen};
    return {food + ": " + name.substr(space + 1), "only a trial batch tells", false};
}

}  // namespace standin
