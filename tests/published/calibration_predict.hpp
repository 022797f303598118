// What the models say of each measured thing, at the default draws: products through the engine's own door, or, where a constant was
// fitted to the row, through the same models with the constants refitted without it.
#pragma once

#include <map>
#include <memory>
#include <stdexcept>
#include <string>

#include "published/calibration_rows.hpp"
#include "published/calibration_scale.hpp"
#include "standin/engine.hpp"
#include "support/kitchen.hpp"

namespace calibration {

/// The knowledge with some parameter bands replaced, its models and its materials.
struct Refitted {
    explicit Refitted(const Refit& refit)
        : known(changed([&](standin::Records& records) {
              for (const auto& [id, band] : refit) {
                  const auto found = std::find_if(records.parameters.begin(), records.parameters.end(),
                                                  [&, &name = id](const standin::Parameter& p) { return p.id == name; });
                  if (found == records.parameters.end()) throw std::out_of_range("no parameter " + id);
                  found->quantity.band = band;
              }
          })),
          evaluator(known, standin::Options{}.draws, standin::Options{}.seed) {}

    standin::Knowledge known;
    standin::Evaluator evaluator;
    standin::Draws draws{standin::Options{}.draws, standin::Options{}.seed};
};

class Forecast {
public:
    Forecast() : engine_(standin::Engine::open({}).value()), products_(products()), refits_(refits()) {}

    Said of(const Measured& m) {
        if (m.direct) return direct(m);
        const standin::Prediction& p = product(m.what, m.without);
        return m.quantity.find(' ') == std::string::npos ? Said{p.properties[standin::property_of(m.quantity).value()], {}, nullptr}
                                                         : coordinate(m.quantity, p);
    }

private:
    static Said coordinate(const std::string& quantity, const standin::Prediction& p) {
        const standin::PredictedColour& c = quantity.rfind("raw", 0) == 0 ? p.raw : p.cooked;
        switch (quantity.back()) {
            case 'L':
                return {c.L, c.lab, &standin::Lab::L};
            case 'a':
                return {c.a, c.lab, &standin::Lab::a};
            default:
                return {c.b, c.lab, &standin::Lab::b};
        }
    }

    standin::Formula formula_of(const std::string& product) const { return engine_.read_formula(products_.at(product), product).value(); }

    const standin::Prediction& product(const std::string& what, const std::string& without) {
        const auto [at, fresh] = predictions_.try_emplace({what, without});
        if (fresh)
            at->second = without.empty() ? engine_.predict(formula_of(what)).value()
                                         : standin::predict_formula(formula_of(what), refitted(without).evaluator);
        return at->second;
    }

    Refitted& refitted(const std::string& without) {
        auto& made = made_[without];
        if (!made) made = std::make_unique<Refitted>(without.empty() ? Refit{} : refits_.at(without));
        return *made;
    }

    /// The band of `value(draw)` over the draws.
    template <class F>
    static standin::Band over(F value) {
        std::vector<double> values(standin::Options{}.draws);
        for (std::size_t i = 0; i < values.size(); ++i) values[i] = value(i);
        return standin::band_of(std::move(values));
    }

    Said direct(const Measured& m) {
        Refitted& world = refitted(m.without);
        const Inputs in(m.inputs);
        if (m.quantity == "kept") return {kept(world, in), {}, nullptr};
        if (m.quantity == "activation") return {world.known.parameter("colour.activation"), {}, nullptr};
        if (m.quantity == "cooked rise") return {cooked_rise(world, in.word("species")), {}, nullptr};
        if (m.quantity == "cooked factor") return {world.known.parameter("colour.cooked-factor"), {}, nullptr};
        if (m.quantity == "buffer") return {buffer(world, in.word("ingredient")), {}, nullptr};
        if (m.quantity == "capsaicinoids") return {capsaicinoids(world, in.word("ingredient")), {}, nullptr};
        if (m.quantity == "hardness ratio") return {hardness_ratio(world, in.word("of"), in.word("over")), {}, nullptr};
        return powder(world, in, m.quantity);
    }

