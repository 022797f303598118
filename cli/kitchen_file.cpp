#include "kitchen_file.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <string_view>

#include "session.hpp"

namespace standin::cli {
namespace {

constexpr std::string_view usual_name = "kitchen.txt", none = "none";

// The commands whose first operand is no formula.
bool takes_formula(std::string_view command) {
    constexpr std::array<std::string_view, 3> others{"lookup", "graph", "check"};
    return std::find(others.begin(), others.end(), command) == others.end();
}

}  // namespace

std::optional<std::string> kitchen_of(const Call& call) {
    if (call.kitchen) return *call.kitchen == none ? std::nullopt : call.kitchen;
    if (call.operands.empty() || call.operands.front() == "-" || !takes_formula(call.command)) return std::nullopt;
    const auto beside = std::filesystem::path(call.operands.front()).replace_filename(usual_name);
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(beside, ignored)) return std::nullopt;
    return beside.string();
}

Result<Engine> open_engine(const Call& call, Options options) {
    auto engine = Engine::open(std::move(options));
    const auto path = engine ? kitchen_of(call) : std::nullopt;
    if (!path) return engine;
    const auto text = read_text(*path);
    if (!text) return Failure(text.error());
    auto kitchen = engine->read_kitchen(*text, shown_name(*path));
    if (!kitchen) return Failure(kitchen.error());
    kitchen->file = std::filesystem::path(shown_name(*path)).filename().string();
    return engine->with_kitchen(*kitchen);
}

Result<Engine> open_engine(const Call& call) { return open_engine(call, engine_options(call)); }

}  // namespace standin::cli
