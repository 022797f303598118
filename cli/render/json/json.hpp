// Answers as JSON with stable keys. Numbers carry six significant digits.
#pragma once

#include <string>
#include <vector>

#include "render/extras.hpp"
#include "render/told_beside.hpp"
#include "standin/engine.hpp"
#include "standin/mend.hpp"
#include "standin/plan.hpp"

namespace standin::cli {

enum class Form {
    document,  ///< indented
    line       ///< one line, for JSON Lines
};

std::string predict_json(const Prediction& prediction, Form form, const Extras& beside);
std::string why_json(const WhyAnswer& answer);
std::string compare_json(const CompareAnswer& answer);
std::string plan_json(const PlanAnswer& answer, const Engine& engine);
std::string mend_json(const MendAnswer& answer, const Engine& engine);
std::string swaps_json(const SwapsAnswer& answer, const Engine& engine, const Extras& beside);
std::string adapt_json(const AdaptAnswer& answer, const Engine& engine, const Extras& beside);
std::string sheet_json(const Sheet& sheet, const Extras& beside);
/// With what is to be minded, where it could be read: `prediction` may be null.
std::string reading_json(const FormulaReading& reading, const Prediction* prediction);

/// A formula as JSON or as JSON-LD, with what is told of it where its reader passes over it.
std::string with_told_json(const std::string& formula, const ToldBeside& told);
std::string with_told_jsonld(const std::string& formula, const ToldBeside& told);
std::string stock_json(const Inventory& stock);
std::string lookup_json(const LookupAnswer& answer);
std::string graph_json(const std::string& dot);
std::string check_json(const CheckAnswer& answer);

}  // namespace standin::cli
