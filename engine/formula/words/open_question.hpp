// What a line leaves open, asked back with the ways it may be meant.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "standin/result.hpp"

namespace standin {

/// `hints`: lines or names that would leave nothing open.
inline Error open_question(std::string question, std::vector<std::string> hints = {}) {
    return {Trouble::bad_data, std::move(question), "", std::move(hints)};
}

}  // namespace standin
