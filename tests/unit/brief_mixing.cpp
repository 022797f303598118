// A mass that is to stay loose: the sheet does not send its maker kneading until it is tacky.
#include <algorithm>

#include "standin/engine.hpp"
#include "standin/narrate.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace brief_mixing_test {

std::string mixing_of(const std::string& process) {
    static const Engine engine = [] {
        Options options;
        options.draws = 16;
        return Engine::open(std::move(options)).value();
    }();
    const auto formula =
        engine.read_formula("Sluice test sausage, invented\n2000 g pork shoulder\n34 g salt\n100 g water\n" + process, "test.txt");
    std::string text;
    for (const auto& step : engine.sheet(formula.value(), {}).value().steps) {
        if (step.task != BenchTask::salt_meat && step.task != BenchTask::mix_all) continue;
        const SheetStep told = told_in(step, Units::metric);
        text += told.how + " " + told.why + " ";
    }
    return text;
}

bool says(const std::string& text, const std::string& what) { return text.find(what) != std::string::npos; }

TEST_CASE("sheet: a minute of mixing is no kneading until tacky, in either order") {
    for (const std::string order : {"order: salt first\n", "order: all together\n"}) {
        CAPTURE(order);
        CHECK(says(mixing_of(order + "mixing: 1 min\n"), "not to be tacky"));
        CHECK_FALSE(says(mixing_of(order + "mixing: 1 min\n"), "upturned palm"));
        CHECK_FALSE(says(mixing_of(order + "mixing: 4 min\n"), "not to be tacky"));
        CHECK_FALSE(says(mixing_of(order), "not to be tacky"));
    }
}

}  // namespace brief_mixing_test
