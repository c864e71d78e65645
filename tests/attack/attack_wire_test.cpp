// Over a socket: bodies too long for their route are not even read.
#include "fortress.h"
#include "unit/api_wire.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace attack {
namespace {

TEST(AttackOnTheWire, BodiesTooLongForTheirRoute) {
  Fortress fortress;
  const Asker asker = fortress.in_role("hill", services::Role::head_greenkeeper);
  api::ServerOptions options;
  options.body_limit = api::body_limit;
  const wire::Server server(
      [&](const api::Request& request) { return api::answer(*fortress.context, request); },
      options);
  int attacks = 0;
  for (const auto& route : api::route_names()) {
    const std::string target = fortress.target(route, "hill", "hill");
    const auto limit = api::body_limit(route.method, target);
    for (const std::string& cookie : {asker.cookie, std::string("x=y")}) {
      wire::Client client(server.port());
      client.send(fmt::format("{} {} HTTP/1.1\r\nHost: localhost\r\nOrigin: http://localhost\r\n"
                              "Cookie: {}\r\nContent-Type: application/json\r\n"
                              "Content-Length: {}\r\n\r\n",
                              route.method, target, cookie, limit + 1));
      const std::string answer = client.answer();
      EXPECT_EQ(wire::status_of(answer), 413) << route.method << " " << route.pattern;
      EXPECT_EQ(fortress.leak(wire::body_of(answer), "moor"), "");
      ++attacks;
    }
  }
  EXPECT_GT(attacks, 50);
  EXPECT_TRUE(fortress.untouched());
}

// A stranger must not make the server read 160 MiB to tell that it is a stranger.
TEST(AttackOnTheWire, LargeBodiesOfStrangersAreNotRead) {
  Fortress fortress;
  const Asker keeper = fortress.in_role("hill", services::Role::head_greenkeeper);
  const Asker reader = fortress.in_role("hill", services::Role::reader);
  const Asker other = fortress.in_role("moor", services::Role::head_greenkeeper);
  api::ServerOptions options;
  options.body_limit = api::body_limit;
  options.turned_away = [&](const api::Request& head) {
    return api::turned_away(*fortress.context, head);
  };
  const wire::Server server(
      [&](const api::Request& request) { return api::answer(*fortress.context, request); },
      options);
  const auto first_line = [&](const api::RouteName& route, const std::string& cookie,
                              const std::string& length) {
    wire::Client client(server.port());
    // The body never comes: whoever waits for it answers nothing.
    client.send(fmt::format("{} {} HTTP/1.1\r\nHost: localhost\r\nOrigin: http://localhost\r\n"
                            "Cookie: {}\r\nContent-Type: {}\r\n"
                            "Expect: 100-continue\r\n{}\r\n\r\n",
                            route.method, fortress.target(route, "hill", "hill"), cookie,
                            good_type(route), length));
    return wire::status_of(client.answer());
  };
  int large = 0;
  for (const auto& route : api::route_names()) {
    const auto limit = api::body_limit(route.method, fortress.target(route, "hill", "hill"));
    if (limit <= 64U * 1024) {
      continue;
    }
    ++large;
    for (const std::string& length :
         {fmt::format("Content-Length: {}", limit), std::string("Transfer-Encoding: chunked")}) {
      EXPECT_EQ(first_line(route, "x=y", length), 401) << route.pattern;
      EXPECT_EQ(first_line(route, keeper.cookie, length), 100) << route.pattern;
      const bool of_a_club = route.pattern.find("{club}") != std::string_view::npos;
      EXPECT_EQ(first_line(route, other.cookie, length), of_a_club ? 404 : 100) << route.pattern;
      EXPECT_EQ(first_line(route, reader.cookie, length), 403) << route.pattern;
    }
  }
  EXPECT_GE(large, 2);
  EXPECT_TRUE(fortress.untouched());
}

} // namespace
} // namespace attack
