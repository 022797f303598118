#include "mend/plain.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "adapt/goals/request.hpp"
#include "adapt/variants/variant.hpp"
#include "core/band.hpp"
#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
#include "mend/cause_foods.hpp"
#include "mend/cold_fat.hpp"
#include "mend/greener.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

class Composing {
public:
    Composing(const Formula& mass, const std::vector<Meant>& tastes, const MassAsMade& made, const Distance& distance,
              const Context& context, const Stock& stock)
        : mass_(mass),
          tastes_(tastes),
          distance_(distance),
          context_(context),
          stock_(stock),
          total_(made.total(mass)),
          batch_(mass, context.nominal()) {}

    std::optional<Plain> compose(const std::vector<std::string>& also_without) {
        also_without_ = also_without;
        for (const auto& taste : tastes_)
            for (const auto& goal : taste.goals)
                if (goal_helped_by_thinning(goal)) goals_.push_back(&goal);
        bool less = false;
        for (std::size_t l = 0; l < mass_.lines.size(); ++l) less = less || less_asked_of(l);
        if (goals_.empty() && !less) return std::nullopt;
        return of_what_is_left();
    }

    std::optional<Plain> compose_without(const std::vector<std::string>& foods) {
        without_ = &foods;
        for (const auto& taste : tastes_)
            for (const auto& goal : taste.goals)
                if (goal.kind == Goal::Kind::at_least) goals_.push_back(&goal);
        return of_what_is_left();
    }

private:
    std::optional<Plain> of_what_is_left() const {
        Plain plain;
        double meat = 0;
        for (std::size_t l = 0; l < mass_.lines.size(); ++l) {
            const Ingredient* lean = thins_fat() ? leaner(mass_.lines[l]) : nullptr;
            if (left_out(l)) {
                plain.lacks.push_back(mass_.lines[l].ingredient);
                plain.without_salt = plain.without_salt || main_role(l) == Role::salt;
                if (!lean || main_role(l) != Role::fat) continue;  // else lean weighs what the fat did
            }
            plain.lines.push_back(mass_.lines[l]);
            if (without_ || !also_without_.empty()) blanch_briefly(plain.lines.back(), context_.knowledge());
            if ((without_ || !also_without_.empty()) && green_asked()) make_it_green(plain.lines.back());
            if (lean) take(*lean, plain);
            meat += batch_.part(l)[Amount::meat];
        }
        if (meat < least_meat * total_[Amount::meat] || !(meat > 0)) return std::nullopt;
        if (green_asked()) put_mild_leaf(plain);
        put_cold_fat(plain, mass_, tastes_, stock_, context_);
        season(plain, meat);
        plain.serves = goals_;
        return plain;
    }

    // Leaf that is there for the green goes in twice over, for it greens the old mass too; raw it is blanched a minute and squeezed. A
    // bunch of herbs is left as it is.
    void make_it_green(Line& line) const {
        constexpr double bulk = 0.03;  // of the mass; judgement
        const Ingredient& food = *context_.knowledge().ingredient(line.ingredient);
        const bool leaf = food.tissue == Tissue::thin_leaf || food.tissue == Tissue::thick_leaf;
        if (!leaf || !food.chlorophyll || part(line, Amount::mass) < bulk * total_[Amount::mass]) return;
        line.grams = exactly(2 * line.grams.mid);
        line.count.reset();
        if (line.prepared.empty() && !line.weighed_prepared && food.already.empty())
            line.prepared = {{"blanched", 1.0}, {"squeezed", std::nullopt}};
    }

    bool green_asked() const {
        return std::any_of(tastes_.begin(), tastes_.end(),
                           [](const Meant& taste) { return any_asks(taste.goals, Property::greenness, Goal::Kind::at_least); });
    }

    // By what it counts as, or by its kind.
    bool asks_less_of(const TasteReading& reading, const Ingredient& food) const {
        return (reading.less_of && counts_as(food, *reading.less_of)) ||
               (!reading.less_kind.empty() && belongs(food, reading.less_kind, context_.knowledge()));
    }

    bool is_too_much(const Ingredient& food) const {
        return std::any_of(tastes_.begin(), tastes_.end(), [&](const Meant& taste) {
            const auto& note = taste.reading->less_note;
            return asks_less_of(*taste.reading, food) || (note && brings_note(food, *note));
        });
    }

