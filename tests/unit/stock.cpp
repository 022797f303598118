// What a list says, and what is presumed where it says nothing.
#include "substitute/stock.hpp"

#include "adapt/variants/swap_note.hpp"
#include "formula/reading.hpp"
#include "models/as_bought.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace stock_test {

Formula green() {
    return formula({line("pork-shoulder", 1500), line("pork-backfat", 300), line("spinach", 300), line("parsley", 80), line("serrano", 30),
                    line("garlic", 20), line("tomatillo", 200), line("bottled-lime-juice", 30), line("dried-oregano", 4),
                    line("black-pepper", 4), line("breadcrumb", 60), line("table-salt", 32), line("water", 80)});
}

Stock stock_of(const Formula& made, const std::string& list, std::vector<std::string> without = {}) {
    static const Evaluator evaluator(knowledge(), 16, 1);
    static const Options options;
    AdaptRequest request;
    if (!list.empty()) {
        auto have = read_inventory(list, "list", knowledge(), &made);
        if (!have) FAIL(have.error().where + " " + have.error().message);
        request.have = std::move(*have);
    }
    request.without = std::move(without);
    auto stock = Stock::of(made, request, {evaluator, options});
    if (!stock) FAIL(stock.error().message);
    return std::move(*stock);
}

bool there(const Stock& stock, const std::string& id) { return stock.offer(*knowledge().ingredient(id)).on_hand; }

const Presumption* presumed(const Stock& stock, const std::string& id) {
    for (const auto& one : stock.presumed())
        if (one.ingredient == id) return &one;
    return nullptr;
}

TEST_CASE("stock: only what is fresh is presumed missing, and only because its kin is listed") {
    const Stock stock =
        stock_of(green(), "chard 400 g\ncilantro 1 bunch\njalapeno 100 g\nred onion 3\nwalnuts 100 g\nlemons 4\noats 200 g");
    for (const auto* id : {"spinach", "parsley", "serrano"}) CHECK_FALSE(there(stock, id));
    for (const auto* id : {"pork-shoulder", "pork-backfat", "garlic", "tomatillo", "bottled-lime-juice", "dried-oregano", "black-pepper",
                           "breadcrumb", "table-salt", "water"}) {
        CAPTURE(id);
        CHECK(there(stock, id));
    }
    const Presumption* spinach = presumed(stock, "spinach");
    REQUIRE(spinach != nullptr);
    CHECK(spinach->matters);
    CHECK_FALSE(spinach->on_hand);
    CHECK(spinach->add == "spinach plenty");
    CHECK(spinach->says.find("chard") != std::string::npos);
    CHECK(stock.presumed().front().matters);
}

TEST_CASE("stock: green tomatoes on the list make tomatillos missing; no fruit on it leaves them") {
    CHECK_FALSE(there(stock_of(green(), "green tomatoes 500 g"), "tomatillo"));
    CHECK(there(stock_of(green(), "spinach 500 g"), "tomatillo"));
    CHECK(there(stock_of(green(), "zucchini 500 g"), "spinach"));
}

TEST_CASE("stock: nothing else closes what the list is about") {
    const Stock garden = stock_of(green(), "borage 500 g\nno spinach\nnothing else");
    for (const auto* id : {"spinach", "parsley", "serrano", "tomatillo"}) CHECK_FALSE(there(garden, id));
    for (const auto* id :
         {"pork-shoulder", "pork-backfat", "garlic", "table-salt", "water", "black-pepper", "breadcrumb", "dried-oregano"}) {
        CAPTURE(id);
        CHECK(there(garden, id));
    }
    CHECK(garden.presumed().front().matters);
    CHECK(garden.presumed().front().says.find("pork shoulder") != std::string::npos);
    const Stock larder = stock_of(green(), "spinach 400 g\npork shoulder 2 kg\nblack pepper plenty\nnothing else");
    for (const auto* id : {"pork-backfat", "parsley", "dried-oregano", "breadcrumb"}) CHECK_FALSE(there(larder, id));
    for (const auto* id : {"pork-shoulder", "table-salt", "water", "black-pepper"}) CHECK(there(larder, id));
    const Stock cold = stock_of(green(), "sour cream\nnothing else");
    CHECK(there(cold, "black-pepper"));
    CHECK_FALSE(there(cold, "breadcrumb"));
}

