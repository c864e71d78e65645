// Two observers in seven sessions, against R: tests/reference/data/statistics/observers.
#include "baize/observers/needed.h"
#include "baize/observers/pair.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace {

using namespace baize;

observers::SharedTable table() {
  std::ifstream in(BAIZE_SOURCE_DIR "/tests/reference/data/statistics/observers/sessions.csv");
  observers::SharedTable made;
  made.observers = {"first", "second"};
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    std::istringstream cells(line);
    std::size_t session = 0;
    double first = 0;
    double second = 0;
    char comma = 0;
    cells >> session >> comma >> first >> comma >> second;
    observers::SharedItem item;
    item.session = session - 1;
    item.order = 1;
    item.scores = {first, second};
    made.rolls.push_back(item);
  }
  made.sessions.resize(7);
  return made;
}

struct Figure {
  double value;
  double se;
  double low;
  double high;
};

void expect(const observers::Estimate& ours, const Figure& theirs, const char* name) {
  constexpr double kShown = 1e-11; // R printed twelve decimals
  EXPECT_NEAR(ours.value, theirs.value, kShown) << name;
  ASSERT_TRUE(ours.interval) << name;
  EXPECT_NEAR(*ours.se, theirs.se, kShown) << name;
  EXPECT_NEAR(ours.interval->low, theirs.low, kShown) << name;
  EXPECT_NEAR(ours.interval->high, theirs.high, kShown) << name;
}

// R 4.2 with psych, by sessions.R beside the data.
TEST(ObserversReference, AgreesWithR) {
  const auto found = observers::pair_agreement(table(), "first", "second");
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  EXPECT_EQ(found.items, 34);
  expect(found.bias, {0.205882352941, 0.235867870168, -0.371265533877, 0.783030239760}, "bias");
  EXPECT_NEAR(found.sd_within * found.sd_within, 0.415432098765, 1e-11);
  EXPECT_NEAR(found.sd_between * found.sd_between, 0.341023610168, 1e-11);
  expect(found.lower_limit, {-1.498817107797, 0.200271436563, -2.343207341493, -0.765317599552},
         "lower limit");
  expect(found.upper_limit, {1.910581813679, 0.402912381401, 1.177082305434, 2.754972047375},
         "upper limit");
  expect(*found.icc, {0.738344433873, 0.060765110547, 0.589657564738, 0.887031303007}, "icc");
  expect(*found.kappa_quadratic, {0.732536186281, 0.062109137732, 0.580560601100, 0.884511771461},
         "kappa, squares");
  expect(*found.kappa_linear, {0.508940852820, 0.075795182134, 0.323476723395, 0.694404982244},
         "kappa, steps");
  expect(*found.concordance, {0.732536186281, 0.062109137732, 0.580560601100, 0.884511771461},
         "concordance");
}

// "A sample of 100 gives a 95 % interval of about -+ 0.34 s" for a limit: Bland's advice
// on sample size for a study of agreement (2004), from memory; it takes 3/n for the
// variance, which is a little more than 1/n + 1.96^2/(2 (n - 1)).
TEST(ObserversReference, AHundredBallsGiveAThirdOfAnSd) {
  const auto found = observers::needed({.sd = 1, .half_width = 0.34});
  EXPECT_GE(found.balls_for_limits, 96);
  EXPECT_LE(found.balls_for_limits, 100);
}

} // namespace
