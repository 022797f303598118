// The steps of a bench sheet in words: what, how and why of each task, and what is to be minded besides.
#include <algorithm>
#include <array>
#include <cctype>

#include "core/words.hpp"
#include "narrate/words.hpp"
#include "standin/narrate.hpp"
#include "standin/temperature_text.hpp"

namespace standin {
namespace {

struct TaskWords {
    std::string_view id, what, how, why;
};

constexpr std::string_view tacky = "Dissolved protein is the glue; cold keeps the fat from smearing.";
constexpr std::string_view made = "The glue is made; more kneading only warms it.";
constexpr std::string_view salting =
    "Knead salt and dry seasoning into the cold meat until it is tacky: a lump sticks to an upturned palm.";
constexpr std::string_view even = "Even pieces reach their core together.";

// In the order of BenchTask.
constexpr std::array task_words = std::to_array<TaskWords>({
    {"preparation", "", "", ""},
    {"weigh", "trim and weigh out", "Cut away what is damaged, wash and dry the leaves; weigh every line and tick it off.",
     "The weights are of what goes in."},
    {"shell", "shell", "Take off head and shell, draw out the dark gut line, pat dry; back on ice.",
     "Shell breaks teeth, and the gut is gritty."},
    {"soak-casing", "soak the casing",
     "Rinse off the salt, run water through the inside, leave it in lukewarm water until soft and keep it wet.",
     "Stiff or salty it tears on the horn."},
    {"chill", "chill",
     "Meat and fat in strips, or flat where it is minced, spread out in the freezer until stiff at the edges. Bowl, grinder parts, paste "
     "and liquids go in the cold "
     "too.",
     "Cold fat is cut, warm fat smears and runs out in the pan."},
    {"grind", "grind", "Once, through the plate named, lean and fat together, into the cold bowl. Stop and chill when it warms.",
     "A sharp cold cut keeps lean and fat apart; a warm one smears them."},
    {"blend", "blend the paste",
     "As fine as you like the colour spread. No more liquid than the blade needs, taken from the formula's own. Back into the cold.",
     "Blended just before mixing it keeps its green; warm it would warm the meat."},
    {"salt-meat", "salt the meat", salting, "Salt draws out the protein that glues the mass, before water and acid get in its way."},
    {"work-in", "work in paste and liquid", "Add the cold paste, what was cut by hand, and the cold liquid; work only until even.", made},
    {"work-in-soaked", "work in paste, liquid and binder",
     "Stir the dry binder into the cold liquid and let it soak. Add it with the cold paste and what was cut by hand; work only until even.",
     "Soaked before it goes in it draws no water from the meat. The glue is made; more kneading only warms it."},
    {"acid-last", "acid last", "Put the cold acid over the mass by and by, fold it through and stop.",
     "Acid that meets the meat before the salt keeps its protein from dissolving."},
    {"acid-first", "acid first, as written", "Turn the cold meat in the cold acid.", "The formula asks for it; it costs bind."},
    {"mix-the-rest", "mix", "Add everything else cold and mix until the mass is tacky and even.", tacky},
    {"mix-all", "mix", "Everything into the bowl, cold; mix until the mass is tacky and even.", tacky},
    {"taste", "fry a patty and taste",
     "Fry a small flat patty through, measure it, then taste for salt, heat and sharpness, and put the mass right now. Never taste it raw.",
     "Now it can still be mended."},
    {"stuff", "stuff", "Fill the casings firmly, without air, twist off and prick the bubbles.",
     "Air pockets hold fat and juice and burst in the pan."},
    {"shape", "shape, or leave loose",
     "Wet hands, even patties a little wider than they are to end; or leave it loose, pressed flat under a cover.", even},
    {"rest", "rest cold", "Covered, shallow, in the coldest part of the refrigerator.",
     "Salt evens out and the bind sets; the green fades a little with every day."},
    {"cook", "cook to the core", "", "The thermometer decides: green mass keeps a raw look, or a done one, whatever is inside."},
    {"chill-minced", "chill", "Spread flat in the freezer until stiff at the edges. Bowl, paste and liquids go in the cold too.",
     "Cold fat stays in bits, warm fat smears and runs out in the pan."},
    {"blend-sour", "blend the sour fruit",
     "By itself, to a pulp; strain out pips and tough skins. Back into the cold, apart from the leaves: it goes in last.",
     "Acid that lies on the leaf turns it olive, and before the salt it keeps the meat from binding."},
    {"at-the-plate", "sauce for the plate", "", "Acid that is not in the mass cannot loosen it."},
    {"cut-small", "chop what is fresh",
     "By knife: herbs and leaves fine, garlic and ginger to a pulp, chiles and vegetables small, nuts and dried fruit coarse. Into the "
     "cold, "
     "kept apart from the meat until it is mixed.",
     "So little makes no paste that a blade could catch, and a knife keeps it from turning dark."},
});
static_assert(task_words.size() == static_cast<std::size_t>(BenchTask::cut_small) + 1, "words for each task, in their order");

std::string_view cooked_so(Cook cook) {
    switch (cook) {
        case Cook::pan:
            return "In a pan over middling heat, turned often; measure in the middle of the thickest.";
        case Cook::grill:
            return "On the grill beside the fiercest heat, turned often; measure in the middle of the thickest.";
        case Cook::oven:
            return "In the oven, turned once; measure in the middle of the thickest.";
        case Cook::loose:
            return "Loose in a wide pan over middling heat, broken up and turned; measure in the middle of the largest piece.";
        case Cook::poach:
            return "In water below the boil; measure in the middle of the thickest.";
    }
    return "";
}

std::string asked_of_it(const Reason& r) {
    std::string text = (r.foods.empty() ? "" : listed(r.foods) + ": ") + r.note;
    if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return with_stop(text);
}

bool comes_first(ReasonKind kind) { return kind == ReasonKind::seeds_first || kind == ReasonKind::rests_too_long; }

// Who writes a minute wants a loose bite: nobody kneads that until it is tacky.
std::string_view mixed_briefly(const SheetStep& step) {
    constexpr double brief_min = 1.5;
    if (!step.said || !step.minutes || *step.minutes > brief_min) return {};
    if (step.task == BenchTask::salt_meat)
        return "Turn salt and dry seasoning into the cold meat, no longer than written: it is to hold together, not to be tacky.";
    if (step.task == BenchTask::mix_all || step.task == BenchTask::mix_the_rest)
        return "Mix all of it cold, no longer than written: it is to hold together and be even, not to be tacky.";
    return {};
}

void add(std::string& text, std::string_view more) { text += (text.empty() || more.empty() ? "" : " ") + std::string(more); }

}  // namespace

std::string_view word(BenchTask task) { return task_words[static_cast<std::size_t>(task)].id; }

std::string beside_step_words(const Reason& r, Units units) {
    const double number = r.figures.empty() ? 0 : r.figures.front().after;
    switch (r.kind) {
        case ReasonKind::own_board:
            return "Raw meat has a board of its own; after it wash hands, board and knife in hot, soapy water.";
        case ReasonKind::not_rinsed:
            return "Do not rinse raw poultry.";
        case ReasonKind::gloves_for:
            return "Gloves on for the " + listed(r.foods) + ".";
        case ReasonKind::seeds_first:
            return "Seeds and nuts first, then the rest.";
        case ReasonKind::rests_too_long:
            return "The formula says " + shown_hours(number) + "; raw it does not keep that long: cook it by then, or freeze it.";
        case ReasonKind::done_at:
            return "It is done at " + core_temperature_text(number, r.figures.size() > 1 ? r.figures[1].after : 0) + ".";
        case ReasonKind::asked_of_it:
            return in_units(asked_of_it(r), units);
        default:
            return r.note;
    }
}

SheetStep told_in(SheetStep step, Units units) {
    const TaskWords& words = task_words[static_cast<std::size_t>(step.task)];
    const auto either = [&](const std::string& own, std::string_view usual) {
        return own.empty() ? std::string(usual) : in_units(own, units);
    };
    step.what = either(step.own.what, words.what);
    step.why = either(step.own.why, words.why);
    step.how.clear();
    for (const auto& one : step.besides)
        if (comes_first(one.kind)) add(step.how, in_full(one, units));
    const std::string_view briefly = mixed_briefly(step);
    add(step.how, either(step.own.how, step.cook ? cooked_so(*step.cook) : briefly.empty() ? words.how : briefly));
    if (!briefly.empty() && step.own.why.empty()) step.why = "The longer it is kneaded, the more protein dissolves and the firmer it sets.";
    for (const auto& one : step.besides)
        if (!comes_first(one.kind)) add(step.how, in_full(one, units));
    return step;
}

}  // namespace standin
