#include "baize/services/consistency_review.h"

#include "baize/stats/descriptive.h"
#include "consistency_words.h"

#include <algorithm>

namespace baize::services {
namespace {

using consistency::Nested;
using consistency::NestedValue;
using consistency::VisitFigures;

/// Single balls, or where the club writes totals only the means of runs.
Nested score_parts(const std::vector<VisitFigures>& visits) {
  std::vector<NestedValue> balls;
  std::vector<NestedValue> runs;
  for (const VisitFigures& visit : visits) {
    for (const consistency::SpotFigures& spot : visit.spots) {
      for (const consistency::RunFigures& run : spot.runs) {
        const std::string green = std::to_string(visit.green);
        for (const double ball : run.balls) {
          balls.push_back(
              {{green, visit.visit, spot.spot, std::string(word(run.direction))}, ball});
        }
        if (run.score) {
          runs.push_back({{green, visit.visit, spot.spot}, *run.score});
        }
      }
    }
  }
  Nested found =
      consistency::nested_components(balls, {"green", "visit", "spot", "direction", "ball"});
  return found.summary.usable
             ? found
             : consistency::nested_components(runs, {"green", "visit", "spot", "direction"});
}

Nested speed_parts(const std::vector<VisitFigures>& visits) {
  std::vector<NestedValue> spots;
  for (const VisitFigures& visit : visits) {
    for (const consistency::SpotFigures& spot : visit.spots) {
      if (spot.speed) {
        spots.push_back({{std::to_string(visit.green), visit.visit}, spot.speed->speed_m});
      }
    }
  }
  return consistency::nested_components(spots, {"green", "visit", "spot"});
}

std::vector<GreenConsistency> greens_of(const green::Records& records,
                                        const std::vector<VisitFigures>& visits,
                                        units::Day last_day) {
  std::vector<GreenConsistency> greens;
  for (const green::Green& green : records.greens) {
    GreenConsistency one;
    one.green = green.id;
    one.name = green.name;
    one.standard = green::standard_on(records.standards, green.id, last_day);
    greens.push_back(one);
  }
  for (const auto& standing : standings(visits, consistency::Quantity::score)) {
    greens[standing.green].score = standing;
  }
  std::vector<double> speeds;
  for (const auto& standing : standings(visits, consistency::Quantity::speed)) {
    greens[standing.green].speed = standing;
    speeds.push_back(standing.mean);
  }
  const double middle = stats::quantile(speeds, 0.5).value;
  for (GreenConsistency& one : greens) {
    one.fast_but_not_true =
        one.score && one.speed && one.speed->mean >= middle && one.score->mean < one.standard;
  }
  return greens;
}

} // namespace

ConsistencyReview consistency_review(const green::Records& records,
                                     const std::optional<units::Period>& days, units::Day today) {
  constexpr int kYear = 365;
  ConsistencyReview review;
  review.club = records.club.id;
  review.days = days.value_or(units::Period{today - (kYear - 1), today});
  review.days.last = std::min(review.days.last, today);
  const std::vector<VisitFigures> visits = consistency::visit_figures(records, review.days);
  review.visits = static_cast<int>(visits.size());
  review.score_parts = score_parts(visits);
  review.speed_parts = speed_parts(visits);
  review.greens = greens_of(records, visits, review.days.last);
  for (const consistency::SpotDirections& spot : consistency::directions(visits)) {
    const green::Green& green = records.greens[spot.green];
    review.spots.push_back({green.id, green.name, spot, consistency::finding(spot)});
  }
  std::vector<consistency::RankPair> pairs;
  for (const VisitFigures& visit : visits) {
    if (visit.score && visit.speed_m) {
      pairs.push_back({visit.green, *visit.speed_m, *visit.score});
      review.points.push_back({records.greens[visit.green].id, *visit.speed_m, *visit.score});
    }
  }
  review.speed_and_score = consistency::rank_correlation(pairs);
  review.hours = consistency::hour_effect(records, visits);
  review.sentence = consistency_sentence(review);
  return review;
}

} // namespace baize::services
