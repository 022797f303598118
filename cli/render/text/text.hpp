// Answers as pages for the terminal: at most 80 columns, the answer first. Allergens and cautions are on every one of them.
#pragma once

#include <string>
#include <vector>

#include "render/detail.hpp"
#include "standin/engine.hpp"
#include "standin/mend.hpp"
#include "standin/plan.hpp"
#include "terminal.hpp"

namespace standin::cli {

std::string predict_text(const Prediction& prediction, const Detail& detail, const Look& look);
std::string why_text(const WhyAnswer& answer, Units units, const Look& look);
std::string compare_text(const CompareAnswer& answer, const Detail& detail, const Look& look);
std::string swaps_text(const SwapsAnswer& answer, const std::string& title, const Engine& engine, const Detail& detail, const Look& look);
std::string adapt_text(const AdaptAnswer& answer, const Engine& engine, const Detail& detail, const Look& look);
std::string plan_text(const PlanAnswer& answer, const Engine& engine, const Detail& detail, const Look& look);
std::string mend_text(const MendAnswer& answer, const Engine& engine, const Detail& detail, const Look& look);
std::string sheet_text(const Sheet& sheet, const Detail& detail, const Look& look);
/// Each line as written and as understood, or what is asked back.
std::string reading_text(const FormulaReading& reading, const Look& look);
/// What those lines hold of allergens, and what of them is to be minded first, below that.
std::string reading_dangers_text(const Prediction& prediction, const Look& look);
/// A list of what is on hand as it was understood, line by line.
std::string stock_text(const Inventory& stock, const Look& look);
std::string lookup_text(const LookupAnswer& answer, const Engine& engine, Units units, const Look& look);
/// `full` lists every case of a warning.
std::string check_text(const CheckAnswer& answer, bool full, const Look& look);

}  // namespace standin::cli
