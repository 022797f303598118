// What an answer says and why, as facts; and the sentence that tells it, in the maker's units.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace standin {

enum class Units { metric, us, both };

enum class ReasonKind {
    stands_in,         ///< a stand-in for a line: its dose against the line's, how close it is
    not_there,         ///< nothing of the line is to be had, or only so much
    unwanted,          ///< the maker asked for none of it
    less_acid,         ///< less acid lets the meat bind
    sourness,          ///< the line moves it, or holds it
    heat,              ///< likewise
    salt,              ///< likewise
    fat,               ///< likewise
    green,             ///< likewise
    drier_paste,       ///< less loose water dilutes the meat's protein less
    balance,           ///< follows the other changes
    binder,            ///< holds loose water
    addition,          ///< brings the dose of its role
    order,             ///< salt and lean first
    mixing,            ///< longer
    cold,              ///< colder while mixing
    plate,             ///< another grinder plate
    rest,              ///< a shorter rest
    rest_cold,         ///< a colder one
    core,              ///< no hotter than needed
    short_blanch,      ///< of `foods`, for fewer minutes
    squeeze,           ///< `foods`, after blanching; `about` "raw": blanch them first, "grated": once grated
    seeds_in,          ///< of `foods`, which were to be seeded
    cook_through,      ///< the meat that comes in asks for more heat
    acid_loosens,      ///< acid, for who wants it looser; `role` is "wet" where water comes with it
    less_binder,       ///< less of what sets it, for who wants it looser
    salt_late,         ///< no salt on the lean before the rest is in, likewise
    serves,            ///< by itself it moves what a want is about; the figure is that property
    keeps_weight,      ///< meat that weighs more or less so that the meat of the batch does not
    lean_comes_along,  ///< as much lean comes in with the fat

    // What is said of a batch. `about` is the id of the record that calls for it, where there is one.
    caution,        ///< `note` is the rule, `foods` call for it; figures: "value" and "limit" where it compares
    stretched,      ///< a model beyond what it was made for: `about` names the limit, the figure has the range it was made for
    shape_unknown,  ///< a width was named, which moves no figure of the cook loss
    cold_green,     ///< the fading of the green in the cold, extrapolated from the figure on
    leaf_cut,       ///< nobody says how the raw leaf `foods` is cut; `role` is what is presumed: chopped, partly, blended, ground
    warms_slowly,   ///< why no figure of what the cook kills
    no_table,       ///< likewise
    table_ends,     ///< likewise; the figure is the hottest row
    kills,          ///< log reductions by a cook; `role` is "measured" where by the maker's own readings
    keeps_green,    ///< hours of rest; further figures: what would keep it longer

    // What `adapt` answers.
    want,                  ///< `about` as asked; the property before and after, then what it was to be and the slack
    scaled_as_asked,       ///< to this much meat; the share of the batch last
    scaled_to_list,        ///< up to the end of this much of `foods`
    scaled_to_meat,        ///< this much of `foods` where so much was asked
    presumed_there,        ///< `foods` are not on the list
    taken_for_enough,      ///< nobody weighed `foods`; figure: the guess, and what the formula takes, as bought
    presumed_missing,      ///< the first of `foods` is not on the list, the others are
    all_that_is_there,     ///< "nothing else" was said, and `foods` taken to be there all the same
    only_the_list,         ///< nothing comes in but what the list names
    comes_back_as_aroma,   ///< sharpness from `foods`, so much in a kilo
    makes_room,            ///< for what else brings the same
    comes_back_as_allium,  ///< garlic and onion, with so much of `foods` that is on hand
    comes_back_as_bite,    ///< heat without chile; a figure for each food, grams in a kilo
    salt_would_bind,       ///< so little salt that nothing else binds as well; figures: salt, the salt to add, bind and cook loss with it
    part_way,              ///< the whole of what was asked would be another sausage: this goes as far as it stays this one
    goes_away,             ///< the first variant is further from `about` than the formula, and so `note`; figures: it, what would do
    trimmed_of,            ///< the first of `foods` is the second, of the list, with its fat or its skin off
    by_making,             ///< nothing is weighed anew: the making alone goes most of the way
    comes_back_outside,    ///< sharpness, with acid that is not in the mass
    acid_to_hold,          ///< still too sour to hold; figures: the pH where it does, then how much of each acid it has there
    not_green_yet,         ///< greener and not green; figure: grams of `foods` that make it so, and their share; none: no leaf does
    demand,                ///< one of the demands that cannot all be met: `about` as the maker put it
    short_of,              ///< the list is one; figures: each line that is short, what is there against what is asked
    giving_up,             ///< the demand `about`
    more_on_hand,          ///< of what is short; the figure is the size of the batch that the meat makes
    so_much_on_hand,       ///< of `foods`, in place of what there is
    said,                  ///< in the words of `note` alone
    not_known_here,        ///< on hand, and set aside
    no_new_allergens,      ///< none that is not in the formula may come in
    within_reach,          ///< how near the want `about` can be come to; figures: now, asked for, alone, beside; `role`: where it is met
    held_at_most,  ///< `foods` go no further: `role` "list" all there is, "kilo" what one takes, "new" or "binders" the share of the batch
    stopped_before,      ///< the search was stopped before it found a plan
    none_within_limits,  ///< no plan meets every want
    nothing_to_taste,    ///< giving up the want `about`: the batch has none of the first of `foods`
    giving_up_one,       ///< of the demands
    weight_for_weight,   ///< the maker's own idea, unbalanced: `foods` for each other; `note` is the verdict
    weighing_it_apart,   ///< in a formula of the maker's own

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
    width_unsaid,  ///< the `role`, title or casing, speaks of links, and nothing says how wide
    kept_to_rule,  ///< the field `about` of the making; the formula's figure, then the most; `note` is the rule

