#include "core/names.hpp"

#include <algorithm>
#include <random>

#include "support/catch.hpp"

using namespace standin;

namespace names_test {

// The textbook recursion with swaps of neighbours, each letter moved once at most.
std::size_t plain_distance(const std::string& a, const std::string& b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i)
        for (std::size_t j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = i + j;
                continue;
            }
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] != b[j - 1])});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

TEST_CASE("names fold alike whatever case, accents, hyphens and number they come in") {
    CHECK(fold("Jalape\xC3\xB1os") == fold("jalapeno"));
    CHECK(fold("JALAPE\xC3\x91O") == "jalapeno");
    CHECK(fold("flat-leaf  Parsley ") == "flat leaf parsley");
    CHECK(fold("cr\xC3\xA8me fra\xC3\xAE"
               "che") == "creme fraiche");
    CHECK(fold("leaves") == "leaf");
    CHECK(fold("ch\xC3\xA2taigne") == "chataigne");
    CHECK(fold("") == "");
    CHECK(fold("  - ") == "");
}

TEST_CASE("accents written as a letter and a mark of its own fold like one letter") {
    CHECK(fold("jalapen\xCC\x83o") == fold("jalape\xC3\xB1o"));
}

TEST_CASE("a curly apostrophe is an apostrophe") { CHECK(fold("lamb\xE2\x80\x99s lettuce") == fold("lamb's lettuce")); }

TEST_CASE("plurals") {
    CHECK(fold("tomatoes") == "tomato");
    CHECK(fold("radishes") == "radish");
    CHECK(fold("bunches") == "bunch");
    CHECK(fold("anchovies") == fold("anchovy"));
    CHECK(fold("serranos") == "serrano");
    CHECK(fold("chiles") == "chile");
    CHECK(fold("asparagus") == "asparagus");
    CHECK(fold("molasses") == fold("molasses"));
    CHECK(fold("cress") == "cress");
    CHECK(fold("onions, chopped") == fold("onion, chopped"));
}

TEST_CASE("folding twice changes nothing") {
    for (const char* name : {"Jalape\xC3\xB1os", "flat-leaf parsley", "radishes", "loaves of bread", "anchovies", "molasses", "couscous",
                             "leeks", "peas", "chives", "olives", "swiss"})
        CHECK(fold(fold(name)) == fold(name));
}

TEST_CASE("broken UTF-8 is dropped, not fatal") {
    CHECK(fold("pars\xFFley") == "parsley");
    CHECK(fold("parsley\xC3") == "parsley");
    CHECK(fold("\x80\x80") == "");
}

TEST_CASE("edit distance counts inserts, deletes, replacements and swaps of neighbours") {
    CHECK(edit_distance("spinach", "spinach", 3) == 0);
    CHECK(edit_distance("spinach", "spinich", 3) == 1);
    CHECK(edit_distance("spinach", "spniach", 3) == 1);
    CHECK(edit_distance("spinach", "spinachs", 3) == 1);
    CHECK(edit_distance("spinach", "pinach", 3) == 1);
    CHECK(edit_distance("", "abc", 3) == 3);
    CHECK(edit_distance("kitten", "sitting", 3) == 3);
}

TEST_CASE("edit distance stops at its limit") {
    CHECK(edit_distance("abcdef", "uvwxyz", 2) == 3);
    CHECK(edit_distance("a", "abcdef", 2) == 3);
    CHECK(edit_distance("abc", "xyz", 0) == 1);
}

TEST_CASE("edit distance against the full table") {
    std::mt19937_64 random(11);
    const auto word = [&] {
        std::string w(random() % 8, 'a');
        for (auto& c : w) c = static_cast<char>('a' + random() % 3);
        return w;
    };
    for (int i = 0; i < 3000; ++i) {
        const std::string a = word(), b = word();
        const std::size_t limit = random() % 6, real = plain_distance(a, b);
        CAPTURE(a, b, limit);
        CHECK(edit_distance(a, b, limit) == std::min(real, limit + 1));
    }
}

TEST_CASE("nearest names: few edits first, shared words after") {
    const std::vector<std::string_view> known{"spinach", "baby spinach", "parsley", "sorrel", "serrano"};
    CHECK(nearest("spinich", known).front() == 0);
    CHECK(nearest("baby spinach leaf", known, 1) == std::vector<std::size_t>{1});
    CHECK(nearest("serano", known, 1) == std::vector<std::size_t>{4});
    CHECK(nearest("zzzzzzzz", known).empty());
    CHECK(nearest("spinach", known, 0).empty());
    CHECK(nearest("spinach", {}).empty());
}

}  // namespace names_test
