// What a formula's own lines can do is found, and what cannot be done is told with nothing that makes it worse. Formulas are invented.
#include <algorithm>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace nearer_or_told_test {

AdaptRequest asking(const std::string& want) {
    AdaptRequest request;
    request.wants = {want};
    return request;
}

bool all_met_by(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

bool all_met(const AdaptAnswer& answer) { return !answer.variants.empty() && all_met_by(answer.variants.front()); }

double moved(const Variant& v, Property p, const AdaptAnswer& answer) {
    return v.prediction.properties[p].mid - answer.base.properties[p].mid;
}

const std::string careful = "plate: 8 mm\nmixing: 3 min\nmixed at: 3 C\nrest: 12 h\norder: salt first\ncook: pan\ncore: 71.1 C\n";

TEST_CASE("nearer: a bread sausage that is to lose less is given less water or more of its rusk, never more water") {
    const std::string banger =
        "Mill lane (invented)\n1700 g pork shoulder\n450 g pork belly\n300 g rusk\n520 g water\n45 g salt\n6 g white pepper\n" + careful;
    for (const char* want : {"loss<=15", "loss<=13"}) {
        const auto answer = answer_to(banger, "", asking(want));
        CAPTURE(want);
        REQUIRE(all_met(answer));
        for (const auto& v : answer.variants) {
            CHECK(grams_in(v, "water") <= 520);
            CHECK(moved(v, Property::cook_loss_pct, answer) < 0);
        }
    }
}

TEST_CASE("nearer: less water to be used is less water, and no milk for it") {
    auto request = asking("loss<=16");
    request.most = {{"water", 400.0}};
    const auto answer = answer_to(
        "Well house (invented)\n1700 g pork shoulder\n450 g pork belly\n300 g rusk\n520 g water\n45 g salt\n" + careful, "", request);
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) {
        CHECK(v.new_allergens.empty());
        CHECK_FALSE(has_edit(v, EditKind::split, "water"));
    }
}

TEST_CASE("nearer: a mass set with egg and starch and salted high is made looser by less of those before salt") {
    const std::string ball =
        "Hard ball (invented)\n2300 g skinless chicken breast\n280 g egg white\n180 g potato starch\n56 g salt\n40 g chives\n"
        "plate: 3 mm\nmixing: 11 min\nmixed at: 1 C\nrest: 12 h\norder: salt first\ncook: pan\ncore: 74 C\n";
    const auto answer = answer_to(ball, "", asking("looser"));
    REQUIRE(all_met(answer));
    const Variant& v = answer.variants.front();
    CHECK(grams_in(v, "egg-white") < 260);
    CHECK(grams_in(v, "potato-starch") < 165);
    CHECK(grams_in(v, "table-salt") / 56 >= grams_in(v, "egg-white") / 280 - 0.08);
    CHECK(grams_in(v, "table-salt") >= 0.0155 * 2300);
}

TEST_CASE("nearer: who has so much lean and no more is given a smaller batch or the other lean of the list") {
    const std::string belly = "Fat belly (invented)\n2400 g pork belly\n150 g onion\n42 g salt\n6 g white pepper\n" + careful;
    const auto answer = answer_to(belly, "pork loin 1900 g\nchicken breast 1 kg\npork belly 3 kg\nonion 1 kg\n", asking("fat<=15"));
    REQUIRE(all_met(answer));
    CHECK(answer.conflict.empty());
    CHECK(grams_in(answer.variants.front(), "pork-loin") > 1500);
}

TEST_CASE("told: where nothing that may move brings it nearer the formula stands, and how much of the kept line would do is said") {
    const std::string sour =
        "Kept lemon (invented)\n1900 g rabbit\n450 g pork belly\n200 g lemon juice\n60 g parsley\n40 g salt\n" + careful;
    auto request = asking("ph>=5.6");
    request.keep = {"lemon juice"};
    const auto answer = answer_to(sour, "", request);
    CHECK_FALSE(answer.conflict.empty());
    for (const auto& v : answer.variants) CHECK(moved(v, Property::ph, answer) > 0);
    const auto gives = std::find_if(answer.would_give.begin(), answer.would_give.end(),
                                    [](const Reason& r) { return r.kind == ReasonKind::giving_up && r.role == "keep"; });
    REQUIRE(gives != answer.would_give.end());
    REQUIRE(gives->figures.size() == 1);
    CHECK(gives->figures.front().after > 5);
    CHECK(gives->figures.front().after < 100);
    CHECK_FALSE((answer.proved && !answer.variants.empty()));
}

TEST_CASE("told: a number of salt is of the meat as pages tell it, unless it says that it is of the batch") {
    const std::string feta =
        "Salt cellar (invented)\n2000 g lamb shoulder\n300 g feta\n250 g spinach, blanched 2 min\n42 g salt\n" + careful;
    const auto of_meat = answer_to(feta, "", asking("salt<=1.8"));
    REQUIRE(all_met(of_meat));
    CHECK(of_meat.variants.front().wants.front().reason.figures.front().unit == "% of meat");
    CHECK(of_meat.variants.front().prediction.properties[Property::salt_pct_of_meat].mid <= 1.81);
    const auto also = answer_to(feta, "", asking("salt<=1.8 % of meat")), batch = answer_to(feta, "", asking("salt<=1.4 % of the mass"));
    REQUIRE(all_met(also));
    CHECK(grams_in(also.variants.front(), "table-salt") == grams_in(of_meat.variants.front(), "table-salt"));
    REQUIRE(all_met(batch));
    CHECK(batch.variants.front().wants.front().reason.figures.front().unit == "% of batch");
}

