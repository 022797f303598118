// What a list says is not there, in the words of whoever wrote it, is never plenty; what nobody here understands is asked first.
#include <algorithm>
#include <cmath>
#include <string>

#include "core/contains.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace list_none_test {

std::string became(const std::string& line, const std::string& food) {
    const auto read = read_inventory("kale 200 g\nthyme 2 bunches\nno star anise\n" + line + "\n", "f", knowledge());
    if (!read) return "not read: " + read.error().message;
    if (contains(read->missing, food)) return "missing";
    if (const auto* found = item(*read, food)) return found->grams ? std::to_string(std::lround(*found->grams)) : "plenty";
    const bool first = std::any_of(read->notes.begin(), read->notes.end(),
                                   [](const Reason& told) { return told.kind == ReasonKind::set_aside && told.role == "open"; });
    return first ? "asked" : "set aside";
}

TEST_CASE("what a list says is gone is missing in any tongue, and what may say so is asked") {
    for (const auto& row : line_rows("unit/list_none.csv")) {
        REQUIRE(row.size() == 3);
        const bool weighed = row[2].find_first_not_of("0123456789.") == std::string::npos;
        INFO(row[0] << " must be " << row[2]);
        CHECK(became(row[0], row[1]) == (weighed ? std::to_string(std::lround(std::stod(row[2]))) : row[2]));
    }
}

TEST_CASE("what is there instead is on hand") {
    for (const char* line : {"Spinat aus, daf\u00FCr Schnittlauch", "geen spinazie, wel bieslook", "chives instead of spinach",
                             "zamiast szpinaku szczypiorek", "pas d'\u00E9pinards, mais de la ciboulette"}) {
        INFO(line);
        CHECK(became(line, "chives") == "plenty");
    }
}

TEST_CASE("a word passed over beside a weight is told first") {
    const auto read = read_inventory("kale 200 g\nspinach 100 g, zorb\n", "f", knowledge());
    REQUIRE(read);
    CHECK(std::any_of(read->notes.begin(), read->notes.end(),
                      [](const Reason& told) { return told.kind == ReasonKind::passed_unknown && told.role == "list"; }));
}

TEST_CASE("herbs in the garden are fresh") {
    for (const char* line : {"thyme, mint and chives in the garden", "in the garden: thyme, sage", "Thymian im Garten"}) {
        INFO(line);
        CHECK(became(line, "fresh-thyme") == "plenty");
    }
}

TEST_CASE("a short list is a list, whatever its word for none") {
    for (const char* text : {"chard 1 kg\nspinazie op\n", "chard 1 kg\n\u0131spanak yok\nmaydanoz bitti\n", "chard 1 kg\nspinach krzt\n",
                             "Mangold 1 kg\nSpinat fehlt\n"}) {
        INFO(text);
        CHECK(looks_like_stock(text, "f", knowledge()));
    }
    CHECK_FALSE(looks_like_stock("1 kg pork shoulder\n18 g slat\n200 g zorbles\n", "f", knowledge()));
    CHECK_FALSE(looks_like_stock("1 kg pork shoulder\nsalt krzt\n", "f", knowledge()));
}

TEST_CASE("another kind of what is not there is on hand, and the same kind a contradiction") {
    for (const char* text : {"no black mustard seed\nyellow mustard seed 10 g\n", "yellow mustard seed 10 g\nno brown mustard seed\n"}) {
        INFO(text);
        const auto read = read_inventory(text, "f", knowledge());
        REQUIRE(read);
        REQUIRE(item(*read, "mustard-seed"));
        CHECK_FALSE(contains(read->missing, std::string("mustard-seed")));
    }
    CHECK_FALSE(read_inventory("no yellow mustard seed\nyellow mustard seed 10 g\n", "f", knowledge()));
}

TEST_CASE("nothing but salt: the salt is there, and the list is all there is") {
    for (const char* line : {"nothing else but salt", "nothing but salt", "nothing else except salt"}) {
        INFO(line);
        const auto read = read_inventory("kale 200 g\n" + std::string(line) + "\n", "f", knowledge());
        REQUIRE(read);
        CHECK(item(*read, "table-salt"));
        CHECK(read->complete.value_or(false));
    }
}

}  // namespace list_none_test
