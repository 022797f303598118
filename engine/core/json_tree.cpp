#include "core/json_tree.hpp"

#include <utf8.h>

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/text_limit.hpp"

namespace standin {
namespace {

constexpr std::size_t deepest = 64;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

// Follows the text in step with the parser's events: each event is one token, and the next token starts after white space, commas
// and colons. That gives every node its exact place.
class Follower {
public:
    explicit Follower(std::string_view text) : text_(text) {
        if (text_.substr(0, 3) == byte_order_mark) offset_ = line_start_ = 3;
    }

    Place token() {
        while (offset_ < text_.size() && is_filler(text_[offset_])) step();
        const Place start{line_, offset_ - line_start_ + 1};
        skip_token();
        return start;
    }

private:
    static bool is_filler(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == ',' || c == ':'; }
    static bool ends_word(char c) { return is_filler(c) || c == ']' || c == '}'; }

    void step() {
        if (text_[offset_] == '\n') {
            ++line_;
            line_start_ = offset_ + 1;
        }
        ++offset_;
    }

    void skip_token() {
        if (offset_ >= text_.size()) return;
        const char first = text_[offset_];
        if (first == '"') {
            for (++offset_; offset_ < text_.size() && text_[offset_] != '"'; ++offset_)
                if (text_[offset_] == '\\') ++offset_;
            ++offset_;
        } else if (first == '{' || first == '[' || first == '}' || first == ']') {
            ++offset_;
        } else {
            while (offset_ < text_.size() && !ends_word(text_[offset_])) ++offset_;
        }
    }

    std::string_view text_;
    std::size_t offset_ = 0, line_start_ = 0, line_ = 1;
};

class TreeBuilder : public nlohmann::json_sax<nlohmann::json> {
public:
    TreeBuilder(std::string_view text, std::string_view file) : follower_(text), file_(file), text_(text) {}

    bool null() override { return put(JsonNode::Kind::null) != nullptr; }
    bool boolean(bool value) override { return set(put(JsonNode::Kind::boolean), &JsonNode::boolean, value); }
    bool number_integer(number_integer_t value) override { return number(static_cast<double>(value)); }
    bool number_unsigned(number_unsigned_t value) override { return number(static_cast<double>(value)); }
    bool number_float(number_float_t value, const string_t&) override { return number(value); }
    bool string(string_t& value) override { return set(put(JsonNode::Kind::text), &JsonNode::text, value); }
    bool binary(binary_t&) override { return false; }

    bool start_object(std::size_t) override { return open(JsonNode::Kind::object); }
    bool start_array(std::size_t) override { return open(JsonNode::Kind::list); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }

    bool key(string_t& name) override {
        const Place place = follower_.token();
        if (path_.back()->member(name)) return fail("the key \"" + name + "\" stands here a second time", place);
        path_.back()->members.push_back({name, {}});
        return true;
    }

    bool parse_error(std::size_t position, const std::string&, const nlohmann::detail::exception& fault) override {
        if (error_.message.empty()) fail(explain(fault), place_of(position));
        return false;
    }

    Result<JsonNode> finish(bool complete) && {
        if (complete && error_.message.empty()) return std::move(root_);
        return Failure(std::move(error_));
    }

private:
    static std::string explain(const nlohmann::detail::exception& fault) {
        const std::string text = fault.what();
        if (fault.id == 406) return "this number is too large";
        const auto detail = text.find(": ", text.find("column"));
        return "not valid JSON" + (detail == std::string::npos ? std::string{} : text.substr(detail));
    }

    Place place_of(std::size_t position) const {
        const auto before = text_.substr(0, position > 0 ? position - 1 : 0);
        const auto newline = before.rfind('\n');
        const auto lines = static_cast<std::size_t>(std::count(before.begin(), before.end(), '\n'));
        const std::size_t mark = text_.substr(0, 3) == byte_order_mark ? 3 : 0;  // counts in no column
        return {lines + 1, newline == std::string_view::npos ? std::max(before.size(), mark) - mark + 1 : before.size() - newline};
    }

    bool fail(std::string message, Place place) {
        error_ = Error{Trouble::bad_data, std::move(message), describe(file_, place), {}};
        return false;
    }

    JsonNode* put(JsonNode::Kind kind) {
        JsonNode* node = &root_;
        if (!path_.empty()) {
            JsonNode& parent = *path_.back();
            node = parent.kind == JsonNode::Kind::list ? &parent.items.emplace_back() : &parent.members.back().node;
        }
        node->kind = kind;
        node->place = follower_.token();
        return node;
    }

    template <class T>
    static bool set(JsonNode* node, T JsonNode::*field, T value) {
        node->*field = std::move(value);
        return true;
    }

    bool number(double value) {
        JsonNode* node = put(JsonNode::Kind::number);
        node->number = value;
        return std::isfinite(value) || fail("this number is too large", node->place);
    }

    bool open(JsonNode::Kind kind) {
        path_.push_back(put(kind));
        return path_.size() <= deepest || fail("nested deeper than 64 levels", path_.back()->place);
    }

    bool close() {
        path_.pop_back();
        follower_.token();
        return true;
    }

    Follower follower_;
    std::string_view file_, text_;
    JsonNode root_;
    std::vector<JsonNode*> path_;
    Error error_;
};

}  // namespace

const JsonNode* JsonNode::member(std::string_view key) const {
    for (const auto& [name, node] : members)
        if (name == key) return &node;
    return nullptr;
}

std::string_view kind_name(JsonNode::Kind kind) {
    switch (kind) {
        case JsonNode::Kind::null:
            return "null";
        case JsonNode::Kind::boolean:
            return "true or false";
        case JsonNode::Kind::number:
            return "a number";
        case JsonNode::Kind::text:
            return "text";
        case JsonNode::Kind::list:
            return "a list";
        case JsonNode::Kind::object:
            return "an object";
    }
    return "nothing";
}

std::string describe(std::string_view file, Place place) {
    return std::string(file) + ":" + std::to_string(place.line) + ":" + std::to_string(place.column);
}

Result<JsonNode> read_json(std::string_view text, std::string_view file) {
    if (text.size() > longest_text) return failure(Trouble::bad_data, "longer than 16 MB", std::string(file));
    const auto broken = utf8::find_invalid(text.begin(), text.end());
    if (broken != text.end())
        return failure(Trouble::bad_data, "not UTF-8 text", std::string(file) + ": byte " + std::to_string(broken - text.begin() + 1));
    TreeBuilder builder(text, file);
    const bool complete = nlohmann::json::sax_parse(text.begin(), text.end(), &builder);
    return std::move(builder).finish(complete);
}

}  // namespace standin
