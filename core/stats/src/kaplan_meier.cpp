#include "baize/stats/kaplan_meier.h"

#include "baize/stats/distributions.h"
#include "checks.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <utility>

namespace baize::stats {
namespace {

using units::Problem;
using Times = std::vector<FollowUp>;

struct Moment {
  int ended = 0;
  int leaving = 0; ///< ended or last seen
};
using Moments = std::map<double, Moment>;

Moments moments(const Times& times) {
  Moments all;
  for (const FollowUp& one : times) {
    Moment& moment = all[one.time];
    moment.ended += one.ended ? 1 : 0;
    ++moment.leaving;
  }
  return all;
}

std::optional<Problem> bad_times(const char* field, const Times& times) {
  if (auto problem = too_few(field, times.size(), 1)) {
    return problem;
  }
  for (std::size_t i = 0; i < times.size(); ++i) {
    if (!std::isfinite(times[i].time) || times[i].time < 0) {
      return Problem{"time_out_of_range", "time", units::write_number(times[i].time),
                     "finite, 0 or more", std::string(field) + " " + std::to_string(i + 1)};
    }
  }
  return std::nullopt;
}

/// exp(-exp(log(-log S) -+ z se)), with se = sqrt(greenwood) / |log S|.
std::optional<Interval> log_log(double survival, double greenwood, double z) {
  if (survival <= 0) {
    return std::nullopt;
  }
  const double log_survival = std::log(survival);
  const double wide = z * std::sqrt(greenwood) / -log_survival;
  return Interval{std::exp(log_survival * std::exp(wide)),
                  std::exp(log_survival * std::exp(-wide))};
}

} // namespace

KaplanMeier kaplan_meier(const Times& times, const ConfidenceOptions& options) {
  KaplanMeier result;
  result.times = static_cast<int>(times.size());
  auto problem = options.problem();
  problem = problem ? problem : bad_times("times", times);
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  const double z = normal_quantile(0.5 + options.confidence / 2);
  int at_risk = result.times;
  double survival = 1;
  double greenwood = 0;
  for (const auto& [time, moment] : moments(times)) {
    if (moment.ended > 0) {
      const int left = at_risk - moment.ended;
      survival *= static_cast<double>(left) / at_risk;
      // With nobody left survival is 0 and so is its error in this formula.
      greenwood += left > 0 ? moment.ended / (static_cast<double>(at_risk) * left) : 0;
      result.steps.push_back({time, at_risk, moment.ended, survival,
                              survival * std::sqrt(greenwood), log_log(survival, greenwood, z)});
      result.ended += moment.ended;
      if (!result.median && survival <= 0.5 + 1e-12) { // 1/2 may come out a rounding above
        result.median = time;
      }
    }
    at_risk -= moment.leaving;
  }
  result.summary =
      result.ended > 0
          ? done()
          : degenerate({"all_censored", "times", std::to_string(times.size()) + " open",
                        "such that at least one has ended", ""});
  return result;
}

LogRank log_rank(const Times& first, const Times& second) {
  LogRank result;
  auto problem = bad_times("first group", first);
  problem = problem ? problem : bad_times("second group", second);
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  const Moments of_first = moments(first);
  Times both = first;
  both.insert(both.end(), second.begin(), second.end());
  double at_risk_first = static_cast<double>(first.size());
  double at_risk = static_cast<double>(both.size());
  for (const auto& [time, moment] : moments(both)) {
    const auto here = of_first.find(time);
    const Moment ours = here == of_first.end() ? Moment{} : here->second;
    const double share = at_risk_first / at_risk;
    result.observed_first += ours.ended;
    result.expected_first += moment.ended * share;
    if (at_risk > 1) {
      result.variance +=
          moment.ended * share * (1 - share) * (at_risk - moment.ended) / (at_risk - 1);
    }
    at_risk_first -= ours.leaving;
    at_risk -= moment.leaving;
  }
  if (!(result.variance > 0)) {
    result.summary = degenerate(
        {"all_censored", "ends", "none", "at least one while both groups were looked at", ""});
    return result;
  }
  const double apart = result.observed_first - result.expected_first;
  result.chi_squared = apart * apart / result.variance;
  result.p = chi_squared_upper(result.chi_squared, 1);
  result.summary = done_if_finite({result.chi_squared, result.p});
  return result;
}

} // namespace baize::stats
