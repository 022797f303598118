// What a practised maker would hang above the bench as it stands: bulk, salt and the words of the list kept. Formulas are invented.
#include <algorithm>
#include <cmath>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace hung_up_test {

const std::string mass = "Plain (invented)\n1500 g pork shoulder\n300 g pork backfat\n28 g salt\n4 g black pepper\n";

double salt_of_meat(const Prediction& p) { return p.properties[Property::salt_pct_of_meat].mid; }

TEST_CASE("hung up: what the list says is not there is not what a wider word of it means") {
    struct Case {
        const char *line, *there, *gone, *id;
    };
    for (const auto& [line, there, gone, id] :
         {Case{"70 g rye bread", "fresh breadcrumbs 1 bag", "rye bread", "rye-bread"},
          Case{"90 g wholewheat flour", "wheat flour plenty", "wholewheat flour", "wholewheat-flour"},
          Case{"70 g potato starch", "potato flour 500 g", "potato starch", "potato-starch"},
          Case{"40 g red finger chilli", "red chile plenty", "red finger chilli", "finger-chile-red"}})
        for (const bool first : {true, false}) {
            CAPTURE(line, first);
            const std::string no = std::string("no ") + gone + "\n", some = std::string(there) + "\n";
            CHECK(grams_in(first_for(mass + line + "\n", first ? no + some : some + no), id) == 0);
        }
}

}  // namespace hung_up_test
