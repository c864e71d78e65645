// What needs no records: help, wrong use, speed, score, weather, upkeep.
#include "unit/cli_bench.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace cli_bench {
namespace {

using Json = nlohmann::json;

TEST(Cli, HelpIsFineAndTellsTheExitCodes) {
  Bench bench;
  EXPECT_EQ(bench.run({"--help"}), 0);
  EXPECT_TRUE(bench.said("Exit codes: 0 fine"));
  for (const char* command :
       {"import", "export", "serve", "report", "clubs", "greens", "visits", "season", "recovery",
        "speed", "score", "weather", "backup", "restore", "doctor"}) {
    EXPECT_TRUE(bench.said(std::string("  ") + command + " ")) << command;
    Bench one;
    EXPECT_EQ(one.run({command, "--help"}), 0) << command;
    EXPECT_GT(one.out().size(), 100U) << command;
  }
}

TEST(Cli, WrongUseIsTwo) {
  for (const std::vector<std::string>& words :
       std::vector<std::vector<std::string>>{{},
                                             {"fly"},
                                             {"season"},
                                             {"season", "--green", "7", "--year", "many"},
                                             {"clubs", "--units", "ell"},
                                             {"clubs", "--json", "--csv"},
                                             {"speed"},
                                             {"score", "8", "--bobbles", "1"},
                                             {"import"}}) {
    Bench bench;
    EXPECT_EQ(bench.run(words), 2) << (words.empty() ? "nothing" : words.back());
    EXPECT_FALSE(bench.err().empty());
    EXPECT_EQ(bench.out(), "");
  }
}

// Slope correction 2UD/(U+D): Brede (1990, 1991). Out 300 cm, back 200 cm: plain
// mean 250, corrected 2 x 300 x 200 / 500 = 240 cm.
TEST(Cli, SpeedTakesTheSlopeOut) {
  Bench bench;
  EXPECT_EQ(bench.run({"speed", "--out-cm", "300,300,300", "--back-cm", "200", "200", "200",
                       "--units", "cm"}),
            0);
  EXPECT_TRUE(bench.said("Plain mean: 250 cm"));
  EXPECT_TRUE(bench.said("2UD/(U+D): 240 cm"));
  EXPECT_TRUE(bench.said("Green speed: 240 cm"));
  EXPECT_TRUE(bench.said("Note: "));
  EXPECT_EQ(bench.run({"speed", "--out-m", "3", "--back-m", "2", "--json"}), 0);
  EXPECT_DOUBLE_EQ(Json::parse(bench.out())["slope_corrected_m"], 2.4);
  EXPECT_EQ(
      bench.run({"speed", "--out-m", "3,00;3,02", "--decimal-comma", "--csv", "--units", "m"}), 0);
  EXPECT_TRUE(bench.said("out_mean_m;back_mean_m")) << bench.out();
  EXPECT_TRUE(bench.said("3,01;;3,01;;3,01;")) << bench.out();
}

TEST(Cli, SpeedReadsFeetAndInches) {
  Bench bench;
  EXPECT_EQ(
      bench.run({"speed", "--out", "9'6\"", "9'6\"", "9'6\"", "--back", "9-6", "9'6", "9'6\""}), 0);
  EXPECT_TRUE(bench.said("Green speed: 9'6\""));
  EXPECT_EQ(bench.run({"speed", "--out", "9'13\""}), 1);
  EXPECT_TRUE(bench.refused("--out: "));
  EXPECT_TRUE(bench.refused("9'13\""));
  EXPECT_EQ(bench.run({"speed", "--out-m", "310"}), 1) << "centimetres given as metres";
  EXPECT_EQ(bench.run({"speed", "--out-m", "nan"}), 1);
}

// The rule of the trade (common practice, no published source).
TEST(Cli, ScoreOffersByTheMarks) {
  Bench bench;
  EXPECT_EQ(bench.run({"score"}), 0);
  EXPECT_TRUE(bench.said("Offered score: 9"));
  EXPECT_EQ(bench.run({"score", "--chatters", "1"}), 0);
  EXPECT_TRUE(bench.said("Offered score: 8"));
  EXPECT_EQ(bench.run({"score", "--bobbles", "2", "--json"}), 0);
  EXPECT_LE(Json::parse(bench.out())["highest"], 5);
  EXPECT_EQ(bench.run({"score", "--bobbles", "-1"}), 2);
}

TEST(Cli, ScoresAddUp) {
  Bench bench;
  EXPECT_EQ(bench.run({"score", "9", "8", "8", "7", "9", "8", "--csv"}), 0);
  EXPECT_EQ(bench.out(), "rolls,total,mean\r\n6,49,8.166666666666666\r\n");
  EXPECT_EQ(bench.run({"score", "9", "8", "8", "7", "9", "8", "--decimal-comma"}), 0);
  EXPECT_TRUE(bench.said("8,17"));
  for (const char* wrong : {"0", "11", "7.5", "eight"}) {
    EXPECT_EQ(bench.run({"score", "8", wrong}), 1) << wrong;
    EXPECT_TRUE(bench.refused("a whole number from 1 to 10")) << wrong;
  }
}

TEST(Cli, WeatherIsShownAsUnderstood) {
  Bench bench;
  bench.weather.reading.weather = contract::sample_weather();
  bench.weather.reading.rows = 2;
  bench.weather.reading.remarks = {{"gap", "day", "2026-05-06", "a day in the file", "line 3"}};
  const std::string file = bench.put("station.csv", "some weather");
  EXPECT_EQ(bench.run({"weather", file}), 0);
  EXPECT_TRUE(bench.said("format=delimited"));
  EXPECT_TRUE(bench.said("station.csv line 3: day is '2026-05-06'"));
  EXPECT_EQ(bench.run({"weather", file, "--csv"}), 0);
  // 6 degrees C: exp(-((6 - 20) / 5.5)^2 / 2) = 0.0392 (Gelernter and Stowell 2005).
  EXPECT_TRUE(bench.said("2026,2,1,6,0.039")) << bench.out();
  EXPECT_EQ(bench.run({"weather", file, "--map", "unusable"}), 1);
  EXPECT_EQ(bench.run({"weather", bench.file("none.csv")}), 4);
  EXPECT_EQ(bench.run({"weather", bench.put("empty.csv", "")}), 1);
  EXPECT_TRUE(bench.refused("empty.csv"));
}

TEST(Cli, UpkeepPassesOnWhatItIsTold) {
  Bench bench;
  std::string asked;
  bench.ports.backup = [&](const std::string& database,
                           const std::string& to) -> units::Result<cli::BackupCopy> {
    asked = database + " " + to;
    return cli::BackupCopy{to, to + ".check", "ab12", 34};
  };
  EXPECT_EQ(bench.run({"backup", "/b", "--db", "/a"}), 0);
  EXPECT_EQ(asked, "/a /b");
  EXPECT_TRUE(bench.said("34 rows"));
  bench.ports.restore = [&](const std::string&, const std::string& to,
                            bool force) -> units::Result<cli::RestoredCopy> {
    if (!force) {
      return units::refuse("file_exists", "database", to, "a name that no file has");
    }
    return cli::RestoredCopy{{"/b", "/b.check", "ab12", 34}, to + ".replaced"};
  };
  EXPECT_EQ(bench.run({"restore", "/b"}), 3);
  EXPECT_TRUE(bench.refused("/default"));
  EXPECT_EQ(bench.run({"restore", "/b", "--force"}), 0);
  EXPECT_TRUE(bench.said("/default.replaced"));
  cli::DoctorFindings findings{1, 10, 1, "ab12", {}, {"A score stands apart."}};
  bench.ports.examine = [&](const std::string&, units::Day, const std::vector<std::string>&) {
    return units::Result<cli::DoctorFindings>(findings);
  };
  EXPECT_EQ(bench.run({"doctor"}), 0);
  EXPECT_TRUE(bench.said("Nothing is wrong."));
  EXPECT_TRUE(bench.said("Look at: A score"));
  findings.wrong = {"A row leads nowhere."};
  EXPECT_EQ(bench.run({"doctor", "--json"}), 1);
  EXPECT_EQ(Json::parse(bench.out())["wrong"][0], "A row leads nowhere.");
}

TEST(Cli, ServeSaysWhereAndWhat) {
  Bench bench;
  cli::ServeSettings seen;
  bench.ports.serve = [&](const cli::ServeSettings& settings,
                          std::ostream& out) -> units::Result<void> {
    seen = settings;
    out << "here";
    return {};
  };
  EXPECT_EQ(bench.run({"serve", "--db", "/d", "--port", "0"}), 0);
  EXPECT_EQ(seen.database, "/d");
  EXPECT_EQ(seen.port, 0);
  EXPECT_EQ(seen.address, "127.0.0.1") << "this machine only, unless told otherwise";
  EXPECT_TRUE(bench.said("here"));
  EXPECT_EQ(bench.run({"serve", "--port", "70000"}), 2);
  bench.ports.serve = [](const cli::ServeSettings&, std::ostream&) -> units::Result<void> {
    return units::refuse("port_in_use", "port", "8417", "free");
  };
  EXPECT_EQ(bench.run({"serve"}), 3);
}

} // namespace
} // namespace cli_bench
