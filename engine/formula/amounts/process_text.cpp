#include "formula/amounts/process_text.hpp"

#include <algorithm>
#include <array>
#include <iterator>

#include "core/names.hpp"
#include "core/process_bounds.hpp"
#include "core/typed_reader.hpp"
#include "formula/lexer/number_text.hpp"
#include "knowledge/records/word_list.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

enum class ProcessKind { length, time_min, time_h, temperature };

ProcessKind kind_of(std::string_view key) {
    if (key == "plate" || key == "diameter") return ProcessKind::length;
    if (key == "mixing") return ProcessKind::time_min;
    return key == "rest" ? ProcessKind::time_h : ProcessKind::temperature;
}

constexpr std::array<std::pair<std::string_view, Order>, 3> orders{
    {{"salt first", Order::salt_first}, {"all together", Order::all_together}, {"acid first", Order::acid_first}}};
constexpr std::array<std::pair<std::string_view, Cook>, 5> cooks{
    {{"pan", Cook::pan}, {"grill", Cook::grill}, {"oven", Cook::oven}, {"poach", Cook::poach}, {"loose", Cook::loose}}};

constexpr double simmered_until_tender_c = 92;  // where the core of a braise or a stew ends up, whatever was asked for; judgement

std::optional<double> temperature(Cursor& cursor) {
    const auto number = number_at(cursor, false);
    if (!number) return std::nullopt;
    cursor.space();
    if (!cursor.eat("°")) cursor.eat_any_word({"degree", "deg"});
    if (cursor.eat_any_word({"c", "celsius"})) return number->band.mid;
    if (cursor.eat_any_word({"f", "fahrenheit"})) return (number->band.mid - 32) / 1.8;
    return std::nullopt;
}

std::optional<double> length(Cursor& cursor) {
    const auto number = number_at(cursor, false);
    if (!number) return std::nullopt;
    if (cursor.eat_any_word({"mm", "millimeter", "millimetre"})) return number->band.mid;
    if (cursor.eat_any_word({"cm", "centimeter", "centimetre"})) return number->band.mid * 10;
    cursor.space();
    cursor.eat("-");
    if (cursor.eat_any_word({"in", "inch"}) || cursor.eat("\"") || cursor.eat("″")) return number->band.mid * 25.4;
    return std::nullopt;
}

std::optional<double> read(ProcessKind kind, std::string_view value) {
    Cursor cursor(value);
    std::optional<double> out;
    if (kind == ProcessKind::temperature) out = temperature(cursor);
    else if (kind == ProcessKind::length) out = length(cursor);
    else if (const auto minutes = minutes_at(cursor)) out = kind == ProcessKind::time_h ? *minutes / 60 : *minutes;
    cursor.eat(".");
    cursor.space();
    return cursor.done() ? out : std::nullopt;
}

std::string_view example(ProcessKind kind) {
    switch (kind) {
        case ProcessKind::length:
            return "a length such as \"10 mm\" or \"3/8 in\"";
        case ProcessKind::time_min:
            return "a time such as \"2 min\"";
        case ProcessKind::time_h:
            return "a time such as \"36 h\" or \"2 days\"";
        case ProcessKind::temperature:
            return "a temperature such as \"71 C\" or \"160 F\"";
    }
    return {};
}

std::string_view unit(ProcessKind kind) {
    switch (kind) {
        case ProcessKind::length:
            return " mm";
        case ProcessKind::time_min:
            return " min";
        case ProcessKind::time_h:
            return " h";
        case ProcessKind::temperature:
            return " C";
    }
    return {};
}

Error expected(std::string_view key, std::string_view value, std::string what) {
    return {Trouble::bad_data, std::string(key) + ": expected " + std::move(what) + ", not \"" + std::string(value) + "\"", "", {}};
}

std::optional<Error> set_measured(Process& process, const ProcessBounds& entry, std::string_view value) {
    const ProcessKind kind = kind_of(entry.key);
    const auto number = read(kind, value);
    if (!number) return expected(entry.key, value, std::string(example(kind)));
    if (*number < entry.low || *number > entry.high)
        return expected(entry.key, value,
                        "between " + plain_number(entry.low) + " and " + plain_number(entry.high) + std::string(unit(kind)));
    process.*entry.field = *number;
    return std::nullopt;
}

// "0 min 4 C, 8 min 55 C, 12 min 71 C": what the thermometer said, in the order of time.
std::optional<Error> set_core_curve(Process& process, std::string_view value) {
    std::vector<CoreReading> curve;
    Cursor cursor(value);
    bool sound = true;
    while (sound && !cursor.done()) {
        const auto minutes = minutes_at(cursor);
        cursor.space();
        const auto celsius = minutes ? temperature(cursor) : std::nullopt;
        sound = celsius && (curve.empty() || *minutes > curve.back().minutes) && *celsius > coldest_core_c && *celsius < hottest_core_c;
        if (sound) curve.push_back({*minutes, *celsius});
        cursor.space();
        cursor.eat(",");
        cursor.space();
    }
    if (!sound || curve.size() < 2)
        return expected("core curve", value, "at least two readings in the order of time, such as \"0 min 4 C, 8 min 55 C, 12 min 71 C\"");
    process.core_curve = std::move(curve);
    return std::nullopt;
}

