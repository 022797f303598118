#include "formula/stock/stock_leaves.hpp"

#include "core/names.hpp"
#include "formula/food/name_text.hpp"
#include "formula/stock/stock_amounts.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/records/word_list.hpp"

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

std::optional<ReadLine> read_as_leaf(const ReadLine& read, std::string_view text, const Origin& origin, const Knowledge& knowledge) {
    const Ingredient& taken = *knowledge.ingredient(read.line.ingredient);
    const std::string_view name = without_weight(text);
    const bool so_much_is_fresh = read.line.grams.mid >= knowledge.parameter("reading.stock-fresh-least").mid;
    if (name.empty() || !is_weight(read.line.written) || !so_much_is_fresh) return std::nullopt;
    const auto leaf = leaf_called(name, taken, knowledge);
    if (!leaf) return std::nullopt;
    std::string other(text);
    other.replace(static_cast<std::size_t>(name.data() - text.data()), name.size(), *leaf);
    auto again = read_line(other, origin, knowledge, {}, true);
    if (!again) return std::nullopt;
    again->line.notes = {make_reason(ReasonKind::not_the_other, {}, {*leaf, taken.names.front()})};
    return std::move(*again);
}

Reason taken_as_dried(const Ingredient& taken, const std::string& leaf) {
    return reason_about(ReasonKind::dried_unless_leaf, leaf, {taken.names.front()});
}

}  // namespace standin
