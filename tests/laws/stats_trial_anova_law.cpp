// Laws of designed trials, on split plots drawn at random.
#include "baize/stats/random.h"
#include "baize/stats/trial_means.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <cstdint>
#include <vector>

namespace {

using namespace baize::stats;

DesignedTrial drawn() {
  const int blocks = *rc::gen::inRange(2, 5);
  const int whole = *rc::gen::inRange(2, 4);
  const int sub = *rc::gen::inRange(2, 5);
  DesignedTrial trial{{}, {{"a", {}}, {"b", {}}}, {{"block", {}}, {"whole plot", {}}}};
  for (int i = 0; i < blocks * whole * sub; ++i) {
    trial.y.emplace_back(*rc::gen::inRange(-200, 200) / 8.0);
    trial.strata[0].level.push_back(i / (whole * sub));
    trial.strata[1].level.push_back(i / sub);
    trial.treatments[0].level.push_back(i / sub % whole);
    trial.treatments[1].level.push_back(i % sub);
  }
  return trial;
}

bool near(double a, double b, double scale = 1) {
  return std::fabs(a - b) <= 1e-9 * (scale + std::fabs(a) + std::fabs(b));
}

void expect_same(const TrialAnova& one, const TrialAnova& other, double unit) {
  RC_ASSERT(one.summary.usable == other.summary.usable);
  RC_ASSERT(one.strata.size() == other.strata.size());
  for (std::size_t s = 0; s < one.strata.size(); ++s) {
    RC_ASSERT(one.strata[s].residual_df == other.strata[s].residual_df);
    RC_ASSERT(near(one.strata[s].residual_ss * unit * unit, other.strata[s].residual_ss, 100));
    for (std::size_t t = 0; t < one.strata[s].terms.size(); ++t) {
      const TrialTerm& before = one.strata[s].terms[t];
      const TrialTerm& after = other.strata[s].terms[t];
      RC_ASSERT(near(before.ss * unit * unit, after.ss, 100));
      RC_ASSERT(before.f.has_value() == after.f.has_value());
    }
  }
}

RC_GTEST_PROP(TrialAnovaLaws, OrderUnitOriginAndNumberingAreFree, ()) {
  const DesignedTrial trial = drawn();
  const auto before = trial_anova(trial);
  RC_PRE(before.summary.usable);
  DesignedTrial moved = trial;
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < trial.y.size(); ++i) {
    order.push_back(i);
  }
  Random random(*rc::gen::inRange<std::uint64_t>(0, 1000));
  shuffle(order, random);
  for (std::size_t i = 0; i < order.size(); ++i) {
    moved.y[i] = 4 * *trial.y[order[i]] + 100;
    for (std::size_t k = 0; k < 2; ++k) {
      moved.treatments[k].level[i] = 50 - 7 * trial.treatments[k].level[order[i]];
      moved.strata[k].level[i] = 9 - trial.strata[k].level[order[i]];
    }
  }
  expect_same(before, trial_anova(moved), 4);
}

RC_GTEST_PROP(TrialAnovaLaws, TheSumsOfSquaresMakeTheWhole, ()) {
  const DesignedTrial trial = drawn();
  const auto found = trial_anova(trial);
  RC_PRE(found.summary.usable);
  double parts = 0;
  int df = 0;
  for (const auto& stratum : found.strata) {
    parts += stratum.residual_ss;
    df += stratum.residual_df;
    for (const auto& term : stratum.terms) {
      parts += term.ss;
      df += term.df;
    }
  }
  double whole = 0;
  for (const auto& value : trial.y) {
    whole += (*value - found.mean) * (*value - found.mean);
  }
  RC_ASSERT(near(parts, whole, 10));
  RC_ASSERT(df == static_cast<int>(trial.y.size()) - 1);
}

// A lost plot's own value no longer counts, and putting the filled value in its place
// changes nothing but the degrees of freedom (and takes off the bias of the terms).
RC_GTEST_PROP(TrialAnovaLaws, ALostPlotIsNotLookedAt, ()) {
  DesignedTrial trial = drawn();
  const auto plot = *rc::gen::inRange<std::size_t>(0, trial.y.size());
  trial.y[plot].reset();
  const auto lost = trial_anova(trial);
  RC_PRE(lost.summary.usable);
  trial.y[plot] = lost.y[plot];
  const auto filled = trial_anova(trial);
  RC_ASSERT(near(lost.strata.back().residual_ss, filled.strata.back().residual_ss, 10));
  RC_ASSERT(lost.strata.back().residual_df == filled.strata.back().residual_df - 1);
  for (std::size_t t = 0; t < filled.strata.back().terms.size(); ++t) {
    RC_ASSERT(lost.strata.back().terms[t].ss <= filled.strata.back().terms[t].ss + 1e-7);
  }
}

// Differences follow from the means, and the triangle of their errors holds.
RC_GTEST_PROP(TrialMeansLaws, DifferencesFollowFromMeans, ()) {
  const auto table = trial_means(drawn(), {0, 1});
  RC_PRE(table.summary.usable);
  for (const auto& pair : table.differences) {
    RC_ASSERT(near(pair.difference, table.means[pair.first].mean - table.means[pair.second].mean));
    RC_ASSERT(pair.standard_error > 0);
    RC_ASSERT(pair.df >= 1 - 1e-9);
  }
}

} // namespace
