#include "baize/stats/distributions.h"
#include "baize/stats/ordinal_observers.h"
#include "baize/stats/random.h"

#include <Eigen/LU>
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <numbers>

namespace {

using namespace baize::stats;

struct Scores {
  OrdinalData data;
  std::vector<int> observer;
};

/// Scores 1 to 4 from thresholds -1, 0.5, 2, a covariate's coefficient of 0.7 and
/// observers of deviation `sd` on the logistic scale.
Scores drawn(std::uint64_t seed, int observers, int rows, double sd) {
  Random random(seed);
  Scores out{{{}, {{}}}, {}};
  for (int o = 0; o < observers; ++o) {
    const double shift = sd * random.normal();
    for (int r = 0; r < rows; ++r) {
      const double x = random.normal();
      const double u = random.uniform();
      const double line = 0.7 * x + shift + std::log(u / (1 - u));
      out.data.category.push_back(line < -1 ? 1 : line < 0.5 ? 2 : line < 2 ? 3 : 4);
      out.data.covariates[0].push_back(x);
      out.observer.push_back(100 + o);
    }
  }
  return out;
}

/// The log-likelihood anew, from the definition: each observer's shift integrated by
/// the trapezoidal rule over 12 deviations to each side.
double by_brute_force(const Scores& scores, OrdinalLink link, const std::vector<double>& threshold,
                      double coefficient, double sd) {
  std::map<int, std::vector<std::size_t>> rows;
  for (std::size_t i = 0; i < scores.observer.size(); ++i) {
    rows[scores.observer[i]].push_back(i);
  }
  const auto cdf = [&](double z) {
    return link == OrdinalLink::probit ? normal_cdf(z) : 1 / (1 + std::exp(-z));
  };
  double sum = 0;
  for (const auto& [observer, theirs] : rows) {
    double integral = 0;
    for (int step = -480; step <= 480; ++step) {
      const double u = step / 40.0;
      double density = std::exp(-u * u / 2) / std::sqrt(2 * std::numbers::pi) / 40;
      for (const std::size_t i : theirs) {
        const double line = coefficient * scores.data.covariates[0][i] + sd * u;
        const auto level = static_cast<std::size_t>(scores.data.category[i] - 1);
        const double high = level < threshold.size() ? cdf(threshold[level] - line) : 1;
        density *= high - (level > 0 ? cdf(threshold[level - 1] - line) : 0);
      }
      integral += density;
    }
    sum += std::log(integral);
  }
  return sum;
}

TEST(OrdinalObservers, TheLikelihoodIsThatOfItsDefinitionAndAtItsTop) {
  const auto scores = drawn(5, 8, 20, 1);
  for (const auto link : {OrdinalLink::logit, OrdinalLink::probit}) {
    const auto found =
        fit_ordinal_observers(scores.data, scores.observer, {.link = link, .nodes = 31});
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    std::vector<double> at;
    for (const auto& threshold : found.fit.thresholds) {
      at.push_back(threshold.value);
    }
    at.push_back(found.fit.coefficients[0].value);
    at.push_back(found.observer_sd);
    const auto height = [&](const std::vector<double>& p) {
      return by_brute_force(scores, link, {p[0], p[1], p[2]}, p[3], p[4]);
    };
    const double top = height(at);
    EXPECT_NEAR(found.fit.log_likelihood, top, 1e-7);
    const auto moved = [&](std::size_t i, double by, std::size_t j = 0, double too = 0) {
      auto p = at;
      p[i] += by;
      p[j] += too;
      return height(p);
    };
    const double h = 0.02; // second differences are good to 3e-3 then
    Eigen::MatrixXd information(5, 5);
    for (std::size_t i = 0; i < at.size(); ++i) {
      const double near = moved(i, h) - moved(i, -h);
      EXPECT_NEAR((8 * near - moved(i, 2 * h) + moved(i, -2 * h)) / (12 * h), 0, 1e-4) << i;
      for (std::size_t j = 0; j < at.size(); ++j) {
        information(i, j) =
            -(moved(i, h, j, h) - moved(i, h, j, -h) - moved(i, -h, j, h) + moved(i, -h, j, -h)) /
            (4 * h * h);
      }
    }
    const Eigen::MatrixXd covariance = information.inverse();
    EXPECT_NEAR(found.observer_sd_error / std::sqrt(covariance(4, 4)), 1, 5e-3);
    EXPECT_NEAR(found.fit.coefficients[0].standard_error / std::sqrt(covariance(3, 3)), 1, 5e-3);
    EXPECT_NEAR(found.fit.thresholds[0].standard_error / std::sqrt(covariance(0, 0)), 1, 5e-3);
  }
}

// Scores alike for each observer: any spread among them makes the data less likely.
TEST(OrdinalObservers, NoDifferenceIsThePlainFit) {
  Scores scores{{{}, {{}}}, {}};
  for (int o = 0; o < 4; ++o) {
    for (const auto& [category, x] : {std::pair{5, 0}, {6, 1}, {6, 0}, {7, 1}, {7, 0}, {8, 1}}) {
      scores.data.category.push_back(category);
      scores.data.covariates[0].push_back(x);
      scores.observer.push_back(o);
    }
  }
  const auto found = fit_ordinal_observers(scores.data, scores.observer);
  const auto plain = fit_ordinal(scores.data);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_TRUE(plain.summary.usable) << plain.summary.message;
  EXPECT_EQ(found.summary.termination, Termination::boundary);
  EXPECT_EQ(found.observer_sd, 0);
  EXPECT_EQ(found.fit.log_likelihood, plain.log_likelihood);
  EXPECT_EQ(found.fit.coefficients[0].value, plain.coefficients[0].value);
  EXPECT_EQ(found.likelihood_ratio_p, 1);
}

// Simulation: what was put in comes out. Bounds: about four standard errors of the
// mean of 12 sets.
TEST(OrdinalObservers, FindsWhatWasDrawn) {
  double sd = 0;
  double coefficient = 0;
  double threshold = 0;
  constexpr int kSets = 12;
  for (std::uint64_t seed = 0; seed < kSets; ++seed) {
    const auto scores = drawn(100 + seed, 15, 30, 0.8);
    const auto found = fit_ordinal_observers(scores.data, scores.observer);
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    sd += found.observer_sd / kSets;
    coefficient += found.fit.coefficients[0].value / kSets;
    threshold += found.fit.thresholds[1].value / kSets;
  }
  EXPECT_NEAR(sd, 0.8, 0.2);
  EXPECT_NEAR(coefficient, 0.7, 0.12);
  EXPECT_NEAR(threshold, 0.5, 0.3);
}

TEST(OrdinalObservers, TheShiftsFollowTheObservers) {
  const auto scores = drawn(9, 6, 60, 1.5);
  const auto found = fit_ordinal_observers(scores.data, scores.observer);
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  ASSERT_EQ(found.observers.size(), 6U);
  EXPECT_LT(found.likelihood_ratio_p, 1e-6);
  std::map<int, double> mean;
  for (std::size_t i = 0; i < scores.observer.size(); ++i) {
    mean[scores.observer[i]] += scores.data.category[i] / 60.0;
  }
  for (const auto& a : found.observers) {
    EXPECT_GT(a.sd, 0);
    for (const auto& b : found.observers) {
      if (mean[a.observer] > mean[b.observer] + 0.3) {
        EXPECT_GT(a.value, b.value);
      }
    }
  }
}

TEST(OrdinalObservers, Refusals) {
  const auto scores = drawn(1, 3, 10, 1);
  const auto code = [&](std::vector<int> observer, const OrdinalObserversOptions& options = {}) {
    const auto found = fit_ordinal_observers(scores.data, observer, options);
    EXPECT_FALSE(found.summary.usable);
    return found.summary.problem.code;
  };
  EXPECT_EQ(code({1, 2}), "lengths_differ");
  EXPECT_EQ(code(std::vector<int>(30, 1)), "one_group");
  EXPECT_EQ(code(scores.observer, {.nodes = 0}), "option_out_of_range");
  std::vector<int> each(30);
  for (int i = 0; i < 30; ++i) {
    each[static_cast<std::size_t>(i)] = i;
  }
  EXPECT_EQ(code(each), "group_is_row");
  const auto separated = fit_ordinal_observers({{1, 1, 2, 2}, {{1, 2, 3, 4}}}, {1, 1, 2, 2});
  EXPECT_EQ(separated.summary.problem.code, "separated");
}

} // namespace
