// The demo club's records against the truth they were made from. A 95 % interval
// should hold its truth 95 times in 100; the least shares below leave room for the
// draws of one club and for what the demo does and the model does not know: a
// beginner who learns, and rolls of 10 that are given only when certain.
#include "baize/demo/demo_club.h"
#include "baize/services/season_model.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace baize {
namespace {

struct Fitted {
  demo::DemoClub club = demo::make();
  season::SeasonFit fit = services::season_fit(club.records, club.weather, club.today);
};

const Fitted& fitted() {
  static const Fitted made;
  return made;
}

struct Tally {
  int inside = 0;
  int all = 0;
  double off = 0; ///< sum of estimate less truth
  void add(const season::Estimate& estimate, double truth) {
    inside += estimate.low <= truth && truth <= estimate.high ? 1 : 0;
    off += estimate.value - truth;
    ++all;
  }
  double share() const { return static_cast<double>(inside) / all; }
};

/// The demo's loss falls by rate x growth each day; the model's exp(-rate growth)
/// falls as fast with this rate, over the first half of the loss.
double model_rate(const demo::Truth& truth, const demo::WorkTruth& work) {
  const auto first = static_cast<std::size_t>(work.day - truth.days.first);
  double growth = 0;
  std::size_t i = 0;
  while (i + 1 < work.loss.size() && work.loss[i] > work.depth / 4) {
    growth += truth.growth[first + ++i];
  }
  return growth > 0 ? std::log(work.loss.front() / work.loss[i]) / growth : work.rate;
}

TEST(SeasonTruth, DepthsLieInsideTheirIntervals) {
  const auto& [club, fit] = fitted();
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  Tally tally;
  for (std::size_t g = 0; g < fit.model.greens.size(); ++g) {
    const season::GreenModel& green = fit.model.greens[g];
    for (std::size_t k = 0; k < green.losses.size(); ++k) {
      const auto truth = std::find_if(
          club.truth.works.begin(), club.truth.works.end(), [&](const demo::WorkTruth& one) {
            return one.work == green.losses[k].works.front() && one.green == green.green;
          });
      ASSERT_NE(truth, club.truth.works.end());
      std::vector<double> draws;
      for (const season::Draw& draw : fit.draws) {
        draws.push_back(draw.own[g](static_cast<Eigen::Index>(k)));
      }
      tally.add(season::estimate_of(draws), truth->depth);
    }
  }
  RecordProperty("share", std::to_string(tally.share()));
  EXPECT_GT(tally.all, 150);
  EXPECT_GE(tally.share(), 0.91) << tally.inside << " of " << tally.all;
  EXPECT_NEAR(tally.off / tally.all, 0, 0.1);
}

TEST(SeasonTruth, RatesLieInsideTheirIntervals) {
  const auto& [club, fit] = fitted();
  int inside = 0;
  for (const season::MethodEstimate& method : fit.methods) {
    double sum = 0;
    int works = 0;
    for (const demo::WorkTruth& work : club.truth.works) {
      const auto at = fit.options.methods.find(work.work);
      if (at != fit.options.methods.end() && at->second == method.method) {
        sum += model_rate(club.truth, work);
        ++works;
      }
    }
    ASSERT_GT(works, 0) << method.method;
    const bool in = method.rate.low <= sum / works && sum / works <= method.rate.high;
    inside += in ? 1 : 0;
    if (!in) {
      RecordProperty(method.method, std::to_string(sum / works) + " outside " +
                                        std::to_string(method.rate.low) + " to " +
                                        std::to_string(method.rate.high));
    }
  }
  const int all = static_cast<int>(fit.methods.size());
  EXPECT_GE(inside, all - 2) << inside << " of " << all; // 2 of 11 outside: once in fifty clubs
}

TEST(SeasonTruth, ObserversAndPlay) {
  const auto& [club, fit] = fitted();
  for (const season::ObserverEstimate& one : fit.observers) {
    const auto truth = std::find_if(
        club.truth.observers.begin(), club.truth.observers.end(),
        [&](const demo::ObserverTruth& other) { return other.observer == one.observer; });
    ASSERT_NE(truth, club.truth.observers.end());
    // The mean of the four is 0 but for the beginner, whose first half year lowers it.
    EXPECT_NEAR(one.above.value, truth->bias, 0.1) << one.observer;
    EXPECT_LT(one.above.standard_error, 0.03);
  }
  // A weekday's play is three quarters of a full day's 0.6 points.
  EXPECT_NEAR(fit.play.value, -0.75 * 0.6, 0.1);
  EXPECT_NEAR(fit.model.roll_sd, std::sqrt(0.6 * 0.6 + 0.25 * 0.25 + 1.0 / 12), 0.05);
}

TEST(SeasonTruth, LevelsLieInsideTheirIntervals) {
  const auto& [club, fit] = fitted();
  int inside = 0;
  int all = 0;
  double off = 0;
  for (const char* green : {"1", "7", "12", "18"}) {
    const auto year = season::project(fit, club.records, green, "", units::calendar_year(2024));
    ASSERT_TRUE(year.summary.usable) << year.summary.message;
    const auto truth =
        std::find_if(club.truth.greens.begin(), club.truth.greens.end(),
                     [&](const demo::GreenTruth& one) { return one.green == green; });
    double offset = 0;
    for (const demo::SpotTruth& spot : truth->spots) {
      offset += spot.level_offset / static_cast<double>(truth->spots.size());
    }
    double true_days = 0;
    for (const season::DayEstimate& day : year.days) {
      const double level = club.truth.level(green, "", day.day) + offset;
      inside += day.score_low <= level && level <= day.score_high ? 1 : 0;
      off += day.score - level;
      true_days += !day.closed && level >= day.standard ? 1 : 0;
      ++all;
    }
    EXPECT_NEAR(year.true_days.value, true_days, 25) << green;
  }
  RecordProperty("share", std::to_string(static_cast<double>(inside) / all));
  EXPECT_GE(static_cast<double>(inside) / all, 0.88) << inside << " of " << all;
  EXPECT_NEAR(off / all, 0, 0.1);
}

} // namespace
} // namespace baize
