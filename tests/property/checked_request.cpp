// Requests broken at random: an answer or an error in words, never a crash, and no answer with a number that is none.
#include <cmath>
#include <limits>

#include "standin/engine.hpp"
#include "standin/mend.hpp"
#include "standin/plan.hpp"
#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace checked_request_test {

// Sound requests and broken ones, of words and numbers drawn at random.
class Asker {
public:
    explicit Asker(std::uint64_t number) : make_(number) {}

    Formula formula() { return make_.formula(); }

    AdaptRequest adapt() {
        AdaptRequest asked;
        asked.top = 1;
        if (one_of(2)) return asked;
        asked.wants = some({"firmer", "heat<=3", "salt=1.6", "ph>=", "bind<=nan", "moonstone", "", "hotter", "loss<=1e9"});
        asked.without = some({"nuts", "milk", "", "moonstone", "nuts and milk", "\xFF"});
        asked.keep = some({"spinach", "", "moonstone"});
        if (one_of(2)) asked.have = stock();
        if (one_of(4)) asked.use.push_back({word(), word()});
        if (one_of(4)) asked.most.push_back({word(), number()});
        if (one_of(4)) asked.least.push_back({word(), number()});
        if (one_of(3)) asked.meat = weight();
        asked.as_much = one_of(4);
        asked.changes = make_.below(4);
        asked.top = make_.below(3);
        if (one_of(3)) asked.sure = number();
        return asked;
    }

    MendRequest mend() {
        MendRequest asked;
        asked.tasted = {"flat"};
        if (one_of(2)) return asked;
        asked.tasted = some({"flat", "too sour", "rubbery", "", "moonstone", "too hot"});
        asked.measured = some({"pH 4.9", "salt 2.4 %", "pH 77", "", "salt"});
        if (one_of(2)) asked.made = weight();
        if (one_of(2)) asked.have = stock();
        asked.without = some({"milk", "moonstone"});
        if (one_of(3)) asked.sure = number();
        asked.top = make_.below(3);
        return asked;
    }

    SheetRequest sheet() {
        SheetRequest asked;
        if (one_of(2)) return asked;
        if (one_of(2)) asked.meat = weight();
        if (one_of(4)) asked.total = weight();
        if (one_of(4)) asked.piece = weight();
        asked.only = some({"spinach 400 g", "spinach", "", "-5 g salt"});
        if (one_of(3)) asked.casing = one_of(2) ? "32 mm" : weight();
        if (one_of(3)) asked.link = one_of(2) ? "12 cm" : weight();
        if (one_of(3)) asked.have = stock();
        return asked;
    }

    PlanRequest plan() {
        PlanRequest asked;
        for (std::size_t n = make_.below(3); n > 0; --n) asked.formulas.push_back(make_.formula());
        asked.have = stock();
        asked.without = some({"nuts", "", "moonstone"});
        return asked;
    }

private:
    bool one_of(std::size_t n) { return make_.below(n) == 0; }

    double number() {
        constexpr double numbers[] = {
            std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), -500, 0, 0.8, 1, 100, 1e12};
        return numbers[make_.below(std::size(numbers))];
    }

    std::string word() {
        const std::string words[] = {"spinach", "pork-shoulder", "table-salt", "", "moonstone", "\xFF\xFE", std::string(3000, 'x')};
        return words[make_.below(std::size(words))];
    }

    std::string weight() {
        const std::string weights[] = {"2.8 kg", "-1 kg", "0 g", "", "some", "nan", "1e300 kg", "5 lb"};
        return weights[make_.below(std::size(weights))];
    }

    std::vector<std::string> some(std::vector<std::string> of) {
        std::vector<std::string> chosen;
        for (std::size_t n = make_.below(3); n > 0; --n) chosen.push_back(of[make_.below(of.size())]);
        return chosen;
    }

    Inventory stock() {
        Inventory stock;
        for (std::size_t n = make_.below(4); n > 0; --n) {
            InventoryItem item{word(), {}};
            if (one_of(2)) item.grams = number();
            stock.items.push_back(std::move(item));
        }
        if (one_of(2)) stock.missing.push_back(word());
        if (one_of(2)) stock.complete = one_of(2);
        return stock;
    }

    CaseMaker make_;
};

bool in_numbers(const Prediction& prediction) {
    bool all = true;
    for_each_property([&](Property p) {
        const Band& band = prediction.properties[p];
        all = all && std::isfinite(band.low) && std::isfinite(band.mid) && std::isfinite(band.high);
    });
    return all;
}

template <class Answer>
bool refused(const Result<Answer>& answer) {
    if (!answer) CHECK_FALSE(answer.error().message.empty());
    return !answer;
}

TEST_CASE("a request broken at random gives an answer in numbers, or an error in words") {
    const Engine engine = opened(16);
    std::size_t answered = 0, turned_down = 0;
    for (std::uint64_t n = 0; n < 120; ++n) {
        CAPTURE(n);
        Asker ask(n);
        const Formula formula = ask.formula();
        const auto count = [&](bool no) { ++(no ? turned_down : answered); };
        const auto adapted = engine.adapt(formula, ask.adapt());
        count(refused(adapted));
        if (adapted)
            for (const auto& variant : adapted->variants) CHECK((in_numbers(variant.prediction) && std::isfinite(variant.distance)));
        const auto mended = mend(engine, formula, ask.mend());
        count(refused(mended));
        if (mended) CHECK(in_numbers(mended->base));
        const auto sheet = engine.sheet(formula, ask.sheet());
        count(refused(sheet));
        if (sheet)
            for (const auto& weight : sheet->weights) CHECK((std::isfinite(weight.grams) && weight.grams >= 0));
        const auto planned = plan(engine, ask.plan());
        count(refused(planned));
        if (planned)
            for (const auto& sausage : planned->sausages) CHECK((std::isfinite(sausage.made_g) && sausage.made_g >= 0));
    }
    CHECK(answered > 60);
    CHECK(turned_down > 60);
}

}  // namespace checked_request_test
