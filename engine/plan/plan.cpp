#include "plan/plan.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "adapt/variants/variant.hpp"
#include "core/band.hpp"
#include "core/contains.hpp"
#include "core/names.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "models/as_bought.hpp"
#include "plan/sharing.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"
#include "worksheet/buy.hpp"
#include "worksheet/scale.hpp"

namespace standin {
namespace {

constexpr double next_to_nothing = 1;  // g: less is neither left over nor worth buying

Worth worth_in(const Context& context) {
    Worth worth;
    worth.any = context.constant("plan.worth.any");
    worth.asked = context.constant("plan.worth.asked");
    worth.half_at = context.constant("plan.worth.half");
    worth.least_g = context.constant("plan.batch.least");
    worth.most_g = context.constant("plan.batch.most");
    return worth;
}

class Planning {
public:
    Planning(const std::vector<CheckedFormula>& formulas, const PlanRequest& request, std::vector<std::optional<double>> asked_g,
             Columns columns, const Context& context)
        : formulas_(formulas),
          request_(request),
          columns_(std::move(columns)),
          context_(context),
          worth_(worth_in(context)),
          asked_(std::move(asked_g)) {
        shares_ = shared(columns_, asked_, worth_);
    }

    PlanAnswer answer() && {
        for (std::size_t f = 0; f < formulas_.size(); ++f) answer_.sausages.push_back(sausage(f));
        std::stable_sort(answer_.sausages.begin(), answer_.sausages.end(), [](const PlannedSausage& a, const PlannedSausage& b) {
            return a.fits != b.fits ? a.fits : a.distance < b.distance;
        });
        leave_over();
        list_purchases();
        look_for_help();
        OnPage page;
        for (const auto& sausage : answer_.sausages) page.add(sausage.prediction);
        answer_.on_page = page.safety();
        answer_.presumed = columns_.presumed;
        answer_.overlay = context_.options.knowledge_folder;
        tell_readings();
        return std::move(answer_);
    }

private:
    const Knowledge& knowledge() const { return context_.knowledge(); }
    const std::string& name_of(const std::string& id) const { return knowledge().ingredient(id)->names.front(); }

    double least_of(std::size_t f) const { return std::min(worth_.least_g, asked_[f].value_or(worth_.least_g)); }

    // The way that was taken; else the nearest that makes enough to be worth while; else the one that makes most.
    std::size_t shown_column(std::size_t f) const {
        std::optional<std::size_t> best;
        const auto rank = [&](std::size_t c) {
            const double makes = alone(columns_.all[c], columns_.stock).grams;
            const bool enough = makes >= least_of(f);
            return std::tuple(shares_.grams[c] > 0 ? 0 : 1, enough ? 0 : 1, enough ? columns_.all[c].distance : -makes);
        };
        for (std::size_t c = 0; c < columns_.all.size(); ++c)
            if (columns_.all[c].formula == f && (!best || rank(c) < rank(*best))) best = c;
        return *best;  // the formula as written is always there
    }

    PlannedSausage sausage(std::size_t f) {
        const std::size_t c = shown_column(f);
        const Column& column = columns_.all[c];
        PlannedSausage s;
        s.formula = f;
        s.title = formulas_[f].formula().title;
        s.distance = column.distance;
        s.nearness = column.nearness;
        s.edits = column.edits;
        s.asked_g = asked_[f];
        const Alone by_itself = alone(column, columns_.stock);
        s.alone_g = std::min(by_itself.grams, std::max(worth_.most_g, asked_[f].value_or(0)));
        if (!by_itself.ends.empty())
            s.limiting = Limiting{by_itself.ends, name_of(by_itself.ends), columns_.stock.at(by_itself.ends),
                                  1000 * column.a_gram.at(by_itself.ends)};
        s.fits = s.alone_g >= least_of(f) * (1 - 1e-9);
        if (!s.fits) s.conflict = columns_.conflict[f];
        const double step = context_.constant("plan.batch.step");
        s.made_g = std::floor(shares_.grams[c] / step + 1e-6) * step;
        if (s.made_g > 0) s.batch = batch_of(column, s.made_g);
        const Formula& told = s.made_g > 0 ? s.batch : column.batch;
        s.prediction = predict_formula(told, context_.evaluator);
        mark_safety(s.prediction, told, context_.evaluator, context_.options.rules);
        return s;
    }

