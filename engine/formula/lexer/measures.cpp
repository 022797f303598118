#include "formula/lexer/measures.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <unordered_map>

#include "core/names.hpp"
#include "formula/lexer/number_text.hpp"

namespace standin {
namespace {

constexpr Band exact(double size) { return {size, size, size}; }

// Exact by definition. US gallon 231 cubic inches = 3785.411784 mL, pound 453.59237 g, and their parts: NIST Handbook 44 appendix C.
// Imperial gallon 4546.09 mL: UK Units of Measurement Regulations 1995. Metric cup 250 mL, metric spoons 15 and 5 mL, Australian
// tablespoon 20 mL: custom, from memory.
constexpr double pound = grams_a_pound, ounce = pound / 16;
constexpr double gallon = 3785.411784, cup = gallon / 16, fluid_ounce = gallon / 128, tablespoon = gallon / 256, teaspoon = gallon / 768;
constexpr double imperial_gallon = 4546.09;

// A pint without a mark is taken as the US one; the band reaches to the imperial one.
constexpr Band either(double parts) { return {gallon / parts, gallon / parts, imperial_gallon / parts}; }

struct Spelled {
    std::string_view spellings;  // folded, separated by |
    Unit unit;
};

constexpr Unit mass(std::string_view word, double grams) { return {word, Dimension::mass, exact(grams)}; }
constexpr Unit volume(std::string_view word, double ml) { return {word, Dimension::volume, exact(ml)}; }
constexpr Unit count(std::string_view word) { return {word, Dimension::count, exact(0)}; }
constexpr Unit loose(std::string_view word, Band ml) { return {word, Dimension::count, ml}; }

constexpr std::array units{
    Spelled{"g|gm|gr|gram|gramme|gram weight|g wt|grs", mass("g", 1)},
    Spelled{"kg|kilo|kilogram|kilogramme", mass("kg", 1000)},
    Spelled{"dag|dkg|deka|dekagramm|decagram|dekagram", mass("dag", 10)},
    Spelled{"hg|hectogram|hectogramme|etto|etti", mass("hg", 100)},
    Spelled{"mg|milligram|milligramme", mass("mg", 0.001)},
    Spelled{"lb|pound|lbs|#|lb wt|lb weight", mass("lb", pound)},
    Spelled{"oz|ounce|avoirdupois ounce|oz wt|oz weight|ounce weight|wt oz|weight ounce|oz by weight|ounce by weight", mass("oz", ounce)},
    Spelled{"pfund|pfd", mass("pfund", 500)},
    Spelled{"stone", mass("stone", 14 * pound)},
    Spelled{"ml|milliliter|millilitre|cc", volume("ml", 1)},
    Spelled{"cl|centiliter|centilitre", volume("cl", 10)},
    Spelled{"dl|deciliter|decilitre", volume("dl", 100)},
    Spelled{"l|lt|ltr|liter|litre", volume("l", 1000)},
    Spelled{"tsp|ts|tspn|teasp|teaspn|teas|teaspoon|tea spoon|teaspoonful|us tsp|us teaspoon|small spoon", volume("tsp", teaspoon)},
    Spelled{"tbsp|tbs|tbsn|tablesp|tablespn|tb|tbl|tbls|tblsp|tbspn|tablespoon|table spoon|tablespoonful|us tbsp|us tablespoon",
            volume("tbsp", tablespoon)},
    Spelled{"cup|c|cupful|us cup", volume("cup", cup)},
    Spelled{"fl oz|floz|fluid ounce|fluid oz|oz fl|us fl oz|us fluid ounce", volume("fl-oz", fluid_ounce)},
    Spelled{"pint|pt", Unit{"pint", Dimension::volume, either(8)}},
    Spelled{"quart|qt", Unit{"quart", Dimension::volume, either(4)}},
    Spelled{"gallon|gal", Unit{"gallon", Dimension::volume, either(1)}},
    Spelled{"gill", Unit{"gill", Dimension::volume, either(32)}},
    Spelled{"us pint|american pint", volume("us pint", gallon / 8)},
    Spelled{"us quart|american quart", volume("us quart", gallon / 4)},
    Spelled{"us gallon|american gallon", volume("us gallon", gallon)},
    Spelled{"us gill", volume("us gill", gallon / 32)},
    Spelled{"imperial gill|imp gill|uk gill", volume("imperial gill", imperial_gallon / 32)},
    Spelled{"imperial pint|imp pint|uk pint|british pint", volume("imperial pint", imperial_gallon / 8)},
    Spelled{"imperial quart|imp quart|uk quart", volume("imperial quart", imperial_gallon / 4)},
    Spelled{"imperial gallon|imp gallon|uk gallon", volume("imperial gallon", imperial_gallon)},
    Spelled{"imperial fl oz|imperial fluid ounce|imp fl oz|uk fl oz|uk fluid ounce", volume("imperial fl oz", imperial_gallon / 160)},
    Spelled{"metric cup|australian cup|au cup|aus cup|aussie cup", volume("metric cup", 250)},
    Spelled{"metric tbsp|metric tablespoon|uk tbsp|uk tablespoon", volume("metric tbsp", 15)},
    Spelled{"metric tsp|metric teaspoon|uk tsp|uk teaspoon", volume("metric tsp", 5)},
    Spelled{"australian tbsp|australian tablespoon|au tbsp|au tablespoon|aus tbsp|aus tablespoon|aussie tbsp|aussie tablespoon",
            volume("australian tbsp", 20)},
    Spelled{"dessertspoon|dessert spoon|dessertspoonful|dsp", volume("dessertspoon", 10)},
    Spelled{"%|percent|per cent|pct", Unit{"%", Dimension::percent, exact(0.01)}},
    // Loose measures, judgement: spoon sets sold as dash, pinch and smidgen hold 1/8, 1/16 and 1/32 tsp; fingers differ twofold.
    Spelled{"dash", loose("dash", {teaspoon / 16, teaspoon / 8, teaspoon / 4})},
    Spelled{"pinch|pn", loose("pinch", {teaspoon / 32, teaspoon / 16, teaspoon / 8})},
    Spelled{"smidgen", loose("smidgen", {teaspoon / 64, teaspoon / 32, teaspoon / 16})},
    Spelled{"drop", loose("drop", {0.03, 0.05, 0.08})},
    Spelled{"splash", loose("splash", {teaspoon / 2, teaspoon, teaspoon * 3})},
    Spelled{"handful|fistful|fist full|hand full", loose("handful", {cup / 4, cup / 2, cup})},
    // A teacup of the old books: about a gill (US 118 mL, imperial 142 mL), up to three quarters of a cup. Judgement.
    Spelled{"teacup|tea cup|teacupful", loose("teacup", {110, 140, 180})},
    // From memory: wineglasses of the old books hold about two fluid ounces, saltspoons a quarter of a teaspoon.
    Spelled{"wineglass|wine glass|wineglassful|wine glassful", loose("wineglass", {50, 60, 75})},
    Spelled{"saltspoon|salt spoon|saltspoonful", loose("saltspoon", {teaspoon / 6, teaspoon / 4, teaspoon / 2.5})},
    // From memory: a breakfast cup of the old books is half an imperial pint. A glass of wine differs: judgement.
    Spelled{"breakfastcup|breakfast cup|breakfastcupful", loose("breakfastcup", {225, 284, 300})},
    // Judgement: what bars pour, from a small to a large one.
    Spelled{"shot|jigger|liqueur glass", loose("shot", {25, 40, 50})},
    Spelled{"glass|glassful", loose("glass", {90, 125, 200})},
    // Judgement: cut or poured by eye.
    Spelled{"knob|walnut|thumb", loose("knob", {8, 15, 30})},
    Spelled{"glug|drizzle", loose("glug", {5, 12, 25})},
    Spelled{"piece|pc|each|ea|item|fruit", count("piece")},
    Spelled{"inch", count("inch")},  // of a root, by length
    Spelled{"cm|centimeter|centimetre", count("cm")},
    Spelled{"bunch|bundle|bch|bchs", count("bunch")},
    Spelled{"head", count("head")},
    Spelled{"clove", count("clove")},
    Spelled{"sprig", count("sprig")},
    Spelled{"leaf", count("leaf")},
    Spelled{"stalk|rib", count("stalk")},
    Spelled{"slice|rasher", count("slice")},
    Spelled{"pod", count("pod")},
    Spelled{"ear", count("ear")},
    Spelled{"bulb", count("bulb")},
    Spelled{"stick", count("stick")},
    Spelled{"blade", count("blade")},
    Spelled{"strip", count("strip")},
    Spelled{"cube", count("cube")},
    Spelled{"sheet", count("sheet")},
    Spelled{"fillet|filet", count("fillet")},
    Spelled{"block", count("block")},
    Spelled{"can|tin", count("can")},
    Spelled{"packet|pack|package|pkg|sachet|envelope", count("packet")},
    Spelled{"bottle", count("bottle")},
    Spelled{"jar", count("jar")},
    Spelled{"box|carton|punnet", count("box")},
    Spelled{"bag", count("bag")},
    Spelled{"basket|basket full|basketful|colander|colander full|colanderful|bowl|bowl full|bowlful|trug|trugful", count("basket")},
    Spelled{"plant|potted plant", count("plant")},
    Spelled{"pot", count("pot")},
    Spelled{"container|tub", count("container")},
};

const std::unordered_map<std::string_view, const Unit*>& index() {
    static const auto built = [] {
        std::unordered_map<std::string_view, const Unit*> map;
        for (const auto& [spellings, unit] : units)
            for (std::size_t start = 0; start <= spellings.size();) {
                const auto end = std::min(spellings.find('|', start), spellings.size());
                map.emplace(spellings.substr(start, end - start), &unit);
                start = end + 1;
            }
        return map;
    }();
    return built;
}

struct Fill {
    std::string_view words;
    Band factor;
};

// How full a spoon or cup is: judgement (a heaped spoon of powder holds half as much again to twice the level one).
constexpr std::array fills{Fill{"level", exact(1)},          Fill{"heaped", {1.25, 1.6, 2.2}}, Fill{"heaping", {1.25, 1.6, 2.2}},
                           Fill{"rounded", {1.1, 1.3, 1.6}}, Fill{"scant", {0.8, 0.9, 0.97}},  Fill{"generous", {1.0, 1.1, 1.25}},
                           Fill{"good", {1.0, 1.1, 1.25}},   Fill{"packed", exact(1)},         Fill{"full", exact(1)},
                           Fill{"firmly", exact(1)},         Fill{"tightly", exact(1)},        Fill{"loosely", exact(1)},
                           Fill{"lightly", exact(1)}};

void read_manner(Cursor& cursor, UnitRead& read) {
    bool loose = false;
    for (bool more = true; more;) {
        more = false;
        for (const auto& [word, factor] : fills)
            if (cursor.eat_word(word)) {
                read.factor = factor;
                loose = loose || word == "loosely" || word == "lightly";
                read.packed = (read.packed || word == "packed") && !loose;
                more = true;
            }
        Cursor ahead = cursor;
        ahead.space();
        const auto here = ahead.word();
        if (const auto size = size_word(fold(here)); !here.empty() && !size.empty()) {
            read.size = size;
            cursor.go(ahead.at() + here.size());
            cursor.eat(".");
            more = true;
        }
    }
}

// The longest unit among the next three words.
const Unit* unit_words(Cursor& cursor) {
    const Unit* best = nullptr;
    std::size_t end = cursor.at();
    std::string joined;
    Cursor ahead = cursor;
    for (int words = 0; words < 3; ++words) {
        ahead.space();
        if (words > 0) ahead.eat("-");
        const auto here = ahead.word();
        if (here.empty()) break;
        if (words == 0 && (here == "T" || here == "t")) {
            cursor.go(ahead.at() + 1);
            cursor.eat(".");
            return unit_named(here == "T" ? "tbsp" : "tsp");
        }
        ahead.go(ahead.at() + here.size());
        if (!joined.empty()) joined += ' ';
        joined += fold(here);
        const bool dotted = ahead.eat(".");
        if (const Unit* unit = unit_named(joined)) {
            best = unit;
            end = ahead.at();
        }
        if (dotted && best && joined.size() > 3) break;
    }
    cursor.go(end);
    return best;
}

}  // namespace

const Unit* unit_named(std::string_view folded) {
    const auto found = index().find(folded);
    return found == index().end() ? nullptr : found->second;
}

namespace {

// "1 EL gehäuft", "un cucchiaio colmo": said behind the spoon.
void read_fill_behind(Cursor& cursor, UnitRead& read) {
    Cursor ahead = cursor;
    ahead.space();
    const auto here = ahead.word();
    const auto factor = here.empty() ? std::nullopt : fill_word(fold(here));
    if (!factor) return;
    read.factor = *factor;
    cursor.go(ahead.at() + here.size());
}

}  // namespace

std::optional<UnitRead> unit_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    UnitRead read;
    cursor.space();
    if (cursor.eat("%")) read.unit = unit_named("%");
    else if (cursor.eat("#")) read.unit = unit_named("lb");
    else if (cursor.eat("\"") || cursor.eat("\u2033") || cursor.eat("\u201D")) read.unit = unit_named("inch");
    else {
        cursor.eat("-");
        read_manner(cursor, read);
        read.unit = unit_words(cursor);
        if (read.unit && read.unit->dimension == Dimension::volume) read_fill_behind(cursor, read);
    }
    if (read.unit) return read;
    cursor.go(before);
    return std::nullopt;
}

