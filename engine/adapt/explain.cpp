#include "adapt/explain.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "evaluate/predict.hpp"
#include "substitute/conditions.hpp"
#include "substitute/dose.hpp"

namespace standin {
namespace {

std::string change(const char* what, double before, double after, const char* unit) {
    return std::string(what) + " " + figures(before) + " -> " + figures(after) + (*unit ? std::string(" ") + unit : "");
}

class Reasons {
public:
    Reasons(const Problem& problem, const Compared& compared, const Context& context)
        : problem_(problem), c_(compared), context_(context), knowledge_(context.knowledge()) {}

    std::string for_stand_in(const PlainEdit& edit) const {
        const Move& move = problem_.moves[edit.move];
        const auto stands =
            std::find_if(move.stands_for.begin(), move.stands_for.end(), [&](const StandsFor& s) { return s.line == edit.line; });
        if (stands == move.stands_for.end()) return {};
        const Line& line = problem_.formula.lines[edit.line];
        const double had = dose_of(context_.nominal().unit(line), stands->role) * line.grams.mid;
        const double brings = dose_of(move.per_gram, stands->role) * edit.after;
        std::string why = std::string(word(stands->role)) + ": the line brought " + figures(had) + " " +
                          std::string(dose_unit(stands->role)) + ", this brings " + figures(brings) + "; closeness " +
                          figures(stands->closeness);
        if (stands->swaps.size() > 1) why += " by way of " + name(knowledge_.records().swaps[stands->swaps.front()].to);
        const Swap& last = knowledge_.records().swaps[stands->swaps.back()];
        for (const auto& ask : conditions_ask(last, problem_.formula.process, knowledge_)) why += "; " + ask;
        if (!last.note.empty()) why += ". " + last.note;
        return why;
    }

    std::string for_line(const PlainEdit& edit) const {
        const Line& line = problem_.formula.lines[edit.line];
        const Role role = knowledge_.ingredient(line.ingredient)->roles.front();
        if (problem_.forced[edit.line] && edit.after <= problem_.start[edit.line] && edit.after < edit.before) return missing(edit);
        switch (role) {
            case Role::acid:
                return edit.after < edit.before
                           ? "less acid lets the meat bind: " +
                                 change("pH", c_.before.properties[Property::ph], c_.after.properties[Property::ph], "") +
                                 bind_part(c_.bind_before.acid_factor, c_.bind_after.acid_factor)
                           : change("sourness", c_.before.properties[Property::sourness_mmol_kg],
                                    c_.after.properties[Property::sourness_mmol_kg], "mmol/kg");
            case Role::heat:
                return change("heat", c_.before.properties[Property::heat_mg_kg], c_.after.properties[Property::heat_mg_kg], "mg/kg");
            case Role::salt:
                return for_salt();
            case Role::liquid:
                if (context_.nominal().unit(line)[Amount::titratable] > 0)
                    return change("sourness", c_.before.properties[Property::sourness_mmol_kg],
                                  c_.after.properties[Property::sourness_mmol_kg], "mmol/kg");
                break;
            case Role::fat:
            case Role::lean:
                return change("fat", c_.before.properties[Property::fat_pct], c_.after.properties[Property::fat_pct], "% of batch");
            default:
                break;
        }
        if (edit.after < edit.before && c_.bind_after.loose_water < c_.bind_before.loose_water - 0.002)
            return "less wet paste: loose water " + figures(100 * c_.bind_before.loose_water) + " -> " +
                   figures(100 * c_.bind_after.loose_water) + " g in 100 g, so the protein is less diluted";
        if (role == Role::green || role == Role::herb)
            return change("chlorophyll", c_.before.properties[Property::chlorophyll_mg_kg],
                          c_.after.properties[Property::chlorophyll_mg_kg], "mg/kg");
        return "follows the other changes";
    }

    std::string for_addition(const PlainEdit& edit) const {
        const Move& move = problem_.moves[edit.move];
        const Ingredient& food = *knowledge_.ingredient(move.food.ingredient);
        const Role role = food.roles.front();
        const double brings = dose_of(move.per_gram, role) * edit.after;
        std::string why = std::string(word(role)) + ": brings " + figures(brings) + " " + std::string(dose_unit(role));
        if (role == Role::binder)
            why += "; loose water " + figures(100 * c_.bind_before.loose_water) + " -> " + figures(100 * c_.bind_after.loose_water) +
                   " g in 100 g, " + change("bind", c_.before.properties[Property::bind], c_.after.properties[Property::bind], "of 100");
        return why;
    }

