#include "render/html/html_charts.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "words.hpp"

namespace standin::cli {
namespace {

std::string n(double value) { return number(value, 1); }

Markup picture(double width, double height, const std::string& kind, const std::string& title, const Markup& content) {
    return el("svg", {{"viewBox", "0 0 " + n(width) + " " + n(height)}, {"class", kind}, {"role", "img"}, {"aria-label", title}},
              el("title", title) + content);
}

Markup line(double x1, double y1, double x2, double y2, const std::string& kind) {
    return el("line", {{"x1", n(x1)}, {"y1", n(y1)}, {"x2", n(x2)}, {"y2", n(y2)}, {"class", kind}}, {});
}

Markup words(double x, double y, const std::string& anchor, const std::string& kind, const std::string& text) {
    return el("text", {{"x", n(x)}, {"y", n(y)}, {"text-anchor", anchor}, {"class", kind}}, text);
}

Markup polygon(const std::vector<std::pair<double, double>>& points, const std::string& kind) {
    std::string list;
    for (const auto& [x, y] : points) list += (list.empty() ? "" : " ") + n(x) + "," + n(y);
    return el("polygon", {{"points", list}, {"class", kind}}, {});
}

Markup circle(double x, double y, double r, const std::string& kind) {
    return el("circle", {{"cx", n(x)}, {"cy", n(y)}, {"r", n(r)}, {"class", kind}}, {});
}

constexpr std::size_t marks = 4;

std::string series(std::size_t i) { return "s" + std::to_string(i % marks); }

Markup mark_at(std::size_t i, double x, double y) {
    constexpr double r = 5;
    switch (i % marks) {
        case 0:
            return circle(x, y, r - 0.5, "mark s0");
        case 1:
            return polygon({{x, y - r - 1}, {x + r + 1, y}, {x, y + r + 1}, {x - r - 1, y}}, "mark s1");
        case 2:
            return polygon({{x - r, y - r}, {x + r, y - r}, {x + r, y + r}, {x - r, y + r}}, "mark s2");
        default:
            return polygon({{x, y - r - 1}, {x + r + 1, y + r}, {x - r - 1, y + r}}, "mark s3");
    }
}

}  // namespace

Markup swatch(const std::string& hex, const std::string& title) {
    return el("svg",
              {{"viewBox", "0 0 60 40"}, {"class", "swatch"}, {"role", "img"}, {"aria-label", title}, {"preserveAspectRatio", "none"}},
              el("title", title) + el("rect", {{"width", "60"}, {"height", "40"}, {"fill", hex}}, {}));
}

Axis axis_for(const std::vector<Band>& bands) {
    Axis axis{bands.front().low, bands.front().high};
    for (const auto& b : bands) {
        axis.low = std::min(axis.low, b.low);
        axis.high = std::max(axis.high, b.high);
    }
    if (axis.low >= 0 && axis.low < 0.5 * axis.high) axis.low = 0;
    if (axis.high - axis.low < 1e-9) axis.high = axis.low + std::max(1.0, std::abs(axis.low));  // one bare number: somewhere to stand
    return axis;
}

Markup bands_chart(const std::vector<Band>& bands, const Axis& axis, int decimals, const std::string& title) {
    constexpr double width = 320, margin = 10, row = 15, top = 9, foot = 16;
    const auto [low, high] = axis;
    const auto x = [&, low = low, high = high](double value) { return margin + (value - low) / (high - low) * (width - 2 * margin); };
    const double base = top + row * static_cast<double>(bands.size());
    Markup content = line(margin, base, width - margin, base, "axis");
    for (std::size_t i = 0; i < bands.size(); ++i) {
        const double y = top + row * static_cast<double>(i);
        content += line(x(bands[i].low), y, x(bands[i].high), y, "band " + series(i)) + mark_at(i, x(bands[i].mid), y);
    }
    content += words(margin, base + foot - 3, "start", "end", number(low, decimals)) +
               words(width - margin, base + foot - 3, "end", "end", number(high, decimals));
    return picture(width, base + foot, "bands", title, content);
}

Markup mark_of(std::size_t i) {
    return el("svg", {{"viewBox", "0 0 28 14"}, {"class", "key"}, {"aria-hidden", "true"}},
              line(1, 7, 27, 7, "band " + series(i)) + mark_at(i, 14, 7));
}

Markup share_bar(double share) {
    constexpr double width = 100, height = 10;
    return el("svg", {{"viewBox", "0 0 100 10"}, {"class", "bar"}, {"preserveAspectRatio", "none"}, {"aria-hidden", "true"}},
              el("rect", {{"width", n(width)}, {"height", n(height)}, {"class", "trough"}}, {}) +
                  el("rect", {{"width", n(width * std::clamp(share, 0.0, 1.0))}, {"height", n(height)}, {"class", "fill"}}, {}));
}

Markup swap_wheel(const SwapsAnswer& answer) {
    constexpr double size = 360, middle = size / 2, hub = 44, rim = 158, dot = 14;
    double far = 1;  // the least close, down to a tenth: the rim
    for (const auto& s : answer.stand_ins) far = std::min(far, s.closeness);
    far = std::min(0.9, std::floor(10 * far + 1e-9) / 10);
    const auto radius = [&](double closeness) { return hub + dot + 4 + (1 - closeness) / (1 - far) * (rim - hub - dot - 4); };
    Markup content;
    const double step = 1 - far > 0.45 ? 0.2 : 0.1;
    for (double ring = 1 - step; ring > far - 1e-9; ring -= step) {
        content += circle(middle, middle, radius(ring), "ring");
        content += words(middle, middle - radius(ring) - 3, "middle", "end", number(ring, 1));
    }
    const auto count = answer.stand_ins.size();
    Markup spokes, dots;
    for (std::size_t i = 0; i < count; ++i) {
        const auto& s = answer.stand_ins[i];
        constexpr double turn = 2 * std::numbers::pi;
        const double angle = turn * (static_cast<double>(i) + 0.5) / static_cast<double>(count) - turn / 4;
        const double r = radius(s.closeness), x = middle + r * std::cos(angle), y = middle + r * std::sin(angle);
        spokes += line(middle + hub * std::cos(angle), middle + hub * std::sin(angle), x, y, s.path.size() > 2 ? "spoke far" : "spoke");
        dots += el("g", el("title", s.name + ", closeness " + number(s.closeness, 2)) + circle(x, y, dot, "node") +
                            words(x, y + 5, "middle", "rank", std::to_string(i + 1)));
    }
    content += spokes + dots + circle(middle, middle, hub, "hub");
    const auto name = wrapped(answer.name, 10);
    for (std::size_t i = 0; i < name.size(); ++i)
        content += words(middle, middle + 5 + 16 * (static_cast<double>(i) - (static_cast<double>(name.size()) - 1) / 2), "middle",
                         "hubname", name[i]);
    return picture(size, size, "wheel",
                   answer.name + " in the middle, its " + std::to_string(count) + " stand-ins around it by number; nearer means closer",
                   content);
}

}  // namespace standin::cli
