// The closed word lists of the trade that the engine works with.
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace standin {

/// What an ingredient is there for.
enum class Role { lean, fat, green, heat, acid, binder, nut, herb, allium, spice, salt, liquid, sweet };
inline constexpr std::size_t role_count = 13;

/// The word for a role, as it stands in files and on screens.
std::string_view word(Role role);
std::optional<Role> role_of(std::string_view word);

}  // namespace standin
