#include "own_words.hpp"

#include <algorithm>
#include <cctype>
#include <set>

namespace standin::cli {
namespace {

// The words of a text, each between blanks.
std::set<std::string> words_of(const std::string& text) {
    std::set<std::string> words;
    for (std::size_t at = 0; at < text.size();) {
        const auto end = std::min(text.find(' ', at), text.size());
        if (end > at) words.insert(text.substr(at, end - at));
        at = end + 1;
    }
    return words;
}

// Whether the folded word is that name, but for its case.
bool said_of(const std::string& word, std::string name) {
    std::transform(name.begin(), name.end(), name.begin(),
                   [](unsigned char letter) { return static_cast<char>(letter < 0x80 ? std::tolower(letter) : letter); });
    return word == name;
}

bool share_a_word(const std::string& one, const std::string& other) {
    const auto words = words_of(one), others = words_of(other);
    return std::any_of(words.begin(), words.end(), [&](const std::string& word) { return others.contains(word); });
}

}  // namespace

std::string speak_as(Engine& engine, const FormulaReading& formula) {
    std::vector<OwnWords> said;
    std::vector<std::pair<std::string, std::string>> before;
    for (const auto& line : formula.lines) {
        if (!line.line || !line.line->called.empty()) continue;
        const std::string& id = line.line->ingredient;
        if (std::none_of(before.begin(), before.end(), [&](const auto& b) { return b.first == id; }))
            before.emplace_back(id, engine.name_of(id));
        said.push_back({id, line.written});
    }
    engine = engine.speaking_as(said);
    std::string others;
    for (const auto& [id, was] : before)
        if (const std::string now = engine.name_of(id); !share_a_word(now, was))
            others += (others.empty() ? "" : ", ") + now + " (" + was + ")";
    return others.empty() ? "" : "your words, and in brackets what they are reckoned as: " + others;
}

void speak_as(Engine& engine, const Inventory& have, const Formula& formula, const std::string& list) {
    std::vector<OwnWords> said;
    for (const auto& item : have.items)
        if (std::none_of(formula.lines.begin(), formula.lines.end(),
                         [&](const standin::Line& line) { return line.ingredient == item.ingredient; }))
            said.push_back({item.ingredient, list});
    // "No scotch bonnets" beside habaneros, one food here: what is weighed is called by the name of what is there.
    for (const auto& told : have.notes)
        if (told.kind == ReasonKind::both_are_one)
            for (const auto& item : have.items)
                if (said_of(told.note, engine.name_of(item.ingredient))) said.push_back({item.ingredient, told.about});
    engine = engine.speaking_as(said);
}

}  // namespace standin::cli
