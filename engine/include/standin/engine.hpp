// The engine behind one door: knowledge in, answers out. Everything here is a value; nothing prints, logs or exits.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "standin/advice.hpp"
#include "standin/formula.hpp"
#include "standin/kitchen.hpp"
#include "standin/paper.hpp"
#include "standin/prediction.hpp"
#include "standin/reading.hpp"
#include "standin/result.hpp"
#include "standin/sheet.hpp"
#include "standin/why.hpp"

namespace standin {

struct Options {
    std::string knowledge_folder;  ///< overlay; empty: only what is built in
    std::string rules;             ///< code of the rule set that judges caps; empty: general cautions only, allergens of every code
    std::size_t draws = 512;
    std::uint64_t seed = 1;
    std::optional<int> month;  ///< 1-12: `swaps` tells what is out of season, `adapt` brings in only what is in season or on hand
    int season_shift = 0;      ///< months that seasons lie later than in the temperate north; 6 in the south
    std::function<void(std::string_view)> log;                     ///< one line; absent: silent
    std::function<bool(std::size_t plans, double best)> progress;  ///< during a search; false stops it with the best so far
};

/// What one question asks otherwise than the options; absent: as they say.
struct Setting {
    std::optional<std::string> rules;
    std::optional<int> month, season_shift;
    std::function<bool(std::size_t plans, double best)> progress;
};

/// The knowledge about one ingredient, ready to be shown.
struct Fact {
    std::string what;
    Band value;
    std::string unit, source, cite, kind;
};

struct SwapFact {
    Role role = Role::green;
    std::string from, to, basis, note, source;
    std::vector<std::string> prepared, needs;
    double closeness = 0;
};

struct IngredientFacts {
    std::string id, family, latin, note, storage, stand_in;
    std::vector<std::string> names;
    std::vector<Role> roles;
    std::vector<Fact> composition;  ///< per 100 g: water_g, protein_g, ...
    std::vector<Fact> doses;        ///< chlorophyll, capsaicinoids, acid, binding, ...
    std::vector<Fact> measures;
    std::vector<std::pair<std::string, double>> aroma;
    std::vector<int> season;
    std::vector<SwapFact> swaps_out, swaps_in;
    std::vector<std::string> allergens;
    std::vector<std::string> may_hold;                         ///< allergens that a bought one often holds: the packet decides
    std::vector<CautionText> cautions;                         ///< what must be minded of this food; not what is said of every batch
    std::vector<std::pair<std::string, std::string>> sources;  ///< id, citation
};

struct LookupAnswer {
    std::vector<IngredientFacts> matches;
    std::vector<std::string> nearest;  ///< when nothing matches
    std::string refused{};             ///< why this is never to go into a batch; empty: nothing known against it
    std::string read_as{};             ///< how a word that leaves the kind open is read in a formula; empty: it is a name
    std::string question{};            ///< what must be said first: the word means several foods, which stand in `nearest`
};

/// No error, but worth a second look.
struct CheckWarning {
    std::string kind;     ///< short and stable, the same for all of a kind; empty: a warning by itself
    std::string says;     ///< what all of the kind have in common
    std::string about;    ///< a few words for lists
    std::string message;  ///< the whole of it
    std::string where;    ///< file:line:column, or the record
    std::vector<std::string> hints;
};

struct FileCheck {
    std::string file, kind;  ///< formula, inventory, kitchen, prices, knowledge
    bool ok = true;
    bool laid_over = false;  ///< knowledge that does not stand alone: judged laid over what is built in
    std::vector<Error> errors;
    std::vector<CheckWarning> warnings;  ///< those of a kind stand together
};

struct KnowledgeCounts {
    std::size_t ingredients = 0, names = 0, preparations = 0, swaps = 0, derived_swaps = 0, rules = 0;
    std::size_t published = 0, common_practice = 0, from_memory = 0, judgement = 0;
};

/// How many numbers about one thing (composition, pigment, ...) come from each kind of source.
struct Coverage {
    std::string group;
    std::size_t published = 0, common_practice = 0, from_memory = 0, judgement = 0;
};

struct CheckAnswer {
    std::vector<FileCheck> files;
    std::optional<KnowledgeCounts> counts;  ///< when a knowledge folder was among them
    std::vector<Coverage> coverage;         ///< with the counts: every number once
    std::vector<Coverage> by_role;          ///< with the counts: the numbers that set the doses, a row for each currency of a role
};

/// The maker's words for one food.
struct OwnWords {
    std::string ingredient;  ///< id
    std::string written;     ///< the line, or the list, that names it
};

/// Answers questions without changing: any number of threads may ask one engine at once.
class Engine {
public:
    static Result<Engine> open(Options options);
    Engine(Engine&&) noexcept;
    Engine& operator=(Engine&&) noexcept;
    ~Engine();

