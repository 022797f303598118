// From argv to a Call. The table of options is plain data, so that parsing, help and suggestions read the same one.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>

#include "command.hpp"
#include "standin/result.hpp"

namespace standin::cli {

struct OptionRule {
    std::string_view flags;  ///< "-q,--quiet"
    std::string_view value;  ///< what follows, in capitals; empty: nothing does
    std::string_view help;
    std::string_view commands;  ///< names with spaces between; empty: every command
    /// Takes the value into the call, or says what was expected.
    std::optional<std::string> (*set)(Call&, const std::string&);
};

std::span<const OptionRule> option_rules();
bool fits(const OptionRule& rule, std::string_view command);

/// Something to print and be done with, such as a help page.
struct Print {
    std::string text;
};

std::variant<Call, Print, Error> parse(int argc, const char* const* argv);

std::string help_page();
/// For who types the name of the program alone: what to type next.
std::string first_page();
std::string help_page(const Command& command);

}  // namespace standin::cli
