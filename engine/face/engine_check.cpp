// Is this formula, inventory, price list or knowledge folder sound?
#include <filesystem>
#include <set>

#include "core/files.hpp"
#include "evaluate/checked_formula.hpp"
#include "face/inside.hpp"
#include "formula/kitchen/kitchen_text.hpp"
#include "formula/kitchen/price_list.hpp"
#include "formula/reading.hpp"
#include "knowledge/checks/check.hpp"
#include "knowledge/checks/coverage.hpp"
#include "knowledge/checks/integrity.hpp"
#include "knowledge/index/defaults.hpp"
#include "safety/cautions.hpp"

namespace standin {
namespace {

KnowledgeCounts count(const Records& records, const std::vector<Coverage>& coverage) {
    KnowledgeCounts c;
    c.ingredients = records.ingredients.size();
    for (const auto& i : records.ingredients) c.names += i.names.size();
    c.preparations = records.preparations.size();
    c.swaps = records.swaps.size();
    for (const auto& s : records.swaps) c.derived_swaps += s.derived ? 1 : 0;
    for (const auto& r : records.rules)
        c.rules += r.allergens.size() + r.caps.size() + r.cooking.size() + r.making.size() + r.cautions.size();
    for (const auto& group : coverage) {
        c.published += group.published;
        c.common_practice += group.common_practice;
        c.from_memory += group.from_memory;
        c.judgement += group.judgement;
    }
    return c;
}

// A folder with records of every sort is judged by itself; one that lacks a sort is there to be laid over what is built in.
bool stands_alone(const Records& r) {
    return !r.sources.empty() && !r.ingredients.empty() && !r.preparations.empty() && !r.swaps.empty() && !r.parameters.empty() &&
           !r.perception.empty() && !r.wants.empty() && !r.rules.empty();
}

void look_closer(const Records& all, const KnowledgeFiles& files, bool alone, FileCheck& result) {
    Records filled = all;
    fill_defaults(filled);
    for (const auto& doubt : doubts_about(filled)) {
        const auto place = files.places.find(doubt.record);
        if (place == files.places.end() && !alone) continue;  // what is built in is not the folder's doing
        result.warnings.push_back({std::string(doubt.kind),
                                   std::string(doubt.says),
                                   doubt.about,
                                   doubt.about + (doubt.detail.empty() ? "" : ": " + doubt.detail),
                                   place == files.places.end() ? doubt.record : place->second,
                                   {}});
    }
}

FileCheck check_knowledge(const std::string& folder, CheckAnswer& answer) {
    const KnowledgeFiles files = read_knowledge_folder(folder);
    const bool alone = stands_alone(files.records);
    FileCheck result{folder, "knowledge", true, !alone, files.errors, {}};
    if (files.files.empty() && files.errors.empty()) result.errors.push_back({Trouble::bad_data, "holds no knowledge files", folder, {}});
    const Records all = alone ? files.records : laid_over_embedded(files.records);
    std::set<std::string> here;
    for (const auto& [record, place] : files.places) here.insert(place);
    for (const auto& finding : alone ? check_records(all, files.places) : check_laid_over(all, files))
        if (finding.error) result.errors.push_back({Trouble::bad_data, finding.message, finding.where, finding.hints});
        else if (alone || here.count(finding.where)) result.warnings.push_back({"", "", "", finding.message, finding.where, finding.hints});
    if (result.errors.empty()) look_closer(all, files, alone, result);
    answer.coverage = coverage_of(files.records, all.sources);
    answer.by_role = coverage_by_role(files.records, all.sources);
    for (auto& group : coverage_by_role_of_most_used(files.records, all.sources)) answer.by_role.push_back(std::move(group));
    answer.counts = count(files.records, answer.coverage);
    return result;
}

// By its name, so that a fault in one is told as that.
bool named_kitchen(const std::string& path) {
    const std::string name = std::filesystem::path(path).filename().string();
    return name.rfind("kitchen", 0) == 0 || (name.size() > 12 && name.compare(name.size() - 12, 12, "-kitchen.txt") == 0);
}

// By its name: a list that is found beside a formula is called so.
bool is_price_list(const std::string& path) { return std::filesystem::path(path).filename() == "prices.txt"; }

// What the process says that must be minded stands as a warning. A list of what is on hand is judged as one.
FileCheck check_text(const std::string& path, const std::string& text, const Knowledge& knowledge, std::string_view rules) {
    FileCheck result{path, "formula", true, false, {}, {}};
    if (named_kitchen(path)) {
        result.kind = "kitchen";
        if (const auto kitchen = read_kitchen(text, path, knowledge); !kitchen) result.errors.push_back(kitchen.error());
        else
            for (const auto& note : kitchen->notes) result.warnings.push_back({"", "", "", in_full(note), path, {}});
        return result;
    }
    const bool prices = is_price_list(path) || (looks_like_prices(text, path) && !read_formula(text, path, knowledge));
    if (prices) {
        result.kind = "prices";
        if (const auto list = read_prices(text, path, knowledge); !list) result.errors.push_back(list.error());
        return result;
    }
    if (looks_like_stock(text, path, knowledge)) {
        result.kind = "inventory";
        const auto stock = read_inventory(text, path, knowledge);
        if (!stock) result.errors.push_back(stock.error());
        else
            for (const auto& name : stock->aside)
                result.warnings.push_back({"", "", "", "\"" + name + "\" is not known here, and would be set aside", path, {}});
        return result;
    }
    const auto formula = read_formula(text, path, knowledge);
    if (formula) {
        if (const auto sound = CheckedFormula::of(*formula, knowledge); !sound) result.errors.push_back(sound.error());
        if (result.errors.empty()) {
            for (const auto& caution : cautions_of_process(formula->process, knowledge, rules))
                result.warnings.push_back({"", "", "", caution.text + " [" + caution.source + "]", path, {}});
            return result;
        }
    }
    if (const auto stock = read_inventory(text, path, knowledge); stock && stock->aside.empty())
        return {path, "inventory", true, false, {}, {}};
    if (looks_like_kitchen(text, path, knowledge)) return {path, "kitchen", true, false, {}, {}};
    if (!formula) result.errors.push_back(formula.error());
    return result;
}

}  // namespace

CheckAnswer Engine::check(const std::vector<std::string>& paths, const Setting& setting) const {
    CheckAnswer answer;
    const std::string& rules = setting.rules ? *setting.rules : inside_->options.rules;
    for (const auto& path : paths) {
        if (std::filesystem::is_directory(path)) {
            answer.files.push_back(check_knowledge(path, answer));
        } else if (const auto text = read_file(path)) {
            answer.files.push_back(check_text(path, *text, inside_->knowledge, rules));
        } else {
            answer.files.push_back({path, "unknown", false, false, {text.error()}, {}});
        }
        answer.files.back().ok = answer.files.back().errors.empty();
    }
    return answer;
}

}  // namespace standin
