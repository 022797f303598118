// What a maker knows of a lot, told on a line: read, refused where it cannot be, written back, obeyed by the models.
#include "formula/amounts/line_facts.hpp"

#include <algorithm>

#include "evaluate/evaluator.hpp"
#include "formula/amounts/written_preparation.hpp"
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "knowledge/load.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace line_facts_test {

const Knowledge& known() {
    static const Knowledge all = embedded_knowledge();
    return all;
}

Line good(const std::string& text) {
    const auto read = read_line(text, Origin("f", {1, 1}), known());
    INFO(text);
    if (!read) FAIL(read.error().message);
    return read->line;
}

std::string refused(const std::string& text) {
    const auto read = read_line(text, Origin("f", {1, 1}), known());
    INFO(text);
    REQUIRE_FALSE(read);
    return read.error().message;
}

void near(const std::optional<Band>& band, double low, double mid, double high) {
    REQUIRE(band);
    CHECK(band->low == Approx(low).epsilon(0.01));
    CHECK(band->mid == Approx(mid).epsilon(0.01));
    CHECK(band->high == Approx(high).epsilon(0.01));
}

TEST_CASE("a line tells the pH of its food", "[facts]") {
    for (const auto* text : {"1 kg pork shoulder, pH 5.6", "1 kg pork shoulder (pH 5.6)", "pork shoulder, 1 kg, measured pH 5,6",
                             "1 kg pork shoulder with a pH of 5.6", "1 kg pH 5.6 pork shoulder", "1 kg pork shoulder, 5.6 pH"}) {
        INFO(text);
        near(good(text).ph, 5.52, 5.6, 5.68);
    }
    near(good("1 kg pork shoulder, pH 5.4-5.8").ph, 5.4, 5.6, 5.8);
    CHECK_FALSE(good("1 kg pork shoulder").ph);
}

TEST_CASE("a line tells the strength of a vinegar", "[facts]") {
    for (const auto* text : {"150 g white wine vinegar, 6 %", "150 g white wine vinegar (6%)", "150 g white wine vinegar, 6 % acidity",
                             "150 g white wine vinegar, 60 grain", "150 g white wine vinegar (60-grain)", "150 g 6 % white wine vinegar",
                             "white wine vinegar, 6 percent acetic acid, 150 g"}) {
        INFO(text);
        near(good(text).acid_pct, 5.82, 6, 6.24);
    }
    near(good("20 g lemon juice, 5 % acidity").acid_pct, 4.85, 5, 5.2);
    CHECK(refused("lemon juice, 5 %").find("of meat") != std::string::npos);  // by itself a share, and of what is not said
    CHECK(refused("white wine vinegar, 5 %").find("of meat") != std::string::npos);
}

TEST_CASE("a packet's own figure of its heat holds within a fifth, a pod's within its presumed water", "[facts]") {
    const auto spread = [](const Band& band) { return (band.high - band.low) / band.mid / 2; };
    const auto packet = good("2 g cayenne, 40000 SHU").heat_mg_kg, pod = good("20 g serrano, 15000 SHU").heat_mg_kg;
    REQUIRE(packet);
    REQUIRE(pod);
    CHECK(spread(*packet) < 0.21);
    CHECK(spread(*pod) > spread(*packet));
    CHECK(spread(*good("2 g cayenne, 2500 mg/kg").heat_mg_kg) < 0.21);
}

TEST_CASE("a line tells how hot its pods are", "[facts]") {
    const Band usual = known().ingredient("serrano")->capsaicinoids->band;
    near(good("4 serranos, seeded, 300 mg/kg").heat_mg_kg, 249, 300, 360);
    for (const auto* text :
         {"4 serranos, hot this year", "4 serranos (this year hot)", "4 serranos, hot", "4 serranos, this year's: hot"}) {
        INFO(text);
        const auto heat = good(text).heat_mg_kg;
        REQUIRE(heat);
        CHECK(heat->low > usual.mid);
        CHECK(heat->high < usual.high);
    }
    CHECK(good("4 serranos, very hot this year").heat_mg_kg->mid > good("4 serranos, hot this year").heat_mg_kg->mid);
    CHECK(good("4 serranos, as usual this year").heat_mg_kg->mid == usual.mid);
    CHECK(good("4 serranos, mild this year").heat_mg_kg->mid < usual.mid);
    CHECK(good("30 g hot paprika").ingredient == "hot-paprika");
    CHECK_FALSE(good("30 g hot paprika").heat_mg_kg);
}

TEST_CASE("Scoville units are of the dried pod unless a line says fresh", "[facts]") {
    const Ingredient& serrano = *known().ingredient("serrano");
    const double solids = 1 - serrano.composition.water.mid / 100, factor = known().parameter("heat.shu-factor").mid;
    const Line line = good("4 serranos, 20,000 SHU");
    REQUIRE(line.heat_mg_kg);
    CHECK(line.heat_mg_kg->mid == Approx(20000 / factor * solids).epsilon(0.01));
    REQUIRE(line.notes.size() >= 1);
    CHECK(
        std::any_of(line.notes.begin(), line.notes.end(), [](const auto& n) { return in_full(n).find("dried pod") != std::string::npos; }));
    CHECK(good("4 serranos, 8000 SHU fresh").heat_mg_kg->mid == Approx(8000 / factor).epsilon(0.01));
}

