#include "baize/stats/bland_altman.h"

#include "baize/stats/descriptive.h"
#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>
#include <vector>

namespace baize::stats {
namespace {

Interval about(double centre, double half) {
  return {centre - half, centre + half};
}

std::optional<units::Problem> trouble(std::span<const double> first, std::span<const double> second,
                                      const BlandAltmanOptions& options) {
  if (const auto bad = options.problem()) {
    return bad;
  }
  if (const auto bad = lengths_differ("second", second.size(), first.size())) {
    return bad;
  }
  if (const auto bad = too_few("number of pairs", first.size(), 3)) {
    return bad;
  }
  if (const auto bad = not_finite("first", first)) {
    return bad;
  }
  return not_finite("second", second);
}

} // namespace

std::optional<units::Problem> BlandAltmanOptions::problem() const {
  if (const auto bad =
          outside_open("multiplier", multiplier, 0, 10, "a number above 0 and below 10")) {
    return bad;
  }
  return outside_open("confidence", confidence, 0, 1, "a number above 0 and below 1");
}

BlandAltman bland_altman(std::span<const double> first, std::span<const double> second,
                         const BlandAltmanOptions& options) {
  BlandAltman found;
  found.n = first.size();
  if (const auto bad = trouble(first, second, options)) {
    found.summary = refused(*bad);
    return found;
  }
  std::vector<double> differences(first.size());
  std::transform(first.begin(), first.end(), second.begin(), differences.begin(), std::minus<>());
  const Description of = describe(differences);
  if (!of.summary.usable) {
    found.summary = degenerate(of.summary.problem);
    return found;
  }
  found.bias = of.mean;
  found.sd = *of.sd;
  if (found.sd <= rounding_of(std::max(largest_of(first), largest_of(second)))) {
    found.sd = 0;
    found.summary = degenerate({"all_equal", "differences", "all " + units::write_number(of.mean),
                                "not all the same, since limits are drawn from their scatter", ""});
    return found;
  }
  const auto n = static_cast<double>(found.n);
  const double t = t_quantile(1 - (1 - options.confidence) / 2, n - 1);
  const double m = options.multiplier;
  found.bias_se = found.sd / std::sqrt(n);
  found.bias_interval = about(found.bias, t * found.bias_se);
  found.limits = about(found.bias, m * found.sd);
  found.limit_se = found.sd * (options.limit_error == LimitError::three_over_n
                                   ? std::sqrt(3 / n)
                                   : std::sqrt(1 / n + m * m / (2 * (n - 1))));
  found.lower_limit_interval = about(found.limits.low, t * found.limit_se);
  found.upper_limit_interval = about(found.limits.high, t * found.limit_se);
  found.summary = done_if_finite({found.bias, found.sd, found.limits.low, found.limits.high,
                                  found.lower_limit_interval.low, found.upper_limit_interval.high});
  return found;
}

} // namespace baize::stats
