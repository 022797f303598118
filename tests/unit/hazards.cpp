// Words that could hurt are never lost: in lines and beside them, in every form a formula comes in.
#include "formula/hazards/hazards.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/hot_holding.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace hazards_test {

using Json = nlohmann::ordered_json;

struct Wording {
    std::string place, amount, words, must;
};

std::string plain_text(const Wording& w) {
    const std::string lines = "\n2 kg pork shoulder\n18 g table salt\n";
    if (w.place == "line") return "Test" + lines + w.amount + " " + w.words + "\n";
    if (w.place == "note") return "Test" + lines + "note: " + w.words + "\n";
    if (w.place == "comment") return "Test" + lines + "# " + w.words + "\n";
    if (w.place == "title") return w.words + lines;
    return "Test" + lines + w.words + "\n";  // casing, heading
}

Json meat_and_salt() { return {{{"ingredient", "pork shoulder"}, {"amount", "2 kg"}}, {{"ingredient", "table salt"}, {"amount", "18 g"}}}; }

std::string json_text(const Wording& w) {
    Json root{{"title", w.place == "title" ? w.words : "Test"}, {"lines", meat_and_salt()}};
    if (w.place == "line") root["lines"].push_back({{"ingredient", w.words}, {"amount", w.amount}});
    if (w.place == "jsonnote") root["lines"].push_back({{"ingredient", "onion"}, {"amount", "100 g"}, {"note", w.words}});
    if (w.place == "note" || w.place == "comment") root["note"] = w.words;
    if (w.place == "casing") root["beside"].push_back(w.words);
    return root.dump();
}

std::string linked_text(const Wording& w) {
    Json root{{"@context", "https://schema.org"}, {"@type", "Recipe"}, {"name", w.place == "title" ? w.words : "Test"}};
    root["recipeIngredient"] = {"2 kg pork shoulder", "18 g table salt"};
    if (w.place == "line") root["recipeIngredient"].push_back(w.amount + " " + w.words);
    if (w.place == "casing") root["recipeIngredient"].push_back(w.words);
    if (w.place == "description" || w.place == "note" || w.place == "comment") root["description"] = w.words;
    if (w.place == "instruction") root["recipeInstructions"] = {{{"@type", "HowToStep"}, {"text", w.words}}};
    return root.dump();
}

std::vector<std::string> forms(const Wording& w) {
    if (w.place == "jsonnote") return {json_text(w)};
    if (w.place == "instruction" || w.place == "description") return {linked_text(w)};
    if (w.place == "heading") return {plain_text(w)};
    return {plain_text(w), json_text(w), linked_text(w)};
}

std::vector<std::string> told(const Formula& formula) {
    auto all = formula.read_as;
    for (const auto& line : formula.lines) all.insert(all.end(), line.notes.begin(), line.notes.end());
    return in_full(all);
}

bool has_allergen(const Formula& formula, const std::string& wanted) {
    const auto among_told = [&](const std::vector<Declared>& all) {
        return std::any_of(all.begin(), all.end(), [&](const Declared& one) { return one.allergen == wanted; });
    };
    if (among_told(formula.declared)) return true;
    return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
        const auto& own = knowledge().ingredient(line.ingredient)->allergens;
        return among_told(line.declared) || std::find(own.begin(), own.end(), wanted) != own.end();
    });
}

bool right(const std::string& must, const Result<Formula>& read) {
    const auto blank = must.find(' ');
    const std::string what = must.substr(0, blank), about = blank == std::string::npos ? "" : must.substr(blank + 1);
    if (!read) return what == "stopped" || what == "readorasked" || what == "allergenorstopped" || what == "stoppedorid";
    const auto notes = told(*read);
    const bool says = std::any_of(notes.begin(), notes.end(), [&](const auto& note) { return note.find(about) != std::string::npos; });
    if (what == "read" || what == "readorasked") return true;
    if (what == "told") return !notes.empty();
    if (what == "toldabout") return says;
    if (what == "stoppedorid") return read->lines.back().ingredient == about;
    return (what == "allergen" || what == "allergenorstopped") && has_allergen(*read, about);
}

