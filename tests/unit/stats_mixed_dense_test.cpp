// The fit against the textbook formulas on whole covariance matrices (Searle SR,
// Casella G, McCulloch CE (1992) Variance Components, 6.6 and 7.3): at the estimates the
// criterion is -2 log of the restricted likelihood written out, each group's effect and
// its deviation those of the conditional normal distribution.
#include "baize/stats/mixed.h"
#include "baize/stats/random.h"

#include <Eigen/Cholesky>
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <optional>

namespace {

using namespace baize::stats;
using Eigen::MatrixXd;
using Eigen::VectorXd;

/// Rows that meet their groups at random, some more often than others.
MixedModel scattered(std::uint64_t seed, const std::vector<int>& groups,
                     std::optional<std::size_t> slope) {
  Random random(seed);
  const int rows = 120;
  MixedModel model{{}, {{}}, true, {}};
  std::vector<std::vector<double>> effects;
  for (const int count : groups) {
    model.random.push_back({"g" + std::to_string(count), {}});
    effects.emplace_back();
    for (int g = 0; g < count; ++g) {
      effects.back().push_back(0.8 * random.normal());
    }
  }
  for (int r = 0; r < rows; ++r) {
    model.fixed[0].push_back(random.normal());
    double y = 5 + 0.4 * model.fixed[0].back() + 0.6 * random.normal();
    for (std::size_t t = 0; t < groups.size(); ++t) {
      const double skewed = random.uniform() * random.uniform();
      const int g = static_cast<int>(skewed * groups[t]);
      model.random[t].group.push_back(g);
      y += effects[t][static_cast<std::size_t>(g)];
    }
    model.y.push_back(y);
  }
  if (slope) {
    model.random[*slope].slopes = model.fixed;
    model.random[*slope].correlated = false;
  }
  return model;
}

/// The columns of one group's effects.
MatrixXd columns_of(const RandomTerm& term, int group) {
  const auto rows = static_cast<Eigen::Index>(term.group.size());
  MatrixXd z = MatrixXd::Zero(rows, 1 + static_cast<Eigen::Index>(term.slopes.size()));
  for (Eigen::Index r = 0; r < rows; ++r) {
    if (term.group[static_cast<std::size_t>(r)] != group) {
      continue;
    }
    z(r, 0) = 1;
    for (std::size_t s = 0; s < term.slopes.size(); ++s) {
      z(r, 1 + static_cast<Eigen::Index>(s)) = term.slopes[s][static_cast<std::size_t>(r)];
    }
  }
  return z;
}

MatrixXd variances_of(const RandomTermFit& term) {
  const auto size = static_cast<Eigen::Index>(term.sd.size());
  MatrixXd all = MatrixXd::Zero(size, size);
  for (Eigen::Index i = 0; i < size; ++i) {
    all(i, i) = std::pow(term.sd[static_cast<std::size_t>(i)], 2);
  }
  return all;
}

void expect_as_written_out(const MixedModel& model) {
  const MixedFit fit = fit_mixed(model);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const auto rows = static_cast<Eigen::Index>(model.y.size());
  const VectorXd y = Eigen::Map<const VectorXd>(model.y.data(), rows);
  MatrixXd x(rows, 2);
  x << VectorXd::Ones(rows), Eigen::Map<const VectorXd>(model.fixed[0].data(), rows);
  MatrixXd v = MatrixXd::Identity(rows, rows) * std::pow(fit.residual_sd, 2);
  for (std::size_t t = 0; t < model.random.size(); ++t) {
    const MatrixXd variances = variances_of(fit.random[t]);
    for (const GroupEffect& group : fit.random[t].groups) {
      const MatrixXd z = columns_of(model.random[t], group.group);
      v += z * variances * z.transpose();
    }
  }
  const Eigen::LLT<MatrixXd> root(v);
  const MatrixXd information = x.transpose() * root.solve(x);
  const VectorXd best = information.llt().solve(x.transpose() * root.solve(y));
  const VectorXd left = root.solve(y - x * best);
  const auto log_det = [](const Eigen::LLT<MatrixXd>& of) {
    return 2 * MatrixXd(of.matrixL()).diagonal().array().log().sum();
  };
  const double criterion = (static_cast<double>(rows) - 2) * std::log(2 * std::numbers::pi) +
                           log_det(root) + log_det(information.llt()) + (y - x * best).dot(left);
  EXPECT_NEAR(fit.criterion, criterion, 1e-8);
  EXPECT_NEAR(fit.coefficients[1].value, best(1), 1e-9);
  for (std::size_t t = 0; t < model.random.size(); ++t) {
    const MatrixXd variances = variances_of(fit.random[t]);
    for (const GroupEffect& group : fit.random[t].groups) {
      const MatrixXd through = variances * columns_of(model.random[t], group.group).transpose();
      const VectorXd effect = through * left;
      const MatrixXd given = variances - through * root.solve(through.transpose());
      for (Eigen::Index i = 0; i < effect.size(); ++i) {
        const auto at = static_cast<std::size_t>(i);
        EXPECT_NEAR(group.value[at], effect(i), 1e-9) << model.random[t].name << group.group;
        EXPECT_NEAR(group.sd[at], std::sqrt(given(i, i)), 1e-9);
      }
    }
  }
}

TEST(MixedDense, OneTerm) {
  expect_as_written_out(scattered(1, {25}, {}));
}

TEST(MixedDense, CrossedTerms) {
  expect_as_written_out(scattered(2, {25, 8}, {}));
  expect_as_written_out(scattered(3, {8, 25, 5}, {}));
}

// A slope in the larger term, and in the other, where its groups meet most columns.
TEST(MixedDense, CrossedTermsWithASlope) {
  expect_as_written_out(scattered(4, {12, 6}, 0));
  expect_as_written_out(scattered(5, {25, 5}, 1));
}

} // namespace
