#include "formula/line/method_facts.hpp"

#include <algorithm>
#include <cctype>
#include <utility>

#include "core/names.hpp"
#include "core/process_bounds.hpp"
#include "formula/hazards/hazards.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/listed_word.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/lexer/sentences.hpp"
#include "formula/lexer/spaces.hpp"
#include "formula/line/kept_days.hpp"
#include "formula/line/making_in_words.hpp"
#include "formula/words/tongues.hpp"
#include "knowledge/records/word_list.hpp"
#include "knowledge/words/hazard_text.hpp"
#include "knowledge/words/hot_holding.hpp"

namespace standin {

std::optional<double> celsius_at(std::string_view text, std::size_t at, const Knowledge& knowledge) {
    Cursor cursor(text, at);
    const auto number = number_at(cursor, false);
    if (!number) return std::nullopt;
    cursor.space();
    constexpr double most_c = 110;  // judgement: of degrees without a scale; hotter is the oven, or Fahrenheit
    const bool degrees = cursor.eat("°") || cursor.eat("º") || eat_listed(cursor, WordList::degree_word, knowledge);
    cursor.space();
    const double said = number->band.mid;
    if (cursor.eat_any_word({"f", "fahrenheit"})) return (said - 32) / 1.8;
    const auto scale = cursor.word();
    if (scale == "C" || cursor.eat_any_word({"celsius", "centigrade", "centigrados"}) || (degrees && said <= most_c)) return said;
    return std::nullopt;
}

namespace {

struct Sentence {
    std::string text;
    std::vector<Word> words;

    bool says(WordList list, const Knowledge& knowledge) const {
        return std::any_of(words.begin(), words.end(), [&](const Word& word) { return in(word, list, knowledge); });
    }

