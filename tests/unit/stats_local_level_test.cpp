#include "baize/stats/local_level.h"
#include "baize/stats/state_space.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace {

using namespace baize::stats;
using Readings = std::vector<LevelReading>;

/// Scores of an invented green: days apart unevenly, one day twice, one not measured.
Readings season() {
  return {{0, 8.0, 1},  {3, 8.3, 1},  {4, 7.6, 1},  {9, 6.1, 1},  {9, 6.4, 2}, {15, {}, 1},
          {20, 6.9, 1}, {22, 7.4, 1}, {31, 7.7, 3}, {40, 8.4, 1}, {41, 8.1, 1}};
}

// Pencil: noise 1, walk 1 a day, values 0 and 3 at days 0 and 1 from a diffuse
// start: the difference 3 has variance 3, so the levels are 1 and 2, each with
// variance 1 - 1/3.
TEST(LocalLevel, TwoValuesByPencil) {
  const auto fit = smooth_local_level({{0, 0.0, 1}, {1, 3.0, 1}}, {1, 1});
  ASSERT_TRUE(fit.summary.usable);
  EXPECT_NEAR(fit.levels[0].level, 1, 1e-14);
  EXPECT_NEAR(fit.levels[1].level, 2, 1e-14);
  EXPECT_NEAR(fit.levels[0].standard_error, std::sqrt(2.0 / 3), 1e-14);
}

// Pencil: a weight of 3 counts as three values of the same mean.
TEST(LocalLevel, WeightsCountAsSoManyValues) {
  const auto weighed = smooth_local_level({{0, 1.0, 3}, {2, 5.0, 1}}, {0.9, 0.2});
  const auto rolls =
      smooth_local_level({{0, 0.5, 1}, {0, 1, 1}, {0, 1.5, 1}, {2, 5, 1}}, {0.9, 0.2});
  EXPECT_NEAR(weighed.levels[0].level, rolls.levels[0].level, 1e-12);
  EXPECT_NEAR(weighed.levels[1].standard_error, rolls.levels[1].standard_error, 1e-12);
}

// Pencil: between two days without a value the level is interpolated, and the
// error is greatest in the middle.
TEST(LocalLevel, AGapIsBridgedNotMeasured) {
  const auto fit = smooth_local_level({{0, 0.0, 1}, {5, {}, 1}, {10, 10.0, 1}}, {0, 1});
  EXPECT_NEAR(fit.levels[1].level, 5, 1e-12);
  EXPECT_NEAR(fit.levels[1].standard_error, std::sqrt(2.5), 1e-12);
  EXPECT_EQ(fit.values, 2);
}

// Pencil: before the first value nothing is known but what walks back from it.
TEST(LocalLevel, BeforeTheFirstValueTheErrorGrowsBackwards) {
  const auto fit = smooth_local_level({{-3, {}, 1}, {0, 6.0, 1}}, {0.5, 0.25});
  ASSERT_TRUE(fit.summary.usable);
  EXPECT_NEAR(fit.levels[0].level, 6, 1e-14);
  EXPECT_NEAR(fit.levels[0].standard_error, std::sqrt(0.5 + 3 * 0.25), 1e-14);
  EXPECT_NEAR(fit.levels[1].standard_error, std::sqrt(0.5), 1e-14);
}

TEST(LocalLevel, TheFitIsAMaximum) {
  const auto fit = fit_local_level(season());
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_EQ(fit.levels.size(), 10U);
  EXPECT_EQ(fit.values, 10);
  for (const double by : {0.9, 1.1}) {
    const auto& v = fit.variances;
    EXPECT_LT(smooth_local_level(season(), {v.noise * by, v.level_per_day}).log_likelihood,
              fit.log_likelihood);
    EXPECT_LT(smooth_local_level(season(), {v.noise, v.level_per_day * by}).log_likelihood,
              fit.log_likelihood);
  }
}

