#include "standin/engine.hpp"

#include "adapt/adapt.hpp"
#include "adapt/compare.hpp"
#include "adapt/swaps.hpp"
#include "core/words.hpp"
#include "evaluate/checked_request.hpp"
#include "evaluate/predict.hpp"
#include "face/cooked_through.hpp"
#include "face/inside.hpp"
#include "face/kitchen_notes.hpp"
#include "formula/reading.hpp"
#include "safety/safety.hpp"
#include "worksheet/scale.hpp"

namespace standin {
namespace {

void append(std::vector<Reason>& to, const std::vector<Reason>& more) { to.insert(to.end(), more.begin(), more.end()); }

// What the list says of a food is said once where the formula says it as well: the one that tells how to write it otherwise.
void append_of_list(std::vector<Reason>& to, const std::vector<Reason>& notes) {
    for (const auto& note : notes)
        if (note.kind == ReasonKind::dried_unless_leaf)
            std::erase_if(
                to, [&](const Reason& one) { return one.kind == ReasonKind::not_the_other && one.foods.front() == note.foods.front(); });
    append(to, notes);
}

std::optional<Error> fault_in(const Options& options, const Knowledge& knowledge) {
    if (!options.rules.empty() && !knowledge.rules(options.rules)) {
        std::vector<std::string> known;
        for (const auto& rules : knowledge.records().rules) known.push_back(rules.code);
        return Error{Trouble::usage, "no rule set \"" + options.rules + "\": known are " + listed(known), {}, {}};
    }
    if (options.month && (*options.month < 1 || *options.month > 12))
        return Error{Trouble::usage, "a month is a number from 1 to 12", {}, {}};
    return std::nullopt;
}

}  // namespace

Result<Options> Engine::Inside::asked(const Setting& setting) const {
    Options own = options;
    if (setting.rules) own.rules = *setting.rules;
    if (setting.month) own.month = setting.month;
    if (setting.season_shift) own.season_shift = *setting.season_shift;
    if (setting.progress) own.progress = setting.progress;
    if (auto wrong = fault_in(own, knowledge)) return Failure(std::move(*wrong));
    return own;
}

Engine::Engine(std::shared_ptr<const Inside> inside) : inside_(std::move(inside)) {}
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
    if (auto wrong = fault_in(options, *knowledge)) return Failure(std::move(*wrong));
    return Engine(std::make_shared<const Inside>(std::move(options), std::move(*knowledge)));
}

Result<Formula> Engine::read_formula(std::string_view text, std::string_view file) const {
    return standin::read_formula(text, file, inside_->knowledge);
}
Result<FormulaReading> Engine::read_closely(std::string_view text, std::string_view file) const {
    return standin::read_closely(text, file, inside_->knowledge);
}
Result<Inventory> Engine::read_inventory(std::string_view text, std::string_view file, const Formula* formula) const {
    if (formula)
        if (auto wrong = as_error(faults_in(*formula, inside_->knowledge), Trouble::bad_data)) return Failure(std::move(*wrong));
    return standin::read_inventory(text, file, inside_->knowledge, formula);
}
bool Engine::is_stock(std::string_view text, std::string_view file) const { return looks_like_stock(text, file, inside_->knowledge); }
std::string Engine::formula_json(const Formula& formula) const { return standin::formula_json(formula, inside_->knowledge); }
std::string Engine::formula_jsonld(const Formula& formula) const { return standin::formula_jsonld(formula, inside_->knowledge); }
std::string Engine::formula_text(const Formula& formula, Amounts amounts) const {
    return standin::formula_text(formula, inside_->knowledge, amounts);
}

Result<Prediction> Engine::predict(const Formula& formula, const Setting& setting) const {
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    const auto checked = cooked_through(formula, inside_->knowledge, options->rules);
    if (!checked) return Failure(checked.error());
    const auto evaluator = inside_->evaluator_for(formula);
    Prediction prediction = predict_formula(checked->formula(), *evaluator);
    mark_safety(prediction, formula, *evaluator, options->rules);
    append(prediction.read_as, kitchen_notes(inside_->kitchen, {&formula}, *evaluator, false));
    append(prediction.read_as, kitchen_doubts(inside_->kitchen, checked->formula(), *evaluator));
    return prediction;
}

Result<CompareAnswer> Engine::compare(const std::vector<Formula>& formulas, const Setting& setting) const {
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    std::vector<CheckedFormula> checked;
    for (const auto& formula : formulas) {
        auto sound = cooked_through(formula, inside_->knowledge, options->rules);
        if (!sound) return Failure(sound.error());
        checked.push_back(std::move(*sound));
    }
    const auto evaluator = formulas.empty() ? nullptr : inside_->evaluator_for(formulas.front());
    auto answer = compare_formulas(checked, {evaluator ? *evaluator : inside_->evaluator, *options});
    for (std::size_t f = 0; f < answer.formulas.size(); ++f)
        append(answer.formulas[f].read_as, kitchen_notes(inside_->kitchen, {&formulas[f]}, inside_->evaluator, false));
    return answer;
}

Result<SwapsAnswer> Engine::swaps(const Formula& formula, std::string_view line, const SwapsRequest& request,
                                  const Setting& setting) const {
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    const auto checked = cooked_through(formula, inside_->knowledge, options->rules);
    if (!checked) return Failure(checked.error());
    if (auto wrong = as_error(faults_in(request, inside_->knowledge), Trouble::usage)) return Failure(std::move(*wrong));
    const auto evaluator = inside_->evaluator_for(formula);
    auto answer = swaps_for_line(*checked, line, request, {*evaluator, *options});
    if (answer) append(answer->read_as, formula.read_as);
    if (answer)
        for (const auto& read : formula.lines) append(answer->read_as, read.notes);
    if (answer && request.have) append_of_list(answer->read_as, request.have->notes);
    if (answer) {
        std::vector<const Formula*> shown{&formula};
        for (const auto& one : answer->stand_ins) shown.push_back(&one.formula);
        append(answer->read_as, kitchen_notes(inside_->kitchen, shown, *evaluator));
    }
    return answer;
}

Result<AdaptAnswer> Engine::adapt(const Formula& formula, const AdaptRequest& request, const Setting& setting) const {
    const auto options = inside_->asked(setting);
    if (!options) return Failure(options.error());
    const auto checked = cooked_through(formula, inside_->knowledge, options->rules);
    if (!checked) return Failure(checked.error());
    if (auto wrong = as_error(faults_in(request, inside_->knowledge), Trouble::usage)) return Failure(std::move(*wrong));
    std::optional<double> meat_g;
    if (!request.meat.empty()) {
        const auto grams = weight_asked(request.meat, "request.meat");
        if (!grams) return Failure(grams.error());
        meat_g = *grams;
    }
    const auto evaluator = inside_->evaluator_for(formula);
    auto answer = adapt_formula(*checked, request, meat_g, {*evaluator, *options});
    if (answer && request.have) append_of_list(answer->base.read_as, request.have->notes);
    if (answer) {
        std::vector<const Formula*> shown{&formula};
        for (const auto& variant : answer->variants) shown.push_back(&variant.formula);
        append(answer->base.read_as, kitchen_notes(inside_->kitchen, shown, *evaluator));
    }
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
