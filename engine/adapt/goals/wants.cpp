#include "adapt/goals/wants.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <set>

#include "core/typed_reader.hpp"
#include "core/words.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t") - first + 1));
}

std::vector<std::string_view> condition_words() {
    std::vector<std::string_view> words;
    for_each_property([&](Property p) {
        if (!info(p).word.empty()) words.push_back(info(p).word);
    });
    return words;
}

bool of_both(Property property) { return of_batch(property) == Property::salt_pct || of_batch(property) == Property::fat_pct; }

// What the unit behind a number makes of the property: "% of meat", "of the mass". Nothing where it is none of its own.
std::optional<Property> counted_as(Property property, std::string_view unit) {
    if (unit.empty() || unit == "%" || unit == info(property).unit) {
        if (property == Property::salt_pct && unit != info(property).unit) return Property::salt_pct_of_meat;
        return property;
    }
    constexpr std::array meat{"of meat", "of the meat", "of its meat", "of meat block", "of the meat block"};
    constexpr std::array whole{"of batch", "of the batch", "of mass", "of the mass", "of the whole", "of all", "of everything"};
    if (!of_both(property)) return std::nullopt;
    for (const std::string_view percent : {"%", "percent", "per cent", "pct"})
        if (unit.substr(0, percent.size()) == percent) {
            unit.remove_prefix(percent.size());
            break;
        }
    const std::string of = trimmed(unit);
    if (of.empty()) return counted_as(property, "");
    const bool salt = of_batch(property) == Property::salt_pct;
    if (std::find(meat.begin(), meat.end(), of) != meat.end()) return salt ? Property::salt_pct_of_meat : Property::fat_pct_of_meat;
    if (std::find(whole.begin(), whole.end(), of) != whole.end()) return of_batch(property);
    return std::nullopt;
}

Result<Goal> read_condition(const std::string& want, std::size_t at) {
    const std::string name = trimmed(std::string_view(want).substr(0, at));
    const auto property = property_of(name);
    if (!property) {
        const auto words = condition_words();
        return failure(Trouble::usage,
                       "no property \"" + name + "\" in \"" + want + "\": expected one of " + listed({words.begin(), words.end()}), {},
                       nearest_words(name, words));
    }
    const bool two = at + 1 < want.size() && want[at + 1] == '=';
    const std::string value = trimmed(std::string_view(want).substr(at + (two ? 2 : 1)));
    const auto digits = value.find_first_not_of("0123456789.,+-eE");
    const std::string number = trimmed(value.substr(0, digits)), unit = digits == std::string::npos ? "" : trimmed(value.substr(digits));
    const auto limit = number_in(number);
    const auto counted = limit ? counted_as(*property, unit) : std::nullopt;
    if (!counted)
        return failure(Trouble::usage, "\"" + value + "\" in \"" + want + "\" is no number" +
                                           (limit && of_both(*property) ? " of a kind known here: say % of meat or % of batch" : ""));
    const auto kind = want[at] == '<' ? Goal::Kind::at_most : want[at] == '>' ? Goal::Kind::at_least : Goal::Kind::equal;
    return Goal{want, *counted, kind, true, *limit, false, 0, {}, {}};
}

bool rises(const WantMove& move) { return move.times ? move.by > 1 : move.by > 0; }

std::string hyphened(std::string words) {
    std::replace(words.begin(), words.end(), ' ', '-');
    return words;
}

Result<bool> add_word(const std::string& want, const Knowledge& knowledge, std::vector<Goal>& goals) {
    const auto& known = knowledge.records().wants;
    const std::string one = hyphened(want);
    const auto means = [&](const WantRecord& w) { return w.word == one || std::find(w.also.begin(), w.also.end(), one) != w.also.end(); };
    const auto record = std::find_if(known.begin(), known.end(), means);
    if (record == known.end()) {
        std::vector<std::string_view> words;
        for (const auto& w : known) words.push_back(w.word);
        return failure(Trouble::usage,
                       "no want \"" + want + "\": expected " + listed({words.begin(), words.end()}) + " or a condition such as heat<=3", {},
                       nearest_words(want, words));
    }
    for (const auto& move : record->moves) {
        const auto property = property_of(move.property);
        if (!property) return failure(Trouble::bad_data, "the want \"" + want + "\" moves an unknown property \"" + move.property + "\"");
        goals.push_back({want, *property, rises(move) ? Goal::Kind::at_least : Goal::Kind::at_most, false, 0, move.times, move.by,
                         move.least, move.most});
    }
    return true;
}

}  // namespace

