#include "adapt/moves/goes_first.hpp"

#include <algorithm>

#include "adapt/distance/asked_roles.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

class GoesFirst {
public:
    GoesFirst(const Problem& problem, const Distance& distance, const Context& context)
        : problem_(problem), distance_(distance), context_(context) {}

    std::vector<LinearConstraint> all() && {
        fattest_goes_first();
        swap_other_fat();
        what_is_rich_stays();
        fat_goes_up_before_the_meat_is_changed();
        too_much_acid_goes_first();
        what_sours_goes_before_fat();
        what_sets_goes_before_salt();
        loose_water_goes_before_binder();
        green_stand_in_goes_before_more_green();
        rest_beside_the_first();
        return std::move(limits_);
    }

private:
    const Ingredient& ingredient(const Line& line) const { return *context_.knowledge().ingredient(line.ingredient); }
    Role role(const Line& line) const { return ingredient(line).roles.front(); }
    const Material& base() const { return distance_.base_material(); }

    // Who wants it leaner, or firmer, takes out the back fat before the belly: of no line a larger share than of a clearly fatter one.
    void fattest_goes_first() {
        const auto& goals = distance_.goals();
        const bool leaner = asks_leaner(goals) || asks_firmer(goals);
        // Who wants it richer takes lean out, and not the fat cut: the other way round.
        const bool richer = !leaner && asks_richer(goals);
        const double clearly = context_.constant("advice.meat.fatter");
        const auto goes = [&](const Move& move) { return move.kind == MoveKind::reduce && ingredient(move.food).meat; };
        const auto fat = [&](const Move& move) { return context_.nominal().unit(move.food)[Amount::fat]; };
        for (std::size_t a = 0; (leaner || richer) && a < problem_.moves.size(); ++a)
            for (std::size_t b = 0; b < problem_.moves.size(); ++b) {
                const Move &stays = problem_.moves[a], &first = problem_.moves[b];
                if (!goes(stays) || !goes(first)) continue;
                const Move &lean = leaner ? stays : first, &fatter = leaner ? first : stays;
                // Who wants it leaner, or firmer, takes out the fat, or the fatter cut, before any meat is changed for other meat.
                const bool fat_line = leaner && ingredient(stays.food).tissue != Tissue::fat_tissue;
                if (fat(fatter) >= clearly * fat(lean) && fat(fatter) > fat(lean)) no_larger_share(a, b, fat_line);
            }
    }

    // Half of the way to the fat that is asked for, as a share of the batch.
    double half_way_to_rich() const {
        const auto& now = distance_.base().properties;
        double asked = now[Property::fat_pct];
        for (const auto& goal : distance_.goals())
            if (of_batch(goal.property) == Property::fat_pct && goal.kind == Goal::Kind::at_least && now[goal.property] > 0)
                asked = std::max(asked, now[Property::fat_pct] * goal.target(now[goal.property]) / now[goal.property]);
        return (now[Property::fat_pct] + asked) / 200;
    }

    // Who wants it richer takes out no salmon: what is as fat as that goes only for what is fatter.
    void what_is_rich_stays() {
        if (!asks_richer(distance_.goals())) return;
        const double rich = half_way_to_rich();
        for (std::size_t m = 0; m < problem_.moves.size(); ++m) {
            const Move& goes = problem_.moves[m];
            if (goes.kind != MoveKind::reduce || !ingredient(goes.food).meat || problem_.missing[goes.line]) continue;
            if (context_.nominal().unit(goes.food)[Amount::fat] < rich) continue;
            LinearConstraint limit{std::vector<double>(problem_.moves.size(), 0.0), 0, std::max(1.0, goes.most)};
            limit.per_gram[m] = 1;
            for (std::size_t other = 0; other < problem_.moves.size(); ++other)
                if (problem_.moves[other].kind == MoveKind::stand_in && problem_.moves[other].line == goes.line) limit.per_gram[other] = -1;
            limits_.push_back(std::move(limit));
        }
    }

    // A turkey sausage with oil in it gets more oil, or skin, before half of the turkey is another cut.
    void fat_goes_up_before_the_meat_is_changed() {
        if (!asks_richer(distance_.goals())) return;
        std::vector<double> raised(problem_.moves.size(), 0.0);
        bool any = false;
        for (std::size_t m = 0; m < problem_.moves.size(); ++m) {
            const Move& up = problem_.moves[m];
            if (up.kind != MoveKind::raise || role(up.food) != Role::fat || !(up.most > 0)) continue;
            raised[m] = -1 / up.most;
            any = true;
        }
        for (std::size_t m = 0; any && m < problem_.moves.size(); ++m) {
            const Move& changed = problem_.moves[m];
            if (changed.kind != MoveKind::stand_in || problem_.missing[changed.line] ||
                role(problem_.formula.lines[changed.line]) != Role::lean)
                continue;
            LinearConstraint limit{raised, 0, 1};
            limit.per_gram[m] = 1 / problem_.formula.lines[changed.line].grams.mid;
            limits_.push_back(std::move(limit));
        }
    }