TEST_CASE("told: what is an even chance as it stands is said to be one, and what makes it surer stands beside it") {
    const std::string oven =
        "Steer (invented)\n3000 g beef round\n100 g onion\n48 g salt\n8 g black pepper\n60 g red wine\nplate: 8 mm\nmixing: 3 min\n"
        "mixed at: 3 C\nrest: 12 h\norder: salt first\ncook: oven\ncore: 71.1 C\n";
    const auto plain = answer_to(oven, "");
    const double loss = plain.base.properties[Property::cook_loss_pct].mid;
    const auto answer = answer_to(oven, "", asking("loss<=" + std::to_string(loss + 0.5).substr(0, 4)));
    REQUIRE(answer.variants.size() == 2);
    CHECK(answer.variants[0].edits.empty());
    CHECK_FALSE(answer.variants[1].edits.empty());
    CHECK(answer.variants[1].wants.front().chance >= 0.79);
}

TEST_CASE("own first: more of the formula's own lean before another cut, and no crumb of fat is left") {
    const auto v =
        first_for("Two cuts (invented)\n1500 g pork shoulder\n1400 g pork belly\n500 g pork backfat\n150 g leek\n55 g salt\n" + careful, "",
                  asking("leaner"));
    CHECK(grams_in(v, "pork-shoulder") > 1700);
    for (const auto& line : v.formula.lines) CHECK((line.ingredient != "pork-neck" && line.ingredient != "pork-picnic"));
    const double fat = grams_in(v, "pork-backfat");
    CHECK((fat == 0 || fat > 40));
}

TEST_CASE("own first: less of the hot chile that is in it before another one") {
    const auto answer = answer_to(
        "Red door (invented)\n2400 g pork shoulder\n400 g pork backfat\n80 g habanero\n200 g red bell pepper\n50 g salt\n" + careful,
        "jalapeno 500 g\nhabanero 200 g\nred bell pepper 1 kg\n", asking("heat<=2"));
    REQUIRE(all_met(answer));
    CHECK(grams_in(answer.variants.front(), "habanero") > 0);
    CHECK(grams_in(answer.variants.front(), "habanero") < 10);
}

TEST_CASE("own first: the starch of the list before a gum, and no part of the way into a mass that sets in its acid") {
    auto request = asking("firmer");
    request.without = {"gluten", "eggs"};
    const auto answer = answer_to(
        "Cherry (invented)\n1800 g duck\n450 g duck skin\n300 g sour cherry\n90 g red wine vinegar\n42 g salt\nplate: 8 mm\nmixing: 2 "
        "min\nmixed "
        "at: 8 C\nrest: 12 h\norder: acid first\ncook: pan\ncore: 74 C\n",
        "rice flour 500 g\npotato starch 300 g\npsyllium husk 100 g\nsour cherries 400 g\nred wine vinegar 500 g\n", request);
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& v = answer.variants.front();
    CHECK(grams_in(v, "psyllium-husk") == 0);
    CHECK(
        std::none_of(v.prediction.cautions.begin(), v.prediction.cautions.end(), [](const CautionText& c) { return c.id == "acid-set"; }));
}

TEST_CASE("own first: skin of another bird on the list before oil, and the zest of the list is named to who wants it less sour") {
    const auto v = first_for("Lean bird (invented)\n2400 g turkey breast\n200 g apple\n40 g salt\n6 g black pepper\n80 g water\n" + careful,
                             "olive oil 500 g\nchicken skin 300 g\nduck fat 400 g\nturkey breast 3 kg\n", asking("richer"));
    CHECK(grams_in(v, "olive-oil") == 0);
    const auto sour =
        answer_to("Lime row (invented)\n2500 g pork shoulder\n400 g tomatillo\n160 g lime juice\n100 g cilantro\n46 g salt\n" + careful,
                  "lime zest plenty\ntomatillo 1 kg\nlime juice 500 g\ncilantro 400 g\n", asking("less sour"));
    REQUIRE_FALSE(sour.variants.empty());
    const auto& back = sour.variants.front().gives_back;
    CHECK(std::any_of(back.begin(), back.end(), [](const Reason& r) { return r.kind == ReasonKind::comes_back_as_aroma; }));
}

TEST_CASE("own first: poured wine and water go before starch is bought, and what loses less is not called drier from the pan") {
    const auto answer = answer_to(
        "Wet gate (invented)\n2000 g pork shoulder\n300 g pork backfat\n500 g raw spinach\n240 g white wine\n200 g water\n42 g salt\n" +
            careful,
        "", asking("firmer"));
    const auto whole = std::find_if(answer.variants.begin(), answer.variants.end(), all_met_by);
    REQUIRE(whole != answer.variants.end());
    const Variant& v = *whole;
    CHECK(grams_in(v, "water") < 120);
    REQUIRE(moved(v, Property::cook_loss_pct, answer) < 0);
    CHECK(v.table.find("drier from the pan") == std::string::npos);
}

}  // namespace nearer_or_told_test
