#include "adapt/salted_first.hpp"

#include <algorithm>

#include "adapt/distance/met.hpp"
#include "adapt/variants/missing_salt.hpp"
#include "adapt/variants/variant_list.hpp"
#include "evaluate/batch.hpp"
#include "knowledge/index/kinds.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

bool is_salt(const Line& line, const Context& context) {
    return belongs(*context.knowledge().ingredient(line.ingredient), "salt", context.knowledge());
}

bool salt_stays(const Formula& formula, const Stock& stock, const Context& context) {
    const bool kept =
        std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) { return line.keep && is_salt(line, context); });
    const Ingredient* salt = context.knowledge().ingredient("table-salt");
    return kept || !salt || !stock.can_bring(*salt);
}

}  // namespace

std::optional<WithSalt> with_salt(const Formula& formula, const AdaptRequest& request, const std::vector<Goal>& goals, const Stock& stock,
                                  const Context& context) {
    if (goals.empty() || salt_stays(formula, stock, context)) return std::nullopt;
    const NominalBatch base(formula, context.nominal());
    const State now = base.state();
    if (now.properties[Property::salt_pct_of_meat] >= context.constant("advice.salt.hardly-any")) return std::nullopt;
    const auto says = salt_would_bind(formula, formula.process, Distance(context, base.total(), now, goals), context);
    if (!says) return std::nullopt;
    constexpr double in_all = 0.95;  // what else comes in thins it a little
    const double enough = context.constant("advice.salt.binds") * base.total()[Amount::meat] / base.total()[Amount::mass];
    WithSalt with{request, goals, "salt>=" + fixed_text(in_all * enough, 2), *says};
    with.says.about = "salted";
    with.request.wants.push_back(with.want);
    Goal goal;
    goal.want = with.want;
    goal.property = Property::salt_pct;
    goal.condition = true;
    goal.limit = in_all * enough;
    with.goals.push_back(std::move(goal));
    return with;
}

namespace {

Variant without_the_want_for_salt(Variant salted, const WithSalt& with) {
    std::erase_if(salted.wants, [&](const WantResult& want) { return want.want == with.want; });
    salted.gives_back.insert(salted.gives_back.begin(), with.says);
    return salted;
}

// Where neither has all of it, the one that comes nearer with its salt is what comes nearest.
void put_salted_nearer(AdaptAnswer& answer, AdaptAnswer salted, const WithSalt& with, std::size_t top) {
    constexpr double felt = 0.25;  // noticeable differences; judgement
    Variant first = without_the_want_for_salt(std::move(salted.variants.front()), with);
    if (answer.variants.empty() || still_missed(first) > still_missed(answer.variants.front()) - felt) return;
    std::erase_if(salted.reach, [&](const Reason& told) { return told.about == with.want; });
    answer.reach = std::move(salted.reach);
    answer.plans_visited += salted.plans_visited;
    put_nearest_first(answer, std::move(first), top);
    answer = with_safety(std::move(answer));
}

}  // namespace

void put_salted_first(AdaptAnswer& answer, AdaptAnswer salted, const WithSalt& with, std::size_t top) {
    if (salted.variants.empty()) return;
    if (!meets_all(salted.variants.front())) {
        if (!answer.conflict.empty()) put_salted_nearer(answer, std::move(salted), with, top);
        return;
    }
    Variant first = without_the_want_for_salt(std::move(salted.variants.front()), with);
    // What does not do all that was asked is no answer beside one that does.
    if (!answer.conflict.empty()) answer.variants.clear();
    answer.conflict.clear();
    answer.would_give.clear();
    answer.reach.clear();
    for (auto& other : answer.variants)
        std::erase_if(other.gives_back, [](const Reason& r) { return r.kind == ReasonKind::salt_would_bind; });
    answer.variants.insert(answer.variants.begin(), std::move(first));
    answer.variants.resize(std::min(answer.variants.size(), std::max<std::size_t>(1, top)));
    number(answer.variants);
    answer.plans_visited += salted.plans_visited;
    answer.proved = answer.proved && salted.proved;
    answer = with_safety(std::move(answer));
}

}  // namespace standin
