// What a maker reads across two pages, the answer and its sheet, tells the same: names, notes and what is there.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace as_the_maker_reads_test {

const Engine& engine() {
    static const Engine opened = expect(Engine::open({}));
    return opened;
}

AdaptAnswer adapted(const std::string& formula, const std::string& list, AdaptRequest request = {}) {
    const auto read = expect(engine().read_formula(formula, "formula"));
    request.have = expect(engine().read_inventory(list, "list", &read));
    return expect(engine().adapt(read, request));
}

SwapsAnswer swapped(const std::string& formula, const std::string& list, const std::string& line) {
    const auto read = expect(engine().read_formula(formula, "formula"));
    SwapsRequest request;
    request.have = expect(engine().read_inventory(list, "list", &read));
    return expect(engine().swaps(read, line, request));
}

bool in_place(const std::string& title) { return title.rfind("In place of ", 0) == 0; }

TEST_CASE("as read: a variant without what its title names is another by its name") {
    const auto gone = adapted(
        "Hazelnut and chard links (invented)\n1500 g pork shoulder\n350 g pork back fat\n150 g chard, blanched\n"
        "100 g hazelnuts\n28 g salt\n",
        "no hazelnuts\nno chard\nalmonds 300 g\nspinach 400 g\n");
    REQUIRE_FALSE(gone.variants.empty());
    CHECK(in_place(gone.variants.front().formula.title));
    const auto kept = adapted(
        "Hazelnut links (invented)\n1500 g pork shoulder\n350 g pork back fat\n150 g chard, blanched\n"
        "100 g hazelnuts\n28 g salt\n",
        "no chard\nspinach 400 g\nhazelnuts 200 g\n");
    REQUIRE_FALSE(kept.variants.empty());
    CHECK_FALSE(in_place(kept.variants.front().formula.title));
}

TEST_CASE("as read: leaf greens of a title are the leaf of the line") {
    const auto answer =
        adapted("Lamb with beet greens (invented)\n2 kg lamb shoulder\n300 g lamb fat\n200 g beet leaves, blanched\n38 g salt\n",
                "no beet leaves\nspinach 500 g\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(in_place(answer.variants.front().formula.title));
}

TEST_CASE("as read: no note asks for a food that the list says is gone") {
    const auto answer = adapted("Game with gin (invented)\n1800 g venison\n700 g pork back fat\n60 g gin\n20 g garlic\n44 g salt\n",
                                "no gin\nno juniper\nvodka\n");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& edit : answer.variants.front().edits) CHECK(edit.reason.note.find("crushed") == std::string::npos);
    const auto with = adapted("Game with gin (invented)\n1800 g venison\n700 g pork back fat\n60 g gin\n20 g garlic\n44 g salt\n",
                              "no gin\njuniper berries\nvodka\n");
    REQUIRE_FALSE(with.variants.empty());
    CHECK(std::any_of(with.variants.front().edits.begin(), with.variants.front().edits.end(), [](const Edit& edit) {
        return edit.reason.note.find("juniper") != std::string::npos || edit.with == "juniper-berry";
    }));
}

TEST_CASE("as read: what the formula's own lines need is not free for a stand-in") {
    const std::string formula = "Herbs (invented)\n1200 g pork shoulder\n300 g pork belly\n80 g parsley\n40 g basil\n22 g salt\n";
    const auto none = swapped(formula, "parsley 84 g\nno basil\nmarjoram, fresh 20 g\nfresh oregano 60 g\n", "basil");
    REQUIRE_FALSE(none.stand_ins.empty());
    for (const auto& one : none.stand_ins) CHECK(one.ingredient != "parsley");
    const auto some = swapped(formula, "parsley 400 g\nno basil\nmarjoram, fresh 20 g\n", "basil");
    REQUIRE_FALSE(some.stand_ins.empty());
    CHECK(std::any_of(some.stand_ins.begin(), some.stand_ins.end(),
                      [](const StandIn& one) { return one.ingredient == "parsley" && !one.on_hand; }));
}

TEST_CASE("as read: no stand-in oversteps what a kilo takes of it by the rounding of its weight") {
    const std::string formula = "Herbs (invented)\n1200 g pork shoulder\n300 g pork belly\n80 g parsley\n40 g basil\n22 g salt\n";
    const auto read = expect(engine().read_formula(formula, "formula"));
    for (const auto& one : expect(engine().swaps(read, "basil", SwapsRequest{})).stand_ins)
        for (const auto& caution : one.cautions) {
            INFO(one.name << ": " << caution.text);
            CHECK(caution.id != "over-most");
        }
}

}  // namespace as_the_maker_reads_test
