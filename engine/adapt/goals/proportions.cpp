#include "adapt/goals/proportions.hpp"

#include <algorithm>
#include <string>

#include "evaluate/batch.hpp"
#include "models/all_fish.hpp"

namespace standin {
namespace {

double share(const Context& context, const char* of) { return context.constant(std::string("advice.most.") + of); }

}  // namespace

Proportions::Proportions(const Formula& formula, const Context& context)
    : Proportions(context, all_fish(NominalBatch(formula, context.nominal()).total())) {}

Proportions::Proportions(const Context& context, bool fish)
    : paste(share(context, "paste")),
      leaves(share(context, "leaves")),
      binder(share(context, fish ? "fish-binder" : "binder")),
      acid(share(context, "acid")),
      sour_pour(share(context, "sour-pour")),
      oil(share(context, "oil")),
      liquid(share(context, "liquid")),
      poured(share(context, "poured-fat")),
      raise(share(context, "raise")),
      dose(share(context, "dose")),
      new_binder_(fish ? binder : share(context, "new-binder")),
      new_liquid_(share(context, "new-liquid")),
      new_fat_(share(context, "new-fat")),
      new_lean_(share(context, "new-lean")),
      new_seasoning_(share(context, "new-seasoning")) {}

double Proportions::of_batch(Role role) const {
    switch (role) {
        case Role::binder:
            return binder;
        case Role::acid:
            return acid;
        case Role::liquid:
            return liquid;
        default:
            return paste;
    }
}

double Proportions::added(Role role) const {
    switch (role) {
        case Role::binder:
            return new_binder_;
        case Role::liquid:
            return new_liquid_;
        case Role::acid:
            return acid;
        case Role::fat:
            return new_fat_;
        case Role::lean:
            return new_lean_;
        default:
            return new_seasoning_;
    }
}

double Proportions::poured_fat(const Material& per_gram) const {
    const double fat = per_gram[Amount::fat] / per_gram[Amount::mass];
    return fat > 0 ? std::min(poured, oil / fat) : 0;
}

}  // namespace standin
