#include "formula/kitchen/price_text.hpp"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/words/stock_words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }
bool is_space(char c) { return c == ' ' || c == '\t'; }

// What can stand between a price and what one gets for it.
constexpr std::array<std::string_view, 7> per_words{"per", "a", "an", "for", "the", "/", "@"};
// The price of one piece.
constexpr std::array<std::string_view, 4> each_words{"each", "apiece", "ea", "a piece"};

struct Token {
    std::size_t at = 0;
    std::string_view text;
};

// Words, numbers, slashes and signs, each by itself: "€6.50/kg" is four.
std::vector<Token> tokens_of(std::string_view line) {
    enum class Of { blank, number, word, slash };
    const auto kind = [&](std::size_t i) {
        const char c = line[i];
        if (is_space(c) || c == ';' || c == '=' || c == '(' || c == ')') return Of::blank;
        if (c == '/' || c == '@') return Of::slash;
        const bool inside = i > 0 && i + 1 < line.size() && digit(line[i - 1]) && digit(line[i + 1]);
        if (digit(c) || ((c == '.' || c == ',') && inside)) return Of::number;
        return c == ',' || c == ':' ? Of::blank : Of::word;
    };
    std::vector<Token> all;
    for (std::size_t i = 0; i < line.size();) {
        const Of of = kind(i);
        std::size_t end = i + 1;
        while (of != Of::slash && end < line.size() && kind(end) == of) ++end;
        if (of != Of::blank) all.push_back({i, line.substr(i, end - i)});
        i = end;
    }
    return all;
}

bool is_number(const Token& t) { return digit(t.text.front()); }

// "6,50" and "6.50", "1.234,50" and "1,234.50".
std::optional<double> money_in(std::string_view text, bool& unclear) {
    const auto last = text.find_last_of(".,");
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i)
        if (digit(text[i])) plain += text[i];
        else if (i == last) plain += '.';
    const bool one_mark = last != std::string_view::npos && text.find_first_of(".,") == last;
    if (one_mark && text[last] == ',' && text.size() - last == 4) unclear = true;
    return number_in(plain);
}

bool is_unit(std::string_view word) { return unit_named(fold(word)) != nullptr; }

// A sign of its own ("$", "€"), or three capitals ("EUR"): a currency before the number.
bool leads_as_currency(std::string_view word) {
    const bool sign =
        std::none_of(word.begin(), word.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || digit(c); });
    const bool capitals = word.size() == 3 && std::all_of(word.begin(), word.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    return (sign && word != "-" && word != "%" && word != "\xe2\x80\x93" && word != "\xe2\x80\x94" && word != "#") || capitals ||
           word == "US$" || word == "A$" || word == "C$";
}

class LineOfPrices {
public:
    explicit LineOfPrices(std::string_view line) : line_(line), tokens_(tokens_of(line)) {}

    std::optional<PriceText> read() {
        // The last number that can be money: "500 g salt 0.60" and "cumin 40 g 1.80" end in theirs.
        for (std::size_t i = tokens_.size(); i-- > 0;)
            if (is_number(tokens_[i]))
                if (auto read = at(i, true)) return read;
        for (std::size_t i = tokens_.size(); i-- > 0;)
            if (is_number(tokens_[i]))
                if (auto read = at(i, false)) return read;
        return std::nullopt;
    }

private:
    const Token* token(std::size_t i) const { return i < tokens_.size() ? &tokens_[i] : nullptr; }
    std::string_view upto(std::size_t first) const { return bare(line_.substr(0, tokens_[first].at)); }
    std::string_view from(std::size_t next) const {
        return next < tokens_.size() ? bare(line_.substr(tokens_[next].at)) : std::string_view{};
    }

    // The price whose number is token `i`; `per` true: what one gets for it is said behind it.
    std::optional<PriceText> at(std::size_t i, bool per) {
        PriceText p;
        const auto money = money_in(tokens_[i].text, p.unclear);
        if (!money) return std::nullopt;
        p.money = *money;
        std::size_t first = i, next = i + 1;
        if (i > 0 && leads_as_currency(tokens_[i - 1].text)) {
            first = i - 1;
            p.currency = tokens_[first].text;
        }
        if (const Token* after = token(next); after && p.currency.empty() && may_follow_as_currency(*after)) {
            p.currency = after->text;
            ++next;
        }
        const bool said = amount(next, p);
        if (said != per) return std::nullopt;
        const auto before = upto(first), after = from(next);
        if (!said && (!after.empty() || before.empty())) return std::nullopt;  // a number that something follows is an amount
        if (!said && p.currency.empty() && !ends_in_price(before)) return std::nullopt;
        p.food = after.empty() ? before : before.empty() ? without_of(after) : std::string_view{};
        if (p.food.empty() && !before.empty() && !after.empty()) p.food = before;  // "salt 0.60/kg (coarse)": what follows is a remark
        return p;
    }

