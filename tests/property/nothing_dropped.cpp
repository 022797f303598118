// Whatever stands in a text is a line, beside the mass, part of the method that is left out, or an error: nothing with an amount in it
// goes in silence.
#include <random>

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace nothing_dropped_test {

std::vector<std::string> lines_of_people() {
    std::vector<std::string> all;
    for (const char* file : {"unit/published_style_lines.csv", "unit/second_style_lines.csv", "unit/judged_lines.csv"})
        for (const auto& row : line_rows(file)) all.push_back(row[1]);
    for (const auto& row : line_rows("unit/invented_lines.csv")) all.push_back(row[0]);
    return all;
}

class Maker {
public:
    explicit Maker(unsigned seed) : random_(seed) {}
    std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_); }

    // A line of people, perhaps with slips in it or with the tail of another.
    std::string line(const std::vector<std::string>& lines) {
        std::string made = lines[below(lines.size())];
        if (below(4) == 0) {
            const auto& other = lines[below(lines.size())];
            made += " " + other.substr(below(other.size()));
        }
        for (std::size_t n = below(3); n > 0 && made.size() > 1; --n) {
            const std::size_t at = below(made.size());
            if (below(2)) made.erase(at, 1);
            else made.insert(at, 1, "0123456789,.;:()[]%/-x \t"[below(23)]);
        }
        for (char& c : made)
            if (c == '\n') c = ' ';
        return made;
    }

private:
    std::mt19937 random_;
};

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \t\r");
    return first == std::string::npos ? std::string() : text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

bool told(const FormulaReading& reading, const std::string& line) {
    for (const auto& one : reading.lines)
        if (one.written == line) return true;
    // "1 lemon, zest and juice" is told as its two parts, each in words of its own.
    const auto part = [&](const char* of) {
        const std::string written = std::string(of) + " of " + line.substr(0, line.find(','));
        return std::any_of(reading.lines.begin(), reading.lines.end(), [&](const auto& one) { return one.written.rfind(written, 0) == 0; });
    };
    if (part("zest") && part("juice")) return true;
    const auto holds = [&](const std::string& text) { return text.find(line) != std::string::npos; };
    if (holds(reading.title) || holds(reading.note) || !reading.errors.empty() || !reading.formula) return true;
    return std::any_of(reading.formula->read_as.begin(), reading.formula->read_as.end(),
                       [&](const Reason& told) { return holds(in_full(told)); });
}

bool has_digit(const std::string& text) { return text.find_first_of("0123456789") != std::string::npos; }

TEST_CASE("no line with an amount is dropped in silence", "[long]") {
    const auto lines = lines_of_people();
    Maker maker(23);
    for (int i = 0; i < 300; ++i) {
        std::vector<std::string> made;
        std::string text = "title: A\n1 kg pork shoulder\n";
        for (std::size_t n = 1 + maker.below(4); n > 0; --n) {
            made.push_back(trimmed(maker.line(lines)));
            text += made.back() + "\n";
        }
        const auto reading = read_closely(text, "f", knowledge());
        INFO(text);
        if (!reading) continue;
        for (const auto& line : made) {
            if (!has_digit(line) || line.front() == '#' || line.find(':') != std::string::npos)
                continue;  // comments and keys stand elsewhere
            INFO(line);
            CHECK(told(*reading, line));
        }
    }
}

}  // namespace nothing_dropped_test
