#include "adapt/moves/goes_first.hpp"

#include <algorithm>

#include "adapt/distance/asked_roles.hpp"

namespace standin {
namespace {

class GoesFirst {
public:
    GoesFirst(const Problem& problem, const Distance& distance, const Context& context)
        : problem_(problem), distance_(distance), context_(context) {}

    std::vector<LinearConstraint> all() && {
        fattest_goes_first();
        too_much_acid_goes_first();
        what_sours_goes_before_fat();
        what_sets_goes_before_salt();
        loose_water_goes_before_binder();
        return std::move(limits_);
    }

private:
    const Ingredient& ingredient(const Line& line) const { return *context_.knowledge().ingredient(line.ingredient); }
    Role role(const Line& line) const { return ingredient(line).roles.front(); }
    const Material& base() const { return distance_.base_material(); }

    // Who wants it leaner, or firmer, takes out the back fat before the belly: of no line a larger share than of a clearly fatter one.
    void fattest_goes_first() {
        const auto& goals = distance_.goals();
        const bool of_fat = asks_leaner(goals);
        const bool leaner =
            of_fat || any_asks(goals, Property::bind, Goal::Kind::at_least) || any_asks(goals, Property::firmness, Goal::Kind::at_least);
        // Who wants it richer takes lean out, and not the fat cut: the other way round.
        const bool richer = !leaner && any_asks(goals, Property::fat_pct, Goal::Kind::at_least);
        const double clearly = context_.constant("advice.meat.fatter");
        const auto goes = [&](const Move& move) { return move.kind == MoveKind::reduce && ingredient(move.food).meat; };
        const auto fat = [&](const Move& move) { return context_.nominal().unit(move.food)[Amount::fat]; };
        for (std::size_t a = 0; (leaner || richer) && a < problem_.moves.size(); ++a)
            for (std::size_t b = 0; b < problem_.moves.size(); ++b) {
                const Move &stays = problem_.moves[a], &first = problem_.moves[b];
                if (!goes(stays) || !goes(first)) continue;
                const Move &lean = leaner ? stays : first, &fatter = leaner ? first : stays;
                // Who wants it leaner takes out the fat, or the fatter cut, before any meat is changed for other meat.
                const bool fat_line = leaner && of_fat && ingredient(stays.food).tissue != Tissue::fat_tissue;
                if (fat(fatter) >= clearly * fat(lean) && fat(fatter) > fat(lean)) no_larger_share(a, b, fat_line);
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
        const bool holds =
            any_asks(goals, Property::bind, Goal::Kind::at_least) || any_asks(goals, Property::firmness, Goal::Kind::at_least);
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
        if (!any_asks(goals, Property::bind, Goal::Kind::at_least) && !any_asks(goals, Property::firmness, Goal::Kind::at_least)) return;
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
