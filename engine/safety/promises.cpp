#include "safety/promises.hpp"

#include <algorithm>
#include <array>
#include <optional>

#include "core/names.hpp"
#include "core/words.hpp"
#include "knowledge/kinds.hpp"
#include "safety/exclusions.hpp"
#include "safety/wording.hpp"

namespace standin {
namespace {

// The words of the title that promise to be without what is called `name`; nothing where it promises nothing of the kind.
std::optional<std::string> promise_of(const std::string& title, const std::string& name, bool diet) {
    constexpr std::array<std::string_view, 6> before{"no ", "non ", "without ", "free of ", "free from ", "zero "};
    constexpr std::array<std::string_view, 2> behind{" free", " less"};
    for (const auto lead : before)
        if (std::string words = std::string(lead) + name; has_words(title, words)) return words;
    for (const auto end : behind)
        if (std::string words = name + std::string(end); has_words(title, words)) return words;
    for (const auto* joined : {"free", "less", "les"})  // "nutfree"; "meatless", as folding leaves it
        if (std::string words = name + joined; has_words(title, words)) return words;
    if (diet && has_words(title, name) && !has_words(title, "not " + name) && !has_words(title, "non " + name)) return name;
    return std::nullopt;
}

// The lines that hold it, or that may, and the casings.
std::vector<std::string> breaking(const Formula& formula, const Kind& kind, const Knowledge& knowledge) {
    std::vector<std::string> names;
    for (const auto& line : formula.lines) {
        const Ingredient& ingredient = *knowledge.ingredient(line.ingredient);
        const bool named = std::find(names.begin(), names.end(), ingredient.names.front()) != names.end();
        if (!named && belongs(ingredient, kind, knowledge)) names.push_back(ingredient.names.front());
    }
    for (const auto& casing : casings_excluded(formula, {kind.id, {}, {}, &kind, {}}, knowledge)) names.push_back(casing);
    return names;
}

Reason promise_reason(std::string words, std::vector<std::string> foods) {
    Reason reason;
    reason.kind = ReasonKind::caution;
    reason.about = "title-promise";
    reason.note = std::move(words);
    reason.foods = std::move(foods);
    return reason;
}

}  // namespace

std::vector<CautionText> broken_promises(const Formula& formula, const Knowledge& knowledge) {
    std::vector<CautionText> all;
    const std::string title = fold(formula.title);
    for (const auto& kind : knowledge.records().kinds) {
        std::optional<std::string> promise;
        for (const auto& name : kind.names)
            if (!promise) promise = promise_of(title, fold(name), kind.diet);
        if (!promise) continue;
        const auto lines = breaking(formula, kind, knowledge);
        if (!lines.empty())
            all.push_back(caution_text(promise_reason("The title says \"" + *promise +
                                                          "\", but the batch has what that takes in, or may: {foods}. Change the title "
                                                          "or the lines.",
                                                      lines),
                                       kind.source, {}, *promise));
        else if (kind.diet && !kind.note.empty())
            all.push_back(caution_text(promise_reason("The title says \"" + *promise + "\". " + kind.note, {}), kind.source, {}, *promise));
    }
    return all;
}

}  // namespace standin
