#include "formula/amounts/meat_shares.hpp"

#include <algorithm>
#include <cmath>

#include "formula/amounts/process_text.hpp"
#include "formula/amounts/sheet_size.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"

namespace standin {
namespace {

struct ShareOf {
    double percent = 0;
    std::string food;
};

// "60% venison", "venison 60 %".
bool take_share(std::string_view part, std::vector<ShareOf>& all) {
    const auto sign = part.find('%');
    const auto digits = part.find_first_of("0123456789");
    if (sign == std::string_view::npos || digits > sign || part.find('%', sign + 1) != std::string_view::npos) return false;
    Cursor cursor(part, digits);
    const auto number = number_at(cursor, false);
    cursor.space();
    if (!number || cursor.at() != sign) return false;
    const auto words = words_of(std::string(part.substr(0, digits)) + " " + std::string(part.substr(sign + 1)));
    if (words.empty()) return false;
    all.push_back({number->band.mid, phrase(words, 0, words.size())});
    return true;
}

}  // namespace

std::vector<std::string> shares_of_one_weight(std::string_view line, const Knowledge& knowledge) {
    constexpr double whole = 100, rounded = 0.5;
    const auto open = line.find('('), close = line.find(')', open);
    if (close == std::string_view::npos || line.find_first_not_of(" .;:", close + 1) != std::string_view::npos) return {};
    std::string_view inside = line.substr(open + 1, close - open - 1);
    auto size = sheet_size(line.substr(0, open), knowledge);
    if (!size) {  // "lamb shoulder 70 %, lamb breast 30 % (4 kg together)"
        size = sheet_size(inside, knowledge);
        inside = line.substr(0, open);
    }
    if (!size) return {};
    std::vector<ShareOf> all;
    while (!inside.empty()) {
        const auto stop = std::min(inside.find_first_of(",;+&"), inside.size());
        if (!take_share(inside.substr(0, stop), all)) return {};
        inside.remove_prefix(std::min(stop + 1, inside.size()));
    }
    double sum = 0;
    for (const auto& share : all) sum += share.percent;
    if (all.size() < 2 || std::abs(sum - whole) > rounded) return {};
    std::vector<std::string> lines;
    for (const auto& share : all) lines.push_back(plain_number(size->grams * share.percent / whole) + " g " + share.food);
    return lines;
}

}  // namespace standin
