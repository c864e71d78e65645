#include "baize/trials/design.h"
#include "baize/trials/walk.h"
#include "unit/trials_given.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace baize::trials {
namespace {

std::string code_of(const Design& design) {
  const auto plan = lay_out(design);
  return plan ? "" : plan.error().code;
}

TEST(TrialDesign, EachTreatmentOnceInEachBlock) {
  const auto plan = lay_out(three_by_four());
  ASSERT_TRUE(plan);
  ASSERT_EQ(plan->plots.size(), 12U);
  EXPECT_FALSE(problem_of(*plan));
  EXPECT_EQ(plan->plots[0].number, 101);
  EXPECT_EQ(plan->plots[11].number, 403);
  EXPECT_EQ(plan->plots[3].green, "5");
  std::map<int, std::set<std::string>> found;
  for (const Plot& plot : plan->plots) {
    found[plot.block].insert(plot.treatment);
  }
  for (const auto& [block, names] : found) {
    EXPECT_EQ(names.size(), 3U) << block;
  }
}

// The layout is part of the record of a trial: this one must never change.
TEST(TrialDesign, TheSameSeedGivesTheSamePlanForEver) {
  const auto plan = lay_out(three_by_four());
  ASSERT_TRUE(plan);
  std::string all;
  for (const Plot& plot : plan->plots) {
    all += std::to_string(plot.number) + plot.treatment[0] + std::to_string(plot.walk) + " ";
  }
  EXPECT_EQ(all, "101c1 102n2 103s3 201s4 202n5 203c6 301c9 302n8 303s7 401s10 402n11 403c12 ");
  EXPECT_EQ(*plan, *lay_out(three_by_four()));
  Design other = three_by_four();
  other.seed = 1;
  EXPECT_NE(lay_out(other)->plots, plan->plots);
}

TEST(TrialDesign, ABlockMoreLeavesTheOthersAsTheyWere) {
  Design more = three_by_four();
  more.blocks = 5;
  more.greens.push_back("16");
  const auto plan = lay_out(three_by_four());
  const auto longer = lay_out(more);
  ASSERT_TRUE(plan && longer);
  for (std::size_t i = 0; i < plan->plots.size(); ++i) {
    EXPECT_EQ(plan->plots[i].treatment, longer->plots[i].treatment);
  }
}

TEST(TrialDesign, WholePlotsAndStripsHoldOneTreatment) {
  for (const Layout layout : {Layout::split_plot, Layout::strip_plot}) {
    const auto plan = lay_out(split_of(layout));
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->plots.size(), 24U);
    EXPECT_FALSE(problem_of(*plan));
  }
}

TEST(TrialDesign, HalvesOfAGreenAreThePlots) {
  Design design = three_by_four();
  design.treatments = {"none", "coring"};
  design.halves = {"north", "south"};
  const auto plan = lay_out(design);
  ASSERT_TRUE(plan);
  for (std::size_t i = 0; i < plan->plots.size(); i += 2) {
    EXPECT_EQ(plan->plots[i].half, "north");
    EXPECT_EQ(plan->plots[i + 1].half, "south");
    EXPECT_EQ(plan->plots[i].green, plan->plots[i + 1].green);
  }
  design.layout = Layout::split_plot; // whole plots are the halves
  design.seconds = {"bare", "sand"};
  const auto split = lay_out(design);
  ASSERT_TRUE(split);
  EXPECT_EQ(split->plots[0].half, "north");
  EXPECT_EQ(split->plots[1].half, "north");
  EXPECT_EQ(split->plots[2].half, "south");
}

// By pencil from the classical tables: r blocks, t treatments, s second ones.
TEST(TrialDesign, ErrorDegreesOfFreedom) {
  const auto df = [](const Design& design) {
    std::vector<int> all;
    for (const ErrorDf& one : error_df(*lay_out(design))) {
      all.push_back(one.df);
    }
    return all;
  };
  EXPECT_EQ(df(three_by_four()), std::vector<int>({6}));
  EXPECT_EQ(df(split_of(Layout::split_plot)), std::vector<int>({6, 9, 9}));
  EXPECT_EQ(df(split_of(Layout::strip_plot)), std::vector<int>({6, 3, 6}));
  Design loose = three_by_four();
  loose.layout = Layout::completely_randomised;
  EXPECT_EQ(df(loose), std::vector<int>({9}));
}

TEST(TrialDesign, RefusesWithOneSentence) {
  const auto changed = [](auto change) {
    Design design = three_by_four();
    change(design);
    return code_of(design);
  };
  EXPECT_EQ(changed([](Design& d) { d.treatments = {"none"}; }), "option_out_of_range");
  EXPECT_EQ(changed([](Design& d) { d.treatments = {"none", "none"}; }), "name_twice");
  EXPECT_EQ(changed([](Design& d) { d.treatments = {"none", ""}; }), "name_missing");
  EXPECT_EQ(changed([](Design& d) { d.blocks = 1; }), "option_out_of_range");
  EXPECT_EQ(changed([](Design& d) { d.blocks = 41; }), "option_out_of_range");
  EXPECT_EQ(changed([](Design& d) { d.control = "other"; }), "no_such_control");
  EXPECT_EQ(changed([](Design& d) { d.greens = {"1", "2", "3"}; }), "greens_uneven");
  EXPECT_EQ(changed([](Design& d) { d.seconds = {"a", "b"}; }), "second_not_wanted");
  EXPECT_EQ(changed([](Design& d) { d.layout = Layout::split_plot; }), "no_second");
  EXPECT_EQ(changed([](Design& d) { d.halves = {"north", "south"}; }), "halves_do_not_fit");
  EXPECT_EQ(changed([](Design& d) { d.trial = ""; }), "name_missing");
  EXPECT_EQ(units::sentence(*[] {
              Design design = three_by_four();
              design.blocks = 1;
              return design.problem();
            }()),
            "blocks is '1', but must be 2 to 40: with one nothing tells chance from treatment.");
}

TEST(TrialWalk, GoesToAndFroAndBack) {
  Design design = three_by_four();
  design.across = 2; // two rows: 1 2 / 3
  const auto plan = lay_out(design);
  ASSERT_TRUE(plan);
  const auto first = walk(*plan, 1);
  auto second = walk(*plan, 2);
  std::reverse(second.begin(), second.end());
  EXPECT_EQ(first, second);
  for (std::size_t block = 0; block < 4; ++block) {
    std::set<int> numbers;
    for (std::size_t i = 0; i < 3; ++i) {
      numbers.insert(plan->plots[first[3 * block + i]].block);
    }
    EXPECT_EQ(numbers, std::set<int>({static_cast<int>(block) + 1}));
  }
  EXPECT_EQ(plan->plots[first.front()].walk, 1);
}

} // namespace
} // namespace baize::trials
