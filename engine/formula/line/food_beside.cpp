#include "formula/line/food_beside.hpp"

#include <string>
#include <vector>

#include "core/names.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/line/line_text.hpp"
#include "formula/words/line_asides.hpp"

namespace standin {
namespace {

// "1/4 cup, plus more for frying": the cup goes in.
bool tells_more(std::string_view text) {
    const std::string words = " " + fold(text) + " ";
    for (const std::string_view more : {" plus ", " more ", " extra ", " and "})
        if (words.find(more) != std::string::npos) return true;
    return false;
}

// With its clause or without: "breadcrumbs to coat" is breadcrumbs; an amount is not needed.
const Ingredient* food_of(std::string_view text, std::string_view purpose, const Origin& origin, const Knowledge& knowledge) {
    const std::string line(text);
    std::vector<std::string> ways{line};
    const std::string clause(purpose.substr(1, purpose.size() - 2));  // without its quotes
    if (const auto at = line.find(clause); at != std::string::npos) {
        const auto end = std::min(line.size(), line.find_first_of(",;(", at));  // "to roll them in"
        std::string bare = line.substr(0, at) + line.substr(end);
        bare.erase(bare.find_last_not_of(" ,;") + 1);
        ways.push_back(std::move(bare));
    }
    for (const auto& way : ways)
        for (const auto& amount : {"", "10 g "})
            if (const auto read = read_line(amount + way, origin, knowledge)) return knowledge.ingredient(read->line.ingredient);
    return nullptr;
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Millimetres in the unit of length that stands here; 0 where there is none.
double unit_mm(Cursor& cursor) {
    cursor.space();
    const std::string unit = fold(cursor.word());
    if (unit == "mm" || unit == "millimetre" || unit == "millimeter") return 1;
    if (unit == "cm") return 10;
    return unit == "in" || unit == "inch" || cursor.eat("\"") ? 25.4 : 0;
}

std::optional<double> one_width(std::string_view text, std::size_t at) {
    Cursor cursor(text, at);
    const auto number = number_at(cursor, false);
    const double unit = number ? unit_mm(cursor) : 0;
    return unit > 0 ? std::optional(number->band.mid * unit) : std::nullopt;
}

// "32/35 mm" is no fraction: casings are sold from so wide to so wide.
std::optional<double> two_widths(std::string_view text, std::size_t at) {
    const auto slash = text.find('/', at);
    if (slash == std::string_view::npos || slash == at || text.find_first_not_of("0123456789", at) != slash) return std::nullopt;
    Cursor first(text.substr(0, slash), at), second(text, slash + 1);
    const auto low = number_at(first, false), high = number_at(second, false);
    const double unit = low && high ? unit_mm(second) : 0;
    if (unit <= 0 || unit > 10 || low->band.mid >= high->band.mid) return std::nullopt;
    return unit * (low->band.mid + high->band.mid) / 2;
}

}  // namespace

std::optional<Beside> food_beside(std::string_view text, const Origin& origin, const Knowledge& knowledge) {
    constexpr double mostly_fat = 70;  // g in 100 g, judgement: what things are fried in
    const std::string coat = coat_purpose(text, knowledge), purpose = coat.empty() ? outside_purpose(text, knowledge) : coat;
    if (purpose.empty() || tells_more(text)) return std::nullopt;
    const Ingredient* named = food_of(text, purpose, origin, knowledge);
    if (!named) return std::nullopt;
    const Ingredient& food = *named;
    if (food.meat || (coat.empty() && food.composition.fat.mid < mostly_fat)) return std::nullopt;
    return Beside{std::string(text), BesideKind::purpose, food.id, purpose};
}

std::optional<double> casing_width_mm(std::string_view text) {
    constexpr double narrowest = 10, widest = 120;  // mm, judgement: what is sold as a casing
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (!is_digit(text[at]) || (at > 0 && (is_digit(text[at - 1]) || text[at - 1] == '.' || text[at - 1] == ','))) continue;
        auto width = two_widths(text, at);
        if (!width) width = one_width(text, at);
        if (width && *width >= narrowest && *width <= widest) return width;
    }
    return std::nullopt;
}

}  // namespace standin
