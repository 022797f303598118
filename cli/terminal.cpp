#include "terminal.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdlib>

namespace standin::cli {
namespace {

bool set(const char* variable) {
    const char* value = std::getenv(variable);
    return value && *value;
}

bool wants_colour(ColourChoice choice, int stream) {
    if (choice != ColourChoice::when_fit) return choice == ColourChoice::always;
    const char* term = std::getenv("TERM");
    return isatty(stream) && !set("NO_COLOR") && term && std::string_view(term) != "dumb";
}

int width_of(int stream) {
    constexpr int narrowest = 40, widest = 80;
    winsize size{};
    if (!isatty(stream) || ioctl(stream, TIOCGWINSZ, &size) != 0 || size.ws_col == 0) return widest;
    return std::clamp<int>(size.ws_col, narrowest, widest);
}

std::string code(bool colour, std::string_view start, std::string_view text) {
    if (!colour || text.empty()) return std::string(text);
    return "\x1b[" + std::string(start) + "m" + std::string(text) + "\x1b[0m";
}

Look look_for(ColourChoice choice, int stream) { return {wants_colour(choice, stream), width_of(stream)}; }

}  // namespace

std::string Look::bold(std::string_view text) const { return code(colour, "1", text); }
std::string Look::dim(std::string_view text) const { return code(colour, "2", text); }

std::string Look::swatch(std::string_view hex) const {
    std::string background = "48;2";
    for (std::size_t i = 1; i + 1 < 7; i += 2) {
        int part = 0;
        if (hex.size() != 7 || std::from_chars(hex.data() + i, hex.data() + i + 2, part, 16).ec != std::errc{}) return "  ";
        background += ";" + std::to_string(part);
    }
    return code(colour, background, "  ");
}

Look look_for_output(ColourChoice choice) { return look_for(choice, STDOUT_FILENO); }
Look look_for_errors(ColourChoice choice) { return look_for(choice, STDERR_FILENO); }
bool errors_go_to_terminal() { return isatty(STDERR_FILENO); }
bool talks_with_terminal() { return isatty(STDIN_FILENO) && isatty(STDOUT_FILENO); }

}  // namespace standin::cli
