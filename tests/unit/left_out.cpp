// What a guest must not eat is never told to be there.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace left_out_test {

TEST_CASE("what is to be left out is not presumed to be on hand, in any way of saying so") {
    const auto engine = Engine::open({});
    const auto formula = engine->read_formula("Nutty\n2 kg pork shoulder\n80 g walnuts\n60 g parsley\n36 g salt\n", "f");
    REQUIRE(formula);
    for (const char* list : {"pumpkin seeds 500 g\nno parsley\nchervil 200 g\n", "pumpkin seeds 500 g\nnothing else\n"}) {
        AdaptRequest request;
        request.have = *engine->read_inventory(list, "list", &*formula);
        request.without = {"walnuts"};
        request.top = 1;
        const auto answer = engine->adapt(*formula, request);
        REQUIRE(answer);
        for (const auto& one : answer->presumed) {
            CHECK(one.ingredient != "walnut");
            CHECK(one.says.find("walnut") == std::string::npos);
        }
        CHECK(std::any_of(answer->excluded.begin(), answer->excluded.end(),
                          [](const Excluded& e) { return e.lines == std::vector<std::string>{"walnut"}; }));
    }
}

TEST_CASE("boiled rice in the mass is cautioned") {
    const auto engine = Engine::open({});
    const auto formula = engine->read_formula("Boudin\n1 kg pork shoulder\n400 g cooked rice\n20 g salt\n", "f");
    REQUIRE(formula);
    const auto answer = engine->predict(*formula);
    const auto& all = answer->cautions;
    const auto rice = std::find_if(all.begin(), all.end(), [](const CautionText& c) { return c.id == "cooked-rice"; });
    REQUIRE(rice != all.end());
    CHECK(rice->text.find("within an hour") != std::string::npos);
    CHECK(rice->brief.find("Bacillus cereus") != std::string::npos);
}

TEST_CASE("a caution's line for a first page is shorter than its text and names no food by itself") {
    const auto engine = Engine::open({});
    const auto formula = engine->read_formula("Brief\n1 kg pork shoulder\n100 g chard\n4 g nutmeg\n20 g salt\n", "f");
    const auto answer = engine->predict(*formula);
    for (const auto& c : answer->cautions)
        if (!c.brief.empty()) CHECK(c.brief.size() < c.text.size());
}

TEST_CASE("a food that one word takes for what it is and another for what it may hold is never kept by its packet") {
    const auto engine = Engine::open({});
    const auto formula = engine->read_formula("Crumbed\n2 kg pork shoulder\n60 g bread, soaked\n40 g milk\n34 g salt\n", "f");
    REQUIRE(formula);
    for (const auto& without : {std::vector<std::string>{"dairy", "gluten"}, std::vector<std::string>{"gluten", "dairy"}}) {
        AdaptRequest request;
        request.without = without;
        request.have = *engine->read_inventory("no bread\nno milk\nwater\n", "list", &*formula);
        const auto answer = engine->adapt(*formula, request);
        REQUIRE(answer);
        REQUIRE_FALSE(answer->variants.empty());
        for (const auto& variant : answer->variants)
            for (const auto& edit : variant.edits) CHECK(edit.why.find("keep the line") == std::string::npos);
    }
}

TEST_CASE("nobody is told to get more of what is left out, or to give the guest up") {
    const auto engine = Engine::open({});
    const auto formula = engine->read_formula("Shore\n2 kg pork shoulder\n300 g shrimp, cooked\n150 g parsley\n34 g salt\n", "f");
    REQUIRE(formula);
    AdaptRequest request;
    request.without = {"shellfish"};
    request.have =
        *engine->read_inventory("no shrimp\nno parsley\nwhite beans 1 can\nhot smoked paprika\nnothing else\n", "list", &*formula);
    const auto answer = engine->adapt(*formula, request);
    REQUIRE(answer);
    for (const auto& said : in_full(answer->would_give)) CHECK(said.find("shrimp") == std::string::npos);
    for (const auto& said : in_full(answer->conflict)) CHECK(said.find("shrimp") == std::string::npos);
}

}  // namespace left_out_test
