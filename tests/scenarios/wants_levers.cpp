// What a practised maker reaches for first: acid before starch, less mixing before water, the leanest meat out before the fat cut, what is
// in the formula or on the list before what is bought. Formulas are invented.
#include <algorithm>
#include <map>

#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace wants_levers_test {

AdaptAnswer asked(const std::string& formula, const std::string& want, const std::string& inventory = "") {
    AdaptRequest request;
    request.wants = {want};
    return answer_to(formula, inventory, std::move(request));
}

Variant first(const std::string& formula, const std::string& want, const std::string& inventory = "") {
    const auto answer = asked(formula, want, inventory);
    REQUIRE_FALSE(answer.variants.empty());
    return answer.variants.front();
}

bool does(const Variant& v, ReasonKind kind) {
    return std::any_of(v.edits.begin(), v.edits.end(), [&](const Edit& e) { return e.kind == EditKind::process && e.does.kind == kind; });
}

bool brings_food(const Variant& v) {
    return std::any_of(v.edits.begin(), v.edits.end(),
                       [](const Edit& e) { return e.kind == EditKind::add || e.kind == EditKind::replace || e.kind == EditKind::split; });
}

bool warns(const Prediction& p, const std::string& id) {
    return std::any_of(p.cautions.begin(), p.cautions.end(), [&](const CautionText& c) { return c.id == id; });
}

bool all_met(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& w) { return w.met; });
}

const std::string careful = "plate: 8 mm\nmixing: 3 min\nmixed at: 2 C\nrest: 12 h\norder: salt first\ncook: pan\ncore: 71.1 C\n";

TEST_CASE("wants: a sour mass that is to be firmer is given less acid, and not all of it out, before starch") {
    const std::string sour =
        "Sour lane (invented)\n2200 g pork shoulder\n250 g pork backfat\n260 g tomatillo\n110 g cider vinegar\n180 g chard, blanched "
        "2 min\n36 g salt\n12 g garlic\n";
    const auto answer = asked(sour + "order: acid first\nmixing: 2 min\nmixed at: 6 C\ncook: pan\ncore: 71.1 C\n", "firmer");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& v = answer.variants.front();
    CHECK(grams_in(v, "cider-vinegar") <= 85);
    CHECK(grams_in(v, "cider-vinegar") > 0);
    CHECK(grams_in(v, "tomatillo") > 0);
    CHECK(does(v, ReasonKind::order));
    CHECK(v.prediction.properties[Property::ph].mid >= answer.base.properties[Property::ph].mid + 0.1);
    CHECK_FALSE(warns(v.prediction, "acid-set"));
}

TEST_CASE("wants: who wants it less sharp is given less of the acid of which there is too much, and it goes in last") {
    const std::string over =
        "Lime gate (invented)\n2800 g pork shoulder\n300 g pork backfat\n200 g parsley\n280 g lime juice\n120 g cider vinegar\n54 g salt\n";
    const auto answer = asked(over + "order: acid first\nmixing: 3 min\nmixed at: 3 C\ncook: pan\ncore: 71.1 C\n", "less-sharp");
    REQUIRE_FALSE(answer.variants.empty());
    const Variant& v = answer.variants.front();
    CHECK(grams_in(v, "lime-juice") / 280 <= grams_in(v, "cider-vinegar") / 120 + 0.05);
    CHECK(grams_in(v, "lime-juice") < 210);  // 60 g to the kilo
    CHECK_FALSE(brings_food(v));             // nobody buys another fruit to have less
    CHECK(does(v, ReasonKind::order));
    CHECK_FALSE(warns(v.prediction, "acid-set"));
    // How much more must go for it to hold is told.
    CHECK(std::any_of(v.gives_back.begin(), v.gives_back.end(), [](const Reason& r) { return r.kind == ReasonKind::acid_to_hold; }));
}

TEST_CASE("wants: looser is mixed less and loses of what sets it; nothing is poured in, fattened, or bought for it") {
    const std::string tight =
        "Tight barn (invented)\n1800 g pork shoulder\n250 g pork backfat\n160 g spinach, blanched 2 min, squeezed\n2 eggs\n90 g dry "
        "breadcrumbs\n60 g water\n30 g lemon juice\n34 g salt\n12 g garlic\nplate: 6 mm\nmixing: 5 min\nmixed at: 3 C\norder: salt "
        "first\ncook: pan\ncore: 71.1 C\n";
    const auto answer = asked(tight, "looser");
    REQUIRE_FALSE(answer.variants.empty());
    for (const auto& v : answer.variants) {
        CHECK(does(v, ReasonKind::mixing));
        CHECK(does(v, ReasonKind::salt_late));
        CHECK_FALSE(brings_food(v));
        CHECK(grams_in(v, "spinach") == Approx(160));
        CHECK(grams_in(v, "water") == Approx(60));
        CHECK(grams_in(v, "pork-backfat") == Approx(250));
        CHECK(grams_in(v, "lemon-juice") == Approx(30));
        // Nobody takes out a part of an egg.
        const double eggs = grams_in(v, "egg") / 50;
        CHECK(std::abs(eggs - std::round(eggs)) < 0.01);
        for (const auto& caution : v.prediction.cautions) CHECK(caution.text.find("tacky") == std::string::npos);
    }
    CHECK(all_met(answer.variants.front()));
}

