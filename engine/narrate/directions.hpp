// More or less of something, as it is felt. One fact has one wording, on every page.
#pragma once

#include <string_view>

namespace standin {

/// "saltier", "less sharp"; by the short name that differences are kept under ("salt", "sourness", "aroma", ...). What does not taste of
/// anything by itself has none.
std::string_view direction(std::string_view what, double difference);

}  // namespace standin
