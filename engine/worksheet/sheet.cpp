#include "worksheet/sheet.hpp"

#include <algorithm>
#include <cmath>

#include "core/names.hpp"
#include "evaluate/predict.hpp"
#include "formula/amounts/process_text.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/records/word_list.hpp"
#include "models/ready.hpp"
#include "safety/conditions.hpp"
#include "safety/exclusions.hpp"
#include "safety/safety.hpp"
#include "safety/wording.hpp"
#include "standin/narrate.hpp"
#include "worksheet/buy.hpp"
#include "worksheet/limits.hpp"
#include "worksheet/makes.hpp"
#include "worksheet/parts.hpp"
#include "worksheet/scale.hpp"
#include "worksheet/steps.hpp"
#include "worksheet/tasks.hpp"
#include "worksheet/weights.hpp"

namespace standin {
namespace {

double bind_of(const Formula& formula, const Nominal& nominal) { return NominalBatch(formula, nominal).bind().bind; }

// Salt first where it helps; says so, and says what an order that the formula does name costs.
void settle_order(Sheet& sheet, const Nominal& nominal) {
    Process& process = sheet.formula.process;
    if (process.order == Order::salt_first) return;
    Formula salted = sheet.formula;
    salted.process.order = Order::salt_first;
    const double as_is = bind_of(sheet.formula, nominal), better = bind_of(salted, nominal);
    if (better - as_is < nominal.knowledge().parameter("bench.mix.gain").mid * as_is) return;
    Reason note = make_reason(process.order ? ReasonKind::order_costs : ReasonKind::order_chosen, {{"bind", as_is, better, "of 100"}});
    if (process.order) note.role = *process.order == Order::acid_first ? "acid first" : "all together";
    else process.order = Order::salt_first;
    const bool acid = std::any_of(sheet.formula.lines.begin(), sheet.formula.lines.end(), [&](const Line& line) {
        const Part part = part_of(line, nominal.knowledge());
        return part == Part::acid || part == Part::sour;
    });
    if (!acid && note.kind == ReasonKind::order_chosen) note.role = "no acid";
    sheet.notes.push_back(std::move(note));
}

void settle_core(Sheet& sheet, const Knowledge& knowledge, std::string_view rules) {
    const auto demanded = demanded_core(sheet.prediction, knowledge, rules);
    const auto said = core_said(sheet.formula.process);
    sheet.core_c = std::max(asked_core(sheet.prediction, sheet.formula.process, knowledge, rules).core_c, said.value_or(0));
    sheet.core_says = shown_core(asked_at(sheet.core_c, demanded));
    if (demanded.rule) sheet.core_rule = demanded.rule->text + " [" + demanded.rule->source + "]";
    constexpr double rounding = 0.15;  // 71 C is 71.1 C (160 F) as makers write it
    if (said && *said < demanded.core_c - rounding)
        sheet.notes.push_back(make_reason(
            ReasonKind::core_raised, {{"core", *said, sheet.core_c, "C"}, {"kept for", {}, asked_at(sheet.core_c, demanded).hold_s, "s"}}));
}

// Frozen leaves are wet: thawed and wrung out by most, and a formula that means that says so.
void warn_of_frozen_leaves(Sheet& sheet, const Knowledge& knowledge) {
    for (const auto& line : sheet.formula.lines) {
        const Ingredient& i = *knowledge.ingredient(line.ingredient);
        const bool leaf = is_leaf(i.tissue);
        const bool frozen = std::find(i.already.begin(), i.already.end(), "frozen-thawed") != i.already.end();
        if (!leaf || !frozen || has_step(line.prepared, "squeezed")) continue;
        sheet.notes.push_back(make_reason(ReasonKind::wet_leaves, {}, {i.names.front()}));
    }
}

void warn_of_the_scale(Sheet& sheet) {
    std::vector<std::string> fine;
    for (const auto& w : sheet.weights)
        if (w.fine) fine.push_back(sheet.prediction.lines[w.line].name);
    if (!fine.empty()) sheet.notes.push_back(make_reason(ReasonKind::fine_scale, {}, fine));
}

// A casing is of an animal too.
void warn_of_the_casing(Sheet& sheet, const Knowledge& knowledge) {
    const std::string& casing = sheet.makes.casing;
    if (!sheet.makes.casing_m) return;
    const auto holds = [&](Species species) {
        return std::any_of(sheet.formula.lines.begin(), sheet.formula.lines.end(), [&](const Line& l) {
            const auto& meat = knowledge.ingredient(l.ingredient)->meat;
            return meat && meat->species == species;
        });
    };
    Reason note = make_reason(ReasonKind::casing_named);
    note.role = casing;
    if (casing == "inedible") return;
    if (casing == "hog" && !holds(Species::pork)) note.about = "pork";
    if (casing == "collagen" && !holds(Species::pork)) note.about = "pork, perhaps";
    if (casing == "beef" && !holds(Species::beef)) note.about = "beef";
    sheet.notes.push_back(std::move(note));
}

// A title or a casing that speaks of links, where nothing says how wide they are to be.
void warn_of_the_shape(Sheet& sheet, const Knowledge& knowledge) {
    if (sheet.makes.shape == "link") return;
    const std::string title = fold(sheet.formula.title);
    bool titled = false;
    for (std::size_t at = 0; at < title.size();) {
        const auto end = std::min(title.find(' ', at), title.size());
        titled = titled || knowledge.in_list(WordList::link_word, title.substr(at, end - at));
        at = end + 1;
    }
    const auto& beside = sheet.formula.beside;
    sheet.makes.titled_link = titled || std::any_of(beside.begin(), beside.end(), is_casing);
    if (sheet.makes.titled_link) {
        Reason note = make_reason(ReasonKind::width_unsaid);
        note.role = titled ? "title" : "casing";
        sheet.notes.push_back(std::move(note));
    }
}

// Millimetres, where the process takes them for a length; absent otherwise.
std::optional<double> length_in(const std::string& text) {
    Process process;
    if (set_process(process, "diameter", text)) return std::nullopt;
    return process.diameter_mm;
}

// How large one piece is to be; a casing asked for goes into the process.
Result<PieceAsked> piece_asked(const SheetRequest& request, Process& process, const Knowledge& knowledge) {
    const double widest = knowledge.parameter("bench.link.widest").mid;
    PieceAsked asked;
    if (!request.casing.empty()) {
        const auto mm = length_in(request.casing);
        if (!mm || *mm >= widest)
            return failure(
                Trouble::usage,
                "expected a width from 5 to less than " + shown(widest) + " mm such as 32 mm or 1 1/4 in, not `" + request.casing + "`",
                "request.casing");
        process.diameter_mm = *mm;
    }
    if (!request.piece.empty() && !request.link.empty())
        return failure(Trouble::usage, "the weight of a piece and the length of a link exclude each other: give one of them");
    if (!request.piece.empty()) {
        const auto grams = weight_asked(request.piece, "request.piece");
        if (!grams) return Failure(grams.error());
        asked.grams = *grams;
    }
    if (!request.link.empty()) {
        if (!process.diameter_mm || *process.diameter_mm >= widest)
            return failure(Trouble::usage, "a link needs a casing: ask for one of 32 mm, or write `diameter: 32 mm` in the formula",
                           "request.link");
        const auto mm = length_in(request.link);
        if (!mm)
            return failure(Trouble::usage, "expected a length from 5 to 250 mm such as 12 cm or 5 in, not `" + request.link + "`",
                           "request.link");
        asked.link_mm = *mm;
    }
    return asked;
}

}  // namespace

Result<Sheet> sheet_of(const CheckedFormula& checked, const SheetRequest& request, const Evaluator& evaluator, std::string_view rules) {
    const Knowledge& knowledge = evaluator.knowledge();
    const Formula& formula = checked.formula();
    const auto scaling = scaling_of(formula, request, knowledge);
    if (!scaling) return Failure(scaling.error());
    Sheet sheet;
    sheet.scaling = scaling->to;
    sheet.scaled = in_full(sheet.scaling);
    sheet.factor = scaling->factor;
    sheet.formula = scaled(formula, scaling->factor);
    if (request.have)
        for (auto& line : sheet.formula.lines) take_ready(line, *request.have);
    const auto piece = piece_asked(request, sheet.formula.process, knowledge);
    if (!piece) return Failure(piece.error());
    settle_order(sheet, evaluator.nominal());
    sheet.prediction = predict_formula(sheet.formula, evaluator);
    mark_safety(sheet.prediction, sheet.formula, evaluator, rules);
    settle_core(sheet, knowledge, rules);
    sheet.weights = weights_of(sheet.formula, knowledge);
    sheet.buy = purchases_of(sheet.formula, request.have, knowledge);
    sheet.makes = makes_of(sheet.formula, sheet.prediction, *piece, knowledge);
    if (sheet.makes.pieces < 1)
        return failure(Trouble::usage, "the batch is too small: one " + sheet.makes.shape + " of " +
                                           shown(std::round(sheet.makes.piece_g)) + " g and a test patty do not come out of it");
    sheet.steps = preparing_steps(sheet, knowledge);
    std::erase_if(sheet.steps, [](const SheetStep& s) { return s.parts.empty(); });
    for (auto& step : making_steps(sheet, knowledge)) sheet.steps.push_back(std::move(step));
    keep_to_rules(sheet, knowledge, rules);
    tell_tasks(sheet, knowledge);
    warn_of_the_shape(sheet, knowledge);
    warn_of_frozen_leaves(sheet, knowledge);
    warn_of_the_scale(sheet);
    warn_of_the_casing(sheet, knowledge);
    for (auto& step : sheet.steps) step = told_in(std::move(step), Units::metric);
    return sheet;
}

}  // namespace standin
