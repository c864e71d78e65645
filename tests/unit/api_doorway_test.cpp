// The way in for phones, what may be said without https, and what every answer says.
#include "baize/api/answer.h"
#include "baize/api/doorway.h"
#include "forwarded.h"
#include "unit/api_club.h"
#include "unit/api_fakes.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace baize::api;

Doorway doorway() {
  Doorway door{"192.168.1.20", 8417, {"greens.local", "192.168.1.20"}, "DER", "AB:CD"};
  door.scan_code = [](const std::string& text) -> baize::units::Result<std::string> {
    return "<svg>" + text + "</svg>";
  };
  return door;
}

Request request(const std::string& method, const std::string& target,
                const std::string& host = "greens.local:8417") {
  Request made;
  made.method = method;
  made.target = target;
  made.host = host;
  return made;
}

std::string header(const Response& response, const std::string& name) {
  const auto found = std::find_if(response.headers.begin(), response.headers.end(),
                                  [&](const auto& one) { return one.first == name; });
  return found == response.headers.end() ? "" : found->second;
}

TEST(Doorway, ThePhonesPageHoldsCodesStepsAndFingerprint) {
  const Response page = at_the_door(doorway(), request("GET", "/phone"));
  EXPECT_EQ(page.status, 200);
  for (const char* part :
       {"<svg>http://192.168.1.20:8417/phone</svg>", "<svg>https://192.168.1.20:8417/field/</svg>",
        "AB:CD", "href=\"/phone/authority.crt\"", "iPhone", "Android", "fingerprint"}) {
    EXPECT_NE(page.body.find(part), std::string::npos) << part;
  }
  EXPECT_EQ(page.body.find('{'), std::string::npos) << "nothing is left to be put in";
  const Response authority = at_the_door(doorway(), request("GET", "/phone/authority.crt"));
  EXPECT_EQ(authority.body, "DER");
  EXPECT_EQ(authority.content_type, "application/x-x509-ca-cert");
  EXPECT_EQ(at_the_door(doorway(), request("GET", "/phone/style.css")).status, 200);
  EXPECT_FALSE(at_the_door(doorway(), request("HEAD", "/phone")).send_body);
}

TEST(Doorway, WithACertificateOfAPublicAuthorityThereIsNothingToTrust) {
  Doorway door = doorway();
  door.authority.clear();
  const Response page = at_the_door(door, request("GET", "/phone"));
  EXPECT_EQ(page.body.find("authority"), std::string::npos);
  EXPECT_NE(page.body.find("https://192.168.1.20:8417/field/"), std::string::npos);
  EXPECT_EQ(at_the_door(door, request("GET", "/phone/authority.crt")).status, 307);
}

TEST(Doorway, AllElseIsShownTheWayToHttps) {
  const auto to = [](const std::string& target, const std::string& host) {
    const Response response = at_the_door(doorway(), request("GET", target, host));
    EXPECT_EQ(response.status, 307);
    EXPECT_EQ(response.body, "");
    return header(response, "Location");
  };
  EXPECT_EQ(to("/field/?x=1", "greens.local"), "https://greens.local:8417/field/?x=1");
  EXPECT_EQ(to("/", "evil.example"), "https://192.168.1.20:8417/") << "only to names of its own";
  EXPECT_EQ(to("http://evil.example/a", "greens.local"), "https://greens.local:8417/");
  EXPECT_EQ(to("//evil.example", "greens.local"), "https://greens.local:8417//evil.example");
  EXPECT_EQ(to("nonsense", ""), "https://192.168.1.20:8417/");
  Doorway usual = doorway();
  usual.port = 443;
  EXPECT_EQ(header(at_the_door(usual, request("GET", "/")), "Location"), "https://greens.local/");
  const Response sent = at_the_door(doorway(), request("POST", "/api/v1/clubs/a/entries"));
  EXPECT_EQ(sent.status, 403);
  EXPECT_NE(sent.body.find("https_needed"), std::string::npos);
}