Property of_batch(Property property) {
    if (property == Property::salt_pct_of_meat) return Property::salt_pct;
    return property == Property::fat_pct_of_meat ? Property::fat_pct : property;
}

bool all_in_words(const std::vector<Goal>& goals) {
    return !goals.empty() && std::none_of(goals.begin(), goals.end(), [](const Goal& goal) { return goal.condition; });
}

bool any_asks(const std::vector<Goal>& goals, Property property, Goal::Kind kind) {
    return std::any_of(goals.begin(), goals.end(), [&](const Goal& goal) {
        return (goal.property == property || of_batch(goal.property) == property) && goal.kind == kind;
    });
}

bool asks_leaner(const std::vector<Goal>& goals) { return any_asks(goals, Property::fat_pct, Goal::Kind::at_most); }

bool asks_richer(const std::vector<Goal>& goals) { return any_asks(goals, Property::fat_pct, Goal::Kind::at_least); }

bool asks_firmer(const std::vector<Goal>& goals) {
    return any_asks(goals, Property::bind, Goal::Kind::at_least) || any_asks(goals, Property::firmness, Goal::Kind::at_least);
}

Result<std::vector<Goal>> read_wants(const std::vector<std::string>& wants, const Knowledge& knowledge) {
    std::vector<Goal> goals;
    std::set<std::string> told;
    for (const auto& written : wants) {
        const std::string want = lower(trimmed(written));
        if (!told.insert(want).second) continue;
        const auto at = want.find_first_of("<>=");
        if (at == std::string::npos) {
            if (const auto added = add_word(want, knowledge, goals); !added) return Failure(added.error());
        } else if (auto goal = read_condition(want, at)) {
            goals.push_back(std::move(*goal));
        } else {
            return Failure(goal.error());
        }
    }
    return goals;
}

std::vector<Goal> without_what_is_there(const std::vector<Goal>& goals, const State& base) {
    const auto about = [&](Property property) {
        return std::count_if(goals.begin(), goals.end(), [&](const Goal& g) { return g.property == property; });
    };
    // What a word is about stays, whatever else is asked of the same property: richer beside juicier.
    const auto is_first_of_its_word = [&](const Goal& goal) {
        return &*std::find_if(goals.begin(), goals.end(), [&](const Goal& g) { return g.want == goal.want; }) == &goal;
    };
    std::vector<Goal> kept;
    for (const auto& goal : goals) {
        const bool step_towards = !goal.condition && goal.kind == Goal::Kind::at_least && goal.most;
        const bool still_to_go = !step_towards || base.properties[goal.property] < *goal.most;
        if (!still_to_go || (step_towards && !is_first_of_its_word(goal) && about(goal.property) != 1)) continue;
        kept.push_back(goal);
        const bool of_no_meat = !(base.properties[goal.property] > 0) && base.properties[of_batch(goal.property)] > 0;
        if (of_no_meat) kept.back().property = of_batch(goal.property);
    }
    return kept;
}

std::vector<std::string> contradiction(const std::vector<Goal>& goals, const State& base) {
    for (std::size_t i = 0; i < goals.size(); ++i) {
        for (std::size_t j = i + 1; j < goals.size(); ++j) {
            const Goal &a = goals[i], &b = goals[j];
            if (a.property != b.property || a.want == b.want) continue;
            const double base_value = base.properties[a.property];
            const double ta = a.target(base_value), tb = b.target(base_value);
            const bool a_low = a.kind != Goal::Kind::at_most, a_high = a.kind != Goal::Kind::at_least;
            const bool b_low = b.kind != Goal::Kind::at_most, b_high = b.kind != Goal::Kind::at_least;
            if ((a_low && b_high && ta > tb) || (b_low && a_high && tb > ta)) return {a.want, b.want};
        }
    }
    return {};
}

double Goal::target(double base) const {
    if (condition) return limit;
    const double moved = times ? base * by : base + by;
    const double at_least = std::max(moved, least.value_or(moved));
    return std::min(at_least, most.value_or(at_least));
}

Goal as_condition(const Goal& goal, double base, double slack) {
    Goal hard = goal;
    if (goal.condition) return hard;
    hard.limit = goal.kind == Goal::Kind::at_least ? goal.target(base) - slack : goal.target(base) + slack;
    hard.condition = true;
    return hard;
}

double shortfall(const Goal& goal, double value, double base) {
    const double target = goal.target(base);
    switch (goal.kind) {
        case Goal::Kind::at_least:
            return std::max(0.0, target - value);
        case Goal::Kind::at_most:
            return std::max(0.0, value - target);
        case Goal::Kind::equal:
            return std::abs(value - target);
    }
    return 0;
}

}  // namespace standin
