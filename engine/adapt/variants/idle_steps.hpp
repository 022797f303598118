// Steps of the making that change nothing here: not worth telling.
#pragma once

#include "adapt/variants/variant.hpp"

namespace standin {

/// Takes back each change of the making that moves no property a want is about, in the variant as it is weighed out.
void drop_idle_steps(BuiltVariant& variant, const Process& base, const Distance& distance, const Nominal& nominal);

}  // namespace standin
