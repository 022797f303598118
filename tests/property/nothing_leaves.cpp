// No line of a text leaves without a trace: it is a line, a setting, a heading or a note that is shown, or it is asked about.
#include <algorithm>
#include <random>

#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/knowledge.hpp"

using namespace standin;

namespace nothing_leaves_test {

const std::vector<std::string> pool{"2 kg pork shoulder",
                                    "a good 2 lb of pork, half fat half lean",
                                    "salt - a scant ounce",
                                    "salt, a pound",
                                    "36 g salt",
                                    "For the paste:",
                                    "To finish",
                                    "Seasoning per kg of meat",
                                    "g per kg",
                                    "Quantities in g",
                                    "Makes 4 kg",
                                    "batch: 5 kg",
                                    "Total 100 %",
                                    "Method",
                                    "Method: grind and mix.",
                                    "Mix 4 min, 2 C, rest o/n",
                                    "Grind it through the coarse plate and keep it very cold while you do.",
                                    "Serves 12",
                                    "From my kitchen to yours!",
                                    "By Bram Tolliver",
                                    "Prep time: 20 minutes",
                                    "4.8 from 37 votes",
                                    "1 bunch parsley",
                                    "chard 400 blanched",
                                    "300 g spnch",
                                    "no garlic",
                                    "pepper & salt",
                                    "2 g each pepper and cumin",
                                    "zest and juice of 2 limes",
                                    "20 g salt, 4 g black pepper, 2 g mace",
                                    "anaheim 300 g / shishito 100 g",
                                    "3 m sheep casings",
                                    "butcher twine",
                                    "lard for frying",
                                    "Coating (not in the mass)",
                                    "40 g breadcrumbs",
                                    "100 g breadcrumbs soaked in 100 ml milk",
                                    "Ingredients:",
                                    "Zutaten für 4 Personen",
                                    "| Food | Amount |",
                                    "***",
                                    "core: 72 C",
                                    "Note: for the feast",
                                    "Tip: serve it hot",
                                    "optional",
                                    "zorbel plonk",
                                    "1/2 cup swiss, grated",
                                    "spinach 1 kg @ 3.50",
                                    "at least 100 g ice",
                                    "2 %",
                                    "5"};

const std::vector<std::string> stock{"2 bunches of kale",
                                     "spinach 500 g @ 2.80",
                                     "Don't have:",
                                     "fresh dill",
                                     "Meat on hand",
                                     "pork 2 kg",
                                     "In the fridge:",
                                     "garden",
                                     "no cilantro",
                                     "plenty of thyme",
                                     "a sprig or two of mint",
                                     "Fehlt:",
                                     "limes x 4",
                                     "zorbles 200 g",
                                     "a bit of cumin left",
                                     "nothing else",
                                     "the rest I can buy",
                                     "sheep casings",
                                     "1 chicken (2 kg)",
                                     "Bits",
                                     "anaheim 300 g / shishito 100 g",
                                     "[ ] parsley",
                                     "eggs?",
                                     "dill - gone"};

bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

bool is_setting(const std::string& line) {
    const std::string key = line.substr(0, line.find(':'));
    return line.find(':') != std::string::npos && (key == "core" || key == "Note");
}

std::string told(const FormulaReading& reading) {
    std::string all = reading.title + "\n" + reading.note;
    for (const auto& reason : reading.told) all += "\n" + in_full(reason);
    return all;
}

class Texts {
public:
    explicit Texts(unsigned seed) : random_(seed) {}

    std::vector<std::string> lines(const std::vector<std::string>& from, std::size_t most) {
        std::vector<std::string> all;
        for (std::size_t n = 2 + below(most); n > 0; --n) all.push_back(from[below(from.size())]);
        return all;
    }

    std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_); }

private:
    std::mt19937 random_;
};

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const auto& line : lines) text += line + "\n";
    return text;
}

TEST_CASE("no line of a formula leaves without a trace", "[nothing-leaves][long]") {
    Texts texts(7);
    for (int round = 0; round < 400; ++round) {
        auto lines = texts.lines(pool, 12);
        if (texts.below(2)) lines.insert(lines.begin(), "Links of the house");
        const std::string text = joined(lines);
        const auto reading = read_closely(text, "f", knowledge());
        if (!reading) continue;  // refused aloud
        const std::string beside = told(*reading);
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const std::string where = "f:" + std::to_string(i + 1) + ":";
            const bool a_line = std::any_of(reading->lines.begin(), reading->lines.end(),
                                            [&](const auto& line) { return line.where.starts_with(where) || line.written == lines[i]; });
            const bool asked = std::any_of(reading->errors.begin(), reading->errors.end(), [&](const Error& error) {
                return error.where.starts_with(where) || says(error.message, lines[i]);
            });
            INFO(text << "lost: " << lines[i]);
            CHECK((a_line || asked || says(beside, lines[i]) || is_setting(lines[i])));
        }
    }
}

TEST_CASE("no line of a list leaves without a trace", "[nothing-leaves][long]") {
    Texts texts(8);
    for (int round = 0; round < 300; ++round) {
        const auto lines = texts.lines(stock, 8);
        const std::string text = joined(lines);
        const auto read = read_inventory(text, "f", knowledge());
        if (!read) continue;
        std::string aside;
        for (const auto& one : read->aside) aside += one + "\n";
        for (const auto& note : in_full(read->notes)) aside += note + "\n";
        for (std::size_t i = 0; i < lines.size(); ++i) {
            const std::string where = "f:" + std::to_string(i + 1) + ":";
            const bool told =
                std::any_of(read->read.begin(), read->read.end(), [&](const auto& line) { return line.where.starts_with(where); });
            INFO(text << "lost: " << lines[i]);
            CHECK((told || says(aside, lines[i])));
        }
    }
}

}  // namespace nothing_leaves_test
