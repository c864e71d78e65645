#include "baize/stats/descriptive.h"

#include "checks.h"

#include <algorithm>
#include <vector>

namespace baize::stats {
namespace {

/// Adds with what rounding drops kept beside (Neumaier 1974): a thousand deviations
/// would otherwise cost the last certified digit.
class Sum {
 public:
  void add(double term) {
    const double next = total_ + term;
    dropped_ +=
        std::fabs(total_) >= std::fabs(term) ? (total_ - next) + term : (term - next) + total_;
    total_ = next;
  }
  double value() const { return total_ + dropped_; }

 private:
  double total_ = 0;
  double dropped_ = 0;
};

double mean_of(std::span<const double> values) {
  Sum sum;
  for (const double value : values) {
    sum.add(value);
  }
  return sum.value() / static_cast<double>(values.size());
}

std::optional<units::Problem> trouble(std::span<const double> values) {
  if (const auto few = too_few("number of values", values.size(), 1)) {
    return few;
  }
  return not_finite("values", values);
}

void spread(std::span<const double> values, Description& of) {
  Sum square;
  Sum rest;
  Sum neighbours;
  for (std::size_t i = 0; i < values.size(); ++i) {
    const double from_mean = values[i] - of.mean;
    square.add(from_mean * from_mean);
    rest.add(from_mean);
    if (i > 0) {
      neighbours.add(from_mean * (values[i - 1] - of.mean));
    }
  }
  const auto n = static_cast<double>(values.size());
  // What the rounded mean leaves over is given back.
  const double squares = square.value() - rest.value() * rest.value() / n;
  const bool equal = of.smallest == of.largest;
  of.sd = equal ? 0 : std::sqrt((squares < 0 ? 0 : squares) / (n - 1));
  if (!equal && squares > 0) {
    of.autocorrelation_1 = neighbours.value() / squares;
  }
}

} // namespace

Description describe(std::span<const double> values) {
  Description of;
  of.n = values.size();
  if (const auto bad = trouble(values)) {
    of.summary = refused(*bad);
    return of;
  }
  std::vector<double> sorted(values.begin(), values.end());
  std::sort(sorted.begin(), sorted.end());
  of.smallest = sorted.front();
  of.lower_quartile = quantile_of_sorted(sorted, 0.25);
  of.median = quantile_of_sorted(sorted, 0.5);
  of.upper_quartile = quantile_of_sorted(sorted, 0.75);
  of.largest = sorted.back();
  of.mean = mean_of(values);
  if (values.size() > 1) {
    spread(values, of);
  }
  of.summary = done_if_finite({of.mean, of.sd.value_or(0), of.autocorrelation_1.value_or(0),
                               of.median, of.lower_quartile, of.upper_quartile});
  return of;
}

double quantile_of_sorted(std::span<const double> sorted, double p) {
  const double place = p * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(place);
  if (below + 1 >= sorted.size()) {
    return sorted.back();
  }
  return std::lerp(sorted[below], sorted[below + 1], place - static_cast<double>(below));
}

Quantile quantile(std::span<const double> values, double p) {
  Quantile found;
  if (const auto bad = trouble(values)) {
    found.summary = refused(*bad);
    return found;
  }
  if (!(p >= 0 && p <= 1)) {
    found.summary =
        refused({"option_out_of_range", "p", units::write_number(p), "a number from 0 to 1", ""});
    return found;
  }
  std::vector<double> sorted(values.begin(), values.end());
  std::sort(sorted.begin(), sorted.end());
  found.value = quantile_of_sorted(sorted, p);
  found.summary = done_if_finite({found.value});
  return found;
}

} // namespace baize::stats
