#include "formula/formats/presumed_making.hpp"

#include <algorithm>

#include "core/words.hpp"
#include "formula/line/method_facts.hpp"
#include "formula/line/process_text.hpp"
#include "formula/write/writing.hpp"
#include "knowledge/effects.hpp"

namespace standin {
namespace {

bool wilts(const Ingredient& food) { return food.tissue == Tissue::thin_leaf || food.tissue == Tissue::thick_leaf; }

bool cooked_already(const Line& line) {
    for (const std::string_view step : {"blanched", "boiled", "steamed", "wilted", "cooked", "frozen-thawed"})
        if (has_step(line.prepared, step)) return true;
    return line.weighed_prepared;
}

void presume_blanched(Draft& draft, const Knowledge& knowledge, std::vector<std::string>& told) {
    for (const auto& blanched : blanched_in_method(draft.formula.method, knowledge))
        for (auto& one : draft.lines) {
            if (!one.beside.empty() || !one.read) continue;
            Line& line = one.read->line;
            const Ingredient& food = *knowledge.ingredient(line.ingredient);
            const auto* blanching = knowledge.preparation("blanched");
            if (!wilts(food) || cooked_already(line) || !blanching || !effect_on(*blanching, food.tissue)) continue;
            if (!food.already.empty() || !sentence_names(blanched.sentence, food, knowledge)) continue;
            std::vector<Prepared> steps{{"blanched", blanched.minutes}};
            if (blanched.squeezed && !has_step(line.prepared, "squeezed")) steps.push_back({"squeezed", std::nullopt});
            line.prepared.insert(line.prepared.begin(), steps.begin(), steps.end());
            std::string done;
            for (const auto& step : steps) done += (done.empty() ? "" : ", ") + written(step, knowledge);
            told.push_back(food.names.front() + " " + done);
        }
}

}  // namespace

void presume_making(Draft& draft, const Knowledge& knowledge) {
    if (draft.formula.method.empty()) return;
    Process& process = draft.formula.process;
    Process found = process_in_method(draft.formula.method, knowledge), taken;
    for (const auto field : {&Process::plate_mm, &Process::mixing_min, &Process::rest_h, &Process::core_c})
        if (!(process.*field) && found.*field) process.*field = taken.*field = found.*field;
    std::vector<std::string> told;
    for (const auto& [key, value] : process_words(taken)) told.push_back(std::string(key) + " " + value);
    presume_blanched(draft, knowledge, told);
    if (!told.empty()) draft.formula.read_as.push_back("read from the method: " + listed(told) + "; say so if it is meant otherwise");
}

}  // namespace standin