TEST_CASE("what cannot be is refused with what could", "[facts]") {
    for (const auto* text : {"1 kg pork shoulder, pH 14", "1 kg pork shoulder, pH 0", "150 g white wine vinegar, 40 % acidity",
                             "4 serranos, 1,000,000 SHU", "4 serranos, 0 mg/kg"}) {
        const std::string message = refused(text);
        INFO(message);
        CHECK(message.find("expected") != std::string::npos);
        CHECK(message.find(" to ") != std::string::npos);
    }
    CHECK(refused("20 g parsley, 300 mg/kg").find("none") != std::string::npos);
    CHECK(refused("18 g salt, pH 5").find("none") != std::string::npos);
    CHECK(refused("1 kg pork shoulder, pH 5.6, pH 5.7").find("twice") != std::string::npos);
}

TEST_CASE("facts come back from every writer as they were", "[facts]") {
    const std::string text =
        "Hedge link\n1 kg pork shoulder, 25 % fat, pH 5.6\n400 g beef chuck, pH 5.5-5.9\n60 g cider vinegar, 60 grain\n"
        "4 serranos (24 g), seeded, hot this year\n2 jalapenos, 20000 SHU\n20 g ancho, 60 mg/kg\n30 g roasted fresnos, 90 mg/kg\n18 g "
        "salt\n";
    const auto first = read_formula(text, "f", known());
    REQUIRE(first);
    for (const auto& written : {formula_text(*first, known()), formula_json(*first, known()), formula_jsonld(*first, known()),
                                formula_text(*first, known(), Amounts::grams)}) {
        INFO(written);
        const auto back = read_formula(written, "g", known());
        REQUIRE(back);
        REQUIRE(back->lines.size() == first->lines.size());
        for (std::size_t l = 0; l < first->lines.size(); ++l) {
            CHECK(back->lines[l].ingredient == first->lines[l].ingredient);
            CHECK(same_facts(back->lines[l], first->lines[l]));
        }
    }
}

TEST_CASE("a formula in JSON tells facts by keys of their own", "[facts]") {
    const auto read = read_formula(R"({"title": "x", "lines": [
        {"ingredient": "pork shoulder", "amount": "1 kg", "ph": "5.6", "fat": "25 %"},
        {"ingredient": "white wine vinegar", "amount": "60 g", "acid": "6 %"},
        {"ingredient": "serrano", "amount": "4", "prepared": ["seeded"], "heat": "300 mg/kg"}]})",
                                   "f", known());
    REQUIRE(read);
    near(read->lines[0].ph, 5.52, 5.6, 5.68);
    REQUIRE(read->lines[0].fat_pct);
    CHECK(read->lines[0].fat_pct->mid == 25);
    near(read->lines[1].acid_pct, 5.82, 6, 6.24);
    near(read->lines[2].heat_mg_kg, 249, 300, 360);
    const auto wrong =
        read_formula(R"({"title": "x", "lines": [{"ingredient": "pork shoulder", "amount": "1 kg", "ph": "14"}]})", "f", known());
    REQUIRE_FALSE(wrong);
    CHECK(wrong.error().message.find("4.8 to 7.5") != std::string::npos);
}

TEST_CASE("what a line tells of its lot is told to be reckoned with, and so is the skin that it leaves open", "[facts]") {
    const auto notes = [](const std::string& text) {
        std::string all;
        for (const auto& note : in_full(good(text).notes)) all += note + "\n";
        return all;
    };
    CHECK(notes("1 kg pork shoulder, pH 5.6") == "pork shoulder: reckoned with pH 5.6, as the line says\n");
    CHECK(notes("60 g white wine vinegar, 6 %").find("reckoned with 6 % acidity") != std::string::npos);
    CHECK(notes("80 g serrano, 300 mg/kg").find("reckoned with 300 mg/kg") != std::string::npos);
    CHECK(notes("2 kg chicken thigh").find("% fat; write \"skinless\" where it is without") != std::string::npos);
    for (const auto* said :
         {"2 kg skinless chicken thigh", "2 kg skin-on chicken thigh", "2 kg chicken breast", "2 kg chicken thigh, 9 % fat"})
        CHECK(notes(said).find("taken with its skin") == std::string::npos);
}

TEST_CASE("the models obey what a line tells", "[facts]") {
    const Nominal nominal(known());
    const auto unit = [&](const std::string& text) { return nominal.unit(good(text)); };
    const auto strong = unit("100 g white wine vinegar, 8 %"), usual = unit("100 g white wine vinegar, 4 %");
    CHECK(strong[Amount::titratable] == Approx(2 * usual[Amount::titratable]));
    CHECK(unit("100 g serrano, 300 mg/kg")[Amount::capsaicinoids] == Approx(0.3));
    CHECK(unit("100 g roasted serranos, 300 mg/kg")[Amount::capsaicinoids] == Approx(0.3));
    CHECK(unit("1 kg pork shoulder, pH 5.5")[Amount::meat_protons] > unit("1 kg pork shoulder, pH 6.2")[Amount::meat_protons]);
}

}  // namespace line_facts_test
