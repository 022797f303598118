#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {
namespace {

Json partner_json(const std::optional<Partner>& p) {
    if (!p) return {};
    return {{"ingredient", p->ingredient}, {"name", p->name}, {"prepared", p->prepared},
            {"grams", num(p->grams)},      {"why", p->why},   {"reason", json_of(p->reason)}};
}

Json stand_in_json(const StandIn& s, const Engine& engine, const Extras& beside) {
    return {
        {"ingredient", s.ingredient},
        {"name", s.name},
        {"prepared", s.prepared},
        {"role", std::string(word(s.role))},
        {"grams", num(s.grams)},
        {"grams_band", json_of(s.grams_band)},
        {"partner", partner_json(s.partner)},
        {"line_left", num(s.line_left)},
        {"trade", s.trade},
        {"dose", s.dose},
        {"dose_reason", json_of(s.dose_reason)},
        {"closeness", num(s.closeness)},
        {"trims", array_of(s.trims,
                           [](const Trim& t) {
                               return Json{{"line", t.line}, {"grams_before", num(t.grams_before)}, {"grams_after", num(t.grams_after)}};
                           })},
        {"path", s.path},
        {"effects", json_of(s.effects)},
        {"colour_difference", json_of(s.colour_difference)},
        {"distance", num(s.distance)},
        {"new_allergens", s.new_allergens},
        {"cautions", json_of(s.cautions)},
        {"note", s.note},
        {"needs", s.needs},
        {"on_hand_g", s.on_hand ? num(*s.on_hand) : Json()},
        {"in_season", s.in_season ? Json(*s.in_season) : Json()},
        {"sources", s.sources},
        {"verdict", in_words(s.nearness)},
        {"cost", json_of(beside.change(s.formula))},
        {"allergens", json_of(s.allergens)},
        {"formula", Json::parse(engine.formula_json(s.formula))}};
}

Json instead_json(const Instead& i) {
    return {{"with", i.with}, {"prepared", i.prepared}, {"grams", num(i.grams)}, {"distance", num(i.distance)}, {"allergens", i.allergens}};
}

Json edit_json(const Edit& e) {
    return {{"do", std::string(word(e.kind))},
            {"line", e.line},
            {"with", e.with},
            {"prepared", e.prepared},
            {"grams_before", num(e.grams_before)},
            {"grams_left", num(e.grams_left)},
            {"grams_after", num(e.grams_after)},
            {"why", e.why},
            {"reason", json_of(e.reason)},
            {"does", e.kind == EditKind::process ? json_of(e.does) : Json()},
            {"alternatives", array_of(e.alternatives, [](const Instead& i) { return instead_json(i); })}};
}

Json want_json(const WantResult& w) {
    return {{"want", w.want}, {"met", w.met}, {"chance", num(w.chance)}, {"says", w.says}, {"reason", json_of(w.reason)}};
}

Json variant_json(const Variant& v, const Engine& engine, const Extras& beside) {
    return {{"rank", v.rank},
            {"distance", num(v.distance)},
            {"felt", num(v.felt)},
            {"verdict", in_words(v.nearness)},
            {"table", v.table},
            {"table_reason", json_of(v.table_reason)},
            {"edits", array_of(v.edits, [](const Edit& e) { return edit_json(e); })},
            {"formula", Json::parse(engine.formula_json(v.formula))},
            {"prediction", json_of(v.prediction)},
            {"differences", json_of(v.differences)},
            {"colour_difference", {{"rested", json_of(v.colour_rested)}, {"cooked", json_of(v.colour_cooked)}}},
            {"wants", array_of(v.wants, [](const WantResult& w) { return want_json(w); })},
            {"new_allergens", v.new_allergens},
            {"new_cautions", json_of(v.new_cautions)},
            {"gives_back", in_full(v.gives_back)},
            {"gives_back_reasons", json_of(v.gives_back)},
            {"cost", json_of(beside.change(v.formula))},
            {"cautions", json_of(v.prediction.cautions)}};
}

Json excluded_json(const std::vector<Excluded>& all) {
    return array_of(all, [](const Excluded& e) {
        return Json{{"word", e.word},   {"takes", e.takes},    {"note", e.note}, {"note_reasons", json_of(e.notes)},
                    {"lines", e.lines}, {"casings", e.casings}};
    });
}

}  // namespace

std::string swaps_json(const SwapsAnswer& a, const Engine& engine, const Extras& beside) {
    // The contract names one role; the first is what the line is mainly there for.
    const Json role = a.roles.empty() ? Json() : Json(std::string(word(a.roles.front())));
    return printed({{"line", a.line},
                    {"name", a.name},
                    {"line_grams", num(a.line_grams)},
                    {"role", role},
                    {"roles", json_of(a.roles)},
                    {"stand_ins", array_of(a.stand_ins, [&](const StandIn& s) { return stand_in_json(s, engine, beside); })},
                    {"left_out", in_full(a.left_out)},
                    {"left_out_reasons", json_of(a.left_out)},
                    {"allergens", json_of(a.allergens)},
                    {"cautions", json_of(a.cautions)},
                    {"on_page", json_of(a.on_page)},
                    {"excluded", excluded_json(a.excluded)},
                    {"knowledge", a.overlay},
                    {"read_as", in_full(a.read_as)},
                    {"read_as_reasons", json_of(a.read_as)}});
}

std::string adapt_json(const AdaptAnswer& a, const Engine& engine, const Extras& beside) {
    return printed({{"base", json_of(a.base)},
                    {"proved", a.proved},
                    {"gap", num(a.gap)},
                    {"plans_visited", a.plans_visited},
                    {"variants", array_of(a.variants, [&](const Variant& v) { return variant_json(v, engine, beside); })},
                    {"first", in_full(a.first)},
                    {"first_reasons", json_of(a.first)},
                    {"conflict", in_full(a.conflict)},
                    {"conflict_reasons", json_of(a.conflict)},
                    {"would_give", in_full(a.would_give)},
                    {"would_give_reasons", json_of(a.would_give)},
                    {"reach", in_full(a.reach)},
                    {"reach_reasons", json_of(a.reach)},
                    {"presumed", json_of(a.presumed)},
                    {"excluded", excluded_json(a.excluded)},
                    {"scaled", a.scaled ? Json{{"factor", num(a.scaled->factor)},
                                               {"meat_before_g", num(a.scaled->meat_before_g)},
                                               {"meat_after_g", num(a.scaled->meat_after_g)},
                                               {"says", a.scaled->says},
                                               {"reason", json_of(a.scaled->reason)}}
                                        : Json(nullptr)},
                    {"cost", cost_json(beside.cost, a.base)},
                    {"glut", glut_json(beside)},
                    {"cautions", json_of(a.base.cautions)},
                    {"on_page", json_of(a.on_page)},
                    {"of_variants", json_of(a.of_variants)}});
}

}  // namespace standin::cli
