// What is written reads back, and nothing crashes the reader.
#include "formula/reading.hpp"

#include <algorithm>
#include <cmath>

#include "formula/hazards/hazards.hpp"
#include "knowledge/index/effects.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"
#include "support/line_rows.hpp"

using namespace standin;

namespace reading_test {

class Maker {
public:
    explicit Maker(unsigned seed) : random_(seed) {}

    Formula formula() {
        Formula made;
        made.title = pick(std::vector<std::string>{"Hedge", "2 kg of luck", "rest: a title", "", "# odd", "Two, three & four"});
        for (std::size_t n = 1 + below(8); n > 0; --n) made.lines.push_back(line());
        if (below(2)) made.note = "first: note\nsecond";
        if (below(2)) made.process.rest_h = static_cast<double>(1 + below(48));
        if (below(2)) made.process.plate_mm = static_cast<double>(2 + below(10));
        return made;
    }

    std::string bytes(std::size_t most) {
        std::string out(below(most), '\0');
        for (auto& c : out) c = static_cast<char>(below(256));
        return out;
    }

    // Pieces of real lines in any order: gets further into the reader than bytes do.
    std::string scraps(std::size_t most) {
        static const std::vector<std::string> pieces{
            "1",      "2.5",  "½",     "1/2",   "3-4",    "2 x",      "400",   "g",       "lb",      "oz",     "cup",
            "tins",   "a",    "pinch", "of",    "%",      "meat",     "per",   "kg",      "(",       ")",      "[",
            "]",      ",",    "-",     "–",     "/",      "|",        "salt",  "pork",    "or",      "and",    "lean",
            "fat",    "leaf", "juice", "zest",  "lemon",  "blanched", "3 min", "cold",    "each",    "about",  "\n",
            "[keep]", "x",    "clove", "bunch", "half a", "..",       "\t",    "spinach", "chopped", "garlic", "[weighed first]",
            ":",      "less", "plus",  "to",    "peeled"};
        std::string out;
        for (std::size_t n = below(most); n > 0; --n) out += pick(pieces) + (below(4) ? " " : "");
        return out;
    }

    std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_); }

private:
    template <class T>
    const T& pick(const std::vector<T>& all) {
        return all[below(all.size())];
    }

    // A food that is only safe boiled is not read back raw.
    Line line() {
        for (;;) {
            Line made = any_line();
            std::string words = knowledge().ingredient(made.ingredient)->names.front();
            for (const auto& step : made.prepared) words += ", " + knowledge().preparation(step.preparation)->names.front();
            if (!danger_of_food(words, made, knowledge())) return made;
        }
    }

    Line any_line() {
        const auto& records = knowledge().records();
        Line made;
        const Ingredient& ingredient = pick(records.ingredients);
        made.ingredient = ingredient.id;
        const double mid = static_cast<double>(1 + below(400000)) / 100;
        const double spread = below(3) ? 0 : static_cast<double>(below(30)) / 100;
        made.grams = {std::round(mid * (1 - spread) * 100) / 100, mid, std::round(mid * (1 + spread) * 100) / 100};
        if (made.grams.low <= 0) made.grams = {mid, mid, mid};
        for (std::size_t n = below(3); n > 0; --n) {
            const Preparation& step = pick(records.preparations);
            if (step.id == "raw" || !effect_on(step, ingredient.tissue)) continue;
            if (step.id.find("roasted") == 0 || has_step(made.prepared, step.id)) continue;  // said twice is done once; nuts are toasted
            if (knowledge().ingredient_named(step.names.front() + " " + ingredient.names.front())) continue;  // pickled jalapeño is sold so
            made.prepared.push_back({step.id, below(3) ? std::nullopt : std::optional<double>(1 + below(20))});
        }
        made.weighed_prepared = !made.prepared.empty() && below(2);
        made.keep = below(4) == 0;
        // Four pieces of turmeric are roots, whatever weight stands beside.
        if (below(4) == 0 && ingredient.tissue != Tissue::dry) made.count = static_cast<double>(1 + below(9));
        if (below(6) == 0) made.declared.push_back({"mustard", "contains mustard"});
        if (std::find(ingredient.allergens.begin(), ingredient.allergens.end(), "mustard") != ingredient.allergens.end())
            made.declared.clear();
        return made;
    }

    std::mt19937 random_;
};

bool near(double a, double b) { return std::abs(a - b) <= 1e-6 * std::max(1.0, std::abs(a)); }