TEST(LocalLevel, EitherEndIsNamed) {
  // Values that alternate have no walk in them; a straight climb no noise.
  const auto constant =
      fit_local_level({{0, 1., 1}, {1, 2., 1}, {2, 1., 1}, {3, 2., 1}, {4, 1., 1}});
  EXPECT_EQ(constant.summary.termination, Termination::boundary);
  EXPECT_EQ(constant.variances.level_per_day, 0);
  EXPECT_NEAR(constant.variances.noise, 0.3, 1e-12); // sample variance of the five
  EXPECT_NEAR(constant.levels[2].level, 1.4, 1e-12);
  const auto climb = fit_local_level({{0, 1., 1}, {1, 2., 1}, {2, 3., 1}, {3, 4., 1}, {4, 5., 1}});
  EXPECT_EQ(climb.summary.termination, Termination::boundary);
  EXPECT_EQ(climb.variances.noise, 0);
  EXPECT_NEAR(climb.variances.level_per_day, 1, 1e-12); // mean square of the steps
  EXPECT_TRUE(climb.summary.usable);
}

TEST(LocalLevel, RefusesInOneSentence) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const auto code = [](const LocalLevelFit& fit) {
    EXPECT_FALSE(fit.summary.usable);
    EXPECT_TRUE(fit.levels.empty());
    return fit.summary.problem.code;
  };
  EXPECT_EQ(code(fit_local_level({})), "too_few_values");
  EXPECT_EQ(code(fit_local_level({{0, 1., 1}, {1, {}, 1}, {2, 3., 1}})), "too_few_values");
  EXPECT_EQ(code(fit_local_level({{0, 7., 1}, {1, 7., 1}, {2, 7., 1}})), "all_equal");
  EXPECT_EQ(code(fit_local_level({{2, 6., 1}, {2, 7., 1}, {2, 8., 1}})), "all_equal");
  EXPECT_EQ(code(fit_local_level({{0, nan, 1}})), "not_finite");
  EXPECT_EQ(code(fit_local_level({{nan, 1., 1}})), "not_finite");
  EXPECT_EQ(code(fit_local_level({{0, 1., 0}})), "weight_out_of_range");
  EXPECT_EQ(code(fit_local_level(season(), {0})), "option_out_of_range");
  EXPECT_EQ(code(smooth_local_level(season(), {-1, 1})), "negative_variance");
  EXPECT_EQ(code(smooth_local_level({{0, {}, 1}}, {1, 1})), "too_few_values");
  EXPECT_EQ(code(smooth_local_level({{0, 1., 1}, {0, 2., 1}}, {0, 1})), "value_contradicts");
  EXPECT_EQ(fit_local_level({{0, 1., 1}, {1, nan, 1}}).summary.message,
            "reading 2: value is 'nan', but must be a finite number.");
}

TEST(LocalLevel, ALimitOfIterationsIsNotASuccess) {
  const auto fit = fit_local_level(season(), {1});
  EXPECT_EQ(fit.summary.termination, Termination::not_converged);
  EXPECT_FALSE(fit.summary.usable);
}

Readings drawn() {
  const auto size = *rc::gen::inRange<std::size_t>(4, 40);
  Readings readings;
  int day = 0;
  for (std::size_t i = 0; i < size; ++i) {
    day += *rc::gen::inRange(0, 9);
    readings.push_back({static_cast<double>(day), *rc::gen::inRange(10, 100) / 10.0, 1});
  }
  return readings;
}

RC_GTEST_PROP(LocalLevelLaws, TheOrderOfTheRowsChangesNothing, ()) {
  Readings readings = drawn();
  const auto before = fit_local_level(readings);
  std::rotate(readings.begin(), readings.begin() + 2, readings.end());
  std::swap(readings[0], readings[1]);
  const auto after = fit_local_level(readings);
  RC_ASSERT(before.summary.usable == after.summary.usable);
  RC_ASSERT(before.variances.noise == after.variances.noise);
  RC_ASSERT(before.log_likelihood == after.log_likelihood);
}

