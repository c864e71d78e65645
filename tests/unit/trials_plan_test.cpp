#include "baize/trials/plan.h"
#include "unit/trials_given.h"

#include <gtest/gtest.h>

namespace baize::trials {
namespace {

Plan good() {
  return *lay_out(split_of(Layout::split_plot));
}

template <class Change> std::string code_after(Change change, Plan plan = good()) {
  change(plan);
  const auto problem = problem_of(plan);
  return problem ? problem->code : "";
}

TEST(TrialPlan, EachRuleIsHeld) {
  EXPECT_EQ(code_after([](Plan&) {}), "");
  EXPECT_EQ(code_after([](Plan& p) { p.trial.clear(); }), "trial_unnamed");
  EXPECT_EQ(code_after([](Plan& p) { p.plots.clear(); }), "no_plots");
  EXPECT_EQ(code_after([](Plan& p) { p.plots.resize(2001); }), "too_many");
  EXPECT_EQ(code_after([](Plan& p) { p.plots[1].number = 101; }), "plot_twice");
  EXPECT_EQ(code_after([](Plan& p) { p.plots[1].number = 0; }), "plot_number");
  EXPECT_EQ(code_after([](Plan& p) { p.plots[1].treatment.clear(); }), "treatment_missing");
  EXPECT_EQ(code_after([](Plan& p) { p.plots[1].second.clear(); }), "treatment_missing");
  EXPECT_EQ(code_after([](Plan& p) { p.plots.pop_back(); }), "treatment_missing");
  EXPECT_EQ(code_after([](Plan& p) { p.plots[1].second = p.plots[0].second; }), "treatment_twice");
  EXPECT_EQ(code_after([](Plan& p) { p.control = "other"; }), "no_such_control");
  EXPECT_EQ(code_after([](Plan& p) {
              for (Plot& plot : p.plots) {
                plot.treatment = "none";
              }
            }),
            "one_treatment");
  EXPECT_EQ(code_after([](Plan& p) { p.plots.resize(6); }), "one_block");
}

TEST(TrialPlan, WholePlotsMustHoldOneTreatment) {
  EXPECT_EQ(code_after([](Plan& p) { std::swap(p.plots[0].treatment, p.plots[2].treatment); }),
            "treatment_twice");
  const Plan strips = *lay_out(split_of(Layout::strip_plot));
  EXPECT_EQ(code_after([](Plan& p) { std::swap(p.plots[0].second, p.plots[1].second); }, strips),
            "treatment_twice");
}

TEST(TrialPlan, SentencesNamePlotAndBlock) {
  Plan plan = *lay_out(three_by_four());
  plan.plots[4].treatment = plan.plots[3].treatment;
  EXPECT_EQ(units::sentence(*problem_of(plan)),
            "plot 202: treatment is '" + plan.plots[3].treatment +
                "', but must be once in each block, and it is twice in block 2.");
}

TEST(TrialPlan, TheControlComesFirst) {
  Plan plan = *lay_out(three_by_four());
  plan.control = "coring";
  EXPECT_EQ(treatments(plan).front(), "coring");
  EXPECT_EQ(treatments(plan).size(), 3U);
}

TEST(TrialPlan, WordsOfLayoutsReadBack) {
  for (const Layout layout : {Layout::completely_randomised, Layout::randomised_blocks,
                              Layout::split_plot, Layout::strip_plot}) {
    EXPECT_EQ(layout_of(word(layout)), layout);
  }
  EXPECT_FALSE(layout_of("latin"));
}

} // namespace
} // namespace baize::trials
