// The weather inside the program against the file it comes from.
#include "baize/climate/growth.h"
#include "unit/demo_print.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace baize::testing {
namespace {

std::string content(const std::string& file) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + file);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

TEST(DemoWeather, IsTheGenuineFileShiftedByTwentyEightYears) {
  const auto& weather = demo_club().weather;
  std::istringstream in(content("/demo/weather/brussels.txt"));
  std::string header;
  std::getline(in, header);
  int day = 0, month = 0, year = 0, seen = 0;
  double tmin = 0, tmax = 0, rain = 0, et0 = 0;
  while (in >> day >> month >> year >> tmin >> tmax >> rain >> et0) {
    if (year < 1995 || year > 1997) {
      continue;
    }
    ++seen;
    const auto found = weather.find(*units::make_day(year + 28, month, day));
    ASSERT_NE(found, weather.end()) << year << ' ' << month << ' ' << day;
    EXPECT_EQ(found->second.tmin_c, tmin);
    EXPECT_EQ(found->second.tmax_c, tmax);
    EXPECT_EQ(found->second.rain_mm, rain);
    EXPECT_EQ(found->second.et0_mm, et0);
    // The same day of the week: whole weeks lie between.
    EXPECT_EQ((found->first - *units::make_day(year, month, day)) % 7, 0);
  }
  EXPECT_EQ(seen, 1096) << "1996 is a leap year";
  EXPECT_EQ(weather.size(), 1096U);
}

TEST(DemoWeather, IsTheCopyKeptAsReference) {
  EXPECT_EQ(content("/demo/weather/brussels.txt"),
            content("/tests/reference/data/weather/brussels.txt"));
}

TEST(DemoWeather, GrowsAsTheClimateLibrarySays) {
  const auto& club = demo_club();
  std::size_t i = 0;
  for (const auto& [day, weather] : club.weather) {
    const auto growth = climate::growth_potential(weather, climate::kCoolSeason);
    ASSERT_TRUE(growth);
    EXPECT_NEAR(club.truth.growth[i++], *growth, 1e-12);
  }
}

} // namespace
} // namespace baize::testing
