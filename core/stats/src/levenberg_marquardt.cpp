#include "levenberg_marquardt.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace baize::stats::detail {
namespace {

long double product(const Column& a, const Column& b) {
  return std::inner_product(a.begin(), a.end(), b.begin(), 0.0L);
}

/// The slopes at one place and what is left of the residual in their direction.
struct Local {
  std::vector<Column> slopes;
  Column scale; ///< greatest length of each slope so far (More 1978)
  /// Bates and Watts' measure; infinite where the slopes depend on each other.
  double offset = INFINITY;
  long double reach = 0; ///< greatest squared length of the scaled parameters so far
};

double offset_of(const std::vector<Column>& slopes, const Column& residual) {
  const Triangle t = triangle(slopes, residual);
  if (t.dependent >= 0) {
    return INFINITY;
  }
  const auto size = static_cast<std::ptrdiff_t>(slopes.size());
  const auto squares = [](auto from, auto to) { return std::inner_product(from, to, from, 0.0L); };
  const auto middle = t.rotated.begin() + size;
  const long double inside = squares(t.rotated.begin(), middle) / size;
  const long double outside = squares(middle, t.rotated.end()) / (t.rotated.end() - middle);
  return static_cast<double>(std::sqrt(inside / outside));
}

bool look(const CurveSearch& search, const CurveMinimum& at, Local& local) {
  local.slopes = slopes_at(search, at.parameters);
  if (local.slopes.empty()) {
    return false;
  }
  for (std::size_t k = 0; k < local.slopes.size(); ++k) {
    local.scale[k] = std::max(local.scale[k], std::sqrt(product(local.slopes[k], local.slopes[k])));
    // A parameter without effect here may have one elsewhere: keep its step finite.
    local.scale[k] = local.scale[k] > 0 ? local.scale[k] : 1;
  }
  long double length = 0;
  for (std::size_t k = 0; k < local.scale.size(); ++k) {
    length += std::pow(local.scale[k] * at.parameters[search.free[k]], 2.0L);
  }
  local.reach = std::max(local.reach, length);
  local.offset = offset_of(local.slopes, at.residual);
  return true;
}

/// Solves for the step with each slope lengthened by root(damping) x its scale.
Column step_of(const Local& local, const Column& residual, long double damping) {
  std::vector<Column> columns = local.slopes;
  const std::size_t size = columns.size();
  const std::size_t rows = residual.size();
  Column target = residual;
  target.resize(rows + size, 0);
  for (std::size_t k = 0; k < size; ++k) {
    columns[k].resize(rows + size, 0);
    columns[k][rows + k] = std::sqrt(damping) * local.scale[k];
  }
  const Triangle t = triangle(columns, target);
  return t.dependent >= 0 ? Column() : coefficients(t);
}

/// How much of the sum of squares the straight continuation of the slopes would take
/// away: |r|^2 - |r - J step|^2.
long double promised(const Local& local, const Column& residual, const Column& step) {
  Column moved(residual.size(), 0);
  for (std::size_t k = 0; k < step.size(); ++k) {
    for (std::size_t i = 0; i < moved.size(); ++i) {
      moved[i] += local.slopes[k][i] * step[k];
    }
  }
  return 2 * product(moved, residual) - product(moved, moved);
}

bool negligible(const CurveSearch& search, const std::vector<double>& parameters,
                const Column& step) {
  for (std::size_t k = 0; k < step.size(); ++k) {
    if (std::fabs(step[k]) > 1e-14L * (std::fabs(parameters[search.free[k]]) + 1e-300L)) {
      return false;
    }
  }
  return true;
}

/// A first step many times the parameters themselves ends where the curve is flat and
/// nothing leads back; so no step is longer than the parameters have been so far, in
/// the scale of their slopes.
bool too_long(const Local& local, const Column& step) {
  long double length = 0;
  for (std::size_t k = 0; k < step.size(); ++k) {
    length += std::pow(local.scale[k] * step[k], 2.0L);
  }
  return local.reach > 0 && length > local.reach;
}

/// Close to the optimum what is gained drowns in the rounding of the curve, long before
/// the parameters have their digits; there the offset tells.
bool better(long double gained, long double promise, long double ss, bool closer) {
  const long double rounding = 1e-9L * ss;
  return gained > 0 ? promise > rounding || closer
                    : promise < rounding && gained > -rounding && closer;
}

/// Damping after Nielsen: a good promise lowers it smoothly, failures raise it faster
/// and faster.
struct Damping {
  long double value = 1;
  long double factor = 2;
  void kept(long double share) {
    const long double miss = 2 * std::clamp(share, 0.0L, 1.0L) - 1;
    value *= std::max(1.0L / 10, 1 - miss * miss * miss);
    factor = 2;
  }
  void failed() {
    value *= factor;
    factor *= 2;
  }
};

} // namespace

