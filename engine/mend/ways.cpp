#include "mend/ways.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "adapt/distance/met.hpp"
#include "core/contains.hpp"
#include "core/words.hpp"
#include "mend/added.hpp"
#include "mend/cold_fat.hpp"
#include "mend/judging.hpp"
#include "mend/plain.hpp"

namespace standin {
namespace {

class WaysOf {
public:
    explicit WaysOf(const Mass& mass)
        : mass_(mass),
          total_(mass.made.total(mass.formula)),
          distance_(mass.context, total_, mass.made.state(mass.formula), goals_of(mass.tastes)),
          additions_(mass, distance_, total_),
          judging_(mass, distance_, start_, work_min_) {
        start_ = mass.formula;
        const auto mixed = start_.process.mixing_min;
        const double tacky = mass.context.constant("mend.work.tacky");
        // What was mixed too little, or without its salt, holds by mixing before anything is weighed in.
        const bool not_mixed = (mixed && *mixed < tacky) || (mass.unsalted && any_asks(goals(), Property::salt_pct, Goal::Kind::at_least));
        if (!not_mixed || mass.set || !any_asks(goals(), Property::bind, Goal::Kind::at_least)) return;
        work_min_ = tacky;
        if (mixed) start_.process.mixing_min = std::max(*mixed, tacky);
    }

    Ways ways() && {
        const bool thin = std::any_of(mass_.tastes.begin(), mass_.tastes.end(), asks_less);
        if (!thin && !mass_.only_fresh) by_additions();
        if (ways_.all.empty() && !thin && !mass_.plain_first) by_additions_nearly();
        if (thin || !mass_.plain_first) by_plain_mass(thin);
        if (ways_.all.empty() && !(thin && goals_all_thin()) && !mass_.only_fresh) by_what_comes_nearest();
        if (!thin && mass_.plain_first) by_fresh_mass();
        if (ways_.all.empty()) by_a_beginning();
        if (ways_.all.empty() && ways_.cannot.empty()) none_found();
        return std::move(ways_);
    }

private:
    static constexpr double rounding = 1e-6;

    static std::vector<Goal> goals_of(const std::vector<Meant>& tastes) {
        std::vector<Goal> goals;
        for (const auto& taste : tastes) goals.insert(goals.end(), taste.goals.begin(), taste.goals.end());
        return goals;
    }

    const std::vector<Goal>& goals() const { return distance_.goals(); }
    const Knowledge& knowledge() const { return mass_.context.knowledge(); }
    bool goals_all_thin() const { return std::all_of(goals().begin(), goals().end(), thins); }

    bool meets(const std::vector<State>& states, const Goal& goal) const {
        return missed_by(goal, distance_, mass_.states, states, mass_.request.sure) <= 0;
    }
    bool meets_all_of(const Formula& formula) const {
        const auto states = mass_.made.states(formula);
        return std::all_of(goals().begin(), goals().end(), [&](const Goal& g) { return meets(states, g); });
    }

    void by_additions() {
        const Mended start = additions_.with_more_of(start_);
        if (work_min_ > 0 && start.add.empty() && meets_all_of(start_)) {
            ways_.all.push_back(judged_way(start, nullptr, 0));
            return;
        }
        if (goals().empty()) {
            if (!start.add.empty()) ways_.all.push_back(judged_way(start, nullptr, 0));
            return;
        }
        for (const auto& mended : additions_.searched(start, mass_.request.top))
            ways_.all.push_back(unharmed(start, until_seen(start, mended)));
        if (ways_.all.empty() && mass_.unsalted && work_min_ > 0) {
            Aim salted{1, true, {}};  // all of the salt, and of the bind what that brings
            for (const auto& goal : goals()) salted.each.push_back(goal.property == Property::bind ? 0.02 : 1.1);
            for (const auto& mended : additions_.searched(start, 1, salted)) ways_.all.push_back(judged_way(mended, nullptr, 0));
        }
        keep_the_met();
        by_its_own_leaf(start);
    }

