// The JSON files of the knowledge, read into records.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>

#include "core/typed_reader.hpp"
#include "knowledge/records/records.hpp"

namespace standin {

/// Where each record stood ("ingredient spinach" -> "file:line:column"), for the cross checks' messages.
using Places = std::unordered_map<std::string, std::string>;

/// What reading a folder of knowledge gave: the records, their places, and everything wrong with them.
struct KnowledgeFiles {
    Records records;
    Places places;
    std::vector<Error> errors;
    std::vector<std::string> files;
};

/// Reads every knowledge file under `folder` (missing files are no fault: an overlay holds only what differs).
KnowledgeFiles read_knowledge_folder(const std::string& folder);

/// Reads one file's text as what its place in the folder says it is ("ingredients/herbs.json", "swaps/green.json", ...).
void read_knowledge_file(std::string_view relative, std::string_view text, const std::string& file, KnowledgeFiles& into);

// One reader a kind of record; each adds to `into`.
void read_sources(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_ingredients(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_preparations(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_swaps(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_conditions(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_parameters(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_perception(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_wants(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_allergens(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_rules(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_kinds(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_lexicon(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_mending(const JsonNode& root, Problems& problems, KnowledgeFiles& into);
void read_colour_names(const JsonNode& root, Problems& problems, KnowledgeFiles& into);

}  // namespace standin
