// CIELAB <-> XYZ <-> linear sRGB <-> display bytes, and the CIEDE2000 difference.
//
//   f(t) = t^(1/3) above (6/29)^3, else t / (3 (6/29)^2) + 4/29;   L = 116 f(Y) - 16,  a = 500 (f(X) - f(Y)),  b = 200 (f(Y) - f(Z))
//   with X, Y, Z over the white D65 (2 degrees): 95.047, 100.000, 108.883.
//
// Valid for all real colours; Lab outside the sRGB gamut is clipped for display only. Sources: CIE 15 (CIELAB) and IEC 61966-2-1
// (sRGB) from memory, checked against public test rows; CIEDE2000: Sharma, Wu, Dalal 2005, Color Res Appl 30:21.
#pragma once

#include <array>
#include <string>

#include "standin/lab.hpp"

namespace standin {

/// One value in each of the red, green and blue bands of sRGB: a linear light 0..1, a reflectance 0..1, or a K/S.
struct Bands {
    double red = 0;
    double green = 0;
    double blue = 0;
};

/// Tristimulus values, Y of the white = 1.
struct Xyz {
    double x = 0;
    double y = 0;
    double z = 0;
};

Xyz xyz_of(const Lab& lab);
Xyz xyz_of(const Bands& linear);
Lab lab_of(const Xyz& xyz);
Lab lab_of(const Bands& linear);

/// Linear sRGB; outside 0..1 when a screen cannot show the colour.
Bands linear_rgb(const Lab& lab);

/// Display bytes 0..255, clipped to the gamut.
std::array<int, 3> srgb_bytes(const Lab& lab);
Lab lab_of_bytes(int red, int green, int blue);

/// "#rrggbb", clipped to the gamut.
std::string hex_of(const Lab& lab);

/// Chroma, and hue angle in degrees 0..360 (0 for a grey).
double chroma_of(const Lab& lab);
double hue_of(const Lab& lab);

/// CIEDE2000 colour difference, kL = kC = kH = 1. Symmetric. About 1 is just visible side by side, 2-3 on food.
double ciede2000(const Lab& one, const Lab& other);

}  // namespace standin
