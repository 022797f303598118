#include "render/text/text_variant.hpp"

#include <algorithm>
#include <cmath>

#include "render/effects.hpp"
#include "render/sentences.hpp"
#include "render/text/text_parts.hpp"

namespace standin::cli {
namespace {

std::string wants_part(const Variant& v, const Look& look) {
    Table table({{"want", Align::left}, {"met", Align::left}, {"chance", Align::right}, {"", Align::left}});
    for (const auto& w : v.wants) table.row({w.want, w.met ? "yes" : "no", chance(w.chance), w.says});
    return table.empty() ? "" : "\n" + table.page(look);
}

std::string properties_part(const Variant& v, const Prediction& base, const Look& look) {
    Table table({{"", Align::left}, {"original", Align::right}, {"variant", Align::right}, {"change", Align::right}});
    for (const auto p : moved(v.differences))
        table.row({name_with_unit(p), shown(p, base.properties[p]), shown(p, v.prediction.properties[p]),
                   signed_band(v.differences[p], info(p).decimals)});
    std::string out = table.empty() ? "\n  No property moves by much.\n" : "\n" + table.page(look);
    return out + paragraph("Colour: " + band(v.colour_rested, 1) + " CIEDE2000 units away when rested, " + band(v.colour_cooked, 1) +
                               " when cooked (" + base.rested.word + " to " + v.prediction.rested.word + ", " + base.cooked.word + " to " +
                               v.prediction.cooked.word + ").",
                           look);
}

std::string weights_part(const Variant& v, const Look& look) {
    Table table({{"weigh", Align::right}, {"", Align::left}, {"share", Align::right}});
    for (const auto& l : v.prediction.lines)
        table.row({grams(l.weighed_g), with_preparations(l.name, l.prepared) + (l.keep ? " (keep)" : ""), number(100 * l.share, 1) + " %"});
    return "\n" + table.page(look);
}

// Cautions that the original does not have already.
std::string new_cautions(const Variant& v, const Prediction& base, const Look& look) {
    std::string out;
    for (const auto& c : v.prediction.cautions) {
        const bool known = std::any_of(base.cautions.begin(), base.cautions.end(), [&](const CautionText& b) { return b.text == c.text; });
        if (!known) out += bullet("mind: " + c.text + (c.source.empty() ? "" : " [" + c.source + "]"), look);
    }
    return out;
}

}  // namespace

std::string variant_part(const Variant& v, const Prediction& base, const Engine& engine, const Look& look) {
    const std::string headline =
        std::to_string(v.rank) + ". " + number(v.distance, 1) + " noticeable differences from your original: " + v.table;
    std::string out = "\n";
    for (const auto& line : wrapped(headline, look.width)) out += look.bold(line) + "\n";
    out += paragraph("Of these the models feel " + number(v.felt, 1) + "; the rest is the price of trusting swaps.", look);
    for (const auto& e : v.edits) out += bullet(in_words(e, engine) + (e.why.empty() ? "" : ": " + e.why), look);
    if (v.edits.empty()) out += bullet("change nothing", look);
    if (!v.new_allergens.empty()) out += bullet("brings a new allergen: " + listed(v.new_allergens), look);
    for (const auto& g : v.gives_back) out += bullet(g, look);
    return out + new_cautions(v, base, look) + wants_part(v, look) + properties_part(v, base, look) + weights_part(v, look);
}

}  // namespace standin::cli
