// Is this formula, inventory or knowledge folder sound?
#include <filesystem>
#include <map>

#include "base/files.hpp"
#include "face/inside.hpp"
#include "formula/reading.hpp"
#include "knowledge/check.hpp"
#include "knowledge/references.hpp"
#include "predict/predict.hpp"

namespace standin {
namespace {

KnowledgeCounts count(const Records& records) {
    KnowledgeCounts c;
    c.ingredients = records.ingredients.size();
    for (const auto& i : records.ingredients) c.names += i.names.size();
    c.preparations = records.preparations.size();
    c.swaps = records.swaps.size();
    for (const auto& s : records.swaps) c.derived_swaps += s.derived ? 1 : 0;
    for (const auto& r : records.rules) c.rules += r.allergens.size() + r.caps.size() + r.cooking.size() + r.cautions.size();
    std::map<std::string, SourceKind> kinds;
    for (const auto& s : records.sources) kinds.emplace(s.id, s.kind);
    for (const auto& reference : references_in(records)) {
        const auto kind = kinds.find(reference.source.substr(0, reference.source.find('#')));
        if (kind == kinds.end()) continue;
        switch (kind->second) {
            case SourceKind::published: ++c.published; break;
            case SourceKind::common_practice: ++c.common_practice; break;
            case SourceKind::from_memory: ++c.from_memory; break;
            case SourceKind::judgement: ++c.judgement; break;
        }
    }
    return c;
}

FileCheck check_knowledge(const std::string& folder, KnowledgeCounts& counts) {
    FileCheck result{folder, "knowledge", true, {}, {}};
    const KnowledgeFiles files = read_knowledge_folder(folder);
    result.errors = files.errors;
    if (files.files.empty() && files.errors.empty()) result.errors.push_back({Trouble::bad_data, "holds no knowledge files", folder, {}});
    for (const auto& finding : check_records(files.records, files.places))
        (finding.error ? result.errors : result.warnings).push_back({Trouble::bad_data, finding.message, finding.where, finding.hints});
    counts = count(files.records);
    return result;
}

// What a text is meant to be: an inventory says "have" or lines with "plenty" or "no ..."; whichever reads wins, a formula first.
FileCheck check_text(const std::string& path, const std::string& text, const Knowledge& knowledge) {
    FileCheck result{path, "formula", true, {}, {}};
    const auto formula = read_formula(text, path, knowledge);
    if (formula) {
        if (const auto sound = check_formula(*formula, knowledge); !sound) result.errors.push_back(sound.error());
        if (result.errors.empty()) return result;
    }
    if (read_inventory(text, path, knowledge)) return {path, "inventory", true, {}, {}};
    if (!formula) result.errors.push_back(formula.error());
    return result;
}

}  // namespace

CheckAnswer Engine::check(const std::vector<std::string>& paths) const {
    CheckAnswer answer;
    for (const auto& path : paths) {
        if (std::filesystem::is_directory(path)) {
            answer.files.push_back(check_knowledge(path, answer.counts.emplace()));
        } else if (const auto text = read_file(path)) {
            answer.files.push_back(check_text(path, *text, inside_->knowledge));
        } else {
            answer.files.push_back({path, "unknown", false, {text.error()}, {}});
        }
        answer.files.back().ok = answer.files.back().errors.empty();
    }
    return answer;
}

}  // namespace standin
