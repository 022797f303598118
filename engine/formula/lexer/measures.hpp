// Units of mass and volume, and the things people count.
#pragma once

#include <optional>
#include <string_view>

#include "formula/lexer/cursor.hpp"
#include "standin/band.hpp"

namespace standin {

enum class Dimension { mass, volume, count, percent };

struct Unit {
    std::string_view word;  ///< also the measure word of the knowledge: "cup", "tbsp", "bunch"; volumes without a mark are US
    Dimension dimension = Dimension::count;
    Band size;  ///< g or mL. Of a count word: mL of anything loose where that can be said at all (pinch, handful), else zero
};

/// By any spelling, folded: "tablespoon", "fl oz", "imperial pint". Null when unknown.
const Unit* unit_named(std::string_view folded);

/// A unit where the cursor stands, perhaps "heaped", "scant" or "large".
struct UnitRead {
    const Unit* unit = nullptr;
    Band factor{1, 1, 1};   ///< of a heaped or scant measure
    std::string_view size;  ///< "small", "medium" or "large", or empty
    bool packed = false;    ///< "packed cup"
};

/// Passes the unit; moves nothing when there is none. "T" is a tablespoon, "t" a teaspoon, "#" a pound.
std::optional<UnitRead> unit_at(Cursor& cursor);

/// How full a measure is, told before its number: "generous 1 tsp". None, and the cursor where it was, when no number follows.
std::optional<Band> fill_at(Cursor& cursor);

/// How full a measure is, by a word that stands behind the name: "2 tsp salt, heaped". None for any other word.
std::optional<Band> fill_word(std::string_view folded);

/// "small", "medium" or "large" for a folded size word, else empty.
std::string_view size_word(std::string_view folded);

/// Of grams or litres: "5 lb 2268 g" is told in two systems.
bool is_metric(const Unit& unit);

/// Sold by the container: what it holds must be said or known.
bool is_container(const Unit& unit);

/// Keeps food for months: what is in it is the preserved form.
bool preserves(const Unit& unit);

/// Tells how long a piece of a root is: "2 inches of ginger".
bool is_length(const Unit& unit);

inline constexpr double cm_an_inch = 2.54;          // exact: international yard and pound agreement 1959
inline constexpr double grams_a_pound = 453.59237;  // exact: international yard and pound agreement 1959, NIST Handbook 44 appendix C

}  // namespace standin