    // Who wants it greener and lacks herbs is answered by the formula's own, where they go most of the way: mild leaf alone makes it
    // flatter.
    void by_its_own_leaf(const Mended& start) {
        const auto asks_herbs = [](const Meant& meant) { return meant.reading->more_of == Role::herb; };
        const auto is_new = [](const Ingoing& in) { return in.fresh; };
        if (std::none_of(mass_.tastes.begin(), mass_.tastes.end(), asks_herbs) || ways_.all.empty()) return;
        if (std::none_of(ways_.all.front().add.begin(), ways_.all.front().add.end(), is_new)) return;
        const auto own = additions_.nearest(start, 1, true);
        if (own.empty()) return;
        MendWay way = judged_way(own.front(), nullptr, 0);
        if (judging_.progress_of(way) < mass_.context.constant("mend.own-leaf") * judging_.all_asked()) return;
        ways_.all.insert(ways_.all.begin(), std::move(way));
        if (ways_.all.size() > std::max<std::size_t>(1, mass_.request.top)) ways_.all.pop_back();
    }

    // The dearest search, asked for by those that find nothing nearer.
    const std::vector<Mended>& nearest_additions() {
        if (!nearest_) nearest_ = additions_.nearest(additions_.with_more_of(start_), 2);
        return *nearest_;
    }

    // Where additions go most of the way nobody makes a second mass.
    void by_additions_nearly() {
        if (goals().empty()) return;
        const auto& found = nearest_additions();
        if (found.empty()) return;
        MendWay way = unharmed(additions_.with_more_of(start_), judged_way(found.front(), nullptr, 0));
        if (judging_.progress_of(way) >= mass_.context.constant("mend.nearly") * judging_.all_asked()) ways_.all.push_back(std::move(way));
    }

    // So much fat as makes it fall apart, or leaves it no bite, goes in as far only as it does not.
    MendWay unharmed(const Mended& start, MendWay way) const {
        auto harm = judging_.harmed(way);
        constexpr std::array parts{0.8, 0.65, 0.5, 0.35};
        for (std::size_t i = 0; i < parts.size() && harm; ++i) {
            const auto less = additions_.searched(start, 1, {parts[i], true});
            if (less.empty()) continue;
            way = judged_way(less.front(), nullptr, 0);
            way.held_for = harm;
            harm = judging_.harmed(way);
        }
        return way;
    }

    // Leaf that came as far as was asked and leaves it no green to look at: as much more of the same as is seen, where twice what was asked
    // is.
    MendWay until_seen(const Mended& start, const Mended& mended) const {
        MendWay way = judged_way(mended, nullptr, 0);
        constexpr std::array further{1.25, 1.5, 1.75, 2.0};  // twice what was asked, and no more
        for (std::size_t i = 0; i < further.size() && !way.colour_left.empty(); ++i) {
            Aim aim{1, true, std::vector<double>(goals().size(), 1.0)};
            for (std::size_t g = 0; g < goals().size(); ++g)
                if (goals()[g].property == Property::greenness) aim.each[g] = further[i];
            const auto more = additions_.searched(start, mass_.request.top + 1, aim);
            const auto same = std::find_if(more.begin(), more.end(), [&](const Mended& other) { return is_of_same_foods(other, mended); });
            if (same == more.end() || leaf_share(*same, total_, knowledge()) > mass_.context.constant("mend.green.most-leaf")) break;
            MendWay further_on = judged_way(*same, nullptr, 0);
            if (further_on.colour_left.empty()) return further_on;  // else no more than was asked
        }
        return way;
    }

    // Where nothing weighed in undoes it: so much of the formula once more as makers begin with.
    void by_a_beginning() {
        for (const auto& taste : mass_.tastes) {
            const double share = taste.reading->plain;
            if (!(share > 0)) continue;
            Plain plain = plain_whole(mass_.formula);
            put_cold_fat(plain, mass_.formula, mass_.tastes, mass_.stock, mass_.context, true);
            if (!within_stock(plain, share)) return;
            ways_.all.push_back(judging_.way({blended(start_, plain, share), {}}, &plain, share, {taste.taste.written}));
            return;
        }
    }

    // What does all that was asked stands alone, where there is such a way.
    void keep_the_met() {
        if (std::any_of(ways_.all.begin(), ways_.all.end(), [](const MendWay& w) { return w.met; }))
            std::erase_if(ways_.all, [](const MendWay& w) { return !w.met; });
    }

