// Where the numbers come from that set the doses: the currency of each role, over the ingredients that carry it.
#include <algorithm>
#include <array>
#include <unordered_map>

#include "knowledge/coverage.hpp"

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

}  // namespace

std::vector<Coverage> coverage_by_role(const Records& records, const std::vector<SourceRecord>& sources) {
    std::unordered_map<std::string, SourceKind> kinds;
    for (const auto& source : sources) kinds.emplace(source.id, source.kind);
    std::vector<Coverage> all;
    for (const auto& currency : currencies) {
        all.push_back({std::string(currency.name)});
        for (const auto& i : records.ingredients) {
            if (std::find(i.roles.begin(), i.roles.end(), currency.role) == i.roles.end()) continue;
            const std::string* source = currency.source(i);
            const auto kind = source ? kinds.find(source->substr(0, source->find('#'))) : kinds.end();
            if (kind != kinds.end()) count_in(all.back(), kind->second);
        }
    }
    return all;
}

}  // namespace standin
