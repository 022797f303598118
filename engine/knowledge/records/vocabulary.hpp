// Closed word lists inside the knowledge, each with its spelling in the files. One table a list; readers and pages use only these.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

#include "standin/vocabulary.hpp"

namespace standin {

enum class SourceKind { published, common_practice, from_memory, judgement };
enum class Tissue { thin_leaf, thick_leaf, chile_flesh, fruit, bulb, root, stalk, seed, fungus, meat, fat_tissue, dry, liquid, paste, egg };
enum class Acid { acetic, lactic, citric, malic, tartaric, oxalic, succinic, ascorbic, phosphoric };
enum class Species { pork, beef, veal, lamb, goat, game, rabbit, chicken, turkey, duck, fish, crustacean };
enum class AromaNote { grassy, anise, citrus, minty, woody, warm, peppery, allium, mustard, smoky, nutty, bitter, earthy, fruity };
enum class Basis { dose, weight };
/// What a legal limit is about, each as its clause counts it (safety/cap_values.hpp).
enum class CapProperty {
    fat_pct,
    fat_of_meat_pct,
    salt_pct,
    added_water_pct,
    binder_pct,
    soy_isolate_pct,
    binder_share,
    meat_pct,
    fennel_or_anise_pct,
    phosphate_pct
};
enum class ProcessField { plate, mixing, mixed_at, rest, rest_at, core };

/// What a preparation may keep a share of. `solids` is all dry matter not named apart.
enum class Kept { solids, fat, salt, sugars, chlorophyll, capsaicinoids, acid, aroma, binding };

template <class E>
struct Words;  // Words<E>::all is the array of spellings, in the order of the enumerators

template <>
struct Words<Role> {
    static constexpr std::array<std::string_view, 13> all{"lean", "fat",    "green", "heat", "acid",   "binder", "nut",
                                                          "herb", "allium", "spice", "salt", "liquid", "sweet"};
};
template <>
struct Words<SourceKind> {
    static constexpr std::array<std::string_view, 4> all{"published", "common-practice", "from-memory", "judgement"};
};
template <>
struct Words<Tissue> {
    static constexpr std::array<std::string_view, 15> all{"thin-leaf",  "thick-leaf", "chile-flesh", "fruit",  "bulb",
                                                          "root",       "stalk",      "seed",        "fungus", "meat",
                                                          "fat-tissue", "dry",        "liquid",      "paste",  "egg"};
};
template <>
struct Words<Acid> {
    static constexpr std::array<std::string_view, 9> all{"acetic", "lactic",   "citric",   "malic",     "tartaric",
                                                         "oxalic", "succinic", "ascorbic", "phosphoric"};
};
template <>
struct Words<Species> {
    static constexpr std::array<std::string_view, 12> all{"pork",   "beef",    "veal",   "lamb", "goat", "game",
                                                          "rabbit", "chicken", "turkey", "duck", "fish", "crustacean"};
};
template <>
struct Words<AromaNote> {
    static constexpr std::array<std::string_view, 14> all{"grassy", "anise",   "citrus", "minty", "woody",  "warm",   "peppery",
                                                          "allium", "mustard", "smoky",  "nutty", "bitter", "earthy", "fruity"};
};
template <>
struct Words<Basis> {
    static constexpr std::array<std::string_view, 2> all{"dose", "weight"};
};
template <>
struct Words<ProcessField> {
    static constexpr std::array<std::string_view, 6> all{"plate", "mixing", "mixed-at", "rest", "rest-at", "core"};
};
template <>
struct Words<CapProperty> {
    static constexpr std::array<std::string_view, 10> all{
        "fat_pct",         "fat_of_meat_pct", "salt_pct", "added_water_pct",     "binder_pct",
        "soy_isolate_pct", "binder_share",    "meat_pct", "fennel_or_anise_pct", "phosphate_pct"};
};
template <>
struct Words<Kept> {
    static constexpr std::array<std::string_view, 9> all{"solids",        "fat",  "salt",  "sugars", "chlorophyll",
                                                         "capsaicinoids", "acid", "aroma", "binding"};
};

template <class E>
inline constexpr std::size_t count_of = Words<E>::all.size();

template <class E>
constexpr std::string_view spelling(E value) {
    return Words<E>::all[static_cast<std::size_t>(value)];
}

template <class E>
constexpr std::optional<E> parse_word(std::string_view text) {
    for (std::size_t i = 0; i < count_of<E>; ++i)
        if (Words<E>::all[i] == text) return static_cast<E>(i);
    return std::nullopt;
}

}  // namespace standin
