#include "adapt/variants/variant.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <stdexcept>

#include "adapt/moves/odd_foods.hpp"
#include "core/band.hpp"
#include "safety/safety.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

constexpr double nothing = 0.005;         // g
constexpr double next_to = 0.03;          // of the line's weight; judgement
constexpr double past_its_most = 1.03;    // in grams of its most; likewise
constexpr double clear = 0.97;            // of the most in a kilo; likewise
constexpr double next_to_round = 0.0125;  // of the weight; likewise

class VariantBuilder {
public:
    VariantBuilder(const Problem& problem, const Plan& plan, const Stock& stock, const Knowledge& knowledge)
        : problem_(problem), plan_(plan), stock_(stock), knowledge_(knowledge), step_(knowledge.parameter("bench.scale.step").mid) {}

    BuiltVariant build() && {
        weigh_lines();
        assign_stand_ins();
        for (std::size_t l = 0; l < lines().size(); ++l) write_line(l);
        for (const auto m : used_moves(problem_, plan_.grams))
            if (problem_.moves[m].kind == MoveKind::add && !is_partner(m)) add(m);
        write_process();
        return std::move(built_);
    }

private:
    const std::vector<Line>& lines() const { return problem_.formula.lines; }

    // What there is no more of, or what a cap holds down, is never rounded up.
    bool short_of(const std::string& id) const {
        const Ingredient& food = *knowledge_.ingredient(id);
        return is_capped(food) || stock_.offer(food).grams.has_value();
    }

    void weigh_lines() {
        after_ = problem_.start;
        for (const auto m : used_moves(problem_, plan_.grams)) {
            const Move& move = problem_.moves[m];
            if (move.kind == MoveKind::reduce) after_[move.line] -= plan_.grams[m];
            if (move.kind == MoveKind::raise) after_[move.line] += plan_.grams[m];
        }
        for (std::size_t l = 0; l < after_.size(); ++l) {
            const double before = lines()[l].grams.mid;
            const bool moved = std::abs(after_[l] - before) > 0.005 * before;
            after_[l] = moved ? kitchen_grams(std::max(0.0, after_[l]), short_of(lines()[l].ingredient), step_) : before;
            if (after_[l] < before) after_[l] = in_whole_eggs(l, after_[l]);
        }
    }

    // Nobody takes out a fifth of an egg.
    double in_whole_eggs(std::size_t l, double grams) const {
        const Line& line = lines()[l];
        const Ingredient& food = *knowledge_.ingredient(line.ingredient);
        if (food.tissue != Tissue::egg || problem_.missing[l]) return grams;
        for (const auto& measure : food.measures) {
            if (measure.measure != "piece" || !(measure.grams.mid > 0)) continue;
            const double count = std::max(1.0, std::round(line.grams.mid / measure.grams.mid)), one = line.grams.mid / count;
            return one * std::floor(grams / one + next_to);
        }
        return grams;
    }

    void assign_stand_ins() {
        for (const auto m : used_moves(problem_, plan_.grams))
            if (is_partner(m)) assigned_[*problem_.moves[m].partner_of].push_back(m);
            else if (problem_.moves[m].kind == MoveKind::stand_in) {
                assigned_[problem_.moves[m].line].push_back(m);
                if (const auto into = problem_.moves[m].into) raised_[*into] += weighed(m);
                const auto& second = problem_.moves[m].second;
                if (second && second->into) raised_[*second->into] += second_weighed(m);
            }
    }

    // Whether it makes up for what the stand-in of a line lacks, and stands with that.
    bool is_partner(std::size_t m) const {
        const auto& line = problem_.moves[m].partner_of;
        if (!line) return false;
        const auto used = used_moves(problem_, plan_.grams);
        return std::any_of(used.begin(), used.end(), [&](std::size_t other) {
            return problem_.moves[other].kind == MoveKind::stand_in && problem_.moves[other].line == *line;
        });
    }

    void write_line(std::size_t l) {
        const Line& line = lines()[l];
        const bool gone = after_[l] < nothing;
        const bool moved = after_[l] != line.grams.mid;
        if (!gone) {
            Line kept = line;
            stock_.tell(kept);
            const double grams = after_[l] + (raised_.count(l) ? raised_[l] : 0);
            if (grams != line.grams.mid) {
                kept.grams = exactly(grams);
                kept.count.reset();
                kept.written.clear();
            }
            built_.formula.lines.push_back(std::move(kept));
        }
        const auto found = assigned_.find(l);
        const bool stands_for_it = found != assigned_.end() && after_[l] < line.grams.mid;
        const bool replaced = stands_for_it && gone;
        if (moved && !replaced) {
            const EditKind kind = gone ? EditKind::omit : after_[l] < line.grams.mid ? EditKind::reduce : EditKind::raise;
            built_.edits.push_back({kind, l, PlainEdit::none, line.grams.mid, after_[l], nullptr, 0});
        }
        if (found == assigned_.end()) return;
        const bool one_food = found->second.size() == 1 && !problem_.moves[found->second.front()].second;
        const EditKind kind = gone && one_food ? EditKind::replace : EditKind::split;
        for (const auto m : found->second) {
            if (stands_for_it) bring(m, kind, l);
            else add(m);  // it stands beside the line, not for it
        }
    }

    void bring(std::size_t m, EditKind kind, std::size_t l) {
        const double left = after_[l] < nothing ? 0 : after_[l];
        const auto told = [&](double grams, bool second) {
            if (grams >= nothing) built_.edits.push_back({kind, l, m, lines()[l].grams.mid, grams, nullptr, left, second});
        };
        const Move& move = problem_.moves[m];
        told(place(move.food, weighed(m), move.into.has_value()), false);
        if (move.second) told(place(move.second->food, second_weighed(m), move.second->into.has_value()), true);
    }

