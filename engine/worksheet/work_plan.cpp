#include <algorithm>

#include "safety/core_temperature.hpp"
#include "worksheet/steps.hpp"

namespace standin {
namespace {

SheetStep chilling(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("chill", "chill",
                             "Meat and fat in strips, spread out in the freezer until stiff at the edges. Bowl, grinder parts, paste "
                             "and liquids go in the cold too.",
                             "Cold fat is cut, warm fat smears and runs out in the pan.");
    s.minutes = knowledge.parameter("bench.chill.minutes").mid;
    s.temperature_c = knowledge.parameter("bench.chill.meat").mid;
    s.temperature = TemperatureIs::at_most;
    s.said = false;
    s.how += " Raw meat has a board of its own; after it wash hands, board and knife in hot, soapy water.";
    const auto& said = sheet.prediction.cautions;
    if (std::any_of(said.begin(), said.end(), [](const CautionText& c) { return c.id == "poultry-raw"; }))
        s.how += " Do not rinse raw poultry.";
    take_in(s, sheet, knowledge, {Part::meat, Part::minced});
    return s;
}

SheetStep soaking_casing(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("casing", "soak the casing",
                             "Rinse off the salt, run water through the inside, leave it in lukewarm water until soft and keep it wet.",
                             "Stiff or salty it tears on the horn.");
    s.minutes = knowledge.parameter("bench.casing.soak").mid;
    s.casing_m = sheet.makes.casing_m;
    s.said = false;
    return s;
}

SheetStep grinding(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("grind", "grind",
                             "Once, through the plate named, lean and fat together, into the cold bowl. Stop and chill when it warms.",
                             "A sharp cold cut keeps lean and fat apart; a warm one smears them.");
    s.plate_mm = process_value(sheet.formula.process.plate_mm, "process.plate_mm", knowledge, s);
    s.temperature_c = knowledge.parameter("bind.cold.up-to").mid;
    s.temperature = TemperatureIs::at_most;
    take_in(s, sheet, knowledge, {Part::meat});
    return s;
}

SheetStep pasting(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("paste", "blend the paste",
                             "As fine as you like the colour spread. No more liquid than the blade needs, taken from the formula's own. "
                             "Back into the cold.",
                             "Blended just before mixing it keeps its green; warm it would warm the meat.");
    s.temperature_c = knowledge.parameter("bind.cold.up-to").mid;
    s.temperature = TemperatureIs::at_most;
    take_in(s, sheet, knowledge, {Part::paste});
    const bool seeds = std::any_of(s.parts.begin(), s.parts.end(), [&](const StepPart& part) {
        return knowledge.ingredient(sheet.formula.lines[part.line].ingredient)->tissue == Tissue::seed;
    });
    if (seeds && s.parts.size() > 1) s.how = "Seeds and nuts first, then the rest. " + s.how;
    return s;
}

SheetStep tasting(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("taste", "fry a patty and taste",
                             "Fry a small flat patty through, measure it, then taste for salt, heat and sharpness, "
                             "and put the mass right now. Never taste it raw.",
                             "Now it can still be mended.");
    s.temperature_c = sheet.core_c;
    s.temperature = TemperatureIs::at_least;
    s.grams_in = knowledge.parameter("bench.taste.patty").mid;
    return s;
}

SheetStep shaping(const Sheet& sheet) {
    const bool link = sheet.makes.shape == "link";
    SheetStep s = link ? plain_step("shape", "stuff", "Fill the casings firmly, without air, twist off and prick the bubbles.",
                                    "Air pockets hold fat and juice and burst in the pan.")
                       : plain_step("shape", "shape, or leave loose",
                                    "Wet hands, even patties a little wider than they are to end; or leave it loose, "
                                    "pressed flat under a cover.",
                                    "Even pieces reach their core together.");
    s.grams_in = s.grams_out = sheet.makes.batch_g;
    s.link_mm = sheet.makes.length_mm;
    s.said = !link || sheet.makes.length_said;
    return s;
}

SheetStep resting(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("rest", "rest cold", "Covered, shallow, in the coldest part of the refrigerator.",
                             "Salt evens out and the bind sets; the green fades a little with every day.");
    constexpr double minutes_an_hour = 60;
    s.minutes = minutes_an_hour * process_value(sheet.formula.process.rest_h, "process.rest_h", knowledge, s);
    s.temperature_c = process_value(sheet.formula.process.rest_at_c, "process.rest_at_c", knowledge, s);
    s.temperature = TemperatureIs::at_most;
    s.grams_in = s.grams_out = sheet.makes.batch_g;
    return s;
}

SheetStep cooking(const Sheet& sheet, const Knowledge& knowledge) {
    const char* how = "";
    std::optional<double> around;
    switch (sheet.formula.process.cook.value_or(Cook::pan)) {
        case Cook::pan:
            how = "In a pan over middling heat, turned often; measure in the middle of the thickest.";
            break;
        case Cook::grill:
            how = "On the grill beside the fiercest heat, turned often; measure in the middle of the thickest.";
            break;
        case Cook::oven:
            around = knowledge.parameter("bench.oven").mid;
            how = "In the oven, turned once; measure in the middle of the thickest.";
            break;
        case Cook::loose:
            how = "Loose in a wide pan over middling heat, broken up and turned; measure in the middle of the largest piece.";
            break;
        case Cook::poach:
            around = knowledge.parameter("bench.poach").mid;
            how = "In water below the boil; measure in the middle of the thickest.";
            break;
    }
    SheetStep s = plain_step("cook", "cook to the core", how,
                             "The thermometer decides: green mass keeps a raw look, or a done one, whatever is inside.");
    s.temperature_c = sheet.core_c;
    s.temperature = TemperatureIs::at_least;
    s.grams_in = sheet.makes.batch_g;
    s.grams_out = sheet.makes.cooked_g.mid;
    s.around_c = around;
    if (sheet.prediction.core.hold_s > 0) s.how += " It is done at " + sheet.core_says + ".";
    return s;
}

// What the formula keeps for the plate: "plate: for each kilo of raw mass stir ...".
std::vector<SheetStep> serving(const Sheet& sheet) {
    const std::string_view mark = "plate: ";
    std::vector<SheetStep> steps;
    for (const auto& task : sheet.formula.to_do)
        if (task.rfind(mark, 0) == 0)
            steps.push_back(
                plain_step("serve", "sauce for the plate", task.c_str() + mark.size(), "Acid that is not in the mass cannot loosen it."));
    return steps;
}

}  // namespace

SheetStep plain_step(const char* id, const char* what, const char* how, const char* why) {
    SheetStep s;
    s.id = id;
    s.what = what;
    s.how = how;
    s.why = why;
    s.source = "common-practice";
    return s;
}

void take_in(SheetStep& step, const Sheet& sheet, const Knowledge& knowledge, std::initializer_list<Part> parts) {
    for (std::size_t n = 0; n < sheet.formula.lines.size(); ++n)
        if (std::find(parts.begin(), parts.end(), part_of(sheet.formula.lines[n], knowledge)) != parts.end()) {
            const double grams = ready_grams(sheet.formula.lines[n], knowledge);
            add_part(step, n, grams, grams);
        }
}

std::vector<SheetStep> making_steps(const Sheet& sheet, const Knowledge& knowledge) {
    std::vector<SheetStep> steps{chilling(sheet, knowledge), grinding(sheet, knowledge), pasting(sheet, knowledge)};
    std::erase_if(steps, [](const SheetStep& s) { return s.parts.empty(); });
    if (sheet.makes.casing_m) steps.insert(steps.begin(), soaking_casing(sheet, knowledge));
    for (auto& step : mixing_steps(sheet, knowledge)) steps.push_back(std::move(step));
    steps.push_back(tasting(sheet, knowledge));
    steps.push_back(shaping(sheet));
    steps.push_back(resting(sheet, knowledge));
    steps.push_back(cooking(sheet, knowledge));
    for (auto& step : serving(sheet)) steps.push_back(std::move(step));
    return steps;
}

}  // namespace standin
