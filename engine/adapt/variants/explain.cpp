#include "adapt/variants/explain.hpp"

#include <algorithm>
#include <optional>

#include "adapt/moves/fair_moves.hpp"
#include "adapt/moves/own_water.hpp"
#include "adapt/moves/room_under_caps.hpp"
#include "adapt/variants/swap_note.hpp"
#include "core/contains.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/kinds.hpp"
#include "substitute/conditions.hpp"
#include "substitute/dose.hpp"
#include "substitute/stand_ins.hpp"

namespace standin {
namespace {

class Reasons {
public:
    Reasons(const Problem& problem, const std::vector<Goal>& asked, const Compared& compared, const Stock& stock, const Context& context)
        : problem_(problem), asked_(asked), c_(compared), stock_(stock), context_(context), knowledge_(context.knowledge()) {}

    Reason for_stand_in(const PlainEdit& edit) const {
        Reason why{ReasonKind::stands_in, {}, {}, {}, {}, {}};
        const Move& move = problem_.moves[edit.move];
        const auto stands =
            std::find_if(move.stands_for.begin(), move.stands_for.end(), [&](const StandsFor& s) { return s.line == edit.line; });
        if (stands == move.stands_for.end()) return why;
        const Line& line = problem_.formula.lines[edit.line];
        why.role = word(stands->role);
        // Where no common unit tells the dose, weight for weight is a custom: of what is far from it no share is claimed.
        constexpr double near_enough = 0.5;  // closeness; judgement
        const Swap& last = knowledge_.records().swaps[stands->swaps.back()];
        const bool custom = amount_of_dose(stands->role) && stands->closeness < near_enough && !note_of(stands->swaps, knowledge_).empty();
        // Of flesh and a hot pod in two parts the flesh claims no share of the heat, nor the leaf one of the bite that the garlic brings.
        const double beside = move.second ? move.second->per_gram * dose_of(context_.nominal().unit(move.second->food), stands->role) : 0;
        const bool by_second =
            move.second && (stands->role == Role::heat || 2 * beside > dose_of(context_.nominal().unit(move.food), stands->role) + beside);
        // Potato for chestnut fills its place, and brings no nut.
        const auto is_nut = [&](const Line& food) { return contains(knowledge_.ingredient(food.ingredient)->roles, Role::nut); };
        const bool no_nut = stands->role == Role::nut && !is_nut(move.food);
        if (!custom && !by_second && !no_nut)
            why.figures.push_back({why.role, dose_of(context_.nominal().unit(line), stands->role) * line.grams.mid,
                                   dose_of(move.per_gram, stands->role) * edit.after, std::string(dose_unit(stands->role))});
        why.figures.push_back({"closeness", {}, stands->closeness, ""});
        if (const auto share = share_under_caps(edit, *stands)) why.figures.push_back({"capped", {}, 100 * *share, "%"});
        if (stands->swaps.size() > 1) why.by_way.push_back(name(knowledge_.records().swaps[stands->swaps.front()].to));
        why.asks = conditions_ask(last, problem_.formula.process, knowledge_);
        why.note = note_of(stands->swaps, line, move.food, stock_);
        // Asked for a richer or leaner one, meat is told for its fat and not for its protein.
        const bool of_meat = stands->role == Role::lean || stands->role == Role::fat;
        // For the bite a leaner cut is told for that, and not with what it lacks of the fat.
        const bool for_the_bite =
            stands->role == Role::lean && asks_firmer(asked_) && !wants(Property::fat_pct) && !problem_.missing[edit.line];
        // What comes in for what is missing serves the want only where it goes that way: breast for thigh makes nothing richer.
        const double comes = context_.nominal().unit(move.food)[Amount::fat], goes = context_.nominal().unit(line)[Amount::fat];
        const bool serves = !problem_.missing[edit.line] || (asks_leaner(asked_) ? comes < goes : comes > goes);
        if (!for_the_bite && !(of_meat && wants(Property::fat_pct) && serves)) return why;
        Reason fat = about(ReasonKind::fat);
        if (for_the_bite) fat.role = "firmness";
        fat.asks = why.asks;
        fat.note = why.note;
        return fat;
    }

