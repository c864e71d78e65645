#include "mixed_criterion.h"
#include "small_blocks.h"

#include <algorithm>

namespace baize::stats::detail {
namespace {

using Block = Eigen::Map<const Eigen::MatrixXd>;

void keep(const Eigen::MatrixXd& block, double* out) {
  Eigen::Map<Eigen::MatrixXd>(out, block.rows(), block.cols()) = block;
}

} // namespace

/// part S^-1 part', where `part` has the columns that a group met; `whole` is all of
/// S^-1, or empty.
Eigen::MatrixXd MixedCriterion::through_rest(const Eigen::MatrixXd& part, std::span<const int> met,
                                             const Eigen::MatrixXd& whole) const {
  if (whole.size() > 0) {
    return part * whole(met, met) * part.transpose();
  }
  Eigen::MatrixXd spread = Eigen::MatrixXd::Zero(rest_.size(), part.rows());
  for (Eigen::Index j = 0; j < part.cols(); ++j) {
    spread.row(met[static_cast<std::size_t>(j)]) = part.col(j).transpose();
  }
  const Eigen::MatrixXd half = rest_.half(spread);
  return half.transpose() * half;
}

/// Given the others' spherical effects `rest`: the blocks are solved one by one,
/// and their covariance is factor'^-1 (I + part S^-1 part') factor^-1.
void MixedCriterion::first_effects(const Eigen::VectorXd& coefficients, const Eigen::VectorXd& rest,
                                   const Eigen::MatrixXd& whole, Effects& out) const {
  const Grouping& first = design_.terms.front();
  const int k = first.columns;
  const int columns = static_cast<int>(coefficients.size());
  const Block t(t_[0].data(), k, k);
  const std::size_t block = static_cast<std::size_t>(k) * k;
  for (int g = 0; g < first.groups; ++g) {
    const double* factor = &factor_[g * block];
    const Block rhs(&first_rhs_[static_cast<std::size_t>(g) * k * (columns + 1)], k, columns + 1);
    Eigen::VectorXd effect = rhs.col(columns) - rhs.leftCols(columns) * coefficients;
    Eigen::MatrixXd inverse = Eigen::MatrixXd::Identity(k, k);
    const auto met = rest_.met(g);
    const auto count = static_cast<Eigen::Index>(met.size());
    const Block part(count > 0 ? rest_.part(g) : nullptr, k, count);
    for (Eigen::Index j = 0; j < count; ++j) {
      effect -= part.col(j) * rest(met[static_cast<std::size_t>(j)]);
    }
    if (count > 0) {
      inverse += through_rest(part, met, whole);
    }
    backward(k, factor, 1, effect.data());
    backward(k, factor, k, inverse.data());
    inverse.transposeInPlace();
    backward(k, factor, k, inverse.data());
    keep(t * effect, &out.value[0][static_cast<std::size_t>(g) * k]);
    keep(t * inverse * t.transpose(), &out.covariance[0][g * block]);
  }
}

/// S^-1 of the effects from `first` on, so many. Of a sparse factor a few columns at a
/// time, so that it is not filled into a dense inverse.
Eigen::MatrixXd MixedCriterion::inverse_part(Eigen::Index first, Eigen::Index count,
                                             const Eigen::MatrixXd& whole) const {
  if (whole.size() > 0) {
    return whole.block(first, first, count, count);
  }
  Eigen::MatrixXd unit = Eigen::MatrixXd::Zero(rest_.size(), count);
  unit.middleRows(first, count).setIdentity();
  const Eigen::MatrixXd half = rest_.half(unit);
  return half.transpose() * half;
}

void MixedCriterion::other_effects(const Eigen::VectorXd& rest, const Eigen::MatrixXd& whole,
                                   Effects& out) const {
  constexpr Eigen::Index kAtOnce = 64;
  for (std::size_t a = 1; a < t_.size(); ++a) {
    const Eigen::Index k = design_.terms[a].columns;
    const Eigen::Index groups = design_.terms[a].groups;
    const Block t(t_[a].data(), k, k);
    const Eigen::Index step = std::max<Eigen::Index>(1, kAtOnce / k);
    for (Eigen::Index first = 0; first < groups; first += step) {
      const Eigen::Index count = std::min(step, groups - first);
      const Eigen::Index row = rest_.offset(static_cast<int>(a)) + first * k;
      const Eigen::MatrixXd inverse = inverse_part(row, count * k, whole);
      for (Eigen::Index g = 0; g < count; ++g) {
        const auto at = static_cast<std::size_t>(first + g) * static_cast<std::size_t>(k);
        keep(t * rest.segment(row + g * k, k), &out.value[a][at]);
        keep(t * inverse.block(g * k, g * k, k, k) * t.transpose(),
             &out.covariance[a][at * static_cast<std::size_t>(k)]);
      }
    }
  }
}

MixedCriterion::Effects MixedCriterion::effects(const MixedValue& value) {
  if (classes_.any()) { // they never factor the single groups
    for (int g = 0; g < design_.terms.front().groups; ++g) {
      solve_group(g);
    }
  }
  Effects out;
  for (const Grouping& term : design_.terms) {
    out.value.emplace_back(static_cast<std::size_t>(term.size()));
    out.covariance.emplace_back(static_cast<std::size_t>(term.size()) * term.columns);
  }
  Eigen::VectorXd rest(rest_.size());
  Eigen::MatrixXd whole; // S^-1
  if (rest_.size() > 0) {
    const Eigen::Index fixed = value.best.size();
    const Eigen::VectorXd rhs = rest_.rhs().col(fixed) - rest_.rhs().leftCols(fixed) * value.best;
    rest = rest_.back(rest_.half(rhs));
    if (rest_.dense()) {
      whole = rest_.inverse();
    }
    other_effects(rest, whole, out);
  }
  first_effects(value.best, rest, whole, out);
  return out;
}

} // namespace baize::stats::detail
