// Files that are whole or not there.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "standin/result.hpp"

namespace standin::cli {

struct Output {
    std::string path;
    std::string text;
};

/// Says why `path` must not be written: it is one of `inputs`, by whatever name or link, or lies among the records of `knowledge`.
std::optional<Error> would_harm(const std::string& path, const std::vector<std::string>& inputs, const std::string& knowledge);

/// Writes beside the file and renames, so that a reader finds the old one or the new one and never a part. What is no plain file (a
/// device, a pipe) is written as it is. `full` tells a disk that took only part of it from a file that cannot be made at all.
struct Unwritten {
    Error error;
    bool full = false;
};
std::optional<Unwritten> write_whole(const Output& output);

}  // namespace standin::cli
