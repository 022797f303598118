// The only file that sees spdlog. The logger is not registered: nothing is process-wide.
#include "log.hpp"

#include <spdlog/logger.h>
#include <spdlog/sinks/ansicolor_sink.h>

#include <memory>

#include "terminal.hpp"

namespace standin::cli {

std::function<void(std::string_view)> log_to_errors(ColourChoice colour) {
    const auto mode = look_for_errors(colour).colour ? spdlog::color_mode::always : spdlog::color_mode::never;
    auto logger = std::make_shared<spdlog::logger>("standin", std::make_shared<spdlog::sinks::ansicolor_stderr_sink_st>(mode));
    logger->set_pattern("%T.%e %^%l%$ %v");
    return [logger](std::string_view line) { logger->info("{}", line); };
}

}  // namespace standin::cli
