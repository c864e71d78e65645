// baize season --model, its check, its progress, and Ctrl-C.
#include "baize/demo/demo_club.h"
#include "unit/cli_bench.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace cli_bench {
namespace {

class CliSeasonModel : public testing::Test {
 protected:
  CliSeasonModel() {
    static const baize::demo::DemoClub club = baize::demo::make(19);
    bench.store.records["rookwater"] = club.records;
    bench.store.kept_weather["rookwater"] = club.weather;
    bench.ports.today = club.today;
  }
  static std::vector<std::string> asked(const std::vector<std::string>& more = {}) {
    std::vector<std::string> words{"season", "--green", "7", "--year", "2025", "--model"};
    words.insert(words.end(), more.begin(), more.end());
    return words;
  }
  Bench bench;
};

TEST_F(CliSeasonModel, SaysHowFarItMayBeTrusted) {
  ASSERT_EQ(bench.run(asked()), 0) << bench.err();
  EXPECT_TRUE(bench.said("surprises look like chance")) << bench.out();
  ASSERT_EQ(bench.run(asked({"--check"})), 0) << bench.err();
  EXPECT_TRUE(bench.said("with growth rather than with days")) << bench.out();
  EXPECT_TRUE(bench.said("half or twice as wide")) << bench.out();
  ASSERT_EQ(bench.run(asked({"--check", "--json"})), 0) << bench.err();
  EXPECT_TRUE(nlohmann::json::parse(bench.out())["clocks"]["told_apart"]);
  EXPECT_EQ(bench.run({"season", "--green", "7", "--year", "2025", "--check"}), 2)
      << "there is nothing to check without the model";
}

TEST_F(CliSeasonModel, ShowsItsProgressOnATerminalOnly) {
  ASSERT_EQ(bench.run(asked()), 0);
  EXPECT_EQ(bench.err(), "");
  bench.ports.show_progress = true;
  ASSERT_EQ(bench.run(asked()), 0);
  EXPECT_TRUE(bench.refused("fitting the season model"));
  EXPECT_TRUE(bench.refused("[###################.]")) << "all but the last of it is drawn";
  EXPECT_EQ(bench.err().substr(bench.err().size() - 4), "\r\x1b[K") << "and taken away";
}

TEST_F(CliSeasonModel, StopsWhenAsked) {
  int questions = 0;
  bench.ports.asked_to_stop = [&] { return ++questions > 20; };
  EXPECT_EQ(bench.run(asked()), 130);
  EXPECT_EQ(bench.err(), "baize: stopped before the end; there is no result.\n");
  EXPECT_EQ(bench.out(), "");
  EXPECT_EQ(questions, 21) << "it asks no more";
}

} // namespace
} // namespace cli_bench