    // Where the leaf that greened it is left out for its taste, mild leaf in its place: such as the list names, else such as any shop has.
    void put_mild_leaf(Plain& plain) const {
        const Knowledge& knowledge = context_.knowledge();
        double gone = 0;
        for (std::size_t l = 0; l < mass_.lines.size(); ++l)
            if (knowledge.ingredient(mass_.lines[l].ingredient)->chlorophyll && less_asked_of(l)) gone += mass_.lines[l].grams.mid;
        const auto greens = [&](const Line& line) { return knowledge.ingredient(line.ingredient)->roles.front() == Role::green; };
        if (!(gone > 0) || std::any_of(plain.lines.begin(), plain.lines.end(), greens)) return;
        std::map<std::string, int> named;
        for (const auto& swap : knowledge.records().swaps)
            if (swap.role == Role::green) ++named[swap.to];
        const Ingredient* best = nullptr;
        for (const auto& food : knowledge.records().ingredients) {
            if (food.roles.front() != Role::green || !food.chlorophyll || food.tissue != Tissue::thin_leaf || is_too_much(food)) continue;
            if (!food.allergens.empty() || !stock_.can_bring(food) || stock_.in_doubt(food.id)) continue;
            if (stock_.listed() && !stock_.names(food.id)) continue;
            if (!stock_.listed() && (belongs(food, "seldom-sold", knowledge) || belongs(food, "gathered", knowledge))) continue;
            if (!best || named[food.id] > named[best->id]) best = &food;
        }
        if (!best) return;
        Line leaf = brought_in(*best, Role::green, knowledge);
        constexpr double paler = 1.5;  // it greens the old mass too; judgement
        leaf.grams = exactly(paler * gone);
        plain.lines.push_back(std::move(leaf));
    }

    static constexpr double least_meat = 0.5;  // of the meat of the mass: with less it is no plain mass of this sausage

    bool thins_fat() const {
        return std::any_of(goals_.begin(), goals_.end(),
                           [](const Goal* goal) { return goal->property == Property::fat_pct && goal->kind == Goal::Kind::at_most; });
    }

    // The lean cut of the same animal that is on the list, or else the most usual stand-in; of wild meat and fish each is an animal of its
    // own.
    const Ingredient* leaner(const Line& line) const {
        constexpr std::array animals{Species::pork, Species::beef, Species::veal, Species::lamb, Species::chicken, Species::turkey};
        const Knowledge& knowledge = context_.knowledge();
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        const double usual = context_.constant("mend.lean.most-fat"), on_list = context_.constant("mend.lean.most-fat-listed");
        if (!food.meat || !contains(animals, food.meat->species)) return nullptr;
        const double fat = 100 * part(line, Amount::fat) / part(line, Amount::mass);
        if (fat <= usual) return nullptr;
        std::map<std::string, int> named;
        for (const auto& swap : knowledge.records().swaps)
            if (swap.role == Role::lean) ++named[swap.to];
        const Ingredient* best = nullptr;
        const auto better = [&](const Ingredient& one, const Ingredient& other) {
            if (stock_.names(one.id) != stock_.names(other.id)) return stock_.names(one.id);
            const int a = named[one.id], b = named[other.id];
            return a != b ? a > b : one.composition.fat.mid < other.composition.fat.mid;
        };
        for (const auto& cut : knowledge.records().ingredients) {
            if (!cut.meat || cut.meat->species != food.meat->species || cut.roles != std::vector{Role::lean}) continue;
            const double most = stock_.names(cut.id) ? std::min(on_list, fat / 2) : usual;
            if (cut.composition.fat.mid > most || !cut.allergens.empty() || !cut.already.empty() || belongs(cut, "offal", knowledge))
                continue;
            if (belongs(cut, "seldom-sold", knowledge) || belongs(cut, "gathered", knowledge)) continue;
            if (!stock_.can_bring(cut) || (stock_.listed() && !stock_.names(cut.id))) continue;
            if (!best || better(cut, *best)) best = &cut;
        }
        return best;
    }

    static void take(const Ingredient& lean, Plain& plain) {
        Line cut;
        cut.ingredient = lean.id;
        cut.grams = plain.lines.back().grams;
        plain.lines.pop_back();
        const auto same = std::find_if(plain.lines.begin(), plain.lines.end(),
                                       [&](const Line& line) { return line.ingredient == cut.ingredient && line.prepared.empty(); });
        if (same == plain.lines.end()) plain.lines.push_back(std::move(cut));
        else same->grams = exactly(same->grams.mid + cut.grams.mid);
        if (!contains(plain.leaner, lean.names.front())) plain.leaner.push_back(lean.names.front());
    }

