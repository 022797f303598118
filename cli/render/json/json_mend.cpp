#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {
namespace {

Json ingoing_json(const Ingoing& in) {
    return {{"ingredient", in.ingredient}, {"name", in.name}, {"prepared", in.prepared}, {"grams", num(in.grams)},
            {"water_g", num(in.water_g)},  {"how", in.how},   {"new", in.fresh}};
}

Json ingoing_list(const std::vector<Ingoing>& all) {
    return array_of(all, [](const Ingoing& in) { return ingoing_json(in); });
}

Json way_json(const MendWay& way, const Engine& engine) {
    return {
        {"do", std::string(word(way.kind))},
        {"add", ingoing_list(way.add)},
        {"plain", ingoing_list(way.plain)},
        {"plain_g", num(way.plain_g)},
        {"plain_lacks", way.plain_lacks},
        {"plain_less", way.plain_less},
        {"plain_rounds", way.plain_rounds},
        {"after_first", array_of(way.after_first,
                                 [](const AfterFirst& a) {
                                     return Json{{"property", std::string(info(a.property).key)}, {"value", num(a.value)}};
                                 })},
        {"plain_leaner", way.plain_leaner},
        {"step_only", way.step_only},
        {"met", way.met},
        {"held_for", way.held_for ? Json(std::string(info(*way.held_for).key)) : Json()},
        {"work_min", num(way.work_min)},
        {"salt_left", way.salt_left ? Json{{"pct_of_meat", num(way.salt_left->pct_of_meat)},
                                           {"usual_most", num(way.salt_left->usual_most)},
                                           {"enough", num(way.salt_left->enough)},
                                           {"plain_g", num(way.salt_left->plain_g)}}
                                    : Json()},
        {"plain_for",
         array_of(way.plain_for,
                  [](const PlainFor& p) {
                      return Json{{"property", std::string(info(p.property).key)}, {"value", num(p.value)}, {"plain_g", num(p.plain_g)}};
                  })},
        {"still_over", array_of(way.still_over,
                                [](const StillOver& o) {
                                    return Json{{"tasted", o.tasted}, {"food", o.food}, {"value", num(o.value)}, {"most", num(o.most)}};
                                })},
        {"colour_left", way.colour_left},
        {"new_animals", way.new_animals},
        {"wants",
         array_of(
             way.wants,
             [](const WantResult& w) {
                 return Json{{"want", w.want}, {"met", w.met}, {"chance", num(w.chance)}, {"says", w.says}, {"reason", json_of(w.reason)}};
             })},
        {"formula", Json::parse(engine.formula_json(way.formula))},
        {"prediction", json_of(way.prediction)},
        {"differences", json_of(way.differences)},
        {"new_allergens", way.new_allergens},
        {"new_cautions", json_of(way.new_cautions)}};
}

}  // namespace

std::string mend_json(const MendAnswer& a, const Engine& engine) {
    return printed(
        {{"base", json_of(a.base)},
         {"made_g", num(a.made_g)},
         {"words", array_of(a.words,
                            [](const TastedWord& w) {
                                return Json{{"written", w.written}, {"id", w.id},       {"says", w.says},     {"judged", w.judged},
                                            {"more", w.more},       {"there", w.there}, {"beside", w.beside}, {"practice", w.practice},
                                            {"source", w.source}};
                            })},
         {"causes", array_of(a.causes,
                             [](const MakingCause& c) {
                                 return Json{{"id", c.id},     {"tasted", c.tasted}, {"says", c.says},       {"first", c.first},
                                             {"does", c.does}, {"ends", c.ends},     {"weighed", c.weighed}, {"source", c.source}};
                             })},
         {"measured", array_of(a.measured,
                               [](const MeasuredValue& m) {
                                   return Json{{"property", std::string(info(m.property).key)},
                                               {"value", num(m.value)},
                                               {"predicted", json_of(m.predicted)},
                                               {"far", m.far}};
                               })},
         {"discard", a.discard},
         {"only_listed", a.only_listed},
         {"opposed", a.opposed},
         {"variants", array_of(a.ways, [&](const MendWay& way) { return way_json(way, engine); })},
         {"cannot", in_full(a.cannot)},
         {"cannot_reasons", json_of(a.cannot)},
         {"fold", a.fold},
         {"plain", a.plain},
         {"presumed", json_of(a.presumed)},
         {"allergens", json_of(a.on_page.allergens)},
         {"cautions", json_of(a.on_page.cautions)},
         {"on_page", json_of(a.on_page)},
         {"of_variants", json_of(a.of_variants)}});
}

}  // namespace standin::cli