    // What mending cannot do: `about` is what was tasted.
    too_much_plain,  ///< more plain mass than so many times what there is
    fault_in_meat,   ///< plain mass does not bring it down
    short_of_plain,  ///< so much of `foods`, against what there is
    nothing_brings,  ///< nothing that may come in
    none_of_it,      ///< the formula has nothing of that kind

    // What is told of a list beside the search.
    asks_of_making,        ///< a stand-in, `foods`, left out for `asks`, which the formula's own making goes against
    too_heavy,             ///< likewise, for so many times the weight that it would take
    makes_up_liquid,       ///< water beside a stand-in
    kept_by_packet,        ///< `foods` stay as the maker asks, though a bought one may hold what is left out
    off_the_list,          ///< of the list `foods` are not taken, for they are what is left out
    perhaps_off_the_list,  ///< likewise, for they may hold it as bought
    list_tells_of_it,      ///< the list itself says, in the words `about`, that `foods` hold what is left out
    only_that_food,        ///< only the food named is left out, not all with the allergens `foods`
    against_each_other,    ///< the first of `foods` is asked for and left out by the word `about`; the others are allergens it brings

    // How large a sheet is, and what stands on its label.
    as_the_formula,     ///< not scaled
    to_meat,            ///< to so much meat, `about` as asked
    to_total,           ///< to so much in all, likewise
    as_far_as,          ///< as far as `about` goes
    named_in_title,     ///< why a share is named
    meat_named,         ///< likewise, under the name of the meat
    meat_always_named,  ///< likewise, by law
    fat_named_apart,    ///< likewise, fat beyond what the word meat covers

    // What an answer rests on that is not known.
    not_known_well,    ///< `about`: the quantity; `role`: what of it, `foods`: whose
    effect_not_known,  ///< likewise of what is done, `foods`, to a food
    worth_measuring,   ///< `about`: what of `foods` (`role` where of a piece or a bunch); the figure is the usual one

    // What a title promises, and a casing. `about` is the id of the caution.
    title_raw,             ///< eaten raw, in the words `role`
    title_not_fresh,       ///< cured, dried, fermented, smoked or kept, in the words `role`
    title_broken,          ///< `role` is promised, and `foods` break it
    title_of_no_allergen,  ///< likewise, of no allergen at all
    title_to_be_shown,     ///< nothing breaks `role`, and lines alone do not keep it
    title_of_diet,         ///< likewise; `note` is what the record of the diet says
    title_without_animal,  ///< of the animal `role` there is no line; the meat is `foods`
    title_beside_animal,   ///< beside the animals `role` there are `foods`
    casing_of_animal,      ///< `foods` is of `by_way`, which the mass is not; `role` "perhaps" where that is not sure
    own_records,           ///< the folder `role` is laid over the knowledge
    cap,                   ///< a legal limit, `note`; figures: "value", "limit", "with liquids"; `role`: under, over, nearly, as counted

    sets_cold,     ///< what binds only once it is cold; figures: bind and firmness, in the heat and served cold
    keeps_frozen,  ///< `note` is how; figures: grams that a kilo as picked gives, months
    table,         ///< how it differs at the table: `figures` in noticeable differences, `foods` missed, `note` the least like

    // What is told in a step of a sheet besides its task (`BenchTask`).
    own_board,       ///< of raw meat
    not_rinsed,      ///< raw poultry
    gloves_for,      ///< `foods` burn the skin
    seeds_first,     ///< into the blender
    rests_too_long,  ///< the formula's figure; raw it does not keep that long
    done_at,         ///< the figure is the core, and how long it must stay there
    asked_of_it,     ///< `note`: what a stand-in, `foods`, asks of whoever handles it

