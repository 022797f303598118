// Why something is done, as facts; and the sentence that tells it, in the maker's units.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace standin {

enum class Units { metric, us, both };

enum class ReasonKind {
    stands_in,     ///< a stand-in for a line: its dose against the line's, how close it is
    not_there,     ///< nothing of the line is to be had, or only so much
    unwanted,      ///< the maker asked for none of it
    less_acid,     ///< less acid lets the meat bind
    sourness,      ///< the line moves it, or holds it
    heat,          ///< likewise
    salt,          ///< likewise
    fat,           ///< likewise
    green,         ///< likewise
    drier_paste,   ///< less loose water dilutes the meat's protein less
    balance,       ///< follows the other changes
    binder,        ///< holds loose water
    addition,      ///< brings the dose of its role
    order,         ///< salt and lean first
    mixing,        ///< longer
    cold,          ///< colder while mixing
    plate,         ///< another grinder plate
    rest,          ///< a shorter rest
    rest_cold,     ///< a colder one
    core,          ///< no hotter than needed
    cook_through,  ///< the meat that comes in asks for more heat
};
std::string_view word(ReasonKind kind);

/// One quantity, before and after where it moves.
struct Figure {
    std::string what;              ///< "pH", "bind factor"
    std::optional<double> before;  ///< absent: there is only the one number
    double after = 0;
    std::string unit;  ///< as shown; "g" and "C" follow the maker's units

    friend bool operator==(const Figure&, const Figure&) = default;
};

struct Reason {
    ReasonKind kind = ReasonKind::balance;
    std::string role;                 ///< what the food is there for, where that matters
    std::vector<Figure> figures;      ///< the first is what the reason is about
    std::vector<std::string> asks;    ///< what the maker must see to, a sentence each
    std::string note;                 ///< of the stand-in, as its record has it
    std::vector<std::string> by_way;  ///< foods that the stand-in was found by way of

    friend bool operator==(const Reason&, const Reason&) = default;
};

/// Short, in the words of a bench; numbers only where a maker goes by them.
std::string in_brief(const Reason& reason, Units units = Units::metric);

/// The numbers behind it as well.
std::string in_full(const Reason& reason, Units units = Units::metric);

}  // namespace standin