TEST_CASE("every wording that could hurt comes to what it must, in every form", "[long]") {
    const auto rows = line_rows("unit/hazard_wordings.csv");
    REQUIRE(rows.size() >= 300);
    for (const auto& row : rows) {
        REQUIRE(row.size() == 4);
        const Wording wording{row[0], row[1], row[2], row[3]};
        for (const auto& text : forms(wording)) {
            const auto read = read_formula(text, "f", knowledge());
            INFO(text << "\nmust be " << wording.must << (read ? "\nread" : "\n" + read.error().message));
            CHECK(right(wording.must, read));
        }
    }
}

namespace {

// With the heat of hot food filled in, as the general rules have it.
std::string reason_of(const Hazard& hazard) {
    Reason told = make_reason(ReasonKind::hazard_told);
    told.note = hazard.reason;
    tell_hot_holding(told, knowledge().rules("general")->hot_holding->band.mid);
    return told.note;
}

}  // namespace

TEST_CASE("each hazard of the lexicon does what its examples say") {
    const auto& hazards = knowledge().records().lexicon.hazards;
    REQUIRE(hazards.size() > 60);
    for (const auto& hazard : hazards)
        for (const auto& example : hazard.examples) {
            if (example.becomes == "told beside") {  // a sentence of the method
                const auto notes = told_hazards(example.line, knowledge());
                INFO(hazard.id << ": " << example.line);
                CHECK(std::any_of(notes.begin(), notes.end(), [&](const Reason& told) { return told.note == reason_of(hazard); }));
                continue;
            }
            if (example.becomes == "not told") {
                const auto notes = told_hazards(example.line, knowledge());
                INFO(hazard.id << ": " << example.line);
                CHECK(std::none_of(notes.begin(), notes.end(), [&](const Reason& told) { return told.note == reason_of(hazard); }));
                continue;
            }
            const auto read = read_line(example.line, Origin("", {1, 1}), knowledge());
            std::string as = "asked|refused";
            if (read) {
                as = "read";
                for (const auto& doubt : read->doubts)
                    if (doubt.always) as = "read|told";
                for (const auto& one : read->line.declared) as += "|" + one.allergen;
                for (const auto& own : knowledge().ingredient(read->line.ingredient)->allergens) as += "|" + own;
            }
            INFO(hazard.id << ": " << example.line << " came to " << as << (read ? "" : ": " + read.error().message));
            bool fits = false;
            for (const std::string one : {"asked", "refused", "read", "told", hazard.allergen.c_str()})
                fits = fits || (!one.empty() && among(one, example.becomes) && among(one, as));
            CHECK(fits);
        }
}

TEST_CASE("no name of a known food is taken for a danger") {
    for (const auto& ingredient : knowledge().records().ingredients)
        for (const auto& name : ingredient.names) {
            INFO(ingredient.id << ": " << name);
            CHECK_FALSE(danger_in("100 g " + name, knowledge()));
        }
}

TEST_CASE("a denied hazard is none, a word that only looks like a denial denies nothing") {
    CHECK_FALSE(danger_in("18 g salt (no nitrite)", knowledge()));
    CHECK_FALSE(danger_in("18 g salt, without any added nitrite", knowledge()));
    CHECK(danger_in("18 g salt (not forgetting the nitrite)", knowledge()));
    CHECK(danger_in("18 g salt, no sugar, nitrite", knowledge()));
}

TEST_CASE("the words of a hazard are found in every script and spelling") {
    CHECK(hazard_fold("Nitrit-PÖKELSALZ") == "nitrit pokelsalz");
    CHECK(hazard_fold("СЕЛИТРА") == "селитра");
    CHECK(hazard_fold("Νιτρώδες") == "νιτρωδεσ");
    CHECK(hazard_fold("ni\u00ADtri\u200Bte") == "nitrite");
    CHECK(hazard_fold("Ｅ２５０") == "e250");
}

TEST_CASE("no hint offers what is dangerous, or an allergen for what only sounds like it") {
    for (const char* word : {"cure salt", "curing salt", "pink curing", "nitritpökelsalz", "E250"}) {
        INFO(word);
        CHECK(knowledge().nearest_ingredients(word).empty());
    }
    for (const auto& hint : knowledge().nearest_ingredients("butter beans")) CHECK(hint != "peanut butter");
    for (const auto& hint : knowledge().nearest_ingredients("trimmings")) CHECK(hint != "bacon");
    for (const char* word : {"halal", "kosher", "vegan", "diet"})
        for (const auto& hint : knowledge().nearest_ingredients(word)) CHECK(hint.find("salt") == std::string::npos);
}

}  // namespace hazards_test