// RFC 6797, 8.1.1 leaves addresses out; local names and own authorities: see
// docs/decisions/014-https.md.
TEST(Doorway, StrictTransportIsAskedForPublicNamesOnly) {
  const auto told = [](const std::string& host, const std::string& authority, bool secure) {
    Doorway door = doorway();
    door.authority = authority;
    Request asked = request("GET", "/", host);
    asked.secure = secure;
    const Handler handler = [](const Request&) { return Response{}; };
    return header(inside(door, handler, asked), "Strict-Transport-Security");
  };
  EXPECT_EQ(told("greens.example", "", true), "max-age=2592000");
  EXPECT_EQ(told("greens.example:8417", "", true), "max-age=2592000");
  EXPECT_EQ(told("greens.example", "", false), "");
  EXPECT_EQ(told("greens.example", "DER", true), "");
  for (const char* local : {"localhost", "greens", "greens.local", "greens.lan", "a.home.arpa",
                            "192.168.1.20", "[fd00::1]", ""}) {
    EXPECT_EQ(told(local, "", true), "") << local;
  }
}

TEST(Forwarded, OnlyAProxyOnThisMachineIsBelieved) {
  const auto who = [](const std::string& direct, const std::string& list,
                      const std::string& proto) {
    const Peer peer = forwarded({direct, false}, list, proto);
    return peer.address + (peer.secure ? " secure" : "");
  };
  EXPECT_EQ(who("127.0.0.1", "203.0.113.7", "https"), "203.0.113.7 secure");
  EXPECT_EQ(who("::1", "1.2.3.4, 203.0.113.7", "HTTPS"), "203.0.113.7 secure")
      << "the last is the proxy's own word";
  EXPECT_EQ(who("127.0.0.1", "[2001:db8::7]", "http"), "2001:db8::7");
  EXPECT_EQ(who("192.168.1.9", "203.0.113.7", "https"), "192.168.1.9");
  for (const char* bad : {"", ",", "unknown", "203.0.113.7:80", "203.0.113.7, x", "999.1.1.1"}) {
    EXPECT_EQ(who("127.0.0.1", bad, ""), "127.0.0.1") << bad;
  }
  EXPECT_EQ(who("127.0.0.1", std::string("1.2.3.4\0x", 9), ""), "127.0.0.1");
  EXPECT_TRUE(is_this_machine("127.8.9.1"));
  EXPECT_FALSE(is_this_machine("128.0.0.1"));
}

class Figures : public testing::Test {
 protected:
  Figures() : world_(made::club({2, 1, 4}), made::weather({2, 1, 4})) {
    world_.context.metrics = std::make_shared<Metrics>();
    world_.context.figures = [] { return std::vector<Figure>{{"commits", "Commits.", true, 7}}; };
  }
  Response ask(const std::string& address, const std::string& method = "GET") {
    Request asked = request(method, "/metrics", "localhost");
    asked.address = address;
    return answer(world_.context, asked);
  }
  made::World world_;
};

TEST_F(Figures, AreForThisMachineUnlessToldOtherwise) {
  EXPECT_EQ(ask("127.0.0.1").status, 200);
  EXPECT_EQ(ask("127.0.0.1", "POST").status, 405);
  EXPECT_EQ(ask("192.168.1.9").status, 403);
  EXPECT_EQ(ask("").status, 403);
  world_.context.metrics_for_all = true;
  EXPECT_EQ(ask("192.168.1.9").status, 200);
  world_.context.metrics = nullptr;
  EXPECT_EQ(ask("127.0.0.1").status, 404);
}