    static bool in(const Word& word, WordList list, const Knowledge& knowledge) {
        if (knowledge.in_list(list, word.folded)) return true;
        const auto dash = word.folded.find_last_of("- ");  // "6-mm-Scheibe"
        return dash != std::string::npos && knowledge.in_list(list, word.folded.substr(dash + 1));
    }
};

std::vector<Sentence> sentences_in(const std::vector<std::string>& method) {
    std::vector<Sentence> all;
    for (const auto& text : method)
        for (auto& one : sentences_of(text)) {
            Sentence sentence{std::move(one), {}};
            sentence.words = words_of(sentence.text);
            all.push_back(std::move(sentence));
        }
    return all;
}

// Millimetres where a length starts, which is passed.
std::optional<double> length_at(Cursor& cursor, const Knowledge& knowledge) {
    constexpr double mm_an_inch = 25.4;
    const auto number = number_at(cursor, false);
    if (!number) return std::nullopt;
    cursor.space();
    cursor.eat("-");
    if (eat_listed(cursor, WordList::millimetre_word, knowledge)) return number->band.mid;
    if (cursor.eat("\"") || cursor.eat("\u2033") || cursor.eat("\u201D") || eat_listed(cursor, WordList::inch_word, knowledge))
        return number->band.mid * mm_an_inch;
    return std::nullopt;
}

// Minutes where a time starts at `at`, in any tongue.
std::optional<double> time_at(std::string_view text, std::size_t at, const Knowledge& knowledge) {
    constexpr double seconds_a_minute = 60, minutes_an_hour = 60, minutes_a_day = 1440;
    Cursor cursor(text, at);
    const auto number = number_at(cursor, false);
    if (!number) return std::nullopt;
    cursor.space();
    cursor.eat("-");
    if (eat_listed(cursor, WordList::second_word, knowledge)) return number->band.mid / seconds_a_minute;
    if (eat_listed(cursor, WordList::minute_word, knowledge)) return number->band.mid;
    if (eat_listed(cursor, WordList::hour_word, knowledge)) return number->band.mid * minutes_an_hour;
    if (eat_listed(cursor, WordList::day_word, knowledge)) return number->band.mid * minutes_a_day;
    return std::nullopt;
}

// The "5" of "4,5 mm" and the "1/2" of "4 1/2 mm" start none.
bool starts_number(const Sentence& sentence, const Word& word) {
    const auto is_digit = [&](std::size_t at) { return std::isdigit(static_cast<unsigned char>(sentence.text[at])) != 0; };
    if (!is_digit(word.begin)) return false;
    if (word.begin < 2 || !is_digit(word.begin - 2)) return true;
    const char before = sentence.text[word.begin - 1];
    return before != ',' && (before != ' ' || word.raw.find('/') == std::string::npos);
}

// "The thermometer says 63", "reads 145": a number by itself, which is no time, length or weight.
std::optional<double> bare_degrees(const Sentence& sentence, std::size_t i) {
    constexpr double least_c = 45, most_c = 100, least_f = 113, most_f = 200;  // judgement
    Cursor cursor(sentence.text, sentence.words[i].begin);
    const auto number = number_at(cursor, false);
    if (!number || number->band.low < number->band.high) return std::nullopt;
    const bool last = i + 1 == sentence.words.size() || sentence.words[i + 1].segment != sentence.words[i].segment;
    const bool joined = !last && (sentence.words[i + 1].folded == "and" || sentence.words[i + 1].folded == "then" ||
                                  sentence.words[i + 1].folded == "degree" || sentence.words[i + 1].folded == "in");
    if (!last && !joined) return std::nullopt;
    const double said = number->band.mid;
    if (said >= least_c && said <= most_c) return said;
    if (said >= least_f && said <= most_f) return (said - 32) / 1.8;
    return std::nullopt;
}

template <class At>
auto first_told(const Sentence& sentence, At at) {
    for (const auto& word : sentence.words)
        if (starts_number(sentence, word))
            if (auto told = at(word)) return told;
    return decltype(at(sentence.words.front())){};
}

// "through the coarse (3/8 inch) plate", "durch die 6-mm-Scheibe", "à la grille de 6 mm": a length with its plate beside it.
std::optional<double> plate_in(const Sentence& sentence, const Knowledge& knowledge) {
    constexpr std::size_t near = 4;  // words
    std::optional<double> last;
    std::size_t passed = 0;  // "4-6 mm" is one length
    for (std::size_t i = 0; i < sentence.words.size(); ++i) {
        if (sentence.words[i].begin < passed || !starts_number(sentence, sentence.words[i])) continue;
        Cursor cursor(sentence.text, sentence.words[i].begin);
        const auto mm = length_at(cursor, knowledge);
        if (!mm) continue;
        passed = cursor.at();
        bool plate = false, other = false;
        for (std::size_t at = i - std::min(i, near); at < std::min(sentence.words.size(), i + near + 1); ++at) {
            plate = plate || Sentence::in(sentence.words[at], WordList::plate_word, knowledge) ||
                    (at > i && sentence.words[at].folded == "die");  // the German article stands before
            other = other || (at >= i && Sentence::in(sentence.words[at], WordList::casing_word, knowledge));
        }
        if (plate && !other) last = mm;
    }
    return last;
}

bool within(std::string_view key, double value) {
    return std::any_of(process_bounds.begin(), process_bounds.end(),
                       [&](const ProcessBounds& bounds) { return bounds.key == key && value >= bounds.low && value <= bounds.high; });
}

// How many words a figure stands from the nearest word for the core; nothing where the sentence has none.
std::optional<std::size_t> words_from_core(const Sentence& sentence, std::size_t figure, const Knowledge& knowledge) {
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < sentence.words.size(); ++i) {
        if (!Sentence::in(sentence.words[i], WordList::core_word, knowledge)) continue;
        const std::size_t away = i < figure ? figure - i : i - figure;
        nearest = std::min(nearest.value_or(away), away);
    }
    return nearest;
}

// "Poach at 75 C until the core is 72 C": the figure beside the word; without one the first that it is cooked to.
std::optional<double> core_in(const Sentence& sentence, const Knowledge& knowledge) {
    constexpr double coolest = 50, hottest = 95;  // judgement: above it is the oven, below it the fridge
    const bool cooked = sentence.says(WordList::cooking_word, knowledge);
    std::optional<double> core;
    std::optional<std::size_t> nearest;
    for (std::size_t i = 0; i < sentence.words.size(); ++i) {
        if (!starts_number(sentence, sentence.words[i])) continue;
        const auto celsius = celsius_at(sentence.text, sentence.words[i].begin, knowledge);
        if (!celsius || *celsius < coolest || *celsius > hottest) continue;
        const auto away = words_from_core(sentence, i, knowledge);
        const bool reached = cooked && i > 0 && knowledge.in_list(WordList::up_to_a_heat, sentence.words[i - 1].folded);
        if (away && (!nearest || *away < *nearest)) {
            nearest = away;
            core = celsius;
        }
        if (!away && reached && !core) core = celsius;
    }
    return core;
}

// What is answered with a warning is not taken over as a step: "let it stand at room temperature for 12 hours".
bool is_advised_against(std::string_view text, const Knowledge& knowledge) {
    const auto found = hazards_in(hazard_text(text), knowledge.records().lexicon);
    return std::any_of(found.begin(), found.end(), [](const HazardMatch& match) { return match.hazard->kind == "method"; });
}

// Whether a warning of the lexicon about holding cooked food warm stands in it.
bool is_held_warm(std::string_view text, const Knowledge& knowledge) {
    const auto found = hazards_in(hazard_text(text), knowledge.records().lexicon);
    return std::any_of(found.begin(), found.end(),
                       [](const HazardMatch& match) { return match.hazard->id.starts_with("method-held-warm"); });
}

// A heat beside a word of keeping warm, or after it, cooks nothing: "fry to 62 C core, then keep warm".
bool keeps_warm(const Sentence& sentence, std::size_t at, const Knowledge& knowledge) {
    return std::any_of(sentence.words.begin(), sentence.words.end(), [&](const Word& word) {
        return Sentence::in(word, WordList::keeping_warm_word, knowledge) &&
               (word.segment == sentence.words[at].segment || word.begin < sentence.words[at].begin);
    });
}

// Whether the clause that holds the word `at` has a word of the list.
bool says_beside(const Sentence& sentence, std::size_t at, WordList list, const Knowledge& knowledge) {
    return std::any_of(sentence.words.begin(), sentence.words.end(),
                       [&](const Word& word) { return word.segment == sentence.words[at].segment && Sentence::in(word, list, knowledge); });
}

// "Cook to 55 C, keep warm at 65 C": the first heat is that of the cooking.
bool is_of_cooking(const Sentence& sentence, std::size_t at, const Knowledge& knowledge) {
    return says_beside(sentence, at, WordList::cooking_word, knowledge) &&
           !says_beside(sentence, at, WordList::keeping_warm_word, knowledge) &&
           !says_beside(sentence, at, WordList::holding_word, knowledge);
}

// A heat that food is held at: beside or behind a word of holding, and not that of the cooking.
bool is_of_holding(const Sentence& sentence, std::size_t at, const Knowledge& knowledge) {
    const bool behind = std::any_of(sentence.words.begin(), sentence.words.end(), [&](const Word& word) {
        return word.begin < sentence.words[at].begin && Sentence::in(word, WordList::holding_word, knowledge);
    });
    const bool beside =
        says_beside(sentence, at, WordList::holding_word, knowledge) && !says_beside(sentence, at, WordList::cooking_word, knowledge);
    return (behind || beside) && !is_of_cooking(sentence, at, knowledge);
}

// The least heat that a sentence has hot food held at, and that is no cold.
std::optional<double> coolest_of_hot(std::string_view text, const Knowledge& knowledge) {
    constexpr double cold = 8;  // C, as a mass that stands
    const Sentence sentence{std::string(text), words_of(text)};
    std::optional<double> least;
    for (std::size_t i = 0; i < sentence.words.size(); ++i) {
        if (!starts_number(sentence, sentence.words[i]) || !is_of_holding(sentence, i, knowledge)) continue;
        const auto celsius = celsius_at(sentence.text, sentence.words[i].begin, knowledge);
        if (celsius && *celsius > cold) least = std::min(least.value_or(*celsius), *celsius);
    }
    return least;
}

// The heat that a sentence has the mass stand at for hours: "the mass stands 5 h at 20 C before filling".
std::optional<double> stands_too_warm(std::string_view text, const Knowledge& knowledge) {
    constexpr double coolest = 8, warmest = 45, least_minutes = 120;  // C and minutes: usual limits of the trade
    const Sentence sentence{std::string(text), words_of(text)};
    if (!sentence.says(WordList::mass_word, knowledge) || sentence.says(WordList::cooking_word, knowledge)) return std::nullopt;
    const bool night = sentence.says(WordList::night_word, knowledge);
    const auto minutes = first_told(sentence, [&](const Word& word) { return time_at(sentence.text, word.begin, knowledge); });
    if (!night && (!minutes || *minutes <= least_minutes)) return std::nullopt;
    for (const auto& word : sentence.words) {
        if (!starts_number(sentence, word)) continue;
        const auto celsius = celsius_at(sentence.text, word.begin, knowledge);
        if (celsius && *celsius > coolest && *celsius < warmest) return celsius;
    }
    return std::nullopt;
}

// From mixing to cooking: hours, or a night. Half an hour is for chilling the meat.
// How long cooked links keep, or frozen meat thaws, is no rest.
std::optional<double> rest_in(const Sentence& sentence, std::string_view before, const Knowledge& knowledge) {
    constexpr double least_h = 2, minutes_an_hour = 60;  // judgement
    const KeptDays kept = kept_days(sentence.text, before, knowledge);
    if (kept.cooked || kept.kept == KeptFor::too_long || sentence.says(WordList::thaw_word, knowledge)) return std::nullopt;
    if (!sentence.says(WordList::rest_word, knowledge) || sentence.says(WordList::cooking_word, knowledge)) return std::nullopt;
    if (is_advised_against(sentence.text, knowledge)) return std::nullopt;
    if (const auto minutes = first_told(sentence, [&](const Word& word) { return time_at(sentence.text, word.begin, knowledge); }))
        return *minutes >= least_h * minutes_an_hour ? std::optional<double>(*minutes / minutes_an_hour) : std::nullopt;
    if (sentence.says(WordList::night_word, knowledge)) return knowledge.parameter("reading.night").mid;
    return std::nullopt;
}

// The first time told; seconds only where no minutes are: "pulse 20 seconds, then mix 2 minutes".
std::optional<double> mixing_in(const Sentence& sentence, const Knowledge& knowledge) {
    std::optional<double> seconds;
    for (const auto& word : sentence.words) {
        const auto minutes = starts_number(sentence, word) ? time_at(sentence.text, word.begin, knowledge) : std::nullopt;
        if (minutes && *minutes >= 1) return minutes;
        if (!seconds) seconds = minutes;
    }
    return seconds;
}

}  // namespace

