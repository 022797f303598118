// Pieces that several HTML pages share.
#pragma once

#include <string>
#include <vector>

#include "render/extras.hpp"
#include "render/html/html.hpp"
#include "standin/engine.hpp"

namespace standin::cli {

/// A whole document: `kind` says what page it is ("bench sheet"), `lead` is the answer in a sentence or two, `rest` what follows.
std::string html_page(const std::string& kind, const std::string& title, const Markup& lead, const Markup& rest);

/// "2.35 (0.86-5.84)" with the bracket small and on a line of its own.
Markup stacked(const std::string& text);

/// A name from a formula, set apart from the writing direction of what stands around it: "spinach, blanched 2 min, squeezed".
Markup food(const std::string& name, const std::vector<std::string>& prepared = {});

Markup section(const Markup& heading, const Markup& content);
Markup bullets(const std::vector<Markup>& items);
/// A section of bullets; nothing where there are none.
Markup listing(const std::string& heading, const std::vector<std::string>& items);

/// A table with a caption and column heads; the first cell of each row heads it. Scrolls sideways where it must.
struct HtmlColumn {
    std::string head;
    bool number = false;
};
Markup html_table(const Markup& caption, const std::vector<HtmlColumn>& columns, const std::vector<std::vector<Markup>>& rows);

/// Allergens and cautions: on every page, near the top. `cook` is what to cook to, where it is known apart.
Markup safety_part(const std::string& cook, const std::vector<AllergenText>& allergens, const std::vector<CautionText>& cautions);
/// What is there for whoever wants to know more: folded up, or `open`.
Markup folded(const std::string& summary, const Markup& content, bool open);

/// What the reader of the formula took upon itself; nothing where that is nothing.
/// A paragraph each, before everything else.
Markup first_of_all(const std::vector<std::string>& sentences);
Markup read_as_list(const std::vector<std::string>& notes);
/// Names the folder of records laid over the built-in ones.
Markup own_records_note(const std::string& folder);
Markup cautions_list(const std::vector<CautionText>& cautions);

/// Named formulas side by side: raw, rested and cooked.
struct Shown {
    std::string name;
    const Prediction* prediction;
};
Markup swatches(const std::vector<Shown>& shown);

/// Each property as numbers and as bands on one axis. `differences`: of the second from the first, perhaps null.
Markup properties_table(const std::string& caption, const std::vector<Property>& properties, const std::vector<Shown>& shown,
                        const PerProperty<Band>* differences);

/// The few properties that a maker goes by, in one such table.
Markup bench_properties(const std::vector<Shown>& shown);

/// Every property that has something in it, in two such tables: what is met at the table, and what it is made of.
Markup all_properties(const std::vector<Shown>& shown);

/// Who brings what: green, heat, acid, salt, fat.
Markup origins(const Prediction& prediction);

/// The ingredient list; with what goes beside it, the nutrition as a table or in a paragraph.
Markup label_part(const std::string& label, const Extras& beside, bool table);
Markup freezing_part(const Extras& beside, Units units);
Markup glut_part(const Extras& beside, Units units);

}  // namespace standin::cli
