// NIST Statistical Reference Datasets, linear regression and one-way analysis of
// variance (certified values read in a stored copy; confirmed by exact rational
// arithmetic).
#include "baize/stats/least_squares.h"
#include "baize/stats/one_way_anova.h"
#include "reference/stats_model_data.h"

namespace baize::stats_reference {
namespace {

/// Digits that the certified values must be met to; fewer for Filip, whose powers
/// rounded to double already differ from the decimal ones.
struct Set {
  std::string name;
  bool constant;
  int degree; ///< of the polynomial; 0: the predictors as they stand
  double digits;
};

class NistLinear : public testing::TestWithParam<Set> {};

stats::LeastSquaresFit fit(const nlohmann::json& data, const Set& set) {
  std::vector<stats::LeastSquaresRow> rows;
  for (const auto& cells : data.at("data")) {
    stats::LeastSquaresRow row{cells[0].get<double>(), {}};
    if (set.degree == 0) {
      for (std::size_t k = 1; k < cells.size(); ++k) {
        row.x.push_back(cells[k].get<double>());
      }
    }
    for (int power = 1; power <= set.degree; ++power) {
      row.x.push_back(std::pow(cells[1].get<double>(), power));
    }
    rows.push_back(row);
  }
  return stats::least_squares(rows, {set.constant});
}

TEST_P(NistLinear, MeetsTheCertifiedValues) {
  const Set& set = GetParam();
  const auto data = model_json("nist_strd/linear/" + set.name + ".json");
  const auto found = fit(data, set);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.coefficients.size(), data.at("certified").size());
  const double digits = set.digits;
  // Where the certified residuals are 0 there is only rounding to compare with.
  const double residual_sd = data.at("residual_sd");
  for (std::size_t k = 0; k < found.coefficients.size(); ++k) {
    const std::string what = set.name + " coefficient " + std::to_string(k);
    expect_digits(found.coefficients[k].value, data.at("certified")[k], digits, what);
    expect_digits(found.coefficients[k].standard_error, data.at("certified_sd")[k], digits,
                  what + " error");
  }
  expect_digits(found.residual_sd, residual_sd, digits, "residual sd");
  expect_digits(found.r_squared, data.at("r_squared"), digits, "R2");
  const auto& residual = data.at("residual_df_ss_ms");
  EXPECT_EQ(found.residual_df, residual[0].get<int>());
  expect_digits(found.residual_ss, residual[1], digits, "residual SS");
  const auto& regression = data.at("regression_df_ss_ms_F");
  EXPECT_EQ(found.regression_df, regression[0].get<int>());
  expect_digits(found.regression_ss, regression[1], digits, "regression SS");
  if (residual_sd > 0) {
    expect_digits(found.f.value_or(0), regression[3], digits, "F");
  }
}

INSTANTIATE_TEST_SUITE_P(Sets, NistLinear,
                         testing::Values(Set{"Norris", true, 0, 13}, Set{"NoInt1", false, 0, 14},
                                         Set{"Longley", true, 0, 13},
                                         Set{"Wampler1", true, 5, 11.5},
                                         Set{"Wampler2", true, 5, 12.5},
                                         Set{"Wampler4", true, 5, 10}, Set{"Filip", true, 10, 7}),
                         [](const auto& tested) { return tested.param.name; });

// Data written in double differ from the decimal ones in the 16th digit, which
// SmLs04t, 1000000.4 and the like, lifts to the 10th digit of F.
TEST(NistAnova, MeetsTheCertifiedValues) {
  for (const auto& [name, digits] :
       {std::pair{"SiRstvt", 12.5}, std::pair{"SmLs01t", 14.5}, std::pair{"SmLs04t", 9.5}}) {
    const auto data = model_json(std::string("nist_strd/anova/") + name + ".json");
    const auto found =
        stats::one_way_anova(data.at("groups").get<std::vector<std::vector<double>>>());
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    const auto& between = data.at("between_df_ss_ms_F");
    const auto& within = data.at("within_df_ss_ms");
    EXPECT_EQ(found.between_df, between[0].get<int>());
    expect_digits(found.between_ss, between[1], digits, name);
    expect_digits(found.between_ms, between[2], digits, name);
    expect_digits(found.f, between[3], digits, name);
    EXPECT_EQ(found.within_df, within[0].get<int>());
    expect_digits(found.within_ss, within[1], digits, name);
    expect_digits(found.within_ms, within[2], digits, name);
    expect_digits(found.r_squared, data.at("r_squared"), digits, name);
    expect_digits(found.residual_sd, data.at("residual_sd"), digits, name);
  }
}

} // namespace
} // namespace baize::stats_reference
