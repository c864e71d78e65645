#include "baize/green/club.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace baize;
using green::Standard;
using units::MonthDay;

units::Day day(int y, int m, int d) {
  return units::make_day(y, m, d).value();
}

TEST(Standard, TheDefaultHoldsWhereNoneIsSet) {
  EXPECT_EQ(green::standard_on({}, "7", day(2026, 6, 1)), 8);
}

TEST(Standard, TheMostParticularWins) {
  std::vector<Standard> all{
      {"7", MonthDay{5, 1}, MonthDay{9, 30}, 9, {}},
      {"7", {}, {}, 7.5, {}},
      {"", MonthDay{11, 1}, MonthDay{2, 28}, 6, {}},
      {"", {}, {}, 7, {}},
  };
  do {
    EXPECT_EQ(green::standard_on(all, "7", day(2026, 5, 1)), 9) << "green and season";
    EXPECT_EQ(green::standard_on(all, "7", day(2026, 9, 30)), 9);
    EXPECT_EQ(green::standard_on(all, "7", day(2026, 10, 1)), 7.5) << "green";
    EXPECT_EQ(green::standard_on(all, "7", day(2026, 12, 1)), 7.5) << "green before season";
    EXPECT_EQ(green::standard_on(all, "8", day(2026, 12, 1)), 6) << "season over the new year";
    EXPECT_EQ(green::standard_on(all, "8", day(2026, 2, 28)), 6);
    EXPECT_EQ(green::standard_on(all, "8", day(2026, 3, 1)), 7) << "neither";
    std::rotate(all.begin(), all.begin() + 1, all.end());
  } while (all.front().score != 9);
}

TEST(Standard, OfTwoEquallyParticularTheStricterHolds) {
  const Standard spring{"", MonthDay{3, 1}, MonthDay{5, 31}, 7, {}};
  const Standard may{"", MonthDay{5, 1}, MonthDay{5, 31}, 8.5, {}};
  EXPECT_EQ(green::standard_on({spring, may}, "7", day(2026, 5, 9)), 8.5);
  EXPECT_EQ(green::standard_on({may, spring}, "7", day(2026, 5, 9)), 8.5);
}

TEST(Records, FindGreen) {
  green::Records r;
  r.greens.resize(2);
  r.greens[0].id = "1";
  r.greens[1].id = "18";
  EXPECT_EQ(green::find_green(r, "18"), &r.greens[1]);
  EXPECT_EQ(green::find_green(r, "8"), nullptr);
}

} // namespace