    // How much of what is missing a stand-in makes up for that a cap holds down: what a kilo takes of it, or the law allows.
    std::optional<double> share_under_caps(const PlainEdit& edit, const StandsFor& stands) const {
        constexpr double next_to = 0.9, nearly_all = 0.8;  // of the room, of what is missing; judgement
        const auto room = room_under_caps(problem_, edit.move);
        const double gone = 1 - edit.left / problem_.formula.lines[edit.line].grams.mid;
        const double made_up = edit.after / stands.equal_grams / std::max(gone, 1e-9);
        if (!room || edit.after < next_to * *room || made_up >= nearly_all) return std::nullopt;
        return made_up;
    }

    Reason for_line(const PlainEdit& edit) const {
        const Line& line = problem_.formula.lines[edit.line];
        const Role role = knowledge_.ingredient(line.ingredient)->roles.front();
        constexpr double all_there_is = 0.95;  // less is taken off it for the sake of a want
        const double there = problem_.start[edit.line];
        constexpr double rounded = 1.02;  // to whole grams
        if (there < line.grams.mid && edit.after <= rounded * there && edit.after < edit.before && edit.after >= all_there_is * there)
            return missing(edit);
        const bool less = edit.after < edit.before;
        switch (role) {
            case Role::acid:
                if (less && only_for_the_green()) return serving(edit);
                if (less && acid_loosened()) return less_acid();
                if (!less && wants_it_looser()) return make_reason(ReasonKind::acid_loosens);
                return against(edit, Property::sourness_mmol_kg) ? for_its_part(edit, role) : about(ReasonKind::sourness);
            case Role::heat:
                return against(edit, Property::heat_mg_kg) ? for_its_part(edit, role) : about(ReasonKind::heat);
            case Role::salt:
                return for_salt(less);
            case Role::liquid:
                if (less && water_comes_in()) return along_with_water();
                if (less && only_for_the_green()) return serving(edit);
                if (less && acid_loosened() && context_.nominal().unit(line)[Amount::titratable] > 0) return less_acid();
                if (!(context_.nominal().unit(line)[Amount::titratable] > 0)) return less ? serving(edit) : for_more_water(edit);
                if (!less && wants_it_looser()) return loosened_by_wet_acid();
                return agrees(edit, Property::sourness_mmol_kg) ? about(ReasonKind::sourness) : serving(edit);
            case Role::fat:
            case Role::lean:
                if (less && lean_comes_in(edit.line)) return make_reason(ReasonKind::lean_comes_along);
                return for_fat(edit);
            case Role::binder:
                if (less && wants_it_looser()) return make_reason(ReasonKind::less_binder);
                return less ? serving(edit) : make_reason(ReasonKind::binder, {loose_water(), figure("bind", Property::bind, "of 100")});
            default:
                break;
        }
        constexpr double drier = 0.002;  // g/g of loose water
        if (less && c_.bind_after.loose_water < c_.bind_before.loose_water - drier)
            return {ReasonKind::drier_paste, {}, {loose_water()}, {}, {}, {}};
        const bool leaf = role == Role::green || role == Role::herb;
        return leaf && (asked_.empty() || wants(Property::greenness) || wants(Property::heat_mg_kg)) &&
                       agrees(edit, Property::chlorophyll_mg_kg)
                   ? about(ReasonKind::green)
                   : serving(edit);
    }

    // Water by itself may do nothing, and be held by what else comes in.
    Reason for_more_water(const PlainEdit& edit) const {
        Reason why = serving(edit);
        if (is_told(why)) return why;
        return for_its_part(edit, Role::liquid);
    }

    static Reason loosened_by_wet_acid() {
        Reason why = make_reason(ReasonKind::acid_loosens);
        why.role = "wet";
        return why;
    }

