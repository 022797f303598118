#include "formula/words/tongues.hpp"

#include <algorithm>
#include <array>

#include "core/contains.hpp"
#include "core/names.hpp"
#include "formula/lexer/line_words.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_phrase = 5;  // words
constexpr std::array<std::string_view, 4> romance{"fr", "es", "it", "pt"};

// "d'ail", "l’oignon", "dell'olio": the short word before the apostrophe stands by itself.
std::string without_elision(std::string_view line, const Knowledge& knowledge) {
    std::string out(line);
    for (const std::string_view sign : {"'", "’"})
        for (std::size_t i = out.find(sign); i != std::string::npos; i = out.find(sign, i + 1)) {
            const auto start = out.find_last_of(" ,;(\n", i);
            const std::string before =
                fold(out.substr(start == std::string::npos ? 0 : start + 1, i - (start == std::string::npos ? 0 : start + 1)));
            if (knowledge.in_list(WordList::elided, before)) out.replace(i, sign.size(), sign.size(), ' ');
        }
    return out;
}

bool tells_something(const std::string& english) {
    constexpr std::array<std::string_view, 6> fillers{"of", "the", "and", "or", "about", ""};
    return std::find(fillers.begin(), fillers.end(), english) == fillers.end();
}

// "Ohne Haut und Knochen", "sin piel ni hueso": the word before the first goes for the second as well, and is said again where the tongue
// has both by it ("ohne Haut", "ohne Knochen") and neither is a food.
std::string said_again(std::string line, const Knowledge& knowledge) {
    constexpr std::size_t longest_joiner = 4;  // bytes: "und", "noch", "nem"
    const auto words = words_of(line);
    const auto state = [&](std::string_view tongue, const Word& led, const Word& by) {
        const auto* english = knowledge.english(tongue, hazard_fold(led.raw + " " + by.raw));
        return english && tells_something(*english) && !knowledge.ingredient_named(*english);
    };
    for (std::size_t i = words.size(); i-- > 3;) {
        const Word &led = words[i - 3], &first = words[i - 2], &joiner = words[i - 1], &second = words[i];
        if (joiner.raw.size() > longest_joiner || led.segment != second.segment) continue;
        const auto& tongues = knowledge.tongues();
        if (std::any_of(tongues.begin(), tongues.end(),
                        [&](const auto& tongue) { return tongue != "en" && state(tongue, led, first) && state(tongue, led, second); }))
            line.replace(joiner.begin, joiner.end - joiner.begin, ", " + led.raw);
    }
    return line;
}

// "1 bunch cilantro (leaves and stems)", where what the bracket says is left out; a comma said twice.
void tidied(std::string& line) {
    for (std::size_t open = line.find('('); open != std::string::npos; open = line.find('(', open + 1)) {
        const auto close = line.find_first_not_of(' ', open + 1);
        if (close == std::string::npos || line[close] != ')') continue;
        std::size_t from = open;
        while (from > 0 && line[from - 1] == ' ') --from;
        line.erase(from, close + 1 - from);
        open = from > 0 ? from - 1 : 0;
    }
    for (const std::string_view doubled : {"(, ", ", , "})
        for (auto at = line.find(doubled); at != std::string::npos; at = line.find(doubled)) line.erase(at + 1, 2);
}

struct Found {
    std::size_t first = 0, last = 0;  // words
    const std::string* english = nullptr;
};

std::vector<Found> words_in(std::string_view tongue, const std::vector<Word>& words, const Knowledge& knowledge) {
    std::vector<Found> all;
    for (std::size_t first = 0; first < words.size(); ++first)
        for (std::size_t last = std::min(words.size(), first + longest_phrase); last > first; --last)
            if (const auto* english = knowledge.english(tongue, hazard_fold(phrase(words, first, last)))) {
                all.push_back({first, last, english});
                first = last - 1;
                break;
            }
    return all;
}

std::size_t telling(const std::vector<Found>& all) {
    std::size_t count = 0;
    for (const auto& found : all)
        if (tells_something(*found.english)) count += 2 * (found.last - found.first);
        else ++count;
    return count;
}

}  // namespace

std::vector<Rewording> in_english(std::string_view line, const Knowledge& knowledge) {
    const std::string split = said_again(without_elision(line, knowledge), knowledge);
    const auto words = words_of(split);
    struct Heard {
        bool foreign, romance, german;
        std::vector<Found> found;
    };
    std::vector<Heard> tongues;
    for (const auto& tongue : knowledge.tongues()) {
        auto found = words_in(tongue, words, knowledge);
        // In English itself a word that says nothing is worth leaving out; in another tongue it may be a chance likeness.
        constexpr std::size_t no_chance = 6;  // letters
        const bool own = std::any_of(found.begin(), found.end(), [&](const Found& one) {
            return tongue == "en" || words[one.last - 1].end - words[one.first].begin > no_chance;
        });
        if (own || std::any_of(found.begin(), found.end(), [](const Found& one) { return tells_something(*one.english); }))
            tongues.push_back({tongue != "en", contains(romance, std::string_view(tongue)), tongue == "de", std::move(found)});
    }
    std::stable_sort(tongues.begin(), tongues.end(), [](const Heard& a, const Heard& b) { return telling(a.found) > telling(b.found); });
    std::vector<Rewording> all;
    for (const auto& tongue : tongues) {
        std::string out = split;
        for (auto found = tongue.found.rbegin(); found != tongue.found.rend(); ++found) {
            const std::size_t begin = words[found->first].begin, end = words[found->last - 1].end;
            const bool stopped = end < out.size() && out[end] == '.';  // "1 c. à s. d'huile"
            const std::string_view said = std::string_view(split).substr(begin, end - begin);
            const bool opened = std::count(said.begin(), said.end(), '(') > std::count(said.begin(), said.end(), ')');
            const bool closed = opened && end < out.size() && out[end] == ')';  // "2 colheres (chá) de"
            out.replace(begin, end - begin + (stopped || closed ? 1 : 0), *found->english);
        }
        tidied(out);
        all.push_back({std::move(out), tongue.foreign, tongue.romance, tongue.german});
    }
    return all;
}

}  // namespace standin
