// The ways to mend one mass, by additions, by plain mass, by both.
#pragma once

#include "mend/mass.hpp"

namespace standin {

struct Ways {
    std::vector<MendWay> all;
    std::vector<Reason> cannot;
};

Ways ways_to_mend(const Mass& mass);

}  // namespace standin
