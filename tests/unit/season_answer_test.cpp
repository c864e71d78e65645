// The season model from the records to the answer that the API gives, on the demo
// club: held to its schema, and refused in one sentence where it cannot be.
#include "api_contract.h"
#include "baize/answers/season_checks.h"
#include "baize/answers/season_model.h"
#include "baize/demo/demo_club.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace baize {
namespace {

struct Fitted {
  demo::DemoClub club = demo::make();
  season::SeasonFit fit = services::season_fit(club.records, club.weather, club.today);
};

const Fitted& fitted() {
  static const Fitted made;
  return made;
}

TEST(SeasonAnswer, MeetsItsSchema) {
  const auto& [club, fit] = fitted();
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  for (const int year : {2023, 2025}) {
    const auto model = services::season_model(fit, club.records, "7", year);
    ASSERT_TRUE(model.has_value());
    EXPECT_EQ(contract::faults("SeasonModel", answers::text(answers::to_json(*model, fit))), "");
    EXPECT_THAT(model->sentence, ::testing::HasSubstr("open days"));
    EXPECT_EQ(model->estimates.days.size(), year == 2025 ? 365U + 60U : 365U);
  }
}

TEST(SeasonAnswer, SameRecordsSameBytes) {
  const auto& [club, fit] = fitted();
  const auto again = services::season_fit(club.records, club.weather, club.today);
  const auto first = services::season_model(fit, club.records, "3", 2024);
  const auto second = services::season_model(again, club.records, "3", 2024);
  ASSERT_TRUE(first && second);
  EXPECT_EQ(answers::text(answers::to_json(*first, fit)),
            answers::text(answers::to_json(*second, again)));
}

TEST(SeasonAnswer, RefusesWhatItCannotShow) {
  const auto& [club, fit] = fitted();
  EXPECT_EQ(services::season_model(fit, club.records, "99", 2025).error().code, "no_such_green");
  EXPECT_EQ(services::season_model(fit, club.records, "7", 2026).error().code, "no_such_year");
  green::Records empty = club.records;
  empty.visits.clear();
  const auto none = services::season_fit(empty, club.weather, club.today);
  EXPECT_EQ(services::season_model(none, empty, "7", 2025).error().code, "too_few_visits");
}

// The demo's greens come back with growth, whatever the calendar says, and its three
// years speak louder than any belief.
TEST(SeasonChecks, TellGrowthFromDays) {
  const auto& [club, fit] = fitted();
  const auto found = services::season_checks(fit, club.records, club.weather);
  ASSERT_TRUE(found.has_value());
  EXPECT_EQ(contract::faults("SeasonChecks", answers::text(answers::to_json(*found))), "");
  ASSERT_TRUE(found->checks.clocks.has_value());
  EXPECT_GT(found->checks.clocks->difference(), 2) << found->clocks;
  EXPECT_THAT(found->clocks, ::testing::HasSubstr("with growth rather than with days"));
  ASSERT_EQ(found->checks.leaning.size(), 2U);
  EXPECT_EQ(found->checks.leaning[0].methods.size(), fit.methods.size());
  EXPECT_GT(found->checks.leaning[0].most, 0);
  RecordProperty("surprises", found->surprises);
  RecordProperty("clocks", found->clocks);
  RecordProperty("leaning", found->leaning);
}

TEST(SeasonChecks, SurprisesOfAWrongModelAreNotChance) {
  season::SeasonFit fit = fitted().fit;
  const season::Surprises right = season::surprises_of(fit);
  EXPECT_TRUE(right.like_chance) << services::surprises_sentence(right);
  EXPECT_THAT(services::surprises_sentence(right), ::testing::HasSubstr("look like chance"));
  fit.parameters.visit_sd *= 3;
  fit.posterior = season::evaluate(fit.model, fit.options.priors, fit.parameters);
  const season::Surprises wide = season::surprises_of(fit);
  EXPECT_LT(wide.sd, 0.9);
  EXPECT_FALSE(wide.like_chance);
  EXPECT_THAT(services::surprises_sentence(wide), ::testing::HasSubstr("not chance alone"));
  fit = fitted().fit;
  fit.parameters.level_walk /= 10; // the level cannot follow: what is left goes together
  fit.posterior = season::evaluate(fit.model, fit.options.priors, fit.parameters);
  const season::Surprises stiff = season::surprises_of(fit);
  EXPECT_LT(stiff.in_line.p, 1e-6);
  EXPECT_FALSE(stiff.like_chance);
}

TEST(SeasonChecks, StopWhenAsked) {
  const auto& [club, fit] = fitted();
  std::vector<double> shares;
  const auto watch = [&](double done) {
    shares.push_back(done);
    return done < 0.5;
  };
  const auto half = services::season_fit(club.records, club.weather, club.today, watch);
  EXPECT_EQ(half.summary.termination, stats::Termination::stopped);
  EXPECT_FALSE(half.summary.usable);
  EXPECT_TRUE(half.draws.empty());
  EXPECT_GE(shares.back(), 0.5);
  EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
  EXPECT_EQ(services::season_model(half, club.records, "7", 2025).error().code, "stopped");
  const auto never = [](double) { return false; };
  EXPECT_EQ(services::season_checks(fit, club.records, club.weather, never).error().code,
            "stopped");
}

} // namespace
} // namespace baize