TEST_CASE("wants: thigh for breast is no drier, and skin on the list makes a lean bird juicier with nothing left out for it") {
    const auto juice = [](const std::string& lines) {
        const auto read = expect(engine().read_formula("Bird (invented)\n" + lines + "24 g salt\n80 g parsley\n" + careful, "formula"));
        return expect(engine().predict(read)).properties[Property::juice].mid;
    };
    CHECK(juice("750 g chicken breast\n750 g skinless chicken thigh\n") > juice("1500 g chicken breast\n"));
    CHECK(juice("1500 g chicken thigh\n") > juice("1500 g skinless chicken thigh\n"));
    const std::string lean =
        "Lean yard (invented)\n1600 g chicken breast\n120 g olive oil\n180 g spinach, blanched 2 min, squeezed\n35 g lemon juice\n27 g "
        "salt\n10 g garlic\norder: salt first\nmixing: 3 min\nmixed at: 3 C\ncook: pan\ncore: 74 C\n";
    const Variant v = first(lean, "juicier", "chicken skin 400 g\nchicken thighs with skin 1 kg\neverything else\n");
    CHECK(all_met(v));
    CHECK(grams_in(v, "spinach") == Approx(180));
    CHECK(grams_in(v, "lemon-juice") == Approx(35));
    CHECK(v.prediction.properties[Property::fat_pct].mid > 11);
}

TEST_CASE("wants: richer takes out the leanest meat and never the fat cut") {
    const Variant v =
        first("Stag bank (invented)\n1800 g venison\n350 g pork shoulder\n120 g parsley\n50 g hazelnuts\n38 g salt\n" + careful, "richer");
    CHECK(grams_in(v, "pork-shoulder") >= 350);
    CHECK(all_met(v));
    for (const auto& edit : v.edits)
        if (edit.line == "pork-shoulder") CHECK(edit.reason.kind != ReasonKind::fat);
}

TEST_CASE("wants: leaner takes the lean cut that is on the list before more of what is not") {
    const Variant v =
        first("Rich brook (invented)\n1800 g pork shoulder\n650 g pork backfat\n150 g parsley\n40 g salt\n12 g garlic\n" + careful,
              "leaner", "pork loin 1500 g\neverything else\n");
    CHECK(all_met(v));
    CHECK(grams_in(v, "pork-loin") > 50);
    CHECK(grams_in(v, "pork-shoulder") <= 1800);
}

TEST_CASE("wants: sharper takes more of the acid that is there, told to go in last, and buys no other") {
    const Variant v = first(
        "Round lawn (invented)\n1900 g pork shoulder\n350 g pork belly\n200 g spinach, blanched 2 min, squeezed\n22 g cider vinegar\n36 g "
        "salt\n",
        "sharper");
    CHECK(all_met(v));
    CHECK(grams_in(v, "cider-vinegar") > 30);
    CHECK_FALSE(brings_food(v));
    CHECK(does(v, ReasonKind::order));
}

TEST_CASE("wants: greener puts care before leaf, the acid last, and says plainly where it does not get green") {
    const Variant grey = first(
        "Grey lane (invented)\n2200 g pork shoulder\n300 g pork backfat\n330 g spinach, blanched 9 min\n90 g cider vinegar\n38 g "
        "salt\nplate: 8 "
        "mm\nmixing: 3 min\nmixed at: 3 C\nrest: 40 h\norder: all together\ncook: pan\ncore: 78 C\n",
        "greener");
    CHECK(does(grey, ReasonKind::short_blanch));
    CHECK(does(grey, ReasonKind::rest));
    CHECK(does(grey, ReasonKind::order));
    CHECK(does(grey, ReasonKind::core));
    CHECK(grams_in(grey, "spinach") < 400);
    const Variant red =
        first("Ewe hill (invented)\n2000 g lamb shoulder\n200 g lamb fat\n60 g mint\n40 g parsley\n34 g salt\n" + careful, "greener");
    const auto told =
        std::find_if(red.gives_back.begin(), red.gives_back.end(), [](const Reason& r) { return r.kind == ReasonKind::not_green_yet; });
    REQUIRE(told != red.gives_back.end());
    // How much leaf would, where the page then calls it green and so much is still a sausage.
    const Variant pale = first(
        "Pale bank (invented)\n2000 g pork shoulder\n200 g pork backfat\n60 g spinach, blanched 1 min, squeezed\n40 g "
        "parsley\n34 g salt\n" +
            careful,
        "greener");
    const auto so_much =
        std::find_if(pale.gives_back.begin(), pale.gives_back.end(), [](const Reason& r) { return r.kind == ReasonKind::not_green_yet; });
    REQUIRE(so_much != pale.gives_back.end());
    if (so_much->figures.empty()) return;  // no leaf that a sausage takes
    Formula green = pale.formula;
    std::erase_if(green.lines, [](const Line& line) { return line.ingredient == "spinach"; });
    Line leaf;
    leaf.ingredient = "spinach";
    const double grams = so_much->figures[0].after;
    leaf.grams = {grams, grams, grams};
    leaf.prepared = {{"blanched", 1.0}, {"squeezed", std::nullopt}};
    green.lines.push_back(std::move(leaf));
    static const Engine opened = expect(Engine::open({}));
    const std::string word = expect(opened.predict(green)).rested.word;
    CHECK((word == "green" || word == "pale green" || word == "olive"));
}

