#include "progress.hpp"

#include <chrono>
#include <cmath>
#include <csignal>
#include <cstdio>

#include "terminal.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

volatile std::sig_atomic_t interrupted = 0;

extern "C" void on_interrupt(int) {
    interrupted = 1;
    std::signal(SIGINT, SIG_DFL);
}

}  // namespace

Progress::Progress(bool quiet) : shows_(!quiet && errors_go_to_terminal()) {
    interrupted = 0;
    std::signal(SIGINT, on_interrupt);
}

Progress::~Progress() {
    std::signal(SIGINT, SIG_DFL);
    if (shown_) std::fputs("\r\x1b[K", stderr);
}

std::function<bool(std::size_t, double)> Progress::report() {
    using Clock = std::chrono::steady_clock;
    static constexpr auto first = std::chrono::seconds(1);  // an answer that comes sooner needs no progress
    static constexpr auto pause = std::chrono::milliseconds(200);
    return [this, next = Clock::now() + first](std::size_t plans, double best) mutable {
        if (interrupted) return false;
        const auto now = Clock::now();
        if (!shows_ || now < next) return true;
        next = now + pause;
        shown_ = true;
        const bool any = std::isfinite(best) && best >= 0;
        const std::string text = "\r\x1b[K" + std::to_string(plans) + " plans looked at, " +
                                 (any ? "the best so far " + number(best, 1) + " noticeable differences away" : "none that does it yet");
        std::fwrite(text.data(), 1, text.size(), stderr);
        std::fflush(stderr);
        return true;
    };
}

}  // namespace standin::cli
