#include "formula/amounts/fact_text.hpp"

#include <array>
#include <cctype>
#include <utility>

#include "core/band.hpp"
#include "core/names.hpp"
#include "formula/lexer/listed_word.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

struct FigureOfFact {
    Band value;
    bool banded = false;
};

std::optional<FigureOfFact> figure_at(Cursor& cursor) {
    const auto number = number_at(cursor, false);
    if (!number) return std::nullopt;
    return FigureOfFact{number->band, number->band.low < number->band.high};
}

// The ends in brackets behind a figure: "(5.4 to 5.9)", with or without the unit again.
void take_ends(Cursor& cursor, FigureOfFact& figure, bool (*unit)(Cursor&)) {
    Cursor inside = cursor;
    inside.space();
    if (!inside.eat("(")) return;
    const auto ends = number_at(inside, false);
    if (!ends || ends->band.low > figure.value.mid || ends->band.high < figure.value.mid) return;
    unit(inside);
    inside.space();
    if (!inside.eat(")")) return;
    figure.value = {ends->band.low, figure.value.mid, ends->band.high};
    figure.banded = true;
    cursor.go(inside.at());
}

bool percent(Cursor& cursor) {
    const std::size_t before = cursor.at();
    cursor.space();
    if (cursor.eat("%")) return true;
    cursor.go(before);
    return cursor.eat_any_word({"percent", "pct"}) || (cursor.eat_word("per") && cursor.eat_word("cent"));
}

bool no_unit(Cursor&) { return true; }

bool mg_kg(Cursor& cursor) {
    const std::size_t before = cursor.at();
    if (cursor.eat_word("ppm")) return true;
    if (cursor.eat_word("mg")) {
        cursor.space();
        if ((cursor.eat("/") || cursor.eat_word("per") || cursor.eat_word("a")) && cursor.eat_word("kg")) return true;
    }
    cursor.go(before);
    return false;
}

bool shu(Cursor& cursor) {
    if (cursor.eat_word("shu")) return true;
    if (!cursor.eat_word("scoville")) return false;
    cursor.eat_word("heat");
    cursor.eat_word("unit");
    return true;
}

bool acid_word(Cursor& cursor, const Knowledge& knowledge) {
    const bool of_one = eat_listed(cursor, WordList::acid_of_a_strength, knowledge);
    return eat_listed(cursor, WordList::strength_word, knowledge) || of_one;
}

// "Lactic acid 80 %": the acid ends a name, where no sign stands before it.
bool ends_a_name(std::string_view line, std::size_t at) {
    const auto before = at == 0 ? std::string_view::npos : line.find_last_not_of(" \n", at - 1);
    return before != std::string_view::npos && std::string_view(",;:([").find(line[before]) == std::string_view::npos &&
           std::isdigit(static_cast<unsigned char>(line[before])) == 0;
}

std::optional<FactText> made(FactKind kind, const FigureOfFact& figure, const Cursor& cursor) {
    FactText fact;
    fact.kind = kind;
    fact.value = figure.value;
    fact.banded = figure.banded;
    fact.end = cursor.at();
    return fact;
}

void pass_over(Cursor& cursor, const Knowledge& knowledge) {
    while (eat_listed(cursor, WordList::before_a_figure, knowledge)) {
    }
    cursor.space();
    if (cursor.eat(":") || cursor.eat("=")) cursor.space();
}

// "pH 5.6", "with a pH of 5.6", "5.6 pH"
std::optional<FactText> ph_at(Cursor cursor, const Knowledge& knowledge) {
    while (eat_listed(cursor, WordList::before_ph, knowledge)) {
    }
    const bool led = cursor.eat_word("ph");
    if (led) pass_over(cursor, knowledge);
    auto figure = figure_at(cursor);
    if (!figure || (!led && !cursor.eat_word("ph"))) return std::nullopt;
    take_ends(cursor, *figure, no_unit);
    cursor.eat_word("measured");
    return made(FactKind::ph, *figure, cursor);
}

// "6 % acidity", "acidity 6 %", "60 grain"; bare "6 %"
std::optional<FactText> acid_at(Cursor cursor, bool bare, bool in_a_name, const Knowledge& knowledge) {
    const bool acid_itself = fold(Cursor(cursor).word()) == "acid";
    const bool led = !(in_a_name && acid_itself) && eat_listed(cursor, WordList::strength_word, knowledge);
    if (led) pass_over(cursor, knowledge);
    auto figure = figure_at(cursor);
    if (!figure) return std::nullopt;
    Cursor grain = cursor;
    grain.eat_dash();
    if (!led && grain.eat_word("grain")) {
        constexpr double grain_a_percent = 10;  // by definition: 100 grain is 10 % acetic acid
        figure->value = scaled(figure->value, 1 / grain_a_percent);
        return made(FactKind::acid_pct, *figure, grain);
    }
    if (!percent(cursor)) return std::nullopt;
    take_ends(cursor, *figure, percent);
    const bool told = led || acid_word(cursor, knowledge);
    if (told) take_ends(cursor, *figure, percent);
    if (!told && !bare) return std::nullopt;
    if (!told) {
        Cursor ahead = cursor;
        ahead.space();
        const bool alone = ahead.done() || ahead.rest().front() == ',' || ahead.rest().front() == ')' || ahead.rest().front() == ';';
        const auto next = fold(ahead.word());
        if (!alone && (next == "of" || next == "on" || next == "fat" || next == "lean" || next == "salt")) return std::nullopt;
    }
    auto fact = made(FactKind::acid_pct, *figure, cursor);
    fact->bare = !told;
    return fact;
}

