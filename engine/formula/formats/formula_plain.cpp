#include "formula/formats/formula_plain.hpp"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/names.hpp"
#include "core/typed_reader.hpp"
#include "formula/amounts/heading_base.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/amounts/sheet_size.hpp"
#include "formula/amounts/sheet_unit.hpp"
#include "formula/formats/table_text.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/hazards/line_beside.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/lexer/text_lines.hpp"
#include "formula/lexer/trouble.hpp"
#include "formula/line/line_text.hpp"
#include "formula/line/several_in_line.hpp"
#include "formula/words/limes.hpp"
#include "formula/words/line_asides.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

bool is_process(std::string_view key) {
    const auto& keys = process_keys();
    return std::find(keys.begin(), keys.end(), fold(key)) != keys.end();
}

// "300 g spinch" is a line with a slip in it, no title.
bool starts_with_weight(std::string_view text) {
    Cursor cursor(text);
    if (!number_at(cursor, false)) return false;
    const auto unit = unit_at(cursor);
    return unit && (unit->unit->dimension == Dimension::mass || unit->unit->dimension == Dimension::volume);
}

// "salt, 1.7 % of meet", "pork shoulder 2 kg of it": a share or a weight anywhere is more than a title says.
bool tells_an_amount(std::string_view text) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool starts = std::isdigit(static_cast<unsigned char>(text[i])) != 0 && (i == 0 || text[i - 1] == ' ' || text[i - 1] == ',');
        if (!starts) continue;
        Cursor cursor(text, i);
        if (!number_at(cursor, false)) continue;
        cursor.space();
        if (cursor.eat("%")) return true;
        const auto unit = unit_at(cursor);
        if (unit && (unit->unit->dimension == Dimension::mass || unit->unit->dimension == Dimension::volume ||
                     unit->unit->dimension == Dimension::percent))
            return true;
    }
    return false;
}

// "Bärlauch-Bratwurst", "salsiccia verde": the name of a sausage, whatever it is made of.
bool names_the_sausage(const std::vector<Word>& words, std::size_t end, const Knowledge& knowledge) {
    return std::any_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(end), [&](const Word& word) {
        return knowledge.in_list(WordList::names_the_sausage, std::string_view(word.folded).substr(word.folded.rfind('-') + 1));
    });
}

// "Chile verde links, 25 lb batch", "Sausage for 4 kg meat": one weight, and words that say it is of the whole.
bool tells_batch_size(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    for (std::size_t i = 1; i < words.size(); ++i) {
        Cursor cursor(text, words[i].begin);
        if (!number_at(cursor, false)) continue;
        const auto unit = unit_at(cursor);
        if (!unit) continue;  // "sheet 14, batch 10 kg"
        if (unit->unit->dimension != Dimension::mass || text.find_first_of("0123456789%", cursor.at()) != std::string_view::npos)
            return false;
        std::size_t next = i;
        while (next < words.size() && words[next].begin < cursor.at()) ++next;
        if (next < words.size() && words[next].folded == "of") ++next;
        std::size_t lead = i - 1;
        if (lead > 0 && (words[lead].folded == "of" || words[lead].folded == "size")) --lead;  // "batch of 10 kg"
        const bool numbered =                                                                  // "No. 14 Country, 10 kg"
            i > 2 && knowledge.in_list(WordList::numbers_a_version, words[0].folded) && has_digit(words[1].raw);
        const bool by_word = knowledge.in_list(WordList::before_batch_size, words[lead].folded);
        const bool led = numbered || by_word || names_the_sausage(words, i, knowledge),
                   told = next < words.size() && knowledge.in_list(WordList::behind_batch_size, words[next].folded);
        const std::size_t last = by_word && !numbered ? lead : i;
        const std::string name = phrase(words, 0, last);
        return (led || told) && !knowledge.ingredient_named(name) && !knowledge.ingredient_meant(name);
    }
    return false;
}

