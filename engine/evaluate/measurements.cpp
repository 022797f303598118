#include "evaluate/measurements.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <set>
#include <utility>

#include "core/band.hpp"
#include "evaluate/batch.hpp"
#include "evaluate/learn.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/kitchen_overlay.hpp"
#include "knowledge/index/plausible.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

constexpr double least_gain = 0.05;    // of the band; less is not worth a reading
constexpr double known_already = 1.3;  // times the band of a reading; another one tells nothing new
constexpr std::size_t most_told = 4, most_together = 3;
constexpr std::size_t most_beside = 5;  // of the best are tried beside one another; each is learned from anew, which takes its time

// Tried alone at first and then beside others, so that what it sets is held by value.
struct Reading {
    Measurement told;
    std::function<void(Line&)> set;   // what a line then says; none: it is of the batch
    std::optional<Measured> learned;  // what the batch then teaches
};

class Tried {
public:
    Tried(const Formula& formula, const StateFigure& figure, const Sampled& sampled, const Band& band)
        : formula_(formula),
          figure_(figure),
          sampled_(sampled),
          knowledge_(sampled.knowledge()),
          band_(band),
          states_(SampledBatch(formula, sampled).states()) {}

    Readings all() && {
        if (!(width(band_) > 0)) return {};
        for (const auto& line : formula_.lines) of_line(line);
        of_batch();
        std::stable_sort(readings_.begin(), readings_.end(),
                         [](const Reading& a, const Reading& b) { return a.told.narrower > b.told.narrower; });
        Readings found{{}, together()};
        for (auto& reading : readings_)
            if (reading.told.narrower >= least_gain && found.single.size() < most_told) found.single.push_back(std::move(reading.told));
        return found;
    }

private:
    // The best one, and to it whichever helps most beside what is known already.
    std::optional<MeasuredTogether> together() const {
        const std::size_t telling = std::min(readings_.size(), most_beside);
        if (telling < 2) return std::nullopt;
        std::vector<const Reading*> chosen{&readings_.front()};
        Band known = readings_.front().told.known;
        while (chosen.size() < most_together) {
            const Reading* best = nullptr;
            Band left = known;
            for (std::size_t i = 1; i < telling; ++i) {
                const auto& reading = readings_[i];
                if (std::find(chosen.begin(), chosen.end(), &reading) != chosen.end()) continue;
                auto with = chosen;
                with.push_back(&reading);
                const Band then = known_with(with);
                if (width(then) >= width(left)) continue;
                left = then;
                best = &reading;
            }
            if (!best || width(known) - width(left) < least_gain * width(band_)) break;
            chosen.push_back(best);
            known = left;
        }
        if (chosen.size() < 2) return std::nullopt;
        MeasuredTogether all;
        for (const auto* reading : chosen) {
            all.what.push_back(reading->told.what);
            all.lines.push_back(reading->told.line);
            all.reasons.push_back(reading->told.reason);
        }
        all.known = known;
        all.narrower = std::max(0.0, 1 - width(known) / width(band_));
        return all;
    }