    // The least share of plain mass by which the draws have `goal`; nothing where the most does not do it.
    std::optional<double> share_for(const Goal& goal, const Plain& plain) const {
        constexpr int halvings = 11;
        double low = 0, high = thins(goal) ? most_plain() : mass_.context.constant("mend.plain.beside");
        const auto done = [&](double share) { return meets(mass_.made.states(blended(start_, plain, share)), goal); };
        if (!done(high)) return std::nullopt;
        for (int i = 0; i < halvings; ++i) {
            const double middle = (low + high) / 2;
            (done(middle) ? high : low) = middle;
        }
        return high;
    }

    std::optional<double> share_of(const Plain& plain, bool thin) {
        double share = 0;
        for (const auto* goal : plain.serves) {
            if (thin && !thins(*goal)) continue;  // additions can do that
            const auto least = share_for(*goal, plain);
            if (!least && !thins(*goal)) return std::nullopt;
            share = std::max(share, least ? *least : too_much(goal->want));
        }
        for (const auto& taste : mass_.tastes) {
            if (!taste.reading->asks_less()) continue;
            const double least = 1 / taste.by() - 1;
            share = std::max(share, least <= most_plain() ? least : too_much(taste.taste.written));
        }
        const double step = mass_.context.constant("mend.plain.round");
        if (!(share > 0)) return std::nullopt;
        // The stronger complaint never gets less of it than the plain one would.
        if (part_only_) share = std::max(share, share_said_plainly(plain, step));
        share = std::ceil(share / step - 1e-9) * step;
        if (!thin || part_only_) return share;
        const bool of_a_little = std::all_of(mass_.tastes.begin(), mass_.tastes.end(), [](const Meant& m) { return m.taste.weak; });
        taste_share_ = until_right(plain, share, step, true);
        const double found = part_only_ || of_a_little ? taste_share_ : until_right(plain, taste_share_, step, false);
        return part_only_ ? std::max(found, share_said_plainly(plain, step)) : found;
    }

    // What would be right had it been said plainly, or as much as is worth folding in; nothing where that too is another batch.
    double share_said_plainly(const Plain& plain, double step) const {
        std::vector<Goal> plainly;
        for (const auto& taste : mass_.tastes)
            for (const auto& goal : taste.plainly)
                if (thins(goal)) plainly.push_back(goal);
        if (plainly.empty()) return 0;
        const auto right = [&](double share) {
            const Formula mixed = blended(start_, plain, share);
            const State state = mass_.made.state(mixed);
            const auto states = mass_.made.states(mixed);
            return judging_.over_most(mixed, plain).empty() && std::all_of(plainly.begin(), plainly.end(), [&](const Goal& goal) {
                       return !judging_.short_of_target(goal, state) && !(of_acid(goal) && judging_.too_sour(state)) && meets(states, goal);
                   });
        };
        for (double share = step; share <= most_plain() + step / 2; share += step)
            if (right(share)) return share;
        const bool to_be_had =
            std::all_of(plainly.begin(), plainly.end(), [&](const Goal& goal) { return share_for(goal, plain).has_value(); });
        return to_be_had ? most_plain() : 0;
    }

    double most_plain() const { return mass_.context.constant("mend.plain.most"); }

    // On until the middle has what was asked, and then until the page no longer calls it too much of what was tasted; where that is another
    // batch, so much as a step.
    double until_right(const Plain& plain, double share, double step, bool by_taste) {
        const auto words_over = [&](double part) {
            const Formula mixed = blended(start_, plain, part);
            return by_taste ? judging_.still_short(mass_.made.state(mixed), plain) : judging_.still_over(mixed, plain);
        };
        const auto now = words_over(share);
        if (now.empty()) return share;
        for (double more = share + step; more <= most_plain() + step / 2; more += step)
            if (words_over(more).empty()) return more;
        const auto over = by_taste ? std::vector<StillOver>{} : judging_.over_most(blended(start_, plain, share), plain);
        for (const auto& word : now) too_much(word, over);
        return std::max(share, mass_.context.constant("mend.plain.step-only"));
    }

    MendWay judged_way(const Mended& mended, const Plain* plain, double share) const {
        return judging_.way(mended, plain, share, plain ? step_only_ : std::vector<std::string>{});
    }

