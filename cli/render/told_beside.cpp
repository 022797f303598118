#include "render/told_beside.hpp"

#include <algorithm>
#include <string_view>

#include "render/allergen_words.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"
#include "render/union.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {

ToldBeside told_beside(const Prediction& predicted) {
    const Prediction prediction = told_in(predicted, Units::metric);
    ToldBeside told{allergens_in_lines(prediction.allergens), {}, {}};
    for (const auto& caution : with_briefs(prediction.cautions)) {
        const bool of_words = is_of_these_words(caution);
        if (of_words) told.of_words.push_back(caution.text);
        if (of_words) told.cautions.push_back(caution.text);
        else if (!is_of_every_batch(caution.id) && caution.id != "check-label") told.cautions.push_back(caution.brief);
    }
    return told;
}

std::string with_told(const std::string& formula_text, const ToldBeside& told) {
    constexpr std::string_view key = "told when written: ", method = "\nMethod\n";
    std::string lines;
    for (const auto& allergen : told.allergens) lines += std::string(key) + "allergen " + allergen + "\n";
    for (const auto& caution : told.cautions) lines += std::string(key) + caution + "\n";
    const auto at = formula_text.find(method);
    return at == std::string::npos ? formula_text + lines : formula_text.substr(0, at + 1) + lines + formula_text.substr(at + 1);
}

}  // namespace standin::cli
