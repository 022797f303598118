// What stands in brackets: marks such as [keep], a weight beside a count, a preparation, or a note to pass over.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "formula/lexer/quantity_text.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/band.hpp"

namespace standin {

struct LineNotes {
    bool keep = false;
    std::optional<bool> weighed_after;  ///< [weighed prepared] or [weighed first]
    std::optional<Band> grams;          ///< "(24 g)", "(24 g, 20 to 30 g)"
    bool range_only = false;            ///< "(20 to 30 g)": `grams` gives the ends, the middle stands before the bracket
    bool about = false;                 ///< "(about 300 g)"
    bool each = false;                  ///< "(400 g each)"
    bool drained = false;               ///< `grams` are of the drained food: "(350 g, 200 g drained)"
    bool column = false;                ///< `grams` stood behind the words, in no bracket
    std::string in_cups;                ///< "(about 1/4 cup)" as written, where `volume` is of it
    std::vector<AmountPart> volume;     ///< "1 cup 240 ml": a second measure of the same, empty where there is none
    std::optional<double> count;        ///< "(4)"
    std::vector<std::string> passed;    ///< brackets that say nothing the reader needs
};

/// Takes "24 g", "about 24 g", "24 g, 20 to 30 g", "20 to 30 g" or "400 g each"; false when `inside` is nothing of the kind.
bool take_weight(std::string_view inside, const Knowledge& knowledge, LineNotes& notes);

/// "460 g, drained 350 g" as "460 g (drained 350 g)".
void bracket_drained(std::string& line);

/// Takes the brackets out of `line`, which keeps its length; what belongs to the words stays, behind a comma.
LineNotes take_notes(std::string& line, const Knowledge& knowledge);

}  // namespace standin
