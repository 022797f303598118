#include "knowledge/words/forbidden.hpp"

#include <algorithm>
#include <vector>

namespace standin {
namespace {

// The words of one clause, by their places in the text.
class Clause {
public:
    Clause(const HazardText& text, std::size_t place, const Prohibitions& prohibitions)
        : words_(text.words), first_(place), last_(place + 1), prohibitions_(prohibitions) {
        while (first_ > 0 && text.clause_of(first_ - 1) == text.clause_of(place)) --first_;
        while (last_ < words_.size() && text.clause_of(last_) == text.clause_of(place)) ++last_;
    }

    bool forbids(std::size_t first, std::size_t last) const { return forbidden_behind(last) || forbidden_before(first, last); }

    bool urges(std::size_t first) const {
        for (std::size_t at = first_; at < first; ++at)
            if (longest_at(prohibitions_.forbids, at) > 0 && longest_at(prohibitions_.turns, at) > 0) return true;
        return false;
    }

private:
    // "Auf der Arbeitsplatte nie auftauen", "tezgahta bırakmayın": at once behind it a word that forbids and the act, or one that is both.
    // "Freeze again what you do not use" forbids no freezing.
    bool forbidden_behind(std::size_t last) const {
        if (last >= last_) return false;
        const std::size_t length = longest_at(prohibitions_.forbids, last);
        if (length > 0) return longest_at(prohibitions_.acts, last) > 0 || longest_at(prohibitions_.acts, last + length) > 0;
        const std::size_t next = last + 1;
        return next < last_ && longest_at(prohibitions_.forbids, next) > 0 && longest_at(prohibitions_.acts, next) > 0 &&
               longest_at(prohibitions_.turns, last) == 0;
    }

    // The first word that forbids goes for the whole of what follows: "never forget to", "do not be afraid to".
    bool forbidden_before(std::size_t first, std::size_t last) const {
        std::size_t at = first_;
        while (at < first && longest_at(prohibitions_.forbids, at) == 0) ++at;
        if (at == first) return false;
        const std::size_t behind = at + longest_at(prohibitions_.forbids, at);
        const std::size_t act = stands_at_once(behind, first) ? at : act_behind(at, last);
        if (act == last_ || longest_at(prohibitions_.turns, at) > 0 || turns_between(behind, first)) return false;
        if (act >= last && turns_between(last, act)) return false;
        return !says(prohibitions_.longer) || says(prohibitions_.short_whiles);
    }

    // "In the fridge, never on the counter", "jamais à température ambiante".
    bool stands_at_once(std::size_t behind, std::size_t first) const {
        constexpr std::size_t longest_joint = 3;  // letters
        return behind == first || (behind + 1 == first && words_[behind].size() <= longest_joint);
    }

    // How many words the longest of the patterns takes at a place, within the clause.
    std::size_t longest_at(const std::vector<std::string>& patterns, std::size_t at) const {
        std::size_t longest = 0;
        for (const auto& pattern : patterns) {
            const std::size_t length = fits_at(pattern, words_, at);
            if (at + length <= last_) longest = std::max(longest, length);
        }
        return longest;
    }

    bool says(const std::vector<std::string>& patterns) const {
        for (std::size_t at = first_; at < last_; ++at)
            if (longest_at(patterns, at) > 0) return true;
        return false;
    }

    // Where the word stands that is forbidden: at the word that forbids or behind it, a few words past what is asked about at most.
    std::size_t act_behind(std::size_t at, std::size_t last) const {
        constexpr std::size_t reach = 4;  // words: "niemals auf der Arbeitsplatte über Nacht auftauen lassen"
        for (const std::size_t end = std::min(last_, last + reach); at < end; ++at)
            if (longest_at(prohibitions_.acts, at) > 0) return at;
        return last_;
    }

    bool turns_between(std::size_t from, std::size_t to) const {
        for (; from < to; ++from)
            if (longest_at(prohibitions_.turns, from) > 0) return true;
        return false;
    }

    const std::vector<std::string>& words_;
    std::size_t first_, last_;
    const Prohibitions& prohibitions_;
};

}  // namespace

bool is_forbidden(const HazardText& text, std::size_t first, std::size_t last, const Prohibitions& prohibitions) {
    return first < last && first < text.words.size() && Clause(text, first, prohibitions).forbids(first, last);
}

bool is_urged(const HazardText& text, std::size_t first, const Prohibitions& prohibitions) {
    return first < text.words.size() && Clause(text, first, prohibitions).urges(first);
}

}  // namespace standin
