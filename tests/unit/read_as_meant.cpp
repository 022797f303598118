// What is presumed in reading, and lists in other tongues.
#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace read_as_meant_test {

const Engine& engine() {
    static const Engine made = std::move(*Engine::open({}));
    return made;
}

Formula formula(const std::string& lines) {
    INFO(lines);
    auto read = engine().read_formula("title: A\n" + lines, "f");
    if (!read) FAIL(read.error().message);
    return std::move(*read);
}

bool any(const std::vector<Reason>& told, const std::string& part) {
    const auto all = in_full(told);
    return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.find(part) != std::string::npos; });
}

TEST_CASE("a weight after a preparation is that of the prepared food") {
    for (const char* text :
         {"500 g spinach (weight after blanching and squeezing)", "500 g spinach, weighed after blanching and squeezing"}) {
        const auto read = formula(text);
        CHECK(read.lines.front().weighed_prepared);
        CHECK(read.lines.front().prepared.size() == 2);
    }
}

TEST_CASE("a share of the meat stays one on the way through other forms") {
    const auto read = formula("2 kg pork shoulder\n1 kg pork belly\nsalt, 1.7 % of meat\nblack pepper 3 g per kg of meat");
    for (const auto& text : {engine().formula_text(read), engine().formula_json(read), engine().formula_jsonld(read)}) {
        CHECK(text.find("1.7 % of meat") != std::string::npos);
        const auto back = engine().read_formula(text, "f");
        REQUIRE(back);
        CHECK(back->lines[2].grams.mid == Approx(51));
        CHECK(back->lines[3].grams.mid == Approx(9));
    }
}

TEST_CASE("fat said and lines of another tongue are told") {
    CHECK(any(formula("1 kg pork shoulder, 20 % fat").lines.front().notes, "20 % fat"));
    CHECK(any(formula("1 kg Schweinenacken, grob gewolft\n17 g Salz").read_as, "another tongue"));
    CHECK(formula("1 kg pork neck\n17 g salt").read_as.empty());
}

Line line_of(const std::string& text) { return formula("2 kg pork shoulder\n" + text).lines.back(); }

bool asked(const std::string& text) { return !engine().read_formula("title: A\n2 kg pork shoulder\n" + text, "f"); }

TEST_CASE("no figure of fat is passed over") {
    for (const char* text : {"1 kg lamb shoulder (at least 30 % fat)", "1 kg lamb shoulder (70:30)", "1 kg lamb shoulder (28-32 % fat)",
                             "1 kg d'épaule d'agneau (30 % de gras)", "1 kg lamb shoulder, minimum 30 % fat"}) {
        INFO(text);
        REQUIRE(line_of(text).fat_pct);
        CHECK(line_of(text).fat_pct->mid == Approx(30));
    }
    CHECK(asked("1 kg lamb shoulder (fat: 3 of 10 parts, 30 %)"));
}

TEST_CASE("a share that does not say of what is one of the meat, and told") {
    for (const char* text : {"salt 1.8 %", "1.8 % salt", "salt (1.8 %)", "salt 18 g/kg"}) {
        INFO(text);
        CHECK(line_of(text).grams.mid == Approx(36));
        CHECK(any(line_of(text).notes, "of meat, the usual base"));
    }
    CHECK(line_of("10 % ice of batch\nsalt 1.8 %").grams.mid == Approx(0.018 * 2000 / (1 - 0.1 - 0.018)));
    CHECK(asked("white vinegar 5 %"));  // its strength, or a share
    CHECK(asked("double cream 40 %"));
    CHECK(formula("70 % pork shoulder (7 kg)\nsalt 2 %").lines.front().grams.mid == Approx(7000));
}

TEST_CASE("a slip of the pen is mended where only one known word is near, and told") {
    CHECK(line_of("300 g spinnach").ingredient == "spinach");
    CHECK(any(line_of("300 g spinnach").notes, "taken for"));
    CHECK(line_of("3 clvoes garlic").ingredient == "garlic");
    for (const char* text : {"300 g bear", "300 g mung beans, sprouted", "30 g curing slat", "30 g nitrtie"}) {
        INFO(text);
        CHECK(asked(text));
    }
}

TEST_CASE("a word that can only describe a food is passed over, and told") {
    CHECK(any(line_of("40 g Oakville kosher salt").notes, "Oakville"));
    for (const char* text :
         {"40 g Zorbal butter", "40 ml Zorbal milk", "40 ml Zorbal juice", "40 g carrot, fermented", "40 g beans, Zorbal"}) {
        INFO(text);
        CHECK(asked(text));
    }
}

