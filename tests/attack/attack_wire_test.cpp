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

} // namespace
} // namespace attack
