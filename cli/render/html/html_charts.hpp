// The pictures of the pages as inline SVG. Each has a title that says in words what it shows; nothing is told by colour alone.
#pragma once

#include <string>
#include <vector>

#include "render/html/html.hpp"
#include "standin/advice.hpp"
#include "standin/band.hpp"

namespace standin::cli {

/// A patch of one colour.
Markup swatch(const std::string& hex, const std::string& title);

/// Ends of an axis.
struct Axis {
    double low = 0, high = 0;
};

/// From the lowest to the highest of the bands, from nothing where they come near it.
Axis axis_for(const std::vector<Band>& bands);

/// Bands on one axis, the first as a ring, the second as a diamond, further ones as squares and triangles; ends of the axis in numbers.
Markup bands_chart(const std::vector<Band>& bands, const Axis& axis, int decimals, const std::string& title);

/// The mark by which bands_chart shows the n-th band, for legends.
Markup mark_of(std::size_t n);

/// A bar for a share of one.
Markup share_bar(double share);

/// The ingredient in the middle, its stand-ins around it by rank: the nearer to the middle, the closer the swap; dashed where the way
/// leads through another.
Markup swap_wheel(const SwapsAnswer& answer);

}  // namespace standin::cli
