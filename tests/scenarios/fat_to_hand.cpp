// Fat that is missing is made up for by fat that is there, and what the maker wants in a line's place is taken. Formulas are invented.
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace fat_to_hand_test {

const std::string duck = "Pond (invented)\n1500 g duck breast, skinless\n350 g duck fat\n28 g salt\n4 g black pepper\n20 g shallot\n";

TEST_CASE("an idea for the fat is taken, at the weight of the fat") {
    AdaptRequest request;
    request.use = {{"pork-backfat", "duck-fat"}};
    const auto answer = answer_to(duck, "", request);
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "pork-backfat") == Approx(350).margin(40));
    CHECK(grams_in(answer.variants.front(), "duck-fat") == 0);
}

TEST_CASE("an idea is taken though another stand-in is nearer") {
    AdaptRequest request;
    request.use = {{"olive-oil", "duck-fat"}};
    const auto answer = answer_to(duck, "goose fat 500 g\nolive oil 1 l\nno duck fat\n", request);
    for (const auto& variant : answer.variants) CHECK(grams_in(variant, "olive-oil") > 100);
    CHECK((!answer.variants.empty() || !answer.conflict.empty()));
}

TEST_CASE("no fat is thrown out while other fat is on hand") {
    for (const std::string missing : {"duck fat", "goose fat", "lard", "pork back fat", "chicken fat", "beef suet"})
        for (const std::string there : {"pork back fat", "beef suet", "lard", "goose fat"}) {
            if (missing == there) continue;
            CAPTURE(missing, there);
            const std::string formula = "Plain (invented)\n1500 g turkey thigh\n350 g " + missing + "\n28 g salt\n4 g black pepper\n";
            const auto answer = answer_to(formula, there + " 1 kg\nno " + missing + "\n");
            REQUIRE_FALSE(answer.variants.empty());
            const std::string id = there == "pork back fat" ? "pork-backfat"
                                   : there == "beef suet"   ? "beef-suet"
                                   : there == "lard"        ? "lard"
                                                            : "goose-fat";
            CHECK(grams_in(answer.variants.front(), id) > 200);
        }
}

TEST_CASE("rendered fat is part of the meat that salt is reckoned on, as back fat is") {
    const auto salt = [](const std::string& fat) {
        const auto read = expect(engine().read_formula("Plain (invented)\n1500 g turkey thigh\n500 g " + fat + "\n30 g salt\n", "formula"));
        return expect(engine().predict(read)).properties[Property::salt_pct_of_meat].mid;
    };
    CHECK(salt("goose fat") == Approx(salt("pork back fat")).margin(0.15));
}

TEST_CASE("two liquids for one weigh together no more than that one") {
    const std::string formula = "Hutch (invented)\n2000 g chicken thigh\n120 g dry white wine\n20 g parsley\n34 g salt\n";
    const auto answer = answer_to(formula, "cider vinegar 300 ml\napple juice 1 l\nno dry white wine\n");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) CHECK(grams_in(v, "cider-vinegar") + grams_in(v, "apple-juice") + grams_in(v, "water") < 145);
}

TEST_CASE("where one cut is missing the others make it up, and the batch is as large as all of them allow") {
    const std::string formula = "Pot (invented)\n1200 g beef chuck\n600 g beef shin\n200 g beef suet\n20 g parsley\n34 g salt\n";
    const auto answer = answer_to(formula, "beef chuck 900 g\nchervil 50 g\nno beef shin\nno parsley\n");
    REQUIRE(answer.scaled);
    CHECK(answer.scaled->factor == Approx(0.5).margin(0.01));
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "beef-chuck") == Approx(900).margin(20));
    CHECK(grams_in(answer.variants.front(), "chervil") > 4);
}

TEST_CASE("what has a stand-in on hand is not told as what the batch fails by") {
    const std::string formula = "Pot (invented)\n1200 g beef chuck\n200 g beef suet\n20 g parsley\n34 g salt\n";
    const auto answer = answer_to(formula, "chervil 50 g\nno beef chuck\nno parsley\n");
    REQUIRE_FALSE(answer.conflict.empty());
    const std::string said = in_full(answer.conflict.front());
    CHECK(said.find("chuck") != std::string::npos);
    CHECK(said.find("parsley") == std::string::npos);
}

TEST_CASE("lard stands in for butter, though it is of the meat block and butter is not") {
    const auto answer =
        answer_to("Dairy (invented)\n1000 g pork shoulder\n18 g salt\n60 g butter\n10 g parsley\n", "lard 200 g\nno butter\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "lard") == Approx(50).margin(8));
}

}  // namespace fat_to_hand_test
