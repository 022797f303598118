// The lists of knowledge/lexicon by type. A new list needs its name here twice, in the order of the letters, and its record; the packer
// names one that has no words.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "knowledge/records/lexicon.hpp"
#include "knowledge/records/vocabulary.hpp"

namespace standin {

// clang-format off
enum class WordList : std::uint16_t {
    about_a_share, about_in_brackets, accented_ending_of_state, acid_of_a_strength, age_ending, age_of_what_keeps, aged_word,
    allergic_people, allergy_ending, allergy_in_general, allergy_word, animal_behind_cut, another_kind, article, aside, aside_behind_or,
    aside_behind_to, asks_kindly, asks_to_add, at_a_heat, at_least, at_most_a_share, at_table, base_word, batch_ph, bears_food,
    before_a_figure, before_a_heat, before_a_name, before_batch_size, before_ph, behind_a_bought_skin, behind_an_age, behind_batch_size,
    bench_task, beside_a_name, beside_a_state, beside_plate, between_share_and_fat, binds_when_mixed, birthday_word, blanching_word,
    blending_word, but_there_is, cannot_eat, casing_beside, casing_word, changes_food, chopping_word, clause_start, coat_purpose,
    cold_place, column_amount, column_name, column_note, column_other, column_prepared, column_unit, contact_word, content_join,
    content_of_fat, cook_as_oven, cook_as_pan, cook_grill, cook_loose, cook_oven, cook_pan, cook_poach, cook_smoked, cook_until_tender,
    cooked_lightness, cooked_state, cooking_word, core_key, core_word, counting_word, country_of_measure, crushed_coarsely, currency, cut,
    cut_of_meat, cut_while_fresh, dark_colour, day_word, degree_word, denies_a_choice, denies_bearing, done_word, dry_form, each, each_of,
    eaten_raw, eaters_kitchen, eaters_word, eats_halal, eats_kosher, eats_with_us, egg_white_word, egg_yolk_word, elided,
    ending_of_adjective, ending_of_state, extra_amount, fact_of, fact_verb, fat_word, feast_of_guests, feast_or_street, finely_word,
    for_a_base, for_guests, for_kin, free_ending, free_of_nuts, fresh_however_little, from_days_ago, from_hour, frozen_state, garden_bed,
    goes_before, goes_behind, goes_in_first, goes_in_last, gone_word, great_age_word, greens_word, grinding_word, ground_to_powder,
    growing_word, gut, half_of, hardly_mixed, harms_somebody, has_in_it, heading, heading_line, heading_word, heads_what_is_left,
    herbs_word, holding_word, holds_it, hour_word, idle_end, idle_opening, idle_start, in_place_of, in_place_of_food, inch_word, inside_it,
    joins_a_name, joins_amounts, joins_foods_each, joins_kin, keeping_warm_word, keeps_word, kin_who_eat, kitchen_goods, kitchen_of_lemons,
    kitchen_of_limes, leads_an_age, leads_on, leads_to_the_next, leads_to_with, leaf_when_much, lean_word, leaves_fat_open, leaves_open,
    left_of_food, left_out_of_it, left_over_word, liked_by, link_word, list_occasion, lives_by, long_while, mass_word, may_stand_warm,
    method_heading, method_verb, method_word, milky_word, millimetre_word, minute_word, mixes_with, mixing_no_time, mixing_none,
    mixing_word, month_of_age, months_of_ripening, names_a_sort, names_also, names_kind, names_the_sausage, nearly_full, never_aside,
    never_plain, next_stay, night_word, no_allergen_promise, no_ground_spice, no_promise, no_slip, nobody_word, not_cooked_yet,
    not_done_word, not_fresh, not_made_of, numbers_a_version, of_each, of_the_mind, offal_word, old_age_word, old_behind_age,
    order_acid_first, order_acid_last, other_food, outside_purpose, pack_joint, pack_word, packet_word, page_word, pan_fat, pan_loss,
    part_of_food, part_only, participle_end, participle_start, passed_over, paste_word, peeling_word, per, per_word, percent_word,
    perhaps_word, person_of_an_age, person_word, piece_shape, piece_size, place_behind_a_name, place_of_guests, place_of_origin,
    place_of_the_small, plain_remark, plant_condition, plate_word, plumps_in, pod_colour, pods_as_usual, pods_fiery, pods_hot, pods_mild,
    pronoun, put_in, quarter_of, raw_lightness, remark_key, remark_opening, remark_source, remark_verb, remark_word, rest_word,
    ripened_word, roasting_word, said_of_liquid, scale_step, seasoning_heading, second_word, serving_word, shape_of_each, share_full,
    sheet_of_meat, sheet_size, sheet_total, single_piece, skin_by_length, skin_that_holds_sausage, small_age_word, so_much_left, soaks,
    some_of_another, some_of_it, sour_word, squeezing_word, steeps_meat, still_there, stock_asks, stock_closing, stock_doubt, stock_few,
    stock_half, stock_heading, stock_joint, stock_leaf_part, stock_little, stock_loose, stock_no_abroad, stock_none, stock_none_after,
    stock_none_heading, stock_of_plant, stock_opening, stock_other_part, stock_plenty, stock_some, stock_title_word, stock_when,
    stood_there, strength_word, style_word, sweating_word, takes_its_kind, takes_part_away, taste_word, tells_form, tells_its_form,
    tells_of_state, test_piece, thaw_word, thawed_cold, thawed_when, thermometer_word, thing_of_a_number, thing_of_an_age, thing_of_kin,
    third_of, this_crop, three_or_more, three_quarters_of, tick_word, title_for_whom, title_free_of, title_is_free, title_join,
    title_of_a_person, title_suits, title_without, to_hour, toasting_word, trimmed_off, turns_of_age, turns_to_another, two_thirds_of,
    unit_heading, until_word, up_to_a_heat, vague, very_word, votes_word, warm_place, was_frozen, weighed_when_done, weighed_when_trimmed,
    weighed_word, who_stands, whole_animal, whole_batch, whole_mass_word, whole_meat, wild_name, wilting_word, with_bone, with_word,
    wrapping, wrapping_verb, wrung_word, year_word, yield_heading
};

template <>
struct Words<WordList> {
    static constexpr std::array<std::string_view, 367> all{
        "about-a-share", "about-in-brackets", "accented-ending-of-state", "acid-of-a-strength", "age-ending", "age-of-what-keeps",
        "aged-word", "allergic-people", "allergy-ending", "allergy-in-general", "allergy-word", "animal-behind-cut", "another-kind",
        "article", "aside", "aside-behind-or", "aside-behind-to", "asks-kindly", "asks-to-add", "at-a-heat", "at-least", "at-most-a-share",
        "at-table", "base-word", "batch-ph", "bears-food", "before-a-figure", "before-a-heat", "before-a-name", "before-batch-size",
        "before-ph", "behind-a-bought-skin", "behind-an-age", "behind-batch-size", "bench-task", "beside-a-name", "beside-a-state",
        "beside-plate", "between-share-and-fat", "binds-when-mixed", "birthday-word", "blanching-word", "blending-word", "but-there-is",
        "cannot-eat", "casing-beside", "casing-word", "changes-food", "chopping-word", "clause-start", "coat-purpose", "cold-place",
        "column-amount", "column-name", "column-note", "column-other", "column-prepared", "column-unit", "contact-word", "content-join",
        "content-of-fat", "cook-as-oven", "cook-as-pan", "cook-grill", "cook-loose", "cook-oven", "cook-pan", "cook-poach", "cook-smoked",
        "cook-until-tender", "cooked-lightness", "cooked-state", "cooking-word", "core-key", "core-word", "counting-word",
        "country-of-measure", "crushed-coarsely", "currency", "cut", "cut-of-meat", "cut-while-fresh", "dark-colour", "day-word",
        "degree-word", "denies-a-choice", "denies-bearing", "done-word", "dry-form", "each", "each-of", "eaten-raw", "eaters-kitchen",
        "eaters-word", "eats-halal", "eats-kosher", "eats-with-us", "egg-white-word", "egg-yolk-word", "elided", "ending-of-adjective",
        "ending-of-state", "extra-amount", "fact-of", "fact-verb", "fat-word", "feast-of-guests", "feast-or-street", "finely-word",
        "for-a-base", "for-guests", "for-kin", "free-ending", "free-of-nuts", "fresh-however-little", "from-days-ago", "from-hour",
        "frozen-state", "garden-bed", "goes-before", "goes-behind", "goes-in-first", "goes-in-last", "gone-word", "great-age-word",
        "greens-word", "grinding-word", "ground-to-powder", "growing-word", "gut", "half-of", "hardly-mixed", "harms-somebody",
        "has-in-it", "heading", "heading-line", "heading-word", "heads-what-is-left", "herbs-word", "holding-word", "holds-it",
        "hour-word", "idle-end", "idle-opening", "idle-start", "in-place-of", "in-place-of-food", "inch-word", "inside-it", "joins-a-name",
        "joins-amounts", "joins-foods-each", "joins-kin", "keeping-warm-word", "keeps-word", "kin-who-eat", "kitchen-goods",
        "kitchen-of-lemons", "kitchen-of-limes", "leads-an-age", "leads-on", "leads-to-the-next", "leads-to-with", "leaf-when-much",
        "lean-word", "leaves-fat-open", "leaves-open", "left-of-food", "left-out-of-it", "left-over-word", "liked-by", "link-word",
        "list-occasion", "lives-by", "long-while", "mass-word", "may-stand-warm", "method-heading", "method-verb", "method-word",
        "milky-word", "millimetre-word", "minute-word", "mixes-with", "mixing-no-time", "mixing-none", "mixing-word", "month-of-age",
        "months-of-ripening", "names-a-sort", "names-also", "names-kind", "names-the-sausage", "nearly-full", "never-aside", "never-plain",
        "next-stay", "night-word", "no-allergen-promise", "no-ground-spice", "no-promise", "no-slip", "nobody-word", "not-cooked-yet",
        "not-done-word", "not-fresh", "not-made-of", "numbers-a-version", "of-each", "of-the-mind", "offal-word", "old-age-word",
        "old-behind-age", "order-acid-first", "order-acid-last", "other-food", "outside-purpose", "pack-joint", "pack-word", "packet-word",
        "page-word", "pan-fat", "pan-loss", "part-of-food", "part-only", "participle-end", "participle-start", "passed-over", "paste-word",
        "peeling-word", "per", "per-word", "percent-word", "perhaps-word", "person-of-an-age", "person-word", "piece-shape", "piece-size",
        "place-behind-a-name", "place-of-guests", "place-of-origin", "place-of-the-small", "plain-remark", "plant-condition", "plate-word",
        "plumps-in", "pod-colour", "pods-as-usual", "pods-fiery", "pods-hot", "pods-mild", "pronoun", "put-in", "quarter-of",
        "raw-lightness", "remark-key", "remark-opening", "remark-source", "remark-verb", "remark-word", "rest-word", "ripened-word",
        "roasting-word", "said-of-liquid", "scale-step", "seasoning-heading", "second-word", "serving-word", "shape-of-each", "share-full",
        "sheet-of-meat", "sheet-size", "sheet-total", "single-piece", "skin-by-length", "skin-that-holds-sausage", "small-age-word",
        "so-much-left", "soaks", "some-of-another", "some-of-it", "sour-word", "squeezing-word", "steeps-meat", "still-there",
        "stock-asks", "stock-closing", "stock-doubt", "stock-few", "stock-half", "stock-heading", "stock-joint", "stock-leaf-part",
        "stock-little", "stock-loose", "stock-no-abroad", "stock-none", "stock-none-after", "stock-none-heading", "stock-of-plant",
        "stock-opening", "stock-other-part", "stock-plenty", "stock-some", "stock-title-word", "stock-when", "stood-there",
        "strength-word", "style-word", "sweating-word", "takes-its-kind", "takes-part-away", "taste-word", "tells-form", "tells-its-form",
        "tells-of-state", "test-piece", "thaw-word", "thawed-cold", "thawed-when", "thermometer-word", "thing-of-a-number",
        "thing-of-an-age", "thing-of-kin", "third-of", "this-crop", "three-or-more", "three-quarters-of", "tick-word", "title-for-whom",
        "title-free-of", "title-is-free", "title-join", "title-of-a-person", "title-suits", "title-without", "to-hour", "toasting-word",
        "trimmed-off", "turns-of-age", "turns-to-another", "two-thirds-of", "unit-heading", "until-word", "up-to-a-heat", "vague",
        "very-word", "votes-word", "warm-place", "was-frozen", "weighed-when-done", "weighed-when-trimmed", "weighed-word", "who-stands",
        "whole-animal", "whole-batch", "whole-mass-word", "whole-meat", "wild-name", "wilting-word", "with-bone", "with-word", "wrapping",
        "wrapping-verb", "wrung-word", "year-word", "yield-heading"
    };
};
// clang-format on

static_assert(std::is_sorted(Words<WordList>::all.begin(), Words<WordList>::all.end()));
static_assert(static_cast<std::size_t>(WordList::yield_heading) + 1 == count_of<WordList>);

}  // namespace standin
