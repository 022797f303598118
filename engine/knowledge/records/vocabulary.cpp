#include "knowledge/records/vocabulary.hpp"

namespace standin {

std::string_view word(Role role) { return spelling(role); }

std::optional<Role> role_of(std::string_view text) { return parse_word<Role>(text); }

}  // namespace standin
