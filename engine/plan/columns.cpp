#include "plan/columns.hpp"

#include <algorithm>

#include "adapt/adapt.hpp"
#include "adapt/goals/request.hpp"
#include "adapt/variants/edits_beside.hpp"
#include "models/as_bought.hpp"

namespace standin {
namespace {

class Listing {
public:
    Listing(const std::vector<CheckedFormula>& formulas, const PlanRequest& request, const Context& context)
        : formulas_(formulas), request_(request), context_(context) {}

    Result<Columns> all() && {
        take_list();
        columns_.conflict.resize(formulas_.size());
        for (std::size_t f = 0; f < formulas_.size(); ++f) {
            const auto added = add_formula(f);
            if (!added) return Failure(added.error());
        }
        return std::move(columns_);
    }

private:
    const Knowledge& knowledge() const { return context_.knowledge(); }

    void take_list() {
        std::map<std::string, std::optional<double>> listed;
        for (const auto& item : request_.have.items) {
            auto& held = listed.try_emplace(item.ingredient, 0.0).first->second;
            if (!item.grams || !held) held.reset();
            else held = *held + *item.grams;
        }
        for (const auto& [id, grams] : listed)
            if (grams) columns_.stock[id] = *grams;
        for (const auto& id : request_.have.missing) columns_.stock[id] = 0;
    }

    Result<bool> add_formula(std::size_t f) {
        AdaptRequest asked;
        asked.have = request_.have;
        asked.without = request_.without;
        const Formula merged = with_equal_lines_merged(formulas_[f].formula());
        const auto stock = Stock::of(merged, asked, context_);
        if (!stock) return Failure(stock.error());
        // What a list is taken to lack without saying so is lacking for every formula, or some of it would be used all the same.
        for (const auto& line : merged.lines)
            if (!stock->offer(*knowledge().ingredient(line.ingredient)).on_hand) columns_.stock.emplace(line.ingredient, 0);
        for (const auto& one : stock->presumed()) remember(one);
        // What is to be left out is in none of the ways, however much of it is on hand.
        for (const auto& line : merged.lines)
            if (stock->offer(*knowledge().ingredient(line.ingredient)).excluded) {
                columns_.stock[line.ingredient] = 0;
                columns_.left_out.insert(line.ingredient);
            }
        push(f, without_casings(merged, *stock), 0, Nearness::same, without_all_beside(merged, *stock), true);
        for (const bool as_much : {false, true}) {
            asked.as_much = as_much;
            const auto answer = adapt_formula(formulas_[f], asked, std::nullopt, context_);
            if (!answer) return Failure(answer.error());
            if (!answer->conflict.empty() && !as_much) columns_.conflict[f] = answer->conflict;
            if (!answer->conflict.empty()) continue;
            for (const auto& variant : answer->variants) push(f, variant.formula, variant.distance, variant.nearness, variant.edits, false);
        }
        return true;
    }

    static Formula without_casings(Formula formula, const Stock& stock) {
        stock.leave_out_beside(formula);
        return formula;
    }

    void remember(const Presumption& one) {
        const auto same = [&](const Presumption& p) { return p.says == one.says; };
        if (std::none_of(columns_.presumed.begin(), columns_.presumed.end(), same)) columns_.presumed.push_back(one);
    }

    void push(std::size_t f, const Formula& batch, double distance, Nearness nearness, const std::vector<Edit>& edits, bool as_written) {
        Column column{f, as_written, distance, nearness, edits, batch, 0, {}};
        column.batch_g = NominalBatch(batch, context_.nominal()).total()[Amount::mass];
        for (const auto& line : batch.lines)
            column.a_gram[line.ingredient] += line.grams.mid * bought_per_gram(line, knowledge()) / column.batch_g;
        columns_.all.push_back(std::move(column));
    }

    const std::vector<CheckedFormula>& formulas_;
    const PlanRequest& request_;
    const Context& context_;
    Columns columns_;
};

}  // namespace

Result<Columns> columns_for(const std::vector<CheckedFormula>& formulas, const PlanRequest& request, const Context& context) {
    return Listing(formulas, request, context).all();
}

}  // namespace standin
