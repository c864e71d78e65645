// The season model from the records to the answer that the API gives, on the demo
// club: held to its schema, and refused in one sentence where it cannot be.
#include "api_contract.h"
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

} // namespace
} // namespace baize
