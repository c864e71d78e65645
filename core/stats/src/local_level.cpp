#include "baize/stats/local_level.h"

#include "baize/units/number.h"
#include "level_filter.h"
#include "local_level_smoother.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>
#include <tuple>
#include <utility>

namespace baize::stats {
namespace {

using units::Problem;
using Readings = std::vector<LevelReading>;

std::optional<Problem> bad_reading(const Readings& readings) {
  for (std::size_t i = 0; i < readings.size(); ++i) {
    const LevelReading& r = readings[i];
    const auto place = [i] { return "reading " + std::to_string(i + 1); };
    if (!std::isfinite(r.day) || (r.value && !std::isfinite(*r.value))) {
      const double found = std::isfinite(r.day) ? *r.value : r.day;
      return Problem{"not_finite", std::isfinite(r.day) ? "value" : "day",
                     units::write_number(found), "a finite number", place()};
    }
    if (!std::isfinite(r.weight) || r.weight <= 0) {
      return Problem{"weight_out_of_range", "weight", units::write_number(r.weight),
                     "a finite number above 0", place()};
    }
  }
  return std::nullopt;
}

/// By day, and within a day by value, so that the order of the rows cannot show
/// even in the last digit.
Readings sorted(Readings readings) {
  const auto before = [](const LevelReading& a, const LevelReading& b) {
    return std::tie(a.day, a.value, a.weight) < std::tie(b.day, b.value, b.weight);
  };
  if (!std::is_sorted(readings.begin(), readings.end(), before)) {
    std::sort(readings.begin(), readings.end(), before);
  }
  return readings;
}

int count_values(const Readings& readings) {
  return static_cast<int>(std::count_if(readings.begin(), readings.end(),
                                        [](const auto& r) { return r.value.has_value(); }));
}

struct Concentrated {
  double log_likelihood = -std::numeric_limits<double>::infinity();
  double scale = 0;
};

/// The model as scale times (1 - share) for noise and share for the level's walk
/// in `span` days. Share 0 and 1 are the two ends.
Concentrated concentrated(const Readings& readings, double span, double share) {
  std::optional<detail::LevelFilter> filter;
  double day = 0;
  for (const LevelReading& r : readings) {
    if (!r.value) {
      continue;
    }
    const double noise = (1 - share) / r.weight;
    if (!filter) {
      filter.emplace(*r.value, noise);
    } else {
      filter->walk(share * (r.day - day) / span);
      if (!filter->take(*r.value, noise)) {
        return {}; // two values of one day, and no noise to part them
      }
    }
    day = r.day;
  }
  const int n = filter->news();
  const double scale = filter->squares() / n;
  return {-0.5 * (n * std::log(2 * std::numbers::pi * scale) + filter->spread().log() + n), scale};
}

double share_of(double logit) {
  return 1 / (1 + std::exp(-logit));
}

struct Best {
  double share = 0;
  Concentrated at;
  int iterations = 0;
  bool edge = false;
  bool converged = true;
};

/// Values of the target alone place a smooth top only to half their digits; the
/// zero of its slope, by fourth-order differences, to nearly all.
double polished(const Readings& readings, double span, double logit) {
  constexpr double kStep = 0.01;
  for (int round = 0; round < 2; ++round) {
    const auto at = [&](int steps) {
      return concentrated(readings, span, share_of(logit + steps * kStep)).log_likelihood;
    };
    const double slope = (8 * (at(1) - at(-1)) - (at(2) - at(-2))) / (12 * kStep);
    const double bend = (at(1) - 2 * at(0) + at(-1)) / (kStep * kStep);
    const double move = slope / bend;
    if (!(bend < 0) || !(std::fabs(move) < kStep)) {
      return logit; // no top to speak of: an end of the range
    }
    logit -= move;
  }
  return logit;
}

Best search(const Readings& readings, double span, int max_iterations) {
  constexpr int kFar = 60; // strides: a ratio of 1e13 is no longer a ratio
  constexpr double kStride = 0.5;
  double at = -kFar * kStride;
  double highest = -std::numeric_limits<double>::infinity();
  for (int stride = -kFar; stride <= kFar; ++stride) {
    const double logit = stride * kStride;
    const double here = concentrated(readings, span, share_of(logit)).log_likelihood;
    if (here > highest) {
      highest = here;
      at = logit;
    }
  }
  auto iterations = static_cast<boost::uintmax_t>(max_iterations);
  const auto found = boost::math::tools::brent_find_minima(
      [&](double logit) { return -concentrated(readings, span, share_of(logit)).log_likelihood; },
      at - kStride, at + kStride, std::numeric_limits<double>::digits / 2, iterations);
  Best best{share_of(polished(readings, span, found.first)),
            {},
            static_cast<int>(iterations),
            false,
            iterations < static_cast<boost::uintmax_t>(max_iterations)};
  best.at = concentrated(readings, span, best.share);
  for (const double end : {0.0, 1.0}) {
    const Concentrated there = concentrated(readings, span, end);
    if (there.log_likelihood >= best.at.log_likelihood - 1e-9) {
      best.share = end;
      best.at = there;
      best.edge = true;
      best.converged = true;
    }
  }
  return best;
}

LocalLevelFit smoothed(const Readings& readings, const LocalLevelVariances& variances) {
  LocalLevelFit fit = detail::smooth_sorted(readings, variances);
  fit.variances = variances;
  fit.values = count_values(readings);
  return fit;
}

LocalLevelFit no_fit(Summary summary, const Readings& readings) {
  LocalLevelFit fit;
  fit.summary = std::move(summary);
  fit.values = count_values(readings);
  return fit;
}

/// Mean distance of the values in days: the unit in which the search is blind to
/// the unit of time. 0 where all are of one day.
double mean_gap(const Readings& readings) {
  double first = 0;
  double last = 0;
  int measured = 0;
  for (const LevelReading& r : readings) {
    if (r.value) {
      first = measured == 0 ? r.day : first;
      last = r.day;
      ++measured;
    }
  }
  return (last - first) / (measured - 1);
}

bool all_equal(const Readings& readings) {
  std::optional<double> first;
  return std::all_of(readings.begin(), readings.end(), [&](const LevelReading& r) {
    first = first ? first : r.value;
    return !r.value || *r.value == *first;
  });
}

} // namespace

std::optional<Problem> LocalLevelOptions::problem() const {
  if (max_iterations < 1 || max_iterations > 10000) {
    return Problem{"option_out_of_range", "max_iterations", std::to_string(max_iterations),
                   "from 1 to 10000", "the options"};
  }
  return std::nullopt;
}

LocalLevelFit smooth_local_level(const Readings& readings, const LocalLevelVariances& variances) {
  if (auto problem = bad_reading(readings)) {
    return no_fit(refused(*problem), readings);
  }
  for (const double v : {variances.noise, variances.level_per_day}) {
    if (!std::isfinite(v) || v < 0) {
      return no_fit(refused({"negative_variance", "variances", units::write_number(v),
                             "finite, 0 or more", "the local level"}),
                    readings);
    }
  }
  if (count_values(readings) < 1) {
    return no_fit(refused({"too_few_values", "values", "0", "at least 1", "the local level"}),
                  readings);
  }
  return smoothed(sorted(readings), variances);
}

LocalLevelFit fit_local_level(const Readings& readings, const LocalLevelOptions& options) {
  auto problem = options.problem();
  problem = problem ? problem : bad_reading(readings);
  const int values = count_values(readings);
  if (!problem && values < 3) {
    problem = Problem{"too_few_values", "values", std::to_string(values),
                      "at least 3 to tell noise from a walk of the level", "the local level"};
  }
  if (problem) {
    return no_fit(refused(*problem), readings);
  }
  const Readings ordered = sorted(readings);
  const double gap = mean_gap(ordered);
  if (all_equal(ordered) || !(gap > 0)) {
    return no_fit(degenerate({"all_equal", "values", std::to_string(values) + " alike",
                              "of more than one size and more than one day", "the local level"}),
                  ordered);
  }
  const Best best = search(ordered, gap, options.max_iterations);
  LocalLevelFit fit =
      smoothed(ordered, {best.at.scale * (1 - best.share), best.at.scale * best.share / gap});
  if (!fit.summary.usable) {
    return fit;
  }
  fit.summary = converged(best.iterations);
  if (best.edge) {
    fit.summary.termination = Termination::boundary;
    fit.summary.message = best.share > 0 ? "Converged: no noise beside the walk of the level."
                                         : "Converged: the level is constant beside the noise.";
  } else if (!best.converged) {
    fit.summary.termination = Termination::not_converged;
    fit.summary.message = "The search for the variances stopped at its limit of iterations.";
    fit.summary.usable = false;
  }
  return fit;
}

} // namespace baize::stats