    // Weights as one weighs them; of what the list ends, never up.
    Formula batch_of(const Column& column, double grams) const {
        Formula batch = column.batch;
        const double factor = grams / column.batch_g;
        for (auto& line : batch.lines) {
            const double weight = kitchen_grams(line.grams.mid * factor, columns_.stock.count(line.ingredient) > 0);
            line.grams = scaled(line.grams, line.grams.mid > 0 ? weight / line.grams.mid : factor);
            if (line.count) line.count = *line.count * factor;
            line.written.clear();
        }
        std::erase_if(batch.lines, [](const Line& line) { return !(line.grams.mid > 0); });
        return batch;
    }

    std::map<std::string, double> used() const {
        std::map<std::string, double> grams;
        for (const auto& sausage : answer_.sausages)
            for (const auto& line : sausage.batch.lines) grams[line.ingredient] += line.grams.mid * bought_per_gram(line, knowledge());
        return grams;
    }

    // "Pork shoulder 3 kg, thawed in the fridge."
    bool was_frozen(const std::string& ingredient) const {
        return std::any_of(request_.have.read.begin(), request_.have.read.end(), [&](const StockRead& read) {
            if (!contains(read.as.foods, name_of(ingredient))) return false;
            const auto words = hazard_text(read.written).words;
            return std::any_of(words.begin(), words.end(),
                               [&](const auto& word) { return knowledge().in_list(WordList::was_frozen, fold(word)); });
        });
    }

    // What was thawed does not freeze well.
    std::string storage_of(const std::string& ingredient) const {
        const std::string& storage = knowledge().ingredient(ingredient)->storage;
        return was_frozen(ingredient) ? storage.substr(0, storage.find(';')) : storage;
    }

    void leave_over() {
        const auto taken = used();
        std::set<std::string> told;
        for (const auto& item : request_.have.items) {
            const auto there = columns_.stock.find(item.ingredient);
            if (there == columns_.stock.end() || !told.insert(item.ingredient).second) continue;
            const auto gone = taken.find(item.ingredient);
            const double left = there->second - (gone == taken.end() ? 0 : gone->second);
            if (left > next_to_nothing)
                answer_.left.push_back({item.ingredient, name_of(item.ingredient), left, there->second, storage_of(item.ingredient),
                                        was_frozen(item.ingredient)});
        }
    }

    // All batches as one formula, of each food only the part that the list does not have.
    void list_purchases() {
        const auto needed = used();
        std::set<std::string> plenty;
        for (const auto& item : request_.have.items)
            if (!item.grams) plenty.insert(item.ingredient);
        Formula net;
        for (const auto& sausage : answer_.sausages)
            for (Line line : sausage.batch.lines) {
                const double need = needed.at(line.ingredient);
                const auto there = columns_.stock.find(line.ingredient);
                const double lacking = plenty.count(line.ingredient)   ? 0
                                       : there == columns_.stock.end() ? need
                                                                       : std::max(0.0, need - there->second);
                if (lacking <= 1e-6 * need) continue;
                line.grams = scaled(line.grams, lacking / need);
                net.lines.push_back(std::move(line));
            }
        answer_.buy = purchases_of(net, std::nullopt, knowledge());
        std::erase_if(answer_.buy, [](const Purchase& p) { return p.from_the_tap; });
        as_whole_fruit();
    }

    // One lemon gives juice and zest: where both are needed, so many lemons as the one that asks for more.
    void as_whole_fruit() {
        constexpr std::string_view juice = " juice", zest = " zest";
        for (auto& pressed : answer_.buy) {
            if (!pressed.name.ends_with(juice)) continue;
            const std::string fruit = pressed.name.substr(0, pressed.name.size() - juice.size());
            const auto grated = std::find_if(answer_.buy.begin(), answer_.buy.end(),
                                             [&](const Purchase& p) { return p.name == fruit + std::string(zest); });
            const auto one_pressed = piece_of(pressed.ingredient);
            if (grated == answer_.buy.end() || !one_pressed) continue;
            const auto one_grated = piece_of(grated->ingredient);
            if (!one_grated) continue;
            constexpr double nearly = 0.1;  // of a fruit; no second one is bought for a few drops
            const double count =
                std::max(std::ceil(pressed.need_g / *one_pressed - nearly), std::ceil(grated->need_g / *one_grated - nearly));
            pressed.name = fruit + ", for juice and zest";
            for (auto* sold : {&pressed.metric, &pressed.us}) {
                sold->count = std::max(1.0, count);
                sold->unit = "piece";
                sold->unit_g = *one_pressed;
                sold->unit_ml = 0;
                sold->buy_g = *sold->count * *one_pressed;
            }
            answer_.buy.erase(grated);
            return as_whole_fruit();  // the list has moved
        }
    }

