#include "formula/stock/stock_packs.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

#include "core/names.hpp"
#include "core/words.hpp"
#include "formula/amounts/process_text.hpp"
#include "formula/lexer/digits.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/measures.hpp"
#include "formula/lexer/number_text.hpp"
#include "formula/words/stock_words.hpp"
#include "knowledge/records/word_list.hpp"
#include "standin/number_text.hpp"

namespace standin {
namespace {

struct Span {
    std::size_t begin = 0, end = 0;  // in the line
};

// A number with where it stands.
struct Counted {
    double number = 1;
    Span span;
};

class PackLine {
public:
    PackLine(std::string_view line, const Knowledge& knowledge) : line_(line), knowledge_(knowledge), words_(words_of(line)) {
        for (const auto& word : words_) {
            if (word.begin < weight_.end) continue;
            const auto span = weight_at(word.begin);
            if (!span) continue;
            ++weights_;
            weight_ = *span;
        }
        if (weights_ == 1) look_around();
    }

    bool open() const { return weights_ == 1 && !number_ && open_; }

    std::optional<std::string> rewritten() const {
        if (weights_ != 1 || !number_) return std::nullopt;
        std::string name(line_);
        auto taken = taken_;
        std::sort(taken.begin(), taken.end(), [](const Span& a, const Span& b) { return a.begin > b.begin; });
        for (const auto& span : taken) name.replace(span.begin, span.end - span.begin, " ");
        name = tidy(std::move(name));
        if (name.empty()) return std::nullopt;
        const std::string one(line_.substr(weight_.begin, weight_.end - weight_.begin));
        const std::string times = *number_ == 1 ? "" : plain_number(*number_) + " x ";
        return times + one + " " + (kept_pack_.empty() ? "" : kept_pack_ + " ") + name;
    }

private:
    std::optional<Span> weight_at(std::size_t at) const {
        Cursor cursor(line_, at);
        if (!cursor.digit() || !number_at(cursor, false)) return std::nullopt;
        cursor.eat("-");
        const auto unit = unit_at(cursor);
        if (!unit || !unit->size.empty()) return std::nullopt;
        const bool poured = unit->unit->dimension == Dimension::volume && is_metric(*unit->unit);
        if (unit->unit->dimension != Dimension::mass && !poured) return std::nullopt;
        return Span{at, cursor.at()};
    }

    bool is_pack(const Word& word) const {
        if (knowledge_.in_list(WordList::pack_word, word.folded)) return true;
        const Unit* unit = unit_named(word.folded);
        return unit && (is_container(*unit) || unit->word == "bunch" || unit->word == "head");
    }

    // A bunch of so much is one weight for the lot as often as for each; what is sold in a pack has its weight on it.
    bool has_its_weight_on_it(const Word& word) const {
        const Unit* unit = unit_named(word.folded);
        return knowledge_.in_list(WordList::pack_word, word.folded) || (unit && is_container(*unit));
    }

    std::optional<double> whole_number_at(std::size_t i) const {
        Cursor cursor(line_, words_[i].begin);
        const auto number = number_at(cursor);
        const bool whole = number && cursor.at() >= words_[i].end && number->band.low == number->band.high &&
                           std::floor(number->band.mid) == number->band.mid && number->band.mid >= 1;
        return whole && cursor.at() == words_[i].end ? std::optional(number->band.mid) : std::nullopt;
    }

    static bool is_times(std::string_view sign) { return sign == "x" || sign == "X" || sign == "*"; }

    // "x2", "x 2", "2x", "2 x" at the word `i`; how many words it takes is in where it ends.
    std::optional<Counted> times_at(std::size_t i) const {
        const std::string_view raw = words_[i].raw;
        const auto counted = [&](std::string_view digits, std::size_t last) -> std::optional<Counted> {
            const auto number = digits.empty() || !only_digits(digits) ? std::nullopt : number_in(digits);
            return number ? std::optional(Counted{*number, {words_[i].begin, words_[last].end}}) : std::nullopt;
        };
        if (raw.size() > 1 && is_times(raw.substr(0, 1))) return counted(raw.substr(1), i);
        if (raw.size() > 1 && is_times(raw.substr(raw.size() - 1))) return counted(raw.substr(0, raw.size() - 1), i);
        if (i + 1 >= words_.size()) return std::nullopt;
        const std::string_view next = words_[i + 1].raw;
        if (is_times(raw)) return counted(next, i + 1);
        return is_times(next) ? counted(raw, i + 1) : std::nullopt;
    }

