#include "formula/kitchen/price_list.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/kitchen/price_text.hpp"
#include "formula/lexer/text_lines.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/line_text.hpp"
#include "formula/words/stock_words.hpp"

namespace standin {
namespace {

constexpr const char* expected = "expected a food and its price, such as `pork shoulder 6.50/kg` or `parsley 1.20 a bunch`";

bool weighed(std::string_view amount) {
    Cursor cursor(amount);
    const auto read = amount_at(cursor);
    return read && read->parts.front().unit && read->parts.front().unit->dimension == Dimension::mass;
}

// "Meat:", "Prices, November": over the prices, and none itself.
bool is_heading(std::string_view line, bool first) {
    return line.back() == ':' || (first && fold(line).find("price") != std::string::npos);
}

class Reader {
public:
    Reader(std::string_view file, const Knowledge& knowledge) : file_(file), knowledge_(knowledge) { list_.name = std::string(file); }

    Result<PriceList> read(const std::vector<TextLine>& lines) {
        for (const auto& line : lines) {
            if (troubles_.full()) break;
            take(line, &line == &lines.front());
        }
        if (lines.empty()) troubles_.add({Trouble::bad_data, std::string("no price stands in it; ") + expected, std::string(file_), {}});
        if (troubles_.any()) return troubles_.failure();
        return std::move(list_);
    }

private:
    void fault(const TextLine& line, std::string message, std::vector<std::string> hints = {}) {
        troubles_.add({Trouble::bad_data, std::move(message), describe(file_, line.place), std::move(hints)});
    }

    void currency(std::string_view word, const TextLine& line) {
        if (word.empty()) return;
        if (list_.currency.empty()) {
            list_.currency = std::string(word);
            currency_line_ = line.place.line;
        } else if (!same_currency(list_.currency, word)) {
            fault(line, "two currencies in one list: " + list_.currency + " in line " + std::to_string(currency_line_) + " and " +
                            std::string(word) + " here; expected one a list");
        }
    }

    void take(const TextLine& line, bool first) {
        const std::string_view text = bare(line.text);
        if (text.empty()) return;
        if (const auto named = currency_line(line.text)) return currency(*named, line);
        const auto price = price_text(text);
        if (!price) {
            if (is_heading(line.text, first)) return;
            return fault(line, "no price in `" + std::string(text) + "`; " + expected);
        }
        if (price->unclear) return fault(line, "a thousand, or little more than one? Write 1234 or 1.234");
        if (price->food.empty()) return fault(line, std::string("no food beside the price; ") + expected);
        const std::size_t before = troubles_.all().size();
        currency(price->currency, line);
        if (troubles_.all().size() == before) food(*price, text, line);
    }

    // What one gets for the money is read as a line of a formula: "1 bunch parsley" is so many grams.
    void food(const PriceText& price, std::string_view text, const TextLine& line) {
        const auto place_of = [&](std::size_t offset) {
            return Place{line.place.line, line.place.column + static_cast<std::size_t>(text.data() - line.text.data()) + offset};
        };
        const auto food_at = place_of(static_cast<std::size_t>(price.food.data() - text.data()));
        const std::string whole = price.amount.empty() ? std::string(price.food) : price.amount + " " + std::string(price.food);
        const Origin origin = price.amount.empty()
                                  ? Origin(file_, food_at)
                                  : Origin::joined(file_, {{0, place_of(price.amount_at)}, {price.amount.size() + 1, food_at}});
        auto read = read_line(whole, origin, knowledge_, {}, true);
        if (!read) return troubles_.add(std::move(read.error()));
        if (read->share) return fault(line, std::string("a share of the meat has no price; ") + expected);
        if (!read->line.prepared.empty())
            return fault(line, "a price is of the food as it is bought, not \"" + read->line.prepared.front().preparation + "\"");
        keep(price, *read, std::string(text), line);
    }

    void keep(const PriceText& price, const ReadLine& read, std::string written, const TextLine& line) {
        const std::string& id = read.line.ingredient;
        const auto same = std::find_if(list_.prices.begin(), list_.prices.end(), [&](const Price& p) { return p.ingredient == id; });
        if (same != list_.prices.end())
            return fault(line, "two prices of " + knowledge_.ingredient(id)->names.front() + ": `" + same->written + "` and `" + written +
                                   "`; expected one");
        if (!(read.line.grams.mid > 0)) return fault(line, std::string("a price of nothing; ") + expected);
        const std::string amount = price.amount.empty() ? std::string(price.food) : price.amount;
        list_.prices.push_back({id, price.money, read.line.grams, !weighed(amount) && !weighed(read.line.written), std::move(written),
                                describe(file_, line.place)});
        list_.notes.insert(list_.notes.end(), read.line.notes.begin(), read.line.notes.end());
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Troubles troubles_;
    PriceList list_;
    std::size_t currency_line_ = 0;
};

}  // namespace

Result<PriceList> read_prices(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    const auto clean = readable(text, file);
    if (!clean) return Failure(clean.error());
    return Reader(file, knowledge).read(text_lines(*clean));
}

bool looks_like_prices(std::string_view text, std::string_view file) {
    const auto clean = readable(text, file);
    if (!clean) return false;
    std::size_t prices = 0, others = 0;
    for (const auto& line : text_lines(*clean)) {
        if (currency_line(line.text)) return true;
        const auto price = price_text(bare(line.text));
        if (price && !price->food.empty() && (!price->currency.empty() || !price->amount.empty())) ++prices;
        else if (!is_heading(line.text, prices + others == 0)) ++others;
    }
    return prices > others;
}

}  // namespace standin
