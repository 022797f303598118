// Every sentence of every answer in the maker's units: nothing in grams, degrees Celsius or millimetres is left for one who goes by US
// units, and nothing is said in Fahrenheit or ounces alone to one who does not.
#include "core/written_quantity.hpp"
#include "standin/mend.hpp"
#include "standin/narrate.hpp"
#include "standin/plan.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace told_in_test {

using Sentences = std::vector<std::string>;

const Engine& engine() {
    static const Engine built_in = [] {
        Options options;
        options.draws = 32;
        options.rules = "eu";
        return Engine::open(std::move(options)).value();
    }();
    return built_in;
}

const char* const sour =
    "Ditch test sausage, invented\n2000 g pork shoulder\n300 g spinach, blanched 2 min\n200 g tomatillo\n60 g lime juice\n"
    "100 g chicken stock\n6 g nutmeg\n36 g salt\nmixed at: 14 C\nrest: 60 h\nrest at: 8 C\ncore: 60 C\ndiameter: 90 mm\n";
const char* const plain =
    "Wall test sausage, invented\n1500 g chicken thigh\n200 g chard\n40 g garlic\n26 g salt\nrest: 12 h\ncore: 74 C\n";

Formula read(const char* text) { return engine().read_formula(text, "test.txt").value(); }

void add(Sentences& to, const Sentences& more) { to.insert(to.end(), more.begin(), more.end()); }

void add(Sentences& to, const std::vector<CautionText>& cautions) {
    for (const auto& c : cautions) to.push_back(c.text);
}

Sentences of(const Prediction& p, Units units) {
    Sentences all = in_full(p.read_as, units);
    add(all, p.cautions);
    add(all, in_full(p.notes, units));
    if (p.green_life) all.push_back(p.green_life->says);
    if (p.lethality) all.push_back(p.lethality->says);
    return all;
}

Sentences of(const AdaptAnswer& a, Units units) {
    Sentences all = of(a.base, units);
    for (const auto* reasons : {&a.conflict, &a.would_give}) add(all, in_full(*reasons, units));
    add(all, in_full(a.reach, units));
    add(all, a.on_page.cautions);
    for (const auto& p : a.presumed) all.push_back(p.says);
    if (a.scaled) all.push_back(a.scaled->says);
    for (const auto& v : a.variants) {
        all.push_back(v.table);
        add(all, of(v.prediction, units));
        add(all, v.new_cautions);
        add(all, in_full(v.gives_back, units));
        for (const auto& want : v.wants) all.push_back(want.says);
        for (const auto& edit : v.edits) {
            add(all, {edit.why, in_brief(edit.reason, units), in_full(edit.reason, units)});
            if (edit.kind == EditKind::process) all.push_back(edit.with);
        }
    }
    return all;
}

// What is left in metric, of several words' length; empty: nothing.
void check_turned(const Sentences& all) {
    CHECK_FALSE(all.empty());
    for (const auto& sentence : all) {
        std::size_t at = 0;
        INFO(sentence);
        CHECK_FALSE(next_quantity(sentence, at).has_value());
        CHECK(sentence.find('{') == std::string::npos);
    }
}

AdaptRequest request(const char* wants) {
    AdaptRequest request;
    request.wants = {wants};
    request.have = engine().read_inventory("pork shoulder 1500 g\nchard 90 g\nno spinach\nchives 40 g", "have.txt").value();
    request.top = 2;
    return request;
}

TEST_CASE("a prediction is told in US units throughout", "[units]") {
    for (const auto* text : {sour, plain}) {
        const auto prediction = engine().predict(read(text)).value();
        check_turned(of(told_in(prediction, Units::us), Units::us));
        for (const auto& sentence : of(told_in(prediction, Units::metric), Units::metric)) CHECK(sentence.find('{') == std::string::npos);
    }
}

TEST_CASE("variants, what stands in their way and what would help are told in US units throughout", "[units]") {
    for (const auto* want : {"firmer", "ph>=7.5"}) {
        const auto answer = engine().adapt(read(sour), request(want)).value();
        check_turned(of(told_in(answer, Units::us), Units::us));
    }
}

TEST_CASE("stand-ins and what they ask are told in US units throughout", "[units]") {
    const auto answer = told_in(engine().swaps(read(sour), "spinach").value(), Units::us);
    Sentences all;
    add(all, answer.cautions);
    add(all, in_full(answer.left_out, Units::us));
    for (const auto& s : answer.stand_ins) {
        all.push_back(s.note);
        add(all, s.needs);
        add(all, s.cautions);
    }
    check_turned(all);
}

TEST_CASE("what mends a mass is told in US units throughout", "[units]") {
    MendRequest asked;
    asked.tasted = {"crumbly", "too sour", "flat"};
    asked.made = "2.6 kg";
    const auto answer = told_in(mend(engine(), read(sour), asked).value(), Units::us);
    Sentences all = of(answer.base, Units::us);
    for (const auto& cause : answer.causes) add(all, {cause.says, cause.first, cause.does});
    for (const auto& word : answer.words) add(all, {word.says, word.practice});
    for (const auto* steps : {&answer.fold, &answer.plain}) add(all, *steps);
    add(all, in_full(answer.cannot, Units::us));
    add(all, answer.on_page.cautions);
    check_turned(all);
}

TEST_CASE("a plan of several sausages is told in US units throughout", "[units]") {
    PlanRequest asked;
    asked.formulas = {read(sour), read(plain)};
    asked.have = engine().read_inventory("pork shoulder 1500 g\nchicken thigh 900 g\nchard 300 g\nno spinach\n", "have.txt").value();
    const auto answer = told_in(plan(engine(), asked).value(), Units::us);
    Sentences all = in_full(answer.read_as, Units::us);
    for (const auto& sausage : answer.sausages) {
        add(all, in_full(sausage.conflict, Units::us));
        if (sausage.made_g > 0) add(all, of(sausage.prediction, Units::us));
        for (const auto& edit : sausage.edits) all.push_back(in_full(edit.reason, Units::us));
    }
    for (const auto& p : answer.presumed) all.push_back(p.says);
    add(all, answer.on_page.cautions);
    check_turned(all);
}

TEST_CASE("told in metric an answer reads as it came", "[units]") {
    const auto answer = engine().adapt(read(sour), request("firmer")).value();
    CHECK(of(told_in(answer, Units::metric), Units::metric) == of(answer, Units::metric));
}

TEST_CASE("notes on foods are told in US units", "[units]") {
    for (const auto* food : {"tapioca starch", "carrageenan", "gelatin", "coconut oil"}) {
        const auto found = told_in(engine().lookup(food), Units::us);
        for (const auto& match : found.matches) check_turned({match.note, match.storage, match.stand_in});
    }
}

}  // namespace told_in_test
