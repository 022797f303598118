#include "models/cielab.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace standin {
namespace {

constexpr double knee = 6.0 / 29.0;  // where CIELAB's cube root turns into a line
constexpr Xyz white{0.95047, 1.0, 1.08883};
constexpr double pow25_7 = 6103515625.0;

double compress(double t) { return t > knee * knee * knee ? std::cbrt(t) : t / (3 * knee * knee) + 4.0 / 29.0; }
double expand(double f) { return f > knee ? f * f * f : 3 * knee * knee * (f - 4.0 / 29.0); }
double encode(double u) { return u <= 0.0031308 ? 12.92 * u : 1.055 * std::pow(u, 1 / 2.4) - 0.055; }
double decode(double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); }
int byte_of(double u) { return static_cast<int>(std::lround(255 * encode(std::clamp(u, 0.0, 1.0)))); }
double radians(double degrees) { return degrees * std::numbers::pi / 180; }
double angle(double a, double b) {
    if (a == 0 && b == 0) return 0;
    const double degrees = std::atan2(b, a) * 180 / std::numbers::pi;
    return degrees < 0 ? degrees + 360 : degrees;
}
double share_of_25(double chroma) {
    const double c7 = std::pow(chroma, 7);
    return std::sqrt(c7 / (c7 + pow25_7));
}

struct HuePair {
    double difference;
    double mean;
};

// A grey has no hue: it takes the other's, by the rules of the paper.
HuePair hues(double h1, double h2, bool grey) {
    if (grey) return {0, h1 + h2};
    const double d = h2 - h1, sum = h1 + h2;
    if (std::abs(d) <= 180) return {d, sum / 2};
    return {d > 180 ? d - 360 : d + 360, sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2};
}

}  // namespace

Xyz xyz_of(const Lab& lab) {
    const double fy = (lab.L + 16) / 116;
    return {white.x * expand(fy + lab.a / 500), white.y * expand(fy), white.z * expand(fy - lab.b / 200)};
}

Xyz xyz_of(const Bands& c) {
    return {0.4124 * c.red + 0.3576 * c.green + 0.1805 * c.blue, 0.2126 * c.red + 0.7152 * c.green + 0.0722 * c.blue,
            0.0193 * c.red + 0.1192 * c.green + 0.9505 * c.blue};
}

Lab lab_of(const Xyz& xyz) {
    const double fx = compress(xyz.x / white.x), fy = compress(xyz.y / white.y), fz = compress(xyz.z / white.z);
    return {116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)};
}

Lab lab_of(const Bands& linear) { return lab_of(xyz_of(linear)); }

Bands linear_rgb(const Lab& lab) {
    const Xyz v = xyz_of(lab);
    return {3.2406 * v.x - 1.5372 * v.y - 0.4986 * v.z, -0.9689 * v.x + 1.8758 * v.y + 0.0415 * v.z,
            0.0557 * v.x - 0.2040 * v.y + 1.0570 * v.z};
}

std::array<int, 3> srgb_bytes(const Lab& lab) {
    const Bands c = linear_rgb(lab);
    return {byte_of(c.red), byte_of(c.green), byte_of(c.blue)};
}

Lab lab_of_bytes(int red, int green, int blue) { return lab_of(Bands{decode(red / 255.0), decode(green / 255.0), decode(blue / 255.0)}); }

std::string hex_of(const Lab& lab) {
    constexpr char digits[] = "0123456789abcdef";
    std::string text = "#";
    for (const int byte : srgb_bytes(lab)) {
        text += digits[byte / 16];
        text += digits[byte % 16];
    }
    return text;
}

double chroma_of(const Lab& lab) { return std::hypot(lab.a, lab.b); }
double hue_of(const Lab& lab) { return angle(lab.a, lab.b); }

double ciede2000(const Lab& one, const Lab& other) {
    const double g = 1.5 - 0.5 * share_of_25((chroma_of(one) + chroma_of(other)) / 2);
    const double a1 = g * one.a, a2 = g * other.a;
    const double c1 = std::hypot(a1, one.b), c2 = std::hypot(a2, other.b);
    const HuePair hue = hues(angle(a1, one.b), angle(a2, other.b), c1 * c2 == 0);

    const double mean_c = (c1 + c2) / 2, h = hue.mean;
    const double from_grey = std::pow((one.L + other.L) / 2 - 50, 2);
    const double t = 1 - 0.17 * std::cos(radians(h - 30)) + 0.24 * std::cos(radians(2 * h)) + 0.32 * std::cos(radians(3 * h + 6)) -
                     0.20 * std::cos(radians(4 * h - 63));
    const double dl = (other.L - one.L) / (1 + 0.015 * from_grey / std::sqrt(20 + from_grey));
    const double dc = (c2 - c1) / (1 + 0.045 * mean_c);
    const double dh = 2 * std::sqrt(c1 * c2) * std::sin(radians(hue.difference / 2)) / (1 + 0.015 * mean_c * t);
    const double turn = 30 * std::exp(-std::pow((h - 275) / 25, 2));
    const double rotation = -2 * share_of_25(mean_c) * std::sin(radians(2 * turn));
    // rounding may take a sum that should be zero a hair below it
    return std::sqrt(std::max(0.0, dl * dl + dc * dc + dh * dh + rotation * dc * dh));
}

}  // namespace standin
