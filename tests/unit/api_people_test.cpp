// Signing in over HTTP: every answer against its schema, cookies, and each refusal.
#include "attack/fortress.h"
#include "baize/api/form.h"
#include "baize/entries_json/entries.h"
#include "unit/api_contract.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace {

using attack::Asker;
using attack::Fortress;
using namespace baize;
using nlohmann::json;
using services::Role;

class ApiPeople : public testing::Test {
 protected:
  api::Response ask(const Asker& asker, const std::string& method, const std::string& target,
                    const std::string& body = "") {
    return fortress.ask(asker, {method, "", {}}, target, body);
  }
  /// The answer under its schema.
  json good(const api::Response& response, const std::string& schema) {
    EXPECT_EQ(response.status, 200) << response.body;
    EXPECT_EQ(contract::faults(schema, response.body), "");
    return json::parse(response.body, nullptr, false);
  }
  std::string code(const api::Response& response, int status) {
    EXPECT_EQ(response.status, status) << response.body;
    EXPECT_EQ(contract::faults("Refusal", response.body), "");
    return attack::code_of(response);
  }
  Asker with(const api::Response& response) {
    const std::string cookie = made::header(response, "Set-Cookie");
    return {"signed in", cookie.substr(0, cookie.find(';'))};
  }

  Fortress fortress;
  const Asker nobody{"nobody", ""};
  const std::string kSignIn = "/api/v1/session";
};

TEST_F(ApiPeople, SignInAndOut) {
  const json before = good(ask(nobody, "GET", kSignIn), "Session");
  EXPECT_EQ(before["sign_in"], true);
  EXPECT_EQ(before["caller"], "nobody");
  EXPECT_TRUE(before["clubs"].empty());
  const auto response =
      ask(nobody, "POST", kSignIn,
          R"({"name":"Hill_Observer","password":"seven green pins","device":"phone"})");
  const json in = good(response, "Session");
  EXPECT_EQ(in["caller"], "person");
  EXPECT_EQ(in["name"], "hill_observer");
  EXPECT_EQ(in["clubs"], json::parse(R"([{"id":"hill","name":"Hill under the oaks",
      "role":"observer","may":["look","enter"]}])"));
  const std::string cookie = made::header(response, "Set-Cookie");
  EXPECT_EQ(cookie.rfind("baize_session=", 0), 0U) << cookie;
  EXPECT_NE(cookie.find("; Path=/; HttpOnly; SameSite=Strict; Max-Age="), std::string::npos);
  EXPECT_EQ(cookie.find("Secure"), std::string::npos);
  EXPECT_EQ(made::header(response, "Cache-Control"), "no-store");

  const Asker me = with(response);
  EXPECT_EQ(good(ask(me, "GET", kSignIn), "Session"), in);
  const json mine = good(ask(me, "GET", "/api/v1/sessions"), "Sessions")["sessions"];
  ASSERT_EQ(mine.size(), 2U);
  EXPECT_EQ(mine[0]["this"], true);
  EXPECT_EQ(mine[0]["device"], "phone");
  EXPECT_EQ(mine[1]["this"], false);
  const json left =
      good(ask(me, "DELETE", "/api/v1/sessions/" + mine[1]["id"].get<std::string>()), "Sessions");
  EXPECT_EQ(left["sessions"].size(), 1U);

  const auto out = ask(me, "DELETE", kSignIn);
  EXPECT_EQ(good(out, "Session")["caller"], "nobody");
  EXPECT_NE(made::header(out, "Set-Cookie").find("baize_session=; "), std::string::npos);
  EXPECT_NE(made::header(out, "Set-Cookie").find("Max-Age=0"), std::string::npos);
  EXPECT_EQ(code(ask(me, "GET", "/api/v1/sessions"), 401), "not_signed_in");
}

TEST_F(ApiPeople, TheCookieIsSecureWhereTheWayIs) {
  const std::string body =
      R"({"name":"hill_observer","password":"seven green pins","device":"phone"})";
  api::Request request{"POST", kSignIn, body, "localhost", "http://localhost", "application/json",
                       ""};
  request.address = "10.0.0.7";
  const auto plain = api::answer(*fortress.context, request);
  EXPECT_EQ(made::header(plain, "Set-Cookie").rfind("baize_session=", 0), 0U);
  request.secure = true;
  const auto secure = api::answer(*fortress.context, request);
  const std::string cookie = made::header(secure, "Set-Cookie");
  EXPECT_EQ(cookie.rfind("__Host-baize_session=", 0), 0U) << cookie;
  EXPECT_NE(cookie.find("; Secure"), std::string::npos);
  EXPECT_NE(cookie.find("Path=/;"), std::string::npos);
  EXPECT_EQ(cookie.find("Domain"), std::string::npos);
}

