// What is seen first: no dozen of near twins, no food of an open sort before a named one, and notes that hold for the line.
#include <algorithm>

#include "adapt/variants/swap_note.hpp"
#include "core/names.hpp"
#include "knowledge/index/kinds.hpp"
#include "published/proposed.hpp"
#include "substitute/standing.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace order_of_swaps_test {

std::size_t rank_of(const std::string& line, double grams, const std::string& food) {
    const auto& all = proposed(line, grams);
    const auto found = std::find_if(all.begin(), all.end(), [&](const StandIn& s) { return s.ingredient == food; });
    return found == all.end() ? 1000 : static_cast<std::size_t>(found - all.begin()) + 1;
}

TEST_CASE("what is nearly the same as one before it stands back, so that another idea is seen") {
    const std::vector<std::optional<Species>> none(3);
    const auto same = nearly_same({"canola-oil", "sunflower-oil", "lard"}, knowledge());
    CHECK(same(0, 1));
    CHECK_FALSE(same(0, 2));
    const auto order = order_of({0.0, 0.1, 0.4}, none, std::nullopt, knowledge(), same);
    CHECK(order == std::vector<std::size_t>{0, 2, 1});
    CHECK(order_of({0.0, 0.1, 0.4}, none, std::nullopt, knowledge()) == std::vector<std::size_t>{0, 1, 2});
}

TEST_CASE("near twins of one kind stand as one, and give way to other ideas") {
    constexpr std::size_t dozen = 12;
    const auto twins_seen = [&](const std::string& line, double grams, const char* kind) {
        const auto& all = proposed(line, grams);
        return std::count_if(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(std::min(dozen, all.size())),
                             [&](const StandIn& s) { return belongs(*knowledge().ingredient(s.ingredient), kind, knowledge()); });
    };
    CHECK(twins_seen("breadcrumb", 30, "twins-crumbs") <= 6);
    CHECK(twins_seen("egg", 50, "twins-eggs") <= 6);
    CHECK(twins_seen("tomatillo", 75, "twins-red-tomatoes") <= 1);
    CHECK(rank_of("breadcrumb", 30, "rolled-oat") <= dozen);
    CHECK(rank_of("breadcrumb", 30, "rice-flour") <= dozen);
    CHECK(rank_of("egg", 50, "flaxseed") <= dozen);
    CHECK(rank_of("egg", 50, "aquafaba") <= dozen);
    CHECK(rank_of("serrano", 15, "habanero") <= dozen);
    CHECK(rank_of("serrano", 25, "habanero") <= dozen);
    CHECK(rank_of("pork-backfat", 200, "duck-fat") <= dozen);
    CHECK(rank_of("tomatillo", 75, "sorrel") <= dozen);
}

TEST_CASE("no mix of spices stands in for a single one, unless makers take just that") {
    for (const auto& s : proposed("juniper-berry", 5))
        CHECK_FALSE(belongs(*knowledge().ingredient(s.ingredient), "spice-blend", knowledge()));
    CHECK(rank_of("garam-masala", 3, "curry-powder") < 1000);
}

TEST_CASE("other ideas come into sight in the first dozen") {
    constexpr std::size_t dozen = 12;
    CHECK(rank_of("pork-backfat", 200, "lard") <= dozen);
    CHECK(rank_of("wheat-flour", 25, "breadcrumb") <= dozen);
    CHECK(rank_of("water", 100, "beer") <= dozen);
    CHECK(rank_of("kale", 100, "savoy-cabbage") <= dozen);
    CHECK(rank_of("chicken-thigh", 750, "chicken-breast") <= dozen);
    CHECK(rank_of("cabbage", 150, "lettuce-iceberg") > dozen);
}

TEST_CASE("a food of a named sort stands before one whose sort is open") {
    CHECK(rank_of("serrano", 20, "jalapeno") < rank_of("serrano", 20, "green-chile"));
    CHECK(rank_of("red-wine", 60, "table-wine") > 1);
}

