#include <variant>

#include "knowledge/readers/reading.hpp"
#include "support/catch.hpp"
#include "support/places.hpp"

using namespace standin;

namespace knowledge_reading_test {

KnowledgeFiles read(std::string_view relative, std::string_view text) {
    KnowledgeFiles files;
    read_knowledge_file(relative, text, "k/" + std::string(relative), files);
    return files;
}

bool says(const Error& error, std::string_view part) { return error.message.find(part) != std::string::npos; }

// Exactly one fault, on the given line of the file, whose words hold `part`.
void check_fault(std::string_view relative, const std::string& text, std::size_t line, std::string_view part, std::string_view hint = {}) {
    const auto files = read(relative, text);
    CAPTURE(text, part);
    REQUIRE(files.errors.size() == 1);
    const Error& error = files.errors.front();
    CHECK(says(error, part));
    CHECK(error.where.rfind("k/" + std::string(relative) + ":" + std::to_string(line) + ":", 0) == 0);
    if (!hint.empty()) {
        REQUIRE_FALSE(error.hints.empty());
        CHECK(error.hints.front().find(hint) != std::string::npos);
    }
}

const std::string composition = R"({"source": "s", "water_g": 90, "protein_g": 3, "fat_g": 1, "carbohydrate_g": 5, "ash_g": 1})";

// One ingredient on the second line, with `more` members.
std::string ingredient(const std::string& more, const std::string& of = composition) {
    return "{\"family\": \"f\", \"ingredients\": [\n{\"id\": \"x\", \"names\": [\"x\"], \"roles\": [\"green\"], \"tissue\": \"thin-leaf\", "
           "\"composition\": " +
           of + more + "}]}";
}

std::string swap(const std::string& members) { return "{\"role\": \"green\", \"swaps\": [\n{" + members + "}]}"; }

std::string preparation(const std::string& effect) {
    return "{\"preparations\": [{\"id\": \"p\", \"order\": 1, \"effects\": [\n" + effect + "]}]}";
}

TEST_CASE("what a bought food may hold and the most of it in a kilo are read") {
    const auto files = read("ingredients/f.json", ingredient(R"(, "may_hold": ["wheat", "celery"],
        "most_g_per_kg": {"value": 2, "low": 1, "high": 4, "unit": "g/kg", "source": "s"})"));
    REQUIRE(files.errors.empty());
    const Ingredient& i = files.records.ingredients.front();
    CHECK(i.may_hold == std::vector<std::string>{"wheat", "celery"});
    REQUIRE(i.most_g_per_kg);
    CHECK(i.most_g_per_kg->band == Band{1, 2, 4});
}

TEST_CASE("the most in a kilo is more than nothing and no more than the kilo") {
    const auto most = [](const std::string& number, const std::string& unit) {
        return ingredient(", \"most_g_per_kg\": {\"value\": " + number + ", \"unit\": \"" + unit + "\", \"source\": \"s\"}");
    };
    check_fault("ingredients/f.json", most("0", "g/kg"), 2, "above 0 and up to 1000");
    check_fault("ingredients/f.json", most("1001", "g/kg"), 2, "above 0 and up to 1000");
    check_fault("ingredients/f.json", most("2", "%"), 2, "unit");
}

TEST_CASE("a plain ingredient is read as it stands") {
    const auto files = read(
        "ingredients/f.json",
        ingredient(
            R"(, "chlorophyll": {"value": 2, "low": 1, "high": 3, "unit": "mg/kg", "source": "s"}, "aroma": {"grassy": 2}, "season": [4, 5])"));
    REQUIRE(files.errors.empty());
    REQUIRE(files.records.ingredients.size() == 1);
    const Ingredient& i = files.records.ingredients.front();
    CHECK(i.family == "f");
    CHECK(i.composition.water == Band{90, 90, 90});
    CHECK_FALSE(i.composition.fibre);
    CHECK(i.chlorophyll->band == Band{1, 2, 3});
    CHECK(i.aroma.front().note == AromaNote::grassy);
    CHECK(i.season == std::vector<int>{4, 5});
    CHECK(files.places.at("ingredient x") == "k/ingredients/f.json:2:1");
}

TEST_CASE("bad ingredients") {
    const auto bad = [](const std::string& more, std::string_view part, std::string_view hint = {}) {
        check_fault("ingredients/f.json", ingredient(more), 2, part, hint);
    };
    bad(R"(, "chlorofyll": {})", "unknown key", "chlorophyll");
    bad(R"(, "chlorophyll": {"value": 2, "unit": "mg/g", "source": "s"})", "does not fit");
    bad(R"(, "chlorophyll": {"value": 2, "source": "s"})", "\"unit\" is missing");
    bad(R"(, "chlorophyll": {"value": 2, "unit": "mg/kg"})", "\"source\" is missing");
    bad(R"(, "chlorophyll": 7)", "must be an object");
    bad(R"(, "chlorophyll": {"value": 2, "low": 3, "high": 4, "unit": "mg/kg", "source": "s"})", "must rise");
    bad(R"(, "chlorophyll": {"value": 2, "low": -1, "high": 4, "unit": "mg/kg", "source": "s"})", "cannot be negative");
    bad(R"(, "aroma": {"grasy": 1})", "unknown word", "grassy");
    bad(R"(, "aroma": {"grassy": 6})", "0 to 5");
    bad(R"(, "season": [13])", "1 to 12");
    bad(R"(, "season": [1.5])", "1 to 12");
    bad(R"(, "measures": [{"measure": "cup", "grams": 0, "source": "s"}])", "must weigh something");
    bad(R"(, "measures": [{"measure": "cup", "grams": 30}])", "\"source\" is missing");
    bad(R"(, "acidity": {"titratable": {"value": 3, "unit": "g/kg citric", "source": "s"}})", "needs \"acids\" and \"ph\"");
    bad(R"(, "acidity": {"acids": {"citric": "most"}})", "share of an acid");
    bad(R"(, "acidity": {"acids": {"citrik": 1}})", "unknown word", "citric");
    bad(R"(, "binding": {"water": {"value": 3, "unit": "g/g", "source": "s"}, "fat": {"value": 1, "unit": "g/g", "source": "s"}, "sets": "warm"})",
        "cold, hot, chilled or never");
    bad(R"(, "meat": {"species": "porc", "buffer_scale": {"value": 1, "unit": "1", "source": "s"}, "bind": {"value": 1, "unit": "1", "source": "s"}})",
        "unknown word", "pork");
    bad(R"(, "tint": {"red": 1, "green": 1, "source": "s"})", "\"blue\" is missing");
    bad(R"(, "allergens": [3])", "only text");
}

TEST_CASE("what an ingredient must have") {
    const auto bare = [](const std::string& members) { return "{\"family\": \"f\", \"ingredients\": [\n{" + members + "}]}"; };
    const std::string tail = R"("tissue": "thin-leaf", "composition": )" + composition;
    check_fault("ingredients/f.json", bare(R"("names": ["x"], "roles": ["green"], )" + tail), 2, "\"id\" is missing");
    check_fault("ingredients/f.json", bare(R"("id": "x", "roles": ["green"], )" + tail), 2, "at least one name");
    check_fault("ingredients/f.json", bare(R"("id": "x", "names": ["x"], )" + tail), 2, "at least one role");
    check_fault("ingredients/f.json", bare(R"("id": "x", "names": ["x"], "roles": ["gren"], )" + tail), 2, "unknown word", "green");
    check_fault("ingredients/f.json",
                bare(R"("id": "x", "names": ["x"], "roles": ["green"], "tissue": "thin leaf", "composition": )" + composition), 2,
                "unknown word", "thin-leaf");
    check_fault("ingredients/f.json", bare(R"("id": "x", "names": ["x"], "roles": ["green"], "tissue": "root")"), 2,
                "\"composition\" is missing");
    check_fault("ingredients/f.json", ingredient("", R"({"water_g": 90, "protein_g": 3, "fat_g": 1, "carbohydrate_g": 5, "ash_g": 1})"), 2,
                "\"source\" is missing");
    check_fault("ingredients/f.json", ingredient("", R"({"source": "s", "protein_g": 3, "fat_g": 1, "carbohydrate_g": 5, "ash_g": 1})"), 2,
                "\"water_g\" is missing");
    check_fault("ingredients/f.json",
                ingredient("", R"({"source": "s", "water_g": "90", "protein_g": 3, "fat_g": 1, "carbohydrate_g": 5, "ash_g": 1})"), 2,
                "must be a number");
}

TEST_CASE("a negative part of a composition is refused") {
    const auto files =
        read("ingredients/f.json",
             ingredient("", R"({"source": "s", "water_g": 96, "protein_g": -3, "fat_g": 1, "carbohydrate_g": 5, "ash_g": 1})"));
    CHECK_FALSE(files.errors.empty());
}

TEST_CASE("swaps, both ways") {
    const auto files = read(
        "swaps/green.json",
        swap(
            R"("from": "a", "to": "b", "basis": "weight", "ratio": {"value": 2, "low": 1, "high": 4, "unit": "g/g", "source": "s"}, "closeness": 0.8, "both_ways": true, "source": "s")"));
    REQUIRE(files.errors.empty());
    REQUIRE(files.records.swaps.size() == 2);
    const Swap& back = files.records.swaps[1];
    CHECK(back.from == "b");
    CHECK(back.to == "a");
    CHECK(back.closeness == 0.8);
    CHECK(back.ratio->band == Band{0.25, 0.5, 1});
}

TEST_CASE("bad swaps") {
    const auto bad = [](const std::string& members, std::string_view part, std::string_view hint = {}) {
        check_fault("swaps/green.json", swap(members), 2, part, hint);
    };
    const std::string ends = R"("from": "a", "to": "b", "basis": "dose", "source": "s")";

    bad(ends + R"(, "closeness": 1.2)", "(0, 1]");
    bad(ends + R"(, "closeness": 0)", "(0, 1]");
    bad(ends + R"(, "closeness": -0.5)", "(0, 1]");
    bad(ends + R"(, "closeness": 1, "clossness": 1)", "unknown key", "closeness");
    bad(R"("from": "a", "to": "b", "basis": "wait", "closeness": 1, "source": "s")", "unknown word");
    bad(R"("from": "a", "to": "b", "basis": "dose", "closeness": 1)", "\"source\" is missing");
    bad(ends + R"(, "closeness": 1, "prepared": ["raw"], "both_ways": true)", "no way back");
    check_fault("swaps/green.json",
                "{\"role\": \"green\", \"swaps\": [{" + ends + ", \"closeness\": 1},\n{" + ends + ", \"closeness\": 0.5}]}", 2,
                "second time");
    check_fault("swaps/green.json", "{\n\"role\": \"grean\", \"swaps\": []}", 2, "unknown word", "green");
}

TEST_CASE("a swap by a ratio of nothing is refused") {
    for (const char* value : {"0", "-1"}) {
        const auto files = read(
            "swaps/green.json",
            swap(
                std::string(
                    R"("from": "a", "to": "b", "basis": "weight", "closeness": 1, "source": "s", "both_ways": true, "ratio": {"unit": "g/g", "source": "s", "value": )") +
                value + "}"));
        CHECK_FALSE(files.errors.empty());
    }
}

TEST_CASE("bad preparations") {
    const auto bad = [](const std::string& effect, std::string_view part, std::string_view hint = {}) {
        check_fault("preparations.json", preparation(effect), 2, part, hint);
    };
    bad(R"({"tissues": ["thin-leaf"], "source": "s"})", "\"yield\" is missing");
    bad(R"({"tissues": ["thin-leaf"], "yield": [], "source": "s"})", "list of points");
    bad(R"({"tissues": ["thin-leaf"], "yield": [{"value": -0.5}], "source": "s"})", "cannot be negative");
    bad(R"({"tissues": ["thin-leaf"], "yield": [{"value": 1}, {"value": 0.5}], "source": "s"})", "rising minutes");
    bad(R"({"tissues": ["thin-leaf"], "yield": [{"minutes": 3, "value": 1}, {"minutes": 3, "value": 0.5}], "source": "s"})",
        "rising minutes");
    bad(R"({"tissues": ["thin-lef"], "yield": [{"value": 1}], "source": "s"})", "unknown word", "thin-leaf");
    bad(R"({"tissues": ["*"], "yield": [{"value": 1}]})", "\"source\" is missing");
    bad(R"({"tissues": ["*"], "yield": [{"value": 1}], "kept": {"colour": [{"value": 1}]}, "source": "s"})", "unknown word");
    bad(R"({"tissues": ["*"], "yield": [{"value": 1}], "kept": {"fat": 1}, "source": "s"})", "list of points");
}

TEST_CASE("bad small tables") {
    check_fault("sources.json", "{\"sources\": [\n{\"id\": \"s\", \"kind\": \"rumour\", \"cite\": \"c\"}]}", 2, "unknown word");
    check_fault("sources.json", "{\"sources\": [\n{\"id\": \"s\", \"kind\": \"published\"}]}", 2, "\"cite\" is missing");
    check_fault("models/acid.json",
                "{\"model\": \"acid\", \"parameters\": [\n{\"id\": \"salt.x\", \"value\": 1, \"unit\": \"1\", \"source\": \"s\"}]}", 2,
                "starts with \"acid.\"");
    check_fault("models/acid.json", "{\"model\": \"acid\", \"parameters\": [\n{\"id\": \"acid.x\", \"value\": 1, \"source\": \"s\"}]}", 2,
                "\"unit\" is missing");
    check_fault("perception.json",
                "{\"differences\": [\n{\"property\": \"ph\", \"kind\": \"some\", \"value\": 1, \"unit\": \"pH\", \"source\": \"s\"}]}", 2,
                "relative or absolute");
    check_fault("perception.json",
                "{\"differences\": [\n{\"property\": \"ph\", \"kind\": \"absolute\", \"value\": 0, \"unit\": \"pH\", \"source\": \"s\"}]}",
                2, "above zero");
    check_fault(
        "wants.json",
        "{\"wants\": [{\"word\": \"firmer\", \"source\": \"s\", \"moves\": [\n{\"property\": \"bind\", \"kind\": \"up\", \"by\": 1}]}]}", 2,
        "add or times");
    check_fault("rules/x.json",
                "{\"code\": \"x\", \"title\": \"t\", \"edition\": \"e\",\n\"caps\": [{\"id\": \"c\", \"property\": \"fat_pct\", \"text\": "
                "\"t\", \"clause\": \"1\", \"source\": \"s\"}]}",
                2, "\"limit\" is missing");
}

TEST_CASE("conditions are understood when they are read; a mistyped one is an error with the nearest word") {
    const auto rules = [](const std::string& when, const std::string& text = "t") {
        return "{\"code\": \"x\", \"title\": \"t\", \"edition\": \"e\", \"cautions\": [\n{\"id\": \"c\", \"text\": \"" + text +
               "\", \"source\": \"s\", \"when\": [\"" + when + "\"]}]}";
    };
    const auto files = read("rules/x.json", rules("property:salt_of_meat>2.5"));
    REQUIRE(files.errors.empty());
    const auto* beyond = std::get_if<PropertyBeyond>(&files.records.rules.front().cautions.front().when.front());
    REQUIRE(beyond);
    CHECK(beyond->property == Property::salt_pct_of_meat);
    CHECK_FALSE(beyond->below);
    CHECK(beyond->limit == 2.5);
    CHECK(read("rules/x.json", rules("process:rest-at>4.4")).errors.empty());
    CHECK(read("rules/x.json", rules("process:core<rule")).errors.empty());
    check_fault("rules/x.json", rules("property:phh<5"), 2, "unknown property", "ph");
    check_fault("rules/x.json", rules("property:ph=5"), 2, "no comparison with a number");
    check_fault("rules/x.json", rules("property:ph<five"), 2, "no comparison with a number");
    check_fault("rules/x.json", rules("ingredent:oxalate"), 2, "unknown condition", "ingredient");
    check_fault("rules/x.json", rules("ingredient:"), 2, "does not say what");
    check_fault("rules/x.json", rules("role:gren"), 2, "unknown word", "green");
    check_fault("rules/x.json", rules("process:rset>5"), 2, "unknown word", "rest");
    check_fault("rules/x.json", rules("ingredient:oxalate", "About {foodz}."), 2, "in braces", "foods");
    check_fault("rules/x.json", rules("ingredient:oxalate", "At pH {value}."), 2, "a number to fill in");
}

TEST_CASE("caps, limits of the making and core temperatures are read with their words") {
    const auto rules = [](const std::string& part) { return "{\"code\": \"x\", \"title\": \"t\", \"edition\": \"e\",\n" + part + "}"; };
    check_fault("rules/x.json",
                rules("\"caps\": [{\"id\": \"c\", \"property\": \"fat_pc\", \"text\": \"t\", \"clause\": \"1\", \"source\": \"s\", "
                      "\"limit\": 1}]"),
                2, "unknown word", "fat_pct");
    check_fault("rules/x.json",
                rules("\"making\": [{\"id\": \"m\", \"field\": \"rest-att\", \"most\": 4, \"text\": \"t\", \"source\": \"s\"}]"), 2,
                "unknown word", "rest-at");
    check_fault("rules/x.json", rules("\"cooking\": [{\"species\": [\"pork\"], \"core_c\": 0, \"text\": \"t\", \"source\": \"s\"}]"), 2,
                "from 40 to 100 C");
}

TEST_CASE("a file that is none of the knowledge's says so") {
    const auto files = read("notes.json", "{}");
    REQUIRE(files.errors.size() == 1);
    CHECK(says(files.errors.front(), "not a file of the knowledge"));
}

TEST_CASE("a file that is no JSON gives its place") {
    const auto files = read("sources.json", "{\"sources\": [\n}");
    REQUIRE(files.errors.size() == 1);
    CHECK(files.errors.front().where == "k/sources.json:2:1");
}

TEST_CASE("a folder that is not there is not found") {
    const auto files = read_knowledge_folder("/nowhere/at/all");
    REQUIRE(files.errors.size() == 1);
    CHECK(files.errors.front().trouble == Trouble::not_found);
}

TEST_CASE("the knowledge as it stands reads without a fault") {
    const auto files = read_knowledge_folder(knowledge_folder());
    for (const auto& error : files.errors) UNSCOPED_INFO(error.where + ": " + error.message);
    CHECK(files.errors.empty());
    CHECK(files.records.ingredients.size() >= 120);
    CHECK(files.records.preparations.size() >= 14);
    CHECK(files.records.swaps.size() >= 200);
}

}  // namespace knowledge_reading_test
