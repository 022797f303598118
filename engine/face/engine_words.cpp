// The names that the maker's own words have for foods.
#include <algorithm>
#include <cctype>

#include "core/names.hpp"
#include "face/inside.hpp"

namespace standin {
namespace {

// Whether the folded name stands in the folded text as whole words.
bool stands_in(const std::string& name, const std::string& text) { return (" " + text + " ").find(" " + name + " ") != std::string::npos; }

// The longest of the names, and of the words that may mean it, that stands in the text. None where the record's own stands there, or says
// more than the maker does: "dry breadcrumbs" for "breadcrumbs".
std::optional<std::string> own_name(const Ingredient& food, const std::string& text) {
    const std::string first = fold(food.names.front());
    if (stands_in(first, text)) return std::nullopt;
    std::optional<std::string> longest;
    for (const auto* names : {&food.names, &food.generic})
        for (const auto& name : *names)
            if (stands_in(fold(name), text) && (!longest || fold(name).size() > fold(*longest).size())) longest = name;
    return longest && !stands_in(fold(*longest), first) ? longest : std::nullopt;
}

// "Madeira", as it is written.
void as_written(std::string& name, const std::string& written) {
    const auto same = [](char one, char other) {
        return std::tolower(static_cast<unsigned char>(one)) == std::tolower(static_cast<unsigned char>(other));
    };
    const auto at = std::search(written.begin(), written.end(), name.begin(), name.end(), same);
    if (at == written.begin() || at == written.end()) return;
    const std::string found(at, at + static_cast<std::ptrdiff_t>(name.size()));
    const bool shouted = std::none_of(found.begin(), found.end(), [](unsigned char c) { return std::islower(c); });
    if (!shouted) name = found;
}

bool puts_first(Ingredient& food, const std::vector<OwnWords>& said) {
    for (const auto& words : said) {
        if (words.ingredient != food.id) continue;
        auto name = own_name(food, fold(words.written));
        if (!name) return false;  // as its record calls it, or by a word that is no name of it
        std::erase(food.names, *name);
        std::erase(food.generic, *name);
        as_written(*name, words.written);
        food.names.insert(food.names.begin(), std::move(*name));
        return true;
    }
    return false;
}

// Absent: it calls everything so already.
std::optional<Knowledge> speaking(const Knowledge& knowledge, const std::vector<OwnWords>& said) {
    Records records = knowledge.records();
    bool any = false;
    for (auto& food : records.ingredients) any = puts_first(food, said) || any;
    if (!any) return std::nullopt;
    return Knowledge(std::move(records), knowledge.overlay());
}

}  // namespace

Engine Engine::speaking_as(const std::vector<OwnWords>& said) const {
    auto known = speaking(inside_->knowledge, said);
    if (!known) return Engine(inside_);
    if (!inside_->general) return Engine(std::make_shared<const Inside>(inside_->options, std::move(*known)));
    const Engine general = Engine(inside_->general).speaking_as(said);
    return Engine(std::make_shared<const Inside>(inside_->kitchen, std::move(*known), general.inside_));
}

}  // namespace standin
