// Plain mass: the formula once more without what is at fault, to be folded into the mass that is made.
#pragma once

#include <optional>
#include <set>
#include <vector>

#include "adapt/distance/distance.hpp"
#include "mend/measured.hpp"
#include "mend/tastes.hpp"
#include "substitute/stock.hpp"

namespace standin {

struct Plain {
    std::vector<Line> lines;          ///< at the weights of a batch as large as the mass, less what is left out
    std::vector<std::string> lacks;   ///< ids of the lines left out
    std::vector<const Goal*> serves;  ///< goals that it brings nearer
    std::vector<std::string> leaner;  ///< names of lean cuts that stand in it for fatter ones
    std::vector<std::string> less{};  ///< ids of those of which a part went back in
    bool without_salt = false;
};

/// Lines of plain mass that go back after all.
struct PutBack {
    Role role = Role::acid;
    double part = 1;                          ///< of what the formula weighs
    double share = 1;                         ///< of the plain mass that is made
    const std::vector<std::string>& without;  ///< ids of what stays out, whatever else it does
};

/// Puts a part of the left out lines of a role back, of what there is.
void put_back(Plain& plain, const Formula& mass, const PutBack& back_in, const Stock& stock);

/// Which lines go into it: all but those that move what was tasted the wrong way, and those of a role of which there is too much.
/// `also_without`: ids of foods that another word leaves out; where green is asked for beside that, it comes from mild leaf.
/// Against fat its meat is a lean cut of the same animal. Nothing where no meat would be left in it, or nothing would get better by it.
std::optional<Plain> plain_for(const Formula& mass, const std::vector<Meant>& tastes, const MassAsMade& made, const Distance& distance,
                               const Context& context, const Stock& stock, const std::vector<std::string>& also_without = {});

/// The formula once more without the foods of these ids, whatever else they do; leaf in it is blanched briefly.
std::optional<Plain> plain_without(const std::vector<std::string>& foods, const Formula& mass, const std::vector<Meant>& tastes,
                                   const MassAsMade& made, const Distance& distance, const Context& context, const Stock& stock);

/// The formula once more, all of it.
Plain plain_whole(const Formula& mass);

/// Salt put back into plain mass that was to be without it, so that so much of it in the mass leaves `of_meat` % of salt to the meat.
void keep_salt(Plain& plain, const Formula& mass, double share, double of_meat, const Context& context);

/// For leaf that is not there, leaf that the list names, at the line's weight; `needed` of it.
std::optional<Line> leaf_on_hand(const Line& line, double needed, const Stock& stock);

/// Takes out of it what the list has too little of, leaf that the list names in the place of leaf. Too little meat ends it: what there is.
std::optional<Reason> do_without(Plain& plain, double share, const Stock& stock);

/// `mass` with `share` of the plain mass in it, lines of one food together; weights of the plain mass as one weighs them.
Formula blended(const Formula& mass, const Plain& plain, double share);

/// The plain mass alone.
std::vector<Line> plain_lines(const Plain& plain, double share);

}  // namespace standin