    Role main_role(std::size_t l) const { return context_.knowledge().ingredient(mass_.lines[l].ingredient)->roles.front(); }

    bool meaty(const Line& line) const {
        const Ingredient& food = *context_.knowledge().ingredient(line.ingredient);
        return food.meat || food.roles.front() == Role::lean || food.roles.front() == Role::fat;
    }
    double part(const Line& line, Amount of) const { return line.grams.mid * context_.nominal().unit(line)[of]; }

    // What is left out takes its salt and its seasoning with it: salt stays by the kilo of meat, all else by the kilo of mass.
    void season(Plain& plain, double meat) const {
        double kept = 0, beside = 0, salt = 0, salted = 0;
        for (const auto& line : plain.lines) {
            const bool is_salt = context_.knowledge().ingredient(line.ingredient)->roles.front() == Role::salt;
            (meaty(line) ? kept : beside) += part(line, Amount::mass);
            (is_salt ? salt : salted) += part(line, Amount::salt);
        }
        const NominalBatch written(mass_, context_.nominal());
        const double room = written.total()[Amount::mass] - beside;
        double by_mass = room > 0 ? kept / room : 1;
        if (1 - by_mass < context_.constant("mend.plain.held")) by_mass = 1;
        const double asked = written.total()[Amount::salt] * meat / total_[Amount::meat];
        for (auto& line : plain.lines) {
            if (meaty(line)) continue;
            double by = by_mass;
            if (context_.knowledge().ingredient(line.ingredient)->roles.front() == Role::salt)
                by = plain.without_salt || !(salt > 0) ? 1 : std::max(0.0, asked - salted) / salt;
            line.grams = exactly(by * line.grams.mid);
            if (line.count) line.count = by * *line.count;
        }
    }

    // How far `food`, added at its share of the mass, moves the goal's property to where it is wanted; in noticeable differences.
    double helps(const Goal& goal, const Material& food) const {
        const double step = context_.constant("mend.plain.step");
        Material with = total_;
        with.add(food, step);
        const Property p = goal.property;
        const State after = context_.nominal().models().state(with, batch_.process());
        const double moved = (after.properties[p] - distance_.base().properties[p]) / distance_.unit(p);
        return goal.kind == Goal::Kind::at_most ? -moved : moved;
    }

    // Meat with its salt, and all else that does not do harm: whether more of that brings the goal nearer.
    bool goal_helped_by_thinning(const Goal& goal) const {
        constexpr double enough = 0.1;
        const auto has_leaner = [&](const Line& line) { return leaner(line) != nullptr; };
        if (goal.property == Property::fat_pct && goal.kind == Goal::Kind::at_most &&
            std::any_of(mass_.lines.begin(), mass_.lines.end(), has_leaner))
            return true;
        Material good;
        for (std::size_t l = 0; l < batch_.lines(); ++l)
            if (!wrong(goal, l)) good.add(batch_.part(l), 1);
        return good[Amount::meat] >= least_meat * total_[Amount::meat] && helps(goal, good) > enough;
    }

    // Leaf and onion bring acid as all that grows does; sorrel is sour by itself.
    bool is_sour_itself(std::size_t l) const {
        const Role role = main_role(l);
        if (role != Role::green && role != Role::herb && role != Role::allium) return true;
        constexpr double times = 2;  // the mass; judgement
        const Material &part = batch_.part(l), &total = batch_.total();
        return part[Amount::titratable] * total[Amount::mass] > times * total[Amount::titratable] * part[Amount::mass];
    }

    bool wrong(const Goal& goal, std::size_t l) const {
        if (goal.property == Property::sourness_mmol_kg && !is_sour_itself(l)) return false;
        // What melts out of a dry one is lost, and what stays of it is what it lacks: fresh sausage holds 15 to 30 % of fat.
        constexpr double usual_fat = 30;
        const bool for_the_juice = goal.property == Property::cook_loss_pct && goal.kind == Goal::Kind::at_most && !thins_fat();
        if (for_the_juice && main_role(l) == Role::fat && distance_.base().properties[Property::fat_pct] < usual_fat) return false;
        return helps(goal, batch_.part(l)) < -context_.constant("mend.plain.wrong");
    }

