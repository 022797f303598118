// The numbers that legal limits are about, each as its clause counts it. All in % of the batch as mixed, but for the share of binders.
#pragma once

#include <optional>
#include <string_view>

#include "knowledge/records/records.hpp"
#include "safety/wording.hpp"

namespace standin {

/// Lines of a batch with its mass, as caps count them.
struct Counted {
    std::vector<Present> lines;
    double batch_g = 0;
};
Counted counted(const Prediction& prediction, const Knowledge& knowledge);

/// Water and ice; a stock that is water to 99 % counts as water.
double added_water_pct(const Counted& batch);
/// Wine, vinegar, juice, milk and stock, which inspectors usually count with the water. Water inside vegetables is in neither.
double other_liquid_pct(const Counted& batch);

/// The binders 9 CFR 319.140 names: cereal, starch, starchy flour, soy flour and concentrate, dried milk; bread, rice and potato are taken
/// as cereal and starch. Isolated soy protein, egg, gelatin, fibres and gums are not among them.
double binder_pct(const Counted& batch);
/// Whatever is there first of all to bind: what a standard that names no binder leaves out.
double any_binder_pct(const Counted& batch);
double soy_isolate_pct(const Counted& batch);
/// Other binders and isolate, each as a share of its own most. Null where one of the two is absent: the caps of their own say it then.
std::optional<double> binder_share(const Counted& batch, double most_binder_pct, double most_isolate_pct);

/// The meat block, fat and all.
double meat_pct(const Counted& batch);
/// Meat as a law counts it that has the word meat cover only so much fat (Regulation (EU) No 1169/2011, Annex VII part B no 17): no offal,
/// and fat beyond the most does not count. The limit on connective tissue is not known here.
double legal_meat_pct(const Counted& batch, const std::vector<MeatWord>& words);

double fennel_or_anise_pct(const Counted& batch);
double phosphate_pct(const Counted& batch);

}  // namespace standin
