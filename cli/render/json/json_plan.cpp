#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {
namespace {

Json limiting_json(const std::optional<Limiting>& l) {
    if (!l) return {};
    return {{"ingredient", l->ingredient}, {"name", l->name}, {"stock_g", num(l->stock_g)}, {"a_kilo_g", num(l->a_kilo_g)}};
}

Json sausage_json(const PlannedSausage& s, const Engine& engine) {
    const Json edits = array_of(s.edits, [](const Edit& e) {
        return Json{{"do", std::string(word(e.kind))}, {"line", e.line}, {"with", e.with},
                    {"prepared", e.prepared},          {"why", e.why},   {"reason", json_of(e.reason)}};
    });
    Json out{{"number", s.formula + 1},
             {"title", s.title},
             {"fits", s.fits},
             {"conflict", in_full(s.conflict)},
             {"conflict_reasons", json_of(s.conflict)},
             {"distance", num(s.distance)},
             {"verdict", in_words(s.nearness)},
             {"edits", edits},
             {"alone_g", num(s.alone_g)},
             {"limiting", limiting_json(s.limiting)},
             {"asked_g", s.asked_g ? num(*s.asked_g) : Json()},
             {"made_g", num(s.made_g)},
             {"prediction", json_of(s.prediction)}};
    if (s.made_g > 0) out["formula"] = Json::parse(engine.formula_json(s.batch));
    return out;
}

Json sold_json(const Sold& s) {
    return {{"count", s.count ? num(*s.count) : Json()}, {"unit", s.unit}, {"unit_g", num(s.unit_g)}, {"buy_g", num(s.buy_g)}};
}

}  // namespace

std::string plan_json(const PlanAnswer& a, const Engine& engine) {
    return printed({{"variants", array_of(a.sausages, [&](const PlannedSausage& s) { return sausage_json(s, engine); })},
                    {"left", array_of(a.left,
                                      [](const LeftOver& l) {
                                          return Json{{"ingredient", l.ingredient},
                                                      {"name", l.name},
                                                      {"grams", num(l.grams)},
                                                      {"of_g", num(l.of_g)},
                                                      {"storage", l.storage}};
                                      })},
                    {"buy_first", array_of(a.buy_first,
                                           [](const WorthBuying& b) {
                                               return Json{{"ingredient", b.ingredient},
                                                           {"name", b.name},
                                                           {"need_g", num(b.need_g)},
                                                           {"more_g", num(b.more_g)},
                                                           {"makes", b.makes}};
                                           })},
                    {"buy", array_of(a.buy,
                                     [](const Purchase& p) {
                                         return Json{{"ingredient", p.ingredient},    {"name", p.name},
                                                     {"need_g", num(p.need_g)},       {"bought_g", num(p.bought_g)},
                                                     {"metric", sold_json(p.metric)}, {"us", sold_json(p.us)}};
                                     })},
                    {"presumed", json_of(a.presumed)},
                    {"read_as", in_full(a.read_as)},
                    {"read_as_reasons", json_of(a.read_as)},
                    {"knowledge", a.overlay},
                    {"allergens", json_of(a.on_page.allergens)},
                    {"cautions", json_of(a.on_page.cautions)},
                    {"on_page", json_of(a.on_page)}});
}

}  // namespace standin::cli
