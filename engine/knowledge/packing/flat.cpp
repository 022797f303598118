#include "knowledge/packing/flat.hpp"

#include <optional>
#include <stdexcept>
#include <type_traits>
#include <unordered_map>
#include <utility>
#include <variant>

namespace standin {
namespace {

// One layout a record serves writing and reading alike: it names the fields once, in order.
template <class A>
void layout(A& a, Band& r) {
    a(r.low, r.mid, r.high);
}
template <class A>
void layout(A& a, Quantity& r) {
    a(r.band, r.unit, r.source);
}
template <class A>
void layout(A& a, SourceRecord& r) {
    a(r.id, r.kind, r.cite, r.note);
}
template <class A>
void layout(A& a, Composition& r) {
    a(r.source, r.water, r.protein, r.fat, r.carbohydrate, r.ash, r.fibre, r.sugars, r.sodium_mg, r.potassium_mg, r.alcohol, r.acid, r.salt,
      r.stand_in, r.exception);
}
template <class A>
void layout(A& a, AcidShare& r) {
    a(r.acid, r.share);
}
template <class A>
void layout(A& a, Acidity& r) {
    a(r.ph, r.titratable, r.buffer, r.acids);
}
template <class A>
void layout(A& a, MeatRecord& r) {
    a(r.species, r.buffer_scale, r.bind);
}
template <class A>
void layout(A& a, BindingRecord& r) {
    a(r.water, r.fat, r.sets, r.gel, r.swells);
}
template <class A>
void layout(A& a, TintBands& r) {
    a(r.red, r.green, r.blue);
}
template <class A>
void layout(A& a, TintRecord& r) {
    a(r.red, r.green, r.blue, r.fades, r.cooked, r.source);
}
template <class A>
void layout(A& a, MeasureRecord& r) {
    a(r.measure, r.note, r.grams, r.source);
}
template <class A>
void layout(A& a, AromaShare& r) {
    a(r.note, r.intensity);
}
template <class A>
void layout(A& a, Ingredient& r) {
    a(r.id, r.family, r.latin, r.note, r.storage, r.names, r.generic, r.already, r.ready_by, r.roles, r.tissue, r.composition,
      r.chlorophyll, r.capsaicinoids, r.lutein, r.made_of, r.apart, r.pungency, r.pod_sigma, r.lot_sigma, r.strength, r.edible, r.sulphites,
      r.acidity, r.meat, r.binding, r.tint, r.measures, r.aroma, r.season, r.allergens, r.cautions, r.label, r.may_hold, r.most_g_per_kg,
      r.kinds, r.free_of);
}
template <class A>
void layout(A& a, Point& r) {
    a(r.minutes, r.value);
}
template <class A>
void layout(A& a, KeptShare& r) {
    a(r.what, r.points);
}
template <class A>
void layout(A& a, PreparationEffect& r) {
    a(r.tissues, r.yield, r.water_left, r.kept, r.adds_salt, r.adds_acetic_mmol, r.source, r.note);
}
template <class A>
void layout(A& a, Preparation& r) {
    a(r.id, r.instruction, r.verb, r.why, r.note, r.names, r.order, r.minutes, r.temperature_c, r.denatures, r.effects);
}
template <class A>
void layout(A& a, SwapPartner& r) {
    a(r.ingredient, r.why, r.prepared, r.ratio);
}
template <class A>
void layout(A& a, Swap& r) {
    a(r.role, r.from, r.to, r.note, r.source, r.prepared, r.needs, r.basis, r.ratio, r.partner, r.closeness, r.most_share, r.trade,
      r.derived, r.returned);
}
template <class A>
void layout(A& a, Condition& r) {
    a(r.id, r.says, r.source, r.note, r.preparation, r.process, r.least, r.most);
}
template <class A>
void layout(A& a, Parameter& r) {
    a(r.id, r.note, r.quantity);
}
template <class A>
void layout(A& a, Difference& r) {
    a(r.property, r.note, r.relative, r.step);
}
template <class A>
void layout(A& a, WantMove& r) {
    a(r.property, r.times, r.by, r.least, r.most);
}
template <class A>
void layout(A& a, WantRecord& r) {
    a(r.word, r.note, r.source, r.moves, r.also);
}
template <class A>
void layout(A& a, Allergen& r) {
    a(r.id, r.name, r.words);
}
template <class A>
void layout(A& a, IngredientBears& r) {
    a(r.word);
}
template <class A>
void layout(A& a, AllergenInside& r) {
    a(r.allergen);
}
template <class A>
void layout(A& a, RoleInside& r) {
    a(r.role);
    a(r.above);
}
template <class A>
void layout(A& a, SpeciesInside& r) {
    a(r.word);
}
template <class A>
void layout(A& a, SpeciesAbsent& r) {
    a(r.word);
}
template <class A>
void layout(A& a, PropertyBeyond& r) {
    a(r.property, r.below, r.limit);
}
template <class A>
void layout(A& a, ProcessBeyond& r) {
    a(r.field, r.below, r.limit);
}
template <class A>
void layout(A&, CoreBelowRule&) {}
template <class A>
void layout(A&, PacketMayHold&) {}
template <class A>
void layout(A&, OverMostInAKilo&) {}
template <class A>
void layout(A&, WarmsTooSlowly&) {}
template <class A>
void layout(A& a, RawLeafOver& r) {
    a(r.above);
}
template <class A>
void layout(A&, AcidFirst&) {}
template <class A>
void layout(A&, HoldsTogether&) {}
template <class A>
void layout(A& a, Caution& r) {
    a(r.id, r.text, r.source, r.when, r.brief, r.only, r.salted);
}
template <class A>
void layout(A& a, MakingRule& r) {
    a(r.id, r.text, r.source, r.field, r.most, r.when, r.keeps);
}
template <class A>
void layout(A& a, AllergenRule& r) {
    a(r.allergen, r.declare, r.source, r.from_mg_kg, r.over_mg_kg);
}
template <class A>
void layout(A& a, CapRule& r) {
    a(r.id, r.property, r.text, r.clause, r.source, r.names, r.limit, r.at_least);
}
template <class A>
void layout(A& a, CookRule& r) {
    a(r.species, r.marks, r.core_c, r.hold_s, r.text, r.source, r.at_once_c);
}
template <class A>
void layout(A& a, SpeciesGroup& r) {
    a(r.word, r.species);
}
template <class A>
void layout(A& a, MeatWord& r) {
    a(r.species, r.most_fat_pct, r.source);
}
template <class A>
void layout(A& a, RuleSet& r) {
    a(r.code, r.title, r.edition, r.allergens, r.caps, r.cooking, r.making, r.cautions, r.groups, r.meat_word, r.wine_sulphites,
      r.hot_holding);
}
template <class A>
void layout(A& a, Kind& r) {
    a(r.id, r.takes, r.note, r.source, r.names, r.in_tongues, r.free, r.foods, r.but, r.kinds, r.plants, r.allergens, r.families, r.tissues,
      r.species, r.sold_clean, r.clean_says, r.clean_source, r.alcohol, r.untreated, r.diet);
}
template <class A>
void layout(A& a, CasingKind& r) {
    a(r.name, r.words, r.kinds, r.note);
}
template <class A>
void layout(A& a, RefusedWord& r) {
    a(r.names, r.says);
}
template <class A>
void layout(A& a, HazardExample& r) {
    a(r.line, r.becomes);
}
template <class A>
void layout(A& a, Hazard& r) {
    a(r.id, r.kind, r.allergen, r.reason, r.source, r.act, r.words, r.with, r.unless, r.but_not, r.of, r.needs, r.least_min, r.hints,
      r.examples);
}
template <class A>
void layout(A& a, Namesake& r) {
    a(r.id, r.question, r.source, r.names, r.trade_words, r.told_by, r.done_to, r.by, r.below_g, r.hints, r.examples);
}
template <class A>
void layout(A& a, Denials& r) {
    a(r.before, r.between, r.after);
}
template <class A>
void layout(A& a, Prohibitions& r) {
    a(r.forbids, r.acts, r.turns, r.longer, r.short_whiles);
}
template <class A>
void layout(A& a, TongueWord& r) {
    a(r.language, r.word, r.english);
}
template <class A>
void layout(A& a, ListedWord& r) {
    a(r.list, r.word);
}
template <class A>
void layout(A& a, Lexicon& r) {
    a(r.hazards, r.denials, r.prohibitions, r.holds, r.handles, r.joins, r.tongue, r.listed, r.namesakes);
}
template <class A>
void layout(A& a, Records& r) {
    a(r.sources, r.ingredients, r.preparations, r.swaps, r.conditions, r.parameters, r.perception, r.wants, r.allergens, r.rules, r.kinds,
      r.casings, r.refused, r.lexicon);
}

class Writer {
public:
    explicit Writer(FlatKnowledge& out) : out_(out) {}

