// The phone's routes on a real store: answers against their schemas, and each refusal.
#include "baize/entries_json/entries.h"
#include "baize/store_sqlite/store.h"
#include "contract/folder.h"
#include "unit/api_contract.h"
#include "unit/api_fakes.h"
#include "unit/green_samples.h"
#include "unit/journal_samples.h"

#include <gtest/gtest.h>

#include <zlib.h>

namespace {

using namespace journal_test;
using nlohmann::json;

const std::string kEntries = "/api/v1/clubs/hill/entries";

std::string packed(const std::string& text) {
  z_stream stream{};
  constexpr int kGzip = 16;
  EXPECT_EQ(deflateInit2(&stream, 9, Z_DEFLATED, MAX_WBITS + kGzip, 8, Z_DEFAULT_STRATEGY), Z_OK);
  std::string in = text;
  std::string out(deflateBound(&stream, in.size()), '\0');
  stream.next_in = reinterpret_cast<Bytef*>(in.data());
  stream.avail_in = static_cast<uInt>(in.size());
  stream.next_out = reinterpret_cast<Bytef*>(out.data());
  stream.avail_out = static_cast<uInt>(out.size());
  EXPECT_EQ(deflate(&stream, Z_FINISH), Z_STREAM_END);
  out.resize(stream.total_out);
  deflateEnd(&stream);
  return out;
}

std::string body(std::vector<Entry> entries) {
  return entries_json::write_package({kPhone, "2026-05-03T08:00:00Z", std::move(entries), {}});
}

class ApiEntries : public testing::Test {
 protected:
  void SetUp() override {
    auto opened = store_sqlite::SqliteStore::open(folder_.file("club.sqlite3"));
    ASSERT_TRUE(opened);
    store_ = std::move(*opened);
    ASSERT_TRUE(store_->keep(samples::records(), {"ann", "2026-05-01T00:00:00Z"}, {}));
    clubs_ = std::make_unique<api::ClubsCache>(*store_, 2);
    context_ = std::unique_ptr<api::Context>(
        new api::Context{*store_, sheets_, *clubs_, [] { return samples::kToday; },
                         [] { return std::string("2026-05-03T08:00:10Z"); },
                         [](std::string_view) { return nullptr; }});
  }
  api::Response ask(const std::string& method, const std::string& target,
                    const std::string& sent = "", const std::string& encoding = "") const {
    api::Request request;
    request.method = method;
    request.target = target;
    request.host = "localhost";
    request.content_type = method == "POST" ? "application/json" : "";
    request.body = sent;
    request.content_encoding = encoding;
    return api::answer(*context_, request);
  }
  json got(const std::string& target, const std::string& schema) const {
    const auto response = ask("GET", target);
    EXPECT_EQ(response.status, 200) << response.body;
    EXPECT_EQ(contract::faults(schema, response.body), "");
    return json::parse(response.body, nullptr, false);
  }
  json post(const std::string& sent, const std::string& encoding = "") const {
    const auto response = ask("POST", kEntries, sent, encoding);
    EXPECT_EQ(response.status, 200) << response.body;
    EXPECT_EQ(contract::faults("HandInReceipt", response.body), "");
    return json::parse(response.body, nullptr, false);
  }
  std::string code(const api::Response& response) const {
    EXPECT_EQ(contract::faults("Refusal", response.body), "");
    return json::parse(response.body, nullptr, false)["problem"]["code"];
  }