    // Another cheese, cream or oil comes in only for one that goes: who wants it leaner is not given ricotta beside all of the
    // feta, nor who wants it richer ghee beside the cream.
    void swap_other_fat() {
        if (!asks_leaner(distance_.goals()) && !asks_richer(distance_.goals())) return;
        for (std::size_t l = 0; l < problem_.start.size(); ++l) {
            const Line& line = problem_.formula.lines[l];
            if (ingredient(line).meat || role(line) != Role::fat || problem_.missing[l]) continue;
            LinearConstraint limit{{}, 0, 1};
            for (const auto& move : problem_.moves) {
                const bool comes = move.kind == MoveKind::stand_in && move.line == l,
                           goes = move.kind == MoveKind::reduce && move.line == l;
                limit.per_gram.push_back(comes ? move.covers->per_gram : goes ? -1 / line.grams.mid : 0);
            }
            limits_.push_back(std::move(limit));
        }
    }

    // Of the line of `a` no larger share goes than of that of `b`; what comes in for the first is nothing taken out, unless it is changed
    // only where the other goes.
    void no_larger_share(std::size_t a, std::size_t b, bool changed_too = false) {
        const std::size_t stays = problem_.moves[a].line, first = problem_.moves[b].line;
        const auto grams = [&](std::size_t l) { return problem_.formula.lines[l].grams.mid; };
        LinearConstraint limit{std::vector<double>(problem_.moves.size(), 0.0), 0, 1};
        for (std::size_t m = 0; m < problem_.moves.size() && !changed_too; ++m)
            if (problem_.moves[m].kind == MoveKind::stand_in && problem_.moves[m].line == stays) limit.per_gram[m] = -1 / grams(stays);
        limit.per_gram[a] = 1 / grams(stays);
        limit.per_gram[b] = -1 / grams(first);
        limits_.push_back(std::move(limit));
    }

    // Of an acid of which there is more than a kilo takes more goes than of another.
    void too_much_acid_goes_first() {
        const auto over = [&](const Line& line) {
            const auto& most = ingredient(line).most_g_per_kg;
            return role(line) == Role::acid && most && line.grams.mid > most->band.mid * base()[Amount::mass] / 1000;
        };
        const auto goes = [&](const Move& move) { return move.kind == MoveKind::reduce && role(move.food) == Role::acid; };
        for (std::size_t a = 0; a < problem_.moves.size(); ++a)
            for (std::size_t b = 0; b < problem_.moves.size(); ++b)
                if (goes(problem_.moves[a]) && goes(problem_.moves[b]) && !over(problem_.moves[a].food) && over(problem_.moves[b].food))
                    no_larger_share(a, b);
    }

    // A mass that sets in its acid is mended by less of what sours it: of the fat no larger share goes than of that.
    void what_sours_goes_before_fat() {
        constexpr double sets_at = 5.3, much = 0.25;  // pH; of the batch's acid; judgement
        const auto& goals = distance_.goals();
        const bool holds = asks_firmer(goals);
        if (!holds || distance_.base().properties[Property::ph] >= sets_at) return;
        const auto sours = [&](const Move& move) {
            return move.kind == MoveKind::reduce &&
                   -move.per_gram[Amount::titratable] * move.most > much / 2 * base()[Amount::titratable] &&
                   context_.nominal().unit(move.food)[Amount::titratable] * problem_.formula.lines[move.line].grams.mid >
                       much * base()[Amount::titratable];
        };
        for (std::size_t a = 0; a < problem_.moves.size(); ++a)
            for (std::size_t b = 0; b < problem_.moves.size(); ++b) {
                const Move &fat = problem_.moves[a], &sour = problem_.moves[b];
                if (fat.kind == MoveKind::reduce && role(fat.food) == Role::fat && sours(sour)) no_larger_share(a, b, true);
            }
    }

