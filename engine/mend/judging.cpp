#include "mend/judging.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "adapt/distance/difference.hpp"
#include "adapt/distance/met.hpp"
#include "core/contains.hpp"
#include "knowledge/records/vocabulary.hpp"
#include "mend/bring.hpp"
#include "models/colour_words.hpp"
#include "safety/allergens.hpp"
#include "safety/page.hpp"
#include "standin/narrate.hpp"

namespace standin {
namespace {

constexpr double rounding = 1e-6;

}  // namespace

bool of_acid(const Goal& goal) { return goal.property == Property::sourness_mmol_kg; }

bool is_same(const MendWay& one, const MendWay& other) {
    const auto alike = [](const std::vector<Ingoing>& a, const std::vector<Ingoing>& b) {
        return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                          [](const Ingoing& x, const Ingoing& y) { return x.ingredient == y.ingredient && x.grams == y.grams; });
    };
    return alike(one.add, other.add) && alike(one.plain, other.plain);
}

double Judging::progress_of(const MendWay& way) const {
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

std::optional<Property> Judging::harmed(const MendWay& way) const {
    if (!any_asks(goals(), Property::fat_pct, Goal::Kind::at_least)) return std::nullopt;
    for (const auto& [property, least] :
         {std::pair(Property::bind, "mend.harm.bind"), std::pair(Property::firmness, "mend.harm.firmness")}) {
        const double was = mass_.base.nominal[property], is = way.prediction.nominal[property];
        if (is < mass_.context.constant(least) && was - is > mass_.context.constant("mend.harm.by")) return property;
    }
    return std::nullopt;
}

MendWay Judging::way(const Mended& mended, const Plain* plain, double share, std::vector<std::string> step_only) const {
    MendWay way;
    way.work_min = work_min_;
    way.kind = !plain               ? (mended.add.empty() && work_min_ > 0 ? MendKind::work : MendKind::add)
               : mended.add.empty() ? MendKind::blend
                                    : MendKind::blend_and_add;
    way.add = mended.add;
    for (auto& in : way.add)
        in.first = work_min_ > 0 && any_asks(goals(), Property::salt_pct, Goal::Kind::at_least) &&
                   knowledge().ingredient(in.ingredient)->roles.front() == Role::salt;
    std::stable_partition(way.add.begin(), way.add.end(), [](const Ingoing& in) { return in.first; });
    if (plain) put_plain(way, *plain, share);
    way.formula = mended.formula;
    way.formula.title = mass_.formula.title + ", mended";
    way.formula.parent = mass_.formula.title;
    const auto states = mass_.made.states(way.formula);
    way.prediction = mass_.made.predicted(way.formula, states);
    for (const auto& goal : goals())
        way.wants.push_back(judged(goal, distance_, mass_.base.properties[goal.property].mid, way.prediction.properties[goal.property],
                                   mass_.states, states, mass_.request.sure));
    // Less of something goes on until the middle has all of it: that is what is told, and not what counts as met.
    for (std::size_t g = 0; g < way.wants.size(); ++g) {
        if (!thins(goals()[g])) continue;
        std::erase_if(way.wants[g].reason.figures, [](const Figure& f) { return f.what == "slack"; });
        way.wants[g].says = in_full(way.wants[g].reason);
    }
    way.step_only = std::move(step_only);
    if (plain) way.still_over = over_most(mended.formula, *plain);
    mind_colour(way);
    way.met = way.step_only.empty() && std::all_of(way.wants.begin(), way.wants.end(), [](const WantResult& w) { return w.met; });
    way.differences = differences_between(mass_.states, states).properties;
    for_each_property([&](Property p) {  // one figure for one thing: what is shown of both, taken from each other
        Band& by = way.differences[p];
        if (p == Property::hue_deg) return;
        by.mid = way.prediction.properties[p].mid - mass_.base.properties[p].mid;
        by = {std::min(by.low, by.mid), by.mid, std::max(by.high, by.mid)};
    });
    if (plain) way.salt_left = salt_left(way, *plain);
    if (plain) put_plain_for(way, *plain, share);
    way.new_animals = new_animals(way.formula);
    way.new_allergens = new_allergens(mass_.base, way.prediction);
    way.new_cautions = new_cautions(mass_.base, way.prediction);
    return way;
}

// Green that is none yet is a step.
void Judging::mind_colour(MendWay& way) const {
    const Prediction& then = way.prediction;
    const double green_from = mass_.context.constant("colour.green.hue");
    if (called_green(then.rested.word) || then.nominal[Property::hue_deg] >= green_from) return;
    for (const auto& goal : goals())
        if (goal.property == Property::greenness && goal.kind == Goal::Kind::at_least) {
            way.step_only.push_back(goal.want);
            way.colour_left = then.rested.word;
        }
}

// How much plain mass brings what a maker minds beside the taste to where a sausage holds: its pH, and its fat.
void Judging::put_plain_for(MendWay& way, const Plain& plain, double share) const {
    const auto constant = [&](const char* id) { return mass_.context.constant(id); };
    const auto tell = [&](Property property, double value, bool rises) {
        const double base = mass_.base.nominal[property], step = constant("mend.plain.round");
        if (rises ? base >= value : base <= value) return;
        double plain_g = 0;
        for (double more = step; !(plain_g > 0) && more <= most_plain() + step / 2; more += step) {
            const double is = mass_.made.state(blended(start_, plain, more)).properties[property];
            if (rises ? is < value - rounding : is > value + rounding) continue;
            if (std::abs(more - share) < step) return;  // that is the way itself
            plain_g = grams_of(plain, more);
        }
        way.plain_for.push_back({property, value, plain_g});
    };
    const bool acid_asked = std::any_of(goals().begin(), goals().end(), of_acid) || mass_.set;
    if (acid_asked && way.prediction.nominal[Property::ph] < constant("mend.ph.enough") - rounding)
        tell(Property::ph, constant("mend.ph.enough"), true);
    if (any_asks(goals(), Property::fat_pct, Goal::Kind::at_most)) tell(Property::fat_pct, constant("mend.fat.holds"), false);
}

double Judging::grams_of(const Plain& plain, double share) const {
    Formula alone = mass_.formula;
    alone.lines = plain_lines(plain, share);
    return NominalBatch(alone, mass_.context.nominal()).total()[Amount::mass];
}

// Where less salt was asked for and what is left is still more than most put in: how much plain mass in all brings it there.
std::optional<SaltLeft> Judging::salt_left(const MendWay& way, const Plain& plain) const {
    const auto constant = [&](const char* id) { return mass_.context.constant(id); };
    const double of_meat = way.prediction.nominal[Property::salt_pct_of_meat];
    SaltLeft left{of_meat, constant("mend.salt.usual-most"), constant("mend.salt.usual"), 0};
    if (!any_asks(goals(), Property::salt_pct, Goal::Kind::at_most) || of_meat <= left.usual_most) return std::nullopt;
    constexpr double step = 0.01;
    const double most = most_plain();
    for (double share = step; share <= most + step / 2; share += step) {
        if (mass_.made.state(blended(start_, plain, share)).properties[Property::salt_pct_of_meat] > left.enough) continue;
        left.plain_g = grams_of(plain, share);
        break;
    }
    return left;
}

std::vector<std::string> Judging::new_animals(const Formula& mended) const {
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

void Judging::put_plain(MendWay& way, const Plain& plain, double share) const {
    Formula alone = mass_.formula;
    alone.lines = plain_lines(plain, share);
    for (const auto& line : alone.lines) way.plain.push_back(ingoing(line, line.grams.mid, false, mass_.mending, knowledge()));
    for (auto& part : way.plain) {  // it is made as the formula is
        part.water_g = 0;
        part.how.clear();
        const Ingredient& food = *knowledge().ingredient(part.ingredient);
        part.meat = food.meat || food.roles.front() == Role::fat;
        part.unlisted = part.meat && mass_.request.have && mass_.request.have->complete.value_or(false) && !mass_.stock.names(food.id);
        part.fresh = std::none_of(mass_.formula.lines.begin(), mass_.formula.lines.end(),
                                  [&](const Line& line) { return line.ingredient == part.ingredient; });
    }
    way.plain_leaner = plain.leaner;
    for (const auto& id : plain.less) way.plain_less.push_back(knowledge().ingredient(id)->names.front());
    put_rounds(way, plain, share);
    way.plain_g = NominalBatch(alone, mass_.context.nominal()).total()[Amount::mass];
    for (const auto& id : plain.lacks) {
        const std::string& name = knowledge().ingredient(id)->names.front();
        if (std::find(way.plain_lacks.begin(), way.plain_lacks.end(), name) == way.plain_lacks.end()) way.plain_lacks.push_back(name);
    }
}

// What makes a taste less is made and folded in a part at a time: who has all of it in cannot take it out again.
void Judging::put_rounds(MendWay& way, const Plain& plain, double share) const {
    if (std::none_of(mass_.tastes.begin(), mass_.tastes.end(), asks_less)) return;
    way.plain_rounds = std::max(1, static_cast<int>(std::ceil(share / mass_.context.constant("mend.plain.part") - rounding)));
    if (way.plain_rounds == 1) return;
    const State first = mass_.made.state(blended(start_, plain, share / way.plain_rounds));
    for (const auto& goal : goals())
        if (thins(goal) && std::none_of(way.after_first.begin(), way.after_first.end(),
                                        [&](const AfterFirst& told) { return told.property == goal.property; }))
            way.after_first.push_back({goal.property, first.properties[goal.property]});
}

// The lowest limit on it that the mass as made is over, and that a page warns of.
std::optional<double> Judging::limit_passed(const Goal& goal) const {
    if (!thins(goal)) return std::nullopt;
    const std::string role = std::string(info(goal.property).name) + " above";
    std::optional<double> least;
    for (const auto& caution : mass_.base.cautions)
        for (const auto& figure : caution.reason.figures)
            if (caution.reason.role == role && figure.what == "limit") least = std::min(least.value_or(figure.after), figure.after);
    return least;
}

std::vector<StillOver> Judging::over_most(const Formula& formula, const Plain& plain) const {
    std::vector<StillOver> over;
    const double batch = mass_.made.total(formula)[Amount::mass];
    const State state = mass_.made.state(formula);
    for (const auto* goal : plain.serves) {
        if (const auto limit = limit_passed(*goal); limit && state.properties[goal->property] > *limit)
            over.push_back({goal->want, {}, state.properties[goal->property], *limit});
        const Role role = of_acid(*goal) ? Role::acid : Role::heat;
        if (!thins(*goal) || (!of_acid(*goal) && goal->property != Property::heat_mg_kg)) continue;
        for (const auto& line : formula.lines) {
            const Ingredient& food = *knowledge().ingredient(line.ingredient);
            const double in_a_kilo = 1000 * line.grams.mid / batch;
            if (!contains(plain.lacks, food.id) || food.roles.front() != role || !food.most_g_per_kg) continue;
            if (in_a_kilo > food.most_g_per_kg->band.mid + rounding)
                over.push_back({goal->want, food.names.front(), in_a_kilo, food.most_g_per_kg->band.mid});
        }
    }
    return over;
}

double Judging::all_asked() const {
    double asked = 0;
    for (const auto& goal : goals()) {
        const double base = distance_.base().properties[goal.property];
        asked += shortfall(goal, base, base) / distance_.unit(goal.property);
    }
    return asked;
}

std::vector<std::string> Judging::still_over(const Formula& formula, const Plain& plain) const {
    const State state = mass_.made.state(formula);
    const auto over = over_most(formula, plain);
    const auto is_over_most = [&](const Goal& goal) {
        return std::any_of(over.begin(), over.end(), [&](const StillOver& one) { return one.tasted == goal.want; });
    };
    std::vector<std::string> words;
    for (const auto* goal : plain.serves)
        if (thins(*goal) && (short_of_target(*goal, state) || (of_acid(*goal) && too_sour(state)) || is_over_most(*goal)))
            words.push_back(goal->want);
    return words;
}

std::vector<std::string> Judging::still_short(const State& state, const Plain& plain) const {
    std::vector<std::string> words;
    for (const auto* goal : plain.serves)
        if (thins(*goal) && short_of_target(*goal, state)) words.push_back(goal->want);
    return words;
}

bool Judging::short_of_target(const Goal& goal, const State& state) const {
    constexpr double hair = 0.01;
    const double base = distance_.base().properties[goal.property], target = goal.target(base);
    return state.properties[goal.property] > target + hair * std::abs(target);
}

bool Judging::too_sour(const State& state) const {
    return state.properties[Property::ph] < mass_.context.constant("mend.ph.enough") - rounding;
}

}  // namespace standin
