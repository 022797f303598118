// Rows of tests/published/data/*.csv: some leading words, then numbers. Lines with '#' tell the source; the first other line is the head.
#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "support/places.hpp"

struct PublishedRow {
    std::vector<std::string> words;
    std::vector<double> values;
};

inline std::vector<PublishedRow> published_rows(const std::string& name, std::size_t words) {
    std::ifstream file(std::filesystem::path(test_data_folder()) / "published" / "data" / name);
    std::vector<PublishedRow> rows;
    bool head = true;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line[0] == '#') continue;
        if (std::exchange(head, false)) continue;
        PublishedRow row;
        std::istringstream cells(line);
        for (std::string cell; std::getline(cells, cell, ',');) {
            if (row.words.size() < words) row.words.push_back(cell);
            else row.values.push_back(std::stod(cell));
        }
        rows.push_back(std::move(row));
    }
    return rows;
}
