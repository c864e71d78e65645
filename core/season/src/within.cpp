#include "columns.h"

#include <cmath>
#include <utility>
#include <vector>

namespace baize::season {
namespace {

/// How the runs' lines and value differ from their look's, times the root of their rolls;
/// `losses` columns before them stay 0.
Rows lines_apart(const GreenModel& green, Eigen::Index losses) {
  const auto lines = static_cast<Eigen::Index>(green.lines.size());
  Rows columns = Rows::Zero(static_cast<Eigen::Index>(green.runs.size()), losses + lines + 1);
  for (Eigen::Index r = 0; r < columns.rows(); ++r) {
    const RunMean& run = green.runs[static_cast<std::size_t>(r)];
    columns.row(r).segment(losses, lines) =
        -green.line_share.row(static_cast<Eigen::Index>(run.look));
    columns(r, losses + static_cast<Eigen::Index>(run.line)) += 1;
    columns(r, losses + lines) = run.mean - green.looks[run.look].mean;
    columns.row(r) *= std::sqrt(run.rolls);
  }
  return columns;
}

/// How the runs' shares of a loss differ from their look's, times the root of their rolls.
Eigen::VectorXd shares_apart(const GreenModel& green, Eigen::Index loss) {
  Eigen::VectorXd apart(green.run_share.rows());
  for (Eigen::Index r = 0; r < apart.size(); ++r) {
    const RunMean& run = green.runs[static_cast<std::size_t>(r)];
    apart(r) = std::sqrt(run.rolls) *
               (green.run_share(r, loss) - green.share(static_cast<Eigen::Index>(run.look), loss));
  }
  return apart;
}

/// What is left of a loss at every look.
Eigen::VectorXd left_at_looks(const GreenModel& green, Eigen::Index loss, double rate) {
  return green.growth.col(loss).unaryExpr([=](double growth) { return left_of(growth, rate); });
}

} // namespace

SplitLosses split_losses(const GreenModel& green) {
  constexpr double kAlike = 1e-9;
  SplitLosses split;
  const Rows lines = lines_apart(green, 0);
  std::vector<Eigen::VectorXd> apart;
  for (Eigen::Index k = 0; k < green.run_share.cols(); ++k) {
    const Eigen::VectorXd shares = shares_apart(green, k);
    if (shares.size() == 0 || shares.cwiseAbs().maxCoeff() <= kAlike) {
      continue;
    }
    apart.push_back(shares);
    split.losses.push_back(k);
    Eigen::MatrixXd with_lines = Eigen::MatrixXd::Zero(lines.cols(), green.share.rows());
    for (Eigen::Index r = 0; r < lines.rows(); ++r) {
      const auto look = static_cast<Eigen::Index>(green.runs[static_cast<std::size_t>(r)].look);
      with_lines.col(look) -= shares(r) * lines.row(r).transpose();
    }
    split.with_lines.push_back(std::move(with_lines));
    for (const Eigen::VectorXd& other : apart) {
      Eigen::RowVectorXd pair = Eigen::RowVectorXd::Zero(green.share.rows());
      for (Eigen::Index r = 0; r < lines.rows(); ++r) {
        pair(static_cast<Eigen::Index>(green.runs[static_cast<std::size_t>(r)].look)) +=
            shares(r) * other(r);
      }
      split.with_losses.push_back(std::move(pair));
    }
  }
  return split;
}

Eigen::MatrixXd within_products(const GreenModel& green, const std::vector<double>& rates) {
  const auto losses = static_cast<Eigen::Index>(green.losses.size());
  const Eigen::Index lines = green.within.rows(); // and value
  Eigen::MatrixXd products = Eigen::MatrixXd::Zero(losses + lines, losses + lines);
  products.bottomRightCorner(lines, lines) = green.within;
  std::vector<Eigen::VectorXd> left;
  std::size_t pair = 0;
  for (std::size_t i = 0; i < green.split.losses.size(); ++i) {
    const Eigen::Index k = green.split.losses[i];
    left.push_back(left_at_looks(green, k, rates[static_cast<std::size_t>(k)]));
    products.col(k).tail(lines) = green.split.with_lines[i] * left[i];
    for (std::size_t j = 0; j <= i; ++j) {
      products(k, green.split.losses[j]) =
          green.split.with_losses[pair++] * left[i].cwiseProduct(left[j]);
    }
  }
  return products;
}

Rows columns_within(const GreenModel& green, const std::vector<double>& rates) {
  const auto losses = static_cast<Eigen::Index>(green.losses.size());
  Rows columns = lines_apart(green, losses);
  for (const Eigen::Index k : green.split.losses) {
    const Eigen::VectorXd apart = shares_apart(green, k);
    for (Eigen::Index r = 0; r < columns.rows(); ++r) {
      const auto look = static_cast<Eigen::Index>(green.runs[static_cast<std::size_t>(r)].look);
      columns(r, k) =
          -apart(r) * left_of(green.growth(look, k), rates[static_cast<std::size_t>(k)]);
    }
  }
  return columns;
}

Rows rate_columns_within(const GreenModel& green, const std::vector<double>& rates,
                         const Eigen::VectorXd& depths) {
  Rows columns(green.run_share.rows(), green.run_share.cols());
  for (Eigen::Index k = 0; k < columns.cols(); ++k) {
    const Eigen::VectorXd apart = shares_apart(green, k);
    for (Eigen::Index r = 0; r < columns.rows(); ++r) {
      const auto look = static_cast<Eigen::Index>(green.runs[static_cast<std::size_t>(r)].look);
      columns(r, k) =
          change(apart(r), depths(k), green.growth(look, k), rates[static_cast<std::size_t>(k)]);
    }
  }
  return columns;
}

Eigen::MatrixXd within_lines(const GreenModel& green) {
  const Rows lines = lines_apart(green, 0);
  Eigen::MatrixXd products = Eigen::MatrixXd::Zero(lines.cols(), lines.cols());
  products.selfadjointView<Eigen::Lower>().rankUpdate(lines.transpose());
  return products;
}

} // namespace baize::season
