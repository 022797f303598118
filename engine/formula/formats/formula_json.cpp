#include "formula/formats/formula_json.hpp"

#include <array>

#include "core/typed_reader.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/hazards/line_beside.hpp"
#include "formula/hazards/told_content.hpp"
#include "formula/line/food_beside.hpp"

namespace standin {
namespace {

using Node = JsonNode::Kind;

class JsonFormula {
public:
    JsonFormula(std::string_view file, const Knowledge& knowledge) : file_(file), knowledge_(knowledge), problems_(std::string(file)) {}

    Draft read(const JsonNode& root) {
        take(root);
        draft_.troubles.add(problems_.errors());
        return std::move(draft_);
    }

private:
    // What the maker knows of the lot, with the words that a line has about it.
    struct Fact {
        const JsonNode* node;
        std::string_view before, after;
    };

    void take(const JsonNode& root) {
        ObjectReader reader(root, problems_);
        if (const JsonNode* title = reader.child("title", Node::text, true)) {
            draft_.formula.title = title->text;
            look_through_title(draft_, title->text, describe(file_, title->place), knowledge_);
        }
        draft_.formula.note = reader.text_or("note");
        look_at_each_line(root.member("note"));
        reader.child("told_when_written", Node::object);  // told again of what is read
        draft_.formula.parent = reader.text_or("parent");
        draft_.formula.date = reader.text_or("date");
        for (const auto& item : reader.list("do"))
            if (text(item, "what to do")) draft_.formula.to_do.push_back(item.text);
        for (const auto& item : reader.list("method"))
            if (text(item, "a step of the method")) {
                look(&item);
                draft_.formula.method.push_back(item.text);
            }
        if (const JsonNode* lines = reader.child("lines", Node::list, true)) {
            if (lines->items.empty()) reader.fault("lines", "no lines: expected at least one ingredient");
            for (const auto& item : lines->items)
                if (!draft_.hopeless()) line(item);
        }
        for (const auto& item : reader.list("beside")) beside(item);
        if (const JsonNode* object = reader.child("process", Node::object)) process(*object);
    }

    void line(const JsonNode& item) {
        ObjectReader reader(item, problems_);
        const std::string note = reader.text_or("note");
        look(item.member("note"));
        const JsonNode* ingredient = words(reader, "ingredient");
        const JsonNode* amount = words(reader, "amount");
        const auto& prepared = reader.list("prepared");
        const bool keep = reader.flag("keep");
        const std::array<Fact, 4> facts{{{reader.child("fat", Node::text), "", " fat"},
                                         {reader.child("ph", Node::text), "pH ", ""},
                                         {reader.child("acid", Node::text), "", " acidity"},
                                         {reader.child("heat", Node::text), "", ""}}};
        auto after = weighed(reader);
        if (!after && !prepared.empty()) after = false;
        if (!ingredient || !amount) return;
        JoinedLine joined(file_, *amount, *ingredient);
        for (const auto& [node, before, after] : facts)
            if (node) joined.add_fact(*node, before, after);
        for (const auto& one : prepared)
            if (text(one, "a preparation")) joined.add_preparation(one);
        auto read = joined.read(knowledge_, after);
        if (read) {
            read->line.keep = read->line.keep || keep;
            if (auto danger = note.empty() ? std::nullopt : danger_in_note(note, *read))
                read = failure(danger->trouble, danger->message, describe(file_, item.place), danger->hints);
        }
        draft_.lines.push_back({joined.written(), describe(file_, item.place), std::move(read), {}});
    }

    void look(const JsonNode* node) {
        if (node && node->kind == Node::text) look_through(draft_, node->text, describe(file_, node->place), knowledge_);
    }

    // Notes stand a line each, and say nothing of each other.
    void look_at_each_line(const JsonNode* node) {
        if (!node || node->kind != Node::text) return;
        for (std::size_t start = 0; start <= node->text.size();) {
            const std::size_t end = std::min(node->text.find('\n', start), node->text.size());
            look_through(draft_, std::string_view(node->text).substr(start, end - start), describe(file_, node->place), knowledge_);
            start = end + 1;
        }
    }

