// "Noix de Saint-Jacques" are no walnuts: a name of two words with a joining word between is known as a whole, or asked.
#include "formula/food/compound_name.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/records/word_list.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace compound_names_test {

TEST_CASE("a name that a joining word makes of two is one food or asked") {
    const auto rows = line_rows("unit/compound_names.csv");
    REQUIRE(rows.size() >= 60);
    for (const auto& row : rows) {
        REQUIRE(row.size() == 2);
        const auto read = read_line(row[0], Origin("", {1, 1}), knowledge());
        INFO(row[0] << " must be " << row[1] << (read ? "" : ": " + read.error().message));
        CHECK((read ? read->line.ingredient : "asked") == row[1]);
    }
}

TEST_CASE("what is asked of such a name names the whole, and what it may hold") {
    const auto asked = [](const std::string& line) {
        const auto read = read_line(line, Origin("", {1, 1}), knowledge());
        return read ? std::string() : read.error().message;
    };
    CHECK(asked("100 g noix de Kerguelen").find("noix de Kerguelen") != std::string::npos);
    CHECK(asked("100 g crema di pistacchi").find("pistachio") != std::string::npos);
    CHECK(asked("100 g beurre de cacao").find("Leave the word out") == std::string::npos);
    CHECK(asked("100 g crème de cassis").find("give each a line") == std::string::npos);
}

TEST_CASE("every place behind a joining word leaves the food what it is") {
    std::size_t places = 0;
    for (const auto& [list, word] : knowledge().records().lexicon.listed) {
        if (list != WordList::place_of_origin) continue;
        ++places;
        const auto read = read_line("100 g onions of " + word, Origin("", {1, 1}), knowledge());
        INFO(word << (read ? "" : ": " + read.error().message));
        CHECK((!read || read->line.ingredient == "onion"));
        if (!read) CHECK(read.error().message.find("two words joined") == std::string::npos);
    }
    CHECK(places > 100);
}

}  // namespace compound_names_test
