#include "adapt/care.hpp"

#include <algorithm>

#include "adapt/met.hpp"
#include "core/contains.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/effects.hpp"
#include "knowledge/tissue.hpp"

namespace standin {
namespace {

constexpr double long_enough_min = 2;  // of a blanch, for leaves; common practice
constexpr double clearly_longer = 1.4;
constexpr double some = 0.02;    // of the batch: less of a leaf wets no paste
constexpr double enough = 0.25;  // noticeable differences

class CarefulHands {
public:
    CarefulHands(const Formula& formula, const Distance& distance, const Context& context)
        : care_{formula, {}}, distance_(distance), context_(context), knowledge_(context.knowledge()) {}

    Care all() && {
        try_on(ReasonKind::short_blanch, [&](Line& line) { return shorten_blanch(line); });
        try_on(ReasonKind::squeeze, [&](Line& line) { return squeeze(line); });
        return std::move(care_);
    }

private:
    // All leaves at once, if that is felt.
    template <class Change>
    void try_on(ReasonKind kind, const Change& change) {
        Formula better = care_.formula;
        Reason reason = make_reason(kind);
        longest_ = 0;
        for (auto& line : better.lines)
            if (!line.keep && is_leaf(line) && change(line)) reason.foods.push_back(knowledge_.ingredient(line.ingredient)->names.front());
        if (reason.foods.empty() || !brings_nearer(better)) return;
        if (kind == ReasonKind::short_blanch) reason.figures = {{"blanch", longest_, long_enough_min, "min"}};
        care_.formula = std::move(better);
        care_.done.push_back(std::move(reason));
    }

    bool is_leaf(const Line& line) const {
        const Tissue tissue = knowledge_.ingredient(line.ingredient)->tissue;
        return tissue == Tissue::thin_leaf || tissue == Tissue::thick_leaf;
    }

    // A leaf that is boiled because it would hurt raw stays boiled.
    bool boiled_for_safety(const std::string& id) const {
        const auto& hazards = knowledge_.records().lexicon.hazards;
        return std::any_of(hazards.begin(), hazards.end(), [&](const Hazard& h) { return contains(h.of, id); });
    }

    bool shorten_blanch(Line& line) {
        if (boiled_for_safety(line.ingredient)) return false;
        bool changed = false;
        for (auto& step : line.prepared) {
            if (step.preparation != "blanched" || step.minutes.value_or(0) < clearly_longer * long_enough_min) continue;
            longest_ = std::max(longest_, *step.minutes);
            step.minutes = long_enough_min;
            changed = true;
        }
        return changed;
    }

    bool squeeze(Line& line) const {
        const Ingredient& leaf = *knowledge_.ingredient(line.ingredient);
        const Preparation* squeezed = knowledge_.preparation("squeezed");
        if (!has_step(line.prepared, "blanched") || has_step(line.prepared, "squeezed") || contains(leaf.already, std::string("squeezed")))
            return false;
        if (!squeezed || !effect_on(*squeezed, leaf.tissue)) return false;
        if (context_.nominal().unit(line)[Amount::mass] * line.grams.mid < some * distance_.base_material()[Amount::mass]) return false;
        line.prepared.push_back({"squeezed", std::nullopt});
        return true;
    }

    bool brings_nearer(const Formula& better) const {
        const State before = NominalBatch(care_.formula, context_.nominal()).state(),
                    after = NominalBatch(better, context_.nominal()).state();
        return std::any_of(distance_.goals().begin(), distance_.goals().end(),
                           [&](const Goal& g) { return g.kind != Goal::Kind::equal && nearer_by(g, distance_, before, after) >= enough; });
    }

    Care care_;
    const Distance& distance_;
    const Context& context_;
    const Knowledge& knowledge_;
    double longest_ = 0;  // minutes
};

}  // namespace

Care prepared_with_care(const Formula& formula, const Distance& distance, const Context& context) {
    return CarefulHands(formula, distance, context).all();
}

}  // namespace standin
