// Answers as self-contained HTML files: no network, no script, readable on a phone and on paper. Allergens and cautions are near the top
// of every one of them.
#pragma once

#include <string>
#include <vector>

#include "command.hpp"
#include "render/detail.hpp"
#include "standin/engine.hpp"
#include "standin/mend.hpp"
#include "standin/plan.hpp"

namespace standin::cli {

std::string predict_html(const Prediction& prediction, const Detail& detail);
std::string compare_html(const std::vector<Prediction>& predictions, const Detail& detail);
std::string swaps_html(const SwapsAnswer& answer, const std::string& title, const Engine& engine, const Detail& detail);
std::string adapt_html(const AdaptAnswer& answer, const Engine& engine, const Detail& detail);
std::string plan_html(const PlanAnswer& answer, const Engine& engine, const Detail& detail);
std::string mend_html(const MendAnswer& answer, const Engine& engine, const Detail& detail);
std::string sheet_html(const Sheet& sheet, const Detail& detail);

}  // namespace standin::cli
