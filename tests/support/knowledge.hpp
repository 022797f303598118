// The embedded knowledge, loaded once a test program.
#pragma once

#include "knowledge/load.hpp"

inline const standin::Knowledge& knowledge() {
    static const standin::Knowledge loaded = standin::embedded_knowledge();
    return loaded;
}
