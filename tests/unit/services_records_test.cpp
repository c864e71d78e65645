// Expected values worked out by hand from the small clubs written here.
#include "baize/services/records_view.h"
#include "unit/services_club.h"

#include <gtest/gtest.h>

namespace baize::testing {
namespace {

using services::visit_detail;
using services::visit_page;
using services::VisitQuery;

green::Records five_days() {
  auto records = club_of(2);
  for (int i = 0; i < 5; ++i) {
    add_visit(records, "1", day(2025, 5, 1 + i), 80 + i, 2.9);
  }
  add_visit(records, "2", day(2025, 5, 3), 70);
  return records;
}

TEST(VisitPage, NewestFirstAndCut) {
  const auto records = five_days();
  VisitQuery query;
  query.offset = 1;
  query.limit = 2;
  const auto page = visit_page(records, query);
  ASSERT_TRUE(page);
  EXPECT_EQ(page->total, 6);
  ASSERT_EQ(page->visits.size(), 2U);
  EXPECT_EQ(page->visits[0].day, day(2025, 5, 4));
  EXPECT_DOUBLE_EQ(*page->visits[0].score, 8.3);
  EXPECT_EQ(page->visits[0].rolls, 16) << "ten in the total, three out, three back";
  EXPECT_EQ(page->visits[0].green_name, "Green 1");
  EXPECT_EQ(page->visits[1].green, "2") << "same day and time as green 1: the higher id first";
}

TEST(VisitPage, FiltersByGreenAndDays) {
  const auto records = five_days();
  VisitQuery query;
  query.green = "1";
  query.days = units::Period{day(2025, 5, 2), day(2025, 5, 3)};
  const auto page = visit_page(records, query);
  ASSERT_TRUE(page);
  EXPECT_EQ(page->total, 2);
  query.offset = 7;
  EXPECT_TRUE(visit_page(records, query)->visits.empty());
}

TEST(VisitPage, RefusesWhatItDoesNotKnow) {
  const auto records = five_days();
  EXPECT_EQ(visit_page(records, {"7", std::nullopt, 0, 10}).error().code, "no_such_green");
  EXPECT_EQ(visit_page(records, {"", std::nullopt, 0, 0}).error().code, "limit_out_of_range");
  EXPECT_EQ(visit_page(records, {"", std::nullopt, 0, 1001}).error().code, "limit_out_of_range");
  EXPECT_EQ(visit_page(records, {"", std::nullopt, -1, 10}).error().code, "offset_out_of_range");
}

TEST(VisitDetail, ShowsScoreSpeedAndRemarks) {
  auto records = five_days();
  green::Roll odd{4, std::nullopt, std::vector<green::Mark>{{green::MarkKind::bobble, {}}}, 9};
  records.visits[0].runs[1].rolls.push_back(odd); // a bobble allows 6 at most
  const auto detail = visit_detail(records, records.visits[0].id);
  ASSERT_TRUE(detail);
  EXPECT_EQ(detail->scored_rolls, 11);
  EXPECT_NEAR(*detail->score, 89.0 / 11, 1e-12);
  ASSERT_EQ(detail->spots.size(), 1U);
  ASSERT_TRUE(detail->spots[0].speed);
  EXPECT_NEAR(detail->spots[0].speed->speed_m, 2.9, 0.02);
  ASSERT_TRUE(detail->speed);
  EXPECT_EQ(detail->speed->spots, 1);
  EXPECT_DOUBLE_EQ(detail->speed->speed_m, detail->spots[0].speed->speed_m);
  EXPECT_EQ(detail->remarks.size(), 1U);
  EXPECT_EQ(visit_detail(records, "x").error().code, "no_such_visit");
}

} // namespace
} // namespace baize::testing