// "06c", "3l": a number that stands at `at` with one letter behind it that is a unit too, and then no more figures.
std::optional<std::size_t> number_and_letter(std::string_view text, std::size_t at) {
    Cursor cursor(text, at);
    if (!number_at(cursor, false)) return std::nullopt;
    const std::size_t figures = cursor.at();
    cursor.space();
    const std::size_t letter = cursor.at();
    const bool one = letter < text.size() && std::isalpha(static_cast<unsigned char>(text[letter])) != 0 &&
                     (letter + 1 == text.size() || std::isalnum(static_cast<unsigned char>(text[letter + 1])) == 0);
    const bool whole = std::all_of(text.begin() + static_cast<std::ptrdiff_t>(at), text.begin() + static_cast<std::ptrdiff_t>(figures),
                                   [](unsigned char c) { return std::isdigit(c) != 0; });
    if (!one || !whole || text.find_first_of("0123456789%", letter) != std::string_view::npos) return std::nullopt;
    return figures;
}

// "Case 06c (invented)", "Version 3l", "Merguez 2g": which of several it is, and no weight of anything.
bool numbers_a_version(std::string_view text, const Knowledge& knowledge) {
    const auto words = words_of(text);
    for (std::size_t i = 1; i < words.size(); ++i) {
        const auto figures = number_and_letter(text, words[i].begin);
        if (!figures) continue;
        const std::string name = phrase(words, 0, i);
        if (knowledge.ingredient_named(name) || knowledge.ingredient_meant(name)) return false;
        const bool counted = text[words[i].begin] == '0' && *figures >= words[i].begin + 2;  // no amount begins with a nought
        return counted || knowledge.in_list(WordList::numbers_a_version, words[i - 1].folded);
    }
    return false;
}

// A title may well be "Sheep casing banger"; with an amount it is a line.
bool names_a_casing(std::string_view text, const Knowledge& knowledge) { return has_digit(text) && beside_the_mass(text, knowledge); }

// "Salt" above the lines is more likely one that lost its amount; an animal by itself ("Venison") may well be a title.
bool names_one_food(std::string_view text, const Knowledge& knowledge) {
    const auto* food = knowledge.ingredient_named(text);
    if (!food) food = knowledge.ingredient_meant(text);
    if (!food || !food->meat) return food != nullptr;
    const std::string folded = fold(text);
    return knowledge.in_list(WordList::cut_of_meat, folded.substr(folded.rfind(' ') + 1));
}

class PlainReader {
public:
    PlainReader(std::string_view file, const Knowledge& knowledge, std::optional<bool> limes) : file_(file), knowledge_(knowledge) {
        draft_.limes = limes;
    }

    Draft read(const std::vector<TextLine>& written, const std::vector<TextLine>& comments) {
        const bool named = title_in_comment(written, comments);
        if (named) title(comments.front(), comments.front().text.substr(2));
        for (const auto& line : comments) {
            if (named && &line == &comments.front()) continue;
            look(line, true);
            ask_of_comment(line);
        }
        const PlainTables plain = without_tables(written, knowledge_);
        for (const auto& line : plain.passed) look(line, true);
        auto& told = draft_.formula.read_as;
        told.insert(told.begin(), plain.told.begin(), plain.told.end());
        const auto& lines = plain.lines;
        for (std::size_t i = 0; i < lines.size() && !draft_.hopeless(); ++i) {
            if (i == 0 && named && heads_ingredients(lines[0].text)) {
                take_heading(draft_, lines[0].text, describe(file_, lines[0].place), knowledge_);
                continue;
            }
            if (i == 0 && !named && takes_title(lines)) continue;
            if (i > 0 && lines[i].place.line > lines[i - 1].place.line + 1) end_base();
            if (method(lines[i]) || remark_on_title(lines[i])) continue;
            may_be_title_ = i == 0;
            if (!header(lines[i]) && !keyed(lines[i])) ingredient(lines[i]);
        }
        if (plain.shares_of != Whole::unsaid) draft_.shares_of = plain.shares_of;
        if (draft_.lines.empty() && !draft_.troubles.any())
            draft_.troubles.add({Trouble::bad_data,
                                 "no ingredient lines: expected a title, then lines such as \"300 g spinach\"",
                                 describe(file_, {1, 1}),
                                 {}});
        return std::move(draft_);
    }

private:
    // "**Ingredients** (makes about 24 links)"
    bool heads_ingredients(std::string_view text) const {
        const auto words = words_of(text.substr(std::min(text.size(), text.find_first_not_of("*_ "))));
        return !words.empty() && (text.starts_with("**") || text.starts_with("__")) &&
               knowledge_.in_list(WordList::column_name, words.front().folded);
    }

