#include "baize/stats/distributions.h"
#include "baize/stats/studentized_range.h"
#include "reference/stats_agreement_data.h"

#include <cstdio>
#include <limits>

namespace {

using namespace baize;
using stats_reference::expect_close;

constexpr double kKnownError = std::numeric_limits<double>::infinity();

struct Row {
  int k = 0;
  double df = 0, p = 0, q = 0;
};

std::vector<Row> rows(const std::string& file) {
  std::ifstream in(stats_reference::data_file("distributions/" + file));
  EXPECT_TRUE(in) << file;
  std::vector<Row> all;
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    Row row;
    EXPECT_EQ(std::sscanf(line.c_str(), "%d,%lf,%lf,%lf", &row.k, &row.df, &row.p, &row.q), 4);
    all.push_back(row);
  }
  return all;
}

// Source: multi-precision reference file of a general-purpose library (read).
TEST(StudentizedRange, AgreesWithMultiPrecisionValues) {
  const auto given = stats_reference::read_json("distributions/studentized_range_cdf.json");
  for (const auto& one : given.at("cases")) {
    const double q = one.at("q");
    expect_close(stats::studentized_range_cdf(q, one.at("k"), one.at("df")), one.at("cdf"), 1e-13);
    expect_close(stats::studentized_range_quantile(one.at("cdf"), one.at("k"), one.at("df")), q,
                 1e-10);
    // The density printed there, by a central difference.
    const double h = 1e-4 * q;
    const double slope = (stats::studentized_range_cdf(q + h, one.at("k"), one.at("df")) -
                          stats::studentized_range_cdf(q - h, one.at("k"), one.at("df"))) /
                         (2 * h);
    for (const auto& density : given.at("pdf")) {
      if (density.at("q") == one.at("q")) {
        expect_close(slope, density.at("pdf"), 1e-6);
      }
    }
  }
  EXPECT_NEAR(stats::studentized_range_cdf(3.5, 3, 20), 0.9441081509, 5e-11);
}

// Source: studentized_range_quantiles.csv, R qtukey, whose own help states
// about 4 digits. Above 6 degrees of freedom it keeps six decimals; below,
// its errors grow (with 2 means and 2 degrees of freedom it gives 6.0796, where
// root 2 times Student's t gives 6.0849), so there only its probability is held.
TEST(StudentizedRange, AgreesWithTheWholeTableAsFarAsThatIsRight) {
  int exact = 0;
  for (const auto& row : rows("studentized_range_quantiles.csv")) {
    if (row.df > 6) {
      EXPECT_NEAR(stats::studentized_range_quantile(row.p, row.k, row.df), row.q, 1e-6)
          << row.k << ' ' << row.df << ' ' << row.p;
      ++exact;
    } else {
      EXPECT_NEAR(stats::studentized_range_cdf(row.q, row.k, row.df), row.p, 1.6e-3)
          << row.k << ' ' << row.df << ' ' << row.p;
    }
  }
  EXPECT_EQ(exact, 120);
}

// Source: studentized_range_small_df.csv, computed by another program with
// another rule; and printed tables, from memory.
TEST(StudentizedRange, AgreesWithAnotherRuleForFewDegreesOfFreedom) {
  const auto all = rows("studentized_range_small_df.csv");
  EXPECT_EQ(all.size(), 60);
  for (const auto& row : all) {
    EXPECT_NEAR(stats::studentized_range_quantile(row.p, row.k, row.df), row.q, 6e-7)
        << row.k << ' ' << row.df << ' ' << row.p;
  }
  EXPECT_NEAR(stats::studentized_range_critical(0.01, 9, 2), 30.68, 0.005);
  EXPECT_NEAR(stats::studentized_range_critical(0.05, 3, 10), 3.88, 0.005);
  EXPECT_NEAR(stats::studentized_range_critical(0.05, 4, 20), 3.96, 0.005);
  EXPECT_NEAR(stats::studentized_range_critical(0.05, 5, 30), 4.10, 0.005);
  EXPECT_NEAR(stats::studentized_range_critical(0.01, 3, 10), 5.27, 0.005);
}

// Source: exact. For two means Q is root 2 times the size of Student's t, and
// with a known error root 2 times that of a normal value: in both far tails.
TEST(StudentizedRange, OfTwoIsStudentsT) {
  for (const double q : {1e-6, 0.01, 1.0, 4.0, 30.0, 1e4}) {
    const double t = q / std::sqrt(2.0);
    // With one degree of freedom t is Cauchy's.
    expect_close(stats::studentized_range_upper(q, 2, 1), 2 * std::atan(1 / t) / M_PI, 1e-12);
    for (const double df : {2.0, 7.5, 39.0, 41.0, 500.0, 1e6}) {
      expect_close(stats::studentized_range_upper(q, 2, df), 2 * stats::t_upper(t, df), 1e-11);
    }
    // The middle of t, which is x from the incomplete beta function.
    for (const double df : {1.0, 7.5, 41.0}) {
      expect_close(stats::studentized_range_cdf(q, 2, df),
                   stats::beta_cdf(t * t / (df + t * t), 0.5, df / 2), 1e-11);
    }
  }
  for (const double q : {0.5, 3.0, 12.0, 40.0}) {
    expect_close(stats::studentized_range_upper(q, 2, kKnownError),
                 2 * stats::normal_upper(q / std::sqrt(2.0)), 1e-11);
  }
}

// Source: exact. Three normal values within w of each other: as w falls,
// W(w) tends to 3 w^2 times the integral of phi^3, which is 1 / (2 pi sqrt(3)).
TEST(StudentizedRange, FallsAsAPowerNearZero) {
  const double w = 1e-5;
  expect_close(stats::studentized_range_cdf(w, 3, kKnownError),
               3 * w * w / (2 * M_PI * std::sqrt(3.0)), 1e-9);
}

} // namespace
