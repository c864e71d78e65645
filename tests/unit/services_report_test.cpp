// Expected values worked out by hand from the small clubs written here.
#include "baize/services/report_data.h"
#include "unit/services_club.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace baize::testing {
namespace {

using services::report_data;

bool has(const std::vector<std::string>& sentences, const std::string& wanted) {
  return std::find(sentences.begin(), sentences.end(), wanted) != sentences.end();
}

green::Records two_greens() {
  auto records = club_of(2);
  for (int i = 0; i < 10; ++i) {
    add_visit(records, "1", day(2024, 5, 1 + 2 * i), 85);
    add_visit(records, "2", day(2024, 5, 1 + 2 * i), i < 5 ? 85 : 75, 2.9);
  }
  add_visit(records, "1", day(2025, 1, 3), 60); // after the year
  add_work(records, "closed", day(2024, 1, 10)).until = day(2024, 1, 12);
  return records;
}

TEST(ReportData, RefusesAYearThatHasNotBegun) {
  EXPECT_EQ(report_data(club_of(1), {}, 2026, day(2025, 12, 31)).error().code, "no_such_year");
  EXPECT_EQ(report_data(club_of(1), {}, 99, day(2025, 12, 31)).error().code, "no_such_year");
}

TEST(ReportData, AddsUpTheLedgers) {
  const auto report = report_data(two_greens(), {}, 2024, day(2025, 2, 1));
  ASSERT_TRUE(report);
  EXPECT_TRUE(report->year_ended);
  EXPECT_EQ(report->totals.greens, 2);
  EXPECT_EQ(report->totals.closed, 6);
  EXPECT_EQ(report->totals.measured_true, 15);
  EXPECT_EQ(report->totals.measured_not, 5);
  EXPECT_EQ(report->totals.open() + report->totals.closed, 2 * 366);
  // Green 1: nine days between ten true ones; green 2: four between five.
  EXPECT_EQ(report->totals.between_true, 13);
  EXPECT_EQ(report->basis.visits, 20);
  EXPECT_EQ(report->basis.observers, 1);
  EXPECT_EQ(report->basis.scored_rolls, 200);
  EXPECT_EQ(report->basis.measured_rolls, 60);
  EXPECT_EQ(report->basis.weather_days_missing, 366);
}

TEST(ReportData, LooksAtTheGreensAsOfTheYearsEnd) {
  const auto report = report_data(two_greens(), {}, 2024, day(2025, 2, 1));
  ASSERT_TRUE(report);
  EXPECT_EQ(report->greens.today, day(2024, 12, 31));
  EXPECT_DOUBLE_EQ(*report->greens.greens[0].score, 8.5) << "the visit of 2025 comes later";
}

TEST(ReportData, SpeaksPlainlyToTheCommittee) {
  const auto report = report_data(two_greens(), {}, 2024, day(2025, 2, 1));
  ASSERT_TRUE(report);
  EXPECT_TRUE(has(report->sentences, "Greens were scored on 20 open green-days (a green-day is one "
                                     "green on one day); on 15 of them (75 %) the green was at the "
                                     "standard."));
  EXPECT_TRUE(has(report->sentences,
                  "706 of 726 open green-days (97 %) were not scored, so true "
                  "green-days lie between 15 and 721; 13 of the unscored lie "
                  "between two true days with no disruptive work between them."));
  EXPECT_TRUE(has(report->sentences, "Most often at the standard when scored: Green 1 (10 of 10 "
                                     "scored days); least often: Green 2 (5 of 10 scored days)."));
  EXPECT_TRUE(has(report->sentences, "No disruptive work was done in 2024."));
  EXPECT_TRUE(has(report->sentences, "Fast but not true when last scored: Green 2."));
  EXPECT_TRUE(has(report->sentences,
                  "Greens were closed to play on 6 green-days; these are not counted as open."));
  EXPECT_TRUE(has(report->methods, "The figures rest on 20 visits by 1 observer: 200 rolls with a "
                                   "score and 60 rolls with a distance."));
}

TEST(ReportData, NamesTheCostliestWork) {
  auto records = club_of(1);
  add_work(records, "coring", day(2025, 5, 20));
  add_work(records, "verticutting", day(2025, 4, 20));
  const auto unknown = report_data(records, {}, 2025, day(2025, 7, 1));
  EXPECT_TRUE(has(unknown->sentences, "2 disruptive works were done in 2025; what they cost is not "
                                      "known, for want of scores before and after."));
  add_visit(records, "1", day(2025, 5, 15), 90);
  add_visit(records, "1", day(2025, 5, 22), 70);
  add_visit(records, "1", day(2025, 5, 30), 90);
  const auto report = report_data(records, {}, 2025, day(2025, 7, 1));
  ASSERT_TRUE(report);
  ASSERT_EQ(report->works.size(), 2U);
  EXPECT_EQ(report->works[0].work.kind, "verticutting");
  // 2 x 2 held back, then 8 x 1.
  EXPECT_TRUE(has(report->sentences,
                  "2 disruptive works were done in 2025; the costliest known was "
                  "coring on 20 May 2025: 12 score-days on 1 green."));
  EXPECT_TRUE(has(report->sentences, "The year is not over: figures run to 1 July 2025."));
}

TEST(ReportData, IsHonestAboutAnEmptyYear) {
  const auto report = report_data(club_of(1), {}, 2024, day(2025, 2, 1));
  ASSERT_TRUE(report);
  EXPECT_EQ(report->sentences.front(), "No green was scored on an open day in 2024, so nothing can "
                                       "be said about true days.");
  EXPECT_EQ(report_data(club_of(0), {}, 2024, day(2025, 2, 1))->sentences,
            std::vector<std::string>{"No green has been entered yet."});
}

TEST(ReportData, DoesNotHangOnTheOrderOfRecords) {
  auto records = two_greens();
  add_work(records, "coring", day(2024, 5, 10));
  const auto forth = report_data(records, {}, 2024, day(2025, 2, 1));
  std::reverse(records.visits.begin(), records.visits.end());
  std::reverse(records.works.begin(), records.works.end());
  const auto back = report_data(records, {}, 2024, day(2025, 2, 1));
  EXPECT_EQ(forth->sentences, back->sentences);
  EXPECT_EQ(forth->works[0].sentence, back->works[0].sentence);
  EXPECT_EQ(forth->greens.headline, back->greens.headline);
  EXPECT_EQ(forth->seasons[1].ledger.days, back->seasons[1].ledger.days);
}

} // namespace
} // namespace baize::testing