    template <class... T>
    void operator()(T&... fields) {
        (put(fields), ...);
    }

private:
    template <class T>
    void put(T& value) {
        if constexpr (std::is_enum_v<T> || std::is_arithmetic_v<T>) out_.numbers.push_back(static_cast<double>(value));
        else layout(*this, value);
    }
    void put(std::string& value) {
        const auto [place, fresh] = pool_.emplace(value, out_.text.size());
        if (fresh) out_.text += value;
        out_.numbers.push_back(static_cast<double>(place->second));
        out_.numbers.push_back(static_cast<double>(value.size()));
    }
    template <class T>
    void put(std::vector<T>& all) {
        out_.numbers.push_back(static_cast<double>(all.size()));
        for (auto& one : all) put(one);
    }
    void put(When& value) {
        out_.numbers.push_back(static_cast<double>(value.index()));
        std::visit([this](auto& kind) { layout(*this, kind); }, value);
    }
    template <class T>
    void put(std::optional<T>& value) {
        out_.numbers.push_back(value ? 1 : 0);
        if (value) put(*value);
    }

    FlatKnowledge& out_;
    std::unordered_map<std::string, std::size_t> pool_;
};

class Reader {
public:
    Reader(const double* numbers, std::size_t count, std::string_view text) : next_(numbers), end_(numbers + count), text_(text) {}

