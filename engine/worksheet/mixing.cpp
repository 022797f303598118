#include <algorithm>
#include <initializer_list>
#include <vector>

#include "worksheet/steps.hpp"

namespace standin {
namespace {

class Mixer {
public:
    Mixer(const Sheet& sheet, const Knowledge& knowledge) : sheet_(sheet), knowledge_(knowledge) {}

    /// A mixing step that takes in the parts named, on top of what is in the bowl already.
    SheetStep step(const char* id, BenchTask task, std::initializer_list<Part> parts) {
        SheetStep s = plain_step(id, task);
        s.temperature = TemperatureIs::at_most;
        s.temperature_c = knowledge_.parameter("bind.cold.up-to").mid;
        s.stop_c = knowledge_.parameter("bench.mix.stop").mid;
        s.grams_in = s.grams_out = in_bowl_;
        take_in(s, sheet_, knowledge_, parts);
        in_bowl_ = s.grams_out;
        return s;
    }

    void time(SheetStep& s) const { s.minutes = process_value(sheet_.formula.process.mixing_min, "process.mixing_min", knowledge_, s); }

private:
    const Sheet& sheet_;
    const Knowledge& knowledge_;
    double in_bowl_ = 0;
};

bool has_part(const Sheet& sheet, const Knowledge& knowledge, Part part) {
    return std::any_of(sheet.formula.lines.begin(), sheet.formula.lines.end(),
                       [&](const Line& line) { return part_of(line, knowledge) == part; });
}

}  // namespace

double process_value(const std::optional<double>& said, const char* parameter, const Knowledge& knowledge, SheetStep& step) {
    step.said = step.said && said.has_value();
    return said.value_or(knowledge.parameter(parameter).mid);
}

std::vector<SheetStep> mixing_steps(const Sheet& sheet, const Knowledge& knowledge) {
    Mixer mixer(sheet, knowledge);
    std::vector<SheetStep> steps;
    if (sheet.formula.process.order == Order::salt_first) {
        // A dry binder soaks up what liquid there is; without any it goes in with what is dry.
        if (has_part(sheet, knowledge, Part::soaking) && has_part(sheet, knowledge, Part::liquid)) {
            steps.push_back(mixer.step("mix-salt", BenchTask::salt_meat, {Part::meat, Part::minced, Part::salt, Part::dry}));
            mixer.time(steps.back());
            steps.push_back(mixer.step("mix-rest", BenchTask::work_in_soaked, {Part::soaking, Part::paste, Part::folded, Part::liquid}));
        } else {
            steps.push_back(mixer.step("mix-salt", BenchTask::salt_meat, {Part::meat, Part::minced, Part::salt, Part::dry, Part::soaking}));
            mixer.time(steps.back());
            steps.push_back(mixer.step("mix-rest", BenchTask::work_in, {Part::paste, Part::folded, Part::liquid}));
        }
        steps.push_back(mixer.step("mix-acid", BenchTask::acid_last, {Part::acid, Part::sour}));
    } else {
        if (sheet.formula.process.order == Order::acid_first)
            steps.push_back(mixer.step("mix-acid", BenchTask::acid_first, {Part::meat, Part::minced, Part::acid}));
        const bool acid_in = !steps.empty();
        steps.push_back(acid_in ? mixer.step("mix", BenchTask::mix_the_rest,
                                             {Part::salt, Part::dry, Part::soaking, Part::paste, Part::sour, Part::folded, Part::liquid})
                                : mixer.step("mix", BenchTask::mix_all,
                                             {Part::meat, Part::minced, Part::salt, Part::dry, Part::soaking, Part::paste, Part::sour,
                                              Part::folded, Part::liquid, Part::acid}));
        mixer.time(steps.back());
    }
    std::erase_if(steps, [](const SheetStep& s) { return s.parts.empty(); });
    return steps;
}

}  // namespace standin
