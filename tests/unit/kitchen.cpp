// A kitchen laid over the engine: bands narrow, medians stay where the general middle is said, safety never gives way.
#include <algorithm>

#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace kitchen_test {

const Engine& general() {
    static const Engine engine = [] {
        auto opened = Engine::open({});
        REQUIRE(opened);
        return std::move(*opened);
    }();
    return engine;
}

Engine with(const std::string& text) {
    const auto kitchen = general().read_kitchen(text, "kitchen.txt");
    INFO(text);
    if (!kitchen) FAIL(kitchen.error().message);
    auto engine = general().with_kitchen(*kitchen);
    REQUIRE(engine);
    return std::move(*engine);
}

Prediction predicted(const Engine& engine, const std::string& formula) {
    const auto read = engine.read_formula(formula, "f");
    REQUIRE(read);
    auto answer = engine.predict(*read);
    REQUIRE(answer);
    return *answer;
}

double width(const Prediction& p, Property property) { return p.properties[property].high - p.properties[property].low; }

// So much of the band is left, counted against the size of the thing where that moves too.
double left(const Prediction& before, const Prediction& after, Property property) {
    const double scale = before.properties[property].mid / after.properties[property].mid;
    return width(after, property) / width(before, property) * scale;
}

const std::string hedge =
    "Hedge link\n2 kg pork shoulder\n400 g pork back fat\n12 serranos\n60 g cider vinegar\n2 bunches parsley\n300 g chard, blanched\n36 g "
    "salt\ncook: pan\n";

TEST_CASE("kitchen facts halve the bands that they are about", "[kitchen]") {
    const Prediction before = predicted(general(), hedge);
    CHECK(left(before, predicted(with("pork shoulder: 25 % fat\npork back fat: 85 % fat\n"), hedge), Property::fat_pct) < 0.5);
    CHECK(left(before, predicted(with("batch pH: 5.4\n"), hedge), Property::ph) < 0.5);
    CHECK(left(before, predicted(with("pan loss: 30 %\n"), hedge), Property::cook_loss_pct) < 0.5);  // a loss that this mass can have
    CHECK(left(before, predicted(with("serranos this year: 200 mg/kg\n"), hedge), Property::heat_mg_kg) < 0.55);
    CHECK(left(before, predicted(with("serranos this year: hot\n"), hedge), Property::heat_mg_kg) < 0.65);
}

TEST_CASE("what is weighed in the pan and read off a colour meter is what is predicted", "[kitchen]") {
    const auto fat_run = [](const Prediction& p) {
        const auto& q = p.properties;
        return q[Property::fat_pct].mid - q[Property::cooked_fat_pct].mid * (1 - q[Property::cook_loss_pct].mid / 100);
    };
    const Prediction before = predicted(general(), hedge);
    CHECK(fat_run(predicted(with("pan fat: 9 %\n"), hedge)) == Approx(9).margin(1.2));
    CHECK(fat_run(predicted(with("pan fat: 5 %\n"), hedge)) == Approx(5).margin(1.2));
    const Prediction light = predicted(with("raw lightness: 60\ncooked lightness: 66\n"), hedge);
    CHECK(light.raw.L.mid == Approx(60).margin(1));
    CHECK(light.cooked.L.mid == Approx(66).margin(1.5));
    CHECK(light.raw.L.high - light.raw.L.low < 0.52 * (before.raw.L.high - before.raw.L.low));
    CHECK(light.cooked.L.high - light.cooked.L.low < 0.5 * (before.cooked.L.high - before.cooked.L.low));
    const Prediction weighed = predicted(with("pork shoulder: 18 % fat\npan loss: 28 %\npan fat: 7 %\n"), hedge);
    CHECK(width(weighed, Property::cooked_fat_pct) < 0.6 * width(before, Property::cooked_fat_pct));
    CHECK(width(weighed, Property::cooked_water_pct) < 0.6 * width(before, Property::cooked_water_pct));
    const std::string grilled = hedge.substr(0, hedge.find("cook:")) + "cook: grill\n";
    CHECK(predicted(with("pan fat: 3 %\n"), grilled).properties[Property::cooked_fat_pct].low ==
          Approx(predicted(general(), grilled).properties[Property::cooked_fat_pct].low));
}

