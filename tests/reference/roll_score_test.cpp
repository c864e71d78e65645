// The rules of the roll score: common practice, no source. Every case of the
// data file is checked.
#include "baize/green/roll_score.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>

namespace {

using namespace baize::green;

nlohmann::json data() {
  std::ifstream in(BAIZE_SOURCE_DIR "/tests/reference/data/roll_score/event_rule_cases.json");
  return nlohmann::json::parse(in);
}

TEST(RollScoreRules, EveryReferenceCase) {
  const auto all = data();
  int checked = 0;
  for (const auto& one : all["cases"]) {
    SCOPED_TRACE(one["id"].get<std::string>());
    const Offer offered = offer({one["bobbles"], one["chatters"], one["snakes"]});
    EXPECT_EQ(offered.score, one["offered"]);
    if (one.contains("band")) {
      EXPECT_EQ(offered.lowest, one["band"][0]);
      EXPECT_EQ(offered.highest, one["band"][1]);
    } else {
      EXPECT_EQ(offered.highest, one["score_max"]);
    }
    ++checked;
  }
  EXPECT_EQ(checked, 8);
}

Run scored(const nlohmann::json& scores) {
  Run run;
  for (const int score : scores) {
    Roll roll;
    roll.score = score;
    run.rolls.push_back(roll);
  }
  return run;
}

TEST(RollScoreRules, WorkedTotals) {
  const auto all = data();
  const auto& one = all["worked_totals"][0];
  EXPECT_EQ(score_sum(scored(one["scores"]))->total, one["direction_total"]);
  const auto& two = all["worked_totals"][1];
  const auto spot = score_sum({scored(two["scores_a"]), scored(two["scores_b"])});
  EXPECT_EQ(spot->total, two["spot_total"]);
  EXPECT_DOUBLE_EQ(spot->mean(), two["spot_mean"]);
}

TEST(RollScoreRules, AScoreOutsideTheBandIsPointedOut) {
  const auto all = data();
  for (const auto& one : all["cases"]) {
    Roll roll;
    roll.marks.emplace();
    for (int i = 0; i < one["bobbles"]; ++i) {
      roll.marks->push_back({MarkKind::bobble, {}});
    }
    for (int i = 0; i < one["chatters"]; ++i) {
      roll.marks->push_back({MarkKind::chatter, {}});
    }
    for (int i = 0; i < one["snakes"]; ++i) {
      roll.marks->push_back({MarkKind::snake, {}});
    }
    const int highest = one.contains("band") ? one["band"][1] : one["score_max"];
    roll.score = one["offered"];
    EXPECT_FALSE(contradicts(roll)) << one["id"];
    roll.score = highest + 1;
    EXPECT_TRUE(contradicts(roll)) << one["id"];
  }
}

} // namespace
