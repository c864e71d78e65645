#include "unit/green_samples.h"

namespace {

using namespace baize;

TEST(Remarks, NoneWhereAllIsWell) {
  EXPECT_TRUE(remarks(samples::visit()).empty());
}

TEST(Remarks, AScoreItsMarksContradict) {
  auto v = samples::visit();
  v.runs[0].rolls[0].marks = {{green::MarkKind::bobble, {}}};
  v.runs[0].rolls[0].score = 8;
  const auto found = remarks(v);
  samples::expect_only(found, "score_against_marks");
  EXPECT_EQ(units::remark_sentence(found[0]),
            "spot A out roll 1: score is '8'; expected 1 to 6 by the marks of the roll.");
  EXPECT_TRUE(validate(v, samples::kToday).empty()) << "pointed out, not refused";
}

TEST(Remarks, MarksNotNotedContradictNothing) {
  auto v = samples::visit();
  v.runs[0].rolls[0].marks.reset();
  v.runs[0].rolls[0].score = 3;
  EXPECT_TRUE(remarks(v).empty());
}

TEST(Remarks, ThreeBallsTooFarApart) {
  auto v = samples::visit();
  // 3.00 to 3.2032 m is 20.32 cm: just within. A millimetre more is not.
  v.runs[0].rolls[2].distance = units::from_metres(3.2032);
  EXPECT_TRUE(remarks(v).empty());
  v.runs[0].rolls[2].distance = units::from_metres(3.2042);
  samples::expect_only(remarks(v), "rolls_spread");
  v.runs[0].rolls[1].distance.reset();
  EXPECT_TRUE(remarks(v).empty()) << "two balls are no run of three";
}

TEST(Remarks, ATotalItsRollsDoNotGive) {
  auto v = samples::visit();
  v.runs[0].total_of = 3;
  v.runs[0].total = 28; // 9 + 9 + 10
  EXPECT_TRUE(remarks(v).empty());
  v.runs[0].total = 27;
  samples::expect_only(remarks(v), "total_against_scores");
  v.runs[0].rolls[0].score.reset(); // not all are written down: nothing to compare
  EXPECT_TRUE(remarks(v).empty());
}

} // namespace
