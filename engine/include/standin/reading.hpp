// How the words of a formula were understood, line by line.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "standin/formula.hpp"
#include "standin/result.hpp"

namespace standin {

enum class Confidence {
    sure,    ///< every word had one meaning and the weight was written
    likely,  ///< a kitchen measure, a unit that differs between countries, a bracket passed over
    unsure   ///< a trade word that leaves the cut open, a loose measure
};

struct LineReading {
    std::string written;                ///< the line as it stands in the text
    std::string where;                  ///< file:line:column
    std::optional<Line> line;           ///< absent: not understood, or no food of the mass
    std::string name;                   ///< of the ingredient
    std::vector<std::string> prepared;  ///< as people read it: "blanched 3 min"
    Confidence confidence = Confidence::sure;
    std::vector<Reason> why;       ///< what makes it less than sure
    std::optional<Error> asked;    ///< what is asked back, with the nearest names
    std::optional<Reason> beside;  ///< what it is, where it is no food of the mass
};

struct FormulaReading {
    std::string title, note;
    std::vector<LineReading> lines;
    std::vector<Error> errors;       ///< in what is no ingredient line: the process, the shares
    std::vector<Reason> told;        ///< what is no line: headings, parts of the method, words said of the recipe
    std::optional<Formula> formula;  ///< present when nothing is asked back
};

}  // namespace standin
