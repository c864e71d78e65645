// Projections by pencil: where nothing is uncertain the draws all say the same.
#include "baize/season/project.h"
#include "season_hand.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baize {
namespace {

/// A level of 8.5 that does not walk and a loss of 2 that halves every 7 days.
season::SeasonFit certain() {
  season::SeasonFit fit;
  fit.model = testing::hand_model(std::vector<double>(50, 8.5), 0.5);
  testing::add_loss(fit.model, 10);
  fit.summary = stats::done();
  season::Draw draw;
  draw.parameters.level_walk = 1e-9;
  draw.parameters.rate = {std::log(2.0) / 7};
  draw.parameters.typical_depth = {2};
  draw.own = {Eigen::Vector3d(2, 0, 8.5)};
  draw.log_rate = {Eigen::VectorXd::Zero(1)};
  draw.shared = Eigen::Vector2d(0, 2);
  fit.draws.assign(60, draw);
  return fit;
}

green::Records standards() {
  green::Records records = testing::hand_records({});
  return records; // 8, as where a club set none
}

TEST(SeasonProject, ByPencil) {
  const auto fit = certain();
  const auto year =
      season::project(fit, standards(), "7", "", {testing::kHandFirst, testing::kHandFirst + 60});
  ASSERT_TRUE(year.summary.usable) << year.summary.message;
  ASSERT_EQ(year.days.size(), 50U + 60U); // to the record's end, and the forecast
  EXPECT_NEAR(year.days[9].score, 8.5, 1e-3);
  EXPECT_NEAR(year.days[10].score, 6.5, 1e-6);
  EXPECT_NEAR(year.days[17].score, 7.5, 1e-6);
  EXPECT_NEAR(year.days[17].undisturbed, 8.5, 1e-3);
  EXPECT_NEAR(year.days[17].losses.at(0), 1, 1e-9);
  EXPECT_FALSE(year.days[49].to_come);
  EXPECT_TRUE(year.days[50].to_come);
  // At the standard once the loss is at most 0.5: after two half-lives.
  EXPECT_EQ(year.days[23].chance, 0);
  EXPECT_EQ(year.days[25].chance, 1);
  ASSERT_EQ(year.works.size(), 1U);
  const season::WorkEstimate& work = year.works[0];
  EXPECT_NEAR(work.depth.value, 2, 1e-12);
  EXPECT_NEAR(work.half_life.value, 7, 1e-12);
  ASSERT_TRUE(work.at_standard.median.has_value());
  EXPECT_NEAR(*work.at_standard.median, 14, 1);
  // 2 exp(-r t) <= 0.3 after 7 log2(2/0.3) = 19.16 days.
  EXPECT_EQ(work.within_tolerance.median, 20);
  EXPECT_NEAR(work.growth_days_back.value, 7 * std::log2(2 / 0.3), 1e-9);
  // Sum of a geometric series.
  EXPECT_NEAR(work.score_days.value, 2 / (1 - std::pow(0.5, 1.0 / 7)), 2e-3);
  EXPECT_NEAR(year.true_days.value, 50 - 14, 1);
  EXPECT_FALSE(year.forecast.has_value());
}

// 79 draws: places 0.025 x 80 = 2 and 0.975 x 80 = 78 in order, one in forty of the next
// draws lies beyond each.
TEST(SeasonProject, AnIntervalLeavesOneDrawInFortyOutOnEachSide) {
  std::vector<double> draws;
  for (int i = 79; i > 0; --i) {
    draws.push_back(i);
  }
  const season::Estimate of = season::estimate_of(draws);
  EXPECT_DOUBLE_EQ(of.value, 40);
  EXPECT_NEAR(of.low, 2, 1e-12);
  EXPECT_NEAR(of.high, 78, 1e-12);
  const season::Estimate few = season::estimate_of({3, 1, 2}); // no place so far out
  EXPECT_EQ(few.low, 1);
  EXPECT_EQ(few.high, 3);
  EXPECT_EQ(season::estimate_of({5}).high, 5);
}

TEST(SeasonProject, TellsWhenItWillBeBack) {
  season::SeasonFit fit = certain();
  fit.model.record_end = testing::kHandFirst + 12;
  const auto year =
      season::project(fit, standards(), "7", "", {testing::kHandFirst, testing::kHandFirst + 60});
  ASSERT_TRUE(year.forecast.has_value());
  ASSERT_TRUE(year.forecast->median.has_value());
  EXPECT_NEAR(*year.forecast->median, 12, 1); // day 24 from day 12
  EXPECT_EQ(year.forecast->share, 1);
}

TEST(SeasonProject, RefusesAnUnknownGreen) {
  const auto year =
      season::project(certain(), standards(), "99", "", {testing::kHandFirst, testing::kHandFirst});
  EXPECT_FALSE(year.summary.usable);
  EXPECT_EQ(year.summary.problem.code, "no_such_green");
}

} // namespace
} // namespace baize
