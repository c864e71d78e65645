// What a server must refuse without harm: too much, too slow, too many, and what
// is no HTTP (RFC 9112).
#include "api_wire.h"

#include <gtest/gtest.h>

namespace {

using namespace std::chrono_literals;
using baize::api::Request;
using baize::api::Response;
using wire::Client;
using wire::get;
using wire::Server;
using wire::status_of;

Response length(const Request& request) {
  return {200, "text/plain", std::to_string(request.body.size()), true, {}};
}

int status_for(const Server& server, const std::string& bytes) {
  Client client(server.port());
  client.send(bytes);
  return status_of(client.answer());
}

TEST(ApiServerLimits, WhatIsNoHttpIsRefusedAndEnded) {
  Server server(length);
  const std::string host = "Host: localhost\r\n";
  for (const std::string& bytes : std::vector<std::string>{
           "hello\r\n\r\n", "GET\r\n\r\n", "GET /\r\n\r\n", "GET / HTTP/x\r\n\r\n",
           "GET / HTTP/1.1\r\n" + host + "bad header\r\n\r\n",
           "GET / HTTP/1.1\r\n" + host + "Content-Length: x\r\n\r\n",
           "GET / HTTP/1.1\r\n" + host + "Content-Length: -1\r\n\r\n",
           "GET / HTTP/1.1\r\n" + host + "Content-Length: 99999999999999999999\r\n\r\n",
           "POST / HTTP/1.1\r\n" + host + "Transfer-Encoding: chunked\r\n\r\nzz\r\n",
           "\x16\x03\x01\x02\x01\x01\xFC\x03\x03 this is TLS\r\n\r\n"}) {
    Client client(server.port());
    client.send(bytes);
    EXPECT_EQ(status_of(client.answer()), 400) << bytes;
    EXPECT_TRUE(client.ended()) << bytes;
  }
  EXPECT_EQ(status_for(server, get("/")), 200) << "others are served as before";
}

// RFC 9112, 3.2: a request without Host, or with two, must be answered 400.
TEST(ApiServerLimits, ExactlyOneHost) {
  Server server(length);
  EXPECT_EQ(status_for(server, "GET / HTTP/1.1\r\n\r\n"), 400);
  EXPECT_EQ(status_for(server, "GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n"), 400);
}

// RFC 9112, 6.1: a length and chunks together are a smuggler's request.
TEST(ApiServerLimits, LengthAndChunksTogetherAreRefused) {
  Server server(length);
  EXPECT_EQ(status_for(server, "POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 5\r\n"
                               "Transfer-Encoding: chunked\r\n\r\n0\r\n\r\n"),
            400);
  EXPECT_EQ(status_for(server, "POST / HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\n"
                               "Content-Length: 5\r\n\r\n0\r\n\r\n"),
            400);
  EXPECT_EQ(status_for(server, "POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 5\r\n"
                               "Content-Length: 6\r\n\r\nhello!"),
            400);
}

TEST(ApiServerLimits, ALongHeader) {
  Server server(length);
  EXPECT_EQ(status_for(server, get("/", "X: " + std::string(15'000, 'x') + "\r\n")), 200);
  EXPECT_EQ(status_for(server, get("/", "X: " + std::string(17'000, 'x') + "\r\n")), 431);
  EXPECT_EQ(status_for(server, get("/" + std::string(200'000, 'x'))), 431);
}

TEST(ApiServerLimits, ALongBody) {
  baize::api::ServerOptions options;
  options.body_limit = [](std::string_view method, std::string_view target) {
    return method == "POST" && target == "/big" ? 10'000'000ULL : 1000ULL;
  };
  Server server(length, options);
  const auto post = [](const std::string& target, std::size_t bytes) {
    return "POST " + target + " HTTP/1.1\r\nHost: a\r\nContent-Length: " + std::to_string(bytes) +
           "\r\n\r\n" + std::string(bytes, 'x');
  };
  EXPECT_EQ(status_for(server, post("/small", 1000)), 200);
  EXPECT_EQ(status_for(server, post("/small", 1001)), 413);
  EXPECT_EQ(status_for(server, post("/small", 900'000)), 413) << "read to the end, so it is seen";
  Client client(server.port());
  client.send(post("/big", 10'000'000));
  EXPECT_EQ(wire::body_of(client.answer()), "10000000");
  EXPECT_EQ(status_for(server, post("/big", 10'000'001)), 413);

  std::string chunked = "POST /small HTTP/1.1\r\nHost: a\r\nTransfer-Encoding: chunked\r\n\r\n";
  for (int i = 0; i < 5; ++i) {
    chunked += "100\r\n" + std::string(256, 'x') + "\r\n";
  }
  EXPECT_EQ(status_for(server, chunked), 413) << "no length was told";
}

TEST(ApiServerLimits, WhoSaysNothingIsLetGo) {
  baize::api::ServerOptions options;
  options.idle_timeout = 100ms;
  options.stall_timeout = 100ms;
  Server server(length, options);
  Client silent(server.port());
  Client half(server.port());
  half.send("GET / HTTP/1.1\r\nHost:");
  Client stalled(server.port());
  stalled.send("POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 10\r\n\r\nabc");
  EXPECT_TRUE(silent.ended());
  EXPECT_TRUE(half.ended());
  EXPECT_TRUE(stalled.ended());
}

// A byte now and then, each in time: the slow way to hold every connection.
TEST(ApiServerLimits, WhoOnlyTricklesIsLetGo) {
  baize::api::ServerOptions options;
  options.idle_timeout = 300ms;
  options.stall_timeout = 200ms;
  options.least_rate = 100;
  Server server(length, options);
  const auto trickle = [&](const std::string& begin) {
    Client client(server.port());
    client.send(begin);
    const auto since = std::chrono::steady_clock::now();
    const auto over = [&] { return std::chrono::steady_clock::now() - since; };
    std::thread drip([&] {
      while (over() < 1500ms) {
        client.send("x");
        std::this_thread::sleep_for(50ms);
      }
    });
    const bool ended = client.ended() && over() < 1200ms;
    drip.join();
    return ended;
  };
  EXPECT_TRUE(trickle("GET / HTTP/1.1\r\nX: ")) << "a header without end";
  EXPECT_TRUE(trickle("POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 1000\r\n\r\n"))
      << "20 bytes a second of a body";
  Client good(server.port());
  good.send("POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 1000\r\n\r\n");
  for (int i = 0; i < 10; ++i) {
    good.send(std::string(100, 'x'));
    std::this_thread::sleep_for(50ms);
  }
  EXPECT_EQ(wire::body_of(good.answer()), "1000") << "slow, and fast enough";
}

TEST(ApiServerLimits, OneWhoTakesTheAnswerTooSlowlyIsLetGo) {
  baize::api::ServerOptions options;
  options.stall_timeout = 100ms;
  options.grace = 2000ms;
  Server server(
      [](const Request&) {
        return Response{200, "text/plain", std::string(50'000'000, 'x'), true, {}};
      },
      options);
  Client client(server.port());
  client.send(get("/"));
  std::this_thread::sleep_for(400ms);
  EXPECT_LT(client.answer().size(), 50'000'000U) << "what the system had taken, and no more";
}

TEST(ApiServerLimits, WhenAllIsTakenTheLongestIdleMakesRoom) {
  baize::api::ServerOptions options;
  options.most_connections = 2;
  Server server(length, options);
  Client first(server.port());
  first.send(get("/"));
  EXPECT_EQ(status_of(first.answer()), 200);
  Client second(server.port());
  second.send(get("/"));
  EXPECT_EQ(status_of(second.answer()), 200);
  Client third(server.port());
  third.send(get("/"));
  EXPECT_EQ(status_of(third.answer()), 200);
  EXPECT_TRUE(first.ended());
  second.send(get("/"));
  EXPECT_EQ(status_of(second.answer()), 200) << "the second is still there";
}

TEST(ApiServerLimits, WhenAllAreBusyANewOneIsToldSo) {
  std::promise<void> begun;
  std::promise<void> gate;
  auto opened = gate.get_future();
  baize::api::ServerOptions options;
  options.most_connections = 1;
  Server server(
      [&](const Request& request) {
        begun.set_value();
        opened.wait();
        return length(request);
      },
      options);
  Client busy(server.port());
  busy.send(get("/"));
  begun.get_future().wait();
  Client refused(server.port()); // sends nothing, so that nothing is taken back
  EXPECT_EQ(status_of(refused.answer()), 503);
  gate.set_value();
  EXPECT_EQ(status_of(busy.answer()), 200);
}

TEST(ApiServerLimits, OneWhoHangsUpEarlyHarmsNobody) {
  Server server([](const Request&) {
    return Response{200, "text/plain", std::string(20'000'000, 'x'), true, {}};
  });
  for (int i = 0; i < 5; ++i) {
    const Client gone(server.port());
    gone.send(get("/"));
  }
  Client client(server.port());
  client.send(get("/"));
  EXPECT_EQ(wire::body_of(client.answer()).size(), 20'000'000U);
}

} // namespace
