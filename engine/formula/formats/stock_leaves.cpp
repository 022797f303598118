#include "formula/formats/stock_leaves.hpp"

#include "core/names.hpp"
#include "formula/line/name_text.hpp"
#include "knowledge/word_list.hpp"

namespace standin {

std::optional<std::string> leaf_called(std::string_view name, const Ingredient& taken, const Knowledge& knowledge) {
    const std::string bare = fold(name);
    const bool herb = taken.tissue == Tissue::dry && taken.roles.front() == Role::herb;
    if (!herb && !knowledge.in_list(WordList::leaf_when_much, bare)) return std::nullopt;
    const auto* named = known_ingredient(bare, knowledge);
    if ((named ? named : knowledge.ingredient_meant(bare)) != &taken) return std::nullopt;
    const auto* fresh = known_ingredient("fresh " + bare, knowledge);
    if (!fresh || fresh == &taken || fresh->tissue == Tissue::dry) return std::nullopt;
    return "fresh " + bare;
}

bool so_much_is_fresh(double grams, const Knowledge& knowledge) { return grams >= knowledge.parameter("reading.stock-fresh-least").mid; }

Reason taken_as_dried(const Ingredient& taken, const std::string& leaf) {
    return reason_about(ReasonKind::dried_unless_leaf, leaf, {taken.names.front()});
}

}  // namespace standin
