#include "baize/stats/nonlinear_least_squares.h"

#include "checks.h"
#include "levenberg_marquardt.h"

#include <algorithm>
#include <numeric>

namespace baize::stats {
namespace {

using detail::CurveMinimum;
using detail::CurveSearch;
using units::Problem;

std::optional<Problem> bad_input(const std::vector<double>& y, const CurveModel& model,
                                 const std::vector<double>& start) {
  auto problem = too_few("start", start.size(), 1);
  problem = problem ? problem : too_few("y", y.size(), start.size() + 1);
  problem = problem ? problem : not_finite("y", y);
  problem = problem ? problem : not_finite("start", start);
  for (std::size_t i = 0; i < y.size() && !problem; ++i) {
    const double value = model(start, i);
    if (!std::isfinite(value)) {
      problem = Problem{"not_finite", "curve", units::write_number(value),
                        "finite at the start on every row", "row " + std::to_string(i + 1)};
    }
  }
  return problem;
}

/// The first parameter whose change, even to twice its value, the curve does not show.
int without_effect(const std::vector<detail::Column>& slopes, const CurveMinimum& found,
                   const std::vector<double>& y) {
  const double shown = 1e-13 * std::fmax(largest_of(y), 1e-300);
  for (std::size_t k = 0; k < slopes.size(); ++k) {
    long double largest = 0;
    for (const long double slope : slopes[k]) {
      largest = std::max(largest, std::fabs(slope));
    }
    if (largest * std::fmax(std::fabs(found.parameters[k]), 1e-300) < shown) {
      return found.parameters[k] == 0 && largest > 0 ? -1 : static_cast<int>(k);
    }
  }
  return -1;
}

void fill_errors(const CurveSearch& search, const CurveMinimum& found, NonlinearFit& fit) {
  const auto slopes = detail::slopes_at(search, found.parameters);
  const auto triangle = detail::triangle(slopes, found.residual);
  const int idle = without_effect(slopes, found, search.y);
  const int untold = idle >= 0 ? idle : triangle.dependent;
  if (untold >= 0) {
    fit.summary = degenerate({"singular_design", "parameters", "not told apart at the optimum",
                              "each with an effect of its own on the curve",
                              "parameter " + std::to_string(untold + 1)});
    return;
  }
  const auto inverse = detail::inverse_cross_product(triangle);
  const long double variance = found.ss / fit.residual_df;
  for (std::size_t k = 0; k < inverse.size(); ++k) {
    fit.covariance.emplace_back();
    for (const long double entry : inverse[k]) {
      fit.covariance[k].push_back(static_cast<double>(variance * entry));
    }
    fit.parameters.push_back({found.parameters[k], std::sqrt(fit.covariance[k][k])});
  }
}

bool finite(const NonlinearFit& fit) {
  return std::isfinite(fit.residual_ss) &&
         std::all_of(fit.parameters.begin(), fit.parameters.end(), [](const CurveParameter& one) {
           return std::isfinite(one.value) && std::isfinite(one.standard_error);
         });
}

} // namespace

std::optional<Problem> NonlinearOptions::problem() const {
  auto problem =
      outside_open("max_iterations", max_iterations, 0, 1000001, "a whole number, 1 to 1000000");
  problem = problem ? problem : outside_open("tolerance", tolerance, 0, 1, "above 0 and below 1");
  return problem ? problem : outside_open("confidence", confidence, 0, 1, "above 0 and below 1");
}

NonlinearFit nonlinear_least_squares(const std::vector<double>& y, const CurveModel& model,
                                     const std::vector<double>& start,
                                     const NonlinearOptions& options) {
  NonlinearFit fit;
  auto problem = options.problem();
  problem = problem ? problem : bad_input(y, model, start);
  if (problem) {
    fit.summary = refused(*problem);
    return fit;
  }
  CurveSearch search{y, model, std::vector<std::size_t>(start.size()), options.max_iterations,
                     options.tolerance};
  std::iota(search.free.begin(), search.free.end(), std::size_t{0});
  const CurveMinimum found = levenberg_marquardt(search, start);
  fit.residual_df = static_cast<int>(y.size() - start.size());
  fit.residual_ss = static_cast<double>(found.ss);
  fit.residual_sd = static_cast<double>(std::sqrt(found.ss / fit.residual_df));
  for (std::size_t i = 0; i < y.size(); ++i) {
    fit.fitted.push_back(static_cast<double>(y[i] - found.residual[i]));
  }
  if (!found.converged) {
    fit.summary = {Termination::not_converged,
                   "No optimum within " + std::to_string(found.iterations) +
                       " iterations: try another start.",
                   {},
                   found.iterations,
                   false};
    return fit;
  }
  fit.summary = converged(found.iterations);
  fill_errors(search, found, fit);
  if (fit.summary.usable && !finite(fit)) {
    fit.summary = degenerate({"too_large", "values", "out of the reach of the computation",
                              "numbers whose squares can still be added", ""});
  }
  return fit;
}

} // namespace baize::stats
