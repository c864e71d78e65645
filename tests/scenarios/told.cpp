#include "scenarios/told.h"

#include "scenarios/scenario.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace baize::scenarios {
namespace {

using Json = nlohmann::json;

void same_number(const Row& row, const std::string& column, const Json& from,
                 const std::string& key) {
  const auto value = from.contains(key) ? std::optional(from[key].get<double>()) : std::nullopt;
  EXPECT_TRUE(agrees(row, column, value)) << "line " << row.line << ": " << column;
}

void same_text(const Row& row, const std::string& column, const Json& from) {
  const auto value =
      from.contains(column) ? std::optional(from[column].get<std::string>()) : std::nullopt;
  EXPECT_TRUE(agrees(row, column, value)) << "line " << row.line << ": " << column;
}

} // namespace

void expect_loss(const Row& row, const Json& loss) {
  same_text(row, "horizon", loss);
  same_text(row, "trough_day", loss);
  for (const char* column : {"standard", "before", "trough", "depth", "visits_after"}) {
    same_number(row, column, loss, column);
  }
  const Json area = loss.value("area", Json::object());
  same_number(row, "area", area, "score_days");
  same_number(row, "low", area, "low");
  same_number(row, "high", area, "high");
  same_number(row, "growth_area", area, "growth_score_days");
}

void expect_interval(const Row& row, const Json& loss) {
  const Json intervals = loss.value("recovery", Json::array());
  const auto found = std::find_if(intervals.begin(), intervals.end(), [&](const Json& one) {
    return one["definition"] == row.text("definition");
  });
  ASSERT_NE(found, intervals.end()) << "line " << row.line;
  same_text(row, "censoring", *found);
  same_text(row, "last_below", *found);
  same_text(row, "first_back", *found);
  same_number(row, "after_days", *found, "after_days");
  same_number(row, "by_days", *found, "by_days");
  same_number(row, "after_growth", *found, "after_growth_days");
  same_number(row, "by_growth", *found, "by_growth_days");
}

void expect_ledger(const Row& row, const Json& ledger) {
  for (const char* column : {"measured_true", "measured_not", "between_true", "unmeasured",
                             "closed", "open", "fewest_true", "most_true"}) {
    same_number(row, column, ledger, column);
  }
}

bool is_loss_of(const Row& row, const Json& loss) {
  return loss["work"] == row.text("work") && loss["green"] == row.text("green") &&
         loss["half"] == row.text("half");
}

std::string season_of(const Row& row, units::Day record_end) {
  const std::string year = row.text("first").substr(0, 4);
  const units::Day last = std::min(*units::parse_iso_day(year + "-12-31"), record_end);
  const units::Day asked = std::min(*units::parse_iso_day(row.text("last")), record_end);
  return row.text("first") == year + "-01-01" && asked == last ? year : std::string();
}

} // namespace baize::scenarios