RC_GTEST_PROP(LocalLevelLaws, AddingAConstantMovesTheLevelsOnly, ()) {
  Readings readings = drawn();
  const LocalLevelVariances v{*rc::gen::inRange(1, 50) / 10.0, *rc::gen::inRange(0, 50) / 10.0};
  const auto before = smooth_local_level(readings, v);
  for (auto& r : readings) {
    *r.value += 250;
    r.day -= 77;
  }
  const auto after = smooth_local_level(readings, v);
  RC_ASSERT(std::fabs(before.log_likelihood - after.log_likelihood) < 1e-8);
  for (std::size_t i = 0; i < before.levels.size(); ++i) {
    RC_ASSERT(std::fabs(after.levels[i].level - before.levels[i].level - 250) < 1e-9);
    RC_ASSERT(std::fabs(after.levels[i].standard_error - before.levels[i].standard_error) < 1e-9);
  }
}

RC_GTEST_PROP(LocalLevelLaws, TheUnitOfTimeIsFree, ()) {
  Readings readings = drawn();
  const auto days = fit_local_level(readings);
  for (auto& r : readings) {
    r.day *= 24;
  }
  const auto hours = fit_local_level(readings);
  RC_ASSERT(days.summary.usable == hours.summary.usable);
  if (days.summary.usable) {
    RC_ASSERT(std::fabs(days.log_likelihood - hours.log_likelihood) < 1e-8);
    RC_ASSERT(std::fabs(days.variances.level_per_day - 24 * hours.variances.level_per_day) <=
              1e-5 * (days.variances.level_per_day + days.variances.noise));
  }
}

RC_GTEST_PROP(LocalLevelLaws, DaysWithoutValueChangeNoOtherDay, ()) {
  Readings readings = drawn();
  const LocalLevelVariances v{1, 0.3};
  const auto before = smooth_local_level(readings, v);
  readings.push_back({-3, {}, 1});
  readings.push_back({500, {}, 1});
  const auto after = smooth_local_level(readings, v);
  RC_ASSERT(after.levels.size() == before.levels.size() + 2);
  for (std::size_t i = 0; i < before.levels.size(); ++i) {
    RC_ASSERT(std::fabs(after.levels[i + 1].level - before.levels[i].level) < 1e-9);
  }
  RC_ASSERT(after.levels.back().standard_error > before.levels.back().standard_error);
}

/// The same model for the general filter and smoother, by matrices of one row.
StateSpace as_state_space(const Readings& readings, const LocalLevelVariances& variances) {
  StateSpace model;
  model.start_mean = Eigen::VectorXd::Zero(1);
  model.diffuse = {true};
  for (std::size_t i = 0; i < readings.size(); ++i) {
    StateStep step;
    step.loading = Eigen::VectorXd::Ones(1);
    step.noise = variances.noise / readings[i].weight;
    step.value = readings[i].value;
    const double days = i == 0 ? 0 : readings[i].day - readings[i - 1].day;
    step.state_noise = Eigen::MatrixXd::Constant(1, 1, variances.level_per_day * days);
    model.steps.push_back(step);
  }
  return model;
}

RC_GTEST_PROP(LocalLevel, AgreesWithTheGeneralSmoother, ()) {
  Readings readings;
  double day = 0;
  for (const int kind :
       *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(0, 12)))) {
    day += 1 + kind % 4;
    const auto value = kind % 3 == 0 ? std::nullopt : std::optional(5 + kind / 4.0);
    readings.push_back({day, value, 1.0 + kind % 2});
  }
  readings.push_back({day + 1, 7.0, 1});
  const LocalLevelVariances variances{*rc::gen::inRange(0, 4) / 8.0 + 0.01,
                                      *rc::gen::inRange(0, 4) / 16.0};
  const auto plain = smooth_local_level(readings, variances);
  const auto general = kalman_smooth(as_state_space(readings, variances));
  RC_ASSERT(plain.summary.usable && general.summary.usable);
  RC_ASSERT(std::fabs(plain.log_likelihood - general.log_likelihood) < 1e-10);
  for (std::size_t i = 0; i < readings.size(); ++i) {
    RC_ASSERT(std::fabs(plain.levels[i].level - general.states[i].mean(0)) < 1e-10);
    const double error = std::sqrt(general.states[i].covariance(0, 0));
    RC_ASSERT(std::fabs(plain.levels[i].standard_error - error) < 1e-9);
  }
}

} // namespace