template <class E, std::size_t N>
std::optional<Error> set_word(std::optional<E>& field, const std::array<std::pair<std::string_view, E>, N>& words, std::string_view key,
                              std::string_view value) {
    std::string known;
    for (const auto& [word, meaning] : words) {
        if (fold(value) == fold(word)) {
            field = meaning;
            return std::nullopt;
        }
        known += (known.empty() ? "\"" : ", \"") + std::string(word) + "\"";
    }
    return expected(key, value, "one of " + known);
}

template <class E, std::size_t N>
std::string_view word_of(E value, const std::array<std::pair<std::string_view, E>, N>& words) {
    for (const auto& [word, meaning] : words)
        if (meaning == value) return word;
    return {};
}

}  // namespace

const std::vector<std::string_view>& process_keys() {
    static const std::vector<std::string_view> keys{"plate", "mixing", "mixed at", "rest",       "rest at",
                                                    "order", "cook",   "core",     "core curve", "diameter"};
    return keys;
}

std::optional<Error> set_process(Process& process, std::string_view key, std::string_view value) {
    const std::string folded = fold(key);
    if (folded == "order") return set_word(process.order, orders, folded, value);
    if (folded == "cook") return set_word(process.cook, cooks, folded, value);
    if (folded == "core curve") return set_core_curve(process, value);
    for (const auto& entry : process_bounds)
        if (entry.key == folded) return set_measured(process, entry, value);
    return Error{Trouble::bad_data, "unknown part of the process \"" + std::string(key) + "\"", "", nearest_words(key, process_keys())};
}

namespace {

struct KitchenWords {
    std::string_view key;
    WordList list;
    std::string_view means;
    bool exactly = false;  ///< another word for the same
};

constexpr KitchenWords kitchen_words[] = {
    {"cook", WordList::cook_pan, "pan", true},
    {"cook", WordList::cook_grill, "grill", true},
    {"cook", WordList::cook_oven, "oven", true},
    {"cook", WordList::cook_poach, "poach", true},
    {"cook", WordList::cook_until_tender, "poach", true},
    {"cook", WordList::cook_loose, "loose", true},
    {"cook", WordList::cook_as_pan, "pan"},
    {"cook", WordList::cook_as_oven, "oven"},
    {"order", WordList::order_acid_last, "salt first"},
    {"order", WordList::order_acid_first, "acid first"},
    {"mixing", WordList::mixing_none, "0 min"},
    {"mixing", WordList::mixing_no_time, ""},
};

const KitchenWords* kitchen_words_of(std::string_view key, std::string_view value, const Knowledge& knowledge) {
    const std::string at = fold(key), said = fold(value);
    const auto* found = std::find_if(std::begin(kitchen_words), std::end(kitchen_words),
                                     [&](const KitchenWords& words) { return words.key == at && knowledge.in_list(words.list, said); });
    return found == std::end(kitchen_words) ? nullptr : found;
}

}  // namespace

std::optional<Error> set_process(Process& process, std::string_view key, std::string_view value, const Knowledge& knowledge) {
    if (fold(key) == "cook" && knowledge.in_list(WordList::cook_smoked, fold(value)))
        return Error{Trouble::bad_data,
                     "cook: a smoker keeps the mass warm for hours, and without curing salt germs of botulism grow in it: "
                     "poach or roast it to its core first",
                     "",
                     {"poach", "oven"}};
    const KitchenWords* words = kitchen_words_of(key, value, knowledge);
    if (!words) return set_process(process, key, value);
    if (words->list == WordList::cook_until_tender && !process.core_c) process.core_c = simmered_until_tender_c;
    return words->means.empty() ? std::nullopt : set_process(process, key, words->means);
}

bool is_kitchen_word(std::string_view key, std::string_view value, const Knowledge& knowledge) {
    const KitchenWords* words = kitchen_words_of(key, value, knowledge);
    return words && !words->exactly;
}

std::vector<std::pair<std::string_view, std::string>> process_words(const Process& process) {
    std::vector<std::pair<std::string_view, std::string>> out;
    for (const auto key : process_keys()) {
        if (key == "order" && process.order) out.emplace_back(key, word_of(*process.order, orders));
        if (key == "cook" && process.cook) out.emplace_back(key, word_of(*process.cook, cooks));
        if (key == "core curve" && !process.core_curve.empty()) {
            std::string readings;
            for (const auto& r : process.core_curve)
                readings += (readings.empty() ? "" : ", ") + plain_number(r.minutes) + " min " + plain_number(r.celsius) + " C";
            out.emplace_back(key, readings);
        }
        for (const auto& entry : process_bounds)
            if (entry.key == key && process.*entry.field)
                out.emplace_back(key, plain_number(*(process.*entry.field)) + std::string(unit(kind_of(key))));
    }
    return out;
}

std::string plain_number(double value) { return trimmed_text(value, 7); }

}  // namespace standin
