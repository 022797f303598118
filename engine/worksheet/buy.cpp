#include "worksheet/buy.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "knowledge/index/edible.hpp"
#include "knowledge/index/line_name.hpp"
#include "models/as_bought.hpp"
#include "models/ready.hpp"
#include "worksheet/parts.hpp"

namespace standin {
namespace {

// How produce is sold, the best first; and what is sold packed.
constexpr std::array<std::string_view, 4> whole{"bunch", "head", "bulb", "piece"};
constexpr std::array<std::string_view, 2> packed{"can", "packet"};

bool is_produce(const Ingredient& i) {
    constexpr std::array fresh{Tissue::thin_leaf, Tissue::thick_leaf, Tissue::chile_flesh, Tissue::fruit,
                               Tissue::bulb,      Tissue::root,       Tissue::stalk,       Tissue::egg};
    return std::find(fresh.begin(), fresh.end(), i.tissue) != fresh.end();
}

bool sold_fresh(const Ingredient& i) { return i.already.empty() && is_produce(i); }

// The middling one of the first of these measures there is.
template <std::size_t n>
const MeasureRecord* measured(const Ingredient& ingredient, const std::array<std::string_view, n>& words) {
    const std::string_view middling = ingredient.tissue == Tissue::egg ? "large" : "medium";
    for (const auto word : words) {
        const MeasureRecord* found = nullptr;
        for (const auto& m : ingredient.measures)
            if (m.measure == word && (!found || m.note.empty() || m.note == middling)) found = &m;
        if (found) return found;
    }
    return nullptr;
}

const MeasureRecord* unit_of(const Ingredient& ingredient) {
    const auto* found = sold_fresh(ingredient) ? measured(ingredient, whole) : nullptr;
    return found ? found : measured(ingredient, packed);
}

struct Packet {
    std::string kind;  // of the parameters; empty: sold by weight
    const char* word = "packet";
};

Packet packet_of(const Ingredient& i) {
    const Role main = i.roles.front();
    if (i.meat || (main == Role::fat && i.tissue == Tissue::fat_tissue)) return {};
    if (main == Role::nut) return {"nut"};
    if (main == Role::binder && i.tissue == Tissue::paste && !i.already.empty()) return {};  // cooked at home
    if (i.tissue == Tissue::paste || (main == Role::salt && i.tissue != Tissue::dry)) return {"jar", "jar or piece"};
    if (!i.already.empty() && is_produce(i)) return {"jar", "jar or can"};
    if (i.tissue != Tissue::dry) return {};
    switch (main) {
        case Role::salt:
            return {"salt"};
        case Role::spice:
            return {"spice"};
        case Role::herb:
            return {"herb"};
        case Role::binder:
            return {"binder"};
        case Role::sweet:
            return {"sweet"};
        default:
            return {"dried"};
    }
}

double up_to(double grams, double step) {
    constexpr double rounding = 1e-9;
    return std::ceil(grams / step - rounding) * step;
}

// Grams of a millilitre, from the first volume the food is measured by; else as water.
double density_of(const Ingredient& ingredient) {
    constexpr double cup = 3785.411784 / 16;  // mL, exact: NIST Handbook 44 appendix C
    constexpr std::array<std::pair<std::string_view, double>, 3> volumes{{{"cup", cup}, {"fl-oz", cup / 8}, {"tbsp", cup / 16}}};
    for (const auto& [word, ml] : volumes)
        for (const auto& m : ingredient.measures)
            if (m.measure == word) return m.grams.mid / ml;
    return 1;
}

class Shop {
public:
    Shop(const Ingredient& ingredient, const Knowledge& knowledge, bool us) : ingredient_(ingredient), knowledge_(knowledge), us_(us) {}

    // `grams` as bought, `ready` of it without what is cut away.
    Sold sold(double grams, double ready) const {
        if (us_)
            if (const auto* stick = measured(ingredient_, std::array<std::string_view, 1>{"stick"})) return counted(*stick, ready, grams);
        if (const auto* unit = unit_of(ingredient_)) return counted(*unit, ready, grams);
        if (ingredient_.tissue == Tissue::liquid) return poured(grams);
        const Packet packet = packet_of(ingredient_);
        if (packet.kind.empty()) return weighed(grams);
        const double size = parameter("bench.buy.packet." + packet.kind + (us_ ? "-us" : ""));
        const double number = std::max(1.0, std::ceil(grams / size - rounding));
        if (number > parameter("bench.buy.packet.most")) return weighed(grams);
        return {number, packet.word, size, 0, number * size, "judgement"};
    }

private:
    static constexpr double rounding = 1e-9;

