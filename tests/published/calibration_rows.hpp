// The tables of the calibration report (tests/published/data/calibration_*.csv). Cells stand between ';', lines with '#' are remarks.
#pragma once

#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

#include "standin/band.hpp"
#include "support/places.hpp"

namespace calibration {

using Cells = std::vector<std::string>;

inline std::vector<Cells> cells_of(const std::string& name) {
    std::ifstream file(std::filesystem::path(test_data_folder()) / "published" / "data" / name);
    std::vector<Cells> rows;
    bool head = true;
    for (std::string line; std::getline(file, line);) {
        if (line.empty() || line[0] == '#') continue;
        if (std::exchange(head, false)) continue;
        std::istringstream text(line);
        Cells cells;
        for (std::string cell; std::getline(text, cell, ';');) cells.push_back(cell);
        rows.push_back(std::move(cells));
    }
    return rows;
}

/// One published measurement: of a product (by its key in calibration_products.csv) or of what a model function is fed directly.
struct Measured {
    std::string what, quantity, inputs;
    double value = 0;
    std::optional<double> sd;
    std::string support;  ///< good, fair, weak
    std::string set;      ///< published, left out, kept aside; used: a constant rests on it
    std::string without;  ///< the row of calibration_left_out.csv whose constants hold; empty: those of the knowledge
    std::string source;
    bool direct = false;
};

inline std::vector<Measured> measurements() {
    std::vector<Measured> all;
    for (const bool direct : {false, true})
        for (const auto& c : cells_of(direct ? "calibration_direct.csv" : "calibration_measurements.csv")) {
            const std::size_t n = direct ? 3 : 2;  // where the numbers start
            Measured m{c.at(0),
                       c.at(1),
                       direct ? c.at(2) : std::string(),
                       std::stod(c.at(n)),
                       std::nullopt,
                       c.at(n + 2),
                       c.at(n + 3),
                       c.at(n + 4),
                       c.at(n + 5),
                       direct};
            if (!c.at(n + 1).empty()) m.sd = std::stod(c.at(n + 1));
            all.push_back(std::move(m));
        }
    return all;
}

/// Formula text by key.
inline std::map<std::string, std::string> products() {
    std::map<std::string, std::string> all;
    for (const auto& cells : cells_of("calibration_products.csv")) {
        std::string text = cells.at(1);
        for (std::size_t at; (at = text.find(" | ")) != std::string::npos;) text.replace(at, 3, "\n");
        all.emplace(cells.at(0), std::move(text));
    }
    return all;
}

/// Parameter bands that hold when a published row is left out of the fit.
using Refit = std::map<std::string, standin::Band>;

inline std::map<std::string, Refit> refits() {
    std::map<std::string, Refit> all;
    for (const auto& c : cells_of("calibration_left_out.csv"))
        all[c.at(0)][c.at(1)] = {std::stod(c.at(3)), std::stod(c.at(2)), std::stod(c.at(4))};
    return all;
}

/// "ingredient=cayenne minutes=2" as words and numbers by key.
class Inputs {
public:
    explicit Inputs(const std::string& text) {
        std::istringstream words(text);
        for (std::string word; words >> word;) {
            const auto at = word.find('=');
            values_[word.substr(0, at)] = word.substr(at + 1);
        }
    }
    const std::string& word(const std::string& key) const { return values_.at(key); }
    double number(const std::string& key) const { return std::stod(values_.at(key)); }

private:
    std::map<std::string, std::string> values_;
};

}  // namespace calibration
