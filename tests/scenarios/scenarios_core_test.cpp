// Runs every text table of this folder through the core.
#include "baize/green/validate.h"
#include "baize/recovery/ledger.h"
#include "baize/recovery/work_loss.h"
#include "scenarios/scenario.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace baize::scenarios {
namespace {

using recovery::WorkLoss;

std::string word(recovery::Definition definition) {
  switch (definition) {
  case recovery::Definition::at_standard:
    return "at_standard";
  case recovery::Definition::two_running:
    return "two_running";
  case recovery::Definition::lasting:
    return "lasting";
  case recovery::Definition::own_level:
    return "own_level";
  }
  return "unknown";
}

std::string word(recovery::Censoring censoring) {
  switch (censoring) {
  case recovery::Censoring::none:
    return "none";
  case recovery::Censoring::record_ends:
    return "record_ends";
  case recovery::Censoring::next_work:
    return "next_work";
  case recovery::Censoring::not_asked:
    return "not_asked";
  }
  return "unknown";
}

std::optional<std::string> day_word(std::optional<units::Day> day) {
  return day ? std::optional(units::iso(*day)) : std::nullopt;
}

std::optional<double> number(std::optional<int> value) {
  return value ? std::optional<double>(*value) : std::nullopt;
}

template <class Value> void expect(const Row& row, const std::string& column, const Value& value) {
  EXPECT_TRUE(agrees(row, column, value))
      << "line " << row.line << ": " << column << " should be " << row.text(column) << ", is "
      << ::testing::PrintToString(value);
}

void expect_text(const Row& row, const std::string& column, const std::string& value) {
  expect(row, column, std::optional(value));
}

class Scenarios : public ::testing::TestWithParam<std::filesystem::path> {
 protected:
  void SetUp() override {
    auto read = read_scenario(GetParam());
    ASSERT_TRUE(read) << units::sentence(read.error());
    scenario = *read;
    for (const green::Green& green : scenario.records.greens) {
      recovery::Options options;
      options.growth = growth_of(scenario, green.id);
      for (WorkLoss& loss : recovery::work_losses(scenario.records, scenario.weather, green.id,
                                                  scenario.record_end, options)) {
        losses.push_back(std::move(loss));
      }
    }
  }

  const WorkLoss* loss_for(const Row& row) const {
    const auto found = std::find_if(losses.begin(), losses.end(), [&](const WorkLoss& loss) {
      return loss.work == row.text("work") && loss.green == row.text("green") &&
             loss.half == row.text("half");
    });
    EXPECT_NE(found, losses.end()) << "line " << row.line << ": no such loss";
    return found == losses.end() ? nullptr : &*found;
  }

  Scenario scenario;
  std::vector<WorkLoss> losses;
};

TEST_P(Scenarios, RecordsAreValid) {
  for (const units::Problem& problem : green::validate(scenario.records, scenario.record_end)) {
    ADD_FAILURE() << units::sentence(problem);
  }
}

TEST_P(Scenarios, Losses) {
  EXPECT_EQ(losses.size(), scenario.losses.size()) << "one row for every loss, and no other";
  for (const Row& row : scenario.losses) {
    const WorkLoss* loss = loss_for(row);
    if (loss == nullptr) {
      continue;
    }
    expect_text(row, "horizon", units::iso(loss->horizon));
    expect_text(row, "reason", word(loss->horizon_reason));
    expect(row, "standard", std::optional(loss->standard));
    expect(row, "before", loss->before);
    expect(row, "trough", loss->trough);
    expect(row, "trough_day", day_word(loss->trough_day));
    expect(row, "depth", loss->depth);
    expect(row, "visits_after", std::optional<double>(loss->visits_after));
    const auto& area = loss->area;
    expect(row, "area", area ? std::optional(area->score_days) : std::nullopt);
    expect(row, "low", area ? std::optional(area->low) : std::nullopt);
    expect(row, "high", area ? std::optional(area->high) : std::nullopt);
    expect(row, "growth_area", area ? area->growth_score_days : std::nullopt);
    expect(row, "ended",
           area ? std::optional<std::string>(area->ended ? "yes" : "no") : std::nullopt);
  }
}

TEST_P(Scenarios, Recovery) {
  for (const Row& row : scenario.recovery) {
    const WorkLoss* loss = loss_for(row);
    if (loss == nullptr) {
      continue;
    }
    const auto found =
        std::find_if(loss->recovery.begin(), loss->recovery.end(), [&](const auto& interval) {
          return word(interval.definition) == row.text("definition");
        });
    ASSERT_NE(found, loss->recovery.end()) << "line " << row.line << ": no such definition";
    expect_text(row, "censoring", word(found->censoring));
    expect_text(row, "last_below", units::iso(found->last_below));
    expect(row, "first_back", day_word(found->first_back));
    expect(row, "after_days", std::optional<double>(found->after_days));
    expect(row, "by_days", number(found->by_days));
    expect(row, "after_growth", found->after_growth_days);
    expect(row, "by_growth", found->by_growth_days);
  }
}

TEST_P(Scenarios, Ledgers) {
  for (const Row& row : scenario.ledgers) {
    const units::Period period{*units::parse_iso_day(row.text("first")),
                               *units::parse_iso_day(row.text("last"))};
    const auto ledger =
        recovery::true_days(scenario.records, row.text("green"), period, scenario.record_end);
    const auto count = [&](const std::string& column, int value) {
      expect(row, column, std::optional<double>(value));
    };
    count("measured_true", ledger.measured_true);
    count("measured_not", ledger.measured_not);
    count("between_true", ledger.between_true);
    count("unmeasured", ledger.unmeasured);
    count("closed", ledger.closed);
    count("open", ledger.open());
    count("fewest_true", ledger.fewest_true());
    count("most_true", ledger.most_true());
  }
}

TEST_P(Scenarios, Notes) {
  for (const Row& row : scenario.notes) {
    if (const WorkLoss* loss = loss_for(row)) {
      const bool said = std::any_of(loss->notes.begin(), loss->notes.end(), [&](const auto& note) {
        return note.find(row.text("text")) != std::string::npos;
      });
      EXPECT_TRUE(said) << "line " << row.line << ": " << row.text("text")
                        << "\nsaid: " << ::testing::PrintToString(loss->notes);
    }
  }
}

std::string title(const ::testing::TestParamInfo<std::filesystem::path>& file) {
  return file.param.stem().string();
}

INSTANTIATE_TEST_SUITE_P(Files, Scenarios,
                         ::testing::ValuesIn(scenario_files(BAIZE_SOURCE_DIR "/tests/scenarios")),
                         title);

} // namespace
} // namespace baize::scenarios
