#include "standin/engine.hpp"

#include "adapt/adapt.hpp"
#include "adapt/compare.hpp"
#include "adapt/swaps.hpp"
#include "core/words.hpp"
#include "evaluate/predict.hpp"
#include "face/inside.hpp"
#include "formula/formats/reading.hpp"
#include "safety/safety.hpp"

namespace standin {
namespace {

void append(std::vector<std::string>& to, const std::vector<std::string>& more) { to.insert(to.end(), more.begin(), more.end()); }

}  // namespace

Engine::Engine(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
Engine::Engine(Engine&&) noexcept = default;
Engine& Engine::operator=(Engine&&) noexcept = default;
Engine::~Engine() = default;

Result<Engine> Engine::open(Options options) {
    constexpr std::size_t fewest = 16, most = 100000;
    if (options.draws < fewest || options.draws > most)
        return failure(Trouble::usage, "the number of draws must lie between 16 and 100000");
    auto knowledge =
        options.knowledge_folder.empty() ? Result<Knowledge>(embedded_knowledge()) : overlaid_knowledge(options.knowledge_folder);
    if (!knowledge) return Failure(knowledge.error());
    if (!options.rules.empty() && !knowledge->rules(options.rules)) {
        std::vector<std::string> known;
        for (const auto& rules : knowledge->records().rules) known.push_back(rules.code);
        return failure(Trouble::usage, "no rule set \"" + options.rules + "\": known are " + listed(known));
    }
    return Engine(std::make_unique<Inside>(std::move(options), std::move(*knowledge)));
}

Result<Formula> Engine::read_formula(std::string_view text, std::string_view file) const {
    return standin::read_formula(text, file, inside_->knowledge);
}
Result<FormulaReading> Engine::read_closely(std::string_view text, std::string_view file) const {
    return standin::read_closely(text, file, inside_->knowledge);
}
Result<Inventory> Engine::read_inventory(std::string_view text, std::string_view file) const {
    return standin::read_inventory(text, file, inside_->knowledge);
}
std::string Engine::formula_json(const Formula& formula) const { return standin::formula_json(formula, inside_->knowledge); }
std::string Engine::formula_jsonld(const Formula& formula) const { return standin::formula_jsonld(formula, inside_->knowledge); }
std::string Engine::formula_text(const Formula& formula) const { return standin::formula_text(formula, inside_->knowledge); }

Result<Prediction> Engine::predict(const Formula& formula) {
    if (const auto sound = check_formula(formula, inside_->knowledge); !sound) return Failure(sound.error());
    Prediction prediction = predict_formula(formula, inside_->drawn.pantry);
    mark_safety(prediction, formula, inside_->knowledge, inside_->options.rules);
    return prediction;
}

Result<CompareAnswer> Engine::compare(const std::vector<Formula>& formulas) {
    for (const auto& formula : formulas)
        if (const auto sound = check_formula(formula, inside_->knowledge); !sound) return Failure(sound.error());
    return compare_formulas(formulas, {inside_->drawn.pantry, inside_->middle.pantry, inside_->options});
}

Result<SwapsAnswer> Engine::swaps(const Formula& formula, std::string_view line, std::size_t top) {
    if (const auto sound = check_formula(formula, inside_->knowledge); !sound) return Failure(sound.error());
    auto answer = swaps_for_line(formula, line, top, {inside_->drawn.pantry, inside_->middle.pantry, inside_->options});
    if (answer)
        for (const auto& read : formula.lines) append(answer->read_as, read.notes);
    return answer;
}

Result<AdaptAnswer> Engine::adapt(const Formula& formula, const AdaptRequest& request) {
    if (const auto sound = check_formula(formula, inside_->knowledge); !sound) return Failure(sound.error());
    auto answer = adapt_formula(formula, request, {inside_->drawn.pantry, inside_->middle.pantry, inside_->options});
    if (answer && request.have) append(answer->base.read_as, request.have->notes);
    return answer;
}

std::string Engine::name_of(std::string_view id) const {
    const auto* ingredient = inside_->knowledge.ingredient(id);
    return ingredient ? ingredient->names.front() : std::string(id);
}

std::string Engine::citation(std::string_view reference) const {
    const auto* source = inside_->knowledge.source(reference);
    return source ? source->cite : std::string(reference);
}

}  // namespace standin