    static std::string_view without_of(std::string_view food) { return food.substr(0, 3) == "of " ? bare(food.substr(3)) : food; }

    bool may_follow_as_currency(const Token& t) const {
        const std::string folded = fold(t.text);
        return !is_number(t) && !contains(per_words, t.text) && !contains(per_words, folded) && !contains(each_words, folded) &&
               !is_unit(t.text) && t.text != "%" && t.text != "x";
    }

    // "500 g salt 0.60": without a currency only where the text before starts with an amount.
    static bool ends_in_price(std::string_view before) { return !before.empty() && digit(before.front()); }

    // "/kg", "a bunch", "per 100 g", "for 40 g", "each", "a dozen"; `next` goes behind it.
    bool amount(std::size_t& next, PriceText& p) const {
        const Token* t = token(next);
        if (!t) return false;
        if (contains(each_words, fold(t->text))) return taken(next, 1, "1", t->at, p);
        if (!contains(per_words, t->text) && !contains(per_words, fold(t->text))) return false;
        std::size_t k = next + 1;
        t = token(k);
        if (!t) return false;
        if (fold(t->text) == "piece" || fold(t->text) == "pc") return taken(next, k + 1 - next, "1", t->at, p);
        if (fold(t->text) == "dozen") return taken(next, k + 1 - next, "12", t->at, p);
        std::string number = "1";
        const std::size_t where = t->at;
        if (is_number(*t)) {
            number = std::string(t->text);
            if (!(t = token(++k))) return false;
        }
        if (!is_unit(t->text)) return false;
        return taken(next, k + 1 - next, number + " " + std::string(t->text), where, p);
    }

    static bool taken(std::size_t& next, std::size_t tokens, std::string amount, std::size_t at, PriceText& p) {
        next += tokens;
        p.amount = std::move(amount);
        p.amount_at = at;
        return true;
    }

    std::string_view line_;
    std::vector<Token> tokens_;
};

// One spelling for each currency that has several.
std::string plain_currency(std::string_view word) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 9> same{{{"\xe2\x82\xac", "eur"},
                                                                                 {"euro", "eur"},
                                                                                 {"\xc2\xa3", "gbp"},
                                                                                 {"pound", "gbp"},
                                                                                 {"$", "dollar"},
                                                                                 {"usd", "dollar"},
                                                                                 {"us$", "dollar"},
                                                                                 {"\xc2\xa5", "yen"},
                                                                                 {"jpy", "yen"}}};
    std::string folded = fold(word);
    if (folded.empty()) folded = std::string(word);
    for (const auto& [spelling, plain] : same)
        if (word == spelling || folded == spelling) return std::string(plain);
    return folded;
}

}  // namespace

std::optional<PriceText> price_text(std::string_view line) {
    for (const std::string_view free : {"free", "for nothing"})
        if (line.size() > free.size() && line.substr(line.size() - free.size()) == free && is_space(line[line.size() - free.size() - 1])) {
            PriceText p;
            p.amount = "1 kg";
            p.food = bare(line.substr(0, line.size() - free.size()));
            return p;
        }
    return LineOfPrices(line).read();
}

std::optional<std::string_view> currency_line(std::string_view line) {
    const auto tokens = tokens_of(line);
    if (std::any_of(tokens.begin(), tokens.end(), is_number)) return std::nullopt;
    if (tokens.size() == 2 && fold(tokens[0].text) == "currency") return tokens[1].text;
    const auto price = std::find_if(tokens.begin(), tokens.end(), [](const Token& t) { return fold(t.text) == "price"; });
    if (price != tokens.end() && tokens.size() >= 3 && fold(tokens[tokens.size() - 2].text) == "in") return tokens.back().text;
    return std::nullopt;
}

bool same_currency(std::string_view a, std::string_view b) { return plain_currency(a) == plain_currency(b); }

}  // namespace standin
