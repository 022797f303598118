// Words said of a test patty, as goals.
#pragma once

#include <set>

#include "adapt/goals/wants.hpp"
#include "knowledge/readers/mending.hpp"

namespace standin {

struct Taste {
    std::string written;
    const TasteWord* word = nullptr;
    bool strong = false;  ///< "much too sour": the step twice
    bool weak = false;    ///< "a little too sour": a part of it
};

/// The words of a list such as "flat, much too sour"; a usage error with the nearest known one for what is not understood.
Result<std::vector<Taste>> read_tastes(const std::vector<std::string>& tasted, const Mending& known);

/// A taste as it is taken of this mass.
struct Meant {
    Taste taste;
    const TasteReading* reading = nullptr;
    std::vector<Goal> goals;
    bool there = false;           ///< what it asks for is so already
    std::vector<Goal> plainly{};  ///< of what was said strongly: the goals had it been said plainly
    const std::string& says() const {
        if (taste.weak && !reading->says_little.empty()) return reading->says_little;
        return taste.strong && !reading->says_much.empty() ? reading->says_much : reading->says;
    }
    /// Of the whole step.
    double steps() const { return taste.strong ? reading->much : taste.weak ? reading->little : 1; }
    /// Times the dose of a role.
    double by() const;
};

struct Meaning {
    std::vector<Meant> all;
    std::vector<std::string> opposed;  ///< two words that leave no mass that pleases both
};

/// Whether all bounds are kept by the mass.
bool hold(const std::vector<TasteWhen>& all, const State& mass);

/// That what was tasted is not to be had, and why.
Reason cannot_be(ReasonKind why, std::string tasted, std::vector<Figure> figures = {});

/// What the readings of a word go by.
struct TastedMass {
    const State& state;
    double meat_share = 0;          ///< the meat in a gram of it: salt asked for by the meat is reckoned with it
    std::set<AromaNote> notes{};    ///< of which it has foods
    std::set<Role> roles{};         ///< main roles of its lines
    std::set<std::string> kinds{};  ///< of those that a reading asks about, such as it has a food of
    bool fish = false;              ///< all its meat is fish, which is lean and no drier for it
};

/// Of each word the first reading that holds of the mass as made and does not pull against another word.
Meaning meaning_of(const std::vector<Taste>& tastes, const TastedMass& mass);

/// The same with another reading wherever one stands beside that which was taken; nothing where there is none.
std::optional<Meaning> meaning_beside(const Meaning& taken, const TastedMass& mass);

}  // namespace standin
