#include "formula/formula_plain.hpp"

#include <algorithm>

#include "base/names.hpp"
#include "base/typed_reader.hpp"
#include "formula/line_text.hpp"
#include "formula/process_text.hpp"
#include "formula/text_lines.hpp"
#include "formula/trouble.hpp"

namespace standin {
namespace {

class PlainReader {
public:
    PlainReader(std::string_view file, const Knowledge& knowledge) : file_(file), knowledge_(knowledge) {}

    Result<Formula> read(const std::vector<TextLine>& lines) {
        for (std::size_t i = 0; i < lines.size() && !troubles_.full(); ++i) {
            if (i == 0 && takes_title(lines[i])) continue;
            if (!header(lines[i]) && !keyed(lines[i])) ingredient(lines[i]);
        }
        if (lines_.empty() && !troubles_.any())
            troubles_.add({Trouble::bad_data,
                           "no ingredient lines: expected a title, then lines such as \"300 g spinach\"",
                           describe(file_, {1, 1}),
                           {}});
        if (troubles_.any()) return troubles_.failure();
        formula_.lines = settle(std::move(lines_), knowledge_, troubles_);
        if (troubles_.any()) return troubles_.failure();
        return std::move(formula_);
    }

private:
    // The first line is the title, unless it plainly is a line of the formula.
    bool takes_title(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        if (fold(key) == "title") return false;
        if (is_process(key)) return false;
        if (read_line(line.text, Origin(file_, line.place), knowledge_)) return false;
        formula_.title = line.text;
        return true;
    }

    static bool is_process(std::string_view key) {
        const auto& keys = process_keys();
        return std::find(keys.begin(), keys.end(), fold(key)) != keys.end();
    }

    static bool header(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        if (key.empty() || !value.empty()) return false;
        const std::string folded = fold(key);
        return folded == "ingredient" || folded == "process" || folded == "line" || folded == "formula" || folded == "method";
    }

    bool keyed(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        const std::string folded = fold(key);
        if (folded == "title") formula_.title = value;
        else if (folded == "note") formula_.note += (formula_.note.empty() ? "" : "\n") + std::string(value);
        else if (!is_process(key)) return false;
        else if (auto wrong = set_process(formula_.process, key, value)) {
            wrong->where =
                describe(file_, {line.place.line, line.place.column + static_cast<std::size_t>(value.data() - line.text.data())});
            troubles_.add(std::move(*wrong));
        }
        return true;
    }

    void ingredient(const TextLine& line) {
        auto read = read_line(line.text, Origin(file_, line.place), knowledge_);
        if (read) {
            lines_.push_back(std::move(*read));
            return;
        }
        const auto [key, value] = key_value(line.text);
        auto hints = key.empty() ? std::vector<std::string>{} : nearest_words(fold(key), process_keys());
        if (hints.empty()) troubles_.add(std::move(read.error()));
        else
            troubles_.add({Trouble::bad_data, "neither an ingredient line nor a part of the process: \"" + std::string(key) + "\"",
                           describe(file_, line.place), std::move(hints)});
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Formula formula_;
    std::vector<ReadLine> lines_;
    Troubles troubles_;
};

}  // namespace

Result<Formula> read_plain_formula(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    return PlainReader(file, knowledge).read(text_lines(text));
}

}  // namespace standin
