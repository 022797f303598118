#include "render/text/text_parts.hpp"

#include <algorithm>
#include <array>
#include <string_view>

#include "render/allergen_words.hpp"

namespace standin::cli {

std::string heading(const std::string& text, const Look& look) { return "\n" + look.bold(text) + "\n"; }

std::string paragraph(const std::string& text, const Look& look, int indent) { return wrap(text, look.width - indent, indent) + "\n"; }

std::string bullet(const std::string& text, const Look& look, int indent) {
    return wrap("- " + text, look.width - indent, indent, 2) + "\n";
}

std::string bulleted(const std::string& head, const std::vector<std::string>& items, const Look& look) {
    std::string out = items.empty() ? "" : heading(head, look);
    for (const auto& item : items) out += bullet(item, look);
    return out;
}

std::string shown(Property property, const Band& value) { return band(value, info(property).decimals); }

std::string name_with_unit(Property property) {
    const auto& i = info(property);
    return std::string(i.name) + (i.unit.empty() ? "" : ", " + std::string(i.unit));
}

std::string with_preparations(const std::string& name, const std::vector<std::string>& prepared) {
    std::string out = name;
    for (const auto& step : prepared) out += ", " + step;
    return out;
}

namespace {

constexpr std::array<std::string_view, 6> heat_steps{"none", "barely", "mild", "medium", "hot", "very hot"};

}  // namespace

std::string heat_degree(std::size_t step) {
    constexpr std::array<const char*, 6> words{"none", "barely any", "mild", "medium", "strong", "very strong"};
    return words[step];
}

std::string heat_phrase(const std::string& word) {
    const auto step = std::find(heat_steps.begin(), heat_steps.end(), word);
    if (step == heat_steps.begin()) return "no heat to speak of";
    return (step == heat_steps.end() ? word : heat_degree(static_cast<std::size_t>(step - heat_steps.begin()))) + " heat";
}

std::string heat_and_chance(const Prediction& prediction) {
    const auto& chances = prediction.heat_chances;
    const auto likeliest = static_cast<std::size_t>(std::max_element(chances.begin(), chances.end()) - chances.begin());
    const auto found = std::find(heat_steps.begin(), heat_steps.end(), prediction.heat_word);
    const auto word = found == heat_steps.end() ? likeliest : static_cast<std::size_t>(found - heat_steps.begin());
    if (likeliest == word) return heat_phrase(prediction.heat_word) + " (chance " + chance(chances[word]) + ")";
    // The middle and most of the draws fall on two sides of a border: both words, and the chance of either.
    const auto [low, high] = std::minmax(likeliest, word);
    double either = 0;
    for (std::size_t i = low; i <= high; ++i) either += chances[i];
    return heat_phrase(std::string(heat_steps[low])) + " or " + heat_phrase(std::string(heat_steps[high])) + " (chance " +
           chance(std::min(1.0, either)) + " together)";
}

std::vector<std::pair<std::string, std::string>> declarations(const AllergenText& a) {
    std::vector<std::pair<std::string, std::string>> words;
    for (const auto& d : a.declare) {
        const auto same = std::find_if(words.begin(), words.end(), [&](const auto& w) { return w.first == d.second; });
        if (same == words.end()) words.emplace_back(d.second, d.first);
        else same->second += ", " + d.first;
    }
    return words;
}

bool at_the_bench(Property property) {
    constexpr std::array all{Property::salt_pct_of_meat, Property::fat_pct, Property::ph,       Property::heat_mg_kg,
                             Property::greenness,        Property::bind,    Property::firmness, Property::cook_loss_pct};
    return std::find(all.begin(), all.end(), property) != all.end();
}

namespace {

std::string first_of_all(const std::string& core, const std::vector<AllergenText>& allergens, const std::string& which) {
    return "Cook to " + core + " in the middle" + which + ". Allergens: " + allergens_in_short(allergens) + ".";
}

}  // namespace

std::string safety_first(const std::string& core, const std::vector<AllergenText>& allergens, const Look& look, const std::string& which) {
    return paragraph(first_of_all(core, allergens, which), look, 0);
}

std::string safety_first(const Together& all, const Look& look) {
    const std::string before = allergens_before_in_short(all);
    return paragraph(first_of_all(all.core, all.allergens, all.core_before.empty() ? "" : "; " + all.only_of + " to " + all.core_before) +
                         (before.empty() ? "" : " " + before),
                     look, 0);
}

std::string own_records(const std::string& folder, const Look& look) {
    return folder.empty() ? "" : paragraph(own_records_sentence(folder), look, 0);
}

std::string own_records_sentence(const std::string& folder) { return "With the records of " + folder + " laid over the built-in ones."; }

bool is_of_every_batch(const std::string& caution) {
    constexpr std::array<std::string_view, 5> all{"core-temperature", "keep-cold", "hands", "vulnerable", "defer"};
    return std::find(all.begin(), all.end(), caution) != all.end();
}

std::string first_of_all(const std::vector<std::string>& sentences, const Look& look) {
    std::string out;
    for (const auto& one : sentences) out += paragraph(one, look, 0);
    return out;
}

std::string read_as_part(const std::vector<std::string>& notes, const Look& look) {
    std::string out = notes.empty() ? "" : heading("How the formula was read", look);
    for (const auto& note : notes) out += bullet(note, look);
    return out;
}

namespace {

std::string in_brief(const std::vector<AllergenText>& allergens, const std::vector<CautionText>& cautions, const std::string& before,
                     const Look& look) {
    std::string out, always;
    if (!allergens.empty()) out += heading("Allergens", look);
    for (const auto& line : allergens_in_lines(allergens)) out += bullet(line, look);
    out += heading("Mind", look);
    for (const auto& c : cautions) {
        if (c.id == "check-label" && asks_for_packets(allergens)) continue;  // told line by line above
        if (is_of_every_batch(c.id)) always += (always.empty() ? "" : " ") + c.brief;
        else out += bullet(c.brief, look);
    }
    if (!before.empty()) out += bullet(before, look);
    return out + (always.empty() ? "" : bullet("Always: " + always, look));
}

}  // namespace

std::string safety_in_brief(const std::vector<AllergenText>& allergens, const std::vector<CautionText>& cautions, const Look& look) {
    return in_brief(allergens, with_briefs(cautions), "", look);
}

std::string safety_in_brief(const Together& all, const Look& look) {
    return in_brief(all.allergens, all.cautions, cautions_before_in_short(all), look);
}

std::string safety_in_full(const Together& all, const Look& look) {
    return allergens_part(all_allergens(all), look) + cautions_part(all_cautions(all), look);
}

std::string allergens_part(const std::vector<AllergenText>& allergens, const Look& look) {
    std::string out = heading("Allergens", look);
    if (allergens.empty()) return out + paragraph("None of the listed ones comes with these ingredients.", look);
    for (const auto& a : allergens) {
        const auto words = declarations(a);
        std::string line = allergen_with_source(a);
        for (const auto& [text, codes] : words)
            line += (&text == &words.front().first ? ". Declare as: " : "; ") + text + " (" + codes + ")";
        out += bullet(line, look);
    }
    return out;
}

std::string cautions_part(const std::vector<CautionText>& cautions, const Look& look, const std::string& head) {
    if (cautions.empty()) return "";
    std::string out = heading(head, look);
    for (const auto& c : cautions) out += bullet(c.text + (c.source.empty() ? "" : " [" + c.source + "]"), look);
    return out;
}

}  // namespace standin::cli
