#include "baize/stats/binomial.h"
#include "reference/stats_agreement_data.h"

namespace {

using namespace baize;

// Source: Newcombe RG (1998) Stat. Med. 17:857-872, Table I, printed to four
// places (memory; every interval confirmed in R).
TEST(BinomialIntervals, AgreeWithNewcombesTable) {
  const auto given = stats_reference::read_json("binomial/newcombe_1998.json");
  ASSERT_EQ(given.at("cases").size(), 3);
  for (const auto& one : given.at("cases")) {
    const int x = one.at("x");
    const int n = one.at("n");
    const auto exact = stats::clopper_pearson(x, n);
    ASSERT_TRUE(exact.summary.usable);
    EXPECT_NEAR(exact.interval.low, one.at("clopper_pearson")[0], 5.1e-5) << x << '/' << n;
    EXPECT_NEAR(exact.interval.high, one.at("clopper_pearson")[1], 5.1e-5) << x << '/' << n;
    const auto score = stats::wilson(x, n);
    ASSERT_TRUE(score.summary.usable);
    EXPECT_NEAR(score.interval.low, one.at("wilson")[0], 5.1e-5) << x << '/' << n;
    EXPECT_NEAR(score.interval.high, one.at("wilson")[1], 5.1e-5) << x << '/' << n;
  }
}

} // namespace
