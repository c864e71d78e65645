#include "api_contract.h"
#include "api_fakes.h"
#include "baize/api/import_body.h"

#include <gtest/gtest.h>

namespace {

using baize::api::read_import_body;
using made::World;
using nlohmann::json;

const std::string kImport = "/api/v1/clubs/c%2F1/import";

std::string files(const std::string& content) {
  return json{{"files", {{{"name", "rolls.csv"}, {"content", content}}}}}.dump();
}

TEST(ApiImport, KeepsWhatIsGood) {
  const World world;
  const auto before = json::parse(world.get("/healthz").body)["change_number"];
  const auto response = world.ask("POST", kImport, files("good"));
  ASSERT_EQ(response.status, 200) << response.body;
  EXPECT_EQ(contract::faults("ImportAnswer", response.body), "");
  const json answer = json::parse(response.body);
  EXPECT_EQ(answer["receipt"]["added"], 1);
  EXPECT_EQ(answer["remarks"].size(), 1U);
  EXPECT_EQ(world.store.last_author.name, "web");
  EXPECT_EQ(world.store.last_author.at, "2025-06-30T10:00:00Z");
  ASSERT_EQ(world.store.last_files.size(), 1U);
  EXPECT_EQ(world.store.last_files[0].content, "good");
  EXPECT_GT(json::parse(world.get("/healthz").body)["change_number"], before);
  EXPECT_EQ(world.get("/api/v1/clubs/c%2F1/visits/new").status, 200) << "seen at once";
}

TEST(ApiImport, SentTwiceChangesNothing) {
  const World world;
  EXPECT_EQ(world.ask("POST", kImport, files("good")).status, 200);
  const json again = json::parse(world.ask("POST", kImport, files("good")).body);
  EXPECT_EQ(again["receipt"]["added"], 0);
  EXPECT_EQ(again["receipt"]["unchanged"], 1);
}

TEST(ApiImport, ADryRunKeepsNothing) {
  const World world;
  const auto response = world.ask("POST", kImport + "?dry_run=true", files("good"));
  EXPECT_EQ(response.status, 200);
  EXPECT_EQ(contract::faults("ImportAnswer", response.body), "");
  EXPECT_FALSE(json::parse(response.body).contains("receipt"));
  EXPECT_TRUE(world.store.last_files.empty());
  EXPECT_EQ(world.ask("POST", kImport + "?dry_run=yes", files("good")).status, 400);
}

TEST(ApiImport, WithAProblemNothingIsKept) {
  const World world;
  for (const std::string content : {"bad", "elsewhere", "stray"}) {
    const auto response = world.ask("POST", kImport, files(content));
    EXPECT_EQ(response.status, 422) << content;
    EXPECT_EQ(contract::faults("ImportAnswer", response.body), "");
    const json answer = json::parse(response.body);
    EXPECT_EQ(answer["problems"].size(), 1U) << content;
    EXPECT_FALSE(answer.contains("receipt"));
  }
  EXPECT_TRUE(world.store.last_files.empty());
  const json bad = json::parse(world.ask("POST", kImport, files("bad")).body);
  EXPECT_EQ(bad["problems"][0]["problem"]["place"], "rolls.csv line 2");
}

TEST(ApiImport, FilesMayNameTheirClubThemselves) {
  const World world;
  const auto unnamed = world.ask("POST", "/api/v1/import", files("good"));
  EXPECT_EQ(unnamed.status, 422);
  EXPECT_EQ(contract::faults("ImportAnswer", unnamed.body), "");
  EXPECT_EQ(json::parse(unnamed.body)["problems"][0]["problem"]["code"], "club_not_named");
  const json bad = json::parse(world.ask("POST", "/api/v1/import", files("bad")).body);
  ASSERT_EQ(bad["problems"].size(), 1U) << "the file's own problem only";
  EXPECT_EQ(bad["problems"][0]["problem"]["code"], "score_out_of_range");
  const auto named = world.ask("POST", "/api/v1/import", files("elsewhere"));
  ASSERT_EQ(named.status, 200) << named.body;
  EXPECT_EQ(contract::faults("ImportAnswer", named.body), "");
  EXPECT_EQ(json::parse(named.body)["club"], "another");
}

TEST(ApiImport, AStoreThatFailsIsSaidAsSuch) {
  World world;
  world.store.broken = true;
  EXPECT_EQ(world.ask("POST", kImport, files("good")).status, 503);
}

TEST(ApiImport, OtherSitesPagesMayNotSend) {
  const World world;
  baize::api::Request request{"POST", kImport, files("good"), "localhost:8080", "", "", ""};
  request.content_type = "application/json; charset=utf-8";
  for (const char* origin : {"http://evil.example", "null", "http://localhost:8081",
                             "http://localhost", "file://", "http://localhost:8080.evil.example"}) {
    request.origin = origin;
    EXPECT_EQ(baize::api::answer(world.context, request).status, 403) << origin;
  }
  EXPECT_TRUE(world.store.last_files.empty());
  for (const char* origin : {"", "http://localhost:8080", "https://localhost:8080"}) {
    request.origin = origin;
    EXPECT_EQ(baize::api::answer(world.context, request).status, 200) << origin;
  }
  // What a plain HTML form can send without asking first is not taken.
  for (const char* type : {"", "text/plain", "application/x-www-form-urlencoded",
                           "multipart/form-data", "application/jsonx", "application/json-seq"}) {
    request.content_type = type;
    EXPECT_EQ(baize::api::answer(world.context, request).status, 415) << type;
  }
}

TEST(ApiImport, ReadsNamesAndContents) {
  const auto read = read_import_body(
      R"( {"files":[{"content":"a\nb\u00e9","name":"r.csv"},{"name":"w.csv","content":""}]} )");
  ASSERT_TRUE(read) << read.error().rule;
  ASSERT_EQ(read->size(), 2U);
  EXPECT_EQ((*read)[0].name, "r.csv");
  EXPECT_EQ((*read)[0].content, "a\nb\xC3\xA9");
  EXPECT_EQ((*read)[1].content, "");
}

TEST(ApiImport, RefusesAnythingElse) {
  for (const char* body : {R"({})",
                           R"([])",
                           R"("files")",
                           "null",
                           "7",
                           R"({"files":[]})",
                           R"({"files":{}})",
                           R"({"files":"x"})",
                           R"({"files":[7]})",
                           R"({"files":[{}]})",
                           R"({"files":[{"name":"a"}]})",
                           R"({"files":[{"name":"a","content":7}]})",
                           R"({"files":[{"name":"a","content":null}]})",
                           R"({"files":[{"name":"","content":""}]})",
                           R"({"files":[{"name":"../a","content":""}]})",
                           R"({"files":[{"name":"a\\b","content":""}]})",
                           R"({"files":[{"name":"a\u0000","content":""}]})",
                           R"({"files":[{"name":"a","name":"b","content":""}]})",
                           R"({"files":[{"name":"a","content":"","more":1}]})",
                           R"({"files":[{"name":"a","content":""},{"name":"a","content":""}]})",
                           R"({"files":[{"name":"a","content":""}],"files":[]})",
                           R"({"files":[{"name":"a","content":""}],"more":1})",
                           R"({"files":[[{"name":"a"}]]})"}) {
    const auto read = read_import_body(body);
    ASSERT_FALSE(read) << body;
    EXPECT_EQ(read.error().code, "bad_import") << body;
  }
  for (const char* body : {"", "{", R"({"files":[)", "{'files':[]}", R"({"files":[{"name":"a",}]})",
                           R"({"files":[{"name":"a","content":""}]} x)", "\xFF",
                           R"({"files":[{"name":"a","content":"cut)"}) {
    const auto read = read_import_body(body);
    ASSERT_FALSE(read) << body;
    EXPECT_EQ(read.error().code, "bad_json") << body;
  }
}

TEST(ApiImport, DepthAndNumberEndTheReadingAtOnce) {
  EXPECT_FALSE(read_import_body(std::string(10'000'000, '[')));
  std::string deep = R"({"files":)";
  for (int i = 0; i < 1'000'000; ++i) {
    deep += R"({"files":)";
  }
  EXPECT_FALSE(read_import_body(deep));
  const auto many = [](int count) {
    json list = json::array();
    for (int i = 0; i < count; ++i) {
      list.push_back({{"name", "f" + std::to_string(i)}, {"content", ""}});
    }
    return json{{"files", list}}.dump();
  };
  EXPECT_TRUE(read_import_body(many(64)));
  EXPECT_FALSE(read_import_body(many(65)));
}

} // namespace
