// Published examples of linear mixed models (sources M1 to M4 in data/SOURCES.md),
// confirmed with R (lme4 1.1-31, lmerTest 3.1-3). R's search ends at about six
// digits of a variance, and its degrees of freedom are differenced numerically.
#include "baize/stats/mixed.h"
#include "baize/stats/mixed_contrast.h"
#include "reference/stats_mixed_data.h"

#include <cmath>

namespace baize::stats_reference {
namespace {

using namespace stats;

double variance(const MixedFit& fit, std::size_t term, std::size_t effect = 0) {
  return fit.random[term].sd[effect] * fit.random[term].sd[effect];
}

void expect_coefficient(const MixedCoefficient& found, const nlohmann::json& value_and_error,
                        const std::string& what) {
  expect_digits(found.value, value_and_error[0], 9, what);
  expect_digits(found.standard_error, value_and_error[1], 4.5, what + " error");
}

MixedModel sleepstudy(bool slope) {
  const MixedTable table("sleepstudy.csv");
  MixedModel model{table.numbers("Reaction"), {table.numbers("Days")}, true, {}};
  model.random.push_back({"subject", table.groups("Subject")});
  if (slope) {
    model.random[0].slopes = {table.numbers("Days")};
  }
  return model;
}

TEST(MixedReference, SleepstudyCorrelatedSlopes) {
  const auto truth = mixed_case("sleepstudy_reml");
  const auto fit = fit_mixed(sleepstudy(true));
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  expect_coefficient(fit.coefficients[0], truth.at("fixed").at("(Intercept)"), "constant");
  expect_coefficient(fit.coefficients[1], truth.at("fixed").at("Days"), "days");
  expect_digits(variance(fit, 0, 0), truth.at("var_intercept"), 4, "var constant");
  expect_digits(variance(fit, 0, 1), truth.at("var_slope"), 5, "var slope");
  expect_digits(fit.random[0].correlation[0][1], truth.at("corr"), 3, "correlation");
  expect_digits(fit.residual_sd * fit.residual_sd, truth.at("var_residual"), 5, "residual");
  expect_digits(fit.criterion, truth.at("reml_criterion"), 11, "criterion");
  expect_digits(fit.coefficients[0].df, truth.at("df_satterthwaite")[0], 6, "df");
  expect_digits(fit.coefficients[1].df, truth.at("df_satterthwaite")[1], 6, "df");
  expect_digits(fit.coefficients[1].p, truth.at("p_Days"), 4, "p");
  const auto test = mixed_f_test(fit, {{0, 1}});
  expect_digits(test.f, truth.at("F_Days"), 5, "F");
  for (const int subject : {308, 309}) {
    const auto& group = fit.random[0].groups[static_cast<std::size_t>(subject - 308)];
    ASSERT_EQ(group.group, subject);
    const auto& effects = truth.at("blup_" + std::to_string(subject));
    expect_digits(group.value[0], effects[0], 4, "effect");
    expect_digits(group.value[1], effects[1], 5, "effect");
  }
  // R: attr(ranef(fit, condVar = TRUE)$Subject, "postVar")[, , 1].
  expect_digits(fit.random[0].groups[0].sd[0], std::sqrt(145.7055875), 5, "effect sd");
  expect_digits(fit.random[0].groups[0].sd[1], std::sqrt(5.31228291), 5, "effect sd");
}

TEST(MixedReference, SleepstudyByFullLikelihood) {
  const auto truth = mixed_case("sleepstudy_ml");
  const auto fit = fit_mixed(sleepstudy(true), {.restricted = false});
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  expect_digits(variance(fit, 0, 0), truth.at("var_intercept"), 4, "var constant");
  expect_digits(variance(fit, 0, 1), truth.at("var_slope"), 4, "var slope");
  expect_digits(fit.random[0].correlation[0][1], truth.at("corr"), 3, "correlation");
  expect_digits(fit.residual_sd * fit.residual_sd, truth.at("var_residual"), 5, "residual");
  expect_digits(fit.criterion, truth.at("deviance"), 10, "deviance");
  expect_digits(fit.coefficients[0].standard_error, truth.at("se")[0], 4, "error");
  expect_digits(fit.coefficients[1].standard_error, truth.at("se")[1], 5, "error");
  // Bates et al. (2015): adding slopes to random constants, chi-squared 42.139 on 2.
  const auto smaller = fit_mixed(sleepstudy(false), {.restricted = false});
  const auto ratio = likelihood_ratio(smaller, fit);
  EXPECT_EQ(ratio.df, 2);
  EXPECT_NEAR(ratio.statistic, 42.139, 5e-4);
}

TEST(MixedReference, SleepstudyConstantsOnly) {
  const auto truth = mixed_case("sleepstudy_intercept");
  const auto fit = fit_mixed(sleepstudy(false));
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  expect_digits(variance(fit, 0), truth.at("var_subject"), 6, "var subject");
  expect_digits(fit.residual_sd * fit.residual_sd, truth.at("var_residual"), 7, "residual");
  expect_digits(fit.criterion, truth.at("reml_criterion"), 11, "criterion");
  for (std::size_t i = 0; i < 2; ++i) {
    expect_digits(fit.coefficients[i].standard_error, truth.at("se")[i], 6, "error");
    expect_digits(fit.coefficients[i].df, truth.at("df_satterthwaite")[i], 5, "df");
  }
}

TEST(MixedReference, PenicillinCrossed) {
  const auto truth = mixed_case("penicillin_crossed");
  const MixedTable table("penicillin.csv");
  MixedModel model{table.numbers("diameter"), {}, true, {}};
  model.random = {{"sample", table.groups("sample")}, {"plate", table.groups("plate")}};
  const auto fit = fit_mixed(model);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  expect_coefficient(fit.coefficients[0], truth.at("intercept"), "constant");
  expect_digits(variance(fit, 0), truth.at("var_sample"), 4, "sample");
  expect_digits(variance(fit, 1), truth.at("var_plate"), 5, "plate");
  expect_digits(fit.residual_sd * fit.residual_sd, truth.at("var_residual"), 5, "residual");
  expect_digits(fit.criterion, truth.at("reml_criterion"), 8, "criterion");
  expect_digits(fit.coefficients[0].df, truth.at("df_satterthwaite"), 4, "df");
  for (const auto& [name, effect] : truth.at("blup_sample").items()) {
    const auto group = static_cast<std::size_t>(name[0] - 'A');
    expect_digits(fit.random[0].groups[group].value[0], effect, 4, "sample " + name);
  }
  // R: sqrt of ranef's postVar, sample and plate.
  expect_digits(fit.random[0].groups[2].sd[0], 0.202170685, 5, "sample sd");
  expect_digits(fit.random[1].groups[0].sd[0], 0.271359303, 5, "plate sd");
}

TEST(MixedReference, DyestuffOneWay) {
  const auto truth = mixed_case("dyestuff");
  const MixedTable table("dyestuff.csv");
  const MixedModel model{table.numbers("Yield"), {}, true, {{"batch", table.groups("Batch")}}};
  const auto fit = fit_mixed(model);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  expect_coefficient(fit.coefficients[0], truth.at("intercept"), "constant");
  expect_digits(variance(fit, 0), truth.at("var_batch"), 9, "batch");
  expect_digits(fit.residual_sd * fit.residual_sd, truth.at("var_residual"), 9, "residual");
  expect_digits(fit.criterion, truth.at("reml_criterion"), 11, "criterion");
  expect_digits(fit.coefficients[0].df, 5, 7, "df");
  for (const auto& [name, effect] : truth.at("blup").items()) {
    const auto group = static_cast<std::size_t>(name[0] - 'A');
    expect_digits(fit.random[0].groups[group].value[0], effect, 5, "batch " + name);
  }
}

// R: lmer(Yield ~ 1 + (1 | Batch), Dyestuff2), and REML = FALSE.
TEST(MixedReference, Dyestuff2HasNoVarianceBetween) {
  const MixedTable table("dyestuff2.csv");
  const MixedModel model{table.numbers("Yield"), {}, true, {{"batch", table.groups("Batch")}}};
  const auto fit = fit_mixed(model);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  EXPECT_EQ(fit.summary.termination, Termination::boundary);
  EXPECT_EQ(fit.random[0].sd[0], 0);
  expect_digits(fit.coefficients[0].value, 5.6656, 12, "constant");
  expect_digits(fit.residual_sd, 3.715684274, 9, "residual");
  expect_digits(fit.criterion, 161.8282778, 9, "criterion");
  expect_digits(fit.coefficients[0].df, 29, 7, "df");
  const auto full = fit_mixed(model, {.restricted = false});
  expect_digits(full.log_likelihood, -81.43651833, 9, "log likelihood");
  expect_digits(full.residual_sd, 3.653231351, 9, "residual");
}

// R: lmer(strength ~ 1 + (1 | batch/cask), Pastes), and REML = FALSE.
TEST(MixedReference, PastesNested) {
  const MixedTable table("pastes.csv");
  MixedModel model{table.numbers("strength"), {}, true, {}};
  model.random = {{"batch", table.groups("batch")}, {"cask", table.groups("batch", "cask")}};
  const auto fit = fit_mixed(model);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  expect_digits(fit.criterion, 246.9907459, 9, "criterion");
  expect_digits(variance(fit, 0), 1.657310912, 4, "batch");
  expect_digits(variance(fit, 1), 8.433665931, 5, "cask");
  expect_digits(fit.residual_sd * fit.residual_sd, 0.678, 8, "residual"); // mean square within
  expect_digits(fit.coefficients[0].standard_error, 0.6768702151, 6, "error");
  expect_digits(fit.coefficients[0].df, 9, 6, "df");
  const auto full = fit_mixed(model, {.restricted = false});
  expect_digits(full.criterion, 247.9944659, 9, "deviance");
  expect_digits(full.coefficients[0].df, 10, 6, "df");
}

// Yates's split plot, whose mixed model is the classical analysis of variance.
TEST(MixedReference, OatsSplitPlot) {
  const auto truth = mixed_case("oats_split_plot");
  const MixedTable table("oats.csv");
  MixedModel model{table.numbers("yield"), {}, true, {}};
  const auto nitro = table.indicators("nitro");
  const auto variety = table.indicators("Variety"); // Victory, Golden Rain, Marvellous
  model.fixed = {nitro[1], nitro[2], nitro[3], variety[1], variety[2]};
  for (std::size_t v = 1; v < 3; ++v) {
    for (std::size_t n = 1; n < 4; ++n) {
      model.fixed.push_back(variety[v]);
      for (std::size_t r = 0; r < model.y.size(); ++r) {
        model.fixed.back()[r] *= nitro[n][r];
      }
    }
  }
  model.random = {{"block", table.groups("Block")}, {"plot", table.groups("Block", "Variety")}};
  const auto fit = fit_mixed(model);
  ASSERT_TRUE(fit.summary.usable) << fit.summary.message;
  const auto& reml = truth.at("reml");
  expect_digits(fit.criterion, reml.at("reml_criterion"), 8, "criterion");
  const auto& anova = truth.at("anova");
  // Of mean squares, where R's search gives five digits.
  const double blocks = anova.at("Block").at("ss").get<double>() / 5;
  const double plots = anova.at("wholeplot_error").at("ms");
  const double subplots = anova.at("subplot_error").at("ms");
  expect_digits(variance(fit, 0), (blocks - plots) / 12, 7, "block");
  expect_digits(variance(fit, 1), (plots - subplots) / 4, 7, "plot");
  expect_digits(fit.residual_sd * fit.residual_sd, anova.at("subplot_error").at("ms"), 7, "error");
  const auto row = [](std::initializer_list<std::pair<std::size_t, double>> entries) {
    std::vector<double> weights(12, 0);
    for (const auto& [at, weight] : entries) {
      weights[at] = weight;
    }
    return weights;
  };
  std::vector<std::vector<double>> nitrogen;
  std::vector<std::vector<double>> varieties;
  std::vector<std::vector<double>> both;
  for (std::size_t n = 0; n < 3; ++n) { // averaged over three varieties
    nitrogen.push_back(row({{1 + n, 1}, {6 + n, 1.0 / 3}, {9 + n, 1.0 / 3}}));
  }
  for (std::size_t v = 0; v < 2; ++v) { // averaged over four doses
    const std::size_t first = 6 + 3 * v;
    varieties.push_back(row({{4 + v, 1}, {first, 0.25}, {first + 1, 0.25}, {first + 2, 0.25}}));
    for (std::size_t n = 0; n < 3; ++n) {
      both.push_back(row({{first + n, 1}}));
    }
  }
  const auto check = [&](const auto& contrasts, const std::string& name, double df,
                         double error_df) {
    const auto test = mixed_f_test(fit, contrasts);
    ASSERT_TRUE(test.summary.usable) << test.summary.message;
    EXPECT_EQ(test.df, df) << name;
    expect_digits(test.error_df, error_df, 6, name + " df");
    expect_digits(test.f, anova.at(name).at("F"), 4.5, name);
    expect_digits(test.p, anova.at(name).at("p"), 4, name + " p");
  };
  check(nitrogen, "nitro", 3, 45);
  check(varieties, "Variety", 2, 10);
  check(both, "nitro:Variety", 6, 45);
}

} // namespace
} // namespace baize::stats_reference
