// Tables of ingredient lines: cells with commas, some of them in quotes. Lines with '#' explain; the first other line is the head.
#pragma once

#include <filesystem>
#include <fstream>
#include <string>
#include <utility>
#include <vector>

#include "support/places.hpp"

inline std::vector<std::string> cells_of(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"') quoted = !quoted;
        else if (c == ',' && !quoted) cells.emplace_back();
        else cells.back() += c;
    }
    return cells;
}

/// `name`: from the folder of the tests on.
inline std::vector<std::vector<std::string>> line_rows(const std::string& name) {
    std::ifstream file(std::filesystem::path(test_data_folder()) / name);
    std::vector<std::vector<std::string>> all;
    bool head = true;
    for (std::string line; std::getline(file, line);)
        if (!line.empty() && line[0] != '#' && !std::exchange(head, false)) all.push_back(cells_of(line));
    return all;
}

/// Whether `one` is among the words that stand with | between.
inline bool among(const std::string& one, const std::string& several) {
    return ("|" + several + "|").find("|" + one + "|") != std::string::npos;
}
