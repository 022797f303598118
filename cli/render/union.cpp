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
    return std::any_of(all.begin(), all.end(), [&](const CautionText& c) { return c.id == one.id && c.text == one.text; });
}

// Numbers of the variants that something is said of.
template <class T>
std::vector<std::string> said_of(const T& one, const std::vector<Own>& own, const std::vector<T>* Own::*part) {
    std::vector<std::string> numbers;
    for (std::size_t i = 0; i < own.size(); ++i)
        if (has(*(own[i].*part), one)) numbers.push_back(std::to_string(i + 1));
    return numbers;
}

constexpr const char* here = " Here: ";

std::string without_foods(const CautionText& c) { return c.text.substr(0, c.text.find(here)); }

bool says_of_it(const std::vector<CautionText>& all, const CautionText& one) {
    return std::any_of(all.begin(), all.end(),
                       [&](const CautionText& c) { return c.id == one.id && without_foods(c) == without_foods(one); });
}

// One caution for all the foods that call for it, whichever batch they are in.
std::vector<CautionText> with_foods_together(const std::vector<CautionText>& cautions) {
    std::vector<CautionText> all;
    for (const auto& c : cautions) {
        const auto known = std::find_if(all.begin(), all.end(),
                                        [&](const CautionText& a) { return a.id == c.id && without_foods(a) == without_foods(c); });
        if (known == all.end()) {
            all.push_back(c);
            continue;
        }
        const auto at = c.text.find(here);
        if (at == std::string::npos) continue;
        std::string_view more = std::string_view(c.text).substr(at + std::string_view(here).size());
        if (!more.empty() && more.back() == '.') more.remove_suffix(1);
        while (!more.empty()) {
            const auto comma = more.find(", ");
            const std::string food(more.substr(0, comma));
            more = comma == std::string_view::npos ? std::string_view() : more.substr(comma + 2);
            if (known->text.find(food, known->text.find(here)) != std::string::npos) continue;
            if (!known->text.empty() && known->text.back() == '.') known->text.pop_back();
            known->text += ", " + food + ".";
        }
    }
    return all;
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
    for (auto c : with_foods_together(page.cautions)) {
        std::vector<std::string> numbers;
        if (!has(cautions, c))
            for (std::size_t i = 0; i < own.size(); ++i)
                if (says_of_it(*own[i].cautions, c)) numbers.push_back(std::to_string(i + 1));
        const bool of_base = says_of_it(cautions, c);
        if (numbers.empty() || of_base) {
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

Together together(const SwapsAnswer& answer) {
    std::vector<Own> own;
    for (const auto& s : answer.stand_ins) own.push_back({&s.allergens, &s.cautions});
    return marked(answer.on_page, answer.allergens, answer.cautions, own);
}

}  // namespace standin::cli
