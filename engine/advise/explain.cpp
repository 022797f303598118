#include "advise/explain.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <string_view>

#include "advise/dose.hpp"
#include "models/cielab.hpp"
#include "predict/predict.hpp"

namespace standin {
namespace {

std::string change(const char* what, double before, double after, const char* unit) {
    return std::string(what) + " " + figures(before) + " -> " + figures(after) + (*unit ? std::string(" ") + unit : "");
}

class Reasons {
public:
    Reasons(const Problem& problem, const Compared& compared, const Context& context) : problem_(problem), c_(compared), context_(context), knowledge_(context.knowledge()) {}

    std::string for_stand_in(const PlainEdit& edit) const {
        const Move& move = problem_.moves[edit.move];
        const auto stands = std::find_if(move.stands_for.begin(), move.stands_for.end(), [&](const StandsFor& s) { return s.line == edit.line; });
        if (stands == move.stands_for.end()) return {};
        const Line& line = problem_.formula.lines[edit.line];
        const double had = dose_of(context_.middle.unit(line).front(), stands->role) * line.grams.mid;
        const double brings = dose_of(move.per_gram, stands->role) * edit.after;
        std::string why = std::string(word(stands->role)) + ": the line brought " + figures(had) + " " + std::string(dose_unit(stands->role)) + ", this brings " + figures(brings) + "; closeness " + figures(stands->closeness);
        if (stands->swaps.size() > 1) why += " by way of " + name(knowledge_.records().swaps[stands->swaps.front()].to);
        const Swap& last = knowledge_.records().swaps[stands->swaps.back()];
        for (const auto& need : last.needs) why += "; must be " + need;
        if (!last.note.empty()) why += ". " + last.note;
        return why;
    }

    std::string for_line(const PlainEdit& edit) const {
        const Line& line = problem_.formula.lines[edit.line];
        const Role role = knowledge_.ingredient(line.ingredient)->roles.front();
        if (problem_.forced[edit.line] && edit.after <= problem_.start[edit.line] && edit.after < edit.before) return missing(edit);
        switch (role) {
            case Role::acid: return edit.after < edit.before ? "less acid lets the meat bind: " + change("pH", c_.before.properties[Property::ph], c_.after.properties[Property::ph], "") + bind_part(c_.bind_before.acid_factor, c_.bind_after.acid_factor)
                                                             : change("sourness", c_.before.properties[Property::sourness_mmol_kg], c_.after.properties[Property::sourness_mmol_kg], "mmol/kg");
            case Role::heat: return change("heat", c_.before.properties[Property::heat_mg_kg], c_.after.properties[Property::heat_mg_kg], "mg/kg");
            case Role::salt: return "keeps salt where it was: " + change("", c_.before.properties[Property::salt_pct], c_.after.properties[Property::salt_pct], "% of batch");
            case Role::fat:
            case Role::lean: return change("fat", c_.before.properties[Property::fat_pct], c_.after.properties[Property::fat_pct], "% of batch");
            default: break;
        }
        if (edit.after < edit.before && c_.bind_after.loose_water < c_.bind_before.loose_water - 0.002)
            return "less wet paste: loose water " + figures(100 * c_.bind_before.loose_water) + " -> " + figures(100 * c_.bind_after.loose_water) + " g in 100 g, so the protein is less diluted";
        if (role == Role::green || role == Role::herb) return change("chlorophyll", c_.before.properties[Property::chlorophyll_mg_kg], c_.after.properties[Property::chlorophyll_mg_kg], "mg/kg");
        return "follows the other changes";
    }

    std::string for_addition(const PlainEdit& edit) const {
        const Move& move = problem_.moves[edit.move];
        const Ingredient& food = *knowledge_.ingredient(move.food.ingredient);
        const Role role = food.roles.front();
        const double brings = dose_of(move.per_gram, role) * edit.after;
        std::string why = std::string(word(role)) + ": brings " + figures(brings) + " " + std::string(dose_unit(role));
        if (role == Role::binder) why += "; loose water " + figures(100 * c_.bind_before.loose_water) + " -> " + figures(100 * c_.bind_after.loose_water) + " g in 100 g, " + change("bind", c_.before.properties[Property::bind], c_.after.properties[Property::bind], "of 100");
        return why;
    }

