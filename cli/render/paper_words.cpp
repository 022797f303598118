#include "render/paper_words.hpp"

#include "words.hpp"

namespace standin::cli {
namespace {

std::string amounts(const LabelDraft& draft, std::string NutritionRow::*says) {
    std::string text;
    for (const auto& row : draft.nutrition) text += (text.empty() ? "" : ", ") + row.name + " " + row.*says;
    return text;
}

}  // namespace

std::string shares_sentence(const LabelDraft& draft) {
    std::vector<std::string> shares;
    for (const auto& share : draft.named) shares.push_back(share.says);
    return "Shares: " + listed(shares) + ". " + draft.named_says;
}

std::string nutrition_sentence(const LabelDraft& draft) {
    if (draft.nutrition.empty()) return "";
    return "Per 100 g raw: " + amounts(draft, &NutritionRow::raw_says) + ". Cooked: " + amounts(draft, &NutritionRow::cooked_says) + ".";
}

std::string nine_in_ten(const Band& band, const NutritionRow& row) {
    const int decimals = row.unit == "g" ? (row.id == "salt_g" ? 2 : 1) : 0;
    return "(" + number(band.low, decimals) + "-" + number(band.high, decimals) + ")";
}

}  // namespace standin::cli
