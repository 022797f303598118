#include "mend/ways.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "adapt/difference.hpp"
#include "adapt/met.hpp"
#include "core/words.hpp"
#include "knowledge/vocabulary.hpp"
#include "mend/added.hpp"
#include "mend/bring.hpp"
#include "mend/plain.hpp"
#include "safety/allergens.hpp"
#include "safety/page.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

class WaysOf {
public:
    explicit WaysOf(const Mass& mass)
        : mass_(mass),
          total_(mass.made.total(mass.formula)),
          distance_(mass.context, total_, mass.made.state(mass.formula), goals_of(mass.tastes)),
          additions_(mass, distance_, total_) {
        start_ = mass.formula;
        const auto mixed = start_.process.mixing_min;
        const double tacky = mass.context.constant("mend.work.tacky");
        // What was mixed too little holds by mixing before anything is weighed in.
        if (mixed && *mixed < tacky && any_asks(goals(), Property::bind, Goal::Kind::at_least)) {
            work_min_ = tacky;
            start_.process.mixing_min = tacky;
        }
    }

    Ways ways() && {
        const bool thin = std::any_of(goals().begin(), goals().end(), thins) || any_less();
        if (!thin) by_additions();
        by_plain_mass(thin);
        if (ways_.all.empty() && !(thin && goals_all_thin())) by_what_comes_nearest();
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
    bool any_less() const {
        return std::any_of(mass_.tastes.begin(), mass_.tastes.end(), [](const Meant& m) { return m.reading->less_of.has_value(); });
    }

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
        for (const auto& mended : additions_.searched(start, mass_.request.top)) ways_.all.push_back(judged_way(mended, nullptr, 0));
        keep_the_met();
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
            if (!taste.reading->less_of) continue;
            const double least = 1 / taste.by() - 1;
            share = std::max(share, least <= most_plain() ? least : too_much(taste.taste.written));
        }
        const double step = mass_.context.constant("mend.plain.round");
        if (!(share > 0)) return std::nullopt;
        share = std::ceil(share / step - 1e-9) * step;
        return thin && !part_only_ ? until_right(plain, share, step) : share;
    }

    double most_plain() const { return mass_.context.constant("mend.plain.most"); }

    // On until the page no longer calls it too much of what was tasted; where that is another batch, so much as a step.
    double until_right(const Plain& plain, double share, double step) {
        const auto over = [&](double part) { return still_over(blended(start_, plain, part), plain); };
        const auto now = over(share);
        if (now.empty()) return share;
        for (double more = share + step; more <= most_plain() + step / 2; more += step)
            if (over(more).empty()) return more;
        for (const auto& word : now) too_much(word);
        return std::max(share, mass_.context.constant("mend.plain.step-only"));
    }

    // What was tasted of which the rules would still say that there is too much.
    std::vector<std::string> still_over(const Formula& formula, const Plain& plain) const {
        const State state = mass_.made.state(formula);
        std::vector<std::string> words;
        for (const auto* goal : plain.serves)
            if (thins(*goal) && (short_of_target(*goal, state) || over_limit(*goal, state) || (of_acid(*goal) && too_sour(state)) ||
                                 over_most(formula, *goal, plain)))
                words.push_back(goal->want);
        return words;
    }

    // What was asked, at the middle: who tastes it does not know of slack.
    bool short_of_target(const Goal& goal, const State& state) const {
        constexpr double hair = 0.01;
        const double base = distance_.base().properties[goal.property], target = goal.target(base);
        return state.properties[goal.property] > target + hair * std::abs(target);
    }

    static bool of_acid(const Goal& goal) { return goal.property == Property::sourness_mmol_kg; }

    bool too_sour(const State& state) const { return state.properties[Property::ph] < mass_.context.constant("mend.ph.enough") - rounding; }

    // The limits on it that the mass as made is over.
    bool over_limit(const Goal& goal, const State& state) const {
        const std::string role = std::string(info(goal.property).name) + " above";
        for (const auto& caution : mass_.base.cautions)
            for (const auto& figure : caution.reason.figures)
                if (caution.reason.role == role && figure.what == "limit" && state.properties[goal.property] > figure.after) return true;
        return false;
    }

    // More of a food that brings it than is good in a kilo.
    bool over_most(const Formula& formula, const Goal& goal, const Plain& plain) const {
        const Role role = of_acid(goal) ? Role::acid : Role::heat;
        if (!of_acid(goal) && goal.property != Property::heat_mg_kg) return false;
        const double batch = mass_.made.total(formula)[Amount::mass];
        return std::any_of(formula.lines.begin(), formula.lines.end(), [&](const Line& line) {
            const Ingredient& food = *knowledge().ingredient(line.ingredient);
            const bool left_out = std::find(plain.lacks.begin(), plain.lacks.end(), food.id) != plain.lacks.end();
            return left_out && food.roles.front() == role && food.most_g_per_kg &&
                   1000 * line.grams.mid / batch > food.most_g_per_kg->band.mid + rounding;
        });
    }

    // So much of it as a step: all that it takes would be another batch.
    double too_much(const std::string& want) {
        ways_.cannot.push_back(cannot_be(ReasonKind::too_much_plain, want, {{"at most", {}, most_plain(), "times the mass"}}));
        part_only_ = true;
        step_only_.push_back(want);
        return mass_.context.constant("mend.plain.step-only");
    }

    void by_plain_mass(bool thin) {
        auto plain = plain_for(mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context, mass_.stock);
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
        if (!share || !within_stock(*plain, *share)) return;
        constexpr int rounds = 6;
        for (int round = 0; round < rounds; ++round, *share *= 1.05) {
            Mended start = additions_.with_more_of(blended(start_, *plain, *share));
            std::vector<Mended> ends{start};
            if (!goals().empty() && !meets_all_of(start.formula)) {
                auto found = additions_.searched(start, 1);
                if (!found.empty()) ends = std::move(found);
            }
            MendWay way = judged_way(ends.front(), &*plain, *share);
            if (!way.met && step_only_.empty() && round + 1 < rounds) continue;
            if (way.met || thin) ways_.all.push_back(std::move(way));
            return;
        }
    }

    // Where nothing does all that was asked: what does most of it, by additions alone and beside as much plain mass as may help.
    void by_what_comes_nearest() {
        std::vector<std::pair<double, MendWay>> near;
        const auto keep = [&](const Mended& mended, const Plain* plain, double share) {
            MendWay way = judged_way(mended, plain, share);
            const double done = progress_of(way);
            if (way.met || done >= mass_.context.constant("mend.nearest.least")) near.emplace_back(way.met ? 1e9 : done, std::move(way));
        };
        for (const auto& mended : nearest_to(additions_.with_more_of(start_), 2)) keep(mended, nullptr, 0);
        const double beside = mass_.context.constant("mend.plain.beside");
        auto plain = plain_for(mass_.formula, mass_.tastes, mass_.made, distance_, mass_.context, mass_.stock);
        const auto said = ways_.cannot.size();
        if (plain && within_stock(*plain, beside)) {
            const Mended start = additions_.with_more_of(blended(start_, *plain, beside));
            const auto found = nearest_to(start, 1);
            keep(found.empty() ? start : found.front(), &*plain, beside);
        }
        ways_.cannot.resize(said);  // too little meat for plain mass was told before, if it was asked for
        std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
        for (auto& [done, way] : near)
            if (ways_.all.size() < std::clamp<std::size_t>(mass_.request.top, 1, 2)) ways_.all.push_back(std::move(way));
        keep_the_met();
    }

    // Additions that go the largest part of the way that any do: by the middle draw past it first, as then more of the draws get there.
    std::vector<Mended> nearest_to(const Mended& start, std::size_t top) const {
        constexpr std::array parts{1.0, 1.6, 1.3, 0.98, 0.9, 0.6, 0.3, 0.15};
        std::vector<Mended> found;
        for (const double part : parts) {
            found = additions_.searched(start, top, {part, true});
            if (!found.empty()) break;
        }
        return found;
    }

    // Noticeable differences by which the goals are nearer than in the mass as made; none where one of them got worse.
    double progress_of(const MendWay& way) const {
        double nearer = 0;
        for (const auto& goal : goals()) {
            const double base = mass_.base.properties[goal.property].mid;
            const double step = (shortfall(goal, base, base) - shortfall(goal, way.prediction.properties[goal.property].mid, base)) /
                                distance_.unit(goal.property);
            constexpr double unfelt = 0.15;
            if (step < -unfelt) return 0;
            nearer += step;
        }
        return nearer;
    }

    // Meat there is too little of ends it; of anything else the plain mass does without.
    bool within_stock(Plain& plain, double share) {
        std::vector<Line> there;
        for (auto& line : plain.lines) {
            const Offer offer = mass_.stock.offer(line);
            const double needed = share * line.grams.mid;
            if (offer.on_hand && (!offer.grams || *offer.grams >= needed)) {
                mass_.stock.tell(line);
                there.push_back(std::move(line));
                continue;
            }
            const Ingredient& food = *knowledge().ingredient(line.ingredient);
            if (food.meat) {
                Reason short_of = make_reason(ReasonKind::short_of_plain, {{"needed", {}, needed, "g"}}, {food.names.front()});
                if (offer.on_hand) short_of.figures.push_back({"on hand", {}, *offer.grams, "g"});
                ways_.cannot.push_back(std::move(short_of));
                return false;
            }
            plain.lacks.push_back(line.ingredient);
        }
        plain.lines = std::move(there);
        return true;
    }

    MendWay judged_way(const Mended& mended, const Plain* plain, double share) const {
        MendWay way;
        way.work_min = work_min_;
        way.kind = !plain               ? (mended.add.empty() && work_min_ > 0 ? MendKind::work : MendKind::add)
                   : mended.add.empty() ? MendKind::blend
                                        : MendKind::blend_and_add;
        way.add = mended.add;
        if (plain) put_plain(way, *plain, share);
        way.formula = mended.formula;
        way.formula.title = mass_.formula.title + ", mended";
        way.formula.parent = mass_.formula.title;
        const auto states = mass_.made.states(way.formula);
        way.prediction = mass_.made.predicted(way.formula, states);
        for (const auto& goal : goals())
            way.wants.push_back(judged(goal, distance_, mass_.base.properties[goal.property].mid, way.prediction.properties[goal.property],
                                       mass_.states, states, mass_.request.sure));
        if (plain) way.step_only = step_only_;
        way.met = way.step_only.empty() && std::all_of(way.wants.begin(), way.wants.end(), [](const WantResult& w) { return w.met; });
        way.differences = differences_between(mass_.states, states).properties;
        for_each_property([&](Property p) {  // one figure for one thing: what is shown of both, taken from each other
            Band& by = way.differences[p];
            if (p == Property::hue_deg) return;
            by.mid = way.prediction.properties[p].mid - mass_.base.properties[p].mid;
            by = {std::min(by.low, by.mid), by.mid, std::max(by.high, by.mid)};
        });
        if (plain) way.salt_left = salt_left(way, *plain);
        way.new_animals = new_animals(way.formula);
        way.new_allergens = new_allergens(mass_.base, way.prediction);
        way.new_cautions = new_cautions(mass_.base, way.prediction);
        return way;
    }

    // Where less salt was asked for and what is left is still more than most put in: how much plain mass in all brings it there.
    std::optional<SaltLeft> salt_left(const MendWay& way, const Plain& plain) const {
        const auto constant = [&](const char* id) { return mass_.context.constant(id); };
        const double of_meat = way.prediction.nominal[Property::salt_pct_of_meat];
        SaltLeft left{of_meat, constant("mend.salt.usual-most"), constant("mend.salt.usual"), 0};
        if (!any_asks(goals(), Property::salt_pct, Goal::Kind::at_most) || of_meat <= left.usual_most) return std::nullopt;
        constexpr double step = 0.01;
        const double most = most_plain();
        for (double share = step; share <= most + step / 2; share += step) {
            if (mass_.made.state(blended(start_, plain, share)).properties[Property::salt_pct_of_meat] > left.enough) continue;
            Formula alone = mass_.formula;
            alone.lines = plain_lines(plain, share);
            left.plain_g = NominalBatch(alone, mass_.context.nominal()).total()[Amount::mass];
            break;
        }
        return left;
    }

    std::vector<std::string> new_animals(const Formula& mended) const {
        const auto animals = [&](const Formula& formula) {
            std::set<Species> all;
            for (const auto& line : formula.lines)
                if (const auto& meat = knowledge().ingredient(line.ingredient)->meat) all.insert(meat->species);
            return all;
        };
        std::vector<std::string> names;
        const auto there = animals(mass_.formula);
        for (const auto species : animals(mended))
            if (!there.count(species)) names.emplace_back(spelling(species));
        return names;
    }

    void put_plain(MendWay& way, const Plain& plain, double share) const {
        Formula alone = mass_.formula;
        alone.lines = plain_lines(plain, share);
        for (const auto& line : alone.lines) way.plain.push_back(ingoing(line, line.grams.mid, false, mass_.mending, knowledge()));
        for (auto& part : way.plain) {  // it is made as the formula is
            part.water_g = 0;
            part.how.clear();
            part.fresh = std::none_of(mass_.formula.lines.begin(), mass_.formula.lines.end(),
                                      [&](const Line& line) { return line.ingredient == part.ingredient; });
        }
        way.plain_leaner = plain.leaner;
        way.plain_g = NominalBatch(alone, mass_.context.nominal()).total()[Amount::mass];
        for (const auto& id : plain.lacks) {
            const std::string& name = knowledge().ingredient(id)->names.front();
            if (std::find(way.plain_lacks.begin(), way.plain_lacks.end(), name) == way.plain_lacks.end()) way.plain_lacks.push_back(name);
        }
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
    Formula start_;  // the mass, mixed on where it was mixed too little
    double work_min_ = 0;
    bool part_only_ = false;              // all that it takes would be another batch
    std::vector<std::string> step_only_;  // words that plain mass brings nearer and not right
    Ways ways_;
};

}  // namespace

Ways ways_to_mend(const Mass& mass) { return WaysOf(mass).ways(); }

}  // namespace standin
