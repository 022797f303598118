#include "core/written_quantity.hpp"

#include <algorithm>
#include <array>

#include "standin/number_text.hpp"

namespace standin {
namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }
bool letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80; }
bool starts_with(std::string_view text, std::string_view start) { return text.substr(0, start.size()) == start; }
std::optional<double> number_at(std::string_view text, std::size_t& at) {
    std::string_view rest = text.substr(at);
    if (rest.size() > 1 && rest.front() == '-' ? !digit(rest[1]) : rest.empty() || !digit(rest.front())) return std::nullopt;
    const auto value = take_number(rest);
    at = text.size() - rest.size();
    return value;
}

bool said_in_both(std::string_view after) {
    if (!starts_with(after, " (")) return false;
    after.remove_prefix(2);
    const auto of_number = [](std::string_view rest) {
        if (rest.size() > 1 && rest.front() == ' ') return digit(rest[1]);
        return !rest.empty() && (digit(rest.front()) || rest.front() == '.' || rest.front() == '/');
    };
    while (of_number(after)) after.remove_prefix(1);
    constexpr std::array<std::string_view, 5> us{" F", "-", " in", " oz", " lb"};
    return std::any_of(us.begin(), us.end(), [&](std::string_view unit) { return starts_with(after, unit); });
}

// As somebody wrote it.
bool quoted(std::string_view before) {
    return std::count(before.begin(), before.end(), '"') % 2 == 1 || std::count(before.begin(), before.end(), '`') % 2 == 1;
}

bool same_in_any_unit(std::string_view text, const WrittenQuantity& q, std::size_t at) {
    constexpr std::array<std::string_view, 8> of_a_kilo{" for each gram", " to the kilo", " in a kilo", " a kilo",
                                                        " per kilo",      " to a kilo",   " in 100 g",  "/"};
    const std::string_view before = text.substr(0, at), after = text.substr(q.end);
    if (quoted(before) || said_in_both(after)) return true;
    if (q.unit == "C") return before.ends_with(" by ");
    return std::any_of(of_a_kilo.begin(), of_a_kilo.end(), [&](std::string_view share) { return starts_with(after, share); }) ||
           (q.unit == "g" && before.ends_with(" in "));
}

}  // namespace

std::optional<WrittenQuantity> quantity_at(std::string_view text, std::size_t at) {
    constexpr std::array<std::string_view, 4> units{"C", "mm", "g", "kg"};
    WrittenQuantity q;
    auto value = number_at(text, at);
    if (!value) return std::nullopt;
    for (const std::string_view between : {std::string_view("-"), std::string_view(" to ")}) {
        if (!starts_with(text.substr(at), between)) continue;
        std::size_t further = at + between.size();
        if (const auto second = further < text.size() ? number_at(text, further) : std::nullopt) {
            q.first = value;
            value = second;
            at = further;
        }
    }
    q.last = *value;
    for (const auto unit : units) {
        const auto end = at + 1 + unit.size();
        if (at >= text.size() || text[at] != ' ' || text.substr(at + 1, unit.size()) != unit) continue;
        if (end < text.size() && letter(text[end])) continue;
        q.unit = unit;
        q.end = end;
    }
    return q.unit.empty() ? std::nullopt : std::optional(q);
}

std::optional<WrittenQuantity> next_quantity(std::string_view text, std::size_t& at) {
    for (; at < text.size(); ++at) {
        const bool first = at == 0 || text[at - 1] == ' ' || text[at - 1] == '(';
        const bool inside = at > 0 && (digit(text[at - 1]) || text[at - 1] == '.' || text[at - 1] == '-' || letter(text[at - 1]));
        if (!(digit(text[at]) && !inside) && !(text[at] == '-' && first)) continue;
        if (const auto q = quantity_at(text, at); q && !same_in_any_unit(text, *q, at)) return q;
    }
    return std::nullopt;
}

std::optional<MarkedQuantity> marked_quantity(std::string_view inside) {
    constexpr std::string_view core = "core ", colder = " or colder";
    MarkedQuantity mark;
    mark.core = starts_with(inside, core);
    if (mark.core) inside.remove_prefix(core.size());
    const auto q = quantity_at(inside, 0);
    if (!q) return std::nullopt;
    const auto rest = inside.substr(q->end);
    mark.quantity = *q;
    mark.or_colder = rest == colder;
    if (mark.core || mark.or_colder) return q->unit == "C" && !q->first && rest.empty() == mark.core ? std::optional(mark) : std::nullopt;
    return rest.empty() ? std::optional(mark) : std::nullopt;
}

}  // namespace standin
