#pragma once

#include <cstddef>
#include <vector>

namespace baize::stats::detail {

/// A column of the design, or y. Long double: see least_squares.
using Column = std::vector<long double>;

/// A = QR with R's diagonal and upper part; each column of A was divided by its
/// length first.
struct Triangle {
  std::vector<Column> r;           ///< column k holds rows 0 to k
  std::vector<long double> length; ///< of each column of A
  Column rotated;                  ///< Q'y, all rows
  int dependent = -1;              ///< the first column that is a sum of those before, or -1
};
Triangle triangle(std::vector<Column> columns, Column y);

/// Coefficients of A b = y by back substitution.
Column coefficients(const Triangle& triangle);
/// (A'A)^-1, as rows.
std::vector<Column> inverse_cross_product(const Triangle& triangle);

} // namespace baize::stats::detail
