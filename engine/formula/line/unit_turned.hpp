// Units that stand before their number: "g 80", "kg 3", "salt g 80".
#pragma once

#include <string>

#include "knowledge/index/knowledge.hpp"

namespace standin {

/// "g 80 salt" as "80 g salt", "Spalla di maiale kg 3" as "Spalla di maiale 3 kg".
void turn_unit_first(std::string& line, const Knowledge& knowledge);

/// "2.2k" as "2.2 kg".
void write_kilos(std::string& line);

}  // namespace standin