    std::string for_process(const ProcessChange& done) const {
        const auto factor = [&](double before, double after) { return "; bind factor " + figures(before) + " -> " + figures(after); };
        switch (done.about) {
            case ProcessChange::About::order:
                return "acid that meets unsalted meat keeps its protein from dissolving" +
                       factor(c_.bind_before.order_factor, c_.bind_after.order_factor);
            case ProcessChange::About::mixing:
                return "dissolved protein is the glue" + factor(c_.bind_before.mixing_factor, c_.bind_after.mixing_factor);
            case ProcessChange::About::cold:
                return "cold fat does not smear" + factor(c_.bind_before.cold_factor, c_.bind_after.cold_factor);
            case ProcessChange::About::plate:
                return "the plate decides how much protein is opened and how coarse the bite is" +
                       factor(c_.bind_before.plate_factor, c_.bind_after.plate_factor);
            case ProcessChange::About::rest:
                return "the acid turns leaf green to olive, hour by hour; " + greenness();
            case ProcessChange::About::rest_cold:
                return "the colder, the slower acid turns leaf green to olive; " + greenness();
            case ProcessChange::About::core:
                return "what is cooked hotter loses more; " + change("cook loss", c_.before.properties[Property::cook_loss_pct],
                                                                     c_.after.properties[Property::cook_loss_pct], "%");
        }
        return {};
    }

private:
    std::string greenness() const {
        return change("green", c_.before.properties[Property::greenness], c_.after.properties[Property::greenness], "");
    }

    std::string name(const std::string& id) const { return knowledge_.ingredient(id)->names.front(); }

    static std::string bind_part(double before, double after) {
        return ", which bind answers with a factor " + figures(before) + " -> " + figures(after);
    }

    std::string for_salt() const {
        const double before = c_.before.properties[Property::salt_pct], after = c_.after.properties[Property::salt_pct];
        const std::string salt = change("salt", before, after, "% of batch");
        if (std::abs(after - before) < 0.005 * before) return "the batch changes its weight, salt keeps its share: " + salt;
        if (after < before) return salt;
        const bool wetter = c_.variant[Amount::water] > 1.002 * c_.base[Amount::water];
        const bool binds = c_.bind_after.salt_factor > c_.bind_before.salt_factor;
        return salt + (binds ? ": more of it dissolves more of the meat's protein" : "") +
               (wetter ? std::string(binds ? ", and" : ":") + " the new water is salted alike" : "");
    }

    std::string missing(const PlainEdit& edit) const {
        if (problem_.excluded[edit.line]) return "you asked for none of it";
        std::string why = problem_.start[edit.line] > 0 ? "only " + figures(problem_.start[edit.line]) + " g to be had" : "not to be had";
        for (const auto& move : problem_.moves) {
            if (move.kind != MoveKind::raise) continue;
            for (const auto& stands : move.stands_for)
                if (stands.line == edit.line) return why + "; other lines make up for it where they can";
        }
        return why;
    }

    const Problem& problem_;
    const Compared& c_;
    const Context& context_;
    const Knowledge& knowledge_;
};

std::vector<std::string> described(const Line& food, const Knowledge& knowledge) {
    std::vector<std::string> steps;
    for (const auto& step : food.prepared) steps.push_back(describe(step, knowledge));
    return steps;
}

// "Or 98 g cornstarch": what would do as well, the rest of the plan hardly changed.
std::string or_else(const std::vector<Instead>& alternatives, const Knowledge& knowledge) {
    std::string text;
    for (const auto& other : alternatives) {
        text += (text.empty() ? "Or " : ", or ") + figures(other.grams) + " g " + knowledge.ingredient(other.with)->names.front();
        for (const auto& step : other.prepared) text += ", " + step;
    }
    return text;
}

}  // namespace

std::vector<Edit> explain_edits(const BuiltVariant& built, const Problem& problem, const Compared& compared,
                                const std::vector<Alternative>& alternatives, const Context& context) {
    const Reasons reasons(problem, compared, context);
    std::vector<Edit> edits;
    for (const auto& plain : built.edits) {
        Edit edit;
        edit.kind = plain.kind;
        if (plain.line != PlainEdit::none) edit.line = problem.formula.lines[plain.line].ingredient;
        if (plain.move != PlainEdit::none) {
            const Line& food = problem.moves[plain.move].food;
            edit.with = food.ingredient;
            edit.prepared = described(food, context.knowledge());
            for (const auto& other : alternatives) {
                if (other.move != plain.move) continue;
                const Line& instead = problem.moves[other.instead].food;
                edit.alternatives.push_back(
                    {instead.ingredient, described(instead, context.knowledge()), kitchen_grams(other.grams, true), other.distance});
            }
        }
        edit.grams_before = plain.before;
        edit.grams_after = plain.after;
        edit.grams_left = plain.left;
        if (plain.kind == EditKind::process) {
            edit.with = plain.process->what;
            edit.why = reasons.for_process(*plain.process);
        } else if (plain.kind == EditKind::add) edit.why = reasons.for_addition(plain);
        else edit.why = plain.move != PlainEdit::none ? reasons.for_stand_in(plain) : reasons.for_line(plain);
        if (const auto other = or_else(edit.alternatives, context.knowledge()); !other.empty())
            edit.why += (edit.why.empty() || edit.why.back() == '.' ? " " : ". ") + other;
        edits.push_back(std::move(edit));
    }
    return edits;
}

}  // namespace standin
