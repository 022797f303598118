// The knowledge of a run: what was packed into the program, overlaid by a folder of the user's.
#pragma once

#include <string>

#include "knowledge/knowledge.hpp"

namespace standin {

/// What was built in.
Knowledge embedded_knowledge();

/// The built-in records with those of `over` laid over them: a known id replaces, a new one is added. Not checked.
Records laid_over_embedded(const Records& over);

/// The built-in knowledge with the records of `folder` laid over it: a record with a known id replaces the built-in one, a new one is
/// added. The whole is checked again; every error names its place.
Result<Knowledge> overlaid_knowledge(const std::string& folder);

}  // namespace standin
