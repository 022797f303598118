// One reading of a line in English, as it stands: an amount, a food, and what is done to it.
#pragma once

#include <string_view>

#include "formula/line/line_text.hpp"

namespace standin {

/// Where a line stands, and what is known of it apart from its words.
struct LineSetting {
    const Origin& origin;
    const Knowledge& knowledge;
    WeighedAfter after;
    bool on_the_shelf;
    const Around& around;
    bool lenient = false;              ///< a word that is not known may be passed over where it can do no harm
    bool adjective_behind = false;     ///< out of a tongue in which an adjective stands behind its noun
    bool nouns_have_capitals = false;  ///< out of German
};

struct OneReading {
    Result<ReadLine> line;
    bool no_amount = false;  ///< nothing in it could be an amount
};

/// `bare`: "6 %" and "hot" by themselves may be facts of the food.
OneReading read_once(std::string_view line, const LineSetting& setting, bool bare = false);

}  // namespace standin