    // Of its role, or of the note that it brings.
    bool less_asked_of(std::size_t l) const {
        const Ingredient& food = *context_.knowledge().ingredient(mass_.lines[l].ingredient);
        return std::any_of(tastes_.begin(), tastes_.end(), [&](const Meant& taste) {
            const auto& note = taste.reading->less_note;
            return asks_less_of(*taste.reading, food) || (note && contains(lines_of_note(*note, mass_, batch_, context_.knowledge()), l));
        });
    }

    // Of what brings heat all that is tasted goes, not the hottest alone.
    bool brings_too_much_heat(std::size_t l) const {
        constexpr double tasted = 0.02;  // of all heat; judgement
        const bool asked = std::any_of(goals_.begin(), goals_.end(), [](const Goal* goal) {
            return goal->property == Property::heat_mg_kg && goal->kind == Goal::Kind::at_most;
        });
        return asked && main_role(l) == Role::heat &&
               batch_.part(l)[Amount::capsaicinoids] > tasted * batch_.total()[Amount::capsaicinoids];
    }

    bool wants(Property property, Goal::Kind kind) const {
        return std::any_of(goals_.begin(), goals_.end(),
                           [&](const Goal* goal) { return goal->property == property && goal->kind == kind; });
    }

    double meat_salt() const { return total_[Amount::meat] > 0 ? 100 * total_[Amount::salt] / total_[Amount::meat] : 0; }

    // What carries the fault goes, whatever else it is there for: feta of a mass too salty, sorrel of one that acid set, the water of a wet
    // one.
    bool carries_the_fault(std::size_t l) const {
        constexpr double some = 0.05;    // of all acid; judgement
        constexpr double salty = 0.012;  // g/g, judgement: saltier than a sausage should be
        const Line& line = mass_.lines[l];
        const Ingredient& food = *context_.knowledge().ingredient(line.ingredient);
        if (food.meat) return false;
        const Material& part = batch_.part(l);
        if (wants(Property::salt_pct, Goal::Kind::at_most) && part[Amount::salt] > salty * part[Amount::mass]) return true;
        const bool sour = part[Amount::titratable] > some * batch_.total()[Amount::titratable] && is_sour_itself(l);
        if (sour && (wants(Property::sourness_mmol_kg, Goal::Kind::at_most) || (without_ && without_acid()))) return true;
        const bool wet = wants(Property::bind, Goal::Kind::at_least) || wants(Property::firmness, Goal::Kind::at_least);
        return wet && contains(poured_lines(mass_, batch_, context_.knowledge()), l);
    }

    // Whether what is left out by name is there for its acid.
    bool without_acid() const {
        return std::any_of(without_->begin(), without_->end(),
                           [&](const std::string& id) { return context_.knowledge().ingredient(id)->roles.front() == Role::acid; });
    }

    bool left_out(std::size_t l) const {
        if (carries_the_fault(l) || contains(also_without_, mass_.lines[l].ingredient)) return true;
        if (without_) return contains(*without_, mass_.lines[l].ingredient);
        if (less_asked_of(l)) return true;
        // Where a role is thinned in a mass that is salted to the full, plain mass without salt makes it shorter too.
        const bool thinned =
            std::any_of(tastes_.begin(), tastes_.end(), [](const Meant& taste) { return taste.reading->less_of.has_value(); });
        if (thinned && main_role(l) == Role::salt && meat_salt() > context_.constant("mend.salt.usual-most")) return true;
        return brings_too_much_heat(l) || std::any_of(goals_.begin(), goals_.end(), [&](const Goal* goal) { return wrong(*goal, l); });
    }

    const Formula& mass_;
    const std::vector<Meant>& tastes_;
    const Distance& distance_;
    const Context& context_;
    const Stock& stock_;
    Material total_;
    NominalBatch batch_;
    std::vector<const Goal*> goals_;
    const std::vector<std::string>* without_ = nullptr;
    std::vector<std::string> also_without_;
};

}  // namespace

std::optional<Plain> plain_for(const Formula& mass, const std::vector<Meant>& tastes, const MassAsMade& made, const Distance& distance,
                               const Context& context, const Stock& stock, const std::vector<std::string>& also_without) {
    return Composing(mass, tastes, made, distance, context, stock).compose(also_without);
}

std::optional<Plain> plain_without(const std::vector<std::string>& foods, const Formula& mass, const std::vector<Meant>& tastes,
                                   const MassAsMade& made, const Distance& distance, const Context& context, const Stock& stock) {
    return Composing(mass, tastes, made, distance, context, stock).compose_without(foods);
}

Plain plain_whole(const Formula& mass) {
    Plain plain;
    plain.lines = mass.lines;
    return plain;
}

