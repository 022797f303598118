// A formula as JSON: title, note, lines (ingredient, amount, fat, ph, acid, heat, prepared, weighed, keep, note), process.
#pragma once

#include <string_view>
#include <utility>
#include <vector>

#include "core/json_tree.hpp"
#include "formula/formats/draft.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/result.hpp"

namespace standin {

Draft read_json_formula(const JsonNode& root, std::string_view file, const Knowledge& knowledge);

/// One line out of several JSON values ("400 g", "spinach", "blanched"), read as if they stood beside each other.
class JoinedLine {
public:
    JoinedLine(std::string_view file, const JsonNode& amount, const JsonNode& ingredient);
    void add_preparation(const JsonNode& preparation) { add("\n,", preparation); }
    /// "5.6" with the words that a line has about it: "pH 5.6".
    void add_fact(const JsonNode& fact, std::string_view before, std::string_view after);
    Result<ReadLine> read(const Knowledge& knowledge, WeighedAfter after) const;

    /// As one line of text: "400 g spinach, blanched".
    std::string written() const;

private:
    void add(std::string_view between, const JsonNode& node);

    std::string_view file_;
    std::string text_;
    std::vector<std::pair<std::size_t, Place>> pieces_;
};

}  // namespace standin
