// Real HTTP over real sockets. Rules by RFC 9110 (semantics) and RFC 9112 (HTTP/1.1).
#include "api_wire.h"
#include "baize/api/log_line.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <condition_variable>
#include <mutex>

namespace {

using baize::api::Request;
using baize::api::Response;
using wire::body_of;
using wire::Client;
using wire::get;
using wire::header_of;
using wire::Server;
using wire::status_of;

Response echo(const Request& request) {
  return {200,
          "text/plain",
          request.method + " " + request.target + " " + request.body,
          request.method != "HEAD",
          {{"X-Host", request.host}}};
}

TEST(ApiServer, AnswersAndKeepsTheConnection) {
  Server server(echo);
  Client client(server.port());
  for (int i = 0; i < 3; ++i) {
    client.send(get("/a?n=" + std::to_string(i)));
    const std::string answer = client.answer();
    EXPECT_EQ(status_of(answer), 200);
    EXPECT_EQ(body_of(answer), "GET /a?n=" + std::to_string(i) + " ");
    EXPECT_EQ(header_of(answer, "X-Host"), "localhost");
    EXPECT_EQ(header_of(answer, "Date").size(), 29U) << "RFC 9110, 5.6.7";
  }
  EXPECT_TRUE(server.stop());
}

TEST(ApiServer, IdleClientsKeepNobodyWaiting) {
  Server server(echo);
  std::vector<std::unique_ptr<Client>> idle;
  for (int i = 0; i < 20; ++i) {
    idle.push_back(std::make_unique<Client>(server.port()));
    if (i % 2 == 0) {
      idle.back()->send("GET /half"); // and says no more
    }
  }
  Client client(server.port());
  client.send(get("/"));
  EXPECT_EQ(status_of(client.answer()), 200);
}

TEST(ApiServer, ASlowAnswerKeepsNobodyWaiting) {
  std::promise<void> gate;
  const std::shared_future<void> opened = gate.get_future().share();
  Server server([&](const Request& request) {
    if (request.target == "/slow") {
      opened.wait();
    }
    return echo(request);
  });
  Client slow(server.port());
  slow.send(get("/slow"));
  Client client(server.port());
  client.send(get("/fast"));
  EXPECT_EQ(status_of(client.answer()), 200) << "while the slow one is still worked out";
  gate.set_value();
  EXPECT_EQ(body_of(slow.answer()), "GET /slow ");
}

/// Waits until the request is asked to stop; false after five seconds without.
bool asked_to_stop(const Request& request) {
  const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(5);
  while (!request.stop.stop_requested() && std::chrono::steady_clock::now() < end) {
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
  }
  return request.stop.stop_requested();
}

TEST(ApiServer, AClientThatGoesAwayStopsItsAnswer) {
  std::promise<void> begun;
  std::promise<bool> stopped;
  Server server([&](const Request& request) {
    begun.set_value();
    stopped.set_value(asked_to_stop(request));
    return echo(request);
  });
  {
    Client client(server.port());
    client.send(get("/long"));
    begun.get_future().wait();
  }
  EXPECT_TRUE(stopped.get_future().get());
  EXPECT_TRUE(server.stop());
}

TEST(ApiServer, AClientThatWaitsIsAnswered) {
  Server server([&](const Request& request) {
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
    return request.stop.stop_requested() ? Response{503, "text/plain", "stopped", true, {}}
                                         : echo(request);
  });
  Client client(server.port());
  for (int i = 0; i < 3; ++i) {
    client.send(get("/long"));
    EXPECT_EQ(status_of(client.answer()), 200);
  }
  client.send(get("/one") + get("/two")); // the second is no sign of going away
  EXPECT_EQ(status_of(client.answer()), 200);
  EXPECT_EQ(status_of(client.answer()), 200);
}

TEST(ApiServer, StoppingEndsWhatOutlastsTheGrace) {
  std::promise<void> begun;
  std::promise<bool> stopped;
  baize::api::ServerOptions options;
  options.grace = std::chrono::milliseconds(50);
  Server server(
      [&](const Request& request) {
        begun.set_value();
        stopped.set_value(asked_to_stop(request));
        return echo(request);
      },
      options);
  Client client(server.port());
  client.send(get("/long"));
  begun.get_future().wait();
  EXPECT_TRUE(server.stop());
  EXPECT_TRUE(stopped.get_future().get());
}

TEST(ApiServer, PipelinedRequestsAreAnsweredInOrder) {
  Server server(echo);
  Client client(server.port());
  client.send(get("/1") + get("/2") + get("/3"));
  for (const char* target : {"/1", "/2", "/3"}) {
    EXPECT_EQ(body_of(client.answer()), std::string("GET ") + target + " ");
  }
}

// RFC 9110, 9.3.2: the header of a GET, and no body.
TEST(ApiServer, HeadHasALengthAndNoBody) {
  Server server(echo);
  Client client(server.port());
  client.send("HEAD /abc HTTP/1.1\r\nHost: localhost\r\n\r\n" + get("/next"));
  EXPECT_EQ(header_of(client.answer(true), "Content-Length"), "10");
  EXPECT_EQ(body_of(client.answer()), "GET /next ");
}

TEST(ApiServer, ClosesWhenAsked) {
  Server server(echo);
  Client client(server.port());
  client.send(get("/", "Connection: close\r\n"));
  EXPECT_EQ(header_of(client.answer(), "Connection"), "close");
  EXPECT_TRUE(client.ended());
  Client old(server.port());
  old.send("GET / HTTP/1.0\r\n\r\n");
  EXPECT_EQ(status_of(old.answer()), 200);
  EXPECT_TRUE(old.ended());
}

TEST(ApiServer, TakesBodiesWholeAndInChunks) {
  Server server(echo);
  Client client(server.port());
  client.send("POST /p HTTP/1.1\r\nHost: localhost\r\nContent-Length: 5\r\n\r\nhel");
  client.send("lo");
  EXPECT_EQ(body_of(client.answer()), "POST /p hello");
  client.send("POST /p HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n"
              "3\r\nabc\r\n2\r\nde\r\n0\r\n\r\n");
  EXPECT_EQ(body_of(client.answer()), "POST /p abcde");
}

// RFC 9110, 10.1.1.
TEST(ApiServer, TellsAClientThatWaitsToGoOn) {
  Server server(echo);
  Client client(server.port());
  client.send("POST /p HTTP/1.1\r\nHost: localhost\r\nContent-Length: 2\r\n"
              "Expect: 100-continue\r\n\r\n");
  EXPECT_EQ(status_of(client.answer()), 100);
  client.send("ok");
  EXPECT_EQ(body_of(client.answer()), "POST /p ok");
  client.send("POST /p HTTP/1.1\r\nHost: localhost\r\nContent-Length: 2\r\nExpect: more\r\n\r\nok");
  EXPECT_EQ(status_of(client.answer()), 417);
}

TEST(ApiServer, AHandlerThatThrowsIsAnError) {
  Server server([](const Request&) -> Response { throw std::runtime_error("broken inside"); });
  Client client(server.port());
  client.send(get("/"));
  const std::string answer = client.answer();
  EXPECT_EQ(status_of(answer), 500);
  EXPECT_NE(body_of(answer).find("broken inside"), std::string::npos);
  client.send(get("/"));
  EXPECT_EQ(status_of(client.answer()), 500) << "and the connection goes on";
}

TEST(ApiServer, LogsEachAnswer) {
  std::mutex mutex;
  std::string id;
  std::vector<baize::api::Answered> lines;
  baize::api::ServerOptions options;
  options.log = [&](const baize::api::Answered& answered) {
    const std::lock_guard lock(mutex);
    lines.push_back(answered);
  };
  {
    Server server(echo, options);
    Client client(server.port());
    client.send(get("/seen?token=secret", "Cookie: secret\r\nAuthorization: secret\r\n"));
    id = header_of(client.answer(), "X-Request-Id");
    client.send("GET / HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n");
    client.answer();
  }
  ASSERT_EQ(lines.size(), 2U);
  const std::string now = "2026-05-03T08:00:00Z";
  const std::string line = baize::api::log_line(now, lines[0]);
  EXPECT_EQ(line.rfind(now + " 127.0.0.1 GET /seen 200 23 ", 0), 0U) << line;
  EXPECT_EQ(line.substr(line.rfind(' ') + 1), id);
  const auto json = nlohmann::json::parse(baize::api::log_json(now, lines[0]));
  EXPECT_EQ(json["id"], id);
  EXPECT_EQ(json["path"], "/seen");
  EXPECT_EQ(json["status"], 200);
  EXPECT_EQ(json.dump().find("secret"), std::string::npos);
  EXPECT_EQ(lines[1].status, 400) << "a fault is an answer too";
  EXPECT_NE(lines[1].id, id);
}

TEST(ApiServer, StopsWithIdleClientsAndFinishesWhatIsUnderWay) {
  std::promise<void> begun;
  std::promise<void> gate;
  auto opened = gate.get_future();
  Server server([&](const Request& request) {
    begun.set_value();
    opened.wait();
    return echo(request);
  });
  Client idle(server.port());
  Client busy(server.port());
  busy.send(get("/last"));
  begun.get_future().wait();
  auto stopped = std::async(std::launch::async, [&] { return server.stop(); });
  EXPECT_TRUE(idle.ended());
  gate.set_value();
  const std::string answer = busy.answer();
  EXPECT_EQ(body_of(answer), "GET /last ");
  EXPECT_EQ(header_of(answer, "Connection"), "close");
  EXPECT_TRUE(stopped.get());
}

TEST(ApiServer, APortInUseIsSaidPlainly) {
  Server first(echo);
  baize::api::ServerOptions options;
  options.port = first.port();
  const auto second = baize::api::serve(options, echo, {});
  ASSERT_FALSE(second);
  EXPECT_EQ(second.error().code, "port_in_use");
  EXPECT_EQ(second.error().value, std::to_string(first.port()));
}

TEST(ApiServer, RefusesOptionsThatMakeNoSense) {
  const auto code = [](baize::api::ServerOptions options) {
    const auto result = baize::api::serve(options, echo, {});
    return result ? "served" : result.error().code;
  };
  baize::api::ServerOptions options;
  options.threads = 0;
  EXPECT_EQ(code(options), "bad_server_options");
  options = {};
  options.address = "here";
  EXPECT_EQ(code(options), "not_an_address");
  options.address = "192.0.2.1"; // RFC 5737: for documentation, on no machine
  EXPECT_EQ(code(options), "no_such_address");
}

} // namespace
