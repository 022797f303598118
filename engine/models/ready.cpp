#include "models/ready.hpp"

#include <algorithm>

#include "models/composition.hpp"

namespace standin {
namespace {

// "Roasted and peeled" has done what "roasted" and "peeled" ask for; how many minutes it had is not asked.
bool does(const Prepared& ready, const Prepared& step) {
    const std::string &done = ready.preparation, &asked = step.preparation;
    return done == asked || done.starts_with(asked + "-") || done.ends_with("-" + asked);
}

}  // namespace

std::vector<Prepared> still_to_do(const Line& line) {
    std::vector<Prepared> rest;
    for (const auto& step : line.prepared)
        if (std::none_of(line.ready.begin(), line.ready.end(), [&](const Prepared& ready) { return does(ready, step); }))
            rest.push_back(step);
    return rest;
}

std::vector<Prepared> all_done(const Line& line) {
    std::vector<Prepared> all = line.ready;
    for (auto& step : still_to_do(line)) all.push_back(std::move(step));
    return all;
}

double raw_grams(const Line& line, const Knowledge& knowledge) {
    if (!line.weighed_prepared) return line.grams.mid;
    const double yield = preparation_yield(*knowledge.ingredient(line.ingredient), line.prepared, knowledge);
    return yield > 0 ? line.grams.mid / yield : line.grams.mid;
}

double lying_grams(const Line& line, const Knowledge& knowledge) {
    if (line.ready.empty() || (line.weighed_prepared && still_to_do(line).empty())) return line.grams.mid;
    return raw_grams(line, knowledge) * preparation_yield(*knowledge.ingredient(line.ingredient), line.ready, knowledge);
}

void take_ready(Line& line, const Inventory& have) {
    for (const auto& item : have.items)
        if (item.ingredient == line.ingredient) line.ready = item.prepared;
}

}  // namespace standin
