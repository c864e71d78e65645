// Designed trials against published and certified tables.
#include "baize/stats/sphericity.h"
#include "baize/stats/trial_means.h"
#include "reference/stats_model_data.h"

#include <map>
#include <sstream>

namespace baize::stats_reference {
namespace {

using stats::DesignedTrial;

std::vector<std::vector<std::string>> table(const std::string& name) {
  auto in = open_model_data(name);
  std::vector<std::vector<std::string>> rows;
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    std::istringstream cells(line);
    rows.emplace_back();
    for (std::string cell; std::getline(cells, cell, ',');) {
      rows.back().push_back(cell);
    }
  }
  return rows;
}

int code_of(std::map<std::string, int>& codes, const std::string& text) {
  return codes.emplace(text, static_cast<int>(codes.size())).first->second;
}

DesignedTrial oats() {
  DesignedTrial trial{{}, {{"variety", {}}, {"nitrogen", {}}}, {{"block", {}}, {"whole plot", {}}}};
  std::map<std::string, int> codes;
  for (const auto& row : table("mixed_models/oats.csv")) {
    trial.y.emplace_back(std::stod(row.at(3)));
    trial.treatments[0].level.push_back(code_of(codes, row[1]));
    trial.treatments[1].level.push_back(static_cast<int>(std::lround(10 * std::stod(row[2]))));
    trial.strata[0].level.push_back(code_of(codes, row[0]));
    trial.strata[1].level.push_back(code_of(codes, row[0] + row[1]));
  }
  return trial;
}

// Yates F (1935), the split plot of oats; table as in Venables and Ripley (2002) 10.2,
// confirmed with R's aov, to the digits given in the file.
TEST(OatsSplitPlot, MeetsThePublishedTable) {
  const auto given = model_json("mixed_models/expected.json");
  nlohmann::json expected;
  for (const auto& one : given.at("cases")) {
    if (one.at("id") == "oats_split_plot") {
      expected = one.at("anova");
    }
  }
  const auto found = stats::trial_anova(oats());
  ASSERT_TRUE(found.summary.usable) << found.summary.message;
  const auto& block = found.strata.at(0);
  EXPECT_EQ(block.residual_df, expected["Block"]["df"].get<int>());
  expect_digits(block.residual_ss, expected["Block"]["ss"], 8.5, "block");
  const auto& whole = found.strata.at(1);
  EXPECT_EQ(whole.residual_df, 10);
  expect_digits(whole.residual_ss, expected["wholeplot_error"]["ss"], 8, "whole plot");
  expect_digits(whole.terms.at(0).ss, expected["Variety"]["ss"], 8, "variety");
  expect_digits(whole.terms[0].f.value(), expected["Variety"]["F"], 5, "variety F");
  expect_digits(whole.terms[0].p.value(), expected["Variety"]["p"], 4.5, "variety p");
  const auto& plots = found.strata.at(2);
  EXPECT_EQ(plots.residual_df, 45);
  expect_digits(plots.residual_ss, expected["subplot_error"]["ss"], 12, "subplot");
  expect_digits(plots.terms.at(0).ss, expected["nitro"]["ss"], 12, "nitrogen");
  expect_digits(plots.terms[0].f.value(), expected["nitro"]["F"], 6.5, "nitrogen F");
  expect_digits(plots.terms[0].p.value(), expected["nitro"]["p"], 4.5, "nitrogen p");
  expect_digits(plots.terms.at(1).ss, expected["nitro:Variety"]["ss"], 12, "both");
  expect_digits(plots.terms[1].f.value(), expected["nitro:Variety"]["F"], 4.5, "both F");
}

// The same trial: standard errors of differences 7.0789 (varieties), 4.4358 (nitrogen),
// 7.6830 (nitrogen within a variety), 9.7150 (other differences); Yates' own formulas,
// worked from the mean squares above.
TEST(OatsSplitPlot, HasAStandardErrorForEachKindOfDifference) {
  const double ea = 6013.305555555556 / 10;
  const double eb = 7968.75 / 45;
  const auto both = stats::trial_means(oats(), {0, 1});
  ASSERT_TRUE(both.summary.usable);
  int same = 0;
  for (const auto& pair : both.differences) {
    const bool within = both.means[pair.first].level[0] == both.means[pair.second].level[0];
    same += within ? 1 : 0;
    expect_digits(pair.standard_error, std::sqrt(2 * (within ? eb : (3 * eb + ea) / 4) / 6), 11,
                  "difference");
  }
  EXPECT_EQ(same, 18);
  expect_digits(stats::trial_means(oats(), {0}).differences.at(0).standard_error, 7.0789, 4.5,
                "varieties");
  expect_digits(stats::trial_means(oats(), {1}).differences.at(0).standard_error, 4.4358, 4.5,
                "nitrogen");
}

// NIST Statistical Reference Datasets through the general way: one treatment, no strata.
TEST(NistAnova, ThroughStrata) {
  for (const auto& [name, digits] :
       {std::pair{"SiRstvt", 12.5}, std::pair{"SmLs01t", 14.}, std::pair{"SmLs04t", 9.5}}) {
    const auto data = model_json(std::string("nist_strd/anova/") + name + ".json");
    DesignedTrial trial{{}, {{"group", {}}}, {}};
    int group = 0;
    for (const auto& values : data.at("groups")) {
      for (const double value : values) {
        trial.y.emplace_back(value);
        trial.treatments[0].level.push_back(group);
      }
      ++group;
    }
    const auto found = stats::trial_anova(trial);
    ASSERT_TRUE(found.summary.usable) << found.summary.message;
    const auto& term = found.strata.at(0).terms.at(0);
    expect_digits(term.ss, data.at("between_df_ss_ms_F")[1], digits, name);
    expect_digits(term.f.value(), data.at("between_df_ss_ms_F")[3], digits, name);
    expect_digits(found.strata[0].residual_ss, data.at("within_df_ss_ms")[1], digits, name);
    EXPECT_EQ(found.strata[0].residual_df, data.at("within_df_ss_ms")[0].get<int>());
  }
}

} // namespace
} // namespace baize::stats_reference
