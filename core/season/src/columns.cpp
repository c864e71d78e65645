#include "columns.h"

#include <algorithm>
#include <vector>

namespace baize::season {
namespace {

/// The looks that see a loss which is not over: `count` rows from `first`.
struct Seen {
  Eigen::Index first = 0;
  Eigen::Index count = 0;
};

Seen seen_of(const GreenModel& green, Eigen::Index loss, double rate) {
  const auto growth = green.growth.col(loss); // rises with the looks; below 0 before the work
  const auto* const end = growth.data() + growth.size();
  const auto* const first = std::lower_bound(growth.data(), end, 0.0);
  return {first - growth.data(), std::upper_bound(first, end, kOver / rate) - first};
}

/// What these looks see of a loss of depth 1.
Eigen::VectorXd seen_part(const GreenModel& green, Eigen::Index loss, double rate, Seen seen) {
  return green.share.col(loss).segment(seen.first, seen.count).array() *
         (-rate * green.growth.col(loss).segment(seen.first, seen.count)).array().exp();
}

} // namespace

Layout layout_of(const Model& model, const GreenModel& green) {
  Layout layout;
  layout.losses = static_cast<Eigen::Index>(green.losses.size());
  layout.lines = static_cast<Eigen::Index>(green.lines.size());
  layout.observers = static_cast<Eigen::Index>(model.observers.size()) - 1;
  return layout;
}

Rows fixed_columns(const GreenModel& green, std::size_t observers) {
  const Eigen::MatrixXd contrasts = observer_contrasts(observers);
  const auto lines = static_cast<Eigen::Index>(green.lines.size());
  Rows columns(static_cast<Eigen::Index>(green.looks.size()), lines + contrasts.cols() + 3);
  for (Eigen::Index i = 0; i < columns.rows(); ++i) {
    const Look& look = green.looks[static_cast<std::size_t>(i)];
    columns.row(i) << green.line_share.row(i), 1,
        contrasts.row(static_cast<Eigen::Index>(look.observer)), look.played, look.mean;
  }
  return columns;
}

std::vector<double> rates_of(const GreenModel& green, const Parameters& parameters) {
  std::vector<double> rates;
  rates.reserve(green.losses.size());
  for (const Loss& loss : green.losses) {
    rates.push_back(parameters.rate[loss.method]);
  }
  return rates;
}

void put_losses(const GreenModel& green, const std::vector<double>& rates, Rows& columns,
                Eigen::Index at) {
  const auto losses = static_cast<Eigen::Index>(green.losses.size());
  columns.middleCols(at, losses).setZero();
  for (Eigen::Index k = 0; k < losses; ++k) {
    const double rate = rates[static_cast<std::size_t>(k)];
    const Seen seen = seen_of(green, k, rate);
    columns.col(at + k).segment(seen.first, seen.count) = -seen_part(green, k, rate, seen);
  }
}

Rows look_columns(const Model& model, const GreenModel& green, const std::vector<double>& rates) {
  Rows columns(green.fixed.rows(), layout_of(model, green).all());
  put_losses(green, rates, columns, 0);
  columns.rightCols(green.fixed.cols()) = green.fixed;
  return columns;
}

Eigen::VectorXd without_effects(const GreenModel& green, const std::vector<double>& rates,
                                const Eigen::VectorXd& effects) {
  const Eigen::Index fixed = green.fixed.cols() - 1;
  Eigen::VectorXd left = green.fixed.col(fixed);
  left.noalias() -= green.fixed.leftCols(fixed) * effects.tail(fixed);
  for (Eigen::Index k = 0; k < effects.size() - fixed; ++k) {
    const double rate = rates[static_cast<std::size_t>(k)];
    const Seen seen = seen_of(green, k, rate);
    left.segment(seen.first, seen.count) += effects(k) * seen_part(green, k, rate, seen);
  }
  return left;
}

Rows rate_columns(const GreenModel& green, const std::vector<double>& rates,
                  const Eigen::VectorXd& depths) {
  Rows columns(green.share.rows(), green.share.cols());
  for (Eigen::Index i = 0; i < columns.rows(); ++i) {
    for (Eigen::Index k = 0; k < columns.cols(); ++k) {
      columns(i, k) = change(green.share(i, k), depths(k), green.growth(i, k),
                             rates[static_cast<std::size_t>(k)]);
    }
  }
  return columns;
}

} // namespace baize::season
