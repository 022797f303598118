#include "conversation/conversation.hpp"

#include <algorithm>
#include <charconv>
#include <istream>
#include <map>
#include <ostream>
#include <set>

#include "conversation/doubt.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

constexpr int rounds_a_line = 6;

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t start = 0; start <= text.size();) {
        const auto end = std::min(text.find('\n', start), text.size());
        lines.push_back(text.substr(start, end - start));
        start = end + 1;
    }
    return lines;
}

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const auto& line : lines) text += line + "\n";
    return text;
}

std::string trimmed(const std::string& text) {
    const auto first = text.find_first_not_of(" \t\r");
    return first == std::string::npos ? std::string() : text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

// "file:12:3" names line 12.
std::size_t line_number(const std::string& where) {
    const auto column = where.rfind(':');
    const auto row = column == std::string::npos ? column : where.rfind(':', column - 1);
    std::size_t number = 0;
    if (row != std::string::npos) std::from_chars(where.data() + row + 1, where.data() + column, number);
    return number;
}

bool stands_in(const std::vector<std::string>& lines, const LineReading& read) {
    const std::size_t number = line_number(read.where);
    return number > 0 && number <= lines.size() && trimmed(lines[number - 1]) == trimmed(read.written);
}

// As plain lines, where the lines as read do not stand in the text as they are: a web page, JSON.
std::string plain(const std::string& text, const FormulaReading& reading, const Engine& engine) {
    const auto lines = lines_of(text);
    if (std::all_of(reading.lines.begin(), reading.lines.end(), [&](const auto& line) { return stands_in(lines, line); })) return text;
    if (reading.formula) return engine.formula_text(*reading.formula);
    std::string out = "title: " + reading.title + "\n";
    for (const auto& line : reading.lines) out += line.written + "\n";
    for (const auto& note : lines_of(reading.note))
        if (!note.empty()) out += "note: " + note + "\n";
    return out;
}

class Conversation {
public:
    Conversation(std::string text, const std::string& file, const Engine& engine, std::istream& in, std::ostream& out, const Look& look)
        : text_(std::move(text)), file_(file), engine_(engine), in_(in), out_(out), look_(look) {}

    Talked hold() {
        if (const auto reading = engine_.read_closely(text_, file_)) text_ = plain(text_, *reading, engine_);
        while (const auto open = next()) {
            if (!settle(*open)) return {text_, true};
        }
        if (asked_ == 0) out_ << "Nothing in it leaves a doubt.\n";
        return {text_, false};
    }

private:
    struct Open {
        LineReading line;
        Doubt doubt;
        std::size_t number = 0;  // in the text, from 1
    };

    // The first line that leaves something open and was not let stand.
    std::optional<Open> next() const {
        const auto reading = engine_.read_closely(text_, file_);
        if (!reading) return std::nullopt;
        const auto lines = lines_of(text_);
        for (const auto& line : reading->lines) {
            if (!stands_in(lines, line)) continue;
            const std::size_t number = line_number(line.where);
            const auto told = rounds_.find(number);
            if (let_stand_.count(number) || (told != rounds_.end() && told->second >= rounds_a_line)) continue;
            if (auto doubt = doubt_of(line, engine_)) return Open{line, std::move(*doubt), number};
        }
        return std::nullopt;
    }

    void ask(const Open& open) {
        out_ << "\n"
             << look_.bold(wrap(open.line.written, look_.width)) << "\n"
             << wrap(capital(open.doubt.question), look_.width, 2) << "\n";
        for (std::size_t i = 0; i < open.doubt.choices.size(); ++i)
            out_ << wrap(std::to_string(i + 1) + "  " + open.doubt.choices[i].shown, look_.width, 4, 3) << "\n";
        std::string ways = open.doubt.choices.empty() ? "" : "A number, or type";
        ways += ways.empty() ? "Type" : "";
        out_ << wrap(ways + " what it is or weighs, or the whole line; x leaves it out, Enter lets it stand.", look_.width, 2) << "\n> "
             << std::flush;
    }

    void put(std::size_t number, const std::string& line) {
        auto lines = lines_of(text_);
        if (!lines.empty() && lines.back().empty()) lines.pop_back();
        lines[number - 1] = line;
        text_ = joined(lines);
    }

    // False when there are no more answers.
    bool settle(const Open& open) {
        ++asked_;
        ++rounds_[open.number];
        ask(open);
        std::string answer;
        if (!std::getline(in_, answer)) return false;
        answer = trimmed(answer);
        if (answer.empty()) {
            let_stand_.insert(open.number);
            return true;
        }
        if (answer == "x" || answer == "X") {
            put(open.number, "# left out: " + open.line.written);
            return true;
        }
        std::size_t chosen = 0;
        const auto [end, trouble] = std::from_chars(answer.data(), answer.data() + answer.size(), chosen);
        const bool number = trouble == std::errc{} && end == answer.data() + answer.size();
        if (number && chosen >= 1 && chosen <= open.doubt.choices.size()) {
            take(open, open.doubt.choices[chosen - 1].line);
            return true;
        }
        if (const auto line = line_from(answer, open.line.written, engine_)) take(open, *line);
        else out_ << wrap("That does not read as a line either.", look_.width, 2) << "\n";
        return true;
    }

    void take(const Open& open, const std::string& line) {
        if (line == open.line.written) let_stand_.insert(open.number);
        put(open.number, line);
        out_ << wrap("now: " + line, look_.width, 2) << "\n";
    }

    std::string text_;
    const std::string& file_;
    const Engine& engine_;
    std::istream& in_;
    std::ostream& out_;
    const Look& look_;
    std::size_t asked_ = 0;
    std::map<std::size_t, int> rounds_;
    std::set<std::size_t> let_stand_;
};

}  // namespace

Talked talk_over(std::string text, const std::string& file, const Engine& engine, std::istream& in, std::ostream& out, const Look& look) {
    return Conversation(std::move(text), file, engine, in, out, look).hold();
}

}  // namespace standin::cli
