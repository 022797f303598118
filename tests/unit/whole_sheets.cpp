// Whole formulas: percentages, tables, sentences. Judged before they were read.
#include <algorithm>
#include <fstream>
#include <sstream>

#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/places.hpp"

using namespace standin;

namespace whole_sheets_test {

const Engine& engine() {
    static const Engine made = std::move(*Engine::open({}));
    return made;
}

struct SheetJudged {
    std::string name, text, means;
};

std::vector<SheetJudged> sheets() {
    std::ifstream file(test_data_folder() + "/unit/whole_sheets.txt");
    std::vector<SheetJudged> all;
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with("=== ")) all.push_back({line.substr(4), {}, {}});
        else if (line.starts_with("--- ")) all.back().means = line.substr(4);
        else if (!all.empty()) all.back().text += line + "\n";
    }
    return all;
}

std::vector<std::string> cut(const std::string& text, const std::string& at) {
    std::vector<std::string> all;
    std::size_t from = 0;
    for (auto i = text.find(at); i != std::string::npos; i = text.find(at, from)) {
        all.push_back(text.substr(from, i - from));
        from = i + at.size();
    }
    all.push_back(text.substr(from));
    return all;
}

// "table-salt|sea-salt 17 19; ..."
bool means(const Formula& read, const std::string& way) {
    auto lines = read.lines;
    for (const auto& item : cut(way, ";")) {
        std::istringstream words(item);
        std::string ids;
        double low = 0, high = 0;
        words >> ids >> low >> high;
        constexpr double slack = 0.005;
        const auto names = cut(ids, "|");
        const auto found = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
            return std::find(names.begin(), names.end(), line.ingredient) != names.end() && line.grams.mid >= low * (1 - slack) &&
                   line.grams.mid <= high * (1 + slack);
        });
        if (found == lines.end()) return false;
        lines.erase(found);
    }
    return lines.empty();
}

TEST_CASE("whole formulas are read as they were meant, or asked about") {
    std::string missed;
    std::size_t all = 0, right = 0;
    for (const auto& [name, text, wanted] : sheets()) {
        ++all;
        const auto read = engine().read_formula(text, "f");
        bool good = false;
        for (const auto& way : cut(wanted, ";;")) good = good || (read ? means(*read, way) : way.find("asked") != std::string::npos);
        right += good ? 1 : 0;
        if (!good) missed += "\n" + name + (read ? ": read otherwise" : ": " + read.error().message);
    }
    WARN(right << " of " << all << " whole formulas" << missed);
    CHECK(all >= 30);
    CHECK(right + 1 >= all);
}

Formula formula(const std::string& text) {
    INFO(text);
    auto read = engine().read_formula(text, "f");
    if (!read) FAIL(read.error().message);
    return std::move(*read);
}

bool told(const Formula& formula, const std::string& part) {
    const auto all = in_full(formula.read_as);
    return std::any_of(all.begin(), all.end(), [&](const auto& one) { return one.find(part) != std::string::npos; });
}

bool asked(const std::string& text) { return !engine().read_formula(text, "f"); }

TEST_CASE("what percentages are of is what adds up to 100, and told") {
    const auto of_meat = formula("Links\nPork shoulder 70 %\nBack fat 30 %\nSalt 1.8 %\nMeat 5 kg\n");
    CHECK(of_meat.lines[0].grams.mid == Approx(3500));
    CHECK(of_meat.lines[2].grams.mid == Approx(90));
    CHECK(told(of_meat, "shares of the meat"));
    const auto of_batch = formula("Links\nPork shoulder 68.2 %\nBack fat 30 %\nSalt 1.8 %\nBatch 5 kg\n");
    CHECK(of_batch.lines[0].grams.mid == Approx(3410));
    CHECK(told(of_batch, "shares of the batch"));
    const auto no_weight = formula("Links\nPork shoulder 70 %\nBack fat 30 %\nSalt 1.8 %\n");
    CHECK(no_weight.lines[0].grams.mid == Approx(700));
    CHECK(told(no_weight, "presumed"));
    CHECK(asked("Links\nPork shoulder 60 %\nBack fat 30 %\nSalt 1.8 %\nBatch 5 kg\n"));
    CHECK(asked("Links\nPork shoulder 70 %\nBack fat 30 %\nSalt 1.8 %\nZorbles 3 %\n"));
}

