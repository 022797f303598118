// A convex quadratic programme within a box and under a few rows, solved exactly.
//
//   minimise  1/2 d' H d + c' d + slack_price * (t + t^2 / 2)
//   such that low <= d <= high,  row_j' d - t <= room_j,  t >= 0
//
// t is one slack for all rows at a price: the programme always has an answer, and t is 0 wherever the rows can be kept. Primal active
// set (Nocedal and Wright 2006, Numerical Optimization, algorithm 16.3), started at a point within the box; H must be positive definite.
// The problems it is made for have tens of variables, most of them at an end of the box, and rows in single figures.
#pragma once

#include <cstddef>
#include <vector>

namespace standin {

/// Row after row in one piece.
class Matrix {
public:
    Matrix() = default;
    Matrix(std::size_t rows, std::size_t columns) : rows_(rows), columns_(columns), values_(rows * columns, 0.0) {}

    double* operator[](std::size_t row) { return values_.data() + row * columns_; }
    const double* operator[](std::size_t row) const { return values_.data() + row * columns_; }
    std::size_t rows() const { return rows_; }
    std::size_t columns() const { return columns_; }

private:
    std::size_t rows_ = 0, columns_ = 0;
    std::vector<double> values_;
};

struct Quadratic {
    Matrix curvature;  ///< H
    std::vector<double> slope, low, high;
    Matrix rows;
    std::vector<double> room;
    double slack_price = 1;  ///< price of t
};

struct Least {
    std::vector<double> at;
    std::vector<double> multipliers;  ///< one a row, 0 where it does not bind
};

/// The least `d`, from `start` (brought into the box where it lies outside).
Least least_of(const Quadratic& programme, std::vector<double> start);

}  // namespace standin
