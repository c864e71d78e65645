// What is refused, with which status and code, and in the refusal's schema.
#include "api_contract.h"
#include "api_fakes.h"

#include <gtest/gtest.h>

namespace {

using made::header;
using made::kClub;
using made::World;
using nlohmann::json;

struct Refusal {
  std::string target;
  int status;
  std::string code;
};

TEST(ApiRefusal, SaysWhatIsWrong) {
  const World world;
  const std::vector<Refusal> cases{
      {"/nothing", 404, "no_such_page"},
      {"/api/v1", 404, "no_such_page"},
      {"/api/v1/clubs/", 404, "no_such_page"},
      {"/api/v1/clubs//greens", 404, "no_such_page"},
      {"/api/v1/clubs/c/1/greens", 404, "no_such_page"},
      {"/api/v1/clubs/x/greens", 404, "no_such_club"},
      {kClub + "/greens/99/years/2025", 404, "no_such_green"},
      {kClub + "/greens/1/years/1500", 404, "no_such_year"},
      {kClub + "/greens/1/years/now", 400, "bad_target"},
      {kClub + "/works/none", 404, "no_such_work"},
      {kClub + "/visits/none", 404, "no_such_visit"},
      {kClub + "/visits/none/history", 404, "no_such_visit"},
      {kClub + "/greens?today=2025-02-30", 400, "no_such_day"},
      {kClub + "/greens?toady=2025-02-20", 400, "unknown_parameter"},
      {kClub + "/methods?by=shoe_size", 400, "not_a_parameter"},
      {kClub + "/methods?kind=ploughing", 400, "unknown_kind"},
      {kClub + "/methods?by=tine_diameter&cuts=8,x", 400, "bad_query"},
      {kClub + "/methods?by=tine_diameter&cuts=8,7", 400, "cuts_out_of_order"},
      {kClub + "/methods?definition=soon", 400, "bad_query"},
      {kClub + "/visits?limit=0", 400, "bad_query"},
      {kClub + "/visits?limit=1001", 400, "bad_query"},
      {kClub + "/visits?limit=", 400, "bad_query"},
      {kClub + "/visits?offset=-1", 400, "bad_query"},
      {kClub + "/visits?offset=1e3", 400, "bad_query"},
      {kClub + "/visits?from=2025-03-02&to=2025-03-01", 400, "bad_query"},
      {"/api/v1/clubs?x=1", 400, "unknown_parameter"},
      {"/api/%zz", 400, "bad_target"},
      {"*", 400, "bad_target"},
  };
  for (const Refusal& one : cases) {
    const auto response = world.get(one.target);
    EXPECT_EQ(response.status, one.status) << one.target << "\n" << response.body;
    EXPECT_EQ(contract::faults("Refusal", response.body), "") << one.target;
    EXPECT_EQ(json::parse(response.body)["problem"]["code"], one.code) << one.target;
    EXPECT_FALSE(json::parse(response.body)["problem"]["rule"].get<std::string>().empty());
  }
}

TEST(ApiRefusal, NamesThePathAsItsPlace) {
  const World world;
  const auto response = world.get(kClub + "/visits?limit=0");
  EXPECT_EQ(json::parse(response.body)["problem"]["place"], kClub + "/visits");
}

// RFC 9110, 15.5.6: a 405 must say what is allowed.
TEST(ApiRefusal, OtherMethodsAreToldWhatIsAllowed) {
  const World world;
  const auto post = world.ask("POST", kClub + "/greens");
  EXPECT_EQ(post.status, 405);
  EXPECT_EQ(header(post, "Allow"), "GET, HEAD");
  const auto get = world.get(kClub + "/import");
  EXPECT_EQ(get.status, 405);
  EXPECT_EQ(header(get, "Allow"), "POST");
  EXPECT_EQ(world.ask("DELETE", kClub + "/visits/v").status, 405);
  EXPECT_EQ(world.ask("OPTIONS", "/").status, 405);
  EXPECT_EQ(world.ask("POST", "/").status, 405);
}

TEST(ApiRefusal, AStrangersNameForThisMachineIsRefused) {
  const World world;
  for (const std::string host : {"evil.example", "evil.example:8080", "", "localhost.evil.example",
                                 "127.0.0.1.evil.example", "[::2]:80"}) {
    const baize::api::Request request{"GET", "/healthz", "", host, "", "", ""};
    EXPECT_EQ(baize::api::answer(world.context, request).status, 403) << host;
  }
  for (const std::string host :
       {"localhost", "LOCALHOST:8080", "127.0.0.1:1", "[::1]", "[::1]:80"}) {
    const baize::api::Request request{"GET", "/healthz", "", host, "", "", ""};
    EXPECT_EQ(baize::api::answer(world.context, request).status, 200) << host;
  }
  const baize::api::Request absolute{"GET", "http://evil.example/healthz", "", "localhost", "", "",
                                     ""};
  EXPECT_EQ(baize::api::answer(world.context, absolute).status, 403);
}

TEST(ApiRefusal, AnyNameWhereTheServerWasToldSo) {
  World world;
  world.context.hosts.clear();
  const baize::api::Request request{"GET", "/healthz", "", "greens.example", "", "", ""};
  EXPECT_EQ(baize::api::answer(world.context, request).status, 200);
}

TEST(ApiRefusal, AStoreInTroubleIsNotTheAskersFault) {
  World world;
  world.store.broken = true;
  const auto health = world.get("/healthz");
  EXPECT_EQ(health.status, 503);
  EXPECT_EQ(contract::faults("Refusal", health.body), "");
  EXPECT_EQ(world.get(kClub + "/greens").status, 503);
}

TEST(ApiRefusal, LongInputIsCutInTheSentence) {
  const World world;
  const auto response = world.get("/" + std::string(10000, 'a'));
  EXPECT_EQ(response.status, 404);
  EXPECT_LT(response.body.size(), 2000U);
}

TEST(ApiRefusal, OnlyAnImportMayBeLong) {
  using baize::api::body_limit;
  EXPECT_EQ(body_limit("POST", kClub + "/import"), 160ULL << 20U);
  EXPECT_EQ(body_limit("POST", kClub + "/import?dry_run=true"), 160ULL << 20U);
  EXPECT_EQ(body_limit("GET", kClub + "/import"), 64ULL << 10U);
  EXPECT_EQ(body_limit("POST", kClub + "/imports"), 64ULL << 10U);
  EXPECT_EQ(body_limit("POST", "/%"), 64ULL << 10U);
}

} // namespace
