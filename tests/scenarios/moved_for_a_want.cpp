// What a maker moves for a word with what he has by him: the lean cut, the bunch of parsley, the fat beside a lean bird. And where a word
// cannot be had he is told so first, never handed the contrary in silence. Formulas are invented.
#include <algorithm>

#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace moved_for_a_want_test {

AdaptAnswer asked(const std::string& formula, const std::string& list, const std::string& want) {
    AdaptRequest request;
    if (!want.empty()) request.wants = {want};
    return answer_to(formula, list, std::move(request));
}

double value(const Prediction& p, Property property) { return p.properties[property].mid; }

double figure_of(const Reason& reason, const std::string& what) {
    for (const auto& figure : reason.figures)
        if (figure.what == what) return figure.after;
    return 0;
}

const std::string hot = "Hill gate (invented)\n1400 g pork shoulder\n200 g pork backfat\n90 g cilantro\n26 g salt\n30 g lime juice\n";

TEST_CASE("moved for a want: a hotter one that ends milder says so first, and how much of what would do it") {
    for (const auto& [chile, list] : {std::pair<std::string, std::string>{"45 g serrano", "poblano\n"}, {"50 g jalapeno", "garlic\n"}}) {
        CAPTURE(chile, list);
        const auto answer =
            asked(hot + chile + "\n", list + "pork shoulder\npork backfat\ncilantro\nsalt\nlime juice\nnothing else\n", "hotter");
        REQUIRE_FALSE(answer.variants.empty());
        const auto& made = answer.variants.front().prediction;
        REQUIRE(value(made, Property::heat_mg_kg) < value(answer.base, Property::heat_mg_kg));
        REQUIRE(answer.first.size() == 1);
        const Reason& first = answer.first.front();
        CHECK(first.kind == ReasonKind::goes_away);
        CHECK(first.about == "hotter");
        CHECK(in_full(first).find("less hot than your formula") != std::string::npos);
        // Beside the variant so much of the chile makes it as hot as was asked.
        const std::string name = chile.find("serrano") != std::string::npos ? "serrano" : "jalapeño";
        const double grams = figure_of(first, name);
        REQUIRE(grams > 0);
        Formula more = answer.variants.front().formula;
        Line pods;
        pods.ingredient = name == "serrano" ? "serrano" : "jalapeno";
        pods.grams = {grams, grams, grams};
        more.lines.push_back(pods);
        CHECK(value(expect(engine().predict(more)), Property::heat_mg_kg) >= 1.6 * value(answer.base, Property::heat_mg_kg));
    }
}

TEST_CASE("moved for a want: what does as it was asked says nothing first") {
    const auto answer = asked(hot + "20 g serrano\n", "", "hotter");
    CHECK(answer.first.empty());
}

TEST_CASE("moved for a want: leaner takes the lean of the list, trimmed, and tells what it is cut from") {
    const std::string formula = "Leg lane (invented)\n900 g pork shoulder\n70 g parsley\n15 g lemon juice\n17 g salt\n";
    for (const std::string cut : {"pork leg", "pork loin"}) {
        CAPTURE(cut);
        const auto answer = asked(formula, cut + "\npork shoulder\nparsley\nlemon juice\nsalt\nnothing else\n", "leaner");
        REQUIRE_FALSE(answer.variants.empty());
        const Variant& v = answer.variants.front();
        CHECK(answer.conflict.empty());
        CHECK(value(v.prediction, Property::fat_pct) <= 0.82 * value(answer.base, Property::fat_pct));
        CHECK(std::any_of(v.gives_back.begin(), v.gives_back.end(), [](const Reason& r) { return r.kind == ReasonKind::trimmed_of; }));
    }
    const auto beside = asked("Belly lane (invented)\n700 g pork shoulder\n220 g pork belly\n80 g chard\n17 g salt\n",
                              "pork leg\npork shoulder\npork belly\nchard\nsalt\nnothing else\n", "leaner");
    REQUIRE_FALSE(beside.variants.empty());
    CHECK(grams_in(beside.variants.front(), "pork-leg-lean") > 50);
    CHECK(grams_in(beside.variants.front(), "pork-shoulder") <= 700);
}

TEST_CASE("moved for a want: without a word no cut is trimmed") {
    const auto answer = asked("Plain leg (invented)\n900 g pork leg\n70 g parsley\n16 g salt\n", "pork leg\nparsley\nsalt\n", "");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(answer.variants.front().edits.empty());
}

TEST_CASE("moved for a want: greener takes a handful of the herb that is only on the list") {
    const auto answer = asked("Chive bank (invented)\n900 g chicken thigh\n25 g chives\n15 g lemon juice\n15 g salt\n",
                              "chicken thigh\nchives\nlemon juice\nsalt\nparsley\nnothing else\n", "greener");
    REQUIRE_FALSE(answer.variants.empty());
    CHECK(grams_in(answer.variants.front(), "parsley") >= 20);
    CHECK(grams_in(answer.variants.front(), "chives") >= 24);
}

TEST_CASE("moved for a want: beside a lean bird the fat of the list is put back") {
    const std::string pork = "Fat gate (invented)\n900 g pork shoulder\n70 g parsley\n17 g salt\n15 g lemon juice\n";
    for (const std::string bird : {"turkey breast", "chicken breast"}) {
        CAPTURE(bird);
        const auto answer = asked(pork, bird + "\npork backfat\nparsley\nsalt\nlemon juice\nnothing else\n", "");
        REQUIRE_FALSE(answer.variants.empty());
        const Variant& v = answer.variants.front();
        CHECK(grams_in(v, "pork-backfat") > 100);
        CHECK(value(v.prediction, Property::fat_pct) >= 0.8 * value(answer.base, Property::fat_pct));
        const auto oiled = asked(pork, bird + "\nolive oil\nparsley\nsalt\nlemon juice\nnothing else\n", "");
        REQUIRE_FALSE(oiled.variants.empty());
        CHECK(grams_in(oiled.variants.front(), "olive-oil") > 30);
    }
}

TEST_CASE("moved for a want: what is poured for its sour stays within what a loose mass takes") {
    struct Case {
        std::string line, list, want;
    };
    for (const auto& one : {Case{"220 g tomatillo", "verjuice\n", ""}, Case{"30 g cider vinegar", "verjuice\nwhite wine\n", "sharper"},
                            Case{"150 g gooseberry", "verjuice\norange juice\n", "sharper"}}) {
        CAPTURE(one.line, one.list, one.want);
        const auto answer = asked("Sour gate (invented)\n900 g pork shoulder\n50 g water\n50 g cilantro\n17 g salt\n" + one.line + "\n",
                                  one.list + "pork shoulder\ncilantro\nsalt\nwater\nnothing else\n", one.want);
        for (const auto& v : answer.variants) {
            double poured = 0;
            for (const char* sour : {"verjuice", "white-wine", "orange-juice"}) poured += grams_in(v, sour);
            CHECK(poured <= 0.07 * v.prediction.batch_g);
        }
    }
}

TEST_CASE("moved for a want: no variant is another one with a line trimmed besides") {
    const auto answer = asked("Herb bank (invented)\n900 g lamb shoulder\n25 g parsley\n12 g mint\n16 g salt\n",
                              "lamb shoulder\nparsley\nmint\nspinach\nsalt\n", "greener");
    std::size_t of_parsley = 0;
    for (const auto& v : answer.variants)
        if (has_edit(v, EditKind::raise, "parsley")) ++of_parsley;
    CHECK(of_parsley <= 1);
}

}  // namespace moved_for_a_want_test
