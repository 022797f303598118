// A colour as people compare them.
#pragma once

namespace standin {

/// CIELAB under D65, 2 degree observer. L: 0 black, 100 white. a: red positive, green negative. b: yellow positive, blue negative.
struct Lab {
    double L = 0;
    double a = 0;
    double b = 0;

    friend bool operator==(const Lab&, const Lab&) = default;
};

}  // namespace standin
