// Every fault that a variant can have is found from its formula alone, whatever a solver says.
#include "adapt/verification/verify.hpp"

#include <limits>

#include "support/advising.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace verify_test {

Formula base() {
    Formula made = formula({line("pork-shoulder", 2000), line("spinach", 300, {"blanched"}), line("almond", 60), line("table-salt", 36)});
    made.lines[1].keep = true;
    return made;
}

// What is said of the base after `change`, under a request.
template <class Change>
std::string faults_after(Change change, AdaptRequest request = {}, const std::vector<std::string>& wants = {}) {
    Advising advising(base(), wants);
    const Context context = advising.context();
    const auto stock = Stock::of(base(), request, context);
    REQUIRE(stock);
    const SwapGraph graph(knowledge());
    const Problem problem = make_problem(base(), *stock, graph, advising.distance(), context);
    Formula variant = base();
    change(variant);
    std::string all;
    const auto before = SampledBatch(base(), context.sampled()).states(), after = SampledBatch(variant, context.sampled()).states();
    for (const auto& fault :
         faults_of(variant, problem, *stock, advising.distance().goals(), advising.distance(), {before, after}, context.nominal()))
        all += fault + "\n";
    return all;
}

void nothing(Formula&) {}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

AdaptRequest without(const char* what) {
    AdaptRequest request;
    request.without = {what};
    return request;
}

AdaptRequest having(std::vector<InventoryItem> items, std::vector<std::string> missing = {}) {
    AdaptRequest request;
    request.have.emplace();
    request.have->items = std::move(items);
    request.have->missing = std::move(missing);
    request.have->complete = false;
    return request;
}

TEST_CASE("a variant without fault has none") { CHECK(faults_after(nothing).empty()); }

TEST_CASE("a kept line may not be touched in any way") {
    const char* touched = "spinach was touched";
    CHECK(has(faults_after([](Formula& f) { f.lines[1].grams = exactly(299); }), touched));
    CHECK(has(faults_after([](Formula& f) { f.lines[1].prepared.clear(); }), touched));
    CHECK(has(faults_after([](Formula& f) { f.lines[1].weighed_prepared = true; }), touched));
    CHECK(has(faults_after([](Formula& f) { f.lines.erase(f.lines.begin() + 1); }), touched));
}

TEST_CASE("what is excluded may not pass, by name or by what it carries") {
    CHECK(has(faults_after(nothing, without("almond")), "almond is excluded"));
    CHECK(has(faults_after(nothing, without("tree nuts")), "almond is excluded"));
    CHECK(has(faults_after([](Formula& f) { f.lines.push_back(line("rusk", 20)); }, without("gluten")), "rusk is excluded"));
    CHECK_FALSE(has(faults_after([](Formula& f) { f.lines.erase(f.lines.begin() + 2); }, without("tree nuts")), "excluded"));
}

TEST_CASE("what is not there, or not in that amount, may not pass") {
    CHECK(has(faults_after(nothing, having({}, {"almond"})), "almond is not on hand"));
    CHECK(has(faults_after(nothing, having({{"almond", 59.0}})), "more almond than there is"));
    CHECK_FALSE(has(faults_after(nothing, having({{"almond", 60.0}})), "almond"));
    const auto twice = [](Formula& f) { f.lines.push_back(line("almond", 1)); };  // two lines of it count together
    CHECK(has(faults_after(twice, having({{"almond", 60.0}})), "more almond than there is"));
}

TEST_CASE("a line must weigh something") {
    for (const double grams : {0.0, -5.0, std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
        CAPTURE(grams);
        CHECK(has(faults_after([&](Formula& f) { f.lines[3].grams = exactly(grams); }), "table-salt has no weight"));
    }
}

TEST_CASE("the meat may not melt away") {
    CHECK(has(faults_after([](Formula& f) { f.lines[0].grams = exactly(900); }), "less meat"));
    CHECK_FALSE(has(faults_after([](Formula& f) { f.lines[0].grams = exactly(2000); }), "less meat"));
}

TEST_CASE("a condition that is broken is named; a word want is no condition") {
    CHECK(has(faults_after(nothing, {}, {"salt<=1.2"}), "salt<=1.2 is broken"));
    CHECK(faults_after(nothing, {}, {"salt<=2"}).empty());
    CHECK(has(faults_after(nothing, {}, {"fat<=5"}), "fat<=5 is broken"));
    CHECK(faults_after(nothing, {}, {"firmer"}).empty());
}

}  // namespace verify_test
