// What a random layout promises, on drawn designs.
#include "baize/trials/design.h"
#include "baize/trials/walk.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <map>
#include <set>

namespace baize::trials {
namespace {

Design drawn() {
  Design design;
  design.trial = "law";
  design.layout = *rc::gen::element(Layout::completely_randomised, Layout::randomised_blocks,
                                    Layout::split_plot, Layout::strip_plot);
  const int t = *rc::gen::inRange(2, 9);
  for (int i = 0; i < t; ++i) {
    design.treatments.push_back("t" + std::to_string(i));
  }
  const bool two = design.layout == Layout::split_plot || design.layout == Layout::strip_plot;
  const int s = two ? *rc::gen::inRange(2, 6) : 0;
  for (int i = 0; i < s; ++i) {
    design.seconds.push_back("s" + std::to_string(i));
  }
  design.blocks = *rc::gen::inRange(2, 9);
  design.across = *rc::gen::inRange(0, 5);
  design.seed = *rc::gen::arbitrary<std::uint64_t>();
  return design;
}

RC_GTEST_PROP(TrialLaws, ALayoutBreaksNoRuleAndComesAgain, ()) {
  const Design design = drawn();
  const auto plan = lay_out(design);
  RC_ASSERT(plan.has_value());
  RC_ASSERT(!problem_of(*plan));
  RC_ASSERT(*plan == *lay_out(design));
  const std::size_t second = std::max<std::size_t>(1, design.seconds.size());
  RC_ASSERT(plan->plots.size() ==
            design.treatments.size() * second * static_cast<std::size_t>(design.blocks));
}

RC_GTEST_PROP(TrialLaws, NamesDoNotTouchTheLayout, ()) {
  Design design = drawn();
  const Plan plan = *lay_out(design);
  for (std::string& name : design.treatments) {
    name = "renamed " + name;
  }
  const Plan renamed = *lay_out(design);
  for (std::size_t i = 0; i < plan.plots.size(); ++i) {
    RC_ASSERT(renamed.plots[i].treatment == "renamed " + plan.plots[i].treatment);
    RC_ASSERT(renamed.plots[i].walk == plan.plots[i].walk);
  }
}

RC_GTEST_PROP(TrialLaws, AWalkTakesEveryPlotOnceAndTwoWalksAreFair, ()) {
  const Plan plan = *lay_out(drawn());
  const int visit = 2 * *rc::gen::inRange(0, 20) + 1;
  std::vector<std::size_t> places(plan.plots.size(), 0);
  for (const int one : {visit, visit + 1}) {
    const auto order = walk(plan, one);
    RC_ASSERT(std::set(order.begin(), order.end()).size() == plan.plots.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
      places[order[i]] += i;
    }
  }
  for (const std::size_t sum : places) {
    RC_ASSERT(sum == plan.plots.size() - 1); // the same mean place for each plot
  }
}

RC_GTEST_PROP(TrialLaws, AStepWithinABlockGoesToANeighbour, ()) {
  const Plan plan = *lay_out(drawn());
  const auto order = walk(plan, *rc::gen::inRange(1, 9));
  int jumps = 0;
  for (std::size_t i = 1; i < order.size(); ++i) {
    const Plot& a = plan.plots[order[i - 1]];
    const Plot& b = plan.plots[order[i]];
    const int steps = std::abs(a.row - b.row) + std::abs(a.column - b.column);
    jumps += a.block == b.block && steps > 1 ? 1 : 0;
  }
  // An unfilled last row may ask for one longer step in each block.
  RC_ASSERT(jumps <= static_cast<int>(blocks(plan).size()));
}

/// All orders of three treatments in a block: 6, each with chance 1/6. Over 6000
/// seeds chi-squared with 5 degrees of freedom stays below 20.5 in 999 of 1000
/// (table of chi-squared, any handbook); the seeds are fixed.
TEST(TrialLaws, AllOrdersAreAboutEquallyOften) {
  Design design;
  design.trial = "orders";
  design.treatments = {"a", "b", "c"};
  design.blocks = 2;
  std::map<std::string, int> orders;
  std::map<std::string, int> pairs; // of block 1 and 2: independent of each other
  for (std::uint64_t seed = 1; seed <= 6000; ++seed) {
    design.seed = seed;
    const Plan plan = *lay_out(design);
    std::string first;
    std::string second;
    for (std::size_t i = 0; i < 3; ++i) {
      first += plan.plots[i].treatment;
      second += plan.plots[i + 3].treatment;
    }
    ++orders[first];
    ++pairs[first + second];
  }
  const auto chi_squared = [](const std::map<std::string, int>& counts, double expected) {
    double sum = 0;
    for (const auto& [order, count] : counts) {
      sum += (count - expected) * (count - expected) / expected;
    }
    return sum;
  };
  ASSERT_EQ(orders.size(), 6U);
  EXPECT_LT(chi_squared(orders, 1000), 20.5);
  ASSERT_EQ(pairs.size(), 36U);
  EXPECT_LT(chi_squared(pairs, 6000.0 / 36), 66.6); // 35 degrees of freedom, 1 in 1000
}

} // namespace
} // namespace baize::trials
