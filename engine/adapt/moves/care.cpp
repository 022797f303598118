#include "adapt/moves/care.hpp"

#include <algorithm>
#include <array>

#include "adapt/distance/met.hpp"
#include "adapt/goals/wants.hpp"
#include "adapt/moves/making.hpp"
#include "core/contains.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/effects.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

class CarefulHands {
public:
    CarefulHands(const Formula& formula, const Distance& distance, const Stock& stock, const Context& context)
        : care_{formula, {}}, distance_(distance), stock_(stock), context_(context), knowledge_(context.knowledge()) {}

    Care all() && {
        try_on(ReasonKind::short_blanch, [&](Line& line) { return shorten_blanch(line); });
        try_on(ReasonKind::squeeze, [&](Line& line) { return squeeze(line); });
        try_on(
            ReasonKind::squeeze, [&](Line& line) { return blanch_and_squeeze(line); }, "raw");
        try_on(
            ReasonKind::squeeze, [&](Line& line) { return squeeze_grated(line); }, "grated");
        try_on(
            ReasonKind::squeeze, [&](Line& line) { return roast(line); }, "fruit");
        try_on(ReasonKind::seeds_in, [&](Line& line) { return leave_the_seeds(line); });
        return std::move(care_);
    }

private:
    // All leaves at once, if that is felt.
    template <class Change>
    void try_on(ReasonKind kind, const Change& change, const std::string& about = {}) {
        const double long_enough_min = context_.constant("advice.care.blanch");
        Formula better = care_.formula;
        Reason reason = make_reason(kind);
        reason.about = about;
        longest_ = 0;
        for (auto& line : better.lines)
            if (!line.keep && stock_.offer(*knowledge_.ingredient(line.ingredient)).on_hand && change(line))
                reason.foods.push_back(knowledge_.ingredient(line.ingredient)->names.front());
        if (reason.foods.empty() || !brings_nearer(better)) return;
        if (kind == ReasonKind::short_blanch) reason.figures = {{"blanch", longest_, long_enough_min, "min"}};
        care_.formula = std::move(better);
        care_.done.push_back(std::move(reason));
    }

    bool is_leaf(const Line& line) const {
        const Tissue tissue = knowledge_.ingredient(line.ingredient)->tissue;
        return standin::is_leaf(tissue);
    }

    // A leaf that is boiled because it would hurt raw stays boiled.
    bool boiled_for_safety(const std::string& id) const {
        const auto& hazards = knowledge_.records().lexicon.hazards;
        return std::any_of(hazards.begin(), hazards.end(), [&](const Hazard& h) { return contains(h.of, id); });
    }

    bool shorten_blanch(Line& line) {
        const double long_enough_min = context_.constant("advice.care.blanch");
        const double clearly_longer = context_.constant("advice.care.blanch-too-long");
        if (!is_leaf(line) || boiled_for_safety(line.ingredient)) return false;
        bool changed = false;
        for (auto& step : line.prepared) {
            const bool in_the_pot = step.preparation == "blanched" || step.preparation == "boiled";
            if (!in_the_pot || step.minutes.value_or(0) < clearly_longer * long_enough_min) continue;
            longest_ = std::max(longest_, *step.minutes);
            step = {"blanched", long_enough_min};
            changed = true;
        }
        return changed;
    }

    bool squeeze(Line& line) const {
        const Ingredient& leaf = *knowledge_.ingredient(line.ingredient);
        const bool limp = has_step(line.prepared, "blanched") || has_step(line.prepared, "frozen-thawed");
        if (!is_leaf(line) || !limp || contains(leaf.already, std::string("squeezed"))) return false;
        if (!can_be(line, "squeezed") || !wets_the_paste(line)) return false;
        line.prepared.push_back({"squeezed", std::nullopt});
        return true;
    }

    // A raw leaf that is there for its bulk; a bunch of herbs stays raw.
    bool blanch_and_squeeze(Line& line) const {
        const double wilting_min = context_.constant("advice.care.wilt");
        const Ingredient& leaf = *knowledge_.ingredient(line.ingredient);
        const bool herb = contains(leaf.roles, Role::herb);
        if (!is_leaf(line) || leaf.roles.front() != Role::green || (herb && !by_the_armful(line)) ||
            !(wets_the_mass() || (keeps_green() && !herb)) || !only_cut(line) || line.weighed_prepared || !leaf.already.empty() ||
            !wets_the_paste(line))
            return false;
        if (!can_be(line, "blanched") || !can_be(line, "squeezed")) return false;
        // The knife comes after the pot.
        line.prepared.insert(line.prepared.begin(), {{"blanched", wilting_min}, {"squeezed", std::nullopt}});
        return true;
    }

