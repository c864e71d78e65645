// The season model without works is a local level with noise: the yearly flow of
// the Nile at R's own estimates, through the code that a club's scores go through.
// Durbin J, Koopman SJ (2012) Time Series Analysis by State Space Methods, 2nd ed.,
// ch. 2; full precision by R's StructTS and an own diffuse filter.
#include "baize/season/project.h"
#include "baize/stats/local_level.h"
#include "reference/stats_model_data.h"
#include "unit/season_hand.h"

namespace baize::stats_reference {
namespace {

const nlohmann::json& nile() {
  static const nlohmann::json data = model_json("state_space/nile_local_level.json");
  return data;
}

std::vector<double> flow() {
  return nile().at("y_1871_1970").get<std::vector<double>>();
}

season::Parameters at_the_estimates() {
  const auto& truth = nile().at("mle_full_precision");
  season::Parameters at;
  at.level_walk = std::sqrt(truth.at("var_eta").get<double>());
  at.visit_sd = std::sqrt(truth.at("var_eps").get<double>() / 2);
  return at;
}

TEST(SeasonReference, NileLogLikelihood) {
  const auto& truth = nile().at("mle_full_precision");
  const season::Model model =
      testing::hand_model(flow(), std::sqrt(truth.at("var_eps").get<double>() / 2));
  const auto posterior = season::evaluate(model, {}, at_the_estimates());
  ASSERT_TRUE(posterior.usable);
  expect_digits(posterior.log_likelihood, truth.at("loglik_t2_to_n"), 9, "log-likelihood");
}

TEST(SeasonReference, NileLevels) {
  const auto& truth = nile().at("mle_full_precision");
  const double noise = truth.at("var_eps");
  season::SeasonFit fit;
  fit.model = testing::hand_model(flow(), std::sqrt(noise / 2));
  fit.parameters = at_the_estimates();
  fit.posterior = season::evaluate(fit.model, {}, fit.parameters);
  std::vector<stats::LevelReading> readings;
  for (const double value : flow()) {
    readings.push_back({static_cast<double>(readings.size()), value, 1});
  }
  const auto exact = stats::smooth_local_level(readings, {noise, truth.at("var_eta")});
  ASSERT_TRUE(exact.summary.usable);
  const auto errors = season::innovations(fit.model, 0, fit.parameters, fit.posterior);
  ASSERT_EQ(errors.size(), 99U);
  // The start's level is the smoother's, whatever part of it the line takes.
  const Eigen::VectorXd own =
      fit.posterior.greens[0].base + fit.posterior.greens[0].slope * fit.posterior.shared;
  expect_digits(own.sum(), exact.levels.front().level, 9, "first level");
}

} // namespace
} // namespace baize::stats_reference
