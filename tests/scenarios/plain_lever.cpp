// What a technologist does first: the lever that is there, no food that works against what was asked, and no "cannot" that was not shown.
// Formulas are invented.
#include <algorithm>

#include "standin/narrate.hpp"
#include "support/catch.hpp"
#include "support/scenario.hpp"

using namespace standin;
using namespace scenario;

namespace plain_lever_test {

AdaptAnswer asked(const std::string& formula, const std::vector<std::string>& wants, double sure = 0.5, const std::string& list = "",
                  const std::vector<std::string>& keep = {}) {
    static const Engine engine = expect(Engine::open({}));
    const auto read = expect(engine.read_formula(formula, "formula"));
    AdaptRequest request;
    request.wants = wants;
    request.sure = sure;
    request.keep = keep;
    if (!list.empty()) request.have = expect(engine.read_inventory(list, "list", &read));
    return expect(engine.adapt(read, request));
}

const Variant& front_of(const AdaptAnswer& answer) {
    REQUIRE_FALSE(answer.variants.empty());
    return answer.variants.front();
}

bool meets_all(const Variant& v) {
    return std::all_of(v.wants.begin(), v.wants.end(), [](const WantResult& want) { return want.met; });
}

double chance_of(const Variant& v) {
    double least = 1;
    for (const auto& want : v.wants) least = std::min(least, want.chance);
    return least;
}

bool prepared(const Variant& v, const std::string& food, const std::string& step) {
    const Line* line = line_of(v.formula, food);
    return line && std::any_of(line->prepared.begin(), line->prepared.end(), [&](const Prepared& p) { return p.preparation == step; });
}

bool brings(const Edit& edit) { return edit.kind == EditKind::add || edit.kind == EditKind::replace || edit.kind == EditKind::split; }

bool brings_food(const Variant& v) { return std::any_of(v.edits.begin(), v.edits.end(), brings); }

bool tells(const Variant& v, ReasonKind kind, const std::string& role = "") {
    return std::any_of(v.gives_back.begin(), v.gives_back.end(),
                       [&](const Reason& reason) { return reason.kind == kind && (role.empty() || reason.role == role); });
}

const std::string well_made = "plate: 6 mm\nmixing: 3 min\nmixed at: 3 C\nrest: 12 h\norder: salt first\ncook: grill\ncore: 73.9 C\n";

const std::string thigh =
    "Ilse's chicken thigh (invented)\n1800 g chicken thigh\n150 g chicken skin\n120 g basil, chopped\n80 g jalapeño\n50 g lime juice\n"
    "40 g fish sauce\n30 g ginger\n26 g salt\n3 g white pepper\n" +
    well_made;
const std::string belly =
    "Belly barn (invented)\n1600 g pork shoulder\n600 g pork backfat\n200 g parsley\n60 g cider vinegar\n38 g salt\n" + well_made;
const std::string lamb =
    "Tarek's lamb (invented)\n1600 g lamb shoulder\n250 g lamb fat\n90 g mint, chopped\n140 g feta\n70 g lemon juice\n45 g red jalapeño\n"
    "20 g garlic\n22 g salt\n8 g cumin\n6 g cayenne\nplate: 8 mm\nmixing: 3 min\nmixed at: 4 C\norder: all together\ncook: grill\n"
    "core: 71.1 C\n";
const std::string fish =
    "Bjarne's fish link (invented)\n1200 g cod\n300 g salmon\n80 g breadcrumbs\n60 g egg white\n80 g cream\n40 g dill, chopped\n"
    "30 g lemon juice\n27 g salt\n2 g white pepper\nplate: 5 mm\nmixing: 2 min\nmixed at: 3 C\norder: salt first\ncook: pan\ncore: 62.8 "
    "C\n";
const std::string herbs =
    "Marta's herb link (invented)\n2000 g pork shoulder\n300 g pork backfat\n250 g flat-leaf parsley, pureed\n150 g cilantro, pureed\n"
    "60 g serrano\n60 g cider vinegar\n50 g olive oil\n25 g garlic\n38 g salt\n6 g coriander seed\nplate: 8 mm\nmixing: 2 min\n"
    "mixed at: 7 C\nrest: 12 h\norder: all together\ncook: pan\ncore: 71.1 C\n";
const std::string wet =
    "Chayo's wet green (invented)\n1500 g pork shoulder\n220 g pork backfat\n380 g tomatillo, pureed\n200 g cilantro, pureed\n"
    "150 g poblano, roasted and peeled\n50 g lime juice\n50 g serrano\n20 g garlic\n34 g salt\n4 g cumin\nplate: 10 mm\nmixing: 2 min\n"
    "mixed at: 6 C\nrest: 12 h\norder: all together\ncook: pan\ncore: 71.1 C\n";

TEST_CASE("plain lever: a number of firmness is met with a leaner cut of the same animal before it is said not to be had") {
    for (const char* want : {"firmness>=43", "firmness>=45"}) {
        CAPTURE(want);
        const auto answer = asked(thigh, {want});
        CHECK(answer.conflict.empty());
        for (const auto& v : answer.variants) {
            CHECK(meets_all(v));
            for (const char* other : {"quail", "guinea-fowl", "pheasant", "chicken-liver"}) CHECK(grams_in(v, other) == 0);
            // The skin goes first: nobody takes the skin off the thigh and leaves the skin in.
            CHECK(grams_in(v, "chicken-skin") < 150);
        }
    }
}

TEST_CASE("plain lever: for a word about the bite nobody changes the meat, and one salmon is not another") {
    for (const auto& v : asked(fish, {"firmer", "greener"}).variants)
        for (const auto& edit : v.edits) CHECK_FALSE((brings(edit) && (edit.line == "cod" || edit.line == "salmon")));
    for (const auto& v : asked(belly, {"firmer"}).variants) CHECK(grams_in(v, "pork-shoulder") >= 1500);
}

TEST_CASE("plain lever: the maker's own cut on the list opens no other") {
    for (const char* list : {"pork shoulder 4 kg", "pork shoulder 4 kg\npork backfat 1 kg"}) {
        CAPTURE(list);
        for (const auto& v : asked(belly, {"firmer"}, 0.5, list).variants)
            for (const char* other : {"pork-loin", "pork-leg", "pork-tenderloin"}) CHECK(grams_in(v, other) == 0);
    }
}

TEST_CASE("plain lever: what is told as the nearest is what the first answer shows") {
    for (const auto& [formula, want] : {std::pair(thigh, "firmness>=95"), std::pair(lamb, "ph>=6.2"), std::pair(wet, "bind>=90")}) {
        CAPTURE(want);
        const auto answer = asked(formula, {want});
        REQUIRE_FALSE(answer.reach.empty());
        const double shown = front_of(answer).wants.front().reason.figures.front().after;
        const auto& figures = answer.reach.front().figures;
        const auto nearest = std::find_if(figures.begin(), figures.end(), [](const Figure& f) { return f.what == "nearest"; });
        REQUIRE(nearest != figures.end());
        CHECK(nearest->after == Approx(shown));
    }
}

TEST_CASE("plain lever: for a higher pH the lemon goes, then the feta, and no acid comes in") {
    for (const char* want : {"ph>=5.3", "ph>=5.4", "ph>=5.45", "ph>=5.6"}) {
        CAPTURE(want);
        const auto answer = asked(lamb, {want});
        CHECK(meets_all(front_of(answer)));
        for (const auto& v : answer.variants) CHECK_FALSE(brings_food(v));
        if (std::string(want) != "ph>=5.6") CHECK(grams_in(front_of(answer), "feta") == Approx(140));
        else CHECK(grams_in(front_of(answer), "feta") < 140);
    }
    const std::string yoghurt =
        "Curd (invented)\n2000 g goat\n300 g lamb fat\n250 g greek yoghurt\n40 g lemon juice\n36 g salt\n10 g cumin\n" + well_made;
    for (const auto& v : asked(yoghurt, {"ph>=5.7"}).variants)
        for (const auto& edit : v.edits) CHECK(edit.kind != EditKind::add);
}

TEST_CASE("plain lever: who wants it leaner is given lean for fat, and no cheese beside the cheese") {
    for (const auto& v : asked(lamb, {"leaner"}).variants) {
        CHECK(grams_in(v, "ricotta") == 0);
        CHECK(grams_in(v, "lamb-fat") < 250);
        CHECK(grams_in(v, "feta") <= 140);
    }
}

TEST_CASE("plain lever: of oil there is just less for who wants it leaner, and no back fat for it") {
    for (const auto& v :
         asked("Rabbit and oil (invented)\n1500 g rabbit\n200 g bacon\n60 g olive oil\n100 g leek\n24 g salt\n" + well_made, {"leaner"})
             .variants)
        for (const auto& edit : v.edits) CHECK_FALSE((brings(edit) && edit.line == "olive-oil"));
}

TEST_CASE("plain lever: what goes part of the way is told by what was asked for") {
    const auto answer = asked(wet, {"firmer"});
    REQUIRE(tells(front_of(answer), ReasonKind::part_way));
    for (const auto& edit : front_of(answer).edits)
        if (edit.line == "pork-backfat") CHECK(edit.reason.role == "firmness");
}

TEST_CASE("plain lever: a richer fish link keeps its fish, and gives away nothing that is fat") {
    for (const std::vector<std::string>& keep : {std::vector<std::string>{}, {"cod"}}) {
        const auto answer = asked(fish, {"richer"}, 0.5, "", keep);
        CHECK(meets_all(front_of(answer)));
        for (const auto& v : answer.variants) {
            for (const char* lean : {"snapper", "tilapia", "sea-bass", "coconut-oil", "ghee"}) CHECK(grams_in(v, lean) == 0);
            CHECK(grams_in(v, "salmon") >= 300);
        }
    }
}

TEST_CASE("plain lever: oil out of another bottle is no other idea") {
    const auto answer = asked(fish, {"richer"});
    std::size_t poured = 0;
    for (const auto& v : answer.variants)
        poured += std::any_of(v.edits.begin(), v.edits.end(),
                              [](const Edit& edit) { return edit.kind == EditKind::add && edit.with.find("-oil") != std::string::npos; });
    CHECK(poured <= 1);
}

TEST_CASE("plain lever: the oil that is there goes up before half of the turkey is another cut") {
    const auto answer = asked(
        "Noor's turkey (invented)\n2000 g turkey breast, skinless\n80 g sunflower oil\n180 g apple\n60 g onion\n34 g salt\n14 g sage, "
        "fresh\n" +
            well_made,
        {"fat>=8"});
    CHECK(grams_in(front_of(answer), "sunflower-oil") > 120);
    CHECK_FALSE(brings_food(front_of(answer)));
}

TEST_CASE("plain lever: raw parsley by the armful is blanched and squeezed, a bunch of cilantro is not") {
    for (const auto& v : asked(herbs, {"firmer"}).variants) {
        CHECK(prepared(v, "parsley", "squeezed"));
        CHECK_FALSE(prepared(v, "cilantro", "blanched"));
    }
}

TEST_CASE("plain lever: where all of a firmer bite is another sausage, what goes part of the way stands first") {
    std::string sour = herbs;
    sour.replace(sour.find("60 g cider vinegar"), 2, "90");
    const auto answer = asked(sour, {"firmer"});
    CHECK(tells(front_of(answer), ReasonKind::part_way));
    CHECK(front_of(answer).nearness <= Nearness::differs);
    REQUIRE(answer.variants.size() > 1);
    CHECK(meets_all(answer.variants[1]));
}

TEST_CASE("plain lever: who asks for more certainty has no worse chance") {
    for (const auto& [formula, want] : {std::pair(herbs, "firmer"), std::pair(wet, "bind>=40"), std::pair(thigh, "firmness>=45")}) {
        CAPTURE(want);
        double last = 0;
        for (const double sure : {0.5, 0.7, 0.9}) {
            CAPTURE(sure);
            const auto answer = asked(formula, {want}, sure);
            double best = 0;
            for (const auto& v : answer.variants) best = std::max(best, chance_of(v));
            CHECK(best >= last - 0.03);
            last = best;
        }
    }
}

TEST_CASE("plain lever: egg is not taken out of what is to set firmer") {
    for (const auto& v : asked(fish, {"firmer"}).variants) CHECK(grams_in(v, "egg-white") >= 60);
    const std::string eggs =
        "Egg row (invented)\n1500 g pork shoulder\n300 g pork backfat\n150 g egg\n200 g spinach\n30 g salt\n" + well_made;
    for (const auto& v : asked(eggs, {"firmer"}).variants) CHECK(grams_in(v, "egg") >= 150);
}

TEST_CASE("plain lever: an answer with more acid is not told that acid comes back") {
    const auto answer = asked(wet, {"sourer"});
    const Variant& v = front_of(answer);
    REQUIRE(meets_all(v));
    CHECK(tells(v, ReasonKind::comes_back_as_aroma, "more"));
    CHECK(tells(v, ReasonKind::comes_back_outside, "more"));
    for (const auto& reason : v.gives_back) {
        const std::string says = in_full(reason);
        CHECK(says.find("comes back") == std::string::npos);
        CHECK(says.find("it comes to that with") == std::string::npos);
    }
    CHECK(v.wants.front().says.find("mmol/kg") != std::string::npos);
    for (const auto& met : asked(wet, {"bind>=25"}).variants)
        if (meets_all(met)) CHECK_FALSE(tells(met, ReasonKind::acid_to_hold));
}

TEST_CASE("plain lever: juicier from the pan is said of what loses no more in it") {
    const std::string turkey =
        "Noor's turkey (invented)\n2000 g turkey breast, skinless\n80 g sunflower oil\n180 g apple\n60 g onion\n34 g salt\n"
        "14 g sage, fresh\n5 g black pepper\nplate: 6 mm\nmixing: 2 min\nmixed at: 4 C\nrest: 6 h\norder: salt first\ncook: pan\n"
        "core: 73.9 C\n";
    const auto answer = asked(turkey, {"juicier"});
    for (const auto& v : answer.variants) {
        const double lost = v.prediction.properties[Property::cook_loss_pct].mid - answer.base.properties[Property::cook_loss_pct].mid;
        if (lost > 0.6) CHECK(v.table.find("juicier from the pan") == std::string::npos);
    }
}

}  // namespace plain_lever_test
