#include "formula/food/kin_measure.hpp"

#include <algorithm>

#include "core/contains.hpp"
#include "formula/food/prepared_text.hpp"
#include "formula/words/changes_nothing.hpp"

namespace standin {
namespace {

constexpr std::size_t fewest = 2;          // kin that a formula takes their word of. Judgement
constexpr double furthest = 6;             // highest over lowest of them. Judgement
constexpr double least = 0.6, most = 1.6;  // of the middle: kin never tell it closer. Judgement
constexpr std::size_t many = 5;            // from here on the lightest and the heaviest of them are left out

std::optional<Band> middle(std::vector<double> grams, KinAgree agree) {
    if (grams.empty() || (agree == KinAgree::well && grams.size() < fewest)) return std::nullopt;
    std::sort(grams.begin(), grams.end());
    if (grams.size() >= many) grams = {grams.begin() + 1, grams.end() - 1};
    if (agree == KinAgree::well && grams.back() > furthest * grams.front()) return std::nullopt;
    const double mid = grams[grams.size() / 2];
    return Band{std::min(grams.front(), least * mid), mid, std::max(grams.back(), most * mid)};
}

template <typename Is>
std::vector<double> weights_of(const AmountText& amount, const std::vector<std::string>& words, const Knowledge& knowledge, Is is_kin) {
    std::vector<double> all;
    for (const auto& other : knowledge.records().ingredients)
        if (is_kin(other))
            if (const auto weighed = weigh(amount, other, words)) all.push_back(weighed->grams.mid);
    return all;
}

bool has_unit(const AmountText& amount) {
    const Unit* unit = amount.parts.front().unit;
    return amount.parts.size() == 1 && unit && (unit->dimension == Dimension::count || unit->dimension == Dimension::volume);
}

}  // namespace

std::optional<Band> weight_by_kin(const AmountText& amount, const Ingredient& ingredient, const std::vector<std::string>& words,
                                  KinAgree agree, const Knowledge& knowledge) {
    if (!has_unit(amount) || amount.parts.front().unit->word == "piece") return std::nullopt;
    return middle(weights_of(amount, words, knowledge,
                             [&](const Ingredient& other) {
                                 return other.family == ingredient.family && other.tissue == ingredient.tissue &&
                                        other.roles.front() == ingredient.roles.front() &&
                                        other.already.empty() == ingredient.already.empty();
                             }),
                  agree);
}

std::optional<Band> weight_when_prepared(const MeasuredFood& food, const std::vector<std::string>& words) {
    const auto& [name, amount, notes, knowledge] = food;
    if (notes.grams || !has_unit(amount) || amount.parts.front().unit->dimension != Dimension::volume) return std::nullopt;
    const Ingredient& ingredient = *name.ingredient;
    std::vector<std::string> done;
    for (const auto& step : name.before.prepared)
        if (!changes_nothing(step, ingredient, knowledge)) done.push_back(step.preparation);
    if (done.empty()) return std::nullopt;
    const bool dried = contains(done, std::string("dried"));
    const auto bought_so = [&](const Ingredient& other) {
        return other.family == ingredient.family && other.roles.front() == ingredient.roles.front() &&
               other.tissue == (dried ? Tissue::dry : ingredient.tissue) &&
               std::all_of(done.begin(), done.end(), [&](const std::string& step) { return contains(other.already, step); });
    };
    return middle(weights_of(amount, words, knowledge, bought_so), dried ? KinAgree::well : KinAgree::anyhow);
}

Reason by_kin(const Ingredient& ingredient, const AmountText& amount, const Band& grams) {
    Reason reason = make_reason(ReasonKind::by_measure, {{"weight", {}, grams.mid, "g"}}, {ingredient.names.front()});
    reason.figures.front().low = grams.low, reason.figures.front().high = grams.high;
    reason.role = amount.parts.front().unit->word;
    return reason;
}

}  // namespace standin
