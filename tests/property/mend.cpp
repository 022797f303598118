// Random masses and words: nothing ever comes out, what goes in does what was asked at the draws, and caps and lists are kept.
#include "standin/mend.hpp"

#include <cmath>
#include <map>

#include "safety/exclusions.hpp"
#include "substitute/stock.hpp"
#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace mend_test {

constexpr std::uint64_t cases = 40;
constexpr double gram = 1e-6;

struct Told {
    Formula mass;
    MendRequest request;
    MendAnswer answer;
};

const std::vector<Told>& all() {
    static const std::vector<Told> told = [] {
        static const char* words[] = {
            "flat", "needs salt", "too salty", "too sour", "not sour enough", "too hot",     "not hot enough", "crumbly", "mushy",
            "dry",  "wet",        "greasy",    "grey",     "too garlicky",    "needs herbs", "much too hot",   "bitter"};
        const Engine engine = opened(64);
        std::vector<Told> done;
        for (std::uint64_t n = 0; n < cases; ++n) {
            CaseMaker make(n + 500);
            Told one;
            one.mass = make.formula();
            one.request.tasted = {words[make.below(std::size(words))]};
            if (make.chance(0.4)) one.request.tasted.emplace_back(words[make.below(std::size(words))]);
            if (make.chance(0.3)) one.request.have = make.inventory(one.mass);
            if (make.chance(0.3)) one.request.measured = {"pH 5.4"};
            auto answer = mend(engine, one.mass, one.request);
            if (!answer) throw std::runtime_error(answer.error().message);
            one.answer = std::move(*answer);
            done.push_back(std::move(one));
        }
        return done;
    }();
    return told;
}

std::map<std::string, double> by_food(const Formula& formula) {
    std::map<std::string, double> grams;
    for (const auto& line : formula.lines) grams[line.ingredient] += line.grams.mid;
    return grams;
}

TEST_CASE("mend: nothing is ever taken out, and the making stays as it was") {
    for (const auto& [mass, request, answer] : all())
        for (const auto& way : answer.ways) {
            const auto after = by_food(way.formula);
            for (const auto& [id, grams] : by_food(mass)) CHECK(after.at(id) >= grams - gram);
            CHECK(way.formula.process.order == mass.process.order);
            CHECK(way.formula.process.core_c == mass.process.core_c);
            double put = 0, sum = 0;
            for (const auto& in : way.add) put += in.grams + in.water_g;
            for (const auto& in : way.plain) put += in.grams;
            for (const auto& [id, grams] : after) sum += grams;
            for (const auto& [id, grams] : by_food(mass)) sum -= grams;
            CHECK(std::abs(put - sum) < 1e-6 * (1 + put));
        }
}

TEST_CASE("mend: what is said to be mended is so in seven of ten draws or more") {
    std::size_t met = 0, ways = 0;
    for (const auto& [mass, request, answer] : all())
        for (const auto& way : answer.ways) {
            ++ways;
            met += way.met;
            for (const auto& want : way.wants) CHECK(want.met == (want.chance >= 0.7 - 1e-9));
        }
    CHECK(ways > 15);
    CHECK(met > ways / 2);
}

TEST_CASE("mend: every answer has a way, or words for why there is none") {
    for (const auto& [mass, request, answer] : all()) {
        bool practice = false;
        for (const auto& word : answer.words) practice = practice || word.there || !word.judged;
        CHECK((!answer.ways.empty() || !answer.cannot.empty() || !answer.discard.empty() || !answer.opposed.empty() || practice));
        CHECK_FALSE(answer.on_page.cautions.empty());
        CHECK(answer.on_page.core.core_c > 0);
    }
}

TEST_CASE("mend: what may be in a kilo is kept, and what the list does not have stays out") {
    for (const auto& [mass, request, answer] : all()) {
        const auto before = by_food(mass);
        for (const auto& way : answer.ways) {
            double batch = 0;
            for (const auto& [id, grams] : by_food(way.formula)) batch += grams;
            for (const auto& in : way.add) {
                const Ingredient& food = *knowledge().ingredient(in.ingredient);
                if (food.most_g_per_kg && !before.count(in.ingredient))
                    CHECK(in.grams <= food.most_g_per_kg->band.mid * batch / 1000 * (1 + 1e-9));
                if (!request.have) continue;
                for (const auto& missing : request.have->missing) CHECK(in.ingredient != missing);
                for (const auto& item : request.have->items)
                    if (item.ingredient == in.ingredient && item.grams) CHECK(in.grams <= *item.grams * (1 + 1e-9));
            }
        }
    }
}

}  // namespace mend_test
