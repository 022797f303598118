#include "formula/formats/inventory.hpp"

#include <algorithm>
#include <array>

#include "core/names.hpp"
#include "core/typed_reader.hpp"
#include "formula/formats/formula_json.hpp"
#include "formula/formats/text_lines.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/line_doubts.hpp"
#include "formula/line/name_text.hpp"

namespace standin {
namespace {

using Kind = JsonNode::Kind;

// Puts what was read into one inventory: amounts of the same ingredient add up, plenty swallows them.
class Gatherer {
public:
    Gatherer(const Knowledge& knowledge, Troubles& troubles) : knowledge_(knowledge), troubles_(troubles) {}

    void have(const std::string& id, std::optional<double> grams, const std::string& where) {
        if (has(inventory_.missing, id)) return contradicts(id, where);
        for (auto& item : inventory_.items)
            if (item.ingredient == id) {
                item.grams = item.grams && grams ? std::optional(*item.grams + *grams) : std::nullopt;
                return;
            }
        inventory_.items.push_back({id, grams});
    }

    void have(const ReadLine& read) {
        if (read.share)
            return troubles_.add({Trouble::bad_data, "a share of the meat is no amount on hand: expected a weight", read.where, {}});
        const Ingredient& ingredient = *knowledge_.ingredient(read.line.ingredient);
        for (const auto& prepared : read.line.prepared)
            if (!changes_nothing(prepared, ingredient, knowledge_))
                return troubles_.add(
                    {Trouble::bad_data, "what is on hand is counted as bought, not \"" + prepared.preparation + "\"", read.where, {}});
        note(read.line.notes);
        have(read.line.ingredient, read.line.grams.mid, read.where);
    }

    void missing(const std::string& id, const std::string& where) {
        for (const auto& item : inventory_.items)
            if (item.ingredient == id) return contradicts(id, where);
        if (!has(inventory_.missing, id)) inventory_.missing.push_back(id);
    }

    void complete(bool value, const std::string& where) {
        if (inventory_.complete && *inventory_.complete != value)
            troubles_.add({Trouble::bad_data, "both \"nothing else\" and \"everything else\": expected one of them", where, {}});
        inventory_.complete = value;
    }

    /// The id of a name alone; a trouble when it is unknown.
    std::optional<std::string> named(std::string_view name, const Origin& origin) {
        auto read = read_name({name, origin, knowledge_}, Given::things);
        if (read && !read->generic.empty()) note({generic_note(*read)});
        if (read) return read->ingredient->id;
        troubles_.add(std::move(read.error()));
        return std::nullopt;
    }

    Inventory take() { return std::move(inventory_); }

private:
    static bool has(const std::vector<std::string>& ids, const std::string& id) {
        return std::find(ids.begin(), ids.end(), id) != ids.end();
    }

    void note(const std::vector<std::string>& texts) { inventory_.notes.insert(inventory_.notes.end(), texts.begin(), texts.end()); }

    void contradicts(const std::string& id, const std::string& where) {
        troubles_.add({Trouble::bad_data, knowledge_.ingredient(id)->names.front() + " is said to be on hand and not on hand", where, {}});
    }

    const Knowledge& knowledge_;
    Troubles& troubles_;
    Inventory inventory_;
};

constexpr std::array<std::string_view, 8> plenty{"plenty of", "plenty",   "lots of",       "lots",
                                                 "enough",    "loads of", "any amount of", "any amount"};
constexpr std::array<std::string_view, 6> none{"no", "not", "without", "out of", "none of", "not any"};
constexpr std::array<std::string_view, 3> none_after{"none", "0", "0 g"};

bool same(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](char x, char y) { return (x >= 'A' && x <= 'Z' ? static_cast<char>(x - 'A' + 'a') : x) == y; });
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view loose = " \t,:;-";
    const auto first = text.find_first_not_of(loose);
    return first == std::string_view::npos ? std::string_view{} : text.substr(first, text.find_last_not_of(loose) - first + 1);
}

/// The rest when `text` starts (or ends) with one of `words`, else empty.
template <std::size_t N>
std::string_view rest_after(std::string_view text, const std::array<std::string_view, N>& words) {
    for (const auto word : words)
        if (text.size() > word.size() && same(text.substr(0, word.size()), word) && text[word.size()] == ' ')
            return trimmed(text.substr(word.size()));
    return {};
}

template <std::size_t N>
std::string_view rest_before(std::string_view text, const std::array<std::string_view, N>& words) {
    for (const auto word : words) {
        if (text.size() <= word.size()) continue;
        const std::size_t cut = text.size() - word.size();
        if (same(text.substr(cut), word) && (text[cut - 1] == ' ' || text[cut - 1] == ':')) return trimmed(text.substr(0, cut));
    }
    return {};
}

class PlainInventory {
public:
    PlainInventory(std::string_view file, const Knowledge& knowledge)
        : file_(file), knowledge_(knowledge), gatherer_(knowledge, troubles_) {}

