#include "formula/amounts/amount.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/band.hpp"
#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/lexer/trouble.hpp"
#include "knowledge/records/tissue.hpp"

namespace standin {
namespace {

constexpr double liquid_spread = 0.02, volume_spread = 0.10, piece_spread = 0.15;
constexpr double least_grams = 0.001, most_grams = 1e6;

// A small or large piece against the middling one: ratios of the USDA SR28 portions of onion, tomato, carrot and potato, their ends as
// band.
constexpr Band small_ratio{0.64, 0.75, 0.87}, large_ratio{1.15, 1.36, 1.73};
// A bunch is no measure: what one shop calls large is the only bunch of the next, so the band holds the plain bunch. Judgement.
constexpr Band small_bunch{0.4, 0.7, 1.1}, large_bunch{0.9, 1.5, 2.4};
// Plain "salt" by the spoon may be a coarser salt: 14.1 g a tablespoon in published sheets against 18 g of table salt.
constexpr double coarse_salt = 14.1 / 18;
// Leaves pressed into a measure, over the loose leaves that the knowledge has a cup of. Judgement: kitchen tables give 40 to 60 g of
// spinach for a packed cup and 30 g for a loose one. Cut leaves lie closer already; whole ones pressed are about as heavy as cut ones left
// loose.
constexpr Band pressed_leaves{1.1, 1.5, 2.0}, pressed_cut{1.0, 1.2, 1.5}, pressed_over_cut{0.6, 1.0, 1.3};
// Whole herb leaves in a cup over the cut ones that the knowledge has a cup of: said to be leaves or loose, or not said. Judgement: kitchen
// tables give 15 to 25 g of parsley leaves for a loose cup and 55 to 60 g chopped.
constexpr Band loose_whole{0.25, 0.42, 0.65}, perhaps_whole{0.3, 0.6, 1.05};
// What two or three fingers take of chopped leaf. Judgement: more than the sixteenth of a spoon that a pinch of powder is.
constexpr Band leaf_a_pinch{0.15, 0.4, 1.0};
// Liquids without a measure, g/mL: oil where most of it is fat, else by what is in it. Judgement.
constexpr Band watery{0.97, 1.0, 1.04}, oily{0.91, 0.92, 0.93};
// mL a gram in solution, from memory: sugar 1.59 g/mL, protein 1.35, salts 2.2, alcohol 0.789 (pure; it takes a little less room in water).
constexpr double of_sugar = 1 / 1.59, of_protein = 1 / 1.35, of_ash = 1 / 2.2, of_alcohol = 1 / 0.789, of_fat = 1 / 0.92;

Band plus(const Band& a, const Band& b) { return {a.low + b.low, a.mid + b.mid, a.high + b.high}; }
Band spread(const Band& band, double share) {
    return band.low < band.high ? band : Band{band.mid * (1 - share), band.mid, band.mid * (1 + share)};
}

const Unit* unit_of(const MeasureRecord& record) {
    const std::string word = fold(record.measure);
    return unit_named(word);
}

bool mentions(const std::vector<std::string>& words, const std::string& note) {
    for (const auto& word : words)
        if (!word.empty() && (" " + note + " ").find(" " + word + " ") != std::string::npos) return true;
    return false;
}

// The record of a measure that fits what the line says best: its note named in the line, no note, a middling size, then file order.
const MeasureRecord* pick(const Ingredient& ingredient, std::string_view word, const std::vector<std::string>& words) {
    const MeasureRecord* best = nullptr;
    int best_score = -1;
    for (const auto& record : ingredient.measures) {
        if (record.measure != word) continue;
        const std::string note = fold(record.note);
        int score = 1;
        if (mentions(words, note)) score = 4;
        else if (note.empty()) score = 3;
        else if (note == (ingredient.tissue == Tissue::egg ? "large" : "medium")) score = 2;
        if (score > best_score) {
            best = &record;
            best_score = score;
        }
    }
    return best;
}

// A piece of another size than the record's.
Band resized(const MeasureRecord& record, std::string_view size) {
    const Band grams = spread(record.grams, piece_spread);
    const std::string note = fold(record.note);
    if (size.empty() || note.find(size) != std::string::npos || size == "medium") return grams;
    const Band& ratio = size == "small" ? small_ratio : large_ratio;
    return {record.grams.mid * ratio.low, record.grams.mid * ratio.mid, record.grams.mid * ratio.high};
}

double spread_of_volume(const Ingredient& ingredient) { return ingredient.tissue == Tissue::liquid ? liquid_spread : volume_spread; }

// Grams a mL of a mixture whose parts keep their volumes.
double mixed(const Composition& c) {
    const double all = c.water.mid + c.carbohydrate.mid + c.protein.mid + c.fat.mid + c.ash.mid + c.alcohol.mid + c.acid.mid;
    const double ml = c.water.mid + c.carbohydrate.mid * of_sugar + c.protein.mid * of_protein + c.fat.mid * of_fat + c.ash.mid * of_ash +
                      c.alcohol.mid * of_alcohol + c.acid.mid;
    return ml > 0 ? all / ml : 1;
}

// Grams a mL, from the volume measure that fits the words best, then the nearest in size; none where the ingredient has no volume measure
// and is no liquid.
std::optional<Band> density(const Ingredient& ingredient, double ml, const std::vector<std::string>& words, bool not_whole) {
    const MeasureRecord* best = nullptr;
    double best_distance = std::numeric_limits<double>::infinity();
    for (const auto& record : ingredient.measures) {
        const Unit* unit = unit_of(record);
        if (!unit || unit->dimension != Dimension::volume || (not_whole && record.note.find("whole") != std::string::npos)) continue;
        const std::string note = fold(record.note);
        const double liking = mentions(words, note) ? 200 : note.empty() ? 100 : 0;
        const double distance = std::abs(std::log(unit->size.mid / ml)) - liking;
        if (distance < best_distance) {
            best = &record;
            best_distance = distance;
        }
    }
    if (best) return scaled(spread(best->grams, spread_of_volume(ingredient)), 1 / unit_of(*best)->size.mid);
    constexpr double all_fat = 95;  // g in 100 g: ghee, lard and tallow fill a spoon as oil does. Judgement
    if (ingredient.composition.fat.mid > all_fat) return oily;
    if (ingredient.tissue == Tissue::liquid)
        return ingredient.composition.fat.mid > 50 ? oily : scaled(watery, mixed(ingredient.composition));
    return std::nullopt;
}

bool plain_salt(const Ingredient& ingredient) {
    return std::any_of(ingredient.names.begin(), ingredient.names.end(), [](const auto& name) { return name == "salt"; });
}

Failure no_such_measure(const Ingredient& ingredient, const std::string& what) {
    return failure(Trouble::bad_data,
                   "no weight is known for " + what + " of " + ingredient.names.front() + ": expected one of " + measures_of(ingredient));
}

bool pressed(const Ingredient& i, const std::vector<std::string>& words) {
    const bool leaf = i.already.empty() && (is_leaf(i.tissue));
    return leaf && contains(words, "packed") && !contains(words, "loosely") && !contains(words, "lightly");
}

bool of_cut_leaves(const MeasureRecord* record) {
    const auto has = [&](std::string_view word) { return record->note.find(word) != std::string::npos; };
    return record && (has("chopped") || has("shredded") || has("sliced"));
}

bool says_cut(const std::vector<std::string>& words) {
    constexpr std::array<std::string_view, 10> cut{"chopped", "minced", "sliced", "shredded", "snipped",
                                                   "diced",   "grated", "pureed", "ground",   "crushed"};
    return std::any_of(cut.begin(), cut.end(), [&](std::string_view word) { return contains(words, word); });
}

// A spoon holds cut leaves whatever is said; a cup may hold them whole.
bool herb_by_the_cup(const Ingredient& i, const Unit& unit) {
    constexpr double spoon = 30;  // mL
    return i.already.empty() && i.family == "herbs" && (is_leaf(i.tissue)) && unit.size.mid > spoon;
}

Result<Weighed> volume_part(const AmountPart& part, const Ingredient& ingredient, const std::vector<std::string>& words) {
    Band grams;
    const Unit& unit = *part.unit;
    if (unit.word == "pinch" && ingredient.already.empty() && is_leaf(ingredient.tissue))
        return Weighed{product(part.number, leaf_a_pinch), std::nullopt};
    const bool herb = herb_by_the_cup(ingredient, unit), cut_said = says_cut(words);
    const auto* record = pick(ingredient, unit.word, words);
    if (herb && cut_said && record && record->note.find("whole") != std::string::npos) record = nullptr;
    if (record) grams = product(part.number, spread(record->grams, spread_of_volume(ingredient)));
    else {
        const auto per_ml = density(ingredient, unit.size.mid, words, herb && cut_said);
        if (!per_ml) return no_such_measure(ingredient, "a " + std::string(unit.word));
        grams = product(part.number, product(*per_ml, unit.size));
    }
    if (plain_salt(ingredient)) grams.low = std::min(grams.low, grams.mid * coarse_salt);
    if (!pressed(ingredient, words)) {
        const bool of_whole = record && !of_cut_leaves(record);
        if (!herb || cut_said || of_whole) return Weighed{grams, std::nullopt};
        const bool loose = contains(words, "loosely") || contains(words, "lightly") || contains(words, "leaf") || contains(words, "loose");
        return Weighed{product(grams, loose ? loose_whole : perhaps_whole), std::nullopt};
    }
    const bool cut = of_cut_leaves(record), said_cut = cut && mentions(words, fold(record->note));
    return Weighed{product(grams, said_cut ? pressed_cut : cut ? pressed_over_cut : pressed_leaves), std::nullopt, true};
}

// Words for the same thing on different plants.
std::string_view another_word(std::string_view word) {
    if (word == "stick") return "stalk";
    if (word == "stalk") return "stick";
    if (word == "bulb") return "head";
    if (word == "head") return "bulb";
    return {};
}

Result<Weighed> counted_part(const AmountPart& part, const Ingredient& ingredient, std::string_view size, std::vector<std::string> words) {
    for (const std::string_view told : {"small", "large"})
        if (size.empty() && contains(words, told)) size = told;
    if (!size.empty()) words.emplace_back(size);
    if (part.unit && part.unit->word == "knob" && ingredient.tissue == Tissue::root)  // a lump is about as heavy as water
        return Weighed{product(part.number, part.unit->size), std::nullopt};
    const MeasureRecord* record = nullptr;
    if (part.unit) record = pick(ingredient, part.unit->word, words);
    if (!record && part.unit) record = pick(ingredient, another_word(part.unit->word), words);
    if (!record && part.unit && part.unit->word == "cm" && has_measure(ingredient, "inch"))
        return counted_part({scaled(part.number, 1 / cm_an_inch), unit_named("inch")}, ingredient, size, std::move(words));
    if (!record && (!part.unit || part.unit->word == "piece" || part.unit->word == "pod"))
        if (const auto* whole = whole_measure(ingredient)) record = pick(ingredient, whole->measure, words);
    if (!record && part.unit && part.unit->word == "head" && !is_leaf(ingredient.tissue))
        record = pick(ingredient, "piece", words);  // of broccoli
    if (!record && part.unit && part.unit->word == "piece") record = pick(ingredient, "leaf", words);
    if (record) {
        const bool bound =
            record->measure == "bunch" && !size.empty() && size != "medium" && fold(record->note).find(size) == std::string::npos;
        const Band grams =
            product(part.number, bound ? product(record->grams, size == "small" ? small_bunch : large_bunch) : resized(*record, size));
        const bool single = record->measure != "bunch" && record->measure != "handful" && !(part.unit && part.unit->size.mid > 0);
        return Weighed{grams, single ? std::optional<double>(part.number.mid) : std::nullopt};
    }
    // A handful of coriander is leaves, never the seed that the word may stand for.
    const bool of_leaves = part.unit && part.unit->word == "handful" && ingredient.tissue == Tissue::dry;
    if (part.unit && part.unit->size.mid > 0 && !of_leaves) {
        AmountPart sized = part;  // "a small handful"
        if (!size.empty() && size != "medium") sized.number = product(sized.number, size == "small" ? small_bunch : large_bunch);
        return volume_part(sized, ingredient, words);
    }
    if (!part.unit && ingredient.tissue == Tissue::dry)
        return failure(Trouble::bad_data, "a number without a unit, and nobody counts " + ingredient.names.front() + ": expected one of " +
                                              measures_of(ingredient));
    return no_such_measure(ingredient, part.unit ? "a " + std::string(part.unit->word) : "one piece");
}

Result<Weighed> weigh_part(const AmountPart& part, const AmountText& amount, const Ingredient& ingredient,
                           const std::vector<std::string>& words) {
    if (!part.unit || part.unit->dimension == Dimension::count) return counted_part(part, ingredient, amount.size, words);
    if (part.unit->dimension == Dimension::percent) return Weighed{part.number, std::nullopt};  // of what is settled with the other lines
    if (part.unit->dimension == Dimension::mass) return Weighed{product(part.number, part.unit->size), std::nullopt};
    return volume_part(part, ingredient, words);
}

// "2,400 kg", "2.500 g": a mark before three digits that may part thousands or decimals.
Failure asks_thousands_or_decimals(const AmountPart& part, bool grams_or_ml) {
    const double thousand = part.number.mid < 1000 ? 1000 * part.number.mid : part.number.mid;
    const std::string all = plain_number(thousand), few = plain_number(thousand / 1000);
    if (!grams_or_ml)
        return failure(Trouble::bad_data, "a comma before three digits may mean thousands or decimals: write it without, as " + all +
                                              (part.unit && part.unit->word == "kg" ? " kg or " + few + " kg" : " or " + few));
    const bool weight = part.unit->word == "g";
    return failure(Trouble::bad_data, "a point before three digits may mean decimals or thousands: write it as " + all +
                                          (weight ? " g or " : " ml or ") + few + (weight ? " kg, or as " : " l, or as ") + few +
                                          (weight ? " g" : " ml"));
}

}  // namespace

Result<Weighed> weigh(const AmountText& amount, const Ingredient& ingredient, std::vector<std::string> words) {
    if (amount.packed) words.emplace_back("packed");
    Weighed total{{0, 0, 0}, std::nullopt};
    for (const auto& part : amount.parts) {
        const bool thousands = part.unit && (part.unit->word == "g" || part.unit->word == "ml");
        if ((amount.unsure_comma && !thousands) || (amount.unsure_dot && thousands)) return asks_thousands_or_decimals(part, thousands);
        const auto weighed = weigh_part(part, amount, ingredient, words);
        if (!weighed) return weighed;
        total.grams = plus(total.grams, weighed->grams);
        if (weighed->count) total.count = weighed->count;
        total.packed = total.packed || weighed->packed;
    }
    return total;
}

std::string measures_of(const Ingredient& ingredient) {
    std::vector<std::string> words{"g", "kg", "oz", "lb"};
    for (const auto& record : ingredient.measures)
        if (std::find(words.begin(), words.end(), record.measure) == words.end()) words.push_back(record.measure);
    return comma_list(words);
}

Error unknown_measure(const std::string& word, const Ingredient& ingredient) {
    return {Trouble::bad_data,
            "unknown word \"" + word + "\" beside " + ingredient.names.front() +
                ", where a measure stands: say how much that is, or write one of " + measures_of(ingredient),
            "",
            {},
            NotKnown::word};
}

const MeasureRecord* whole_measure(const Ingredient& ingredient) {
    for (const std::string_view word : {"piece", "pod", "ear"})
        if (const auto* record = pick(ingredient, word, {})) return record;
    return has_measure(ingredient, "clove") ? nullptr : pick(ingredient, "head", {});
}

bool has_measure(const Ingredient& ingredient, std::string_view word) {
    return std::any_of(ingredient.measures.begin(), ingredient.measures.end(), [&](const auto& record) { return record.measure == word; });
}

std::string absurd(const Band& grams) {
    if (!std::isfinite(grams.low) || !std::isfinite(grams.high)) return "this weight is not a number";
    if (grams.low <= 0) return "a weight must be more than zero";
    if (grams.mid < least_grams) return "under 0.001 g: expected a weight that a scale can show";
    if (grams.high > most_grams) return "over 1000 kg: expected a batch that one kitchen makes";
    return {};
}

}  // namespace standin
