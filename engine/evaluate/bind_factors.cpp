#include "evaluate/bind_factors.hpp"

#include <algorithm>
#include <cmath>

#include "evaluate/batch.hpp"

namespace standin {

std::vector<Factor> bind_factors(const Formula& formula, const Nominal& nominal) {
    const BatchBind b = NominalBatch(formula, nominal).bind();
    const double scale = b.bind > 0 && b.bind < 100 ? -b.index / std::log(1 - b.bind / 100) : 0;  // 100 (1 - exp(-index / scale))
    const auto bind_of = [&](double index) { return scale > 0 ? 100 * (1 - std::exp(-index / scale)) : b.bind; };
    const double from_meat = b.index - b.binder;
    std::vector<Factor> all{{"salt", b.salt_factor, 0},
                            {"acid", b.acid_factor, 0},
                            {"order of salt and acid", b.order_factor, 0},
                            {"cold while mixing", b.cold_factor, 0},
                            {"mixing", b.mixing_factor, 0},
                            {"plate", b.plate_factor, 0},
                            {"rest in the cold", b.rest_factor, 0},
                            {"dilution by paste and fat", b.dilution_factor, 0}};
    if (b.gum_factor < 1) all.push_back({"thickening gum", std::pow(b.gum_factor, nominal.knowledge().parameter("bind.gum.bind").mid), 0});
    if (b.enzyme_factor < 1) all.push_back({"raw fruit that digests meat", b.enzyme_factor, 0});
    for (auto& factor : all)
        if (factor.value > 0 && factor.value < 1) factor.gives_back = bind_of(from_meat / factor.value + b.binder) - b.bind;
    std::stable_sort(all.begin(), all.end(), [](const Factor& x, const Factor& y) { return x.gives_back > y.gives_back; });
    all.push_back({"binder, added", b.binder, 0});
    all.insert(all.begin(), {"the meat itself", b.meat, 0});
    return all;
}

}  // namespace standin
