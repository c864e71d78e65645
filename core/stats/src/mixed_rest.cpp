#include "mixed_rest.h"

#include "small_blocks.h"

#include <Eigen/Cholesky>

#include <algorithm>
#include <cmath>
#include <limits>

namespace baize::stats::detail {
namespace {

constexpr Eigen::Index kSmall = 300; ///< up to here a dense factor is the faster in any case
constexpr double kMostlyZero = 0.05; ///< share of entries; above it the factor fills anyway
constexpr double kCrowded = 0.3;     ///< share of columns met; above it whole columns are faster
constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

} // namespace

MixedRest::MixedRest(const MixedDesign& design, const MixedMoments& moments)
    : rows_(design.terms.front().columns), terms_(moments.terms) {
  for (const Grouping& term : design.terms) {
    offset_.push_back(size_);
    size_ += offset_.size() == 1 ? 0 : term.size();
  }
  if (size_ == 0) {
    return;
  }
  list_met(moments, design.terms.front().groups);
  rhs_.resize(size_, design.q.cols() + 1);
  if (size_ > kSmall) {
    make_pattern();
  }
  if (dense_) {
    matrix_.resize(size_, size_);
  }
  const auto groups = static_cast<Eigen::Index>(design.terms.front().groups);
  const double all = static_cast<double>(size_) * static_cast<double>(groups);
  many_met_ = dense_ && rows_ == 1 && static_cast<double>(met_.size()) > kCrowded * all;
}

void MixedRest::list_met(const MixedMoments& moments, int groups) {
  for (int g = 0; g < groups; ++g) {
    met_start_.push_back(static_cast<int>(met_.size()));
    for (int t = 1; t < terms_; ++t) {
      const Cross& cross = moments.cross[moments.index(0, t)];
      for (int e = cross.start[g]; e < cross.start[g + 1]; ++e) {
        for (int j = 0; j < cross.columns; ++j) {
          met_.push_back(static_cast<int>(offset_[t]) + cross.group[e] * cross.columns + j);
        }
      }
    }
  }
  met_start_.push_back(static_cast<int>(met_.size()));
  parts_.resize(met_.size() * rows_);
}

void MixedRest::make_pattern() {
  std::vector<std::vector<int>> below(static_cast<std::size_t>(size_)); // by column
  for (std::size_t g = 0; g + 1 < met_start_.size(); ++g) {
    for (int j = met_start_[g]; j < met_start_[g + 1]; ++j) {
      auto& column = below[static_cast<std::size_t>(met_[j])];
      column.insert(column.end(), met_.begin() + j, met_.begin() + met_start_[g + 1]);
      // Keeps the list short where many groups meet the same columns.
      if (column.size() > 4U * static_cast<std::size_t>(size_)) {
        std::sort(column.begin(), column.end());
        column.erase(std::unique(column.begin(), column.end()), column.end());
      }
    }
  }
  // Two other terms that meet in a row also meet in a group of the first term, so
  // nothing is missing.
  std::size_t count = 0;
  for (auto& column : below) {
    std::sort(column.begin(), column.end());
    column.erase(std::unique(column.begin(), column.end()), column.end());
    count += column.size();
  }
  const double all = 0.5 * static_cast<double>(size_) * static_cast<double>(size_ + 1);
  dense_ = static_cast<double>(count) > kMostlyZero * all;
  if (dense_) {
    return;
  }
  std::vector<Eigen::Triplet<double>> entries;
  entries.reserve(count);
  for (std::size_t j = 0; j < below.size(); ++j) {
    for (const int i : below[j]) {
      entries.emplace_back(i, static_cast<int>(j), 0.0);
    }
  }
  sparse_.resize(size_, size_);
  sparse_.setFromTriplets(entries.begin(), entries.end());
  sparse_factor_.analyzePattern(sparse_);
}

double& MixedRest::entry(Eigen::Index row, Eigen::Index column) {
  return dense_ ? matrix_(row, column) : sparse_.coeffRef(row, column);
}

void MixedRest::begin(const MixedMoments& moments, const Factors& t) {
  if (dense_) {
    matrix_.setZero();
    matrix_.diagonal().setOnes();
  } else {
    std::fill(sparse_.valuePtr(), sparse_.valuePtr() + sparse_.nonZeros(), 0.0);
    for (Eigen::Index i = 0; i < size_; ++i) {
      sparse_.coeffRef(i, i) = 1;
    }
  }
  for (int a = 1; a < terms_; ++a) {
    for (int b = a; b < terms_; ++b) {
      add_cross(moments.cross[moments.index(a, b)], t, a, b);
    }
    const int k = moments.cross[moments.index(a, a)].rows;
    const int columns = static_cast<int>(rhs_.cols());
    const auto& response = moments.response[a];
    std::vector<double> block(static_cast<std::size_t>(k * columns));
    for (std::size_t at = 0; at < response.size(); at += block.size()) {
      transposed_times(k, t[a].data(), columns, &response[at], block.data());
      const Eigen::Index row = offset_[a] + static_cast<Eigen::Index>(at / columns);
      rhs_.middleRows(row, k) = Eigen::Map<const Eigen::MatrixXd>(block.data(), k, columns);
    }
  }
}

void MixedRest::add_cross(const Cross& cross, const Factors& t, int a, int b) {
  std::vector<double> half(static_cast<std::size_t>(cross.rows * cross.columns));
  std::vector<double> block(half.size());
  const int groups = static_cast<int>(cross.start.size()) - 1;
  for (int g = 0; g < groups; ++g) {
    for (int e = cross.start[g]; e < cross.start[g + 1]; ++e) {
      times(cross.rows, cross.columns, cross.block(e), t[b].data(), half.data());
      transposed_times(cross.rows, t[a].data(), cross.columns, half.data(), block.data());
      const Eigen::Index row =
          offset_[b] + static_cast<Eigen::Index>(cross.group[e]) * cross.columns;
      const Eigen::Index column = offset_[a] + static_cast<Eigen::Index>(g) * cross.rows;
      // Later terms stand below, so the block lies on its side.
      for (int j = 0; j < cross.columns; ++j) {
        for (int i = 0; i < cross.rows; ++i) {
          if (row + j >= column + i) { // on the diagonal the lower half only
            entry(row + j, column + i) += block[j * cross.rows + i];
          }
        }
      }
    }
  }
}

std::span<const int> MixedRest::met(int group) const {
  if (size_ == 0) {
    return {};
  }
  const auto first = static_cast<std::size_t>(met_start_[group]);
  return {met_.data() + first, static_cast<std::size_t>(met_start_[group + 1]) - first};
}

Eigen::MatrixXd MixedRest::inverse() const {
  const Eigen::MatrixXd root =
      matrix_.triangularView<Eigen::Lower>().solve(Eigen::MatrixXd::Identity(size_, size_));
  Eigen::MatrixXd inverse = Eigen::MatrixXd::Zero(size_, size_);
  inverse.selfadjointView<Eigen::Lower>().rankUpdate(root.transpose());
  return inverse.selfadjointView<Eigen::Lower>();
}

void MixedRest::put_aside(int group, const double* part, const double* rhs) {
  if (crowded_.size() == 0) {
    const auto groups = static_cast<Eigen::Index>(met_start_.size()) - 1;
    crowded_ = Eigen::MatrixXd::Zero(size_, groups);
    crowded_rhs_.resize(groups, rhs_.cols());
  }
  for (const int column : met(group)) {
    crowded_(column, group) = *part++;
  }
  crowded_rhs_.row(group) = Eigen::Map<const Eigen::RowVectorXd>(rhs, rhs_.cols());
}

void MixedRest::subtract(int group, const double* rhs) {
  const auto columns = met(group);
  const double* part = this->part(group);
  if (many_met_) {
    put_aside(group, part, rhs);
    return;
  }
  const auto count = static_cast<std::ptrdiff_t>(columns.size());
  for (std::ptrdiff_t j = 0; j < count; ++j) {
    const double* mine = part + j * rows_;
    for (Eigen::Index c = 0; c < rhs_.cols(); ++c) {
      rhs_(columns[j], c) -= dot(rows_, mine, rhs + c * rows_);
    }
    if (!dense_) {
      for (std::ptrdiff_t i = j; i < count; ++i) {
        sparse_.coeffRef(columns[i], columns[j]) -= dot(rows_, part + i * rows_, mine);
      }
      continue;
    }
    double* column = matrix_.col(columns[j]).data();
    if (rows_ == 1) { // where nearly all the time goes in a crossed model
      const double factor = *mine;
      for (std::ptrdiff_t i = j; i < count; ++i) {
        column[columns[i]] -= part[i] * factor;
      }
      continue;
    }
    for (std::ptrdiff_t i = j; i < count; ++i) {
      column[columns[i]] -= dot(rows_, part + i * rows_, mine);
    }
  }
}

void MixedRest::subtract(const Eigen::VectorXd& pairs, const Eigen::MatrixXd& rhs,
                         const Factors& t) {
  Eigen::VectorXd scale(size_);
  for (std::size_t term = 1; term < offset_.size(); ++term) {
    scale.tail(size_ - offset_[term]).setConstant(t[term].front());
  }
  Eigen::Index at = 0;
  for (Eigen::Index j = 0; j < size_; ++j) {
    const Eigen::Index below = size_ - j;
    matrix_.col(j).tail(below) -=
        scale(j) * scale.tail(below).cwiseProduct(pairs.segment(at, below));
    at += below;
  }
  rhs_ -= scale.asDiagonal() * rhs;
}

double MixedRest::factor() {
  if (crowded_.size() > 0) {
    matrix_.selfadjointView<Eigen::Lower>().rankUpdate(crowded_, -1);
    rhs_.noalias() -= crowded_ * crowded_rhs_;
  }
  if (!dense_) {
    sparse_factor_.factorize(sparse_);
    if (sparse_factor_.info() != Eigen::Success) {
      return kNaN;
    }
    double log_det = 0;
    const auto& lower = sparse_factor_.matrixL().nestedExpression();
    for (Eigen::Index j = 0; j < size_; ++j) {
      log_det += 2 * std::log(lower.coeff(j, j));
    }
    return log_det;
  }
  const Eigen::LLT<Eigen::Ref<Eigen::MatrixXd>, Eigen::Lower> factor(matrix_);
  return factor.info() == Eigen::Success ? 2 * matrix_.diagonal().array().log().sum() : kNaN;
}

Eigen::MatrixXd MixedRest::half(const Eigen::MatrixXd& columns) const {
  if (dense_) {
    return matrix_.triangularView<Eigen::Lower>().solve(columns);
  }
  const Eigen::MatrixXd ordered = sparse_factor_.permutationP() * columns;
  return sparse_factor_.matrixL().solve(ordered);
}

Eigen::MatrixXd MixedRest::back(const Eigen::MatrixXd& columns) const {
  if (dense_) {
    return matrix_.triangularView<Eigen::Lower>().adjoint().solve(columns);
  }
  const Eigen::MatrixXd ordered = sparse_factor_.matrixU().solve(columns);
  return sparse_factor_.permutationPinv() * ordered;
}

} // namespace baize::stats::detail