    double parameter(const std::string& id) const { return knowledge_.parameter(id).mid; }

    Sold counted(const MeasureRecord& unit, double ready, double grams) const {
        const double count = std::max(1.0, std::ceil(ready / unit.grams.mid - parameter("bench.buy.short")));
        return {count, unit.measure, unit.grams.mid, 0, std::max(grams, count * unit.grams.mid), unit.source};
    }

    Sold weighed(double grams) const {
        const bool small = us_ && grams <= parameter("bench.buy.step-us");
        return {{},
                "",
                0,
                0,
                up_to(grams, parameter(small ? "bench.buy.step-us-small" : us_ ? "bench.buy.step-us" : "bench.buy.step")),
                "common-practice"};
    }

    // Bottles: of one size, or of the next larger of cup, pint and quart that holds it all.
    Sold poured(double grams) const {
        const double density = density_of(ingredient_), need = grams / density;
        double size = parameter(us_ ? "bench.buy.packet.bottle-us" : "bench.buy.packet.bottle");
        const double largest = size * parameter("bench.buy.packet.most");
        if (us_)
            while (size < need - rounding && size < largest - rounding) size *= 2;
        const double number = std::max(1.0, std::ceil(need / size - rounding));
        return {number, "bottle", size * density, size, number * size * density, "judgement"};
    }

    const Ingredient& ingredient_;
    const Knowledge& knowledge_;
    bool us_;
};

// What the list has of it, and so what is lacking.
void set_against(Purchase& bought, const Inventory& have, const Knowledge& knowledge) {
    constexpr double rounding = 0.005;  // share: less than a bunch or a scale can tell
    bool named = false, plenty = false;
    double grams = 0, enough_for = 0;  // as bought: a bunch may be more, and a herb is weighed for the list as for the formula
    const Ingredient& food = *knowledge.ingredient(bought.ingredient);
    for (const auto& item : have.items) {
        if (item.ingredient != bought.ingredient) continue;
        named = true;
        if (!item.grams) plenty = true;
        grams += item.grams.value_or(0);
        const double told = item.grams.value_or(0);
        enough_for += weighed_as_used(food) ? item.at_most.value_or(told / edible_share(food)) : told;
    }
    const bool missing = std::find(have.missing.begin(), have.missing.end(), bought.ingredient) != have.missing.end();
    if (missing && !named) {
        bought.have_g = 0;
        bought.lack_g = bought.bought_g;
        return;
    }
    if (!named && have.complete != false) return;  // the list says nothing of it
    if (named && !plenty) bought.have_g = grams;
    const double lack = named && !plenty && enough_for < bought.bought_g * (1 - rounding) ? bought.bought_g - grams : 0;
    bought.have_all = lack <= rounding * bought.bought_g;
    if (!bought.have_all) bought.lack_g = lack;
}

}  // namespace

std::vector<Purchase> purchases_of(const Formula& formula, const std::optional<Inventory>& have, const Knowledge& knowledge) {
    std::vector<Purchase> all;
    std::vector<double> ready;  // grams of each without what is cut away
    for (const auto& line : formula.lines) {
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        auto same = std::find_if(all.begin(), all.end(), [&](const Purchase& p) { return p.ingredient == ingredient.id; });
        if (same == all.end()) {
            all.emplace_back();
            ready.push_back(0);
            same = std::prev(all.end());
            same->ingredient = ingredient.id;
            same->name = line_name(line, knowledge);
            same->from_the_tap = ingredient.id == "water" || ingredient.id == "ice";
        }
        const double raw = raw_grams(line, knowledge), share = edible_share(ingredient);
        const bool untrimmed = weighed_untrimmed(line);
        same->need_g += raw;
        same->bought_g += untrimmed ? raw : raw / share;
        ready[static_cast<std::size_t>(same - all.begin())] += untrimmed ? raw * share : raw;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Ingredient& ingredient = *knowledge.ingredient(all[i].ingredient);
        if (have && !all[i].from_the_tap) set_against(all[i], *have, knowledge);
        const double lack = all[i].lack_g.value_or(all[i].bought_g), share = lack / all[i].bought_g;
        all[i].metric = Shop(ingredient, knowledge, false).sold(lack, share * ready[i]);
        all[i].us = Shop(ingredient, knowledge, true).sold(lack, share * ready[i]);
    }
    return all;
}

}  // namespace standin
