#include "render/weights.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "render/text/text_parts.hpp"
#include "render/units.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

bool brings(const Edit& e) { return e.kind == EditKind::replace || e.kind == EditKind::split || e.kind == EditKind::add; }

class Rows {
public:
    Rows(const Prediction& base, const Variant& variant) : base_(base), variant_(variant), row_of_(variant.prediction.lines.size(), none) {
        for (const auto& line : base_.lines) kept_.push_back(take(line.ingredient, &line.prepared));
        for (std::size_t l = 0; l < kept_.size(); ++l)
            if (kept_[l] == none) kept_[l] = take_otherwise(base_.lines[l].ingredient);
    }

    std::vector<WeightRow> all() {
        for (std::size_t l = 0; l < base_.lines.size(); ++l) {
            const auto foods = stand_ins_of(l);
            const bool left = kept_[l] != none;
            if (left || foods.empty()) row(kept_[l]).before = &base_.lines[l];
            for (const auto food : foods) row(food).instead_of.push_back({&base_.lines[l], !left && foods.size() == 1});
        }
        for (std::size_t i = 0; i < row_of_.size(); ++i) row(i);
        return std::move(rows_);
    }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);

    const std::vector<PredictedLine>& lines() const { return variant_.prediction.lines; }

    // Each food has one row, however many lines it serves.
    WeightRow& row(std::size_t food) {
        if (food != none && row_of_[food] != none) return rows_[row_of_[food]];
        if (food != none) row_of_[food] = rows_.size();
        return rows_.emplace_back(WeightRow{food == none ? nullptr : &lines()[food]});
    }

    // A line of the variant that no line of the formula has yet.
    std::size_t take(const std::string& ingredient, const std::vector<std::string>* prepared) const {
        for (std::size_t i = 0; i < lines().size(); ++i)
            if (!is_kept(i) && lines()[i].ingredient == ingredient && (!prepared || lines()[i].prepared == *prepared)) return i;
        return none;
    }

    bool is_kept(std::size_t food) const { return std::find(kept_.begin(), kept_.end(), food) != kept_.end(); }

    // The line itself, prepared in another way: blanched for a shorter time.
    std::size_t take_otherwise(const std::string& ingredient) const {
        const auto brought = [&](const PredictedLine& line) {
            return std::any_of(variant_.edits.begin(), variant_.edits.end(),
                               [&](const Edit& e) { return brings(e) && e.with == line.ingredient && e.prepared == line.prepared; });
        };
        const std::size_t food = take(ingredient, nullptr);
        return food == none || brought(lines()[food]) ? none : food;
    }

    std::vector<std::size_t> stand_ins_of(std::size_t l) const {
        std::vector<std::size_t> foods;
        const bool as_it_was = kept_[l] != none && lines()[kept_[l]].weighed_g >= base_.lines[l].weighed_g;
        if (as_it_was) return foods;  // another line of the same food is meant
        for (const auto& e : variant_.edits) {
            if (!brings(e) || e.line != base_.lines[l].ingredient) continue;
            const auto food = std::find_if(lines().begin(), lines().end(), [&](const PredictedLine& line) {
                return line.ingredient == e.with && line.prepared == e.prepared;
            });
            const auto at = static_cast<std::size_t>(food - lines().begin());
            if (food != lines().end() && at != kept_[l] && std::find(foods.begin(), foods.end(), at) == foods.end()) foods.push_back(at);
        }
        return foods;
    }

    const Prediction& base_;
    const Variant& variant_;
    std::vector<std::size_t> kept_;    // by line of the formula: the line of the variant that it became
    std::vector<std::size_t> row_of_;  // by line of the variant
    std::vector<WeightRow> rows_;
};

bool is_one_of(const std::string& step, const std::vector<std::string_view>& words) {
    return std::any_of(words.begin(), words.end(), [&](std::string_view word) { return step.rfind(word, 0) == 0; });
}

// "roasted" says nothing beside "roasted and peeled".
std::vector<std::string> told_once(const std::vector<std::string>& prepared) {
    std::vector<std::string> steps;
    for (const auto& step : prepared) {
        if (!steps.empty() && step.rfind(steps.back() + " ", 0) == 0) steps.back() = step;
        else if (steps.empty() || steps.back() != step) steps.push_back(step);
    }
    return steps;
}

std::string then(const std::string& name, std::vector<std::string> steps, const char* state) {
    if (name.starts_with("frozen") && steps.front() == "frozen and thawed") {  // it is bought so
        steps.front() = "thawed";
        return name + ", " + listed(steps);
    }
    return name + " (" + state + "), then " + listed(steps);
}

// "spinach, blanched already, then squeezed"
std::string as_it_lies(const PredictedLine& line) {
    const auto still = told_once(line.still);
    return line.name + ", " + listed(told_once(line.ready)) + " already" + (still.empty() ? "" : ", then " + listed(still));
}

