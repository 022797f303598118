// What must be minded over several batches at once.
#include "safety/page.hpp"
#include "safety/wording.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace on_page_test {

CautionText caution(const std::string& id, const std::string& text, std::vector<std::string> foods, std::string degree = {}) {
    Reason reason;
    reason.kind = ReasonKind::caution;
    reason.about = id;
    reason.note = text;
    reason.foods = foods;
    return caution_text(reason, "judgement", std::move(foods), std::move(degree));
}

Prediction with(std::vector<CautionText> cautions, double core_c = 71.1) {
    Prediction p;
    p.core.core_c = core_c;
    p.cautions = std::move(cautions);
    return p;
}

TEST_CASE("one caution stands for all the foods that call for it, whichever batch they are in", "[page]") {
    OnPage page;
    page.add(with({caution("oxalate", "Much oxalate.", {"sorrel"})}));
    page.add(with({caution("oxalate", "Much oxalate.", {"chard", "sorrel"})}));
    REQUIRE(page.safety().cautions.size() == 1);
    CHECK(page.safety().cautions.front().text == "Much oxalate. Here: sorrel, chard.");
    CHECK(page.safety().cautions.front().foods == std::vector<std::string>{"sorrel", "chard"});
}

TEST_CASE("a caution that goes further is another one", "[page]") {
    OnPage page;
    page.add(with({caution("us-fat", "Just within.", {}, "just")}));
    page.add(with({caution("us-fat", "Over.", {}, "over")}));
    CHECK(page.safety().cautions.size() == 2);
}

TEST_CASE("the core is that of the most demanding batch", "[page]") {
    OnPage page;
    page.add(with({caution("core-temperature", "{core 71.1 C}", {}, "71.1")}, 71.1));
    page.add(with({caution("core-temperature", "{core 73.9 C}", {}, "73.9")}, 73.9));
    page.add(with({caution("core-temperature", "{core 71.1 C}", {}, "71.1")}, 71.1));
    REQUIRE(page.safety().cautions.size() == 1);
    CHECK(page.safety().cautions.front().text == "73.9 C (165 F)");
    CHECK(page.safety().core.core_c == 73.9);
}

TEST_CASE("what is offered is gathered by itself too, with the figures of the first of them") {
    OnPage page;
    page.add(
        with({caution("wine", "Wine.", {"red-wine"}), caution("oxalate", "Much oxalate.", {"sorrel"}), caution("salt", "3.4 %.", {})}));
    page.offer(with({caution("oxalate", "Much oxalate.", {"chard"}), caution("salt", "2.7 %.", {})}));
    page.offer(with({caution("oxalate", "Much oxalate.", {"spinach"}), caution("salt", "2.6 %.", {})}));
    CHECK(page.safety().cautions.size() == 3);
    REQUIRE(page.offered().cautions.size() == 2);
    CHECK(page.offered().cautions.front().text == "Much oxalate. Here: chard, spinach.");
    CHECK(page.offered().cautions.back().text == "2.7 %.");
}

TEST_CASE("a caution is new when it is another one, goes further, or is for a food that the base has not", "[page]") {
    const auto base = with({caution("oxalate", "Much oxalate.", {"sorrel", "chard"}), caution("salty", "Salt.", {}, "high")});
    CHECK(new_cautions(base, with({caution("oxalate", "Much oxalate.", {"chard"})})).empty());
    CHECK(new_cautions(base, with({caution("oxalate", "Said in other words.", {"chard"})})).empty());
    CHECK(new_cautions(base, with({caution("oxalate", "Much oxalate.", {"chard", "spinach"})})).size() == 1);
    CHECK(new_cautions(base, with({caution("salty", "Salt.", {}, "very high")})).size() == 1);
    CHECK(new_cautions(base, with({caution("raw-fish", "Fish.", {"cod"})})).size() == 1);
    CHECK(new_cautions(with({}, 71.1), with({caution("core-temperature", "", {}, "73.9")}, 73.9)).size() == 1);
    CHECK(new_cautions(with({}, 73.9), with({caution("core-temperature", "", {}, "71.1")}, 71.1)).empty());
}

}  // namespace on_page_test
