#include "baize/stats/binomial.h"

#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>

namespace baize::stats {
namespace {

Proportion begin(std::int64_t successes, std::int64_t trials, const ConfidenceOptions& options) {
  Proportion found;
  if (const auto bad = options.problem()) {
    found.summary = refused(*bad);
  } else if (trials < 1) {
    found.summary = refused({"too_few", "trials", std::to_string(trials), "at least 1", ""});
  } else if (successes < 0 || successes > trials) {
    found.summary = refused({"successes_out_of_range", "successes", std::to_string(successes),
                             "from 0 to the number of trials, " + std::to_string(trials), ""});
  } else {
    found.share = static_cast<double>(successes) / static_cast<double>(trials);
    found.summary = done();
  }
  return found;
}

void finish(Proportion& found) {
  found.summary = done_if_finite({found.share, found.interval.low, found.interval.high});
}

} // namespace

Proportion clopper_pearson(std::int64_t successes, std::int64_t trials,
                           const ConfidenceOptions& options) {
  Proportion found = begin(successes, trials, options);
  if (!found.summary.usable) {
    return found;
  }
  const double out = (1 - options.confidence) / 2;
  const auto x = static_cast<double>(successes);
  const auto n = static_cast<double>(trials);
  found.interval.low = successes == 0 ? 0 : beta_quantile(out, x, n - x + 1);
  // By the failures, so that swapping yes and no mirrors the interval.
  found.interval.high = successes == trials ? 1 : 1 - beta_quantile(out, n - x, x + 1);
  finish(found);
  return found;
}

Proportion wilson(std::int64_t successes, std::int64_t trials, const ConfidenceOptions& options) {
  Proportion found = begin(successes, trials, options);
  if (!found.summary.usable) {
    return found;
  }
  const double z = normal_quantile(1 - (1 - options.confidence) / 2);
  const auto n = static_cast<double>(trials);
  const double p = found.share;
  const double centre = p + z * z / (2 * n);
  const double half = z * std::sqrt(p * (1 - p) / n + z * z / (4 * n * n));
  const double scale = 1 + z * z / n;
  // At 0 and n the end is exactly 0 or 1; rounding must not leave it beside it.
  found.interval.low = successes == 0 ? 0 : std::max(0.0, (centre - half) / scale);
  found.interval.high = successes == trials ? 1 : std::min(1.0, (centre + half) / scale);
  finish(found);
  return found;
}

} // namespace baize::stats