TEST_CASE("a note does not say the name twice, and by a detour says nothing of a food that is not there") {
    const auto& swaps = knowledge().records().swaps;
    const auto at = [&](const std::string& from, const std::string& to) {
        const auto found =
            std::find_if(swaps.begin(), swaps.end(), [&](const Swap& s) { return s.from == from && s.to == to && !s.partner; });
        REQUIRE(found != swaps.end());
        return static_cast<std::size_t>(found - swaps.begin());
    };
    CHECK(note_of({at("caraway", "dill-seed")}, knowledge()) == "Greener, milder.");
    CHECK(note_of({at("fennel-seed", "caraway"), at("caraway", "dill-seed")}, knowledge()).empty());
}

// The page works out from both foods whether it gets fatter or leaner; a note that says so must not say the opposite.
TEST_CASE("no note calls a stand-in fatter that is leaner, or the other way round") {
    const auto fat = [](const std::string& id) { return knowledge().ingredient(id)->composition.fat.mid; };
    std::size_t said = 0;
    for (const auto& swap : knowledge().records().swaps) {
        const std::string note = fold(swap.note);
        CAPTURE(swap.from, swap.to, swap.note);
        const auto says = [&](const char* word) { return (" " + note).find(std::string(" ") + word) != std::string::npos; };
        if (says("fatter")) CHECK(fat(swap.to) > fat(swap.from));
        if (says("leaner")) CHECK(fat(swap.to) < fat(swap.from));
        said += says("fatter") || says("leaner");
    }
    CHECK(said > 0);
}

TEST_CASE("a wrapping, a set and a starch are replaced by their like") {
    for (const auto& s : proposed("pork-blood", 200)) CHECK(s.ingredient != "beef-stock");
    CHECK(rank_of("pork-blood", 200, "beef-blood") == 1);
    CHECK(rank_of("pork-caul", 100, "bacon") <= 2);
    CHECK(rank_of("pork-skin", 80, "pork-feet") <= 3);
    CHECK(rank_of("chestnut", 80, "sweet-potato-cooked") <= 5);
}

TEST_CASE("in two parts where one alone would lose what the line is there for") {
    const auto pair = [](const std::string& line, double grams, const std::string& food, const std::string& beside) {
        const auto& all = proposed(line, grams);
        return std::any_of(all.begin(), all.end(),
                           [&](const StandIn& s) { return s.ingredient == food && s.partner && s.partner->ingredient == beside; });
    };
    CHECK(pair("chipotle", 5, "smoked-paprika", "cayenne-powder"));
    CHECK(pair("gochugaru", 15, "red-pepper-flakes", "paprika"));
    CHECK(pair("chervil", 20, "parsley", "tarragon"));
    CHECK(pair("red-wine", 60, "beef-stock", "red-wine-vinegar"));
    CHECK(pair("sichuan-pepper", 3, "black-pepper", "coriander-seed"));
    CHECK(pair("tamarind-pulp", 15, "lime-juice", "brown-sugar"));
    CHECK(rank_of("chipotle", 5, "cayenne-powder") > rank_of("chipotle", 5, "smoked-paprika"));
}

TEST_CASE("a pale bulk leaf gives way weight for weight, whatever its green") {
    const auto& all = proposed("cabbage", 150);
    const auto savoy = std::find_if(all.begin(), all.end(), [](const StandIn& s) { return s.ingredient == "savoy-cabbage"; });
    REQUIRE(savoy != all.end());
    CHECK(savoy->grams == Approx(150).epsilon(0.1));
}

TEST_CASE("fresh turmeric, almond flour and Shaoxing wine are foods of their own") {
    const auto id = [](const char* name) { return knowledge().ingredient_named(name)->id; };
    CHECK(id("fresh turmeric") == "fresh-turmeric");
    CHECK(id("ground turmeric") == "turmeric");
    CHECK(id("almond flour") == "almond-flour");
    CHECK(id("shaoxing wine") == "shaoxing-wine");
    CHECK(id("sake") == "sake");
}

const StandIn* shown(const std::string& line, double grams, const std::string& food) {
    const auto& all = proposed(line, grams);
    const auto found = std::find_if(all.begin(), all.end(), [&](const StandIn& s) { return s.ingredient == food; });
    return found == all.end() ? nullptr : &*found;
}

