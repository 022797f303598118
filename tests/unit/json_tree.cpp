#include "core/json_tree.hpp"

#include "support/catch.hpp"

using namespace standin;

namespace json_tree_test {

std::string where(const JsonNode& node) { return std::to_string(node.place.line) + ":" + std::to_string(node.place.column); }

JsonNode read(std::string_view text) {
    auto tree = read_json(text, "t.json");
    REQUIRE(tree);
    return std::move(*tree);
}

Error broken(std::string_view text) {
    const auto tree = read_json(text, "t.json");
    REQUIRE_FALSE(tree);
    CHECK(tree.error().trouble == Trouble::bad_data);
    return tree.error();
}

TEST_CASE("every node knows its line and column") {
    const JsonNode root = read("{\"a\": 1,\n  \"b\": [true, null,\n\t\"x\"],\n \"c\": {\"d\" : -2.5e1}}\n");
    CHECK(where(root) == "1:1");
    CHECK(where(*root.member("a")) == "1:7");
    const JsonNode& b = *root.member("b");
    CHECK(where(b) == "2:8");
    CHECK(where(b.items[0]) == "2:9");
    CHECK(where(b.items[1]) == "2:15");
    CHECK(where(b.items[2]) == "3:2");  // a tab is one column
    CHECK(where(*root.member("c")) == "4:7");
    CHECK(where(*root.member("c")->member("d")) == "4:14");
    CHECK(root.member("c")->member("d")->number == -25);
    CHECK(root.member("nothing") == nullptr);
}

TEST_CASE("lines that end in CR LF count once") {
    const JsonNode root = read("{\r\n\"a\": 1,\r\n\"b\": 2}\r\n");
    CHECK(where(*root.member("a")) == "2:6");
    CHECK(where(*root.member("b")) == "3:6");
}

TEST_CASE("a byte order mark is no column") {
    const JsonNode root = read("\xEF\xBB\xBF{\"a\": 1,\n\"b\": 2}");
    CHECK(where(root) == "1:1");
    CHECK(where(*root.member("a")) == "1:7");
    CHECK(where(*root.member("b")) == "2:6");
}

TEST_CASE("escapes and brackets in text do not move the places") {
    const JsonNode root = read(R"({"q\"}": "a\\", "b": ["]", "\u00e9\"", 7]})");
    CHECK(root.members[0].key == "q\"}");
    CHECK(root.members[0].node.text == "a\\");
    const JsonNode& list = *root.member("b");
    CHECK(where(list) == "1:22");
    CHECK(list.items[1].text == "\xC3\xA9\"");
    CHECK(where(list.items[2]) == "1:40");
}

TEST_CASE("members keep the order of the file, empty ones too") {
    const JsonNode root = read("{\"z\": {}, \"a\": [], \"m\": \"\"}");
    REQUIRE(root.members.size() == 3);
    CHECK(root.members[0].key == "z");
    CHECK(root.members[2].key == "m");
    CHECK(root.member("z")->kind == JsonNode::Kind::object);
    CHECK(where(*root.member("m")) == "1:25");
}

TEST_CASE("a document may be one plain value") {
    CHECK(read("7").number == 7);
    CHECK(read(" \n \"x\" ").place.line == 2);
    CHECK(read("18446744073709551616").number == Approx(18446744073709551616.0));
}

TEST_CASE("duplicate keys are refused where they stand, nested ones too") {
    const Error flat = broken("{\"a\": 1,\n \"a\": 2}");
    CHECK(flat.where == "t.json:2:2");
    CHECK(flat.message.find("\"a\"") != std::string::npos);
    CHECK(broken("[{\"a\": 1}, {\"b\": {\"c\": 1, \"c\": 1}}]").where == "t.json:1:27");
    CHECK(read_json("[{\"a\": 1}, {\"a\": 1}]", "t.json"));
    CHECK(broken("{\"a\": 1, \"\\u0061\": 2}").message.find("second time") != std::string::npos);
}

TEST_CASE("nesting has a floor") {
    const auto nested = [](std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); };
    CHECK(read_json(nested(64), "t.json"));
    CHECK(broken(nested(65)).where == "t.json:1:65");
    CHECK(broken(nested(200000)).message.find("64") != std::string::npos);
    std::string objects;
    for (int i = 0; i < 70; ++i) objects += "{\"a\":";
    CHECK(broken(objects).message.find("64") != std::string::npos);
}

TEST_CASE("numbers must be finite") {
    CHECK(broken("{\"a\": 1,\n\"b\": 1e999}").where.substr(0, 9) == "t.json:2:");
    CHECK(broken("{\"a\": -1e999}").message.find("too large") != std::string::npos);
    broken("[NaN]");
    broken("[Infinity]");
    CHECK(read("[1e-999]").items[0].number == 0);
}

TEST_CASE("text must be UTF-8") {
    const Error fault = broken("{\"a\": \"\xFF\"}");
    CHECK(fault.message == "not UTF-8 text");
    CHECK(fault.where == "t.json: byte 8");
    broken("{\"a\": \"\xC3\"}");
    broken("\xFF\xFE{");
}

TEST_CASE("bad syntax is refused at its place") {
    CHECK(broken("{\"a\": 1,}").where == "t.json:1:9");
    CHECK(broken("{\"a\": 1\n \"b\": 2}").where.substr(0, 8) == "t.json:2");
    CHECK(broken("[1,\n2,\n x]").where.substr(0, 8) == "t.json:3");
    for (const char* text : {"", " ", "{", "[1", "{\"a\"}", "{'a': 1}", "[1] 2", "[01]", "[1 // one\n]", "\"open", "[\"\\x\"]", "[\"\t\"]",
                             "nul", "{\"a\": \"\\ud800\"}"}) {
        CAPTURE(text);
        const Error fault = broken(text);
        CHECK_FALSE(fault.message.empty());
        CHECK(fault.where.substr(0, 7) == "t.json:");
    }
}

TEST_CASE("a file with a byte order mark gives the places of errors as those of values") {
    CHECK(broken("\xEF\xBB\xBF{\"a\": 1,}").where == "t.json:1:9");
}

TEST_CASE("text beyond 16 MB is refused") {
    CHECK(broken(std::string((std::size_t{16} << 20) + 1, ' ')).message.find("16 MB") != std::string::npos);
}

}  // namespace json_tree_test
