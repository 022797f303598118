// What a variant is called, and how a formula keeps its parent, its date and what there is to do.
#include "adapt/variants/variant_name.hpp"

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

TEST_CASE("a variant is named by what came in or by what was wanted", "[variant]") {
    Formula base, variant;
    base.title = "Hedge";
    Edit chard;
    chard.kind = EditKind::replace;
    chard.line = "spinach";
    chard.with = "chard";
    chard.reason.note = "Strip the ribs.";
    name_variant(variant, base, {chard}, {}, knowledge());
    CHECK(variant.title == "Hedge, with chard");
    CHECK(variant.parent == "Hedge");
    REQUIRE(variant.to_do.size() == 1);
    CHECK(variant.to_do.front() == "chard: Strip the ribs.");
    Formula child;
    Edit less;
    less.kind = EditKind::reduce;
    less.line = "serrano";
    name_variant(child, variant, {less}, {"milder"}, knowledge());
    CHECK(child.title == "Hedge, milder");
    CHECK(child.parent == "Hedge, with chard");
}

TEST_CASE("parent, date and what is to do survive being written and read", "[variant][formula]") {
    const auto read = read_formula(
        "Pond\n2 kg pork shoulder\n2 lb chard, blanched 2 min\n36 g salt\nparent: Old pond\ndate: 2026-05-01\ndo: chard: strip the ribs\n",
        "f", knowledge());
    REQUIRE(read);
    CHECK(read->parent == "Old pond");
    CHECK(read->date == "2026-05-01");
    REQUIRE(read->to_do == std::vector<std::string>{"chard: strip the ribs"});
    for (const auto& text :
         {formula_text(*read, knowledge()), formula_text(*read, knowledge(), Amounts::as_written), formula_json(*read, knowledge())}) {
        INFO(text);
        const auto again = read_formula(text, "again", knowledge());
        REQUIRE(again);
        CHECK(again->parent == read->parent);
        CHECK(again->date == read->date);
        CHECK(again->to_do == read->to_do);
        CHECK(again->lines[1].grams.mid == Approx(read->lines[1].grams.mid).epsilon(1e-6));
    }
    CHECK(formula_text(*read, knowledge(), Amounts::as_written).find("2 lb chard") != std::string::npos);
}
