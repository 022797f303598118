#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {

Json cost_json(const std::optional<Cost>& cost, const Prediction& p) {
    if (!cost) return nullptr;
    const Cost& c = *cost;
    return {
        {"list", c.list},
        {"currency", c.currency},
        {"batch", json_of(c.batch)},
        {"raw_kg", json_of(c.raw_kg)},
        {"cooked_kg", json_of(c.cooked_kg)},
        {"piece", {{"shape", c.piece}, {"grams", num(c.piece_g)}, {"money", json_of(c.piece_money)}}},
        {"lines",
         array_of(c.lines,
                  [&](const CostLine& line) {
                      return Json{{"line", line.line + 1}, {"ingredient", p.lines[line.line].ingredient}, {"money", json_of(line.money)}};
                  })},
        {"unpriced", c.unpriced},
        {"notes", in_full(c.notes)},
        {"note_reasons", json_of(c.notes)}};
}

Json json_of(const std::optional<CostChange>& change) {
    if (!change) return nullptr;
    return {{"currency", change->currency}, {"raw_kg", json_of(change->raw_kg)}, {"unpriced", change->unpriced}};
}

}  // namespace standin::cli