    // So much raw parsley is bulk, and the page tells to blanch and squeeze it.
    bool by_the_armful(const Line& line) const {
        return context_.nominal().unit(line)[Amount::mass] * line.grams.mid >=
               context_.constant("advice.care.armful") * distance_.base_material()[Amount::mass];
    }

    // Tomatillo and tomato: in the oven the water goes, and nothing of the body.
    bool roast(Line& line) const {
        const Ingredient& fruit = *knowledge_.ingredient(line.ingredient);
        if (fruit.tissue != Tissue::fruit || !belongs(fruit, "nightshade", knowledge_) || !wets_the_mass() || !only_cut(line) ||
            line.weighed_prepared || !fruit.already.empty() || !wets_the_paste(line) || !can_be(line, "roasted"))
            return false;
        line.prepared.insert(line.prepared.begin(), {"roasted", std::nullopt});
        return true;
    }

    static bool only_cut(const Line& line) {
        constexpr std::array<std::string_view, 4> cuts{"chopped", "sliced", "minced", "pureed"};
        return std::all_of(line.prepared.begin(), line.prepared.end(),
                           [&](const Prepared& step) { return std::find(cuts.begin(), cuts.end(), step.preparation) != cuts.end(); });
    }

    bool squeeze_grated(Line& line) const {
        const bool grated = has_step(line.prepared, "grated") && !is_leaf(line);
        if (!grated || !wets_the_mass() || line.weighed_prepared || !can_be(line, "squeezed") || !wets_the_paste(line)) return false;
        line.prepared.push_back({"squeezed", std::nullopt});
        return true;
    }

    // The seeds and their white ribs hold most of the heat; who wants it hotter leaves them in before he buys another chile.
    bool leave_the_seeds(Line& line) const {
        if (!any_asks(distance_.goals(), Property::heat_mg_kg, Goal::Kind::at_least) || !has_step(line.prepared, "seeded")) return false;
        std::erase_if(line.prepared, [](const Prepared& step) { return step.preparation == "seeded"; });
        return true;
    }

    bool can_be(const Line& line, const std::string& step) const {
        const Preparation* preparation = knowledge_.preparation(step);
        return preparation && !has_step(line.prepared, step) &&
               effect_on(*preparation, knowledge_.ingredient(line.ingredient)->tissue) != nullptr;
    }

    bool wets_the_paste(const Line& line) const {
        const double some = context_.constant("advice.care.wets");
        return context_.nominal().unit(line)[Amount::mass] * line.grams.mid >= some * distance_.base_material()[Amount::mass];
    }

    // A leaf that is blanched keeps its green where acid or a night in the cold would turn it.
    bool keeps_green() const { return any_asks(distance_.goals(), Property::greenness, Goal::Kind::at_least); }

    // Whether what was asked suffers from loose water.
    bool wets_the_mass() const {
        const auto& goals = distance_.goals();
        return asks_firmer(goals) || any_asks(goals, Property::cook_loss_pct, Goal::Kind::at_most);
    }

    // As the maker makes it, or as it will be made: where acid meets the meat unsalted nothing shows that leaves are dry.
    bool brings_nearer(const Formula& better) const {
        return nearer_as_made(care_.formula, better) || nearer_as_made(well_made(care_.formula), well_made(better));
    }

    bool nearer_as_made(const Formula& formula, const Formula& better) const {
        const double enough = context_.constant("advice.care.felt");
        const State before = NominalBatch(formula, context_.nominal()).state(), after = NominalBatch(better, context_.nominal()).state();
        return std::any_of(distance_.goals().begin(), distance_.goals().end(),
                           [&](const Goal& g) { return g.kind != Goal::Kind::equal && nearer_by(g, distance_, before, after) >= enough; });
    }

    static Formula well_made(Formula formula) {
        formula.process.order = Order::salt_first;
        formula.process.mixing_min = std::max(formula.process.mixing_min.value_or(0), tacky_min);
        formula.process.mixed_at_c = cold_c;
        return formula;
    }

    Care care_;
    const Distance& distance_;
    const Stock& stock_;
    const Context& context_;
    const Knowledge& knowledge_;
    double longest_ = 0;  // minutes
};

}  // namespace

Care prepared_with_care(const Formula& formula, const Distance& distance, const Stock& stock, const Context& context) {
    return CarefulHands(formula, distance, stock, context).all();
}

}  // namespace standin
