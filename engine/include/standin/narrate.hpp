// Answers with every sentence in the maker's units. As they come from the engine, their sentences are in metric.
#pragma once

#include "standin/engine.hpp"
#include "standin/mend.hpp"
#include "standin/plan.hpp"

namespace standin {

/// Which way a property went, as it is felt: "less sharp", "richer".
std::string direction(Property property, double difference);

/// How a maker could come to know what an answer rests on and is not known well.
std::string how_to_know(const Reason& unknown, Units units = Units::metric);

Prediction told_in(Prediction prediction, Units units);
AdaptAnswer told_in(AdaptAnswer answer, Units units);
SwapsAnswer told_in(SwapsAnswer answer, Units units);
CompareAnswer told_in(CompareAnswer answer, Units units);
WhyAnswer told_in(WhyAnswer answer, Units units);
Sheet told_in(Sheet sheet, Units units);
SheetStep told_in(SheetStep step, Units units);
LookupAnswer told_in(LookupAnswer answer, Units units);
MendAnswer told_in(MendAnswer answer, Units units);
PlanAnswer told_in(PlanAnswer answer, Units units);

}  // namespace standin
