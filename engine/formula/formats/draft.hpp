// A formula while it is read: lines understood and lines not, side by side.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <vector>

#include "formula/amounts/shares.hpp"
#include "formula/food/said_of_foods.hpp"
#include "formula/lexer/trouble.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/reading.hpp"

namespace standin {

struct DraftLine {
    std::string written, where;
    Result<ReadLine> read;
    std::optional<Beside> beside{};  ///< of what is not in the mass; then `read` says nothing
    std::optional<Origin> origin{};  ///< of a line in words
    std::size_t base = 0;            ///< of `Draft::bases`, one more than its place; 0: under no such heading
    const Unit* unit = nullptr;      ///< in which its bare number is asked to be
};

/// A heading that says what the amounts below it go with.
struct DraftBase {
    Per per;
    std::string heading, where;
};

/// A line that tells how much all of it makes.
struct DraftSize {
    double grams = 0;
    Whole of = Whole::batch;  ///< or the meat
    bool total = false;       ///< what all lines add up to
    bool in_title = false;
    std::size_t lines_before = 0;  ///< of the draft
    std::string written, where;
};

/// A formula in percentages: what they are shares of.
struct DraftSheet {
    Whole of = Whole::meat;  ///< the meat, the batch, or, unsaid, the first lines
    double grams = 0;        ///< of it
    bool adds_up = true;     ///< whether the percentages come to 100
};

struct Draft {
    bool asks_base = false;  ///< of what the percentages are shares is asked once, for the sheet
    Formula formula;         ///< title, note and process; its lines are still in `lines`
    std::vector<DraftLine> lines;
    Troubles troubles;                                 ///< in what is no ingredient line
    std::vector<Declared> named{};                     ///< allergens that notes, comments or instructions name
    std::vector<const Ingredient*> meat_named{};       ///< likewise meats
    std::vector<SaidBeside> said{};                    ///< notes, remarks and instructions, held against the lines when all are read
    std::vector<std::string> said_of_recipe{};         ///< lines of a pasted page that say nothing of the mass
    std::vector<std::string> headings{};               ///< lines that say what stands below them, or how much it makes
    std::vector<std::string> said_of_guests{};         ///< sentences that name people whom germs harm more than others
    std::vector<std::string> said_of_going_without{};  ///< likewise people who must go without a food
    std::vector<std::string> judged_by_eye{};          ///< texts in no field of the formula that judge only by eye when it is done
    std::vector<DraftBase> bases{};
    std::optional<DraftSize> size{};
    std::optional<DraftSheet> sheet{};
    Whole shares_of = Whole::unsaid;  ///< what a heading says that percentages are of
    bool under_base = false;          ///< the last of them goes for the next line
    bool of_mass = false;             ///< a heading tells what the whole mass weighs: "per kg" below it is of that
    std::size_t title_base = 0;       ///< that of the title, one more than its place, goes where no other does
    const Unit* unit = nullptr;       ///< of numbers without one, by the title or a heading
    std::optional<bool> limes{};      ///< whether "limón" is the lime in it; absent: not told

    /// Ids of the foods that its lines hold so far.
    std::set<std::string> foods() const {
        std::set<std::string> ids;
        for (const auto& line : lines)
            if (line.read && !line.beside) ids.insert(line.read->line.ingredient);
        return ids;
    }
    /// So many lines were not understood that reading on tells nothing new.
    bool hopeless() const;
};

/// Reads one line of an ingredient list into `draft`.
void take_ingredient_line(Draft& draft, std::string_view text, const std::string& where, const Origin& origin, const Knowledge& knowledge);

/// Reads bare names again where it tells how much of them the batch holds and what stands beside them: "3 g ginger" in 5 kg.
void judge_by_share(Draft& draft, const Knowledge& knowledge);

/// Looks through a text that is no ingredient line (title, note, comment, instruction) for what can hurt; nothing of it is lost.
/// `lost`: the text stands in no field of the formula, so what names an allergen or a meat is kept as a note.
void look_through(Draft& draft, std::string_view text, const std::string& where, const Knowledge& knowledge, bool lost = false);

/// Keeps a text as a note of the formula, so that what it raised is raised wherever the formula goes.
void add_to_note(Formula& formula, std::string_view text);

/// The same of a heading, which is told with the others.
void take_heading(Draft& draft, std::string_view text, const std::string& where, const Knowledge& knowledge);

void look_through_title(Draft& draft, std::string_view title, const std::string& where, const Knowledge& knowledge);

/// The formula, or every trouble in one error.
Result<Formula> finished(Draft draft, const Knowledge& knowledge);

/// What was understood and what not. Shares of the meat are weighed against the lines that were understood.
FormulaReading shown(Draft draft, const Knowledge& knowledge);

}  // namespace standin
