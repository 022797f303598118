// Every word of every list whose `try` says what it shows or hides is put into the text that its list gives; where "zorb", or its `other`,
// stands for the word it must be otherwise.
#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>

#include "core/names.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/food/remark.hpp"
#include "formula/kitchen/kitchen_text.hpp"
#include "formula/reading.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/checks/check.hpp"
#include "knowledge/load.hpp"
#include "knowledge/records/word_list.hpp"
#include "safety/promises.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/places.hpp"

using namespace standin;

namespace lists_tried_test {

std::string with_word(std::string text, const std::string& word) {
    const std::string place = "{word}";
    return text.replace(text.find(place), place.size(), word);
}

std::string figure(std::string_view name, const std::optional<double>& value) {
    return value ? " " + std::string(name) + " " + plain_number(*value) : "";
}

std::string told(const std::vector<Reason>& reasons) {
    std::string all;
    for (const auto& one : in_full(reasons)) all += "; " + one;
    return all;
}

std::string shown(const Line& line) {
    std::string all = line.ingredient + " " + plain_number(line.grams.mid) + " g";
    for (const auto& step : line.prepared) all += ", " + step.preparation + figure("min", step.minutes);
    if (line.weighed_prepared) all += ", weighed prepared";
    if (line.fat_pct) all += figure("fat", line.fat_pct->mid);
    if (line.ph) all += figure("pH", line.ph->mid);
    if (line.acid_pct) all += figure("acid", line.acid_pct->mid);
    if (line.heat_mg_kg) all += figure("heat", line.heat_mg_kg->mid);
    for (const auto& one : line.declared) all += ", declares " + one.allergen;
    return all + told(line.notes);
}

std::string shown(const Formula& formula, const Knowledge& knowledge) {
    const Process& p = formula.process;
    std::string all = "title " + formula.title + "\nprocess" + figure("plate", p.plate_mm) + figure("mixing", p.mixing_min) +
                      figure("rest", p.rest_h) + figure("core", p.core_c);
    if (p.cook) all += " cook " + std::to_string(static_cast<int>(*p.cook));
    all += told(formula.read_as) + "\n";
    for (const auto& line : formula.lines) all += shown(line) + "\n";
    for (const auto& one : formula.beside) all += "beside " + one.written + "\n";
    for (const auto& one : formula.declared) all += "declares " + one.allergen + "\n";
    for (const auto& one : broken_promises(formula, knowledge)) all += "caution " + one.id + "\n";
    return all;
}

std::string read_as_formula(const std::string& text, const Knowledge& knowledge) {
    const auto read = read_closely(text, "", knowledge);
    if (!read) return "not read: " + read.error().message;
    std::string all;
    for (const auto& line : read->lines) {
        if (line.asked) all += "asked: " + line.asked->message + "\n";
        if (!read->formula && line.line) all += shown(*line.line) + "\n";
        all += told(line.why) + "\n";
    }
    for (const auto& error : read->errors) all += "error: " + error.message + "\n";
    return all + (read->formula ? shown(*read->formula, knowledge) : "");
}

std::string read_as_stock(const std::string& text, const Knowledge& knowledge) {
    const auto read = read_inventory(text, "", knowledge);
    if (!read) return "not read: " + read.error().message;
    std::string all = read->complete ? *read->complete ? "closed\n" : "open\n" : "";
    for (const auto& item : read->items) all += item.ingredient + (item.grams ? " " + plain_number(*item.grams) + " g\n" : " plenty\n");
    for (const auto& id : read->missing) all += "no " + id + "\n";
    for (const auto& aside : read->aside) all += "aside " + aside + "\n";
    for (const auto& note : read->notes) all += in_full(note) + "\n";
    return all;
}

std::string read_as_kitchen(const std::string& text, const Knowledge& knowledge) {
    const auto read = read_kitchen(text, "", knowledge);
    if (!read) return "not read: " + read.error().message;
    std::string all;
    for (const auto& fact : read->facts) {
        all += "fact " + std::to_string(static_cast<int>(fact.kind)) + " " + plain_number(fact.value.mid) + " " + fact.measure;
        for (const auto& id : fact.foods) all += " " + id;
        all += "\n";
    }
    return all;
}

std::string reading(const std::string& as, const std::string& text, const Knowledge& knowledge) {
    if (as == "stock") return read_as_stock(text, knowledge);
    return as == "kitchen" ? read_as_kitchen(text, knowledge) : read_as_formula(text, knowledge);
}

std::vector<std::string> words_in(const nlohmann::json& list) {
    std::vector<std::string> all;
    if (list.at("words").is_array()) return list.at("words").get<std::vector<std::string>>();
    for (const auto& [language, words] : list.at("words").items())
        for (const std::string word : words) all.push_back(word);
    return all;
}

template <class Each>
void each_list(Each each) {
    for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(knowledge_folder()) / "lexicon")) {
        std::ifstream file(entry.path());
        const auto lexicon = nlohmann::json::parse(file);
        if (!lexicon.contains("lists")) continue;
        for (const auto& list : lexicon.at("lists")) each(list);
    }
}