TEST_F(ApiPeople, WrongTriesAreToldHowLongToWait) {
  const std::string wrong = R"({"name":"hill_observer","password":"not this one","device":"x"})";
  const std::string unknown = R"({"name":"not a person","password":"not this one","device":"x"})";
  const auto one = ask(nobody, "POST", kSignIn, wrong);
  const auto other = ask(nobody, "POST", kSignIn, unknown);
  EXPECT_EQ(code(one, 401), "wrong_sign_in");
  EXPECT_EQ(one.body, other.body);
  EXPECT_NE(made::header(one, "WWW-Authenticate"), "") << "RFC 9110, 15.5.2";
  for (int i = 0; i < 5; ++i) {
    (void)ask(nobody, "POST", kSignIn, wrong);
    (void)ask(nobody, "POST", kSignIn, unknown);
  }
  const auto late = ask(nobody, "POST", kSignIn, wrong);
  const auto late_too = ask(nobody, "POST", kSignIn, unknown);
  EXPECT_EQ(code(late, 429), "too_many_tries");
  EXPECT_EQ(late.body, late_too.body);
  EXPECT_EQ(made::header(late, "Retry-After"), "2");
}

TEST_F(ApiPeople, TriesCountByTheAddress) {
  api::Request request{"POST", kSignIn, "", "localhost", "http://localhost", "application/json",
                       ""};
  request.address = "9.9.9.9";
  int last = 0;
  for (int i = 0; i < 25; ++i) {
    request.body = R"({"name":"n)" + std::to_string(i) + R"(","password":"x","device":"x"})";
    last = api::answer(*fortress.context, request).status;
  }
  EXPECT_EQ(last, 429);
  request.address = "8.8.8.8";
  EXPECT_EQ(api::answer(*fortress.context, request).status, 401);
}

TEST_F(ApiPeople, InvitedByScanCode) {
  fortress.context->scan_code = [](const std::string& text) { return "<svg>" + text + "</svg>"; };
  const Asker head = fortress.in_role("hill", Role::head_greenkeeper);
  const json made =
      good(ask(head, "POST", "/api/v1/clubs/hill/invitations", R"({"role":"observer"})"),
           "NewInvitation");
  const std::string url = made["url"];
  ASSERT_EQ(url.rfind("http://localhost/#/+join/", 0), 0U) << url;
  EXPECT_EQ(made["scan_code"], "<svg>" + url + "</svg>");
  const std::string token = url.substr(url.rfind('/') + 1);
  const json offer =
      good(ask(nobody, "POST", "/api/v1/invitations/look", R"({"token":")" + token + R"("})"),
           "InvitationOffer");
  EXPECT_EQ(offer["club_name"], "Hill under the oaks");
  EXPECT_EQ(offer["by"], "hill_head_greenkeeper");
  const std::string accept = "/api/v1/invitations/accept";
  const auto with_name = [&](const std::string& name) {
    return R"({"token":")" + token + R"(","name":")" + name +
           R"(","password":"nine red flags","device":"phone"})";
  };
  EXPECT_EQ(code(ask(nobody, "POST", accept, with_name("hill_reader")), 409), "name_taken");
  const auto joined = ask(nobody, "POST", accept, with_name("Bea"));
  EXPECT_EQ(good(joined, "Session")["name"], "Bea");
  EXPECT_EQ(code(ask(nobody, "POST", accept, with_name("Cid")), 404), "no_such_invitation");
  EXPECT_EQ(code(ask(nobody, "POST", accept, R"({"token":"x","device":"x"})"), 401),
            "not_signed_in");

  const json people = good(ask(head, "GET", "/api/v1/clubs/hill/people"), "ClubPeople");
  EXPECT_EQ(people["people"][0]["name"], "Bea");
  EXPECT_EQ(people["people"][0]["sessions"].size(), 1U);
  // The lost phone.
  const std::string of =
      "/api/v1/clubs/hill/people/" + people["people"][0]["id"].get<std::string>();
  const std::string session = people["people"][0]["sessions"][0]["id"];
  good(ask(head, "DELETE", of + "/sessions/" + session), "ClubPeople");
  EXPECT_EQ(code(ask(with(joined), "GET", "/api/v1/clubs"), 401), "not_signed_in");
  EXPECT_EQ(
      good(ask(head, "PUT", of, R"({"role":"agronomist"})"), "ClubPeople")["people"][0]["role"],
      "agronomist");
  EXPECT_EQ(good(ask(head, "DELETE", of), "ClubPeople")["people"].size(), 4U);
  EXPECT_EQ(code(ask(head, "PUT", of, R"({"role":"reader"})"), 404), "no_such_person");
}

