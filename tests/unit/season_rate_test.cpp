// Losses of one method that come back at rates of their own.
#include "baize/season/fit.h"
#include "baize/stats/random.h"
#include "season_hand.h"

#include <gtest/gtest.h>

#include <cmath>

namespace baize {
namespace {

constexpr std::array<int, 2> kDay{20, 80};
constexpr double kRate = 0.12;
constexpr double kDepth = 2;

/// A steady level, and two losses of one method whose log rates lie `apart` about it.
season::SeasonFit fitted(double apart) {
  stats::Random chance(11);
  std::vector<double> values;
  for (int day = 0; day < 140; ++day) {
    double value = 8.5 + 0.1 * chance.normal();
    for (std::size_t k = 0; k < kDay.size(); ++k) {
      const double rate = kRate * std::exp(k == 0 ? apart : -apart);
      value -= day < kDay[k] ? 0 : kDepth * std::exp(-rate * (day - kDay[k]));
    }
    values.push_back(value);
  }
  season::Model model = testing::hand_model(values, 0.1);
  testing::add_loss(model, kDay[0]);
  testing::add_loss(model, kDay[1]);
  model.methods = {"work"};
  model.greens.front().losses[0].method = 0;
  model.greens.front().losses[1].method = 0;
  model.clock = season::Clock::calendar_days;
  season::Options options;
  options.clock = season::Clock::calendar_days;
  return season::fit_season(model, options);
}

season::Estimate log_rate(const season::SeasonFit& fit, Eigen::Index loss) {
  std::vector<double> draws;
  for (const season::Draw& draw : fit.draws) {
    draws.push_back(std::log(draw.rate(0, static_cast<std::size_t>(loss), 0)));
  }
  return season::estimate_of(draws);
}

TEST(SeasonRate, EachLossHasItsOwn) {
  const auto fit = fitted(0.15);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const auto first = log_rate(fit, 0);
  const auto second = log_rate(fit, 1);
  // Drawn together by the belief, but not to one.
  EXPECT_GT(first.value - second.value, 0.1);
  EXPECT_LT(first.value - second.value, 0.3);
  EXPECT_LT(first.low, std::log(kRate) + 0.15);
  EXPECT_GT(first.high, std::log(kRate) + 0.15);
  EXPECT_LT(second.low, std::log(kRate) - 0.15);
  EXPECT_GT(second.high, std::log(kRate) - 0.15);
}

TEST(SeasonRate, AlikeLossesStayAlike) {
  const auto fit = fitted(0);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_NEAR(log_rate(fit, 0).value, log_rate(fit, 1).value, 0.08);
  for (Eigen::Index k = 0; k < 2; ++k) {
    std::vector<double> depths;
    for (const season::Draw& draw : fit.draws) {
      depths.push_back(draw.own[0](k));
    }
    const auto depth = season::estimate_of(depths);
    EXPECT_LT(depth.low, kDepth);
    EXPECT_GT(depth.high, kDepth);
  }
}

} // namespace
} // namespace baize
