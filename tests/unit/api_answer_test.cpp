// Every GET route on a made club, each answer against its schema.
#include "api_contract.h"
#include "api_fakes.h"
#include "baize/api/routes.h"

#include <gtest/gtest.h>

namespace {

using made::header;
using made::kClub;
using made::World;
using nlohmann::json;

json body(const baize::api::Response& response) {
  return json::parse(response.body, nullptr, false);
}

struct Case {
  std::string target;
  std::string schema;
};
const std::vector<Case> kCases{
    {"/healthz", "Health"},
    {"/api/v1/fields", "Fields"},
    {"/api/v1/clubs", "Clubs"},
    {"/api/v1/session", "Session"},
    {kClub + "/greens", "GreensReview"},
    {kClub + "/greens?today=2024-05-01", "GreensReview"},
    {kClub + "/greens/2/years/2025", "SeasonReview"},
    {kClub + "/greens/2/years/2024?today=2024-05-01", "SeasonReview"},
    {kClub + "/greens/2/years/2025/model", "SeasonModel"},
    {kClub + "/model/checks", "SeasonChecks"},
    {kClub + "/works", "Works"},
    {kClub + "/works/2024%2F1%3Acoring", "WorkReview"},
    {kClub + "/methods", "MethodsReview"},
    {kClub + "/methods?definition=at_standard&kind=coring&by=tine_diameter&cuts=8,12"
             "&alongside=brushing,blowing",
     "MethodsReview"},
    {kClub + "/observers", "ObserversReview"},
    {kClub + "/consistency", "ConsistencyReview"},
    {kClub + "/consistency?from=2025-01-01&to=2025-12-31", "ConsistencyReview"},
    {kClub + "/consistency?today=2001-01-01", "ConsistencyReview"},
    {kClub + "/observers?today=2024-05-01", "ObserversReview"},
    {kClub + "/visits", "VisitPage"},
    {kClub + "/visits?green=2&from=2025-01-01&to=2025-03-31&offset=2&limit=5", "VisitPage"},
    {kClub + "/visits/v%2F1%3A25003", "VisitDetail"},
    {kClub + "/visits/v%2F1%3A25003/history", "History"}};

TEST(ApiAnswer, EveryAnswerMeetsItsSchema) {
  const World world;
  for (const Case& one : kCases) {
    const auto response = world.get(one.target);
    ASSERT_EQ(response.status, 200) << one.target << "\n" << response.body;
    EXPECT_EQ(response.content_type, "application/json");
    EXPECT_EQ(contract::faults(one.schema, response.body), "") << one.target;
  }
}

TEST(ApiAnswer, TheTableOfRoutesIsTheContracts) {
  std::set<std::string> table;
  for (const auto& route : baize::api::route_names()) {
    table.insert(std::string(route.method) + " " + std::string(route.pattern));
  }
  EXPECT_EQ(table, contract::operations());
}

/// A path of the contract with something in the place of each {id}.
std::string filled(std::string path) {
  for (const auto& [id, value] : std::map<std::string, std::string>{{"{club}", "c%2F1"},
                                                                    {"{green}", "2"},
                                                                    {"{year}", "2025"},
                                                                    {"{work}", "w"},
                                                                    {"{visit}", "v"}}) {
    if (const auto at = path.find(id); at != std::string::npos) {
      path.replace(at, id.size(), value);
    }
  }
  return path;
}

TEST(ApiAnswer, TheContractsQueryParametersAreKnown) {
  const World world;
  for (const auto& [path, methods] : contract::openapi()["paths"].items()) {
    for (const auto& parameter :
         methods.value("get", json::object()).value("parameters", json::array())) {
      if (parameter.value("in", "") != "query") {
        continue;
      }
      const std::string name = parameter["name"];
      const auto response = world.get(filled(path) + "?" + name + "=%21");
      EXPECT_NE(body(response)["problem"]["code"], "unknown_parameter") << name;
    }
  }
}

TEST(ApiAnswer, TheReportIsAFileToKeep) {
  World world;
  const std::string target = kClub + "/years/2025/report";
  const auto response = world.get(target);
  ASSERT_EQ(response.status, 200) << response.body;
  EXPECT_EQ(response.content_type, "text/html; charset=utf-8");
  EXPECT_EQ(header(response, "Content-Disposition"), "attachment; filename=\"c-1-2025.html\"");
  const std::string start = "<!doctype html>";
  ASSERT_TRUE(response.body.starts_with(start));
  EXPECT_EQ(contract::faults("ReportData", response.body.substr(start.size())), "");
  EXPECT_EQ(world.get(kClub + "/years/soon/report").status, 400);
  EXPECT_EQ(world.get("/api/v1/clubs/none/years/2025/report").status, 404);
  world.context.report_page = nullptr;
  EXPECT_EQ(body(world.get(target))["problem"]["code"], "pages_not_built");
}

TEST(ApiAnswer, VisitsAreCountedAndPaged) {
  const World world;
  const json all = body(world.get(kClub + "/visits?limit=1000"));
  EXPECT_EQ(all["total"], 240); // 3 greens, 2 years, 40 visits
  EXPECT_EQ(all["visits"].size(), 240U);
  const json second = body(world.get(kClub + "/visits?offset=1&limit=1"));
  EXPECT_EQ(second["visits"][0], all["visits"][1]);
  EXPECT_EQ(body(world.get(kClub + "/visits?green=2"))["total"], 80);
  const json march = body(world.get(kClub + "/visits?from=2025-03-01&to=2025-03-31"));
  ASSERT_GT(march["total"], 0);
  for (const json& visit : march["visits"]) {
    EXPECT_EQ(visit["day"].get<std::string>().substr(0, 7), "2025-03");
  }
  EXPECT_LT(body(world.get(kClub + "/visits?from=2025-03-01"))["total"], 120);
}

TEST(ApiAnswer, TodayCutsTheYear) {
  const World world;
  const json cut = body(world.get(kClub + "/greens/2/years/2025?today=2025-03-01"));
  EXPECT_EQ(cut["period"]["last"], "2025-03-01");
  EXPECT_EQ(cut["ledger"]["days"].size(), 60U);
  EXPECT_EQ(body(world.get(kClub + "/greens"))["today"], "2025-06-30");
}

TEST(ApiAnswer, HeadTellsTheLengthAndSendsNothing) {
  const World world;
  const auto get = world.get(kClub + "/greens");
  const auto head = world.ask("HEAD", kClub + "/greens");
  EXPECT_EQ(head.status, 200);
  EXPECT_FALSE(head.send_body);
  EXPECT_EQ(head.body.size(), get.body.size());
  EXPECT_EQ(header(head, "ETag"), header(get, "ETag"));
  EXPECT_EQ(world.ask("HEAD", "/nothing").status, 404);
}

TEST(ApiAnswer, SameTagWhileNothingWasWritten) {
  World world;
  baize::api::Request request;
  request.method = "GET";
  request.target = kClub + "/works";
  request.host = "localhost";
  const auto first = baize::api::answer(world.context, request);
  request.if_none_match = "\"other\", W/" + header(first, "ETag");
  const auto same = baize::api::answer(world.context, request);
  EXPECT_EQ(same.status, 304);
  EXPECT_TRUE(same.body.empty());
  EXPECT_FALSE(same.send_body);
  EXPECT_EQ(header(same, "ETag"), header(first, "ETag"));

  request.target = kClub + "/greens";
  EXPECT_EQ(baize::api::answer(world.context, request).status, 200) << "another path's tag";
  request.target = kClub + "/works";
  world.context.today = [] { return *baize::units::make_day(2025, 7, 1); };
  EXPECT_EQ(baize::api::answer(world.context, request).status, 200) << "another day";
  world.context.today = [] { return *baize::units::make_day(2025, 6, 30); };
  EXPECT_EQ(baize::api::answer(world.context, request).status, 304);
  baize::green::Records other;
  other.club.id = "other";
  world.store.put(other, {});
  EXPECT_EQ(baize::api::answer(world.context, request).status, 200) << "a write";
}

TEST(ApiAnswer, PagesCarryTheirTagAndPolicy) {
  const World world;
  const auto page = world.get("/");
  EXPECT_EQ(page.status, 200);
  EXPECT_EQ(page.content_type, "text/html; charset=utf-8");
  EXPECT_EQ(header(page, "ETag"), "\"page1\"");
  baize::api::Request request{"GET", "/", "", "127.0.0.1:80", "", "", "\"page1\""};
  EXPECT_EQ(baize::api::answer(world.context, request).status, 304);
  EXPECT_EQ(world.get("/missing.js").status, 404);
}

TEST(ApiAnswer, EveryAnswerIsProtected) {
  const World world;
  for (const std::string target : {"/", "/healthz", "/nothing", "/api/v1/clubs", "/%"}) {
    const auto response = world.get(target);
    const std::string policy = header(response, "Content-Security-Policy");
    EXPECT_NE(policy.find("default-src 'none'"), std::string::npos) << target;
    EXPECT_NE(policy.find("frame-ancestors 'none'"), std::string::npos);
    // The core of the pages may run ('wasm-unsafe-eval'), a script as text may not.
    EXPECT_EQ(policy.find("'unsafe-"), std::string::npos);
    EXPECT_EQ(header(response, "X-Content-Type-Options"), "nosniff");
    EXPECT_EQ(header(response, "Referrer-Policy"), "no-referrer");
    EXPECT_NE(header(response, "Cache-Control"), "") << target;
  }
}

} // namespace