    // Who wants it looser has less of what was put in to set it before there is less salt.
    void what_sets_goes_before_salt() {
        if (!salt_goes_for_looser(distance_)) return;
        const auto goes = [&](const Move& move, Role of) { return move.kind == MoveKind::reduce && role(move.food) == of; };
        for (std::size_t a = 0; a < problem_.moves.size(); ++a)
            for (std::size_t b = 0; b < problem_.moves.size(); ++b)
                if (goes(problem_.moves[a], Role::salt) && goes(problem_.moves[b], Role::binder)) no_larger_share(a, b);
    }

    // Who wants it to hold pours less wine and water into it before something is bought to hold them.
    void loose_water_goes_before_binder() {
        const auto& goals = distance_.goals();
        if (!asks_firmer(goals)) return;
        constexpr double some = 0.01;  // of the batch: a splash wets nothing; judgement
        for (std::size_t a = 0; a < problem_.moves.size(); ++a)
            for (std::size_t b = 0; b < problem_.moves.size(); ++b) {
                const Move &bought = problem_.moves[a], &poured = problem_.moves[b];
                const bool comes = bought.kind == MoveKind::add && bought.role == Role::binder && bought.most > 0;
                const bool goes =
                    poured.kind == MoveKind::reduce && poured.role == Role::liquid && poured.most > some * base()[Amount::mass];
                if (!comes || !goes) continue;
                LinearConstraint limit{std::vector<double>(problem_.moves.size(), 0.0), 0, 1};
                limit.per_gram[a] = 1 / bought.most;
                limit.per_gram[b] = -1 / poured.most;
                limits_.push_back(std::move(limit));
            }
    }

    // The greenest of what stands in for a missing green, where nothing is clearly nearer to the line.
    bool is_greenest(const Move& move) const {
        constexpr double hardly_nearer = 0.1, clearly = 1.25;  // closeness, times the green; judgement
        const auto comes = [&](const Move& m) {
            return m.kind == MoveKind::stand_in && problem_.missing[m.line] && !m.into && m.covers && m.line == move.line;
        };
        const auto green = [](const Move& m) { return dose_of(m.per_gram, Role::green) / m.covers->per_gram; };
        if (!comes(move) || !(green(move) > 0)) return false;
        bool paler = false;  // one that would do as well, but for the green
        for (const auto& other : problem_.moves) {
            if (&other == &move || !comes(other)) continue;
            if (green(move) < clearly * green(other)) return false;
            if (move.stands_for.front().closeness + hardly_nearer < other.stands_for.front().closeness) return false;
            paler = true;
        }
        return paler;
    }

    // Who wants it greener and has chives for spring onion takes those, and no more parsley or another leaf in their stead.
    void green_stand_in_goes_before_more_green() {
        if (!any_asks(distance_.goals(), Property::greenness, Goal::Kind::at_least)) return;
        for (std::size_t b = 0; b < problem_.moves.size(); ++b) {
            const Move& first = problem_.moves[b];
            if (!(first.most > 0) || !is_greenest(first)) continue;
            const double whole = std::min(first.most, missing_share(problem_, first.line) / first.covers->per_gram);
            for (std::size_t a = 0; a < problem_.moves.size(); ++a) {
                const Move& more = problem_.moves[a];
                const bool greens = (more.kind == MoveKind::add || more.kind == MoveKind::raise) && dose_of(more.per_gram, Role::green) > 0;
                if (!greens || !(more.most > 0)) continue;
                LinearConstraint limit{std::vector<double>(problem_.moves.size(), 0.0), 0, 1};
                limit.per_gram[a] = 1 / more.most;
                limit.per_gram[b] = -1 / whole;
                limits_.push_back(std::move(limit));
            }
        }
    }

    // Of herbs that share a place the nearest comes first: the others make up for what there is too little of.
    void rest_beside_the_first() {
        for (std::size_t f = 0; f < problem_.moves.size(); ++f) {
            LinearConstraint limit{{}, 0, 1};
            bool any = false;
            for (const auto& move : problem_.moves) {
                const bool rest = move.rest_of && move.rest_of->move == f;
                limit.per_gram.push_back(rest ? move.covers->per_gram / move.rest_of->times : 0);
                any = any || rest;
            }
            if (!any) continue;
            limit.per_gram[f] = -problem_.moves[f].covers->per_gram;
            limits_.push_back(std::move(limit));
        }
    }

    const Problem& problem_;
    const Distance& distance_;
    const Context& context_;
    std::vector<LinearConstraint> limits_;
};

}  // namespace

std::vector<LinearConstraint> what_goes_first(const Problem& problem, const Distance& distance, const Context& context) {
    return GoesFirst(problem, distance, context).all();
}

}  // namespace standin