TEST_CASE("a word of a list shows in what is read, and another one does not", "[long]") {
    std::size_t words = 0;
    std::string missed;
    each_list([&](const nlohmann::json& list) {
        const auto& attempt = list.at("try");
        const bool hides = attempt.contains("hides");
        if (!hides && !attempt.contains("shows")) return;
        const std::string id = list.at("id"), line = attempt.at("line"), as = attempt.value("as", "formula"),
                          other = attempt.value("other", "zorb"), part = attempt.at(hides ? "hides" : "shows");
        const auto shows = [&](const std::string& word) {
            return reading(as, with_word(line, word), knowledge()).find(part) != std::string::npos;
        };
        if (shows(other) != hides) missed += "\n  " + id + ": no other word\n" + reading(as, with_word(line, other), knowledge());
        for (const auto& word : words_in(list)) {
            ++words;
            if (shows(word) == hides) missed += "\n  " + id + ": " + word + "\n" + reading(as, with_word(line, word), knowledge());
        }
    });
    INFO(missed);
    CHECK(missed.empty());
    CHECK(words > 100);
}

TEST_CASE("a remark that is never plain is asked about or told, whatever else holds its words") {
    each_list([&](const nlohmann::json& list) {
        if (list.at("try").value("becomes", "") != "not plain") return;
        for (const auto& word : words_in(list)) {
            CAPTURE(word);
            CHECK(knowledge().in_list(WordList::passed_over, fold(word)));
            CHECK_FALSE(is_plain_phrase(fold(word), knowledge()));
        }
    });
    CHECK(is_plain_phrase("crisp", knowledge()));
}

TEST_CASE("what a clause behind a food says it is made with is no item of its own") {
    std::string line;
    each_list([&](const nlohmann::json& list) {
        if (list.at("try").value("becomes", "") != "one clause") return;
        line = list.at("try").at("line");
        for (const auto& word : words_in(list)) {
            CAPTURE(word);
            CHECK(parts_of_list(with_word(line, word), knowledge()).size() == 2);
        }
    });
    CHECK(parts_of_list(with_word(line, "zorb"), knowledge()).size() == 3);
}

TEST_CASE("the program knows every list by its type, and every word of a list") {
    std::size_t lists = 0;
    each_list([&](const nlohmann::json& list) {
        const auto named = parse_word<WordList>(list.at("id").get<std::string>());
        CAPTURE(list.at("id"));
        REQUIRE(named);
        ++lists;
        for (const auto& word : words_in(list)) {
            const bool foldable = !fold(word).empty();  // Cyrillic is not: such words stand as they are written
            CHECK(knowledge().in_list(*named, fold(word)) == foldable);
            CHECK(knowledge().in_list_as_written(*named, word));
        }
    });
    CHECK(lists >= count_of<WordList> - 1);  // "article" stands among the kinds
    CHECK_FALSE(knowledge().in_list(WordList::cut, "flambeed"));
}

TEST_CASE("a list that the reader needs and no record has is named") {
    Records records = knowledge().records();
    std::erase_if(records.lexicon.listed, [](const ListedWord& word) { return word.list == WordList::serving_word; });
    const auto findings = check_records(records, {});
    CHECK(std::any_of(findings.begin(), findings.end(), [](const Finding& one) {
        return one.error && one.message == "no words of the list \"serving-word\", which the reader needs";
    }));
}

class OwnFolder {
public:
    OwnFolder(const std::string& list, const std::string& word) {
        std::filesystem::create_directories(path_ / "lexicon");
        std::ofstream(path_ / "lexicon/own.json") << R"({"lists": [{"id": ")" << list << R"(", "tells": "own words", "words": {"en": [")"
                                                  << word << R"("]}, "try": {"line": "{word}", "shows": "it"}}]})";
    }
    ~OwnFolder() { std::filesystem::remove_all(path_); }
    Result<Knowledge> laid_over() const { return overlaid_knowledge(path_.string()); }

private:
    std::filesystem::path path_ = std::filesystem::temp_directory_path() / ("standin-lists-" + std::to_string(::getpid()));
};

TEST_CASE("a kitchen's own word of a list is obeyed, whichever list it is") {
    each_list([&](const nlohmann::json& list) {
        const auto& attempt = list.at("try");
        const bool hides = attempt.contains("hides");
        if (!hides && !attempt.contains("shows")) return;
        const std::string id = list.at("id"), line = attempt.at("line"), as = attempt.value("as", "formula"),
                          other = attempt.value("other", "zorb"), part = attempt.at(hides ? "hides" : "shows");
        // There "zorb" would have to be two words, a number, an animal, a food, a country, or known to the lexicon besides.
        const std::set<std::string> more_than_a_word{
            "animal-behind-cut", "counting-word",           "country-of-measure", "garden-bed",    "growing-word", "leaves-fat-open",
            "skin-by-length",    "skin-that-holds-sausage", "title-for-whom",     "title-free-of", "with-word"};
        if (more_than_a_word.count(id)) return;
        CAPTURE(id);
        Records records = knowledge().records();
        records.lexicon.listed.push_back({*parse_word<WordList>(id), other});
        const Knowledge own(std::move(records));
        CHECK((reading(as, with_word(line, other), own).find(part) != std::string::npos) != hides);
    });
    const OwnFolder folder("serving-word", "plate it up");
    const auto own = folder.laid_over();
    REQUIRE(own);
    CHECK(own->in_list(WordList::serving_word, fold("plate it up")));
    CHECK(own->in_list(WordList::serving_word, "serve"));
}

TEST_CASE("a folder with a list that the reader does not know is told the nearest") {
    const OwnFolder folder("serving-words", "plate it up");
    const auto own = folder.laid_over();
    REQUIRE_FALSE(own);
    CHECK(own.error().message.find("serving-words") != std::string::npos);
    CHECK(own.error().message.find("own.json") + own.error().where.find("own.json") != 2 * std::string::npos);
}

}  // namespace lists_tried_test
