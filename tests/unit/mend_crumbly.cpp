// A crumbly patty is the commonest complaint: what holds it together, in the order in which a kitchen has it.
#include <algorithm>

#include "knowledge/index/kinds.hpp"
#include "standin/mend.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace mend_crumbly_test {

const Engine& engine() {
    static const Engine opened_once = opened(128);
    return opened_once;
}

Formula loose(double vinegar) {
    return formula({line("pork-shoulder", 2000), line("pork-backfat", 250), line("spinach", 250, {"blanched", "squeezed"}),
                    line("parsley", 100), line("garlic", 20), line("table-salt", 40), line("white-wine-vinegar", vinegar)});
}

MendAnswer crumbly(const Formula& mass, MendRequest request = {}) {
    request.tasted = {"crumbly"};
    return mend(engine(), mass, request).value();
}

TEST_CASE("mend: what crumbles is held by an ordinary dry binder, stirred into cold water", "[mend]") {
    const auto answer = crumbly(loose(30));
    REQUIRE_FALSE(answer.ways.empty());
    const auto& way = answer.ways.front();
    CHECK(way.kind == MendKind::add);
    REQUIRE(way.add.size() == 1);
    const Ingredient& food = *knowledge().ingredient(way.add[0].ingredient);
    CHECK(food.roles.front() == Role::binder);
    CHECK_FALSE(belongs(food, "seldom-sold", knowledge()));
    CHECK(way.add[0].water_g >= way.add[0].grams);
    CHECK(way.add[0].water_g <= 2 * way.add[0].grams);
    CHECK(way.new_allergens.empty());
}

TEST_CASE("mend: no whole dry grain goes into a mass that is mixed", "[mend]") {
    MendRequest request;
    request.top = 8;
    for (const double vinegar : {10.0, 30.0, 60.0})
        for (const auto& way : crumbly(loose(vinegar), request).ways)
            for (const auto& in : way.add) CHECK_FALSE(belongs(*knowledge().ingredient(in.ingredient), "whole-dry", knowledge()));
}

TEST_CASE("mend: where nothing goes all the way, what comes nearest is shown and not called mended", "[mend]") {
    MendRequest request;
    request.have.emplace();
    request.have->items = {{"rice-flour", 40.0}};
    request.have->missing = {"pork-shoulder"};
    const auto answer = crumbly(loose(45), request);
    REQUIRE(answer.ways.size() == 1);
    const auto& way = answer.ways.front();
    CHECK_FALSE(way.met);
    REQUIRE(way.wants.size() == 1);
    CHECK_FALSE(way.wants[0].met);
    CHECK(way.differences[Property::bind].mid > 0);
    CHECK(way.add.at(0).grams <= 40);
}

TEST_CASE("mend: crumbs that stand on the list may come in, and their allergen is told", "[mend]") {
    MendRequest request;
    request.have.emplace();
    request.have->items = {{"breadcrumb", 500.0}};
    request.have->missing = {"pork-shoulder"};
    const auto answer = crumbly(loose(10), request);
    REQUIRE_FALSE(answer.ways.empty());
    CHECK(answer.ways.front().add.at(0).ingredient == "breadcrumb");
    const auto& brings = answer.ways.front().new_allergens;
    CHECK(std::find(brings.begin(), brings.end(), "wheat") != brings.end());
}

}  // namespace mend_crumbly_test
