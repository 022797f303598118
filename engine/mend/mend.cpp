#include "mend/mend.hpp"

#include <algorithm>

#include "adapt/goals/request.hpp"
#include "core/contains.hpp"
#include "evaluate/batch.hpp"
#include "evaluate/predict.hpp"
#include "knowledge/index/kinds.hpp"
#include "mend/cause_foods.hpp"
#include "mend/causes.hpp"
#include "mend/of_the_list.hpp"
#include "mend/ways.hpp"
#include "models/all_fish.hpp"
#include "safety/core_temperature.hpp"
#include "safety/page.hpp"
#include "safety/safety.hpp"
#include "worksheet/scale.hpp"

namespace standin {
namespace {

// The formula at the size that was made.
Result<Formula> as_made(const CheckedFormula& formula, const std::string& made, const Context& context) {
    Formula mass = with_equal_lines_merged(formula.formula());
    if (made.empty()) return mass;
    const auto grams = weight_asked(made, "request.made");
    if (!grams) return Failure(grams.error());
    const double factor = *grams / NominalBatch(mass, context.nominal()).total()[Amount::mass];
    return scaled(std::move(mass), factor);
}

std::vector<MeasuredValue> against(const std::vector<MassReading>& readings, const Formula& mass, const Context& context) {
    std::vector<MeasuredValue> all;
    if (readings.empty()) return all;
    const Prediction as_written = predict_formula(mass, context.evaluator);
    for (const auto& reading : readings) {
        const Band& band = as_written.properties[reading.property];
        // No farther off than a kitchen's meter is: a tenth of a pH, a tenth of a percent of salt or two.
        const double meter = reading.property == Property::ph ? 0.1 : 0.15;
        const double beside = std::max((band.high - band.low) / 2, meter);
        all.push_back({reading.property, reading.value, band, reading.value < band.low - beside || reading.value > band.high + beside});
    }
    return all;
}

std::vector<TastedWord> told(const Meaning& meaning) {
    std::vector<TastedWord> words;
    for (const auto& meant : meaning.all) {
        const TasteWord& word = *meant.taste.word;
        const TasteReading& reading = *meant.reading;
        TastedWord one{meant.taste.written, word.id, meant.says(),  false,      reading.more_of.has_value(),
                       meant.there,         false,   word.practice, word.source};
        one.judged = !meant.goals.empty() || reading.more_of || reading.asks_less() || reading.plain > 0;
        words.push_back(std::move(one));
    }
    return words;
}

// More or less of what the formula has none of.
std::vector<Reason> of_nothing(const Meaning& meaning, const Formula& mass, const Knowledge& knowledge) {
    std::vector<Reason> cannot;
    for (const auto& meant : meaning.all) {
        const auto role = meant.reading->more_of ? meant.reading->more_of : meant.reading->less_of;
        const auto has = [&](const Line& line) { return counts_as(*knowledge.ingredient(line.ingredient), *role); };
        if (role && std::none_of(mass.lines.begin(), mass.lines.end(), has))
            cannot.push_back(cannot_be(ReasonKind::none_of_it, meant.taste.written));
    }
    return cannot;
}

void texts_of(const std::vector<MendStep>& steps, bool worked, std::vector<std::string>& into) {
    for (const auto& step : steps)
        if (!step.worked || *step.worked == worked) into.push_back(step.text);
}

bool any_asks_fat(const std::vector<Meant>& all) {
    return std::any_of(all.begin(), all.end(), [](const Meant& meant) { return asks_richer(meant.goals); });
}

bool any_asks_hold(const std::vector<Meant>& all) {
    return std::any_of(all.begin(), all.end(), [](const Meant& meant) { return asks_firmer(meant.goals); });
}

bool any_asks_less_lost(const std::vector<Meant>& all) {
    return std::any_of(all.begin(), all.end(),
                       [](const Meant& meant) { return any_asks(meant.goals, Property::cook_loss_pct, Goal::Kind::at_most); });
}

// Words that can be taken in another way beside: its best way too, or all of them where the first found none that does it.
void put_beside(MendAnswer& answer, const Meaning& meaning, const Mass& mass, const TastedMass& tasted) {
    const auto other = meaning_beside(meaning, tasted);
    if (!other) return;
    Ways ways = ways_to_mend({mass.formula, other->all, mass.made, mass.mending, mass.stock, mass.context, mass.request, mass.base,
                              mass.states, mass.plain_first, mass.plain_without, mass.set, mass.unsalted, mass.only_fresh, mass.wet});
    if (ways.all.empty()) return;
    const bool met = std::any_of(answer.ways.begin(), answer.ways.end(), [](const MendWay& w) { return w.met; });
    const std::size_t most = std::max<std::size_t>(1, mass.request.top);
    if (met && (most < 2 || !ways.all.front().met)) return;
    if (met) answer.ways.resize(std::min(answer.ways.size(), most - 1));
    else answer.cannot.clear();
    if (any_asks_fat(meaning.all) && !met)
        answer.ways.resize(std::min(answer.ways.size(), most - 1));  // of two fats that do not do it, one
    // Of two leaves or two starches that do not do it one, and the seasoning that may be what lacks.
    const auto seasons = [](const Meant& meant) { return meant.reading->more_of.has_value(); };
    const bool seasoned =
        std::any_of(other->all.begin(), other->all.end(), seasons) && std::none_of(meaning.all.begin(), meaning.all.end(), seasons);
    if (seasoned && !met && most > 1) answer.ways.resize(std::min(answer.ways.size(), most - 1));
    for (auto& way : ways.all)
        if (answer.ways.size() < most) answer.ways.push_back(std::move(way));
    // Lean meat that eats dry wants fat first, though it be part of the way; what holds the juice comes after.
    if (answer.ways.empty() || !any_asks_fat(meaning.all))
        std::stable_sort(answer.ways.begin(), answer.ways.end(), [](const MendWay& a, const MendWay& b) { return a.met && !b.met; });
    for (std::size_t m = 0; m < other->all.size(); ++m) {
        if (other->all[m].reading == meaning.all[m].reading) continue;
        TastedWord word = answer.words[m];
        word.says = other->all[m].says();
        word.beside = true;
        word.more = other->all[m].reading->more_of.has_value();
        word.practice.clear();
        answer.words.push_back(std::move(word));
    }
}

// What is weighed in against what the making did is a step; where nothing helps, there is no way.
void mind_causes(MendAnswer& answer, const std::vector<FoundCause>& causes) {
    for (const auto& cause : causes) {
        answer.causes.push_back(cause.told);
        if (cause.record->instead || cause.record->ends)
            for (auto& word : answer.words)
                if (contains(cause.record->of, word.id)) word.practice.clear();
        if (!cause.record->step_only) continue;
        for (auto& way : answer.ways) {
            way.step_only.push_back(cause.told.tasted);
            way.met = false;
        }
    }
}

// The page tells the core that the meat needs, where cooking it hotter is what was wrong.
void take_off_in_time(MendAnswer& answer, const std::vector<FoundCause>& causes, const Formula& mass, const Context& context) {
    if (std::none_of(causes.begin(), causes.end(), [](const FoundCause& c) { return c.record->spare_c > 0; })) return;
    const auto& rules = context.options.rules;
    const auto take_off = [&](Prediction& prediction, Formula formula) {
        formula.process.core_curve.clear();
        formula.process.core_c = demanded_core(prediction, context.knowledge(), rules).core_c;
        mark_safety(prediction, formula, context.knowledge(), rules);
    };
    take_off(answer.base, mass);
    for (auto& way : answer.ways) take_off(way.prediction, way.formula);
}

// What harms a person before what spoils a mass: in the order of the records, whatever was said first.
std::string said_of_discarding(const std::vector<Meant>& all) {
    std::vector<const Meant*> said;
    for (const auto& meant : all)
        if (meant.reading->discard) said.push_back(&meant);
    std::stable_sort(said.begin(), said.end(), [](const Meant* a, const Meant* b) { return a->taste.word < b->taste.word; });
    std::string text;
    for (const auto* meant : said) text += (text.empty() ? "" : " ") + meant->reading->says;
    return text;
}

// By what was said, or by what went in; who wants it to lose less wants the water that is in it.
bool has_loose_water(const std::vector<Meant>& tastes, const std::vector<FoundCause>& causes) {
    if (any_asks_less_lost(tastes)) return false;
    return std::any_of(tastes.begin(), tastes.end(), [](const Meant& meant) { return meant.taste.word->loose_water; }) ||
           std::any_of(causes.begin(), causes.end(), [](const FoundCause& c) { return c.record->poured || c.record->unsqueezed; });
}

// Notes of which the mass has foods that are known for them.
std::set<AromaNote> notes_in(const Formula& mass, const Mending& mending, const Context& context) {
    std::set<AromaNote> notes;
    const NominalBatch batch(mass, context.nominal());
    for (const auto& word : mending.tasted)
        for (const auto& reading : word.readings)
            if (reading.less_note && !lines_of_note(*reading.less_note, mass, batch, context.knowledge()).empty())
                notes.insert(*reading.less_note);
    return notes;
}

std::set<Role> roles_in(const Formula& mass, const Knowledge& knowledge) {
    std::set<Role> roles;
    for (const auto& line : mass.lines) {
        const Ingredient& food = *knowledge.ingredient(line.ingredient);
        roles.insert(food.roles.front());
        if (counts_as(food, Role::herb)) roles.insert(Role::herb);
    }
    return roles;
}

// Of the kinds that readings ask about, those of which the mass has a food.
std::set<std::string> kinds_in(const Formula& mass, const Mending& mending, const Knowledge& knowledge) {
    std::set<std::string> kinds;
    for (const auto& word : mending.tasted)
        for (const auto& reading : word.readings)
            for (const auto& line : mass.lines)
                if (!reading.less_kind.empty() && belongs(*knowledge.ingredient(line.ingredient), reading.less_kind, knowledge))
                    kinds.insert(reading.less_kind);
    return kinds;
}

// Nothing of a mixed mass comes out again: what it holds it holds when it is mended, thinned below what a code wants declared as well.
void stays_in(MendAnswer& answer) {
    auto& mended = answer.of_variants.allergens;
    for (const auto& held : answer.base.allergens) {
        if (!held.sure) continue;
        const auto same = [&](const AllergenText& one) { return one.allergen == held.allergen; };
        if (std::any_of(mended.begin(), mended.end(), [&](const AllergenText& one) { return same(one) && one.sure; })) continue;
        std::erase_if(mended, same);
        mended.push_back(held);
    }
    std::stable_partition(mended.begin(), mended.end(), [](const AllergenText& one) { return one.sure; });
}

void finish(MendAnswer& answer, const Mending& mending) {
    std::stable_partition(answer.ways.begin(), answer.ways.end(), [](const MendWay& way) {  // what the rules allow goes first
        return std::none_of(way.new_cautions.begin(), way.new_cautions.end(), breaks_the_law);
    });
    OnPage page;
    page.add(answer.base);
    for (const auto& way : answer.ways) page.offer(way.prediction);
    answer.on_page = page.safety();
    answer.of_variants = page.offered();
    stays_in(answer);
    if (answer.ways.empty()) return;
    const bool worked = std::any_of(answer.ways.begin(), answer.ways.end(), [](const MendWay& way) { return way.work_min > 0; });
    texts_of(mending.fold, worked, answer.fold);
    if (std::any_of(answer.ways.begin(), answer.ways.end(), [](const MendWay& way) { return !way.plain.empty(); }))
        texts_of(mending.plain, worked, answer.plain);
}

}  // namespace

std::string_view word(MendKind kind) {
    switch (kind) {
        case MendKind::add:
            return "add";
        case MendKind::blend:
            return "blend";
        case MendKind::blend_and_add:
            return "blend and add";
        case MendKind::work:
            return "work";
    }
    return "";
}

Result<MendAnswer> mend_formula(const CheckedFormula& formula, const MendRequest& request, const Mending& mending, const Context& context) {
    const auto tastes = read_tastes(request.tasted, mending);
    if (!tastes) return Failure(tastes.error());
    const auto readings = read_measured(request.measured, context);
    if (!readings) return Failure(readings.error());
    const auto mass = as_made(formula, request.made, context);
    if (!mass) return Failure(mass.error());
    AdaptRequest on_hand;
    on_hand.have = request.have;
    on_hand.without = request.without;
    const auto stock = Stock::of(*mass, on_hand, context);
    if (!stock) return Failure(stock.error());

    const MassAsMade made(*mass, *readings, context);
    const auto states = made.states(*mass);
    MendAnswer answer;
    answer.base = made.predicted(*mass, states);
    answer.made_g = answer.base.batch_g;
    answer.measured = against(*readings, *mass, context);
    answer.presumed = stock->presumed();
    answer.excluded = stock->excluded();
    answer.only_listed = stock->listed();
    const State state = made.state(*mass);
    const Material total = made.total(*mass);
    const TastedMass tasted{state,
                            total[Amount::meat] / total[Amount::mass],
                            notes_in(*mass, mending, context),
                            roles_in(*mass, context.knowledge()),
                            kinds_in(*mass, mending, context.knowledge()),
                            all_fish(total)};
    Meaning meaning = meaning_of(*tastes, tasted);
    answer.words = told(meaning);
    tell_of_the_list(answer.words, meaning.all, answer.made_g, mending, *stock);
    answer.opposed = meaning.opposed;
    answer.discard = said_of_discarding(meaning.all);
    answer.cannot = of_nothing(meaning, *mass, context.knowledge());
    const bool judged = std::any_of(answer.words.begin(), answer.words.end(), [](const TastedWord& w) { return w.judged; });
    std::vector<FoundCause> causes;
    const auto needed = demanded_core(answer.base, context.knowledge(), context.options.rules);
    if (answer.discard.empty() && answer.opposed.empty()) causes = causes_of(meaning.all, *mass, made, needed, mending, context);
    const bool ends = std::any_of(causes.begin(), causes.end(), [](const FoundCause& c) { return c.told.ends; });
    if (ends) answer.cannot.clear();
    if (answer.discard.empty() && answer.opposed.empty() && judged && !ends) {
        Mass one{*mass, meaning.all, made, mending, *stock, context, request, answer.base, states};
        for (const auto& cause : causes) {
            one.set = one.set || cause.record->set;
            if (!cause.record->plain_first) continue;
            one.only_fresh = one.only_fresh || cause.record->step_only;
            one.plain_first = true;
            one.plain_without.insert(one.plain_without.end(), cause.foods.begin(), cause.foods.end());
        }
        one.unsalted = total[Amount::meat] > 0 && state.properties[Property::salt_pct_of_meat] < context.constant("mend.work.salted");
        one.wet = has_loose_water(meaning.all, causes);
        Ways ways = ways_to_mend(one);
        const auto is_added = [](const MendWay& way) { return way.plain.empty(); };
        if (!one.wet && any_asks_hold(meaning.all) && !(any_asks_fat(meaning.all) || any_asks_less_lost(meaning.all)) &&
            std::none_of(ways.all.begin(), ways.all.end(), is_added)) {
            one.wet = true;  // weak binder does nothing in so much water: sifted it does, before a second mass is made
            Ways sifted = ways_to_mend(one);
            if (std::any_of(sifted.all.begin(), sifted.all.end(), is_added)) ways = std::move(sifted);
            else one.wet = false;
        }
        const auto nothing_of_kind = answer.cannot;
        answer.ways = std::move(ways.all);
        answer.cannot.insert(answer.cannot.end(), ways.cannot.begin(), ways.cannot.end());
        put_beside(answer, meaning, one, tasted);
        if (answer.cannot.empty()) answer.cannot = nothing_of_kind;
    }
    mind_causes(answer, causes);
    take_off_in_time(answer, causes, *mass, context);
    finish(answer, mending);
    if (!stock->excluded().empty()) leave_out_of_advice(answer, *mass, *stock);
    return answer;
}

}  // namespace standin
