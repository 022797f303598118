#include "mend/tastes.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/names.hpp"
#include "core/typed_reader.hpp"
#include "core/words.hpp"

namespace standin {
namespace {

constexpr const char* tasted_part = "request.tasted";

// What stands between commas, semicolons, strokes, "and" and "but".
std::vector<std::string> parts_of(const std::string& text) {
    std::string even = text;
    for (const std::string_view between : {" and ", " but ", " & ", "\n"})
        for (auto at = even.find(between); at != std::string::npos; at = even.find(between, at)) even.replace(at, between.size(), ",");
    std::vector<std::string> parts;
    std::string part;
    const auto close = [&] {
        const auto first = part.find_first_not_of(" \t."), last = part.find_last_not_of(" \t.!");
        if (first != std::string::npos && last != std::string::npos && first <= last) parts.push_back(part.substr(first, last - first + 1));
        part.clear();
    };
    for (const char c : even) {
        if (c == ',' || c == ';' || c == '/') close();
        else part += std::string_view("!?\"()").find(c) == std::string_view::npos ? c : ' ';
    }
    close();
    return parts;
}

const TasteWord* word_for(const std::string& folded, const Mending& known) {
    for (const auto& word : known.tasted)
        for (const auto& name : word.words)
            if (fold(name) == folded) return &word;
    return nullptr;
}

// `folded` without one of the words in front or behind; empty where there is none.
std::string without(const std::string& folded, const std::vector<std::string>& words) {
    for (const auto& written : words) {
        const std::string word = fold(written);
        if (folded.size() <= word.size() + 1) continue;
        if (folded.compare(0, word.size() + 1, word + " ") == 0) return folded.substr(word.size() + 1);
        const auto tail = folded.size() - word.size() - 1;
        if (folded.compare(tail, std::string::npos, " " + word) == 0) return folded.substr(0, tail);
    }
    return {};
}

bool has_word(const std::string& folded, std::string_view word) {
    return (" " + folded + " ").find(" " + std::string(word) + " ") != std::string::npos;
}

// The longest phrase that stands within what was said: "falls apart in the pan", "a bit too sour for the kids". Nothing where the rest
// denies it, or makes a food of it.
std::optional<Taste> read_within(const std::string& written, const Mending& known) {
    constexpr std::array<std::string_view, 9> denials{"not", "no", "never", "isn", "isnt", "wasn", "less", "without", "hardly"};
    constexpr std::array<std::string_view, 7> foods{"cream", "milk", "cheese", "sauce", "pepper", "orange", "cherry"};
    const std::string folded = fold(written);
    Taste taste{written, nullptr, false};
    std::string longest;
    for (const auto& word : known.tasted)
        for (const auto& name : word.words)
            if (const std::string phrase = fold(name); phrase.size() > longest.size() && has_word(folded, phrase)) {
                longest = phrase;
                taste.word = &word;
            }
    if (!taste.word) return std::nullopt;
    std::string rest = " " + folded + " ";
    const auto at = rest.find(" " + longest + " ");
    rest.replace(at, longest.size() + 1, "");
    const auto stands = [&](std::string_view word) { return has_word(rest, word); };
    if (std::any_of(denials.begin(), denials.end(), stands)) return std::nullopt;
    if (std::any_of(foods.begin(), foods.end(), [&](std::string_view food) { return has_word(folded, longest + " " + std::string(food)); }))
        return std::nullopt;
    const auto any_of_them = [&](const std::vector<std::string>& words) {
        return std::any_of(words.begin(), words.end(), [&](const std::string& word) { return stands(fold(word)); });
    };
    taste.strong = any_of_them(known.stronger);
    taste.weak = !taste.strong && any_of_them(known.weaker);
    return taste;
}

std::optional<Taste> read_one(const std::string& written, const Mending& known) {
    Taste taste{written, nullptr, false};
    for (std::string left = fold(written); !left.empty();) {
        taste.word = word_for(left, known);
        if (taste.word) return taste;
        if (auto shorter = without(left, known.stronger); !shorter.empty()) {
            taste.strong = true;
            taste.weak = false;
            left = std::move(shorter);
        } else if (shorter = without(left, known.weaker); !shorter.empty()) {
            taste.weak = !taste.strong;
            left = std::move(shorter);
        } else {
            left = without(left, known.passed_over);
        }
    }
    return read_within(written, known);
}

// Salt is put in, and felt, as a share of the whole: what is asked by the meat becomes that. It goes in dissolved, and its water thins it.
double to_the_mass(const TastedMass& mass, double of_meat) {
    constexpr double water = 3;  // g for each g of salt
    const double now = mass.state.properties[Property::salt_pct_of_meat], in_mass = mass.state.properties[Property::salt_pct];
    const double meat = now > 0 ? in_mass / now : mass.meat_share > 0 ? mass.meat_share : 1;
    const double more = std::max(0.0, of_meat - now) * meat / 100;
    return of_meat * meat / (1 + (1 + water) * more);
}

Goal goal_of(const std::string& want, const WantMove& move, double steps, const TastedMass& mass) {
    // Of a little, what is asked is that part of the way, wherever the whole way ends.
    const double whole = std::max(1.0, steps), part = std::min(1.0, steps);
    const double by = move.times ? std::pow(move.by, whole) : whole * move.by;
    const bool rises = move.times ? by > 1 : by > 0;
    Goal goal{
        want,     *property_of(move.property), rises ? Goal::Kind::at_least : Goal::Kind::at_most, false, 0, move.times, by, move.least,
        move.most};
    if (steps > 1) {  // said strongly it is more than said plainly, even where both end at a bound
        constexpr double more = 1.2;
        Goal once = goal;
        once.by = move.by;
        const double base = mass.state.properties[goal.property], plainly = once.target(base);
        if (std::abs(goal.target(base) - plainly) < (more - 1) * std::abs(plainly - base)) {
            // ... and no more than half a step past the bound, which is where it is right.
            const double step = std::abs(move.times ? plainly * (1 - move.by) : move.by) / 2;
            double far = plainly + std::clamp((more - 1) * (plainly - base), -step, step);
            if (rises && move.most) far = std::min(far, std::max(*move.most, plainly));
            if (!rises && move.least) far = std::max(far, std::min(*move.least, plainly));
            goal.by = far - base;
            goal.times = false;
            goal.least = goal.most = std::nullopt;
        }
    }
    if (part < 1) {
        const double base = mass.state.properties[goal.property];
        goal.by = part * (goal.target(base) - base);
        goal.times = false;
        goal.least = goal.most = std::nullopt;
    }
    if (goal.property != Property::salt_pct_of_meat) return goal;
    const double base = mass.state.properties[Property::salt_pct_of_meat];
    const double asked = to_the_mass(mass, goal.target(base));
    goal.property = Property::salt_pct;
    goal.by = asked - mass.state.properties[Property::salt_pct];
    goal.times = false;
    goal.least = goal.most = std::nullopt;
    return goal;
}

// Whether this reading is to be taken of the mass. Less of a role is asked of a mass that has it, where there is another way to take it.
bool holds(const TasteReading& reading, const TastedMass& mass, bool only = true) {
    if (!only && reading.less_of && mass.roles.count(*reading.less_of) == 0) return false;
    if (!only && reading.more_of && mass.roles.count(*reading.more_of) == 0) return false;
    if (!reading.less_kind.empty() && mass.kinds.count(reading.less_kind) == 0) return false;
    const auto asks_fat = [](const WantMove& move) { return move.property == "fat_pct" && !move.times && move.by > 0; };
    if (reading.fish && !mass.fish) return false;
    if (!only && mass.fish && !reading.fish && std::any_of(reading.moves.begin(), reading.moves.end(), asks_fat)) return false;
    return hold(reading.when, mass.state) && (!reading.less_note || mass.notes.count(*reading.less_note) > 0);
}

class Understanding {
public:
    explicit Understanding(const TastedMass& mass) : mass_(mass) {}

