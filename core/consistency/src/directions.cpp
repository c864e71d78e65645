#include "baize/consistency/directions.h"

#include "baize/speed/rolling.h"
#include "baize/stats/distributions.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace baize::consistency {
namespace {

constexpr int kLeastVisits = 3;

/// Apparent slope of one visit and its error, in percent.
struct Rise {
  double value = 0;
  double se = 0;
};

struct Found {
  std::vector<double> scores; ///< out - back
  std::vector<Rise> rises;
};

const RunFigures* one_way(const SpotFigures& spot, green::Direction direction) {
  const auto found = std::find_if(spot.runs.begin(), spot.runs.end(), [&](const RunFigures& run) {
    return run.direction == direction;
  });
  return found == spot.runs.end() ? nullptr : &*found;
}

Rise rise(const RunFigures& out, const RunFigures& back) {
  constexpr double kPercent = 100;
  constexpr double kFactor =
      kPercent * 7 / 5 * speed::kReleaseSpeed * speed::kReleaseSpeed / (4 * speed::kGravity);
  const double sd = speed::Options{}.roll_sd_m;
  const auto error = [&](const RunFigures& run) {
    return sd * sd / (run.measured * std::pow(*run.mean_m, 4));
  };
  return {kFactor * (1 / *out.mean_m - 1 / *back.mean_m),
          kFactor * std::sqrt(error(out) + error(back))};
}

using Spots = std::map<std::pair<std::size_t, std::string>, Found>;

Spots gathered(const std::vector<VisitFigures>& visits) {
  Spots spots;
  for (const VisitFigures& visit : visits) {
    for (const SpotFigures& spot : visit.spots) {
      const RunFigures* out = one_way(spot, green::Direction::out);
      const RunFigures* back = one_way(spot, green::Direction::back);
      if (out == nullptr || back == nullptr) {
        continue;
      }
      Found& found = spots[{visit.green, spot.spot}];
      if (out->score && back->score) {
        found.scores.push_back(*out->score - *back->score);
      }
      if (out->mean_m && back->mean_m && *out->mean_m > 0 && *back->mean_m > 0) {
        found.rises.push_back(rise(*out, *back));
      }
    }
  }
  return spots;
}

observers::Estimate mean_of(const std::vector<double>& values, double confidence) {
  std::vector<observers::Sums> visits(values.size());
  for (std::size_t i = 0; i < values.size(); ++i) {
    visits[i].add(values[i]);
  }
  return observers::mean_by_session(visits, confidence).value_or(observers::Estimate{});
}

/// Cochran's Q and the spread beyond error (DerSimonian and Laird).
void steadiness(SpotDirections& spot, const std::vector<Rise>& rises) {
  if (spot.speeds < kLeastVisits) {
    return;
  }
  double weights = 0;
  double squared = 0;
  double sum = 0;
  for (const Rise& one : rises) {
    const double weight = 1 / (one.se * one.se);
    weights += weight;
    squared += weight * weight;
    sum += weight * one.value;
  }
  double q = 0;
  for (const Rise& one : rises) {
    const double gap = one.value - sum / weights;
    q += gap * gap / (one.se * one.se);
  }
  const double df = spot.speeds - 1;
  spot.p_changing = stats::chi_squared_upper(q, df);
  spot.rise_sd = std::sqrt(std::max(0.0, (q - df) / (weights - squared / weights)));
}

void holm(std::vector<SpotDirections>& spots) {
  std::vector<SpotDirections*> tested;
  for (SpotDirections& spot : spots) {
    if (spot.p) {
      tested.push_back(&spot);
    }
  }
  std::stable_sort(tested.begin(), tested.end(),
                   [](const SpotDirections* a, const SpotDirections* b) { return *a->p < *b->p; });
  double least = 0;
  for (std::size_t i = 0; i < tested.size(); ++i) {
    least = std::max(least, std::min(1.0, static_cast<double>(tested.size() - i) * *tested[i]->p));
    tested[i]->p_all = least;
  }
}

} // namespace

DirectionFinding finding(const SpotDirections& spot, double alpha) {
  if (!spot.p_all && !spot.p_changing) {
    return DirectionFinding::too_few;
  }
  if (spot.p_changing && *spot.p_changing < alpha) {
    return DirectionFinding::changing;
  }
  if (spot.p_all && *spot.p_all < alpha) {
    return DirectionFinding::score_apart;
  }
  return spot.rise.apart_from_zero() ? DirectionFinding::slope : DirectionFinding::alike;
}

std::vector<SpotDirections> directions(const std::vector<VisitFigures>& visits, double confidence) {
  std::vector<SpotDirections> all;
  for (const auto& [place, found] : gathered(visits)) {
    SpotDirections spot;
    spot.green = place.first;
    spot.spot = place.second;
    spot.visits = static_cast<int>(found.scores.size());
    spot.score = mean_of(found.scores, confidence);
    if (spot.score.se && *spot.score.se > 0) {
      spot.p = 2 * stats::t_upper(std::fabs(spot.score.value) / *spot.score.se, spot.visits - 1);
    }
    spot.speeds = static_cast<int>(found.rises.size());
    std::vector<double> rises;
    rises.reserve(found.rises.size());
    for (const Rise& one : found.rises) {
      rises.push_back(one.value);
    }
    spot.rise = mean_of(rises, confidence);
    steadiness(spot, found.rises);
    all.push_back(spot);
  }
  holm(all);
  return all;
}

} // namespace baize::consistency