void keep_salt(Plain& plain, const Formula& mass, double share, double of_meat, const Context& context) {
    const Material both = NominalBatch(blended(mass, plain, share), context.nominal()).total();
    const double lacking = of_meat / 100 * both[Amount::meat] - both[Amount::salt];
    const auto salts = [&](const Line& line) { return context.knowledge().ingredient(line.ingredient)->roles.front() == Role::salt; };
    const auto salting = std::find_if(mass.lines.begin(), mass.lines.end(), salts);
    if (!(lacking > 0) || !(share > 0) || salting == mass.lines.end()) return;
    Line salt = *salting;
    salt.grams = exactly(lacking / share / context.nominal().unit(salt)[Amount::salt]);
    salt.count.reset();
    std::erase(plain.lacks, salt.ingredient);
    plain.lines.push_back(std::move(salt));
    plain.without_salt = false;
}

void put_back(Plain& plain, const Formula& mass, const PutBack& back_in, const Stock& stock) {
    for (const auto& line : mass.lines) {
        if (stock.knowledge().ingredient(line.ingredient)->roles.front() != back_in.role || !contains(plain.lacks, line.ingredient))
            continue;
        if (contains(back_in.without, line.ingredient)) continue;
        Line back = line;
        back.grams = exactly(back_in.part * line.grams.mid);
        if (back.count) back.count = back_in.part * *back.count;
        const Offer offer = stock.offer(back);
        if (!offer.on_hand || (offer.grams && *offer.grams < back_in.share * back.grams.mid)) continue;
        stock.tell(back);
        plain.lines.push_back(std::move(back));
        if (!contains(plain.less, line.ingredient)) plain.less.push_back(line.ingredient);
    }
    std::erase_if(plain.lacks, [&](const std::string& id) { return contains(plain.less, id); });
}

std::optional<Line> leaf_on_hand(const Line& line, double needed, const Stock& stock) {
    const Knowledge& knowledge = stock.knowledge();
    const Ingredient& food = *knowledge.ingredient(line.ingredient);
    if (!food.chlorophyll || !stock.listed()) return std::nullopt;
    for (const auto& other : knowledge.records().ingredients) {
        if (other.roles.front() != Role::green || other.id == food.id || other.tissue == Tissue::dry) continue;
        if (!other.chlorophyll || !stock.names(other.id) || !stock.can_bring(other)) continue;
        Line leaf = brought_in(other, Role::green, knowledge);
        leaf.grams = line.grams;
        const Offer offer = stock.offer(leaf);
        if (!offer.on_hand || offer.excluded || (offer.grams && *offer.grams < needed)) continue;
        stock.tell(leaf);
        return leaf;
    }
    return std::nullopt;
}

std::optional<Reason> do_without(Plain& plain, double share, const Stock& stock) {
    std::vector<Line> there;
    std::vector<std::string> lacks;
    for (const auto& line : plain.lines) {
        const Offer offer = stock.offer(line);
        const double needed = share * line.grams.mid;
        if (offer.on_hand && (!offer.grams || *offer.grams >= needed)) {
            stock.tell(there.emplace_back(line));
            continue;
        }
        const Ingredient& food = *stock.knowledge().ingredient(line.ingredient);
        if (food.meat) {
            Reason short_of = make_reason(ReasonKind::short_of_plain, {{"needed", {}, needed, "g"}}, {food.names.front()});
            if (offer.on_hand) short_of.figures.push_back({"on hand", {}, *offer.grams, "g"});
            return short_of;
        }
        lacks.push_back(line.ingredient);
        if (auto leaf = leaf_on_hand(line, needed, stock)) there.push_back(std::move(*leaf));
    }
    plain.lines = std::move(there);
    plain.lacks.insert(plain.lacks.end(), lacks.begin(), lacks.end());
    return std::nullopt;
}

std::vector<Line> plain_lines(const Plain& plain, double share) {
    std::vector<Line> lines;
    for (Line line : plain.lines) {
        line.grams = exactly(kitchen_grams(share * line.grams.mid, false));
        line.written.clear();
        line.notes.clear();
        if (line.count) line.count = *line.count * share;
        if (line.grams.mid > 0) lines.push_back(std::move(line));
    }
    return lines;
}

Formula blended(const Formula& mass, const Plain& plain, double share) {
    Formula both = mass;
    for (auto& line : plain_lines(plain, share)) both.lines.push_back(std::move(line));
    return with_equal_lines_merged(std::move(both));
}

}  // namespace standin