    Meaning of(const std::vector<Taste>& tastes) && {
        // Words that can mean but one thing come first; the others find their meaning beside them.
        std::vector<const Taste*> order;
        for (const auto& taste : tastes) order.push_back(&taste);
        std::stable_sort(order.begin(), order.end(), [&](const Taste* a, const Taste* b) { return open(*a) < open(*b); });
        for (const auto* taste : order) understand(*taste);
        std::stable_sort(meaning_.all.begin(), meaning_.all.end(),
                         [&](const Meant& a, const Meant& b) { return place(a, tastes) < place(b, tastes); });
        return std::move(meaning_);
    }

private:
    static std::size_t place(const Meant& meant, const std::vector<Taste>& tastes) {
        const auto found = std::find_if(tastes.begin(), tastes.end(), [&](const Taste& t) { return t.written == meant.taste.written; });
        return static_cast<std::size_t>(found - tastes.begin());
    }

    std::size_t open(const Taste& taste) const {
        const auto& all = taste.word->readings;
        return static_cast<std::size_t>(
            std::count_if(all.begin(), all.end(), [&](const TasteReading& r) { return holds(r, mass_, all.size() == 1); }));
    }

    void understand(const Taste& taste) {
        std::optional<Meant> there;
        std::vector<std::string> against;
        for (const auto& reading : taste.word->readings) {
            if (!holds(reading, mass_, taste.word->readings.size() == 1)) continue;
            Meant meant{taste, &reading, {}, false};
            for (const auto& move : reading.moves) {
                meant.goals.push_back(goal_of(taste.written, move, meant.steps(), mass_));
                if (taste.strong) meant.plainly.push_back(goal_of(taste.written, move, 1, mass_));
            }
            if (against = opposed_by(meant); !against.empty()) continue;
            const bool asks = std::any_of(meant.goals.begin(), meant.goals.end(), [&](const Goal& goal) {
                const double base = mass_.state.properties[goal.property];
                return shortfall(goal, base, base) > 1e-9 * std::max(1.0, std::abs(base));
            });
            if (!meant.goals.empty() && !asks) {
                // What is so already is a bound for the other words all the same.
                for (Goal goal : meant.goals) {
                    if (goal.kind != Goal::Kind::at_most || there) continue;
                    goal.by = 0;  // no more than there is
                    goal.times = false;
                    goal.least = goal.most = std::nullopt;
                    goals_.push_back(std::move(goal));
                }
                meant.there = true;
                meant.goals.clear();
                if (!there) there = std::move(meant);
                continue;
            }
            goals_.insert(goals_.end(), meant.goals.begin(), meant.goals.end());
            meaning_.all.push_back(std::move(meant));
            return;
        }
        if (there) meaning_.all.push_back(std::move(*there));
        else if (!against.empty()) meaning_.opposed = against;
    }

