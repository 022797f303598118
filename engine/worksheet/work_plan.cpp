#include <algorithm>

#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"
#include "models/ready.hpp"
#include "safety/core_temperature.hpp"
#include "worksheet/steps.hpp"

namespace standin {
namespace {

SheetStep chilling(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("chill", BenchTask::chill);
    s.minutes = knowledge.parameter("bench.chill.minutes").mid;
    s.temperature_c = knowledge.parameter("bench.chill.meat").mid;
    s.temperature = TemperatureIs::at_most;
    s.said = false;
    s.besides.push_back(make_reason(ReasonKind::own_board));
    const auto& said = sheet.prediction.cautions;
    if (std::any_of(said.begin(), said.end(), [](const CautionText& c) { return c.id == "poultry-raw"; }))
        s.besides.push_back(make_reason(ReasonKind::not_rinsed));
    take_in(s, sheet, knowledge, {Part::meat, Part::minced});
    const bool cut = std::any_of(s.parts.begin(), s.parts.end(),
                                 [&](const StepPart& part) { return part_in(sheet.formula, part.line, knowledge) == Part::meat; });
    if (!cut) s.task = BenchTask::chill_minced;
    return s;
}

SheetStep soaking_casing(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("casing", BenchTask::soak_casing);
    s.minutes = knowledge.parameter("bench.casing.soak").mid;
    s.casing_m = sheet.makes.casing_m;
    s.said = false;
    return s;
}

SheetStep grinding(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("grind", BenchTask::grind);
    s.plate_mm = process_value(sheet.formula.process.plate_mm, "process.plate_mm", knowledge, s);
    s.temperature_c = knowledge.parameter("bind.cold.up-to").mid;
    s.temperature = TemperatureIs::at_most;
    take_in(s, sheet, knowledge, {Part::meat});
    return s;
}

// A blade needs something to catch: leaf enough to colour the mass through, or as much of other wet things, or the formula has it blended.
bool makes_a_paste(const Sheet& sheet, const SheetStep& s, const Knowledge& knowledge) {
    constexpr double most_of_it = 0.5;  // of the leaf; judgement
    if (sheet.formula.process.leaf_paste.value_or(0) >= most_of_it) return true;
    double wet = 0;
    for (const auto& part : s.parts) {
        const Line& line = sheet.formula.lines[part.line];
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        if (has_step(line.prepared, "pureed")) return true;
        if (food.tissue != Tissue::seed && !contains(food.already, std::string("dried"))) wet += part.grams_in;
    }
    return wet >= knowledge.parameter("bench.paste.least").mid * sheet.makes.batch_g;
}

SheetStep pasting(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("paste", BenchTask::blend);
    s.temperature_c = knowledge.parameter("bind.cold.up-to").mid;
    s.temperature = TemperatureIs::at_most;
    take_in(s, sheet, knowledge, {Part::paste});
    if (!acid_goes_last(sheet)) take_in(s, sheet, knowledge, {Part::sour});
    if (!makes_a_paste(sheet, s, knowledge)) {
        s.task = BenchTask::cut_small;
        return s;
    }
    const bool seeds = std::any_of(s.parts.begin(), s.parts.end(), [&](const StepPart& part) {
        return knowledge.ingredient(sheet.formula.lines[part.line].ingredient)->tissue == Tissue::seed;
    });
    if (seeds && s.parts.size() > 1) s.besides.push_back(make_reason(ReasonKind::seeds_first));
    return s;
}

// Sour fruit, by itself where it goes in last.
SheetStep pulping(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("sour", BenchTask::blend_sour);
    s.temperature_c = knowledge.parameter("bind.cold.up-to").mid;
    s.temperature = TemperatureIs::at_most;
    if (acid_goes_last(sheet)) take_in(s, sheet, knowledge, {Part::sour});
    return s;
}

SheetStep tasting(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("taste", BenchTask::taste);
    s.temperature_c = sheet.core_c;
    s.temperature = TemperatureIs::at_least;
    s.grams_in = knowledge.parameter("bench.taste.patty").mid;
    return s;
}

SheetStep shaping(const Sheet& sheet) {
    const bool link = sheet.makes.shape == "link";
    SheetStep s = plain_step("shape", link ? BenchTask::stuff : BenchTask::shape);
    s.grams_in = s.grams_out = sheet.makes.batch_g;
    s.link_mm = sheet.makes.length_mm;
    s.said = !link || sheet.makes.length_said;
    return s;
}

SheetStep resting(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("rest", BenchTask::rest);
    constexpr double minutes_an_hour = 60;
    s.minutes = minutes_an_hour * process_value(sheet.formula.process.rest_h, "process.rest_h", knowledge, s);
    s.temperature_c = process_value(sheet.formula.process.rest_at_c, "process.rest_at_c", knowledge, s);
    s.temperature = TemperatureIs::at_most;
    s.grams_in = s.grams_out = sheet.makes.batch_g;
    return s;
}

SheetStep cooking(const Sheet& sheet, const Knowledge& knowledge) {
    SheetStep s = plain_step("cook", BenchTask::cook);
    s.cook = sheet.formula.process.cook.value_or(Cook::pan);
    s.temperature_c = sheet.core_c;
    s.temperature = TemperatureIs::at_least;
    s.grams_in = sheet.makes.batch_g;
    s.grams_out = sheet.makes.cooked_g.mid;
    if (*s.cook == Cook::oven) s.around_c = knowledge.parameter("bench.oven").mid;
    if (*s.cook == Cook::poach) s.around_c = knowledge.parameter("bench.poach").mid;
    const double hold_s = sheet.prediction.core.hold_s;
    if (hold_s > 0) s.besides.push_back(make_reason(ReasonKind::done_at, {{"core", {}, sheet.core_c, "C"}, {"kept for", {}, hold_s, "s"}}));
    return s;
}

// What the formula keeps for the plate: "plate: for each kilo of raw mass stir ...".
std::vector<SheetStep> serving(const Sheet& sheet) {
    const std::string_view mark = "plate: ";
    std::vector<SheetStep> steps;
    for (const auto& task : sheet.formula.to_do)
        if (task.rfind(mark, 0) == 0) {
            steps.push_back(plain_step("serve", BenchTask::at_the_plate));
            steps.back().own.how = task.substr(mark.size());
        }
    return steps;
}

}  // namespace

SheetStep plain_step(const char* id, BenchTask task) {
    SheetStep s;
    s.id = id;
    s.task = task;
    s.source = "common-practice";
    return s;
}

bool acid_goes_last(const Sheet& sheet) { return sheet.formula.process.order == Order::salt_first; }

void take_in(SheetStep& step, const Sheet& sheet, const Knowledge& knowledge, std::initializer_list<Part> parts) {
    for (std::size_t n = 0; n < sheet.formula.lines.size(); ++n)
        if (std::find(parts.begin(), parts.end(), part_in(sheet.formula, n, knowledge)) != parts.end()) {
            const double grams = ready_grams(sheet.formula.lines[n], knowledge);
            add_part(step, n, grams, grams);
        }
}

std::vector<SheetStep> making_steps(const Sheet& sheet, const Knowledge& knowledge) {
    std::vector<SheetStep> steps{chilling(sheet, knowledge), grinding(sheet, knowledge), pasting(sheet, knowledge),
                                 pulping(sheet, knowledge)};
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
