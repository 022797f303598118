// A mass with next to no salt that is to hold together: what a technologist does first is salt it. That answer stands before those that
// leave the salt where it is, and says so, for who leaves it out on purpose.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "adapt/goals/wants.hpp"
#include "standin/advice.hpp"
#include "substitute/context.hpp"
#include "substitute/stock.hpp"

namespace standin {

struct WithSalt {
    AdaptRequest request;  ///< with enough salt to bind asked for as well
    std::vector<Goal> goals;
    std::string want;  ///< the one that was added
    Reason says;
};

/// The request with salt enough; nothing where the formula is not that short of it, where salt is asked about, kept or left out.
std::optional<WithSalt> with_salt(const Formula& formula, const AdaptRequest& request, const std::vector<Goal>& goals, const Stock& stock,
                                  const Context& context);

/// The first salted variant before the others of `answer`, where it does what was asked; the want that nobody wrote is taken out of it.
void put_salted_first(AdaptAnswer& answer, AdaptAnswer salted, const WithSalt& with, std::size_t top);

}  // namespace standin
