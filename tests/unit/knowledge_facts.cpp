// What every record of its kind must say, so that a new one cannot forget it.
#include <algorithm>
#include <set>

#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace knowledge_facts_test {

bool has_role(const Ingredient& i, Role role) { return std::find(i.roles.begin(), i.roles.end(), role) != i.roles.end(); }

bool seasons(const Ingredient& i) {
    return has_role(i, Role::spice) || has_role(i, Role::herb) || has_role(i, Role::allium) || has_role(i, Role::heat);
}

const Ingredient& food(std::string_view id) {
    const Ingredient* found = knowledge().ingredient(id);
    REQUIRE(found != nullptr);
    return *found;
}

bool holds(const std::vector<std::string>& all, const std::string& one) { return std::find(all.begin(), all.end(), one) != all.end(); }

TEST_CASE("what is dry and seasons has a most for a kilo, and so have gums and salted pastes") {
    constexpr double salted_paste = 5;  // g salt in 100 g
    for (const auto& i : knowledge().records().ingredients) {
        CAPTURE(i.id);
        const bool dry_seasoning = i.tissue == Tissue::dry && seasons(i);
        const bool paste = i.tissue == Tissue::paste && i.composition.salt.mid > salted_paste;
        if (dry_seasoning || paste) CHECK(i.most_g_per_kg.has_value());
    }
    for (const char* gum : {"guar-gum", "xanthan-gum", "locust-bean-gum", "carrageenan", "agar", "konjac-flour", "methylcellulose"})
        CHECK(food(gum).most_g_per_kg.has_value());
    for (const char* weed : {"kelp", "nori", "wakame", "spirulina", "chlorella"}) CHECK(food(weed).most_g_per_kg.has_value());
}

TEST_CASE("a warning that stood in a note stands in a field") {
    const std::pair<const char*, const char*> warned[] = {{"morel", "raw-morel"},
                                                          {"taro-leaf", "needle-crystals"},
                                                          {"borage", "liver-alkaloids"},
                                                          {"fava-cooked", "favism"},
                                                          {"kelp", "iodine"},
                                                          {"hoja-santa", "safrole"},
                                                          {"almond", "bitter-almond"},
                                                          {"kiwifruit", "meat-enzyme"},
                                                          {"horseradish", "cross-mustard"},
                                                          {"lovage", "cross-celery"},
                                                          {"pink-peppercorn", "cross-cashew"},
                                                          {"celery-flakes", "nitrate-dried"},
                                                          {"white-bean-cooked", "bean-lectin"}};
    for (const auto& [id, caution] : warned) {
        CAPTURE(id, caution);
        CHECK(holds(food(id).cautions, caution));
    }
}

TEST_CASE("bought foods that often hold an allergen say which") {
    const std::pair<const char*, const char*> held[] = {
        {"chicken-broth", "celery"},      {"miso", "barley"},      {"dill-pickle", "mustard"}, {"shrimp", "sulphite"},
        {"breadcrumb", "milk"},           {"tamari", "wheat"},     {"surimi", "wheat"},        {"raisin", "sulphite"},
        {"potato-flake", "sulphite"},     {"rolled-oat", "wheat"}, {"parmesan", "egg"},        {"gelatin", "fish"},
        {"worcestershire-sauce", "wheat"}};
    for (const auto& [id, allergen] : held) {
        CAPTURE(id, allergen);
        CHECK(holds(food(id).may_hold, allergen));
    }
    CHECK(holds(food("surimi").allergens, "egg"));
    CHECK(holds(food("shredded-suet").allergens, "wheat"));
}

TEST_CASE("every fresh leaf that is there for its taste warns of what raw leaves carry") {
    std::size_t leaves = 0;
    for (const auto& food : knowledge().records().ingredients) {
        const bool leaf = food.tissue == Tissue::thin_leaf || food.tissue == Tissue::thick_leaf;
        const bool taste = food.roles.front() == Role::herb || food.roles.front() == Role::allium;
        if (!leaf || !taste || !food.already.empty()) continue;
        ++leaves;
        CAPTURE(food.id);
        CHECK(std::find(food.cautions.begin(), food.cautions.end(), "raw-produce") != food.cautions.end());
    }
    CHECK(leaves > 30);
}

}  // namespace knowledge_facts_test
