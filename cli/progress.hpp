// How far a search has come, on a terminal; and a way to stop it.
#pragma once

#include <cstddef>
#include <functional>

namespace standin::cli {

/// One line on standard error that overwrites itself, where that is a terminal and `quiet` is not set; it goes when this goes.
/// While it lives, one interrupt (Ctrl-C) ends the search with the best so far, a second one ends the program.
class Progress {
public:
    explicit Progress(bool quiet);
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    ~Progress();

    std::function<bool(std::size_t plans, double best)> report();

private:
    bool shows_;
    bool shown_ = false;
};

}  // namespace standin::cli
