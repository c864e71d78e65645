#include "mixed_criterion.h"

#include "baize/stats/log_product.h"
#include "small_blocks.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <limits>

namespace baize::stats::detail {

MixedCriterion::MixedCriterion(const MixedDesign& design, bool restricted)
    : design_(design), restricted_(restricted), moments_(moments(design)), rest_(design, moments_),
      classes_(design, moments_, rest_) {
  const Grouping& first = design.terms.front();
  for (const Grouping& term : design.terms) {
    t_.emplace_back(static_cast<std::size_t>(term.columns) * term.columns, 0.0);
  }
  factor_.resize(static_cast<std::size_t>(first.size()) * first.columns);
  first_rhs_.resize(moments_.response.front().size());
}

double MixedCriterion::count() const {
  return static_cast<double>(design_.y.size() - (restricted_ ? design_.q.cols() : 0));
}

void MixedCriterion::unpack(const Eigen::VectorXd& theta) {
  Eigen::Index at = 0;
  for (std::size_t t = 0; t < t_.size(); ++t) {
    const Grouping& term = design_.terms[t];
    for (int j = 0; j < term.columns; ++j) {
      const int last = term.correlated ? term.columns : j + 1;
      for (int i = j; i < last; ++i) {
        t_[t][static_cast<std::size_t>(j) * term.columns + i] = theta(at++);
      }
    }
  }
}

/// factor^-1 T' of what a group of the first term has in common with the others.
void MixedCriterion::meet_others(int group) {
  const Grouping& first = design_.terms.front();
  const int k = first.columns;
  const double* own = &factor_[static_cast<std::size_t>(group) * k * k];
  double* part = rest_.part(group);
  for (int t = 1; t < moments_.terms; ++t) {
    const Cross& cross = moments_.cross[moments_.index(0, t)];
    if (k == 1 && cross.columns == 1) {
      const double scale = t_[0][0] * t_[t][0] / factor_[group];
      for (int e = cross.start[group]; e < cross.start[group + 1]; ++e) {
        *part++ = scale * cross.value[e];
      }
      continue;
    }
    const std::size_t size = static_cast<std::size_t>(k) * cross.columns;
    for (int e = cross.start[group]; e < cross.start[group + 1]; ++e) {
      half_.resize(size);
      times(k, cross.columns, cross.block(e), t_[t].data(), half_.data());
      transposed_times(k, t_[0].data(), cross.columns, half_.data(), part);
      forward(k, own, cross.columns, part);
      part += size;
    }
  }
}

/// Factors the block of a group of the first term, and brings what it has in common with
/// [q y] and with the others to it. Gives the root of the block's determinant.
double MixedCriterion::solve_group(int group) {
  const int k = design_.terms.front().columns;
  const int columns = static_cast<int>(design_.q.cols()) + 1;
  double* factor = &factor_[static_cast<std::size_t>(group) * k * k];
  half_.resize(static_cast<std::size_t>(k) * k);
  times(k, k, moments_.cross.front().block(group), t_[0].data(), half_.data());
  transposed_times(k, t_[0].data(), k, half_.data(), factor);
  for (int i = 0; i < k; ++i) {
    factor[i * k + i] += 1;
  }
  const double root = cholesky(k, factor);
  const std::size_t at = static_cast<std::size_t>(group) * k * columns;
  double* rhs = &first_rhs_[at];
  transposed_times(k, t_[0].data(), columns, &moments_.response.front()[at], rhs);
  forward(k, factor, columns, rhs);
  if (rest_.size() > 0) {
    meet_others(group);
  }
  return root;
}

/// Gives the logarithm of the blocks' determinant; takes their part from `cross`,
/// which holds [q y]' [q y].
double MixedCriterion::eliminate_first(Eigen::MatrixXd& cross) {
  const int k = design_.terms.front().columns;
  const int columns = static_cast<int>(cross.cols());
  LogProduct roots; // of the blocks' determinants
  const auto column = [&](const double* rhs, std::ptrdiff_t c) { return rhs + c * k; };
  for (int g = 0; g < design_.terms.front().groups; ++g) {
    roots.times(solve_group(g));
    const double* rhs = &first_rhs_[static_cast<std::size_t>(g) * k * columns];
    for (int c = 0; c < columns; ++c) {
      for (int r = c; r < columns; ++r) {
        cross(r, c) -= dot(k, column(rhs, r), column(rhs, c));
      }
    }
    if (rest_.size() > 0) {
      rest_.subtract(g, rhs);
    }
  }
  return 2 * roots.log();
}

MixedValue MixedCriterion::value(const Eigen::VectorXd& theta) {
  const Eigen::Index fixed = design_.q.cols();
  unpack(theta);
  Eigen::MatrixXd cross = Eigen::MatrixXd::Identity(fixed + 1, fixed + 1);
  cross(fixed, fixed) = static_cast<double>(design_.y.size());
  if (rest_.size() > 0) {
    rest_.begin(moments_, t_);
  }
  MixedValue out;
  out.log_det = classes_.any() ? classes_.take(t_, cross, rest_) : eliminate_first(cross);
  if (rest_.size() > 0) {
    out.log_det += rest_.factor();
    if (!std::isfinite(out.log_det)) {
      return out;
    }
    const Eigen::MatrixXd half = rest_.half(rest_.rhs());
    cross.triangularView<Eigen::Lower>() -= half.transpose() * half;
  }
  out.information = cross.topLeftCorner(fixed, fixed).selfadjointView<Eigen::Lower>();
  const Eigen::LLT<Eigen::MatrixXd> factor(out.information);
  if (factor.info() != Eigen::Success) {
    return out;
  }
  const Eigen::VectorXd with_y = cross.row(fixed).head(fixed);
  out.best = factor.solve(with_y);
  out.ss = cross(fixed, fixed) - with_y.dot(out.best);
  out.finite = std::isfinite(out.log_det) && out.ss > 0 && std::isfinite(out.ss);
  return out;
}

double MixedCriterion::log_dets(const MixedValue& value) const {
  if (!restricted_) {
    return value.log_det;
  }
  const Eigen::LLT<Eigen::MatrixXd> factor(value.information);
  return value.log_det + 2 * factor.matrixLLT().diagonal().array().log().sum();
}

double MixedCriterion::profiled(const Eigen::VectorXd& theta) {
  const MixedValue at = value(theta);
  return at.finite ? log_dets(at) + count() * std::log(at.ss / count())
                   : std::numeric_limits<double>::infinity();
}

} // namespace baize::stats::detail