    Reason for_addition(const PlainEdit& edit) const {
        const Move& move = problem_.moves[edit.move];
        const Role role = knowledge_.ingredient(move.food.ingredient)->roles.front();
        Reason why{ReasonKind::addition, std::string(word(role)), {}, {}, {}, {}};
        why.figures.push_back({"brings", {}, dose_of(move.per_gram, role) * edit.after, std::string(dose_unit(role))});
        if (role == Role::binder) {
            why.kind = ReasonKind::binder;
            why.figures.push_back(loose_water());
            why.figures.push_back(figure("bind", Property::bind, "of 100"));
        }
        return why;
    }

    // Fish has hardly any fat that could smear.
    Reason of_fish(Reason why) const {
        const auto& total = problem_.start_total;
        if (total[Amount::meat] > 0 && total[Species::fish] + total[Species::crustacean] >= total[Amount::meat] - 1e-9) why.role = "fish";
        return why;
    }

    Reason for_process(const Reason& done) const {
        const auto factor = [](ReasonKind kind, double before, double after) {
            return Reason{kind, {}, {{"bind factor", before, after, ""}}, {}, {}, {}};
        };
        switch (done.kind) {
            case ReasonKind::order: {
                if (done.role == "green") return with_role(ReasonKind::order, {figure("green", Property::greenness, "")}, done.role);
                return factor(ReasonKind::order, c_.bind_before.order_factor, c_.bind_after.order_factor);
            }
            case ReasonKind::salt_late:
                return make_reason(ReasonKind::salt_late);
            case ReasonKind::mixing:
                return factor(ReasonKind::mixing, c_.bind_before.mixing_factor, c_.bind_after.mixing_factor);
            case ReasonKind::cold:
                return of_fish(factor(ReasonKind::cold, c_.bind_before.cold_factor, c_.bind_after.cold_factor));
            case ReasonKind::plate:
                return factor(ReasonKind::plate, c_.bind_before.plate_factor, c_.bind_after.plate_factor);
            case ReasonKind::rest:
                return {ReasonKind::rest, {}, {figure("green", Property::greenness, "")}, {}, {}, {}};
            case ReasonKind::rest_cold:
                return {ReasonKind::rest_cold, {}, {figure("green", Property::greenness, "")}, {}, {}, {}};
            case ReasonKind::short_blanch:
                return {ReasonKind::short_blanch, {}, {figure("green", Property::greenness, "")}, {}, {}, {}};
            case ReasonKind::seeds_in:
                return {ReasonKind::seeds_in, {}, {figure("heat", Property::heat_mg_kg, "mg/kg")}, {}, {}, {}};
            case ReasonKind::squeeze:
                return with_role(ReasonKind::squeeze, {loose_water()}, wants(Property::greenness) && !wants(Property::bind) ? "green" : "");
            case ReasonKind::core:
                return with_role(ReasonKind::core, {figure("cook loss", Property::cook_loss_pct, "%")}, done.role);
            default:
                return {};
        }
    }

private:
    static constexpr std::size_t most_named = 3;

    static Reason with_role(ReasonKind kind, std::vector<Figure> figures, const std::string& role) {
        Reason why = make_reason(kind, std::move(figures));
        why.role = role;
        return why;
    }

    Figure figure(const char* what, Property property, const char* unit) const {
        return {what, c_.before.properties[property], c_.after.properties[property], unit};
    }

    Figure loose_water() const { return {"loose water", 100 * c_.bind_before.loose_water, 100 * c_.bind_after.loose_water, "g in 100 g"}; }

    // Whether the line goes up while the whole goes down, making up for a part of what others took along; or down while others bring more.
    bool against(const PlainEdit& edit, Property property) const {
        const double moved = c_.after.properties[property] - c_.before.properties[property];
        return (edit.after > edit.before && moved < 0) || (edit.after < edit.before && moved > 0);
    }

    // What the batch comes to by this edit of one line alone.
    State by_itself(const PlainEdit& edit) const {
        Material with = c_.base;
        with.add(context_.nominal().unit(problem_.formula.lines[edit.line]), edit.after - edit.before);
        return context_.nominal().models().state(with, made());
    }
    State as_it_was() const { return context_.nominal().models().state(c_.base, made()); }
    ProcessState made() const { return context_.nominal().process(problem_.formula.process); }

