// The text tables of tests/scenarios, asked of the command line: it must give
// the same figures as the core.
#include "scenarios/scenario.h"
#include "unit/cli_bench.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace cli_bench {
namespace {

using Json = nlohmann::json;
using scenarios::Row;

class CliScenarios : public testing::TestWithParam<std::filesystem::path> {
 protected:
  void SetUp() override {
    scenario = scenarios::read_scenario(GetParam()).value();
    const std::string club = scenario.records.club.id;
    bench.store.records[club] = scenario.records;
    bench.store.kept_weather[club] = scenario.weather;
    bench.ports.today = scenario.record_end;
  }

  Json answer(std::vector<std::string> words) {
    words.emplace_back("--json");
    EXPECT_EQ(bench.run(words), 0) << bench.err();
    return Json::parse(bench.out());
  }

  Json loss_of(const Row& row) {
    const Json told = answer({"recovery", "--green", row.text("green")});
    for (const Json& loss : told["losses"]) {
      if (loss["work"] == row.text("work") && loss["half"] == row.text("half")) {
        return loss;
      }
    }
    ADD_FAILURE() << "line " << row.line << ": no such loss";
    return Json::object();
  }

  static void same_number(const Row& row, const std::string& column, const Json& from,
                          const std::string& key) {
    const auto value = from.contains(key) ? std::optional(from[key].get<double>()) : std::nullopt;
    EXPECT_TRUE(agrees(row, column, value)) << "line " << row.line << ": " << column;
  }
  static void same_text(const Row& row, const std::string& column, const Json& from) {
    const auto value =
        from.contains(column) ? std::optional(from[column].get<std::string>()) : std::nullopt;
    EXPECT_TRUE(agrees(row, column, value)) << "line " << row.line << ": " << column;
  }

  scenarios::Scenario scenario;
  Bench bench;
};

TEST_P(CliScenarios, Losses) {
  for (const Row& row : scenario.losses) {
    const Json loss = loss_of(row);
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
}

TEST_P(CliScenarios, Recovery) {
  for (const Row& row : scenario.recovery) {
    const Json intervals = loss_of(row)["recovery"];
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
}

// A season is a calendar year; a scenario that expects another period is asked
// of the core alone.
TEST_P(CliScenarios, Ledgers) {
  int asked_rows = 0;
  for (const Row& row : scenario.ledgers) {
    const std::string year = row.text("first").substr(0, 4);
    const units::Day last = std::min(contract::day(std::stoi(year), 12, 31), scenario.record_end);
    const units::Day asked = std::min(*units::parse_iso_day(row.text("last")), scenario.record_end);
    if (row.text("first") != year + "-01-01" || asked != last) {
      continue;
    }
    ++asked_rows;
    const Json ledger = answer({"season", "--green", row.text("green"), "--year", year})["ledger"];
    for (const char* column : {"measured_true", "measured_not", "between_true", "unmeasured",
                               "closed", "open", "fewest_true", "most_true"}) {
      same_number(row, column, ledger, column);
    }
  }
  if (asked_rows == 0) {
    GTEST_SKIP() << "no ledger of a calendar year in this file";
  }
}

INSTANTIATE_TEST_SUITE_P(Files, CliScenarios,
                         testing::ValuesIn(scenarios::scenario_files(BAIZE_SOURCE_DIR
                                                                     "/tests/scenarios")),
                         [](const auto& one) { return one.param.stem().string(); });

} // namespace
} // namespace cli_bench