TEST_CASE("a sheet of percentages comes back the same from every form") {
    for (const char* text : {"Links\nPork shoulder 70 %\nBack fat 30 %\nSalt 1.8 %\nBatch 5 kg\n",
                             "Links\nPork shoulder 68.2 %\nBack fat 30 %\nSalt 1.8 %\nBatch 5 kg\n",
                             "Ingredient,Amount,Unit\nPork shoulder,2.5,kg\nSalt,45,g\n\"Parsley, chopped\",90,g\n"}) {
        const auto read = formula(text);
        for (const auto& form : {engine().formula_text(read), engine().formula_json(read), engine().formula_jsonld(read)}) {
            const auto back = engine().read_formula(form, "f");
            INFO(form);
            REQUIRE(back);
            REQUIRE(back->lines.size() == read.lines.size());
            for (std::size_t i = 0; i < read.lines.size(); ++i) {
                CHECK(back->lines[i].ingredient == read.lines[i].ingredient);
                CHECK(back->lines[i].grams.mid == Approx(read.lines[i].grams.mid));
                CHECK(back->lines[i].prepared == read.lines[i].prepared);
            }
        }
    }
}

TEST_CASE("a total that the lines do not add up to is asked about") {
    CHECK(formula("Links\n2 kg pork shoulder\n36 g salt\nTotal 2036 g\n").lines.size() == 2);
    CHECK(asked("Links\n2 kg pork shoulder\n36 g salt\nTotal 3000 g\n"));
    CHECK(formula("Links\n2 kg pork shoulder\n36 g salt\nMakes about 1.8 kg\n").lines.size() == 2);
}

TEST_CASE("what a column of a table that is not read says is not lost") {
    const auto read = formula("Ingredient;g;Allergens\nPork shoulder;2000;\nSalt;36;\nRusk;100;contains milk\n");
    CHECK(std::any_of(read.declared.begin(), read.declared.end(), [](const Declared& one) { return one.allergen == "milk"; }));
    CHECK(asked("Ingredient;g;Note\nPork shoulder;2000;\nSalt;36;hemlock\n"));
}

TEST_CASE("several foods in a line, each with its amount") {
    CHECK(formula("Links\n2 kg pork shoulder\n20 g salt + 4 g pepper\n").lines.size() == 3);
    CHECK(formula("Links\n2 kg pork shoulder\n1 tsp salt and 1/2 tsp pepper, 2 cloves garlic\n").lines.size() == 4);
    const auto per = formula("Links\n2 kg pork shoulder\nPer kg of meat: 18 g salt, 2 g pepper and 1 g mace\n");
    CHECK(per.lines[1].grams.mid == Approx(36));
    CHECK(per.lines[3].grams.mid == Approx(2));
    CHECK(formula("Links\nPork shoulder 2 kg, pork belly 500 g, salt 45 g and mace 2 g\n").lines.size() == 4);
    CHECK(formula("Salsicce: 2 kg di spalla di maiale, 40 g di sale e 4 g di pepe nero\n").lines.size() == 3);
    CHECK(formula("Per kg of meat:\nsalt 17 g\npepper 3 g\n\n2 kg pork shoulder\n").lines[0].grams.mid == Approx(34));
    CHECK(formula("Links\n2 kg pork shoulder\n1 lb 8 oz pork belly\n").lines.size() == 2);
    CHECK(asked("Links\n2 kg pork shoulder\n20 g salt, 5 g salt for the brine\n"));
}

}  // namespace whole_sheets_test
