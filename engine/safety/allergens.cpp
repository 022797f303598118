#include "safety/allergens.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

#include "core/contains.hpp"
#include "knowledge/index/kinds.hpp"
#include "knowledge/index/line_name.hpp"
#include "knowledge/told/contact_text.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

constexpr double rounding = 1e-9;   // so that ten times one is ten
constexpr double wine_alcohol = 5;  // g in 100 g; what is weaker is beer or cider, with limits of its own

void add_once(std::vector<std::string>& all, const std::string& one) {
    if (!contains(all, one)) all.push_back(one);
}

// A food that may bring an allergen: of the mass, or beside it.
struct Bearer {
    const PredictedLine* line;
    const Ingredient* ingredient;
    bool beside = false;

    std::string said() const { return line->name + (beside ? " (beside the mass)" : ""); }
};

std::vector<Bearer> bearers_of(const Prediction& prediction, const Knowledge& knowledge) {
    std::vector<Bearer> all;
    for (const auto& [line, ingredient] : present(prediction, knowledge)) all.push_back({line, ingredient});
    for (const auto& [line, ingredient] : present_beside(prediction, knowledge)) all.push_back({line, ingredient, true});
    return all;
}

// Every class in a fixed order, so that pages of different batches compare.
std::vector<std::string> classes_of(const std::vector<Bearer>& lines, const std::vector<Declared>& told, const Knowledge& knowledge) {
    std::vector<std::string> all;
    for (const auto& allergen : knowledge.records().allergens) add_once(all, allergen.id);
    for (const auto& rules : knowledge.records().rules)
        for (const auto& rule : rules.allergens) add_once(all, rule.allergen);
    for (const auto& bearer : lines)
        for (const auto* words : {&bearer.ingredient->allergens, &bearer.ingredient->may_hold, &bearer.line->may_hold})
            for (const auto& allergen : *words) add_once(all, allergen);
    add_once(all, std::string(sulphite_class));
    for (const auto& one : told) add_once(all, one.allergen);
    return all;
}

bool holds_sulphites(const Ingredient& ingredient) { return ingredient.sulphites && ingredient.sulphites->band.high > 0; }

bool brings(const Ingredient& ingredient, std::string_view allergen) {
    if (allergen == sulphite_class && holds_sulphites(ingredient)) return true;
    return contains(ingredient.allergens, allergen);
}

// What the formula itself says, of its lines and of its notes: of what is in it, or of what only touched it.
std::vector<Declared> told_of(const Prediction& prediction, const Knowledge& knowledge, bool contact) {
    std::vector<Declared> all;
    const auto add = [&](const Declared& told, const std::string& of) {
        if (is_only_of_contact(told.words, told.allergen, knowledge) == contact)
            all.push_back({told.allergen, of + " (\"" + told.words + "\")"});
    };
    for (const auto& line : prediction.lines)
        for (const auto& told : line.declared) add(told, line.name);
    for (const auto& told : prediction.declared) add(told, "what the formula says");
    return all;
}

// What its method or its notes name and no line has: it may go in all the same.
std::vector<Declared> named_beside(const Prediction& prediction) {
    std::vector<Declared> all;
    for (const auto& told : prediction.read_as)
        if (told.kind == ReasonKind::allergen_beside) all.push_back({told.role, "what its notes name (\"" + told.about + "\")"});
    return all;
}

struct Sulphites {
    const Prediction& prediction;
    const Knowledge& knowledge;

    bool declared(const AllergenRule& rule, const RuleSet& rules) const {
        return rule.allergen != sulphite_class || declares(rule, sulphites_mg_kg(prediction, knowledge, &rules));
    }

    // By the rule sets, for each reckons wine as its own table does: the least and the most.
    std::pair<double, double> mg_kg() const {
        const double plain = sulphites_mg_kg(prediction, knowledge);
        std::pair<double, double> found{plain, plain};
        bool first = true;
        for (const auto& rules : knowledge.records().rules) {
            if (!rules.wine_sulphites) continue;
            const double here = sulphites_mg_kg(prediction, knowledge, &rules);
            found = {first ? here : std::min(found.first, here), std::max(found.second, here)};
            first = false;
        }
        return found;
    }

    Reckoned reckoned() const {
        const auto [least, most] = mg_kg();
        std::optional<double> from;
        for (const auto& rules : knowledge.records().rules)
            for (const auto& rule : rules.allergens)
                if (rule.allergen == sulphite_class)
                    for (const auto& limit : {rule.from_mg_kg, rule.over_mg_kg})
                        if (limit && (!from || *limit < *from)) from = limit;
        return {least, most, from};
    }

    bool worth_telling() const { return mg_kg().second >= knowledge.parameter("caution.trace.sulphite").mid; }
};

std::vector<std::pair<std::string, std::string>> declarations(std::string_view allergen, const Sulphites& sulphites) {
    std::vector<std::pair<std::string, std::string>> all;
    for (const auto& rules : sulphites.knowledge.records().rules)
        for (const auto& rule : rules.allergens)
            if (rule.allergen == allergen && sulphites.declared(rule, rules)) all.emplace_back(rules.code, rule.declare);
    return all;
}

// A food that itself counts among the sulphites' class brings it whatever the weight.
bool is_of_class(const std::vector<Bearer>& lines, std::string_view allergen) {
    return std::any_of(lines.begin(), lines.end(), [&](const Bearer& b) { return contains(b.ingredient->allergens, allergen); });
}

