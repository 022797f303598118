#include "formula/line/method_clauses.hpp"

namespace standin {

std::vector<MethodClause> method_clauses(const std::string& sentence, WordList starts, const Knowledge& knowledge) {
    std::vector<MethodClause> all;
    const auto words = words_of(sentence);
    std::size_t from = 0;
    const auto part = [&](std::size_t to) {
        std::string text = sentence.substr(from, to - from);
        auto of_text = words_of(text);
        all.push_back({std::move(text), std::move(of_text)});
        from = to;
    };
    for (std::size_t i = 1; i < words.size(); ++i)
        if (words[i].segment != words[i - 1].segment || knowledge.in_list(starts, words[i].folded)) part(words[i].begin);
    part(sentence.size());
    return all;
}

}  // namespace standin