std::optional<Band> fill_at(Cursor& cursor) {
    const std::size_t before = cursor.at();
    for (const auto& [word, factor] : fills)
        if (cursor.eat_word(word)) {
            Cursor number = cursor;
            if (number_at(number, false)) return factor;
            cursor.go(before);
        }
    return std::nullopt;
}

std::optional<Band> fill_word(std::string_view folded) {
    if (folded == "rounding") folded = "rounded";
    for (const std::string_view told : {"heaped", "heaping", "rounded", "scant", "level"})
        if (folded == told)
            for (const auto& [word, factor] : fills)
                if (word == told) return factor;
    return std::nullopt;
}

std::string_view size_word(std::string_view folded) {
    if (folded == "small" || folded == "little" || folded == "sm") return "small";
    if (folded == "medium" || folded == "med") return "medium";
    if (folded == "large" || folded == "big" || folded == "lg" || folded == "lrg" || folded == "lge") return "large";
    return {};
}

bool is_length(const Unit& unit) { return unit.word == "inch" || unit.word == "cm"; }

bool is_metric(const Unit& unit) {
    for (const std::string_view word : {"g", "kg", "hg", "dag", "mg", "ml", "cl", "dl", "l"})
        if (unit.word == word) return true;
    return false;
}

bool preserves(const Unit& unit) { return unit.word == "can" || unit.word == "jar"; }

bool is_container(const Unit& unit) {
    for (const std::string_view word : {"can", "packet", "bottle", "jar", "box", "bag", "container"})
        if (unit.word == word) return true;
    return false;
}

}  // namespace standin
