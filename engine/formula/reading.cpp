#include "formula/reading.hpp"

#include "formula/formula_json.hpp"
#include "formula/formula_plain.hpp"
#include "formula/inventory.hpp"
#include "formula/trouble.hpp"

namespace standin {
namespace {

// A plain line can start with a bracketed note, but no title or line starts with a brace; "[" alone opens a list only before JSON.
bool looks_like_json(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (text[first] == '{') return true;
    if (text[first] != '[') return false;
    const auto next = text.find_first_not_of(" \t\r\n", first + 1);
    return next == std::string_view::npos || text[next] == '{' || text[next] == ']' || text[next] == '"' || text[next] == '[';
}

template <class T, class FromJson, class FromPlain>
Result<T> read(std::string_view text, std::string_view file, const Knowledge& knowledge, FromJson from_json, FromPlain from_plain) {
    const auto clean = readable(text, file);
    if (!clean) return Failure(clean.error());
    if (!looks_like_json(*clean)) return from_plain(*clean, file, knowledge);
    const auto root = read_json(*clean, file);
    if (!root) return Failure(root.error());
    return from_json(*root, file, knowledge);
}

}  // namespace

Result<Formula> read_formula(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    return read<Formula>(text, file, knowledge, read_json_formula, read_plain_formula);
}

Result<Inventory> read_inventory(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    return read<Inventory>(text, file, knowledge, read_json_inventory, read_plain_inventory);
}

}  // namespace standin
