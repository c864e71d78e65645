// Commands that look at a club or bring one in.
#include "unit/cli_bench.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>

namespace cli_bench {
namespace {

using Json = nlohmann::json;

class CliRecords : public testing::Test {
 protected:
  CliRecords() {
    bench.store.records["heath"] = contract::sample_club();
    bench.store.kept_weather["heath"] = contract::sample_weather();
  }
  Json json(std::vector<std::string> words, int code = 0) {
    words.emplace_back("--json");
    EXPECT_EQ(bench.run(words), code) << bench.err();
    return Json::parse(bench.out());
  }
  Bench bench;
};

TEST_F(CliRecords, ClubsAreListedInThreeShapes) {
  EXPECT_EQ(bench.run({"clubs"}), 0);
  EXPECT_EQ(bench.out(), "club   name\nheath  Heath and Mere\n");
  EXPECT_EQ(bench.opened.back(), "/default") << "looking makes no database";
  EXPECT_EQ(bench.run({"clubs", "--csv"}), 0);
  EXPECT_EQ(bench.out(), "club,name\r\nheath,Heath and Mere\r\n");
  EXPECT_EQ(json({"clubs"})["clubs"][0]["id"], "heath");
  EXPECT_EQ(bench.run({"clubs", "--db", "/none"}), 3);
  EXPECT_TRUE(bench.refused("/none"));
}

TEST_F(CliRecords, TheOnlyClubNeedNotBeNamed) {
  EXPECT_EQ(bench.run({"greens"}), 0);
  bench.store.records["mere"] = contract::sample_club("mere");
  EXPECT_EQ(bench.run({"greens"}), 2);
  EXPECT_TRUE(bench.refused("heath, mere"));
  EXPECT_EQ(bench.run({"greens", "--club", "mere"}), 0);
  EXPECT_EQ(bench.run({"greens", "--club", "moor"}), 4);
  bench.store.records.clear();
  EXPECT_EQ(bench.run({"greens"}), 4);
}

TEST_F(CliRecords, RefusalsAreJsonToo) {
  const Json refusal = json({"season", "--green", "19", "--year", "2026"}, 4);
  EXPECT_EQ(refusal["problem"]["code"], "no_such_green");
  EXPECT_EQ(refusal["problem"]["value"], "19");
}

TEST_F(CliRecords, UnitsAndDecimalMarkAreTheUsersOwn) {
  EXPECT_EQ(bench.run({"visits", "--green", "7th", "--units", "cm"}), 0);
  EXPECT_TRUE(bench.said("speed (cm)"));
  EXPECT_EQ(bench.run({"visits", "--units", "m", "--decimal-comma"}), 0);
  EXPECT_TRUE(bench.said("speed (m)"));
  EXPECT_TRUE(bench.said("7,00")) << "a score of 7 with a decimal comma";
  EXPECT_TRUE(bench.said("2 of 2 visits"));
  EXPECT_EQ(bench.run({"visits", "--csv", "--decimal-comma"}), 0);
  EXPECT_TRUE(bench.said("visit;green;half;day;"));
  EXPECT_EQ(bench.run({"visits", "--limit", "0"}), 1);
}

TEST_F(CliRecords, WhatWasNotMeasuredIsADashAndNeverZero) {
  EXPECT_EQ(bench.run({"visits", "--green", "2"}), 0);
  const std::string row = bench.out().substr(bench.out().find("v0"));
  EXPECT_NE(row.find("  -"), std::string::npos);
  EXPECT_EQ(bench.run({"visits", "--green", "2", "--csv", "--units", "m"}), 0);
  EXPECT_TRUE(bench.said("v0,2,,2026-05-06,,,1,7,,,")) << bench.out();
}

TEST_F(CliRecords, ASeasonHasLedgerVisitsWorksAndLosses) {
  EXPECT_EQ(bench.run({"season", "--green", "7", "--year", "2026"}), 0);
  for (const char* part : {"True on at least", "Visits\n", "Works\n", "What the works cost\n"}) {
    EXPECT_TRUE(bench.said(part)) << part;
  }
  EXPECT_EQ(json({"season", "--green", "7", "--year", "2026"})["green"], "7");
  EXPECT_EQ(bench.run({"season", "--green", "7", "--year", "2026", "--csv", "--list", "days"}), 0);
  EXPECT_EQ(std::count(bench.out().begin(), bench.out().end(), '\n'), 366)
      << "a header and 365 days";
  EXPECT_EQ(bench.run({"season", "--green", "7", "--year", "1200"}), 4);
}

TEST_F(CliRecords, RecoveryOfAllOfOneWorkOfOneGreen) {
  EXPECT_EQ(bench.run({"recovery"}), 0);
  EXPECT_TRUE(bench.said("coring 13 mm"));
  EXPECT_EQ(bench.run({"recovery", "--work", "w1"}), 0);
  EXPECT_TRUE(bench.said("score-days"));
  EXPECT_EQ(json({"recovery", "--green", "7"})["losses"][0]["work"], "w1");
  EXPECT_EQ(bench.run({"recovery", "--work", "w1", "--csv"}), 0);
  EXPECT_TRUE(bench.said("lasting_after_days,lasting_by_days,lasting_censoring"));
  EXPECT_EQ(bench.run({"recovery", "--work", "w9"}), 4);
}

TEST_F(CliRecords, ADryRunShowsProblemsAndOpensNothing) {
  bench.sheets.reading.records = contract::sample_club("mere");
  bench.sheets.reading.problems = {{"score_out_of_range", "score", "11",
                                    "a whole number from 1 to 10",
                                    "rolls.csv line 12 column score"}};
  bench.put("rolls.csv", "x");
  EXPECT_EQ(bench.run({"import", bench.file(""), "--dry-run"}), 1);
  EXPECT_TRUE(bench.said("rolls.csv line 12 column score: score is '11'"));
  EXPECT_TRUE(bench.said("Nothing was kept"));
  EXPECT_EQ(bench.run({"import", bench.file("rolls.csv")}), 1);
  EXPECT_TRUE(bench.opened.empty());
  EXPECT_FALSE(bench.store.records.contains("mere"));
  const Json told = json({"import", bench.file("rolls.csv"), "--dry-run"}, 1);
  EXPECT_EQ(told["problems"][0]["problem"]["code"], "score_out_of_range");
  EXPECT_FALSE(told.contains("receipt"));
}

TEST_F(CliRecords, AnImportKeepsRecordsFilesAndWeather) {
  bench.sheets.reading.records = contract::sample_club("mere");
  bench.weather.reading.weather = contract::sample_weather();
  bench.put("rolls.csv", "rolls");
  bench.put("notes.txt", "not brought in");
  const std::string weather = bench.put("weather.csv", "weather");
  EXPECT_EQ(bench.run({"import", bench.file(""), "--weather", weather, "--db", "/mine"}), 0)
      << bench.err();
  EXPECT_EQ(bench.opened, std::vector<std::string>{"/mine!"});
  ASSERT_EQ(bench.store.files["mere"].size(), 1U) << "the weather file is no record file";
  EXPECT_EQ(bench.store.files["mere"][0], (services::ReceivedFile{"rolls.csv", "rolls"}));
  EXPECT_EQ(bench.store.kept_weather["mere"], contract::sample_weather());
  EXPECT_EQ(bench.store.authors.front().name, "tess");
  EXPECT_EQ(bench.store.authors.front().at, "2026-12-31T12:00:00Z");
  EXPECT_TRUE(bench.said("4 new, 0 corrected, 0 unchanged"));
  EXPECT_EQ(bench.err(), "") << "no progress bar where nobody watches";
}

TEST_F(CliRecords, WeatherWithAProblemKeepsTheRecordsOutToo) {
  bench.sheets.reading.records = contract::sample_club("mere");
  bench.put("rolls.csv", "rolls");
  EXPECT_EQ(bench.run({"import", bench.file("rolls.csv"), "--weather",
                       bench.put("weather.txt", "w"), "--map", "unusable"}),
            1);
  EXPECT_FALSE(bench.store.records.contains("mere"));
}

TEST_F(CliRecords, AnImportNeedsToKnowItsClub) {
  bench.sheets.reading.records = contract::sample_club("");
  const std::string file = bench.put("rolls.csv", "rolls");
  EXPECT_EQ(bench.run({"import", file}), 2);
  EXPECT_EQ(bench.run({"import", file, "--club", "moor"}), 0);
  EXPECT_TRUE(bench.store.records.contains("moor"));
  bench.sheets.reading.records = contract::sample_club("mere");
  EXPECT_EQ(bench.run({"import", file, "--club", "moor"}), 1);
  EXPECT_EQ(bench.run({"import", bench.file("none.csv")}), 4);
}

TEST_F(CliRecords, ProgressIsDrawnOnlyWhereSomebodyWatches) {
  bench.ports.show_progress = true;
  bench.sheets.reading.records = contract::sample_club("mere");
  EXPECT_EQ(bench.run({"import", bench.put("rolls.csv", "rolls")}), 0);
  EXPECT_TRUE(bench.refused("keeping records"));
  EXPECT_EQ(bench.out().find('\r'), std::string::npos);
}

TEST_F(CliRecords, AnExportReplacesNothingUnasked) {
  bench.sheets.to_write = {{"rolls.csv", "old"}, {"works.csv", "w"}};
  const std::string folder = bench.file("out");
  EXPECT_EQ(bench.run({"export", folder}), 0) << bench.err();
  EXPECT_EQ(contract::bytes_of(folder + "/rolls.csv"), "old");
  EXPECT_EQ(bench.run({"export", folder}), 0) << "the same bytes are no harm";
  bench.sheets.to_write[0].content = "new";
  bench.sheets.to_write[1].content = "newer";
  EXPECT_EQ(bench.run({"export", folder}), 3);
  EXPECT_EQ(contract::bytes_of(folder + "/works.csv"), "w") << "none is written when one may not";
  EXPECT_EQ(bench.run({"export", folder, "--force"}), 0);
  EXPECT_EQ(contract::bytes_of(folder + "/rolls.csv"), "new");
}

TEST_F(CliRecords, AnExportNeverLeavesItsFolder) {
  for (const char* name : {"../away.csv", "/tmp/away.csv", "..", ""}) {
    bench.sheets.to_write = {{name, "x"}};
    EXPECT_EQ(bench.run({"export", bench.file("out")}), 3) << name;
  }
  EXPECT_FALSE(std::filesystem::exists(bench.file("away.csv")));
}

TEST_F(CliRecords, AReportHoldsWhatThePageNeeds) {
  std::string given;
  bench.ports.report_page = [&](const std::string& text) -> units::Result<std::string> {
    given = text;
    return "<html>";
  };
  bench.ports.print_pdf = [](const std::string&, const std::string& pdf) -> units::Result<void> {
    return units::refuse("pdf_no_browser", "pdf", pdf, "printed by a browser");
  };
  const std::string out = bench.file("2026.html");
  EXPECT_EQ(bench.run({"report", "--year", "2026", "--out", out}), 0) << bench.err();
  EXPECT_EQ(contract::bytes_of(out), "<html>");
  const Json data = Json::parse(given);
  EXPECT_EQ(data["greens"]["club"], "heath");
  EXPECT_EQ(data["seasons"][0]["year"], 2026);
  EXPECT_EQ(data["works"][0]["work"]["id"], "w1");
  EXPECT_FALSE(data["sentences"].empty());
  EXPECT_EQ(bench.run({"report", "--year", "2026", "--out", out, "--pdf", "x.pdf"}), 3);
  EXPECT_EQ(bench.run({"report", "--year", "2030", "--out", out}), 4);
  EXPECT_EQ(bench.run({"report", "--year", "2026", "--out", bench.file("no/x.html")}), 3);
}

} // namespace
} // namespace cli_bench
