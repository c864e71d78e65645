// Durbin J, Koopman SJ (2001/2012) Time Series Analysis by State Space Methods,
// ch. 2: yearly flow of the Nile (data Cobb 1978). Published figures from memory;
// full precision confirmed by R's StructTS and by an own diffuse filter.
#include "baize/stats/ljung_box.h"
#include "baize/stats/local_level.h"
#include "baize/stats/state_space.h"
#include "reference/stats_model_data.h"

namespace baize::stats_reference {
namespace {

const nlohmann::json& nile() {
  static const nlohmann::json data = model_json("state_space/nile_local_level.json");
  return data;
}

std::vector<stats::LevelReading> flow() {
  std::vector<stats::LevelReading> readings;
  for (const double value : nile().at("y_1871_1970")) {
    readings.push_back({1871.0 + static_cast<double>(readings.size()), value, 1});
  }
  return readings;
}

TEST(StateSpaceReference, NileMaximumLikelihood) {
  const auto fit = stats::fit_local_level(flow());
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_EQ(fit.summary.termination, stats::Termination::converged);
  const auto& truth = nile().at("mle_full_precision");
  expect_digits(fit.variances.noise, truth.at("var_eps"), 6, "noise");
  expect_digits(fit.variances.level_per_day, truth.at("var_eta"), 6, "level");
  expect_digits(fit.log_likelihood, truth.at("loglik_t2_to_n"), 10, "log-likelihood");
  // Computed: the same likelihood maximised in 40-digit decimal arithmetic.
  expect_digits(fit.variances.noise, 15098.518324096279, 9, "noise");
  expect_digits(fit.variances.level_per_day, 1469.1763603095155, 9, "level");
  // As printed.
  const auto& printed = nile().at("published");
  EXPECT_NEAR(fit.variances.noise, printed.at("var_eps").get<double>(), 0.5);
  EXPECT_NEAR(fit.variances.level_per_day, printed.at("var_eta").get<double>(), 0.1);
  EXPECT_NEAR(fit.variances.level_per_day / fit.variances.noise, printed.at("q").get<double>(),
              5e-5);
}

// The general filter at the book's trial ratios: the scale has a closed form, so
// the filter's own prediction errors give the concentrated log-likelihood.
TEST(StateSpaceReference, NileConcentratedLogLikelihood) {
  const double n = 100;
  for (const auto& row : nile().at("concentrated_iterations")) {
    stats::StateSpace model;
    model.start_mean = Eigen::VectorXd::Zero(1);
    model.diffuse = {true};
    for (const auto& reading : flow()) {
      stats::StateStep step;
      step.state_noise = Eigen::MatrixXd::Constant(1, 1, row.at("q").get<double>());
      step.loading = Eigen::VectorXd::Ones(1);
      step.noise = 1;
      step.value = reading.value;
      model.steps.push_back(step);
    }
    const auto filter = stats::kalman_filter(model);
    ASSERT_TRUE(filter.summary.usable);
    double squares = 0;
    double logs = 0;
    for (const auto& innovation : filter.innovations) {
      if (!innovation->diffuse) {
        squares += innovation->error * innovation->error / innovation->variance;
        logs += std::log(innovation->variance);
      }
    }
    const double found = -(n - 1) / 2 * std::log(squares / (n - 1)) - logs / 2;
    // The first row is printed -495.68 where recomputation gives -495.685.
    EXPECT_NEAR(found, row.at("loglik_published").get<double>(), 0.0055) << row.dump();
  }
}

// R 4.2.2: Box.test(Nile, lag = 5, type = "Ljung"), and lag = 8 with fitdf = 1.
TEST(StateSpaceReference, NileGoesTogetherFromYearToYear) {
  std::vector<double> values;
  for (const stats::LevelReading& one : flow()) {
    values.push_back(*one.value);
  }
  const auto five = stats::ljung_box({values}, {5, 0});
  ASSERT_TRUE(five.summary.usable);
  expect_digits(five.statistic, 63.9717123481333, 12, "statistic");
  EXPECT_NEAR(five.p / 1.83109083451427e-12, 1, 1e-3); // R's upper tail is 1 less the lower
  const auto eight = stats::ljung_box({values}, {8, 1});
  expect_digits(eight.statistic, 84.9612610445937, 12, "statistic of eight lags");
  EXPECT_EQ(eight.df, 7);
}

// The same of ten made-up values with lag = 3.
TEST(StateSpaceReference, ShortSeries) {
  const auto found =
      stats::ljung_box({{0.3, -1.2, 0.8, 0.1, -0.4, 1.5, -0.9, 0.2, -0.1, 0.6}}, {3, 0});
  ASSERT_TRUE(found.summary.usable);
  expect_digits(found.statistic, 5.51978391604846, 13, "statistic");
  expect_digits(found.p, 0.13746009699254, 12, "p");
  expect_digits(found.autocorrelation[0], -0.610595217315413, 13, "lag 1");
  expect_digits(found.autocorrelation[2], 0.139413510211206, 13, "lag 3");
}

} // namespace
} // namespace baize::stats_reference
