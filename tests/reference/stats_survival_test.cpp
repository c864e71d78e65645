// Breast cosmesis: Finkelstein DM, Wolfe RA (1985) Biometrics 41:731-740 (data
// read in a package copy; masses by an own EM with the optimality condition
// checked, confirmed with R survival). Remission: Freireich EJ et al. (1963) Blood
// 21:699, Gehan EA (1965) (data from R MASS; confirmed with R survival). Diabetes:
// data of a public survival library; medians by R survival 3.5.3.
#include "baize/stats/kaplan_meier.h"
#include "baize/stats/turnbull.h"
#include "reference/stats_model_data.h"
#include "reference/stats_survival_data.h"

namespace baize::stats_reference {
namespace {

std::vector<stats::CensoredTime> times_of(const std::vector<SurvivalRow>& rows,
                                          const std::string& group) {
  std::vector<stats::CensoredTime> times;
  for (const SurvivalRow& row : rows) {
    if (group.empty() || row.group == group) {
      times.push_back(row.time);
    }
  }
  return times;
}

TEST(TurnbullReference, BreastCosmesis) {
  const auto expected = model_json("survival/breast_cosmesis_expected.json").at("npmle");
  for (const auto& [name, truth] : expected.items()) {
    const auto times = times_of(breast_cosmesis(), name == "pooled" ? "" : name);
    const auto found = stats::turnbull(times);
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    EXPECT_EQ(found.times, truth.at("n").get<int>());
    EXPECT_LE(found.optimality_gap, 1e-8);
    EXPECT_NEAR(found.log_likelihood, truth.at("loglik").get<double>(), 1e-9);
    ASSERT_EQ(found.support.size(), truth.at("support").size()) << name;
    for (std::size_t i = 0; i < found.support.size(); ++i) {
      const auto& set = truth.at("support")[i];
      EXPECT_EQ(found.support[i].left, set.at("left").get<double>());
      EXPECT_EQ(found.support[i].right, set.at("right").get<double>());
      EXPECT_NEAR(found.support[i].mass, set.at("mass").get<double>(), 1e-8) << name << i;
    }
  }
}

// The masses as printed (U2: Fay MP, Shaw PA (2010) J. Stat. Softw. 36(2)), and
// the share of 0.9537 left after 5 of that article (read).
TEST(TurnbullReference, BreastCosmesisAsPrinted) {
  const auto expected = model_json("survival/breast_cosmesis_expected.json");
  const auto found = stats::turnbull(times_of(breast_cosmesis(), "Rad"));
  const auto& printed = expected.at("published_masses_Rad_4_digits");
  ASSERT_EQ(found.support.size(), printed.size());
  for (std::size_t i = 0; i < printed.size(); ++i) {
    EXPECT_NEAR(found.support[i].mass, printed[i].get<double>(), 5.1e-5);
  }
  EXPECT_NEAR(stats::turnbull_survival(found, 5)->low, 0.9537, 5e-5);
}

TEST(TurnbullReference, DiabetesMedians) {
  for (const auto& [group, median] : {std::pair{"female", 15.0}, std::pair{"male", 17.0}}) {
    const auto found = stats::turnbull(times_of(interval_diabetes(), group));
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    const auto range = stats::turnbull_quantile(found, 0.5);
    EXPECT_EQ(range->low, median) << group;
    EXPECT_EQ(range->high, median) << group;
  }
}

std::vector<stats::FollowUp> follow_ups(const std::string& group) {
  std::vector<stats::FollowUp> result;
  for (const SurvivalRow& row : remission()) {
    if (row.group == group) {
      result.push_back({row.time.left, row.time.exact()});
    }
  }
  return result;
}

TEST(KaplanMeierReference, Remission) {
  const auto expected = model_json("survival/remission_6mp_expected.json");
  for (const auto& [group, key] :
       {std::pair{"6-MP", "km_6MP"}, std::pair{"control", "km_control"}}) {
    const auto found = stats::kaplan_meier(follow_ups(group));
    const auto& truth = expected.at(key);
    ASSERT_EQ(found.steps.size(), truth.at("time").size());
    for (std::size_t i = 0; i < found.steps.size(); ++i) {
      EXPECT_EQ(found.steps[i].time, truth.at("time")[i].get<double>());
      EXPECT_NEAR(found.steps[i].survival, truth.at("survival")[i].get<double>(), 5.1e-9);
      if (truth.contains("n_risk")) {
        EXPECT_EQ(found.steps[i].at_risk, truth.at("n_risk")[i].get<int>());
        EXPECT_NEAR(found.steps[i].standard_error, truth.at("greenwood_se")[i].get<double>(),
                    5.1e-10);
      }
    }
    EXPECT_EQ(found.median, expected.at("median").at(group).get<double>());
  }
}

TEST(LogRankReference, Remission) {
  const auto truth = model_json("survival/remission_6mp_expected.json").at("logrank");
  const auto found = stats::log_rank(follow_ups("6-MP"), follow_ups("control"));
  ASSERT_TRUE(found.summary.usable);
  EXPECT_EQ(found.observed_first, truth.at("observed_6MP").get<int>());
  EXPECT_NEAR(found.expected_first, truth.at("expected_6MP").get<double>(), 5.1e-7);
  EXPECT_NEAR(found.chi_squared, truth.at("chisq").get<double>(), 1e-9);
  EXPECT_NEAR(found.p, truth.at("p").get<double>(), 5.1e-11);
}

} // namespace
} // namespace baize::stats_reference
