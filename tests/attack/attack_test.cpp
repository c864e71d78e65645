// Every route, asked for by everybody who may not (README.md beside this file).
#include "fortress.h"
#include "unit/api_contract.h"

#include <gtest/gtest.h>

#include <set>
#include <sstream>

namespace attack {
namespace {

using services::Right;
using services::Role;
using Where = api::Need::Where;

std::string shown(const Asker& asker, const api::RouteName& route) {
  return asker.who + " asks " + std::string(route.method) + " " + std::string(route.pattern);
}

/// What the table says must come of it; absent: it is allowed.
std::optional<int> refusal_of(const api::Need& need, const std::optional<Role>& role_here,
                              bool person) {
  if (need.where == Where::open) {
    return std::nullopt;
  }
  if (need.where == Where::person && !person) {
    return 403;
  }
  if (need.where == Where::somewhere && !(role_here && services::may(*role_here, need.right))) {
    return 403;
  }
  if (need.where == Where::here && !(role_here && services::may(*role_here, need.right))) {
    return 403;
  }
  return std::nullopt;
}

class Attack : public testing::Test {
 protected:
  /// Refused with this status, in the refusal's form, without a word of others,
  /// and nothing has changed.
  void refused(const Asker& asker, const api::RouteName& route, const std::string& target,
               int status, const std::string& leaks_of = "hill",
               const std::optional<std::string>& body = std::nullopt,
               const std::optional<std::string>& content_type = std::nullopt) {
    const auto response = fortress.ask(asker, route, target, body, content_type);
    EXPECT_EQ(response.status, status) << shown(asker, route) << "\n" << response.body;
    EXPECT_EQ(contract::faults("Refusal", response.body), "") << shown(asker, route);
    EXPECT_EQ(fortress.leak(without(response.body, target), leaks_of), "")
        << shown(asker, route) << "\n"
        << response.body;
    EXPECT_EQ(made::header(response, "Set-Cookie"), "") << shown(asker, route);
    EXPECT_EQ(made::header(response, "Cache-Control"), "no-store");
    EXPECT_TRUE(fortress.untouched()) << shown(asker, route);
    ++attacks;
  }
  /// The answer without what was asked for, which it may say back.
  static std::string without(std::string text, const std::string& target) {
    constexpr std::size_t kIdentifier = 20;
    std::istringstream parts(target);
    for (std::string part; std::getline(parts, part, '/');) {
      for (auto at = text.find(part); part.size() >= kIdentifier && at != std::string::npos;
           at = text.find(part)) {
        text.erase(at, part.size());
      }
    }
    return text;
  }
  void TearDown() override { EXPECT_GT(attacks, 20) << "no attack: the test has lost its table"; }

