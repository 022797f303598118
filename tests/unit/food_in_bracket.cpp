// A food that nobody knows, whose bracket names one that is known, in formulas and in lists.
#include <algorithm>

#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace food_in_bracket_test {

Result<ReadLine> read(std::string_view text) { return read_line(text, Origin("f.txt", {1, 1}), knowledge()); }

struct Case {
    const char* line;
    const char* food;
};

bool told_by_bracket(const std::vector<Reason>& notes) {
    return std::any_of(notes.begin(), notes.end(),
                       [](const Reason& note) { return note.kind == ReasonKind::likened && note.role == "bracket"; });
}

TEST_CASE("where a name is not known, the food that its bracket names is taken, unsure and told") {
    const Case cases[]{{"2 tbsp fresh zorbola (basil)", "basil"},
                       {"15 leaves zorbo beni (culantro)", "culantro"},
                       {"100 g zorbolino (dry white wine)", "white-wine"},
                       {"60 g zorbasil leaves (Thai basil), chopped", "thai-basil"},
                       {"zorbola (basil), 40 g", "basil"},
                       {"200 g zorbola [spinach], blanched", "spinach"},
                       {"20 g quillo sauce (soy sauce)", "soy-sauce"},
                       {"50 g zorbenkraut (Petersilie)", "parsley"},
                       {"4 zorbo chiles (serrano)", "serrano"},
                       {"20 g zorb milk (coconut milk)", "coconut-milk"},
                       {"20 g zorbola (also called basil)", "basil"},
                       {"20 g zorbola (a kind of basil)", "basil"},
                       {"20 g zorbola, aka basil", "basil"}};
    for (const auto& [line, food] : cases) {
        CAPTURE(line);
        const auto found = read(line);
        REQUIRE(found);
        CHECK(found->line.ingredient == food);
        CHECK_FALSE(found->line.called.empty());
        CHECK(told_by_bracket(found->line.notes));
        CHECK(std::any_of(found->doubts.begin(), found->doubts.end(), [](const LineDoubt& doubt) {
            return doubt.confidence == Confidence::unsure && doubt.what.kind == ReasonKind::likened;
        }));
    }
}

TEST_CASE("a bracket does not smuggle in what may hurt, what is left out, or a sort of which each has dangers of its own") {
    for (const char* line :
         {"20 g hemlock (parsley)", "20 g hemlok (parsley)", "50 g foxglove (sage)", "5 g saltpetre (table salt)", "5 g kurepulver (salt)",
          "1 kg badger (pork shoulder)", "1 kg zorb (pork shoulder)", "100 g zorb cap (white mushroom)", "100 g zorb beans (white beans)",
          "20 g zorbola (not basil)", "20 g zorbola (no basil)", "20 g zorbola (may contain celery)", "20 g zorbola (with basil)",
          "20 g zorbola (basil and mint)", "20 g zorb almond (wheat flour)", "20 g zorb of pork (basil)", "20 g zorbola (dropped)"}) {
        CAPTURE(line);
        const auto found = read(line);
        CHECK((!found || !told_by_bracket(found->line.notes)));
        if (std::string_view(line).find("zorb beans") == std::string_view::npos) CHECK_FALSE(found);
    }
}

TEST_CASE("a name that is known keeps what stands in its bracket a remark") {
    CHECK(read("200 g spinach (young)")->line.ingredient == "spinach");
    CHECK(read("20 g basil (Genovese)")->line.ingredient == "basil");
    CHECK(read("30 g parsley (flat-leaf)")->line.called.empty());
}

TEST_CASE("of a word that leaves the kind open the bracket tells which") {
    CHECK(read("200 g speck (pork back fat)")->line.ingredient == "pork-backfat");
    CHECK(read("200 g speck (bacon)")->line.ingredient == "bacon");
    CHECK(read("10 g cardamom (Ethiopian)")->line.ingredient == "cardamom");
}

TEST_CASE("in a list the bracket's food is on hand, and told") {
    const Case cases[]{{"zorbola (basil) 1 bunch", "basil"},
                       {"zorbola (basil)", "basil"},
                       {"plenty of zorbola (basil)", "basil"},
                       {"200 g zorbola (sorrel)", "sorrel"},
                       {"zorbolino (dry white wine) 1 bottle", "white-wine"}};
    for (const auto& [line, food] : cases) {
        CAPTURE(line);
        const auto list = read_inventory("thyme 2 bunches\nlimes 4\n" + std::string(line) + "\n", "f", knowledge());
        REQUIRE(list);
        CHECK(list->aside.empty());
        CHECK(std::any_of(list->items.begin(), list->items.end(), [&](const auto& item) { return item.ingredient == food; }));
        CHECK(told_by_bracket(list->notes));
    }
    const auto meat = read_inventory("thyme 2 bunches\nlimes 4\nzorb (pork shoulder) 1 kg\n", "f", knowledge());
    REQUIRE(meat);
    CHECK_FALSE(told_by_bracket(meat->notes));
    CHECK_FALSE(read_inventory("thyme 2 bunches\nlimes 4\nhemlok (parsley) 1 bunch\n", "f", knowledge()));
}

TEST_CASE("a formula's own name of it denies it in a list") {
    const Engine made = std::move(*Engine::open({}));
    const auto formula = made.read_formula("A\n1 kg pork shoulder\n17 g salt\n20 g zorbola (basil)\n", "f");
    REQUIRE(formula);
    const auto list = made.read_inventory("thyme 1 bunch\nno zorbola\n", "l", &*formula);
    REQUIRE(list);
    CHECK(list->missing == std::vector<std::string>{"basil"});
}

}  // namespace food_in_bracket_test
