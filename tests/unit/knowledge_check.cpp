#include <algorithm>
#include <functional>
#include <set>

#include "knowledge/checks/check.hpp"
#include "knowledge/records/references.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace knowledge_check_test {

// The findings after a change of the real knowledge; places as if each record had stood at "here".
std::vector<Finding> findings_after(const std::function<void(Records&)>& change, const std::string& record) {
    Records records = knowledge().records();
    change(records);
    return check_records(records, Places{{record, "here:1:2"}});
}

void check_found(const std::string& record, std::string_view part, const std::function<void(Records&)>& change, bool error = true,
                 std::string_view hint = {}) {
    CAPTURE(record, part);
    const auto all = findings_after(change, record);
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const Finding& f) { return f.where == "here:1:2" && f.message.find(part) != std::string::npos; });
    for (const auto& f : all)
        if (f.error) UNSCOPED_INFO(f.where + ": " + f.message);
    REQUIRE(found != all.end());
    CHECK(found->error == error);
    if (!hint.empty()) {
        REQUIRE_FALSE(found->hints.empty());
        CHECK(found->hints.front().find(hint) != std::string::npos);
    }
}

Ingredient& spinach(Records& r) {
    return *std::find_if(r.ingredients.begin(), r.ingredients.end(), [](const Ingredient& i) { return i.id == "spinach"; });
}

Swap spinach_for_chard() {
    Swap s;
    s.role = Role::green;
    s.from = "chard";
    s.to = "spinach";
    s.source = "judgement";
    s.prepared = {"squeezed"};
    s.closeness = 0.5;
    return s;
}

TEST_CASE("what is sold canned, jarred, frozen, cooked, dried or ground says so, so that nobody is told to do it again") {
    const auto expect = [](std::string_view word, std::string_view step, const std::function<bool(const Ingredient&)>& concerns) {
        for (const auto& i : knowledge().records().ingredients) {
            if (!concerns(i) || (" " + i.names.front() + " ").find(" " + std::string(word) + " ") == std::string::npos) continue;
            CAPTURE(i.id, step);
            CHECK(std::find(i.already.begin(), i.already.end(), step) != i.already.end());
        }
    };
    const auto any = [](const Ingredient&) { return true; };
    const auto chile = [](const Ingredient& i) { return i.tissue == Tissue::chile_flesh; };
    const auto plant = [](const Ingredient& i) { return !i.meat && i.family != "dairy-and-egg" && i.roles.front() != Role::binder; };
    for (const auto* word : {"canned", "pickled", "pimiento"})
        for (const auto* step : {"roasted", "roasted-peeled", "peeled"}) expect(word, step, chile);
    expect("pickled", "pickled", any);
    expect("frozen", "blanched", any);
    expect("frozen", "frozen-thawed", any);
    expect("cooked", "boiled", any);
    expect("boiled", "boiled", any);
    expect("blanched", "blanched", any);
    expect("toast", "toasted", any);
    expect("dried", "dried", plant);
    expect("powder", "ground", [](const Ingredient& i) { return i.tissue == Tissue::dry && i.roles.front() == Role::allium; });
    expect("flour", "ground", any);
    expect("ground", "ground", [](const Ingredient& i) { return i.meat.has_value(); });
}

TEST_CASE("a swap that asks for what the food already had is an error") {
    const Swap& canned = *std::find_if(knowledge().records().swaps.begin(), knowledge().records().swaps.end(),
                                       [](const Swap& s) { return s.to == "green-chile-canned" && !s.derived; });
    const std::string record = swap_key(canned) + ", roasted-peeled";
    check_found(record, "is sold roasted-peeled", [&](Records& r) {
        for (auto& s : r.swaps)
            if (swap_key(s) == swap_key(canned)) s.prepared = {"roasted-peeled"};
    });
}

TEST_CASE("the real knowledge has no errors") {
    const auto all = check_records(knowledge().records(), {});
    for (const auto& f : all) {
        if (f.error) UNSCOPED_INFO(f.where + ": " + f.message);
        CHECK_FALSE(f.error);
    }
}

TEST_CASE("an id that stands twice") {
    check_found("ingredient spinach", "second time", [](Records& r) { r.ingredients.push_back(spinach(r)); });
    check_found("preparation blanched", "second time", [](Records& r) {
        const auto same =
            std::find_if(r.preparations.begin(), r.preparations.end(), [](const Preparation& p) { return p.id == "blanched"; });
        r.preparations.push_back(Preparation(*same));
    });
    check_found("source judgement", "second time", [](Records& r) {
        r.sources.push_back({"judgement", SourceKind::judgement, "again", ""});
    });
    check_found("parameter acid.pkw", "second time", [](Records& r) {
        r.parameters.push_back({"acid.pkw", "", {{14, 14, 14}, "1", "judgement"}});
    });
    check_found("want firmer", "second time", [](Records& r) { r.wants.push_back({"firmer", "", "judgement", {}, {}}); });
}

TEST_CASE("a source that is not listed") {
    check_found(
        "ingredient spinach", "is not in sources.json", [](Records& r) { spinach(r).composition.source = "usda-sr-28#1"; }, true,
        "usda-sr28");
    check_found("ingredient spinach", "is not in sources.json", [](Records& r) { spinach(r).chlorophyll->source = "nobody"; });
    check_found("parameter acid.pkw", "is not in sources.json", [](Records& r) {
        for (auto& p : r.parameters)
            if (p.id == "acid.pkw") p.quantity.source = "nobody";
    });
    check_found("swap green chard > spinach, squeezed", "is not in sources.json", [](Records& r) {
        r.swaps.push_back(spinach_for_chard());
        r.swaps.back().source = "nobody";
    });
}