    // A line's note is of its food: "bitter" beside almonds says what kind they are.
    std::optional<Error> danger_in_note(const std::string& note, ReadLine& read) const {
        if (auto danger = danger_of_food(note, read.line, knowledge_)) return danger;
        if (auto unknown = content_not_known(note, knowledge_)) return unknown;
        for (auto& told : told_hazards(note, read.line, knowledge_)) read.line.notes.push_back(std::move(told));
        return other_food_in_passing(note, read.line, knowledge_);
    }

    void beside(const JsonNode& item) {
        if (!text(item, "a thing beside the mass")) return;
        auto beside = beside_the_mass(item.text, knowledge_);
        look(&item);
        if (!beside) beside = food_beside(item.text, Origin(file_, item.place), knowledge_);
        if (beside) draft_.lines.push_back({item.text, describe(file_, item.place), ReadLine{}, std::move(beside)});
        else problems_.add(item.place, "\"" + item.text + "\" may be food: expected a casing or the like, or a line of its own");
    }

    // A needed text with something in it.
    const JsonNode* words(ObjectReader& reader, std::string_view key) {
        const JsonNode* node = reader.child(key, Node::text, true);
        if (!node || node->text.find_first_not_of(" \t\r\n") != std::string::npos) return node;
        reader.fault(key, "\"" + std::string(key) + "\" is empty");
        return nullptr;
    }

    bool text(const JsonNode& node, const std::string& what) {
        if (node.kind != Node::text) problems_.add(node.place, what + " must be text, not " + std::string(kind_name(node.kind)));
        return node.kind == Node::text;
    }

    static WeighedAfter weighed(ObjectReader& reader) {
        const JsonNode* node = reader.child("weighed", Node::text);
        if (!node) return std::nullopt;
        if (node->text != "before" && node->text != "after")
            reader.fault("weighed", "\"weighed\" must be \"before\" or \"after\", not \"" + node->text + "\"");
        return node->text == "after";
    }

    void process(const JsonNode& object) {
        for (const auto& [key, value] : object.members) {
            if (!text(value, "\"" + key + "\"")) continue;
            if (auto wrong = set_process(draft_.formula.process, key, value.text, knowledge_))
                problems_.add(value.place, std::move(wrong->message), std::move(wrong->hints));
        }
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Problems problems_;
    Draft draft_;
};

}  // namespace

JoinedLine::JoinedLine(std::string_view file, const JsonNode& amount, const JsonNode& ingredient) : file_(file) {
    add("", amount);
    add("\n", ingredient);
}

// The line end between two values is one that no number, unit or name can cross.
void JoinedLine::add(std::string_view between, const JsonNode& node) {
    text_ += between;
    pieces_.emplace_back(text_.size(), node.place);
    for (const char c : node.text) text_ += c == '\n' ? ' ' : c;
}

void JoinedLine::add_fact(const JsonNode& fact, std::string_view before, std::string_view after) {
    JsonNode words = fact;
    words.text = std::string(before) + fact.text + std::string(after);
    add("\n,", words);
}

std::string JoinedLine::written() const {
    std::string out;
    for (std::size_t i = 0; i < text_.size(); ++i) {
        if (text_[i] != '\n') out += text_[i];
        else if (text_.compare(i, 2, "\n,") == 0) out += ", ", ++i;
        else out += ' ';
    }
    return out;
}

Result<ReadLine> JoinedLine::read(const Knowledge& knowledge, WeighedAfter after) const {
    return read_line(text_, Origin::joined(file_, pieces_), knowledge, after);
}

Draft read_json_formula(const JsonNode& root, std::string_view file, const Knowledge& knowledge) {
    return JsonFormula(file, knowledge).read(root);
}

}  // namespace standin