    // Whether between two places stand only blanks and signs out of `signs`.
    bool only_signs(std::size_t from, std::size_t to, std::string_view signs) const {
        return from <= to && line_.substr(from, to - from).find_first_not_of(signs) == std::string_view::npos;
    }

    bool ends_clause(std::size_t at) const {
        const auto next = line_.find_first_not_of(' ', at);
        return next == std::string_view::npos || line_[next] == ',' || line_[next] == ')' || line_[next] == ';';
    }

    std::size_t word_from(std::size_t at) const {
        std::size_t i = 0;
        while (i < words_.size() && words_[i].begin < at) ++i;
        return i;
    }

    void take(double number, std::initializer_list<Span> spans) {
        number_ = number;
        taken_.insert(taken_.end(), spans.begin(), spans.end());
        taken_.push_back(weight_);
    }

    void keep_pack(const Word& word) {
        const Unit* unit = unit_named(word.folded);
        if (unit && preserves(*unit)) kept_pack_ = unit->word;
    }

    // "200 g each", "je 200 g": the word beside the weight that gives it to every pack; empty where there is none.
    Span each_beside() const {
        const std::size_t behind = word_from(weight_.end);
        constexpr std::size_t longest = 2;  // words
        for (std::size_t last = std::min(words_.size(), behind + longest); last > behind; --last)
            if (knowledge_.in_list(WordList::each_of, fold(phrase(words_, behind, last))) &&
                only_signs(weight_.end, words_[behind].begin, " "))
                return {words_[behind].begin, words_[last - 1].end};
        return {};
    }

    void look_around() {
        const std::size_t at = word_from(weight_.begin), behind = word_from(weight_.end);
        // "200 g bag"
        const bool pack_behind = behind < words_.size() && is_pack(words_[behind]) && only_signs(weight_.end, words_[behind].begin, " -");
        Span pack = pack_behind ? Span{words_[behind].begin, words_[behind].end} : Span{weight_.end, weight_.end};
        if (pack_behind) keep_pack(words_[behind]);
        // "bag 200 g"
        const bool pack_ahead = at > 0 && is_pack(words_[at - 1]) && only_signs(words_[at - 1].end, weight_.begin, " ,(");
        const std::size_t next = word_from(pack.end);
        if (next < words_.size())
            if (const auto times = times_at(next); times && only_signs(pack.end, times->span.begin, pack_behind ? " ,(" : " (")) {
                if (pack_ahead && !pack_behind && !whole_number_before(at - 1)) {
                    keep_pack(words_[at - 1]);
                    pack = {words_[at - 1].begin, words_[at - 1].end};
                }
                return take(times->number, {pack, times->span});
            }
        if (at > 0 && only_signs(words_[at - 1].end, weight_.begin, " ")) {
            const bool multiplied = is_times(words_[at - 1].raw) && at > 1 && only_digits(words_[at - 2].raw);
            const auto number = pack_behind ? whole_number_at(at - 1) : std::nullopt;
            if (number && at > 1 && ends_clause(pack.end))  // "green chiles two 4 oz cans"
                return take(*number, {{words_[at - 1].begin, words_[at - 1].end}, pack});
            if (multiplied || number) return;  // "2 x 200 g", "two 200 g bags"
        }
        if (const auto times = times_at(0); times && pack_behind && times->span.end <= weight_.begin)
            return take(times->number, {pack, times->span});
        // "200 g bags, two"
        if (pack_behind && next + 1 == words_.size() && words_[next].segment != words_[behind].segment)
            if (const auto number = whole_number_at(next)) return take(*number, {pack, {words_[next].begin, words_[next].end}});
        count_of_packs(at, behind);
        if (number_ || open_ || pack_behind || !pack_ahead || !ends_clause(weight_.end) || at < 2 || whole_number_before(at - 1)) return;
        keep_pack(words_[at - 1]);
        take(1, {{words_[at - 1].begin, words_[at - 1].end}});
    }

