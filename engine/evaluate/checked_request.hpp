// The door for requests that a program may have put together by hand, as checked_formula.hpp is for formulas.
#pragma once

#include <string>
#include <vector>

#include "knowledge/index/knowledge.hpp"
#include "standin/advice.hpp"
#include "standin/mend.hpp"
#include "standin/plan.hpp"
#include "standin/sheet.hpp"

namespace standin {

/// Everything wrong with these, empty when they are sound.
std::vector<std::string> faults_in(const Inventory& inventory, const Knowledge& knowledge);
std::vector<std::string> faults_in(const SwapsRequest& request, const Knowledge& knowledge);
std::vector<std::string> faults_in(const AdaptRequest& request, const Knowledge& knowledge);
std::vector<std::string> faults_in(const MendRequest& request, const Knowledge& knowledge);
std::vector<std::string> faults_in(const PlanRequest& request, const Knowledge& knowledge);
std::vector<std::string> faults_in(const SheetRequest& request);

}  // namespace standin
