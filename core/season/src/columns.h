#pragma once

#include "baize/season/evaluate.h"

#include <cmath>
#include <vector>

namespace baize::season {

/// A loss smaller than exp(-20) of its depth is none.
constexpr double kOver = 20;

/// Where a green's columns stand: losses, lines, level at the first look, then
/// what greens share (observers, play), then the values themselves.
struct Layout {
  Eigen::Index losses = 0;
  Eigen::Index lines = 0;
  Eigen::Index observers = 0; ///< contrasts, one less than there are observers
  Eigen::Index own() const { return losses + lines + 1; }
  Eigen::Index shared() const { return observers + 1; }
  Eigen::Index all() const { return own() + shared() + 1; }
};
Layout layout_of(const Model& model, const GreenModel& green);

/// What is left of a loss of depth 1 after so many growth-days; 0 before it (below 0)
/// and when it is over.
inline double left_of(double growth, double rate) {
  const double exponent = rate * growth;
  return growth < 0 || exponent > kOver ? 0 : std::exp(-exponent);
}
/// Change of share x depth x exp(-rate growth), taken off, with the log of the rate.
inline double change(double share, double depth, double growth, double rate) {
  return share == 0 ? 0 : share * depth * rate * growth * left_of(growth, rate);
}

/// The methods' rates, loss by loss.
std::vector<double> rates_of(const GreenModel& green, const Parameters& parameters);
/// Puts the looks' columns of the losses into `columns`, from column `at` on.
void put_losses(const GreenModel& green, const std::vector<double>& rates, Rows& columns,
                Eigen::Index at);
/// One row a look: the mean over its rolls of every column. `rates`: one a loss.
Rows look_columns(const Model& model, const GreenModel& green, const std::vector<double>& rates);
/// The sums of squares and products of these columns, whitened; adds the log-determinant
/// of the looks' covariance. Lower triangle.
Eigen::MatrixXd look_products(const Model& model, const GreenModel& green,
                              const Parameters& parameters, const std::vector<double>& rates,
                              double& log_determinant);
/// One value a look: what is left of its mean when all effects (in the order of
/// Layout, without the values) are taken off.
Eigen::VectorXd without_effects(const GreenModel& green, const std::vector<double>& rates,
                                const Eigen::VectorXd& effects);
/// One row a look (or a run, less its look) and one column a loss: what a loss of
/// that depth changes where its log rate grows by 1, to first order.
Rows rate_columns(const GreenModel& green, const std::vector<double>& rates,
                  const Eigen::VectorXd& depths);
Rows rate_columns_within(const GreenModel& green, const std::vector<double>& rates,
                         const Eigen::VectorXd& depths);
/// How the runs' losses, lines and value differ from their look's, times the root of
/// their rolls; one row a run.
Rows columns_within(const GreenModel& green, const std::vector<double>& rates);
/// What GreenModel::split holds, from the runs' shares.
SplitLosses split_losses(const GreenModel& green);
/// Sums of squares and products, weighted by rolls, of how the runs' losses, lines
/// and value differ from their look's. Other columns do not differ. Lower triangle.
Eigen::MatrixXd within_products(const GreenModel& green, const std::vector<double>& rates);
/// The same of lines and value only: it depends on no parameter.
Eigen::MatrixXd within_lines(const GreenModel& green);

/// Divides by the root of their covariance the looks' columns, in place: a walk of
/// variance `walk` a day from 0 at the first look, and visit and roll noise.
/// Returns the log-determinant of that covariance.
double whiten(const Model& model, const GreenModel& green, const Parameters& parameters,
              Rows& columns);

} // namespace baize::season