    bool whole_number_before(std::size_t pack) const { return pack > 0 && whole_number_at(pack - 1).has_value(); }

    // "2 bags" anywhere, and what joins it to the weight.
    void count_of_packs(std::size_t at, std::size_t behind) {
        const Span each = each_beside();
        const std::size_t end = std::max(weight_.end, each.end);
        for (std::size_t i = 0; i + 1 < words_.size(); ++i) {
            if ((i + 1 >= at && i < behind) || !is_pack(words_[i + 1]) || words_[i].segment != words_[i + 1].segment) continue;
            const auto number = whole_number_at(i);
            if (!number) continue;
            const Span packs{words_[i].begin, words_[i + 1].end};
            std::size_t joint = at;
            while (joint > i + 2 && knowledge_.in_list(WordList::pack_joint, words_[joint - 1].folded)) --joint;
            const bool joined = joint < at && only_signs(words_[at - 1].end, weight_.begin, " ") && i < at;
            const bool beside = joined ? joint == i + 2 : at == i + 2 && only_signs(packs.end, weight_.begin, " ,(:");
            keep_pack(words_[i + 1]);
            if (joined && (beside || !plainly_of(joint, at)))
                return take(*number, {packs, {words_[joint].begin, words_[at - 1].end}, each});
            if (each.end > each.begin && i < at) return take(*number, {packs, each});
            const bool after = i >= behind && only_signs(end, packs.begin, " ,(") && ends_clause(packs.end);
            kept_pack_.clear();
            if ((!beside || !ends_clause(end)) && !after) continue;
            if (*number == 1 || after) {  // "500 g (2 bags)", "1 kg, two bags"
                keep_pack(words_[i + 1]);
                return take(1, {packs});
            }
            open_ = has_its_weight_on_it(words_[i + 1]);
            return;
        }
    }

    // "2 bags of spinach of 200 g": "of" joins a name as well.
    bool plainly_of(std::size_t first, std::size_t last) const {
        for (std::size_t i = first; i < last; ++i)
            if (!is_times(words_[i].raw) && words_[i].folded != "a") return true;
        return false;
    }

    // The name without the holes in it.
    static std::string tidy(std::string name) {
        for (const std::string_view hole : {"( )", "()", "(,", "( ,"})
            replace_all(name, hole, hole.front() == '(' && hole.back() == ',' ? "(" : " ");
        for (std::size_t i = 0; i < name.size();) {
            const bool blank =
                name[i] == ' ' && (i == 0 || name[i - 1] == ' ' || (i + 1 < name.size() && (name[i + 1] == ',' || name[i + 1] == ')')));
            if (blank) name.erase(i, 1);
            else ++i;
        }
        const auto open = std::count(name.begin(), name.end(), '('), close = std::count(name.begin(), name.end(), ')');
        if (open != close)
            std::replace_if(
                name.begin(), name.end(), [](char c) { return c == '(' || c == ')'; }, ' ');
        return std::string(bare(name));
    }

    std::string_view line_;
    const Knowledge& knowledge_;
    std::vector<Word> words_;
    std::size_t weights_ = 0;
    Span weight_;
    std::optional<double> number_;
    std::vector<Span> taken_;
    std::string kept_pack_;  // one that keeps food: what is in it is drained
    bool open_ = false;
};

// "2 bags @ 200 g", "200 g \u00D7 2"
std::string with_plain_signs(std::string_view line) {
    std::string plain(line);
    replace_all(plain, "\u00D7", "x");
    replace_all(plain, "@", " x ");
    return plain;
}

}  // namespace

std::string with_packs_first(std::string_view line, const Knowledge& knowledge) {
    const std::string plain = with_plain_signs(line);
    return PackLine(plain, knowledge).rewritten().value_or(std::string(line));
}

bool leaves_packs_open(std::string_view line, const Knowledge& knowledge) { return PackLine(with_plain_signs(line), knowledge).open(); }

Error asks_of_packs(const std::string& where) {
    return {Trouble::bad_data, "is the weight that of one pack or of all of them", where, {"2 x 200 g", "400 g"}};
}

}  // namespace standin
