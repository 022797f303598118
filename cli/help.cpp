#include "options.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

constexpr int left = 22, right = 80;

std::string entry(std::string name, std::string_view text) {
    name = "  " + name;
    name.resize(std::max<std::size_t>(name.size() + 1, left), ' ');
    return name + wrap(text, right - left, left).substr(left) + "\n";
}

std::string entry(const OptionRule& rule) {
    std::string flags(rule.flags);
    if (const auto comma = flags.find(','); comma != std::string::npos) flags.insert(comma + 1, " ");
    return entry(flags + (rule.value.empty() ? "" : " ") + std::string(rule.value), rule.help);
}

std::string options_of(const Command* command) {
    std::string own, common;
    for (const auto& rule : option_rules()) {
        if (rule.commands.empty()) common += entry(rule);
        else if (command && fits(rule, command->name)) own += entry(rule);
    }
    return (own.empty() ? "" : "\nOptions\n" + own) + "\nOptions of every command\n" + common + entry("-h, --help", "this page") +
           entry("--version", "the version");
}

std::string examples(const Command& command) {
    std::string text;
    for (const auto example : command.examples) text += "  " + std::string(example) + "\n";
    return text;
}

}  // namespace

std::string help_page() {
    std::string page =
        "standin: what can stand in for what in fresh sausage, and how to rebalance it\n\n"
        "Usage: standin COMMAND ... [options]\n\nCommands\n";
    for (const auto& command : commands()) page += entry(std::string(command.name), command.summary);
    page += options_of(nullptr);
    page += "\n" +
            wrap(
                "`standin COMMAND --help` tells more about a command. A file named `-` is standard input. Exit codes: 0 done; 1 asked for "
                "something that cannot be met; 64 wrong use; 65 bad data; 66 no such file; 73, 74 cannot write.",
                right) +
            "\n";
    return page + "\nExamples\n" + examples(commands()[2]);
}

std::string help_page(const Command& command) {
    return wrap("standin " + std::string(command.name) + ": " + std::string(command.summary), right) + "\n\nUsage: standin " +
           std::string(command.name) + " " + std::string(command.operands) + " [options]\n\n" + wrap(command.detail, right) + "\n" +
           options_of(&command) + "\nExamples\n" + examples(command);
}

}  // namespace standin::cli
