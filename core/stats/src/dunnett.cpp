#include "baize/stats/dunnett.h"

#include "checks.h"

#include <limits>

namespace baize::stats {
namespace {

using units::Problem;

constexpr double kInfinity = std::numeric_limits<double>::infinity();

std::optional<Problem> bad_input(const std::vector<double>& means, const std::vector<int>& counts,
                                 std::size_t control, double variance, double df) {
  auto problem = too_few("means", means.size(), 2);
  problem = problem ? problem : lengths_differ("counts", counts.size(), means.size());
  problem = problem ? problem : not_finite("means", means);
  if (problem) {
    return problem;
  }
  if (means.size() > 201) {
    return Problem{"too_many", "means", std::to_string(means.size()), "at most 201", ""};
  }
  for (std::size_t i = 0; i < counts.size(); ++i) {
    if (counts[i] < 1) {
      return Problem{"count_out_of_range", "counts", std::to_string(counts[i]), "1 or more",
                     "mean " + std::to_string(i + 1)};
    }
  }
  if (!(variance > 0 && std::isfinite(variance))) {
    return Problem{"variance_out_of_range", "variance", units::write_number(variance),
                   "above 0 and finite", ""};
  }
  if (!(df >= 1 && df <= 1e6)) {
    return Problem{"df_out_of_range", "df", units::write_number(df), "from 1 to 1000000", ""};
  }
  if (control >= means.size()) {
    return Problem{"no_such_control", "control", std::to_string(control),
                   "the place of a mean, from 0", ""};
  }
  return std::nullopt;
}

Interval interval_of(double difference, double half, Against alternative) {
  return {alternative == Against::less ? -kInfinity : difference - half,
          alternative == Against::greater ? kInfinity : difference + half};
}

} // namespace

std::optional<Problem> DunnettOptions::problem() const {
  return alternative == Against::differs
             ? outside_open("confidence", confidence, 0, 1, "above 0 and below 1")
             : outside_open("confidence", confidence, 0.5, 1,
                            "above 0.5 and below 1 for a one-sided comparison");
}

Dunnett dunnett(const std::vector<double>& means, const std::vector<int>& counts,
                std::size_t control, double variance, double df, const DunnettOptions& options) {
  Dunnett result;
  auto problem = options.problem();
  problem = problem ? problem : bad_input(means, counts, control, variance, df);
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  const bool two_sided = options.alternative == Against::differs;
  const double own = counts[control];
  std::vector<double> lambda;
  for (std::size_t i = 0; i < means.size(); ++i) {
    if (i != control) {
      lambda.push_back(std::sqrt(counts[i] / (counts[i] + own)));
    }
  }
  result.critical = dunnett_critical(1 - options.confidence, lambda, df, two_sided);
  result.summary = done_if_finite({result.critical});
  for (std::size_t i = 0; i < means.size(); ++i) {
    if (i == control) {
      continue;
    }
    const double difference = means[i] - means[control];
    const double error = std::sqrt(variance * (1.0 / counts[i] + 1 / own));
    const double t = difference / error;
    const double asked = two_sided ? std::fabs(t) : options.alternative == Against::less ? -t : t;
    const double p = dunnett_upper(asked, lambda, df, two_sided);
    result.comparisons.push_back(
        {i, difference, error, t, p,
         interval_of(difference, result.critical * error, options.alternative)});
    const Summary finite = done_if_finite({t, p});
    result.summary = finite.usable ? result.summary : finite;
  }
  return result;
}

} // namespace baize::stats
