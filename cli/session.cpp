#include "session.hpp"

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <memory>

#include "kitchen_file.hpp"
#include "log.hpp"
#include "own_words.hpp"
#include "prices.hpp"
#include "saved_formula.hpp"
#include "terminal.hpp"
#include "whole_file.hpp"

namespace standin::cli {
namespace {

constexpr std::size_t largest = 16u << 20;  // bytes; no formula comes near

int code_of(Trouble trouble) {
    switch (trouble) {
        case Trouble::unmet:
            return unmet;
        case Trouble::usage:
            return usage;
        case Trouble::bad_data:
            return bad_data;
        case Trouble::not_found:
            return no_file;
        case Trouble::unwritable:
            return cannot_create;
    }
    return bad_data;
}

void close_unless_input(std::FILE* file) {
    if (file && file != stdin) std::fclose(file);
}

// A part of a question is named as it is asked at the command line: "request.meat:1:1" is "--meat".
std::string as_typed(const std::string& where) {
    constexpr std::string_view request = "request.";
    if (where.rfind(request, 0) != 0) return where;
    return "--" + where.substr(request.size(), where.find(':') - request.size());
}

}  // namespace

Options engine_options(const Call& call) {
    Options options;
    options.knowledge_folder = call.knowledge;
    options.rules = call.rules;
    options.draws = call.draws;
    options.seed = call.seed;
    options.month = call.month;
    options.season_shift = call.season_shift;
    if (call.verbose) options.log = log_to_errors(call.colour);
    return options;
}

std::string shown_name(const std::string& path) { return path == "-" ? "standard input" : path; }

Result<std::string> read_text(const std::string& path) {
    std::error_code ignored;
    if (path != "-" && std::filesystem::is_directory(path, ignored))
        return failure(Trouble::bad_data, "this is a folder; expected a file", path);
    const std::unique_ptr<std::FILE, void (*)(std::FILE*)> file(path == "-" ? stdin : std::fopen(path.c_str(), "rb"), close_unless_input);
    if (!file) {
        const bool absent = errno == ENOENT || errno == ENOTDIR;
        return failure(Trouble::not_found, absent ? "no such file" : "cannot open this file", path);
    }
    std::string text, buffer(1u << 16, '\0');
    while (const auto n = std::fread(buffer.data(), 1, buffer.size(), file.get())) {
        text.append(buffer, 0, n);
        if (text.size() > largest)
            return failure(Trouble::bad_data, "larger than 16 MB; expected a formula or an inventory", shown_name(path));
    }
    if (std::ferror(file.get())) return failure(Trouble::bad_data, "cannot read this file", shown_name(path));
    return text;
}

Result<Formula> load_formula(Engine& engine, const std::string& path, const Call& call) {
    auto text = read_text(path);
    if (text) text = formula_within(std::move(*text), call.variant.value_or(1), shown_name(path));
    if (!text) return Failure(text.error());
    std::string note;
    if (const auto read = engine.read_closely(*text, shown_name(path))) note = speak_as(engine, *read);
    auto formula = engine.read_formula(*text, shown_name(path));
    if (formula && !note.empty()) formula->read_as.push_back(said(std::move(note)));
    return formula;
}

Result<std::optional<Inventory>> list_on_hand(const Call& call, Engine& engine, const Formula& formula) {
    if (!call.have) return std::optional<Inventory>();
    const auto text = read_text(*call.have);
    if (!text) return Failure(text.error());
    if (const auto read = engine.read_inventory(*text, shown_name(*call.have), &formula)) speak_as(engine, *read, formula, *text);
    auto have = engine.read_inventory(*text, shown_name(*call.have), &formula);
    if (!have) return Failure(have.error());
    return std::optional(std::move(*have));
}

int complain(const Error& error, ColourChoice colour) {
    const Look look = look_for_errors(colour);
    const std::string where = as_typed(error.where);
    std::string text = look.bold("standin: error:") + " " + (where.empty() ? "" : where + ": ") + error.message + "\n";
    for (const auto& hint : error.hints) text += "  " + hint + "\n";
    std::fwrite(text.data(), 1, text.size(), stderr);
    return code_of(error.trouble);
}

int deliver(std::string_view page, int code) {
    if (std::fwrite(page.data(), 1, page.size(), stdout) == page.size() && std::fflush(stdout) == 0) return code;
    complain({Trouble::unwritable, "cannot write to standard output", {}, {}});
    return cannot_write;
}

int deliver(const Call& call, const Answer& answer, int code) {
    const auto wrong_use = [&](const char* what, const char* hint) { return complain({Trouble::usage, what, {}, {hint}}, call.colour); };
    std::string_view page = answer.page;
    std::vector<Output> files;
    for (const auto& [path, text] : {std::pair(&call.html, &answer.html), std::pair(&call.save, &answer.saved)}) {
        if (path->empty()) continue;
        if (*path != "-") {
            files.push_back({*path, *text});
            continue;
        }
        if (call.json) return wrong_use("--json and a file called - both want standard output", "write to a file");
        if (page.data() != answer.page.data()) return wrong_use("--html - and --save - both want standard output", "write one to a file");
        page = *text;
    }
    if (files.size() > 1 && files[0].path == files[1].path) return wrong_use("--html and --save name the same file", "give each its own");
    std::vector<std::string> inputs = call.operands;
    if (call.have) inputs.push_back(*call.have);
    if (const auto kitchen = kitchen_of(call)) inputs.push_back(*kitchen);
    if (const auto prices = prices_file(call)) inputs.push_back(*prices);
    for (const auto& file : files)
        if (const auto harm = would_harm(file.path, inputs, call.knowledge)) return complain(*harm, call.colour);
    for (const auto& file : files)
        if (const auto failed = write_whole(file)) {
            const int trouble = complain(failed->error, call.colour);
            return failed->full ? cannot_write : trouble;
        }
    return deliver(page, code);
}

}  // namespace standin::cli
