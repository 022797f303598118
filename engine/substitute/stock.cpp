#include "substitute/stock.hpp"

#include <algorithm>
#include <utility>

#include "core/contains.hpp"
#include "core/has_food.hpp"
#include "core/words.hpp"
#include "knowledge/index/edible.hpp"
#include "knowledge/index/line_name.hpp"
#include "knowledge/index/season.hpp"
#include "models/as_bought.hpp"
#include "safety/casings.hpp"
#include "safety/goes_without.hpp"
#include "safety/packets.hpp"
#include "safety/promises.hpp"
#include "safety/wording.hpp"
#include "substitute/stock_presumed.hpp"

namespace standin {
namespace {

std::string in_a_row(const std::vector<Reason>& notes) {
    std::string text;
    for (const auto& note : notes) text += (text.empty() ? "" : " ") + in_full(note);
    return text;
}

// What notes or a method say of an excluded food that stands in no line; empty where they say nothing of it.
std::string told_beside_lines(const Formula& formula, const Exclusion& exclusion, const Knowledge& knowledge) {
    for (const auto& told : formula.declared)
        if (tells_of_it(exclusion, {told}, knowledge)) return told.words;
    for (const auto& reason : formula.read_as) {
        if (reason.kind == ReasonKind::allergen_beside && tells_of_it(exclusion, {{reason.role, reason.about}}, knowledge))
            return reason.about;
        if (reason.kind != ReasonKind::meat_beside) continue;
        const Ingredient* meat = reason.foods.empty() ? nullptr : knowledge.ingredient_named(reason.foods.front());
        if (meat && exclusion.foods.count(meat->id)) return reason.foods.front();
    }
    return {};
}

// A herb is counted as it lies on the board: a weight as told, a bunch without what is cut away. All else as picked or bought.
double listed_share(const InventoryItem& item, const Ingredient& food) {
    return item.at_most && weighed_as_used(food) ? edible_share(food) : 1;
}

}  // namespace

Result<Stock> Stock::of(const Formula& formula, const AdaptRequest& request, const Context& context) {
    Stock stock;
    stock.knowledge_ = &context.knowledge();
    stock.month_ = context.options.month;
    stock.season_shift_ = context.options.season_shift;
    if (request.have) {
        stock.note_told(*request.have);
        stock.casings_ = request.have->casings;
    }
    bool allergy = false;
    for (const auto& written : request.without) {
        const auto exclusion = exclusion_of(written, context.knowledge());
        if (!exclusion) return Failure(exclusion.error());
        if (const std::string words = told_beside_lines(formula, *exclusion, context.knowledge()); !words.empty())
            return failure(Trouble::unmet,
                           "without \"" + written + "\": the words beside the lines say \"" + words +
                               "\", and no line holds that, so that nothing can be left out for it. Give it a line, or take "
                               "the words out where they are not true");
        stock.exclusions_.push_back(*exclusion);
        stock.leave_out(formula, *exclusion, request.have ? request.have->items : std::vector<InventoryItem>{});
        allergy = allergy || exclusion->allergy;
    }
    if (allergy) stock.guard_allergens(formula);
    stock.keep_from_guests(formula);
    stock.keep_from_eaters(formula);
    for (const auto& idea : request.use) stock.only_for_[idea.line].insert(idea.with);
    for (const auto& least : request.least) stock.least_[least.ingredient] = least.grams.value_or(0);
    if (!request.have) return stock;
    stock.take_list(*request.have);
    stock.trust_guesses(formula, *request.have);
    stock.presume(formula, *request.have, !request.wants.empty());
    return stock;
}

void Stock::note_told(const Inventory& have) {
    for (const auto& item : have.items) {
        if (!item.declared.empty()) told_.try_emplace(item.ingredient, item.declared);
        if (!item.prepared.empty()) ready_.try_emplace(item.ingredient, item.prepared);
        if (!item.told.empty()) dangers_.try_emplace(item.ingredient, item.told);
    }
}

bool Stock::takes(const Exclusion& exclusion, const std::string& ingredient) const {
    const auto told = told_.find(ingredient);
    return exclusion.foods.count(ingredient) > 0 || (told != told_.end() && tells_of_it(exclusion, told->second, *knowledge_));
}

void Stock::tell(Line& line) const {
    if (const auto ready = ready_.find(line.ingredient); ready != ready_.end()) line.ready = ready->second;
    if (const auto told = told_.find(line.ingredient); told != told_.end())
        for (const auto& one : told->second)
            if (!contains(line.declared, one)) line.declared.push_back(one);
    if (const auto dangers = dangers_.find(line.ingredient); dangers != dangers_.end())
        for (const auto& one : dangers->second)
            if (!contains(line.notes, one)) line.notes.push_back(one);
}

void Stock::leave_out_beside(Formula& formula) const {
    const bool had_casing = std::any_of(formula.beside.begin(), formula.beside.end(), is_casing);
    std::erase_if(formula.beside, [&](const Beside& beside) {
        return std::any_of(excluded_.begin(), excluded_.end(),
                           [&](const Excluded& word) { return contains(word.casings, beside.written); });
    });
    const bool has_casing = std::any_of(formula.beside.begin(), formula.beside.end(), is_casing);
    if (had_casing && !has_casing && !casings_.empty()) formula.beside.push_back(casings_.front());
    if (width_goes_ || had_casing) forget_width(formula, *knowledge_);
}

// Neither the food itself nor what is told of it is of the kind; what is bought as it may be.
bool Stock::only_may_hold(const Line& told, const Exclusion& exclusion) const {
    Ingredient plain = *knowledge_->ingredient(told.ingredient);
    plain.may_hold.clear();
    return !belongs(plain, *exclusion.kind, *knowledge_) && !tells_of_it(exclusion, told.declared, *knowledge_);
}

// A kept line whose food only may hold it, as bought: the maker keeps it, and the packet must say that it holds none. What a line or a list
// itself tells of, or what the food always holds, is never kept so.
std::set<std::string> Stock::kept_by_packet(const Formula& formula, const Exclusion& exclusion) const {
    std::set<std::string> kept;
    if (!exclusion.kind || !exclusion.allergy) return kept;
    for (const auto& line : formula.lines) {
        if (!line.keep || !exclusion.foods.count(line.ingredient)) continue;
        Line told = line;
        tell(told);
        if (only_may_hold(told, exclusion)) kept.insert(line.ingredient);
    }
    return kept;
}

// What is on the list and is not taken for the sake of the word: surely, and what only may hold it.
std::vector<Reason> Stock::off_the_list(const Exclusion& exclusion, const Formula& formula, const std::vector<InventoryItem>& items) const {
    std::vector<std::string> surely, perhaps, last;
    for (const auto& item : items) {
        const auto is_line = [&](const Line& line) { return line.ingredient == item.ingredient; };
        if (std::any_of(formula.lines.begin(), formula.lines.end(), is_line)) continue;
        if (const auto& name = knowledge_->ingredient(item.ingredient)->names.front();
            exclusion.kind && in_doubt(item.ingredient) && packets_to_look_at(*exclusion.kind, *knowledge_).count(item.ingredient) &&
            !contains(last, name))
            last.push_back(name);
        if (!exclusion.foods.count(item.ingredient)) continue;
        Line plain;
        plain.ingredient = item.ingredient;
        tell(plain);
        auto& names = exclusion.kind && only_may_hold(plain, exclusion) ? perhaps : surely;
        if (const auto& name = knowledge_->ingredient(item.ingredient)->names.front(); !contains(names, name)) names.push_back(name);
    }
    std::vector<Reason> all;
    if (!surely.empty()) all.push_back(make_reason(ReasonKind::off_the_list, {}, std::move(surely)));
    if (!perhaps.empty()) all.push_back(make_reason(ReasonKind::perhaps_off_the_list, {}, std::move(perhaps)));
    if (!last.empty()) {
        all.push_back(make_reason(ReasonKind::perhaps_off_the_list, {}, std::move(last)));
        all.back().about = "last";
    }
    return all;
}

void Stock::leave_out(const Formula& formula, const Exclusion& exclusion, const std::vector<InventoryItem>& items) {
    const auto kept = kept_by_packet(formula, exclusion);
    for (const auto& food : exclusion.foods)
        if (!kept.count(food)) left_out_.insert(food);
    if (exclusion.kind)
        for (const auto& food : packets_to_look_at(*exclusion.kind, *knowledge_)) in_doubt_.insert(food);
    Excluded out{exclusion.word, exclusion.takes, {}, {}, beside_excluded(formula, exclusion, *knowledge_), {}};
    if (exclusion.kind && width_takes(*exclusion.kind, formula, *knowledge_)) {
        width_goes_ = true;
        out.casings.push_back("diameter: " + shown(*formula.process.diameter_mm) + " mm");
    }
    const auto name = [&](const std::string& food) { return knowledge_->ingredient(food)->names.front(); };
    if (exclusion.note) out.notes.push_back(*exclusion.note);
    for (const auto& [food, declared] : told_)
        if (!exclusion.foods.count(food) && tells_of_it(exclusion, declared, *knowledge_)) {
            left_out_.insert(food);
            out.notes.push_back(make_reason(ReasonKind::list_tells_of_it, {}, {name(food)}));
            out.notes.back().about = declared.front().words;
        }
    for (auto& off : off_the_list(exclusion, formula, items)) out.notes.push_back(std::move(off));
    for (const auto& food : kept) out.notes.push_back(make_reason(ReasonKind::kept_by_packet, {}, {name(food)}));
    out.note = in_a_row(out.notes);
    for (const auto& line : formula.lines) {
        if (kept.count(line.ingredient)) continue;
        Line told = line;
        tell(told);
        if (!takes_line(exclusion, told, *knowledge_) || contains(out.lines, line.ingredient)) continue;
        left_out_.insert(line.ingredient);
        out.lines.push_back(line.ingredient);
        // One word may take it for what it is, another for what it may hold.
        if (!exclusion.kind || !only_may_hold(told, exclusion)) surely_out_.insert(line.ingredient);
        else perhaps_out_.insert(line.ingredient);
    }
    Formula on_list;
    on_list.beside = casings_;
    const auto taken = beside_excluded(on_list, exclusion, *knowledge_);
    std::erase_if(casings_, [&](const Beside& casing) { return contains(taken, casing.written); });
    excluded_.push_back(std::move(out));
}

// Who cooks for one allergy is not told of a new one; what the maker's own list names may come in, and is told.
void Stock::guard_allergens(const Formula& formula) {
    only_allergens_.emplace();
    // What is declared; traces of sulphite that no label tells give no leave to bring in a packet that may be full of it.
    for (const auto& line : formula.lines) {
        const Ingredient& food = *knowledge_->ingredient(line.ingredient);
        // Of a line that goes too: who eats no egg and ate its crumbs eats wheat.
        perhaps_allergens_.insert(food.may_hold.begin(), food.may_hold.end());
        only_allergens_->insert(food.allergens.begin(), food.allergens.end());
        for (const auto& told : line.declared) only_allergens_->insert(told.allergen);
    }
    perhaps_allergens_.insert(only_allergens_->begin(), only_allergens_->end());
    presumed_.push_back(presumption("", false, false, ReasonKind::no_new_allergens, {}, ""));
}

// What somebody who eats it must go without, by the maker's words, is not brought in; what the formula has of it stays, and is told first.
namespace {

Reason kept_for(const GoesWithout& guest, std::string takes) {
    Reason kept = make_reason(ReasonKind::title_to_be_shown);
    kept.about = "guest-kept";
    kept.role = guest.words;
    kept.note = std::move(takes);
    if (guest.of_title) kept.by_way = {"title"};
    return kept;
}

}  // namespace

void Stock::keep_from_guests(const Formula& formula) {
    for (const auto& guest : goes_without(formula, *knowledge_, true))
        for (const auto& exclusion : guest.left) {
            const auto asked = [&](const Excluded& out) { return out.takes == exclusion.takes; };
            if (std::any_of(excluded_.begin(), excluded_.end(), asked)) continue;
            keep_out(exclusion, formula);
            told_as_kept(exclusion.word, exclusion.takes, kept_for(guest, exclusion.takes));
        }
}

void Stock::told_as_kept(std::string word, std::string takes, Reason kept) {
    Excluded out{std::move(word), std::move(takes), {}, {}, {}, {std::move(kept)}};
    out.note = in_a_row(out.notes);
    excluded_.push_back(std::move(out));
}

void Stock::keep_out(const Exclusion& exclusion, const Formula& formula) {
    for (const auto& food : exclusion.foods)
        if (!has_food(formula, food)) left_out_.insert(food);
    for (const auto& [food, declared] : told_)
        if (!has_food(formula, food) && tells_of_it(exclusion, declared, *knowledge_)) left_out_.insert(food);
    if (exclusion.kind)
        for (const auto& food : packets_to_look_at(*exclusion.kind, *knowledge_)) in_doubt_.insert(food);
    exclusions_.push_back(exclusion);
}

// Likewise what the pregnant, children, the old and the ill are advised to leave, and what a halal or kosher title takes in: told in one
// sentence each. What the list itself calls raw milk is kept from the first.
void Stock::keep_from_eaters(const Formula& formula) {
    for (const auto& guest : kept_from_eaters(formula, *knowledge_)) {
        std::vector<std::string> takes;
        for (const auto& exclusion : guest.left) {
            keep_out(exclusion, formula);
            takes.push_back(exclusion.kind && exclusion.kind->diet ? exclusion.takes : exclusion.word);
        }
        const std::string all = standin::listed(takes);
        told_as_kept(guest.words, all, kept_for(guest, all));
    }
    if (dangers_.empty() || !is_for_the_frail(formula, *knowledge_)) return;
    for (const auto& [food, dangers] : dangers_) {
        if (has_food(formula, food) || !std::any_of(dangers.begin(), dangers.end(), is_raw_milk)) continue;
        left_out_.insert(food);
        Reason kept = make_reason(ReasonKind::title_to_be_shown);
        kept.about = "raw-kept";
        kept.foods = {with_raw_milk(knowledge_->ingredient(food)->names.front(), knowledge_->ingredient(food)->tissue)};
        const std::string raw = kept.foods.front();
        exclusions_.push_back({raw, raw, {}, nullptr, {food}, false});
        told_as_kept(raw, raw, std::move(kept));
    }
}

std::vector<std::string> Stock::kept_by(const std::string& ingredient) const {
    std::vector<std::string> words;
    for (const auto& exclusion : exclusions_)
        if (takes(exclusion, ingredient) && !contains(words, exclusion.word)) words.push_back(exclusion.word);
    return words;
}

void Stock::take_list(const Inventory& have) {
    // Who writes only what is missing has said nothing of what there is: all of it may be bought.
    listed_ = !have.items.empty() || have.complete.has_value();
    everything_ = !listed_ || (have.complete.has_value() && !*have.complete);
    for (const auto& item : have.items) {
        named_.insert(item.ingredient);
        auto& held = have_.try_emplace(item.ingredient, 0.0).first->second;
        const Ingredient& food = *knowledge_->ingredient(item.ingredient);
        if (!item.grams || !held) held = std::nullopt;
        else held = *held + *item.grams * listed_share(item, food);
    }
    missing_.insert(have.missing.begin(), have.missing.end());
}

// A bunch that is guessed at a little less than the formula takes is no reason to look for another leaf: it is taken to be enough, and
// told.
void Stock::trust_guesses(const Formula& formula, const Inventory& have) {
    constexpr double hardly_more = 1.15;  // than the guess: nobody counts so near; judgement
    for (const auto& item : have.items) {
        const auto held = have_.find(item.ingredient);
        if (!item.at_most || held == have_.end() || !held->second) continue;
        double asked = 0;
        for (const auto& line : formula.lines)
            if (line.ingredient == item.ingredient) asked += listed_per_gram(line, *knowledge_) * line.grams.mid;
        const double at_most = *item.at_most * listed_share(item, *knowledge_->ingredient(item.ingredient));
        if (*held->second >= asked || at_most < asked) continue;
        const bool told = asked > hardly_more * *held->second;
        const double guess = std::exchange(*held->second, asked);
        if (!told) continue;
        const std::string& name = knowledge_->ingredient(item.ingredient)->names.front();
        Presumption enough =
            presumption(item.ingredient, true, false, ReasonKind::taken_for_enough, {name}, name + " " + shown(guess) + " g");
        enough.reason.figures = {{"as bought", guess, asked, "g"}};
        enough.says = in_full(enough.reason);
        presumed_.push_back(std::move(enough));
    }
}

// Of fresh produce that the list does not name there is what the formula takes, and no more; of what keeps in a kitchen, plenty.
std::optional<double> Stock::as_much_as_asked(const std::string& ingredient, const Formula& formula) const {
    if (everything_ || !belongs(*knowledge_->ingredient(ingredient), "fresh", *knowledge_)) return std::nullopt;
    double grams = 0;
    for (const auto& line : formula.lines)
        if (line.ingredient == ingredient) grams += listed_per_gram(line, *knowledge_) * line.grams.mid;
    return grams;
}

void Stock::presume(const Formula& formula, const Inventory& have, bool for_a_want) {
    Formula wanted = formula;  // of what is to be left out nothing is presumed
    std::erase_if(wanted.lines, [&](const Line& line) { return left_out_.count(line.ingredient) > 0; });
    // Who leaves a kind out has said what is to go: what else the formula has is there, and the list tells what may come in.
    const bool all_is_said = for_a_want || wanted.lines.size() < formula.lines.size();
    for (auto& one : presumed_of(wanted, have, all_is_said, *knowledge_)) {
        if (one.on_hand && !one.ingredient.empty()) {
            have_.emplace(one.ingredient, as_much_as_asked(one.ingredient, formula));
            if (!has_food(formula, one.ingredient)) named_.insert(one.ingredient);  // as good as listed, for what it stands in for
        } else if (!one.ingredient.empty()) missing_.insert(one.ingredient);
        if (!one.says.empty()) presumed_.push_back(std::move(one));
    }
    std::vector<std::string> unknown = have.aside;  // but for what is told before everything else
    std::erase_if(unknown, [&](const std::string& line) {
        return std::any_of(have.notes.begin(), have.notes.end(),
                           [&](const Reason& told) { return told.kind == ReasonKind::set_aside && told.about == line; });
    });
    if (!unknown.empty()) presumed_.push_back(presumption("", true, true, ReasonKind::not_known_here, unknown, ""));
    if (!everything_) presumed_.push_back(presumption("", false, false, ReasonKind::only_the_list, {}, ""));
    std::stable_sort(presumed_.begin(), presumed_.end(),
                     [](const Presumption& a, const Presumption& b) { return a.matters && !b.matters; });
}

Offer Stock::offer(const Ingredient& ingredient) const {
    Offer offer;
    offer.excluded = left_out_.count(ingredient.id) > 0;
    offer.on_hand = !offer.excluded && !missing_.count(ingredient.id);
    if (!listed_) return offer;
    const auto held = have_.find(ingredient.id);
    if (held != have_.end()) offer.grams = held->second;
    else if (everything_ || from_the_tap(ingredient.id)) return offer;
    offer.on_hand = offer.on_hand && held != have_.end() && (!held->second || *held->second > 0);
    return offer;
}

Offer Stock::offer(const Line& line) const {
    Offer offer = this->offer(*knowledge_->ingredient(line.ingredient));
    if (offer.grams) *offer.grams /= listed_per_gram(line, *knowledge_);
    return offer;
}

namespace {

// "Gluten-free" on the packet is what its maker answers for; that it has to be read is told.
bool sold_without(const Ingredient& ingredient, const std::string& allergen, const Knowledge& knowledge) {
    return std::any_of(ingredient.free_of.begin(), ingredient.free_of.end(), [&](const std::string& id) {
        const Kind* kind = kind_of(id, knowledge);
        return kind && contains(kind->allergens, allergen);
    });
}

}  // namespace

bool Stock::can_bring(const Ingredient& ingredient) const {
    if (!offer(ingredient).on_hand) return false;
    if (listed_ && !everything_ && !have_.count(ingredient.id)) return false;  // water by itself stands for nothing
    if (month_ && !have_.count(ingredient.id) && !in_season(ingredient, *month_, season_shift_).value_or(true)) return false;
    return leaves_in(ingredient);
}

bool Stock::leaves_in(const Ingredient& ingredient) const {
    if (left_out_.count(ingredient.id)) return false;
    if (!only_allergens_ || names(ingredient.id)) return true;
    // What the formula only may hold gives no leave to what surely holds it.
    const auto held = allergens_held(ingredient);
    return std::all_of(held.begin(), held.end(), [&](const std::string& allergen) {
        if (sold_without(ingredient, allergen, *knowledge_)) return true;
        const bool perhaps = contains(ingredient.may_hold, allergen) && !contains(ingredient.allergens, allergen);
        return (perhaps ? perhaps_allergens_ : *only_allergens_).count(allergen) > 0;
    });
}

bool Stock::may_stand_in(const Ingredient& ingredient, const Line& line) const {
    const auto only = only_for_.find(line.ingredient);
    return only == only_for_.end() || only->second.count(ingredient.id) > 0;
}

double Stock::least_of(const Line& line) const {
    const auto least = least_.find(line.ingredient);
    return least == least_.end() ? 0 : least->second;
}

bool may_name(const Stock& stock, const Formula& formula, const Ingredient& food) {
    return stock.leaves_in(food) || has_food(formula, food.id);
}

}  // namespace standin
