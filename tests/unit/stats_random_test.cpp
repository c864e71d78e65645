#include "baize/stats/distributions.h"
#include "baize/stats/random.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <set>
#include <vector>

namespace {

using namespace baize::stats;
using Words = std::array<std::uint32_t, 4>;

// The known answers published with the generator (Salmon et al. 2011, file
// kat_vectors, philox4x32 10; from memory, and no other input gives them).
TEST(Random, KnownAnswers) {
  EXPECT_EQ(philox({0, 0, 0, 0}, {0, 0}), (Words{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}));
  constexpr std::uint32_t kAll = 0xffffffff;
  EXPECT_EQ(philox({kAll, kAll, kAll, kAll}, {kAll, kAll}),
            (Words{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}));
  EXPECT_EQ(philox({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}),
            (Words{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}));
}

TEST(Random, TheFirstNumbersOfASeedNeverChange) {
  Random random(0);
  EXPECT_EQ(random.bits(), 0xe169c58d6627e8d5);
  EXPECT_EQ(random.bits(), 0x9b00dbd8bc57ac4c);
  Random other(42, 7);
  EXPECT_DOUBLE_EQ(other.uniform(), Random(42, 7).uniform());
}

TEST(Random, StreamsAndSeedsDiffer) {
  std::set<std::uint64_t> seen;
  for (std::uint64_t seed = 0; seed < 20; ++seed) {
    for (std::uint64_t stream = 0; stream < 20; ++stream) {
      Random random(seed, stream);
      for (int i = 0; i < 20; ++i) {
        seen.insert(random.bits());
      }
    }
  }
  EXPECT_EQ(seen.size(), 8000U);
}

// Bounds: five standard errors, so that a sound generator stays within them.
TEST(Random, UniformAndNormalHaveTheirMoments) {
  Random random(1);
  constexpr int kDraws = 200000;
  double uniform = 0;
  double uniform2 = 0;
  double first = 0;
  double second = 0;
  double fourth = 0;
  for (int i = 0; i < kDraws; ++i) {
    const double u = random.uniform();
    ASSERT_GT(u, 0);
    ASSERT_LT(u, 1);
    uniform += u;
    uniform2 += u * u;
    const double z = random.normal();
    first += z;
    second += z * z;
    fourth += z * z * z * z;
  }
  const double root = std::sqrt(kDraws);
  EXPECT_NEAR(uniform / kDraws, 1.0 / 2, 5 * std::sqrt(1.0 / 12) / root);
  EXPECT_NEAR(uniform2 / kDraws, 1.0 / 3, 5 * std::sqrt(4.0 / 45) / root);
  EXPECT_NEAR(first / kDraws, 0, 5 / root);
  EXPECT_NEAR(second / kDraws, 1, 5 * std::sqrt(2.0) / root);
  EXPECT_NEAR(fourth / kDraws, 3, 5 * std::sqrt(96.0) / root);
}

double chi_squared_p(const std::map<std::vector<int>, int>& counts, std::size_t cells, int draws) {
  const double expected = static_cast<double>(draws) / static_cast<double>(cells);
  double sum = expected * static_cast<double>(cells - counts.size()); // cells never met
  for (const auto& [cell, count] : counts) {
    sum += (count - expected) * (count - expected) / expected;
  }
  return chi_squared_upper(sum, static_cast<double>(cells) - 1);
}

TEST(Random, BelowAndShuffleAreFair) {
  Random random(3);
  std::map<std::vector<int>, int> faces;
  std::map<std::vector<int>, int> orders;
  constexpr int kDraws = 48000;
  for (int i = 0; i < kDraws; ++i) {
    ++faces[{static_cast<int>(random.below(7))}];
    std::vector<int> cards{1, 2, 3, 4};
    shuffle(cards, random);
    ++orders[cards];
  }
  EXPECT_EQ(faces.size(), 7U);
  EXPECT_GT(chi_squared_p(faces, 7, kDraws), 1e-4);
  EXPECT_EQ(orders.size(), 24U);
  EXPECT_GT(chi_squared_p(orders, 24, kDraws), 1e-4);
  EXPECT_EQ(random.below(0), 0U);
  EXPECT_EQ(random.below(1), 0U);
}

} // namespace