    // So much of it as a step: all that it takes would be another batch.
    double too_much(const std::string& want, const std::vector<StillOver>& over = {}) {
        ways_.cannot.push_back(cannot_be(ReasonKind::too_much_plain, want, {{"at most", {}, most_plain(), "times the mass"}}));
        for (const auto& one : over)
            if (one.tasted == want && !one.food.empty()) ways_.cannot.back().foods.push_back(one.food);
        part_only_ = true;
        step_only_.push_back(want);
        return mass_.context.constant("mend.plain.step-only");
    }

    void by_plain_mass(bool thin) {
        auto plain = plain_for(mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context, mass_.stock, mass_.plain_without);
        const auto served = [&](const Goal& goal) {
            return plain && std::any_of(plain->serves.begin(), plain->serves.end(),
                                        [&](const Goal* g) { return g->property == goal.property && g->want == goal.want; });
        };
        bool all = true;
        for (const auto& goal : goals())
            if (thins(goal) && !served(goal)) {
                ways_.cannot.push_back(cannot_be(ReasonKind::fault_in_meat, goal.want));
                all = false;
            }
        if (!plain || !all) return;
        auto share = share_of(*plain, thin);
        if (!share || !within_stock(*plain, *share)) {
            if (share && thin) by_plain_on_hand(*plain, *share);
            return;
        }
        keep_from_too_little(*plain, *share);
        keep_from_overshooting(*plain, *share);
        constexpr int rounds = 6;
        std::optional<MendWay> way;
        double grown = *share;
        for (int round = 0; round < rounds && !(way && (way->met || !step_only_.empty())); ++round, grown *= 1.05)
            way = with_plain(*plain, grown, false);
        if (thin && !way->met && step_only_.empty()) way = with_plain(*plain, *share, true);
        if (way->met || thin) ways_.all.push_back(std::move(*way));
        if (thin && goals_all_thin() && mass_.request.top > 1) by_taste_alone(*plain, *share);
        if (thin && mass_.request.top > 1) by_a_smaller_fold(*plain, *share);
    }

    // Plain mass that another complaint asks for leaves less salt than meat binds with: it is salted so that the whole keeps that.
    void keep_from_too_little(Plain& plain, double share) const {
        if (!plain.without_salt) return;
        const auto of_meat = [&](const Plain& some) {
            return mass_.made.state(blended(start_, some, share)).properties[Property::salt_pct_of_meat];
        };
        const double keeps = std::min(mass_.context.constant("mend.salt.keeps"), mass_.base.nominal[Property::salt_pct_of_meat]);
        if (of_meat(plain) >= keeps) return;
        const auto short_of = [&](const Plain& some) {
            return judging_.still_short(mass_.made.state(blended(start_, some, share)), some).size();
        };
        constexpr std::array parts{1.0, 0.97, 0.94};  // of it: to where meat still binds
        for (const double part : parts) {
            Plain salted = plain;
            keep_salt(salted, start_, share, part * keeps, mass_.context);
            if (short_of(salted) > short_of(plain)) continue;
            plain = std::move(salted);
            return;
        }
    }

    // Plain mass that one complaint asks for washes another taste out: of what is left out for that so much goes back as keeps it right.
    void keep_from_overshooting(Plain& plain, double share) const {
        if (!step_only_.empty() || plain.serves.size() < 2) return;
        const std::size_t over = judging_.still_over(blended(start_, plain, share), plain).size();
        const auto right = [&](const Plain& some) {
            const Formula mixed = blended(start_, some, share);
            const auto states = mass_.made.states(mixed);
            return judging_.still_over(mixed, plain).size() <= over &&
                   std::all_of(plain.serves.begin(), plain.serves.end(),
                               [&](const Goal* goal) { return !thins(*goal) || meets(states, *goal); });
        };
        for (const Role role : {Role::acid, Role::heat})
            for (int tenths = 9; tenths >= 2; --tenths) {
                Plain some = plain;
                put_back(some, start_, {role, tenths / 10.0, share, mass_.plain_without}, mass_.stock);
                if (some.less.size() == plain.less.size()) break;
                if (!right(some)) continue;
                plain = std::move(some);
                break;
            }
    }

