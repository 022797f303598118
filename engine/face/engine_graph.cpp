// The swaps as a drawing: which of them a word and a role mean.
#include "face/inside.hpp"
#include "knowledge/index/swap_dot.hpp"

namespace standin {

Result<std::string> Engine::graph(std::string_view word, std::optional<Role> role) const {
    const Knowledge& knowledge = inside_->knowledge;
    const Ingredient* centre = nullptr;
    if (!word.empty()) {
        centre = knowledge.ingredient_named(word);
        if (!centre) {
            Error unknown{Trouble::unmet, "nothing is known of `" + std::string(word) + "`", {}, {}};
            for (const auto& name : knowledge.nearest_ingredients(word)) unknown.hints.push_back("did you mean `" + name + "`?");
            return Failure(std::move(unknown));
        }
    }
    auto text = swap_dot(knowledge.records(), centre, role);
    if (!text.empty()) return text;
    std::string none = centre ? "no swap of `" + centre->names.front() + "`" : "no swap";
    if (role) none += " in the role " + std::string(standin::word(*role));
    Error error{Trouble::unmet, std::move(none), {}, {}};
    if (centre && role)
        for (const auto known : centre->roles) error.hints.push_back("it is there as " + std::string(standin::word(known)));
    return Failure(std::move(error));
}

}  // namespace standin