TEST_F(ApiPeople, ALinkForTheCommittee) {
  const Asker head = fortress.in_role("hill", Role::head_greenkeeper);
  const json made =
      good(ask(head, "POST", "/api/v1/clubs/hill/links", R"({"label":"Committee","days":14})"),
           "NewLink");
  const std::string url = made["url"];
  const std::string token = url.substr(url.rfind('/') + 1);
  ASSERT_EQ(url, "http://localhost/#/+link/" + token);
  const std::string body = R"({"link":")" + token + R"(","device":"browser"})";
  const auto opened = ask(nobody, "POST", kSignIn, body);
  const json session = good(opened, "Session");
  EXPECT_EQ(session["caller"], "link");
  EXPECT_EQ(session["name"], "Committee");
  EXPECT_EQ(session["clubs"][0]["may"], json::parse(R"(["look"])"));
  const Asker committee = with(opened);
  EXPECT_EQ(ask(committee, "GET", "/api/v1/clubs/hill/greens").status, 200);
  EXPECT_EQ(code(ask(committee, "GET", "/api/v1/sessions"), 403), "not_allowed");
  // Somebody of the club who opens the link stays who they are.
  EXPECT_EQ(good(ask(head, "POST", kSignIn, body), "Session")["caller"], "person");
  EXPECT_EQ(made::header(ask(head, "POST", kSignIn, body), "Set-Cookie"), "");
  good(ask(head, "DELETE", "/api/v1/clubs/hill/links/" + made["id"].get<std::string>()),
       "ClubPeople");
  EXPECT_EQ(code(ask(committee, "GET", "/api/v1/clubs/hill/greens"), 401), "not_signed_in");
  EXPECT_EQ(code(ask(nobody, "POST", kSignIn, body), 404), "no_such_link");
}

TEST_F(ApiPeople, WhoWroteIsThePersonSignedIn) {
  const Asker ann = fortress.in_role("hill", Role::agronomist);
  const auto kept = ask(ann, "POST", "/api/v1/clubs/hill/import",
                        R"({"files":[{"name":"rolls.csv","content":"fine"}]})");
  EXPECT_EQ(kept.status, 200) << kept.body;
  const auto sent =
      ask(ann, "POST", "/api/v1/clubs/hill/entries",
          entries_json::write_package({journal_test::kPhone,
                                       "2026-05-03T08:00:00Z",
                                       {journal_test::visit(1, journal_test::visit_fields()),
                                        journal_test::roll(2, journal_test::roll_fields())},
                                       {}}));
  const json receipt = good(sent, "HandInReceipt");
  EXPECT_EQ(receipt["kept"].size(), 2U) << sent.body;
  const auto history = fortress.world.store->history("hill", "visit", journal_test::kVisit);
  ASSERT_TRUE(history) << sent.body;
  EXPECT_EQ(history->front().author, "hill_agronomist");
}

TEST_F(ApiPeople, WhereNobodySignsInAllMayDoAll) {
  fortress.context->people = nullptr;
  const json session = good(ask(nobody, "GET", kSignIn), "Session");
  EXPECT_EQ(session["sign_in"], false);
  EXPECT_EQ(session["caller"], "everyone");
  EXPECT_EQ(session["clubs"].size(), 2U);
  EXPECT_EQ(session["clubs"][0]["may"].size(), 4U);
  EXPECT_EQ(ask(nobody, "GET", "/api/v1/clubs/moor/greens").status, 200);
  EXPECT_EQ(code(ask(nobody, "GET", "/api/v1/clubs/hill/people"), 404), "no_such_service");
  EXPECT_EQ(code(ask(nobody, "POST", kSignIn, R"({"name":"a","password":"b","device":"c"})"), 404),
            "no_such_service");
  EXPECT_EQ(code(ask(nobody, "POST", "/api/v1/clubs/hill/links", R"({"label":"a","days":1})"), 404),
            "no_such_service");
}

TEST(ApiForm, ReadsWhatBelongsAndNothingElse) {
  const auto said = [](const std::string& body) {
    const auto form = api::read_form(body, {"name", "days"});
    return form ? "fine" : units::sentence(form.error());
  };
  EXPECT_EQ(said(R"({"name":"Bea","days":30})"), "fine");
  EXPECT_EQ(api::read_form(R"({"days":-3})", {"days"}).value().at("days"), "-3");
  EXPECT_EQ(said("{}"), "fine");
  EXPECT_EQ(said(R"({"name":"Bea","age":3})"),
            "age is 'a member', but must be left out: only name, days may be there.");
  EXPECT_EQ(said(R"({"name":"a","name":"b"})"), "name is 'given again', but must be given once.");
  EXPECT_EQ(said(R"({"days":1.5})"), "days is '1.5', but must be a text or a whole number.");
  EXPECT_EQ(said(R"({"name":null})"), "name is 'null', but must be a text or a whole number.");
  EXPECT_EQ(said(R"({"name":{"a":1}})"),
            "name is 'an object', but must be a text or a whole number.");
  EXPECT_EQ(said("[]"), "body is 'a list', but must be an object.");
  EXPECT_EQ(said("7"), "body is '7', but must be an object.");
  EXPECT_EQ(said("{"), "body is missing, but must be JSON in UTF-8, whole to its end.");
  EXPECT_EQ(said("{\"name\":\"\xff\"}"),
            "body is missing, but must be JSON in UTF-8, whole to its end.");
  EXPECT_EQ(said(R"({"name":")" + std::string(2049, 'x') + R"("})"),
            "name is '2049 bytes', but must be at most 2048 bytes long.");
}

} // namespace
