// Random gardens: what comes in for one liquid is together no more than that liquid.
#include <random>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace fill_once_test {

struct Liquid {
    const char *id, *name;
};

constexpr Liquid liquids[] = {{"white-wine", "dry white wine"}, {"apple-juice", "apple juice"}, {"cider-vinegar", "cider vinegar"},
                              {"orange-juice", "orange juice"}, {"lemon-juice", "lemon juice"}, {"beer", "beer"},
                              {"whole-milk", "whole milk"},     {"red-wine", "dry red wine"}};

TEST_CASE("liquids: of several on hand no more comes in together than is missing") {
    const Engine engine = Engine::open({}).value();
    std::mt19937 random(20);
    std::size_t several = 0;
    for (int n = 0; n < 40; ++n) {
        const Liquid& gone = liquids[random() % std::size(liquids)];
        std::string list = std::string("no ") + gone.name + "\n";
        for (const auto& other : liquids)
            if (other.id != gone.id && random() % 2) list += std::string(other.name) + " 1 l\n";
        CAPTURE(list);
        const auto formula = engine.read_formula(
            "Any (invented)\n2000 g chicken thigh\n20 g parsley\n34 g salt\n120 g " + std::string(gone.name) + "\n", "formula");
        REQUIRE(formula);
        AdaptRequest request;
        request.have = engine.read_inventory(list, "list", &*formula).value();
        const auto answer = engine.adapt(*formula, request);
        REQUIRE(answer);
        for (const auto& v : answer->variants) {
            double in = 0;
            std::size_t foods = 0;
            for (const auto& line : v.formula.lines) in += line.ingredient == "water" ? line.grams.mid : 0;
            for (const auto& line : v.formula.lines)
                for (const auto& other : liquids)
                    if (line.ingredient == other.id && other.id != gone.id) in += line.grams.mid, ++foods;
            several += foods > 1;
            CHECK(in <= 1.5 * 120);  // a weaker juice for lemon: half as much again at most
        }
    }
    WARN(several << " variants with several liquids");
}

}  // namespace fill_once_test
