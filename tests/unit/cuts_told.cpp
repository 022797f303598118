// Of an animal that the knowledge has one record for, the reader says that the cut is not told apart.
#include "formula/line/line_text.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace cuts_told_test {

std::string notes_of(const std::string& text) {
    const auto read = read_line(text, Origin("f", {1, 1}), knowledge());
    INFO(text);
    REQUIRE(read);
    std::string all;
    for (const auto& note : in_full(read->line.notes)) all += note + "\n";
    return all;
}

TEST_CASE("the leg and the breast of a duck are one food here, and that is said") {
    CHECK(notes_of("1 kg duck leg").find("the leg is not told apart here; taken as its meat as a whole, 6 % fat") != std::string::npos);
    CHECK(notes_of("1 kg duck breasts, diced").find("the breast is not told apart") != std::string::npos);
    CHECK(notes_of("500 g rabbit saddle").find("the saddle is not told apart") != std::string::npos);
    CHECK(notes_of("1 kg venison haunch").find("the haunch is not told apart") != std::string::npos);
}

TEST_CASE("nothing is said where no cut is named, the fat is told, or the cut is known") {
    CHECK(notes_of("1 kg duck").empty());
    CHECK(notes_of("1 kg duck leg, 10 % fat").find("not told apart") == std::string::npos);
    CHECK(notes_of("1 kg pork shoulder").find("not told apart") == std::string::npos);
    CHECK(notes_of("1 kg chicken breast").find("not told apart") == std::string::npos);
    CHECK(notes_of("1 kg venison trim").find("not told apart") == std::string::npos);
}

}  // namespace cuts_told_test
