#include "rate_off.h"

#include "columns.h"

#include <Eigen/Cholesky>

#include <cmath>

namespace baize::season {
namespace {

constexpr double kLeastDepth = 0.1; ///< points: a loss of no depth has no rate to tell

/// The whitened columns of a green: own effects, log rates, and what is left of the
/// values when the effects are taken off.
struct Whitened {
  Rows own;
  Rows rates;
  Eigen::VectorXd left;
};

Whitened over_looks(const SeasonFit& fit, const GreenModel& green, const Eigen::VectorXd& own,
                    const Eigen::VectorXd& depths) {
  const Layout layout = layout_of(fit.model, green);
  const std::vector<double> rates = rates_of(green, fit.parameters);
  Rows columns(green.fixed.rows(), layout.all() + layout.losses);
  columns << look_columns(fit.model, green, rates), rate_columns(green, rates, depths);
  whiten(fit.model, green, fit.parameters, columns);
  Eigen::VectorXd effects(layout.all() - 1);
  effects << own, fit.posterior.shared.head(layout.shared());
  return {columns.leftCols(layout.own()), columns.rightCols(layout.losses),
          columns.col(layout.all() - 1) - columns.leftCols(layout.all() - 1) * effects};
}

/// The same within looks, where neither the level nor what is shared differs.
Whitened within_looks(const SeasonFit& fit, const GreenModel& green, const Eigen::VectorXd& own,
                      const Eigen::VectorXd& depths) {
  const std::vector<double> rates = rates_of(green, fit.parameters);
  const Rows columns = columns_within(green, rates) / fit.model.roll_sd;
  const Eigen::Index effects = columns.cols() - 1; // losses and lines
  Whitened within;
  within.own = Rows::Zero(columns.rows(), own.size());
  within.own.leftCols(effects) = columns.leftCols(effects);
  within.rates = rate_columns_within(green, rates, depths) / fit.model.roll_sd;
  within.left = columns.col(effects) - columns.leftCols(effects) * own.head(effects);
  return within;
}

bool put_green(const SeasonFit& fit, std::size_t place, RateOff& off) {
  const GreenModel& green = fit.model.greens[place];
  const GreenPosterior& posterior = fit.posterior.greens[place];
  const auto losses = static_cast<Eigen::Index>(green.losses.size());
  const Eigen::VectorXd own = posterior.base + posterior.slope * fit.posterior.shared;
  const Eigen::VectorXd depths = own.head(losses).cwiseMax(kLeastDepth);
  if (losses == 0) {
    off.response = Eigen::MatrixXd::Zero(own.size(), 0);
    return true;
  }
  const double belief = fit.options.priors.log_rate_within;
  Eigen::MatrixXd cross = Eigen::MatrixXd::Zero(own.size(), losses);
  Eigen::MatrixXd precision = Eigen::MatrixXd::Identity(losses, losses) / (belief * belief);
  Eigen::VectorXd right = Eigen::VectorXd::Zero(losses);
  for (const bool within : {false, true}) {
    if (within && green.split.losses.empty()) {
      continue; // within looks all losses are alike
    }
    const Whitened part =
        within ? within_looks(fit, green, own, depths) : over_looks(fit, green, own, depths);
    cross += part.own.transpose() * part.rates;
    precision += part.rates.transpose() * part.rates;
    right += part.rates.transpose() * part.left;
  }
  const auto lower = posterior.precision_root.triangularView<Eigen::Lower>();
  const Eigen::MatrixXd half = lower.solve(cross);
  precision -= half.transpose() * half;
  const Eigen::LLT<Eigen::MatrixXd> root(precision);
  if (root.info() != Eigen::Success) {
    return false;
  }
  off.mean = root.solve(right);
  off.root = root.matrixU().solve(Eigen::MatrixXd::Identity(losses, losses));
  off.response = -lower.transpose().solve(half);
  return off.mean.allFinite() && off.root.allFinite();
}

} // namespace

double Draw::rate(std::size_t green, std::size_t loss, std::size_t method) const {
  return parameters.rate[method] * std::exp(log_rate[green](static_cast<Eigen::Index>(loss)));
}

std::vector<RateOff> rates_off(const SeasonFit& fit) {
  std::vector<RateOff> all(fit.model.greens.size());
  for (std::size_t g = 0; g < all.size(); ++g) {
    if (!put_green(fit, g, all[g])) {
      return {};
    }
  }
  return all;
}

} // namespace baize::season
