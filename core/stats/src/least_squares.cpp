#include "baize/stats/least_squares.h"

#include "baize/stats/distributions.h"
#include "checks.h"
#include "householder.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace baize::stats {
namespace {

using units::Problem;
using Rows = std::vector<LeastSquaresRow>;
using detail::Column;

std::optional<Problem> bad_rows(const Rows& rows, bool constant) {
  const std::size_t columns = rows.empty() ? 0 : rows.front().x.size();
  const std::size_t coefficients = columns + (constant ? 1 : 0);
  if (auto problem = too_few("rows", rows.size(), coefficients + 1)) {
    return problem;
  }
  if (coefficients == 0) {
    return too_few("coefficients", 0, 1);
  }
  for (std::size_t i = 0; i < rows.size(); ++i) {
    auto problem = lengths_differ("x", rows[i].x.size(), columns);
    problem = problem ? problem : not_finite("x", rows[i].x);
    problem = problem ? problem : not_finite("y", std::span(&rows[i].y, 1));
    if (problem) {
      problem->place = "row " + std::to_string(i + 1);
      return problem;
    }
  }
  return std::nullopt;
}

std::vector<Column> design(const Rows& rows, bool constant) {
  std::vector<Column> columns;
  if (constant) {
    columns.emplace_back(rows.size(), 1);
  }
  for (std::size_t k = 0; k < rows.front().x.size(); ++k) {
    Column column;
    for (const LeastSquaresRow& row : rows) {
      column.push_back(row.x[k]);
    }
    columns.push_back(column);
  }
  return columns;
}

long double squares(const Column& column, std::size_t first, std::size_t end) {
  long double sum = 0;
  for (std::size_t i = first; i < end; ++i) {
    sum += column[i] * column[i];
  }
  return sum;
}

void fill_sums(const detail::Triangle& triangle, const LeastSquaresOptions& options,
               LeastSquaresFit& fit) {
  // Q'y splits the squares of y: its first rows belong to the columns, the
  // constant's foremost, and what is left to the residuals.
  const std::size_t size = triangle.r.size();
  const std::size_t first = options.constant ? 1 : 0;
  const std::size_t rows = triangle.rotated.size();
  const long double regression = squares(triangle.rotated, first, size);
  const long double residual = squares(triangle.rotated, size, rows);
  fit.regression_df = static_cast<int>(size - first);
  fit.residual_df = static_cast<int>(rows - size);
  fit.regression_ss = static_cast<double>(regression);
  fit.residual_ss = static_cast<double>(residual);
  fit.residual_sd = static_cast<double>(std::sqrt(residual / fit.residual_df));
  fit.r_squared = static_cast<double>(regression / (regression + residual));
  if (fit.residual_ss > 0 && fit.regression_df > 0) {
    fit.f = static_cast<double>(regression / fit.regression_df / (residual / fit.residual_df));
    fit.f_p = f_upper(*fit.f, fit.regression_df, fit.residual_df);
  }
}

void fill_coefficients(const detail::Triangle& triangle, LeastSquaresFit& fit) {
  const Column values = detail::coefficients(triangle);
  const auto inverse = detail::inverse_cross_product(triangle);
  const long double variance =
      squares(triangle.rotated, values.size(), triangle.rotated.size()) / fit.residual_df;
  for (std::size_t k = 0; k < values.size(); ++k) {
    std::vector<double> row;
    for (const long double entry : inverse[k]) {
      row.push_back(static_cast<double>(variance * entry));
    }
    fit.covariance.push_back(row);
    const auto value = static_cast<double>(values[k]);
    const auto error = static_cast<double>(std::sqrt(variance * inverse[k][k]));
    const double certain = value == 0 ? 1 : 0; // where nothing is left to doubt
    fit.coefficients.push_back(
        {value, error,
         error > 0 ? 2 * t_upper(std::fabs(value) / error, fit.residual_df) : certain});
  }
}

bool finite(const LeastSquaresFit& fit) {
  return std::all_of(fit.coefficients.begin(), fit.coefficients.end(),
                     [](const LinearCoefficient& c) {
                       return std::isfinite(c.value) && std::isfinite(c.standard_error) &&
                              std::isfinite(c.p);
                     }) &&
         done_if_finite({fit.residual_sd, fit.r_squared, fit.f.value_or(0), fit.f_p.value_or(0),
                         fit.residual_ss, fit.regression_ss})
             .usable;
}

} // namespace

LeastSquaresFit least_squares(const Rows& rows, const LeastSquaresOptions& options) {
  LeastSquaresFit fit;
  if (auto problem = bad_rows(rows, options.constant)) {
    fit.summary = refused(*problem);
    return fit;
  }
  Column y;
  for (const LeastSquaresRow& row : rows) {
    y.push_back(row.y);
  }
  const double first = options.constant ? rows.front().y : 0;
  if (std::all_of(rows.begin(), rows.end(), [&](const auto& row) { return row.y == first; })) {
    fit.summary = degenerate({"all_equal", "y", units::write_number(first) + " in every row",
                              "of more than one size", ""});
    return fit;
  }
  const detail::Triangle triangle = detail::triangle(design(rows, options.constant), y);
  if (triangle.dependent >= 0) {
    const int number = triangle.dependent + (options.constant ? 0 : 1);
    fit.summary = degenerate({"singular_design", "x", "column " + std::to_string(number),
                              "neither constant 0 nor a sum of the columns before it", ""});
    return fit;
  }
  fill_sums(triangle, options, fit);
  fill_coefficients(triangle, fit);
  for (const LeastSquaresRow& row : rows) {
    long double sum = options.constant ? fit.coefficients[0].value : 0;
    for (std::size_t k = 0; k < row.x.size(); ++k) {
      sum += static_cast<long double>(fit.coefficients[k + (options.constant ? 1 : 0)].value) *
             row.x[k];
    }
    fit.fitted.push_back(static_cast<double>(sum));
  }
  fit.summary = finite(fit)
                    ? done()
                    : degenerate({"too_large", "values", "out of the reach of the computation",
                                  "numbers whose squares can still be added", ""});
  return fit;
}

} // namespace baize::stats