bool is_dry(const std::vector<std::string>& steps) {
    static const std::vector<std::string_view> soaks{"soaked", "rehydrated"};
    return std::any_of(steps.begin(), steps.end(), [](const std::string& step) { return is_one_of(step, soaks); });
}

}  // namespace

std::vector<WeightRow> weight_rows(const Prediction& base, const Variant& variant) { return Rows(base, variant).all(); }

std::string before_words(const WeightRow& row, Units units) {
    std::string text;
    if (row.before) {
        const std::string was = line_weight(*row.before, units);
        const bool ready = row.now && !row.now->ready.empty();
        const bool same = row.now && row.now->prepared == row.before->prepared && !ready && line_weight(*row.now, units) == was;
        const bool otherwise = row.now && row.now->prepared != row.before->prepared;
        if (ready && std::abs(row.now->weighed_g - row.before->weighed_g) < 0.5 && !row.before->weighed_prepared)
            text = "same, " + was + " raw";
        else text = same ? "same" : "was " + (otherwise ? with_preparations(was, row.before->prepared) : was);
    }
    std::vector<std::string> parts;
    for (const auto& [line, whole] : row.instead_of)
        parts.push_back((whole ? "" : "part of ") + line_weight(*line, units) + " " + line->name);
    if (!parts.empty()) text += (text.empty() ? "for " : "; also for ") + listed(parts);
    return text.empty() ? "new" : text;
}

std::string as_weighed(const PredictedLine& line) {
    constexpr double told = 0.05;  // share of its weight; less is within what a hand takes
    if (!line.ready.empty()) return as_it_lies(line);
    const auto steps = told_once(line.prepared);
    if (steps.empty()) return line.name;
    const bool changes = line.weighed_g > 0 && (line.grams < (1 - told) * line.weighed_g || line.grams > (1 + told) * line.weighed_g);
    // What is only cut smaller weighs as much before and after, and "ground coriander" says it by its name.
    static const std::vector<std::string_view> cut{"chopped", "sliced", "minced", "grated", "crushed", "ground", "diced"};
    const bool only_cut = std::all_of(steps.begin(), steps.end(), [](const std::string& step) { return is_one_of(step, cut); });
    if (line.weighed_prepared && steps.size() == 1 && line.name.starts_with(steps.front() + " ")) return line.name;
    if (line.weighed_prepared) return with_preparations(line.name, steps) + (only_cut ? "" : " (weighed so)");
    if (!changes) return with_preparations(line.name, steps);
    return then(line.name, steps, is_dry(steps) ? "dry" : "raw");
}

std::string as_weighed(const std::string& name, const std::vector<std::string>& prepared) {
    static const std::vector<std::string_view> light{"toasted", "chopped", "sliced", "minced", "grated", "crushed",
                                                     "ground",  "chilled", "raw",    "washed", "beaten", "pureed"};
    const auto steps = told_once(prepared);
    if (std::all_of(steps.begin(), steps.end(), [](const std::string& step) { return is_one_of(step, light); }))
        return with_preparations(name, steps);
    return then(name, steps, is_dry(steps) ? "dry" : "raw");
}

std::string or_else(const Edit& edit, const Engine& engine, Units units) {
    constexpr std::size_t most = 2;
    std::string text;
    for (std::size_t i = 0; i < std::min(most, edit.alternatives.size()); ++i) {
        const Instead& other = edit.alternatives[i];
        text += (text.empty() ? "Or " : ", or ") + formula_weight(other.grams, units) + " " +
                as_weighed(engine.name_of(other.with), other.prepared);
        if (!other.allergens.empty()) text += " (holds " + listed(other.allergens) + ")";
    }
    return text.empty() ? "" : text + ".";
}

std::string page_weight(double grams, Units units) {
    constexpr double finest_us = 3;  // grams, a tenth of an ounce; judgement
    const std::string weight = formula_weight(grams, units);
    return units == Units::us && grams > 0 && grams < finest_us ? weight + " (" + formula_weight(grams, Units::metric) + ")" : weight;
}

std::string line_weight(const PredictedLine& line, Units units) {
    constexpr double poured = 20;  // grams: less is measured more finely
    if (!line.ready.empty()) return formula_weight(line.lying_g >= poured ? std::round(line.lying_g) : line.lying_g, units);
    const bool by_measure = !line.written.empty() && !says_weight(line.written) && line.weighed_g >= poured;
    return page_weight(by_measure && units == Units::metric ? std::round(line.weighed_g) : line.weighed_g, units);
}

std::string own_measure(const PredictedLine& line, Units units) {
    if (!line.ready.empty()) return "";
    const bool in_pods = line.spoons.ends_with("pod") || line.spoons.ends_with("pods");  // a scale tells little of so light a pod
    if (line.written.empty()) return line.spoons.empty() || (units == Units::metric && !in_pods) ? "" : " (" + line.spoons + ")";
    return says_weight(line.written) ? "" : " (" + line.written + ")";
}

}  // namespace standin::cli
