#include "adapt/variants/variant_list.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <span>

#include "adapt/distance/met.hpp"
#include "adapt/distance/nearness.hpp"
#include "adapt/goals/request.hpp"
#include "safety/page.hpp"

namespace standin {
namespace {

bool some_meet_all(const std::vector<Variant>& variants) { return std::any_of(variants.begin(), variants.end(), meets_all); }

// More of a line, or a line of the same beside it: on the scale it is one formula.
bool weighs_the_same(const Variant& a, const Variant& b) {
    const auto in_order = [](Formula formula) {
        formula = with_equal_lines_merged(std::move(formula));
        std::sort(formula.lines.begin(), formula.lines.end(), [](const Line& x, const Line& y) { return x.ingredient < y.ingredient; });
        return formula.lines;
    };
    const auto one = in_order(a.formula), other = in_order(b.formula);
    const auto made_alike =
        a.formula.process.order == b.formula.process.order && a.formula.process.mixing_min == b.formula.process.mixing_min &&
        a.formula.process.mixed_at_c == b.formula.process.mixed_at_c && a.formula.process.rest_h == b.formula.process.rest_h;
    return made_alike && std::equal(one.begin(), one.end(), other.begin(), other.end(), [](const Line& x, const Line& y) {
               return x.ingredient == y.ingredient && x.prepared == y.prepared && std::abs(x.grams.mid - y.grams.mid) < 0.05;
           });
}

bool reads_the_same(const Variant& a, const Variant& b) {
    return weighs_the_same(a, b) ||
           std::equal(a.edits.begin(), a.edits.end(), b.edits.begin(), b.edits.end(), [](const Edit& x, const Edit& y) {
               return x.kind == y.kind && x.line == y.line && x.with == y.with && x.grams_after == y.grams_after;
           });
}

// Plans that differ by less than a scale shows are one.
void once_each(std::vector<Variant>& variants) {
    for (std::size_t i = 0; i < variants.size(); ++i)
        for (std::size_t k = variants.size(); k-- > i + 1;)
            if (reads_the_same(variants[i], variants[k])) variants.erase(variants.begin() + static_cast<std::ptrdiff_t>(k));
}

// Beside an answer that is still this sausage, one that no longer is helps nobody.
void leave_out_hopeless(std::vector<Variant>& variants) {
    if (variants.empty() || variants.front().nearness == Nearness::no_longer) return;
    std::erase_if(variants, [](const Variant& v) { return v.nearness == Nearness::no_longer; });
}

double chance_of(const Variant& v) {
    double least = 1;
    for (const auto& want : v.wants) least = std::min(least, want.chance);
    return least;
}

// Of two that lie as good as equally near the one that does what was asked for sure goes first.
void surer_first(std::vector<Variant>& variants) {
    constexpr double equally_near = 0.1, clearly_surer = 0.25;  // noticeable differences, share of the draws; judgement
    for (std::size_t i = 1; i < variants.size(); ++i)
        for (std::size_t k = i; k > 0; --k) {
            const bool tied = variants[k].distance - variants[k - 1].distance <= equally_near;
            if (!tied || chance_of(variants[k]) < chance_of(variants[k - 1]) + clearly_surer) break;
            std::swap(variants[k], variants[k - 1]);
        }
}

bool brings(const Edit& edit) { return edit.kind == EditKind::add || edit.kind == EditKind::replace || edit.kind == EditKind::split; }

bool buys(const Variant& v, const Had& had) {
    return std::any_of(v.edits.begin(), v.edits.end(), [&](const Edit& edit) { return brings(edit) && !had(edit.with); });
}

// Whether one leaves out nothing that the other does not leave out as well.
bool leaves_out_no_more(const Variant& v, const Variant& than) {
    const auto left_out = [](const Variant& of, const Edit& line) {
        return std::any_of(of.edits.begin(), of.edits.end(),
                           [&](const Edit& other) { return other.kind == EditKind::omit && other.line == line.line; });
    };
    return std::all_of(v.edits.begin(), v.edits.end(),
                       [&](const Edit& edit) { return edit.kind != EditKind::omit || left_out(than, edit); });
}

// Of two that do what was asked as good as equally near, the one that only weighs anew what is in the formula comes before one that buys.
void own_food_before_another(std::vector<Variant>& variants, const Had& had) {
    constexpr double equally_near = 0.2, hardly_surer = 0.1;  // noticeable differences, share of the draws; judgement
    for (std::size_t i = 1; i < variants.size(); ++i)
        for (std::size_t k = i; k > 0; --k) {
            const Variant &plain = variants[k], &other = variants[k - 1];
            const bool plainer = !plain.wants.empty() && !buys(plain, had) && buys(other, had) && leaves_out_no_more(plain, other);
            const bool as_good = meets_all(plain) == meets_all(other) && plain.distance - other.distance <= equally_near &&
                                 chance_of(plain) + hardly_surer >= chance_of(other);
            if (!plainer || !as_good) break;
            std::swap(variants[k], variants[k - 1]);
        }
}

// Where none does what was asked the first is the one that comes nearest to that and stays near; what is nearer to the original because it
// does less of it is no other way.
void nearest_to_what_was_asked_first(std::vector<Variant>& variants) {
    constexpr double weight = 3;  // of a want that is missed, as the search has it; judgement
    const auto off = [](const Variant& v) { return v.distance * v.distance + missed_square(v, weight); };
    const auto first =
        std::min_element(variants.begin(), variants.end(), [&](const Variant& a, const Variant& b) { return off(a) < off(b); });
    if (first != variants.end()) variants.erase(variants.begin(), first);
}

// What breaks, of its own making, what a kilo takes of a food, or sets the meat in acid: no first answer where there is another that is
// still good and does as much.
bool condemned(const Variant& v) {
    return std::any_of(v.new_cautions.begin(), v.new_cautions.end(),
                       [](const CautionText& caution) { return caution.id == "over-most" || caution.id == "acid-set"; });
}

void sound_first(std::vector<Variant>& variants) {
    if (variants.empty() || !condemned(variants.front())) return;
    const auto sound = std::find_if(variants.begin(), variants.end(), [&](const Variant& v) {
        return !condemned(v) && v.nearness <= Nearness::another && meets_all(v) == meets_all(variants.front());
    });
    if (sound != variants.end()) std::rotate(variants.begin(), sound, sound + 1);
}

// Whether a line for which the first has a stand-in is left at nothing.
bool drops_a_line_of(const Variant& further, const Variant& first) {
    return std::any_of(further.edits.begin(), further.edits.end(), [&](const Edit& edit) {
        return edit.kind == EditKind::omit && std::any_of(first.edits.begin(), first.edits.end(), [&](const Edit& other) {
                   return other.line == edit.line && (other.kind == EditKind::replace || other.kind == EditKind::split);
               });
    });
}

// Whether it does nothing that those before it do not do, though by other weights or in another mix.
bool tells_nothing_new(const Variant& further, std::span<const Variant> before) {
    const auto told_by = [](const Edit& edit, const Variant& one) {
        return std::any_of(one.edits.begin(), one.edits.end(), [&](const Edit& other) {
            const bool brings = !edit.with.empty() && edit.kind != EditKind::process;
            return brings ? other.with == edit.with : other.kind == edit.kind && other.line == edit.line && other.with == edit.with;
        });
    };
    return !further.edits.empty() && std::all_of(further.edits.begin(), further.edits.end(), [&](const Edit& edit) {
        return std::any_of(before.begin(), before.end(), [&](const Variant& one) { return told_by(edit, one); });
    });
}

// How much of what the line is there for all that comes in for it brings; nothing where nothing tells it.
std::optional<double> carried(const Variant& v, const std::string& line) {
    std::optional<double> sum;
    for (const auto& edit : v.edits) {
        if (edit.line != line || (edit.kind != EditKind::replace && edit.kind != EditKind::split)) continue;
        if (edit.reason.figures.empty() || !edit.reason.figures.front().before.has_value()) return std::nullopt;
        const auto& dose = edit.reason.figures.front();
        if (!(*dose.before > 0)) return std::nullopt;
        sum = sum.value_or(0) + dose.after / *dose.before;
    }
    return sum;
}

// A handful of celery leaf for three bunches of coriander, where the first has parsley for them: a line as good as left out is no idea.
bool hardly_carries_a_line_of(const Variant& further, const Variant& first) {
    constexpr double most_of_it = 0.6, hardly = 0.3;  // judgement
    return std::any_of(further.edits.begin(), further.edits.end(), [&](const Edit& edit) {
        const auto here = carried(further, edit.line), there = carried(first, edit.line);
        return here && there && *there >= most_of_it && *here < hardly;
    });
}

// Whether it is what one before it is, with a line or the water trimmed besides, or without such a trim.
bool only_trims(const Variant& further, const Variant& one) {
    const auto trims = [](const Edit& edit) {
        const bool water = edit.kind == EditKind::add && edit.with == "water";
        return water || (!brings(edit) && edit.kind != EditKind::omit && edit.kind != EditKind::process);
    };
    const auto told_by = [](const Edit& edit, const Variant& other) {
        return std::any_of(other.edits.begin(), other.edits.end(),
                           [&](const Edit& o) { return o.kind == edit.kind && o.line == edit.line && o.with == edit.with; });
    };
    const auto beyond = [&](const Variant& a, const Variant& b, bool trim) {
        return std::count_if(a.edits.begin(), a.edits.end(),
                             [&](const Edit& edit) { return edit.kind != EditKind::process && trims(edit) == trim && !told_by(edit, b); });
    };
    const auto weighs = [](const Variant& a) {
        return std::any_of(a.edits.begin(), a.edits.end(), [](const Edit& edit) { return edit.kind != EditKind::process; });
    };
    if (!weighs(further) || !weighs(one) || beyond(further, one, false) + beyond(one, further, false) > 0) return false;
    return beyond(further, one, true) == 0 || beyond(one, further, true) == 0;
}

// Nor is what leaves a want clearly further off than the first another way to it.
bool does_clearly_less(const Variant& further, const Variant& first) {
    constexpr double clearly = 0.3;  // noticeable differences; judgement
    return !meets_all(further) && still_missed(further) > still_missed(first) + clearly;
}

// The same answer with a line dropped, or with half of it changed, is no other way to do it.
void leave_out_halves(std::vector<Variant>& variants) {
    for (std::size_t i = 1; i < variants.size();) {
        const Variant& first = variants.front();
        const bool same = variants[i].wants.empty() && tells_nothing_new(variants[i], std::span(variants).first(i));
        const bool hardly = variants[i].wants.empty() && hardly_carries_a_line_of(variants[i], first);
        const bool asked = !variants[i].wants.empty();
        const bool trimmed = asked && std::any_of(variants.begin(), variants.begin() + static_cast<std::ptrdiff_t>(i),
                                                  [&](const Variant& one) { return only_trims(variants[i], one); });
        const bool less = asked && does_clearly_less(variants[i], first);
        if (same || hardly || trimmed || less || drops_a_line_of(variants[i], first))
            variants.erase(variants.begin() + static_cast<std::ptrdiff_t>(i));
        else ++i;
    }
}

// What is as it should be is left alone: further ways are no help to anybody.
void leave_out_further(std::vector<Variant>& variants) {
    if (!variants.empty() && variants.front().edits.empty() && meets_all(variants.front())) variants.resize(1);
}

}  // namespace

void number(std::vector<Variant>& variants) {
    for (std::size_t i = 0; i < variants.size(); ++i) variants[i].rank = i + 1;
}

void put_in_order(std::vector<Variant>& variants, const Had& had) {
    std::stable_sort(variants.begin(), variants.end(), [](const Variant& a, const Variant& b) { return a.distance < b.distance; });
    if (!some_meet_all(variants)) nearest_to_what_was_asked_first(variants);
    surer_first(variants);
    own_food_before_another(variants, had);
    if (some_meet_all(variants)) std::erase_if(variants, std::not_fn(meets_all));
    once_each(variants);
    leave_out_hopeless(variants);
    sound_first(variants);
    leave_out_halves(variants);
    leave_out_further(variants);
    number(variants);
}

void leave_out_idle(std::vector<Variant>& variants, bool all_there) {
    std::erase_if(variants, [&](const Variant& v) { return !meets_all(v) && (v.edits.empty() || (all_there && !brings_nearer(v))); });
    number(variants);
}

bool is_a_toss_up(const AdaptAnswer& answer) {
    constexpr double even = 0.55;  // of the draws
    if (answer.variants.empty() || !answer.conflict.empty()) return false;
    const Variant& first = answer.variants.front();
    return first.edits.empty() && meets_all(first) && !first.wants.empty() && chance_of(first) < even;
}

void put_nearest_first(AdaptAnswer& answer, Variant first, std::size_t top) {
    const auto met = [](const Variant& v) {
        return std::count_if(v.wants.begin(), v.wants.end(), [](const WantResult& want) { return want.met; });
    };
    constexpr double unfelt = 1e-3;
    if (!answer.variants.empty()) {
        const auto before = met(answer.variants.front()), now = met(first);
        if (now < before || (now == before && still_missed(first) >= still_missed(answer.variants.front()) - unfelt)) return;
    }
    // What does less of it is another way only where the sausage stays nearer.
    std::erase_if(answer.variants, [&](const Variant& other) { return other.distance >= first.distance; });
    answer.variants.insert(answer.variants.begin(), std::move(first));
    answer.variants.resize(std::min(answer.variants.size(), std::max<std::size_t>(1, top)));
    answer.proved = false;
    number(answer.variants);
}

void put_surer_beside(AdaptAnswer& answer, AdaptAnswer surer) {
    if (surer.variants.empty() || surer.variants.front().edits.empty() || !meets_all(surer.variants.front())) return;
    answer.variants.resize(1);
    answer.variants.push_back(std::move(surer.variants.front()));
    number(answer.variants);
    answer.plans_visited += surer.plans_visited;
    answer.proved = answer.proved && surer.proved;
    answer = with_safety(std::move(answer));
}

void clear_conflict_if_met(AdaptAnswer& answer, const Had& had) {
    if (!some_meet_all(answer.variants)) return;
    put_in_order(answer.variants, had);
    answer.conflict.clear();
    answer.would_give.clear();
    answer.reach.clear();
    answer.proved = false;
}

AdaptAnswer with_safety(AdaptAnswer answer) {
    OnPage page;
    page.add(answer.base);
    for (const auto& variant : answer.variants) page.offer(variant.prediction);
    answer.on_page = page.safety();
    answer.of_variants = page.offered();
    return answer;
}

}  // namespace standin