  Fortress fortress;
  int attacks = 0;
};

TEST(Table, EveryRouteSaysWhatItNeeds) {
  const std::set<std::string> open{
      "GET /healthz",           "GET /api/v1/session",           "POST /api/v1/session",
      "DELETE /api/v1/session", "POST /api/v1/invitations/look", "POST /api/v1/invitations/accept"};
  for (const auto& route : api::route_names()) {
    const std::string name = std::string(route.method) + " " + std::string(route.pattern);
    const bool of_club = route.pattern.starts_with("/api/v1/clubs/{club}");
    EXPECT_NE(route.need.where, Where::unsaid) << name;
    EXPECT_EQ(route.need.where == Where::here, of_club) << name
                                                        << ": a club's things need a right "
                                                           "at that club";
    EXPECT_EQ(route.need.where == Where::open, open.contains(name)) << name;
    if (changes(route) && of_club) {
      EXPECT_NE(route.need.right, Right::look) << name << ": who looks must change nothing";
    }
  }
}

TEST_F(Attack, WithoutASessionThatHolds) {
  const std::vector<Asker> askers{
      {"nobody", ""},
      {"forged", "baize_session=aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"},
      {"empty", "baize_session="},
      {"broken", "baize_session=';--\"; ; =; baize_session"},
      {"the other cookie", "__Host-baize_session=" + fortress.world.sign_in("hill_observer")},
      fortress.expired(),
      fortress.cut_off()};
  fortress.settle();
  for (const auto& route : api::route_names()) {
    if (route.need.where == Where::open) {
      continue;
    }
    for (const Asker& asker : askers) {
      refused(asker, route, fortress.target(route, "hill", "hill"), 401);
    }
  }
}

TEST_F(Attack, FromAnotherClub) {
  const Asker head = fortress.in_role("moor", Role::head_greenkeeper);
  const Asker link = fortress.by_link("moor");
  for (const auto& route : api::route_names()) {
    if (route.need.where != Where::here) {
      continue;
    }
    for (const Asker& asker : {head, link}) {
      refused(asker, route, fortress.target(route, "hill", "hill"), 404);
      // As for a club that does not exist, to the byte but for its name.
      const std::string there = fortress.target(route, "hill", "hill");
      const std::string nowhere = fortress.target(route, "gone", "hill");
      std::string one = fortress.ask(asker, route, there).body;
      std::string other = fortress.ask(asker, route, nowhere).body;
      for (auto at = other.find("gone"); at != std::string::npos; at = other.find("gone")) {
        other.replace(at, 4, "hill");
      }
      EXPECT_EQ(one, other) << shown(asker, route);
    }
  }
}

TEST_F(Attack, InALowerRole) {
  for (const services::RoleRights& line : services::kRoles) {
    const Asker asker = fortress.in_role("hill", line.role);
    for (const auto& route : api::route_names()) {
      if (const auto status = refusal_of(route.need, line.role, true)) {
        refused(asker, route, fortress.target(route, "hill", "hill"), *status, "moor");
      }
    }
  }
}

TEST_F(Attack, ByACommitteesLink) {
  const Asker asker = fortress.by_link("hill");
  for (const auto& route : api::route_names()) {
    if (const auto status = refusal_of(route.need, Role::reader, false)) {
      refused(asker, route, fortress.target(route, "hill", "hill"), *status, "moor");
    }
    if (changes(route) && route.need.where != Where::open) {
      refused(asker, route, fortress.target(route, "hill", "hill"), 403, "moor");
    }
  }
}

TEST_F(Attack, WithIdentifiersOfTheOtherClub) {
  const Asker asker = fortress.in_role("hill", Role::head_greenkeeper);
  for (const auto& route : api::route_names()) {
    const std::string target = fortress.target(route, "hill", "moor");
    if (target != fortress.target(route, "hill", "hill")) {
      refused(asker, route, target, 404, "moor");
    }
    const std::string forged = std::string(route.pattern);
    if (forged.find('{') != std::string::npos && route.need.where == Where::here) {
      refused(asker, route, fortress.target(route, "moor", "moor"), 404, "moor");
    }
  }
}

TEST_F(Attack, WithBodiesThatAreBroken) {
  const Asker asker = fortress.in_role("hill", Role::head_greenkeeper);
  const std::vector<std::string> bodies{
      "",
      "{",
      "[]",
      "null",
      "\"text\"",
      "{\"a\":",
      "\xff\xfe",
      R"({"role":{"$ne":1}})",
      std::string(5000, '['),
      R"({"role":"owner","name":1,"token":[],"label":"","days":-1})"};
  for (const auto& route : api::route_names()) {
    if (!has_body(route)) {
      continue;
    }
    for (const std::string& body : bodies) {
      refused(asker, route, fortress.target(route, "hill", "hill"), 400, "moor", body);
    }
    for (const std::string type :
         {"", "text/plain", "application/x-www-form-urlencoded", "multipart/form-data; boundary=x",
          "application/jsonp", "image/svg+xml"}) {
      refused(asker, route, fortress.target(route, "hill", "hill"), 415, "moor", std::nullopt,
              type);
    }
  }
}

TEST_F(Attack, FromAnotherSite) {
  const Asker good = fortress.in_role("hill", Role::head_greenkeeper);
  const std::vector<Asker> askers{
      {"a foreign page", good.cookie, "http://evil.example"},
      {"a page like ours", good.cookie, "http://localhost.evil.example"},
      {"another port", good.cookie, "http://localhost:81"},
      {"an opaque page", good.cookie, "null"},
      {"nowhere", good.cookie, ""},
      {"cross-site", good.cookie, "", "cross-site"},
      {"same-site only", good.cookie, "", "same-site"},
      {"typed in", good.cookie, "", "none"},
      {"at odds", good.cookie, "http://localhost", "cross-site"}};
  for (const auto& route : api::route_names()) {
    if (!changes(route)) {
      continue;
    }
    for (const Asker& asker : askers) {
      refused(asker, route, fortress.target(route, "hill", "hill"), 403, "moor");
    }
  }
}

/// The suite could not tell a locked door from a wall: who may, is let in.
TEST_F(Attack, WhoMayIsLetIn) {
  for (const auto& route : api::route_names()) {
    for (const services::RoleRights& line : services::kRoles) {
      if (refusal_of(route.need, line.role, true)) {
        continue;
      }
      std::optional<Fortress> changed; // each change on a database of its own
      Fortress& fresh = changes(route) ? changed.emplace() : fortress;
      const Asker asker = fresh.in_role("hill", line.role);
      const auto response = fresh.ask(asker, route, fresh.target(route, "hill", "hill"));
      EXPECT_NE(code_of(response), "not_allowed") << shown(asker, route);
      EXPECT_NE(code_of(response), "not_signed_in") << shown(asker, route);
      EXPECT_LT(response.status, 500) << shown(asker, route) << response.body;
      EXPECT_EQ(fresh.leak(response.body, "moor"), "") << shown(asker, route);
      if (!changes(route)) {
        // One visit is too few for the season model, whoever asks.
        EXPECT_TRUE(response.status == 200 || code_of(response) == "too_few_visits")
            << shown(asker, route) << response.body;
      }
      ++attacks;
    }
  }
}

TEST_F(Attack, FilesForAClubOfOthers) {
  const Asker asker = fortress.in_role("hill", Role::head_greenkeeper);
  const api::RouteName route{"POST", "/api/v1/import", {}};
  const auto sent = [&](const std::string& query) {
    return fortress.ask(asker, route, "/api/v1/import" + query,
                        R"({"files":[{"name":"club.csv","content":"elsewhere"}]})");
  };
  // The pretended reader takes "elsewhere" for the club "another".
  for (const std::string query : {"", "?dry_run=true"}) {
    EXPECT_EQ(sent(query).status, 404);
    EXPECT_EQ(code_of(sent(query)), "no_such_club");
    EXPECT_TRUE(fortress.untouched());
  }
  attacks = 100;
}

TEST_F(Attack, TheListOfClubsIsOnesOwn) {
  const Asker asker = fortress.in_role("moor", Role::reader);
  const api::RouteName clubs{"GET", "/api/v1/clubs", {}};
  const auto response = fortress.ask(asker, clubs, "/api/v1/clubs");
  EXPECT_EQ(response.body, R"({"clubs":[{"id":"moor","name":"Moor by the water"}]})");
  EXPECT_EQ(made::header(response, "Cache-Control"), "private, no-cache");
  const auto other = fortress.ask(fortress.in_role("hill", Role::reader), clubs, "/api/v1/clubs");
  EXPECT_NE(made::header(response, "ETag"), made::header(other, "ETag"));
  attacks = 100;
}

} // namespace
} // namespace attack