    // Where the cure is more than there is of the mass: as much as that beside it, as a step that is told to be one.
    void by_a_smaller_fold(const Plain& plain, double share) {
        const double step = mass_.context.constant("mend.plain.step-only");
        if (ways_.all.size() != 1 || !step_only_.empty() || share < 1.4 * step) return;
        std::vector<std::string> words;
        for (const auto* goal : plain.serves)
            if (thins(*goal)) words.push_back(goal->want);
        constexpr double much_smaller = 0.8;
        const double plainly = share_said_plainly(plain, mass_.context.constant("mend.plain.round"));
        const double part = plainly > step && plainly < much_smaller * share ? plainly : step;
        MendWay way = judging_.way({blended(start_, plain, part), {}}, &plain, part, std::move(words));
        for (const auto& want : way.wants)
            if (!want.met && !contains(way.step_only, want.want)) way.step_only.push_back(want.want);
        ways_.all.push_back(std::move(way));
    }

    // So much of it, with the additions that do what is then still asked; or, of those that do not, the nearest.
    MendWay with_plain(const Plain& plain, double share, bool nearest) const {
        const Mended start = additions_.with_more_of(blended(start_, plain, share));
        if (goals().empty() || meets_all_of(start.formula)) return judged_way(start, &plain, share);
        const auto found = nearest ? additions_.nearest(start, 1) : additions_.searched(start, 1);
        return judged_way(found.empty() ? start : found.front(), &plain, share);
    }

    // Where the whole cure is much more than the taste asked for: so much as that did, beside it.
    void by_taste_alone(const Plain& plain, double share) {
        const double worth = 2 * mass_.context.constant("mend.plain.round");
        if (std::none_of(goals().begin(), goals().end(), of_acid) || ways_.all.empty()) return;
        if (!step_only_.empty() || !(taste_share_ > 0) || taste_share_ + worth > share) return;
        ways_.all.push_back(judged_way({blended(start_, plain, taste_share_), {}}, &plain, taste_share_));
    }

    // As much plain mass as the meat on the list makes, as a step.
    void by_plain_on_hand(Plain& plain, double share) {
        double part = share;
        for (const auto& line : plain.lines)
            if (const Offer offer = mass_.stock.offer(line); knowledge().ingredient(line.ingredient)->meat)
                part = std::min(part, !offer.on_hand ? 0 : offer.grams ? *offer.grams / line.grams.mid : part);
        const double step = mass_.context.constant("mend.plain.round");
        part = std::floor(part / step + rounding) * step;
        if (part < 2 * step || !within_stock(plain, part)) return;
        for (const auto* goal : plain.serves)
            if (thins(*goal)) step_only_.push_back(goal->want);
        MendWay way = judged_way({blended(start_, plain, part), {}}, &plain, part);
        if (way.wants.empty() || judging_.progress_of(way) >= mass_.context.constant("mend.nearest.least"))
            ways_.all.push_back(std::move(way));
    }

    // Fresh mass without what is at fault: all that it takes, where that is no more than there is, else half as much and what brings that
    // nearer.
    void by_fresh_mass() {
        const auto& without = mass_.plain_without;
        auto plain = !without.empty()
                         ? plain_without(without, mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context, mass_.stock)
                         : plain_for(mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context, mass_.stock, mass_.plain_without);
        if (!plain) return;
        const double step = mass_.context.constant("mend.plain.round"), whole = mass_.context.constant("mend.plain.step-only");
        const auto said = ways_.cannot.size();
        std::optional<MendWay> way;
        for (double share = step; !way && share <= whole + step / 2; share += step)
            if (meets_all_of(blended(start_, *plain, share)) && within_stock(*plain, share))
                way = judged_way({blended(start_, *plain, share), {}}, &*plain, share);
        const double half = mass_.only_fresh && way ? 0 : mass_.context.constant("mend.plain.beside");
        if (half > 0 && (!way || !way->met) && within_stock(*plain, half)) {
            const Mended start{blended(start_, *plain, half), {}};
            const auto found = mass_.only_fresh ? std::vector<Mended>{} : additions_.nearest(start, 1);
            way = judged_way(found.empty() ? start : found.front(), &*plain, half);
        }
        ways_.cannot.resize(said);
        if (!way) return;
        std::erase_if(ways_.all, [&](const MendWay& other) { return is_same(other, *way); });
        // What does as much with less stands first.
        const auto grams_added = [](const MendWay& one) {
            double grams = 0;
            for (const auto& in : one.add) grams += in.grams;
            return grams;
        };
        // As much plain mass as half of what there is, is another batch beside a spoon of starch that does it.
        const double whole_batch = mass_.context.constant("mend.plain.beside") * total_[Amount::mass];
        const bool little_alone = !ways_.all.empty() && ways_.all.front().met && ways_.all.front().plain.empty();
        const bool less_does_it =
            little_alone && (way->plain_g > whole_batch || (!way->add.empty() && grams_added(ways_.all.front()) <= grams_added(*way)));
        ways_.all.insert(ways_.all.begin() + (less_does_it ? 1 : 0), std::move(*way));
        if (ways_.all.size() > std::max<std::size_t>(1, mass_.request.top)) ways_.all.pop_back();
    }

