#include <initializer_list>

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

std::string first_page() {
    std::string page = "standin: what can stand in for what in fresh sausage, and how to rebalance it\n\n";
    const auto step = [&](std::string_view have, std::initializer_list<std::string_view> next) {
        page += wrap(have, right) + "\n";
        for (const auto line : next) page += "  " + std::string(line) + "\n";
        page += "\n";
    };
    step("You have a recipe. Put it into a file, one ingredient a line, such as \"300 g spinach, blanched\":",
         {"standin convert recipe.txt --ask --save formula.txt    it asks what is not clear",
          "standin predict formula.txt                            what it will be"});
    step("You have a garden or a full fridge. One food a line, \"spinach 400 g\" or \"no cilantro\":",
         {"standin adapt formula.txt --have garden.txt"});
    step("You want it milder, greener, firmer, without nuts:",
         {"standin adapt formula.txt --want milder --without nuts",
          "standin swaps formula.txt spinach                      what can stand in for one line"});
    step("You are ready to make it:", {"standin sheet formula.txt --meat 5kg"});
    return page + "All commands: standin --help\n";
}

std::string help_page(const Command& command) {
    return wrap("standin " + std::string(command.name) + ": " + std::string(command.summary), right) + "\n\nUsage: standin " +
           std::string(command.name) + " " + std::string(command.operands) + " [options]\n\n" + wrap(command.detail, right) + "\n" +
           options_of(&command) + "\nExamples\n" + examples(command);
}

}  // namespace standin::cli
