// The knowledge of a run: what was packed into the program, overlaid by a folder of the user's.
#pragma once

#include <string>
#include <vector>

#include "knowledge/checks/check.hpp"
#include "knowledge/index/knowledge.hpp"

namespace standin {

/// What was built in.
Knowledge embedded_knowledge();

/// The built-in records with those of `over` laid over them: a known id replaces, a new one is added; a food keeps its cautions, and a rule
/// set is added to record by record. Not checked.
Records laid_over_embedded(const Records& over);

/// The cross checks of `all`, which is `files` laid over the built-in records, and what in the folder would make anything less safe.
std::vector<Finding> check_laid_over(const Records& all, const KnowledgeFiles& files);

/// The built-in knowledge with the records of `folder` laid over it: a record with a known id replaces the built-in one, a new one is
/// added. The whole is checked again; every error names its place.
Result<Knowledge> overlaid_knowledge(const std::string& folder);

}  // namespace standin
