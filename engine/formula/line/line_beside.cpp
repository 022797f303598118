#include "formula/line/line_beside.hpp"

#include <algorithm>
#include <array>
#include <vector>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"

namespace standin {
namespace {

using Text = std::string_view;

template <std::size_t N>
bool among(const std::array<Text, N>& list, Text word) {
    return std::find(list.begin(), list.end(), word) != list.end();
}

bool has_digit(Text text) { return text.find_first_of("0123456789") != Text::npos; }

// All that may stand before the word "casing" without being a food.
constexpr std::array casing_words{Text{"hog"},       Text{"pork"},      Text{"pig"},
                                  Text{"sheep"},     Text{"lamb"},      Text{"beef"},
                                  Text{"ox"},        Text{"natural"},   Text{"collagen"},
                                  Text{"edible"},    Text{"sausage"},   Text{"medium"},
                                  Text{"small"},     Text{"large"},     Text{"narrow"},
                                  Text{"wide"},      Text{"thin"},      Text{"thick"},
                                  Text{"fresh"},     Text{"salted"},    Text{"salt"},
                                  Text{"packed"},    Text{"dry"},       Text{"preserved"},
                                  Text{"cleaned"},   Text{"clean"},     Text{"soaked"},
                                  Text{"rinsed"},    Text{"washed"},    Text{"prepared"},
                                  Text{"foot"},      Text{"feet"},      Text{"piece"},
                                  Text{"section"},   Text{"ft"},        Text{"m"},
                                  Text{"meter"},     Text{"metre"},     Text{"yard"},
                                  Text{"yd"},        Text{"inch"},      Text{"mm"},
                                  Text{"cm"},        Text{"length"},    Text{"hank"},
                                  Text{"lot"},       Text{"set"},       Text{"strand"},
                                  Text{"string"},    Text{"roll"},      Text{"enough"},
                                  Text{"some"},      Text{"about"},     Text{"approx"},
                                  Text{"around"},    Text{"roughly"},   Text{"approximately"},
                                  Text{"a"},         Text{"an"},        Text{"of"},
                                  Text{"or"},        Text{"and"},       Text{"to"},
                                  Text{"the"},       Text{"your"},      Text{"one"},
                                  Text{"two"},       Text{"three"},     Text{"few"},
                                  Text{"several"},   Text{"long"},      Text{"diameter"},
                                  Text{"intestine"}, Text{"wet"},       Text{"cured"},
                                  Text{"brined"},    Text{"calibre"},   Text{"caliber"},
                                  Text{"optional"},  Text{"synthetic"}, Text{"cellulose"},
                                  Text{"fibrous"},   Text{"half"},      Text{"standard"},
                                  Text{"bratwurst"}, Text{"breakfast"}, Text{"italian"},
                                  Text{"size"},      Text{"sized"}};

bool may_stand_before_casing(const Word& word) {
    const Unit* unit = unit_named(word.folded);
    return among(casing_words, word.folded) || std::isdigit(static_cast<unsigned char>(word.raw.front())) != 0 ||
           word.folded.find_first_not_of("/%. ") == std::string::npos ||
           (unit && (unit->dimension == Dimension::mass || is_container(*unit)));
}

// Where the casing is named; the number of words where it is not. "Casings removed" is said of bought sausage.
std::size_t casing_at(const std::vector<Word>& words) {
    for (std::size_t i = 0; i < words.size(); ++i) {
        const auto& word = words[i].folded;
        const bool skin = word == "skin" && i > 0 && (words[i - 1].folded == "sausage" || words[i - 1].folded == "collagen");
        const bool gut = (word == "intestine" || word == "middle" || word == "runner" || word == "bung") && i > 0 &&
                         may_stand_before_casing(words[i - 1]) && !has_digit(words[i - 1].folded) &&
                         unit_named(words[i - 1].folded) == nullptr && (i + 1 == words.size() || words[i + 1].folded != "bean");
        if (word != "casing" && !skin && !gut) continue;
        const bool gone = i + 1 < words.size() && (words[i + 1].folded == "removed" || words[i + 1].folded == "off" ||
                                                   words[i + 1].folded == "discarded" || words[i + 1].folded == "on");
        return gone ? words.size() : i;
    }
    return words.size();
}

bool is_casing(const std::vector<Word>& words) {
    const std::size_t at = casing_at(words);
    return at < words.size() && std::all_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(at), may_stand_before_casing);
}

bool is_kitchen_goods(const std::vector<Word>& words) {
    constexpr std::array goods{Text{"butcher twine"},  Text{"kitchen twine"}, Text{"cooking twine"},  Text{"butcher string"},
                               Text{"kitchen string"}, Text{"smoking wood"},  Text{"wood chip"},      Text{"toothpick"},
                               Text{"cocktail stick"}, Text{"cooking spray"}, Text{"nonstick spray"}, Text{"parchment paper"}};
    for (std::size_t i = 0; i < words.size() && words[i].segment == 0; ++i)
        for (std::size_t end = i + 1; end <= std::min(words.size(), i + 2); ++end)
            if (among(goods, fold(phrase(words, i, end)))) return true;
    return false;
}

}  // namespace

std::string beside_the_mass(std::string_view line) {
    const auto words = words_of(line);
    if (is_casing(words)) return "a casing: it holds the mass and is not counted in its weight";
    if (is_kitchen_goods(words)) return "no food of the mass: not counted in its weight";
    return {};
}

bool is_heading(std::string_view line, const Knowledge& knowledge) {
    constexpr std::array told{
        Text{"for"},        Text{"the"},     Text{"and"},       Text{"of"},       Text{"your"},      Text{"spice"},    Text{"mix"},
        Text{"blend"},      Text{"rub"},     Text{"seasoning"}, Text{"meat"},     Text{"fat"},       Text{"wet"},      Text{"dry"},
        Text{"ingredient"}, Text{"liquid"},  Text{"herb"},      Text{"aromatic"}, Text{"filling"},   Text{"stuffing"}, Text{"sausage"},
        Text{"paste"},      Text{"green"},   Text{"marinade"},  Text{"optional"}, Text{"equipment"}, Text{"base"},     Text{"binder"},
        Text{"vegetable"},  Text{"mixture"}, Text{"casing"},    Text{"other"}};
    const auto first = line.find_first_not_of(" \t*_=~#-"), last = line.find_last_not_of(" \t*_=~#-");
    if (first == Text::npos) return false;
    line = line.substr(first, last - first + 1);
    if (has_digit(line)) return false;
    const bool colon = line.back() == ':';
    if (colon) line.remove_suffix(1);
    if (knowledge.ingredient_named(line) || knowledge.ingredient_meant(line)) return false;
    const auto words = words_of(line);
    if (words.empty() || words.back().segment > 0) return false;
    const bool for_the = words.size() > 2 && words.size() < 7 && words[0].folded == "for" && words[1].folded == "the";
    return colon || for_the || std::all_of(words.begin(), words.end(), [&](const Word& word) { return among(told, word.folded); });
}

}  // namespace standin
