// The look of the HTML pages: a workshop card, in light and dark, on a phone and on paper.
#pragma once

#include <string_view>

namespace standin::cli {

std::string_view html_style();

}  // namespace standin::cli
