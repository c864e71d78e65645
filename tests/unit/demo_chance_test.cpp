#include "random.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baize::demo {
namespace {

// First numbers of the splitmix64 generator from the state 0, as published with
// it (Steele, Lea, Flood 2014; the reference code's output); from memory.
TEST(Splitmix, GivesThePublishedNumbers) {
  std::uint64_t state = 0;
  EXPECT_EQ(splitmix(state), 0xE220A8397B1DCDAFULL);
  EXPECT_EQ(splitmix(state), 0x6E789E6AA1B965F4ULL);
}

TEST(Chance, StreamsAreTheirOwn) {
  Chance one(7, Purpose::level, {1, 2});
  Chance same(7, Purpose::level, {1, 2});
  Chance place(7, Purpose::level, {2, 1});
  Chance purpose(7, Purpose::speed, {1, 2});
  Chance seed(8, Purpose::level, {1, 2});
  const auto first = one.next();
  EXPECT_EQ(first, same.next());
  EXPECT_NE(first, place.next());
  EXPECT_NE(first, purpose.next());
  EXPECT_NE(first, seed.next());
}

TEST(Chance, NormalHasMeanZeroAndDeviationOne) {
  Chance chance(3, Purpose::notes, {});
  constexpr int kDraws = 40000;
  double sum = 0;
  double squares = 0;
  for (int i = 0; i < kDraws; ++i) {
    const double z = chance.normal();
    sum += z;
    squares += z * z;
  }
  // Five standard errors: 5 / sqrt(n) for the mean, 5 sqrt(2 / n) for the variance.
  EXPECT_NEAR(sum / kDraws, 0, 0.025);
  EXPECT_NEAR(squares / kDraws, 1, 0.036);
}

TEST(SteadyExp, AgreesWithTheLibrary) {
  for (double x = -20; x <= 5; x += 0.37) {
    EXPECT_NEAR(steady_exp(x) / std::exp(x), 1, 1e-12) << x;
  }
  EXPECT_EQ(steady_exp(0), 1);
}

} // namespace
} // namespace baize::demo
