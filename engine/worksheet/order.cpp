#include "worksheet/order.hpp"

#include <algorithm>

namespace standin {
namespace {

class Turn {
public:
    Turn(const std::vector<Chain>& chains, const Knowledge& knowledge) : chains_(chains), knowledge_(knowledge), next_(chains.size(), 0) {}

    bool done() const {
        for (std::size_t c = 0; c < chains_.size(); ++c)
            if (!finished(c)) return false;
        return true;
    }

    Job take() {
        std::size_t best = chains_.size();
        for (std::size_t c = 0; c < chains_.size(); ++c)
            if (!finished(c) && (best == chains_.size() || before(c, best))) best = c;
        Job job{chains_[best].steps[next_[best]], {}};
        for (std::size_t c = 0; c < chains_.size(); ++c)
            if (!finished(c) && chains_[c].steps[next_[c]] == job.step) job.of.emplace_back(c, next_[c]++);
        return job;
    }

private:
    bool finished(std::size_t c) const { return next_[c] == chains_[c].steps.size(); }
    const Prepared& step(std::size_t c) const { return chains_[c].steps[next_[c]]; }

    // Whether another chain comes to this step later, so that both are better done together then.
    bool worth_waiting(std::size_t c) const {
        for (std::size_t o = 0; o < chains_.size(); ++o)
            for (std::size_t k = next_[o] + 1; k < chains_[o].steps.size(); ++k)
                if (o != c && chains_[o].steps[k] == step(c)) return true;
        return false;
    }

    double minutes_left(std::size_t c) const {
        double sum = 0;
        for (std::size_t k = next_[c]; k < chains_[c].steps.size(); ++k) {
            const Prepared& s = chains_[c].steps[k];
            sum += s.minutes.value_or(knowledge_.preparation(s.preparation)->minutes.value_or(0));
        }
        return sum;
    }

    bool before(std::size_t a, std::size_t b) const {
        if (worth_waiting(a) != worth_waiting(b)) return !worth_waiting(a);
        if (minutes_left(a) != minutes_left(b)) return minutes_left(a) > minutes_left(b);
        return knowledge_.preparation(step(a).preparation)->order < knowledge_.preparation(step(b).preparation)->order;
    }

    const std::vector<Chain>& chains_;
    const Knowledge& knowledge_;
    std::vector<std::size_t> next_;
};

}  // namespace

std::vector<Job> jobs_of(const std::vector<Chain>& chains, const Knowledge& knowledge) {
    std::vector<Job> jobs;
    for (Turn turn(chains, knowledge); !turn.done();) jobs.push_back(turn.take());
    return jobs;
}

}  // namespace standin