    std::optional<double> piece_of(const std::string& id) const {
        for (const auto& measure : knowledge().ingredient(id)->measures)
            if (measure.measure == "piece" && measure.grams.mid > 0) return measure.grams.mid;
        return std::nullopt;
    }

    // The same once more with plenty of one food of which there is too little.
    void look_for_help() {
        constexpr std::size_t most = 3;
        constexpr double worth_telling = 0.25;  // kilos of a sausage as it is written
        std::vector<std::pair<double, WorthBuying>> found;
        for (const auto& [food, grams] : columns_.stock) {
            const auto takes = [&, &name = food](const Column& c) { return c.a_gram.count(name) > 0; };
            if (columns_.left_out.count(food) || std::none_of(columns_.all.begin(), columns_.all.end(), takes)) continue;
            Columns with = columns_;
            with.stock.erase(food);
            const Shares better = shared(with, asked_, worth_);
            if (better.worth < shares_.worth + worth_telling) continue;
            found.emplace_back(better.worth, help(food, grams, better));
        }
        std::stable_sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return a.first > b.first; });
        for (std::size_t i = 0; i < std::min(most, found.size()); ++i) answer_.buy_first.push_back(std::move(found[i].second));
    }

    WorthBuying help(const std::string& food, double there, const Shares& better) const {
        WorthBuying buy{food, name_of(food), -there, 0, {}};
        std::vector<double> before(formulas_.size(), 0), after(formulas_.size(), 0);
        for (std::size_t c = 0; c < columns_.all.size(); ++c) {
            const Column& column = columns_.all[c];
            before[column.formula] += shares_.grams[c];
            after[column.formula] += better.grams[c];
            buy.more_g += better.grams[c] - shares_.grams[c];
            if (const auto takes = column.a_gram.find(food); takes != column.a_gram.end()) buy.need_g += better.grams[c] * takes->second;
        }
        for (std::size_t f = 0; f < before.size(); ++f)
            if (after[f] > 0 && !(before[f] > 0)) buy.makes.push_back(formulas_[f].formula().title);
        return buy;
    }

    void tell_readings() {
        const auto tell = [&](const std::vector<Reason>& notes) {
            for (const auto& note : notes)
                if (std::find(answer_.read_as.begin(), answer_.read_as.end(), note) == answer_.read_as.end())
                    answer_.read_as.push_back(note);
        };
        for (const auto& formula : formulas_) {
            tell(formula.formula().read_as);
            for (const auto& line : formula.formula().lines) tell(line.notes);
        }
        tell(request_.have.notes);
    }

    const std::vector<CheckedFormula>& formulas_;
    const PlanRequest& request_;
    Columns columns_;
    const Context& context_;
    Worth worth_;
    std::vector<std::optional<double>> asked_;
    Shares shares_;
    PlanAnswer answer_;
};

}  // namespace

Result<PlanAnswer> plan_of(const std::vector<CheckedFormula>& formulas, const PlanRequest& request, const Context& context) {
    std::vector<std::optional<double>> asked_g(formulas.size());
    for (const auto& make : request.make) {
        const auto grams = weight_asked(make.amount, "request.make");
        if (!grams) return Failure(grams.error());
        asked_g[make.formula] = asked_g[make.formula].value_or(0) + *grams;
    }
    auto columns = columns_for(formulas, request, context);
    if (!columns) return Failure(columns.error());
    return Planning(formulas, request, std::move(asked_g), std::move(*columns), context).answer();
}

}  // namespace standin
