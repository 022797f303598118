// Words put together for people to read.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace standin {

/// "salt, pepper, sage"
std::string listed(const std::vector<std::string>& words);

/// With the letters A to Z small; all other signs stay.
std::string lower(std::string_view text);

/// Every `from` in the text becomes `to`.
void replace_all(std::string& text, std::string_view from, std::string_view to);

/// The text as a sentence that another may follow: with a full stop, where it has none.
std::string with_stop(std::string text);

/// As people say it: "40 minutes", "120 hours".
std::string shown_hours(double hours);

}  // namespace standin