// OpenMetrics 1.0: counters end in _total, histograms have cumulative buckets up
// to +Inf, a count and a sum, and the text ends with # EOF.
TEST_F(Figures, AreInTheOpenFormat) {
  Metrics& metrics = *world_.context.metrics;
  metrics.answered("GET", "/api/v1/clubs", 200, 0.003);
  metrics.answered("GET", "/api/v1/clubs", 200, 0.2);
  metrics.answered("BREW", "", 404, 60);
  metrics.handed_in(7, 2);
  metrics.connections(3);
  const std::string text = ask("::1").body;
  for (const char* line :
       {"# TYPE baize_requests counter\n",
        "baize_requests_total{method=\"GET\",route=\"/api/v1/clubs\",status=\"200\"} 2\n",
        "baize_requests_total{method=\"other\",route=\"none\",status=\"404\"} 1\n",
        "baize_request_seconds_bucket{route=\"/api/v1/clubs\",le=\"0.002\"} 0\n",
        "baize_request_seconds_bucket{route=\"/api/v1/clubs\",le=\"0.005\"} 1\n",
        "baize_request_seconds_bucket{route=\"/api/v1/clubs\",le=\"0.25\"} 2\n",
        "baize_request_seconds_bucket{route=\"/api/v1/clubs\",le=\"+Inf\"} 2\n",
        "baize_request_seconds_count{route=\"/api/v1/clubs\"} 2\n",
        "baize_request_seconds_sum{route=\"/api/v1/clubs\"} 0.203\n",
        "baize_request_seconds_bucket{route=\"none\",le=\"10\"} 0\n", "baize_open_connections 3\n",
        "baize_hand_ins_total 1\n", "baize_entries_kept_total 7\n",
        "baize_entries_refused_total 2\n", "baize_commits_total 7\n"}) {
    EXPECT_NE(text.find(line), std::string::npos) << line << text;
  }
  EXPECT_EQ(text.substr(text.size() - 6), "# EOF\n");
}

// Whatever is answered: a browser is told what its page may do, and guesses nothing.
TEST_F(Figures, EveryKindOfAnswerIsProtected) {
  const auto of = [&](const std::string& method, const std::string& target,
                      const std::string& tag = "", const std::string& host = "localhost") {
    Request asked = request(method, target, host);
    asked.if_none_match = tag;
    asked.address = "127.0.0.1";
    return answer(world_.context, asked);
  };
  const std::string club = "/api/v1/clubs/c%2F1";
  const Response greens = of("GET", club + "/greens");
  std::vector<std::pair<int, Response>> all;
  all.emplace_back(200, greens);
  all.emplace_back(304, of("GET", club + "/greens", header(greens, "ETag")));
  all.emplace_back(200, of("GET", "/metrics"));
  all.emplace_back(200, of("GET", "/healthz"));
  all.emplace_back(200, of("HEAD", "/healthz"));
  all.emplace_back(404, of("GET", "/nothing"));
  all.emplace_back(404, of("GET", "/api/v1/clubs/none/greens"));
  all.emplace_back(405, of("DELETE", club + "/greens"));
  all.emplace_back(415, of("POST", club + "/entries"));
  all.emplace_back(400, of("GET", "/%zz"));
  all.emplace_back(403, of("GET", "/", "", "evil.example"));
  all.emplace_back(307, at_the_door(doorway(), request("GET", "/")));
  all.emplace_back(403, at_the_door(doorway(), request("POST", "/")));
  all.emplace_back(200, at_the_door(doorway(), request("GET", "/phone")));
  for (const auto& [status, response] : all) {
    EXPECT_EQ(response.status, status) << response.body;
    const std::string policy = header(response, "Content-Security-Policy");
    EXPECT_EQ(policy.rfind("default-src 'none'; script-src 'self'", 0), 0U) << status;
    EXPECT_EQ(policy.find("unsafe-inline"), std::string::npos);
    EXPECT_NE(policy.find("frame-ancestors 'none'"), std::string::npos);
    EXPECT_EQ(header(response, "X-Content-Type-Options"), "nosniff");
    EXPECT_EQ(header(response, "Referrer-Policy"), "no-referrer");
    EXPECT_NE(header(response, "Cache-Control"), "") << status;
  }
}

TEST_F(Figures, AnAnswerNamesItsRoute) {
  Request asked = request("GET", "/api/v1/clubs/c%2F1/greens", "localhost");
  EXPECT_EQ(answer(world_.context, asked).route, "/api/v1/clubs/{club}/greens");
  asked.target = "/nothing";
  EXPECT_EQ(answer(world_.context, asked).route, "");
}

TEST(Waits, OnlyHandInsWaitForTheDisk) {
  EXPECT_TRUE(waits("POST", "/api/v1/clubs/a/entries?today=2026-01-01"));
  EXPECT_FALSE(waits("GET", "/api/v1/clubs/a/entries"));
  EXPECT_FALSE(waits("POST", "/api/v1/clubs/a/import"));
  EXPECT_FALSE(waits("POST", "/%zz"));
}

} // namespace
