// What it costs to lose a line.
#include "adapt/moves/losses.hpp"

#include "adapt/moves/named_in_title.hpp"
#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace losses_test {

Formula green() {
    Formula f = formula({line("pork-shoulder", 2000), line("table-salt", 36), line("spinach", 300, {"blanched"}), line("parsley", 60),
                         line("serrano", 40), line("dried-oregano", 3), line("white-wine-vinegar", 40)});
    f.title = "Spinach sausage";
    return f;
}

std::vector<double> losses(const std::vector<std::string>& wants = {}) {
    Advising advising(green(), wants);
    const Context context = advising.context();
    const auto stock = Stock::of(green(), {}, context);
    const SwapGraph graph(knowledge());
    return make_problem(green(), *stock, graph, advising.distance(), context).loss;
}

TEST_CASE("losses: every line that is no salt or water costs something to lose, the more the more it is the character") {
    const auto all = losses();
    CHECK(all[1] == 0);
    const double identity = knowledge().parameter("advice.loss.identity").mid;
    CHECK(all[0] > identity);  // a cut of meat that the maker chose as well
    for (std::size_t l = 2; l < all.size(); ++l) CHECK(all[l] > identity);
    CHECK(all[2] > all[3]);  // the title's spinach before the parsley
    CHECK(all[4] > all[5]);  // the only chile before a pinch of oregano
}

TEST_CASE("losses: what a want asks less of is missed less") { CHECK(losses({"milder"})[4] < losses()[4]); }

TEST_CASE("losses: the part that a want asks to be without is not missed") {
    Problem p;
    p.formula = formula({line("serrano", 50)});
    p.start = {30};
    p.missing = {true};
    p.loss = {4};
    p.spared = {0.5};  // half the heat
    CHECK(lost_square(p, {}) == Approx(0).margin(1e-12));
    p.start = {0};
    CHECK(lost_square(p, {}) == Approx(4));
    p.start = {12.5};  // half of what is not spared
    CHECK(lost_square(p, {}) == Approx(1));
}

TEST_CASE("losses: a part that is lost counts by its square, and what is made up for is not lost") {
    Problem p;
    p.formula = formula({line("spinach", 100)});
    p.start = {0};
    p.missing = {true};
    p.loss = {4};
    Move move;
    move.kind = MoveKind::stand_in;
    move.most = 200;
    move.covers = Covers{0, 0.01};
    p.moves = {move};
    CHECK(lost_square(p, {0}) == Approx(4));
    CHECK(lost_square(p, {50}) == Approx(1));
    CHECK(lost_square(p, {100}) == Approx(0).margin(1e-12));
    CHECK(lost_square(p, {150}) == Approx(0).margin(1e-12));
}

TEST_CASE("losses: the title names a food by any of its names") {
    const auto named = [](const char* title, const char* food) {
        return named_in_title(title, *knowledge().ingredient(food), knowledge());
    };
    CHECK(named("Lamb with Spinach (invented)", "spinach") == "spinach");
    CHECK(named("Green morning", "spinach").empty());
    CHECK(named("Blue cheese links", "blue-cheese") == "blue cheese");
    CHECK(named("Links with cheese", "blue-cheese") == "cheese");
    // "Verde" is the colour of a chile verde, and no name of it.
    CHECK(named("Verde from the valley", "poblano").empty());
    CHECK(named("Salsiccia fresca", "basil").empty());
}

TEST_CASE("losses: a title in one word names the food that the word for a sausage is written onto") {
    const auto named = [](const char* title, const char* food) {
        return !named_in_title(title, *knowledge().ingredient(food), knowledge()).empty();
    };
    CHECK(named("Bärlauchbratwurst", "wild-garlic"));
    CHECK(named("Knoblauchgrillwurst", "garlic"));
    CHECK(named("Feine Spinatwürstchen vom Land", "spinach"));
    CHECK(named("Fenchelworst", "fennel-bulb"));
    CHECK_FALSE(named("Spinatwiese", "spinach"));
    CHECK_FALSE(named("Bratwurst", "garlic"));
}

}  // namespace losses_test
