// A property is asked for by whatever a page or a condition calls it.
#include "standin/property.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace property_names_test {

TEST_CASE("every property is known by its key, and by its word in conditions") {
    for_each_property([](Property p) {
        CHECK(property_of(info(p).key) == p);
        if (!info(p).word.empty()) CHECK(property_of(info(p).word) == p);
        CHECK(property_of(info(p).name).has_value());
    });
}

TEST_CASE("a property is known by its name on the page, in capitals or not") {
    CHECK(property_of("pH") == Property::ph);
    CHECK(property_of("Cook loss") == Property::cook_loss_pct);
    CHECK(property_of("FIRMNESS") == Property::firmness);
    CHECK(property_of("heat") == Property::heat_mg_kg);
    CHECK_FALSE(property_of("").has_value());
    CHECK_FALSE(property_of("taste").has_value());
}

}  // namespace property_names_test
