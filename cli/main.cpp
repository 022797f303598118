// standin: what can stand in for what in fresh sausage, and how to rebalance the formula.
#include <exception>

#include "heap.hpp"
#include "options.hpp"
#include "session.hpp"

namespace {

using namespace standin;
using namespace standin::cli;

int run(int argc, char** argv) {
    const auto parsed = parse(argc, argv);
    if (const auto* error = std::get_if<Error>(&parsed)) return complain(*error);
    if (const auto* print = std::get_if<Print>(&parsed)) return deliver(print->text);
    const auto& call = std::get<Call>(parsed);
    for (const auto& command : commands())
        if (command.name == call.command) return command.run(call);
    return usage;
}

}  // namespace

int main(int argc, char** argv) {
    prepare_heap();
    constexpr int broken = 70;  // EX_SOFTWARE: a mistake in this program, not of the user
    try {
        return run(argc, argv);
    } catch (const std::exception& e) {
        complain({Trouble::bad_data, std::string("internal: ") + e.what(), {}, {"this is a mistake in standin; please report it"}});
        return broken;
    }
}
