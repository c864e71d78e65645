#include "baize/sheets/trial_csv.h"
#include "cli_bench.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace baize {
namespace {

const std::string kExample = std::string(BAIZE_SOURCE_DIR) + "/tests/clubs/trial_example/";

struct TrialCommands : testing::Test {
  TrialCommands() { bench.ports.trial_files = &files; }
  std::vector<std::string> drawn() const {
    return {"trial",     "design",    "--trial", "Spring tines",      "--treatments",
            "none,tine", "--control", "none",    "--blocks",          "4",
            "--seed",    "5",         "--out",   bench.file("trial"), "--first-visit",
            "2025-04-03"};
  }
  sheets::TrialCsv files;
  cli_bench::Bench bench;
};

TEST_F(TrialCommands, DesignWritesItsFilesAndNeverOverAPlan) {
  ASSERT_EQ(bench.run(drawn()), 0) << bench.err();
  EXPECT_TRUE(bench.said("With 4 blocks a difference of "));
  EXPECT_TRUE(bench.said("label and local rules"));
  for (const char* name : {"trial.csv", "trial_records.csv", "trial_sheet.html", "trial_map.svg"}) {
    EXPECT_TRUE(std::filesystem::exists(bench.file("trial") + "/" + name)) << name;
  }
  EXPECT_EQ(bench.run(drawn()), 3);
  EXPECT_TRUE(bench.refused("trial.csv"));
  auto again = drawn();
  again.emplace_back("--force");
  EXPECT_EQ(bench.run(again), 0);
}

TEST_F(TrialCommands, AnalyseAnswersTheWorkedExample) {
  const std::vector<std::string> words{
      "trial",     "analyse",   kExample + "trial.csv", kExample + "trial_records.csv",
      "--treated", "2025-04-01"};
  ASSERT_EQ(bench.run(words), 0) << bench.err();
  EXPECT_TRUE(bench.said("was back about ")) << bench.out();
  EXPECT_TRUE(bench.said("Evidence: randomised, 12 plots, 107 records, 9 days."));
  EXPECT_TRUE(bench.said("Against the control"));
  auto json = words;
  json.emplace_back("--json");
  EXPECT_EQ(bench.run(json), 0);
  EXPECT_TRUE(bench.said("\"evidence\": \"randomised\""));
  auto csv = words;
  csv.emplace_back("--csv");
  EXPECT_EQ(bench.run(csv), 0);
  EXPECT_EQ(bench.out().rfind("day,of,treatment,mean,plots,letters,p\r\nall,treatment,none,", 0),
            0U)
      << bench.out();
}

TEST_F(TrialCommands, RefusesWithTheRightExit) {
  EXPECT_EQ(bench.run({"trial"}), 2);
  EXPECT_EQ(bench.run({"trial", "design", "--trial", "x", "--treatments", "a"}), 1);
  EXPECT_TRUE(bench.refused("treatments is '1', but must be 2 to 60 of them."));
  EXPECT_EQ(bench.run({"trial", "analyse", "/none.csv", "/none2.csv"}), 4);
  const std::string bad = bench.put("bad.csv", "day,plot,score\n2025-04-03,999,8\n");
  EXPECT_EQ(bench.run({"trial", "analyse", kExample + "trial.csv", bad}), 1);
  EXPECT_TRUE(bench.refused("plot is '999', but must be a plot of the plan."));
}

} // namespace
} // namespace baize
