// Numbers with a metric unit in finished sentences.
#include <array>
#include <cmath>
#include <optional>
#include <string_view>

#include "render/units.hpp"
#include "standin/number_text.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

struct Unit {
    std::string_view metric;
    std::string (*in_us)(double);
};

std::string fahrenheit(double celsius) { return number(celsius * 1.8 + 32, 0) + " F"; }
std::string inches(double mm) { return length(mm, Units::us); }
std::string ounces(double grams) { return formula_weight(grams, Units::us); }

constexpr std::array<Unit, 3> all{{{"C", fahrenheit}, {"mm", inches}, {"g", ounces}}};

bool digit(char c) { return c >= '0' && c <= '9'; }
bool letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80; }

// What stands at a place: "2", "0-2" or "2.5 to 4", a unit behind it.
struct Quantity {
    std::optional<double> first;  // of a range
    double last = 0;
    const Unit* unit = nullptr;
    std::size_t end = 0;
};

std::optional<double> number_at(std::string_view text, std::size_t& at) {
    std::string_view rest = text.substr(at);
    if (rest.empty() || !digit(rest.front())) return std::nullopt;
    const auto value = take_number(rest);
    at = text.size() - rest.size();
    return value;
}

std::optional<Quantity> quantity_at(std::string_view text, std::size_t at) {
    Quantity q;
    auto value = number_at(text, at);
    if (!value) return std::nullopt;
    for (const std::string_view between : {std::string_view("-"), std::string_view(" to ")}) {
        if (text.substr(at, between.size()) != between || at + between.size() >= text.size()) continue;
        std::size_t further = at + between.size();
        if (const auto second = number_at(text, further)) {
            q.first = value;
            value = second;
            at = further;
        }
    }
    q.last = *value;
    for (const auto& unit : all) {
        const auto end = at + 1 + unit.metric.size();
        if (at >= text.size() || text[at] != ' ' || text.substr(at + 1, unit.metric.size()) != unit.metric) continue;
        if (end < text.size() && letter(text[end])) continue;
        q.unit = &unit;
        q.end = end;
    }
    return q.unit ? std::optional(q) : std::nullopt;
}

// "71.1 C (160 F)": said in both already. "2-4 g to the kilogram", "9 g in 100 g": a share, the same in any unit.
bool left_alone(std::string_view text, const Quantity& q, std::size_t at) {
    std::size_t next = q.end;
    const std::string_view after = text.substr(q.end);
    if (after.substr(0, 2) == " (") {
        next += 2;
        while (next < text.size() && (digit(text[next]) || text[next] == '.')) ++next;
        if (text.substr(next, 2) == " F" || text.substr(next, 3) == " in" || text.substr(next, 3) == " oz") return true;
    }
    const std::string_view before = text.substr(0, at);
    const auto ends_with = [&](std::string_view end) {
        return before.size() >= end.size() && before.substr(before.size() - end.size()) == end;
    };
    return q.unit->metric == "g" &&
           (after.rfind(" to the kilogram", 0) == 0 || after.rfind(" in 100 g", 0) == 0 || after.rfind("/", 0) == 0 || ends_with(" in "));
}

std::string in_us(const Quantity& q) {
    std::string last = q.unit->in_us(q.last);
    if (!q.first) return last;
    std::string first = q.unit->in_us(*q.first);
    const auto unit = last.substr(last.rfind(' '));
    if (first.size() > unit.size() && first.substr(first.size() - unit.size()) == unit) first.erase(first.size() - unit.size());
    return first + (q.unit->metric == "C" ? "-" : " to ") + last;
}

}  // namespace

std::string with_units(const std::string& sentence, Units units) {
    if (units == Units::metric) return sentence;
    std::string out;
    for (std::size_t i = 0; i < sentence.size();) {
        const bool starts =
            digit(sentence[i]) && (i == 0 || (!digit(sentence[i - 1]) && sentence[i - 1] != '.' && !letter(sentence[i - 1])));
        const auto q = starts ? quantity_at(sentence, i) : std::nullopt;
        if (!q) {
            out += sentence[i++];
            continue;
        }
        const std::string metric = sentence.substr(i, q->end - i);
        if (left_alone(sentence, *q, i)) out += metric;
        else out += units == Units::us ? in_us(*q) : metric + " (" + in_us(*q) + ")";
        i = q->end;
    }
    return out;
}

}  // namespace standin::cli
