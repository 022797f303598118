#include "formula/formats/stock_words.hpp"

#include <algorithm>
#include <array>

#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"

namespace standin {
namespace {

using Text = std::string_view;

constexpr std::array plenty{Text{"plenty of"},
                            Text{"plenty"},
                            Text{"lots of"},
                            Text{"lots"},
                            Text{"a lot of"},
                            Text{"a lot"},
                            Text{"enough"},
                            Text{"loads of"},
                            Text{"loads"},
                            Text{"any amount of"},
                            Text{"any amount"},
                            Text{"heaps of"},
                            Text{"heaps"},
                            Text{"tons of"},
                            Text{"masses of"},
                            Text{"some"},
                            Text{"a little"},
                            Text{"a bit of"},
                            Text{"a few"},
                            Text{"several"},
                            Text{"as much as i want"},
                            Text{"more than enough"},
                            Text{"too much"},
                            Text{"too many"},
                            Text{"growing"},
                            Text{"yes"},
                            Text{"in the garden"},
                            Text{"in the cupboard"},
                            Text{"in the freezer"},
                            Text{"in the pantry"},
                            Text{"in the fridge"},
                            Text{"on hand"},
                            Text{"have"},
                            Text{"i have"},
                            Text{"we have"}};
constexpr std::array none{Text{"no more"},    Text{"no"},         Text{"not any"}, Text{"not"},        Text{"without"},
                          Text{"out of"},     Text{"ran out of"}, Text{"none of"}, Text{"run out of"}, Text{"do not have"},
                          Text{"don't have"}, Text{"dont have"},  Text{"have no"}, Text{"missing"},    Text{"lacking"}};
constexpr std::array none_after{Text{"none"}, Text{"0"},   Text{"0 g"},     Text{"0 kg"},     Text{"no"},      Text{"all gone"},
                                Text{"gone"}, Text{"out"}, Text{"used up"}, Text{"finished"}, Text{"missing"}, Text{"ran out"}};
constexpr std::array closing{Text{"nothing else"}, Text{"nothing more"}, Text{"that is all"}, Text{"that's all"}, Text{"that is it"},
                             Text{"that's it"},    Text{"no other"},     Text{"only these"},  Text{"only this"},  Text{"and nothing else"}};
constexpr std::array opening{Text{"everything else"},
                             Text{"anything else"},
                             Text{"all else"},
                             Text{"and everything else"},
                             Text{"the rest"},
                             Text{"all the rest"},
                             Text{"everything else in the house"}};

// Words of an amount that come with no weight, and things food is kept in that no recipe counts.
constexpr std::array loose{
    Text{"a"},       Text{"an"},       Text{"one"},    Text{"two"},     Text{"three"},   Text{"four"},   Text{"five"},    Text{"six"},
    Text{"half"},    Text{"quarter"},  Text{"whole"},  Text{"couple"},  Text{"few"},     Text{"some"},   Text{"several"}, Text{"about"},
    Text{"approx"},  Text{"around"},   Text{"of"},     Text{"the"},     Text{"good"},    Text{"big"},    Text{"large"},   Text{"small"},
    Text{"little"},  Text{"full"},     Text{"last"},   Text{"another"}, Text{"more"},    Text{"bag"},    Text{"sack"},    Text{"net"},
    Text{"tub"},     Text{"tray"},     Text{"basket"}, Text{"box"},     Text{"crate"},   Text{"bucket"}, Text{"punnet"},  Text{"glass"},
    Text{"carton"},  Text{"pack"},     Text{"row"},    Text{"plant"},   Text{"pot"},     Text{"armful"}, Text{"bed"},     Text{"bit"},
    Text{"heap"},    Text{"pile"},     Text{"lot"},    Text{"bottle"},  Text{"jar"},     Text{"tin"},    Text{"can"},     Text{"packet"},
    Text{"handful"}, Text{"bunch"},    Text{"head"},   Text{"bulb"},    Text{"sprig"},   Text{"tube"},   Text{"block"},   Text{"wedge"},
    Text{"piece"},   Text{"leftover"}, Text{"left"},   Text{"over"},    Text{"fistful"}, Text{"clump"},  Text{"string"},  Text{"braid"}};

template <std::size_t N>
bool among(const std::array<Text, N>& list, Text folded) {
    return std::any_of(list.begin(), list.end(), [&](Text word) { return fold(word) == folded; });
}

bool same(Text a, Text b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](char x, char y) { return (x >= 'A' && x <= 'Z' ? static_cast<char>(x - 'A' + 'a') : x) == y; });
}

