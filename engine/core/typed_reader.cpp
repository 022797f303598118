#include "core/typed_reader.hpp"

#include <algorithm>

#include "core/names.hpp"

namespace standin {

void Problems::add(Place place, std::string message, std::vector<std::string> hints) {
    errors_.push_back(Error{Trouble::bad_data, std::move(message), describe(file_, place), std::move(hints)});
}

Error join(const std::vector<Error>& errors, Trouble trouble) {
    if (errors.size() == 1) return errors.front();
    Error all{trouble, {}, {}, {}};
    for (const auto& error : errors) {
        if (!all.message.empty()) all.message += '\n';
        all.message += (error.where.empty() ? "" : error.where + ": ") + error.message;
        for (std::size_t i = 0; i < error.hints.size(); ++i)
            all.message += (i == 0 ? " (" : "; ") + error.hints[i] + (i + 1 == error.hints.size() ? ")" : "");
    }
    return all;
}

std::vector<std::string> nearest_words(std::string_view wanted, const std::vector<std::string_view>& known) {
    const auto best = nearest(wanted, known, 1);
    if (best.empty()) return {};
    return {"did you mean \"" + std::string(known[best.front()]) + "\"?"};
}

ObjectReader::ObjectReader(const JsonNode& node, Problems& problems) : node_(node), problems_(problems) {
    if (node.kind != JsonNode::Kind::object) problems.add(node.place, "expected an object, found " + std::string(kind_name(node.kind)));
}

ObjectReader::~ObjectReader() {
    const std::vector<std::string_view> known(asked_.begin(), asked_.end());
    for (const auto& [key, value] : node_.members) {
        if (std::find(asked_.begin(), asked_.end(), key) != asked_.end()) continue;
        problems_.add(value.place, "unknown key \"" + key + "\"", nearest_words(key, known));
    }
}

const JsonNode* ObjectReader::child(std::string_view key, JsonNode::Kind kind, bool required) {
    asked_.emplace_back(key);
    const JsonNode* found = node_.member(key);
    if (!found) {
        if (required && node_.kind == JsonNode::Kind::object)
            problems_.add(node_.place, "\"" + std::string(key) + "\" is missing: expected " + std::string(kind_name(kind)));
        return nullptr;
    }
    if (found->kind == kind) return found;
    problems_.add(found->place,
                  "\"" + std::string(key) + "\" must be " + std::string(kind_name(kind)) + ", not " + std::string(kind_name(found->kind)));
    return nullptr;
}

void ObjectReader::fault(std::string_view key, std::string message, std::vector<std::string> hints) {
    const JsonNode* found = node_.member(key);
    problems_.add(found ? found->place : node_.place, std::move(message), std::move(hints));
}

std::string ObjectReader::text(std::string_view key) {
    const JsonNode* found = child(key, JsonNode::Kind::text, true);
    if (found && found->text.empty()) fault(key, "\"" + std::string(key) + "\" must not be empty");
    return found ? found->text : std::string{};
}

std::string ObjectReader::text_or(std::string_view key, const std::string& fallback) {
    const JsonNode* found = child(key, JsonNode::Kind::text);
    return found ? found->text : fallback;
}

double ObjectReader::number(std::string_view key) {
    const JsonNode* found = child(key, JsonNode::Kind::number, true);
    return found ? found->number : 0;
}

std::optional<double> ObjectReader::number_if(std::string_view key) {
    const JsonNode* found = child(key, JsonNode::Kind::number);
    return found ? std::optional(found->number) : std::nullopt;
}

bool ObjectReader::flag(std::string_view key) {
    const JsonNode* found = child(key, JsonNode::Kind::boolean);
    return found && found->boolean;
}

const std::vector<JsonNode>& ObjectReader::list(std::string_view key, bool required) {
    static const std::vector<JsonNode> none;
    const JsonNode* found = child(key, JsonNode::Kind::list, required);
    return found ? found->items : none;
}

std::vector<std::string> ObjectReader::texts(std::string_view key) {
    std::vector<std::string> all;
    for (const auto& item : list(key)) {
        if (item.kind == JsonNode::Kind::text) all.push_back(item.text);
        else problems_.add(item.place, "\"" + std::string(key) + "\" must hold only text");
    }
    return all;
}

Band ObjectReader::band(std::string_view key) {
    if (auto found = band_if(key)) return *found;
    if (!has(key) && node_.kind == JsonNode::Kind::object)
        problems_.add(node_.place, "\"" + std::string(key) + "\" is missing: expected a number");
    return {};
}

std::optional<Band> ObjectReader::band_if(std::string_view key) {
    const JsonNode* found = node_.member(key);
    if (found && found->kind == JsonNode::Kind::object) {
        asked_.emplace_back(key);
        ObjectReader inner(*found, problems_);
        return read_band(inner);
    }
    const auto number = number_if(key);
    return number ? std::optional(Band{*number, *number, *number}) : std::nullopt;
}

Band read_band(ObjectReader& reader) {
    const double value = reader.number("value");
    const auto low = reader.number_if("low"), high = reader.number_if("high");
    if (low.has_value() != high.has_value()) reader.fault("value", "\"low\" and \"high\" stand together or not at all");
    const Band band{low.value_or(value), value, high.value_or(value)};
    if (band.low > band.mid || band.mid > band.high) reader.fault("value", "low, value and high must rise");
    return band;
}

}  // namespace standin
