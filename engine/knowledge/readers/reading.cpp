#include "knowledge/readers/reading.hpp"

#include <algorithm>
#include <filesystem>

#include "core/files.hpp"

namespace standin {
namespace {

using ReadFile = void (*)(const JsonNode&, Problems&, KnowledgeFiles&);

ReadFile reader_of(std::string_view relative) {
    const auto within = [&](std::string_view folder) { return relative.substr(0, folder.size()) == folder; };
    if (within("ingredients/")) return read_ingredients;
    if (within("swaps/")) return read_swaps;
    if (within("models/")) return read_parameters;
    if (within("rules/")) return read_rules;
    if (within("lexicon/")) return read_lexicon;
    if (relative == "preparations.json") return read_preparations;
    if (relative == "conditions.json") return read_conditions;
    if (relative == "perception.json") return read_perception;
    if (relative == "wants.json") return read_wants;
    if (relative == "kinds.json") return read_kinds;
    if (relative == "mending.json") return read_mending;
    if (relative == "colour_names.json") return read_colour_names;
    if (relative == "allergens.json") return read_allergens;
    if (relative == "sources.json") return read_sources;
    return nullptr;
}

}  // namespace

void read_knowledge_file(std::string_view relative, std::string_view text, const std::string& file, KnowledgeFiles& into) {
    const ReadFile reader = reader_of(relative);
    if (!reader) {
        into.errors.push_back({Trouble::bad_data,
                               "not a file of the knowledge: expected ingredients/, swaps/, models/, rules/, lexicon/, preparations.json, "
                               "conditions.json, perception.json, wants.json, allergens.json, kinds.json, mending.json, "
                               "colour_names.json or sources.json",
                               file,
                               {}});
        return;
    }
    const auto root = read_json(text, file);
    if (!root) {
        into.errors.push_back(root.error());
        return;
    }
    Problems problems(file);
    reader(*root, problems, into);
    into.errors.insert(into.errors.end(), problems.errors().begin(), problems.errors().end());
}

KnowledgeFiles read_knowledge_folder(const std::string& folder) {
    namespace fs = std::filesystem;
    KnowledgeFiles all;
    std::error_code fault;
    if (!fs::is_directory(folder, fault)) {
        all.errors.push_back({Trouble::not_found, "no such folder", folder, {}});
        return all;
    }
    std::vector<std::string> found;
    for (const auto& entry : fs::recursive_directory_iterator(folder, fault)) {
        const auto relative = fs::relative(entry.path(), folder).generic_string();
        if (entry.is_regular_file() && entry.path().extension() == ".json" && relative.rfind("schema/", 0) != 0) found.push_back(relative);
    }
    std::sort(found.begin(), found.end());
    for (const auto& relative : found) {
        const std::string path = (fs::path(folder) / relative).generic_string();
        all.files.push_back(path);
        if (const auto text = read_file(path)) read_knowledge_file(relative, *text, path, all);
        else all.errors.push_back(text.error());
    }
    return all;
}

}  // namespace standin
