// Serving by https, tried with OpenSSL's own client against the authority that
// this program makes.
#include "api_wire.h"
#include "baize/api/doorway.h"
#include "baize/certificates/certificates.h"
#include "contract/folder.h"
#include "tls_client.h"

#include <gtest/gtest.h>

#include <atomic>
#include <ctime>

namespace {

using namespace std::chrono_literals;
using namespace baize;
using api::Request;
using api::Response;
using wire::Asked;
using wire::body_of;
using wire::get;
using wire::Server;
using wire::status_of;
using wire::TlsClient;

const certificates::Names kNames{{"greens.local", "localhost"}, {"127.0.0.1"}};

Response echo(const Request& request) {
  return {200,
          "text/plain",
          request.target + (request.secure ? " secure " : " plain ") +
              std::to_string(request.body.size()),
          true,
          {}};
}

class ApiTls : public testing::Test {
 protected:
  api::Identity identity(const std::string& folder, certificates::Instant now) {
    auto made = certificates::server_identity(folder_.file(folder), kNames, {}, now);
    EXPECT_TRUE(made) << units::sentence(made.error());
    return {made->certificates, made->key};
  }
  std::string authority(const std::string& folder) {
    return certificates::open_authority(folder_.file(folder), {"greens"}, now_)->certificate;
  }
  api::ServerOptions options() {
    api::ServerOptions options;
    options.body_limit = [](std::string_view, std::string_view) { return 20'000'000ULL; };
    options.tls.emplace();
    options.tls->identity = identity("data", now_);
    options.tls->plain = [](const Request&) {
      return Response{307, "", "", false, {{"Location", "elsewhere"}}};
    };
    return options;
  }
  Asked trusting() { return {authority("data")}; }
  certificates::Instant now_ = std::time(nullptr);
  contract::Folder folder_;
};

TEST_F(ApiTls, AClientThatTrustsTheAuthorityIsAnswered) {
  const Server server(echo, options());
  for (const char* host : {"localhost", "greens.local", "127.0.0.1"}) {
    Asked asked = trusting();
    asked.host = host;
    asked.protocols = "\x02h2\x08http/1.1";
    TlsClient client(server.port(), asked);
    ASSERT_TRUE(client.connected()) << client.error();
    EXPECT_EQ(client.version(), "TLSv1.3");
    EXPECT_EQ(client.protocol(), "http/1.1") << "RFC 7301";
    for (int i = 0; i < 3; ++i) {
      client.send(get("/a"));
      EXPECT_EQ(body_of(client.answer()), "/a secure 0");
    }
  }
}

TEST_F(ApiTls, TheVersionBeforeIsStillSpokenAndOlderOnesAreNot) {
  const Server server(echo, options());
  Asked asked = trusting();
  asked.highest = TLS1_2_VERSION;
  TlsClient client(server.port(), asked);
  ASSERT_TRUE(client.connected()) << client.error();
  EXPECT_EQ(client.version(), "TLSv1.2");
  client.send(get("/"));
  EXPECT_EQ(status_of(client.answer()), 200);
  for (const int old : {TLS1_1_VERSION, TLS1_VERSION}) {
    asked.highest = old;
    const TlsClient refused(server.port(), asked);
    EXPECT_FALSE(refused.connected());
    EXPECT_EQ(refused.error(), "tlsv1 alert protocol version") << "the server's own refusal";
  }
}

TEST_F(ApiTls, AnotherNameOrAnotherAuthorityIsNotTrusted) {
  const Server server(echo, options());
  Asked asked = trusting();
  asked.host = "bank.example";
  EXPECT_EQ(TlsClient(server.port(), asked).error(), "hostname mismatch");
  asked.host = "192.168.1.99";
  EXPECT_EQ(TlsClient(server.port(), asked).error(), "IP address mismatch");
  asked = {authority("elsewhere")};
  EXPECT_EQ(TlsClient(server.port(), asked).error(), "unable to get local issuer certificate");
}

TEST_F(ApiTls, WhoSpeaksAnotherProtocolOnlyIsToldSo) {
  const Server server(echo, options());
  Asked asked = trusting();
  asked.protocols = "\x02h2";
  EXPECT_EQ(TlsClient(server.port(), asked).error(), "tlsv1 alert no application protocol");
}

TEST_F(ApiTls, LargeBodiesComeAndGoWhole) {
  const Server server(
      [](const Request& request) {
        return Response{200, "text/plain", std::string(request.body), true, {}};
      },
      options());
  TlsClient client(server.port(), trusting());
  const std::string body(10'000'000, 'x');
  client.send("POST / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 10000000\r\n\r\n" + body);
  EXPECT_TRUE(body_of(client.answer()) == body);
}

TEST_F(ApiTls, WhoComesWithoutItIsShownTheWayAtTheSamePort) {
  Server server(echo, options());
  wire::Client plain(server.port());
  plain.send(get("/secret"));
  const std::string answer = plain.answer();
  EXPECT_EQ(status_of(answer), 307);
  EXPECT_EQ(wire::header_of(answer, "Location"), "elsewhere");
  EXPECT_EQ(wire::header_of(answer, "Strict-Transport-Security"), "");
}

TEST_F(ApiTls, WhoNeverFinishesTheHandshakeIsLetGo) {
  auto given = options();
  given.tls->handshake_timeout = 100ms;
  Server server(echo, given);
  const wire::Client silent(server.port());
  wire::Client half(server.port());
  half.send(std::string("\x16\x03\x01\x02\x00\x01", 6));
  wire::Client nonsense(server.port());
  nonsense.send(std::string("\x16\x03\x01\x00\x05nonsense", 13));
  EXPECT_TRUE(silent.ended());
  EXPECT_TRUE(half.ended());
  EXPECT_TRUE(nonsense.ended());
  TlsClient client(server.port(), trusting());
  EXPECT_TRUE(client.connected()) << "others are served as before";
}

// The clock moves on two months: the certificate is renewed without a pause, and
// whoever is connected goes on.
TEST_F(ApiTls, ARenewedCertificateIsShownToThoseWhoComeAfter) {
  std::atomic<certificates::Instant> clock = now_;
  auto given = options();
  given.tls->ask_every = 10ms;
  given.tls->renewed = [&]() -> std::optional<api::Identity> { return identity("data", clock); };
  const Server server(echo, given);
  TlsClient before(server.port(), trusting());
  ASSERT_TRUE(before.connected()) << before.error();
  const std::string first = before.serial();
  EXPECT_EQ(TlsClient(server.port(), trusting()).serial(), first);
  clock = now_ + 61 * certificates::kDay;
  std::string second = first;
  for (int i = 0; i < 200 && second == first; ++i) {
    std::this_thread::sleep_for(10ms);
    Asked asked = trusting();
    asked.verifies = false; // by its own clock, which has not moved, it is of the future
    second = TlsClient(server.port(), asked).serial();
  }
  EXPECT_NE(second, first);
  before.send(get("/on"));
  EXPECT_EQ(status_of(before.answer()), 200);
}

TEST_F(ApiTls, AnIdentityThatCannotBeUsedIsNotTaken) {
  auto given = options();
  given.tls->ask_every = 10ms;
  std::atomic<int> asked = 0;
  given.tls->renewed = [&]() -> std::optional<api::Identity> {
    ++asked;
    return api::Identity{"nonsense", "nonsense"};
  };
  {
    const Server server(echo, given);
    while (asked < 3) {
      std::this_thread::sleep_for(1ms);
    }
    EXPECT_TRUE(TlsClient(server.port(), trusting()).connected());
  }
  given.tls->identity = {"nonsense", "nonsense"};
  const auto served = api::serve(given, echo, {});
  ASSERT_FALSE(served);
  EXPECT_EQ(served.error().code, "bad_identity");
}

TEST_F(ApiTls, APageThatIsClosedStopsItsAnswer) {
  std::promise<void> begun;
  std::promise<bool> stopped;
  Server server(
      [&](const Request& request) {
        begun.set_value();
        for (int i = 0; i < 1000 && !request.stop.stop_requested(); ++i) {
          std::this_thread::sleep_for(5ms);
        }
        stopped.set_value(request.stop.stop_requested());
        return echo(request);
      },
      options());
  TlsClient client(server.port(), trusting());
  client.send(get("/long"));
  begun.get_future().wait();
  client.farewell();
  EXPECT_TRUE(stopped.get_future().get());
}

TEST_F(ApiTls, AFurtherPortShowsTheWayToo) {
  auto given = options();
  given.tls->plain_port = 0;
  const Server server(echo, given);
  EXPECT_TRUE(TlsClient(server.port(), trusting()).connected());
  given.tls->plain_port = server.port();
  const auto served = api::serve(given, echo, {});
  ASSERT_FALSE(served);
  EXPECT_EQ(served.error().code, "port_in_use");
}

} // namespace
