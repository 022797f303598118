#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {
namespace {

Json or_null(const std::optional<double>& value) { return value ? num(*value) : Json(nullptr); }

const char* word_of(TemperatureIs t) {
    switch (t) {
        case TemperatureIs::at:
            return "at";
        case TemperatureIs::at_most:
            return "at most";
        case TemperatureIs::at_least:
            return "at least";
    }
    return "";
}

Json weight_json(const SheetWeight& w, const Sheet& s) {
    const auto& line = s.prediction.lines[w.line];
    return {{"ingredient", line.ingredient}, {"name", line.name},           {"prepared", line.prepared},
            {"grams", num(w.grams)},         {"weigh_g", num(w.weigh_g)},   {"scale_g", num(w.scale_g)},
            {"fine_scale", w.fine},          {"weighed_prepared", w.after}, {"in_the_batch_g", num(w.in_the_batch_g)},
            {"share", num(line.share)}};
}

Json step_json(const SheetStep& step, std::size_t n, const Sheet& s) {
    const Json parts = array_of(step.parts, [&](const StepPart& p) {
        return Json{{"line", p.line + 1},
                    {"ingredient", s.prediction.lines[p.line].ingredient},
                    {"do", p.verb},
                    {"grams_in", num(p.grams_in)},
                    {"grams_out", num(p.grams_out)}};
    });
    Json temperature = nullptr;
    if (step.temperature_c) temperature = {{"is", word_of(step.temperature)}, {"c", num(*step.temperature_c)}};
    return {{"step", n},
            {"id", step.id},
            {"task", std::string(word(step.task))},
            {"besides", json_of(step.besides)},
            {"what", step.what},
            {"how", step.how},
            {"why", step.why},
            {"lines", parts},
            {"grams_in", num(step.grams_in)},
            {"grams_out", num(step.grams_out)},
            {"minutes", or_null(step.minutes)},
            {"temperature", temperature},
            {"around_c", or_null(step.around_c)},
            {"stop_c", or_null(step.stop_c)},
            {"plate_mm", or_null(step.plate_mm)},
            {"casing_m", or_null(step.casing_m)},
            {"link_mm", or_null(step.link_mm)},
            {"said", step.said},
            {"source", step.source}};
}

Json purchase_json(const Purchase& p) {
    const auto sold = [](const Sold& s) {
        return Json{{"count", or_null(s.count)}, {"unit", s.unit},        {"unit_g", num(s.unit_g)},
                    {"unit_ml", num(s.unit_ml)}, {"buy_g", num(s.buy_g)}, {"source", s.source}};
    };
    Json json = sold(p.metric);
    json.update({{"ingredient", p.ingredient},
                 {"name", p.name},
                 {"need_g", num(p.need_g)},
                 {"as_bought_g", num(p.bought_g)},
                 {"from_the_tap", p.from_the_tap},
                 {"have_all", p.have_all},
                 {"have_g", or_null(p.have_g)},
                 {"lack_g", or_null(p.lack_g)},
                 {"us", sold(p.us)}});
    return json;
}

Json makes_json(const SheetYield& y) {
    return {{"batch_g", num(y.batch_g)},
            {"cooked_g", json_of(y.cooked_g)},
            {"shape", y.shape},
            {"titled_link", y.titled_link},
            {"piece_g", num(y.piece_g)},
            {"pieces", num(y.pieces)},
            {"piece_cooked_g", json_of(y.piece_cooked_g)},
            {"diameter_mm", or_null(y.diameter_mm)},
            {"length_mm", or_null(y.length_mm)},
            {"casing", y.casing},
            {"casing_m", or_null(y.casing_m)},
            {"casing_g_a_metre", or_null(y.casing_g_a_metre)}};
}

}  // namespace

std::string sheet_json(const Sheet& s, const Extras& beside) {
    Json steps = Json::array();
    for (const auto& step : s.steps) steps.push_back(step_json(step, steps.size() + 1, s));
    return printed(
        {{"title", s.prediction.title},
         {"scaled", s.scaled},
         {"scaling", json_of(s.scaling)},
         {"factor", num(s.factor)},
         {"batch_g", num(s.prediction.batch_g)},
         {"meat_g", num(s.prediction.meat_g)},
         {"cook_to", {{"core_c", num(s.core_c)}, {"hold_s", num(s.prediction.core.hold_s)}, {"says", s.core_says}, {"rule", s.core_rule}}},
         {"makes", makes_json(s.makes)},
         {"weights", array_of(s.weights, [&](const SheetWeight& w) { return weight_json(w, s); })},
         {"steps", steps},
         {"buy", array_of(s.buy, [](const Purchase& p) { return purchase_json(p); })},
         {"notes", in_full(s.notes)},
         {"note_reasons", json_of(s.notes)},
         {"read_as", in_full(s.prediction.read_as)},
         {"read_as_reasons", json_of(s.prediction.read_as)},
         {"allergens", json_of(s.prediction.allergens)},
         {"cautions", json_of(s.prediction.cautions)},
         {"label", s.prediction.label},
         {"draft", draft_json(beside)},
         {"freezing", freezing_json(beside)},
         {"cost", cost_json(beside.cost, s.prediction)},
         {"prediction", json_of(s.prediction)}});
}

}  // namespace standin::cli
