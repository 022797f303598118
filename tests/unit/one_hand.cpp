// A sheet is worked by one hand: its steps, its cautions and its one core tell the same.
#include <algorithm>

#include "adapt/variants/variant_name.hpp"
#include "core/contains.hpp"
#include "knowledge/index/effects.hpp"
#include "safety/title_words.hpp"
#include "standin/engine.hpp"
#include "standin/narrate.hpp"
#include "substitute/portion.hpp"
#include "support/catch.hpp"
#include "support/few_draws.hpp"
#include "support/kitchen.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace one_hand_test {

using few_draws::engine;

Sheet sheet(const Formula& f) {
    auto made = engine().sheet(f, {});
    REQUIRE(made);
    return *made;
}

const SheetStep* step(const Sheet& s, const std::string& id) {
    const auto found = std::find_if(s.steps.begin(), s.steps.end(), [&](const SheetStep& one) { return one.id == id; });
    return found == s.steps.end() ? nullptr : &*found;
}

bool takes(const SheetStep* step, std::size_t line) {
    return step && std::any_of(step->parts.begin(), step->parts.end(), [&](const StepPart& p) { return p.line == line; });
}

Formula fish_with(const char* binder) {
    return formula({line("cod", 1000), line("parsley", 30), line("table-salt", 14), line(binder, 40)});
}

TEST_CASE("one hand: the core of fish is hot enough for what sets in it, everywhere on the page") {
    for (const char* binder : {"tapioca-starch", "potato-starch", "egg-white", "egg", "wheat-flour", "rice-flour"}) {
        INFO(binder);
        const Sheet s = sheet(fish_with(binder));
        CHECK(s.core_c == Approx(70));
        CHECK(s.prediction.core.core_c == Approx(70));
        CHECK(s.core_says.rfind("70 C", 0) == 0);
        REQUIRE(step(s, "cook"));
        CHECK(step(s, "cook")->temperature_c == Approx(70));
        CHECK(s.prediction.cautions.front().text.find("70 C") != std::string::npos);
    }
    for (const char* binder : {"breadcrumb", "rice-cooked", "gelatin"}) CHECK(sheet(fish_with(binder)).core_c == Approx(68.3));
    Formula own = fish_with("tapioca-starch");
    own.process.core_c = 68.3;
    CHECK(sheet(own).core_c == Approx(68.3));
    CHECK(sheet(formula({line("pork-shoulder", 1000), line("table-salt", 16), line("potato-starch", 30)})).core_c == Approx(71.1));
}

TEST_CASE("one hand: no stand-in asks for a core of its own") {
    for (const auto& condition : knowledge().records().conditions) CHECK(condition.says.find("70 C") == std::string::npos);
    for (const auto& swap : knowledge().records().swaps)
        if (const auto* food = knowledge().ingredient(swap.to); food && food->meat)
            CHECK_FALSE(contains(swap.needs, std::string("cooked")));
}

TEST_CASE("one hand: sour fruit lies on no leaf where the salt goes first") {
    for (const char* fruit : {"unripe-grape", "gooseberry", "green-plum", "tomatillo", "green-tomato", "rhubarb"}) {
        INFO(fruit);
        Formula f = formula({line("pork-shoulder", 1000), line("spinach", 100, {"blanched", "squeezed"}), line("parsley", 40),
                             line(fruit, 60), line("table-salt", 18)});
        f.process.order = Order::salt_first;
        const Sheet s = sheet(f);
        CHECK(takes(step(s, "sour"), 3));
        CHECK_FALSE(takes(step(s, "paste"), 3));
        CHECK(takes(step(s, "mix-acid"), 3));
        f.process.order = Order::all_together;
        CHECK(takes(step(sheet(f), "paste"), 3));
    }
}

TEST_CASE("one hand: the sheet speaks of acid only where there is some") {
    Formula f =
        formula({line("pork-shoulder", 1000), line("pork-backfat", 200), line("parsley", 60), line("water", 60), line("table-salt", 20)});
    for (const auto& note : sheet(f).notes)
        if (note.kind == ReasonKind::order_chosen) CHECK(in_full(note).find("acid") == std::string::npos);
    f.lines.push_back(line("tamarind-pulp", 20));
    const Sheet sour = sheet(f);
    for (const auto& note : sour.notes)
        if (note.kind == ReasonKind::order_chosen) CHECK(takes(step(sour, "mix-acid"), 5));
    CHECK_FALSE(takes(step(sour, "paste"), 5));
}

