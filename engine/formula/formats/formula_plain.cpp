#include "formula/formats/formula_plain.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "core/typed_reader.hpp"
#include "formula/formats/text_lines.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/line_beside.hpp"
#include "formula/line/line_text.hpp"
#include "formula/line/process_text.hpp"

namespace standin {
namespace {

bool is_process(std::string_view key) {
    const auto& keys = process_keys();
    return std::find(keys.begin(), keys.end(), fold(key)) != keys.end();
}

// "300 g spinch" is a line with a slip in it, no title.
bool starts_with_weight(std::string_view text) {
    Cursor cursor(text);
    if (!number_at(cursor, false)) return false;
    const auto unit = unit_at(cursor);
    return unit && (unit->unit->dimension == Dimension::mass || unit->unit->dimension == Dimension::volume);
}

// A title may well be "Sheep casing banger"; with an amount it is a line.
bool names_a_casing(std::string_view text) {
    return text.find_first_of("0123456789") != std::string_view::npos && !beside_the_mass(text).empty();
}

class PlainReader {
public:
    PlainReader(std::string_view file, const Knowledge& knowledge) : file_(file), knowledge_(knowledge) {}

    Draft read(const std::vector<TextLine>& lines) {
        for (std::size_t i = 0; i < lines.size() && !draft_.hopeless(); ++i) {
            if (i == 0 && takes_title(lines[i])) continue;
            if (!header(lines[i]) && !keyed(lines[i])) ingredient(lines[i]);
        }
        if (draft_.lines.empty() && !draft_.troubles.any())
            draft_.troubles.add({Trouble::bad_data,
                                 "no ingredient lines: expected a title, then lines such as \"300 g spinach\"",
                                 describe(file_, {1, 1}),
                                 {}});
        return std::move(draft_);
    }

private:
    bool takes_title(const TextLine& line) {
        if (!is_title(line.text, knowledge_)) return false;
        draft_.formula.title = line.text;
        return true;
    }

    static bool header(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        if (key.empty() || !value.empty()) return false;
        const std::string folded = fold(key);
        if (folded.rfind("for ", 0) == 0) return true;  // "For the paste:"
        return folded == "ingredient" || folded == "process" || folded == "line" || folded == "formula" || folded == "method";
    }

    bool keyed(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        const std::string folded = fold(key);
        if (folded == "title") draft_.formula.title = value;
        else if (folded == "note") draft_.formula.note += (draft_.formula.note.empty() ? "" : "\n") + std::string(value);
        else if (folded == "parent") draft_.formula.parent = value;
        else if (folded == "date") draft_.formula.date = value;
        else if (folded == "do") draft_.formula.to_do.emplace_back(value);
        else if (!is_process(key)) return false;
        else if (auto wrong = set_process(draft_.formula.process, key, value)) {
            wrong->where =
                describe(file_, {line.place.line, line.place.column + static_cast<std::size_t>(value.data() - line.text.data())});
            draft_.troubles.add(std::move(*wrong));
        }
        return true;
    }

    void ingredient(const TextLine& line) {
        const std::size_t before = draft_.lines.size();
        take_ingredient_line(draft_, line.text, describe(file_, line.place), Origin(file_, line.place), knowledge_);
        if (draft_.lines.size() == before || draft_.lines.back().read) return;
        const auto key = key_value(line.text).key;
        const auto hints = key.empty() ? std::vector<std::string>{} : nearest_words(fold(key), process_keys());
        if (!hints.empty())
            draft_.lines.back().read =
                failure(Trouble::bad_data, "neither an ingredient line nor a part of the process: \"" + std::string(key) + "\"",
                        describe(file_, line.place), hints);
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Draft draft_;
};

}  // namespace

bool is_title(std::string_view line, const Knowledge& knowledge) {
    const auto key = key_value(line).key;
    return fold(key) != "title" && !is_process(key) && !starts_with_weight(line) && !names_a_casing(line) &&
           !read_line(line, Origin("", {1, 1}), knowledge);
}

Draft read_plain_formula(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    return PlainReader(file, knowledge).read(text_lines(text));
}

}  // namespace standin
