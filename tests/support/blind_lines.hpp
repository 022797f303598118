// Lines judged before they were read: published/data/blind_lines_N.txt, whose first lines tell their form.
#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "support/places.hpp"

struct BlindLine {
    std::string line, foods;
    double low = 0, high = 0;           // grams; both 0: not told
    std::vector<std::string> prepared;  // all of these
};

struct BlindFormula {
    std::string kind, title;
    std::vector<BlindLine> lines;
};

inline BlindLine blind_line(const std::string& text) {
    constexpr double same_weight = 0.02;
    const auto arrow = text.find(" >> ");
    BlindLine out{text.substr(0, arrow), {}, 0, 0, {}};
    std::istringstream truth(text.substr(arrow + 4));
    std::string part;
    for (int field = 0; std::getline(truth, part, ';'); ++field) {
        std::istringstream words(part);
        std::string word;
        words >> word;
        if (field == 0) out.foods = word;
        else if (field == 1 && !word.empty()) {
            const auto dots = word.find("..");
            out.low = dots == std::string::npos ? std::stod(word) * (1 - same_weight) : std::stod(word.substr(0, dots));
            out.high = dots == std::string::npos ? std::stod(word) * (1 + same_weight) : std::stod(word.substr(dots + 2));
        } else if (word == "prep")
            while (words >> word) out.prepared.push_back(word);
    }
    return out;
}

inline std::vector<BlindFormula> blind_formulas(const std::string& name) {
    std::ifstream file(std::filesystem::path(test_data_folder()) / "published/data" / name);
    std::vector<BlindFormula> all;
    for (std::string text; std::getline(file, text);) {
        if (text.starts_with("@ ")) {
            const auto bar = text.find(" | ");
            all.push_back({text.substr(2, bar - 2), text.substr(bar + 3), {}});
        } else if (!text.starts_with('#') && text.find(" >> ") != std::string::npos) all.back().lines.push_back(blind_line(text));
    }
    return all;
}
