#include <array>
#include <nlohmann/json.hpp>

#include "render/json/json_parts.hpp"

namespace standin::cli {
namespace {

constexpr std::array<const char*, 3> confidence_words{"sure", "likely", "unsure"};

Json asked_json(const Error& error) { return {{"where", error.where}, {"message", error.message}, {"nearest", error.hints}}; }

Json line_json(const LineReading& r) {
    Json out{{"written", r.written}, {"where", r.where}, {"understood", !r.asked.has_value()}};
    if (r.asked) out["asked"] = asked_json(*r.asked);
    if (r.beside) out["beside"] = in_full(*r.beside);
    if (!r.line) return out;
    out["ingredient"] = r.line->ingredient;
    out["name"] = r.name;
    out["grams"] = json_of(r.line->grams);
    out["prepared"] = r.prepared;
    out["weighed"] = r.line->weighed_prepared ? "after" : "before";
    out["keep"] = r.line->keep;
    if (r.line->fat_pct) out["fat_pct"] = json_of(*r.line->fat_pct);
    if (r.line->ph) out["ph"] = json_of(*r.line->ph);
    if (r.line->acid_pct) out["acid_pct"] = json_of(*r.line->acid_pct);
    if (r.line->heat_mg_kg) out["heat_mg_kg"] = json_of(*r.line->heat_mg_kg);
    out["confidence"] = confidence_words[static_cast<std::size_t>(r.confidence)];
    out["why"] = in_full(r.why);
    out["why_reasons"] = json_of(r.why);
    return out;
}

}  // namespace

std::string reading_json(const FormulaReading& r, const Prediction* prediction) {
    Json page{{"title", r.title},
              {"note", r.note},
              {"understood", r.formula.has_value()},
              {"lines", array_of(r.lines, [](const LineReading& line) { return line_json(line); })},
              {"errors", array_of(r.errors, [](const Error& error) { return asked_json(error); })},
              {"told", in_full(r.told)}};
    if (prediction) {
        page["allergens"] = json_of(prediction->allergens);
        page["cautions"] = json_of(prediction->cautions);
    }
    return printed(page);
}

std::string stock_json(const Inventory& stock) {
    return printed(
        {{"items", array_of(stock.items,
                            [](const InventoryItem& item) {
                                return Json{
                                    {"ingredient", item.ingredient},
                                    {"grams", item.grams ? num(*item.grams) : Json(nullptr)},
                                    {"prepared", array_of(item.prepared, [](const Prepared& step) { return Json(step.preparation); })},
                                    {"declared", array_of(item.declared, [](const Declared& told) {
                                         return Json{{"allergen", told.allergen}, {"words", told.words}};
                                     })}};
                            })},
         {"missing", stock.missing},
         {"complete", stock.complete ? Json(*stock.complete) : Json(nullptr)},
         {"lines",
          array_of(
              stock.read,
              [](const StockRead& line) {
                  return Json{{"written", line.written}, {"where", line.where}, {"as", in_full(line.as)}, {"as_reason", json_of(line.as)}};
              })},
         {"set_aside", stock.aside},
         {"notes", in_full(stock.notes)},
         {"note_reasons", json_of(stock.notes)}});
}

}  // namespace standin::cli