    Band known_with(const std::vector<const Reading*>& readings) const {
        Formula known = formula_;
        std::vector<Measured> measured;
        for (const auto* reading : readings) {
            if (reading->set)
                for (auto& line : known.lines) reading->set(line);
            if (reading->learned) measured.push_back(*reading->learned);
        }
        if (measured.empty()) return band_of(values_of(SampledBatch(known, sampled_).states(), figure_));
        const auto learned = learned_from(known, measured, knowledge_, sampled_.count(), sampled_.seed(), sampled_.given());
        const Sampled then(knowledge_, sampled_.count(), sampled_.seed(), {}, learned.sampled);
        return band_of(values_of(SampledBatch(known, then).states(), figure_));
    }

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
        const Band read{std::max(0.0, mid + off.low), mid, std::min(100.0, mid + off.high)};
        with(one("fat", name, mid, "%"), name + ": " + trimmed_text(mid, 0) + " % fat", [id = food.id, read](Line& l) {
            if (l.ingredient == id) l.fat_pct = read;
        });
    }

    // One animal's pH is alike in all its cuts, and one reading tells it.
    void ph(const Ingredient& food, const std::string& name) {
        const Band& off = parameter("kitchen.spread.ph");
        const std::string of = food.meat ? std::string(spelling(food.meat->species)) : name;
        with(one("ph", of, food.acidity->ph->band.mid, ""), of + ": pH " + fixed_text(food.acidity->ph->band.mid, 1),
             [this, &food, off](Line& l) {
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
        with(one("acid", name, pct, "%"), name + ": " + trimmed_text(pct, 1) + " % acidity",
             [id = food.id, read = scaled(parameter("kitchen.spread.acid"), pct)](Line& l) {
                 if (l.ingredient == id) l.acid_pct = read;
             });
    }

    void heat(const Ingredient& food, const std::string& name) {
        const double mid = food.capsaicinoids->band.mid;
        const Band& steps = parameter("kitchen.heat.usual");
        const double lot = food.lot_sigma ? food.lot_sigma->band.mid : 0;
        const Band read{mid * std::exp(lot * steps.low), mid, mid * std::exp(lot * steps.high)};
        with(one("heat", name, mid, "mg/kg"), name + ": as usual this year", [id = food.id, read](Line& l) {
            if (l.ingredient == id) l.heat_mg_kg = read;
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
        const Band& spread = parameter("kitchen.spread.measure");
        with(what, measure + ": " + trimmed_text(each, count > 0 ? 1 : 0) + " g", [id = line.ingredient, spread](Line& l) {
            if (l.ingredient == id) l.grams = scaled(spread, l.grams.mid);
        });
    }

    void of_batch() {
        const Band ph = middle_of(figure_of(Property::ph)), loss = middle_of(figure_of(Property::cook_loss_pct));
        learn(one("batch-ph", "", ph.mid, ""), "batch pH: " + fixed_text(ph.mid, 1), figure_of(Property::ph), ph, "kitchen.spread.ph");
        const Cook cook = sampled_.processes(formula_.process).front().cook;
        const bool fried = cook == Cook::pan || cook == Cook::loose;
        learn(one(fried ? "pan-loss" : "cook-loss", "", loss.mid, "%"),
              (fried ? "pan loss: " : "cook loss: ") + fixed_text(loss.mid, 0) + " %", figure_of(Property::cook_loss_pct), loss,
              "kitchen.spread.pan-loss");
        const Band fat = middle_of(fat_run_pct);
        constexpr double worth_pouring_off = 1;  // % of the raw mass; judgement
        if (fried && fat.mid >= worth_pouring_off)
            learn(one("pan-fat", "", fat.mid, "%"), "pan fat: " + fixed_text(fat.mid, 0) + " %", fat_run_pct, fat,
                  "kitchen.spread.pan-fat");
        for (const auto part : {ColourPart::raw_lightness, ColourPart::lightness}) {
            const Band light = middle_of(figure_of(part));
            const std::string word(info(part).word), raw = part == ColourPart::lightness ? "cooked " : "";
            learn(one(part == ColourPart::lightness ? "cooked-lightness" : "raw-lightness", "", light.mid, ""),
                  raw + word + ": " + fixed_text(light.mid, 0), figure_of(part), light, "kitchen.spread.lightness");
        }
    }

    void learn(const Reason& what, const std::string& line, const StateFigure& of, const Band& middle, const char* spread) {
        const Band& off = parameter(spread);
        const Band reading{middle.mid + off.low, middle.mid, middle.mid + off.high};
        if (width(middle) < known_already * width(reading)) return;
        tell(what, line, {}, Measured{of, reading});
    }

    void with(const Reason& what, const std::string& text, std::function<void(Line&)> set) {
        if (asked_.insert(in_full(what)).second) tell(what, text, std::move(set), std::nullopt);
    }

    static Reason one(const char* about, const std::string& food, double usual, const char* unit) {
        Reason what = make_reason(ReasonKind::worth_measuring, {{"usual", {}, usual, unit}});
        what.about = about;
        if (!food.empty()) what.foods = {food};
        return what;
    }

    void tell(const Reason& what, const std::string& line, std::function<void(Line&)> set, std::optional<Measured> learned) {
        Reading reading{{in_full(what), line, {}, 0, what}, std::move(set), std::move(learned)};
        const Band known = known_with({&reading});
        reading.told.known = known;
        reading.told.narrower = std::max(0.0, 1 - width(known) / width(band_));
        readings_.push_back(std::move(reading));
    }

    Band middle_of(const StateFigure& figure) const { return band_of(values_of(states_, figure)); }
    const Band& parameter(const char* id) const { return knowledge_.parameter(id); }

    const Formula& formula_;
    const StateFigure& figure_;
    const Sampled& sampled_;
    const Knowledge& knowledge_;
    const Band& band_;
    const std::vector<State> states_;  // with nothing read
    std::set<std::string> asked_;
    std::vector<Reading> readings_;
};

}  // namespace

Readings readings_for(const Formula& formula, const StateFigure& figure, const Sampled& sampled, const Band& band) {
    return Tried(formula, figure, sampled, band).all();
}

}  // namespace standin
