#include "core/words.hpp"

namespace standin {

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (const auto& word : words) text += (text.empty() ? "" : ", ") + word;
    return text;
}

}  // namespace standin
