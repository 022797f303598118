#include "adapt/infeasibility/goes_away.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "adapt/distance/met.hpp"
#include "adapt/goals/levers.hpp"
#include "adapt/variants/variant.hpp"
#include "evaluate/batch.hpp"

namespace standin {
namespace {

class GoneFrom {
public:
    GoneFrom(const Variant& nearest, const Formula& base, const Context& context) : nearest_(nearest), base_(base), context_(context) {}

    Reason told(const Goal& goal, const WantResult& want) const {
        Reason reason = make_reason(ReasonKind::goes_away, {want.reason.figures.front()});
        reason.about = goal.want;
        reason.note = word_of_the_other_way(goal);
        for (const auto& line : base_.lines)
            if (serves(line, goal) && is_gone(line))
                if (const auto grams = enough_of(line, goal, want.reason.figures[1].after))
                    reason.figures.push_back(
                        {context_.knowledge().ingredient(line.ingredient)->names.front(), std::nullopt, kitchen_grams(*grams, false), "g"});
        return reason;
    }

private:
    // What a batch that goes the other way is asked for by, the plainest of its words: "less hot", "richer".
    std::string word_of_the_other_way(const Goal& goal) const {
        constexpr std::string_view less = "less-";
        const auto plainest = [&](const WantRecord& want) {
            const auto plain = std::find_if(want.also.begin(), want.also.end(), [&](const auto& word) { return word.starts_with(less); });
            std::string word = goal.kind == Goal::Kind::at_least && plain != want.also.end() ? *plain : want.word;
            std::replace(word.begin(), word.end(), '-', ' ');
            return word;
        };
        const std::string_view property = info(of_batch(goal.property)).key;
        for (const auto& want : context_.knowledge().records().wants) {
            const auto& first = want.moves.front();
            const bool up = first.times ? first.by > 1 : first.by > 0;
            if (first.property == property && up == (goal.kind == Goal::Kind::at_most)) return plainest(want);
        }
        return {};
    }

    bool serves(const Line& line, const Goal& goal) const {
        const Role role = context_.knowledge().ingredient(line.ingredient)->roles.front();
        return goal.kind == Goal::Kind::at_least && std::any_of(levers().begin(), levers().end(), [&](const Lever& lever) {
                   return lever.property == of_batch(goal.property) && lever.change.front().role == role;
               });
    }

    bool is_gone(const Line& line) const {
        return std::none_of(nearest_.formula.lines.begin(), nearest_.formula.lines.end(),
                            [&](const Line& left) { return left.ingredient == line.ingredient; });
    }

    // So much of the line beside the variant as does what was asked; nothing where no reasonable weight does.
    std::optional<double> enough_of(const Line& line, const Goal& goal, double target) const {
        constexpr double most_times = 3;  // the weight it had; judgement
        constexpr int halvings = 12;
        const auto value = [&](double grams) {
            Formula more = nearest_.formula;
            more.lines.push_back(line);
            more.lines.back().grams = {grams, grams, grams};
            return NominalBatch(more, context_.nominal()).state().properties[goal.property];
        };
        const auto& limit = context_.knowledge().ingredient(line.ingredient)->most_g_per_kg;
        double low = 0, high = most_times * line.grams.mid;
        if (limit) high = std::min(high, limit->band.mid * nearest_.prediction.batch_g / 1000);
        if (value(high) < target) return std::nullopt;
        for (int i = 0; i < halvings; ++i) {
            const double middle = (low + high) / 2;
            (value(middle) < target ? low : high) = middle;
        }
        return high;
    }

    const Variant& nearest_;
    const Formula& base_;
    const Context& context_;
};

}  // namespace

std::vector<Reason> wants_gone_from(const AdaptAnswer& answer, const Formula& base, const std::vector<Goal>& goals,
                                    const Context& context) {
    std::vector<Reason> all;
    if (answer.variants.empty()) return all;
    const Variant& nearest = answer.variants.front();
    const GoneFrom gone(nearest, base, context);
    for (const auto& want : nearest.wants) {
        if (!goes_away_from(want)) continue;
        const auto goal = std::find_if(goals.begin(), goals.end(), [&](const Goal& one) {
            return one.want == want.want && info(one.property).name == want.reason.figures.front().what;
        });
        if (goal != goals.end()) all.push_back(gone.told(*goal, want));
    }
    return all;
}

}  // namespace standin
