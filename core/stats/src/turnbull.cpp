#include "baize/stats/turnbull.h"

#include "checks.h"
#include "turnbull_masses.h"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

namespace baize::stats {
namespace {

using units::Problem;
using Times = std::vector<CensoredTime>;

/// At one moment an exact time opens first, then intervals close, then intervals
/// open, since (left, right] holds its right end and not its left one.
enum class Edge { opens_exact, closes, opens };
using Point = std::pair<double, Edge>;

Point opening(const CensoredTime& time) {
  return {time.left, time.exact() ? Edge::opens_exact : Edge::opens};
}

/// The innermost intervals: an opening followed at once by a closing.
std::vector<std::pair<Point, Point>> innermost(const Times& times) {
  std::vector<Point> points;
  for (const CensoredTime& time : times) {
    points.push_back(opening(time));
    points.emplace_back(time.right, Edge::closes);
  }
  std::sort(points.begin(), points.end());
  std::vector<std::pair<Point, Point>> sets;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    if (points[i].second != Edge::closes && points[i + 1].second == Edge::closes) {
      sets.emplace_back(points[i], points[i + 1]);
    }
  }
  return sets;
}

std::vector<detail::Covering> covering(const Times& times,
                                       const std::vector<std::pair<Point, Point>>& sets) {
  std::map<std::pair<int, int>, int> counts;
  for (const CensoredTime& time : times) {
    const Point closes{time.right, Edge::closes};
    const auto first =
        std::lower_bound(sets.begin(), sets.end(), opening(time),
                         [](const auto& set, const Point& opens) { return set.first < opens; });
    const auto end =
        std::upper_bound(sets.begin(), sets.end(), closes,
                         [](const Point& point, const auto& set) { return point < set.second; });
    ++counts[{static_cast<int>(first - sets.begin()), static_cast<int>(end - sets.begin()) - 1}];
  }
  std::vector<detail::Covering> rows;
  rows.reserve(counts.size());
  for (const auto& [range, count] : counts) {
    rows.push_back({range.first, range.second, count});
  }
  return rows;
}

} // namespace

std::optional<Problem> TurnbullOptions::problem() const {
  if (max_iterations < 1 || max_iterations > 1000000) {
    return Problem{"option_out_of_range", "max_iterations", std::to_string(max_iterations),
                   "from 1 to 1000000", "the options"};
  }
  return outside_open("tolerance", tolerance, 0, 1, "above 0 and below 1");
}

Turnbull turnbull(const Times& times, const TurnbullOptions& options) {
  Turnbull result;
  result.times = static_cast<int>(times.size());
  auto problem = options.problem();
  problem = problem ? problem : too_few("times", times.size(), 1);
  problem = problem ? problem : bad_time(times);
  if (problem) {
    result.summary = refused(*problem);
    return result;
  }
  if (std::all_of(times.begin(), times.end(), [](const auto& t) { return t.right_censored(); })) {
    result.summary = degenerate({"all_censored", "times", std::to_string(times.size()) + " open",
                                 "such that at least one has ended", ""});
    return result;
  }
  const auto sets = innermost(times);
  const detail::Masses found =
      detail::maximise_masses(covering(times, sets), static_cast<int>(sets.size()),
                              options.max_iterations, options.tolerance);
  for (std::size_t j = 0; j < sets.size(); ++j) {
    if (found.mass[j] > 0) {
      result.support.push_back({sets[j].first.first, sets[j].second.first, found.mass[j]});
    }
  }
  result.log_likelihood = found.log_likelihood;
  result.optimality_gap = found.gap;
  result.summary = converged(found.iterations);
  if (!found.converged || !std::isfinite(found.log_likelihood) || !std::isfinite(found.gap)) {
    result.summary = {Termination::not_converged,
                      "The masses did not reach the optimum within the limit of iterations.",
                      {},
                      found.iterations,
                      false};
  }
  return result;
}

std::optional<TimeRange> turnbull_quantile(const Turnbull& estimate, double share) {
  if (!estimate.summary.usable || !(share > 0 && share < 1)) {
    return std::nullopt;
  }
  double reached = 0;
  for (const SupportMass& set : estimate.support) {
    reached += set.mass;
    if (reached >= share - 1e-9) { // so that masses of 1/4 and 1/4 reach 1/2
      return TimeRange{set.left, set.right};
    }
  }
  return TimeRange{estimate.support.back().left, estimate.support.back().right};
}

std::optional<SurvivalRange> turnbull_survival(const Turnbull& estimate, double time) {
  if (!estimate.summary.usable || !(time >= 0)) {
    return std::nullopt;
  }
  SurvivalRange range{1, 1};
  for (const SupportMass& set : estimate.support) {
    const bool ended = set.right <= time;
    range.high -= ended ? set.mass : 0;
    range.low -= ended || set.left < time ? set.mass : 0;
  }
  return SurvivalRange{std::max(0.0, range.low), std::max(0.0, range.high)};
}

} // namespace baize::stats