  contract::Folder folder_;
  made::FakeSheets sheets_;
  std::unique_ptr<store_sqlite::SqliteStore> store_;
  std::unique_ptr<api::ClubsCache> clubs_;
  std::unique_ptr<api::Context> context_;
};

TEST_F(ApiEntries, AVisitFromThePhoneToTheRecords) {
  const json receipt =
      post(body({visit(1, visit_fields()), roll(2, roll_fields()), roll(3, {}, {2})}));
  EXPECT_EQ(receipt["kept"], (json{id(1), id(2)}));
  EXPECT_EQ(receipt["refused"][0]["problem"]["code"], "nothing_set");
  EXPECT_EQ(receipt["visits"][0]["state"], "accepted");
  EXPECT_EQ(receipt["visits"][0]["visit"], kVisit);
  EXPECT_EQ(receipt["server_time"], "2026-05-03T08:00:10Z");
  const json detail = got("/api/v1/clubs/hill/visits/" + kVisit, "VisitDetail");
  EXPECT_EQ(detail["score"], 8);
  const json page = got(kEntries, "EntriesPage");
  EXPECT_EQ(page["entries"].size(), 2U);
  EXPECT_TRUE(
      got(kEntries + "?since=" + std::to_string(page["next"].get<int>()), "EntriesPage")["entries"]
          .empty());
  EXPECT_EQ(got(kEntries + "?limit=1", "EntriesPage")["entries"].size(), 1U);
  EXPECT_EQ(contract::faults("EntriesFile", body({roll(2, roll_fields())})), "");
}

TEST_F(ApiEntries, AVisitOfTodayWhereTheDemosCalendarStandsStill) {
  context_->today = [] { return *units::make_day(2025, 12, 31); };
  const std::string sent = body({visit(1, visit_fields()), roll(2, roll_fields())});
  EXPECT_EQ(post(sent)["visits"][0]["state"], "accepted");
  context_->now = [] { return std::string("2026-04-01T08:00:10Z"); };
  const json early = post(body({visit(5, {{"day", text("2026-05-02")}}, {1})}));
  EXPECT_EQ(early["visits"][0]["state"], "refused");
}

TEST_F(ApiEntries, ConflictsWithBothVersions) {
  post(body({visit(1, visit_fields()), roll(2, roll_fields())}));
  const json receipt =
      post(body({roll(3, {{"score", number(6)}}, {2}), roll(4, {{"score", nothing()}}, {2})}));
  EXPECT_EQ(receipt["visits"][0]["conflicts"], 1);
  const json all = got("/api/v1/clubs/hill/conflicts", "Conflicts");
  ASSERT_EQ(all["conflicts"].size(), 1U);
  EXPECT_EQ(all["conflicts"][0]["values"][0]["value"], 6);
  EXPECT_EQ(all["conflicts"][0]["values"][1]["value"], nullptr);
}

TEST_F(ApiEntries, WhatAPhoneNeeds) {
  const json kit = got("/api/v1/clubs/hill/field?today=2026-06-30", "FieldKit");
  EXPECT_EQ(kit["club"]["id"], "hill");
  ASSERT_EQ(kit["greens"].size(), 2U);
  EXPECT_EQ(kit["greens"][0]["spots"][0]["bearing_deg"], 40);
  EXPECT_EQ(kit["greens"][0]["last"]["day"], "2026-06-30");
  EXPECT_EQ(kit["greens"][0]["last"]["spot"], "A");
  EXPECT_NEAR(kit["greens"][0]["last"]["speed_m"].get<double>(), 3.05, 1e-9);
  EXPECT_FALSE(kit["greens"][1].contains("last"));
  EXPECT_EQ(kit["works_today"].size(), 1U);
  EXPECT_TRUE(got("/api/v1/clubs/hill/field?today=2026-06-01", "FieldKit")["works_today"].empty());
  const std::string tag = made::header(ask("GET", "/api/v1/clubs/hill/field"), "ETag");
  EXPECT_FALSE(tag.empty());
  post(body({visit(1, visit_fields())}));
  EXPECT_NE(made::header(ask("GET", "/api/v1/clubs/hill/field"), "ETag"), tag);
}

TEST_F(ApiEntries, PackedWithGzip) {
  EXPECT_EQ(post(packed(body({visit(1, visit_fields())})), "gzip")["kept"].size(), 1U);
  const std::string good = packed(body({visit(1, visit_fields())}));
  EXPECT_EQ(code(ask("POST", kEntries, good.substr(0, good.size() / 2), "gzip")), "bad_gzip");
  EXPECT_EQ(code(ask("POST", kEntries, good + "x", "gzip")), "bad_gzip");
  EXPECT_EQ(code(ask("POST", kEntries, "", "gzip")), "bad_gzip");
  EXPECT_EQ(code(ask("POST", kEntries, body({}), "gzip")), "bad_gzip");
  EXPECT_EQ(code(ask("POST", kEntries, good, "")), "not_json");
  const auto unknown = ask("POST", kEntries, good, "br");
  EXPECT_EQ(unknown.status, 415);
  EXPECT_EQ(code(unknown), "encoding_not_known");
  // 64 MiB of blanks are 64 KiB packed.
  const auto bomb = ask("POST", kEntries, packed(std::string(64UL << 20U, ' ')), "gzip");
  EXPECT_EQ(bomb.status, 413);
  EXPECT_EQ(code(bomb), "body_too_long");
}

TEST_F(ApiEntries, EachBadBodyIsOneClearSentence) {
  const auto said = [&](const std::string& sent) {
    const auto response = ask("POST", kEntries, sent);
    EXPECT_EQ(response.status, 400);
    EXPECT_EQ(contract::faults("Refusal", response.body), "");
    return json::parse(response.body, nullptr, false)["sentence"].get<std::string>();
  };
  EXPECT_EQ(said("{"),
            kEntries + ": body is missing, but must be JSON in UTF-8, whole to its end.");
  EXPECT_EQ(said("[]"),
            kEntries +
                ": form is 'a list of 0', but must be an object whose form is baize-entries.");
  EXPECT_EQ(said(R"({"form":"baize-entries","version":7})"),
            "the entries: version is '7', but must be 1: a newer Baize reads newer ones.");
  EXPECT_TRUE(store_->entries_since("hill", 0, 10)->entries.empty());
}

TEST_F(ApiEntries, RefusedAsAWhole) {
  const auto nowhere = ask("POST", "/api/v1/clubs/moor/entries", body({visit(1, visit_fields())}));
  EXPECT_EQ(nowhere.status, 404);
  EXPECT_EQ(code(nowhere), "no_such_club");
  EXPECT_EQ(code(ask("GET", "/api/v1/clubs/moor/conflicts")), "no_such_club");
  EXPECT_EQ(code(ask("GET", "/api/v1/clubs/moor/field")), "no_such_club");
  EXPECT_EQ(code(ask("GET", kEntries + "?since=-1")), "bad_query");
  EXPECT_EQ(code(ask("GET", kEntries + "?limit=9999")), "bad_query");
  EXPECT_EQ(api::body_limit("POST", kEntries), 8U << 20U);
  made::World memory;
  EXPECT_EQ(json::parse(memory.get("/api/v1/clubs/c%2F1/conflicts").body)["problem"]["code"],
            "no_such_service");
}

} // namespace
