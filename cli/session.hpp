// What every command does around its work: open the engine, read files, say what went wrong, hand over the page.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "command.hpp"
#include "standin/engine.hpp"

namespace standin::cli {

/// Knowledge, rules, draws and log as the call wants them.
Options engine_options(const Call& call);

/// The engine for a call, with the facts of its kitchen laid over: those of --kitchen, else of a kitchen.txt beside the formula.
Result<Engine> open_engine(const Call& call);
Result<Engine> open_engine(const Call& call, Options options);

/// The whole of a file; "-" is standard input.
Result<std::string> read_text(const std::string& path);

/// What --have lists, read for the lines of `formula`; nothing where there is no such option. From then on `engine` calls what only the
/// list names as the list does.
Result<std::optional<Inventory>> list_on_hand(const Call& call, Engine& engine, const Formula& formula);

/// The name of a file in messages.
std::string shown_name(const std::string& path);

/// Reads a file and understands it as a formula; of a JSON answer of `adapt` or `swaps` the variant that the call means. From then on
/// `engine` calls its foods as the file does.
Result<Formula> load_formula(Engine& engine, const std::string& path, const Call& call);

/// Writes the error to standard error, hints below it, and gives its exit code.
int complain(const Error& error, ColourChoice colour = ColourChoice::when_fit);

/// What an answer comes to: the page, and what goes into the files that the call names.
struct Answer {
    std::string page;
    std::string html;   ///< where --html is given
    std::string saved;  ///< where --save is given
};

/// Writes the files, each whole or not at all and never over what was read, and then the page to standard output: a file that cannot be
/// written leaves that empty. `--html -` and `--save -` put their text in place of the page.
int deliver(const Call& call, const Answer& answer, int code = done);

/// Writes a finished page to standard output; `code`, or what became of it.
int deliver(std::string_view page, int code = done);

}  // namespace standin::cli