TEST_CASE("what was measured is what is predicted", "[kitchen]") {
    CHECK(predicted(with("batch pH: 5.4\n"), hedge).properties[Property::ph].mid == Approx(5.4).margin(0.05));
    CHECK(predicted(with("pan loss: 22 %\n"), hedge).properties[Property::cook_loss_pct].mid == Approx(22).margin(0.7));
    CHECK(predicted(with("pan loss: 22 %\n"), hedge).nominal[Property::cook_loss_pct] == Approx(22).margin(1.5));
    const auto fat = predicted(with("pork shoulder: 25 % fat\n"), hedge), usual = predicted(general(), hedge);
    CHECK(fat.properties[Property::fat_pct].mid > usual.properties[Property::fat_pct].mid);
}

TEST_CASE("a kitchen that says the general middle moves no median beyond rounding", "[kitchen]") {
    const Prediction before = predicted(general(), hedge);
    const auto text = [](double value) { return std::to_string(value); };
    const auto lookup = [&](const char* word, const char* what) {
        const auto answer = general().lookup(word);
        for (const auto& fact : answer.matches.front().doses)
            if (fact.what == what) return fact.value.mid;
        return 0.0;
    };
    double fat = 0;
    const auto shoulder = general().lookup("pork shoulder");
    for (const auto& fact : shoulder.matches.front().composition)
        if (fact.what == "fat_g") fat = fact.value.mid;
    const auto engine = with("pork shoulder: " + text(fat) + " % fat\npork shoulder: pH " + text(lookup("pork shoulder", "ph")) +
                             "\nserranos: as usual this year\nbatch pH: " + text(before.properties[Property::ph].mid) +
                             "\npan loss: " + text(before.properties[Property::cook_loss_pct].mid) + " %\nscale: 1 g\n");
    const Prediction after = predicted(engine, hedge);
    for (const auto property : {Property::fat_pct, Property::ph, Property::heat_mg_kg, Property::bind, Property::cook_loss_pct,
                                Property::salt_pct, Property::water_pct, Property::chlorophyll_mg_kg, Property::cooked_fat_pct}) {
        INFO(info(property).key);
        const Band& was = before.properties[property];
        CHECK(after.properties[property].mid == Approx(was.mid).margin(0.06 * (was.high - was.low) + 1e-9));
    }
}

TEST_CASE("a loss in the pan tells nothing of the grill, a loss on cooking does", "[kitchen]") {
    const std::string grilled = hedge.substr(0, hedge.find("cook:")) + "cook: grill\n";
    const auto loss = [&](const Engine& engine) { return predicted(engine, grilled).properties[Property::cook_loss_pct]; };
    const Band before = loss(general());
    CHECK(loss(with("pan loss: 26 %\n")).low == Approx(before.low));
    CHECK(loss(with("cook loss: 26 %\n")).mid == Approx(26).margin(0.8));
    CHECK(loss(with("cook loss: 26 %\n")).high - loss(with("cook loss: 26 %\n")).low < 0.5 * (before.high - before.low));
}

TEST_CASE("a kitchen takes away no caution and no allergen", "[kitchen]") {
    const std::vector<std::string> kitchens{"pork shoulder: 5 % fat\npork back fat: 70 % fat\n",
                                            "serranos: very mild this year\n",
                                            "batch pH: 6.2\n",
                                            "pan loss: 8 %\n",
                                            "pan fat: 2 %\nraw lightness: 70\ncooked lightness: 80\n",
                                            "pork: pH 5.3\ncider vinegar: 2 %\n",
                                            "bunch of parsley: 20 g\nchard: 95 % usable\nscale: 5 g\n"};
    const std::vector<std::string> formulas{
        hedge, "Rich\n1 kg pork shoulder\n1 kg pork back fat\n300 g serranos\n200 g walnuts\n40 g salt\n",
        "Bird\n1 kg chicken thigh\n100 g celery leaves\n60 g white wine\n20 g mustard powder\n18 g salt\ncook: poach\ncore: 72 C\n"};
    for (const auto& formula : formulas) {
        const auto read = general().read_formula(formula, "f");
        REQUIRE(read);
        for (const auto* rules : {"", "us", "eu"}) {
            Setting setting;
            setting.rules = rules;
            const auto before = general().predict(*read, setting);
            REQUIRE(before);
            for (const auto& text : kitchens) {
                const auto engine = with(text);
                const auto after = engine.predict(*read, setting);
                REQUIRE(after);
                INFO(formula << text << rules);
                for (const auto& caution : before->cautions)
                    CHECK(std::any_of(after->cautions.begin(), after->cautions.end(), [&](const auto& c) { return c.id == caution.id; }));
                for (const auto& allergen : before->allergens)
                    CHECK(std::any_of(after->allergens.begin(), after->allergens.end(),
                                      [&](const auto& a) { return a.allergen == allergen.allergen; }));
                CHECK(after->core >= before->core);
                CHECK(after->lethality.has_value() == before->lethality.has_value());
                if (before->lethality) CHECK(after->lethality->logs == before->lethality->logs);
            }
        }
    }
}

