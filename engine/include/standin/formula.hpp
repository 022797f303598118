// A formula: lines with weights, and the process they go through.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "standin/band.hpp"
#include "standin/process.hpp"
#include "standin/reason.hpp"

namespace standin {

/// One preparation of a line, by id, with its own time where the maker gave one.
struct Prepared {
    std::string preparation;
    std::optional<double> minutes;

    friend bool operator==(const Prepared&, const Prepared&) = default;
};

/// How amounts are written: all in grams, or in the maker's own words where those are known and read the same.
enum class Amounts { grams, as_written };

/// An allergen that the formula's own words tell of.
struct Declared {
    std::string allergen;  ///< as the rules name it
    std::string words;     ///< that said so

    friend bool operator==(const Declared&, const Declared&) = default;
};

struct Line {
    std::string ingredient;            ///< id in the knowledge
    Band grams;                        ///< as weighed; wide where the maker gave bunches or cups
    std::vector<Prepared> prepared;    ///< in the order they are done
    bool weighed_prepared = false;     ///< true: `grams` are of the prepared food; false: weighed first, then prepared
    bool keep = false;                 ///< never swap or move it
    std::optional<double> count;       ///< pieces, where the maker counted (chiles: pods)
    std::string written;               ///< the amount in the maker's words
    std::vector<Reason> notes{};       ///< what the reader took upon itself ("pork" read as pork shoulder); shown with every answer
    std::vector<Declared> declared{};  ///< allergens the line says it holds, beyond those of the ingredient: "contains milk and egg"
    std::optional<Band> fat_pct{};     ///< fat in 100 g of it, where the maker said so: "70 % lean"
    std::optional<Band> ph{};          ///< of this food, where the maker measured it
    std::optional<Band> acid_pct{};    ///< acid in 100 g of it, as the label states it: "vinegar, 6 %"
    std::optional<Band> heat_mg_kg{};  ///< capsaicinoids in a kilo of it as weighed, where the maker knows these pods
    std::string called{};              ///< what the maker calls a food that is no record and was said to be like `ingredient`
    std::vector<Prepared> ready{};     ///< what is done to it already where it lies, by the list; `grams` are told as without it
};

/// Why it is not in the mass.
enum class BesideKind {
    casing,    ///< it holds the mass
    wrapping,  ///< caul, for a patty
    goods,     ///< no food: twine, skewers
    purpose    ///< a food for something else, by the words of its line: "for frying"
};

/// What stood among the lines and is not in the mass: a casing, twine, butter for frying, crumbs for coating.
struct Beside {
    std::string written;
    BesideKind kind = BesideKind::goods;
    std::string ingredient{};  ///< id, where it is a food: it is eaten with the sausage, and its allergens count
    std::string purpose{};     ///< the words of its line that keep it out, quoted
};

/// The same as a reason, of its kind; `about` is left to whoever tells it.
Reason why_beside(const Beside& beside);

struct Formula {
    std::string title, note;
    std::vector<Line> lines;
    Process process;
    std::vector<Beside> beside{};
    std::string parent{};               ///< title of the formula that this one was made from
    std::string date{};                 ///< when it was made, as written: "2026-05-01"
    std::vector<std::string> to_do{};   ///< what to see to before the work begins: "chard: strip the ribs"
    std::vector<std::string> method{};  ///< the maker's own words of how it is made, beside the lines
    std::vector<Declared> declared{};   ///< what notes and instructions say it holds
    std::vector<Reason> read_as{};      ///< what the reader took upon itself, beyond single lines
};

/// What is on hand.
struct InventoryItem {
    std::string ingredient;
    std::optional<double> grams;       ///< absent: plenty
    std::vector<Declared> declared{};  ///< allergens that the list says it holds, or may: "may contain nuts"
    std::vector<Reason> told{};        ///< what is told of it wherever it goes in: of raw milk
    std::optional<double> at_most{};   ///< where nobody weighed it, a bunch, three pods: it may be so much
    std::vector<Prepared> prepared{};  ///< what is done to all of it already; `grams` are of the fresh food that it came of
};

/// One line of a list as it was understood.
struct StockRead {
    std::string written, where;
    Reason as;
};

struct Inventory {
    std::vector<InventoryItem> items;
    std::vector<std::string> missing;  ///< ids said to be not there
    std::vector<Reason> notes;         ///< what the reader took upon itself
    std::optional<bool> complete;      ///< true: nothing else is on hand; false: everything else is; absent: not said
    std::vector<StockRead> read{};     ///< line by line
    std::vector<std::string> aside{};  ///< what is on hand and not known here, as written
    std::vector<Beside> casings{};     ///< on hand
};

}  // namespace standin
