// Reasons as sentences, in both systems of units.
#include "narrate/quantity.hpp"
#include "standin/reason.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace reasons_test {

Reason about(ReasonKind kind, std::vector<Figure> figures, std::string role = {}) {
    Reason reason;
    reason.kind = kind;
    reason.role = std::move(role);
    reason.figures = std::move(figures);
    return reason;
}

TEST_CASE("a reason in brief has the words of a bench, in full the numbers behind it", "[reason]") {
    auto chard = about(ReasonKind::stands_in, {{"green", 213.0, 219.0, "mg chlorophyll"}, {"closeness", {}, 0.88, ""}}, "green");
    chard.note = "Earthier, a little saltier; strip the ribs.";
    CHECK(in_brief(chard) == "brings as much green. Earthier, a little saltier; strip the ribs.");
    CHECK(in_full(chard) ==
          "brings as much green; green 213 -> 219 mg chlorophyll; closeness 0.88. Earthier, a little saltier; strip the ribs.");
    const auto half = about(ReasonKind::stands_in, {{"heat", 10.0, 5.2, "mg capsaicinoids"}}, "heat");
    CHECK(in_brief(half) == "brings 50 % of the heat");
    CHECK(in_brief(about(ReasonKind::less_acid, {{"pH", 5.03, 5.44, ""}})) == "less acid lets the meat bind");
    CHECK(in_full(about(ReasonKind::less_acid, {{"pH", 5.03, 5.44, ""}})) == "less acid lets the meat bind; pH 5.03 -> 5.44");
}

TEST_CASE("lean and fat moved for the bite are told for the bite", "[reason]") {
    const std::vector<Figure> leaner{{"fat", 20.0, 15.0, "% of batch"}};
    CHECK(in_brief(about(ReasonKind::fat, leaner)) == "makes it leaner");
    CHECK(in_brief(about(ReasonKind::fat, leaner, "firmness")) == "lean sets firm, fat stays soft");
}

TEST_CASE("a want of one step that is met a hair before it is noticed", "[reason]") {
    const auto told = [](double differences) { return in_brief(about(ReasonKind::table, {{"salt", {}, differences, ""}})); };
    CHECK(told(-0.97) == "noticeably less salty.");
    CHECK(told(-0.7) == "a little less salty.");
    CHECK(told(-2.4) == "clearly less salty.");
}

TEST_CASE("an effect that is nil is not told as a change", "[reason]") {
    CHECK(in_full(about(ReasonKind::order, {{"bind factor", 1.0, 1.0, ""}})).find("->") == std::string::npos);
    CHECK(in_brief(about(ReasonKind::sourness, {{"sourness", 12.8, 12.8, "mmol/kg"}})) == "keeps it as sharp as it was");
    CHECK(in_brief(about(ReasonKind::sourness, {{"sourness", 12.8, 20.0, "mmol/kg"}})) == "makes it sharper");
    CHECK(in_brief(about(ReasonKind::sourness, {{"sourness", 12.8, 2.0, "mmol/kg"}})) == "makes it less sharp");
    CHECK(in_brief(about(ReasonKind::salt, {{"salt", 1.70, 1.71, "% of meat"}})) == "keeps salt 1.71 % of meat");
    CHECK(in_brief(about(ReasonKind::salt, {{"salt", 1.70, 1.20, "% of meat"}})) == "salt 1.70 -> 1.20 % of meat");
}

TEST_CASE("weights and temperatures of a reason follow the maker's units", "[reason]") {
    const auto short_of = about(ReasonKind::not_there, {{"to be had", {}, 90, "g"}});
    CHECK(in_brief(short_of) == "only 90 g to be had");
    CHECK(in_brief(short_of, Units::us) == "only 3.2 oz to be had");
    CHECK(in_brief(short_of, Units::both) == "only 90 g (3.2 oz) to be had");
    CHECK(in_brief(about(ReasonKind::not_there, {{"to be had", {}, 0, "g"}})) == "none on hand, and nothing there stands in for it");
    CHECK(temperature_in(4, Units::us) == "39 F");
    CHECK(moves({"rest", 10.0, 2.0, "C"}, Units::both) == "rest 10 C (50 F) -> 2 C (36 F)");
}

TEST_CASE("every kind of reason has a word of its own and says something", "[reason]") {
    std::vector<std::string> words;
    for (int k = 0; k <= static_cast<int>(ReasonKind::set_aside); ++k) {
        Reason reason;
        reason.kind = static_cast<ReasonKind>(k);
        reason.role = "green";
        if (reason.kind > ReasonKind::lean_comes_along) {  // these tell facts and have nothing to say without any
            reason.about = "firmer";
            reason.note = "Keep it cold.";
            reason.foods = {"spinach", "chard"};
            reason.figures = {{"log reductions", 1.0, 5.0, ""}, {"minutes", {}, 20, "min"}, {"rest", {}, 12, "h"}};
        }
        CHECK_FALSE(in_brief(reason).empty());
        CHECK_FALSE(in_full(reason).empty());
        for (const auto& other : words) CHECK(other != word(reason.kind));
        words.emplace_back(word(reason.kind));
    }
}

}  // namespace reasons_test
