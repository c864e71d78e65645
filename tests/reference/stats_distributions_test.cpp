#include "baize/stats/distributions.h"
#include "reference/stats_agreement_data.h"

#include <string>

namespace {

using namespace baize;
using stats_reference::expect_close;

// Source: common_quantiles.json, computed in R (qt, qf, qchisq).
TEST(CommonQuantiles, AgreeWithAnIndependentProgram) {
  const auto given = stats_reference::read_json("distributions/common_quantiles.json");
  for (const auto& [df, value] : given.at("t_0.975").items()) {
    expect_close(stats::t_quantile(0.975, std::stod(df)), value, 1e-13);
    EXPECT_NEAR(stats::t_cdf(value, std::stod(df)), 0.975, 1e-13);
  }
  for (const auto& [df, value] : given.at("chi2_0.95").items()) {
    expect_close(stats::chi_squared_quantile(0.95, std::stod(df)), value, 1e-13);
    EXPECT_NEAR(stats::chi_squared_upper(value, std::stod(df)), 0.05, 1e-13);
  }
  for (const auto& [both, value] : given.at("F_0.95").items()) {
    const auto comma = both.find(',');
    const double df1 = std::stod(both.substr(0, comma));
    const double df2 = std::stod(both.substr(comma + 1));
    expect_close(stats::f_quantile(0.95, df1, df2), value, 1e-13);
    EXPECT_NEAR(stats::f_upper(value, df1, df2), 0.05, 1e-13);
  }
}

// Source: NIST/SEMATECH e-Handbook 1.3.6.7.1 and .2 (printed tables), from memory.
TEST(CommonQuantiles, AgreeWithPrintedTables) {
  EXPECT_NEAR(stats::normal_cdf(1.96), 0.97500, 5e-6);
  EXPECT_NEAR(stats::normal_cdf(0.5), 0.69146, 5e-6);
  EXPECT_NEAR(stats::normal_quantile(0.975), 1.959964, 5e-7);
  EXPECT_NEAR(stats::t_quantile(0.995, 10), 3.169, 5e-4);
}

// Source: exact integrals. With a = 2 and b = 3 the beta density is
// 12 x (1 - x)^2; t with one degree of freedom is Cauchy's; F(2, m) and
// chi-squared(2) fall as powers and exponentials.
TEST(CommonDistributions, AgreeWithExactIntegrals) {
  const double x = 0.3;
  expect_close(stats::beta_cdf(x, 2, 3), x * x * (6 - 8 * x + 3 * x * x), 1e-14);
  expect_close(stats::beta_quantile(stats::beta_cdf(x, 2, 3), 2, 3), x, 1e-13);
  expect_close(stats::t_cdf(1, 1), 0.75, 1e-15);
  expect_close(stats::chi_squared_upper(50, 2), std::exp(-25), 1e-13);
  expect_close(stats::f_upper(3, 2, 8), std::pow(1 + 2 * 3.0 / 8, -4), 1e-13);
}

// Source: the tail series, Abramowitz and Stegun 26.2.12 (memory):
// 1 - Phi(z) = phi(z) / z (1 - 1/z^2 + 3/z^4 - 15/z^6 ...).
TEST(CommonDistributions, KeepTheirDigitsFarOut) {
  const double z = 30;
  const double r = 1 / (z * z);
  const double series = std::exp(-z * z / 2) / (z * 2.5066282746310002) *
                        (1 - r * (1 - 3 * r * (1 - 5 * r * (1 - 7 * r * (1 - 9 * r)))));
  expect_close(stats::normal_upper(z), series, 1e-11);
  expect_close(stats::t_upper(1e8, 1), 1 / (M_PI * 1e8), 1e-12);
}

} // namespace
