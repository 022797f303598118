#include <unistd.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "knowledge/load.hpp"
#include "safety/exclusions.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;
namespace fs = std::filesystem;

namespace overlay_test {

class Overlay {
public:
    Overlay() { fs::create_directories(path_); }
    ~Overlay() { fs::remove_all(path_); }

    void put(const std::string& relative, const std::string& text) {
        fs::create_directories((path_ / relative).parent_path());
        std::ofstream(path_ / relative) << text;
    }
    std::string folder() const { return path_.string(); }

private:
    fs::path path_ = fs::temp_directory_path() / ("standin-overlay-" + std::to_string(::getpid()));
};

std::string food(const std::string& id, const std::string& name, double water) {
    return "{\"family\": \"own\", \"ingredients\": [\n{\"id\": \"" + id + "\", \"names\": [\"" + name +
           "\"], \"roles\": [\"green\"], \"tissue\": \"thin-leaf\", \"composition\": {\"source\": \"my-bench\", \"water_g\": " +
           std::to_string(water) +
           ", \"protein_g\": 3, \"fat_g\": 1, \"carbohydrate_g\": 4, \"ash_g\": 1}, \"chlorophyll\": {\"value\": 1234, \"unit\": "
           "\"mg/kg\", \"source\": \"my-bench\"}}]}";
}

const std::string own_source = R"({"sources": [{"id": "my-bench", "kind": "judgement", "cite": "own bench"}]})";

TEST_CASE("a folder without a record is the wrong folder, and said to be") {
    Overlay overlay;
    const auto refused = [&] {
        const auto laid = overlaid_knowledge(overlay.folder());
        return !laid && laid.error().message.find("no record of knowledge") != std::string::npos && laid.error().where == overlay.folder();
    };
    CHECK(refused());
    overlay.put("sources.json", R"({"sources": []})");
    CHECK(refused());
}

TEST_CASE("an overlay of one source changes no food") {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    const auto laid = overlaid_knowledge(overlay.folder());
    REQUIRE(laid);
    CHECK(laid->records().ingredients.size() == knowledge().records().ingredients.size());
}

TEST_CASE("an overlay replaces what has its id and adds what has not") {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    overlay.put("ingredients/a.json", food("spinach", "spinach", 91));
    overlay.put("ingredients/b.json", food("hedge-nettle", "hedge nettle", 91));
    overlay.put(
        "swaps/green.json",
        R"({"role": "green", "swaps": [{"from": "spinach", "to": "hedge-nettle", "basis": "dose", "closeness": 0.7, "source": "my-bench"}]})");
    overlay.put("models/acid.json",
                R"({"model": "acid", "parameters": [{"id": "acid.pkw", "value": 14, "unit": "1", "source": "my-bench"}]})");
    const auto laid = overlaid_knowledge(overlay.folder());
    if (!laid) FAIL(laid.error().where + " " + laid.error().message);
    const Records &before = knowledge().records(), &after = laid->records();
    CHECK(after.ingredients.size() == before.ingredients.size() + 1);
    CHECK(after.swaps.size() == before.swaps.size() + 1);
    CHECK(after.parameters.size() == before.parameters.size());
    CHECK(laid->ingredient("spinach")->chlorophyll->band.mid == 1234);
    CHECK(laid->ingredient_named("Hedge-Nettles")->id == "hedge-nettle");
    CHECK(laid->parameter("acid.pkw") == exactly(14));
    CHECK(knowledge().parameter("acid.pkw").mid == 13.997);
    CHECK(laid->source("my-bench#3")->cite == "own bench");
    CHECK(laid->ingredient("chard")->composition.water == knowledge().ingredient("chard")->composition.water);
}

TEST_CASE("an overlay's record replaces the whole record") {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    overlay.put("ingredients/a.json", food("spinach", "spinach", 91));
    const auto laid = overlaid_knowledge(overlay.folder());
    REQUIRE(laid);
    CHECK(laid->ingredient("spinach")->measures.empty());
    CHECK(laid->ingredient("spinach")->family == "own");
}

TEST_CASE("a bad overlay fails with its place") {
    const auto error_of = [](const std::string& relative, const std::string& text) {
        Overlay overlay;
        overlay.put("sources.json", own_source);
        overlay.put(relative, text);
        const auto laid = overlaid_knowledge(overlay.folder());
        REQUIRE_FALSE(laid);
        CHECK(laid.error().trouble == Trouble::bad_data);
        CHECK(laid.error().where.rfind(overlay.folder() + "/" + relative + ":2:", 0) == 0);
        return laid.error();
    };
    CHECK(error_of("ingredients/a.json", food("spinach", "spinach", 20)).message.find("adds up") != std::string::npos);
    CHECK(error_of("ingredients/a.json", food("hedge-nettle", "Spinach", 91)).message.find("already belongs to spinach") !=
          std::string::npos);
    CHECK(error_of("swaps/green.json",
                   "{\"role\": \"green\", \"swaps\": [\n{\"from\": \"spinach\", \"to\": \"spinich\", \"basis\": \"dose\", \"closeness\": "
                   "0.7, \"source\": \"my-bench\"}]}")
              .hints.size() == 1);
    error_of("swaps/green.json",
             "{\"role\": \"green\", \"swaps\": [\n{\"from\": \"spinach\", \"to\": \"chard\", \"basis\": \"dose\", \"closeness\": 7, "
             "\"source\": \"my-bench\"}]}");
    error_of("sources.json", "{\"sources\":\n 7}");
}

TEST_CASE("several faults of an overlay come together") {
    Overlay overlay;
    overlay.put("sources.json", "{\"sources\": 7}");
    overlay.put("wants.json", "{\"wants\": 7}");
    const auto laid = overlaid_knowledge(overlay.folder());
    REQUIRE_FALSE(laid);
    CHECK(laid.error().message.find("sources.json:1:13") != std::string::npos);
    CHECK(laid.error().message.find("wants.json:1:11") != std::string::npos);
}

TEST_CASE("an overlay folder that is not there is not found") {
    const auto laid = overlaid_knowledge("/nowhere/at/all");
    REQUIRE_FALSE(laid);
    CHECK(laid.error().trouble == Trouble::not_found);
}

TEST_CASE("an engine with an overlay reckons with it") {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    overlay.put("ingredients/a.json", food("spinach", "spinach", 91));
    Options with;
    with.knowledge_folder = overlay.folder();
    with.draws = 32;
    Options without;
    without.draws = 32;
    auto own = Engine::open(with), plain = Engine::open(without);
    REQUIRE(own);
    REQUIRE(plain);
    Formula formula;
    formula.lines = {{"pork-shoulder", exactly(1000), {}, false, false, {}, ""}, {"spinach", exactly(100), {}, false, false, {}, ""}};
    const double more = own->predict(formula)->properties[Property::chlorophyll_mg_kg].mid;
    const double less = plain->predict(formula)->properties[Property::chlorophyll_mg_kg].mid;
    CHECK(more / less == Approx(1234 / knowledge().ingredient("spinach")->chlorophyll->band.mid).epsilon(0.1));
}

// What an overlay of one file is refused for, with its place; fails where it is taken.
Error refused(const std::string& relative, const std::string& text) {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    overlay.put(relative, text);
    const auto laid = overlaid_knowledge(overlay.folder());
    CAPTURE(text);
    REQUIRE_FALSE(laid);
    CHECK(laid.error().where.rfind(overlay.folder() + "/" + relative + ":", 0) == 0);
    return laid.error();
}

std::string rules(const std::string& code, const std::string& part) {
    return "{\"code\": \"" + code + "\", \"title\": \"own\", \"edition\": \"own\",\n" + part + "}";
}

std::string own_caution(const std::string& id, const std::string& when) {
    return "\"cautions\": [{\"id\": \"" + id + "\", \"text\": \"Mind the oven.\", \"source\": \"my-bench\", \"when\": [" + when + "]}]";
}

std::string cook(const std::string& species, const std::string& celsius) {
    return "\"cooking\": [{\"species\": [\"" + species + "\"], \"core_c\": " + celsius + ", \"text\": \"own\", \"source\": \"my-bench\"}]";
}

TEST_CASE("an overlay that would make anything less safe is refused with its place") {
    CHECK(refused("ingredients/a.json", food("parmesan", "parmesan", 91)).message.find("leaves out the allergen \"milk\"") !=
          std::string::npos);
    CHECK(refused("rules/general.json", rules("general", cook("pork", "50"))).message.find("lowers the core temperature for pork") !=
          std::string::npos);
    CHECK(refused("rules/general.json", rules("general", cook("fish", "68.3"))).message.find("for fish") != std::string::npos);  // no hold
    CHECK(refused("rules/general.json", rules("general", own_caution("keep-cold", ""))).message.find("keeps its text") !=
          std::string::npos);
    CHECK(refused("rules/us.json",
                  rules("us",
                        "\"caps\": [{\"id\": \"us-sausage-water\", \"property\": \"added_water_pct\", \"limit\": 30, \"names\": [], "
                        "\"clause\": \"own\", \"text\": \"own\", \"source\": \"my-bench\"}]"))
              .message.find("loosens a built-in limit") != std::string::npos);
    CHECK(
        refused("rules/general.json", rules("general",
                                            "\"making\": [{\"id\": \"warm-rest\", \"field\": \"rest-at\", \"most\": 25, \"text\": \"own\", "
                                            "\"source\": \"my-bench\", \"when\": []}]"))
            .message.find("raises the limit") != std::string::npos);
    CHECK(refused("models/lethality.json",
                  "{\"model\": \"lethality\", \"parameters\": [\n{\"id\": \"lethality.d70\", \"value\": 0.1, \"unit\": \"s\", "
                  "\"source\": \"my-bench\"}]}")
              .message.find("stricter") != std::string::npos);
}

TEST_CASE("a rule set of a built-in code is added to, and a food described anew keeps its cautions") {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    overlay.put("ingredients/a.json", food("spinach", "spinach", 91));
    overlay.put("rules/general.json", rules("general", own_caution("own-oven", "") + ", " + cook("pork", "80")));
    const auto laid = overlaid_knowledge(overlay.folder());
    if (!laid) FAIL(laid.error().where + " " + laid.error().message);
    CHECK(laid->ingredient("spinach")->cautions == knowledge().ingredient("spinach")->cautions);
    CHECK(laid->rules("general")->cautions.size() == knowledge().rules("general")->cautions.size() + 1);
    CHECK(laid->overlay().find("standin-overlay-") == 0);
    Options options;
    options.knowledge_folder = overlay.folder();
    options.draws = 32;
    auto engine = Engine::open(options);
    REQUIRE(engine);
    Formula formula;
    formula.lines = {{"pork-shoulder", exactly(1000), {}, false, false, {}, ""}};
    const auto prediction = engine->predict(formula);
    REQUIRE(prediction);
    CHECK(prediction->core.core_c == 80);
    CHECK(prediction->overlay == laid->overlay());
    const auto says = [&](const char* id) {
        return std::any_of(prediction->cautions.begin(), prediction->cautions.end(), [&](const CautionText& c) { return c.id == id; });
    };
    CHECK(says("own-oven"));
    CHECK(says("keep-cold"));
    CHECK(says("overlay"));
}

TEST_CASE("a kitchen's own allergen is obeyed: on the list of the batch and in capitals on the label") {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    overlay.put("allergens.json", R"({"allergens": [{"id": "nettle", "name": "nettle", "words": ["nettle"]}]})");
    std::string own = food("hedge-nettle", "hedge leaf", 91);
    own.replace(own.find("\"roles\""), 7, "\"allergens\": [\"nettle\"], \"roles\"");
    overlay.put("ingredients/b.json", own);
    Options options;
    options.knowledge_folder = overlay.folder();
    options.draws = 32;
    auto engine = Engine::open(options);
    if (!engine) FAIL(engine.error().message);
    Formula formula;
    formula.lines = {{"pork-shoulder", exactly(1000), {}, false, false, {}, ""}, {"hedge-nettle", exactly(50), {}, false, false, {}, ""}};
    const auto prediction = engine->predict(formula);
    REQUIRE(prediction);
    REQUIRE(prediction->allergens.size() == 1);
    CHECK(prediction->allergens.front().allergen == "nettle");
    CHECK(prediction->label.find("hedge leaf (NETTLE)") != std::string::npos);
}

TEST_CASE("a kitchen's own allergen can be left out by its name, with the food that is called so") {
    Overlay overlay;
    overlay.put("sources.json", own_source);
    overlay.put("allergens.json", R"({"allergens": [{"id": "nettle", "name": "nettle", "words": ["stinging leaf"]}]})");
    std::string own = food("hedge-leaf", "hedge leaf", 91);
    own.replace(own.find("\"roles\""), 7, "\"allergens\": [\"nettle\"], \"roles\"");
    overlay.put("ingredients/b.json", own);
    const auto laid = overlaid_knowledge(overlay.folder());
    if (!laid) FAIL(laid.error().message);
    for (const char* word : {"nettle", "stinging leaf"}) {
        const auto out = exclusion_of(word, *laid);
        REQUIRE(out);
        CHECK(out->foods.count("hedge-leaf") == 1);
        CHECK(out->foods.count(knowledge().ingredient_named("nettle")->id) == 1);
        CHECK(out->foods.count("spinach") == 0);
    }
}

}  // namespace overlay_test