    // Where nothing does all that was asked: what does most of it, by additions alone and beside as much plain mass as may help.
    void by_what_comes_nearest() {
        std::vector<std::pair<double, MendWay>> near;
        const Mended more = additions_.with_more_of(start_);
        const auto keep = [&](const Mended& mended, const Plain* plain, double share) {
            MendWay way = judged_way(mended, plain, share);
            if (!plain) way = unharmed(more, std::move(way));
            const auto is_this = [&](const auto& other) { return is_same(other.second, way); };
            if (std::any_of(near.begin(), near.end(), is_this)) return;
            const double done = judging_.progress_of(way);
            if (way.met || done >= mass_.context.constant("mend.nearest.least")) near.emplace_back(way.met ? 1e9 : done, std::move(way));
        };
        for (const auto& mended : nearest_additions()) keep(mended, nullptr, 0);
        const double beside = mass_.context.constant("mend.plain.beside");
        auto plain = plain_for(mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context, mass_.stock, mass_.plain_without);
        const auto said = ways_.cannot.size();
        if (plain && within_stock(*plain, beside)) {
            const Mended start = additions_.with_more_of(blended(start_, *plain, beside));
            const auto found = additions_.nearest(start, 1);
            keep(found.empty() ? start : found.front(), &*plain, beside);
        }
        ways_.cannot.resize(said);  // too little meat for plain mass was told before, if it was asked for
        std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
        for (auto& [done, way] : near)
            if (ways_.all.size() < std::clamp<std::size_t>(mass_.request.top, 1, 2)) ways_.all.push_back(std::move(way));
        keep_the_met();
    }

    // Meat there is too little of ends it, and is told.
    bool within_stock(Plain& plain, double share) {
        auto lacking = do_without(plain, share, mass_.stock);
        if (lacking) ways_.cannot.push_back(std::move(*lacking));
        return !lacking;
    }

    void none_found() {
        std::vector<std::string> wants;
        for (const auto& goal : goals())
            if (std::find(wants.begin(), wants.end(), goal.want) == wants.end()) wants.push_back(goal.want);
        for (const auto& taste : mass_.tastes)
            if (taste.reading->more_of) wants.push_back(taste.taste.written);
        if (wants.empty()) return;
        ways_.cannot.push_back(cannot_be(ReasonKind::nothing_brings, listed(wants)));
        if (mass_.stock.listed()) ways_.cannot.back().role = "listed";
    }

    const Mass& mass_;
    Material total_;
    Distance distance_;  // from the mass as it is
    Additions additions_;
    std::optional<std::vector<Mended>> nearest_;  ///< by additions alone
    Formula start_;                               // the mass, mixed on where it was mixed too little
    double work_min_ = 0;
    Judging judging_;
    bool part_only_ = false;              // all that it takes would be another batch
    double taste_share_ = 0;              // of plain mass, for what was tasted alone
    std::vector<std::string> step_only_;  // words that plain mass brings nearer and not right
    Ways ways_;
};

}  // namespace

Ways ways_to_mend(const Mass& mass) { return WaysOf(mass).ways(); }

}  // namespace standin
