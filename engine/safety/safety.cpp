#include "safety/safety.hpp"

#include <algorithm>

#include "evaluate/predict.hpp"
#include "knowledge/index/line_name.hpp"
#include "knowledge/records/tissue.hpp"
#include "knowledge/words/hot_holding.hpp"
#include "safety/allergens.hpp"
#include "safety/caps.hpp"
#include "safety/cautions.hpp"
#include "safety/core_temperature.hpp"
#include "safety/goes_without.hpp"
#include "safety/label.hpp"
#include "safety/promises.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr const char* likened_id = "likened";

bool grows(const Ingredient& food) { return is_leaf(food.tissue) || food.family == "herbs" || food.family == "sour-fruit"; }

// The worse of two ways to say the same stays.
void keep_cautions(std::vector<CautionText>& cautions, const std::vector<CautionText>& general) {
    for (const auto& caution : general) {
        const auto same = std::find_if(cautions.begin(), cautions.end(), [&](const CautionText& c) { return c.id == caution.id; });
        if (same == cautions.end()) cautions.push_back(caution);
        else if (same->degree.empty() && !caution.degree.empty()) *same = caution;
    }
}

void keep_allergens(std::vector<AllergenText>& allergens, const std::vector<AllergenText>& general) {
    for (const auto& allergen : general)
        if (std::none_of(allergens.begin(), allergens.end(), [&](const AllergenText& a) { return a.allergen == allergen.allergen; }))
            allergens.push_back(allergen);
}

// A core that a note or the method says and that is too little for these foods.
void add_cooked_too_cool(std::vector<CautionText>& all, const Prediction& prediction) {
    for (const auto& told : prediction.read_as) {
        if (told.kind != ReasonKind::cooked_too_cool) continue;
        Reason reason = told;
        reason.role = "core-said";
        all.push_back({"core-said", in_full(reason), "foodsafety-gov-temperature", {}, in_full(reason), reason, {}});
    }
}

// What the words of lines, lists and method tell of a danger, in the order they stand; words that tell the same are told together.
std::vector<CautionText> told_cautions(const Prediction& prediction) {
    std::vector<CautionText> all;
    for (const auto& told : prediction.read_as) {
        if (told.kind != ReasonKind::hazard_told || told.role == "said-free") continue;  // the packet tells, as of any such food
        const auto same = std::find_if(all.begin(), all.end(), [&](const CautionText& c) { return c.degree == told.note; });
        if (same == all.end()) {
            all.push_back({"hazard-told", in_full(told), "judgement", {}, told.note, told, {}});
        } else if (("\"" + same->reason.about + "\"").find("\"" + told.about + "\"") == std::string::npos) {
            same->reason.about += "\" and \"" + told.about;
            same->text = in_full(same->reason);
        }
    }
    return all;
}

// How hot hot food is held, by the rules that were chosen; what is held hot enough by them is no danger.
void hold_by_rules(std::vector<Reason>& read_as, const Knowledge& knowledge, std::string_view rules) {
    const RuleSet* chosen = knowledge.rules(rules);
    if (!chosen || !chosen->hot_holding) chosen = knowledge.rules("general");
    if (!chosen || !chosen->hot_holding) return;
    const double hot = chosen->hot_holding->band.mid;
    constexpr double rounding = 0.3;  // C: 57 for 57.2
    std::erase_if(read_as, [&](Reason& told) {
        const Figure* held = hot_holding_of(told);
        return held && held->before && *held->before >= hot - rounding;
    });
    for (auto& told : read_as) change_hot_holding(told, hot);
}

// Of what goes under another's name nothing is known: said before all other dangers.
void add_likened(std::vector<CautionText>& all, const Formula& formula, const Knowledge& knowledge) {
    for (const auto& line : formula.lines) {
        if (line.called.empty()) continue;
        const Ingredient& like = *knowledge.ingredient(line.ingredient);
        Reason reason = make_reason(ReasonKind::likened, {}, {line.called, like.names.front()});
        reason.about = likened_id;
        if (grows(like)) reason.role = "grows";
        all.push_back(caution_text(std::move(reason), "judgement", {like.id}, line.called));
    }
}

}  // namespace

void mark_safety(Prediction& prediction, const Formula& formula, const Evaluator& evaluator, std::string_view rules) {
    mark_safety(prediction, formula, evaluator.knowledge(), rules);
    if (!evaluator.general()) return;
    Prediction general = predict_formula(formula, *evaluator.general());
    mark_safety(general, formula, evaluator.general()->knowledge(), rules);
    keep_cautions(prediction.cautions, general.cautions);
    keep_allergens(prediction.allergens, general.allergens);
    prediction.core = std::max(prediction.core, general.core);
    prediction.lethality = general.lethality;
    prediction.warming_h = general.warming_h;
}

void mark_safety(Prediction& prediction, const Formula& formula, const Knowledge& knowledge, std::string_view rules) {
    prediction.overlay = knowledge.overlay();
    hold_by_rules(prediction.read_as, knowledge, rules);
    const CoreTemperature demanded = demanded_core(prediction, knowledge, rules);
    const CoreTemperature asked = asked_core(demanded, prediction, formula.process, knowledge);
    prediction.core = {asked.core_c, asked.hold_s};
    // What the method cooks at is told only where it is too little for these foods.
    constexpr double rounding = 0.3;  // C: 71 for 71.1, 74 for 73.9
    std::erase_if(prediction.read_as, [&](const Reason& told) {
        return told.kind == ReasonKind::cooked_too_cool && !told.figures.empty() &&
               told.figures.front().after >= demanded.core_c - rounding;
    });
    for (std::size_t l = 0; l < std::min(prediction.lines.size(), formula.lines.size()); ++l)
        prediction.lines[l].may_hold = may_hold_as_bought(formula.lines[l], knowledge);
    prediction.allergens = allergens_of(prediction, knowledge);
    prediction.cautions = cautions_of(prediction, formula.process, knowledge, rules);
    auto special = told_cautions(prediction);
    add_cooked_too_cool(special, prediction);
    for (auto& promise : broken_promises(formula, knowledge)) special.push_back(std::move(promise));
    if (const RuleSet* chosen = knowledge.rules(rules))
        for (auto& cap : cap_cautions(prediction, knowledge, *chosen)) special.push_back(std::move(cap));
    add_likened(special, formula, knowledge);
    // What a guest must not eat and is in it goes before all other dangers, and what is not known here before them.
    std::stable_partition(special.begin(), special.end(), [](const CautionText& c) { return c.id == guest_clash_id; });
    std::stable_partition(special.begin(), special.end(), [](const CautionText& c) { return c.id == likened_id; });
    // After the core, before everything else.
    const auto first = prediction.cautions.begin() + (prediction.cautions.empty() ? 0 : 1);
    prediction.cautions.insert(first, special.begin(), special.end());
    std::vector<std::string> of_raw_milk;
    for (const auto& line : formula.lines)
        if (is_of_raw_milk(line)) of_raw_milk.push_back(line.ingredient);
    prediction.label = label_of(prediction, knowledge, rules, of_raw_milk);
}

bool is_of_safety(const Reason& told) {
    switch (told.kind) {
        case ReasonKind::hazard_told:
        case ReasonKind::cooked_too_cool:
        case ReasonKind::allergen_beside:
        case ReasonKind::meat_beside:
            return true;
        case ReasonKind::title_told:
            return told.about.empty();  // else a name
        case ReasonKind::of_the_recipe:
            return !told.role.empty();  // who eats it
        default:
            return false;
    }
}

}  // namespace standin
