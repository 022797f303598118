// The models with what they need to judge any formula, in two views of two types. The nominal view has one value of everything: every
// uncertain quantity at the middle of its band. The sampled view has one a draw, and no draw is more the middle than any other. Words,
// tables, notes and cautions go by the nominal view, bands and chances by the sampled one. Immutable but for bounded caches behind locks:
// one evaluator serves any number of threads. `knowledge` must outlive it.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "evaluate/models.hpp"
#include "evaluate/process_state.hpp"
#include "evaluate/recent.hpp"
#include "standin/formula.hpp"

namespace standin {

/// What measurements of a batch have taught: where the deviates of what is uncertain lie now, over the draws and in the middle.
struct Learned {
    Deviates sampled, middle;
};

class Nominal {
public:
    explicit Nominal(const Knowledge& knowledge, const Deviates& given = {});

    const Knowledge& knowledge() const { return knowledge_; }
    const Models& models() const { return models_; }
    /// The material of one gram of a line's food.
    Material unit(const Line& line) const;
    ProcessState process(const Process& process) const;

private:
    const Knowledge& knowledge_;
    Draws middle_;
    std::vector<AcidParameters> acid_;  // one: what the mass balance asks for
    Models models_;
    mutable Recent<Material> units_;
};

class Sampled {
public:
    /// What is called `held` is taken as known: it stays at its middle in every draw. Empty: nothing is.
    Sampled(const Knowledge& knowledge, std::size_t draws, std::uint64_t seed, std::string_view held = {}, const Deviates& given = {});

    const Knowledge& knowledge() const { return knowledge_; }
    std::size_t count() const { return draws_.count(); }
    std::uint64_t seed() const { return seed_; }
    /// What measurements have set beforehand.
    const Deviates& given() const { return given_; }
    const Models& models(std::size_t draw) const { return models_[draw]; }
    /// The material of one gram of a line's food, one a draw.
    std::shared_ptr<const std::vector<Material>> units(const Line& line) const;
    std::vector<ProcessState> processes(const Process& process) const;

    /// The standard normal deviates of what is called `name`, one a draw.
    const std::vector<double>& deviates(std::string_view name) const { return draws_.of(name); }
    /// What has been uncertain so far, in the order of the alphabet.
    std::vector<std::string> uncertain() const { return draws_.names(); }

private:
    const Knowledge& knowledge_;
    std::uint64_t seed_;
    Deviates given_;
    Draws draws_;
    std::vector<AcidParameters> acid_;
    std::vector<Models> models_;
    mutable Recent<std::vector<Material>> units_;
};

class Evaluator {
public:
    /// `general`: the evaluator over the general figures, where this one knows better of a kitchen; it must outlive this one.
    Evaluator(const Knowledge& knowledge, std::size_t draws, std::uint64_t seed, const Learned& learned = {},
              const Evaluator* general = nullptr)
        : nominal_(knowledge, learned.middle), sampled_(knowledge, draws, seed, {}, learned.sampled), general_(general) {}

    const Knowledge& knowledge() const { return nominal_.knowledge(); }
    const Nominal& nominal() const { return nominal_; }
    const Sampled& sampled() const { return sampled_; }
    /// What is safe goes by the general figures as well; null where there are no others.
    const Evaluator* general() const { return general_; }

private:
    Nominal nominal_;
    Sampled sampled_;
    const Evaluator* general_ = nullptr;
};

/// How many chiles share out their heat in a line: what was counted, else weight over the weight of one piece, at least one.
double pods_of(const Line& line, const Ingredient& ingredient);

}  // namespace standin
