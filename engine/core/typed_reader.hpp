// Typed access to a JSON object: every key must be asked for, have the right type and a sane value; whatever is wrong is collected
// with its place, so that one run shows all of it.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/json_tree.hpp"
#include "standin/band.hpp"

namespace standin {

/// The faults found so far, in the order of finding.
class Problems {
public:
    explicit Problems(std::string file) : file_(std::move(file)) {}

    void add(Place place, std::string message, std::vector<std::string> hints = {});
    bool empty() const { return errors_.empty(); }
    const std::vector<Error>& errors() const { return errors_; }
    const std::string& file() const { return file_; }

private:
    std::string file_;
    std::vector<Error> errors_;
};

/// Several errors as one: each on a line of its own with its place.
Error join(const std::vector<Error>& errors, Trouble trouble = Trouble::bad_data);

class ObjectReader {
public:
    /// A node that is no object is a fault; the reader then behaves as if it were empty.
    ObjectReader(const JsonNode& node, Problems& problems);
    /// Reports the keys nobody asked for, with the nearest that was.
    ~ObjectReader();
    ObjectReader(const ObjectReader&) = delete;
    ObjectReader& operator=(const ObjectReader&) = delete;

    Place place() const { return node_.place; }
    Problems& problems() const { return problems_; }
    bool has(std::string_view key) const { return node_.member(key) != nullptr; }

    /// Required members; a missing or ill-typed one is a fault and gives an empty value.
    std::string text(std::string_view key);
    double number(std::string_view key);
    /// A number, or {"value", "low", "high"} in rising order.
    Band band(std::string_view key);

    /// Members that may be absent.
    std::string text_or(std::string_view key, const std::string& fallback = {});
    std::optional<double> number_if(std::string_view key);
    std::optional<Band> band_if(std::string_view key);
    bool flag(std::string_view key);
    std::vector<std::string> texts(std::string_view key);

    /// A member of the given kind, or null (a fault when `required` or when of another kind).
    const JsonNode* child(std::string_view key, JsonNode::Kind kind, bool required = false);
    /// The items of a list member, none when absent.
    const std::vector<JsonNode>& list(std::string_view key, bool required = false);

    void fault(std::string_view key, std::string message, std::vector<std::string> hints = {});

private:
    const JsonNode& node_;
    Problems& problems_;
    std::vector<std::string> asked_;
};

/// `value`, `low`, `high` of an object already opened.
Band read_band(ObjectReader& reader);

/// The known word nearest to `wanted` as a list of hints (empty when none is near).
std::vector<std::string> nearest_words(std::string_view wanted, const std::vector<std::string_view>& known);

}  // namespace standin
