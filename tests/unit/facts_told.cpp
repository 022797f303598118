// What the engine finds is a fact, and its words are made of it in the maker's units: steps of a sheet, how lines and lists were read, what
// was left out and why.
#include <algorithm>

#include "core/written_quantity.hpp"
#include "formula/line/line_text.hpp"
#include "narrate/quantity.hpp"
#include "safety/promises.hpp"
#include "standin/narrate.hpp"
#include "substitute/stock.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"

using namespace standin;

namespace facts_told_test {

const Engine& engine() {
    static const Engine made = opened(32);
    return made;
}

Formula read(const char* text) { return engine().read_formula(text, "test.txt").value(); }

const Reason* of_kind(const std::vector<Reason>& all, ReasonKind kind) {
    const auto found = std::find_if(all.begin(), all.end(), [&](const Reason& r) { return r.kind == kind; });
    return found == all.end() ? nullptr : &*found;
}

const SheetStep& step(const Sheet& sheet, BenchTask task) {
    const auto found = std::find_if(sheet.steps.begin(), sheet.steps.end(), [&](const SheetStep& s) { return s.task == task; });
    REQUIRE(found != sheet.steps.end());
    return *found;
}

bool in_metric(const std::string& sentence) {
    std::size_t at = 0;
    return next_quantity(sentence, at).has_value();
}

TEST_CASE("a step of a sheet is a task, and its words come from it alone", "[facts]") {
    Formula f = read(
        "Gate links, invented\n2 kg chicken thigh\n200 g spinach\n60 g sunflower seed\n30 g lime juice\n36 g salt\n"
        "1 habanero\ncook: oven\ncore: 68.3 C\nrest: 90 h\n");
    f.to_do = {"plate: for each kilo of raw mass stir 30 g lime juice with 60 g olive oil", "spinach: strip the ribs."};
    const Sheet sheet = engine().sheet(f, {}).value();
    for (const auto& one : sheet.steps) {
        SheetStep bare = one;
        bare.what = bare.how = bare.why = "";
        const SheetStep again = told_in(bare, Units::metric);
        CHECK((again.what == one.what && again.how == one.how && again.why == one.why));
        CHECK_FALSE((one.what.empty() || one.how.empty() || one.why.empty()));
        CHECK_FALSE(word(one.task).empty());
    }
    CHECK(of_kind(step(sheet, BenchTask::chill).besides, ReasonKind::own_board) != nullptr);
    CHECK(of_kind(step(sheet, BenchTask::chill).besides, ReasonKind::not_rinsed) != nullptr);
    CHECK(of_kind(step(sheet, BenchTask::blend).besides, ReasonKind::seeds_first) != nullptr);
    CHECK(step(sheet, BenchTask::blend).how.rfind("Seeds and nuts first", 0) == 0);
    const Reason* gloves = of_kind(step(sheet, BenchTask::weigh).besides, ReasonKind::gloves_for);
    REQUIRE(gloves);
    CHECK(gloves->foods == std::vector<std::string>{"habanero"});
    CHECK(step(sheet, BenchTask::cook).cook == Cook::oven);
    const Reason* too_long = of_kind(step(sheet, BenchTask::rest).besides, ReasonKind::rests_too_long);
    REQUIRE(too_long);
    CHECK(too_long->figures.front().after == 90);
    const bool asked = std::any_of(sheet.steps.begin(), sheet.steps.end(),
                                   [](const SheetStep& s) { return of_kind(s.besides, ReasonKind::asked_of_it) != nullptr; });
    CHECK(asked);
}

TEST_CASE("every step of a sheet is told in US units", "[facts][units]") {
    Formula f = read("Gate links, invented\n2 kg pork shoulder\n200 g kale, blanched 3 min\n36 g salt\ncook: poach\n");
    f.to_do = {"plate: for each kilo of raw mass stir 30 g lime juice with 60 g olive oil"};
    const Sheet sheet = told_in(engine().sheet(f, {}).value(), Units::us);
    for (const auto& one : sheet.steps) {
        CAPTURE(one.how, one.why);
        CHECK_FALSE((in_metric(one.what) || in_metric(one.how) || in_metric(one.why)));
    }
    CHECK(step(sheet, BenchTask::at_the_plate).how.find("1.06 oz lime juice") != std::string::npos);
}

TEST_CASE("how a sheet was scaled is a fact", "[facts]") {
    SheetRequest request;
    request.meat = "5 kg";
    const Sheet sheet = engine().sheet(read("Gate, invented\n2 kg pork shoulder\n36 g salt\n"), request).value();
    CHECK(sheet.scaling.kind == ReasonKind::to_meat);
    CHECK(sheet.scaling.about == "5 kg");
    CHECK(sheet.scaled == "to 5 kg of meat");
}

TEST_CASE("what a reader takes upon itself is a fact with its numbers", "[facts]") {
    const auto line = read_line("1 bunch parsley", Origin("", {1, 1}), knowledge());
    REQUIRE(line);
    REQUIRE(line->doubts.size() == 1);
    const Reason& bunch = line->doubts.front().what;
    CHECK(bunch.kind == ReasonKind::by_measure);
    CHECK(bunch.role == "bunch");
    REQUIRE(bunch.figures.front().low.has_value());
    CHECK(*bunch.figures.front().low < bunch.figures.front().after);
    CHECK(in_full(bunch, Units::us).find(" oz") != std::string::npos);
    CHECK_FALSE(in_metric(in_full(bunch, Units::us)));

    const Formula f = read("Gate, invented\n2 kg pork\n36 g salt\n300 g spinnach\n1 pint milk\n");
    const Reason* pork = of_kind(f.lines[0].notes, ReasonKind::meant_as);
    REQUIRE(pork);
    CHECK(pork->about == "pork");
    CHECK(pork->foods == std::vector<std::string>{"pork shoulder"});
    const Reason* slip = of_kind(f.lines[2].notes, ReasonKind::slip_mended);
    REQUIRE(slip);
    CHECK((slip->about == "spinnach" && slip->note == "spinach"));
    const Reason* pint = of_kind(f.lines[3].notes, ReasonKind::measure_of_country);
    REQUIRE(pint);
    CHECK((pint->figures[0].after == 473 && pint->figures[1].after == 568));
    const auto prediction = engine().predict(f).value();
    CHECK(of_kind(prediction.read_as, ReasonKind::slip_mended) != nullptr);
}

TEST_CASE("what was read from the method is told with its figures, in any unit", "[facts][units]") {
    const Formula f = read(
        "Gate, invented\n2 kg pork shoulder\n36 g salt\n\nMethod\nGrind the pork through a 10 mm plate and mix well.\n"
        "Cook to a core temperature of 71 C.\n");
    const Reason* told = of_kind(f.read_as, ReasonKind::from_method);
    REQUIRE(told);
    REQUIRE(told->figures.size() == 2);
    CHECK(told->figures[0] == Figure{"plate", {}, 10, "mm"});
    CHECK(told->figures[1] == Figure{"core", {}, 71, "C"});
    CHECK(in_full(*told) == "read from the method: plate 10 mm, core 71 C; say so if it is meant otherwise");
    CHECK(in_full(*told, Units::us) == "read from the method: plate 3/8 in, core 160 F; say so if it is meant otherwise");
}

TEST_CASE("a list of what is on hand is read as facts, and its weights turn", "[facts][units]") {
    const auto list =
        engine().read_inventory("spinach 400 g\nplenty of parsley\nno garlic\n2 cans tomatillos\nnothing else\n", "f").value();
    REQUIRE(list.read.size() == 5);
    CHECK(list.read[0].as.kind == ReasonKind::stock_weight);
    CHECK(list.read[0].as.figures.front().after == 400);
    CHECK(in_full(list.read[0].as, Units::us) == "spinach, 14.1 oz as picked or bought");
    CHECK(list.read[1].as.role == "plenty");
    CHECK(list.read[2].as.role == "none");
    CHECK(list.read[4].as.kind == ReasonKind::list_is_all);
}

TEST_CASE("why a stand-in is left out, and what a word leaves out, are facts", "[facts]") {
    Formula f = read("Gate, invented\n2 kg pork shoulder\n300 g spinach\n60 g lime juice\n36 g salt\norder: acid first\nrest: 60 h\n");
    for (const auto* of : {"spinach", "lime juice"})
        for (const auto& left : engine().swaps(f, of).value().left_out) {
            CHECK(left.kind == ReasonKind::asks_of_making);
            CHECK((left.foods.size() == 1 && !left.asks.empty()));
        }
    AdaptRequest request;
    request.without = {"soy sauce"};
    request.have = engine().read_inventory("pork shoulder 2 kg\nspinach 300 g\nlime juice 60 g\nsalt\n", "f").value();
    const auto answer = engine().adapt(f, request).value();
    REQUIRE(answer.excluded.size() == 1);
    const Reason* only = of_kind(answer.excluded.front().notes, ReasonKind::only_that_food);
    REQUIRE(only);
    CHECK(in_full(*only) == answer.excluded.front().note);
}

TEST_CASE("what a title promises and what breaks it are told apart from the words", "[facts]") {
    Formula f = formula({line("pork-shoulder", 1000), line("walnut", 50), line("table-salt", 18)});
    f.title = "Nut-free halal links";
    const auto told = broken_promises(f, knowledge());
    const auto nuts = std::find_if(told.begin(), told.end(), [](const CautionText& c) { return c.reason.role == "nut free"; });
    REQUIRE(nuts != told.end());
    CHECK(nuts->reason.kind == ReasonKind::title_broken);
    CHECK(nuts->reason.foods == std::vector<std::string>{"walnut"});
    CHECK(nuts->text.find("The title says \"nut free\"") == 0);
}

TEST_CASE("what is not known well is named by what it is of", "[facts]") {
    const auto answer = engine().why(read("Gate, invented\n2 kg pork shoulder\n300 g spinach\n36 g salt\n60 g lime juice\n"), Property::ph);
    REQUIRE(answer);
    for (const auto& unknown : answer->unknowns) {
        CHECK(is_told(unknown.reason));
        CHECK(in_full(unknown.reason) == unknown.what);
    }
    for (const auto& measure : answer->measurements) CHECK(measure.reason.kind == ReasonKind::worth_measuring);
}

TEST_CASE("a dose in grams turns into ounces, a share of a kilo does not", "[facts][units]") {
    CHECK(moves({"fat", 16.7, 12.1, "g fat"}, Units::metric) == "fat 16.7 -> 12.1 g fat");
    CHECK(moves({"fat", 16.7, 12.1, "g fat"}, Units::us) == "fat 0.59 oz -> 0.43 oz fat");
    CHECK(moves({"loose water", 4.3, 0.1, "g in 100 g"}, Units::us) == "loose water 4.30 -> 0.10 g in 100 g");
}

}  // namespace facts_told_test
