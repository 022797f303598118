// knowledge/lexicon: hazards, poisons and words of other tongues.
#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/reading.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

using Node = JsonNode::Kind;

HazardAct act_of(ObjectReader& r) {
    const std::string act = r.text("does");
    if (act == "ask") return HazardAct::ask;
    if (act == "declare") return HazardAct::declare;
    if (act == "tell") return HazardAct::tell;
    if (act != "refuse") r.fault("does", "\"does\" must be refuse, ask, declare or tell");
    return HazardAct::refuse;
}

// {"en": ["nitrite"], "de": ["nitrit*"]}: the language tells the next person whom to ask, the reader looks for all of them.
std::vector<std::string> words_by_language(ObjectReader& r, std::string_view key, Problems& problems) {
    std::vector<std::string> all;
    const JsonNode* object = r.child(key, Node::object);
    if (!object) return all;
    for (const auto& [language, words] : object->members) {
        if (words.kind != Node::list) problems.add(words.place, "expected a list of words");
        for (const auto& word : words.items)
            if (word.kind == Node::text && !word.text.empty()) all.push_back(word.text);
            else problems.add(word.place, "expected a word");
    }
    return all;
}

std::vector<HazardExample> examples_of(ObjectReader& r, Problems& problems) {
    std::vector<HazardExample> all;
    for (const auto& item : r.list("examples")) {
        ObjectReader e(item, problems);
        all.push_back({e.text("line"), e.text("becomes")});
    }
    if (all.empty()) r.fault("examples", "expected at least one line that the tests can read");
    return all;
}

Hazard hazard_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    Hazard h;
    h.id = r.text("id");
    h.kind = r.text("kind");
    h.act = act_of(r);
    h.allergen = r.text_or("allergen");
    h.reason = r.text("reason");
    h.source = r.text("source");
    h.words = words_by_language(r, "words", problems);
    h.with = r.texts("with");
    h.unless = r.texts("unless");
    h.but_not = r.texts("but_not");
    h.of = r.texts("of");
    h.needs = r.texts("needs");
    h.least_min = r.number_if("least_min");
    h.hints = r.texts("hints");
    h.examples = examples_of(r, problems);
    if (h.words.empty() && h.needs.empty()) r.fault("words", "expected words, or preparations that the food needs");
    return h;
}

Namesake namesake_of(const JsonNode& node, Problems& problems) {
    ObjectReader r(node, problems);
    Namesake n;
    n.id = r.text("id");
    n.question = r.text("question");
    n.source = r.text("source");
    n.names = r.texts("names");
    n.trade_words = r.texts("trade_words");
    n.told_by = r.texts("told_by");
    n.done_to = r.texts("done_to");
    n.by = r.texts("by");
    n.below_g = r.number_if("below_g");
    n.hints = r.texts("hints");
    n.examples = examples_of(r, problems);
    if (n.names.empty() && n.trade_words.empty()) r.fault("names", "expected the names that two foods share");
    return n;
}

// {"language": "de", "words": {"Bund": "bunch"}}: a table a tongue.
void tongue_words_of(const JsonNode& node, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(node, problems);
    const std::string language = r.text("language");
    const JsonNode* words = r.child("words", Node::object, true);
    if (!words) return;
    for (const auto& [word, english] : words->members) {
        if (english.kind != Node::text) problems.add(english.place, "expected the English word");
        into.records.lexicon.tongue.push_back({language, word, english.text});
        into.places.try_emplace("word " + word, describe(problems.file(), english.place));
    }
}

// {"id": "cut", "words": ["chopped"], "try": {...}}: words that the reader treats alike, or {"en": [...], "de": [...]} where they are of
// several tongues; `try` is for the tests.
void word_list_of(const JsonNode& node, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(node, problems);
    const auto list = enumerated<WordList>(r, "id");
    r.text("tells");
    const JsonNode* words = node.member("words");
    const bool by_language = words && words->kind == Node::object;
    for (const auto& word : by_language ? words_by_language(r, "words", problems) : r.texts("words"))
        into.records.lexicon.listed.push_back({list, word});
    if (const JsonNode* one = r.child("try", Node::object, true)) {
        ObjectReader t(*one, problems);
        t.text("line");
        t.text_or("as");
        t.text_or("other");
        if (t.has("becomes")) t.text("becomes");
        else t.text(t.has("hides") ? "hides" : "shows");
    }
}

}  // namespace

void read_lexicon(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    Lexicon& lexicon = into.records.lexicon;
    for (const auto& item : r.list("hazards")) {
        lexicon.hazards.push_back(hazard_of(item, problems));
        into.places.try_emplace("hazard " + lexicon.hazards.back().id, describe(problems.file(), item.place));
    }
    for (const auto& item : r.list("namesakes")) {
        lexicon.namesakes.push_back(namesake_of(item, problems));
        into.places.try_emplace("namesake " + lexicon.namesakes.back().id, describe(problems.file(), item.place));
    }
    if (const JsonNode* denials = r.child("denials", JsonNode::Kind::object)) {
        ObjectReader d(*denials, problems);
        lexicon.denials = {d.texts("before"), d.texts("between"), d.texts("after")};
    }
    if (const JsonNode* prohibitions = r.child("prohibitions", JsonNode::Kind::object)) {
        ObjectReader p(*prohibitions, problems);
        const auto words = [&](std::string_view key) { return words_by_language(p, key, problems); };
        lexicon.prohibitions = {words("forbids"), words("acts"), words("turns"), words("longer"), words("short_whiles")};
    }
    if (const auto holds = r.texts("holds"); !holds.empty()) lexicon.holds = holds;
    if (const auto handles = r.texts("handles"); !handles.empty()) lexicon.handles = handles;
    if (const auto joins = r.texts("joins"); !joins.empty()) lexicon.joins = joins;
    for (const auto& item : r.list("lists")) word_list_of(item, problems, into);
    for (const auto& item : r.list("tongues")) tongue_words_of(item, problems, into);
}

}  // namespace standin
