// The season model of the demo club against the numbers kept in the repository.
// tests/golden/README.md says how to renew them, and that a change is explained.
#include "golden/season_estimates.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>

namespace baize::golden {
namespace {

constexpr double kOfError = 0.02; ///< tolerance as a share of the standard error
constexpr double kLeast = 0.001;
constexpr const char* kRenew =
    "\nRenew with\n  season_golden_print > tests/golden/season_rookwater.tsv\nlook at the diff, "
    "and explain in the commit message why the numbers moved.";

std::vector<Line> kept() {
  std::ifstream file(BAIZE_SOURCE_DIR "/tests/golden/season_rookwater.tsv");
  std::ostringstream text;
  text << file.rdbuf();
  return read(text.str());
}

TEST(SeasonGolden, EstimatesAreTheOnesKept) {
  const std::vector<Line> before = kept();
  const std::vector<Line> now = season_estimates();
  ASSERT_FALSE(before.empty()) << "the file is missing or not as it is written" << kRenew;
  ASSERT_EQ(before.size(), now.size()) << kRenew;
  std::string moved;
  for (std::size_t i = 0; i < now.size(); ++i) {
    ASSERT_EQ(before[i].what + '/' + before[i].of + '/' + before[i].when,
              now[i].what + '/' + now[i].of + '/' + now[i].when)
        << kRenew;
    const double allowed = std::max(kLeast, kOfError * before[i].standard_error);
    if (!(std::abs(now[i].value - before[i].value) <= allowed)) {
      moved += '\n' + now[i].what + ' ' + now[i].of + ' ' + now[i].when + ": " +
               std::to_string(before[i].value) + " before, " + std::to_string(now[i].value) +
               " now";
    }
  }
  EXPECT_EQ(moved, "") << kRenew;
}

TEST(SeasonGolden, ReadsWhatItWrites) {
  const std::vector<Line> lines{{"depth", "coring 13 mm", "2024-03-01", 1.25, 0.125},
                                {"chance", "7", "2024-03-01", 0.5, 0}};
  const auto again = read(write(lines));
  ASSERT_EQ(again.size(), 2U);
  EXPECT_EQ(again[0].of, "coring 13 mm");
  EXPECT_EQ(again[0].standard_error, 0.125);
  EXPECT_EQ(again[1].standard_error, 0);
  EXPECT_TRUE(read("head\none\ttwo\n").empty());
}

} // namespace
} // namespace baize::golden