// "300 mg/kg", "12,000 SHU dried"
std::optional<FactText> heat_at(Cursor cursor) {
    auto figure = figure_at(cursor);
    if (!figure) return std::nullopt;
    if (mg_kg(cursor)) {
        take_ends(cursor, *figure, mg_kg);
        cursor.eat_any_word({"capsaicinoid", "capsaicin"});
        return made(FactKind::heat_mg_kg, *figure, cursor);
    }
    if (!shu(cursor)) return std::nullopt;
    take_ends(cursor, *figure, shu);
    HeatOf of = HeatOf::unsaid;
    Cursor tail = cursor;
    tail.eat_any_word({"as", "of", "in"});
    tail.eat_word("the");
    if (tail.eat_any_word({"dried", "dry"})) of = HeatOf::dried;
    else if (tail.eat_word("fresh")) of = HeatOf::fresh;
    if (of != HeatOf::unsaid) {
        tail.eat_any_word({"pod", "basis", "weight", "chile"});
        cursor.go(tail.at());
    }
    auto fact = made(FactKind::heat_shu, *figure, cursor);
    fact->of = of;
    return fact;
}

std::optional<HeatWord> heat_word(Cursor& cursor, const Knowledge& knowledge) {
    const auto eat = [&](WordList list) { return eat_listed(cursor, list, knowledge); };
    while (eat(WordList::before_a_heat)) {
    }
    const bool very = eat(WordList::very_word);
    if (eat(WordList::pods_mild)) return very ? HeatWord::very_mild : HeatWord::mild;
    if (eat(WordList::pods_hot)) return very ? HeatWord::very_hot : HeatWord::hot;
    if (!very && eat(WordList::pods_fiery)) return HeatWord::very_hot;
    if (!very && eat(WordList::pods_as_usual)) return HeatWord::usual;
    return std::nullopt;
}

bool this_year(Cursor& cursor, const Knowledge& knowledge) {
    const std::size_t before = cursor.at();
    if (cursor.eat_word("this") && eat_listed(cursor, WordList::this_crop, knowledge)) {
        cursor.eat("'");
        cursor.eat_word("s");
        return true;
    }
    cursor.go(before);
    return false;
}

// "hot this year", "this year very mild"; bare "hot"
std::optional<FactText> heat_word_at(std::string_view line, Cursor cursor, bool bare, const Knowledge& knowledge) {
    const std::size_t start = cursor.at();
    const bool led = this_year(cursor, knowledge);
    if (led) {
        cursor.space();
        cursor.eat(":");
    }
    const auto word = heat_word(cursor, knowledge);
    if (!word) return std::nullopt;
    const bool told = led || this_year(cursor, knowledge);
    if (!told && !bare) return std::nullopt;
    if (!told) {
        // By itself between commas or brackets; "hot paprika" and "mild ham" are other foods.
        const auto before = line.find_last_not_of(" \n", start == 0 ? 0 : start - 1);
        const bool opens =
            start > 0 && before != std::string_view::npos && (line[before] == ',' || line[before] == '(' || line[before] == ':');
        Cursor ahead = cursor;
        ahead.eat_any_word({"one", "pod"});
        ahead.space();
        if (!opens || !(ahead.done() || ahead.rest().front() == ',' || ahead.rest().front() == ')')) return std::nullopt;
        cursor = ahead;
    }
    FactText fact;
    fact.kind = FactKind::heat_word;
    fact.word = *word;
    fact.bare = !told;
    fact.end = cursor.at();
    return fact;
}

}  // namespace

std::string_view words_of(HeatWord word) {
    constexpr std::array<std::string_view, 5> all{"very mild this year", "mild this year", "as usual this year", "hot this year",
                                                  "very hot this year"};
    return all[static_cast<std::size_t>(word)];
}

std::optional<FactText> fact_at(std::string_view line, std::size_t at, bool bare, const Knowledge& knowledge) {
    const Cursor cursor(line, at);
    auto fact = ph_at(cursor, knowledge);
    if (!fact) fact = heat_at(cursor);
    if (!fact) fact = acid_at(cursor, bare, ends_a_name(line, at), knowledge);
    if (!fact) fact = heat_word_at(line, cursor, bare, knowledge);
    if (fact) fact->begin = at;
    return fact;
}

}  // namespace standin