    Result<Inventory> read(const std::vector<TextLine>& lines) {
        for (const auto& line : lines)
            if (!troubles_.full()) take(line);
        if (troubles_.any()) return troubles_.failure();
        return gatherer_.take();
    }

private:
    void take(const TextLine& line) {
        std::string_view text = trimmed(line.text);
        if (text.substr(0, 1) == "*") text = trimmed(text.substr(1));
        const std::string folded = fold(text);
        if (folded == "nothing else") return gatherer_.complete(true, describe(file_, line.place));
        if (folded == "everything else" || folded == "anything else") return gatherer_.complete(false, describe(file_, line.place));
        if (const auto names = rest_after(text, none); !names.empty()) return list(names, line, false);
        if (const auto names = rest_before(text, none_after); !names.empty()) return list(names, line, false);
        if (const auto names = rest_after(text, plenty); !names.empty()) return list(names, line, true);
        if (const auto names = rest_before(text, plenty); !names.empty()) return list(names, line, true);
        auto read = read_line(line.text, Origin(file_, line.place), knowledge_);
        if (read) return gatherer_.have(*read);
        if (line.text.find_first_of("0123456789") == std::string_view::npos) return list(text, line, true);
        troubles_.add(std::move(read.error()));
    }

    // Names apart by commas, "and" or "or"; one name that has such a word in it stays whole.
    void list(std::string_view names, const TextLine& line, bool on_hand) {
        if (known_ingredient(names, knowledge_)) return name(names, line, on_hand);
        std::size_t start = 0;
        for (std::size_t i = 0; i <= names.size(); ++i) {
            const auto rest = names.substr(i);
            const std::size_t length = rest.empty() || rest.front() == ',' ? 1
                                       : rest.substr(0, 5) == " and "      ? 5
                                       : rest.substr(0, 4) == " or "       ? 4
                                                                           : 0;
            if (length == 0) continue;
            if (const auto one = trimmed(names.substr(start, i - start)); !one.empty()) name(one, line, on_hand);
            start = i + length;
            i = start - 1;
        }
    }

    void name(std::string_view text, const TextLine& line, bool on_hand) {
        const Place place{line.place.line, line.place.column + static_cast<std::size_t>(text.data() - line.text.data())};
        const auto id = gatherer_.named(text, Origin(file_, place));
        if (!id) return;
        if (on_hand) gatherer_.have(*id, std::nullopt, describe(file_, place));
        else gatherer_.missing(*id, describe(file_, place));
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Troubles troubles_;
    Gatherer gatherer_;
};

class JsonInventory {
public:
    JsonInventory(std::string_view file, const Knowledge& knowledge)
        : file_(file), knowledge_(knowledge), problems_(std::string(file)), gatherer_(knowledge, troubles_) {}

    Result<Inventory> read(const JsonNode& root) {
        take(root);
        troubles_.add(problems_.errors());
        if (troubles_.any()) return troubles_.failure();
        return gatherer_.take();
    }

private:
    void take(const JsonNode& root) {
        ObjectReader reader(root, problems_);
        reader.text_or("note");
        for (const auto& item : reader.list("have", true)) have(item);
        for (const auto& item : reader.list("not")) {
            if (item.kind != Kind::text)
                problems_.add(item.place, "what is not on hand must be text, not " + std::string(kind_name(item.kind)));
            else if (const auto id = named(item)) gatherer_.missing(*id, describe(file_, item.place));
        }
        if (const JsonNode* flag = reader.child("complete", Kind::boolean)) gatherer_.complete(flag->boolean, describe(file_, flag->place));
    }

    void have(const JsonNode& item) {
        ObjectReader reader(item, problems_);
        const JsonNode* name = reader.child("ingredient", Kind::text, true);
        const JsonNode* amount = reader.child("amount", Kind::text);
        if (reader.flag("plenty") && amount) reader.fault("plenty", "both \"amount\" and \"plenty\": expected one of them");
        if (!name) return;
        if (!amount) {
            if (const auto id = named(*name)) gatherer_.have(*id, std::nullopt, describe(file_, name->place));
            return;
        }
        auto line = JoinedLine(file_, *amount, *name).read(knowledge_, {});
        if (line) gatherer_.have(*line);
        else troubles_.add(std::move(line.error()));
    }

    std::optional<std::string> named(const JsonNode& node) { return gatherer_.named(node.text, Origin::joined(file_, {{0, node.place}})); }

    std::string_view file_;
    const Knowledge& knowledge_;
    Problems problems_;
    Troubles troubles_;
    Gatherer gatherer_;
};

}  // namespace

Result<Inventory> read_plain_inventory(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    return PlainInventory(file, knowledge).read(text_lines(text));
}

Result<Inventory> read_json_inventory(const JsonNode& root, std::string_view file, const Knowledge& knowledge) {
    return JsonInventory(file, knowledge).read(root);
}

}  // namespace standin