std::optional<double> plate_in_text(std::string_view text, const Knowledge& knowledge) {
    std::optional<double> last;
    for (const auto& sentence : sentences_in({std::string(text)}))
        if (const auto plate = plate_in(sentence, knowledge); plate && within("plate", *plate)) last = plate;
    return last;
}

Process process_in_method(const std::vector<std::string>& method, const Knowledge& knowledge) {
    Process told = making_in_words(method, knowledge);
    double mixing = 0;
    std::string before;
    for (const auto& sentence : sentences_in(method)) {
        if (const auto plate = plate_in(sentence, knowledge); plate && within("plate", *plate)) told.plate_mm = plate;
        if (sentence.says(WordList::mixing_word, knowledge) && !sentence.says(WordList::cooking_word, knowledge))
            if (const auto minutes = mixing_in(sentence, knowledge)) {
                constexpr double longest = 30;  // judgement: longer is a rest
                if (*minutes <= longest) mixing += *minutes;
            }
        const auto rest = steeps_meat_in_acid(sentence.text, knowledge) ? std::nullopt : rest_in(sentence, before, knowledge);
        if (rest && within("rest", *rest)) told.rest_h = rest;
        if (const auto core = core_in(sentence, knowledge)) told.core_c = core;
        before = sentence.text;
    }
    if (mixing > 0 && within("mixing", mixing)) told.mixing_min = mixing;
    return told;
}

