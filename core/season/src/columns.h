#pragma once

#include "baize/season/evaluate.h"

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

/// The methods' rates, loss by loss.
std::vector<double> rates_of(const GreenModel& green, const Parameters& parameters);
/// One row a look: the mean over its rolls of every column. `rates`: one a loss.
Rows look_columns(const Model& model, const GreenModel& green, const std::vector<double>& rates);
/// One row a look (or a run, less its look) and one column a loss: what a loss of
/// that depth changes where its log rate grows by 1, to first order.
Rows rate_columns(const GreenModel& green, const std::vector<double>& rates,
                  const Eigen::VectorXd& depths);
Rows rate_columns_within(const GreenModel& green, const std::vector<double>& rates,
                         const Eigen::VectorXd& depths);
/// How the runs' losses, lines and value differ from their look's, times the root of
/// their rolls; one row a run.
Rows columns_within(const GreenModel& green, const Parameters& parameters);
/// Sums of squares and products, weighted by rolls, of how the runs' losses, lines
/// and value differ from their look's. Other columns do not differ. Lower triangle.
Eigen::MatrixXd within_products(const GreenModel& green, const Parameters& parameters);
/// The same of lines and value only: it depends on no parameter.
Eigen::MatrixXd within_lines(const GreenModel& green);

/// Divides by the root of their covariance the looks' columns, in place: a walk of
/// variance `walk` a day from 0 at the first look, and visit and roll noise.
/// Returns the log-determinant of that covariance.
double whiten(const Model& model, const GreenModel& green, const Parameters& parameters,
              Rows& columns);

} // namespace baize::season
