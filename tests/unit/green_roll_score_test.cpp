#include "baize/green/roll_score.h"

#include <gtest/gtest.h>

#include <limits>

namespace {

using namespace baize::green;
using GreenRun = baize::green::Run; // within a test, Run is the test's own

GreenRun scored(std::initializer_list<int> scores) {
  GreenRun run;
  for (const int score : scores) {
    Roll roll;
    roll.order = static_cast<int>(run.rolls.size()) + 1;
    roll.score = score;
    run.rolls.push_back(roll);
  }
  return run;
}

TEST(RollScore, MarksAreCountedByKind) {
  const auto n = count({{MarkKind::snake, {}},
                        {MarkKind::bobble, 0.8},
                        {MarkKind::snake, 1.0},
                        {MarkKind::chatter, {}},
                        {MarkKind::snake, {}}});
  EXPECT_EQ(n.bobbles, 1);
  EXPECT_EQ(n.chatters, 1);
  EXPECT_EQ(n.snakes, 3);
}

TEST(RollScore, AnyCountMeetsARule) {
  const int most = std::numeric_limits<int>::max();
  EXPECT_EQ(offer({most, most, most}), (Offer{5, 1, 5}));
  EXPECT_EQ(offer({0, most, most}), (Offer{6, 6, 7}));
}

TEST(RollScore, SumsLeaveOutWhatWasNotScored) {
  GreenRun run = scored({8, 9, 7});
  run.rolls[1].score.reset();
  const auto sum = score_sum(run);
  EXPECT_EQ(sum->total, 15);
  EXPECT_EQ(sum->rolls, 2);
  EXPECT_DOUBLE_EQ(sum->mean(), 7.5);
  EXPECT_FALSE(score_sum(GreenRun{}));
  EXPECT_FALSE(score_sum(std::vector<GreenRun>{}));
}

TEST(RollScore, ATotalStandsWhereNoRollHasAScore) {
  GreenRun run;
  run.total = 24;
  run.total_of = 3;
  EXPECT_EQ(score_sum(run)->rolls, 3);
  EXPECT_EQ(score_sum(run)->mean(), 8);
  run.total_of = 0;
  EXPECT_FALSE(score_sum(run)) << "nothing is divided by no rolls";
  GreenRun both = scored({8, 9});
  both.total = 24;
  both.total_of = 3;
  EXPECT_EQ(score_sum(both)->total, 17) << "rolls that are there go before their total";
}

TEST(RollScore, EachRollCountsOnce) {
  // 8 9 7 and a single 4: 28 over 4 rolls is 7, not the mean 6 of the runs' means 8 and 4.
  const auto sum = score_sum({scored({8, 9, 7}), scored({4})});
  EXPECT_EQ(sum->rolls, 4);
  EXPECT_DOUBLE_EQ(sum->mean(), 7);
}

TEST(RollScore, AContradictionNeedsBothMarksAndScore) {
  Roll roll;
  EXPECT_FALSE(contradicts(roll));
  roll.score = 3;
  EXPECT_FALSE(contradicts(roll)) << "marks not noted";
  roll.marks.emplace();
  EXPECT_TRUE(contradicts(roll)) << "watched, nothing seen, and yet 3";
  roll.score = 10;
  EXPECT_FALSE(contradicts(roll));
}

} // namespace
