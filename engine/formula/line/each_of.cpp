#include "formula/line/each_of.hpp"

#include <algorithm>
#include <cctype>

#include "core/names.hpp"
#include "formula/food/line_phrases.hpp"
#include "formula/lexer/line_words.hpp"
#include "formula/lexer/quantity_text.hpp"
#include "formula/line/line_text.hpp"
#include "knowledge/records/word_list.hpp"

namespace standin {
namespace {

constexpr std::size_t longest_amount = 4;  // words

std::string between_signs(std::string_view text) {
    constexpr std::string_view signs = " ,;:-";
    const auto first = text.find_first_not_of(signs);
    return first == std::string_view::npos ? std::string() : std::string(text.substr(first, text.find_last_not_of(signs) - first + 1));
}

std::string without_of(std::string text, const Knowledge& knowledge) {
    for (auto next = words_of(text); next.size() > 1 && knowledge.in_list(WordList::of_each, next[0].folded); next = words_of(text))
        text = between_signs(std::string_view(text).substr(next[0].end));
    return text;
}

// What stands between commas and words that join.
std::vector<std::string> parts_of(std::string names, const Knowledge& knowledge) {
    for (const std::string_view sign : {" & ", " + "})
        for (std::size_t i = names.find(sign); i != std::string::npos; i = names.find(sign, i)) names.replace(i, sign.size(), " and ");
    std::vector<std::string> parts(1);
    const auto words = words_of(names);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const bool apart = i > 0 && words[i].segment != words[i - 1].segment,
                   joins = knowledge.in_list(WordList::joins_foods_each, words[i].folded);
        if ((apart || joins) && !parts.back().empty()) parts.emplace_back();
        if (!joins) parts.back() += (parts.back().empty() ? "" : " ") + words[i].raw;
    }
    if (parts.back().empty()) parts.pop_back();
    for (auto& part : parts) part = without_of(std::move(part), knowledge);
    return parts;
}

struct Shared {
    std::string amount, names;
};

class EachReader {
public:
    EachReader(std::string_view line, const Origin& origin, const Knowledge& knowledge, bool on_the_shelf)
        : line_(line), origin_(origin), knowledge_(knowledge), on_the_shelf_(on_the_shelf) {}

    std::vector<std::string> lines() const {
        const std::string cleaned(line_);
        const std::size_t start = line_start(cleaned);
        const auto words = words_of(line_);
        for (std::size_t first = 0; first < words.size(); ++first)
            for (std::size_t last = std::min(words.size(), first + 3); last > first; --last) {
                if (words[first].begin < start || !knowledge_.in_list(WordList::each_of, fold(phrase(words, first, last)))) continue;
                for (const auto& shared : ways(words, first, last, start))
                    if (auto lines = lines_of(shared); lines.size() > 1) return lines;
            }
        return {};
    }

private:
    bool is_amount(std::string_view text) const {
        Cursor cursor(text);
        if (!amount_at(cursor)) return false;
        cursor.space();
        return cursor.done();
    }

    bool opens_amount(std::string_view text) const {
        Cursor cursor(text);
        return amount_at(cursor).has_value();
    }

    // `first`, `last`: the words that say "each".
    std::vector<Shared> ways(const std::vector<Word>& words, std::size_t first, std::size_t last, std::size_t start) const {
        std::vector<Shared> all;
        const auto text = [&](std::size_t from, std::size_t to) { return between_signs(line_.substr(from, to - from)); };
        const std::string before = text(start, words[first].begin);
        const std::string behind = last < words.size() ? text(words[last].begin, line_.size()) : std::string();
        const std::size_t leading = first;
        if (before.empty()) {  // "je 2 g Pfeffer und Kümmel": where the amount ends is told by what can be read
            for (std::size_t count = longest_amount; count > 0; --count)
                if (last + count < words.size() && opens_amount(behind))
                    all.push_back({text(words[last].begin, words[last + count].begin), text(words[last + count].begin, line_.size())});
        } else if (!behind.empty() && (is_amount(before) || (leading <= longest_amount && opens_amount(before)))) {
            all.push_back({before, behind});  // "1 tsp each cumin and coriander"
        }
        if (before.empty() || opens_amount(before)) return all;
        if (!behind.empty() && opens_amount(behind) && words.size() - last <= longest_amount)
            all.push_back({behind, before});                                           // "Pfeffer und Kümmel, je 2 g"
        for (std::size_t count = std::min(longest_amount, first); count > 0; --count)  // "salt and pepper, 5 g each, ground"
            if (const std::string amount = text(words[first - count].begin, words[first].begin); is_amount(amount))
                all.push_back({amount, text(start, words[first - count].begin) + (behind.empty() ? "" : ", " + behind)});
        return all;
    }

    Result<ReadLine> read(const std::string& line) const { return read_line(line, origin_, knowledge_, {}, on_the_shelf_); }

    // "Ground cumin and coriander": both are ground where the second by itself leaves open whether it is.
    std::string with_form(const Shared& shared, const std::string& form, const std::string& part, const std::string& behind) const {
        std::string bare = shared.amount + " " + part + behind;
        const auto alone = read(bare);
        const bool open = !alone || std::any_of(alone->doubts.begin(), alone->doubts.end(),
                                                [](const LineDoubt& doubt) { return is_of_form(doubt.what.kind); });
        if (form.empty() || !open) return alone ? bare : std::string();
        std::string formed = shared.amount + " " + form + " " + part + behind;
        if (read(formed)) return formed;
        return alone ? bare : std::string();
    }

    std::vector<std::string> lines_of(const Shared& shared) const {
        auto parts = parts_of(shared.names, knowledge_);
        std::string behind;  // ", toasted and ground": said of all of them
        while (parts.size() > 1 && !read(shared.amount + " " + parts.back())) {
            behind = ", " + parts.back() + behind;
            parts.pop_back();
        }
        if (parts.size() < 2) return {};
        const auto tells_form = [&](const std::string& folded) { return knowledge_.in_list(WordList::tells_form, folded); };
        const auto head = words_of(parts.front());
        const std::string form = head.size() > 1 && tells_form(head[0].folded) ? head[0].raw : std::string();
        std::vector<std::string> lines;
        for (const auto& part : parts) {
            const auto words = words_of(part);
            const bool has_form = std::any_of(words.begin(), words.end(), [&](const Word& word) { return tells_form(word.folded); });
            lines.push_back(with_form(shared, has_form ? std::string() : form, part, behind));
            if (lines.back().empty()) return {};
        }
        return lines;
    }

    std::string_view line_;
    const Origin& origin_;
    const Knowledge& knowledge_;
    bool on_the_shelf_;
};

}  // namespace

std::vector<std::string> each_of_several(std::string_view line, const Origin& origin, const Knowledge& knowledge, bool on_the_shelf) {
    return EachReader(line, origin, knowledge, on_the_shelf).lines();
}

}  // namespace standin
