// What an answer says and why, as facts; and the sentence that tells it, in the maker's units.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace standin {

enum class Units { metric, us, both };

enum class ReasonKind {
    stands_in,     ///< a stand-in for a line: its dose against the line's, how close it is
    not_there,     ///< nothing of the line is to be had, or only so much
    unwanted,      ///< the maker asked for none of it
    less_acid,     ///< less acid lets the meat bind
    sourness,      ///< the line moves it, or holds it
    heat,          ///< likewise
    salt,          ///< likewise
    fat,           ///< likewise
    green,         ///< likewise
    drier_paste,   ///< less loose water dilutes the meat's protein less
    balance,       ///< follows the other changes
    binder,        ///< holds loose water
    addition,      ///< brings the dose of its role
    order,         ///< salt and lean first
    mixing,        ///< longer
    cold,          ///< colder while mixing
    plate,         ///< another grinder plate
    rest,          ///< a shorter rest
    rest_cold,     ///< a colder one
    core,          ///< no hotter than needed
    short_blanch,  ///< of `foods`, for fewer minutes
    squeeze,       ///< `foods`, after blanching
    cook_through,  ///< the meat that comes in asks for more heat

    // What is said of a batch. `about` is the id of the record that calls for it, where there is one.
    caution,       ///< `note` is the rule, `foods` call for it; figures: "value" and "limit" where it compares
    stretched,     ///< a model beyond what it was made for: `about` names the limit, the figure has the range it was made for
    cold_green,    ///< the fading of the green in the cold, extrapolated from the figure on
    warms_slowly,  ///< why no figure of what the cook kills
    no_table,      ///< likewise
    table_ends,    ///< likewise; the figure is the hottest row
    kills,         ///< log reductions by a cook; `role` is "measured" where by the maker's own readings
    keeps_green,   ///< hours of rest; further figures: what would keep it longer

    // What `adapt` answers.
    want,                 ///< `about` as asked; the property before and after, then what it was to be and the slack
    scaled_as_asked,      ///< to this much meat; the share of the batch last
    scaled_to_list,       ///< up to the end of this much of `foods`
    scaled_to_meat,       ///< this much of `foods` where so much was asked
    presumed_there,       ///< `foods` are not on the list
    presumed_missing,     ///< the first of `foods` is not on the list, the others are
    all_that_is_there,    ///< "nothing else" was said, and `foods` taken to be there all the same
    only_the_list,        ///< nothing comes in but what the list names
    comes_back_as_aroma,  ///< sharpness from `foods`, so much in a kilo
    comes_back_as_bite,   ///< heat without chile; a figure for each food, grams in a kilo
    salt_would_bind,      ///< so little salt that nothing else binds as well; figures: salt, the salt to add, bind and cook loss with it
    part_way,             ///< the whole of what was asked would be another sausage: this goes as far as it stays this one
    comes_back_outside,   ///< sharpness, with acid that is not in the mass
    demand,               ///< one of the demands that cannot all be met: `about` as the maker put it
    short_of,             ///< the list is one; figures: each line that is short, what is there against what is asked
    giving_up,            ///< the demand `about`
    more_on_hand,         ///< of what is short; the figure is the size of the batch that the meat makes
    so_much_on_hand,      ///< of `foods`, in place of what there is
    said,                 ///< in the words of `note` alone
    not_known_here,       ///< on hand, and set aside
    no_new_allergens,     ///< none that is not in the formula may come in
    within_reach,         ///< how near the want `about` can be come to; figures: now, asked for, alone, beside; `role`: where it is met
    stopped_before,       ///< the search was stopped before it found a plan
    none_within_limits,   ///< no plan meets every want
    nothing_to_taste,     ///< giving up the want `about`: the batch has none of the first of `foods`
    giving_up_one,        ///< of the demands
    weight_for_weight,    ///< the maker's own idea, unbalanced: `foods` for each other; `note` is the verdict
    weighing_it_apart,    ///< in a formula of the maker's own

    // What to do about the making that is no figure of it.
    without_casing,  ///< `foods` are the casings, `about` the word that leaves them out

