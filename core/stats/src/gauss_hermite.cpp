#include "gauss_hermite.h"

#include <cmath>
#include <numbers>

namespace baize::stats::detail {
namespace {

/// The orthonormal Hermite polynomials of degree n and n - 1 at x.
struct Pair {
  double here = 0;
  double below = 0;
};

Pair hermite(int n, double x) {
  Pair p{1 / std::sqrt(std::sqrt(std::numbers::pi)), 0};
  for (int k = 1; k <= n; ++k) {
    const double next = x * std::sqrt(2.0 / k) * p.here - std::sqrt((k - 1.0) / k) * p.below;
    p = {next, p.here};
  }
  return p;
}

} // namespace

std::vector<QuadratureNode> gauss_hermite(int count) {
  std::vector<QuadratureNode> nodes;
  // All zeros lie below this; from above each step undershoots none of them.
  double x = std::sqrt(2.0 * count + 1);
  for (int i = 0; i < count; ++i) {
    for (int step = 0; step < 200; ++step) {
      const Pair p = hermite(count, x);
      const double slope = std::sqrt(2.0 * count) * p.below;
      double repelled = 0;
      for (const QuadratureNode& found : nodes) {
        repelled += 1 / (x - found.x);
      }
      const double move = p.here / (slope - p.here * repelled);
      x -= move;
      if (std::fabs(move) <= 1e-15 * (1 + std::fabs(x))) {
        break;
      }
    }
    const double below = hermite(count, x).below;
    nodes.push_back({x, 1 / (count * below * below)});
    x -= 1e-4;
  }
  return nodes;
}

} // namespace baize::stats::detail
