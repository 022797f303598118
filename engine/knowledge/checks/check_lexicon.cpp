#include "knowledge/checks/check_lexicon.hpp"

#include <algorithm>
#include <set>

#include "core/names.hpp"
#include "core/typed_reader.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

// Classes that a label may name without saying which nut or grain it is.
constexpr std::string_view unnamed_classes[]{"tree-nut", "gluten", "shellfish"};

struct Known {
    std::set<std::string> ingredients, preparations, allergens;
};

Known known_in(const Records& records) {
    Known known;
    for (const auto& r : records.ingredients) known.ingredients.insert(r.id);
    for (const auto& r : records.preparations) known.preparations.insert(r.id);
    for (const auto& rules : records.rules)
        for (const auto& rule : rules.allergens) known.allergens.insert(rule.allergen);
    for (const auto name : unnamed_classes) known.allergens.emplace(name);
    return known;
}

class LexiconCheck {
public:
    LexiconCheck(const Places& places, std::vector<Finding>& findings, Known known)
        : places_(places), findings_(findings), known_(std::move(known)) {}

    void hazard(const Hazard& h) {
        const std::string record = "hazard " + h.id;
        for (const auto* list : {&h.words, &h.with, &h.unless, &h.but_not})
            for (const auto& pattern : *list) folded(record, pattern);
        ids(record, "ingredient", h.of, known_.ingredients);
        ids(record, "preparation", h.needs, known_.preparations);
        if (!h.needs.empty() && h.of.empty()) add(record, "\"needs\" without \"of\": of which foods?");
        if ((h.act == HazardAct::declare) == h.allergen.empty()) add(record, "\"allergen\" goes with \"does\": \"declare\"");
        if (!h.allergen.empty() && !known_.allergens.count(h.allergen))
            add(record, "no rule set lists the allergen \"" + h.allergen + "\"");
    }

    void namesake(const Namesake& n) {
        const std::string record = "namesake " + n.id;
        for (const auto* list : {&n.names, &n.trade_words, &n.told_by})
            for (const auto& word : *list)
                if (fold(word) != word) add(record, "\"" + word + "\" never matches: write \"" + fold(word) + "\"");
        ids(record, "preparation", n.done_to, known_.preparations);
    }

    void patterns(const std::string& list, const std::vector<std::string>& all) {
        for (const auto& pattern : all) folded("the list \"" + list + "\"", pattern);
    }

    // What the reader asks for and no record gives would be read as if nobody had written such a word.
    void lists(const std::vector<ListedWord>& listed) {
        std::set<WordList> there;
        for (const auto& word : listed) there.insert(word.list);
        for (std::size_t i = 0; i < count_of<WordList>; ++i)
            if (!there.count(static_cast<WordList>(i)))
                add("list " + std::string(Words<WordList>::all[i]),
                    "no words of the list \"" + std::string(Words<WordList>::all[i]) + "\", which the reader needs");
    }

    void word(const std::string& w) {
        if (hazard_fold(w).empty()) add("word " + w, "no word that could stand in a line");
    }

private:
    void folded(const std::string& record, const std::string& pattern) {
        std::string bare;
        for (const char c : pattern)
            if (c != '*' && (c != ' ' || (!bare.empty() && bare.back() != ' '))) bare += c;  // "salt * pink": any word between
        if (bare.empty() || hazard_fold(bare) != bare)
            add(record, "\"" + pattern + "\" never matches: write \"" + hazard_fold(bare) + "\"");
    }

    void ids(const std::string& record, const char* kind, const std::vector<std::string>& all, const std::set<std::string>& known) {
        const std::vector<std::string_view> names(known.begin(), known.end());
        for (const auto& id : all)
            if (!known.count(id)) add(record, std::string("no ") + kind + " \"" + id + "\"", nearest_words(id, names));
    }

    void add(const std::string& record, std::string message, std::vector<std::string> hints = {}) {
        const auto place = places_.find(record);
        findings_.push_back({true, place == places_.end() ? record : place->second, std::move(message), std::move(hints)});
    }

    const Places& places_;
    std::vector<Finding>& findings_;
    Known known_;
};

}  // namespace

void check_lexicon(const Records& records, const Places& places, std::vector<Finding>& findings) {
    // Tests lay single files over nothing: what they leave out is not missing.
    if (records.ingredients.empty() || records.rules.empty()) return;
    LexiconCheck check(places, findings, known_in(records));
    for (const auto& hazard : records.lexicon.hazards) check.hazard(hazard);
    for (const auto& namesake : records.lexicon.namesakes) check.namesake(namesake);
    check.patterns("holds", records.lexicon.holds);
    check.patterns("handles", records.lexicon.handles);
    check.lists(records.lexicon.listed);
    for (const auto& word : records.lexicon.tongue) check.word(word.word);
    for (const auto& word : records.lexicon.listed) check.word(word.word);
}

}  // namespace standin