namespace {

// "Bei 60 Grad ziehen lassen": what rests in such a heat is poached; not what cools from it, "chill from 60 to 5 C".
bool rests_in_heat(const Sentence& sentence, double warmest, const Knowledge& knowledge) {
    if (!sentence.says(WordList::rest_word, knowledge)) return false;
    bool hot = false;
    for (std::size_t i = 0; i < sentence.words.size(); ++i) {
        if (!starts_number(sentence, sentence.words[i])) continue;
        const auto celsius = celsius_at(sentence.text, sentence.words[i].begin, knowledge);
        if (celsius && *celsius <= warmest) return false;
        hot = hot || celsius.has_value();
    }
    return hot;
}

}  // namespace

std::optional<double> cooked_too_cool(const std::vector<std::string>& method, std::optional<double> core_c, const Knowledge& knowledge) {
    constexpr double warmest = 40;  // judgement: below it is no cooking
    const double coolest = knowledge.parameter("reading.coolest-cooking").mid;
    std::optional<double> least;
    for (const auto& sentence : sentences_in(method)) {
        const bool measured = sentence.says(WordList::core_word, knowledge) || sentence.says(WordList::done_word, knowledge);
        if (!measured && !sentence.says(WordList::cooking_word, knowledge) && !rests_in_heat(sentence, warmest, knowledge)) continue;
        const bool held = is_held_warm(sentence.text, knowledge);
        bool first = true;
        for (std::size_t i = 0; i < sentence.words.size(); ++i) {
            if (!starts_number(sentence, sentence.words[i])) continue;
            auto celsius = celsius_at(sentence.text, sentence.words[i].begin, knowledge);
            if (keeps_warm(sentence, i, knowledge)) continue;
            constexpr double held_hot = 57.5;  // C: what is held is held cooler than this
            if (celsius && held && !is_of_cooking(sentence, i, knowledge) && (!std::exchange(first, false) || *celsius < held_hot))
                continue;
            if (!celsius && measured && i > 0 && sentence.says(WordList::thermometer_word, knowledge)) celsius = bare_degrees(sentence, i);
            if (celsius && *celsius > warmest && *celsius < coolest && celsius != core_c)
                least = std::min(least.value_or(coolest), *celsius);
        }
    }
    return least;
}

