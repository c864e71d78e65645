#include "api_contract.h"
#include "api_fakes.h"
#include "baize/sheets/trial_csv.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace {

using nlohmann::json;

struct Trials : testing::Test {
  Trials() { world.context.trial_files = &files; }
  baize::api::Response post(const std::string& path, const json& body) const {
    return world.ask("POST", "/api/v1/trials/" + path, body.dump());
  }
  static json example() {
    json both = json::array();
    for (const char* name : {"trial.csv", "trial_records.csv"}) {
      std::ifstream in(std::string(BAIZE_SOURCE_DIR) + "/tests/clubs/trial_example/" + name);
      std::ostringstream content;
      content << in.rdbuf();
      both.push_back({{"name", name}, {"content", content.str()}});
    }
    return {{"files", both}};
  }
  static json asked() {
    return {{"trial", "T"}, {"treatments", {"a", "b", "c"}}, {"control", "a"}, {"blocks", 3},
            {"seed", 7},    {"first_visit", "2025-04-03"},   {"visits", 2}};
  }
  baize::sheets::TrialCsv files;
  made::World world;
};

TEST_F(Trials, ADrawnLayoutFollowsTheContract) {
  const auto response = post("design", asked());
  ASSERT_EQ(response.status, 200) << response.body;
  EXPECT_EQ(contract::faults("TrialDesign", response.body), "");
  EXPECT_EQ(contract::faults("TrialRequest", asked()), "");
  EXPECT_EQ(post("design", asked()).body, response.body) << "the same body, the same answer";
  const json answer = json::parse(response.body);
  EXPECT_EQ(answer["plots"].size(), 9U);
  EXPECT_EQ(answer["seed"], 7);
  json split = asked();
  split["layout"] = "split_plot";
  split["second_treatments"] = {"x", "y"};
  const auto two = post("design", split);
  ASSERT_EQ(two.status, 200) << two.body;
  EXPECT_EQ(contract::faults("TrialDesign", two.body), "");
  EXPECT_EQ(json::parse(two.body)["power"].size(), 2U);
}

TEST_F(Trials, TheComparisonFollowsTheContract) {
  const auto response = post("analyse?treated=2025-04-01&standard=8", example());
  ASSERT_EQ(response.status, 200) << response.body;
  EXPECT_EQ(contract::faults("TrialAnalysis", response.body), "");
  const json answer = json::parse(response.body);
  EXPECT_EQ(answer["evidence"], "randomised");
  EXPECT_EQ(answer["back"]["treatments"].size(), 2U) << "the control never fell";
  EXPECT_EQ(answer["overall"]["comparisons"][0]["against_control"].size(), 2U);
  const auto plain = post("analyse", example());
  EXPECT_EQ(contract::faults("TrialAnalysis", plain.body), "");
  EXPECT_FALSE(json::parse(plain.body).contains("back"));
}

TEST_F(Trials, ProblemsOfTheFilesComeTogether) {
  json body = example();
  body["files"][1]["content"] = "day,plot,score\n2025-04-03,101,x\n2025-04-03,102,y\n";
  const auto response = post("analyse", body);
  EXPECT_EQ(response.status, 422);
  EXPECT_EQ(contract::faults("TrialProblems", response.body), "");
  EXPECT_EQ(json::parse(response.body)["problems"].size(), 2U);
}

TEST_F(Trials, WrongRequestsAreRefused) {
  const auto code = [&](const std::string& path, const json& body) {
    const auto response = post(path, body);
    EXPECT_EQ(response.status, 400) << response.body;
    EXPECT_EQ(contract::faults("Refusal", response.body), "");
    return json::parse(response.body)["problem"]["code"].get<std::string>();
  };
  const auto changed = [&](const char* name, const json& value) {
    json body = asked();
    body[name] = value;
    return code("design", body);
  };
  EXPECT_EQ(changed("treatments", {"a"}), "option_out_of_range");
  EXPECT_EQ(changed("blocks", 1), "option_out_of_range");
  EXPECT_EQ(changed("blocks", "4"), "bad_trial");
  EXPECT_EQ(changed("seed", -1), "bad_trial");
  EXPECT_EQ(changed("layout", "rows"), "bad_trial");
  EXPECT_EQ(changed("colour", "red"), "bad_trial");
  EXPECT_EQ(changed("treatments", {{"a", 1}}), "bad_trial");
  EXPECT_EQ(changed("first_visit", "April"), "not_a_day");
  EXPECT_EQ(changed("plot_sd", -1), "option_out_of_range");
  EXPECT_EQ(code("design", json::array()), "bad_trial");
  EXPECT_EQ(code("analyse?treated=April", example()), "not_a_day");
  EXPECT_EQ(code("analyse?confidence=2", example()).substr(0, 6), "option");
  json one = example();
  one["files"].erase(1);
  EXPECT_EQ(code("analyse", one), "bad_import");
}

TEST_F(Trials, RecordsMayBeLongerThanOtherBodies) {
  EXPECT_EQ(baize::api::body_limit("POST", "/api/v1/trials/analyse"), 4ULL << 20U);
  EXPECT_EQ(baize::api::body_limit("POST", "/api/v1/trials/design"), 64ULL << 10U);
}

} // namespace
