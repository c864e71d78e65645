#include "baize/stats/one_way_anova.h"

#include "baize/stats/distributions.h"
#include "checks.h"

#include <cmath>
#include <string>

namespace baize::stats {
namespace {

using units::Problem;
using Groups = std::vector<std::vector<double>>;

std::optional<Problem> bad_groups(const Groups& groups, std::size_t values) {
  if (auto problem = too_few("groups", groups.size(), 2)) {
    return problem;
  }
  for (std::size_t i = 0; i < groups.size(); ++i) {
    auto problem = too_few("values", groups[i].size(), 1);
    problem = problem ? problem : not_finite("value", groups[i]);
    if (problem) {
      problem->place =
          "group " + std::to_string(i + 1) + (problem->place.empty() ? "" : " " + problem->place);
      return problem;
    }
  }
  return too_few("values", values, groups.size() + 1);
}

/// About `about`, which is near the values, so that little is lost.
long double mean_about(const std::vector<double>& values, long double about) {
  long double sum = 0;
  for (const double value : values) {
    sum += value - about;
  }
  return sum / static_cast<long double>(values.size());
}

} // namespace

OneWayAnova one_way_anova(const Groups& groups) {
  OneWayAnova result;
  std::size_t values = 0;
  double largest = 0;
  for (const auto& group : groups) {
    values += group.size();
    largest = std::fmax(largest, largest_of(group));
  }
  if (auto problem = bad_groups(groups, values)) {
    result.summary = refused(*problem);
    return result;
  }
  const long double about = groups.front().front();
  std::vector<long double> means; // less `about`
  long double grand = 0;
  for (const auto& group : groups) {
    means.push_back(mean_about(group, about));
    grand += means.back() * static_cast<long double>(group.size());
    result.means.push_back(static_cast<double>(about + means.back()));
  }
  grand /= static_cast<long double>(values);
  long double between = 0;
  long double within = 0;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    between += static_cast<long double>(groups[i].size()) * (means[i] - grand) * (means[i] - grand);
    for (const double value : groups[i]) {
      const long double off = value - about - means[i];
      within += off * off;
    }
  }
  result.between_df = static_cast<int>(groups.size()) - 1;
  result.within_df = static_cast<int>(values - groups.size());
  result.between_ss = static_cast<double>(between);
  result.within_ss = static_cast<double>(within);
  result.between_ms = static_cast<double>(between / result.between_df);
  result.within_ms = static_cast<double>(within / result.within_df);
  result.residual_sd = std::sqrt(result.within_ms);
  if (!(result.residual_sd > rounding_of(largest) / 64)) {
    result.summary = degenerate(
        {"no_spread", "values", "alike within every group", "spread within some group", ""});
    return result;
  }
  result.f = result.between_ms / result.within_ms;
  result.p = f_upper(result.f, result.between_df, result.within_df);
  result.r_squared = static_cast<double>(between / (between + within));
  result.summary =
      done_if_finite({result.f, result.p, result.r_squared, result.between_ss, result.within_ss});
  return result;
}

} // namespace baize::stats
