#include "formula/reading.hpp"

#include <algorithm>

#include "core/names.hpp"
#include "formula/food/foods_in_any_tongue.hpp"
#include "formula/formats/bare_numbers.hpp"
#include "formula/formats/bases.hpp"
#include "formula/formats/draft.hpp"
#include "formula/formats/formula_json.hpp"
#include "formula/formats/formula_jsonld.hpp"
#include "formula/formats/formula_plain.hpp"
#include "formula/formats/html_text.hpp"
#include "formula/formats/presumed_making.hpp"
#include "formula/formats/share_sheet.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/text_lines.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/line_text.hpp"
#include "formula/stock/inventory.hpp"
#include "formula/stock/stock_amounts.hpp"
#include "formula/stock/stock_headings.hpp"
#include "formula/stock/stock_names.hpp"
#include "formula/stock/stock_said.hpp"
#include "formula/stock/stock_table.hpp"
#include "formula/words/stock_words.hpp"
#include "formula/words/tongues.hpp"

namespace standin {
namespace {

// A plain line can start with a bracketed note, but no title or line starts with a brace; "[" alone opens a list only before JSON.
bool looks_like_json(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (text[first] == '{') return true;
    if (text[first] != '[') return false;
    const auto next = text.find_first_not_of(" \t\r\n", first + 1);
    return next == std::string_view::npos || text[next] == '{' || text[next] == ']' || text[next] == '"' || text[next] == '[';
}

Result<Draft> draft_as_written(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    const auto clean = readable(text, file);
    if (!clean) return Failure(clean.error());
    if (looks_like_html(*clean)) return read_page(*clean, file, knowledge);
    if (!looks_like_json(*clean)) return read_plain_formula(*clean, file, knowledge);
    const auto root = read_json(*clean, file);
    if (!root) return Failure(root.error());
    if (is_json_ld(*root)) return read_json_ld(*root, file, knowledge);
    return read_json_formula(*root, file, knowledge);
}

Result<Draft> draft_of(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    auto draft = draft_as_written(text, file, knowledge);
    if (draft) {
        ask_of_bare_numbers(*draft, knowledge);
        settle_bases(*draft, knowledge);
        settle_sheet(*draft, knowledge);
        judge_by_share(*draft, knowledge);
        check_total(*draft, knowledge);
        presume_making(*draft, knowledge);
    }
    return draft;
}

// "# what is on hand"
bool says_list(std::string_view text, const Knowledge& knowledge) {
    const auto comments = comment_lines(text);
    return std::any_of(comments.begin(), comments.end(), [&](const TextLine& comment) {
        std::string_view said = comment.text;
        said.remove_prefix(std::min(said.find_first_not_of("# "), said.size()));
        return stock_line(said, knowledge).says == StockWord::heading;
    });
}

// A list opens with a food, in whatever tongue and however short, where a formula has its title.
bool opens_with_food(const TextLine& line, std::string_view file, const StockNamer& namer, const Knowledge& knowledge) {
    const auto names_one = [&](std::string_view text) {
        const auto ways = without_loose_amount(text, knowledge);
        return std::any_of(ways.begin(), ways.end(), [&](std::string_view name) { return namer.knows(name); });
    };
    if (read_line(line.text, Origin(file, line.place), knowledge) || names_one(line.text)) return true;
    const auto english = in_english(line.text, knowledge);
    return std::any_of(english.begin(), english.end(), [&](const Rewording& one) { return names_one(one.text); });
}

// "peas 900g bag": how it is packed, which few formulas tell.
bool tells_packing(const std::vector<TextLine>& lines) {
    return std::any_of(lines.begin(), lines.end(), [](const TextLine& line) {
        const auto words = words_of(line.text);
        return std::any_of(words.begin(), words.end(), [](const Word& word) {
            const Unit* unit = unit_named(word.folded);
            return unit && is_container(*unit);
        });
    });
}

// Meat and salt by weight, below a title: a formula, whatever else it says.
bool weighs_meat_and_salt(const std::vector<TextLine>& lines, std::string_view file, const Knowledge& knowledge) {
    bool meat = false, salt = false;
    for (std::size_t i = 1; i < lines.size() && !(meat && salt); ++i) {
        const auto read = read_line(lines[i].text, Origin(file, lines[i].place), knowledge);
        if (!read || (!read->share && !is_weight(read->line.written))) continue;
        const Ingredient& food = *knowledge.ingredient(read->line.ingredient);
        meat = meat || food.meat.has_value();
        salt = salt || food.family == "salts";
    }
    return meat && salt;
}

// Foods without an amount among others with one, none of them salt, in whatever words beside them: "chard 1 kg", "spinazie zorb".
bool only_foods_unweighed(const std::vector<TextLine>& lines, std::string_view file, const Knowledge& knowledge) {
    return std::all_of(lines.begin(), lines.end(), [&](const TextLine& line) {
        const auto read = read_line(line.text, Origin(file, line.place), knowledge);
        if (read) return knowledge.ingredient(read->line.ingredient)->family != "salts";
        if (has_digit(line.text)) return false;
        const auto foods = foods_in_any_tongue(line.text, knowledge);
        return !foods.empty() && std::none_of(foods.begin(), foods.end(), [](const Ingredient* food) { return food->family == "salts"; });
    });
}

bool holds_salt(const Formula& formula, const Knowledge& knowledge) {
    return std::any_of(formula.lines.begin(), formula.lines.end(),
                       [&](const Line& line) { return knowledge.ingredient(line.ingredient)->family == "salts"; });
}

bool holds_meat(const Formula& formula, const Knowledge& knowledge) {
    return std::any_of(formula.lines.begin(), formula.lines.end(),
                       [&](const Line& line) { return knowledge.ingredient(line.ingredient)->meat.has_value(); });
}

bool holds_salt(const Inventory& stock, const Knowledge& knowledge) {
    return std::any_of(stock.items.begin(), stock.items.end(),
                       [&](const InventoryItem& item) { return knowledge.ingredient(item.ingredient)->family == "salts"; });
}

}  // namespace

Result<Formula> read_formula(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    auto draft = draft_of(text, file, knowledge);
    if (!draft) return Failure(std::move(draft.error()));
    return finished(std::move(*draft), knowledge);
}

Result<FormulaReading> read_closely(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    auto draft = draft_of(text, file, knowledge);
    if (!draft) return Failure(std::move(draft.error()));
    return shown(std::move(*draft), knowledge);
}

Result<Inventory> read_inventory(std::string_view text, std::string_view file, const Knowledge& knowledge, const Formula* formula) {
    const auto clean = readable(text, file);
    if (!clean) return Failure(clean.error());
    if (!looks_like_json(*clean)) return read_plain_inventory(*clean, file, knowledge, formula);
    const auto root = read_json(*clean, file);
    if (!root) return Failure(root.error());
    return read_json_inventory(*root, file, knowledge, formula);
}

bool looks_like_stock(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    const auto clean = readable(text, file);
    if (!clean || looks_like_html(*clean)) return false;
    if (looks_like_json(*clean)) {
        const auto root = read_json(*clean, file);
        return root && root->member("have") != nullptr;
    }
    const auto lines = text_lines(*clean);
    const StockNamer namer(knowledge, nullptr);
    if (lines.empty() || fold(key_value(lines.front().text).key) == "title") return false;
    // A formula opens with a title, a list with a food or a heading.
    if (says_list(*clean, knowledge) || heads_stock_table(lines.front().text, knowledge)) return true;
    const bool food_first = opens_with_food(lines.front(), file, namer, knowledge);
    const bool opens_list = food_first || stock_line(lines.front().text, knowledge).says != StockWord::weighed;
    const bool recipe = (!opens_list || is_title(lines.front().text, knowledge)) &&
                        weighs_meat_and_salt(lines, file, knowledge);  // with a "no garlic" in it
    const auto names_food = [&](std::string_view names) {
        const auto parts = parts_of_list(names, knowledge);
        return !parts.empty() && namer.knows(parts.front());
    };
    const bool said = std::any_of(lines.begin(), lines.end(), [&](const TextLine& line) {
        const StockLine says = stock_line(line.text, knowledge);
        if (!recipe && denied_in(line.text, names_food, knowledge)) return true;
        if (const auto but = exception_in(line.text, knowledge)) {
            const auto some = without_loose_amount(but->some, knowledge);
            if (std::any_of(some.begin(), some.end(), [&](std::string_view name) { return namer.knows(name); })) return true;
        }
        if (says.says == StockWord::nothing_else || says.says == StockWord::everything_else) return true;
        if (recipe || (says.says != StockWord::none && !(says.says == StockWord::some && opens_list)))
            return false;  // "some sage" stands in recipes too
        const auto names = parts_of_list(says.names, knowledge);
        return !names.empty() && namer.knows(names.front());
    });
    if (said) return true;
    // What can be read neither as a formula nor as a list is more likely a formula with a slip in it.
    const bool titled = !food_first && is_list_title(lines.front().text, knowledge);
    if (!food_first && !titled) return false;
    if (const auto formula = read_formula(text, file, knowledge))
        return (titled || formula->title.empty()) && !holds_salt(*formula, knowledge) &&
               (tells_packing(lines) || !holds_meat(*formula, knowledge));
    if (food_first && only_foods_unweighed(lines, file, knowledge)) return true;
    const auto stock = read_inventory(text, file, knowledge);
    if (titled && weighs_meat_and_salt(lines, file, knowledge)) return false;
    constexpr std::size_t few = 3;  // every third of a list may be what nobody knows; without salt it is no formula
    return stock && (stock->aside.empty() || (few * stock->aside.size() <= stock->read.size() && !holds_salt(*stock, knowledge)));
}

}  // namespace standin
