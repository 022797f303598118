#include "render/weights.hpp"

#include <algorithm>

namespace standin::cli {
namespace {

bool brings(const Edit& e) { return e.kind == EditKind::replace || e.kind == EditKind::split || e.kind == EditKind::add; }

class Rows {
public:
    Rows(const Prediction& base, const Variant& variant) : base_(base), variant_(variant), used_(variant.prediction.lines.size()) {}

    std::vector<WeightRow> all() {
        for (const auto& line : base_.lines) kept_.push_back(take(line.ingredient, line.prepared));
        for (std::size_t l = 0; l < kept_.size(); ++l)
            if (!kept_[l]) kept_[l] = take_otherwise(base_.lines[l].ingredient);
        for (std::size_t l = 0; l < base_.lines.size(); ++l) {
            const PredictedLine& line = base_.lines[l];
            const auto instead = stand_ins_of(line);
            const bool alone = !kept_[l] && instead.size() == 1;
            if (!alone) rows_.push_back({kept_[l], &line, nullptr, false});
            for (const auto* food : instead) rows_.push_back({food, nullptr, &line, alone});
        }
        for (std::size_t i = 0; i < used_.size(); ++i)
            if (!used_[i]) rows_.push_back({&variant_.prediction.lines[i], nullptr, nullptr, false});
        return std::move(rows_);
    }

private:
    const PredictedLine* take(const std::string& ingredient, const std::vector<std::string>& prepared) {
        const auto& lines = variant_.prediction.lines;
        for (std::size_t i = 0; i < lines.size(); ++i) {
            if (used_[i] || lines[i].ingredient != ingredient || lines[i].prepared != prepared) continue;
            used_[i] = true;
            return &lines[i];
        }
        return nullptr;
    }

    // The line itself, prepared in another way: blanched for a shorter time.
    const PredictedLine* take_otherwise(const std::string& ingredient) {
        const auto brought = [&](const PredictedLine& line) {
            return std::any_of(variant_.edits.begin(), variant_.edits.end(),
                               [&](const Edit& e) { return brings(e) && e.with == line.ingredient && e.prepared == line.prepared; });
        };
        const auto& lines = variant_.prediction.lines;
        for (std::size_t i = 0; i < lines.size(); ++i)
            if (!used_[i] && lines[i].ingredient == ingredient && !brought(lines[i])) return take(ingredient, lines[i].prepared);
        return nullptr;
    }

    std::vector<const PredictedLine*> stand_ins_of(const PredictedLine& line) {
        std::vector<const PredictedLine*> out;
        for (const auto& e : variant_.edits)
            if (brings(e) && e.line == line.ingredient)
                if (const auto* food = take(e.with, e.prepared)) out.push_back(food);
        return out;
    }

    const Prediction& base_;
    const Variant& variant_;
    std::vector<bool> used_;
    std::vector<const PredictedLine*> kept_;
    std::vector<WeightRow> rows_;
};

}  // namespace

std::vector<WeightRow> weight_rows(const Prediction& base, const Variant& variant) { return Rows(base, variant).all(); }

}  // namespace standin::cli
