#include "formula/lexer/measures.hpp"

#include "support/catch.hpp"

using namespace standin;

namespace measures_test {

double size(std::string_view words) {
    const Unit* unit = unit_named(words);
    return unit ? unit->size.mid : -1;
}

std::string_view read(std::string_view text) {
    Cursor cursor(text);
    const auto unit = unit_at(cursor);
    return unit ? unit->unit->word : std::string_view{};
}

TEST_CASE("units have their defined sizes") {
    CHECK(size("lb") == Approx(453.59237).epsilon(1e-12));
    CHECK(size("oz") == Approx(28.349523125).epsilon(1e-12));
    CHECK(size("cup") == Approx(236.5882365).epsilon(1e-12));
    CHECK(size("fl oz") == Approx(29.5735295625).epsilon(1e-12));
    CHECK(size("tbsp") == Approx(14.78676478125).epsilon(1e-12));
    CHECK(size("tsp") == Approx(4.92892159375).epsilon(1e-12));
    CHECK(size("pint") == Approx(473.176473).epsilon(1e-12));
    CHECK(size("imperial pint") == Approx(568.26125).epsilon(1e-12));
    CHECK(size("imperial fl oz") == Approx(28.4130625).epsilon(1e-12));
    CHECK(size("imperial pint") / size("pint") == Approx(1.2009).epsilon(1e-4));
    CHECK(size("metric cup") == 250);
    CHECK(size("bushel") == -1);
}

TEST_CASE("units are read in any spelling") {
    CHECK(read("grams of salt") == "g");
    CHECK(read("Tablespoons") == "tbsp");
    CHECK(read("T salt") == "tbsp");
    CHECK(read("t salt") == "tsp");
    CHECK(read("tbsp. vinegar") == "tbsp");
    CHECK(read("fl. oz. vinegar") == "fl-oz");
    CHECK(read("fluid ounces") == "fl-oz");
    CHECK(read("lbs pork") == "lb");
    CHECK(read("# pork") == "lb");
    CHECK(read("imperial pints of ale") == "imperial pint");
    CHECK(read("leaves") == "leaf");
    CHECK(read("-ounce can") == "oz");
    CHECK(read("spinach").empty());
}

TEST_CASE("a unit tells how full and how large it is") {
    Cursor heaped("heaped tbsp");
    CHECK(unit_at(heaped)->factor.mid > 1.2);
    Cursor large("large bunch");
    CHECK(unit_at(large)->size == "large");
    Cursor none("large onion");
    CHECK_FALSE(unit_at(none));
    CHECK(none.at() == 0);
}

}  // namespace measures_test
