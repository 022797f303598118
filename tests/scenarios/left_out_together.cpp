// A kind that is left out is answered as a whole: its taste counted together, its body filled, the rest kept. Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace left_out_together_test {

const std::string mass = "Plain (invented)\n2000 g pork shoulder\n300 g pork backfat\n40 g white wine vinegar\n37 g salt\n";

AdaptRequest without(std::vector<std::string> kinds) {
    AdaptRequest request;
    request.without = std::move(kinds);
    return request;
}

const AllergenText* told(const Variant& v, const std::string& allergen) {
    const auto& all = v.prediction.allergens;
    const auto found = std::find_if(all.begin(), all.end(), [&](const AllergenText& one) { return one.allergen == allergen; });
    return found == all.end() ? nullptr : &*found;
}

bool is_from(const AllergenText* text, const std::string& food) {
    return text && std::find(text->from.begin(), text->from.end(), food) != text->from.end();
}

TEST_CASE("left out together: the taste of all the alliums is counted together, and what had body gets body") {
    struct Lost {
        const char *lines, *body;
    };
    for (const auto& [lines, body] : {Lost{"15 g garlic\n80 g green garlic\n", "fennel bulb 2"},
                                      Lost{"20 g garlic\n150 g onion\n", "celery"}, Lost{"10 g garlic\n100 g scallion\n", "fennel bulb 2"},
                                      Lost{"15 g garlic\n100 g shallot\n", "celery"}, Lost{"12 g garlic\n150 g leek\n", "fennel bulb 2"}}) {
        CAPTURE(lines);
        const auto v =
            first_for(mass + lines + "200 g spinach, blanched, squeezed\n", std::string(body) + "\nasafoetida\n", without({"alliums"}));
        CHECK(grams_in(v, "asafoetida") > 0.8);
        CHECK(grams_in(v, "asafoetida") <= 0.0005 * v.prediction.batch_g * 1.01);
        CHECK(grams_in(v, "celery") + grams_in(v, "fennel-bulb") > 40);
    }
}

TEST_CASE("left out together: a clove of garlic has no body to be filled, and fennel brings no bite") {
    const auto v =
        first_for(mass + "15 g garlic\n200 g spinach, blanched, squeezed\n", "fennel bulb 2\nasafoetida\n", without({"alliums"}));
    CHECK(grams_in(v, "fennel-bulb") == 0);
    for (const auto& edit : first_for(mass + "150 g leek\n", "fennel bulb 2\n", without({"alliums"})).edits)
        CHECK(edit.why.find("bite") == std::string::npos);
}

TEST_CASE("left out together: what is not left out is there, though the list names its like") {
    const std::string formula = mass + "150 g ramps\n100 g spinach, blanched, squeezed\n60 g parsley\n";
    const auto v = first_for(formula, "arugula\nkale\ncilantro\n", without({"alliums"}));
    CHECK(grams_in(v, "spinach") == Approx(100).margin(20));
    CHECK(grams_in(v, "parsley") == 60);
    const auto ruled_out = first_for(formula, "arugula\nno spinach\n", without({"alliums"}));
    CHECK(grams_in(ruled_out, "spinach") == 0);
}

TEST_CASE("left out together: packets are to be looked at for just what is left out") {
    const std::string formula = mass + "80 g breadcrumbs\n120 g milk\n15 g wholegrain mustard\n";
    const std::string list = "cooked rice\nchicken stock\n";
    const auto both = first_for(formula, list, without({"dairy", "gluten"}));
    CHECK(grams_in(both, "chicken-stock") == 0);  // water does for milk
    CHECK(is_from(told(both, "wheat"), "wholegrain mustard"));
    CHECK_FALSE(is_from(told(both, "milk"), "wholegrain mustard"));
    for (const auto* allergen : {"wheat", "milk"})
        if (const auto* text = told(both, allergen)) CHECK_FALSE(text->sure);
    // The formula's own is the maker's: of it the packet is told, for just what is left out.
    const std::string stocked = formula + "100 g chicken stock\n";
    const auto milk = first_for(stocked, "chicken stock\n", without({"dairy"}));
    CHECK(is_from(told(milk, "milk"), "chicken stock"));
    CHECK_FALSE(is_from(told(milk, "wheat"), "chicken stock"));
    CHECK_FALSE(is_from(told(first_for(formula, "chicken stock\nno milk\n"), "milk"), "chicken stock"));
}

}  // namespace left_out_together_test
