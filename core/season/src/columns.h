#pragma once

#include "baize/season/evaluate.h"

namespace baize::season {

using Rows = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

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

/// One row a look: the mean over its rolls of every column.
Rows look_columns(const Model& model, const GreenModel& green, const Parameters& parameters);
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
