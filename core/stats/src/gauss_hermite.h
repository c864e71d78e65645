#pragma once

#include <vector>

namespace baize::stats::detail {

/// Node and weight for an integral of exp(-x^2) f(x) over the line.
struct QuadratureNode {
  double x = 0;
  double weight = 0;
};

/// Gauss-Hermite quadrature, exact for polynomials of degree 2 count - 1. Nodes are
/// the zeros of the Hermite polynomial, by Newton steps from below deflated by those
/// found. Abramowitz M, Stegun IA (1964) 25.4.46. `count` from 1 to 99.
std::vector<QuadratureNode> gauss_hermite(int count);

} // namespace baize::stats::detail