    // "# Nettle sausage" above lines that have no other title.
    bool title_in_comment(const std::vector<TextLine>& lines, const std::vector<TextLine>& comments) const {
        if (lines.empty() || comments.empty() || comments.front().place.line > lines.front().place.line) return false;
        const std::string_view text = comments.front().text;
        if (!text.starts_with("# ") || tells_an_amount(text) || names_one_food(text.substr(2), knowledge_)) return false;
        return heads_ingredients(lines.front().text) || !is_title(lines.front().text, knowledge_) || is_beside_the_lines(lines.front());
    }

    // "Makes about 16", "For 4 people": below a title it is no line.
    bool is_beside_the_lines(const TextLine& line) const {
        Draft below;
        take_ingredient_line(below, line.text, describe(file_, line.place), Origin(file_, line.place), knowledge_);
        return below.lines.empty();
    }

    // A blank line ends what a heading says of the lines below it.
    void end_base() {
        outside_.clear();
        if (!draft_.lines.empty() && draft_.lines.back().base == draft_.bases.size()) draft_.under_base = false;
    }

    bool takes_title(const std::vector<TextLine>& lines) {
        const TextLine& line = lines.front();
        const Counted counted = counted_food(lines);
        if (counted == Counted::open)
            draft_.troubles.add({Trouble::bad_data,
                                 "\"" + one_line(line.text) +
                                     "\" may be the title or a line, and so much of that food would be in the mass: write \"title: " +
                                     one_line(line.text) + "\", or a weight",
                                 describe(file_, line.place),
                                 {}});
        else if (!is_title(line.text, knowledge_) && !named_below(lines) && counted != Counted::title) return false;
        title(line, line.text);
        return true;
    }

    enum class Counted { no, open, title };

    // "One habanero" above "10 g habanero" is what the sausage is called; with a figure, or by itself above a blank line, it may be a line.
    Counted counted_food(const std::vector<TextLine>& lines) const {
        const std::string_view text = lines.front().text;
        const auto words = words_of(text);
        const bool figure = !words.empty() && only_digits(words.front().raw);
        if (words.size() < 2 || lines.size() < 2 || (!figure && !knowledge_.in_list(WordList::counting_word, words.front().folded)))
            return Counted::no;
        if (unit_named(words[1].folded) || text.find_first_of("0123456789", words[1].begin) != std::string_view::npos) return Counted::no;
        const auto counted = read_line(text, Origin("", lines.front().place), knowledge_);
        if (!counted) return Counted::no;
        const bool below = std::any_of(lines.begin() + 1, lines.end(), [&](const TextLine& line) {
            if (!tells_an_amount(line.text)) return false;
            const auto read = read_line(line.text, Origin("", line.place), knowledge_);
            return read && read->line.ingredient == counted->line.ingredient;
        });
        if (below) return figure ? Counted::open : Counted::title;
        return lines[1].place.line > lines[0].place.line + 1 ? Counted::open : Counted::no;
    }

    // "Chicken thigh" above "1000 g chicken thigh" is what the sausage is called.
    bool named_below(const std::vector<TextLine>& lines) const {
        const std::string_view text = lines.front().text;
        if (has_digit(text) || !names_one_food(text, knowledge_)) return false;
        const auto* food = knowledge_.ingredient_named(text);
        if (!food) food = knowledge_.ingredient_meant(text);
        return std::any_of(lines.begin() + 1, lines.end(), [&](const TextLine& line) {
            const auto read = read_line(line.text, Origin("", line.place), knowledge_);
            if (read) return food && read->line.ingredient == food->id;
            return starts_with_weight(line.text) && fold(line.text).find(fold(text)) != std::string::npos;
        });
    }