TEST_CASE("what was frozen and squeezed stands for more of the fresh leaf than its weight, for whatever leaf it stands in") {
    for (const auto* leaf : {"kale", "chard", "collard", "nettle", "beet-greens", "amaranth", "lacinato-kale", "spinach"}) {
        const auto* fresh = shown(leaf, 150, leaf == std::string("spinach") ? "chard" : "spinach");
        const auto* frozen = shown(leaf, 150, "spinach-frozen");
        INFO(leaf);
        REQUIRE(fresh);
        REQUIRE(frozen);
        CHECK(frozen->grams < fresh->grams);
        if (leaf != std::string("spinach")) CHECK(frozen->grams == Approx(0.6 * fresh->grams).epsilon(0.12));
    }
}

TEST_CASE("a food that is thinned with water does not stand beside itself neat at another dose") {
    const auto& all = proposed("whole-milk", 80);
    for (const auto* food : {"evaporated-milk", "cream"}) {
        INFO(food);
        CHECK(std::count_if(all.begin(), all.end(), [&](const StandIn& s) { return s.ingredient == food && s.role == Role::liquid; }) == 1);
    }
}

TEST_CASE("the smoke that goes with a line is told, once, and not of what is smoked itself") {
    const auto lost = [](const std::string& line, const std::string& food) {
        const auto* one = shown(line, 20, food);
        REQUIRE(one);
        std::size_t told = 0;
        for (auto at = fold(one->note).find("smoke"); at != std::string::npos; at = fold(one->note).find("smoke", at + 1)) ++told;
        return told;
    };
    for (const auto* food : {"paprika", "ancho", "guajillo"}) CHECK(lost("smoked-paprika", food) == 1);
    CHECK(lost("bacon", "guanciale") == 1);
    CHECK(lost("bacon", "pork-belly") == 1);
    CHECK(shown("paprika", 5, "ancho")->note.find("smoke") == std::string::npos);
}

TEST_CASE("cured meat is weighed for its cure, and plain fat stands behind it") {
    const auto* guanciale = shown("bacon", 100, "guanciale");
    REQUIRE(guanciale);
    CHECK(guanciale->grams == Approx(80).epsilon(0.05));
    CHECK(shown("bacon", 100, "pork-belly")->grams == Approx(100).epsilon(0.05));
    for (const auto* plain : {"pork-jowl", "pork-trim-50", "lard"}) {
        INFO(plain);
        CHECK(rank_of("bacon", 100, plain) > rank_of("bacon", 100, "guanciale"));
        CHECK(rank_of("bacon", 100, plain) > rank_of("bacon", 100, "pork-belly"));
    }
}

TEST_CASE("beside what is ground no sliver of a fresh pod makes up the heat") {
    for (const auto* line : {"red-pepper-flakes", "cayenne-powder", "chipotle"})
        for (const auto& s : proposed(line, 4)) {
            if (!s.partner || !s.partner->prepared.empty()) continue;
            INFO(line << " " << s.ingredient << " + " << s.partner->ingredient);
            const bool named = s.sources.front() != "judgement";
            if (s.role == Role::heat && !named) CHECK(knowledge().ingredient(s.partner->ingredient)->tissue != Tissue::chile_flesh);
        }
}

TEST_CASE("lean fish for a fat one brings oil") {
    for (const auto* fish : {"cod", "haddock", "sea-bass"}) {
        const auto* one = shown("salmon", 750, fish);
        INFO(fish);
        REQUIRE(one);
        REQUIRE(one->partner);
        CHECK(one->partner->ingredient == "sunflower-oil");
        CHECK(one->grams + one->partner->grams == Approx(765).epsilon(0.03));
    }
}

TEST_CASE("a food of another packet, an allergen or a seed without green does not stand first") {
    CHECK(rank_of("breadcrumb", 40, "milk-free-breadcrumb") > 3);
    CHECK(rank_of("egg", 50, "liquid-egg") > 3);
    CHECK(rank_of("sesame-seed", 20, "hulled-sesame") > 1);
    CHECK(rank_of("parsley", 60, "celery-leaf") > 2);
    CHECK(rank_of("spinach", 120, "beet-greens") > 1);
    CHECK(rank_of("dill", 30, "dill-seed") > 3);
    CHECK(rank_of("cumin", 4, "curry-powder") > 6);
    CHECK(rank_of("soy-sauce", 30, "kecap-manis") > 4);
    CHECK(rank_of("lemon-juice", 25, "whole-lemon") > 3);
}

}  // namespace order_of_swaps_test
