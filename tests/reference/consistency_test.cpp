// Variance components and rank correlation against published data and R.
#include "baize/consistency/nested.h"
#include "baize/consistency/rank.h"

#include <gtest/gtest.h>

#include <array>

namespace {

using namespace baize::consistency;

// Strength of a paste, 10 batches of 3 casks of 2 assays: Davies and Goldsmith (1972)
// Statistical Methods in Research and Production, 4th ed., table 6.5, as in R's lme4
// (Pastes). By R's anova(lm(strength ~ batch + batch:cask)): mean squares 27.48919 (9),
// 17.54533 (20), 0.678 (30); lme4's REML gives the components to its own tolerance.
constexpr std::array kPastes{
    62.8, 62.6, 60.1, 62.3, 62.7, 63.1, 60.0, 61.4, 57.5, 56.9, 61.1, 58.9, 58.7, 57.5, 63.9,
    63.1, 65.4, 63.7, 57.1, 56.4, 56.9, 58.6, 64.7, 64.5, 55.1, 55.1, 54.7, 54.2, 58.8, 57.5,
    63.4, 64.9, 59.3, 58.1, 60.5, 60.0, 62.5, 62.6, 61.0, 58.7, 56.9, 57.7, 59.2, 59.4, 65.2,
    66.0, 64.8, 64.1, 54.8, 54.8, 64.0, 64.0, 57.7, 56.8, 58.3, 59.3, 59.2, 59.2, 58.9, 56.6};

TEST(ConsistencyReference, ComponentsOfThePastes) {
  std::vector<NestedValue> values;
  for (std::size_t i = 0; i < kPastes.size(); ++i) {
    values.push_back({{std::to_string(i / 6), std::to_string(i % 6 / 2)}, kPastes[i]});
  }
  const auto found = nested_components(values, {"batch", "cask", "assay"});
  ASSERT_TRUE(found.summary.usable);
  EXPECT_NEAR(found.levels[0].ms, 27.4891851851852, 1e-10);
  EXPECT_NEAR(found.levels[1].ms, 17.5453333333333, 1e-10);
  EXPECT_NEAR(found.levels[2].ms, 0.678, 1e-12);
  EXPECT_EQ(found.levels[1].df, 20);
  EXPECT_NEAR(found.levels[0].variance, 1.657308641975, 1e-10);
  EXPECT_NEAR(found.levels[1].variance, 8.433666666667, 1e-10);
  EXPECT_NEAR(found.levels[0].variance, 1.657310911834, 1e-5); // lme4
}

// R: cor(c(1,2,2,3,7,7,9), c(1,3,2,4,4,8,5), method = "spearman").
TEST(ConsistencyReference, RanksWithTies) {
  EXPECT_NEAR(*spearman({1, 2, 2, 3, 7, 7, 9}, {1, 3, 2, 4, 4, 8, 5}), 0.908295106229248, 1e-14);
}

} // namespace