TEST_CASE("stock: what nothing else leaves out is told") {
    const Stock closed = stock_of(green(), "borage 500 g\nnothing else");
    const auto told = std::find_if(closed.presumed().begin(), closed.presumed().end(), [](const Presumption& p) {
        return p.says.find("taken to be missing") != std::string::npos && p.says.find("tomatillo") != std::string::npos;
    });
    REQUIRE(told != closed.presumed().end());
    CHECK(told->matters);
}

TEST_CASE("stock: one spice on the list closes no spice rack, and pepper is there unless another is listed") {
    const Stock one = stock_of(green(), "chard 300 g\nmustard powder 50 g\nnothing else");
    for (const auto* id : {"black-pepper", "dried-oregano"}) CHECK(there(one, id));
    const Stock rack = stock_of(green(), "chard 300 g\nmustard powder\nground cumin\nnothing else");
    CHECK(there(rack, "black-pepper"));
    CHECK_FALSE(there(rack, "dried-oregano"));
    CHECK_FALSE(there(stock_of(green(), "chard 300 g\nwhite pepper\nnothing else"), "black-pepper"));
}

TEST_CASE("stock: everything else is everything else") {
    const Stock stock = stock_of(green(), "no spinach\neverything else");
    CHECK_FALSE(there(stock, "spinach"));
    CHECK(there(stock, "parsley"));
    CHECK(there(stock, "chard"));
    CHECK(stock.can_bring(*knowledge().ingredient("chard")));
}

TEST_CASE("stock: weights are as picked, and a line gets what is left when it is trimmed") {
    const Stock stock = stock_of(green(), "spinach 400 g");
    const Ingredient& spinach = *knowledge().ingredient("spinach");
    REQUIRE(spinach.edible);
    CHECK(stock.offer(spinach).grams == Approx(400));
    CHECK(*stock.offer(line("spinach", 300)).grams == Approx(400 * spinach.edible->band.mid / 100));
    CHECK(*stock.offer(line("spinach", 300, {"stemmed"})).grams == Approx(400));  // weighed before it is stemmed
    Line blanched = line("spinach", 300, {"blanched"});
    blanched.weighed_prepared = true;
    CHECK(*stock.offer(blanched).grams * bought_per_gram(blanched, knowledge()) == Approx(400));
    // A bunch is measured without what is cut away.
    const Stock bunches = stock_of(green(), "parsley 2 bunches"), grams = stock_of(green(), "parsley 1 bunch\nparsley 1 bunch");
    CHECK(*bunches.offer(line("parsley", 80)).grams == Approx(*grams.offer(line("parsley", 80)).grams));
}

TEST_CASE("stock: dried sage on the list means that the fresh is missing, and dried sage for a dried line means nothing") {
    Formula sage = green();
    sage.lines.push_back(line("fresh-sage", 12));
    CHECK_FALSE(there(stock_of(sage, "dried sage"), "fresh-sage"));
    CHECK(there(stock_of(sage, "dried sage\nfresh sage 1 bunch"), "fresh-sage"));
    CHECK(there(stock_of(green(), "oregano 1 bunch"), "dried-oregano"));
}

TEST_CASE("stock: what is not known here is set aside and told, and a slip of the pen is asked about") {
    const Stock stock = stock_of(green(), "chard 400 g\nkale 200 g\ncherimoya 2\na jar of umeboshi");
    CHECK(there(stock, "chard"));
    const bool told = std::any_of(stock.presumed().begin(), stock.presumed().end(), [](const Presumption& one) {
        return one.matters && one.says.find("cherimoya 2") != std::string::npos && one.says.find("umeboshi") != std::string::npos;
    });
    CHECK(told);
    const Formula made = green();
    const auto slip = read_inventory("chard 400 g\nspinch 300 g\nkale 200 g", "list", knowledge(), &made);
    REQUIRE_FALSE(slip);
    CHECK(slip.error().hints == std::vector<std::string>{"spinach"});
    CHECK_FALSE(read_inventory("no cherimoya\nchard 400 g\nkale 200 g", "list", knowledge(), &made));
    CHECK_FALSE(read_inventory("cherimoya\numeboshi", "list", knowledge(), &made));
}

