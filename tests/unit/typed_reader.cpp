#include "core/typed_reader.hpp"

#include "support/catch.hpp"

using namespace standin;

namespace typed_reader_test {

// Reads an object with `use` and gives back what was wrong with it.
template <class F>
std::vector<Error> faults(std::string_view text, F use) {
    const auto root = read_json(text, "t.json");
    REQUIRE(root);
    Problems problems("t.json");
    {
        ObjectReader reader(*root, problems);
        use(reader);
    }
    return problems.errors();
}

template <class F>
Error only_fault(std::string_view text, F use) {
    const auto all = faults(text, use);
    REQUIRE(all.size() == 1);
    return all.front();
}

TEST_CASE("what is there and of the right type is read without a fault") {
    const auto all =
        faults(R"({"t": "x", "n": 2, "b": {"value": 2, "low": 1, "high": 3}, "p": 4, "f": true, "l": ["a", "b"]})", [](ObjectReader& r) {
            CHECK(r.text("t") == "x");
            CHECK(r.number("n") == 2);
            CHECK(r.band("b") == Band{1, 2, 3});
            CHECK(r.band("p") == Band{4, 4, 4});
            CHECK(r.flag("f"));
            CHECK(r.texts("l") == std::vector<std::string>{"a", "b"});
            CHECK(r.text_or("none", "else") == "else");
            CHECK_FALSE(r.number_if("none"));
            CHECK_FALSE(r.band_if("none"));
            CHECK_FALSE(r.flag("none"));
            CHECK(r.texts("none").empty());
            CHECK_FALSE(r.has("none"));
        });
    CHECK(all.empty());
}

TEST_CASE("an unknown key is a fault at its place, with the nearest known one") {
    const Error fault = only_fault("{\"water_g\": 1,\n \"protien_g\": 2}", [](ObjectReader& r) {
        r.number("water_g");
        r.number_if("protein_g");
        r.number_if("fat_g");
    });
    CHECK(fault.message == "unknown key \"protien_g\"");
    CHECK(fault.where.substr(0, 9) == "t.json:2:");
    REQUIRE(fault.hints.size() == 1);
    CHECK(fault.hints[0].find("\"protein_g\"") != std::string::npos);
    CHECK(only_fault("{\"zzzzzz\": 1}", [](ObjectReader& r) { r.number_if("water"); }).hints.empty());
}

TEST_CASE("a missing member is a fault at its object") {
    const auto use_text = [](ObjectReader& r) { CHECK(r.text("t").empty()); };
    CHECK(only_fault("\n  {}", use_text).where == "t.json:2:3");
    CHECK(only_fault("{}", use_text).message == "\"t\" is missing: expected text");
    CHECK(only_fault("{}", [](ObjectReader& r) { CHECK(r.number("n") == 0); }).message == "\"n\" is missing: expected a number");
    CHECK(only_fault("{}", [](ObjectReader& r) { CHECK(r.band("n") == Band{}); }).message == "\"n\" is missing: expected a number");
    CHECK(only_fault("{}", [](ObjectReader& r) { CHECK(r.list("l", true).empty()); }).message == "\"l\" is missing: expected a list");
    CHECK(only_fault("{}", [](ObjectReader& r) { r.child("o", JsonNode::Kind::object, true); }).message ==
          "\"o\" is missing: expected an object");
}

TEST_CASE("a wrong type is a fault at the value, and names both") {
    const Error text = only_fault("{\"t\": 7}", [](ObjectReader& r) { r.text("t"); });
    CHECK(text.message == "\"t\" must be text, not a number");
    CHECK(text.where == "t.json:1:7");
    CHECK(only_fault("{\"n\": \"7\"}", [](ObjectReader& r) { r.number("n"); }).message == "\"n\" must be a number, not text");
    CHECK(only_fault("{\"n\": null}", [](ObjectReader& r) { r.number_if("n"); }).message == "\"n\" must be a number, not null");
    CHECK(only_fault("{\"f\": 1}", [](ObjectReader& r) { r.flag("f"); }).message == "\"f\" must be true or false, not a number");
    CHECK(only_fault("{\"l\": \"a\"}", [](ObjectReader& r) { r.texts("l"); }).message == "\"l\" must be a list, not text");
    CHECK(only_fault("{\"l\": [\"a\",\n 1]}", [](ObjectReader& r) { CHECK(r.texts("l").size() == 1); }).where == "t.json:2:2");
    CHECK(only_fault("{\"b\": []}", [](ObjectReader& r) { r.band("b"); }).message == "\"b\" must be a number, not a list");
    CHECK(only_fault("{\"t\": \"\"}", [](ObjectReader& r) { r.text("t"); }).message == "\"t\" must not be empty");
}

TEST_CASE("what is no object is a fault and reads as an empty one") {
    const Error fault = only_fault("[1]", [](ObjectReader& r) {
        CHECK_FALSE(r.has("a"));
        r.text("a");
        r.band("b");
    });
    CHECK(fault.message == "expected an object, found a list");
}

TEST_CASE("a band's numbers rise and its ends stand together") {
    const auto use = [](ObjectReader& r) { r.band("b"); };
    for (const char* text : {R"({"b": {"value": 2, "low": 3, "high": 4}})", R"({"b": {"value": 2, "low": 1, "high": 1.5}})"})
        CHECK(only_fault(text, use).message == "low, value and high must rise");
    CHECK(only_fault(R"({"b": {"value": 2, "low": 1}})", use).message == "\"low\" and \"high\" stand together or not at all");
    CHECK(only_fault(R"({"b": {"value": 2, "lo": 1}})", use).hints.size() == 1);
    CHECK(only_fault(R"({"b": {}})", use).message == "\"value\" is missing: expected a number");
    CHECK(faults(R"({"b": {"value": 2, "low": 2, "high": 2}})", use).empty());
}

TEST_CASE("one reading shows all faults, in order, and they join into one error") {
    const auto all = faults("{\"a\": 1,\n\"b\": 2,\n\"source\": 3}", [](ObjectReader& r) {
        r.text("a");
        r.text("b");
        r.text_or("sources");
    });
    REQUIRE(all.size() == 3);
    CHECK(all[0].where == "t.json:1:7");
    CHECK(all[1].where == "t.json:2:6");
    const Error one = join(all);
    CHECK(one.trouble == Trouble::bad_data);
    CHECK(one.message ==
          "t.json:1:7: \"a\" must be text, not a number\nt.json:2:6: \"b\" must be text, not a number\nt.json:3:11: unknown key \"source\" "
          "(did you mean \"sources\"?)");
    CHECK(join({all[0]}).where == "t.json:1:7");
}

}  // namespace typed_reader_test
