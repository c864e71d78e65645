// The text tables of tests/scenarios, asked of the command line: it must give
// the same figures as the core.
#include "scenarios/scenario.h"
#include "scenarios/told.h"
#include "unit/cli_bench.h"

#include <gtest/gtest.h>

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
      if (scenarios::is_loss_of(row, loss)) {
        return loss;
      }
    }
    ADD_FAILURE() << "line " << row.line << ": no such loss";
    return Json::object();
  }

  scenarios::Scenario scenario;
  Bench bench;
};

TEST_P(CliScenarios, Losses) {
  for (const Row& row : scenario.losses) {
    scenarios::expect_loss(row, loss_of(row));
  }
}

TEST_P(CliScenarios, Recovery) {
  for (const Row& row : scenario.recovery) {
    scenarios::expect_interval(row, loss_of(row));
  }
}

TEST_P(CliScenarios, Ledgers) {
  int asked = 0;
  for (const Row& row : scenario.ledgers) {
    const std::string year = scenarios::season_of(row, scenario.record_end);
    if (year.empty()) {
      continue;
    }
    ++asked;
    scenarios::expect_ledger(
        row, answer({"season", "--green", row.text("green"), "--year", year})["ledger"]);
  }
  if (asked == 0) {
    GTEST_SKIP() << "no ledger of a calendar year in this file";
  }
}

INSTANTIATE_TEST_SUITE_P(Files, CliScenarios,
                         testing::ValuesIn(scenarios::scenario_files(BAIZE_SOURCE_DIR
                                                                     "/tests/scenarios")),
                         [](const auto& one) { return one.param.stem().string(); });

} // namespace
} // namespace cli_bench