std::string difference(const Formula& a, const Formula& b) {
    if (a.title != b.title) return "title";
    if (a.note != b.note) return "note";
    if (a.lines.size() != b.lines.size()) return "number of lines";
    for (std::size_t i = 0; i < a.lines.size(); ++i) {
        const Line &x = a.lines[i], &y = b.lines[i];
        const std::string at = "line " + std::to_string(i + 1) + " ";
        if (x.ingredient != y.ingredient) return at + "ingredient " + x.ingredient + " " + y.ingredient;
        if (!near(x.grams.low, y.grams.low) || !near(x.grams.mid, y.grams.mid) || !near(x.grams.high, y.grams.high)) return at + "grams";
        if (x.prepared != y.prepared) return at + "prepared";
        if (x.weighed_prepared != y.weighed_prepared) return at + "weighed";
        if (x.declared != y.declared) return at + "declared";
        if (x.fat_pct.has_value() != y.fat_pct.has_value() || (x.fat_pct && !near(x.fat_pct->mid, y.fat_pct->mid))) return at + "fat";
        if (x.keep != y.keep || x.count != y.count) return at + "keep or count";
    }
    if (a.process.rest_h != b.process.rest_h || a.process.plate_mm != b.process.plate_mm) return "process";
    return {};
}

TEST_CASE("a printed formula reads back the same, in every form") {
    Maker maker(7);
    for (int i = 0; i < 150; ++i) {
        const Formula made = maker.formula();
        for (const auto& text : {formula_text(made, knowledge()), formula_json(made, knowledge()), formula_jsonld(made, knowledge())}) {
            INFO(text);
            const auto back = read_formula(text, "f", knowledge());
            if (!back) FAIL(back.error().where + " " + back.error().message);
            const std::string odd = difference(made, *back);
            INFO(odd);
            CHECK(odd.empty());
        }
    }
}

TEST_CASE("no text crashes the reader, and each gets an answer") {
    Maker maker(11);
    for (int i = 0; i < 200; ++i)
        for (const auto& text :
             {maker.bytes(300), "1 g " + maker.bytes(60), "{\"@type\":\"Recipe\",\"recipeIngredient\":[\"" + maker.bytes(40),
              "<html>" + maker.bytes(200), maker.scraps(30), "Title\n" + maker.scraps(40)}) {
            const auto strict = read_formula(text, "f", knowledge());
            const auto close = read_closely(text, "f", knowledge());
            CHECK((strict || !strict.error().message.empty()));
            // What is read strictly is read closely, and the other way round.
            CHECK(strict.has_value() == (close && close->formula));
            read_inventory(text, "f", knowledge());
        }
}

TEST_CASE("large and deep input") {
    const std::string million(1000000, 'x');
    CHECK_FALSE(read_formula("T\n1 g " + million, "f", knowledge()));
    CHECK_FALSE(read_formula("T\n" + std::string(1000000, '('), "f", knowledge()));
    CHECK_FALSE(read_formula(std::string(1000000, '['), "f", knowledge()));
    CHECK_FALSE(read_formula("{\"@graph\":" + std::string(100000, '['), "f", knowledge()));
    std::string deep = "<html>";
    for (int i = 0; i < 200000; ++i) deep += "<div>";
    CHECK_FALSE(read_formula(deep, "f", knowledge()));
    CHECK_FALSE(read_formula(deep + "<script type=\"application/ld+json\">{\"@type\":", "f", knowledge()));
    CHECK_FALSE(read_formula(std::string("1 g salt\0", 9), "f", knowledge()));
    CHECK_FALSE(read_formula("1 g salt\xC3(", "f", knowledge()));
}

TEST_CASE("lines with slips in them are read the same way by all readers, and what is read reads back") {
    std::vector<std::string> lines;
    for (const auto& row : line_rows("published/data/formula_lines.csv")) lines.push_back(row[1]);
    Maker maker(5);
    std::size_t understood = 0;
    for (int i = 0; i < 1500; ++i) {
        std::string line = lines[maker.below(lines.size())];
        for (std::size_t n = maker.below(3); n > 0 && !line.empty(); --n) {
            const std::size_t at = maker.below(line.size());
            if (maker.below(2)) line.erase(at, 1 + maker.below(2));
            else line.insert(at, maker.scraps(2));
        }
        const std::string text = "T\n" + line;
        const auto made = read_formula(text, "f", knowledge());
        const auto close = read_closely(text, "f", knowledge());
        INFO(text);
        CHECK(made.has_value() == (close && close->formula));
        if (!made) continue;
        ++understood;
        for (const auto& l : made->lines) CHECK((l.grams.low > 0 && l.grams.low <= l.grams.mid && l.grams.mid <= l.grams.high));
        const auto back = read_formula(formula_text(*made, knowledge()), "f", knowledge());
        REQUIRE(back);
        CHECK(difference(*made, *back).empty());
    }
    CHECK(understood > 200);
}

}  // namespace reading_test
