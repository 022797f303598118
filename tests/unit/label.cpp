// The ingredient list: order, brackets, capitals.
#include "safety/label.hpp"

#include "safety/allergens.hpp"
#include "support/catch.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace label_test {

std::string label(const std::vector<std::pair<std::string, double>>& lines) {
    Prediction p = mixture(lines);
    p.allergens = allergens_of(p, knowledge());
    return label_of(p, knowledge());
}

TEST_CASE("heaviest first, compound ingredients with their parts") {
    CHECK(label({{"table-salt", 18},
                 {"rusk", 90},
                 {"pork-shoulder", 700},
                 {"white-pepper", 2},
                 {"water", 100},
                 {"spinach", 60},
                 {"fresh-sage", 1}}) == "pork shoulder, water, rusk (WHEAT flour, water), spinach, salt, white pepper, fresh sage");
}

TEST_CASE("equal weights keep the order of the formula, a line twice is one ingredient") {
    CHECK(label({{"spinach", 50}, {"parsley", 50}, {"pork-shoulder", 700}, {"basil", 50}}) == "pork shoulder, spinach, parsley, basil");
    CHECK(label({{"pork-shoulder", 700}, {"spinach", 40}, {"parsley", 50}, {"spinach", 40}}) == "pork shoulder, spinach, parsley");
    CHECK(label({{"pork-shoulder", 700}, {"spinach", 0}}) == "pork shoulder");
    CHECK(label({{"pork-shoulder", 700}, {"kosher-salt", 5}, {"spinach", 8}, {"sea-salt", 6}}) == "pork shoulder, salt, spinach");
    CHECK(label({{"pork-shoulder", 700}, {"ice", 5}, {"spinach", 8}, {"water", 6}}) == "pork shoulder, water, spinach");
    CHECK(label({}) == "");
}

TEST_CASE("across 2 % the order by weight holds for every code") {
    const auto with_salt = [](double salt) {
        return label({{"pork-shoulder", 700}, {"water", 193}, {"spinach", 60}, {"parsley", 19.2}, {"table-salt", salt}});
    };
    CHECK(with_salt(18) == "pork shoulder, water, spinach, parsley, salt");
    CHECK(with_salt(20) == "pork shoulder, water, spinach, salt, parsley");
}

TEST_CASE("weights are those at mixing: what preparation left") {
    Prediction p = mixture({{"pork-shoulder", 700}, {"parsley", 50}, {"spinach", 100}});
    p.lines[2].grams = 40;
    CHECK(label_of(p, knowledge()) == "pork shoulder, parsley, spinach");
}

TEST_CASE("what dry goods have soaked up counts as water") {
    Prediction p = mixture({{"pork-shoulder", 700}, {"rusk", 40}, {"spinach", 50}, {"ice", 10}});
    p.lines[1].grams = 90;
    CHECK(label_of(p, knowledge()) == "pork shoulder, water, spinach, rusk (WHEAT flour, water)");
}

TEST_CASE("an allergen in a compound food stands with the part that brings it") {
    CHECK(label({{"pork-shoulder", 700}, {"worcestershire-sauce", 20}}) ==
          "pork shoulder, worcestershire sauce (malt vinegar (BARLEY), molasses, sugar, anchovies (FISH), tamarind, onion, garlic, spices, "
          "salt)");
    CHECK(label({{"pork-shoulder", 700}, {"prepared-mustard", 20}}).find("MUSTARD seed") != std::string::npos);
    CHECK(label({{"pork-shoulder", 700}, {"fish-sauce", 20}}).find("anchovies (FISH)") != std::string::npos);
}

TEST_CASE("allergens stand out, and are added where the name is silent") {
    CHECK(label({{"pork-shoulder", 700}, {"pistachio", 60}}) == "pork shoulder, PISTACHIO");
    CHECK(label({{"pork-shoulder", 700}, {"pine-nut", 60}}) == "pork shoulder, PINE NUT");
    CHECK(label({{"pork-shoulder", 700}, {"ricotta", 60}}) == "pork shoulder, ricotta (MILK)");
    CHECK(label({{"pork-shoulder", 700}, {"parmesan", 60}}) == "pork shoulder, parmesan (MILK, salt, cultures, rennet)");
    CHECK(label({{"pork-shoulder", 700}, {"soy-sauce", 60}}) == "pork shoulder, SOY sauce (water, SOYBEANS, WHEAT, salt)");
    CHECK(label({{"pork-shoulder", 700}, {"egg-yolk", 60}}) == "pork shoulder, EGG yolk");
    CHECK(label({{"pork-shoulder", 700}, {"salted-butter", 60}}) == "pork shoulder, salted butter (cream, salt, contains MILK)");
}

TEST_CASE("sulphites are named once there is enough to declare") {
    CHECK(label({{"pork-shoulder", 980}, {"white-wine", 20}}) == "pork shoulder, white wine");
    CHECK(label({{"pork-shoulder", 900}, {"white-wine", 100}}) == "pork shoulder, white wine (SULPHITES)");
}

TEST_CASE("salt with an allergen in it keeps its name beside plain salt") {
    CHECK(label({{"pork-shoulder", 900}, {"table-salt", 14}, {"celery-salt", 4}}) ==
          "pork shoulder, salt, CELERY salt (salt, CELERY seed)");
    CHECK(label({{"pork-shoulder", 900}, {"celery-salt", 4}, {"kosher-salt", 14}, {"sea-salt", 2}}) ==
          "pork shoulder, salt, CELERY salt (salt, CELERY seed)");
}

// Every food that bears an allergen, alone and beside every other food that reads alike.
TEST_CASE("the ingredient list holds every allergen of the list, in capitals") {
    const auto in_capitals = [](const std::string& text, const std::string& id) {
        for (auto word : knowledge().allergen(id)->words) {
            for (auto& c : word) c = static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
            if (text.find(word) != std::string::npos) return true;
            for (auto& c : word) c = c == ' ' ? '-' : c;
            if (text.find(word) != std::string::npos) return true;
        }
        return false;
    };
    const auto complete = [&](const std::vector<std::pair<std::string, double>>& lines) {
        Prediction p = mixture(lines);
        p.allergens = allergens_of(p, knowledge());
        const std::string text = label_of(p, knowledge());
        for (const auto& allergen : p.allergens) {
            if (!allergen.sure) continue;
            INFO(allergen.allergen << " in: " << text);
            CHECK(in_capitals(text, allergen.allergen));
        }
    };
    for (const auto& one : knowledge().records().ingredients) {
        if (one.allergens.empty() && !one.sulphites) continue;
        complete({{"pork-shoulder", 900}, {one.id, 60}});
        for (const auto& kin : knowledge().records().ingredients)
            if (kin.id != one.id && kin.family == one.family) complete({{"pork-shoulder", 900}, {one.id, 60}, {kin.id, 70}});
    }
}

TEST_CASE("a word that only begins like an allergen does not say it") {
    Records records;
    Ingredient i;
    i.id = "spread";
    i.names = {"eggplant and oatcake spread"};
    i.allergens = {"egg"};
    records.ingredients.push_back(i);
    records.allergens = knowledge().records().allergens;
    const Knowledge own(std::move(records));
    Prediction p = mixture({{"spread", 100}}, "", own);
    p.allergens = allergens_of(p, own);
    CHECK(label_of(p, own) == "eggplant and oatcake spread (EGG)");
}

}  // namespace label_test