    // What decides the weight of a stand-in; the first figure is the dose of the line, or the bound.
    same_dose,     ///< as the line brings
    by_weight,     ///< so much for each gram of the line, as the swap says
    for_its_bulk,  ///< `role` "at least" or "at most": so many times the weight
    times_weight,  ///< no more than so many times
    as_batch,      ///< no more than the batch takes of it
    in_a_kilo,     ///< no more than so much
    half_way,      ///< between the same weight and the same green
    even_weight,   ///< weight for weight
    brings_rest,   ///< a partner, of what the stand-in lacks in the dose of `role`

    // What a sheet settled.
    order_costs,   ///< the formula's order, `role`, against salt first; the bind of both
    order_chosen,  ///< the formula says none
    core_raised,   ///< from the formula's to the rule's
    wet_leaves,    ///< `foods` are thawed and not squeezed
    fine_scale,    ///< `foods` ask for one
    casing_named,  ///< the casing `role` is an ingredient; `about`: the animal that the formula does not hold
    kept_to_rule,  ///< the field `about` of the making; the formula's figure, then the most; `note` is the rule

    // What mending cannot do: `about` is what was tasted.
    too_much_plain,  ///< more plain mass than so many times what there is
    fault_in_meat,   ///< plain mass does not bring it down
    short_of_plain,  ///< so much of `foods`, against what there is
    nothing_brings,  ///< nothing that may come in
    none_of_it,      ///< the formula has nothing of that kind

    sets_cold,     ///< what binds only once it is cold; figures: bind and firmness, in the heat and served cold
    keeps_frozen,  ///< `note` is how; figures: grams that a kilo as picked gives, months
    table,         ///< how it differs at the table: `figures` in noticeable differences, `foods` missed, `note` the least like
};
std::string_view word(ReasonKind kind);

/// One quantity, before and after where it moves.
struct Figure {
    std::string what;              ///< "pH", "bind factor"
    std::optional<double> before;  ///< absent: there is only the one number
    double after = 0;
    std::string unit;                     ///< as shown; "g" and "C" follow the maker's units
    std::optional<double> low{}, high{};  ///< how far `after` may lie off, or the range it is held against

    friend bool operator==(const Figure&, const Figure&) = default;
};

struct Reason {
    ReasonKind kind = ReasonKind::balance;
    std::string role;                  ///< what the food is there for, where that matters
    std::vector<Figure> figures;       ///< the first is what the reason is about
    std::vector<std::string> asks;     ///< what the maker must see to, a sentence each
    std::string note;                  ///< of the stand-in, or the rule, as its record has it: quantities in braces, "{60 C}"
    std::vector<std::string> by_way;   ///< foods that the stand-in was found by way of
    std::string about{};               ///< the record or the demand that is spoken of
    std::vector<std::string> foods{};  ///< as the maker is told of them

    friend bool operator==(const Reason&, const Reason&) = default;
};

/// Of this kind, with these figures and foods, everything else empty.
Reason make_reason(ReasonKind kind, std::vector<Figure> figures = {}, std::vector<std::string> foods = {});

/// In words alone, for what has no kind of its own.
Reason said(std::string words);

/// Short, in the words of a bench; numbers only where a maker goes by them.
std::string in_brief(const Reason& reason, Units units = Units::metric);

/// The numbers behind it as well.
std::string in_full(const Reason& reason, Units units = Units::metric);

/// What to do about the making, told from the kind and the figures of `Edit::does`: "rest the mass at 0-2 C instead of 8 C".
std::string to_do(const Reason& reason, Units units = Units::metric);

/// Each in full, in metric.
std::vector<std::string> in_full(const std::vector<Reason>& reasons, Units units = Units::metric);

/// A sentence that was written in metric, with its temperatures, lengths and weights in the maker's units. What stands in braces
/// ("{2 C or colder}", "{core 73.9 C}") is a quantity for certain; of the rest a number with a unit behind it is taken for one, but for
/// shares ("2 g to the kilogram") and what is said in both already.
std::string in_units(const std::string& sentence, Units units);

}  // namespace standin
