// A trial on the halves of greens, measured with the club's ordinary visits.
#include "baize/services/trial_rolls.h"
#include "baize/sheets/trial_csv.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace baize {
namespace {

const units::Day kTreated = *units::make_day(2025, 4, 1);

trials::Plan halves(int greens) {
  trials::Plan plan;
  plan.trial = "Halves";
  plan.seed = 1;
  plan.control = "none";
  for (int block = 1; block <= greens; ++block) {
    for (const char* half : {"north", "south"}) {
      trials::Plot plot;
      plot.number = static_cast<int>(plan.plots.size()) + 1;
      plot.block = block;
      plot.treatment = (std::string(half) == "north") == (block % 2 == 1) ? "coring" : "none";
      plot.green = std::to_string(block);
      plot.half = half;
      plan.plots.push_back(plot);
    }
  }
  return plan;
}

/// Greens are seen on different days, each every four days. A cored half falls by 3
/// and is back after about two weeks.
green::Records club_of(const trials::Plan& plan, int greens) {
  green::Records club;
  club.club.id = "c";
  for (int g = 1; g <= greens; ++g) {
    green::Green green;
    green.id = std::to_string(g);
    green.halves = {"north", "south"};
    green.spots = {{"N", {}, "north"}, {"S", {}, "south"}};
    club.greens.push_back(green);
    for (int day = g % 4 - 12; day <= 40; day += 4) {
      green::Visit visit;
      visit.id = green.id + "/" + std::to_string(day);
      visit.green = green.id;
      visit.observer = "a";
      visit.day = kTreated + day;
      for (const char* spot : {"N", "S"}) {
        const trials::Plot& plot =
            plan.plots[static_cast<std::size_t>(2 * (g - 1) + (*spot == 'N' ? 0 : 1))];
        const bool cored = plot.treatment == "coring" && day > 0;
        const int fall = !cored ? 0 : day < 8 ? 3 : day < 12 + g ? 2 : 0;
        green::Run run;
        run.spot = spot;
        for (int ball = 1; ball <= 3; ++ball) {
          green::Roll roll;
          roll.order = ball;
          roll.score = 9 - fall - (ball + g + day + 12) % 2;
          run.rolls.push_back(roll);
        }
        visit.runs.push_back(run);
      }
      club.visits.push_back(visit);
    }
  }
  for (const trials::Plot& plot : plan.plots) {
    if (plot.treatment == "coring") {
      green::Work work;
      work.id = "coring/" + plot.green;
      work.kind = "coring";
      work.day = kTreated;
      work.greens = {plot.green};
      work.half = plot.half;
      club.works.push_back(work);
    }
  }
  return club;
}

services::TrialAnswer ask(const trials::Plan& plan, const green::Records& club,
                          const services::TrialRollsOptions& options = {}) {
  const sheets::TrialCsv files;
  return services::analyse_trial_rolls({"trial.csv", files.write_plan(plan)}, club, kTreated + 60,
                                       options, files);
}

TEST(TrialRolls, TheClubsOwnVisitsAnswer) {
  const auto plan = halves(4);
  const auto answer = ask(plan, club_of(plan, 4));
  ASSERT_TRUE(answer.review) << answer.problems.front().code;
  const trials::Analysis& analysis = answer.review->analysis;
  ASSERT_TRUE(analysis.summary.usable) << analysis.summary.message;
  EXPECT_EQ(analysis.overall.lost, 0) << "ends are bridged, no plot is lost";
  const trials::Pair& pair = analysis.overall.comparisons.at(0).pairs.at(0);
  EXPECT_GT(std::abs(pair.difference), 0.5);
  EXPECT_LT(pair.p_among_all, 0.05);
  ASSERT_TRUE(analysis.back.has_value());
  EXPECT_EQ(analysis.back->plots.size(), 8U);
  EXPECT_THAT(answer.review->notes.front(), ::testing::HasSubstr("treated on 1 April 2025"));
  EXPECT_THAT(answer.review->sentence, ::testing::HasSubstr("higher than coring"));
}

TEST(TrialRolls, TheNextWorkEndsIt) {
  const auto plan = halves(4);
  green::Records club = club_of(plan, 4);
  green::Work next;
  next.id = "next";
  next.kind = "scarifying"; // on all plots alike: no treatment
  next.day = kTreated + 21;
  club.works.push_back(next);
  const auto answer = ask(plan, club);
  ASSERT_TRUE(answer.review);
  EXPECT_THAT(answer.review->notes.front(), ::testing::HasSubstr("up to 21 April 2025"));
  services::TrialRollsOptions options;
  options.until = kTreated + 30;
  EXPECT_THAT(ask(plan, club, options).review->notes.front(),
              ::testing::HasSubstr("up to 1 May 2025"));
}

TEST(TrialRolls, RefusesWhatRollsCannotTell) {
  const auto good = halves(4);
  const green::Records club = club_of(good, 4);
  const auto code = [&](const trials::Plan& plan, const green::Records& records) {
    const auto answer = ask(plan, records);
    return answer.problems.empty() ? std::string() : answer.problems.front().code;
  };
  trials::Plan plan = good;
  plan.plots[0].green = "99";
  EXPECT_EQ(code(plan, club), "no_such_green");
  plan.plots[0].green = "";
  EXPECT_EQ(code(plan, club), "plot_without_place");
  plan = good;
  plan.plots[0].half = "west";
  EXPECT_EQ(code(plan, club), "no_such_half");
  plan = good;
  plan.plots[0].half = "south";
  EXPECT_EQ(code(plan, club), "plots_share_place");
  plan.plots[0].half = "";
  EXPECT_EQ(code(plan, club), "plots_share_place");
  green::Records idle = club;
  idle.works.clear();
  EXPECT_EQ(code(good, idle), "no_treatment_day");
  green::Records unseen = club;
  unseen.visits.clear();
  EXPECT_EQ(code(good, unseen), "no_records");
}

} // namespace
} // namespace baize