TEST_CASE("one hand: diced fat goes in as it is beside mince, and through the grinder with a cut") {
    const Sheet mince = sheet(formula({line("ground-turkey", 900), line("pork-fat-trim", 100, {"diced"}), line("table-salt", 16)}));
    CHECK(takes(step(mince, "diced"), 1));
    CHECK(step(mince, "grind") == nullptr);
    REQUIRE(step(mince, "chill"));
    CHECK(step(mince, "chill")->how.find("strips") == std::string::npos);
    const Sheet cut = sheet(formula({line("pork-shoulder", 900), line("pork-backfat", 100, {"diced"}), line("table-salt", 16)}));
    CHECK(step(cut, "diced") == nullptr);
    CHECK(takes(step(cut, "grind"), 1));
}

TEST_CASE("one hand: blanched leaf that stands in is wrung out, and nothing is heated twice") {
    const auto steps = [](const Line& l) {
        std::vector<std::string> all;
        for (const auto& one : l.prepared) all.push_back(one.preparation);
        return all;
    };
    const auto like = [&](const Line& l, const char* food, const std::vector<std::string>& extra) {
        return steps(prepared_like(l, *knowledge().ingredient(food), extra, knowledge()));
    };
    using Steps = std::vector<std::string>;
    CHECK(like(line("sorrel", 200), "nettle", {"blanched"}) == Steps{"blanched", "squeezed"});
    CHECK(like(line("spinach", 200, {"blanched", "squeezed"}), "water-spinach", {"blanched"}) == Steps{"blanched", "squeezed"});
    CHECK(like(line("nettle", 200, {"blanched"}), "borage", {"blanched"}) == Steps{"blanched"});  // as the maker has it
    CHECK(like(line("tomatillo", 200, {"roasted"}), "kiwifruit", {"cooked"}) == Steps{"cooked"});
    CHECK(like(line("tomatillo", 200, {"roasted"}), "redcurrant", {}).empty());
    CHECK(like(line("tomatillo", 200, {"roasted"}), "green-tomato", {}) == Steps{"roasted"});
    CHECK(like(line("pork-fat-trim", 100, {"diced"}), "chicken-skin", {"ground"}) == Steps{"ground"});
}

TEST_CASE("one hand: a name holds no condition, and says that it is another where what it is named after is gone") {
    Formula base, variant, child;
    base.title = "Venison with juniper";
    Edit less;
    less.kind = EditKind::reduce;
    less.line = "serrano";
    name_variant(variant, base, {less}, {"bind>=40", "milder"}, knowledge());
    CHECK(variant.title == "Venison with juniper, milder");
    name_as_another(variant);
    CHECK(variant.title == "In place of Venison with juniper, milder");
    name_variant(child, variant, {less}, {"greener"}, knowledge());
    CHECK(child.title == "In place of Venison with juniper, greener");
    name_as_another(child);
    CHECK(child.title == "In place of Venison with juniper, greener");
}

TEST_CASE("one hand: melted fat of another animal is told like its skin") {
    const TitleWords turkey("Turkey with dill", knowledge());
    for (const char* fat : {"duck-fat", "lard", "beef-tallow", "goose-fat", "chicken-skin"}) {
        INFO(fat);
        const Formula f = formula({line("ground-turkey", 900), line(fat, 90), line("table-salt", 16)});
        CHECK_FALSE(other_animals(f, turkey, knowledge()).empty());
    }
    for (const char* fat : {"olive-oil", "turkey-skin", "coconut-oil"}) {
        INFO(fat);
        const Formula f = formula({line("ground-turkey", 900), line(fat, 90), line("table-salt", 16)});
        CHECK(other_animals(f, turkey, knowledge()).empty());
    }
    const TitleWords pork("Pork with sage", knowledge());
    const Formula lard = formula({line("ground-turkey", 900), line("lard", 90), line("table-salt", 16)});
    REQUIRE_FALSE(other_animals(lard, pork, knowledge()).empty());
    CHECK(other_animals(lard, pork, knowledge()).front().reason.kind == ReasonKind::title_without_animal);
}

}  // namespace one_hand_test
