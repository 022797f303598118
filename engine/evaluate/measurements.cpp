#include "evaluate/measurements.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/band.hpp"
#include "evaluate/batch.hpp"
#include "evaluate/learn.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/kitchen_overlay.hpp"
#include "knowledge/plausible.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr double least_gain = 0.05;    // of the band; less is not worth a reading
constexpr double known_already = 1.3;  // times the band of a reading; another one tells nothing new
constexpr std::size_t most_told = 4;

class Tried {
public:
    Tried(const Formula& formula, Property property, const Sampled& sampled, const Band& band)
        : formula_(formula), property_(property), sampled_(sampled), knowledge_(sampled.knowledge()), band_(band) {}

    std::vector<Measurement> all() && {
        if (!(width(band_) > 0)) return {};
        for (const auto& line : formula_.lines) of_line(line);
        of_batch();
        std::stable_sort(told_.begin(), told_.end(), [](const Measurement& a, const Measurement& b) { return a.narrower > b.narrower; });
        std::erase_if(told_, [](const Measurement& m) { return m.narrower < least_gain; });
        if (told_.size() > most_told) told_.resize(most_told);
        return std::move(told_);
    }

private:
    void of_line(const Line& line) {
        const Ingredient& food = *knowledge_.ingredient(line.ingredient);
        const std::string& name = food.names.front();
        if (food.meat && !line.fat_pct && !is_kitchen_source(food.composition.source)) fat(food, name);
        if (food.acidity && food.acidity->ph && !line.ph && !is_kitchen_source(food.acidity->ph->source)) ph(food, name);
        if (main_acid(food) && !line.acid_pct && !is_kitchen_source(food.acidity->titratable->source)) acid(food, name);
        if (plausible_heat(food) && !line.heat_mg_kg && !is_kitchen_source(food.capsaicinoids->source)) heat(food, name);
        if (line.grams.low < line.grams.high) weight(line, name);
    }

    void fat(const Ingredient& food, const std::string& name) {
        const double mid = food.composition.fat.mid;
        const Band& off = parameter("composition.spread.fat-said");
        with(one("fat", name, mid, "%"), name + ": " + trimmed_text(mid, 0) + " % fat", [&](Line& l) {
            if (l.ingredient == food.id) l.fat_pct = Band{std::max(0.0, mid + off.low), mid, std::min(100.0, mid + off.high)};
        });
    }

    // One animal's pH is alike in all its cuts, and one reading tells it.
    void ph(const Ingredient& food, const std::string& name) {
        const Band& off = parameter("kitchen.spread.ph");
        const std::string of = food.meat ? std::string(spelling(food.meat->species)) : name;
        with(one("ph", of, food.acidity->ph->band.mid, ""), of + ": pH " + fixed_text(food.acidity->ph->band.mid, 1), [&](Line& l) {
            const Ingredient& other = *knowledge_.ingredient(l.ingredient);
            const bool same = food.meat ? other.meat && other.meat->species == food.meat->species : other.id == food.id;
            if (!same || !other.acidity || !other.acidity->ph) return;
            const double mid = other.acidity->ph->band.mid;
            l.ph = Band{mid + off.low, mid, mid + off.high};
        });
    }

    void acid(const Ingredient& food, const std::string& name) {
        const Quantity& q = *food.acidity->titratable;
        if (q.unit != "g/kg " + std::string(spelling(*main_acid(food)))) return;
        const double pct = q.band.mid / 10;
        with(one("acid", name, pct, "%"), name + ": " + trimmed_text(pct, 1) + " % acidity", [&](Line& l) {
            if (l.ingredient == food.id) l.acid_pct = scaled(parameter("kitchen.spread.acid"), pct);
        });
    }

    void heat(const Ingredient& food, const std::string& name) {
        const double mid = food.capsaicinoids->band.mid;
        const Band& steps = parameter("kitchen.heat.usual");
        const double lot = food.lot_sigma ? food.lot_sigma->band.mid : 0;
        with(one("heat", name, mid, "mg/kg"), name + ": as usual this year", [&](Line& l) {
            if (l.ingredient == food.id) l.heat_mg_kg = Band{mid * std::exp(lot * steps.low), mid, mid * std::exp(lot * steps.high)};
        });
    }

    void weight(const Line& line, const std::string& name) {
        const bool bunch = line.written.find("bunch") != std::string::npos;
        if (!bunch && !line.count) return;
        const std::string measure = bunch ? "bunch of " + name : "one " + name;
        const double count = line.count.value_or(0);
        const double each = count > 0 ? line.grams.mid / count : line.grams.mid;
        Reason what = one("weight", name, each, "g");
        if (bunch) what.role = "bunch";
        with(what, measure + ": " + trimmed_text(each, count > 0 ? 1 : 0) + " g", [&](Line& l) {
            if (l.ingredient == line.ingredient) l.grams = scaled(parameter("kitchen.spread.measure"), l.grams.mid);
        });
    }

    void of_batch() {
        const Band ph = middle_of(Property::ph), loss = middle_of(Property::cook_loss_pct);
        learn(one("batch-ph", "", ph.mid, ""), "batch pH: " + fixed_text(ph.mid, 1), Property::ph, ph, parameter("kitchen.spread.ph"));
        const Cook cook = sampled_.processes(formula_.process).front().cook;
        const bool fried = cook == Cook::pan || cook == Cook::loose;
        learn(one(fried ? "pan-loss" : "cook-loss", "", loss.mid, "%"),
              (fried ? "pan loss: " : "cook loss: ") + fixed_text(loss.mid, 0) + " %", Property::cook_loss_pct, loss,
              parameter("kitchen.spread.pan-loss"));
    }

    void learn(const Reason& what, const std::string& line, Property of, const Band& middle, const Band& off) {
        const Band reading{middle.mid + off.low, middle.mid, middle.mid + off.high};
        if (width(middle) < known_already * width(reading)) return;
        const auto learned = learned_from(formula_, {{of, reading}}, knowledge_, sampled_.count(), sampled_.seed(), sampled_.given());
        const Sampled then(knowledge_, sampled_.count(), sampled_.seed(), {}, learned.sampled);
        tell(what, line, band_of(values_of(SampledBatch(formula_, then).states(), property_)));
    }

    template <class Set>
    void with(const Reason& what, const std::string& text, Set set) {
        if (!asked_.insert(in_full(what)).second) return;
        Formula known = formula_;
        for (auto& line : known.lines) set(line);
        tell(what, text, band_of(values_of(SampledBatch(known, sampled_).states(), property_)));
    }

    static Reason one(const char* about, const std::string& food, double usual, const char* unit) {
        Reason what = make_reason(ReasonKind::worth_measuring, {{"usual", {}, usual, unit}});
        what.about = about;
        if (!food.empty()) what.foods = {food};
        return what;
    }

    void tell(const Reason& what, const std::string& line, const Band& known) {
        told_.push_back({in_full(what), line, known, std::max(0.0, 1 - width(known) / width(band_)), what});
    }

    Band middle_of(Property property) { return band_of(values_of(SampledBatch(formula_, sampled_).states(), property)); }
    const Band& parameter(const char* id) const { return knowledge_.parameter(id); }

    const Formula& formula_;
    Property property_;
    const Sampled& sampled_;
    const Knowledge& knowledge_;
    const Band& band_;
    std::set<std::string> asked_;
    std::vector<Measurement> told_;
};

}  // namespace

std::vector<Measurement> measurements_for(const Formula& formula, Property property, const Sampled& sampled, const Band& band) {
    return Tried(formula, property, sampled, band).all();
}

}  // namespace standin
