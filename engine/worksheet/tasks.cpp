#include "worksheet/tasks.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/names.hpp"
#include "knowledge/index/line_name.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::string_view plate = "plate: ";  // a task of its own, told last

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" "), last = text.find_last_not_of(" .");
    return first == std::string_view::npos || last == std::string_view::npos ? "" : std::string(text.substr(first, last - first + 1));
}

std::string lower_first(std::string text) {
    if (!text.empty()) text.front() = static_cast<char>(std::tolower(static_cast<unsigned char>(text.front())));
    return text;
}

std::string first_word(std::string_view text) {
    std::string word(text.substr(0, text.find_first_of(" ,")));
    for (auto& c : word) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return word;
}

// Between full stops, semicolons and what opens with a colon.
std::vector<std::string> clauses(const std::string& note) {
    std::vector<std::string> all;
    std::size_t start = 0;
    for (std::size_t i = 0; i <= note.size(); ++i) {
        const bool stop = i < note.size() && (note[i] == ';' || (note[i] == '.' && (i + 1 == note.size() || note[i + 1] == ' ')));
        if (i < note.size() && !stop) continue;
        if (auto clause = trimmed(std::string_view(note).substr(start, i - start)); !clause.empty()) all.push_back(std::move(clause));
        start = i + 1;
    }
    return all;
}

// "Tougher: strip the ribs" asks for what stands behind the colon.
std::string asked_of(const std::string& clause, const Knowledge& knowledge) {
    if (tells_what_to_do(clause, knowledge)) return lower_first(clause);
    const auto colon = clause.find(": ");
    if (colon == std::string::npos) return "";
    const std::string behind = clause.substr(colon + 2);
    return tells_what_to_do(behind, knowledge) ? behind : "";
}

class Teller {
public:
    Teller(Sheet& sheet, const Knowledge& knowledge) : sheet_(sheet), knowledge_(knowledge) {}

    void tell(const std::string& task) {
        const auto colon = task.find(": ");
        const std::string food = colon == std::string::npos ? "" : task.substr(0, colon);
        const std::size_t line = line_of(food);
        for (const auto& clause : clauses(line == none ? task : task.substr(colon + 2))) {
            const std::string asked = line == none ? lower_first(clause) : asked_of(clause, knowledge_);
            if (asked.empty() || is_a_step(asked, line)) continue;
            if (auto* step = step_for(asked, line)) say(*step, line == none ? "" : food, asked);
        }
    }

    void write() {
        for (auto& told : told_) {
            Reason asked = make_reason(ReasonKind::asked_of_it, {}, told.foods);
            asked.note = told.asked;
            told.step->besides.push_back(std::move(asked));
        }
    }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    struct Told {
        SheetStep* step;
        std::string asked;
        std::vector<std::string> foods;
    };

    std::size_t line_of(const std::string& food) const {
        const auto& lines = sheet_.formula.lines;
        const auto at = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
            const auto& names = knowledge_.ingredient(line.ingredient)->names;
            return line_name(line, knowledge_) == food || std::find(names.begin(), names.end(), food) != names.end();
        });
        return food.empty() || at == lines.end() ? none : static_cast<std::size_t>(at - lines.begin());
    }

    // "blanch", of what the sheet blanches anyway.
    bool is_a_step(const std::string& asked, std::size_t line) const {
        if (line == none) return false;
        const auto& prepared = sheet_.formula.lines[line].prepared;
        return std::any_of(prepared.begin(), prepared.end(),
                           [&](const Prepared& p) { return knowledge_.preparation(p.preparation)->verb == asked; });
    }

    static bool works_on(const SheetStep& step, std::size_t line) {
        return step.id != "weigh" && std::any_of(step.parts.begin(), step.parts.end(), [&](const StepPart& p) { return p.line == line; });
    }

    SheetStep* step_for(const std::string& asked, std::size_t line) const {
        constexpr std::array<std::string_view, 4> at_the_scale{"read", "declare", "count", "look"};
        const std::string verb = first_word(asked);
        const bool scale = std::find(at_the_scale.begin(), at_the_scale.end(), verb) != at_the_scale.end();
        const bool mixing = asked.find("you mix") != std::string::npos;
        const bool late = asked.ends_with(" late") || asked.ends_with(" last");  // "add the juice late": nothing for the pot
        SheetStep *weigh = nullptr, *first = nullptr, *mix = nullptr, *end = nullptr;
        for (auto& step : sheet_.steps) {
            if (step.id == "weigh") weigh = &step;
            if (!first && works_on(step, line)) first = &step;
            if (!mix && step.id.rfind("mix", 0) == 0) mix = &step;
            if (step.id.rfind("mix", 0) == 0) end = &step;
        }
        if (late && end) return end;
        if (mixing && mix) return mix;
        if (weigh && (scale || !first)) return weigh;
        return first ? first : &sheet_.steps.front();
    }

    void say(SheetStep& step, const std::string& food, const std::string& asked) {
        const auto same = std::find_if(told_.begin(), told_.end(), [&](const Told& t) { return t.step == &step && t.asked == asked; });
        Told& told = same == told_.end() ? told_.emplace_back(Told{&step, asked, {}}) : *same;
        if (!food.empty() && std::find(told.foods.begin(), told.foods.end(), food) == told.foods.end()) told.foods.push_back(food);
    }

    Sheet& sheet_;
    const Knowledge& knowledge_;
    std::vector<Told> told_;
};

}  // namespace

bool tells_what_to_do(std::string_view clause, const Knowledge& knowledge) {
    const std::string word = first_word(clause), folded = fold(word);
    return word == folded && knowledge.in_list(WordList::bench_task, folded);  // "keeps" tells, "keep" asks
}

void tell_tasks(Sheet& sheet, const Knowledge& knowledge) {
    Teller teller(sheet, knowledge);
    for (const auto& task : sheet.formula.to_do)
        if (task.rfind(plate, 0) != 0) teller.tell(task);
    teller.write();
}

}  // namespace standin