    // What a reader took upon itself. `foods`: what was read; `about`: the words as written.
    meant_as,            ///< a word that leaves the kind open
    usual_by_spoon,      ///< presumed to be the dry one
    dried_by_share,      ///< there is too little of it to be the fresh one
    fresh_by_share,      ///< there is too much of it to be the dried one
    not_the_other,       ///< the first of `foods`, and not the second
    from_container,      ///< kept in a `role`
    form_not_known,      ///< likewise, and read as fresh
    packed_leaves,       ///< how firmly differs
    by_measure,          ///< the weight of a `role`, of which the figure is that of the line; `about` "crystals" where these differ
    measure_of_country,  ///< a `role` taken as that of one country; the figures are millilitres there and elsewhere
    middle_of_range,
    passed_unknown,  ///< not known here
    passed_over,
    counted_allergen,    ///< `about` says that it holds one
    hazard_told,         ///< `note` is what the lexicon says of the words, `role` its kind of danger
    cooked_too_cool,     ///< the method cooks in a heat, the figure, that no middle gets done in
    title_told,          ///< likewise, of the title
    outside_counted_in,  ///< what is said to stay outside
    optional_counted_in,
    weights_differ,  ///< the first is taken
    per_by_heading,  ///< reckoned per so much, `role`: of meat or batch
    amounts_per,     ///< likewise, all under the heading `about`
    unit_presumed,   ///< a number without a unit, in the unit `about`: `role` "heading" where one says so, else it is asked
    first_of_two,    ///< of "X or Y", `about`, the first is taken, the first of `foods`
    share_presumed,  ///< of meat or batch, `role`, where the line does not say; `about` and `note`: the one and the other in words
    fat_as_said,
    fact_as_said,    ///< `about` what the line says
    with_its_skin,   ///< the figure is its fat
    cut_not_apart,   ///< `about` is the cut; the figure is the fat of its meat as a whole
    heat_of_dried,   ///< figures: SHU of the dried pod, mg/kg in the fresh one
    tin_with_water,  ///< the figure is what is left, drained; `role`: the can or jar
    tin_to_drain,    ///< likewise
    tin_with_brine,
    bought_pickled,
    bought_dried,
    bought_salted,
    soaked_as_water,    ///< the second of `foods` is not counted
    soaked_counted_in,  ///< all of the liquid `foods`; `role` "squeezed" where some comes out again
    slip_mended,        ///< `about` for `note`
    translated,         ///< in English `about`; `role` "word for word"
    likened,            ///< the first of `foods` is not known here and goes by the second
    weighed_by_rest,    ///< a share of the lines that were understood
    shares_of_sheet,    ///< what all percentages are of, `role`: meat, batch or the first lines; so much, by the line `about` or presumed
    weighed_by_sheet,   ///< likewise, a line of them
    from_table,         ///< the column `about` is read; `foods` are those that are not
    several_in_line,    ///< `about` is read as the lines `foods`
    other_tongue,       ///< the lines `foods`; the figure counts the others
    of_the_recipe,      ///< likewise
    headings,           ///< likewise: they say what stands below them, or how much it makes
    allergen_beside,    ///< `role` is named beside the lines and by none
    meat_beside,        ///< likewise a meat
    part_of_method,
    method_kept,  ///< so many steps
    from_method,  ///< figures of the making, `foods` with what is done to them
    // What stands among the lines and is not in the mass: `about`, the line, where that is not told already
    casing_beside,    ///< it holds the mass
    wrapping_beside,  ///< caul
    goods_beside,     ///< twine
    purpose_beside,   ///< a food that is for something else by the words of its line, `note`
    kitchen_fact,     ///< `note` tells it

    // Likewise of a list of what is on hand.
    taken_as_amount,  ///< `about` as `note`
    whichever_it_is,  ///< any of `foods`
    juice_and_zest,
    takes_in,           ///< `foods`, or the kind that `note` tells
    says_nothing_of,    ///< no word against `foods`
    of_the_formula,     ///< the formula's `foods`
    dried_unless_leaf,  ///< `about` would be the leaf
    both_are_one,       ///< `about` on hand and `note` not, and both are `foods`; `role` "fruit": `note` is the fruit of that juice
    list_is_all,
    list_is_beside,   ///< the rest is there
    list_heading,     ///< `role` "none": of what is not on hand
    stock_weight,     ///< the figure is as picked or bought; `role` "whole" where it is not
    stock_unweighed,  ///< `role`: "none", "plenty" or "untold"; a figure counts `foods` where they are many
    set_aside,        ///< not known, `note` says how
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

/// Whether it says anything at all; one that was never made does not.
bool is_told(const Reason& reason);

/// Of this kind, with these figures and foods, everything else empty.
Reason make_reason(ReasonKind kind, std::vector<Figure> figures = {}, std::vector<std::string> foods = {});

/// Likewise, of `about`.
Reason reason_about(ReasonKind kind, std::string about, std::vector<std::string> foods = {});

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
