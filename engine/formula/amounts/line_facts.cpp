#include "formula/amounts/line_facts.hpp"

#include <algorithm>
#include <cmath>

#include "core/band.hpp"
#include "core/names.hpp"
#include "formula/amounts/fact_band.hpp"
#include "knowledge/records/word_list.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

bool starts_word(const std::string& line, std::size_t at) {
    if (line[at] == ' ' || line[at] == '(' || line[at] == ',') return false;
    if (at == 0) return true;
    const char before = line[at - 1];
    return before == ' ' || before == '(' || before == '[' || before == '\n' || before == ';' || before == ':' || before == ',';
}

// A comma between digits parts no words.
bool inside_number(const std::string& line, std::size_t at) {
    const auto digit = [](char c) { return c >= '0' && c <= '9'; };
    return at > 1 && line[at - 1] == ',' && digit(line[at - 2]) && digit(line[at]);
}

// Of these the knowledge has one record for all cuts.
bool known_as_a_whole(Species species) {
    return species == Species::game || species == Species::goat || species == Species::rabbit || species == Species::duck;
}

bool near(double a, double b) { return std::abs(a - b) < 1e-6; }

bool same(const std::optional<Band>& a, const std::optional<Band>& b) {
    if (a.has_value() != b.has_value()) return false;
    return !a || (near(a->low, b->low) && near(a->mid, b->mid) && near(a->high, b->high));
}

std::optional<Band>& place_of(FactKind kind, Line& line) {
    return kind == FactKind::ph ? line.ph : kind == FactKind::acid_pct ? line.acid_pct : line.heat_mg_kg;
}

// As short as comes back the same: the figure alone where its band is the usual one, else with its ends.
std::string figure_text(const Band& band, FactKind kind, const std::string& before, const std::string& after, const Knowledge& knowledge) {
    const std::string figure = before + exact_text(band.mid) + after;
    FactText plain;
    plain.kind = kind;
    plain.value = exactly(band.mid);
    if (same(fact_spread(plain, knowledge), band)) return figure;
    return figure + " (" + exact_text(band.low) + " to " + exact_text(band.high) + after + ")";
}

std::string heat_text(const Band& heat, const Ingredient& ingredient, const Knowledge& knowledge) {
    for (const auto word : {HeatWord::very_mild, HeatWord::mild, HeatWord::usual, HeatWord::hot, HeatWord::very_hot}) {
        FactText fact;
        fact.kind = FactKind::heat_word;
        fact.word = word;
        if (const auto band = fact_band(fact, ingredient, knowledge); band && same(*band, heat)) return std::string(words_of(word));
    }
    return figure_text(heat, FactKind::heat_mg_kg, "", " mg/kg", knowledge);
}

void tell_of_skin(const Ingredient& ingredient, std::string_view written, Line& line) {
    const std::string& name = ingredient.names.front();
    if (std::find(ingredient.names.begin(), ingredient.names.end(), "skin-on " + name) == ingredient.names.end()) return;
    if (fold(written).find("skin") != std::string::npos) return;
    line.notes.push_back(make_reason(ReasonKind::with_its_skin, {{"fat", {}, ingredient.composition.fat.mid, "%"}}, {name}));
}

std::string first_cut_in(std::string_view text, const Knowledge& knowledge) {
    std::string word;
    for (const char c : fold(text) + " ") {
        if (c >= 'a' && c <= 'z') {
            word += c;
            continue;
        }
        if (knowledge.in_list(WordList::cut_of_meat, word) && word != "trim" && word != "trimming") return word;
        word.clear();
    }
    return {};
}

void tell_of_cut(const Ingredient& ingredient, std::string_view written, const Knowledge& knowledge, Line& line) {
    if (!ingredient.meat || !known_as_a_whole(ingredient.meat->species)) return;
    const std::string& name = ingredient.names.front();
    const std::string cut = first_cut_in(written, knowledge);
    if (cut.empty() || !first_cut_in(name, knowledge).empty()) return;
    line.notes.push_back(make_reason(ReasonKind::cut_not_apart, {{"fat", {}, ingredient.composition.fat.mid, "%"}}, {name}));
    line.notes.back().about = cut;
}

}  // namespace

std::vector<FactText> take_facts(std::string& line, bool bare, const Knowledge& knowledge) {
    std::vector<FactText> all;
    for (std::size_t at = 0; at < line.size(); ++at) {
        if (!starts_word(line, at) || inside_number(line, at)) continue;
        const auto fact = fact_at(line, at, bare, knowledge);
        if (!fact) continue;
        all.push_back(*fact);
        std::fill(line.begin() + static_cast<std::ptrdiff_t>(fact->begin), line.begin() + static_cast<std::ptrdiff_t>(fact->end), ' ');
        at = fact->end - 1;
    }
    return all;
}

bool has_bare_fact(std::string_view line, const Knowledge& knowledge) {
    std::string copy(line);
    const auto facts = take_facts(copy, true, knowledge);
    return std::any_of(facts.begin(), facts.end(), [](const FactText& fact) { return fact.bare; });
}

std::optional<Error> set_facts(const std::vector<FactText>& facts, const Ingredient& ingredient, const Knowledge& knowledge, Line& line) {
    for (const auto& fact : facts) {
        if (fact.bare && !fits_bare(fact, ingredient))
            return Error{Trouble::bad_data, "a share of what: expected \"of meat\" or \"of batch\"", "", {}};
        auto band = fact_band(fact, ingredient, knowledge);
        if (!band) return std::move(band.error());
        auto& place = place_of(fact.kind, line);
        if (place) return Error{Trouble::bad_data, "one fact is told twice: expected it once", "", {}};
        place = *band;
        if (auto note = fact_note(fact, ingredient, *band)) line.notes.push_back(std::move(*note));
    }
    if (const auto told = facts_text(line, ingredient, knowledge); !facts.empty() && !told.empty())
        line.notes.push_back(reason_about(ReasonKind::fact_as_said, told.substr(2), {ingredient.names.front()}));
    return std::nullopt;
}

void tell_of_part(const Ingredient& ingredient, std::string_view written, const Knowledge& knowledge, Line& line) {
    if (!line.fat_pct) {
        tell_of_skin(ingredient, written, line);
        tell_of_cut(ingredient, written, knowledge, line);
    }
}

std::string facts_text(const Line& line, const Ingredient& ingredient, const Knowledge& knowledge) {
    std::string text;
    if (line.ph) text += ", " + figure_text(*line.ph, FactKind::ph, "pH ", "", knowledge);
    if (line.acid_pct) text += ", " + figure_text(*line.acid_pct, FactKind::acid_pct, "", " %", knowledge) + " acidity";
    if (line.heat_mg_kg) text += ", " + heat_text(*line.heat_mg_kg, ingredient, knowledge);
    return text;
}

bool same_facts(const Line& a, const Line& b) {
    return same(a.ph, b.ph) && same(a.acid_pct, b.acid_pct) && same(a.heat_mg_kg, b.heat_mg_kg);
}

}  // namespace standin
