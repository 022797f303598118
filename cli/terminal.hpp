// What the terminal can show.
#pragma once

#include <string>
#include <string_view>

#include "command.hpp"

namespace standin::cli {

/// How a page looks.
struct Look {
    bool colour = false;
    int width = 80;

    std::string bold(std::string_view text) const;
    std::string dim(std::string_view text) const;
    /// Two columns in a colour given as "#rrggbb"; two spaces without colour.
    std::string swatch(std::string_view hex) const;
};

/// For standard output: colour on a terminal unless NO_COLOR is set or TERM is dumb; `choice` goes before both. Never wider than 80
/// columns.
Look look_for_output(ColourChoice choice);

/// For standard error.
Look look_for_errors(ColourChoice choice);

bool errors_go_to_terminal();

/// Somebody types and reads.
bool talks_with_terminal();

}  // namespace standin::cli
