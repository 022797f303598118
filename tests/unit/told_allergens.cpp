// What the maker says of allergens, in a line, a list, a title or a word to leave out, is obeyed.
#include <algorithm>

#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "safety/exclusions.hpp"
#include "safety/promises.hpp"
#include "safety/safety.hpp"
#include "substitute/stock.hpp"
#include "support/catch.hpp"
#include "support/kitchen.hpp"
#include "support/mixture.hpp"

using namespace standin;

namespace told_allergens_test {

Stock stock_for(const Formula& made, const std::string& list, std::vector<std::string> without) {
    static const Evaluator evaluator(knowledge(), 16, 1);
    static const Options options;
    AdaptRequest request;
    if (!list.empty()) {
        auto have = read_inventory(list, "list", knowledge(), &made);
        if (!have) FAIL(have.error().where + " " + have.error().message);
        request.have = std::move(*have);
    }
    request.without = std::move(without);
    auto stock = Stock::of(made, request, {evaluator, options});
    if (!stock) FAIL(stock.error().message);
    return std::move(*stock);
}

Formula plain() { return formula({line("pork-shoulder", 1500), line("walnut", 50), line("table-salt", 27)}); }

Exclusion left_out(const std::string& word) {
    auto found = exclusion_of(word, knowledge());
    if (!found) FAIL(word + ": " + found.error().message);
    return *found;
}

std::vector<std::string> promises(const std::string& title, std::vector<Line> lines) {
    Formula made = formula(std::move(lines));
    made.title = title;
    std::vector<std::string> texts;
    for (const auto& caution : broken_promises(made, knowledge())) texts.push_back(caution.text);
    return texts;
}

bool says(const std::vector<std::string>& texts, const std::string& words) {
    return std::any_of(texts.begin(), texts.end(), [&](const auto& text) { return text.find(words) != std::string::npos; });
}

TEST_CASE("a food of the list that may contain nuts is not brought in where nuts are left out") {
    for (const auto* list :
         {"sunflower seeds 200 g (may contain nuts)\nno walnuts", "sunflower seeds 200 g, may contain traces of nuts\nno walnuts",
          "sunflower seeds (may contain nuts and sesame)\nno walnuts",
          "sunflower seeds 200 g (kann Spuren von Nüssen enthalten)\nno walnuts"}) {
        CAPTURE(list);
        const Stock stock = stock_for(plain(), list, {"nuts"});
        CHECK_FALSE(stock.can_bring(*knowledge().ingredient("sunflower-seed")));
        CHECK(stock.excluded().front().note.find("sunflower seed") != std::string::npos);
        CHECK(stock_for(plain(), list, {"milk"}).can_bring(*knowledge().ingredient("sunflower-seed")));
        Line brought = line("sunflower-seed", 50);
        stock.tell(brought);
        CHECK(std::any_of(brought.declared.begin(), brought.declared.end(), [](const Declared& d) { return d.allergen == "tree-nut"; }));
    }
    CHECK(stock_for(plain(), "sunflower seeds 200 g (contains no nuts)\nno walnuts", {"nuts"})
              .can_bring(*knowledge().ingredient("sunflower-seed")));
}

TEST_CASE("a line that says it contains an allergen is left out with it, and its label says it") {
    Formula made = plain();
    auto read = read_line("50 g sunflower seeds (contains sesame)", Origin("", {1, 1}), knowledge());
    REQUIRE(read);
    made.lines.push_back(read->line);
    const Stock stock = stock_for(made, "", {"sesame"});
    REQUIRE(stock.excluded().size() == 1);
    CHECK(stock.excluded().front().lines == std::vector<std::string>{"sunflower-seed"});
    CHECK(says(promises("Sesame-free links", made.lines), "contains sesame"));
    CHECK(promises("Soy-free links", made.lines).empty());
    Prediction p = mixture({{"pork-shoulder", 1500}, {"sunflower-seed", 50}});
    p.lines.back().declared = read->line.declared;
    mark_safety(p, Formula{}, knowledge(), "");
    CHECK(p.label.find("contains SESAME") != std::string::npos);
}

TEST_CASE("gluten that no cereal is named for counts for each of them") {
    auto read = read_line("10 g paprika (contains gluten)", Origin("", {1, 1}), knowledge());
    REQUIRE(read);
    for (const auto* word : {"gluten", "wheat", "barley", "rye"}) CHECK(tells_of_it(left_out(word), read->line.declared, knowledge()));
    CHECK_FALSE(tells_of_it(left_out("milk"), read->line.declared, knowledge()));
    CHECK(says(promises("Gluten-free links", {line("pork-shoulder", 100), read->line}), "paprika"));
}

TEST_CASE("a word of another tongue leaves out the whole kind that it names") {
    const std::vector<std::pair<std::string, std::vector<std::string>>> words{
        {"mustard", {"Senf", "moutarde", "mostaza", "senape", "mostarda", "der Senf", "ohne Senf"}},
        {"egg", {"Ei", "Eier", "Eiern", "huevo", "huevos", "oeufs", "œufs", "les œufs", "uova", "ovos", "egg"}},
        {"milk", {"Milch", "lait", "leche", "latte", "leite", "la leche", "milchfrei", "Molke"}},
        {"celery", {"Sellerie", "céleri", "celeri", "apio", "sedano", "aipo", "celery"}},
        {"nuts", {"noix", "Nüsse", "Nuesse", "nueces", "noci", "nozes", "fruits à coque", "frutos secos"}},
        {"fish", {"Fisch", "poisson", "pescado", "pesce", "peixe"}},
        {"wheat", {"Weizen", "blé", "trigo", "frumento"}},
        {"sesame", {"Sesam", "sésame", "ajonjolí"}},
        {"soy", {"Soja", "soia"}},
        {"lupin", {"Lupine", "Lupinen", "altramuz", "tremoços"}},
        {"peanut", {"Erdnuss", "Erdnüsse", "cacahuètes", "cacahuete", "arachidi", "amendoim"}},
        {"crustacean", {"Krebstiere", "crevettes", "gambas", "gamberi", "camarão"}},
        {"mollusc", {"Weichtiere", "moules", "mejillones", "vongole"}},
        {"sulphite", {"Sulfite", "sulfitos", "solfiti", "Schwefeldioxid"}}};
    for (const auto& [kind, all] : words)
        for (const auto& word : all) {
            CAPTURE(word);
            const auto found = left_out(word);
            REQUIRE(found.kind != nullptr);
            CHECK(found.foods == left_out(kind).foods);
        }
    CHECK_FALSE(exclusion_of("Zorblax", knowledge()));
    CHECK(in_full(left_out("soy sauce").note.value()).find("soy") != std::string::npos);
}

TEST_CASE("fruit bought dried may hold sulphite, and is left out with it") {
    Line apple = line("granny-smith-apple", 30);
    apple.prepared.push_back({"dried", {}});
    CHECK(takes_line(left_out("sulphite"), apple, knowledge()));
    CHECK_FALSE(takes_line(left_out("sulphite"), line("granny-smith-apple", 30), knowledge()));
}

TEST_CASE("titles promise in many words") {
    const auto with = [&](const std::string& title, const std::string& food) {
        return promises(title, {line("pork-shoulder", 900), line(food, 50)});
    };
    for (const auto* title : {"Glutenfrei, milchfrei", "Sans gluten", "Sin gluten", "Senza glutine", "Coeliac friendly links",
                              "Nut and gluten free", "No milk, nuts or gluten", "Glutenfreie Bratwurst", "Suitable for coeliacs"}) {
        CAPTURE(title);
        CHECK(says(with(title, "rusk"), "rusk"));
    }
    CHECK(says(with("Safe for nut allergy", "walnut"), "walnut"));
    CHECK(says(with("Safe for nut allergy", "spinach"), "must be able to show it"));
    CHECK(says(with("Allergen-free links", "mustard-seed"), "mustard seed"));
    CHECK(says(with("Nussfrei", "hazelnut"), "hazelnut"));
    CHECK(says(with("Uncured links, no nitrites added", "bacon"), "bacon"));
    CHECK(with("Pork with milk and walnuts", "walnut").empty());
    CHECK(with("Gluten-free links", "spinach").empty());
}

TEST_CASE("an animal in the title is in the lines, and others are told") {
    const auto of = [&](const std::string& title, std::vector<std::string> foods) {
        std::vector<Line> lines;
        for (auto& food : foods) lines.push_back(line(food, 500));
        return promises(title, std::move(lines));
    };
    CHECK(says(of("Venison sausage", {"pork-shoulder", "pork-backfat"}), "The title says venison"));
    CHECK(says(of("Chicken sausage", {"pork-shoulder"}), "The title says chicken"));
    CHECK(says(of("Venison sausage", {"venison", "pork-backfat"}), "another animal"));
    CHECK(of("Venison and pork sausage", {"venison", "pork-backfat"}).empty());
    CHECK(of("Pork sausage", {"pork-shoulder", "bacon"}).empty());
    CHECK(of("Pork sausage with duck egg", {"pork-shoulder", "duck-egg"}).empty());
    CHECK(of("Hedgerow green", {"pork-shoulder"}).empty());
}

}  // namespace told_allergens_test