/// The rest when `text` starts (or ends) with the longest of `words` that it can, else empty.
template <std::size_t N>
Text rest_after(Text text, const std::array<Text, N>& words) {
    Text best;
    std::size_t longest = 0;
    for (const auto word : words)
        if (word.size() > longest && text.size() > word.size() && same(text.substr(0, word.size()), word) &&
            (text[word.size()] == ' ' || text[word.size()] == ':')) {
            best = bare(text.substr(word.size()));
            longest = word.size();
        }
    return best;
}

template <std::size_t N>
Text rest_before(Text text, const std::array<Text, N>& words) {
    Text best;
    std::size_t longest = 0;
    for (const auto word : words) {
        if (text.size() <= word.size() || word.size() <= longest) continue;
        const std::size_t cut = text.size() - word.size();
        const bool apart = text[cut - 1] == ' ' || text[cut - 1] == ':' || text[cut - 1] == '(';
        if (!same(text.substr(cut), word) || !apart) continue;
        best = bare(text.substr(0, cut));
        longest = word.size();
    }
    return best;
}

bool is_number(const Word& word) {
    return word.folded.find_first_not_of("0123456789./-") == std::string::npos || word.raw.find_first_of("0123456789") == 0 ||
           word.raw.find("\xC2\xBD") != std::string::npos ||  // one half
           word.raw.find("\xC2\xBC") != std::string::npos || word.raw.find("\xC2\xBE") != std::string::npos;
}

bool is_loose(const Word& word) {
    if (among(loose, word.folded) || word.raw == "x" || word.raw == "~") return true;
    if (is_number(word)) {
        const auto letters = word.folded.find_first_not_of("0123456789./- ");
        return letters == std::string::npos;  // "400g" is a weight
    }
    const Unit* unit = unit_named(word.folded);
    return unit && unit->dimension != Dimension::mass && unit->dimension != Dimension::percent;
}

}  // namespace

std::string_view bare(std::string_view text) {
    constexpr Text loose_ends = " \t,:;-*()";
    const auto first = text.find_first_not_of(loose_ends);
    return first == Text::npos ? Text{} : text.substr(first, text.find_last_not_of(loose_ends) - first + 1);
}

StockLine stock_line(std::string_view text) {
    const bool ends_in_colon = !text.empty() && text.back() == ':';
    text = bare(text);
    const std::string folded = fold(text);
    if (among(closing, folded)) return {StockWord::nothing_else, {}};
    if (among(opening, folded)) return {StockWord::everything_else, {}};
    if (ends_in_colon) return {StockWord::heading, {}};
    if (const auto names = rest_after(text, none); !names.empty()) return {StockWord::none, names};
    if (const auto names = rest_before(text, none_after); !names.empty()) return {StockWord::none, names};
    if (const auto names = rest_after(text, plenty); !names.empty()) return {StockWord::some, names};
    if (const auto names = rest_before(text, plenty); !names.empty()) return {StockWord::some, names};
    return {StockWord::weighed, text};
}

std::vector<std::string_view> without_loose_amount(std::string_view text) {
    const auto words = words_of(text);
    std::size_t first = 0, last = words.size();
    std::vector<std::string_view> all;
    const auto part = [&](std::size_t from, std::size_t to) {
        return bare(text.substr(words[from].begin, words[to - 1].end - words[from].begin));
    };
    if (words.empty()) return all;
    std::size_t lead = 0, tail = 0;
    while (lead < last && is_loose(words[lead])) ++lead;
    while (tail < last && is_loose(words[last - 1 - tail])) ++tail;
    for (std::size_t dropped = 0; dropped <= lead + tail; ++dropped)
        for (std::size_t front = std::min(dropped, lead) + 1; front-- > 0;) {
            if (dropped - front > tail) continue;
            first = front;
            last = words.size() - (dropped - front);
            if (first < last) all.push_back(part(first, last));
        }
    return all;
}

std::vector<std::string_view> parts_of_list(std::string_view names) {
    constexpr std::array<Text, 6> between{",", ";", " and ", " or ", " & ", " + "};
    std::vector<std::string_view> all;
    std::size_t start = 0;
    for (std::size_t i = 0; i < names.size();) {
        const auto found =
            std::find_if(between.begin(), between.end(), [&](Text word) { return same(names.substr(i, word.size()), word); });
        if (found == between.end()) {
            ++i;
            continue;
        }
        all.push_back(bare(names.substr(start, i - start)));
        i += found->size();
        start = i;
    }
    all.push_back(bare(names.substr(start)));
    std::erase_if(all, [](Text one) { return one.empty(); });
    return all;
}

}  // namespace standin