// What each edit of a line moves by itself, in the formula as it was.
double alone(const Formula& base, const Edit& edit, Property property) {
    Formula with = base;
    for (auto& line : with.lines)
        if (line.ingredient == edit.line) line.grams = {edit.grams_after, edit.grams_after, edit.grams_after};
    std::erase_if(with.lines, [](const Line& line) { return !(line.grams.mid > 0); });
    return expect(engine().predict(with)).nominal[property] - expect(engine().predict(base)).nominal[property];
}

std::optional<Property> told_of(const Reason& reason) {
    if (reason.kind == ReasonKind::sourness) return Property::sourness_mmol_kg;
    if (reason.kind == ReasonKind::heat) return Property::heat_mg_kg;
    if (reason.kind == ReasonKind::fat && reason.role.empty()) return Property::fat_pct;
    if (reason.kind == ReasonKind::green) return Property::chlorophyll_mg_kg;
    if (reason.kind != ReasonKind::serves || reason.figures.empty()) return std::nullopt;
    static const std::map<std::string, Property> named{{"bind", Property::bind},   {"firmness", Property::firmness},
                                                       {"juice", Property::juice}, {"green", Property::greenness},
                                                       {"fat", Property::fat_pct}, {"sourness", Property::sourness_mmol_kg}};
    const auto found = named.find(reason.figures.front().what);
    return found == named.end() ? std::nullopt : std::optional(found->second);
}

TEST_CASE("wants: the reason of an edit tells what it does by itself, and care stands before what is weighed") {
    const std::vector<std::string> formulas{
        "One (invented)\n1800 g venison\n300 g pork shoulder\n150 g pork backfat\n100 g parsley\n60 g red wine\n30 g cider vinegar\n38 g "
        "salt\n"
        "mixing: 2 min\nmixed at: 7 C\ncook: pan\ncore: 75 C\n",
        "Two (invented)\n2000 g pork shoulder\n300 g pork belly\n250 g spinach, blanched 4 min\n150 g tomatillo\n40 g serrano\n40 g lime "
        "juice\n"
        "40 g salt\n60 g dry breadcrumbs\n100 g water\norder: all together\nmixing: 5 min\nmixed at: 5 C\ncook: pan\ncore: 71.1 C\n"};
    std::size_t looked_at = 0, unsaid = 0;
    for (const auto& text : formulas) {
        const auto base = expect(engine().read_formula(text, "formula"));
        for (const char* want :
             {"firmer", "looser", "juicier", "richer", "leaner", "sharper", "less-sharp", "greener", "milder", "hotter"}) {
            CAPTURE(text, want);
            for (const auto& v : asked(text, want).variants) {
                bool weighed = false;
                for (const auto& edit : v.edits) {
                    weighed = weighed || edit.kind != EditKind::process;
                    CHECK_FALSE((weighed && edit.kind == EditKind::process && edit.does.kind != ReasonKind::cook_through));
                    const bool of_line = edit.kind == EditKind::raise || edit.kind == EditKind::reduce || edit.kind == EditKind::omit;
                    if (!of_line) continue;
                    unsaid += edit.why == "balances the rest" ? 1 : 0;
                    const auto property = told_of(edit.reason);
                    if (!property || edit.reason.figures.empty() || !edit.reason.figures.front().before) continue;
                    ++looked_at;
                    CAPTURE(edit.line, edit.why);
                    const double told = edit.reason.figures.front().after - *edit.reason.figures.front().before;
                    CHECK(told * alone(base, edit, *property) >= 0);
                }
            }
        }
    }
    CHECK(looked_at >= 15);
    CHECK(unsaid == 0);
}

}  // namespace wants_levers_test
