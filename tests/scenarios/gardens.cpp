// Lists of what is on hand as makers write them, over formulas of several kitchens, and what must hold of the answer. All invented.
#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "knowledge/index/edible.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/scenario.hpp"

using namespace standin;

namespace gardens_test {

const std::map<std::string, std::string>& formulas() {
    static const std::map<std::string, std::string> all{
        {"hedge",
         "Hedge green\n1500 g pork shoulder\n300 g pork backfat\n300 g spinach, blanched 2 min\n80 g parsley\n40 g serrano\n20 g garlic\n"
         "30 g lime juice\n32 g salt\n4 g black pepper\n"},
        {"verde",
         "Chorizo verde\n2000 g pork shoulder\n300 g pork backfat\n250 g poblano, roasted and peeled\n300 g tomatillo\n100 g cilantro\n"
         "150 g spinach\n30 g garlic\n40 g cider vinegar\n5 g dried oregano\n4 g cumin\n40 g salt\n"},
        {"kale",
         "Kale and fennel\n2000 g pork shoulder\n500 g pork belly\n300 g kale, blanched 3 min, squeezed\n8 g fennel seed\n24 g garlic\n"
         "60 g white wine\n3 g red pepper flakes\n6 g black pepper\n42 g salt\n"},
        {"lamb",
         "Lamb and mint\n1500 g lamb shoulder\n200 g lamb fat\n60 g mint\n60 g parsley\n80 g scallion\n30 g lemon juice\n5 g cumin\n"
         "5 g coriander seed\n6 g paprika\n28 g salt\n"},
        {"chicken",
         "Green chicken\n1500 g chicken thigh, skinless\n80 g cilantro\n30 g thai basil\n12 g thai bird chile\n30 g lemongrass\n"
         "60 g shallot\n20 g garlic\n40 g fish sauce\n25 g lime juice\n10 g salt\n"},
        {"leek",
         "Leek bangers\n1200 g pork shoulder\n300 g pork backfat\n250 g leek\n120 g breadcrumbs\n30 g parsley\n12 g fresh sage\n"
         "100 g water\n4 g mustard powder\n4 g white pepper\n1 g nutmeg\n27 g salt\n"},
        {"nettle",
         "Deer and nettle\n1000 g venison\n400 g pork backfat\n200 g nettle, blanched 3 min, squeezed\n60 g ramps\n3 g juniper berries\n"
         "60 g red wine\n12 g garlic\n4 g black pepper\n25 g salt\n"}};
    return all;
}

struct Garden {
    std::string name, formula, list;
    std::vector<std::string> gone;   // lines of the formula that are not to be had
    std::vector<std::string> given;  // of these at least one takes the place of something
};

const std::vector<Garden>& gardens() {
    static const std::vector<Garden> all{
        {"chard for spinach, the rest as ever", "hedge", "chard 500 g\nno spinach", {"spinach"}, {"chard"}},
        {"a greens row that says all",
         "hedge",
         "chard 400 g\nkale 1 bunch\nflat-leaf parsley 2 bunches\nserranos: plenty",
         {"spinach"},
         {"chard", "kale"}},
        {"jalapenos for serranos", "hedge", "spinach 500 g\nparsley 1 bunch\n6 jalapenos", {"serrano"}, {"jalapeno"}},
        {"only garlic and onions are dug", "hedge", "garlic, a braid\nonions 2 kg\nspinach 600 g", {}, {}},
        {"short of spinach as picked", "hedge", "spinach 200 g\nnettles 400 g", {}, {"nettle"}},
        {"green tomatoes, no tomatillos", "verde", "green tomatoes 800 g\nlimes 6\nno tomatillos", {"tomatillo"}, {"green-tomato"}},
        {"no coriander, parsley and mint stand", "verde", "parsley plenty\nno coriander", {"cilantro"}, {"parsley"}},
        {"anaheims in a bag", "verde", "half a bag of anaheims\nspinach 300 g\nno poblanos", {"poblano"}, {"anaheim"}},
        {"collards and a bottle of wine", "kale", "collards 600 g\na bottle of white wine\nno kale", {"kale"}, {"collard"}},
        {"cavolo nero grown", "kale", "lacinato kale 500 g\nno kale\neverything else", {"kale"}, {"lacinato-kale"}},
        {"dried mint in the cupboard", "lamb", "dried mint 20 g\nparsley 1 bunch\nno mint", {"mint"}, {"dried-mint"}},
        {"spring onions out, chives in", "lamb", "chives 2 bunches\nmint 1 bunch\nno scallions", {"scallion"}, {"chives"}},
        {"no lemongrass, lemons there", "chicken", "lemons 4\ncilantro 2 bunches\nno lemongrass", {"lemongrass"}, {}},
        {"sweet basil for thai basil", "chicken", "basil 1 big bunch\ncilantro 200 g\nno thai basil", {"thai-basil"}, {"basil"}},
        {"oats, no bread in the house", "leek", "rolled oats 500 g\nleeks 3\nno breadcrumbs", {"breadcrumb"}, {"rolled-oat"}},
        {"spring onions for leeks", "leek", "scallions 400 g\nparsley some\nno leeks", {"leek"}, {"scallion"}},
        {"dandelion and wild garlic gone over",
         "nettle",
         "dandelion 300 g\nspinach 400 g\ngarlic 1 head\nno nettles, no ramps",
         {"nettle", "ramps-leaf"},
         {"spinach", "dandelion"}},
        {"a cold frame in March", "nettle", "chard 300 g\ncornsalad 100 g\nnettles a basket\nnothing else", {"ramps-leaf"}, {}}};
    return all;
}

double grams_of(const Formula& f, const std::string& id) {
    double sum = 0;
    for (const auto& l : f.lines)
        if (l.ingredient == id) sum += l.grams.mid;
    return sum;
}

struct Answered {
    Garden garden;
    Formula formula;
    Inventory have;
    AdaptAnswer answer;
};

Engine& engine() {
    static Engine opened = [] {
        Options options;
        options.draws = 64;
        return scenario::expect(Engine::open(options));
    }();
    return opened;
}

const std::vector<Answered>& answers() {
    static const auto all = [] {
        std::vector<Answered> done;
        for (const auto& garden : gardens()) {
            Formula formula = scenario::expect(engine().read_formula(formulas().at(garden.formula), garden.formula));
            AdaptRequest request;
            request.have = scenario::expect(engine().read_inventory(garden.list, garden.name, &formula));
            AdaptAnswer answer = scenario::expect(engine().adapt(formula, request));
            done.push_back({garden, std::move(formula), *request.have, std::move(answer)});
        }
        return done;
    }();
    return all;
}

const Ingredient& food(const std::string& id) { return *knowledge().ingredient(id); }

// Presumed or said to be missing.
bool is_gone(const Answered& a, const std::string& id) {
    const auto& said = a.have.missing;
    return std::find(said.begin(), said.end(), id) != said.end() ||
           std::any_of(a.answer.presumed.begin(), a.answer.presumed.end(),
                       [&](const auto& p) { return p.ingredient == id && !p.on_hand; }) ||
           std::find(a.garden.gone.begin(), a.garden.gone.end(), id) != a.garden.gone.end();
}

TEST_CASE("gardens: every list has an answer, without what is gone and with what is given") {
    for (const auto& a : answers()) {
        CAPTURE(a.garden.name);
        REQUIRE_FALSE(a.answer.variants.empty());
        CHECK(a.answer.conflict.empty());
        const Formula& first = a.answer.variants.front().formula;
        for (const auto& id : a.garden.gone) {
            CAPTURE(id);
            CHECK(grams_of(first, id) == 0);
        }
        CHECK((a.garden.given.empty() ||
               std::any_of(a.garden.given.begin(), a.garden.given.end(), [&](const auto& id) { return grams_of(first, id) > 0; })));
    }
}

TEST_CASE("gardens: what keeps in a kitchen is not taken away, nor meat, nor salt") {
    for (const auto& a : answers())
        for (const auto& line : a.formula.lines) {
            if (is_gone(a, line.ingredient)) continue;
            CAPTURE(a.garden.name, line.ingredient);
            CHECK(grams_of(a.answer.variants.front().formula, line.ingredient) > 0);
        }
}

TEST_CASE("gardens: what is presumed and matters stands first, with the line to add") {
    for (const auto& a : answers()) {
        CAPTURE(a.garden.name);
        bool still = true;  // those that matter come first
        for (const auto& one : a.answer.presumed) {
            CHECK((still || !one.matters));
            still = one.matters;
            CHECK_FALSE(one.says.empty());
            if (one.matters) CHECK_FALSE(one.add.empty());
            if (!one.ingredient.empty() && !one.on_hand) CHECK(one.matters);
        }
    }
}

TEST_CASE("gardens: no sheet asks for more than there is") {
    std::size_t asked = 0;
    for (const auto& a : answers())
        for (const auto& v : a.answer.variants) {
            const Sheet sheet = scenario::expect(engine().sheet(v.formula, {}));
            for (const auto& bought : sheet.buy)
                for (const auto& item : a.have.items) {
                    if (item.ingredient != bought.ingredient || !item.grams) continue;
                    CAPTURE(a.garden.name, bought.ingredient);
                    // A bunch may be so much; herbs that were weighed are weighed for the formula as for the list.
                    const bool as_used = !item.at_most && weighed_as_used(*knowledge().ingredient(item.ingredient));
                    CHECK((as_used ? bought.need_g : bought.bought_g) <= item.at_most.value_or(*item.grams) * (1 + 1e-9));
                    ++asked;
                }
        }
    CHECK(asked > 15);
}

TEST_CASE("gardens: nothing is thrown out beside a listed stand-in that is not used") {
    for (const auto& a : answers()) {
        const Variant& first = a.answer.variants.front();
        for (const auto& line : a.formula.lines) {
            if (grams_of(first.formula, line.ingredient) > 0) continue;
            const bool replaced = std::any_of(first.edits.begin(), first.edits.end(), [&](const Edit& e) {
                return e.line == line.ingredient && !e.with.empty() && e.kind != EditKind::process;
            });
            if (replaced) continue;
            for (const auto& swap : knowledge().records().swaps) {
                constexpr double fair = 0.6;
                const bool listed =
                    std::any_of(a.have.items.begin(), a.have.items.end(), [&](const auto& i) { return i.ingredient == swap.to; });
                if (swap.from != line.ingredient || !listed || swap.closeness < fair || swap.role != food(swap.from).roles.front())
                    continue;
                CAPTURE(a.garden.name, line.ingredient, swap.to);
                CHECK(grams_of(first.formula, swap.to) > grams_of(a.formula, swap.to));
            }
        }
    }
}

TEST_CASE("gardens: salt to the kilo of meat stays, unless salty food comes in") {
    for (const auto& a : answers()) {
        constexpr double most = 0.03, salty = 1;  // share; g in 100 g
        const bool brought = std::any_of(
            a.answer.variants.front().formula.lines.begin(), a.answer.variants.front().formula.lines.end(),
            [&](const Line& l) { return grams_of(a.formula, l.ingredient) == 0 && food(l.ingredient).composition.salt.mid > salty; });
        if (brought) continue;
        const double before = a.answer.base.properties[Property::salt_pct_of_meat].mid;
        const double after = a.answer.variants.front().prediction.properties[Property::salt_pct_of_meat].mid;
        CAPTURE(a.garden.name, before, after);
        CHECK(std::abs(after / before - 1) <= most);
    }
}

TEST_CASE("gardens: short of meat, the batch is made smaller and said so first") {
    for (const double share : {0.93, 0.8, 0.5}) {
        for (const auto& [name, text] : formulas()) {
            const Formula formula = scenario::expect(engine().read_formula(text, name));
            AdaptRequest request;
            request.top = 1;
            request.have.emplace();
            const Line& meat = formula.lines.front();
            request.have->items.push_back({meat.ingredient, std::floor(meat.grams.mid * share)});
            const AdaptAnswer answer = scenario::expect(engine().adapt(formula, request));
            CAPTURE(name, share);
            REQUIRE(answer.scaled);
            CHECK(answer.scaled->factor == Approx(share).margin(0.01));
            CHECK(answer.scaled->says.find("on hand where") != std::string::npos);
            REQUIRE_FALSE(answer.variants.empty());
            CHECK(answer.conflict.empty());
            const Formula& first = answer.variants.front().formula;
            CHECK(grams_of(first, meat.ingredient) <= std::floor(meat.grams.mid * share) + 1e-9);
            CHECK(grams_of(first, meat.ingredient) >= 0.97 * meat.grams.mid * share);
        }
    }
}

TEST_CASE("gardens: the batch is made to the meat asked for, or to what the list makes") {
    const Formula formula = scenario::expect(engine().read_formula(formulas().at("hedge"), "hedge"));
    AdaptRequest request;
    request.top = 1;
    request.meat = "900 g";
    const auto asked = scenario::expect(engine().adapt(formula, request));
    REQUIRE(asked.scaled);
    CHECK(asked.scaled->meat_after_g == Approx(900).margin(2));
    request.meat.clear();
    request.as_much = true;
    request.have = scenario::expect(engine().read_inventory("pork shoulder 3 kg\nspinach 300 g\nparsley 1 kg", "list", &formula));
    const auto much = scenario::expect(engine().adapt(formula, request));
    REQUIRE(much.scaled);
    CHECK(much.scaled->says.find("spinach") != std::string::npos);
    CHECK(grams_of(much.variants.front().formula, "spinach") > 0);
    request.meat = "2 kg";
    CHECK_FALSE(engine().adapt(formula, request));
    request.as_much = false;
    request.meat = "a fair bit";
    CHECK_FALSE(engine().adapt(formula, request));
}

}  // namespace gardens_test
