// What text and HTML pages say alike of a plan.
#pragma once

#include <string>
#include <vector>

#include "render/detail.hpp"
#include "standin/plan.hpp"

namespace standin::cli {

std::string answer_first(const PlanAnswer& answer, Units units);

/// "close (1.4): 260 g chard for 320 g spinach", "as written".
std::string way_of(const PlannedSausage& sausage, const Engine& engine, Units units);
/// "4.2 kg, then the sorrel is gone"; empty where nothing of the list runs out.
std::string ends_with(const PlannedSausage& sausage, Units units);
/// What was asked and is not all there; empty: nothing.
std::string falls_short(const PlannedSausage& sausage, Units units);
/// "1.2 kg of 3 kg chard: 2-4 days cold".
std::string left_over(const LeftOver& left, Units units);
/// "400 g spinach more: 2.1 kg more sausage in all, and Hedgerow green is made".
std::string worth(const WorthBuying& buy, Units units);

/// What both kinds of page list, a sentence each.
struct PlanLists {
    std::vector<std::string> shortfalls, left, helps, presumed;
};
PlanLists lists_of(const PlanAnswer& answer, Units units);

}  // namespace standin::cli
