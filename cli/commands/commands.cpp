#include <array>
#include <limits>

#include "command.hpp"

namespace standin::cli {
namespace {

constexpr auto any_number = std::numeric_limits<std::size_t>::max();

constexpr std::array<Command, 11> table{{
    {"predict",
     "FORMULA...",
     "what this batch will be",
     "Salt, fat, pH, colour, heat, bind and cook loss of a formula, each as a band: likely value, then the range that holds nine "
     "batches in ten. Several formulas give one page after another; with --json, one line of JSON each.",
     {"standin predict hedgerow.txt", "standin predict hedgerow.txt --why heat"},
     1,
     any_number,
     run_predict},
    {"swaps",
     "[FORMULA] LINE",
     "what can stand in for one line, how much of it, and what that changes",
     "LINE is the name of an ingredient in the formula, or its number counted from 1. Without a formula it is any food, in a usual weight "
     "in a kilo of plain sausage.",
     {"standin swaps hedgerow.txt spinach --have fridge.txt --top 5", "standin swaps serrano"},
     1,
     any_number,
     run_swaps},
    {"adapt",
     "FORMULA",
     "swap and rebalance the formula for what is on hand and what is wanted",
     "The variants nearest to the original come first. Wants are words (firmer looser milder hotter greener leaner richer brighter rounder "
     "saltier less-salty juicier) or conditions on salt fat water protein ph sourness heat green bind firmness loss, such as 'heat<=3'.",
     {"standin adapt hedgerow.txt --have fridge.txt --want milder --without nuts",
      "standin adapt hedgerow.txt --have fridge.txt --save today.txt --sheet"},
     1,
     1,
     run_adapt},
    {"mend",
     "FORMULA",
     "what to add to a mass that is mixed and whose test patty is not right",
     "Nothing comes out of a mixed mass again: what may be added, in what amount and how it goes in, or how much plain mass to make and "
     "fold in. "
     "Words of the patty such as flat, too sour, too salty, not salty enough, too hot, not hot enough, crumbly, mushy, rubbery, dry, wet, "
     "greasy, "
     "not green, bitter. Always of a fried patty, never of the raw mass. Where nothing goes all the way it shows what comes nearest and "
     "says so; exit code 1 when nothing helps.",
     {"standin mend hedgerow.txt --tasted \"too hot, needs salt\" --made 2.5kg",
      "standin mend hedgerow.txt --tasted crumbly --save mended.txt"},
     1,
     1,
     run_mend},
    {"plan",
     "FORMULA...",
     "which of these sausages one list makes, and how it is shared among them",
     "Each formula with what the list has, nearest to its own first; the list shared among them, what is left over, what one thing more "
     "would "
     "help most, and what to buy. Never more is asked than there is.",
     {"standin plan hedgerow.txt hedgerow-mild.json --have fridge.txt",
      "standin plan hedgerow.txt --have fridge.txt --make \"hedgerow.txt: 2 kg\""},
     1,
     any_number,
     run_plan},
    {"compare",
     "FORMULA FORMULA...",
     "two or more formulas side by side",
     "Each is predicted from the same draws.",
     {"standin compare hedgerow.txt hedgerow-mild.json", "standin compare hedgerow.txt hedgerow-mild.json --full"},
     2,
     any_number,
     run_compare},
    {"sheet",
     "FORMULA",
     "what to hang above the bench: weights, order of work, what to buy, what it makes",
     "Scaled to so much meat (--meat), to so much in all (--total), or as far as one line goes (--only); weights are those on the scale, "
     "the order of work comes from the lines' preparations and the process.",
     {"standin sheet hedgerow.txt --meat 5kg --units both --html hedgerow.html",
      "standin adapt hedgerow.txt --have fridge.txt --json | standin sheet -"},
     1,
     1,
     run_sheet},
    {"lookup",
     "WORD...",
     "what the knowledge says about an ingredient, with sources",
     "Several words are read as one name.",
     {"standin lookup poblano", "standin lookup tomatillo --json"},
     1,
     any_number,
     run_lookup},
    {"graph",
     "[WORD...]",
     "the swaps as a graph for Graphviz, in its DOT language",
     "All swaps, or with WORD those from and to one ingredient; --role keeps to one role. An arrow leads from an ingredient to what can "
     "stand in for it and tells how close that is; a dashed one says how the stand-in must be prepared.",
     {"standin graph spinach --role green > spinach.dot", "standin graph --role binder > binders.dot"},
     0,
     any_number,
     run_graph},
    {"check",
     "FILE...",
     "is this formula, inventory, kitchen file, price list or knowledge folder sound",
     "Says what is wrong and where; exit code 65 when anything is. Of a knowledge folder also what deserves a second look, summed up: "
     "with -v or --json every case. A folder that holds only some sorts of records is judged laid over the built-in ones.",
     {"standin check hedgerow.txt fridge.txt", "standin check hedgerow.txt --json"},
     1,
     any_number,
     run_check},
    {"convert",
     "FILE",
     "how a formula was understood, line by line; and into other forms",
     "Reads plain lines, formula JSON, schema.org recipes and saved pages that hold one. Shows each line as written and as understood, how "
     "surely and why, and what is asked back (exit code 65 then). With --to it writes the formula instead, with --ask it "
     "asks about each doubt first.",
     {"standin convert hedgerow.txt", "standin convert hedgerow.txt --to json"},
     1,
     1,
     run_convert},
}};

}  // namespace

std::span<const Command> commands() { return table; }

}  // namespace standin::cli