std::optional<double> held_too_cool(std::string_view text, const Knowledge& knowledge) {
    constexpr double coolest = 20;  // C: cooler is the fridge or a cellar
    double hot = 0;
    for (const auto& rules : knowledge.records().rules)
        if (rules.hot_holding) hot = std::max(hot, rules.hot_holding->band.mid);
    const Sentence sentence{std::string(text), words_of(text)};
    if (!sentence.says(WordList::holding_word, knowledge)) return std::nullopt;
    for (std::size_t i = 0; i < sentence.words.size(); ++i) {
        if (!starts_number(sentence, sentence.words[i]) || is_of_cooking(sentence, i, knowledge)) continue;
        const auto celsius = celsius_at(sentence.text, sentence.words[i].begin, knowledge);
        if (celsius && *celsius > coolest && *celsius < hot) return celsius;
    }
    return std::nullopt;
}

namespace {

// Whether a warning stands in it that is not only of how it looks inside: "pink at 58 C" is also held too cool.
bool is_warned_of(std::string_view text, const Knowledge& knowledge) {
    const auto found = hazards_in(hazard_text(text), knowledge.records().lexicon);
    return std::any_of(found.begin(), found.end(), [](const HazardMatch& match) {
        const auto& id = match.hazard->id;
        return match.hazard->kind == "method" && !id.starts_with("method-pink") && id != "method-left-translucent";
    });
}

constexpr std::string_view keeping_too_long = "method-keeping-long", keeping_weeks = "method-keeping-weeks";

// How long it says that links keep is told where they do not, raw or cooked as it says.
void judge_keeping(std::vector<Reason>& all, std::string_view text, std::string_view before, const Knowledge& knowledge) {
    const KeptFor kept = kept_days(text, before, knowledge).kept;
    const auto told = kept == KeptFor::not_said ? std::nullopt : hazard_by_id(keeping_too_long, one_line(text), knowledge);
    if (!told) return;
    std::erase_if(all, [&](const Reason& one) { return one.note == told->note; });
    const auto weeks = hazard_by_id(keeping_weeks, {}, knowledge);
    const bool is_told = std::any_of(all.begin(), all.end(), [&](const Reason& one) { return weeks && one.note == weeks->note; });
    if (kept == KeptFor::too_long && !is_told) all.push_back(*told);
}

std::vector<Reason> told_in_sentence(std::string_view text, std::string_view before, const Knowledge& knowledge) {
    auto all = told_hazards(text, knowledge);
    judge_keeping(all, text, before, knowledge);
    const bool warned = is_warned_of(text, knowledge);
    const bool stands = !warned && stands_too_warm(text, knowledge);
    if (!warned && (stands || held_too_cool(text, knowledge)))
        if (auto told = hazard_by_id(stands ? "method-warm-rest" : "method-low-bath", one_line(text), knowledge)) all.push_back(*told);
    // "Keep warm at 58 C" is hot enough by some rules and not by others.
    for (auto& told : all)
        if (Figure* hot = hot_holding_of(told)) hot->before = coolest_of_hot(text, knowledge);
    return all;
}

}  // namespace

