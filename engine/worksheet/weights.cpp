#include "worksheet/weights.hpp"

#include <algorithm>
#include <cmath>

#include "models/ready.hpp"
#include "standin/number_text.hpp"
#include "worksheet/parts.hpp"

namespace standin {
namespace {

// A weight that lies between two steps goes the way in which it is written wherever the sheet names it: 6.25 g as 6.2 g.
double on_the_scale(double grams, double step) {
    constexpr double tenth = 0.1, gram = 1;
    if (step == tenth || step == gram) return number_in(fixed_text(grams, step == gram ? 0 : 1)).value_or(grams);
    return std::round(grams / step) * step;
}

}  // namespace

std::vector<SheetWeight> weights_of(const Formula& formula, const Knowledge& knowledge) {
    const double fine_step = knowledge.parameter("bench.scale.fine").mid, fine_below = knowledge.parameter("bench.scale.fine-below").mid;
    const double worst = knowledge.parameter("bench.scale.worst").mid, step = knowledge.parameter("bench.scale.step").mid;
    constexpr double poured = 20;  // grams, from which on a liquid is weighed to the gram: judgement
    std::vector<SheetWeight> all;
    for (std::size_t n = 0; n < formula.lines.size(); ++n) {
        const Line& line = formula.lines[n];
        const Part part = part_of(line, knowledge);
        SheetWeight w;
        w.line = n;
        w.grams = lying_grams(line, knowledge);
        w.fine = step / 2 > worst * w.grams;  // half a step is what a scale may be off
        const bool seasoning =
            part == Part::salt || part == Part::dry || part == Part::soaking || (part == Part::acid && line.grams.mid < poured);
        w.scale_g = w.fine || (seasoning && w.grams < fine_below) ? std::min(fine_step, step) : step;
        w.weigh_g = on_the_scale(w.grams, w.scale_g);
        if (w.weigh_g <= 0) w.weigh_g = w.grams;  // less than any of these scales shows
        w.after = line.weighed_prepared && !line.prepared.empty();
        w.in_the_batch_g = ready_grams(line, knowledge);
        all.push_back(w);
    }
    return all;
}

}  // namespace standin
