// The kinds of food that somebody may have to be without.
#include <algorithm>

#include "knowledge/readers/fields.hpp"
#include "knowledge/readers/read_each.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

// {"de": ["Senf"], "fr": ["moutarde"]}: the language tells the next person whom to ask.
std::vector<std::string> words_in_tongues(ObjectReader& r) {
    std::vector<std::string> all;
    const JsonNode* tongues = r.child("tongues", JsonNode::Kind::object);
    if (!tongues) return all;
    for (const auto& [language, words] : tongues->members)
        for (const auto& word : words.items)
            if (std::string folded = hazard_fold(word.text); !folded.empty()) all.push_back(std::move(folded));
            else r.fault("tongues", "expected words of " + language);
    return all;
}

// "bezgluten*", "без глютен*": words of a hazard text with the sign for any letters at their ends.
std::string as_pattern(const std::string& written) {
    std::string pattern;
    for (std::size_t at = 0; at < written.size();) {
        const auto end = std::min(written.find(' ', at), written.size());
        const std::string word = written.substr(at, end - at);
        at = end + 1;
        if (word.empty()) continue;
        const bool before = word.front() == '*', after = word.size() > 1 && word.back() == '*';
        const std::string plain = hazard_fold(word);
        if (plain.empty()) return {};
        pattern += (pattern.empty() ? "" : " ") + std::string(before ? "*" : "") + plain + (after ? "*" : "");
    }
    return pattern;
}

std::vector<std::string> free_in_tongues(ObjectReader& r) {
    std::vector<std::string> all;
    const JsonNode* tongues = r.child("free", JsonNode::Kind::object);
    if (!tongues) return all;
    for (const auto& [language, words] : tongues->members)
        for (const auto& word : words.items)
            if (std::string pattern = as_pattern(word.text); !pattern.empty()) all.push_back(std::move(pattern));
            else r.fault("free", "expected words of " + language);
    return all;
}

Kind kind_from(ObjectReader& r) {
    Kind k;
    k.id = r.text("id");
    k.takes = r.text("takes");
    k.note = r.text_or("note");
    k.source = r.text("source");
    k.names = r.texts("names");
    if (k.names.empty()) r.fault("names", "a kind needs at least one name");
    k.in_tongues = words_in_tongues(r);
    k.free = free_in_tongues(r);
    k.foods = r.texts("foods");
    k.but = r.texts("but");
    k.kinds = r.texts("kinds");
    k.plants = r.texts("plants");
    k.allergens = r.texts("allergens");
    k.families = r.texts("families");
    k.tissues = enumerated_list<Tissue>(r, "tissues");
    k.species = enumerated_list<Species>(r, "species");
    k.sold_clean = r.texts("sold_clean");
    k.clean_says = r.text_or("clean_says");
    k.clean_source = r.text_or("clean_source");
    k.alcohol = r.flag("alcohol");
    k.untreated = r.flag("untreated");
    k.diet = r.flag("diet");
    return k;
}

}  // namespace

void read_kinds(const JsonNode& root, Problems& problems, KnowledgeFiles& into) {
    ObjectReader r(root, problems);
    r.text_or("note");
    for (const auto& word : r.texts("articles")) into.records.lexicon.listed.push_back({WordList::article, word});
    read_each(r, "kinds", "kind", &Kind::id, kind_from, into.records.kinds, into);
    for (const auto& item : r.list("casings")) {
        ObjectReader c(item, problems);
        into.records.casings.push_back({c.text_or("name"), c.texts("words"), c.texts("kinds"), c.text_or("note")});
    }
    for (const auto& item : r.list("refused")) {
        ObjectReader w(item, problems);
        into.records.refused.push_back({w.texts("names"), w.text("says")});
    }
}

}  // namespace standin
