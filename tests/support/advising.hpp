// A formula with what is wanted of it, as the parts of the advisor see it.
#pragma once

#include <string>
#include <vector>

#include "adapt/wants.hpp"
#include "adapt/yardstick.hpp"
#include "support/kitchen.hpp"

class Advising {
public:
    Advising(standin::Formula formula, const std::vector<std::string>& wants, const standin::Knowledge& known = knowledge())
        : formula_(std::move(formula)),
          middle_(known, standin::Draws::middle()),
          batch_(formula_, middle_.pantry),
          yardstick_(context(), batch_.total(0), middle_.models.state(batch_.total(0), batch_.process(0), 0),
                     standin::read_wants(wants, known).value()) {}
    Advising(const Advising&) = delete;
    Advising& operator=(const Advising&) = delete;

    const standin::Formula& formula() const { return formula_; }
    const standin::Yardstick& yardstick() const { return yardstick_; }
    const standin::Models& models() const { return middle_.models; }
    standin::Context context() { return {middle_.pantry, middle_.pantry, options_}; }

private:
    standin::Formula formula_;
    standin::Options options_;
    standin::Bench middle_;
    standin::Batch batch_;
    standin::Yardstick yardstick_;
};