    std::string for_process(const PlainEdit& edit) const {
        const auto factor = [&](double before, double after) { return "; bind factor " + figures(before) + " -> " + figures(after); };
        if (edit.process.find("first") != std::string::npos) return "acid that meets unsalted meat keeps its protein from dissolving" + factor(c_.bind_before.order_factor, c_.bind_after.order_factor);
        if (edit.process.find("mix") != std::string::npos) return "dissolved protein is the glue" + factor(c_.bind_before.mixing_factor, c_.bind_after.mixing_factor);
        return "cold fat does not smear" + factor(c_.bind_before.cold_factor, c_.bind_after.cold_factor);
    }

private:
    std::string name(const std::string& id) const { return knowledge_.ingredient(id)->names.front(); }

    static std::string bind_part(double before, double after) {
        return ", which bind answers with a factor " + figures(before) + " -> " + figures(after);
    }

    std::string missing(const PlainEdit& edit) const {
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

struct Says {
    std::string_view what, more, less;
};

// How a residual reads at the table. What does not taste of anything by itself (water, protein, pH) stays out.
constexpr std::array<Says, 14> words{{
    {"salt", "saltier", "less salty"},
    {"sourness", "sharper", "less sharp"},
    {"fat", "richer", "leaner"},
    {"bind", "holds together better", "holds together less"},
    {"firmness", "firmer", "softer"},
    {"cook loss", "loses more in the pan", "loses less in the pan"},
    {"heat", "hotter", "milder"},
    {"colour, rested", "different in colour", "different in colour"},
    {"colour, cooked", "different in colour when cooked", "different in colour when cooked"},
    {"aroma", "different in aroma", "different in aroma"},
    {"nuts", "nuttier", "less nutty"},
    {"herbs", "more herbs", "fewer herbs"},
    {"alliums", "more garlic and onion", "less garlic and onion"},
    {"spices", "spicier", "less spiced"},
}};

std::string_view degree(double size) { return size < 0.5 ? "barely" : size < 1 ? "a little" : size < 2 ? "noticeably" : "clearly"; }

}  // namespace

std::string figures(double value) {
    const double size = std::abs(value);
    const int decimals = size >= 100 ? 0 : size >= 10 ? 1 : 2;
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    return text;
}

std::string_view word(EditKind kind) {
    constexpr std::array<std::string_view, 7> all{"replace", "split", "reduce", "raise", "omit", "add", "process"};
    return all[static_cast<std::size_t>(kind)];
}

std::vector<Edit> explain_edits(const BuiltVariant& built, const Problem& problem, const Compared& compared, const Context& context) {
    const Reasons reasons(problem, compared, context);
    std::vector<Edit> edits;
    for (const auto& plain : built.edits) {
        Edit edit;
        edit.kind = plain.kind;
        if (plain.line != PlainEdit::none) edit.line = problem.formula.lines[plain.line].ingredient;
        if (plain.move != PlainEdit::none) {
            const Line& food = problem.moves[plain.move].food;
            edit.with = food.ingredient;
            for (const auto& step : food.prepared) edit.prepared.push_back(describe(step, context.knowledge()));
        }
        edit.grams_before = plain.before;
        edit.grams_after = plain.after;
        if (plain.kind == EditKind::process) {
            edit.with = plain.process;
            edit.why = reasons.for_process(plain);
        } else if (plain.kind == EditKind::add) edit.why = reasons.for_addition(plain);
        else edit.why = plain.move != PlainEdit::none ? reasons.for_stand_in(plain) : reasons.for_line(plain);
        edits.push_back(std::move(edit));
    }
    return edits;
}

std::string table_sentence(const Yardstick& yardstick, const Compared& c) {
    struct Told {
        double size;
        std::string text;
    };
    std::vector<Told> told;
    const auto tell = [&](std::string_view what, double value) {
        const auto* says = std::find_if(words.begin(), words.end(), [&](const Says& s) { return s.what == what; });
        if (says != words.end() && std::abs(value) >= 0.3) told.push_back({std::abs(value), std::string(degree(std::abs(value))) + " " + std::string(value > 0 ? says->more : says->less)});
    };
    for (const auto& residual : yardstick.residuals(c.variant, c.after)) tell(residual.what, residual.value);
    // What a want moved is left out of the residuals; at the table it is the first thing to be noticed.
    for (const auto& goal : yardstick.goals()) {
        if (!yardstick.wanted(goal.property) || !(yardstick.step(goal.property) > 0)) continue;
        const double moved = (c.after.properties[goal.property] - c.before.properties[goal.property]) / yardstick.step(goal.property);
        const std::string_view what = goal.property == Property::heat_mg_kg ? "heat" : goal.property == Property::bind ? "bind" : goal.property == Property::firmness ? "firmness" : goal.property == Property::sourness_mmol_kg ? "sourness" : goal.property == Property::fat_pct ? "fat" : goal.property == Property::salt_pct ? "salt" : goal.property == Property::cook_loss_pct ? "cook loss" : "";
        tell(what, moved);
    }
    std::stable_sort(told.begin(), told.end(), [](const Told& a, const Told& b) { return a.size > b.size; });
    if (told.empty()) return "Nobody at the table should notice.";
    std::string sentence = "At the table: ";
    for (std::size_t i = 0; i < std::min<std::size_t>(told.size(), 4); ++i) sentence += (i ? ", " : "") + told[i].text;
    return sentence + ".";
}

std::vector<std::string> what_gives_back(const Formula& base, const Yardstick& yardstick, const Compared& c, const SwapGraph& graph, const Stock& stock, const Context& context) {
    constexpr double worth_saying = 0.5, zesty = 2, hardly_sour = 0.15;
    std::vector<std::string> all;
    const double before = c.before.properties[Property::sourness_mmol_kg], after = c.after.properties[Property::sourness_mmol_kg];
    const double lost = (before - after) / std::max(yardstick.step(Property::sourness_mmol_kg), 1e-9);
    if (lost < worth_saying) return all;
    all.push_back("Brightness lost: sourness " + figures(before) + " -> " + figures(after) + " mmol/kg, " + figures(lost) + " noticeable differences.");
    const Knowledge& knowledge = context.knowledge();
    std::vector<std::string> bright;
    for (const auto& line : base.lines) {
        const double acid = dose_of(context.middle.unit(line).front(), Role::acid);
        if (acid <= 0) continue;
        std::size_t index = static_cast<std::size_t>(knowledge.ingredient(line.ingredient) - knowledge.records().ingredients.data());
        for (const auto& path : graph.from(Role::acid, index)) {
            const Ingredient& to = knowledge.records().ingredients[path.to];
            Line food;
            food.ingredient = to.id;
            const Material& unit = context.middle.unit(food).front();
            const bool aroma_only = unit[AromaNote::citrus] >= zesty && unit[Amount::titratable] < hardly_sour * acid;
            const bool welcome = !stock.offer(to).excluded;
            if (aroma_only && welcome && std::find(bright.begin(), bright.end(), to.names.front()) == bright.end()) bright.push_back(to.names.front() + (stock.listed() && stock.can_bring(to) ? " (on hand)" : ""));
        }
    }
    std::string list;
    for (std::size_t i = 0; i < std::min<std::size_t>(bright.size(), 3); ++i) list += (i ? ", " : "") + bright[i];
    if (!list.empty()) all.push_back("Gives some back as aroma, without acid in the mass: " + list + ", 2-4 g to the kilogram (common practice).");
    all.push_back("Gives the sourness itself back: the acid left out, brushed on after cooking or served beside it, where it cannot touch the bind (common practice).");
    return all;
}

}  // namespace standin