    // Whether it moves the property the way in which all edits together do.
    bool agrees(const PlainEdit& edit, Property property) const {
        const double alone = by_itself(edit).properties[property] - as_it_was().properties[property];
        const double together = c_.after.properties[property] - c_.before.properties[property];
        return alone * together >= 0;
    }

    // What is wanted and comes nearer by this edit alone, most of it; of meat that serves nothing its weight is told.
    Reason serving(const PlainEdit& edit) const {
        constexpr double felt = 0.02;  // of the way
        const State now = as_it_was(), then = by_itself(edit);
        const bool less_sour = any_asks(asked_, Property::ph, Goal::Kind::at_least) && edit.after < edit.before;
        if (less_sour && then.properties[Property::ph] > now.properties[Property::ph] + felt) return less_acid();
        const Goal* best = nullptr;
        double most = felt;
        for (const auto& goal : asked_) {
            const double base = now.properties[goal.property], way = goal.target(base) - base;
            const double gone = way != 0 ? (then.properties[goal.property] - base) / way : 0;
            if (gone <= most || in_short(goal.property).empty()) continue;
            most = gone;
            best = &goal;
        }
        if (best)
            return make_reason(ReasonKind::serves, {figure_of(in_short(best->property), now.properties[best->property],
                                                              then.properties[best->property], best->property)});
        const bool meat = knowledge_.ingredient(problem_.formula.lines[edit.line].ingredient)->meat.has_value();
        return meat ? make_reason(ReasonKind::keeps_weight) : Reason{};
    }

    static Figure figure_of(std::string_view what, double before, double after, Property property) {
        return {std::string(what), before, after, std::string(info(property).unit)};
    }

    // The name that differences are kept under.
    static std::string_view in_short(Property property) {
        switch (of_batch(property)) {
            case Property::bind:
                return "bind";
            case Property::firmness:
                return "firmness";
            case Property::juice:
                return "juice";
            case Property::cook_loss_pct:
                return "cook loss";
            case Property::fat_pct:
                return "fat";
            case Property::sourness_mmol_kg:
                return "sourness";
            case Property::greenness:
                return "green";
            case Property::heat_mg_kg:
                return "heat";
            case Property::salt_pct:
                return "salt";
            default:
                return "";
        }
    }

    Reason for_its_part(const PlainEdit& edit, Role role) const {
        if (edit.after < edit.before) return make_reason(ReasonKind::makes_room);
        const double more = dose_of(context_.nominal().unit(problem_.formula.lines[edit.line]), role) * (edit.after - edit.before);
        return {ReasonKind::addition, std::string(word(role)), {{"brings", {}, more, std::string(dose_unit(role))}}, {}, {}, {}};
    }

    bool wants(Property property) const {
        return std::any_of(asked_.begin(), asked_.end(), [&](const Goal& goal) { return of_batch(goal.property) == property; });
    }

    // Less acid is told for its bind, but not to who asked for less sharpness and nothing of the bind.
    bool acid_loosened() const {
        const bool for_the_taste = wants(Property::sourness_mmol_kg) && !wants(Property::bind) && !wants(Property::firmness);
        return !for_the_taste && c_.bind_after.acid_factor > c_.bind_before.acid_factor;
    }

    bool only_for_the_green() const { return wants(Property::greenness) && !wants(Property::bind) && !wants(Property::firmness); }

    bool wants_it_looser() const { return any_asks(asked_, Property::bind, Goal::Kind::at_most); }

    // Of the lean line that gives way to a cut of both, and not of a skin or a fat beside it.
    bool lean_comes_in(std::size_t line) const {
        return std::any_of(problem_.moves.begin(), problem_.moves.end(),
                           [&](const Move& m) { return m.line == line && takes_lean_off(problem_, m); });
    }

    bool water_comes_in() const {
        return std::any_of(problem_.moves.begin(), problem_.moves.end(), [&](const Move& m) { return takes_water_off(problem_, m); });
    }

    static Reason along_with_water() {
        Reason why = make_reason(ReasonKind::lean_comes_along);
        why.role = "water";
        return why;
    }

