// What a mixed model must not mind: the order of rows and terms, the numbers that
// groups go by, the unit of y.
#include "baize/stats/mixed.h"
#include "baize/stats/random.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numeric>

namespace {

using namespace baize::stats;

MixedModel crossed(std::uint64_t seed) {
  Random random(seed);
  std::vector<double> green(5);
  std::vector<double> day(7);
  for (auto* effects : {&green, &day}) {
    for (double& effect : *effects) {
      effect = random.normal();
    }
  }
  MixedModel model{{}, {{}}, true, {{"green", {}}, {"day", {}}}};
  for (int i = 0; i < 60; ++i) {
    const auto g = random.below(green.size());
    const auto d = random.below(day.size());
    model.fixed[0].push_back(random.normal());
    model.random[0].group.push_back(static_cast<int>(g));
    model.random[1].group.push_back(static_cast<int>(d));
    model.y.push_back(6 + 0.5 * model.fixed[0].back() + green[g] + day[d] + random.normal());
  }
  return model;
}

void expect_same(const MixedFit& a, const MixedFit& b, double unit) {
  RC_ASSERT(a.summary.usable && b.summary.usable);
  const auto close = [](double x, double y, double tolerance) {
    return std::fabs(x - y) <= tolerance * std::max(1.0, std::fabs(y));
  };
  for (std::size_t i = 0; i < a.coefficients.size(); ++i) {
    RC_ASSERT(close(a.coefficients[i].value * unit, b.coefficients[i].value, 1e-6));
    RC_ASSERT(
        close(a.coefficients[i].standard_error * unit, b.coefficients[i].standard_error, 1e-6));
    RC_ASSERT(close(a.coefficients[i].df, b.coefficients[i].df, 1e-4));
  }
  RC_ASSERT(close(a.residual_sd * unit, b.residual_sd, 1e-6));
  for (std::size_t t = 0; t < a.random.size(); ++t) {
    RC_ASSERT(close(a.random[t].sd[0] * unit, b.random[t].sd[0], 1e-5));
  }
}

RC_GTEST_PROP(MixedLaws, OrderOfRowsDoesNotMatter, ()) {
  const auto seed = *rc::gen::inRange<std::uint64_t>(0, 100000);
  const auto model = crossed(seed);
  std::vector<std::size_t> order(model.y.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  Random random(seed, 1);
  shuffle(order, random);
  auto other = model;
  for (std::size_t i = 0; i < order.size(); ++i) {
    other.y[i] = model.y[order[i]];
    other.fixed[0][i] = model.fixed[0][order[i]];
    for (std::size_t t = 0; t < 2; ++t) {
      other.random[t].group[i] = model.random[t].group[order[i]];
    }
  }
  expect_same(fit_mixed(model), fit_mixed(other), 1);
}

RC_GTEST_PROP(MixedLaws, UnitOfYAndNumbersOfGroupsDoNotMatter, ()) {
  const auto model = crossed(*rc::gen::inRange<std::uint64_t>(0, 100000));
  const double unit = *rc::gen::element(0.01, 3.0, 1000.0);
  auto other = model;
  for (double& y : other.y) {
    y *= unit;
  }
  for (int& g : other.random[0].group) {
    g = -1000003 * g - 17;
  }
  std::swap(other.random[0], other.random[1]);
  auto again = fit_mixed(other);
  std::swap(again.random[0], again.random[1]);
  expect_same(fit_mixed(model), again, unit);
}

} // namespace
