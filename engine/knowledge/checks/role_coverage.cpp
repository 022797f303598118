// Where the numbers come from that set the doses: the currency of each role, over the ingredients that carry it.
#include <algorithm>
#include <array>
#include <unordered_map>

#include "knowledge/checks/coverage.hpp"

namespace standin {
namespace {

using Source = const std::string* (*)(const Ingredient&);  // of the currency in an ingredient; null: it has none

const std::string* source_of(const std::optional<Quantity>& q) { return q ? &q->source : nullptr; }

struct Currency {
    Role role;
    std::string_view name;
    Source source;
};

const std::string* composition(const Ingredient& i) { return &i.composition.source; }
const std::string* strength(const Ingredient& i) { return source_of(i.strength); }

constexpr std::array<Currency, 14> currencies{{
    {Role::lean, "lean, protein and fat", composition},
    {Role::lean, "lean, pH", [](const Ingredient& i) { return i.acidity ? source_of(i.acidity->ph) : nullptr; }},
    {Role::lean, "lean, buffering", [](const Ingredient& i) { return i.meat ? &i.meat->buffer_scale.source : nullptr; }},
    {Role::fat, "fat, fat", composition},
    {Role::green, "green, chlorophyll", [](const Ingredient& i) { return source_of(i.chlorophyll); }},
    {Role::heat, "heat, capsaicinoids", [](const Ingredient& i) { return source_of(i.capsaicinoids); }},
    {Role::acid, "acid, titratable", [](const Ingredient& i) { return i.acidity ? source_of(i.acidity->titratable) : nullptr; }},
    {Role::binder, "binder, water bound", [](const Ingredient& i) { return i.binding ? &i.binding->water.source : nullptr; }},
    {Role::herb, "herb, strength", strength},
    {Role::allium, "allium, strength", strength},
    {Role::spice, "spice, strength", strength},
    {Role::salt, "salt, salt", composition},
    {Role::sweet, "sweet, sugars", composition},
    {Role::liquid, "liquid, water", composition},
}};

std::vector<const Ingredient*> all_of(const Records& records) {
    std::vector<const Ingredient*> all;
    for (const auto& i : records.ingredients) all.push_back(&i);
    return all;
}

std::vector<const Ingredient*> most_used(const Records& records) {
    constexpr std::size_t most = 100;
    std::unordered_map<std::string, std::size_t> swaps;
    for (const auto& s : records.swaps) {
        ++swaps[s.from];
        ++swaps[s.to];
    }
    auto all = all_of(records);
    const auto before = [&](const Ingredient* a, const Ingredient* b) {
        return swaps[a->id] != swaps[b->id] ? swaps[a->id] > swaps[b->id] : a->id < b->id;
    };
    std::sort(all.begin(), all.end(), before);
    all.resize(std::min(most, all.size()));
    return all;
}

std::vector<Coverage> coverage_over(const std::vector<const Ingredient*>& ingredients, const std::vector<SourceRecord>& sources) {
    std::unordered_map<std::string, SourceKind> kinds;
    for (const auto& source : sources) kinds.emplace(source.id, source.kind);
    std::vector<Coverage> all;
    for (const auto& currency : currencies) {
        all.push_back({std::string(currency.name)});
        for (const auto* i : ingredients) {
            if (std::find(i->roles.begin(), i->roles.end(), currency.role) == i->roles.end()) continue;
            const std::string* source = currency.source(*i);
            const auto kind = source ? kinds.find(source->substr(0, source->find('#'))) : kinds.end();
            if (kind != kinds.end()) count_in(all.back(), kind->second);
        }
    }
    return all;
}

}  // namespace

std::vector<Coverage> coverage_by_role(const Records& records, const std::vector<SourceRecord>& sources) {
    return coverage_over(all_of(records), sources);
}

std::vector<Coverage> coverage_by_role_of_most_used(const Records& records, const std::vector<SourceRecord>& sources) {
    auto all = coverage_over(most_used(records), sources);
    for (auto& group : all) group.group.insert(0, "most used: ");
    return all;
}

}  // namespace standin
