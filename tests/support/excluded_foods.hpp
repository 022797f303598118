// Foods of an answer that the maker's words leave out.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "knowledge/index/kinds.hpp"
#include "safety/exclusions.hpp"
#include "standin/advice.hpp"
#include "support/cases.hpp"

// Every food that a variant has or names to take in its place, and that the words leave out.
inline std::vector<std::string> excluded_foods(const standin::Variant& v, const std::vector<std::string>& words) {
    std::vector<std::string> named, found;
    std::set<std::string> kept;  // lines of the maker: what only may hold it may stay, and its packet is told to be looked at
    for (const auto& l : v.formula.lines) {
        named.push_back(l.ingredient);
        kept.insert(l.ingredient);
    }
    for (const auto& e : v.edits) kept.erase(e.with);
    const auto kept_by_packet = [&](const std::string& id, const standin::Exclusion& exclusion) {
        standin::Ingredient plain = *knowledge().ingredient(id);
        plain.may_hold.clear();
        return kept.count(id) > 0 && exclusion.kind && !standin::belongs(plain, *exclusion.kind, knowledge());
    };
    for (const auto& e : v.edits) {
        if (!e.with.empty() && e.kind != standin::EditKind::process) named.push_back(e.with);
        for (const auto& other : e.alternatives) named.push_back(other.with);
    }
    for (const auto& word : words) {
        const standin::Exclusion exclusion = standin::exclusion_of(word, knowledge()).value();
        for (const auto& id : named)
            if (exclusion.foods.count(id) && !kept_by_packet(id, exclusion)) found.push_back(word + ": " + id);
    }
    return found;
}
