// Where a text came from, and the errors found in it: all of them at once, each with its own place.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/json_tree.hpp"
#include "standin/result.hpp"

namespace standin {

/// Maps offsets in one line of text to places in a file. A line put together from several JSON values has one piece a value.
class Origin {
public:
    /// Text that stands as it is at `place`.
    Origin(std::string_view file, Place place) : file_(file), pieces_{{0, place}} {}

    /// Text put together: what starts at `offset` comes from the JSON value at `place`.
    static Origin joined(std::string_view file, std::vector<std::pair<std::size_t, Place>> pieces);

    std::string at(std::size_t offset) const;
    std::string start() const { return at(0); }

private:
    std::string_view file_;
    std::vector<std::pair<std::size_t, Place>> pieces_;
    bool exact_ = true;
};

/// Collects errors, at most fifty, into one.
class Troubles {
public:
    void add(Error error);
    void add(const std::vector<Error>& errors);
    bool any() const { return !errors_.empty(); }
    bool full() const { return errors_.size() >= most; }
    const std::vector<Error>& all() const { return errors_; }

    /// A single error as it is; of several, one message a line in the order of the text, each with its place in front.
    Failure failure() const;

private:
    static constexpr std::size_t most = 50;
    std::vector<Error> errors_;
};

/// Says what is wrong when `text` is empty, not UTF-8 or binary; `text` loses a byte order mark.
Result<std::string_view> readable(std::string_view text, std::string_view file);

/// "a, b and c"
std::string comma_list(const std::vector<std::string>& words);

}  // namespace standin
