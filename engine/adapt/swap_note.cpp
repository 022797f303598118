#include "adapt/swap_note.hpp"

#include <algorithm>
#include <cctype>

#include "core/names.hpp"

namespace standin {
namespace {

std::string with_capital(std::string text) {
    if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return text;
}

// "Dill seed: less sweet." under the heading of dill seed.
std::string without_name(const std::string& note, const Ingredient& food) {
    const auto colon = note.find(": ");
    if (colon == std::string::npos) return note;
    const std::string head = fold(note.substr(0, colon));
    const bool own = std::any_of(food.names.begin(), food.names.end(), [&](const std::string& name) { return fold(name) == head; });
    return own ? with_capital(note.substr(colon + 2)) : note;
}

}  // namespace

std::string note_of(const std::vector<std::size_t>& swaps, const Knowledge& knowledge) {
    const Swap& last = knowledge.records().swaps[swaps.back()];
    // By a detour the note is about a food that the formula has not.
    if (last.note.empty() || swaps.size() > 1) return {};
    return last.any() ? last.note : without_name(last.note, *knowledge.ingredient(last.to));
}

}  // namespace standin
