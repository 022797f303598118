// The substitution lists of extension services, with what they name on hand and what it replaces missing: is it used, at their ratio?
#include <algorithm>
#include <cmath>

#include "published/proposed.hpp"
#include "published/rows.hpp"
#include "standin/engine.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace extension_adapt_test {

constexpr std::size_t from_column = 7, to_column = 8, word_columns = 9;
constexpr double factor = 1.5;  // how far a weight may lie from the published one

double grams_of(const Formula& formula, const std::string& food) {
    double sum = 0;
    for (const auto& line : formula.lines)
        if (line.ingredient == food) sum += line.grams.mid;
    return sum;
}

std::string whole(double number) { return std::to_string(std::lround(number)); }

struct Used {
    bool any = false, right = false;
    std::string weights;  // found and published, in tenths of a gram
};

// The first answer where only these foods may come in. What the batch has of them already does not count.
Used used(const Engine& engine, const std::string& missing, const std::vector<std::string>& foods, const std::vector<double>& ratios) {
    const double grams = sausage_grams(*knowledge().ingredient(missing));
    std::size_t place = 0;
    const Formula base = batch_with(missing, grams, place);
    AdaptRequest request;
    request.top = 1;
    request.have.emplace();
    request.have->missing = {missing};
    request.have->complete = true;
    for (const auto& line : base.lines)
        if (line.ingredient != missing) request.have->items.push_back({line.ingredient, std::nullopt});
    for (const auto& food : foods)
        if (grams_of(base, food) == 0) request.have->items.push_back({food, std::nullopt});
    const auto answer = engine.adapt(base, request);
    REQUIRE(answer);
    Used u;
    if (answer->variants.empty()) return u;
    std::size_t right = 0;
    for (std::size_t f = 0; f < foods.size(); ++f) {
        const double weighed = grams_of(answer->variants.front().formula, foods[f]) - grams_of(base, foods[f]);
        u.any = u.any || weighed > 0;
        u.weights += " " + whole(10 * weighed) + " for " + whole(10 * ratios[f] * grams);
        right += weighed <= factor * ratios[f] * grams && weighed >= ratios[f] * grams / factor;
    }
    u.right = right > 0 && right + 1 >= foods.size();  // of several one may be seasoning that the batch does not miss
    return u;
}

TEST_CASE("extension lists: the first variant takes what is on hand, at the published ratio", "[long]") {
    const Engine engine = opened(32);
    double rows = 0, any = 0, right = 0;
    std::string misses;
    for (const auto& row : published_rows("extension_substitutions.csv", word_columns)) {
        const std::string& missing = row.words[from_column];
        CAPTURE(missing, row.words[to_column]);
        const Used u = used(engine, missing, foods_of(row.words[to_column]), row.values);
        ++rows;
        any += u.any;
        right += u.right;
        if (!u.right) misses += "\n  " + missing + " -> " + row.words[to_column] + (u.any ? ":" + u.weights + " dg" : ": not used");
    }
    WARN("extension lists: of " << rows << " rows the first variant uses " << any << ", at the published ratio " << right << misses);
    CHECK(any >= 0.9 * rows);
}

}  // namespace extension_adapt_test
