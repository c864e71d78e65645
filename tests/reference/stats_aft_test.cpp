// Accelerated failure time regression. Diabetes: data of a public survival
// library; expected by R survival 3.5.3. Breast cosmesis: Finkelstein DM, Wolfe RA
// (1985) Biometrics 41:731-740. Remission: Freireich EJ et al. (1963) Blood 21:699.
// Those of both confirmed with R survival (survreg).
#include "baize/stats/aft.h"
#include "reference/stats_survival_data.h"

namespace baize::stats_reference {
namespace {

using stats::AftDistribution;

stats::AftFit fit(const std::vector<SurvivalRow>& rows, const std::string& second,
                  AftDistribution distribution) {
  std::vector<stats::AftObservation> observations;
  for (const SurvivalRow& row : rows) {
    observations.push_back({row.time, {row.group == second ? 1.0 : 0.0}});
  }
  const auto found = stats::fit_aft(observations, {distribution});
  EXPECT_EQ(found.summary.termination, stats::Termination::converged) << found.summary.message;
  return found;
}

struct Expected {
  AftDistribution distribution;
  double log_likelihood;
  double constant;
  double male;
  double scale;
};

TEST(AftReference, IntervalDiabetes) {
  const Expected rows[] = {
      {AftDistribution::weibull, -2027.196333, 2.907977418, 0.045758296, 0.35382184},
      {AftDistribution::log_normal, -2026.118212, 2.699820253, 0.086428442, 0.38472354},
      {AftDistribution::log_logistic, -2003.695488, 2.72353963, 0.07918987, 0.20556145},
  };
  for (const Expected& row : rows) {
    const auto found = fit(interval_diabetes(), "male", row.distribution);
    ASSERT_TRUE(found.summary.usable);
    EXPECT_EQ(found.observations, 731);
    EXPECT_EQ(found.exact + found.left_censored + found.interval_censored, 731);
    EXPECT_NEAR(found.log_likelihood, row.log_likelihood, 5.1e-7);
    EXPECT_NEAR(found.coefficients[0].value, row.constant, 1e-8);
    EXPECT_NEAR(found.coefficients[1].value, row.male, 1e-8);
    EXPECT_NEAR(found.scale, row.scale, 1e-8);
  }
}

TEST(AftReference, BreastCosmesis) {
  const auto expected = model_json("survival/breast_cosmesis_expected.json");
  const auto& weibull = expected.at("weibull_survreg");
  const auto found = fit(breast_cosmesis(), "RadChem", AftDistribution::weibull);
  EXPECT_NEAR(found.coefficients[0].value, weibull.at("intercept").get<double>(), 1e-8);
  EXPECT_NEAR(found.coefficients[1].value, weibull.at("RadChem").get<double>(), 1e-8);
  EXPECT_NEAR(found.scale, weibull.at("scale").get<double>(), 1e-8);
  EXPECT_NEAR(found.log_likelihood, weibull.at("loglik").get<double>(), 5.1e-9);
  EXPECT_NEAR(found.log_likelihood_null, weibull.at("loglik_null").get<double>(), 5.1e-9);
  EXPECT_NEAR(found.coefficients[0].standard_error, weibull.at("se_intercept").get<double>(), 1e-7);
  EXPECT_NEAR(found.coefficients[1].standard_error, weibull.at("se_RadChem").get<double>(), 1e-7);
  EXPECT_NEAR(found.log_scale_error, weibull.at("se_log_scale").get<double>(), 1e-7);
  EXPECT_NEAR(found.likelihood_ratio, 2 * (148.792431154 - 143.32082711), 1e-7);

  const auto& log_normal = expected.at("lognormal_survreg");
  const auto other = fit(breast_cosmesis(), "RadChem", AftDistribution::log_normal);
  EXPECT_NEAR(other.coefficients[0].value, log_normal.at("intercept").get<double>(), 1e-8);
  EXPECT_NEAR(other.coefficients[1].value, log_normal.at("RadChem").get<double>(), 1e-8);
  EXPECT_NEAR(other.scale, log_normal.at("scale").get<double>(), 1e-8);
  EXPECT_NEAR(other.log_likelihood, log_normal.at("loglik").get<double>(), 5.1e-9);
}

TEST(AftReference, Remission) {
  const auto expected = model_json("survival/remission_6mp_expected.json");
  const auto& weibull = expected.at("weibull");
  const auto found = fit(remission(), "control", AftDistribution::weibull);
  EXPECT_NEAR(found.coefficients[0].value, weibull.at("intercept").get<double>(), 1e-8);
  EXPECT_NEAR(found.coefficients[1].value, weibull.at("control").get<double>(), 1e-8);
  EXPECT_NEAR(found.scale, weibull.at("scale").get<double>(), 1e-8);
  EXPECT_NEAR(found.log_likelihood, weibull.at("loglik").get<double>(), 1e-8);

  const auto& exponential = expected.at("exponential");
  const auto other = fit(remission(), "control", AftDistribution::exponential);
  EXPECT_NEAR(other.coefficients[0].value, exponential.at("intercept").get<double>(), 1e-8);
  EXPECT_NEAR(other.coefficients[1].value, exponential.at("control").get<double>(), 1e-8);
  EXPECT_NEAR(other.log_likelihood, exponential.at("loglik").get<double>(), 1e-8);
  EXPECT_EQ(other.scale, 1);
}

} // namespace
} // namespace baize::stats_reference