    template <class... T>
    void operator()(T&... fields) {
        (get(fields), ...);
    }

    void finish() const {
        if (next_ != end_) throw std::logic_error("embedded knowledge does not match its layout");
    }

private:
    double number() {
        if (next_ == end_) throw std::logic_error("embedded knowledge ends early");
        return *next_++;
    }

    template <class T>
    void get(T& value) {
        if constexpr (std::is_same_v<T, bool>) value = number() != 0;
        else if constexpr (std::is_enum_v<T>) value = static_cast<T>(static_cast<int>(number()));
        else if constexpr (std::is_arithmetic_v<T>) value = static_cast<T>(number());
        else layout(*this, value);
    }
    void get(std::string& value) {
        const auto offset = static_cast<std::size_t>(number());
        value = text_.substr(offset, static_cast<std::size_t>(number()));
    }
    template <class T>
    void get(std::vector<T>& all) {
        all.resize(static_cast<std::size_t>(number()));
        for (auto& one : all) get(one);
    }
    void get(When& value) {
        value = kind_at(static_cast<std::size_t>(number()), std::make_index_sequence<std::variant_size_v<When>>());
        std::visit([this](auto& kind) { layout(*this, kind); }, value);
    }
    // An empty one of the alternatives of a condition.
    template <std::size_t... I>
    static When kind_at(std::size_t index, std::index_sequence<I...>) {
        When when;
        ((index == I ? void(when.emplace<I>()) : void()), ...);
        return when;
    }
    template <class T>
    void get(std::optional<T>& value) {
        if (number() != 0) get(value.emplace());
    }

    const double* next_;
    const double* end_;
    std::string_view text_;
};

}  // namespace

FlatKnowledge flatten(const Records& records) {
    FlatKnowledge flat;
    Records copy = records;
    Writer writer(flat);
    layout(writer, copy);
    return flat;
}

Records unflatten(const double* numbers, std::size_t count, std::string_view text) {
    Records records;
    Reader reader(numbers, count, text);
    layout(reader, records);
    reader.finish();
    return records;
}

}  // namespace standin
