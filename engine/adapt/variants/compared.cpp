#include "adapt/variants/compared.hpp"

namespace standin {
namespace {

Compared side_by_side(const Formula& base, const Formula& variant, const Nominal& nominal) {
    const NominalBatch before(base, nominal), after(variant, nominal);
    Compared c;
    c.base = before.total();
    c.variant = after.total();
    c.before = before.state();
    c.after = after.state();
    c.bind_before = before.bind();
    c.bind_after = after.bind();
    return c;
}

const std::string& name_of(const Line& line, const Context& context) {
    return context.knowledge().ingredient(line.ingredient)->names.front();
}

void count_stand_ins(const Formula& base, const BuiltVariant& built, const Problem& problem, const Context& context, Compared& compared) {
    constexpr double close = 0.7, much = 0.5;  // of a swap, of a line; judgement
    double most = 0;
    for (const auto& edit : built.edits) {
        if (edit.move == PlainEdit::none) continue;
        const Move& move = problem.moves[edit.move];
        compared.variant.add(context.nominal().unit(edit.second ? move.second->food : move.food), -edit.after);
        if (edit.second) continue;  // counted with the first
        compared.variant.add(move.per_gram, edit.after);
        for (const auto& stands : move.stands_for) {
            if (stands.line != edit.line || stands.closeness >= close || edit.after < much * stands.equal_grams) continue;
            // Parsley for the basil in the title is more of another sausage than lemon for its wine.
            const double unlike = (1 - stands.closeness) * problem.loss[edit.line];
            if (unlike <= most) continue;
            most = unlike;
            compared.unlike = name_of(move.food, context) + " for " + name_of(base.lines[edit.line], context);
        }
    }
}

// A line that goes with nothing in its place is told, whatever the models taste of it.
void count_losses(const Problem& problem, const std::vector<double>& lost, const Context& context, Compared& compared) {
    constexpr double gone = 0.5;
    for (std::size_t l = 0; l < lost.size(); ++l)
        if (lost[l] >= gone && problem.loss[l] > 0)
            compared.missed += (compared.missed.empty() ? "" : ", ") + name_of(problem.formula.lines[l], context);
}

}  // namespace

Compared compared_with(const Formula& base, const BuiltVariant& built, const Problem& problem, const std::vector<double>& lost,
                       const Context& context) {
    Compared compared = side_by_side(base, built.formula, context.nominal());
    count_stand_ins(base, built, problem, context, compared);
    count_losses(problem, lost, context, compared);
    return compared;
}

}  // namespace standin
