#include "baize/stats/area_under_curve.h"
#include "baize/stats/descriptive.h"
#include "reference/stats_agreement_data.h"

#include <array>

namespace {

using namespace baize;

/// Certified digits that agree, at most 15.
double digits(double found, double certified) {
  if (found == certified) {
    return 15;
  }
  return std::min(15.0, -std::log10(std::fabs((found - certified) / certified)));
}

struct Case {
  const char* name;
  double mean, sd, autocorrelation; ///< digits that must agree
};

class NistUnivariate : public testing::TestWithParam<Case> {};

// Source: NIST Statistical Reference Datasets, univariate (read; copies of the
// certified files). 15 digits are certified; a decimal such as 299.85 is not
// exact in a double, which costs what the differences below 15 show.
TEST_P(NistUnivariate, AgreesToTheCertifiedDigits) {
  const Case wanted = GetParam();
  const auto given =
      stats_reference::read_json(std::string("nist_strd/univariate/") + wanted.name + ".json");
  const auto values = given.at("data").get<std::vector<double>>();
  const auto found = stats::describe(values);
  ASSERT_TRUE(found.summary.usable);
  EXPECT_GE(digits(found.mean, given.at("mean")), wanted.mean) << found.mean;
  EXPECT_GE(digits(*found.sd, given.at("sd")), wanted.sd) << *found.sd;
  EXPECT_GE(digits(*found.autocorrelation_1, given.at("autocorr1")), wanted.autocorrelation)
      << *found.autocorrelation_1;
}

INSTANTIATE_TEST_SUITE_P(DataSets, NistUnivariate,
                         testing::Values(Case{"Lew", 15, 14.5, 14.5}, Case{"Mavro", 15, 12.5, 12.5},
                                         Case{"Michelso", 15, 13, 13}, Case{"NumAcc1", 15, 15, 15},
                                         Case{"NumAcc2", 15, 14.5, 14.5}),
                         [](const auto& one) { return std::string(one.param.name); });

// Source: a worked example common in teaching disease progress: days 14, 21 and 28 with
// 40, 80 and 90; the two areas follow from the published formulas (computed).
TEST(AreaUnderCurve, OfThreeReadings) {
  const std::array<double, 3> days{14, 21, 28};
  const std::array<double, 3> values{40, 80, 90};
  const auto area = stats::area_under_curve(days, values);
  ASSERT_TRUE(area.summary.usable);
  EXPECT_EQ(area.trapezoid, 1015);
  EXPECT_EQ(area.stairs, 1470);
  EXPECT_EQ(area.duration, 14);
  EXPECT_EQ(area.mean_height, 72.5);
}

// Source: Hyndman RJ, Fan Y (1996) Am. Stat. 50:361-365, definition 7 (memory);
// the values are 1 to 10, so the quantile at p is 1 + 9 p exactly.
TEST(Quantiles, FollowDefinitionSeven) {
  const std::array<double, 10> values{10, 2, 9, 4, 5, 6, 7, 8, 3, 1};
  for (const double p : {0.0, 0.1, 0.25, 0.5, 0.9, 1.0}) {
    EXPECT_NEAR(stats::quantile(values, p).value, 1 + 9 * p, 1e-14);
  }
}

} // namespace
