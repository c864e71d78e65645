// How far whole scores that end at 10 pull a mean down: the figures that
// docs/decisions/008-season-model.md rests on, summed over the ten scores.
#include "baize/stats/distributions.h"

#include <gtest/gtest.h>

namespace baize {
namespace {

double mean_score(double level, double sd) {
  double mean = 0;
  for (int score = 1; score <= 10; ++score) {
    const double from = score == 1 ? 0 : stats::normal_cdf((score - 0.5 - level) / sd);
    const double to = score == 10 ? 1 : stats::normal_cdf((score + 0.5 - level) / sd);
    mean += score * (to - from);
  }
  return mean;
}

TEST(SeasonClip, MattersOnlyNearTen) {
  EXPECT_NEAR(mean_score(8.5, 0.65) - 8.5, -0.001, 0.0005);
  EXPECT_NEAR(mean_score(9.0, 0.65) - 9.0, -0.011, 0.0005);
  EXPECT_NEAR(mean_score(9.5, 0.65) - 9.5, -0.063, 0.0005);
  EXPECT_NEAR(mean_score(5.0, 0.65) - 5.0, 0, 0.001);
  // Not a check that cannot fail: at 10 a third of a point is gone.
  EXPECT_LT(mean_score(10, 0.65) - 10, -0.2);
}

} // namespace
} // namespace baize
