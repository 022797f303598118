// Where the numbers of the knowledge come from, by what they are about.
#pragma once

#include <string>
#include <vector>

#include "knowledge/records/records.hpp"
#include "standin/engine.hpp"

namespace standin {

/// References by group and kind of source, each reference in one group. Kinds are looked up in `sources`; what is unknown there is not
/// counted. Groups stand in the order of the README, also where nothing is in them.
std::vector<Coverage> coverage_of(const Records& records, const std::vector<SourceRecord>& sources);

/// The same for the currency of each role alone, over the ingredients that carry the role: what the doses hang on.
std::vector<Coverage> coverage_by_role(const Records& records, const std::vector<SourceRecord>& sources);

/// And over the hundred foods that the most swaps name, on either end: those that makers meet most. Each group begins with "most used: ".
std::vector<Coverage> coverage_by_role_of_most_used(const Records& records, const std::vector<SourceRecord>& sources);

/// One more number of that kind.
void count_in(Coverage& to, SourceKind kind);

}  // namespace standin
