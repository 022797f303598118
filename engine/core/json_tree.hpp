// JSON as a tree that remembers where everything stood, so that an error can say file, line and column.
// nlohmann::json does the parsing; this only keeps what its own tree forgets (places, order, duplicate keys).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "standin/result.hpp"

namespace standin {

struct Place {
    std::size_t line = 0, column = 0;  // both from 1; columns count bytes
};

struct JsonMember;

struct JsonNode {
    enum class Kind { null, boolean, number, text, list, object };

    Kind kind = Kind::null;
    Place place;
    bool boolean = false;
    double number = 0;
    std::string text;
    std::vector<JsonNode> items;      // of a list
    std::vector<JsonMember> members;  // of an object, in file order

    const JsonNode* member(std::string_view key) const;
};

struct JsonMember {
    std::string key;
    JsonNode node;
};

/// What kind a node is, for messages: "a number", "an object", ...
std::string_view kind_name(JsonNode::Kind kind);

/// "file:line:column"
std::string describe(std::string_view file, Place place);

/// Reads one JSON document. Fails on bad syntax, bad UTF-8, a duplicate key, a number that overflows, nesting deeper than 64 and text
/// longer than 16 MB. `file` is only used in messages.
Result<JsonNode> read_json(std::string_view text, std::string_view file);

}  // namespace standin
