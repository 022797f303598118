// What a technologist expects of a want: care first, the cause named, no limit that hangs on the question. Formulas are invented.
#include "core/contains.hpp"
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace wants_sense_test {

AdaptAnswer asked(const std::string& formula, const std::string& want, const std::string& inventory = "") {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    request.wants = {want};
    if (!inventory.empty()) request.have = expect(engine.read_inventory(inventory, "list", &read));
    return expect(engine.adapt(read, request));
}

bool met(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

const std::string careful = "plate: 8 mm\nmixing: 4 min\nmixed at: 2 C\nrest: 12 h\norder: salt first\ncook: grill\ncore: 71.1 C\n";
const std::string fat = "Fat (invented)\n1000 g pork shoulder\n1000 g pork backfat\n60 g parsley\n34 g salt\n" + careful;

TEST_CASE("wants: what can be had at one limit can be had at every easier one") {
    for (const char* want : {"loss<=28", "loss<=26", "loss<=24", "loss<=22"}) {
        CAPTURE(want);
        const auto answer = asked(fat, want);
        REQUIRE_FALSE(answer.variants.empty());
        CHECK(met(answer.variants.front()));
        CHECK(grams_in(answer.variants.front(), "pork-backfat") < 1000);  // what a fat mass loses is fat
    }
}

TEST_CASE("wants: how near it can be come to does not hang on how much is asked", "[long]") {
    std::vector<double> best;
    for (const char* want : {"loss<=8", "loss<=5", "loss<=2"}) {
        const auto answer = asked(fat, want);
        REQUIRE(wants_reached(answer) == 1);
        for (const auto& figure : answer.reach.front().figures)
            if (figure.what == "alone") best.push_back(figure.after);
    }
    REQUIRE(best.size() == 3);
    CHECK(best[1] == Approx(best[0]).epsilon(0.02));
    CHECK(best[2] == Approx(best[0]).epsilon(0.02));
}

TEST_CASE("wants: lean meat is made fat by fat, as far as is asked") {
    const auto answer = asked("Lean (invented)\n2000 g pork loin\n100 g parsley\n34 g salt\n15 g garlic\n" + careful, "fat>=24");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(met(answer.variants.front()));
}

TEST_CASE("wants: a warm mass is cooled before anything is bought to hold its juice") {
    const auto answer = asked(
        "Warm (invented)\n1500 g pork shoulder\n500 g pork backfat\n36 g salt\n20 g garlic\nmixing: 10 min\n"
        "mixed at: 16 C\norder: salt first\ncook: pan\ncore: 71.1 C\n",
        "juicier");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& v = answer.variants.front();
    CHECK(v.formula.process.mixed_at_c.value() <= 4);
    CHECK(v.formula.lines.size() <= 5);  // that, and one thing that holds water at the most
}

TEST_CASE("wants: where salt is what is lacking, that is said") {
    const std::string plain = "Plain (invented)\n1700 g pork shoulder\n300 g pork backfat\n80 g parsley\n" + careful;
    const auto named = [](const AdaptAnswer& answer) {
        REQUIRE_FALSE(answer.variants.empty());
        const auto& all = answer.variants.front().gives_back;
        return std::any_of(all.begin(), all.end(), [](const Reason& r) { return r.kind == ReasonKind::salt_would_bind; });
    };
    for (const char* want : {"firmer", "juicier", "bind>=45"}) CHECK(named(asked(plain, want)));
    CHECK_FALSE(named(asked(plain, "greener")));
    CHECK_FALSE(named(asked(plain + "36 g salt\n", "firmer")));
}

TEST_CASE("wants: a hotter powder beside a milder pod is weighed as far as is asked") {
    const auto answer = asked("Hot (invented)\n2 kg pork shoulder\n400 g pork backfat\n60 g serranos\n80 g parsley\n36 g salt\n", "hotter",
                              "cayenne 50 g\npoblanos 400 g\nparsley 2 bunches\nno serranos\n");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(met(answer.variants.front()));
}

TEST_CASE("wants: for the bite no more than half of the leaves, the sour and the fat is given up") {
    const std::string formula =
        "Verde (invented)\n2 kg pork shoulder\n400 g pork backfat\n300 g spinach, blanched\n150 g tomatillo\n60 g cider vinegar\n40 g "
        "salt\n";
    const auto answer = asked(formula + careful, "firmer");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(std::any_of(answer.variants.begin(), answer.variants.end(), [](const Variant& v) { return met(v); }));
    for (const Variant& v : answer.variants) {
        CHECK(grams_in(v, "spinach") >= 150);
        CHECK(grams_in(v, "tomatillo") >= 75);
        CHECK(grams_in(v, "cider-vinegar") >= 30);
        CHECK(grams_in(v, "pork-backfat") >= 200);
    }
}

TEST_CASE("wants: what crumbles already is not made looser") {
    const auto answer =
        asked("Sour (invented)\n1500 g pork shoulder\n400 g tomatillo\n300 g spinach, blanched\n100 g water\n30 g salt\n", "looser");
    CHECK(answer.variants.empty());
    REQUIRE_FALSE(answer.conflict.empty());
    REQUIRE_FALSE(answer.would_give.empty());
    CHECK(answer.would_give.front().kind == ReasonKind::nothing_to_taste);
}

TEST_CASE("wants: a batch that is as it should be is left alone, and nothing else is offered") {
    const auto answer = asked(fat, "heat<=2");
    REQUIRE(answer.variants.size() == 1);
    CHECK(answer.variants.front().edits.empty());
}

TEST_CASE("wants: two words are read like the one with a hyphen") {
    for (const auto& [written, word] : {std::pair{"less salt", "less-salty"}, {"Less sour", "rounder"}, {"more heat", "hotter"}}) {
        CAPTURE(written);
        const auto said = asked(fat, written), meant = asked(fat, word);
        REQUIRE(said.variants.size() == meant.variants.size());
        for (std::size_t v = 0; v < said.variants.size(); ++v) CHECK(said.variants[v].edits.size() == meant.variants[v].edits.size());
    }
}

TEST_CASE("wants: a mass without salt that is to be firmer is salted first, and the answer that leaves it unsalted stands beside") {
    const std::string bare = "Bare (invented)\n1000 g pork shoulder\n200 g pork belly\n60 g spinach, blanched, squeezed\n30 g garlic\n";
    const auto answer = asked(bare + "cook: pan\n", "firmer");
    REQUIRE(answer.variants.size() >= 2);
    const Variant& first = answer.variants.front();
    CHECK(met(first));
    CHECK(grams_in(first, "table-salt") > 0.012 * 1200);
    CHECK(grams_in(first, "spinach") == Approx(60));
    CHECK(std::any_of(first.gives_back.begin(), first.gives_back.end(),
                      [](const Reason& r) { return r.kind == ReasonKind::salt_would_bind && r.about == "salted"; }));
    for (const auto& want : first.wants) CHECK(want.want == "firmer");
    CHECK(grams_in(answer.variants[1], "table-salt") == 0);
    CHECK(answer.variants[1].rank == 2);
    // Who has salted it is not salted again.
    for (const auto& variant : asked(bare + "18 g salt\ncook: pan\n", "firmer").variants) CHECK(grams_in(variant, "table-salt") <= 18.6);
}

TEST_CASE("wants: no food is brought in for less than anybody notices") {
    const auto answer =
        asked("Sharp (invented)\n1000 g pork shoulder\n200 g pork belly\n80 g distilled vinegar\n100 g green apple\n18 g salt\n" + careful,
              "ph>=5.7");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& first = answer.variants.front();
    CHECK(met(first));
    CHECK(first.edits.size() == 1);
    CHECK(grams_in(first, "distilled-vinegar") < 20);
}

TEST_CASE("wants: what is fried in crumbs is not mixed to a paste, and no cured meat comes in for its fat") {
    const auto answer = asked(
        "Crumbs (invented)\n1000 g pork shoulder\n120 g tomatillo\n60 g cilantro\n50 g white wine vinegar\n17 g salt\n"
        "cook: loose\n",
        "juicier");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& variant : answer.variants) {
        for (const auto& edit : variant.edits) CHECK(edit.does.kind != ReasonKind::mixing);
        for (const char* cured : {"bacon", "pancetta", "salt-pork"}) CHECK(grams_in(variant, cured) == 0);
    }
}

TEST_CASE("wants: of two flours told as equals neither weighs many times the other") {
    for (const char* want : {"juicier", "firmer"})
        for (const auto& variant : asked(fat, want).variants)
            for (const auto& edit : variant.edits)
                for (const auto& other : edit.alternatives)
                    if (edit.kind == EditKind::add) {
                        CAPTURE(want, edit.with, other.with);
                        CHECK(other.grams < 4 * edit.grams_after);
                        CHECK(other.grams > edit.grams_after / 4);
                    }
}

TEST_CASE("wants: where too little of a chile is on hand, how much would do is said, and it comes in with its seeds") {
    const auto answer = asked(fat, "heat>=0.5", "serrano 5 g\nparsley plenty\nnothing else\n");
    const auto more = std::find_if(answer.would_give.begin(), answer.would_give.end(),
                                   [](const Reason& r) { return r.kind == ReasonKind::so_much_on_hand; });
    REQUIRE(more != answer.would_give.end());
    CHECK(more->foods.front() == "serrano");
    CHECK(more->figures.front().after > 5);
    const auto plenty = asked(fat, "heat>=0.5", "serrano 500 g\nparsley plenty\nnothing else\n");
    REQUIRE_FALSE(plenty.variants.empty());
    const Line* serrano = line_of(plenty.variants.front().formula, "serrano");
    REQUIRE(serrano != nullptr);
    CHECK(serrano->prepared.empty());
    CHECK(serrano->grams.mid <= 1.2 * more->figures.front().after);
}

TEST_CASE("wants: between two bounds the answer keeps off both") {
    const auto read = expect(
        engine().read_formula("Red (invented)\n2000 g pork shoulder\n40 g ancho, ground\n4 g cayenne\n34 g salt\n" + careful, "formula"));
    AdaptRequest request;
    request.wants = {"heat>=2", "heat<=3"};
    const auto answer = expect(engine().adapt(read, request));
    REQUIRE_FALSE(answer.variants.empty());
    const double heat = answer.variants.front().prediction.properties[Property::heat_mg_kg].mid;
    CHECK(heat > 2.15);
    CHECK(heat < 2.85);
    CHECK(met(answer.variants.front()));
}

}  // namespace wants_sense_test
