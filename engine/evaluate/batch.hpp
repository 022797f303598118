// A formula as the models see it: the material of one gram of every line, and the grams. The nominal batch has one of each, the sampled
// batch one a draw. A batch must not outlive the view it was made by.
#pragma once

#include <memory>
#include <vector>

#include "evaluate/evaluator.hpp"

namespace standin {

class NominalBatch {
public:
    NominalBatch(const Formula& formula, const Nominal& nominal);

    /// The whole batch.
    const Material& total() const { return total_; }
    /// What one line brings.
    const Material& part(std::size_t line) const { return parts_[line]; }
    std::size_t lines() const { return parts_.size(); }
    const ProcessState& process() const { return process_; }

    State state() const { return models_->state(total_, process_); }
    BatchBind bind() const { return models_->bind(total_, process_); }

private:
    const Models* models_;
    ProcessState process_;
    std::vector<Material> parts_;
    Material total_;
};

class SampledBatch {
public:
    SampledBatch(const Formula& formula, const Sampled& sampled);

    std::size_t count() const { return process_.size(); }
    /// The whole batch at a draw.
    Material total(std::size_t draw) const;
    const ProcessState& process(std::size_t draw) const { return process_[draw]; }
    const Models& models(std::size_t draw) const { return sampled_->models(draw); }

    State state(std::size_t draw) const { return models(draw).state(total(draw), process_[draw]); }
    /// At every draw, for bands of differences.
    std::vector<State> states() const;

private:
    struct Part {
        std::shared_ptr<const std::vector<Material>> units;
        std::vector<double> grams;  // as weighed, one a draw
    };

    const Sampled* sampled_;
    std::vector<Part> parts_;
    std::vector<ProcessState> process_;
};

}  // namespace standin