Column residual_at(const CurveSearch& search, const std::vector<double>& parameters) {
  Column residual;
  for (std::size_t i = 0; i < search.y.size(); ++i) {
    const double value = search.model(parameters, i);
    if (!std::isfinite(value)) {
      return {};
    }
    residual.push_back(static_cast<long double>(search.y[i]) - value);
  }
  return residual;
}

std::vector<Column> slopes_at(const CurveSearch& search, const std::vector<double>& parameters) {
  std::vector<Column> slopes;
  std::vector<double> moved = parameters;
  for (const std::size_t k : search.free) {
    const double at = parameters[k];
    // The rule errs by step^4, rounding by 1 / step; small enough for a narrow peak
    // far from 0.
    const double step = (at == 0 ? 1e-6 : std::fabs(at)) * 0x1p-15;
    Column slope(search.y.size(), 0);
    for (const auto& [times, weight] :
         {std::pair{-2, 1}, std::pair{-1, -8}, std::pair{1, 8}, std::pair{2, -1}}) {
      moved[k] = at + times * step;
      const Column left = residual_at(search, moved);
      if (left.empty()) {
        return {};
      }
      for (std::size_t i = 0; i < slope.size(); ++i) {
        slope[i] -= weight * left[i] / (12 * static_cast<long double>(step));
      }
    }
    moved[k] = at;
    slopes.push_back(slope);
  }
  return slopes;
}

CurveMinimum levenberg_marquardt(const CurveSearch& search, std::vector<double> start) {
  CurveMinimum at{std::move(start), {}, 0, 0, false};
  at.residual = residual_at(search, at.parameters);
  at.ss = product(at.residual, at.residual);
  at.converged = search.free.empty();
  Local local{{}, Column(search.free.size(), 0), INFINITY, 0};
  if (at.converged || !look(search, at, local)) {
    return at;
  }
  Damping damping;
  while (at.iterations < search.max_iterations) {
    ++at.iterations;
    const Column step = step_of(local, at.residual, damping.value);
    if (local.offset < search.tolerance || step.empty() ||
        negligible(search, at.parameters, step)) {
      at.converged = !step.empty();
      return at;
    }
    if (too_long(local, step)) {
      damping.failed();
      continue;
    }
    std::vector<double> next = at.parameters;
    for (std::size_t k = 0; k < step.size(); ++k) {
      next[search.free[k]] += static_cast<double>(step[k]);
    }
    CurveMinimum there{next, residual_at(search, next), 0, at.iterations, false};
    there.ss = product(there.residual, there.residual);
    const long double gained = at.ss - there.ss;
    const long double promise = promised(local, at.residual, step);
    Local from_there = local;
    if (there.residual.empty() || !look(search, there, from_there) ||
        !better(gained, promise, at.ss, from_there.offset < local.offset)) {
      damping.failed();
      continue;
    }
    damping.kept(gained / promise);
    local = std::move(from_there);
    at = std::move(there);
  }
  return at;
}

} // namespace baize::stats::detail
