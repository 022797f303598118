#include "bench/buy.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "bench/parts.hpp"

namespace standin {
namespace {

// Preparations that take off what the edible share leaves out: their own yield counts it.
constexpr std::array<std::string_view, 4> trims{"trimmed", "husked", "stemmed", "peeled"};
// How produce is sold, the best first.
constexpr std::array<std::string_view, 4> whole{"bunch", "head", "bulb", "piece"};

bool sold_fresh(Tissue t) {
    constexpr std::array fresh{Tissue::thin_leaf, Tissue::thick_leaf, Tissue::chile_flesh, Tissue::fruit,
                               Tissue::bulb,      Tissue::root,       Tissue::stalk,       Tissue::egg};
    return std::find(fresh.begin(), fresh.end(), t) != fresh.end();
}

// The middling one of the best measure there is.
const MeasureRecord* unit_of(const Ingredient& ingredient) {
    if (!sold_fresh(ingredient.tissue)) return nullptr;
    const std::string_view middling = ingredient.tissue == Tissue::egg ? "large" : "medium";
    for (const auto word : whole) {
        const MeasureRecord* found = nullptr;
        for (const auto& m : ingredient.measures)
            if (m.measure == word && (!found || m.note.empty() || m.note == middling)) found = &m;
        if (found) return found;
    }
    return nullptr;
}

struct Packet {
    const char* parameter = nullptr;  // null: sold by weight
    const char* word = "";
};

Packet packet_of(const Ingredient& i) {
    const Role main = i.roles.front();
    if (i.meat) return {};
    if (i.tissue == Tissue::liquid) return {"bench.buy.packet.bottle", "bottle"};
    if (i.tissue == Tissue::paste || main == Role::salt) {
        return i.tissue == Tissue::dry ? Packet{"bench.buy.packet.salt", "packet"} : Packet{"bench.buy.packet.jar", "jar or piece"};
    }
    if (main == Role::nut) return {"bench.buy.packet.nut", "packet"};
    if (i.tissue != Tissue::dry) return {};
    if (main == Role::spice) return {"bench.buy.packet.spice", "packet"};
    if (main == Role::herb) return {"bench.buy.packet.herb", "packet"};
    if (main == Role::binder) return {"bench.buy.packet.binder", "packet"};
    if (main == Role::sweet) return {"bench.buy.packet.sweet", "packet"};
    return {"bench.buy.packet.dried", "packet"};
}

double up_to(double grams, double step) {
    constexpr double rounding = 1e-9;
    return std::ceil(grams / step - rounding) * step;
}

void count_out(Purchase& p, const Ingredient& ingredient, const Knowledge& knowledge) {
    const auto parameter = [&](const char* id) { return knowledge.parameter(id).mid; };
    p.buy_g = up_to(p.bought_g, parameter("bench.buy.step"));
    p.buy_us_g = up_to(p.bought_g, parameter("bench.buy.step-us"));
    p.source = "common-practice";
    if (const auto* unit = unit_of(ingredient)) {
        p.unit = unit->measure;
        p.unit_g = unit->grams.mid;
        p.count = std::max(1.0, std::ceil(p.need_g / p.unit_g - parameter("bench.buy.short")));
        p.buy_g = p.buy_us_g = p.bought_g;
        p.source = unit->source;
        return;
    }
    const Packet packet = packet_of(ingredient);
    if (!packet.parameter) return;
    const double size = parameter(packet.parameter), number = std::ceil(p.bought_g / size);
    if (number > parameter("bench.buy.packet.most")) return;
    p.unit = packet.word;
    p.unit_g = size;
    p.count = number;
    p.buy_g = p.buy_us_g = number * size;
    p.source = "judgement";
}

double as_bought(const Line& line, const Ingredient& ingredient, const Knowledge& knowledge) {
    const double raw = raw_grams(line, knowledge);
    const bool untrimmed = std::any_of(trims.begin(), trims.end(), [&](std::string_view t) { return has_step(line, t); });
    const bool shelled = ingredient.roles.front() == Role::nut;  // that is how they are sold
    return untrimmed || shelled || !ingredient.edible ? raw : raw / (ingredient.edible->band.mid / 100);
}

}  // namespace

std::vector<Purchase> purchases_of(const Formula& formula, const Knowledge& knowledge) {
    std::vector<Purchase> all;
    for (const auto& line : formula.lines) {
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        auto same = std::find_if(all.begin(), all.end(), [&](const Purchase& p) { return p.ingredient == ingredient.id; });
        if (same == all.end()) {
            all.emplace_back();
            same = std::prev(all.end());
            same->ingredient = ingredient.id;
            same->name = ingredient.names.front();
            same->from_the_tap = ingredient.id == "water" || ingredient.id == "ice";
        }
        same->need_g += raw_grams(line, knowledge);
        same->bought_g += as_bought(line, ingredient, knowledge);
    }
    for (auto& p : all) count_out(p, *knowledge.ingredient(p.ingredient), knowledge);
    return all;
}

}  // namespace standin
