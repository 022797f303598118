// One garden, several sausages: which formulas it makes, how it is shared among them, what is left and what to buy.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "standin/engine.hpp"

namespace standin {

/// So much of one sausage, as raw mass.
struct PlanMake {
    std::size_t formula = 0;
    std::string amount;  ///< "3 kg"
};

struct PlanRequest {
    std::vector<Formula> formulas;
    Inventory have;
    std::vector<PlanMake> make;  ///< what is asked for comes first; a formula not named gets what is left
    std::vector<std::string> without;
};

/// A food of the list and how far it goes.
struct Limiting {
    std::string ingredient, name;
    double stock_g = 0;   ///< as picked or bought
    double a_kilo_g = 0;  ///< of it, so counted, in a kilo of this sausage
};

/// One formula of the plan. What is below `distance` is of the variant that was chosen, or of the nearest where none is made.
struct PlannedSausage {
    std::size_t formula = 0;  ///< which of the request
    std::string title;
    bool fits = false;             ///< there is a way to make it from the list
    std::vector<Reason> conflict;  ///< else what stands against it
    double distance = 0;           ///< noticeable differences from the formula
    Nearness nearness = Nearness::same;
    std::vector<Edit> edits;
    double alone_g = 0;                ///< what the list would make of it were it the only one
    std::optional<Limiting> limiting;  ///< what runs out first then; absent: nothing of the list does
    std::optional<double> asked_g;
    double made_g = 0;  ///< its share in the plan; 0: none is made
    Formula batch;      ///< at that size; empty where none is made
    Prediction prediction;
};

struct LeftOver {
    std::string ingredient, name;
    double grams = 0;     ///< as picked or bought
    double of_g = 0;      ///< of so much
    std::string storage;  ///< how long it keeps, where that is known
    bool thawed = false;  ///< by the list it was frozen before
};

/// One thing that would make more of the plan.
struct WorthBuying {
    std::string ingredient, name;
    double need_g = 0;                 ///< as bought, to make all it can
    double more_g = 0;                 ///< raw mass more in all
    std::vector<std::string> makes{};  ///< titles of sausages that are made with it and not without
};

struct PlanAnswer {
    std::vector<PlannedSausage> sausages;  ///< nearest to its formula first
    std::vector<LeftOver> left;
    std::vector<WorthBuying> buy_first;  ///< what helps most first
    std::vector<Purchase> buy;           ///< for all of the plan, less what is on the list
    std::vector<Presumption> presumed;
    std::vector<Reason> read_as;
    PageSafety on_page;
    std::string overlay;
};

Result<PlanAnswer> plan(const Engine& engine, const PlanRequest& request, const Setting& setting = {});

}  // namespace standin
