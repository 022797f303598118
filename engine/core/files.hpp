// Whole files in and out.
#pragma once

#include <string>
#include <string_view>

#include "standin/result.hpp"

namespace standin {

/// The bytes of a file ("-": standard input). not_found when there is none, bad_data beyond 16 MB.
Result<std::string> read_file(const std::string& path);

/// Writes beside the target first and then renames, so that a failure leaves nothing half written.
Result<bool> write_file(const std::string& path, std::string_view text);

}  // namespace standin
