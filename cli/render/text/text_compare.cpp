#include <algorithm>

#include "render/allergen_words.hpp"
#include "render/cost_words.hpp"
#include "render/effects.hpp"
#include "render/sentences.hpp"
#include "render/text/text.hpp"
#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "standin/narrate.hpp"

namespace standin::cli {
namespace {

using Group = std::vector<const Prediction*>;

std::string in_short(const std::vector<Prediction>& all, const Look& look) {
    std::string out;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const auto& p = all[i];
        out += wrap(letter(i) + "  " + p.title + ": " + p.bind_word + ", " + colour_words(p.rested) + " (cooked " + colour_words(p.cooked) +
                        "), " + heat_and_chance(p),
                    look.width, 0, 3) +
               "\n";
    }
    return out;
}

// Side by side, as many as the page is wide enough for.
std::string columns(const Group& group, std::size_t first, const Detail& detail, const Look& look) {
    std::vector<Column> heads{{"", Align::left}};
    for (std::size_t i = 0; i < group.size(); ++i) heads.push_back({letter(first + i), Align::right});
    Table table(std::move(heads));
    const auto row = [&](std::string name, auto cell) {
        std::vector<std::string> cells{std::move(name)};
        for (const auto* p : group) cells.push_back(cell(*p));
        table.row(std::move(cells));
    };
    row("batch", [&](const Prediction& p) { return formula_weight(p.batch_g, detail.units); });
    row("meat", [&](const Prediction& p) { return formula_weight(p.meat_g, detail.units); });
    for_each_property([&](Property property) {
        if (!detail.full && !at_the_bench(property)) return;
        row(name_with_unit(property), [&](const Prediction& p) { return shown(property, p.properties[property]); });
    });
    if (std::size_t n = first; detail.beside.costs.size() >= first + group.size())
        row("cost, a kilo raw", [&](const Prediction&) {
            const Cost& cost = detail.beside.costs[n++];
            return cost.lines.empty() ? std::string() : (cost.unpriced.empty() ? "" : "over ") + money(cost.raw_kg.mid, cost.currency);
        });
    if (!detail.full) return "\n" + table.page(look);
    const auto colour = [&](const PredictedColour& c) { return (look.colour ? look.swatch(c.hex) + " " : "") + c.hex; };
    row("raw", [&](const Prediction& p) { return colour(p.raw); });
    row("rested", [&](const Prediction& p) { return colour(p.rested); });
    row("cooked", [&](const Prediction& p) { return colour(p.cooked); });
    return "\n" + table.page(look);
}

// "Close (2.1 from A), most in colour and herbs."
std::string apart(const DistanceParts& parts, bool full) {
    std::vector<std::string> most;
    for (std::size_t i = 0; i < std::min<std::size_t>(parts.most.size(), full ? parts.most.size() : 3); ++i)
        most.push_back(parts.most[i].first + (full ? " " + number(parts.most[i].second, 1) : ""));
    std::string text = capital(in_words(parts.nearness)) + " (" + number(parts.distance, 1) + " from A)" +
                       (most.empty() ? "" : ", most in " + listed(most)) + ".";
    if (full)
        text += " In noticeable differences: " + number(parts.felt, 1) + " felt, " + number(parts.lost, 1) + " for lines left out, " +
                number(parts.trusted, 1) + " for swaps to be trusted and more to weigh; they add up as squares.";
    return text;
}

// What lies between the first and another, narrower than the two bands by themselves: both share every draw.
std::string between(const CompareAnswer& answer, bool full, const Look& look) {
    std::string out;
    for (std::size_t i = 0; i < answer.from_first.size(); ++i) {
        const auto& c = answer.from_first[i];
        out += heading("From A to " + letter(i + 1), look);
        out += paragraph(apart(c.apart, full), look);
        if (!full) {
            const bool alike = moved(c.differences).empty();
            out += paragraph(letter(i + 1) + (alike ? " is much the same as A." : ": " + in_words(c.differences, 4) + " than A."), look);
            continue;
        }
        const auto first = moved(c.differences);
        for (const auto property : first) out += bullet(effect(property, c.differences[property]), look);
        if (first.empty()) out += bullet("no property moves by much", look);
        out += bullet(
            "colour: " + band(c.colour_rested, 1) + " CIEDE2000 units away when rested, " + band(c.colour_cooked, 1) + " when cooked",
            look);
    }
    return out;
}

}  // namespace

std::string compare_text(const CompareAnswer& compared, const Detail& detail, const Look& look) {
    const CompareAnswer answer = told_in(compared, detail.units);
    const auto& predictions = answer.formulas;
    constexpr std::size_t abreast = 3;
    std::string page = in_short(predictions, look) + own_records(predictions.front().overlay, look);
    for (std::size_t first = 0; first < predictions.size(); first += abreast) {
        Group group;
        for (std::size_t i = first; i < std::min(first + abreast, predictions.size()); ++i) group.push_back(&predictions[i]);
        page += columns(group, first, detail, look);
    }
    page += between(answer, detail.full, look);
    std::vector<std::string> read_as;
    for (std::size_t i = 0; i < predictions.size(); ++i)
        for (const auto& note : in_full(without_cautions(predictions[i].read_as), detail.units)) read_as.push_back(letter(i) + ": " + note);
    page += read_as_part(read_as, look) + heading("Allergens", look);
    for (std::size_t i = 0; i < predictions.size(); ++i) {
        std::vector<std::string> names;
        for (const auto& a : predictions[i].allergens) names.push_back(allergen_in_short(a) + " (" + listed(a.from) + ")");
        page += bullet(letter(i) + ": " + (names.empty() ? "none of the listed ones" : listed(names)), look);
    }
    return page + cautions_part(shared_cautions(predictions), look);
}

}  // namespace standin::cli
