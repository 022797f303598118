// A formula as the models see it: the material of one gram of every line, and the grams.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "evaluate/models.hpp"
#include "standin/formula.hpp"

namespace standin {

/// Materials of one gram by what decides them, worked out once and shared by all formulas of a run.
class Pantry {
public:
    Pantry(const Knowledge& knowledge, const Models& models, Draws& draws) : knowledge_(knowledge), models_(models), draws_(draws) {}

    /// One material a draw for a line's food. Valid as long as the pantry lives.
    const std::vector<Material>& unit(const Line& line);

    const Knowledge& knowledge() const { return knowledge_; }
    const Models& models() const { return models_; }
    Draws& draws() { return draws_; }

private:
    const Knowledge& knowledge_;
    const Models& models_;
    Draws& draws_;
    std::map<std::string, std::vector<Material>> known_;
};

struct BatchLine {
    const std::vector<Material>* unit = nullptr;
    std::vector<double> grams;  // as weighed, one a draw
};

class Batch {
public:
    Batch(const Formula& formula, Pantry& pantry);

    /// The whole batch at a draw.
    Material total(std::size_t draw) const;
    /// What one line brings of one amount.
    double part(std::size_t line, Amount amount, std::size_t draw) const;
    std::size_t lines() const { return lines_.size(); }
    const ProcessState& process(std::size_t draw) const { return process_[draw]; }

private:
    std::vector<BatchLine> lines_;
    std::vector<ProcessState> process_;
};

/// How many chiles share out their heat in a line: what was counted, else weight over the weight of one piece, at least one.
double pods_of(const Line& line, const Ingredient& ingredient);

}  // namespace standin