    // Meat and fat moved for the bite are told for it; beside any other want for what they do by themselves.
    Reason for_fat(const PlainEdit& edit) const {
        Reason why = about(ReasonKind::fat);
        if (!agrees(edit, Property::fat_pct)) return serving(edit);
        if (wants(Property::fat_pct) || asked_.empty()) return why;
        const bool bite = wants(Property::firmness) || wants(Property::bind);
        const bool leaner = c_.after.properties[Property::fat_pct] < c_.before.properties[Property::fat_pct];
        const bool firmer = c_.after.properties[Property::firmness] > c_.before.properties[Property::firmness];
        if (!bite || leaner != firmer) return serving(edit);
        why.role = "firmness";
        return why;
    }

    // What the line moves, or holds where it is.
    Reason about(ReasonKind kind) const {
        const Figure f = kind == ReasonKind::sourness ? figure("sourness", Property::sourness_mmol_kg, "mmol/kg")
                         : kind == ReasonKind::heat   ? figure("heat", Property::heat_mg_kg, "mg/kg")
                         : kind == ReasonKind::fat    ? figure("fat", Property::fat_pct, "% of batch")
                                                      : figure("chlorophyll", Property::chlorophyll_mg_kg, "mg/kg");
        return {kind, {}, {f}, {}, {}, {}};
    }

    Reason less_acid() const {
        return {ReasonKind::less_acid,
                {},
                {figure("pH", Property::ph, ""), {"bind factor", c_.bind_before.acid_factor, c_.bind_after.acid_factor, ""}},
                {},
                {},
                {}};
    }

    std::string name(const std::string& id) const { return knowledge_.ingredient(id)->names.front(); }

    // Less salt to less meat may still be a little more for a kilo of it.
    Reason for_salt(bool less) const {
        const bool falls = c_.after.properties[Property::salt_pct_of_meat] < c_.before.properties[Property::salt_pct_of_meat];
        return {ReasonKind::salt,
                less == falls ? "" : "near",
                {figure("salt", Property::salt_pct_of_meat, "% of meat"), figure("salt", Property::salt_pct, "% of batch")},
                {},
                {},
                {}};
    }

    Reason missing(const PlainEdit& edit) const {
        if (problem_.excluded[edit.line]) {
            Reason left_out = make_reason(ReasonKind::unwanted);
            if (stock_.only_perhaps(problem_.formula.lines[edit.line].ingredient)) left_out.role = "perhaps";
            return left_out;
        }
        Reason none = make_reason(ReasonKind::not_there, {{"to be had", {}, problem_.start[edit.line], "g"}});
        // The list counts as bought: trimmed it is less.
        constexpr double trimmed = 0.95;
        const Offer offer = stock_.offer(*knowledge_.ingredient(problem_.formula.lines[edit.line].ingredient));
        if (offer.grams && problem_.start[edit.line] < trimmed * *offer.grams)
            none.figures.push_back({"on the list", {}, *offer.grams, "g"});
        // What swaps names for it, and lies further off than going without.
        for (const auto& move : problem_.moves)
            if (move.kind == MoveKind::stand_in && move.line == edit.line && none.foods.size() < most_named)
                if (const std::string food = name(move.food.ingredient); !contains(none.foods, food)) none.foods.push_back(food);
        return none;
    }