    void title(const TextLine& line, std::string_view text) {
        draft_.formula.title = text;
        look_through_title(draft_, text, describe(file_, line.place), knowledge_);
        const auto unit = unit_in_title(text, knowledge_);
        if (unit) draft_.unit = unit->unit;
        if (unit && unit->per) {
            draft_.bases.push_back({*unit->per, one_line(text), describe(file_, line.place)});
            draft_.title_base = draft_.bases.size();
        }
        if (const auto size = unit && unit->per ? std::nullopt : size_in_title(text, knowledge_))
            draft_.size = DraftSize{size->grams, size->of, false, true, 0, std::string(text), describe(file_, line.place)};
        draft_.shares_of = whole_in_words(text, knowledge_);
    }

    void look(const TextLine& line, bool lost = false) { look_through(draft_, line.text, describe(file_, line.place), knowledge_, lost); }

    // What a swap of the knowledge asks for is known; anything else may hide something that can hurt.
    void task(const TextLine& line, std::string_view value) {
        const auto& swaps = knowledge_.records().swaps;
        const bool known = std::any_of(swaps.begin(), swaps.end(), [&](const Swap& swap) {
            return !swap.note.empty() && value.size() > swap.note.size() && value.substr(value.size() - swap.note.size()) == swap.note;
        });
        if (!known) look(line);
        draft_.formula.to_do.emplace_back(value);
    }

    // "(family recipe, for 1 kg of meat)" above the first line: a bracket that names no food.
    bool remark_on_title(const TextLine& line) {
        constexpr std::size_t longest_name = 4;  // words
        if (!draft_.lines.empty() || draft_.formula.title.empty() || line.text.size() < 3 || line.text.front() != '(' ||
            line.text.find(')') + 1 != line.text.size())
            return false;
        const std::string_view said = line.text.substr(1, line.text.size() - 2);
        if (starts_with_weight(said) || !foods_named(said, longest_name, knowledge_).empty() ||
            read_line(said, Origin("", line.place), knowledge_))
            return false;
        look(line, true);
        draft_.said_of_recipe.emplace_back(one_line(line.text));
        return true;
    }

    // What follows a line that says "Method" is left out, but for the process in our own words; so is a paragraph anywhere.
    bool method(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        constexpr std::array<std::string_view, 5> own{"note", "title", "parent", "date", "do"};
        if (is_process(key) || std::find(own.begin(), own.end(), fold(key)) != own.end()) return false;
        const std::string folded = fold(line.text);
        const bool head = knowledge_.in_list(WordList::method_heading, folded);
        const bool led =
            !value.empty() && knowledge_.in_list(WordList::method_heading, fold(key)) && !tells_an_amount(value);  // "Method: mix."
        in_method_ = in_method_ || head || led;
        if (!in_method_ && (!is_paragraph(line.text) || !several_in_line(line.text, Origin(file_, line.place), knowledge_).empty()))
            return false;
        if (!head && weighs_another_food(line)) return false;
        look(line, true);
        if (head) draft_.headings.emplace_back(one_line(line.text));
        if (!head) {
            draft_.formula.read_as.push_back(reason_about(ReasonKind::part_of_method, std::string(line.text)));
            draft_.formula.method.emplace_back(line.text);
        }
        return true;
    }

    // "75 g ground almonds" below the method: a line that no line above has. "200 g of the meat" is told of one.
    bool weighs_another_food(const TextLine& line) const {
        if (!starts_with_weight(line.text)) return false;
        const auto read = read_line(line.text, Origin(file_, line.place), knowledge_);
        if (!read) return false;
        return std::none_of(draft_.lines.begin(), draft_.lines.end(), [&](const DraftLine& other) {
            return (other.read && !other.beside && other.read->line.ingredient == read->line.ingredient) ||
                   (other.beside && other.beside->ingredient == read->line.ingredient);
        });
    }

