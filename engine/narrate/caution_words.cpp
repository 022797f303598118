// What must be minded, in words.
#include "core/words.hpp"
#include "narrate/words.hpp"

namespace standin {
namespace {

// The foods stand where the rule has a place for them, else behind it.
std::string with_foods(std::string text, const std::vector<std::string>& foods) {
    constexpr std::string_view place = "{foods}";
    const std::string all = listed(foods);
    if (text.find(place) == std::string::npos) return foods.empty() ? text : with_stop(std::move(text)) + " Here: " + all + ".";
    replace_all(text, place, all);
    return text;
}

}  // namespace

std::string caution_words(const Reason& r, Units units) { return in_units(with_foods(r.note, r.foods), units); }

}  // namespace standin