TEST_CASE("what tells only what to do is left out, and said to be") {
    const auto read = formula("2 kg pork shoulder\n36 g salt\nGrind through the coarse plate, mix 3 min.\nAlles gut vermengen");
    CHECK(read.lines.size() == 2);
    CHECK(any(read.read_as, "Grind through"));
    CHECK(asked("Mix with 20 g sugar well"));
    CHECK(asked("Season with salt and pepper"));
    CHECK(engine().read_formula("Sausage for 4 kg meat\n4 kg pork shoulder", "f")->title == "Sausage for 4 kg meat");
}

TEST_CASE("leaves by the cup are whole unless they are cut, and so much of a herb is fresh") {
    CHECK(line_of("1 cup loosely packed parsley leaves").grams.mid < 40);
    CHECK(line_of("1 cup chopped parsley").grams.mid == Approx(60));
    CHECK(line_of("20 g thyme").ingredient == "fresh-thyme");
    CHECK(line_of("300 g d'épinards, blanchis et pressés").prepared.back().preparation == "squeezed");
}

TEST_CASE("a fruit by weight may be its juice or itself") {
    CHECK_FALSE(engine().read_formula("title: A\n1 kg pork belly\n500 g oranges", "f"));
}

TEST_CASE("lists in other tongues") {
    const auto missing = [](const char* line, const std::string& id) {
        INFO(line);
        const auto stock = engine().read_inventory(line, "g");
        if (!stock) FAIL(stock.error().message);
        CHECK(std::find(stock->missing.begin(), stock->missing.end(), id) != stock->missing.end());
    };
    missing("kein Bärlauch", "wild-garlic");
    missing("keine Walnüsse", "walnut");
    missing("sin cilantro", "cilantro");
    missing("pas d'oseille", "sorrel");
    missing("niente spinaci", "spinach");
    const auto stock = engine().read_inventory("Spinat 400 g\nHaselnüsse\nviel Mangold\nsonst nichts", "g");
    REQUIRE(stock);
    CHECK(stock->items.size() == 3);
    CHECK(stock->complete == true);
}

TEST_CASE("a list takes a food by what it is like") {
    for (const char* line : {"brindleleaf, like dandelion greens, 300 g", "plenty of brindleleaf, like dandelion greens",
                             "brindleleaf, like dandelion greens"}) {
        INFO(line);
        const auto stock = engine().read_inventory(line, "g");
        REQUIRE(stock);
        REQUIRE(stock->items.size() == 1);
        CHECK(stock->items.front().ingredient == "dandelion");
        CHECK(any(stock->notes, "brindleleaf"));
    }
    const auto none = engine().read_inventory("no brindleleaf, like dandelion greens", "g");
    REQUIRE(none);
    CHECK(none->items.empty());
    CHECK(none->missing == std::vector<std::string>{"dandelion"});
    CHECK_FALSE(engine().read_inventory("hemlok, like parsley", "g"));
}

TEST_CASE("words of another tongue behind a name that English has are not passed over") {
    for (const char* text : {"200 g spinaci, lessati e ben strizzati", "200 g espinacas, hervidas y bien exprimidas"}) {
        INFO(text);
        CHECK(formula(text).lines.front().prepared.size() == 2);
    }
}

TEST_CASE("a doubtful line of a list is set aside and told, and the rest read") {
    const auto stock = engine().read_inventory(
        "kale 200 g\nleeks\ndill\nmint\nplonkweed\nzorbelkraut 200 g\nmaybe some chard\nsalt 2 % of meat\nno sorrel this week", "g");
    REQUIRE(stock);
    CHECK(stock->items.size() == 4);
    CHECK(stock->aside.size() == 4);
    CHECK(stock->missing.size() >= 1);
}

TEST_CASE("what may hurt or excludes is never set aside") {
    for (const char* line : {"hemlok 200 g", "no zorbles", "pas de zorbelles", "zorbles, may contain nuts", "zorbles (contains nuts)",
                             "rotten zorbles", "zorbles: none", "curing salt 50 g", "don't use the zorbles", "keine Zorbeln"}) {
        INFO(line);
        CHECK_FALSE(engine().read_inventory("kale 200 g\nleeks\nchard\n" + std::string(line), "g"));
    }
}

TEST_CASE("a ham is raw or cooked, so it is told which was read") {
    CHECK(any(line_of("200 g ham, diced").notes, "say which"));
    CHECK_FALSE(any(line_of("200 g cooked ham").notes, "say which"));
    CHECK(line_of("400 g fennel, diced").ingredient == "fennel-bulb");
    CHECK(line_of("1 kg back fat, cubed 5 mm").ingredient == "pork-backfat");
    CHECK(line_of("1 kg back fat, through a 4.5mm plate").ingredient == "pork-backfat");
}

}  // namespace read_as_meant_test
