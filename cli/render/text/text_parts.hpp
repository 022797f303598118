// Pieces that several pages share. Each ends its last line.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "render/detail.hpp"
#include "render/union.hpp"
#include "standin/prediction.hpp"
#include "table.hpp"
#include "words.hpp"

namespace standin::cli {

std::string heading(const std::string& text, const Look& look);
std::string paragraph(const std::string& text, const Look& look, int indent = 2);
/// "- text", wrapped under itself.
std::string bullet(const std::string& text, const Look& look, int indent = 2);
/// A heading over bullets; nothing where there are none.
std::string bulleted(const std::string& head, const std::vector<std::string>& items, const Look& look);

/// "5.31 (5.12-5.52)" in the property's own decimals.
std::string shown(Property property, const Band& band);
/// "salt, % of meat".
std::string name_with_unit(Property property);

/// "chard, blanched 3 min, squeezed".
std::string with_preparations(const std::string& name, const std::vector<std::string>& prepared);

/// "medium heat", "no heat to speak of".
std::string heat_phrase(const std::string& word);

/// The word of that step, of `Prediction::heat_chances`, as the phrase has it: "strong" of "strong heat".
std::string heat_degree(std::size_t step);
/// The chance of the heat word of the prediction.
std::string heat_and_chance(const Prediction& prediction);

/// What to say on a label, each with the codes that want it.
std::vector<std::pair<std::string, std::string>> declarations(const AllergenText& allergen);

/// Whether a maker goes by it at the bench; the others are there for whoever wants to know more.
bool at_the_bench(Property property);

/// "Cook to 71.1 C (160 F) in the middle, measured. Allergens: milk and egg.", which holds for all that the page shows; `which` says so.
std::string safety_first(const std::string& core, const std::vector<AllergenText>& allergens, const Look& look,
                         const std::string& which = "");

/// What it costs, where a price list is at hand; the full page also tells of what.
std::string cost_part(const Prediction& prediction, const Detail& detail, const Look& look);
/// Shares to name, lines to fill in and the nutrition table; short: that table in one paragraph.
std::string label_part(const std::string& ingredients, const Detail& detail, const Look& look);
/// What the freezer does to the raw mass.
std::string freezing_part(const Extras& beside, Units units, const Look& look);
/// What of a glut keeps in the freezer, and how.
std::string glut_part(const Extras& beside, Units units, const Look& look);

/// Names the folder of records laid over the built-in ones; empty where there is none.
std::string own_records_sentence(const std::string& folder);
std::string own_records(const std::string& folder, const Look& look);

/// What the reader of the formula took upon itself; empty when nothing.
/// A paragraph each, before everything else.
std::string first_of_all(const std::vector<std::string>& sentences, const Look& look);
std::string read_as_part(const std::vector<std::string>& notes, const Look& look);
/// The same short: no block where there is nothing, what is said of every batch in one paragraph and last, sources left to the full page.
std::string safety_in_brief(const std::vector<AllergenText>& allergens, const std::vector<CautionText>& cautions, const Look& look);
std::string allergens_part(const std::vector<AllergenText>& allergens, const Look& look);
std::string cautions_part(const std::vector<CautionText>& cautions, const Look& look, const std::string& head = "Mind");
/// Cold, hands, core and the like: said of every batch alike.
bool is_of_every_batch(const std::string& caution);

/// The same over several batches: what only the original asks for stands short behind it.
std::string safety_first(const Together& all, const Look& look);
std::string safety_in_brief(const Together& all, const Look& look);
/// Each in full.
std::string safety_in_full(const Together& all, const Look& look);

}  // namespace standin::cli
