// Errors as values. Whatever a user or a file can get wrong comes back as a Result; only broken invariants of the program throw.
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace standin {

/// What kind of trouble; the command line turns it into an exit code.
enum class Trouble {
    unmet,      ///< asked for something that cannot be met
    usage,      ///< the request itself makes no sense
    bad_data,   ///< a file or formula says something wrong
    not_found,  ///< no such file
    unwritable  ///< cannot create or write
};

/// What of a text nothing known is called by.
enum class NotKnown { nothing, food, word };

struct Error {
    Trouble trouble = Trouble::bad_data;
    std::string message;             ///< what is wrong and what was expected
    std::string where;               ///< file:line:column; "request.meat" of a question; or empty
    std::vector<std::string> hints;  ///< nearest names, what to do
    NotKnown not_known = NotKnown::nothing;
};

template <class T>
using Result = tl::expected<T, Error>;

using Failure = tl::unexpected<Error>;

inline Failure failure(Trouble trouble, std::string message, std::string where = {}, std::vector<std::string> hints = {}) {
    return Failure(Error{trouble, std::move(message), std::move(where), std::move(hints)});
}

}  // namespace standin