TEST_CASE("what comes from the kitchen is told, and only where it counts", "[kitchen]") {
    const auto told = [](const Prediction& p, const std::string& words) {
        return std::any_of(p.read_as.begin(), p.read_as.end(),
                           [&](const auto& note) { return in_full(note).find(words) != std::string::npos; });
    };
    const auto engine = with("pork shoulder: 25 % fat\nbeef chuck: 20 % fat\nbunch of parsley: 60 g\npan loss: 22 %\n");
    const Prediction p = predicted(engine, hedge);
    CHECK(told(p, "kitchen.txt: this pork shoulder has 25 % fat"));
    CHECK(told(p, "kitchen.txt: a bunch of parsley weighs 60 g"));
    CHECK(told(p, "kitchen.txt: this sausage loses 22 % in the pan"));
    CHECK_FALSE(told(p, "beef"));
    CHECK(p.lines[4].weighed_g == Approx(120));
    CHECK(told(predicted(engine, "Grilled\n1 kg pork shoulder\n18 g salt\ncook: grill\n"), "not used"));
    CHECK_FALSE(told(predicted(engine, "Own\n1 kg pork shoulder, 30 % fat\n18 g salt\n"), "25 % fat"));  // the line's own word goes first
}

TEST_CASE("the sheet weighs to the step of the kitchen's scale and buys by its trim", "[kitchen]") {
    const auto read = general().read_formula("Chard link\n1003 g pork shoulder\n303 g chard\n18.3 g salt\n", "f");
    REQUIRE(read);
    const auto usual = general().sheet(*read, {}), own = with("scale: 5 g\nchard: 50 % usable\n").sheet(*read, {});
    REQUIRE(usual);
    REQUIRE(own);
    CHECK(usual->weights[0].weigh_g == 1003);
    CHECK(own->weights[0].weigh_g == 1005);
    CHECK(own->weights[2].fine);
    CHECK(own->weights[2].scale_g < 1);
}

TEST_CASE("lookup shows a kitchen's figures as the maker's own", "[kitchen]") {
    const auto answer = with("serranos: 400 mg/kg\n").lookup("serrano");
    REQUIRE(answer.matches.size() == 1);
    const auto& doses = answer.matches.front().doses;
    const auto heat = std::find_if(doses.begin(), doses.end(), [](const Fact& f) { return f.what == "capsaicinoids"; });
    REQUIRE(heat != doses.end());
    CHECK(heat->kind == "kitchen");
    CHECK(heat->value.mid == 400);
}

TEST_CASE("a food that is no record is known by what the kitchen says it is like", "[kitchen]") {
    const auto engine = with("zaltia, like dandelion greens\npork shoulder: 25 % fat\n");
    const std::string lines = "Zaltia link\n1 kg pork shoulder\n18 g salt\n";
    const Prediction own = predicted(engine, lines + "100 g zaltia\n");
    const Prediction like = predicted(with("pork shoulder: 25 % fat\n"), lines + "100 g dandelion greens\n");
    CHECK(own.lines.back().name == "zaltia");
    CHECK(own.nominal[Property::chlorophyll_mg_kg] == Approx(like.nominal[Property::chlorophyll_mg_kg]));
    CHECK(width(own, Property::chlorophyll_mg_kg) > 1.3 * width(like, Property::chlorophyll_mg_kg));
    CHECK(std::any_of(own.read_as.begin(), own.read_as.end(),
                      [](const auto& note) { return in_full(note).find("yours to check") != std::string::npos; }));
    CHECK_FALSE(general().read_formula(lines + "100 g zaltia\n", "f"));
    CHECK_FALSE(general().read_kitchen("oleandr, like oregano\n", "kitchen.txt"));
}

}  // namespace kitchen_test
