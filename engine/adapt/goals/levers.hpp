// Which lines can move a property that a want is about.
#pragma once

#include <vector>

#include "standin/property.hpp"
#include "standin/vocabulary.hpp"

namespace standin {

/// A role whose lines may change their weight. Towards more of the property they go up or down; towards less the other way.
struct Change {
    enum class Way { down, either, up };
    Role role;
    Way more = Way::either;
    double fat_from = 0;     ///< % of the batch; a leaner one is not moved by it
    double fat_below = 101;  ///< likewise a fatter one
    double ph_below = 15;    ///< likewise one that is less acid
    double salt_from = 0;    ///< % of the meat; likewise one that is less salty
};

/// By roles: whose lines may change their weight, whose lines may be replaced, and what may be added. A technologist's directions: who
/// wants it firmer takes fat out and lean in, not the other way, whatever a model makes of it.
struct Lever {
    Property property;
    std::vector<Change> change;
    std::vector<Role> replace, add;
    std::vector<Role> last_towards_less{};  ///< whose lines move towards less of it only where nothing else does it
    std::vector<Role> never_towards_less{};
    std::vector<Change> towards_less{};  ///< beside `change`, towards less of it alone
};

const std::vector<Lever>& levers();

/// Bind, firmness and cook loss come out of all that is in the mass; the other properties are those of some of its lines.
bool of_the_whole_mass(Property property);

}  // namespace standin
