#include "baize/observers/estimate.h"

#include "baize/stats/distributions.h"
#include "baize/stats/leave_out.h"

#include <algorithm>
#include <cmath>

namespace baize::observers {

std::optional<Estimate> by_session(std::size_t sessions, const WithoutSession& figure,
                                   double confidence, double lowest, double highest) {
  const auto whole = figure(std::nullopt);
  if (!whole || !std::isfinite(*whole)) {
    return std::nullopt;
  }
  Estimate estimate;
  estimate.value = *whole;
  constexpr std::size_t kLeast = 3;
  if (sessions < kLeast) {
    return estimate;
  }
  std::vector<double> without;
  without.reserve(sessions);
  for (std::size_t i = 0; i < sessions; ++i) {
    const auto value = figure(i);
    if (!value || !std::isfinite(*value)) {
      return estimate;
    }
    without.push_back(*value);
  }
  const auto count = static_cast<double>(sessions);
  estimate.se = stats::leave_one_out_error(without);
  const double half = stats::t_quantile(1 - (1 - confidence) / 2, count - 1) * *estimate.se;
  estimate.interval =
      stats::Interval{std::max(*whole - half, lowest), std::min(*whole + half, highest)};
  return estimate;
}

std::optional<Estimate> mean_by_session(const std::vector<Sums>& sessions, double confidence) {
  double n = 0;
  double sum = 0;
  for (const Sums& session : sessions) {
    n += session.n;
    sum += session.sum;
  }
  return by_session(
      sessions.size(),
      [&](std::optional<std::size_t> left_out) -> std::optional<double> {
        const Sums part = left_out ? sessions[*left_out] : Sums{};
        return (sum - part.sum) / (n - part.n);
      },
      confidence);
}

std::optional<Spread> spread(const std::vector<Sums>& sessions,
                             std::optional<std::size_t> left_out) {
  double groups = 0;
  double n = 0;
  double sum = 0;
  double of_squared_sizes = 0;
  for (std::size_t i = 0; i < sessions.size(); ++i) {
    if (i != left_out && sessions[i].n > 0) {
      groups += 1;
      n += sessions[i].n;
      sum += sessions[i].sum;
      of_squared_sizes += sessions[i].n * sessions[i].n;
    }
  }
  if (groups < 2) {
    return std::nullopt;
  }
  Spread found;
  found.mean = sum / n;
  double within = 0;
  double between = 0;
  for (std::size_t i = 0; i < sessions.size(); ++i) {
    if (i != left_out && sessions[i].n > 0) {
      const double mean = sessions[i].sum / sessions[i].n;
      within += std::max(0.0, sessions[i].squares - sessions[i].sum * mean);
      between += sessions[i].n * (mean - found.mean) * (mean - found.mean);
    }
  }
  const double between_ms = between / (groups - 1);
  if (n > groups) {
    found.within = within / (n - groups);
    const double size = (n - of_squared_sizes / n) / (groups - 1);
    found.between = std::max(0.0, (between_ms - found.within) / size);
  } else {
    found.between = between_ms;
  }
  found.total = found.within + found.between;
  return found;
}

} // namespace baize::observers
