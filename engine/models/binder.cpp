#include "models/binder.hpp"

#include <cmath>

namespace standin {

double protein_share_kept(double ph, const BinderParameters& p) {
    const double off = (ph - p.isoelectric_ph) / p.isoelectric_width;
    return 1 - p.isoelectric_loss * std::exp(-off * off);
}

double held_in_the_heat(const Material& batch, double ph, const BinderParameters& p) {
    const double all = batch[Amount::held_hot] + batch[Amount::held_cold] + batch[Amount::held_thick];
    return p.efficiency * (all - (1 - protein_share_kept(ph, p)) * batch[Amount::held_protein]);
}

double loose_paste_water(double paste_water, double capacity) {
    return paste_water > 0 ? paste_water * std::exp(-capacity / paste_water) : 0;
}

}  // namespace standin
