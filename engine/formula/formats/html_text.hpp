// What the reader needs of a web page: the data scripts in it, and text without its tags and entities.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace standin {

bool looks_like_html(std::string_view text);

/// The content of every <script type="application/ld+json">, as it stands in the page; broken markup is read as far as it goes.
std::vector<std::string> data_scripts(std::string_view page);

/// "1 &frac12; cups <b>salt</b>" as "1 ½ cups salt". Bad UTF-8 gives what stands before it.
std::string without_markup(std::string_view fragment);

}  // namespace standin
