#include "knowledge/checks/coverage.hpp"

#include <array>
#include <unordered_map>

#include "knowledge/records/references.hpp"

namespace standin {
namespace {

struct Group {
    std::string_view name;
    std::string_view begins;                 // how the key of a record begins
    std::array<std::string_view, 4> fields;  // how the field begins; empty: not one. None at all: every field of the record
};

// The first group that fits takes the reference.
constexpr std::array<Group, 15> groups{{
    {"composition", "ingredient ", {"composition", "sulphites"}},
    {"pigment", "ingredient ", {"chlorophyll", "lutein", "tint"}},
    {"heat", "ingredient ", {"capsaicinoids", "pungency", "pod_sigma", "lot_sigma"}},
    {"acid", "ingredient ", {"ph", "titratable", "buffer"}},
    {"binding", "ingredient ", {"bind"}},
    {"measures", "ingredient ", {"measure ", "edible", "strength"}},
    {"limits", "ingredient ", {"most_g_per_kg"}},
    {"preparations", "preparation ", {}},
    {"swaps", "swap ", {}},
    {"conditions", "condition ", {}},
    {"models", "parameter ", {}},
    {"rules", "rules ", {}},
    {"perception", "difference ", {}},
    {"wants", "want ", {}},
    {"hazards", "hazard ", {}},
}};

bool begins(std::string_view text, std::string_view with) { return text.substr(0, with.size()) == with; }

bool fits(const Group& group, const Reference& reference) {
    if (!begins(reference.record, group.begins)) return false;
    if (group.fields.front().empty()) return true;
    for (const auto field : group.fields)
        if (!field.empty() && begins(reference.what, field)) return true;
    return false;
}

}  // namespace

void count_in(Coverage& to, SourceKind kind) {
    switch (kind) {
        case SourceKind::published:
            ++to.published;
            break;
        case SourceKind::common_practice:
            ++to.common_practice;
            break;
        case SourceKind::from_memory:
            ++to.from_memory;
            break;
        case SourceKind::judgement:
            ++to.judgement;
            break;
    }
}

std::vector<Coverage> coverage_of(const Records& records, const std::vector<SourceRecord>& sources) {
    std::unordered_map<std::string, SourceKind> kinds;
    for (const auto& source : sources) kinds.emplace(source.id, source.kind);
    std::vector<Coverage> all;
    for (const auto& group : groups) all.push_back({std::string(group.name)});
    for (const auto& reference : references_in(records)) {
        const auto kind = kinds.find(reference.source.substr(0, reference.source.find('#')));
        if (kind == kinds.end()) continue;
        for (std::size_t g = 0; g < groups.size(); ++g)
            if (fits(groups[g], reference)) {
                count_in(all[g], kind->second);
                break;
            }
    }
    return all;
}

}  // namespace standin
