#include "knowledge/readers/fields.hpp"

#include <algorithm>

namespace standin {

Quantity read_quantity(ObjectReader& reader, std::initializer_list<std::string_view> units) {
    Quantity q{read_band(reader), reader.text("unit"), reader.text("source")};
    if (units.size() > 0 && !q.unit.empty() && std::find(units.begin(), units.end(), q.unit) == units.end()) {
        std::string known;
        for (const auto unit : units) known += (known.empty() ? "\"" : ", \"") + std::string(unit) + "\"";
        reader.fault("unit", "unit \"" + q.unit + "\" does not fit here: expected " + known);
    }
    return q;
}

std::optional<Quantity> quantity_if(ObjectReader& reader, std::string_view key, std::initializer_list<std::string_view> units) {
    const JsonNode* node = reader.child(key, JsonNode::Kind::object);
    if (!node) return std::nullopt;
    ObjectReader inner(*node, reader.problems());
    return read_quantity(inner, units);
}

Quantity quantity(ObjectReader& reader, std::string_view key, std::initializer_list<std::string_view> units) {
    if (auto found = quantity_if(reader, key, units)) return *found;
    if (!reader.has(key)) reader.fault(key, "\"" + std::string(key) + "\" is missing: expected a quantity with unit and source");
    return {};
}

}  // namespace standin