    std::vector<std::string> opposed_by(const Meant& meant) const {
        for (const auto& other : meaning_.all) {
            const auto &a = *other.reading, &b = *meant.reading;
            if ((a.more_of && a.more_of == b.less_of) || (a.less_of && a.less_of == b.more_of))
                return {other.taste.written, meant.taste.written};
        }
        std::vector<Goal> together = goals_;
        together.insert(together.end(), meant.goals.begin(), meant.goals.end());
        return contradiction(together, mass_.state);
    }

    const TastedMass& mass_;
    std::vector<Goal> goals_;
    Meaning meaning_;
};

}  // namespace

bool hold(const std::vector<TasteWhen>& all, const State& mass) {
    return std::all_of(all.begin(), all.end(), [&](const TasteWhen& when) {
        const double value = mass.properties[*property_of(when.property)];
        return (!when.below || value < *when.below) && (!when.above || value > *when.above);
    });
}

namespace {

// Whether any of it says that the mass is to be thrown out or has hurt somebody, in whatever words the rest is.
bool says_harm(const std::vector<std::string>& tasted, const Mending& known) {
    for (const auto& text : tasted)
        for (const auto& part : parts_of(text))
            if (const auto taste = read_one(part, known); taste && taste->word->readings.front().discard) return true;
    return false;
}

}  // namespace

Result<std::vector<Taste>> read_tastes(const std::vector<std::string>& tasted, const Mending& known) {
    std::vector<Taste> tastes;
    const bool harm = says_harm(tasted, known);  // nothing else matters then
    for (const auto& text : tasted)
        for (const auto& part : parts_of(text)) {
            auto taste = read_one(part, known);
            if (!taste && harm) continue;
            if (!taste) {
                std::vector<std::string> first;
                std::vector<std::string_view> all;
                for (const auto& word : known.tasted) {
                    first.push_back(word.words.front());
                    all.insert(all.end(), word.words.begin(), word.words.end());
                }
                return failure(Trouble::usage, "\"" + part + "\" is no word known of a test patty: expected one of " + listed(first),
                               tasted_part, nearest_words(part, all));
            }
            const auto again = std::find_if(tastes.begin(), tastes.end(), [&](const Taste& t) { return t.word == taste->word; });
            if (again == tastes.end()) tastes.push_back(std::move(*taste));
            else if (fold(again->written) != fold(part)) again->written += ", " + part;  // two words for one thing
        }
    if (tastes.empty()) return failure(Trouble::usage, "say what the test patty tasted like, such as \"flat, too sour\"", tasted_part);
    return tastes;
}

double Meant::by() const {
    return taste.strong ? reading->by * reading->by : taste.weak ? std::pow(reading->by, reading->little) : reading->by;
}

Meaning meaning_of(const std::vector<Taste>& tastes, const TastedMass& mass) { return Understanding(mass).of(tastes); }

std::optional<Meaning> meaning_beside(const Meaning& taken, const TastedMass& mass) {
    Meaning other = taken;
    bool any = false;
    for (auto& meant : other.all) {
        const auto& all = meant.taste.word->readings;
        const auto taken_at = std::find_if(all.begin(), all.end(), [&](const TasteReading& r) { return &r == meant.reading; });
        const auto next = std::find_if(taken_at + 1, all.end(), [&](const TasteReading& r) { return r.beside && holds(r, mass, false); });
        if (next == all.end()) continue;
        meant.reading = &*next;
        meant.goals.clear();
        for (const auto& move : next->moves) meant.goals.push_back(goal_of(meant.taste.written, move, meant.steps(), mass));
        any = true;
    }
    return any ? std::optional(std::move(other)) : std::nullopt;
}

Reason cannot_be(ReasonKind why, std::string tasted, std::vector<Figure> figures) {
    Reason reason = make_reason(why, std::move(figures));
    reason.about = std::move(tasted);
    return reason;
}

}  // namespace standin
