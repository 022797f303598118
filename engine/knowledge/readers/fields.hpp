// Fields that many kinds of record share.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/typed_reader.hpp"
#include "knowledge/records/records.hpp"
#include "knowledge/records/vocabulary.hpp"

namespace standin {

/// {"value", "low", "high", "unit", "source"} of an object already opened; the unit must be one of `units` (any when empty).
Quantity read_quantity(ObjectReader& reader, std::initializer_list<std::string_view> units);

std::optional<Quantity> quantity_if(ObjectReader& reader, std::string_view key, std::initializer_list<std::string_view> units);
Quantity quantity(ObjectReader& reader, std::string_view key, std::initializer_list<std::string_view> units);

/// A word of the closed list E; an unknown one is a fault with the nearest known.
template <class E>
E parse(std::string_view text, Place place, Problems& problems) {
    if (const auto value = parse_word<E>(text)) return *value;
    const std::vector<std::string_view> known(Words<E>::all.begin(), Words<E>::all.end());
    problems.add(place, "unknown word \"" + std::string(text) + "\"", nearest_words(text, known));
    return E{};
}

template <class E>
E enumerated(ObjectReader& reader, std::string_view key) {
    const JsonNode* found = reader.child(key, JsonNode::Kind::text, true);
    return found ? parse<E>(found->text, found->place, reader.problems()) : E{};
}

template <class E>
std::vector<E> enumerated_list(ObjectReader& reader, std::string_view key) {
    std::vector<E> all;
    for (const auto& item : reader.list(key))
        if (item.kind == JsonNode::Kind::text) all.push_back(parse<E>(item.text, item.place, reader.problems()));
        else reader.problems().add(item.place, "expected a word");
    return all;
}

}  // namespace standin
