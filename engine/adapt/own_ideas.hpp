// What the maker has decided already: which food stands in for a line, how much of a food at the most or at the least.
#pragma once

#include "adapt/moves/problem.hpp"
#include "knowledge/index/knowledge.hpp"
#include "standin/advice.hpp"

namespace standin {

/// `request` with its ideas as the list of what is on hand and by id: a line that something else is to be used for is not to be had, what
/// is used for it is, and of a food that may only be used so far there is no more. Names that are no line or no food are usage errors.
Result<AdaptRequest> with_own_ideas(AdaptRequest request, const Formula& formula, const Knowledge& knowledge);

/// The ideas that the maker's own `--without` forbids, with the words that forbid them, and what each brings.
struct IdeasExcluded {
    std::vector<Reason> conflict, would_give;
};
IdeasExcluded ideas_excluded(const AdaptRequest& request, const Stock& stock, const Knowledge& knowledge);

/// The ideas for which nothing known says how much is to be taken, each as the maker would say it: "use sorrel for tomatillo".
std::vector<Reason> ideas_without_weight(const AdaptRequest& request, const Problem& problem, const Knowledge& knowledge);

/// Of the ideas, those that no variant follows; variants that leave one out are dropped.
std::vector<Reason> ideas_not_followed(const AdaptRequest& request, const Formula& base, std::vector<Variant>& variants,
                                       const Knowledge& knowledge);

/// What each idea costs when it is taken all the same, weight for weight: how far that formula lies from the base.
std::vector<Reason> ideas_by_weight(const AdaptRequest& request, const Formula& base, const Context& context);

}  // namespace standin
