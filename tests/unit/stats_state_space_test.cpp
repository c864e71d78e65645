#include "baize/stats/state_space.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

namespace {

using namespace baize::stats;

StateStep seen(const Eigen::VectorXd& loading, double noise, std::optional<double> value) {
  StateStep step;
  step.loading = loading;
  step.noise = noise;
  step.value = value;
  return step;
}

StateSpace one_state(double variance) {
  StateSpace model;
  model.start_mean = Eigen::VectorXd::Zero(1);
  model.start_covariance = Eigen::MatrixXd::Constant(1, 1, variance);
  return model;
}

const Eigen::VectorXd kOne = Eigen::VectorXd::Ones(1);

// Pencil: start N(0, 1), one value 2 with noise 1: F = 2, K = 1/2, mean 1,
// variance 1/2, log-likelihood -(log 2 pi 2 + 4/2)/2.
TEST(KalmanFilter, OneValueByPencil) {
  StateSpace model = one_state(1);
  model.steps = {seen(kOne, 1, 2.0)};
  const auto filter = kalman_filter(model);
  ASSERT_TRUE(filter.summary.usable);
  EXPECT_DOUBLE_EQ(filter.states[0].mean(0), 1);
  EXPECT_DOUBLE_EQ(filter.states[0].covariance(0, 0), 0.5);
  EXPECT_DOUBLE_EQ(filter.log_likelihood, -0.5 * (std::log(4 * std::numbers::pi) + 2));
}

// Pencil: transition 1/2, input 3, state noise 2 after that: mean 1/2 + 3,
// variance 1/8 + 2; nothing measured.
TEST(KalmanFilter, PredictionByPencil) {
  StateSpace model = one_state(1);
  StateStep step = seen(kOne, 1, {});
  step.transition = Eigen::MatrixXd::Constant(1, 1, 0.5);
  step.input = Eigen::VectorXd::Constant(1, 3);
  step.state_noise = Eigen::MatrixXd::Constant(1, 1, 2);
  model.steps = {seen(kOne, 1, 2.0), step};
  const auto filter = kalman_filter(model);
  EXPECT_DOUBLE_EQ(filter.states[1].mean(0), 3.5);
  EXPECT_DOUBLE_EQ(filter.states[1].covariance(0, 0), 2.125);
  EXPECT_FALSE(filter.innovations[1].has_value());
  EXPECT_EQ(filter.values, 1);
}

/// A straight line with both its states diffuse and nothing walking: what the
/// smoother gives must be the least-squares line through the points.
StateSpace line(const std::vector<std::optional<double>>& values, double noise) {
  StateSpace model;
  model.start_mean = Eigen::VectorXd::Zero(2);
  model.diffuse = {true, true};
  for (const auto& value : values) {
    StateStep step = seen(Eigen::Vector2d(1, 0), noise, value);
    step.transition = Eigen::MatrixXd(2, 2);
    step.transition << 1, 1, 0, 1;
    model.steps.push_back(step);
  }
  return model;
}

// Pencil: points (0,1) (1,3) (2,4) (4,9): x mean 7/4, y mean 17/4, Sxx 35/4, Sxy
// 69/4; slope 69/35, level at 0 0.8; variances s2 (1/4 + (x - 7/4)^2 4/35).
TEST(KalmanSmoother, ADiffuseLineIsLeastSquares) {
  const auto smoother = kalman_smooth(line({{}, 1, 3, 4, {}, 9, {}}, 0.5));
  ASSERT_TRUE(smoother.summary.usable) << smoother.summary.message;
  for (int i = 0; i < 7; ++i) {
    const double x = i - 1;
    const auto& state = smoother.states[static_cast<std::size_t>(i)];
    EXPECT_NEAR(state.mean(0), 4.25 + 69.0 / 35 * (x - 1.75), 1e-12);
    EXPECT_NEAR(state.mean(1), 69.0 / 35, 1e-12);
    EXPECT_NEAR(state.covariance(0, 0), 0.5 * (0.25 + (x - 1.75) * (x - 1.75) * 4 / 35), 1e-12);
    EXPECT_NEAR(state.covariance(1, 1), 0.5 * 4 / 35, 1e-12);
    EXPECT_TRUE(state.determined);
  }
}

// The diffuse log-likelihood of that line is the restricted one of the regression:
// -(n-p)/2 log(2 pi s2) - RSS/(2 s2) - 1/2 log det X'X (common textbook identity).
TEST(KalmanFilter, DiffuseLogLikelihoodIsTheRestrictedOne) {
  const double noise = 0.5;
  const auto filter = kalman_filter(line({1, 3, 4, {}, 9}, noise), false);
  double rss = 0;
  const double xs[] = {0, 1, 2, 4};
  const double ys[] = {1, 3, 4, 9};
  for (int i = 0; i < 4; ++i) {
    rss += std::pow(ys[i] - 4.25 - 69.0 / 35 * (xs[i] - 1.75), 2);
  }
  const double truth =
      -std::log(2 * std::numbers::pi * noise) - rss / (2 * noise) - 0.5 * std::log(4 * 35.0 / 4);
  EXPECT_NEAR(filter.log_likelihood, truth, 1e-12);
  EXPECT_EQ(filter.diffuse_values, 2);
  EXPECT_TRUE(filter.states.empty());
}

TEST(KalmanFilter, TheStartIsOnlyKnownAfterEnoughValues) {
  const auto filter = kalman_filter(line({1, 3, 4}, 1));
  EXPECT_FALSE(filter.states[0].determined);
  EXPECT_TRUE(filter.states[1].determined);
  EXPECT_TRUE(filter.innovations[1]->diffuse);
  EXPECT_FALSE(filter.innovations[2]->diffuse);
}

TEST(KalmanFilter, TooLittleToTellTheStartIsDegenerate) {
  for (const auto& summary :
       {kalman_filter(line({1, {}, {}}, 1)).summary, kalman_smooth(line({{}, {}}, 1)).summary}) {
    EXPECT_EQ(summary.termination, Termination::degenerate);
    EXPECT_EQ(summary.problem.code, "start_not_determined");
    EXPECT_FALSE(summary.usable);
  }
}

TEST(KalmanFilter, ACertainModelIsNotContradicted) {
  StateSpace model = one_state(0);
  model.steps = {seen(kOne, 0, 0.0)};
  EXPECT_TRUE(kalman_filter(model).summary.usable);
  model.steps = {seen(kOne, 0, 1.0)};
  EXPECT_EQ(kalman_filter(model).summary.problem.code, "value_contradicts");
}

TEST(StateSpace, RefusesWhatIsNotAModel) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const StateSpace good = line({1, 3, 4}, 1);
  EXPECT_TRUE(good.valid());
  const auto code = [](const StateSpace& model) {
    EXPECT_FALSE(kalman_filter(model).summary.usable);
    EXPECT_FALSE(kalman_smooth(model).summary.usable);
    return kalman_filter(model).summary.problem.code;
  };
  StateSpace bad = good;
  bad.steps.clear();
  EXPECT_EQ(code(bad), "no_steps");
  bad = good;
  bad.steps[1].loading = kOne;
  EXPECT_EQ(code(bad), "sizes_disagree");
  bad = good;
  bad.steps[1].value = nan;
  EXPECT_EQ(code(bad), "not_finite");
  bad = good;
  bad.steps[2].noise = -1;
  EXPECT_EQ(code(bad), "negative_variance");
  EXPECT_EQ(kalman_filter(bad).summary.message,
            "step 3: noise is '-1', but must be a finite variance of 0 or more.");
  bad = good;
  bad.steps[2].state_noise = -Eigen::MatrixXd::Identity(2, 2);
  EXPECT_EQ(code(bad), "negative_variance");
  bad = good;
  bad.start_mean(0) = nan;
  EXPECT_EQ(code(bad), "not_finite");
  bad = good;
  bad.start_covariance = Eigen::MatrixXd::Identity(2, 2);
  EXPECT_EQ(code(bad), "sizes_disagree");
  bad = good;
  bad.diffuse = {true};
  EXPECT_EQ(code(bad), "sizes_disagree");
}

} // namespace
