// What a batch costs by the maker's own price list.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "standin/band.hpp"
#include "standin/reason.hpp"

namespace standin {

/// What so much of a food costs, as the maker wrote it.
struct Price {
    std::string ingredient;  ///< id
    double money = 0;        ///< in the currency of the list
    Band grams;              ///< that one gets for it; wide where it is sold by the bunch or the piece
    bool trimmed = false;    ///< `grams` are without what is cut away, as bunches and pieces are reckoned; else as bought
    std::string written, where;
};

struct PriceList {
    std::string name;      ///< of the file
    std::string currency;  ///< word or sign as first written; empty: none was
    std::vector<Price> prices;
    std::vector<Reason> notes;  ///< what the reader took upon itself
};

struct CostLine {
    std::size_t line = 0;  ///< of the formula
    Band money;            ///< for what must be bought for it
};

/// Money in the currency of the list. Lines without a price are not in it: then it costs at least so much.
struct Cost {
    std::string list, currency;
    Band batch;  ///< of all priced lines
    Band raw_kg, cooked_kg;
    std::string piece;  ///< link or patty
    double piece_g = 0;
    Band piece_money;
    std::vector<CostLine> lines;
    std::vector<std::string> unpriced;  ///< names, each once; water from the tap costs nothing
    std::vector<Reason> notes;
};

/// How much more a kilo of the raw mass costs than that of another formula; below zero it saves.
struct CostChange {
    std::string currency;
    Band raw_kg;
    std::vector<std::string> unpriced;  ///< what came in or changed and has no price
};

}  // namespace standin