    // "# 40 g walnuts": struck out or not, nobody can tell.
    void ask_of_comment(const TextLine& line) {
        auto text = line.text;
        text.remove_prefix(std::min(text.size(), text.find_first_not_of("# ")));
        if (!starts_with_weight(text) || !read_line(text, Origin(file_, line.place), knowledge_)) return;
        draft_.troubles.add({Trouble::bad_data,
                             "\"" + std::string(line.text) +
                                 "\" weighs a food behind a \"#\", where it is in no weight and on no label: take the sign "
                                 "off if it goes in, and the line out if it does not",
                             describe(file_, line.place),
                             {}});
    }

    // Sentences: long, with an end, and no amount at the start.
    bool is_paragraph(std::string_view text) const {
        constexpr std::size_t least_words = 9;  // judgement
        const auto all = words_of(text);
        const auto words = static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [](const Word& word) {  // no dots of a leader
            return std::any_of(word.folded.begin(), word.folded.end(), [](unsigned char c) { return std::isalnum(c) != 0; });
        }));
        if (words < least_words || text.back() != '.') return false;
        return !read_line(text, Origin("", {1, 1}), knowledge_) && !tells_an_amount(text.substr(0, text.find(' ', text.find(' ') + 1)));
    }

    bool header(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        if (key.empty() || !value.empty() || heading_base(line.text, knowledge_)) return false;
        const std::string folded = fold(key);
        const bool known = folded.rfind("for ", 0) == 0 ||  // "For the paste:"
                           folded == "ingredient" || folded == "process" || folded == "line" || folded == "formula" || folded == "method";
        const std::string outside = known || value.empty() ? purpose_of_heading(key) : std::string();
        if (known || !outside.empty()) {
            take_heading(draft_, line.text, describe(file_, line.place), knowledge_);
            draft_.under_base = false;
            outside_ = outside;
        }
        return known || !outside.empty();
    }

    // "Coating (not in the mass)", "For dusting": what the lines below it are for; empty where they go into the mass.
    std::string purpose_of_heading(std::string_view key) const {
        for (const auto& word : words_of(key))
            if (knowledge_.in_list(WordList::coat_purpose, word.folded)) return word.folded;
        const std::string folded = " " + fold(key) + " ";
        return folded.find(" not in the ma") == std::string::npos && folded.find(" not in the mix ") == std::string::npos ? "" : "serving";
    }

    // "For the pan: 50 g butter", and what stands below such a heading, with its purpose behind it.
    std::string with_purpose(std::string_view text) const {
        const auto [key, value] = key_value(text);
        const bool led = fold(key).rfind("for ", 0) == 0 && starts_with_weight(value);
        if (led && !coat_purpose(key, knowledge_).empty()) return std::string(value) + ", " + fold(key);
        if (led && !outside_purpose(key, knowledge_).empty()) return std::string(value) + ", for frying";
        if (outside_.empty() || !coat_purpose(text, knowledge_).empty()) return std::string(text);
        return std::string(text) + ", for " + outside_;
    }

    bool keyed(const TextLine& line) {
        const auto [key, value] = key_value(line.text);
        const std::string folded = fold(key);
        if (folded == "note") look(line);
        if (folded == "title") title(line, value);
        else if (folded == "note") draft_.formula.note += (draft_.formula.note.empty() ? "" : "\n") + std::string(value);
        else if (folded == "parent") draft_.formula.parent = value;
        else if (folded == "date") draft_.formula.date = value;
        else if (folded == "do") task(line, value);
        else if (cooked_so(line, folded, value) || core_so(line, folded, value)) return true;
        else if (!is_process(key)) return false;
        else if (auto wrong = set_process(draft_.formula.process, key, value, knowledge_)) {
            wrong->where =
                describe(file_, {line.place.line, line.place.column + static_cast<std::size_t>(value.data() - line.text.data())});
            draft_.troubles.add(std::move(*wrong));
        } else if (is_kitchen_word(key, value, knowledge_)) {
            keep_as_method(line);
        }
        return true;
    }

    void keep_as_method(const TextLine& line) {
        look(line, true);
        draft_.formula.read_as.push_back(reason_about(ReasonKind::part_of_method, std::string(line.text)));
        draft_.formula.method.emplace_back(line.text);
    }

    // "cook: pan, until golden outside", "cook: sous vide 54 C 1 h": a way of cooking, and what the method says of it.
    bool cooked_so(const TextLine& line, const std::string& key, std::string_view value) {
        if (key != "cook") return false;
        if (!set_process(draft_.formula.process, key, value, knowledge_)) {
            if (is_kitchen_word(key, value, knowledge_)) keep_as_method(line);
            return true;
        }
        if (knowledge_.in_list(WordList::cook_smoked, fold(value))) return false;  // "barbecue smoker" is no barbecue
        for (auto end = value.find_last_of(" ,"); end != std::string_view::npos && end > 0; end = value.find_last_of(" ,", end - 1)) {
            const auto way = value.substr(0, value.find_last_not_of(" ,", end) + 1);
            if (way.empty() || set_process(draft_.formula.process, key, way, knowledge_)) continue;
            keep_as_method(line);
            return true;
        }
        return false;
    }

    // "Kern: 50 C, glasig", "température à coeur: 68 °C".
    bool core_so(const TextLine& line, const std::string& key, std::string_view value) {
        if (!knowledge_.in_list(WordList::core_key, key)) return false;
        const auto end = value.find(',');
        if (auto wrong = set_process(draft_.formula.process, "core", value.substr(0, end))) {
            wrong->where = describe(file_, line.place);
            draft_.troubles.add(std::move(*wrong));
        } else if (end != std::string_view::npos) {
            keep_as_method(line);
        }
        return true;
    }

    void ingredient(const TextLine& line) {
        const std::size_t before = draft_.lines.size();
        if (is_heading(line.text, knowledge_)) outside_ = purpose_of_heading(line.text);
        take_ingredient_line(draft_, with_purpose(line.text), describe(file_, line.place), Origin(file_, line.place), knowledge_);
        if (draft_.lines.size() == before || draft_.lines.back().read) return;
        if (may_be_title_) may_be_called_so(line);
        const auto key = key_value(line.text).key;
        const auto hints = key.empty() ? std::vector<std::string>{} : nearest_words(fold(key), process_keys());
        if (!hints.empty())
            draft_.lines.back().read =
                failure(Trouble::bad_data, "neither an ingredient line nor a part of the process: \"" + std::string(key) + "\"",
                        describe(file_, line.place), hints);
    }

    // "Zorb 300 g" above the lines: a food that nobody knows, or what the sausage is called.
    void may_be_called_so(const TextLine& line) {
        auto& read = draft_.lines.back().read;
        if (read.error().not_known == NotKnown::nothing) return;
        Error error = read.error();
        error.hints.push_back("title: " + one_line(line.text));
        read = Failure(std::move(error));
    }

    std::string_view file_;
    const Knowledge& knowledge_;
    Draft draft_;
    bool may_be_title_ = false;  // the first line, while it is read
    bool in_method_ = false;
    std::string outside_;  // what the lines below a heading are for, outside the mass
};

}  // namespace

bool is_title(std::string_view line, const Knowledge& knowledge) {
    const auto key = key_value(line).key;
    return fold(key) != "title" && !is_process(key) && !knowledge.in_list(WordList::core_key, fold(key)) &&
           !heading_base(line, knowledge) && !starts_with_weight(line) &&
           (!tells_an_amount(line) || tells_batch_size(line, knowledge) || numbers_a_version(line, knowledge)) &&
           !names_a_casing(line, knowledge) && !names_one_food(line, knowledge) && !read_line(line, Origin("", {1, 1}), knowledge);
}

Draft read_plain_formula(std::string_view text, std::string_view file, const Knowledge& knowledge) {
    return PlainReader(file, knowledge, limes_in(text, knowledge)).read(text_lines(text), comment_lines(text));
}

}  // namespace standin
