// A formula with what is wanted of it, as the parts of the advisor see it.
#pragma once

#include <string>
#include <vector>

#include "adapt/distance/distance.hpp"
#include "adapt/goals/wants.hpp"
#include "support/kitchen.hpp"

class Advising {
public:
    Advising(standin::Formula formula, const std::vector<std::string>& wants, const standin::Knowledge& known = knowledge())
        : formula_(std::move(formula)),
          evaluator_(known, 16, 1),
          batch_(formula_, evaluator_.nominal()),
          distance_(context(), batch_.total(), batch_.state(), standin::read_wants(wants, known).value()) {}
    Advising(const Advising&) = delete;
    Advising& operator=(const Advising&) = delete;

    const standin::Formula& formula() const { return formula_; }
    const standin::Distance& distance() const { return distance_; }
    const standin::Models& models() const { return evaluator_.nominal().models(); }
    standin::Context context() { return {evaluator_, options_}; }

private:
    standin::Formula formula_;
    standin::Options options_;
    standin::Evaluator evaluator_;
    standin::NominalBatch batch_;
    standin::Distance distance_;
};
