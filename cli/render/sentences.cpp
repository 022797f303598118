#include "render/sentences.hpp"

#include <algorithm>
#include <cmath>

#include "render/text/text_parts.hpp"
#include "words.hpp"

namespace standin::cli {
namespace {

std::string a_or_an(const std::string& word) { return (word.find_first_of("aeiou") == 0 ? "an " : "a ") + word; }

std::string roles_of(const SwapsAnswer& a) {
    std::vector<std::string> words;
    for (const auto role : a.roles) words.emplace_back(word(role));
    return words.empty() ? "" : " (" + listed(words) + ")";
}

}  // namespace

// What it will be, in two sentences.
std::string in_short(const Prediction& p) {
    const auto& q = p.properties;
    const std::string colour = p.rested.word == p.cooked.word ? p.rested.word + " before and after cooking"
                                                              : p.rested.word + " when rested and " + p.cooked.word + " when cooked";
    return capital(a_or_an(p.bind_word)) + " mass, " + colour + ", with " + heat_phrase(p.heat_word) + " (chance " + chance_of_heat(p) +
           "). Salt is " + number(q[Property::salt_pct_of_meat].mid, 2) + " % of meat, pH " + number(q[Property::ph].mid, 2) +
           ", and it loses " + number(q[Property::cook_loss_pct].mid, 0) + " % of its weight on cooking.";
}

std::string base_in_short(const Prediction& b) {
    const auto& q = b.properties;
    return "As it is, " + b.title + " is a " + b.bind_word + " mass, " + b.rested.word + ", with " + heat_phrase(b.heat_word) + ", salt " +
           number(q[Property::salt_pct_of_meat].mid, 2) + " % of meat and pH " + number(q[Property::ph].mid, 2) + ".";
}

std::string answer_first(const AdaptAnswer& a) {
    if (a.variants.empty()) return "Nothing found does what was asked.";
    if (!a.conflict.empty()) return "Nothing found does all that was asked; what comes nearest is below.";
    const auto n = a.variants.size();
    return n == 1 ? "One way to do it:" : std::to_string(n) + " ways to do it, the nearest to the original first:";
}

std::string in_words(const Edit& e, const Engine& engine) {
    const std::string line = e.line.empty() ? "" : engine.name_of(e.line), before = grams(e.grams_before), after = grams(e.grams_after);
    const auto with = [&] { return after + " " + with_preparations(engine.name_of(e.with), e.prepared); };
    switch (e.kind) {
        case EditKind::replace:
            return "replace " + before + " " + line + " with " + with();
        case EditKind::split:
            return "for part of " + before + " " + line + " take " + with() +
                   (e.grams_left > 0 ? " (" + grams(e.grams_left) + " " + line + " stays)" : "");
        case EditKind::reduce:
            return "reduce " + line + " from " + before + " to " + after;
        case EditKind::raise:
            return "raise " + line + " from " + before + " to " + after;
        case EditKind::omit:
            return "leave out " + before + " " + line;
        case EditKind::add:
            return "add " + with();
        case EditKind::process:
            return e.with;
    }
    return "";
}

std::string grams_with_band(const StandIn& s) {
    std::string low = grams(s.grams_band.low), high = grams(s.grams_band.high);
    if (low == high) return grams(s.grams);
    low.erase(low.size() - 2);  // the unit is said once
    return grams(s.grams) + " (" + low + "-" + high + ")";
}

std::string in_short(const SwapsAnswer& a, const std::string& title) {
    const std::string line = grams(a.line_grams) + " " + a.name + roles_of(a);
    if (a.stand_ins.empty()) return "Nothing known can stand in for " + line + " in " + title + ".";
    const auto& s = a.stand_ins.front();
    return "In place of " + line + " in " + title + ", nearest is " + grams(s.grams) + " " + with_preparations(s.name, s.prepared) + ": " +
           number(s.distance, 1) + " noticeable differences from the formula as it is.";
}

std::string letter(std::size_t i) { return i < 26 ? std::string(1, static_cast<char>('A' + i)) : std::to_string(i + 1); }

// One line a caution, with the formulas it is said of unless it is said of all.
std::vector<CautionText> shared_cautions(const std::vector<Prediction>& all) {
    std::vector<CautionText> out;
    for (const auto& p : all)
        for (const auto& c : p.cautions)
            if (std::none_of(out.begin(), out.end(), [&](const CautionText& o) { return o.text == c.text; })) out.push_back(c);
    for (auto& c : out) {
        std::string letters;
        std::size_t n = 0;
        for (std::size_t i = 0; i < all.size(); ++i) {
            const auto& own = all[i].cautions;
            if (std::none_of(own.begin(), own.end(), [&](const CautionText& o) { return o.text == c.text; })) continue;
            letters += (letters.empty() ? "" : ", ") + letter(i);
            ++n;
        }
        if (n < all.size()) c.text = letters + ": " + c.text;
    }
    return out;
}

std::vector<std::string> asked_as_understood(const AdaptAnswer& answer, const Engine& engine) {
    std::vector<std::string> all;
    if (answer.scaled) all.push_back(answer.scaled->says);
    for (const auto& one : answer.excluded) {
        std::string says = "Without \"" + one.word + "\" leaves out " + one.takes + ".";
        std::vector<std::string> gone;
        for (const auto& id : one.lines) gone.push_back(engine.name_of(id));
        gone.insert(gone.end(), one.casings.begin(), one.casings.end());
        std::string lines;
        for (std::size_t i = 0; i < gone.size(); ++i) lines += (i ? ", " : "") + gone[i];
        says += gone.empty() ? " Nothing of the formula is that." : " Of the formula: " + lines + ".";
        if (!one.note.empty()) says += " " + one.note;
        all.push_back(std::move(says));
    }
    return all;
}

std::vector<std::string> presumed_in_words(const AdaptAnswer& answer) {
    std::vector<std::string> all;
    for (const auto& one : answer.presumed)
        all.push_back(one.says + (one.matters && !one.add.empty() ? ". If not, add to the list: " + one.add : ""));
    return all;
}

}  // namespace standin::cli
