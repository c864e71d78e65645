#include "baize/stats/concordance.h"

#include "baize/stats/descriptive.h"
#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>

namespace baize::stats {
namespace {

std::optional<units::Problem> trouble(std::span<const double> first, std::span<const double> second,
                                      const ConfidenceOptions& options) {
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

Summary never_changes(const char* field) {
  return degenerate({"all_equal", field, "the same number throughout",
                     "at least two different numbers, since concordance needs a spread", ""});
}

/// Lin's formula with coefficient = correlation * accuracy put in, so that a
/// correlation of 0 divides nothing.
void add_interval(Concordance& of, double confidence) {
  const double c2 = of.coefficient * of.coefficient;
  const double u2 = of.location_shift * of.location_shift;
  const double rest = 1 - c2;
  const double unexplained = 1 - of.correlation * of.correlation;
  if (!(unexplained > 1e-14)) {
    return;
  }
  const double accuracy = of.accuracy;
  const double variance = (unexplained * accuracy * accuracy / rest +
                           2 * c2 * accuracy * (1 - of.coefficient) * u2 / (rest * rest) -
                           c2 * accuracy * accuracy * u2 * u2 / (2 * rest * rest)) /
                          (static_cast<double>(of.n) - 2);
  if (!(variance > 0)) {
    return;
  }
  of.z_se = std::sqrt(variance);
  const double z = std::atanh(of.coefficient);
  const double half = normal_quantile(1 - (1 - confidence) / 2) * *of.z_se;
  of.interval = Interval{std::tanh(z - half), std::tanh(z + half)};
}

} // namespace

Concordance concordance(std::span<const double> first, std::span<const double> second,
                        const ConfidenceOptions& options) {
  Concordance of;
  of.n = first.size();
  if (const auto bad = trouble(first, second, options)) {
    of.summary = refused(*bad);
    return of;
  }
  const Description a = describe(first);
  const Description b = describe(second);
  if (!a.summary.usable || !b.summary.usable) {
    of.summary = a.summary.usable ? b.summary : a.summary;
    return of;
  }
  if (*a.sd <= rounding_of(largest_of(first))) {
    of.summary = never_changes("first");
    return of;
  }
  if (*b.sd <= rounding_of(largest_of(second))) {
    of.summary = never_changes("second");
    return of;
  }
  const auto n = static_cast<double>(of.n);
  double products = 0;
  for (std::size_t i = 0; i < first.size(); ++i) {
    products += (first[i] - a.mean) * (second[i] - b.mean);
  }
  of.correlation = std::clamp(products / ((n - 1) * *a.sd * *b.sd), -1.0, 1.0);
  const double to_n = std::sqrt((n - 1) / n); // sds with divisor n, as in the source
  of.scale_shift = *a.sd / *b.sd;
  of.location_shift = (a.mean - b.mean) / (to_n * std::sqrt(*a.sd) * std::sqrt(*b.sd));
  of.accuracy = 2 / (of.scale_shift + 1 / of.scale_shift + of.location_shift * of.location_shift);
  of.coefficient = of.correlation * of.accuracy;
  add_interval(of, options.confidence);
  of.summary = done_if_finite(
      {of.coefficient, of.correlation, of.accuracy, of.scale_shift, of.location_shift});
  return of;
}

} // namespace baize::stats
