// The only file that sees CLI11: it compiles slowly. CLI11 tells options, values and operands apart; the rules do the rest.
#include "options.hpp"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <list>

#include "spelling.hpp"
#include "terminal.hpp"

namespace standin::cli {
namespace {

// One option as CLI11 heard it.
struct Heard {
    const OptionRule* rule;
    std::vector<std::string> values;
    CLI::Option* option = nullptr;
};

struct Line {
    CLI::App app{"standin"};
    std::list<Heard> heard;
    std::vector<std::string> operands;
    bool help = false, version = false;

    void add(CLI::App& to, const OptionRule& rule) {
        auto& h = heard.emplace_back(Heard{&rule, {}});
        h.option = rule.value.empty() ? to.add_flag(std::string(rule.flags))
                                      : to.add_option(std::string(rule.flags), h.values)->allow_extra_args(false);
    }

    Line() {
        app.set_help_flag();
        app.add_flag("-h,--help", help);
        app.add_flag("--version", version);
        app.allow_extras();
        app.require_subcommand(0, 1);
        for (const auto& rule : option_rules())
            if (rule.commands.empty()) add(app, rule);
        for (const auto& command : commands()) {
            auto& sub = *app.add_subcommand(std::string(command.name));
            sub.set_help_flag();
            sub.allow_extras();
            sub.fallthrough();
            sub.add_option("operands", operands);
            for (const auto& rule : option_rules())
                if (!rule.commands.empty() && fits(rule, command.name)) add(sub, rule);
        }
    }
};

std::string see(const Command* command) {
    return "see `standin " + (command ? std::string(command->name) + " " : std::string()) + "--help`";
}

Error complaint(std::string message, std::vector<std::string> hints) { return {Trouble::usage, std::move(message), {}, std::move(hints)}; }

Error unknown(const std::string& word, const Command* command) {
    std::vector<std::string> known, hints;
    const bool option = word.size() > 1 && word.front() == '-';
    if (option) {
        known = {"--help", "--version"};
        for (const auto& rule : option_rules())
            if (!command || fits(rule, command->name)) known.emplace_back(rule.flags.substr(rule.flags.find("--")));
    } else {
        for (const auto& c : commands()) known.emplace_back(c.name);
    }
    if (const auto near = nearest(word.substr(0, word.find('=')), known)) hints.push_back("did you mean `" + *near + "`?");
    hints.push_back(see(command));
    return complaint("unknown " + std::string(option ? "option" : "command") + " `" + word + "`", std::move(hints));
}

std::optional<Error> take(Call& call, const Line& line, const Command& command) {
    for (const auto& [rule, values, option] : line.heard) {
        auto given = values;
        if (rule->value.empty()) given.assign(std::min<std::size_t>(option->count(), 1), "");
        for (const auto& value : given)
            if (const auto wrong = rule->set(call, value))
                return complaint(std::string(rule->flags.substr(rule->flags.find("--"))) + ": " + *wrong +
                                     (value.empty() ? std::string() : ", not `" + value + "`"),
                                 {see(&command)});
    }
    call.operands = line.operands;
    if (call.operands.size() < command.least)
        return complaint(call.command + " needs " + std::string(command.operands),
                         {"for example: " + std::string(command.examples.front()), see(&command)});
    if (call.operands.size() > command.most) {
        const std::string& extra = call.operands[command.most];
        const auto list =
            std::find_if(option_rules().begin(), option_rules().end(), [](const auto& rule) { return rule.flags == "--have"; });
        std::vector<std::string> hints{see(&command)};
        if (list != option_rules().end() && fits(*list, command.name) && !call.have)
            hints.insert(hints.begin(), "a list of what is on hand goes with an option: --have " + extra);
        return complaint(call.command + " takes only " + std::string(command.operands) + ": too much is `" + extra + "`", std::move(hints));
    }
    if (call.quiet && call.verbose) return complaint("--quiet and --verbose contradict each other", {see(&command)});
    return std::nullopt;
}

}  // namespace

std::variant<Call, Print, Error> parse(int argc, const char* const* argv) {
    Line line;
    std::string broken;
    try {
        line.app.parse(argc, argv);
    } catch (const CLI::ParseError& e) {
        broken = e.what();
    }
    const Command* command = nullptr;
    for (const auto& c : commands())
        if (line.app.got_subcommand(std::string(c.name))) command = &c;
    if (line.help) return Print{command ? help_page(*command) : help_page()};
    if (line.version) return Print{"standin " STANDIN_VERSION "\n"};
    if (const auto extra = line.app.remaining(true); !extra.empty()) return unknown(extra.front(), command);
    if (!broken.empty()) return complaint(broken, {see(command)});
    if (!command && argc == 1 && talks_with_terminal()) return Print{first_page()};
    if (!command) return complaint("no command given", {see(nullptr)});
    Call call;
    call.command = command->name;
    if (auto wrong = take(call, line, *command)) return *wrong;
    return call;
}

}  // namespace standin::cli