    /// The facts of a maker's own kitchen, a line each.
    Result<Kitchen> read_kitchen(std::string_view text, std::string_view file) const;
    /// This engine with those facts in place of the general figures. Caps, cautions, allergens and what is said of killing stay those of
    /// the general figures as well. Everything after, reading of formulas too, should go by that engine.
    Result<Engine> with_kitchen(const Kitchen& kitchen) const;

    /// This engine calling foods as the maker does: of each the name by which it stands in the maker's own words, where that is another
    /// name of its record. Allergens, cautions and figures stay those of the record.
    Engine speaking_as(const std::vector<OwnWords>& said) const;

    /// Text to values; `file` names it in messages.
    Result<Formula> read_formula(std::string_view text, std::string_view file) const;
    /// The same, line by line: what was understood, how surely, and what is asked back.
    Result<FormulaReading> read_closely(std::string_view text, std::string_view file) const;
    /// With the formula that it is meant for, a word of the list is first looked for among its lines.
    Result<Inventory> read_inventory(std::string_view text, std::string_view file, const Formula* formula = nullptr) const;
    /// Whether a text is a list of what is on hand and no formula.
    bool is_stock(std::string_view text, std::string_view file) const;
    std::string formula_json(const Formula& formula) const;
    std::string formula_jsonld(const Formula& formula) const;
    std::string formula_text(const Formula& formula, Amounts amounts = Amounts::as_written) const;

    Result<Prediction> predict(const Formula& formula, const Setting& setting = {}) const;
    /// What moves `property` of the batch and what makes its band wide.
    Result<WhyAnswer> why(const Formula& formula, Property property, const Setting& setting = {}) const;
    Result<WhyAnswer> why(const Formula& formula, ColourPart part, const Setting& setting = {}) const;
    /// Any number of formulas, each predicted from the same draws.
    Result<CompareAnswer> compare(const std::vector<Formula>& formulas, const Setting& setting = {}) const;
    /// `line` is a name or the number (from 1) of a line.
    Result<SwapsAnswer> swaps(const Formula& formula, std::string_view line, const SwapsRequest& request = {},
                              const Setting& setting = {}) const;
    Result<AdaptAnswer> adapt(const Formula& formula, const AdaptRequest& request, const Setting& setting = {}) const;

    Result<Sheet> sheet(const Formula& formula, const SheetRequest& request, const Setting& setting = {}) const;

    /// The rest of the draft label, and what the freezer does to the mass.
    Result<Paper> paper(const Formula& formula, const Setting& setting = {}) const;
    /// A line a food and what it costs.
    Result<PriceList> read_prices(std::string_view text, std::string_view file) const;
    /// What the batch, a kilo and a link or patty cost; `makes` says how large a piece is, absent: a usual one.
    Result<Cost> cost(const Formula& formula, const PriceList& prices, const std::optional<SheetYield>& makes = {}) const;
    /// A kilo of `variant` less a kilo of `base`, raw.
    Result<CostChange> cost_change(const Formula& base, const Formula& variant, const PriceList& prices) const;
    /// Of what a list says there is plenty of, what keeps in the freezer and how.
    std::vector<KeepForLater> glut(const Inventory& stock) const;

    LookupAnswer lookup(std::string_view word, const Setting& setting = {}) const;
    CheckAnswer check(const std::vector<std::string>& paths, const Setting& setting = {}) const;
    /// The swaps as a graph in the DOT language: all of them, or those from and to the ingredient called `word`; of one role where given.
    Result<std::string> graph(std::string_view word, std::optional<Role> role = std::nullopt) const;

    /// The shown name of an ingredient id.
    std::string name_of(std::string_view ingredient) const;
    /// The citation behind a source reference.
    std::string citation(std::string_view source) const;

private:
    struct Inside;
    explicit Engine(std::shared_ptr<const Inside> inside);
    std::shared_ptr<const Inside> inside_;
};

}  // namespace standin