TEST_CASE("stock: another word for what is said to be missing is that food on hand") {
    Formula wine = green();
    wine.lines.push_back(line("habanero", 10));
    CHECK(there(stock_of(wine, "no habanero\nscotch bonnet 3"), "habanero"));
    CHECK(there(stock_of(wine, "scotch bonnet 3\nno habanero"), "habanero"));
    CHECK_FALSE(read_inventory("no habanero\nhabanero 3", "list", knowledge(), &wine));
}

TEST_CASE("stock: for the sake of a taste or a diet anything else may come in, and be told") {
    const Stock stock = stock_of(green(), "", {"chiles"});
    REQUIRE(stock.excluded().size() == 1);
    CHECK(stock.excluded().front().lines == std::vector<std::string>{"serrano"});
    CHECK_FALSE(there(stock, "jalapeno"));
    CHECK(stock.can_bring(*knowledge().ingredient("pistachio")));
    CHECK(stock_of(green(), "", {"pork"}).can_bring(*knowledge().ingredient("beef-suet")));
}

TEST_CASE("stock: where an allergen is left out no new one comes in, but by the maker's own list") {
    const Stock stock = stock_of(green(), "", {"peanut"});
    for (const auto* id : {"pistachio", "peanut", "celery", "shrimp", "mustard-greens"}) {
        CAPTURE(id);
        CHECK_FALSE(stock.can_bring(*knowledge().ingredient(id)));
    }
    CHECK(stock.can_bring(*knowledge().ingredient("wheat-flour")));  // breadcrumbs hold wheat already
    const Stock listed = stock_of(green(), "pistachios 100 g", {"peanut"});
    CHECK(listed.can_bring(*knowledge().ingredient("pistachio")));
    CHECK_FALSE(listed.can_bring(*knowledge().ingredient("shrimp")));
}

TEST_CASE("stock: cabbage and lemons with nothing else close the garden and not the kitchen") {
    const Stock stock = stock_of(green(), "cabbage 2\ncarrots\n1 lemon\nnothing else");
    for (const auto* id : {"spinach", "parsley", "serrano"}) CHECK_FALSE(there(stock, id));
    for (const auto* id : {"black-pepper", "dried-oregano", "breadcrumb", "table-salt", "pork-shoulder"}) CHECK(there(stock, id));
}

TEST_CASE("stock: another form is not another word, and a word of form names no food") {
    Formula ginger = green();
    ginger.lines.push_back(line("turmeric", 4));
    // Root and powder are two foods: without the one the other is still there.
    CHECK(there(stock_of(ginger, "no fresh turmeric\nground turmeric"), "turmeric"));
    const Stock stock = stock_of(green(), "marjoram, dried\nno dried oregano");
    CHECK_FALSE(there(stock, "dried-oregano"));
}

TEST_CASE("stock: no note tells the maker to add what is left out") {
    const Stock none = stock_of(green(), ""), milk = stock_of(green(), "", {"milk"}), nuts = stock_of(green(), "", {"nuts"}),
                allium = stock_of(green(), "", {"alliums"});
    CHECK(without_left_out("Add oil, cheese and garlic.", none) == "Add oil, cheese and garlic.");
    CHECK(without_left_out("Add salt, cheese and garlic.", milk) == "Add salt, garlic.");
    CHECK(without_left_out("Leaf and oil; pound a nut and a little oil with it if they are there.", nuts) == "Leaf and oil.");
    CHECK(without_left_out("Smoky; add paprika and garlic.", allium) == "Smoky; add paprika.");
    CHECK(without_left_out("Red; garlic and cumin come from what is there.", allium) == "Red.");
    CHECK(without_left_out("Salt without garlic.", allium) == "Salt without garlic.");
    CHECK(without_left_out("Read the label: some hold milk.", milk) == "Read the label: some hold milk.");
    // Of every note of the knowledge.
    for (const auto& [stock, words] : {std::pair{&milk, std::vector<std::string>{"cheese", "butter", "cream"}},
                                       std::pair{&allium, std::vector<std::string>{"garlic", "onion"}},
                                       std::pair{&nuts, std::vector<std::string>{"nut ", "almond", "walnut"}}})
        for (const auto& swap : knowledge().records().swaps) {
            const std::string note = without_left_out(swap.note, *stock);
            const auto add = note.find("dd ");
            for (const auto& word : words)
                if (add != std::string::npos && note.find(word, add) != std::string::npos)
                    CHECK(note.substr(0, note.find(word)).find("no ") != std::string::npos);
        }
}

}  // namespace stock_test
