// How lists of what is on hand are read that were judged before they were read (published/data/blind_lists_5.txt, whose first lines tell
// its form).
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/contains.hpp"
#include "formula/reading.hpp"
#include "support/catch.hpp"
#include "support/inventory.hpp"
#include "support/knowledge.hpp"
#include "support/places.hpp"

using namespace standin;

namespace blind_lists_test {

struct Judged {
    std::string line, truth;
};

struct JudgedList {
    std::string name;
    std::vector<Judged> lines;
};

std::vector<JudgedList> judged_lists() {
    std::ifstream file(std::filesystem::path(test_data_folder()) / "published/data/blind_lists_5.txt");
    std::vector<JudgedList> all;
    for (std::string text; std::getline(file, text);) {
        if (text.starts_with('#')) continue;
        if (text.starts_with("@ ")) all.push_back({text.substr(2), {}});
        else if (!all.empty()) {
            const auto arrow = text.find(" >> ");
            all.back().lines.push_back(arrow == std::string::npos ? Judged{} : Judged{text.substr(0, arrow), text.substr(arrow + 4)});
        }
    }
    return all;
}

bool told_as(const Inventory& stock, std::size_t line, ReasonKind kind) {
    const std::string where = "f:" + std::to_string(line) + ":";
    return std::any_of(stock.read.begin(), stock.read.end(),
                       [&](const StockRead& read) { return read.where.starts_with(where) && read.as.kind == kind; });
}

bool is_right(const Inventory& stock, std::size_t line, const std::string& truth) {
    std::istringstream words(truth);
    std::string food, grams;
    words >> food >> grams;
    if (food == "heading") return told_as(stock, line, ReasonKind::list_heading);
    if (food == "aside") return told_as(stock, line, ReasonKind::set_aside);
    if (food == "none") return contains(stock.missing, grams);
    const auto* found = item(stock, food);
    if (!found || grams.empty()) return found && !found->grams;
    constexpr double close = 0.02;
    const auto dots = grams.find("..");
    const double low = dots == std::string::npos ? std::stod(grams) * (1 - close) : std::stod(grams.substr(0, dots));
    const double high = dots == std::string::npos ? std::stod(grams) * (1 + close) : std::stod(grams.substr(dots + 2));
    return found->grams && *found->grams >= low && *found->grams <= high;
}

TEST_CASE("lists judged before they were read") {
    std::size_t right = 0, all = 0;
    std::string missed;
    const auto judge = [&](bool is_good, const std::string& line) {
        ++all;
        right += is_good;
        if (!is_good) missed += "\n  " + line;
    };
    for (const auto& list : judged_lists()) {
        std::string text;
        for (const auto& one : list.lines) text += one.line + "\n";
        if (list.name == "asked") {
            for (const auto& one : list.lines)
                judge(!read_inventory("thyme 2 bunches\nno zucchini\n" + one.line + "\n", "f", knowledge()), one.line);
            continue;
        }
        const auto stock = read_inventory(text, "f", knowledge());
        INFO(list.name);
        REQUIRE(stock);
        for (std::size_t i = 0; i < list.lines.size(); ++i)
            if (!list.lines[i].line.empty()) judge(is_right(*stock, i + 1, list.lines[i].truth), list.lines[i].line);
    }
    WARN("read right or rightly asked: " << right << " of " << all << "\nmissed:" << missed);
    CHECK(all >= 33);
    CHECK(right * 100 >= all * 94);
}

}  // namespace blind_lists_test
