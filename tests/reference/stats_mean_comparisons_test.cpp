// Comparison of means against R's TukeyHSD and published critical values.
#include "baize/stats/dunnett.h"
#include "baize/stats/mean_comparisons.h"
#include "baize/stats/one_way_anova.h"
#include "reference/stats_model_data.h"

#include <limits>
#include <map>
#include <sstream>

namespace baize::stats_reference {
namespace {

using Groups = std::vector<std::vector<double>>;

stats::MeanComparisons tukey(const Groups& groups) {
  const auto anova = stats::one_way_anova(groups);
  std::vector<int> counts;
  for (const auto& group : groups) {
    counts.push_back(static_cast<int>(group.size()));
  }
  return stats::compare_means(
      anova.means, stats::pair_differences(anova.means, counts, anova.within_ms, anova.within_df));
}

nlohmann::json named(const std::string& id) {
  const auto all = model_json("comparisons/expected.json");
  for (const auto& one : all.at("cases")) {
    if (one.at("id") == id) {
      return one;
    }
  }
  return {};
}

Groups plants() {
  auto in = open_model_data("comparisons/plantgrowth.csv");
  std::map<std::string, std::vector<double>> groups;
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    const auto comma = line.find(',');
    groups[line.substr(comma + 1)].push_back(std::stod(line.substr(0, comma)));
  }
  Groups result;
  for (const auto& [name, values] : groups) {
    result.push_back(values);
  }
  return result;
}

/// given: for each pair "later-earlier" difference, lower and upper end, p. R's
/// quantile ends its search some eight digits in.
void check(const stats::MeanComparisons& found, const std::vector<nlohmann::json>& given,
           double digits) {
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.pairs.size(), given.size());
  for (std::size_t i = 0; i < given.size(); ++i) {
    expect_digits(-found.pairs[i].difference, given[i][0], 10, "difference");
    EXPECT_NEAR(-found.pairs[i].interval.high, given[i][1], 2e-8);
    EXPECT_NEAR(-found.pairs[i].interval.low, given[i][2], 2e-8);
    expect_digits(found.pairs[i].p, given[i][3], digits, "p");
  }
}

// Dobson AJ (1983), weights of plants (data set of R); values confirmed with R's TukeyHSD.
TEST(Tukey, PlantsAsInR) {
  const auto given = named("plantgrowth_tukey").at("tukey");
  const auto found = tukey(plants());
  check(found, {given["trt1-ctrl"], given["trt2-ctrl"], given["trt2-trt1"]}, 9);
  EXPECT_EQ(found.letters, (std::vector<std::string>{"ab", "b", "a"}));
}

// NIST/SEMATECH e-Handbook 7.4.7.1 (data from memory; values confirmed with R).
TEST(Tukey, HandbookExample) {
  const auto one = named("nist_handbook_tukey");
  Groups groups;
  for (const auto& [name, values] : one.at("data").items()) {
    groups.push_back(values.get<std::vector<double>>());
  }
  const auto given = one.at("tukey_diff_lwr_upr_p");
  check(tukey(groups),
        {given["2-1"], given["3-1"], given["4-1"], given["3-2"], given["4-2"], given["4-3"]}, 5.5);
}

// Dunnett CW (1964) Biometrics 20:482-491, tables of two-sided 5 % points for equal
// counts, and (1955) one-sided ones: printed to two decimals; from memory.
TEST(Dunnett, PrintedTables) {
  const double equal = std::sqrt(0.5);
  const double inf = std::numeric_limits<double>::infinity();
  const auto two = [&](std::size_t k, double df) {
    return stats::dunnett_critical(0.05, std::vector<double>(k, equal), df);
  };
  const auto one = [&](std::size_t k, double df) {
    return stats::dunnett_critical(0.05, std::vector<double>(k, equal), df, false);
  };
  EXPECT_NEAR(two(2, 5), 3.03, 0.0051);
  EXPECT_NEAR(two(3, 20), 2.54, 0.0051);
  EXPECT_NEAR(two(4, 10), 2.89, 0.0051);
  EXPECT_NEAR(two(2, inf), 2.21, 0.0051);
  EXPECT_NEAR(two(9, inf), 2.69, 0.0051);
  EXPECT_NEAR(one(2, 5), 2.44, 0.0051);
  EXPECT_NEAR(one(3, 20), 2.19, 0.0051);
  EXPECT_NEAR(one(9, inf), 2.42, 0.0051);
}

// The plants once more; values of a simulation-based quadrature, 3 to 4 digits.
TEST(Dunnett, Plants) {
  const auto given = named("plantgrowth_tukey").at("dunnett_ci95");
  const auto anova = stats::one_way_anova(plants());
  const auto found = stats::dunnett(anova.means, {10, 10, 10}, 0, anova.within_ms, anova.within_df);
  EXPECT_NEAR(found.critical, given["quantile"], 2e-3);
  EXPECT_NEAR(found.comparisons.at(1).interval.low, given["trt2-ctrl"][1], 1e-3);
  EXPECT_NEAR(found.comparisons[1].interval.high, given["trt2-ctrl"][2], 1e-3);
}

} // namespace
} // namespace baize::stats_reference
