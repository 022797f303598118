#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {

Json draft_json(const Extras& beside) {
    if (!beside.paper) return nullptr;
    const LabelDraft& d = beside.paper->draft;
    return {
        {"rules", d.rules},
        {"named",
         array_of(d.named,
                  [](const NamedShare& s) {
                      return Json{{"name", s.name}, {"pct", num(s.pct)}, {"says", s.says}, {"why", s.why}, {"reason", json_of(s.reason)}};
                  })},
        {"named_says", d.named_says},
        {"named_source", d.named_source},
        {"lines", array_of(d.lines,
                           [](const LabelLine& l) {
                               return Json{{"id", l.id}, {"text", l.text}, {"source", l.source}};
                           })},
        {"nutrition", array_of(d.nutrition,
                               [](const NutritionRow& r) {
                                   return Json{{"id", r.id},
                                               {"name", r.name},
                                               {"unit", r.unit},
                                               {"raw", json_of(r.raw)},
                                               {"cooked", json_of(r.cooked)},
                                               {"raw_says", r.raw_says},
                                               {"cooked_says", r.cooked_says}};
                               })},
        {"nutrition_says", d.nutrition_says},
        {"nutrition_source", d.nutrition_source}};
}

Json freezing_json(const Extras& beside) {
    if (!beside.paper) return nullptr;
    return array_of(beside.paper->freezing, [](const FreezingNote& n) {
        return Json{{"id", n.id}, {"text", n.text}, {"source", n.source}};
    });
}

Json glut_json(const Extras& beside) {
    return array_of(beside.glut, [](const KeepForLater& k) {
        return Json{{"ingredient", k.ingredient},  {"name", k.name}, {"yield", num(k.yield)},
                    {"months", json_of(k.months)}, {"says", k.says}, {"reason", json_of(k.reason)},
                    {"source", k.source}};
    });
}

}  // namespace standin::cli
