// Which lines can move a property that a want is about.
#pragma once

#include <vector>

#include "standin/property.hpp"
#include "standin/vocabulary.hpp"

namespace standin {

/// By roles: whose lines may change their weight, whose lines may be replaced, and what may be added.
struct Lever {
    Property property;
    std::vector<Role> change, replace, add;
};

const std::vector<Lever>& levers();

}  // namespace standin