class Lister {
public:
    Lister(const Prediction& prediction, const Knowledge& knowledge)
        : bearers_(bearers_of(prediction, knowledge)),
          told_(told_of(prediction, knowledge, false)),
          named_(named_beside(prediction)),
          sulphites_{prediction, knowledge},
          classes_(classes_of(bearers_, told_, knowledge)) {
        for (auto& one : told_of(prediction, knowledge, true)) named_.push_back(std::move(one));
        for (const auto& one : named_) add_once(classes_, one.allergen);
    }

    std::vector<AllergenText> all() {
        for (const auto& allergen : classes_) surely(allergen);
        for (const auto& allergen : classes_) perhaps(allergen);
        // A food under a name of the maker's own was said to be like one that is known: what it holds itself nobody here can tell.
        for (const auto& [line, ingredient, beside] : bearers_)
            if (line->name != ingredient->names.front() && line->name != with_raw_milk(ingredient->names.front(), ingredient->tissue))
                all_.push_back({"whatever " + line->name + " holds", {line->name}, {}, false});
        return std::move(all_);
    }

private:
    void surely(const std::string& allergen) {
        AllergenText text{allergen, {}, {}};
        text.beside = true;
        for (const auto& bearer : bearers_)
            if (brings(*bearer.ingredient, allergen)) {
                add_once(text.from, bearer.said());
                text.beside = text.beside && bearer.beside;
            }
        bool said = false;
        for (const auto& one : told_)
            if (one.allergen == allergen) {
                add_once(text.from, one.words);
                said = true;
                text.beside = false;
            }
        if (text.from.empty()) return;
        text.declare = declarations(allergen, sulphites_);
        if (allergen == sulphite_class) text.reckoned = sulphites_.reckoned();
        if (!said && allergen == sulphite_class && text.declare.empty() && !is_of_class(bearers_, allergen)) {
            traces_ = std::move(text);
            return;
        }
        all_.push_back(std::move(text));
    }

    void perhaps(const std::string& allergen) {
        if (std::any_of(all_.begin(), all_.end(), [&](const AllergenText& sure) { return sure.allergen == allergen; })) return;
        AllergenText text{allergen, {}, {}, false, true};
        for (const auto& bearer : bearers_)
            if (contains(bearer.ingredient->may_hold, allergen) || contains(bearer.line->may_hold, allergen)) {
                add_once(text.from, bearer.said());
                text.beside = text.beside && bearer.beside;
            }
        for (const auto& one : named_)
            if (one.allergen == allergen) {
                add_once(text.from, one.words);
                text.beside = false;
            }
        if (!text.from.empty()) all_.push_back(std::move(text));
        else if (traces_ && allergen == sulphite_class && sulphites_.worth_telling()) {
            traces_->sure = false;
            traces_->beside = false;
            all_.push_back(*traces_);
        }
    }

    std::vector<Bearer> bearers_;
    std::vector<Declared> told_, named_;
    Sulphites sulphites_;
    std::vector<std::string> classes_;
    std::vector<AllergenText> all_;
    std::optional<AllergenText> traces_;  // of sulphite, less than any code wants declared
};

}  // namespace

double sulphites_mg_kg(const Prediction& prediction, const Knowledge& knowledge, const RuleSet* rules) {
    double milligrams = 0, kilograms = 0;
    for (const auto& [line, ingredient] : present(prediction, knowledge)) {
        kilograms += line->grams / 1000;
        if (!holds_sulphites(*ingredient)) continue;
        double most = ingredient->sulphites->band.high;
        if (rules && rules->wine_sulphites && ingredient->composition.alcohol.mid >= wine_alcohol)
            most = std::max(most, rules->wine_sulphites->band.high);
        milligrams += line->weighed_g / 1000 * most;
    }
    return kilograms > 0 ? milligrams / kilograms : 0;
}

bool declares(const AllergenRule& rule, double mg_kg) {
    if (rule.over_mg_kg) return mg_kg > *rule.over_mg_kg + rounding;
    return !rule.from_mg_kg || mg_kg >= *rule.from_mg_kg - rounding;
}

std::vector<std::string> may_hold_as_bought(const Line& line, const Knowledge& knowledge) {
    const bool dried =
        std::any_of(line.prepared.begin(), line.prepared.end(), [](const Prepared& step) { return step.preparation == "dried"; });
    const Ingredient* food = knowledge.ingredient(line.ingredient);
    if (!dried || !food || !belongs(*food, "sulphured-when-dried", knowledge)) return {};
    return {std::string(sulphite_class)};
}

std::vector<AllergenText> allergens_of(const Prediction& prediction, const Knowledge& knowledge) {
    return Lister(prediction, knowledge).all();
}

namespace {

// A trace that the same foods brought before, in a batch that came to weigh a little less: declared now, and nothing that came in.
bool was_a_trace(const AllergenText& old, const AllergenText& now) {
    constexpr double clearly_more = 1.25;  // judgement
    const auto had = [&](const std::string& food) { return contains(old.from, food); };
    return old.reckoned && now.reckoned && std::all_of(now.from.begin(), now.from.end(), had) &&
           now.reckoned->most_mg_kg < clearly_more * old.reckoned->most_mg_kg;
}

}  // namespace

std::vector<std::string> new_allergens(const Prediction& base, const Prediction& variant) {
    std::vector<std::string> fresh;
    for (const auto& text : variant.allergens)
        if (text.sure && std::none_of(base.allergens.begin(), base.allergens.end(), [&](const AllergenText& old) {
                return old.allergen == text.allergen && (old.sure || was_a_trace(old, text));
            }))
            fresh.push_back(text.allergen);
    return fresh;
}

}  // namespace standin
