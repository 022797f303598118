#include "knowledge/word_lists.hpp"

namespace standin {

bool in_list(const Knowledge& knowledge, std::string_view id, std::string_view folded) {
    return knowledge.english(std::string(list_prefix) + std::string(id), std::string(folded)) != nullptr;
}

}  // namespace standin