    static standin::Band kept(Refitted& world, const Inputs& in) {
        const auto parameters = standin::draw_parameters(world.known, standin::colour_bindings(), world.draws);
        const double low = in.number("ph_low"), high = in.number("ph_high");
        const standin::Spread tissue(standin::Band{low, (low + high) / 2, high});
        const auto& deviates = world.draws.of("calibration tissue pH");
        return over([&](std::size_t i) {
            const auto& p = parameters[i];
            const double phi = in.number("live") > 0 ? p.phi_live_cold : p.phi_set_cold;
            const double rate = standin::chlorophyll_rate(in.number("celsius"), tissue.at(deviates[i]), phi, p);
            return standin::kept_after(rate, in.number("minutes"));
        });
    }

    static standin::SampledBatch kilogram_of(Refitted& world, const std::string& ingredient) {
        if (!world.known.ingredient(ingredient)) throw std::out_of_range("no ingredient " + ingredient);
        return {::formula({line(ingredient, 1000)}), world.evaluator.sampled()};
    }

    static standin::Band cooked_rise(Refitted& world, const std::string& species) {
        const auto parameters = standin::draw_parameters(world.known, standin::acid_bindings(), world.draws);
        const auto kind = static_cast<std::size_t>(standin::parse_word<standin::Species>(species).value());
        return over([&](std::size_t i) { return parameters[i].cooking_rise * parameters[i].rise[kind]; });
    }

    // mmol H+/(pH kg) between pH 5.5 and 7.0.
    static standin::Band buffer(Refitted& world, const std::string& ingredient) {
        const standin::SampledBatch batch = kilogram_of(world, ingredient);
        return over([&](std::size_t i) {
            const auto& p = batch.models(i).acid();
            return batch.total(i)[standin::Amount::meat_sites] * (standin::bound_protons(5.5, p) - standin::bound_protons(7.0, p)) / 1.5;
        });
    }

    // mg/kg of the ingredient.
    static standin::Band capsaicinoids(Refitted& world, const std::string& ingredient) {
        const standin::SampledBatch batch = kilogram_of(world, ingredient);
        return over([&](std::size_t i) { return batch.total(i)[standin::Amount::capsaicinoids]; });
    }

    standin::Band hardness_ratio(Refitted& world, const std::string& of, const std::string& reference) const {
        const standin::Sampled& sampled = world.evaluator.sampled();
        const standin::SampledBatch top(formula_of(of), sampled), bottom(formula_of(reference), sampled);
        return over([&](std::size_t i) {
            const double below = sampled.models(i).bind(bottom.total(i), bottom.process(i)).hardness;
            return sampled.models(i).bind(top.total(i), top.process(i)).hardness / below;
        });
    }

    // A measured control with powder in it; "powder raw L": the coordinate of the coloured mass.
    static Said powder(Refitted& world, const Inputs& in, const std::string& quantity) {
        const auto parameters = standin::draw_parameters(world.known, standin::colour_bindings(), world.draws);
        const standin::Bands control = standin::k_over_s(standin::Lab{in.number("L"), in.number("a"), in.number("b")});
        const bool raw = quantity.find("raw") != std::string::npos;
        const double pigment = in.number("pigment"), turned = in.number("turned");
        std::vector<standin::Lab> labs;
        for (const auto& p : parameters)
            labs.push_back(standin::lab_of_k_over_s(
                standin::with_pigment(control, pigment * (1 - turned), pigment * turned, raw ? 1 : p.cooked_factor, p)));
        standin::PredictedColour c;
        c.L = over([&](std::size_t i) { return labs[i].L; });
        c.a = over([&](std::size_t i) { return labs[i].a; });
        c.b = over([&](std::size_t i) { return labs[i].b; });
        c.lab = {c.L.mid, c.a.mid, c.b.mid};
        standin::Prediction p;
        p.raw = p.cooked = c;
        return coordinate(quantity, p);
    }

    standin::Engine engine_;
    std::map<std::string, std::string> products_;
    std::map<std::string, Refit> refits_;
    std::map<std::pair<std::string, std::string>, standin::Prediction> predictions_;
    std::map<std::string, std::unique_ptr<Refitted>> made_;
};

}  // namespace calibration
