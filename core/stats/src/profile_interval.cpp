#include "baize/stats/distributions.h"
#include "checks.h"
#include "levenberg_marquardt.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace baize::stats {
namespace {

using detail::CurveSearch;

constexpr double kFurthest = 1000; ///< standard errors from the estimate

/// How far the profile lies above the least sum of squares, as a multiple of what is
/// allowed, less 1. `others` holds the last fit, from where the next starts.
class Profile {
 public:
  Profile(CurveSearch search, const NonlinearFit& fit, std::size_t parameter, double allowed)
      : search_(std::move(search)), parameter_(parameter), least_(fit.residual_ss),
        allowed_(allowed) {
    for (const CurveParameter& one : fit.parameters) {
      others_.push_back(one.value);
    }
  }
  /// NaN where the curve ends there.
  double operator()(double value) {
    std::vector<double> start = others_;
    start[parameter_] = value;
    const auto found = levenberg_marquardt(search_, start);
    if (found.residual.empty()) {
      return std::numeric_limits<double>::quiet_NaN();
    }
    others_ = found.parameters;
    lower_ = lower_ || found.ss < least_ - 1e-6 * allowed_;
    return static_cast<double>((found.ss - least_) / allowed_) - 1;
  }
  bool lower() const { return lower_; }

 private:
  CurveSearch search_;
  std::size_t parameter_;
  double least_;
  double allowed_;
  std::vector<double> others_;
  bool lower_ = false;
};

/// Widens from the estimate until the profile is above, then halves by secant steps
/// kept within the bracket. Infinite where it never is.
double end_of(Profile& profile, double estimate, double error, double sign, double t) {
  double inner = estimate;
  double at_inner = -1;
  double reach = t * error;
  double outer = estimate + sign * reach;
  double at_outer = profile(outer);
  while (at_outer < 0 && reach < kFurthest * error) {
    inner = outer;
    at_inner = at_outer;
    reach *= 1.5;
    outer = estimate + sign * reach;
    at_outer = profile(outer);
  }
  if (at_outer < 0) {
    return sign * std::numeric_limits<double>::infinity();
  }
  for (int i = 0; i < 100 && std::fabs(outer - inner) > 1e-10 * reach; ++i) {
    // Nearly a parabola, so straight in its root.
    const double from = std::sqrt(std::max(0.0, at_inner + 1)) - 1;
    const double to = std::sqrt(at_outer + 1) - 1;
    double share = from / (from - to);
    // A step to the very end would leave the other one where it is.
    share = std::isfinite(share) ? std::min(std::max(share, 1e-6), 1 - 1e-6) : 0.5;
    const double middle = inner + (i % 3 == 2 ? 0.5 : share) * (outer - inner);
    const double at_middle = profile(middle);
    (at_middle < 0 ? inner : outer) = middle;
    (at_middle < 0 ? at_inner : at_outer) = at_middle;
    if (std::fabs(at_middle) < 1e-9) {
      return middle;
    }
  }
  return (inner + outer) / 2;
}

} // namespace

ProfileInterval profile_interval(const std::vector<double>& y, const CurveModel& model,
                                 const NonlinearFit& fit, std::size_t parameter,
                                 const NonlinearOptions& options) {
  ProfileInterval result;
  auto problem = options.problem();
  if (!problem && (!fit.summary.usable || fit.fitted.size() != y.size())) {
    problem =
        units::Problem{"fit_not_usable", "fit", "not usable", "a usable fit of the same y", ""};
  }
  if (!problem && parameter >= fit.parameters.size()) {
    problem = units::Problem{"no_such_parameter", "parameter", std::to_string(parameter),
                             "the place of a parameter, from 0", ""};
  }
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  CurveSearch search{y, model, {}, options.max_iterations, options.tolerance};
  for (std::size_t k = 0; k < fit.parameters.size(); ++k) {
    if (k != parameter) {
      search.free.push_back(k);
    }
  }
  const double t = t_quantile((1 + options.confidence) / 2, fit.residual_df);
  const double allowed = t * t * fit.residual_ss / fit.residual_df;
  const CurveParameter& at = fit.parameters[parameter];
  bool lower = false;
  for (const double sign : {-1.0, 1.0}) {
    Profile profile(search, fit, parameter, allowed);
    (sign < 0 ? result.interval.low : result.interval.high) =
        end_of(profile, at.value, at.standard_error, sign, t);
    lower = lower || profile.lower();
  }
  result.summary = lower ? degenerate({"lower_minimum", "fit", "not at the least residual",
                                       "a fit from a better start", ""})
                         : done();
  return result;
}

} // namespace baize::stats