    const Problem& problem_;
    const std::vector<Goal>& asked_;
    const Compared& c_;
    const Stock& stock_;
    const Context& context_;
    const Knowledge& knowledge_;
};

std::vector<std::string> described(const Line& food, const Knowledge& knowledge) {
    std::vector<std::string> steps;
    for (const auto& step : food.prepared) steps.push_back(describe(step, knowledge));
    return steps;
}

// As it stands in the variant: what comes in for two lines is one of its lines, and is blanched once.
const Line& as_placed(const Line& food, const Formula& variant) {
    const auto placed =
        std::find_if(variant.lines.begin(), variant.lines.end(), [&](const Line& line) { return key_of(line) == key_of(food); });
    return placed == variant.lines.end() ? food : *placed;
}

// What a food holds by itself, and what the list says of its packet.
std::vector<std::string> allergens_of(Line food, const Stock& stock, const Knowledge& knowledge) {
    stock.tell(food);
    const Ingredient* ingredient = knowledge.ingredient(food.ingredient);
    std::vector<std::string> all = ingredient ? allergens_held(*ingredient) : std::vector<std::string>{};
    for (const auto& told : food.declared)
        if (!contains(all, told.allergen)) all.push_back(told.allergen);
    return all;
}

// Garlic beside the chives and garlic beside the leek, both for the wild garlic: it is weighed once.
bool adds_to_one_told(std::vector<Edit>& edits, const Edit& edit) {
    const auto told = std::find_if(edits.begin(), edits.end(), [&](const Edit& other) {
        return other.kind == edit.kind && other.line == edit.line && other.with == edit.with;
    });
    if (told == edits.end()) return false;
    told->grams_after += edit.grams_after;
    return true;
}

// What swaps names for a line that is left out, and comes in all the same for what was asked, is not passed over: it takes its place.
void tell_what_takes_the_place(std::vector<Edit>& edits, const Knowledge& knowledge) {
    for (auto& left_out : edits) {
        if (left_out.kind != EditKind::omit || left_out.reason.kind != ReasonKind::not_there) continue;
        for (const auto& edit : edits) {
            if (edit.kind != EditKind::add) continue;
            const std::string& food = knowledge.ingredient(edit.with)->names.front();
            if (!contains(left_out.reason.foods, food)) continue;
            left_out.reason.role = "covered";
            left_out.reason.about = food;
            left_out.reason.foods.clear();
            left_out.why = in_brief(left_out.reason);
            break;
        }
    }
}

}  // namespace

std::vector<Edit> explain_edits(const BuiltVariant& built, const Problem& problem, const std::vector<Goal>& asked, const Compared& compared,
                                const std::vector<Alternative>& alternatives, const Stock& stock, const Context& context) {
    const Reasons reasons(problem, asked, compared, stock, context);
    std::vector<Edit> edits;
    for (const auto& plain : built.edits) {
        Edit edit;
        edit.kind = plain.kind;
        if (plain.line != PlainEdit::none) edit.line = problem.formula.lines[plain.line].ingredient;
        if (plain.move != PlainEdit::none) {
            const Move& move = problem.moves[plain.move];
            const Line& food = plain.second ? move.second->food : move.food;
            edit.with = food.ingredient;
            edit.prepared = described(as_placed(food, built.formula), context.knowledge());
            for (const auto& other : alternatives) {
                if (other.move != plain.move || plain.second) continue;
                const Line& instead = problem.moves[other.instead].food;
                edit.alternatives.push_back({instead.ingredient, described(instead, context.knowledge()), kitchen_grams(other.grams, true),
                                             other.distance, allergens_of(instead, stock, context.knowledge())});
            }
        }
        edit.grams_before = plain.before;
        edit.grams_after = plain.after;
        edit.grams_left = plain.left;
        if (plain.kind == EditKind::process) {
            edit.does = *plain.process;
            edit.with = to_do(edit.does);
            edit.reason = reasons.for_process(*plain.process);
        } else if (plain.second) edit.reason = problem.moves[plain.move].second->why;
        else if (plain.kind == EditKind::add || (plain.move != PlainEdit::none && problem.moves[plain.move].kind == MoveKind::add))
            edit.reason = reasons.for_addition(plain);
        else edit.reason = plain.move != PlainEdit::none ? reasons.for_stand_in(plain) : reasons.for_line(plain);
        edit.why = in_brief(edit.reason);
        if (!plain.second || !adds_to_one_told(edits, edit)) edits.push_back(std::move(edit));
    }
    tell_what_takes_the_place(edits, context.knowledge());
    // Care in the making costs nothing and comes before anything is weighed.
    std::stable_partition(edits.begin(), edits.end(), [](const Edit& edit) { return edit.kind == EditKind::process; });
    return edits;
}

}  // namespace standin
