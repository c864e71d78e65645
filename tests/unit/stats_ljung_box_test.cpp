#include "baize/stats/ljung_box.h"

#include <gtest/gtest.h>

#include <limits>

namespace baize {
namespace {

// By pencil: 1 -1 1 -1 1 -1 has mean 0 and sum of squares 6; products at lag 1 are
// five times -1, at lag 2 four times 1. r = -5/6, 4/6;
// Q = 6 x 8 x ((25/36)/5 + (16/36)/4) = 48 x (5/36 + 4/36) = 12.
TEST(LjungBox, ByPencil) {
  const auto found = stats::ljung_box({{1, -1, 1, -1, 1, -1}}, {2, 0});
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_DOUBLE_EQ(found.autocorrelation[0], -5.0 / 6);
  EXPECT_DOUBLE_EQ(found.autocorrelation[1], 4.0 / 6);
  EXPECT_DOUBLE_EQ(found.statistic, 12);
  EXPECT_EQ(found.df, 2);
  EXPECT_NEAR(found.p, 0.00247875217666636, 1e-15); // exp(-6)
}

// Two series are not one after the other: the product across the seam is left out.
TEST(LjungBox, SeriesDoNotTouch) {
  const auto apart = stats::ljung_box({{1, -1, 1}, {-1, 1, -1}}, {1, 0});
  ASSERT_TRUE(apart.summary.usable);
  EXPECT_DOUBLE_EQ(apart.autocorrelation[0], -4.0 / 6);
  EXPECT_DOUBLE_EQ(apart.statistic, 48.0 * (16.0 / 36) / 4);
}

TEST(LjungBox, Refuses) {
  EXPECT_EQ(stats::ljung_box({{1, 2, 3, 4}}, {2, 0}).summary.problem.code, "too_few");
  EXPECT_EQ(stats::ljung_box({{2, 2, 2, 2, 2}}, {1, 0}).summary.problem.code, "all_equal");
  EXPECT_EQ(stats::ljung_box({{1, 2, 3}}, {0, 0}).summary.problem.code, "option_out_of_range");
  EXPECT_EQ(stats::ljung_box({{1, 2, 3}}, {2, 2}).summary.problem.field, "fitted");
  const double infinite = std::numeric_limits<double>::infinity();
  EXPECT_EQ(stats::ljung_box({{1, infinite, 3}}, {1, 0}).summary.problem.code, "not_finite");
}

} // namespace
} // namespace baize
