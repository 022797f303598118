#include "render/union.hpp"

#include <algorithm>

#include "render/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

// What one of the batches adds to the first.
struct Own {
    const std::vector<AllergenText>* allergens;
    const std::vector<CautionText>* cautions;
};

bool has(const std::vector<AllergenText>& all, const AllergenText& one) {
    return std::any_of(all.begin(), all.end(), [&](const AllergenText& a) { return a.allergen == one.allergen && a.sure == one.sure; });
}

bool has(const std::vector<CautionText>& all, const CautionText& one) {
    return std::any_of(all.begin(), all.end(), [&](const CautionText& c) { return is_same(c, one); });
}

// Numbers of the variants that something is said of.
template <class T>
std::vector<std::string> said_of(const T& one, const std::vector<Own>& own, const std::vector<T>* Own::*part) {
    std::vector<std::string> numbers;
    for (std::size_t i = 0; i < own.size(); ++i)
        if (has(*(own[i].*part), one)) numbers.push_back(std::to_string(i + 1));
    return numbers;
}

Together marked(const PageSafety& page, const std::vector<AllergenText>& allergens, const std::vector<CautionText>& cautions,
                const std::vector<Own>& own) {
    Together all;
    all.many = own.size() > 1;
    all.core = core(page.core);
    for (auto a : page.allergens) {
        const auto numbers = has(allergens, a) ? std::vector<std::string>{} : said_of(a, own, &Own::allergens);
        if (!numbers.empty()) a.allergen += " (in " + listed(numbers) + ")";
        all.allergens.push_back(std::move(a));
    }
    std::vector<CautionText> of_all;
    for (auto c : page.cautions) {
        const auto numbers = has(cautions, c) ? std::vector<std::string>{} : said_of(c, own, &Own::cautions);
        if (numbers.empty()) {
            of_all.push_back(std::move(c));
            continue;
        }
        c.text = "(" + listed(numbers) + ") " + c.text;
        all.cautions.push_back(std::move(c));
    }
    all.cautions.insert(all.cautions.end(), of_all.begin(), of_all.end());
    return all;
}

}  // namespace

std::string cook_line(const Together& all) {
    return "Cook to " + all.core + " in the middle, measured" + (all.many ? ", whichever you make." : ".");
}

Together together(const AdaptAnswer& answer) {
    std::vector<Own> own;
    for (const auto& v : answer.variants) own.push_back({&v.prediction.allergens, &v.prediction.cautions});
    return marked(answer.on_page, answer.base.allergens, answer.base.cautions, own);
}

Together together(const MendAnswer& answer) {
    std::vector<Own> own;
    for (const auto& way : answer.ways) own.push_back({&way.prediction.allergens, &way.prediction.cautions});
    return marked(answer.on_page, answer.base.allergens, answer.base.cautions, own);
}

Together together(const SwapsAnswer& answer) {
    std::vector<Own> own;
    for (const auto& s : answer.stand_ins) own.push_back({&s.allergens, &s.cautions});
    return marked(answer.on_page, answer.allergens, answer.cautions, own);
}

}  // namespace standin::cli