std::vector<Reason> told_in_sentences(const std::vector<std::string>& sentences, const Knowledge& knowledge) {
    std::vector<Reason> all;
    std::string_view before;
    for (const auto& sentence : sentences) {
        for (auto& told : told_in_sentence(sentence, before, knowledge)) all.push_back(std::move(told));
        before = sentence;
    }
    return all;
}

namespace {

// "Squeeze dry", but not "do not squeeze".
bool squeezes_in(const Sentence& sentence, const Knowledge& knowledge) {
    bool denied = false;
    for (std::size_t i = 0; i < sentence.words.size(); ++i) {
        if (i > 0 && sentence.words[i].segment != sentence.words[i - 1].segment) denied = false;
        denied = denied || Sentence::in(sentence.words[i], WordList::not_done_word, knowledge);
        if (!denied && Sentence::in(sentence.words[i], WordList::squeezing_word, knowledge)) return true;
    }
    return false;
}

}  // namespace

std::vector<BlanchedInMethod> blanched_in_method(const std::vector<std::string>& method, WordList done, const Knowledge& knowledge) {
    constexpr double longest = 15;  // minutes, judgement: longer is boiling
    std::vector<BlanchedInMethod> all;
    for (const auto& sentence : sentences_in(method)) {
        const bool squeezes = squeezes_in(sentence, knowledge);
        if (!sentence.says(done, knowledge)) {
            for (auto& blanched : all) blanched.behind.push_back({sentence.text, squeezes});
            continue;
        }
        auto minutes = first_told(sentence, [&](const Word& word) { return time_at(sentence.text, word.begin, knowledge); });
        if (minutes && *minutes > longest) minutes.reset();
        all.push_back({sentence.text, minutes, squeezes, {}});
    }
    return all;
}

bool sentence_names(std::string_view sentence, const Ingredient& food, const Knowledge& knowledge) {
    constexpr std::size_t longest_name = 3;  // words
    const auto names_it = [&](std::string_view text) {
        const auto words = words_of(text);
        for (std::size_t first = 0; first < words.size(); ++first)
            for (std::size_t last = first + 1; last <= std::min(words.size(), first + longest_name); ++last) {
                const std::string name = phrase(words, first, last);
                const auto* found = knowledge.ingredient_named(name);
                if (!found) found = knowledge.ingredient_meant(name);
                if (found == &food) return true;
            }
        return false;
    };
    if (names_it(sentence)) return true;
    const auto english = in_english(sentence, knowledge);
    return std::any_of(english.begin(), english.end(), [&](const Rewording& one) { return names_it(one.text); });
}

}  // namespace standin
