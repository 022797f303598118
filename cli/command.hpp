// What the command line asks for, and the commands that answer it.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "standin/advice.hpp"
#include "standin/colour_part.hpp"
#include "standin/property.hpp"
#include "standin/reason.hpp"
#include "standin/vocabulary.hpp"

namespace standin::cli {

enum class ColourChoice { when_fit, always, never };
using standin::ColourPart;
using standin::Units;

/// A command line, understood.
struct Call {
    std::string command;
    std::vector<std::string> operands;  ///< what is not an option: files, lines, words
    bool json = false, quiet = false, verbose = false;
    ColourChoice colour = ColourChoice::when_fit;
    std::string knowledge, rules;
    std::uint64_t seed = 1;
    std::optional<int> month;
    int season_shift = 0;
    std::size_t draws = 512;
    std::optional<std::string> have, prices;
    std::optional<std::string> kitchen;  ///< absent: kitchen.txt beside the formula, where there is one; "none": no such
    std::vector<std::string> wants, without, keep, most, least;
    std::vector<UseInstead> use;
    std::size_t changes = 0;         ///< 0: no limit
    std::size_t sure = 50;           ///< %
    std::optional<std::size_t> top;  ///< absent: as many as the command likes
    std::string to;
    bool ask = false;  ///< ask the maker about each doubt
    std::optional<Role> role;
    std::optional<Property> why;
    std::optional<ColourPart> why_colour;
    std::string meat, total, piece, casing, link;
    bool as_much = false;
    std::vector<std::string> only;
    std::optional<Units> units;                ///< absent: as the maker wrote the formula
    bool full = false;                         ///< every part of the answer, with the numbers behind it
    std::string save;                          ///< where the formula asked for goes; empty: nowhere
    bool sheet = false;                        ///< the bench sheet of a variant in place of the answer
    std::optional<std::size_t> variant, take;  ///< which one is meant, from 1
    std::string html;                          ///< where a page goes; empty: none
    std::vector<std::string> tasted, measured, make;
    std::string made;
};

/// Exit codes; those from 64 up as sysexits.h has them.
enum Exit : int { done = 0, unmet = 1, usage = 64, bad_data = 65, no_file = 66, cannot_create = 73, cannot_write = 74 };

struct Command {
    std::string_view name, operands, summary;
    std::string_view detail;                   ///< a sentence or two for its help page
    std::array<std::string_view, 2> examples;  ///< that run
    std::size_t least, most;                   ///< how many operands
    int (*run)(const Call&);
};

std::span<const Command> commands();

int run_predict(const Call& call);
int run_swaps(const Call& call);
int run_adapt(const Call& call);
int run_mend(const Call& call);
int run_plan(const Call& call);
int run_compare(const Call& call);
int run_sheet(const Call& call);
int run_lookup(const Call& call);
int run_graph(const Call& call);
int run_check(const Call& call);
int run_convert(const Call& call);

}  // namespace standin::cli
