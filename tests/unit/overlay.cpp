#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "knowledge/load.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;
namespace fs = std::filesystem;

namespace {

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

}  // namespace

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
