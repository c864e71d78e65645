#include "baize/stats/bland_altman.h"
#include "baize/stats/concordance.h"
#include "baize/stats/fleiss_kappa.h"
#include "baize/stats/icc.h"
#include "baize/stats/kappa.h"
#include "baize/stats/krippendorff.h"
#include "reference/stats_agreement_data.h"

namespace {

using namespace baize;
using nlohmann::json;
using stats_reference::expect_close;
using stats_reference::read_json;

std::vector<double> column(const json& of, const char* name) {
  return of.at(name).get<std::vector<double>>();
}

void expect_interval(const stats::Interval& found, const json& given, double within) {
  EXPECT_NEAR(found.low, given[0], within);
  EXPECT_NEAR(found.high, given[1], within);
}

// Source: Bland JM, Altman DG (1986) Lancet i:307-310, Table 1 and text (memory;
// confirmed in R). The paper rounds as it goes, hence 0.3 in its intervals.
TEST(BlandAltman, AgreesWithThePaper) {
  const auto given = read_json("agreement/bland_altman_1986_pefr.json");
  const auto& full = given.at("full_precision_R");
  const auto& printed = given.at("published").at("first_readings");
  stats::BlandAltmanOptions options;
  options.multiplier = 2;
  options.limit_error = stats::LimitError::three_over_n;
  const auto found =
      stats::bland_altman(column(given, "large_first"), column(given, "mini_first"), options);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_EQ(found.n, 17);
  expect_close(found.bias, full.at("mean_difference"));
  expect_close(found.sd, full.at("sd"));
  expect_close(found.bias_se, full.at("se_mean"));
  expect_close(found.limit_se, full.at("se_limits_sqrt(3s2/n)"));
  expect_interval(found.limits, full.at("limits_2sd"), 1e-9);
  expect_interval(found.bias_interval, full.at("ci95_bias"), 1e-9);
  expect_interval(found.lower_limit_interval, full.at("ci95_lower_2sd"), 1e-9);
  expect_interval(found.upper_limit_interval, full.at("ci95_upper_2sd"), 1e-9);
  EXPECT_NEAR(found.bias, printed.at("mean_difference"), 0.05);
  EXPECT_NEAR(found.sd, printed.at("sd"), 0.05);
  EXPECT_NEAR(found.bias_se, printed.at("se_mean"), 0.05);
  EXPECT_NEAR(found.limit_se, printed.at("se_limits"), 0.05);
  expect_interval(found.limits, printed.at("limits_mean_pm_2sd"), 0.1);
  expect_interval(found.upper_limit_interval, printed.at("ci95_upper_limit"), 0.3);
  const auto usual = stats::bland_altman(column(given, "large_first"), column(given, "mini_first"));
  expect_interval(usual.limits, full.at("limits_1.96sd"), 1e-9);
}

// Source: computed in R on the same readings (lin_concordance.json), and the
// correlation printed in the paper.
TEST(Concordance, AgreesWithAnIndependentProgram) {
  const auto given = read_json("agreement/bland_altman_1986_pefr.json");
  const auto found = stats::concordance(column(given, "large_first"), column(given, "mini_first"));
  ASSERT_TRUE(found.summary.usable);
  expect_close(found.coefficient, read_json("agreement/lin_concordance.json").at("ccc"));
  expect_close(found.correlation, given.at("full_precision_R").at("r"));
}

// Source: Shrout PE, Fleiss JL (1979) Psychol. Bull. 86:420-428, Tables 2 and 4
// (memory; confirmed with R psych::ICC and aov, which also gave the intervals).
TEST(Icc, AgreesWithShroutAndFleiss) {
  const auto given = read_json("agreement/shrout_fleiss_1979.json");
  const auto found = stats::intraclass_correlation(
      given.at("ratings_rows_targets_cols_judges").get<stats::Ratings>());
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  const auto& full = given.at("full_precision_R");
  const auto& printed = given.at("published");
  expect_close(found.between_items, full.at("BMS"), 1e-10);
  expect_close(found.between_observers, full.at("JMS"), 1e-10);
  expect_close(found.residual, full.at("EMS"), 1e-10);
  EXPECT_NEAR(found.within_items, printed.at("WMS"), 0.005);
  const std::vector<std::pair<std::string, stats::IccForm>> forms{
      {"ICC(1,1)", found.one_way_single},      {"ICC(2,1)", found.random_single},
      {"ICC(3,1)", found.fixed_single},        {"ICC(1,k)", found.one_way_mean},
      {"ICC(2,k)", found.random_mean.value()}, {"ICC(3,k)", found.fixed_mean}};
  for (const auto& [name, form] : forms) {
    SCOPED_TRACE(name);
    expect_close(form.value, full.at(name));
    EXPECT_NEAR(form.value, printed.at(name), 0.005);
    // R's own F quantiles there were found to about ten digits.
    expect_interval(form.interval, full.at("CI95").at(name), 1e-9);
  }
}

// Source: Cohen J (1968) Psychol. Bull. 70:213-220 (read in a help text;
// confirmed with R psych), with even and with lopsided weights.
TEST(Kappa, AgreesWithCohen) {
  const auto given = read_json("agreement/kappa_weighted.json").at("cases")[0];
  auto counts = given.at("table_proportions").get<stats::Table>();
  for (auto& row : counts) {
    for (double& cell : row) {
      cell *= given.at("n").get<double>();
    }
  }
  const auto plain = stats::cohen_kappa(counts, stats::KappaWeights::none);
  const auto weighted =
      stats::weighted_kappa(counts, given.at("disagreement_weights").get<stats::Table>());
  const auto lopsided = stats::weighted_kappa(
      counts, given.at("asymmetric_weights").at("weights").get<stats::Table>());
  ASSERT_TRUE(plain.summary.usable && weighted.summary.usable && lopsided.summary.usable);
  EXPECT_NEAR(plain.value, given.at("published").at("kappa"), 5e-4);
  EXPECT_NEAR(weighted.value, given.at("published").at("weighted_kappa"), 5e-4);
  expect_close(plain.value, given.at("full_precision_R").at("kappa"));
  expect_close(weighted.value, given.at("full_precision_R").at("weighted_kappa"));
  expect_close(lopsided.value, given.at("full_precision_R").at("asymmetric"));
}

// Source: Fleiss JL, Cohen J, Everitt BS (1969) Psychol. Bull. 72:323-327 (data
// read in a help text; kappas confirmed with R psych).
TEST(Kappa, AgreesWithFleissCohenAndEveritt) {
  const auto given = read_json("agreement/kappa_weighted.json").at("cases")[1];
  const auto counts = given.at("table_counts").get<stats::Table>();
  const stats::Table disagreement{{0, 9, 5}, {9, 0, 3}, {5, 3, 0}};
  const auto plain = stats::cohen_kappa(counts, stats::KappaWeights::none);
  const auto weighted = stats::weighted_kappa(counts, disagreement);
  ASSERT_TRUE(plain.summary.usable && weighted.summary.usable);
  expect_close(plain.value, given.at("R").at("kappa"));
  expect_close(weighted.value, given.at("R").at("weighted_kappa_exact_thirds"));
}

// Source: Fleiss JL (1971) Psychol. Bull. 76:378-382, Table 1: 30 patients, six
// ratings each in five diagnoses; kappa .430 and z 17.7 (memory; the margins
// .144 .144 .167 .306 .239 printed there hold the data to the memory).
TEST(FleissKappa, AgreesWithThePaper) {
  const std::vector<std::vector<double>> counts{
      {0, 0, 0, 6, 0}, {0, 3, 0, 0, 3}, {0, 1, 4, 0, 1}, {0, 0, 0, 0, 6}, {0, 3, 0, 3, 0},
      {2, 0, 4, 0, 0}, {0, 0, 4, 0, 2}, {2, 0, 3, 1, 0}, {2, 0, 0, 4, 0}, {0, 0, 0, 0, 6},
      {1, 0, 0, 5, 0}, {1, 1, 0, 4, 0}, {0, 3, 3, 0, 0}, {1, 0, 0, 5, 0}, {0, 2, 0, 3, 1},
      {0, 0, 5, 0, 1}, {3, 0, 0, 1, 2}, {5, 1, 0, 0, 0}, {0, 2, 0, 4, 0}, {1, 0, 2, 0, 3},
      {0, 0, 0, 0, 6}, {0, 1, 0, 5, 0}, {0, 2, 0, 1, 3}, {2, 0, 0, 4, 0}, {1, 0, 0, 4, 1},
      {0, 5, 0, 1, 0}, {4, 0, 0, 0, 2}, {0, 2, 0, 4, 0}, {1, 0, 5, 0, 0}, {0, 0, 0, 0, 6}};
  const std::vector<double> margins{.144, .144, .167, .306, .239};
  for (std::size_t j = 0; j < margins.size(); ++j) {
    double sum = 0;
    for (const auto& row : counts) {
      sum += row[j];
    }
    EXPECT_NEAR(sum / 180, margins[j], 6e-4);
  }
  const auto found = stats::fleiss_kappa(counts);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_NEAR(found.value, .430, 5e-4);
  EXPECT_NEAR(found.value / found.null_se, 17.7, 0.05);
}

// Source: Krippendorff K (1980) Content Analysis, data C (read; alphas confirmed
// by running a general-purpose package; .743 .815 .849 .797 from memory).
TEST(KrippendorffAlpha, AgreesWithDataC) {
  const auto given = read_json("agreement/krippendorff_alpha.json");
  std::vector<std::vector<std::optional<double>>> ratings;
  for (const auto& row : given.at("rows_units_cols_observers")) {
    ratings.emplace_back();
    for (const auto& cell : row) {
      ratings.back().push_back(cell.is_null() ? std::nullopt
                                              : std::optional<double>(cell.get<double>()));
    }
  }
  const std::vector<std::pair<std::string, stats::AlphaMetric>> metrics{
      {"nominal", stats::AlphaMetric::nominal},
      {"ordinal", stats::AlphaMetric::ordinal},
      {"interval", stats::AlphaMetric::interval},
      {"ratio", stats::AlphaMetric::ratio}};
  for (const auto& [name, metric] : metrics) {
    SCOPED_TRACE(name);
    const auto found = stats::krippendorff_alpha(ratings, metric);
    ASSERT_TRUE(found.summary.usable);
    EXPECT_EQ(found.items, 11);
    EXPECT_EQ(found.values, 40);
    expect_close(found.value, given.at("alpha").at(name));
  }
}

} // namespace