    void add(std::size_t m) {
        const double grams = place(problem_.moves[m].food, weighed(m), problem_.moves[m].into.has_value());
        if (grams >= nothing) built_.edits.push_back({EditKind::add, PlainEdit::none, m, 0, grams, nullptr, 0});
    }

    double weighed(std::size_t m) const {
        if (const auto plain = plain_weight(m)) return *plain;
        return kitchen_grams(plan_.grams[m], short_of(problem_.moves[m].food.ingredient), step_);
    }

    // What lies next to the weight of the line, or to a round one, is that: nobody weighs 99 g for 100 g. A goal may hang on each gram.
    std::optional<double> plain_weight(std::size_t m) const {
        const Move& move = problem_.moves[m];
        const double grams = plan_.grams[m];
        if (!problem_.hard.empty() || move.kind != MoveKind::stand_in) return std::nullopt;
        const auto may_be = [&](double weight) {
            return weight <= grams ||
                   (weight <= past_its_most * move.most && clear_of_its_cap(weight, move) && there_is(weight, move) && draws_alone(move));
        };
        const double gone = lines()[move.line].grams.mid - after_[move.line];
        if (std::abs(grams - gone) <= next_to * gone && may_be(gone)) return gone;
        const double unit = grams >= 100 ? 50 : grams >= 10 ? 5 : 1;
        const double round = std::round(grams / unit) * unit;
        if (std::abs(grams - round) <= next_to_round * grams && may_be(round)) return round;
        return std::nullopt;
    }

    bool there_is(double weight, const Move& move) const {
        const Offer offer = stock_.offer(*knowledge_.ingredient(move.food.ingredient));
        return !offer.grams || weight * move.bought <= *offer.grams;
    }

    // What a kilo takes no more of is rounded up only where that leaves it clear of its most.
    bool clear_of_its_cap(double weight, const Move& move) const {
        const auto& most = knowledge_.ingredient(move.food.ingredient)->most_g_per_kg;
        return !most || weight <= clear * most->band.mid * problem_.start_total[Amount::mass] / 1000;
    }

    // Whether nothing else in the variant is of its food, so that what there is of it is its own.
    bool draws_alone(const Move& move) const {
        const auto used = used_moves(problem_, plan_.grams);
        const auto brings = [&](std::size_t m) { return problem_.moves[m].brings(move.food.ingredient) > 0; };
        return std::count_if(used.begin(), used.end(), brings) == 1 &&
               std::none_of(lines().begin(), lines().end(), [&](const Line& line) { return line.ingredient == move.food.ingredient; });
    }

    double second_weighed(std::size_t m) const {
        const SecondPart& second = *problem_.moves[m].second;
        return kitchen_grams(plan_.grams[m] * second.per_gram, short_of(second.food.ingredient), step_);
    }

    // What comes in for two lines is one line of the variant; what raises a line is in it already.
    double place(Line food, double grams, bool raises_a_line) {
        if (grams < nothing || raises_a_line) return grams;
        const auto [place, fresh] = placed_.try_emplace(key_of(food), built_.formula.lines.size());
        if (!fresh) {
            Line& there = built_.formula.lines[place->second];
            there.grams = exactly(kitchen_grams(there.grams.mid + grams, true, step_));  // of two weights one that a scale shows
            return grams;
        }
        food.grams = exactly(grams);
        stock_.tell(food);
        built_.formula.lines.push_back(std::move(food));
        return grams;
    }

    void write_process() {
        const ProcessOption& option = problem_.processes[plan_.process];
        built_.formula.title = problem_.formula.title;
        built_.formula.note = problem_.formula.note;
        built_.formula.beside = problem_.formula.beside;
        built_.formula.declared = problem_.formula.declared;
        for (const auto& told : problem_.formula.read_as)
            if (is_of_safety(told)) built_.formula.read_as.push_back(told);
        built_.formula.to_do = problem_.formula.to_do;
        built_.formula.process = option.process;
        stock_.leave_out_beside(built_.formula);
        for (const auto& change : option.changes)
            built_.edits.push_back({EditKind::process, PlainEdit::none, PlainEdit::none, 0, 0, &change, 0});
    }

    const Problem& problem_;
    const Plan& plan_;
    const Stock& stock_;
    const Knowledge& knowledge_;
    double step_;
    std::vector<double> after_;
    std::map<std::size_t, std::vector<std::size_t>> assigned_;
    std::map<std::size_t, double> raised_;       // grams that stand in for other lines, by line
    std::map<std::string, std::size_t> placed_;  // foods that came in, by their place in the variant
    BuiltVariant built_;
};

}  // namespace

double kitchen_grams(double grams, bool down, double step) {
    constexpr double heavy_enough = 25;  // steps: half of one is then 2 % of the weight; judgement
    const double usual = grams >= 100 ? 5 : grams >= 10 ? 1 : grams >= 1 ? 0.1 : 0.01;
    const double unit = grams >= heavy_enough * step ? std::max(usual, step) : usual;
    const double steps = grams / unit;
    return (down ? std::floor(steps + 1e-6) : std::round(steps)) * unit;
}

BuiltVariant build_variant(const Problem& problem, const Plan& plan, const Stock& stock, const Knowledge& knowledge) {
    if (plan.grams.size() != problem.moves.size() || plan.process >= problem.processes.size())
        throw std::logic_error("plan of another problem");
    return VariantBuilder(problem, plan, stock, knowledge).build();
}

}  // namespace standin
