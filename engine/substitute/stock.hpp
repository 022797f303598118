// What may be used and how much of it: inventory, exclusions, and what has to be presumed where the maker does not say.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "safety/exclusions.hpp"
#include "substitute/context.hpp"

namespace standin {

/// Water is there without being listed.
inline bool from_the_tap(std::string_view ingredient) { return ingredient == "water"; }

/// What one ingredient offers.
struct Offer {
    bool excluded = false;  ///< by --without
    bool on_hand = true;
    std::optional<double> grams;  ///< no more than this, as picked or bought; absent: plenty
};

class Stock {
public:
    /// Without an inventory everything in the knowledge is to be had. With one, only what it lists can be brought in, unless it says
    /// "everything else". Of the formula's own ingredients that it does not mention, fresh produce is taken to be missing where the list
    /// names its kin, and all else to be there (stock_presumed.hpp). With a month in `options`, what is out of season can only be brought
    /// in where the inventory lists it.
    static Result<Stock> of(const Formula& formula, const AdaptRequest& request, const Context& context);

    Offer offer(const Ingredient& ingredient) const;
    /// The same in grams as the line weighs its food: trimmed and prepared as it says.
    Offer offer(const Line& line) const;
    /// Whether `ingredient` could be brought into the formula. Who names something to be left out cooks for someone it matters to: then
    /// nothing is brought in that carries, or may carry, an allergen the formula does not have already.
    bool can_bring(const Ingredient& ingredient) const;
    /// Whether nothing that was left out, and no new allergen beside it, keeps `ingredient` away; wherever it comes from.
    bool leaves_in(const Ingredient& ingredient) const;
    /// Whether the maker leaves it open what stands in for `line`, or has named just this.
    bool may_stand_in(const Ingredient& ingredient, const Line& line) const;
    /// Whether a line is left out only for what it may hold, as bought: one packet may name it, the next not.
    bool only_perhaps(const std::string& ingredient) const {
        return perhaps_out_.count(ingredient) > 0 && surely_out_.count(ingredient) == 0;
    }
    /// Whether one packet in many of it holds what is left out: it comes in only where nothing else will do, and that is told.
    bool in_doubt(const std::string& ingredient) const { return in_doubt_.count(ingredient) > 0 && left_out_.count(ingredient) == 0; }
    /// Whether the maker has named what stands in for `line`.
    bool has_idea_for(const Line& line) const { return only_for_.count(line.ingredient) > 0; }
    /// Whether an exclusion takes a food, by what it is or by what the list says that it holds.
    bool takes(const Exclusion& exclusion, const std::string& ingredient) const;
    /// What the list says of its foods goes with them into a line: "may contain nuts", "unpasteurised", "blanched".
    void tell(Line& line) const;
    /// The casings that are to be left out go from what stands beside the mass; one of the list takes their place.
    void leave_out_beside(Formula& formula) const;
    /// Casings on the list that no exclusion takes.
    const std::vector<Beside>& casings() const { return casings_; }
    /// Grams of a line that the maker will not go below.
    double least_of(const Line& line) const;
    bool listed() const { return listed_; }
    /// Whether the list itself names it to be on hand.
    bool names(const std::string& ingredient) const { return named_.count(ingredient) > 0; }
    /// Whether nothing but the formula tells that it is there: the list neither names it nor leaves the shops open.
    bool only_presumes(const std::string& ingredient) const { return listed_ && !everything_ && !names(ingredient); }
    /// Whether the list says that there is none, or it is taken to be missing.
    bool says_missing(const std::string& ingredient) const { return missing_.count(ingredient) > 0; }
    const std::vector<Presumption>& presumed() const { return presumed_; }
    const std::vector<Excluded>& excluded() const { return excluded_; }
    /// The words that keep a food away, those that were asked and those of the formula, each once.
    std::vector<std::string> kept_by(const std::string& ingredient) const;
    const Knowledge& knowledge() const { return *knowledge_; }

private:
    void note_told(const Inventory& have);
    bool only_may_hold(const Line& told, const Exclusion& exclusion) const;
    std::set<std::string> kept_by_packet(const Formula& formula, const Exclusion& exclusion) const;
    std::vector<Reason> off_the_list(const Exclusion& exclusion, const Formula& formula, const std::vector<InventoryItem>& items) const;
    void leave_out(const Formula& formula, const Exclusion& exclusion, const std::vector<InventoryItem>& items);
    void guard_allergens(const Formula& formula);
    void keep_from_guests(const Formula& formula);
    void keep_from_eaters(const Formula& formula);
    void keep_out(const Exclusion& exclusion, const Formula& formula);
    void told_as_kept(std::string word, std::string takes, Reason kept);
    void take_list(const Inventory& have);
    void trust_guesses(const Formula& formula, const Inventory& have);
    std::optional<double> as_much_as_asked(const std::string& ingredient, const Formula& formula) const;
    void presume(const Formula& formula, const Inventory& have, bool for_a_want);

    const Knowledge* knowledge_ = nullptr;
    std::map<std::string, std::optional<double>> have_;
    std::set<std::string> named_, missing_, left_out_, perhaps_out_, surely_out_, in_doubt_;
    std::vector<Presumption> presumed_;
    std::vector<Excluded> excluded_;
    std::vector<Exclusion> exclusions_;
    std::vector<Beside> casings_;
    bool width_goes_ = false;                                ///< links by a width alone, of what is left out
    std::map<std::string, std::set<std::string>> only_for_;  // by line: what the maker wants in its place
    std::map<std::string, double> least_;
    std::map<std::string, std::vector<Declared>> told_;    // by ingredient: what the list says that it holds
    std::map<std::string, std::vector<Prepared>> ready_;   // likewise, what is done to it already
    std::map<std::string, std::vector<Reason>> dangers_;   // likewise, what is told of it wherever it goes in
    std::optional<std::set<std::string>> only_allergens_;  // absent: any may come in
    std::set<std::string> perhaps_allergens_;              // likewise, for a food that only may hold it
    std::optional<int> month_;
    int season_shift_ = 0;
    bool listed_ = false;
    bool everything_ = false;
};

/// Whether words beside an answer may name `food`: nothing keeps it away, or `formula` has it already.
bool may_name(const Stock& stock, const Formula& formula, const Ingredient& food);

}  // namespace standin