TEST_CASE("a note that promises what only a maker can promise") {
    for (const char* note :
         {"Gluten-free.", "The seed aroma is lost; sesame-free.", "Free of oats.", "Contains no milk.", "Safe for nut allergy"})
        check_found("swap green chard > spinach, squeezed", "must not promise", [&](Records& r) {
            r.swaps.push_back(spinach_for_chard());
            r.swaps.back().note = note;
        });
    check_found("ingredient spinach", "must not promise \"free\"", [](Records& r) { spinach(r).note = "Nearly gluten-free"; });
}

TEST_CASE("a name that two ingredients claim") {
    check_found("ingredient twin", "already belongs to spinach", [](Records& r) {
        Ingredient twin = spinach(r);
        twin.id = "twin";
        twin.names = {
            "Spin\xC3\xA1"
            "ch"};
        r.ingredients.push_back(std::move(twin));
    });
}

TEST_CASE("a composition that does not add up") {
    check_found("ingredient spinach", "adds up to", [](Records& r) { spinach(r).composition.water = exactly(50); });
    const auto explained = findings_after(
        [](Records& r) {
            spinach(r).composition.water = exactly(50);
            spinach(r).composition.exception = "because";
        },
        "ingredient spinach");
    CHECK(std::none_of(explained.begin(), explained.end(), [](const Finding& f) { return f.error; }));
    check_found(
        "ingredient spinach", "more fibre", [](Records& r) { spinach(r).composition.fibre = exactly(50); }, false);
}

TEST_CASE("acid shares that do not add up") {
    check_found("ingredient spinach", "shares of its acids", [](Records& r) {
        spinach(r).acidity.emplace();
        spinach(r).acidity->acids = {{Acid::citric, 0.5}, {Acid::malic, 0.4}};
    });
}

TEST_CASE("swaps that lead nowhere") {
    const auto with = [](std::function<void(Swap&)> change) {
        return [change = std::move(change)](Records& r) {
            r.swaps.push_back(spinach_for_chard());
            change(r.swaps.back());
        };
    };
    check_found("swap green chard > spinich, squeezed", "no ingredient", with([](Swap& s) { s.to = "spinich"; }), true, "spinach");
    check_found("swap green nobody > spinach, squeezed", "no ingredient", with([](Swap& s) { s.from = "nobody"; }));
    check_found("swap green chard > spinach, squezed", "no preparation", with([](Swap& s) { s.prepared = {"squezed"}; }), true, "squeezed");
    check_found("swap green chard > spinach, seeded", "does not fit", with([](Swap& s) { s.prepared = {"seeded"}; }));
    check_found("swap green spinach > spinach", "for itself", with([](Swap& s) {
                    s.from = "spinach";
                    s.prepared.clear();
                }));
    check_found("swap heat chard > spinach, squeezed", "does not carry the role", with([](Swap& s) { s.role = Role::heat; }), false);
}

TEST_CASE("allergens and cautions that no rule set knows") {
    check_found("ingredient spinach", "allergen", [](Records& r) { spinach(r).allergens = {"kryptonite"}; });
    check_found("ingredient spinach", "caution", [](Records& r) { spinach(r).cautions = {"kryptonite"}; });
}

TEST_CASE("what a bought food may hold is an allergen of the list, and not one it always holds") {
    check_found(
        "ingredient spinach", "\"selery\" is not in the list of allergens", [](Records& r) { spinach(r).may_hold = {"selery"}; }, true,
        "celery");
    check_found("ingredient spinach", "stands both in", [](Records& r) {
        spinach(r).allergens = {"celery"};
        spinach(r).may_hold = {"celery"};
    });
}

TEST_CASE("the most in a kilo names a source of the list") {
    check_found("ingredient spinach", "is not in sources.json", [](Records& r) {
        spinach(r).most_g_per_kg = Quantity{{2, 2, 2}, "g/kg", "nobody"};
    });
}

TEST_CASE("a condition names a species, an allergen and a caution that there are") {
    const auto when = [](When condition) {
        return [condition](Records& r) { r.rules.front().cautions.push_back({"own", "Mind.", "judgement", {condition}}); };
    };
    const std::string record = "rules " + knowledge().records().rules.front().code + " caution own";
    check_found(record, "unknown species \"poltry\"", when(SpeciesInside{"poltry"}), true, "poultry");
    check_found(record, "\"mlik\" is not in the list of allergens", when(AllergenInside{"mlik"}), true, "milk");
    check_found(record, "no ingredient bears the caution \"oxalat\"", when(IngredientBears{"oxalat"}), true, "oxalate");
}

TEST_CASE("errors come before warnings") {
    const auto all = findings_after(
        [](Records& r) {
            spinach(r).composition.fibre = exactly(50);
            spinach(r).allergens = {"kryptonite"};
        },
        "ingredient spinach");
    CHECK(std::is_sorted(all.begin(), all.end(), [](const Finding& a, const Finding& b) { return a.error > b.error; }));
}

TEST_CASE("a trade word that is somebody's name") {
    check_found("ingredient spinach", "the generic name \"swiss chard\" already belongs to chard",
                [](Records& r) { spinach(r).generic = {"swiss chard"}; });
    check_found("ingredient spinach", "the generic name \"greens\" already belongs to spinach", [](Records& r) {
        spinach(r).generic = {"green", "greens"};
    });
}

}  // namespace knowledge_check_test
