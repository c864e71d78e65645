// Venables and Ripley (2002), Modern Applied Statistics with S, the housing data
// (source O2 in data/SOURCES.md), confirmed with R MASS::polr.
#include "baize/stats/ordinal.h"
#include "reference/stats_mixed_data.h"

namespace baize::stats_reference {
namespace {

TEST(OrdinalReference, Housing) {
  const auto truth = model_json("ordinal/housing_expected.json");
  const MixedTable table("../ordinal/housing.csv");
  const auto satisfied = table.indicators("Sat");
  stats::OrdinalData data;
  data.weight = table.numbers("Freq");
  for (std::size_t r = 0; r < data.weight.size(); ++r) {
    data.category.push_back(satisfied[2][r] > 0 ? 3 : satisfied[1][r] > 0 ? 2 : 1);
  }
  // In order of appearance the first level of each is R's reference level too.
  for (const char* name : {"Infl", "Type", "Cont"}) {
    const auto levels = table.indicators(name);
    data.covariates.insert(data.covariates.end(), levels.begin() + 1, levels.end());
  }
  const auto fit = stats::fit_ordinal(data);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const auto& coefficients = truth.at("coef");
  std::size_t i = 0;
  for (const char* name :
       {"InflMedium", "InflHigh", "TypeApartment", "TypeAtrium", "TypeTerrace", "ContHigh"}) {
    const auto& one = coefficients.at(name);
    expect_digits(fit.coefficients[i].value, one[0], 4, name); // polr stops there
    expect_digits(fit.coefficients[i].standard_error, one[1], 5, name);
    ++i;
  }
  expect_digits(fit.thresholds[0].value, truth.at("cut")[0], 4, "first threshold");
  expect_digits(fit.thresholds[1].value, truth.at("cut")[1], 4, "second threshold");
  expect_digits(fit.deviance, truth.at("deviance"), 9, "deviance");
  EXPECT_LE(fit.deviance, truth.at("deviance").get<double>() + 1e-8);
  EXPECT_EQ(fit.observations, 1681);
}

} // namespace
} // namespace baize::stats_reference
