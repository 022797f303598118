// Whether a stand-in is used for one line does not depend on how much else is missing; nothing is left out that could be replaced.
#include <algorithm>
#include <cmath>

#include "support/cases.hpp"
#include "support/catch.hpp"

using namespace standin;

namespace losing_test {

constexpr std::uint64_t gardens = 40;

Engine& engine() {
    static Engine opened = [] {
        Options options;
        options.draws = 32;
        return Engine::open(options).value();
    }();
    return opened;
}

// Lines of the garden and the pantry that a direct swap of fair closeness, to be had in plenty, can stand in for, with that food.
struct Replaceable {
    std::size_t line;
    std::string with;
};

std::vector<Replaceable> replaceable(const Formula& f, CaseMaker& make) {
    std::vector<Replaceable> all;
    for (std::size_t l = 0; l < f.lines.size(); ++l) {
        const auto* i = knowledge().ingredient(f.lines[l].ingredient);
        if (i->meat || i->roles.front() == Role::salt || i->roles.front() == Role::fat) continue;
        std::vector<std::string> known;
        for (const auto& swap : knowledge().records().swaps) {
            const bool there = std::any_of(f.lines.begin(), f.lines.end(), [&](const Line& line) { return line.ingredient == swap.to; });
            const auto* to = knowledge().ingredient(swap.to);
            if (swap.from == i->id && swap.to != i->id && swap.role == i->roles.front() && swap.closeness >= 0.5 && !there &&
                swap.needs.empty() && to->allergens.empty())
                known.push_back(swap.to);
        }
        if (!known.empty()) all.push_back({l, known[make.below(known.size())]});
    }
    return all;
}

AdaptAnswer without(const Formula& f, const std::vector<Replaceable>& gone) {
    AdaptRequest request;
    request.top = 1;
    request.have.emplace();
    for (const auto& l : f.lines)
        if (std::none_of(gone.begin(), gone.end(), [&](const Replaceable& r) { return f.lines[r.line].ingredient == l.ingredient; }))
            request.have->items.push_back({l.ingredient, std::nullopt});
        else request.have->missing.push_back(l.ingredient);
    for (const auto& r : gone) request.have->items.push_back({r.with, std::nullopt});
    return engine().adapt(f, request).value();
}

// Whether something stands in for the line.
bool replaced(const AdaptAnswer& answer, const std::string& id) {
    if (answer.variants.empty()) return false;
    const auto& edits = answer.variants.front().edits;
    return std::any_of(edits.begin(), edits.end(), [&](const Edit& e) {
        return e.line == id && (e.kind == EditKind::replace || e.kind == EditKind::split) && e.grams_after > 0;
    });
}

std::string edits_of(const AdaptAnswer& answer) {
    std::string all;
    if (!answer.variants.empty())
        for (const auto& e : answer.variants.front().edits)
            all += std::string(word(e.kind)) + " " + e.line + " " + e.with + " " + std::to_string(e.grams_before) + " " +
                   std::to_string(e.grams_after) + "; ";
    return all;
}

TEST_CASE("losing: the emptier the garden, the more stand-ins, never the fewer", "[losing]") {
    std::size_t asked = 0, lost = 0;
    std::string which;
    for (std::uint64_t n = 500; n < 500 + gardens; ++n) {
        CaseMaker make(n);
        const Formula f = make.formula();
        const auto all = replaceable(f, make);
        std::vector<Replaceable> gone;
        for (const auto& one : all) {
            gone.push_back(one);
            const auto answer = without(f, gone);
            for (const auto& r : gone) {
                ++asked;
                if (replaced(answer, f.lines[r.line].ingredient)) continue;
                ++lost;
                which += "\n  " + std::to_string(n) + ": " + f.lines[r.line].ingredient + " beside " + r.with;
            }
        }
    }
    CHECK(asked > 100);
    // What is still lost is mostly a herb or spice over its own most in a kilo, as random formulas have them: its stand-in may not follow
    // it.
    WARN(lost << " of " << asked << " lines left out beside a stand-in that was to be had:" << which);
    CHECK(static_cast<double>(lost) <= 0.07 * static_cast<double>(asked));
}

TEST_CASE("losing: a weight split among two lines changes no plan", "[losing]") {
    for (std::uint64_t n = 600; n < 612; ++n) {
        CaseMaker make(n);
        const Formula f = make.formula();
        const auto gone = replaceable(f, make);
        if (gone.empty()) continue;
        Formula split = f;
        Line half = split.lines[gone.front().line];
        half.grams = scaled(half.grams, 0.5);
        split.lines[gone.front().line] = half;
        split.lines.push_back(half);
        const auto whole = without(f, gone), halves = without(split, gone);
        REQUIRE_FALSE(whole.variants.empty());
        REQUIRE_FALSE(halves.variants.empty());
        CAPTURE(n);
        CHECK(edits_of(halves) == edits_of(whole));
        CHECK(halves.variants.front().distance == Approx(whole.variants.front().distance).epsilon(1e-6));
    }
}

}  // namespace losing_test
