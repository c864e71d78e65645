// A trial's two files, and what is said of them.
#include "baize/services/trial_analysis.h"
#include "baize/services/trial_design.h"
#include "baize/sheets/trial_csv.h"
#include "unit/trials_given.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace baize::services {
namespace {

const sheets::TrialCsv kFiles;

ReceivedFile example(const std::string& name) {
  std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/clubs/trial_example/" + name);
  std::ostringstream content;
  content << in.rdbuf();
  return {name, content.str()};
}

TrialRequest request() {
  TrialRequest asked;
  asked.design = trials::three_by_four();
  asked.days = *visit_days(*units::make_day(2025, 4, 3), 3, 4);
  asked.power.repeats = 200;
  return asked;
}

trials::AnalysisOptions treated() {
  trials::AnalysisOptions options;
  options.treated = *units::make_day(2025, 4, 1);
  return options;
}

/// The first sentence about these two files.
std::string refusal(const std::string& plan, const std::string& records) {
  const auto answer =
      analyse_trial({"trial.csv", plan}, {"trial_records.csv", records}, treated(), kFiles);
  return answer.problems.empty() ? "" : units::sentence(answer.problems.front());
}

constexpr const char* kPlan = "trial,layout,seed,control,plot,block,treatment\n"
                              "T,randomised_blocks,7,a,1,1,a\n"
                              "T,,,,2,1,b\n"
                              "T,,,,3,2,b\n"
                              "T,,,,4,2,a\n";
constexpr const char* kRecords = "trial,day,plot,score\n"
                                 "T,2025-04-04,1,8\nT,2025-04-04,2,6\n"
                                 "T,2025-04-04,3,7\nT,2025-04-04,4,9\n";

std::string with(std::string text, const std::string& old, const std::string& now) {
  const auto at = text.find(old);
  EXPECT_NE(at, std::string::npos) << old;
  return at == std::string::npos ? text : text.replace(at, old.size(), now);
}

TEST(TrialFiles, APlanReadsBack) {
  for (const auto layout : {trials::Layout::completely_randomised, trials::Layout::split_plot,
                            trials::Layout::strip_plot}) {
    trials::Design design = trials::split_of(layout);
    if (layout == trials::Layout::completely_randomised) {
      design.seconds.clear();
    }
    design.treatments[1] = "solid, \"deep\"";
    const trials::Plan plan = *trials::lay_out(design);
    const auto reading = kFiles.read({"trial.csv", kFiles.write_plan(plan)},
                                     {"records.csv", kFiles.write_sheet(plan, request().days)});
    ASSERT_TRUE(reading.good()) << units::sentence(reading.problems.front());
    EXPECT_EQ(reading.plan, plan);
    EXPECT_TRUE(reading.records.empty());
    EXPECT_EQ(reading.rows_without_value, static_cast<int>(3 * plan.plots.size()));
  }
}

TEST(TrialFiles, TheSheetFollowsTheWalkAndHidesTreatments) {
  const auto review = design_trial(request(), kFiles);
  ASSERT_TRUE(review) << units::sentence(review.error());
  EXPECT_EQ(review->sheet_csv.find("coring"), std::string::npos);
  EXPECT_EQ(review->sheet_page.find("coring"), std::string::npos);
  EXPECT_NE(review->sheet_csv.find("Spring tines,2025-04-03,101,1,"), std::string::npos);
  EXPECT_NE(review->sheet_csv.find("Spring tines,2025-04-07,101,12,"), std::string::npos)
      << "the second visit goes backwards";
  EXPECT_NE(review->sheet_page.find("7 April 2025"), std::string::npos);
  EXPECT_EQ(design_trial(request(), kFiles)->plan_csv, review->plan_csv);
}

TEST(TrialFiles, TheDesignSaysWhatItCouldFind) {
  const auto review = design_trial(request(), kFiles);
  ASSERT_TRUE(review);
  EXPECT_EQ(review->sentence.rfind("With 4 blocks a difference of ", 0), 0U) << review->sentence;
  EXPECT_NE(review->sentence.find("in 80 of 100 such trials; with 6, "), std::string::npos);
  EXPECT_NE(review->notes.back().find("label and local rules"), std::string::npos);
  TrialRequest small = request();
  small.design.blocks = 2;
  small.design.greens.clear();
  EXPECT_EQ(design_trial(small, kFiles)->notes.front().rfind("Only 2 error degrees", 0), 0U);
}

TEST(TrialFiles, TheWorkedExampleIsAnswered) {
  const auto answer =
      analyse_trial(example("trial.csv"), example("trial_records.csv"), treated(), kFiles);
  ASSERT_TRUE(answer.review) << units::sentence(answer.problems.front());
  const TrialAnalysisReview& review = *answer.review;
  EXPECT_EQ(review.sentence, "solid was back about 9 days earlier than coring (3 to 15). Over the "
                             "whole trial none scored 1.6 points higher than coring (1.3 to 1.8).");
  EXPECT_EQ(review.evidence, "randomised");
  EXPECT_EQ(review.analysis.days.size(), 9U);
  EXPECT_EQ(review.analysis.interpolated, 1);
  ASSERT_TRUE(review.analysis.back && review.analysis.back->summary.usable);
  const auto& means = review.analysis.overall.comparisons.at(0).means;
  EXPECT_EQ(means[0].name, "none");
  EXPECT_EQ(means[0].letters, "a");
  EXPECT_EQ(review.notes.front(), "1 row of the records had no value yet and counted as not "
                                  "measured.");
}

TEST(TrialFiles, EachSlipIsOneClearSentence) {
  EXPECT_EQ(refusal(kPlan, kRecords), "");
  EXPECT_EQ(refusal(with(kPlan, ",2,1,b", ",1,1,b"), kRecords),
            "trial.csv: plot is '1', but must be a number that no other plot has.");
  EXPECT_EQ(refusal(kPlan, with(kRecords, "04,4,9", "04,44,9")),
            "trial_records.csv line 5: plot is '44', but must be a plot of the plan.");
  EXPECT_EQ(refusal(kPlan, with(kRecords, "T,2025-04-04,2", "U,2025-04-04,2")),
            "trial_records.csv line 3: trial is 'U', but must be 'T', as the plan says.");
  EXPECT_EQ(refusal(with(with(kPlan, ",2,1,b", ",2,1,a"), ",3,2,b", ",3,2,a"), kRecords)
                .rfind("trial.csv: treatment is 'a', but must be at least two different", 0),
            0U);
  EXPECT_EQ(refusal(with(with(kPlan, "3,2,b", "3,1,c"), "4,2,a", "4,1,d"), kRecords)
                .rfind("trial.csv: block is '1', but must be at least two blocks", 0),
            0U);
  EXPECT_EQ(refusal(with(kPlan, "randomised_blocks", "rows"), kRecords)
                .rfind("trial.csv line 2 column layout: layout is 'rows', but must be ", 0),
            0U);
  EXPECT_EQ(refusal(with(kPlan, "T,,,,3", "U,,,,3"), kRecords)
                .rfind("trial.csv line 4 column trial: trial is 'U', but must be 'T'", 0),
            0U);
  EXPECT_EQ(refusal(with(kPlan, ",7,", ",-7,"), kRecords)
                .rfind("trial.csv line 2 column seed: seed is '-7'", 0),
            0U);
  EXPECT_EQ(refusal(kPlan, with(kRecords, "4,9", "4,11")),
            "trial_records.csv line 5: score is '11', but must be 1 to 10.");
  EXPECT_EQ(refusal(kPlan, "trial,day,plot,score\nT,2025-04-04,1,\n")
                .rfind("trial_records.csv: records", 0),
            0U);
}

TEST(TrialFiles, AllScoresEqualIsAnAnswer) {
  const std::string equal = "day,plot,score\n2025-04-04,1,8\n2025-04-04,2,8\n"
                            "2025-04-04,3,8\n2025-04-04,4,8\n";
  const auto answer = analyse_trial({"trial.csv", kPlan}, {"r.csv", equal}, treated(), kFiles);
  ASSERT_TRUE(answer.review);
  EXPECT_FALSE(answer.review->analysis.summary.usable);
  EXPECT_EQ(answer.review->sentence.rfind("Nothing can be said of this trial: ", 0), 0U);
}

TEST(TrialFiles, FewBlocksCannotTellApart) {
  const auto answer = analyse_trial({"trial.csv", kPlan},
                                    {"r.csv", with(kRecords, "04,4,9", "04,4,7.5")}, {}, kFiles);
  ASSERT_TRUE(answer.review);
  EXPECT_EQ(answer.review->sentence.rfind("a and b cannot be told apart with 2 blocks: ", 0), 0U)
      << answer.review->sentence;
}

} // namespace
} // namespace baize::services
