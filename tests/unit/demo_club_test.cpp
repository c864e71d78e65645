#include "baize/green/roll_score.h"
#include "baize/green/validate.h"
#include "unit/demo_print.h"

#include <gtest/gtest.h>

#include <fstream>
#include <map>
#include <set>
#include <sstream>

namespace baize::testing {
namespace {

TEST(DemoClub, SameSeedSameClub) {
  const demo::DemoClub again = demo::make();
  EXPECT_TRUE(again.records == demo_club().records);
  EXPECT_TRUE(again.weather == demo_club().weather);
  EXPECT_TRUE(truth_json(again.truth) == truth_json(demo_club().truth));
  EXPECT_FALSE(demo::make(demo::kDemoSeed + 1).records == again.records);
}

// The club that everybody sees is a committed one: any change to it is meant.
TEST(DemoClub, IsTheCommittedOne) {
  EXPECT_EQ(fingerprint(print(demo_club().records)), 2088216506004569915ULL);
  std::ifstream in(BAIZE_SOURCE_DIR "/demo/truth.json");
  std::ostringstream text;
  text << in.rdbuf();
  EXPECT_TRUE(text.str() == truth_json(demo_club().truth)) << "demo/truth.json is another club's";
}

// Published check value of FNV-1a, 64 bit, for "a"; from memory.
TEST(Fingerprint, IsFnv) {
  EXPECT_EQ(fingerprint("a"), 0xAF63DC4C8601EC8CULL);
}

TEST(DemoClub, IsValid) {
  const auto& club = demo_club();
  for (const units::Problem& problem : green::validate(club.records, club.today)) {
    ADD_FAILURE() << units::sentence(problem);
  }
}

TEST(DemoClub, IsOfTheSizeItSays) {
  const auto& records = demo_club().records;
  EXPECT_EQ(records.greens.size(), 19U);
  EXPECT_EQ(records.observers.size(), 4U);
  std::set<std::string> mixes;
  for (const green::Green& green : records.greens) {
    mixes.insert(green.grass_mix);
    EXPECT_GE(green.spots.size(), 2U);
    EXPECT_LE(green.spots.size(), 3U);
  }
  EXPECT_EQ(mixes.size(), 2U);
  std::set<std::string> kinds;
  int disruptive = 0;
  int on_halves = 0;
  int on_some = 0;
  int closings = 0;
  for (const green::Work& work : records.works) {
    closings += green::class_of(work) == green::WorkClass::closing ? 1 : 0;
    if (green::class_of(work) == green::WorkClass::disruptive) {
      ++disruptive;
      on_halves += work.half.empty() ? 0 : 1;
      on_some += work.greens.empty() ? 0 : 1;
      kinds.insert(work.kind);
    }
  }
  EXPECT_GE(disruptive, 12);
  EXPECT_GE(kinds.size(), 6U);
  EXPECT_GE(on_halves, 2);
  EXPECT_GE(on_some, 5);
  EXPECT_GE(closings, 5);
  EXPECT_GE(records.fixtures.size(), 20U);
  EXPECT_GE(records.readings.size(), 1000U);
}

TEST(DemoClub, IsMeasuredOftenInSeasonAndLittleInWinter) {
  std::map<std::string, std::set<units::Day>> season;
  std::map<std::string, std::set<units::Day>> winter;
  std::size_t rolls = 0;
  for (const green::Visit& visit : demo_club().records.visits) {
    const int month = units::year_month_day(visit.day).month;
    (month >= 4 && month <= 10 ? season : winter)[visit.green].insert(visit.day);
    for (const green::Run& run : visit.runs) {
      rolls += run.rolls.size();
    }
  }
  EXPECT_GE(rolls, 30000U);
  EXPECT_LE(rolls, 150000U);
  ASSERT_EQ(season.size(), 19U);
  // 214 days from April to October, three years.
  constexpr double kWeeks = 3 * 214 / 7.0;
  for (const auto& [green, days] : season) {
    const double a_week = static_cast<double>(days.size()) / kWeeks;
    EXPECT_GE(a_week, green == "practice" ? 0.4 : 1.0) << green;
    EXPECT_LE(a_week, 3.0) << green;
    EXPECT_LT(winter[green].size() * 2, days.size()) << green;
  }
}

TEST(DemoClub, ScoresAndDistancesAreOfTheTrade) {
  std::map<int, int> scores;
  int scored = 0;
  int contradicting = 0;
  int timed = 0;
  for (const green::Visit& visit : demo_club().records.visits) {
    for (const green::Run& run : visit.runs) {
      for (const green::Roll& roll : run.rolls) {
        if (roll.score) {
          ++scored;
          ++scores[*roll.score];
          contradicting += green::contradicts(roll) ? 1 : 0;
        }
        for (const green::Mark& mark : roll.marks.value_or(std::vector<green::Mark>{})) {
          timed += mark.seconds ? 1 : 0;
        }
      }
    }
  }
  EXPECT_GT(scores[5] + scores[6] + scores[7] + scores[8] + scores[9], scored * 95 / 100);
  EXPECT_GT(contradicting, 0);
  EXPECT_LT(contradicting, scored / 100) << "rare";
  EXPECT_GT(timed, 5000);
  const auto& truth = demo_club().truth;
  for (const demo::GreenTruth& green : truth.greens) {
    for (const double speed : green.speed_m) {
      EXPECT_GE(speed, 2.3) << green.green;
      EXPECT_LE(speed, 3.5) << green.green;
    }
  }
}

TEST(DemoClub, ObserversKeepTheirHabits) {
  std::map<std::string, int> totals;
  std::map<std::string, int> speed_only;
  for (const green::Visit& visit : demo_club().records.visits) {
    bool scored = false;
    for (const green::Run& run : visit.runs) {
      totals[visit.observer] += run.total ? 1 : 0;
      scored = scored || green::score_sum(run);
      if (visit.observer == "sb") {
        EXPECT_TRUE(run.total);
      }
    }
    speed_only[visit.observer] += scored ? 0 : 1;
  }
  EXPECT_EQ(totals["mt"] + totals["ro"] + totals["tq"], 0);
  EXPECT_GT(totals["sb"], 0);
  EXPECT_GT(speed_only["tq"], 20);
  EXPECT_EQ(speed_only["mt"], 0);
}

TEST(DemoClub, NobodyMeasuresAClosedGreen) {
  const auto& records = demo_club().records;
  for (const green::Work& work : records.works) {
    if (green::class_of(work) != green::WorkClass::closing) {
      continue;
    }
    for (const green::Visit& visit : records.visits) {
      EXPECT_FALSE(work.day <= visit.day && visit.day <= *work.until) << visit.id;
    }
  }
}

} // namespace
} // namespace baize::testing
